//! A point of the field in words, for whoever can't see it: "shallow left".

use core::f64::consts::FRAC_PI_4;

use super::place::{depth, fence, is_beyond_fence, is_fair, nearest};
use crate::log::Spot;
use crate::words::{Language, say};

/// Nearer than this to the plate no fielder's post is near.
const AT_PLATE: f64 = 40.0;
/// The grass begins about here: as [`nearest`] has it.
const INFIELD: f64 = 178.0;
/// Shares of the way from the infield to the fence.
const SHALLOW: f64 = 0.33;
const DEEP: f64 = 0.72;

/// Where a point is. The limits are common practice, no source.
pub fn region(spot: Spot, language: Language) -> String {
    if !is_fair(spot) {
        return match (spot.y < 0, spot.x < 0) {
            (true, _) if i32::from(spot.x).abs() <= -i32::from(spot.y) => say!(language, "propose-behind-plate"),
            (_, true) => say!(language, "propose-foul-left"),
            (_, false) => say!(language, "propose-foul-right"),
        };
    }
    let far = depth(spot);
    if far < AT_PLATE {
        return say!(language, "propose-before-plate");
    }
    if far <= INFIELD {
        return say!(language, "propose-infield", fielder = nearest(spot, |_| true).said(language));
    }
    let direction = direction(spot);
    if is_beyond_fence(spot) {
        return say!(language, "propose-over-fence", direction = direction);
    }
    let share = (far - INFIELD) / (fence(spot) - INFIELD);
    let depth = if share < SHALLOW {
        "shallow"
    } else if share > DEEP {
        "deep"
    } else {
        "middle"
    };
    say!(language, "propose-outfield", depth = depth, direction = direction)
}

/// Of the outfield's five directions.
fn direction(spot: Spot) -> &'static str {
    let off_center = f64::from(spot.x).atan2(f64::from(spot.y)) / FRAC_PI_4;
    match off_center {
        a if a < -0.6 => "left",
        a if a < -0.2 => "left-center",
        a if a <= 0.2 => "center",
        a if a <= 0.6 => "right-center",
        _ => "right",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_is_said_as_at_the_field() {
        let said = |x, y| region(Spot { x, y }, Language::English);
        assert_eq!(said(0, -20), "behind the plate");
        assert_eq!(said(0, 20), "in front of the plate");
        assert_eq!(said(-100, 40), "foul, on the left side");
        assert_eq!(said(100, -30), "foul, on the right side");
        assert_eq!(said(-40, 146), "by the shortstop");
        assert_eq!(said(-140, 160), "shallow left");
        assert_eq!(said(0, 330), "center");
        assert_eq!(said(-140, 360), "deep left-center");
        assert_eq!(said(200, 420), "over the fence in right-center");
    }
}
