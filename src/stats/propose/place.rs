//! Where fielders usually stand, and what part of the field a point is. Units: hundredths of a base path, as in `Spot`.

use crate::field::Position;
use crate::log::Spot;

/// The usual place of a fielder (common practice, no source), measured on a field of 90-foot base paths.
pub const fn usual_spot(position: Position) -> Spot {
    let (x, y) = match position {
        Position::Pitcher => (0, 67),
        Position::Catcher => (0, -6),
        Position::FirstBase => (72, 100),
        Position::SecondBase => (40, 146),
        Position::ThirdBase => (-72, 100),
        Position::Shortstop => (-40, 146),
        Position::LeftField => (-150, 265),
        Position::CenterField => (0, 330),
        Position::RightField => (150, 265),
        Position::ShortField => (0, 215),
    };
    Spot { x, y }
}

/// Fair territory: between the foul lines, the lines included.
pub const fn is_fair(spot: Spot) -> bool {
    spot.y >= 0 && spot.x.unsigned_abs() <= spot.y.unsigned_abs()
}

/// How far the fence is in the direction of a point: 367 down the lines (330 feet of 90-foot paths), 444 in straightaway
/// center (400 feet). Usual measures, no source; a smaller field has its fence at about the same number of base paths.
pub fn fence(spot: Spot) -> f64 {
    const LINE: f64 = 367.0;
    const CENTER: f64 = 444.0;
    let off_center = f64::from(spot.x).atan2(f64::from(spot.y)).abs() / core::f64::consts::FRAC_PI_4;
    CENTER - (CENTER - LINE) * off_center.min(1.0).powi(2)
}

/// Distance from home plate.
pub(super) fn depth(spot: Spot) -> f64 {
    f64::from(spot.x).hypot(f64::from(spot.y))
}

/// Past the fence.
pub fn is_beyond_fence(spot: Spot) -> bool {
    depth(spot) > fence(spot)
}

/// The fielder nearest to a point among those there are; the pitcher if there is nobody.
pub fn nearest(spot: Spot, there: impl Fn(Position) -> bool) -> Position {
    let squared = |p: &Position| {
        let at = usual_spot(*p);
        let (dx, dy) = (i32::from(at.x) - i32::from(spot.x), i32::from(at.y) - i32::from(spot.y));
        dx * dx + dy * dy
    };
    // A ball on the grass beyond the infielders is the outfielders' to pick up, however near an infielder stood.
    let past_infield = is_fair(spot) && depth(spot) > 178.0;
    let pick = |outfield: bool| {
        Position::ALL.into_iter().filter(|p| there(*p) && (!outfield || p.is_outfield())).min_by_key(squared)
    };
    let choice = if past_infield { pick(true).or_else(|| pick(false)) } else { pick(false) };
    choice.unwrap_or(Position::Pitcher)
}
