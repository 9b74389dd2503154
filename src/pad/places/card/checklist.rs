//! The usual checks before a game, by the rules of play. They are reminders: nothing here stops a game.

use benchbook_stats::code::Code;

/// One check.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Check {
    /// Game balls at hand: so few to so many.
    Balls(u16, u16),
    /// New balls are rubbed up, so that the gloss is off.
    Rubbed,
    /// The ball's size: inches round, times ten.
    BallSize(u16),
    /// The code's limits for bats: longest in inches times ten, thickest in hundredths of an inch, wood only.
    BatLimits {
        /// Longest.
        length: Option<u16>,
        /// Thickest.
        barrel: Option<u16>,
        /// Wooden bats only.
        wood: bool,
    },
    /// Bats as children usually swing them on a small field.
    SmallBats,
    /// Bats as they usually are from high school on.
    Bats,
    /// Everyone present is to play: outs in the field, times at bat.
    EveryonePlays {
        /// Outs in the field.
        outs: Option<u16>,
        /// Times at bat.
        at_bats: Option<u16>,
    },
    /// Mitts only where the rules allow.
    Mitts,
    /// Base paths, in feet.
    BasePaths(u16),
    /// The pitcher's plate, in tenths of a foot from home.
    PitchingDistance(u16),
    /// Slow pitch: the arc, lowest and highest in feet.
    Arc(Option<u16>, Option<u16>),
    /// The umpire has approved the field and the equipment.
    Umpire,
}

/// Batters a side sends up in an inning, and pitches to each: about the average at most levels (common practice, no
/// source).
const BATTERS_AN_INNING: u16 = 4;
const PITCHES_A_BATTER: u16 = 4;
/// Pitches a ball lasts where new balls are brought in all the time (common practice, no source).
const PITCHES_A_BALL: u16 = 6;
/// A field on which bases lie so near is a small one.
const SMALL_FIELD_FEET: u16 = 70;
/// So many game balls do for a youth game (common practice, no source).
const YOUTH_BALLS: u16 = 3;

/// The checks under this code.
pub fn checks(code: &Code) -> Vec<Check> {
    let small = code.base_path_feet.is_some_and(|feet| feet <= SMALL_FIELD_FEET);
    let pitches = u16::from(code.innings) * 2 * BATTERS_AN_INNING * PITCHES_A_BATTER;
    let mut checks = vec![Check::Balls(YOUTH_BALLS, pitches.div_ceil(PITCHES_A_BALL)), Check::Rubbed];
    checks.extend(code.ball_tenths.map(Check::BallSize));
    let (length, barrel, wood) = (code.bat_length_tenths, code.bat_barrel_hundredths, code.wooden_bats_only);
    if length.is_some() || barrel.is_some() || wood {
        checks.push(Check::BatLimits { length, barrel, wood });
    }
    checks.push(if small { Check::SmallBats } else { Check::Bats });
    checks.push(Check::Mitts);
    checks.extend(code.base_path_feet.map(Check::BasePaths));
    checks.extend(code.pitching_distance_tenths.map(Check::PitchingDistance));
    if code.arc_from_feet.is_some() || code.arc_to_feet.is_some() {
        checks.push(Check::Arc(code.arc_from_feet, code.arc_to_feet));
    }
    if code.mandatory_outs.is_some() || code.mandatory_at_bats.is_some() {
        checks.push(Check::EveryonePlays { outs: code.mandatory_outs, at_bats: code.mandatory_at_bats });
    }
    checks.push(Check::Umpire);
    checks
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::Preset;

    use super::*;

    #[test]
    fn checks_follow_the_code() {
        let youth = checks(&Preset::Youth6.code());
        assert!(youth.contains(&Check::SmallBats) && youth.contains(&Check::BasePaths(60)));
        assert!(youth.contains(&Check::PitchingDistance(460)));
        assert!(!youth.iter().any(|c| matches!(c, Check::Arc(..))));
        let slow = Code { arc_from_feet: Some(6), arc_to_feet: Some(12), ..Preset::SlowPitch7.code() };
        assert!(checks(&slow).contains(&Check::Arc(Some(6), Some(12))));
        let wood = Code { wooden_bats_only: true, ..Preset::Baseball9.code() };
        assert!(checks(&wood).iter().any(|c| matches!(c, Check::BatLimits { wood: true, .. })));
        assert!(checks(&Preset::Baseball9.code()).contains(&Check::Bats));
    }

    #[test]
    fn new_balls_all_the_time_come_to_the_professional_custom_by_dozens() {
        // 15 to 18 dozen are brought to a professional game (common practice, no source); far fewer are thrown out.
        let Some(Check::Balls(few, many)) = checks(&Preset::Baseball9.code()).first().copied() else {
            panic!("balls come first")
        };
        assert!(few < many && many < 15 * 12);
    }
}
