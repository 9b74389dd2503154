//! The field as drawn: the infield to scale, the outfield drawn closer so that a thumb fits everywhere.
//!
//! Drawn units are CSS px on a 360 px phone; x to the right, y down, in a box of [`WIDTH`] by [`HEIGHT`].

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{Spot, Start};
use benchbook_stats::propose::fence;

pub const WIDTH: f64 = 360.0;
pub const HEIGHT: f64 = 352.0;
/// Home plate.
const HOME: (f64, f64) = (180.0, 296.0);
/// The base path, drawn.
const PATH: f64 = 92.0;
/// Up to here, drawn, the field is to scale.
const TO_SCALE: f64 = 140.0;
/// Half of the room a token has.
const TOKEN: f64 = 32.0;
/// The fence, drawn: in straightaway center and down the lines.
const FENCE: (f64, f64) = (284.0, 250.0);

/// Distance from home of the drawn fence in a direction, given in radians off the line to second.
fn drawn_fence(angle: f64) -> f64 {
    let off = (angle.abs() / core::f64::consts::FRAC_PI_4).min(1.0);
    FENCE.0 - (FENCE.0 - FENCE.1) * off * off
}

/// The spot under a drawn point.
pub fn spot(x: f64, y: f64) -> Spot {
    let (dx, dy) = (x - HOME.0, HOME.1 - y);
    let (drawn, angle) = (dx.hypot(dy), dx.atan2(dy));
    let unit = 100.0 / PATH;
    let distance = if drawn <= TO_SCALE {
        drawn * unit
    } else {
        let inner = TO_SCALE * unit;
        let outer = fence(direction(angle));
        inner + (drawn - TO_SCALE) * (outer - inner) / (drawn_fence(angle) - TO_SCALE)
    };
    at(angle, distance)
}

/// The drawn point of a spot.
pub fn drawn(spot: Spot) -> (f64, f64) {
    let (x, y) = (f64::from(spot.x), f64::from(spot.y));
    let (distance, angle) = (x.hypot(y), x.atan2(y));
    let unit = PATH / 100.0;
    let inner = TO_SCALE / unit;
    let r = if distance <= inner {
        distance * unit
    } else {
        TO_SCALE + (distance - inner) * (drawn_fence(angle) - TO_SCALE) / (fence(spot) - inner)
    };
    (HOME.0 + r * angle.sin(), HOME.1 - r * angle.cos())
}

fn direction(angle: f64) -> Spot {
    at(angle, 300.0)
}

fn at(angle: f64, distance: f64) -> Spot {
    Spot { x: rounded(distance * angle.sin()), y: rounded(distance * angle.cos()) }
}

fn rounded(n: f64) -> i16 {
    n.round().clamp(-2000.0, 2000.0) as i16
}

/// A base, drawn; home is the plate.
pub fn base(base: Base) -> (f64, f64) {
    let half = PATH / core::f64::consts::SQRT_2;
    match base {
        Base::First => (HOME.0 + half, HOME.1 - half),
        Base::Second => (HOME.0, HOME.1 - 2.0 * half),
        Base::Third => (HOME.0 - half, HOME.1 - half),
        Base::Home => HOME,
    }
}

/// Where someone starts, drawn.
pub fn start(start: Start) -> (f64, f64) {
    base(start.base().unwrap_or(Base::Home))
}

/// A fielder's token, drawn: further apart than they stand, so that each has room for a thumb. The stylesheet puts the
/// tokens there (`.token.at-1` and so on).
pub const fn fielder(position: Position) -> (f64, f64) {
    match position {
        Position::Pitcher => (180.0, 232.0),
        Position::Catcher => (185.0, 322.0),
        Position::FirstBase => (299.0, 206.0),
        Position::SecondBase => (241.0, 158.0),
        Position::ThirdBase => (61.0, 206.0),
        Position::Shortstop => (119.0, 158.0),
        Position::LeftField => (83.0, 97.0),
        Position::CenterField => (180.0, 49.0),
        Position::RightField => (277.0, 97.0),
        Position::ShortField => (180.0, 108.0),
    }
}

/// The base nearest to a drawn point, if it is near one.
pub fn nearest_base(x: f64, y: f64) -> Option<Base> {
    let all = [Base::First, Base::Second, Base::Third, Base::Home];
    let distance = |b: &Base| {
        let (bx, by) = base(*b);
        (bx - x).hypot(by - y)
    };
    all.into_iter().min_by(|a, b| distance(a).total_cmp(&distance(b))).filter(|b| distance(b) < PATH * 0.62)
}

/// The fielder's token under a drawn point, if it is on one.
pub fn nearest_fielder(x: f64, y: f64) -> Option<Position> {
    let distance = |position: &Position| {
        let (fx, fy) = fielder(*position);
        (fx - x).hypot(fy - y)
    };
    let nearest = Position::ALL.into_iter().min_by(|a, b| distance(a).total_cmp(&distance(b)));
    nearest.filter(|position| distance(position) < TOKEN)
}

/// The outline of the fence from the left line to the right one, as path data.
pub fn fence_path() -> String {
    let mut path = String::new();
    for step in -12..=12 {
        let angle = f64::from(step) / 12.0 * core::f64::consts::FRAC_PI_4;
        let r = drawn_fence(angle);
        let (x, y) = (HOME.0 + r * angle.sin(), HOME.1 - r * angle.cos());
        let _ = core::fmt::Write::write_fmt(
            &mut path,
            format_args!("{}{x:.1} {y:.1}", if step == -12 { "M" } else { "L" }),
        );
    }
    path
}

/// Fair territory inside the fence, as path data.
pub fn fair_path() -> String {
    format!("{}L{} {}Z", fence_path(), HOME.0, HOME.1)
}

/// The edge of the infield's dirt: an arc around the pitcher.
pub fn dirt_path() -> String {
    let (l, r) = (base(Base::Third), base(Base::First));
    format!(
        "M{} {}L{:.1} {:.1}A104 104 0 0 1 {:.1} {:.1}Z",
        HOME.0,
        HOME.1 + 8.0,
        l.0 - 34.0,
        l.1 - 30.0,
        r.0 + 34.0,
        r.1 - 30.0
    )
}

/// The grass inside the bases.
pub fn infield_path() -> String {
    let inset = 13.0;
    let ((fx, fy), (sx, sy), (tx, ty)) = (base(Base::First), base(Base::Second), base(Base::Third));
    format!(
        "M{} {}L{:.1} {fy:.1}L{sx} {:.1}L{:.1} {ty:.1}Z",
        HOME.0,
        HOME.1 - inset * 1.6,
        fx - inset,
        sy + inset,
        tx + inset
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchbook_stats::propose::{is_beyond_fence, is_fair};

    #[test]
    fn a_spot_and_its_drawn_point_name_each_other() {
        for (x, y) in [(71, 71), (0, 141), (-150, 265), (0, 330), (150, 120), (0, 430), (-300, 320), (120, -30)] {
            let (dx, dy) = drawn(Spot { x, y });
            let back = spot(dx, dy);
            let off = (f64::from(back.x) - f64::from(x)).hypot(f64::from(back.y) - f64::from(y));
            assert!(off < 2.5, "({x}, {y}) came back as {back:?}");
        }
    }

    #[test]
    fn a_point_on_a_token_is_that_fielder_and_open_grass_is_nobody() {
        for position in Position::ALL {
            let (x, y) = fielder(position);
            assert_eq!(nearest_fielder(x + 12.0, y - 9.0), Some(position));
        }
        assert_eq!(nearest_fielder(20.0, 20.0), None);
        assert_eq!(nearest_fielder(180.0, 190.0), None);
    }

    #[test]
    fn bases_lie_where_the_log_says() {
        for (b, x, y) in [(Base::First, 71, 71), (Base::Second, 0, 141), (Base::Third, -71, 71)] {
            let (dx, dy) = base(b);
            assert_eq!(spot(dx, dy), Spot { x, y });
        }
    }

    #[test]
    fn the_corners_of_the_drawing_are_home_runs_and_the_bottom_is_foul() {
        for (x, y) in [(20.0, 20.0), (340.0, 20.0), (180.0, 4.0)] {
            let s = spot(x, y);
            assert!(is_fair(s) && is_beyond_fence(s), "{s:?}");
        }
        for (x, y) in [(40.0, 320.0), (320.0, 300.0), (180.0, 330.0)] {
            assert!(!is_fair(spot(x, y)));
        }
    }
}
