//! Who pitched when, and what the score did meanwhile: the facts the decisions rest on.

use crate::field::{Outs, Side};
use crate::game::{Game, Moved, Play, TurnKind};
use crate::log::{Cause, EntryId, Start};
use crate::ruling::earned::RunCharge;
use crate::team::PlayerId;

/// One pitcher from his coming in to his going out.
#[derive(Clone, Debug)]
pub(super) struct Stint {
    pub pitcher: PlayerId,
    /// Inning of his entry.
    pub inning: u8,
    /// Outs in that inning then.
    pub outs_before: u8,
    /// Runs by which his side led then; negative when behind.
    pub lead: i32,
    /// Runners on base then.
    pub on_base: u8,
    /// Runs of the other side then.
    pub runs_before: u16,
    /// Outs made while he pitched.
    pub outs: Outs,
    /// Batters he let reach base, errors apart.
    pub baserunners: u32,
    /// His side led, and no longer did, while he pitched.
    pub lost_lead: bool,
}

impl Stint {
    fn entering(pitcher: PlayerId, play: &Play) -> Self {
        let (side, score) = (play.before.fielding(), play.before.score);
        let runs_before = score[side.other().index()];
        Self {
            pitcher,
            inning: play.before.inning,
            outs_before: play.before.outs,
            lead: i32::from(score[side.index()]) - i32::from(runs_before),
            on_base: play.before.runners().count() as u8,
            runs_before,
            outs: Outs::default(),
            baserunners: 0,
            lost_lead: false,
        }
    }

    /// The tying run is on base, at bat or on deck (OBR 9.19(d)(2)).
    pub fn tying_run_is_near(&self) -> bool {
        self.lead > 0 && self.lead <= i32::from(self.on_base) + 2
    }

    /// A lead of three or fewer, or the tying run near: what custom calls a save situation.
    pub fn is_save_situation(&self) -> bool {
        (1..=3).contains(&self.lead) || self.tying_run_is_near()
    }
}

/// The run that put a side ahead for good, as things stand.
#[derive(Clone, Copy, Debug)]
pub(super) struct Lead {
    pub side: Side,
    pub entry: EntryId,
    /// Index of the run among the charges.
    pub run: usize,
    /// The side's last pitcher before it: an index into its stints; `None` if it has not been in the field yet.
    pub of_record: Option<usize>,
}

/// The pitching of a game.
#[derive(Debug, Default)]
pub(super) struct Record {
    pub stints: [Vec<Stint>; 2],
    pub lead: Option<Lead>,
    /// For each run, by its place among the charges: the stint in which it scored.
    pub scored_on: Vec<Option<usize>>,
}

impl Record {
    pub fn of(game: &Game, charges: &[RunCharge]) -> Self {
        let mut record = Self::default();
        let mut run = 0;
        for play in game.plays() {
            let fielding = play.before.fielding();
            let stints = &mut record.stints[fielding.index()];
            if let Some(pitcher) = play.before.pitcher
                && stints.last().is_none_or(|s| s.pitcher != pitcher)
            {
                stints.push(Stint::entering(pitcher, play));
            }
            if play.nullified {
                continue;
            }
            if let Some(stint) = stints.last_mut() {
                stint.outs += Outs(u32::from(play.outs()));
                stint.baserunners += u32::from(play.batter_move().is_some_and(|m| reached_against(play, m)));
            }
            let mut score = play.before.score;
            while charges.get(run).is_some_and(|c| c.entry == play.entry) {
                record.score(fielding.other(), &mut score, play.entry, run);
                run += 1;
            }
        }
        record
    }

    fn score(&mut self, batting: Side, score: &mut [u16; 2], entry: EntryId, run: usize) {
        score[batting.index()] += 1;
        let (ours, theirs) = (score[batting.index()], score[batting.other().index()]);
        let stints = &mut self.stints[batting.other().index()];
        self.scored_on.push(stints.len().checked_sub(1));
        if ours == theirs {
            self.lead = None;
            if let Some(stint) = stints.last_mut() {
                stint.lost_lead = true;
            }
        } else if ours == theirs + 1 {
            let of_record = self.stints[batting.index()].len().checked_sub(1);
            self.lead = Some(Lead { side: batting, entry, run, of_record });
        }
    }

    pub fn stints(&self, side: Side) -> &[Stint] {
        &self.stints[side.index()]
    }

    /// Outs made while this pitcher pitched, over all his stints.
    pub fn outs_of(&self, side: Side, pitcher: PlayerId) -> Outs {
        self.stints(side).iter().filter(|s| s.pitcher == pitcher).map(|s| s.outs).sum()
    }

    /// The side's pitchers, each once, in order of appearance.
    pub fn pitchers(&self, side: Side) -> Vec<PlayerId> {
        let mut pitchers = Vec::new();
        for stint in self.stints(side) {
            if !pitchers.contains(&stint.pitcher) {
                pitchers.push(stint.pitcher);
            }
        }
        pitchers
    }
}

/// The batter reached base, and not by an error or interference.
fn reached_against(play: &Play, m: &Moved) -> bool {
    let interference = play.turn.is_some_and(|t| t.kind == TurnKind::CatcherInterference);
    m.from == Start::Batter
        && !interference
        && m.legs
            .first()
            .is_some_and(|leg| !matches!(leg.cause, Cause::Error(_) | Cause::PassedBall | Cause::Obstruction))
}
