//! The code of play: what differs between leagues, as data. The engine reads these fields and never a preset's name.

use serde::{Deserialize, Serialize};

use crate::field::{Base, Count};

mod presets;

pub use presets::{Preset, presets};

/// The rules of play agreed for one game.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
#[allow(clippy::struct_excessive_bools)] // each is an independent yes or no of a league's rules
pub struct Code {
    /// What people call it: for the reader only.
    pub name: String,
    /// Where these values come from and when they were read: for the reader only.
    pub source: String,
    /// Innings of a regulation game; also the innings an earned run average is reckoned by (OBR 9.21(e)).
    pub innings: u8,
    /// Innings a starting pitcher must finish to win (OBR 9.17(b)); one fewer in a game that lasts no longer.
    #[serde(default = "five", skip_serializing_if = "is_five")]
    pub starter_innings_to_win: u8,
    /// Innings that make a game official when it is called or forfeited (OBR 7.01(c), 9.03(e)); half an inning fewer when
    /// the home side is not behind.
    #[serde(default = "five", skip_serializing_if = "is_five")]
    pub official_after: u8,
    /// Fielders of a full side: 9, or 10 with a short fielder.
    pub fielders: u8,
    /// Players pitch; otherwise a machine or a coach does, and there is no pitcher's line.
    pub players_pitch: bool,
    /// Balls that make a walk; `None` where nobody walks.
    pub balls_for_walk: Option<u8>,
    /// Strikes that make an out.
    pub strikes_for_out: u8,
    /// The count every batter starts with.
    pub starting_count: Count,
    /// A foul (not a bunt) with one strike to go is an out.
    pub foul_is_third_strike: bool,
    /// The batter may run when strike three is not caught.
    pub dropped_third_strike: bool,
    /// Runners may steal.
    pub stealing: bool,
    /// A half-inning ends when this many runs are in.
    pub run_limit: Option<RunLimit>,
    /// The game ends when a side leads by enough after enough innings.
    pub mercy: Vec<Mercy>,
    /// Runners placed at the start of late half-innings.
    pub tie_break: Option<TieBreak>,
    /// A player who has left may come back.
    pub reentry: Reentry,
    /// A runner may be lent for the pitcher or catcher.
    pub courtesy_runner: bool,
    /// Everyone present bats, in one order.
    pub continuous_order: bool,
    /// A designated hitter may bat for a player who fields only.
    pub designated_hitter: bool,
    /// Batters beyond the fielders.
    pub extra_hitters: u8,
    /// The place of a player who left without a substitute is an out when its turn comes.
    pub missing_batter_is_out: bool,
    /// No new inning begins after this many minutes.
    pub time_limit_minutes: Option<u16>,
    /// Most pitches one pitcher may throw in a day, when the league sets one.
    pub pitch_limit: Option<u16>,
    /// Feet between bases.
    pub base_path_feet: Option<u16>,
    /// Feet from the pitcher's plate to home, times ten (60 ft 6 in is 605).
    pub pitching_distance_tenths: Option<u16>,
    /// Outs in the field that everyone present is to get (mandatory play).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mandatory_outs: Option<u16>,
    /// Times at bat that everyone present is to get (mandatory play).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mandatory_at_bats: Option<u16>,
    /// Inches round the ball, times ten.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ball_tenths: Option<u16>,
    /// Longest bat, in inches times ten.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bat_length_tenths: Option<u16>,
    /// Thickest barrel of a bat, in inches times a hundred.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bat_barrel_hundredths: Option<u16>,
    /// Only bats of one piece of wood.
    #[serde(default, skip_serializing_if = "is_false")]
    pub wooden_bats_only: bool,
    /// Lowest arc of a pitch, in feet (slow-pitch).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub arc_from_feet: Option<u16>,
    /// Highest arc of a pitch, in feet (slow-pitch).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub arc_to_feet: Option<u16>,
}

#[allow(clippy::trivially_copy_pass_by_ref)] // serde asks for a reference
const fn is_false(b: &bool) -> bool {
    !*b
}

/// The innings of OBR 7.01(c) and 9.17(b); files older than these fields mean them.
const fn five() -> u8 {
    5
}

#[allow(clippy::trivially_copy_pass_by_ref)] // serde asks for a reference
const fn is_five(innings: &u8) -> bool {
    *innings == five()
}

/// Runs that end a half-inning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RunLimit {
    /// Runs.
    pub runs: u8,
    /// The last regulation inning, and those after it, are played without the limit.
    pub open_last_inning: bool,
}

/// A lead that ends the game.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Mercy {
    /// Runs ahead.
    pub lead: u8,
    /// After this many innings of the side that is behind (half an inning less when the home side leads).
    pub after_inning: u8,
}

/// Runners placed by rule (OBR 7.01(b)): each counts as having reached on an error charged to nobody.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct TieBreak {
    /// The first inning that starts so.
    pub from_inning: u8,
    /// Where they stand; the batter before the leadoff stands furthest back, and so on in order.
    pub bases: Vec<Base>,
}

/// Whether a player who has left may come back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Reentry {
    /// Never.
    Never,
    /// Each starter once, in the same batting place.
    StartersOnce,
    /// Anyone, any time, in the same batting place.
    Free,
}

impl Default for Code {
    /// Baseball, nine innings.
    fn default() -> Self {
        Preset::Baseball9.code()
    }
}

impl Code {
    /// Runs that end the half of `inning`, if any do.
    pub fn run_limit_in(&self, inning: u8) -> Option<u8> {
        let limit = self.run_limit?;
        (!limit.open_last_inning || inning < self.innings).then_some(limit.runs)
    }

    /// Where runners are placed at the start of each half of `inning`.
    pub fn placed_runners_in(&self, inning: u8) -> &[Base] {
        match &self.tie_break {
            Some(tie_break) if inning >= tie_break.from_inning => &tie_break.bases,
            _ => &[],
        }
    }
}
