//! The usual checks before a game, by the rules of play. They are reminders: nothing here stops a game.

use benchbook_stats::code::Code;

/// One check.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Check {
    /// Game balls at hand.
    Balls {
        /// Pitches to be expected.
        pitches: u16,
        /// Balls, if each lasts long.
        from: u16,
        /// Balls, if each lasts shortly.
        to: u16,
    },
    /// New balls are rubbed up, so that the gloss is off.
    Rubbed,
    /// The ball's size: inches round, times ten.
    BallSize(u16),
    /// The code's longest bat, in inches times ten.
    BatLength(u16),
    /// The code's thickest bat, in hundredths of an inch.
    BatBarrel(u16),
    /// The code has wooden bats only.
    WoodenBats,
    /// The usual limits on a small field, where the code gives none.
    SmallBats,
    /// Metal bats only where they are allowed.
    MetalBats,
    /// Bat weights children usually swing.
    ChildrensWeights,
    /// Bat weights as they usually are from high school on.
    GrownWeights,
    /// Mitts only where the rules allow.
    Mitts,
    /// Base paths, in feet.
    BasePaths(u16),
    /// The pitcher's plate, in tenths of a foot from home.
    PitchingDistance(u16),
    /// Slow pitch: the lowest arc in feet.
    ArcFrom(u16),
    /// Slow pitch: the highest arc in feet.
    ArcTo(u16),
    /// Slow pitch: the lowest and the highest arc in feet.
    ArcBetween(u16, u16),
    /// Slow pitch: what other rules have.
    SlowPitch,
    /// Everyone present is to play: outs in the field.
    OutsForEveryone(u16),
    /// Everyone present is to play: times at bat.
    AtBatsForEveryone(u16),
    /// The umpire has approved the field and the equipment.
    Umpire,
}

/// Batters a side sends up in an inning, and pitches to each: about the average at most levels (common practice, no
/// source).
const BATTERS_AN_INNING: u16 = 4;
const PITCHES_A_BATTER: u16 = 4;
/// Pitches a ball lasts where new balls are brought in all the time: 5 to 6 (common practice, no source).
const PITCHES_A_BALL: (u16, u16) = (5, 6);
/// A field on which bases lie so near is a small one.
const SMALL_FIELD_FEET: u16 = 70;
/// A ball so large, in tenths of an inch, is a softball: grown-ups play with it on small fields too.
const SOFTBALL_TENTHS: u16 = 110;

/// The checks under this code.
pub fn checks(code: &Code) -> Vec<Check> {
    let small = code.base_path_feet.is_some_and(|feet| feet <= SMALL_FIELD_FEET);
    let softball = code.ball_tenths.is_some_and(|tenths| tenths >= SOFTBALL_TENTHS);
    let mut checks = vec![balls(code), Check::Rubbed];
    checks.extend(code.ball_tenths.map(Check::BallSize));
    checks.extend(code.bat_barrel_hundredths.map(Check::BatBarrel));
    checks.extend(code.bat_length_tenths.map(Check::BatLength));
    if small && code.bat_barrel_hundredths.is_none() && code.bat_length_tenths.is_none() {
        checks.push(Check::SmallBats);
    }
    checks.push(if code.wooden_bats_only { Check::WoodenBats } else { Check::MetalBats });
    if small {
        checks.push(Check::ChildrensWeights);
    }
    if !small || softball {
        checks.push(Check::GrownWeights);
    }
    checks.push(Check::Mitts);
    checks.extend(code.base_path_feet.map(Check::BasePaths));
    checks.extend(code.pitching_distance_tenths.map(Check::PitchingDistance));
    let arc = match (code.arc_from_feet, code.arc_to_feet) {
        (Some(from), Some(to)) => Some(Check::ArcBetween(from, to)),
        (from, to) => from.map(Check::ArcFrom).or_else(|| to.map(Check::ArcTo)),
    };
    checks.extend(arc.into_iter().flat_map(|arc| [arc, Check::SlowPitch]));
    checks.extend(code.mandatory_outs.map(Check::OutsForEveryone));
    checks.extend(code.mandatory_at_bats.map(Check::AtBatsForEveryone));
    checks.push(Check::Umpire);
    checks
}

fn balls(code: &Code) -> Check {
    let pitches = u16::from(code.innings) * 2 * BATTERS_AN_INNING * PITCHES_A_BATTER;
    let (shortly, long) = PITCHES_A_BALL;
    Check::Balls { pitches, from: pitches.div_ceil(long), to: pitches.div_ceil(shortly) }
}

impl Check {
    /// The name under which a tick is kept.
    pub const fn slug(self) -> &'static str {
        match self {
            Self::Balls { .. } => "balls",
            Self::Rubbed => "rubbed",
            Self::BallSize(_) => "ball-size",
            Self::BatLength(_) => "bat-length",
            Self::BatBarrel(_) => "bat-barrel",
            Self::WoodenBats => "wooden-bats",
            Self::SmallBats => "small-bats",
            Self::MetalBats => "metal-bats",
            Self::ChildrensWeights => "childrens-weights",
            Self::GrownWeights => "grown-weights",
            Self::Mitts => "mitts",
            Self::BasePaths(_) => "base-paths",
            Self::PitchingDistance(_) => "pitching-distance",
            Self::ArcFrom(_) | Self::ArcTo(_) | Self::ArcBetween(..) => "arc",
            Self::SlowPitch => "slow-pitch",
            Self::OutsForEveryone(_) => "outs",
            Self::AtBatsForEveryone(_) => "at-bats",
            Self::Umpire => "umpire",
        }
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::{Preset, presets};

    use super::*;

    #[test]
    fn checks_follow_the_code() {
        let youth = checks(&Preset::Youth6.code());
        assert!(youth.contains(&Check::ChildrensWeights) && youth.contains(&Check::BasePaths(60)));
        assert!(youth.contains(&Check::BatBarrel(225)) && youth.contains(&Check::BatLength(330)));
        assert!(youth.contains(&Check::PitchingDistance(460)) && youth.contains(&Check::MetalBats));
        assert!(!youth.contains(&Check::GrownWeights) && !youth.contains(&Check::SlowPitch));
        let slow = checks(&Code { arc_from_feet: Some(6), arc_to_feet: Some(12), ..Preset::SlowPitch7.code() });
        assert!(slow.contains(&Check::ArcBetween(6, 12)) && slow.contains(&Check::SlowPitch));
        assert!(slow.contains(&Check::ChildrensWeights) && slow.contains(&Check::GrownWeights));
        let wood = checks(&Code { wooden_bats_only: true, ..Preset::Baseball9.code() });
        assert!(wood.contains(&Check::WoodenBats) && !wood.contains(&Check::MetalBats));
    }

    #[test]
    fn a_small_field_whose_rules_say_nothing_of_bats_has_the_usual_limits() {
        let code = Code { bat_barrel_hundredths: None, bat_length_tenths: None, ..Preset::Youth6.code() };
        assert!(checks(&code).contains(&Check::SmallBats));
        assert!(!checks(&Preset::Youth6.code()).contains(&Check::SmallBats));
    }

    #[test]
    fn balls_are_reckoned_from_the_pitches_to_be_expected() {
        // 9 innings, 2 sides, 4 batters, 4 pitches; a ball lasts 6 or 5 of them.
        assert_eq!(balls(&Preset::Baseball9.code()), Check::Balls { pitches: 288, from: 48, to: 58 });
        assert_eq!(balls(&Preset::Youth6.code()), Check::Balls { pitches: 192, from: 32, to: 39 });
    }

    #[test]
    fn ticks_do_not_share_a_name() {
        for preset in presets() {
            let mut slugs: Vec<_> = checks(&preset.code()).into_iter().map(Check::slug).collect();
            let all = slugs.len();
            slugs.sort_unstable();
            slugs.dedup();
            assert_eq!(slugs.len(), all, "{preset:?}");
        }
    }
}
