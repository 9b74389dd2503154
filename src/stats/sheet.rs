//! The scoresheet: for each plate appearance the marks of the paper book, as data that pad and desk both draw.
//!
//! The marks are the trade's: 6-3, K, BB, F8, E6, SB. [`draw`] lays them out; it is the only place that knows how a
//! square of the sheet looks.

use crate::field::{Base, Half, Position, Side};
use crate::game::{Game, Moved, Phase, Play, RunnerKey, Thrown, TurnKind};
use crate::log::{Cause, EntryId, Start};
use crate::ruling::{Book, Credit, Judged};
use crate::team::PlayerId;

pub mod draw;
mod mark;
mod rows;

#[cfg(test)]
mod tests;

pub use mark::{Mark, Tag};
pub use rows::{Listed, Row, Totals};

/// One side's scoresheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// Which side bats on it.
    pub side: Side,
    /// Its name.
    pub team: String,
    /// Innings, with a further column where a side batted around.
    pub columns: Vec<Column>,
    /// Batting places, with all who held each.
    pub rows: Vec<Row>,
    /// One for each plate appearance, in order.
    pub cells: Vec<Cell>,
}

/// A column of the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Column {
    /// Inning, from 1.
    pub inning: u8,
    /// 1, or 2 and more where the side batted around.
    pub part: u8,
    /// Sums of the half-inning, in its last column only.
    pub sums: Option<Sums>,
}

/// Sums of a half-inning.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sums {
    /// Runs.
    pub runs: u16,
    /// Hits.
    pub hits: u16,
    /// Errors of the other side.
    pub errors: u16,
    /// Left on base; `None` while it goes on.
    pub left_on_base: Option<u8>,
    /// Pitches seen.
    pub pitches: u16,
}

/// One square of the sheet.
#[allow(clippy::struct_excessive_bools)] // each is a plain yes or no of the turn
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cell {
    /// Batting place, from 0.
    pub place: u8,
    /// Index of the column.
    pub column: usize,
    /// The entry that ended the turn; `None` while it goes on or if the third out cut it short.
    pub entry: Option<EntryId>,
    /// Who batted.
    pub batter: Option<PlayerId>,
    /// What it counts as.
    pub mark: Option<Mark>,
    /// Bases gained, in order.
    pub gained: Vec<Gained>,
    /// The out, if it ended in one.
    pub out: Option<OutMark>,
    /// The run, if it ended in one.
    pub run: Option<RunMark>,
    /// Runs batted in.
    pub runs_batted_in: u8,
    /// The pitches.
    pub pitches: Vec<Thrown>,
    /// Some were not seen.
    pub pitches_missed: bool,
    /// Another than the last one bats in this place.
    pub new_batter: bool,
    /// Another pitcher than in the turn before.
    pub new_pitcher: bool,
    /// The half-inning ended here.
    pub ends_half: bool,
}

/// Bases gained for one cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gained {
    /// The base reached.
    pub to: Base,
    /// By what; `None` where the mark says it.
    pub tag: Option<Tag>,
}

/// An out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OutMark {
    /// First, second or third of the half-inning.
    pub number: u8,
    /// The base at which it was made.
    pub at: Base,
    /// Who handled it.
    pub by: Vec<Position>,
    /// Caught stealing or picked off.
    pub tag: Option<Tag>,
}

/// A run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RunMark {
    /// Earned for the team; `None` while nobody can say.
    pub earned: Option<bool>,
}

impl Game {
    /// The scoresheet of the side at bat on it.
    pub fn sheet(&self, side: Side) -> Sheet {
        let book = Book::of(self);
        let mut writer = Writer::new(self, &book, side);
        for (play, judged) in book.plays(self).filter(|(p, _)| p.batting() == side) {
            writer.play(play, judged);
        }
        writer.finish()
    }
}

struct Writer<'a> {
    game: &'a Game,
    book: &'a Book,
    side: Side,
    cells: Vec<Cell>,
    columns: Vec<Column>,
    /// The cell of each runner on his way.
    runners: Vec<(RunnerKey, usize)>,
    pitches: Vec<Thrown>,
    half: Option<u8>,
    pitcher: Option<PlayerId>,
}

impl<'a> Writer<'a> {
    const fn new(game: &'a Game, book: &'a Book, side: Side) -> Self {
        Self {
            game,
            book,
            side,
            cells: Vec::new(),
            columns: Vec::new(),
            runners: Vec::new(),
            pitches: Vec::new(),
            half: None,
            pitcher: None,
        }
    }

    fn play(&mut self, play: &Play, judged: &Judged) {
        self.begin(play.before.inning);
        if let Some(thrown) = play.thrown {
            self.pitches.push(thrown);
            if let Some(sums) = self.sums() {
                sums.pitches += u16::from(thrown.is_thrown());
            }
        }
        if play.nullified {
            self.pitches.clear();
            return;
        }
        let own = play.turn.filter(|t| t.kind != TurnKind::EmptyPlace).map(|turn| {
            let at = self.open(play.before.inning, turn.place, turn.batter);
            let cell = &mut self.cells[at];
            cell.entry = Some(play.entry);
            cell.mark = judged.result.as_ref().map(|r| mark::of(play, judged, r.verdict));
            cell.runs_batted_in = judged.runs_batted_in() as u8;
            cell.pitches_missed = play.pitches_missed;
            at
        });
        let own = own.inspect(|at| self.note_pitcher(*at, play.before.pitcher));
        let mut outs = play.before.outs;
        for m in &play.moves {
            self.moved(play, judged, m, own, &mut outs);
        }
        if play.ends_half {
            if own.is_none() && !self.pitches.is_empty() {
                self.open(play.before.inning, play.before.place, play.before.batter);
            }
            if let Some(cell) = self.cells.last_mut() {
                cell.ends_half = true;
            }
        }
        if let Some(sums) = self.sums() {
            sums.runs += u16::from(play.runs());
            sums.hits += u16::from(judged.result.as_ref().is_some_and(|r| r.verdict.hit_bases().is_some()));
            sums.errors += judged.credited(Credit::Error).count() as u16;
        }
    }

    fn moved(&mut self, play: &Play, judged: &Judged, m: &Moved, own: Option<usize>, outs: &mut u8) {
        let at = match m.from {
            Start::Batter => own,
            _ => self.runners.iter().find(|(key, _)| *key == m.key).map(|(_, at)| *at),
        };
        if m.from == Start::Batter
            && let Some(at) = own
        {
            self.runners.push((m.key, at));
        }
        *outs += u8::from(m.out.is_some());
        let Some(cell) = at.and_then(|at| self.cells.get_mut(at)) else { return };
        for (i, leg) in m.legs.iter().enumerate() {
            let tag = if m.from == Start::Batter && i == 0 && play.batted.is_some() {
                None
            } else {
                Some(mark::tag(play, leg.cause))
            };
            let told = m.from == Start::Batter && leg.cause == Cause::Forced;
            cell.gained.push(Gained { to: leg.to, tag: tag.filter(|_| !told) });
        }
        if let Some(out) = &m.out {
            let by = if out.by.is_empty() { Vec::new() } else { out.by.clone() };
            let tag = judged.thefts.iter().find(|(who, _)| *who == m.runner).and_then(|(_, t)| mark::theft(t.verdict));
            cell.out = Some(OutMark { number: *outs, at: out.at, by, tag });
        }
        if m.scored {
            let charge = self.book.runs().iter().find(|c| c.key == m.key);
            cell.run = Some(RunMark { earned: charge.filter(|c| !c.provisional).map(|c| c.team_earned) });
        }
    }

    /// A half-inning begins, with the runners the rules place on base.
    fn begin(&mut self, inning: u8) {
        if self.half == Some(inning) {
            return;
        }
        self.half = Some(inning);
        self.pitches.clear();
        self.columns.push(Column { inning, part: 1, sums: Some(Sums::default()) });
        let half = self.game.halves().iter().find(|h| h.inning == inning && h.half.batting() == self.side);
        let placed: Vec<_> = half
            .iter()
            .flat_map(|h| h.placed.iter().zip(Base::STANDING))
            .filter_map(|(runner, base)| runner.map(|r| (r, base)))
            .collect();
        for (runner, base) in placed {
            let lineup = self.game.lineup(self.side);
            let place = lineup
                .and_then(|l| l.appearances().into_iter().find(|a| a.player == runner.player).and_then(|a| a.place))
                .unwrap_or(0);
            let at = self.open(inning, place, Some(runner.player));
            self.cells[at].mark = Some(Mark::Placed);
            self.cells[at].gained.push(Gained { to: base, tag: None });
            self.runners.push((runner.key, at));
        }
    }

    /// A new cell, in the first column of the inning in which its place is still free.
    fn open(&mut self, inning: u8, place: u8, batter: Option<PlayerId>) -> usize {
        let taken = |column: usize| self.cells.iter().any(|c| c.place == place && c.column == column);
        let free = self.columns.iter().enumerate().find(|(i, c)| c.inning == inning && !taken(*i)).map(|(i, _)| i);
        let column = free.unwrap_or_else(|| {
            let sums = self.columns.last_mut().and_then(|c| c.sums.take());
            let part = self.columns.last().filter(|c| c.inning == inning).map_or(1, |c| c.part + 1);
            self.columns.push(Column { inning, part, sums: sums.or_else(|| Some(Sums::default())) });
            self.columns.len() - 1
        });
        let before = self.cells.iter().rev().find(|c| c.place == place).and_then(|c| c.batter);
        self.cells.push(Cell {
            place,
            column,
            entry: None,
            batter,
            mark: None,
            gained: Vec::new(),
            out: None,
            run: None,
            runs_batted_in: 0,
            pitches: core::mem::take(&mut self.pitches),
            pitches_missed: false,
            new_batter: before.is_some() && before != batter,
            new_pitcher: false,
            ends_half: false,
        });
        self.cells.len() - 1
    }

    fn note_pitcher(&mut self, at: usize, pitcher: Option<PlayerId>) {
        self.cells[at].new_pitcher = self.pitcher.is_some() && self.pitcher != pitcher;
        self.pitcher = pitcher;
    }

    fn sums(&mut self) -> Option<&mut Sums> {
        self.columns.last_mut().and_then(|c| c.sums.as_mut())
    }

    fn finish(mut self) -> Sheet {
        let now = self.game.situation();
        if now.phase == Phase::Underway && now.batting() == self.side && !self.pitches.is_empty() {
            self.begin(now.inning);
            self.open(now.inning, now.place, now.batter);
        }
        for column in &mut self.columns {
            let half = self.game.halves().iter().find(|h| h.inning == column.inning && h.half.batting() == self.side);
            if let Some(sums) = &mut column.sums {
                sums.left_on_base = half.and_then(|h| h.left_on_base);
            }
        }
        Sheet {
            side: self.side,
            team: self.game.team_name(self.side).to_owned(),
            rows: rows::of(self.game, self.side),
            columns: self.columns,
            cells: self.cells,
        }
    }
}

impl Sheet {
    /// The cell of a place (from 0) in a column.
    pub fn cell(&self, place: u8, column: usize) -> Option<&Cell> {
        self.cells.iter().find(|c| c.place == place && c.column == column)
    }

    /// The half in which this side bats.
    pub const fn half(&self) -> Half {
        match self.side {
            Side::Visitors => Half::Top,
            Side::Home => Half::Bottom,
        }
    }
}
