//! The replay: a log in, the game as it stands after every entry out. Refuses what can't follow, and then nothing has
//! changed.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::code::Code;
use crate::field::{Base, Count, Half, Position, Side};
use crate::log::{Batted, Call, Entry, EntryId, Event, Heading, Judgment, Leg, Misplay, Out, Start};
use crate::team::{Lineup, Player, PlayerId};

mod apply;
mod correct;
mod dead;
mod flow;
mod mend;
mod moves;
mod people;
mod play;
mod refusal;
mod setup;
mod slot;
mod turn;

pub use mend::{Mend, MendKind};
pub use refusal::Refusal;
pub use slot::Slot;
pub use turn::{TurnEnd, TurnKind};

use turn::{FinishedTurn, Turn};

/// A runner on base.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OnBase {
    /// Who stands there.
    pub player: PlayerId,
    /// This time around the bases; a pinch runner keeps the key of the runner he runs for.
    pub key: RunnerKey,
    /// The pitcher when he reached base, before any passing on by fielder's choices (OBR 9.16(g)).
    pub pitcher: Option<PlayerId>,
    /// Placed there by rule, not by play.
    pub placed: bool,
}

/// One time around the bases, numbered through the game.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct RunnerKey(pub u32);

/// Whether play is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// Before the first pitch.
    Before,
    /// Play is on.
    Underway,
    /// Delayed.
    Delayed,
    /// To be continued another day.
    Suspended,
    /// Over.
    Over(Ending),
}

/// How a game ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// All innings played, or the winning run in.
    Played,
    /// By the lead the code sets.
    Mercy,
    /// Declared final by the scorer before all innings were played (time limit).
    Declared,
    /// Called by the umpire.
    Called,
    /// Forfeited to this side.
    Forfeited(Side),
}

/// The game at one moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Situation {
    /// Whether play is on.
    pub phase: Phase,
    /// Inning, from 1.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// Outs in this half, 0 to 2.
    pub outs: u8,
    /// Count on the batter.
    pub count: Count,
    /// Runners on first, second and third.
    pub bases: [Option<OnBase>; 3],
    /// Runs: visitors, home.
    pub score: [u16; 2],
    /// At the plate; `None` before the game, or if the place has no player.
    pub batter: Option<PlayerId>,
    /// Batting place of the batter, from 0.
    pub place: u8,
    /// On the mound; `None` before the game or where no player pitches.
    pub pitcher: Option<PlayerId>,
}

impl Situation {
    /// The side at bat.
    pub const fn batting(&self) -> Side {
        self.half.batting()
    }

    /// The side in the field.
    pub const fn fielding(&self) -> Side {
        self.half.fielding()
    }

    /// The runner on a base; `None` for home.
    pub fn on(&self, base: Base) -> Option<OnBase> {
        self.bases.get(base as usize).copied().flatten()
    }

    /// The runner who started from there; `None` for the batter.
    pub fn at(&self, start: Start) -> Option<OnBase> {
        start.base().and_then(|base| self.on(base))
    }

    /// Runners on base.
    pub fn runners(&self) -> impl DoubleEndedIterator<Item = (Base, OnBase)> + '_ {
        Base::STANDING.into_iter().filter_map(|base| self.on(base).map(|runner| (base, runner)))
    }

    /// True if `base` must be given up when the batter becomes a runner.
    pub fn is_forced(&self, start: Start) -> bool {
        (0..start.number()).all(|i| i == 0 || self.bases[usize::from(i) - 1].is_some())
    }
}

/// What came of a thrown ball.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Thrown {
    /// Not put in play.
    Called(Call),
    /// Put in play.
    InPlay,
}

impl Thrown {
    /// A pitch was thrown.
    pub const fn is_thrown(self) -> bool {
        match self {
            Self::Called(call) => call.is_thrown(),
            Self::InPlay => true,
        }
    }

    /// Goes down as a strike in a pitcher's tally; a ball in play does.
    pub const fn is_strike(self) -> bool {
        match self {
            Self::Called(call) => call.is_strike() && call.is_thrown(),
            Self::InPlay => true,
        }
    }
}

/// Who fields where, at the moment of a play.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Defence([Option<PlayerId>; 11]);

impl Defence {
    fn of(lineup: &Lineup) -> Self {
        let mut at = [None; 11];
        for a in lineup.everyone() {
            if let Some(position) = a.post.position() {
                at[usize::from(position.number())] = Some(a.player);
            }
        }
        Self(at)
    }

    /// The player at `position`.
    pub fn at(&self, position: Position) -> Option<PlayerId> {
        self.0[usize::from(position.number())]
    }

    /// Everyone in the field, by position.
    pub fn players(&self) -> impl Iterator<Item = (Position, PlayerId)> + '_ {
        Position::ALL.into_iter().filter_map(|p| self.at(p).map(|player| (p, player)))
    }
}

/// One runner's part in a play, as it counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Moved {
    /// Who ran.
    pub runner: PlayerId,
    /// This time around the bases.
    pub key: RunnerKey,
    /// From where.
    pub from: Start,
    /// Safe legs.
    pub legs: Vec<Leg>,
    /// The out, if it ended in one.
    pub out: Option<Out>,
    /// He scored and the run counts.
    pub scored: bool,
}

impl Moved {
    /// The base reached last, if any leg was safe.
    pub fn reached(&self) -> Option<Base> {
        self.legs.last().map(|leg| leg.to)
    }
}

/// One recorded play: everything the rulings need to know of it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[allow(clippy::struct_excessive_bools)] // each is a plain yes or no of the play
pub struct Play {
    /// The entry that recorded it.
    pub entry: EntryId,
    /// The moment before.
    pub before: Situation,
    /// The ball thrown, if one was.
    pub thrown: Option<Thrown>,
    /// The batted ball, if there was one.
    pub batted: Option<Batted>,
    /// Who moved, as it counts, in the order recorded.
    pub moves: Vec<Moved>,
    /// Errors.
    pub misplays: Vec<Misplay>,
    /// The plate appearance that ended with it.
    pub turn: Option<TurnEnd>,
    /// The fielders.
    pub defence: Arc<Defence>,
    /// The ball was still alive from the play before.
    pub continues: bool,
    /// The half-inning ended with it.
    pub ends_half: bool,
    /// The game ended with it.
    pub ends_game: bool,
    /// Undone by an appeal: the pitch counts, nothing else does.
    pub nullified: bool,
    /// Pitches of this turn were missed.
    pub pitches_missed: bool,
}

impl Play {
    /// Outs made, an empty place's among them.
    pub fn outs(&self) -> u8 {
        if self.nullified {
            return 0;
        }
        let by_rule = self.turn.is_some_and(|t| t.kind == TurnKind::EmptyPlace);
        self.moves.iter().filter(|m| m.out.is_some()).count() as u8 + u8::from(by_rule)
    }

    /// Runs that count.
    pub fn runs(&self) -> u8 {
        if self.nullified { 0 } else { self.moves.iter().filter(|m| m.scored).count() as u8 }
    }

    /// The batter's part, if he ran or was out.
    pub fn batter_move(&self) -> Option<&Moved> {
        self.moves.iter().find(|m| m.from == Start::Batter)
    }

    /// Side at bat.
    pub const fn batting(&self) -> Side {
        self.before.batting()
    }
}

/// One entry that counts, with the game as it stood after it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// The entry whose place in the game this is.
    pub entry: EntryId,
    /// Index in the log of the entry that says what happened: another one than `entry` if it was replaced.
    source: usize,
    /// The game after it.
    pub after: Situation,
    /// The play, if it was one.
    pub play: Option<Box<Play>>,
    /// Why it no longer fits, after a correction earlier in the log. Such an entry has no effect.
    pub conflict: Option<Refusal>,
}

/// A half-inning, begun or over.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HalfInning {
    /// Inning, from 1.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// Index of its first step.
    pub first_step: usize,
    /// Runners placed by rule at its start.
    pub placed: [Option<OnBase>; 3],
    /// Runners left on base when it ended; `None` while it goes on.
    pub left_on_base: Option<u8>,
}

/// A game: its log, and what the log says.
#[derive(Clone, Debug)]
pub struct Game {
    log: Vec<Entry>,
    steps: Vec<Step>,
    code: Code,
    heading: Heading,
    teams: [String; 2],
    roster: BTreeMap<PlayerId, (Side, Player)>,
    lineups: [Option<Lineup>; 2],
    defence: [Arc<Defence>; 2],
    situation: Situation,
    next_place: [u8; 2],
    turn: Turn,
    finished_turn: Option<FinishedTurn>,
    /// The fielders of this half have been noted as having played their posts.
    field_taken: bool,
    halves: Vec<HalfInning>,
    next_key: u32,
    judgments: Vec<(EntryId, Judgment)>,
}

impl Default for Game {
    fn default() -> Self {
        Self::new()
    }
}

impl Game {
    /// A game of which nothing is known yet.
    pub fn new() -> Self {
        Self {
            log: Vec::new(),
            steps: Vec::new(),
            code: Code::default(),
            heading: Heading::default(),
            teams: [String::new(), String::new()],
            roster: BTreeMap::new(),
            lineups: [None, None],
            defence: [Arc::default(), Arc::default()],
            situation: Situation {
                phase: Phase::Before,
                inning: 1,
                half: Half::Top,
                outs: 0,
                count: Count::default(),
                bases: [None; 3],
                score: [0; 2],
                batter: None,
                place: 0,
                pitcher: None,
            },
            next_place: [0; 2],
            turn: Turn::default(),
            finished_turn: None,
            field_taken: false,
            halves: Vec::new(),
            next_key: 0,
            judgments: Vec::new(),
        }
    }

    /// Replays a whole log. Nothing is dropped: entries that don't fit stay in the log and are listed by
    /// [`Game::conflicts`]. Ids that don't grow are such a case too.
    pub fn replay(log: impl IntoIterator<Item = Entry>) -> Self {
        let mut game = Self::new();
        game.log = log.into_iter().collect();
        game.rebuild();
        game
    }

    /// Records one more entry, or says why it can't follow; then the game is as it was.
    pub fn record(&mut self, entry: Entry) -> Result<(), Refusal> {
        if let Some(last) = self.log.last()
            && entry.id <= last.id
        {
            return Err(Refusal::OutOfSequence { id: entry.id, last: last.id });
        }
        if entry.event.is_correction() {
            self.may_correct(&entry.event)?;
            self.log.push(entry);
            self.rebuild();
            return Ok(());
        }
        let play = self.apply(entry.id, &entry.event)?;
        self.steps.push(Step { entry: entry.id, source: self.log.len(), after: self.situation, play, conflict: None });
        self.log.push(entry);
        Ok(())
    }

    /// Everything recorded, in order.
    pub fn log(&self) -> &[Entry] {
        &self.log
    }

    /// Everything recorded, given back.
    pub fn into_log(self) -> Vec<Entry> {
        self.log
    }

    /// The id the next entry may have.
    pub fn next_id(&self) -> EntryId {
        EntryId(self.log.last().map_or(1, |e| e.id.0.saturating_add(1)))
    }

    /// The entries that count, in the order of the game, each with the situation after it.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// What a step says happened.
    pub fn event(&self, step: &Step) -> &Event {
        match &self.log[step.source].event {
            Event::Replace { event, .. } | Event::Insert { event, .. } => event,
            event => event,
        }
    }

    /// When a step was tapped, in milliseconds since 1970, if its entry says so.
    pub fn recorded_at(&self, step: &Step) -> Option<u64> {
        self.log[step.source].at
    }

    /// The plays, in the order of the game.
    pub fn plays(&self) -> impl DoubleEndedIterator<Item = &Play> {
        self.steps.iter().filter_map(|s| s.play.as_deref())
    }

    /// The play of an entry.
    pub fn play(&self, entry: EntryId) -> Option<&Play> {
        self.plays().find(|p| p.entry == entry)
    }

    /// Entries that no longer fit after a correction, each with the reason.
    pub fn conflicts(&self) -> impl Iterator<Item = (EntryId, Refusal)> + '_ {
        self.steps.iter().filter_map(|s| s.conflict.map(|c| (s.entry, c)))
    }

    /// The game as it stands.
    pub fn situation(&self) -> &Situation {
        &self.situation
    }

    /// The half-innings, the last of them perhaps still going on.
    pub fn halves(&self) -> &[HalfInning] {
        &self.halves
    }

    /// The code of play.
    pub fn code(&self) -> &Code {
        &self.code
    }

    /// Date, place and competition.
    pub fn heading(&self) -> &Heading {
        &self.heading
    }

    /// A side's name; "Visitors" or "Home" until it has one.
    pub fn team_name(&self, side: Side) -> &str {
        match self.teams[side.index()].as_str() {
            "" if side == Side::Visitors => "Visitors",
            "" => "Home",
            name => name,
        }
    }

    /// A side's lineup as it stands, once it has a card.
    pub fn lineup(&self, side: Side) -> Option<&Lineup> {
        self.lineups[side.index()].as_ref()
    }

    /// A side's roster.
    pub fn roster(&self, side: Side) -> impl Iterator<Item = &Player> {
        self.roster.values().filter(move |(s, _)| *s == side).map(|(_, player)| player)
    }

    /// A player and their side.
    pub fn player(&self, id: PlayerId) -> Option<(Side, &Player)> {
        self.roster.get(&id).map(|(side, player)| (*side, player))
    }

    /// What to print for a player: name, shirt number, or the batting place ("Batter 4"), as far as known.
    pub fn label(&self, id: PlayerId) -> String {
        if let Some(label) = self.roster.get(&id).and_then(|(_, p)| p.label()) {
            return label;
        }
        for lineup in self.lineups.iter().flatten() {
            if let Some(a) = lineup.appearances().into_iter().find(|a| a.player == id) {
                return match a.place {
                    Some(place) => format!("Batter {}", place + 1),
                    None => "Pitcher".into(),
                };
            }
        }
        format!("Player {}", id.0)
    }

    /// The batter after the present one.
    pub fn on_deck(&self) -> Option<PlayerId> {
        let lineup = self.lineup(self.situation.batting())?;
        let places = lineup.places() as u8;
        lineup.batter((self.situation.place + 1) % places.max(1))
    }

    /// An id no player of this log has yet.
    pub fn next_player_id(&self) -> PlayerId {
        let after_last = self.roster.keys().next_back().map_or(Some(1), |id| id.0.checked_add(1));
        // A file may have used the last number there is; then the first one left free.
        let free = || (1..).zip(self.roster.keys()).find(|(n, id)| *n != id.0).map_or(u32::MAX, |(n, _)| n);
        PlayerId(after_last.unwrap_or_else(free))
    }

    /// The scorer's judgments in the order given; where two are on one matter the later holds.
    pub fn judgments(&self) -> impl DoubleEndedIterator<Item = &Judgment> {
        self.judgments.iter().map(|(_, j)| j)
    }

    /// Runners on base in a half that still goes on, and those left in all halves that are over.
    pub fn left_on_base(&self, side: Side) -> u32 {
        self.halves
            .iter()
            .filter(|h| h.half.batting() == side)
            .map(|h| u32::from(h.left_on_base.unwrap_or_else(|| self.situation.runners().count() as u8)))
            .sum()
    }
}
