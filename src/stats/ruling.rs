//! The official scorer's rulings, one file a judgment; each verdict with its reason and the rule's number.
//!
//! Section numbers are those of the Official Baseball Rules, 2024 edition, chapter 9, from memory.

use crate::field::{Position, Side};
use crate::game::{Game, Play};
use crate::log::{EntryId, Judgment};
use crate::team::PlayerId;

mod batter;
mod because;
mod credit;
pub mod decision;
pub mod earned;
pub mod question;
mod run;
mod theft;

pub use batter::BatterResult;
pub use because::Because;
pub use credit::Credit;
pub use theft::{GotAway, Theft};

/// What was decided, why, and by which rule.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ruling<V> {
    /// The decision.
    pub verdict: V,
    /// The reason, as data: [`Because`] says it in English.
    pub because: Because,
    /// Section of the Official Baseball Rules.
    pub rule: &'static str,
    /// The entry of the play it rests on.
    pub entry: EntryId,
}

/// All rulings on one play.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Judged {
    /// What the plate appearance that ended counts as.
    pub result: Option<Ruling<BatterResult>>,
    /// For each run: whether it was batted in.
    pub runs: Vec<(PlayerId, Ruling<bool>)>,
    /// The batter grounded into a double play.
    pub grounded_into_double_play: Option<Ruling<()>>,
    /// Stolen bases, runners caught stealing or picked off.
    pub thefts: Vec<(PlayerId, Ruling<Theft>)>,
    /// Putouts, assists, errors and double plays, by position.
    pub credits: Vec<(Position, Ruling<Credit>)>,
    /// A wild pitch or a passed ball, never both (OBR 9.13).
    pub got_away: Option<Ruling<GotAway>>,
    /// A balk.
    pub balk: Option<Ruling<()>>,
}

impl Judged {
    /// Runs batted in.
    pub fn runs_batted_in(&self) -> u32 {
        self.runs.iter().filter(|(_, r)| r.verdict).count() as u32
    }

    /// Fielders credited or charged so, by position.
    pub fn credited(&self, credit: Credit) -> impl Iterator<Item = Position> + '_ {
        self.credits.iter().filter(move |(_, ruling)| ruling.verdict == credit).map(|(position, _)| *position)
    }

    /// The pitch got away like that.
    pub fn is(&self, got_away: GotAway) -> bool {
        self.got_away.as_ref().is_some_and(|ruling| ruling.verdict == got_away)
    }
}

/// Every ruling of a game, play by play.
#[derive(Clone, Debug, Default)]
pub struct Book {
    plays: Vec<Judged>,
    runs: Vec<earned::RunCharge>,
}

impl Book {
    /// Rules on everything recorded so far.
    pub fn of(game: &Game) -> Self {
        let judgments = Judgments::of(game);
        let plays: Vec<&Play> = game.plays().collect();
        let mut judged: Vec<Judged> = plays.iter().map(|play| judge(play, &judgments)).collect();
        credit::multiple_plays(&plays, &mut judged);
        Self { plays: judged, runs: earned::runs(game) }
    }

    /// Each play with its rulings, in the order of the game.
    pub fn plays<'a>(&'a self, game: &'a Game) -> impl Iterator<Item = (&'a Play, &'a Judged)> {
        game.plays().zip(&self.plays)
    }

    /// The runs, and who answers for each.
    pub fn runs(&self) -> &[earned::RunCharge] {
        &self.runs
    }

    /// Runs earned against a side, for the team (OBR 9.16(i) lets pitchers' sums exceed it).
    pub fn team_earned_runs(&self, fielding: Side) -> u32 {
        self.runs.iter().filter(|r| r.half.fielding() == fielding && r.team_earned).count() as u32
    }
}

/// The scorer's judgments by play.
pub(crate) struct Judgments<'a>(Vec<&'a Judgment>);

impl<'a> Judgments<'a> {
    pub fn of(game: &'a Game) -> Self {
        Self(game.judgments().collect())
    }

    /// The latest answer that `pick` accepts, of those about this play.
    pub fn find<T>(&self, on: EntryId, pick: impl Fn(&'a Judgment) -> Option<T>) -> Option<T> {
        self.0.iter().rev().filter(|j| j.on() == Some(on)).find_map(|j| pick(j))
    }
}

fn judge(play: &Play, judgments: &Judgments) -> Judged {
    if play.turn.is_none() && play.moves.is_empty() && play.misplays.is_empty() {
        return Judged::default();
    }
    let result = batter::rule(play, judgments);
    let grounded_into_double_play = batter::grounded_into_double_play(play, result.as_ref().map(|r| r.verdict));
    let double_play = grounded_into_double_play.is_some();
    let runs = run::rule(play, result.as_ref().map(|r| r.verdict), double_play, judgments);
    Judged {
        runs,
        grounded_into_double_play,
        thefts: theft::rule(play, judgments),
        credits: credit::rule(play, result.as_ref()),
        got_away: theft::got_away(play, judgments),
        balk: theft::balk(play),
        result,
    }
}
