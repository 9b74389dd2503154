//! The columns of the box score that can be asked "why?", and what stands in them.

use crate::lines::{BattingLine, FieldingLine, PitchingLine};

/// A batter's number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Batting {
    /// Turns at the plate.
    PlateAppearances,
    /// Times at bat.
    AtBats,
    /// Runs scored.
    Runs,
    /// Hits.
    Hits,
    /// Two-base hits.
    Doubles,
    /// Three-base hits.
    Triples,
    /// Home runs.
    HomeRuns,
    /// Runs batted in.
    RunsBattedIn,
    /// Bases on balls.
    Walks,
    /// Intentional bases on balls.
    IntentionalWalks,
    /// Strikeouts.
    Strikeouts,
    /// Times hit by a pitch.
    HitByPitch,
    /// Sacrifice hits.
    SacrificeHits,
    /// Sacrifice flies.
    SacrificeFlies,
    /// First base on interference or obstruction.
    Interference,
    /// Reached on an error.
    ReachedOnError,
    /// Reached on a fielder's choice.
    FieldersChoices,
    /// Stolen bases.
    StolenBases,
    /// Caught stealing.
    CaughtStealing,
    /// Grounded into double plays.
    GroundedIntoDoublePlays,
    /// Runners left on base.
    LeftOnBase,
}

impl Batting {
    /// All of them, in the order of the line.
    pub const ALL: [Self; 21] = [
        Self::PlateAppearances,
        Self::AtBats,
        Self::Runs,
        Self::Hits,
        Self::Doubles,
        Self::Triples,
        Self::HomeRuns,
        Self::RunsBattedIn,
        Self::Walks,
        Self::IntentionalWalks,
        Self::Strikeouts,
        Self::HitByPitch,
        Self::SacrificeHits,
        Self::SacrificeFlies,
        Self::Interference,
        Self::ReachedOnError,
        Self::FieldersChoices,
        Self::StolenBases,
        Self::CaughtStealing,
        Self::GroundedIntoDoublePlays,
        Self::LeftOnBase,
    ];

    /// What stands in this column of a line.
    pub const fn of(self, line: &BattingLine) -> u32 {
        match self {
            Self::PlateAppearances => line.plate_appearances,
            Self::AtBats => line.at_bats,
            Self::Runs => line.runs,
            Self::Hits => line.hits,
            Self::Doubles => line.doubles,
            Self::Triples => line.triples,
            Self::HomeRuns => line.home_runs,
            Self::RunsBattedIn => line.runs_batted_in,
            Self::Walks => line.walks,
            Self::IntentionalWalks => line.intentional_walks,
            Self::Strikeouts => line.strikeouts,
            Self::HitByPitch => line.hit_by_pitch,
            Self::SacrificeHits => line.sacrifice_hits,
            Self::SacrificeFlies => line.sacrifice_flies,
            Self::Interference => line.interference,
            Self::ReachedOnError => line.reached_on_error,
            Self::FieldersChoices => line.fielders_choices,
            Self::StolenBases => line.stolen_bases,
            Self::CaughtStealing => line.caught_stealing,
            Self::GroundedIntoDoublePlays => line.grounded_into_double_plays,
            Self::LeftOnBase => line.left_on_base,
        }
    }
}

/// A pitcher's number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pitching {
    /// Innings pitched, in outs.
    Outs,
    /// Batters faced.
    BattersFaced,
    /// Hits allowed.
    Hits,
    /// Home runs allowed.
    HomeRuns,
    /// Runs charged.
    Runs,
    /// Earned runs.
    EarnedRuns,
    /// Bases on balls.
    Walks,
    /// Intentional bases on balls.
    IntentionalWalks,
    /// Strikeouts.
    Strikeouts,
    /// Batters hit.
    HitBatters,
    /// Wild pitches.
    WildPitches,
    /// Balks.
    Balks,
    /// Pitches thrown: a batter a line.
    Pitches,
    /// Of them balls.
    Balls,
    /// Of them strikes, balls in play included.
    Strikes,
}

impl Pitching {
    /// All of them.
    pub const ALL: [Self; 15] = [
        Self::Outs,
        Self::BattersFaced,
        Self::Hits,
        Self::HomeRuns,
        Self::Runs,
        Self::EarnedRuns,
        Self::Walks,
        Self::IntentionalWalks,
        Self::Strikeouts,
        Self::HitBatters,
        Self::WildPitches,
        Self::Balks,
        Self::Pitches,
        Self::Balls,
        Self::Strikes,
    ];

    /// What stands in this column of a line.
    pub const fn of(self, line: &PitchingLine) -> u32 {
        match self {
            Self::Outs => line.outs.0,
            Self::BattersFaced => line.batters_faced,
            Self::Hits => line.hits,
            Self::HomeRuns => line.home_runs,
            Self::Runs => line.runs,
            Self::EarnedRuns => line.earned_runs,
            Self::Walks => line.walks,
            Self::IntentionalWalks => line.intentional_walks,
            Self::Strikeouts => line.strikeouts,
            Self::HitBatters => line.hit_batters,
            Self::WildPitches => line.wild_pitches,
            Self::Balks => line.balks,
            Self::Pitches => line.pitches,
            Self::Balls => line.balls,
            Self::Strikes => line.strikes,
        }
    }
}

/// A catcher's number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Catching {
    /// Passed balls.
    PassedBalls,
    /// Bases stolen while catching.
    StolenBases,
    /// Runners caught stealing while catching.
    CaughtStealing,
}

impl Catching {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::PassedBalls, Self::StolenBases, Self::CaughtStealing];

    /// What stands in this column of a line.
    pub const fn of(self, line: &FieldingLine) -> u32 {
        match self {
            Self::PassedBalls => line.passed_balls,
            Self::StolenBases => line.stolen_bases_allowed,
            Self::CaughtStealing => line.runners_caught,
        }
    }
}
