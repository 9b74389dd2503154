//! Presets of codes of play: starting points to edit, each with its source. From memory unless the source says
//! otherwise; the league's own rule book always comes first.

use super::{Code, Mercy, Reentry, RunLimit, TieBreak};
use crate::field::{Base, Count};

/// A preset's key, for menus. The engine never sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Preset {
    /// Baseball, nine innings.
    Baseball9,
    /// Baseball, seven innings.
    Baseball7,
    /// Youth baseball on the small field, six innings.
    Youth6,
    /// Fastpitch softball, seven innings.
    Fastpitch7,
    /// Slow-pitch softball, seven innings.
    SlowPitch7,
    /// Machine or coach pitch.
    CoachPitch,
}

/// Every preset, in the order a menu shows them.
pub const fn presets() -> [Preset; 6] {
    [Preset::Youth6, Preset::Baseball7, Preset::Baseball9, Preset::Fastpitch7, Preset::SlowPitch7, Preset::CoachPitch]
}

impl Preset {
    /// The preset's values.
    pub fn code(self) -> Code {
        let nine = Code {
            name: "Baseball, 9 innings".into(),
            source: "Official Baseball Rules 2024, from memory".into(),
            innings: 9,
            starter_innings_to_win: 5,
            official_after: 5,
            fielders: 9,
            players_pitch: true,
            balls_for_walk: Some(4),
            strikes_for_out: 3,
            starting_count: Count::new(0, 0),
            foul_is_third_strike: false,
            dropped_third_strike: true,
            stealing: true,
            run_limit: None,
            mercy: Vec::new(),
            tie_break: Some(TieBreak { from_inning: 10, bases: vec![Base::Second] }),
            reentry: Reentry::Never,
            courtesy_runner: false,
            continuous_order: false,
            designated_hitter: true,
            extra_hitters: 0,
            missing_batter_is_out: true,
            time_limit_minutes: None,
            pitch_limit: None,
            base_path_feet: Some(90),
            pitching_distance_tenths: Some(605),
            mandatory_outs: None,
            mandatory_at_bats: None,
            // OBR 3.01: 9 to 9 1/4 inches. OBR 3.02(a): one piece of wood, 42 inches, 2.61 inches.
            ball_tenths: Some(90),
            bat_length_tenths: Some(420),
            bat_barrel_hundredths: Some(261),
            wooden_bats_only: true,
            arc_from_feet: None,
            arc_to_feet: None,
        };
        match self {
            Self::Baseball9 => nine,
            Self::Baseball7 => Code {
                name: "Baseball, 7 innings".into(),
                wooden_bats_only: false,
                bat_length_tenths: None,
                source: "Common school and club practice, no source".into(),
                innings: 7,
                starter_innings_to_win: 4,
                mercy: vec![Mercy { lead: 10, after_inning: 5 }],
                tie_break: Some(TieBreak { from_inning: 8, bases: vec![Base::Second] }),
                reentry: Reentry::StartersOnce,
                courtesy_runner: true,
                ..nine
            },
            Self::Youth6 => Code {
                name: "Youth baseball, 6 innings".into(),
                source: "Common youth practice, no source: your league's rules come first".into(),
                innings: 6,
                starter_innings_to_win: 4,
                official_after: 4,
                run_limit: Some(RunLimit { runs: 5, open_last_inning: true }),
                mercy: vec![Mercy { lead: 15, after_inning: 3 }, Mercy { lead: 10, after_inning: 4 }],
                tie_break: None,
                reentry: Reentry::Free,
                courtesy_runner: true,
                continuous_order: true,
                designated_hitter: false,
                missing_batter_is_out: false,
                pitch_limit: Some(75),
                base_path_feet: Some(60),
                pitching_distance_tenths: Some(460),
                mandatory_outs: Some(6),
                mandatory_at_bats: Some(1),
                bat_length_tenths: Some(330),
                bat_barrel_hundredths: Some(225),
                wooden_bats_only: false,
                ..nine
            },
            Self::Fastpitch7 => Code {
                name: "Fastpitch softball, 7 innings".into(),
                source: "Common fastpitch practice, no source: your league's rules come first".into(),
                innings: 7,
                starter_innings_to_win: 4,
                mercy: vec![
                    Mercy { lead: 12, after_inning: 3 },
                    Mercy { lead: 10, after_inning: 4 },
                    Mercy { lead: 8, after_inning: 5 },
                ],
                tie_break: Some(TieBreak { from_inning: 8, bases: vec![Base::Second] }),
                reentry: Reentry::StartersOnce,
                courtesy_runner: true,
                base_path_feet: Some(60),
                pitching_distance_tenths: Some(430),
                ball_tenths: Some(120),
                bat_length_tenths: Some(340),
                bat_barrel_hundredths: Some(225),
                wooden_bats_only: false,
                ..nine
            },
            Self::SlowPitch7 => Code {
                name: "Slow-pitch softball, 7 innings".into(),
                source: "Common slow-pitch practice, no source: your league's rules come first".into(),
                innings: 7,
                starter_innings_to_win: 4,
                fielders: 10,
                starting_count: Count::new(1, 1),
                foul_is_third_strike: true,
                dropped_third_strike: false,
                stealing: false,
                mercy: vec![Mercy { lead: 20, after_inning: 4 }, Mercy { lead: 15, after_inning: 5 }],
                tie_break: None,
                reentry: Reentry::StartersOnce,
                courtesy_runner: true,
                designated_hitter: false,
                extra_hitters: 2,
                base_path_feet: Some(65),
                pitching_distance_tenths: Some(500),
                ball_tenths: Some(120),
                bat_length_tenths: Some(340),
                bat_barrel_hundredths: Some(225),
                wooden_bats_only: false,
                arc_from_feet: Some(6),
                arc_to_feet: Some(12),
                ..nine
            },
            Self::CoachPitch => Code {
                name: "Machine or coach pitch, 6 innings".into(),
                source: "Common youth practice, no source: your league's rules come first".into(),
                innings: 6,
                starter_innings_to_win: 4,
                official_after: 4,
                fielders: 10,
                players_pitch: false,
                balls_for_walk: None,
                dropped_third_strike: false,
                stealing: false,
                run_limit: Some(RunLimit { runs: 5, open_last_inning: false }),
                tie_break: None,
                reentry: Reentry::Free,
                continuous_order: true,
                designated_hitter: false,
                missing_batter_is_out: false,
                base_path_feet: Some(60),
                pitching_distance_tenths: Some(420),
                bat_length_tenths: Some(330),
                bat_barrel_hundredths: Some(225),
                wooden_bats_only: false,
                ..nine
            },
        }
    }
}
