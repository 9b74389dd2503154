//! The game told play by play, in sentences that are data: [`sentences`] puts them in the words of a language. Each line knows its entry, its pitches and the rulings on it.

use crate::field::{Base, Count, Half, Position, Side};
use crate::game::{Ending, Game, Phase, Play, Refusal, Situation, Step, Thrown};
use crate::log::{Attempt, Cause, EntryId, Event, How, Judgment, MisplayKind, Status, Trajectory};
use crate::ruling::decision::Why;
use crate::ruling::{BatterResult, Because, Book, Credit, Judged, Theft, earned};
use crate::team::{Change, PlayerId, Role};

pub mod compare;
mod reasons;
pub mod sentences;
pub mod story;
mod tell;
pub mod why;

pub(crate) use tell::whole_chain;

#[cfg(test)]
mod tests;

/// The game so far, half-inning by half-inning.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Account {
    /// What was noted before the game began: of what kind the balls are, what the umpire allowed.
    pub before: Vec<Line>,
    /// The halves, first to last.
    pub halves: Vec<HalfAccount>,
}

/// One half-inning.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HalfAccount {
    /// Inning, from 1.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// What happened, first to last.
    pub lines: Vec<Line>,
    /// Runs.
    pub runs: u16,
    /// Hits.
    pub hits: u16,
    /// Errors of the side in the field.
    pub errors: u16,
    /// Runners left; `None` while it goes on.
    pub left_on_base: Option<u8>,
}

/// One thing that happened: a plate appearance, a play on the bases, a change, a remark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// The entry to strike out, amend or ask about.
    pub entry: EntryId,
    /// What happened, in order.
    pub told: Vec<Told>,
    /// Whose turn at the plate ended.
    pub batter: Option<PlayerId>,
    /// The pitches of that turn, this one included.
    pub pitches: Vec<(EntryId, Thrown)>,
    /// Some of them were not seen.
    pub pitches_missed: bool,
    /// Outs after it, 0 to 3.
    pub outs: u8,
    /// Outs made on it.
    pub outs_made: u8,
    /// Runs on it.
    pub runs: u8,
    /// Score after it: visitors, home.
    pub score: [u16; 2],
    /// The rulings on it.
    pub reasons: Vec<Reason>,
    /// It no longer fits, after a correction before it, and counts for nothing.
    pub conflict: Option<Refusal>,
}

/// A batted ball, as far as a sentence tells of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ball {
    /// How it came off the bat.
    pub trajectory: Trajectory,
    /// The fielder it went to.
    pub toward: Option<Position>,
    /// Caught in foul territory.
    pub foul: bool,
    /// Over the fence.
    pub left_park: bool,
    /// Infield fly.
    pub infield_fly: bool,
}

/// One sentence, or a part of one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Told {
    /// A turn at the plate ended without a batted ball.
    AtPlate {
        /// Who.
        batter: PlayerId,
        /// How.
        result: BatterResult,
    },
    /// A turn ended with a batted ball.
    Batted {
        /// Who.
        batter: PlayerId,
        /// As what it counts.
        result: BatterResult,
        /// The ball.
        ball: Ball,
        /// How the batter was put out, if he was before reaching a base.
        how: Option<How>,
        /// Who handled it for that out, or for the whole double play.
        by: Vec<Position>,
        /// He grounded into a double play.
        double_play: bool,
        /// The kind of the error on which he reached.
        misplay: Option<MisplayKind>,
    },
    /// A runner, or the batter beyond his first base, gained bases.
    Gains {
        /// Who.
        runner: PlayerId,
        /// To where; home is a run.
        to: Base,
        /// By what.
        cause: Cause,
        /// Whose error, if it was one.
        error: Option<(Position, MisplayKind)>,
    },
    /// A runner was put out.
    OutOnBases {
        /// Who.
        runner: PlayerId,
        /// At which base.
        at: Base,
        /// How.
        how: How,
        /// Who handled it.
        by: Vec<Position>,
        /// What he was about.
        attempt: Option<Attempt>,
    },
    /// An error that no base gained tells of.
    Erred {
        /// Who, if known.
        fielder: Option<PlayerId>,
        /// Where.
        position: Position,
        /// What kind.
        kind: MisplayKind,
    },
    /// The play made two or three outs.
    MultiplePlay {
        /// How many.
        outs: u8,
    },
    /// Somebody was put out for batting out of turn.
    OutOfTurn {
        /// Who.
        batter: PlayerId,
    },
    /// An empty place in the order was an out.
    EmptyPlace {
        /// Its place, from 1.
        place: u8,
    },
    /// It was undone by an appeal.
    Undone,
    /// A player came in for another.
    Substituted {
        /// Side.
        side: Side,
        /// Who left or is run for.
        outgoing: PlayerId,
        /// Who came in.
        incoming: PlayerId,
        /// For what.
        role: Role,
    },
    /// Any other change of players or posts.
    Changed {
        /// Side.
        side: Side,
        /// What.
        change: Change,
    },
    /// Somebody is at the plate out of turn.
    BatterUp {
        /// Who.
        player: PlayerId,
    },
    /// The defence appealed, and the proper batter took over the count.
    Appealed,
    /// The umpire gave the count.
    CountSet(Count),
    /// A runner was placed by rule.
    Placed {
        /// Who.
        player: PlayerId,
        /// Where.
        base: Base,
    },
    /// The half ended before its outs.
    HalfEnded {
        /// Why.
        why: String,
    },
    /// Delay, resumption, end.
    State(Status),
    /// The game is over.
    Over(Ending),
    /// A protest.
    Protest {
        /// In the scorer's words.
        text: String,
    },
    /// A remark.
    Note {
        /// In the scorer's words.
        text: String,
    },
    /// The scorer judged an earlier play.
    Judged(Judgment),
    /// An entry that has no effect any more.
    NoLongerFits {
        /// What it was about, as its event's kind.
        was: Was,
    },
}

/// The kind of an entry, for one that can't be told as a play.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Was {
    /// A pitch or a play.
    Play,
    /// A change of players.
    Change,
    /// A judgment.
    Judgment,
    /// Anything else.
    Other,
}

/// What a ruling was about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ruled {
    /// What the plate appearance counts as.
    Result {
        /// Whose.
        batter: PlayerId,
        /// As what.
        result: BatterResult,
    },
    /// A run, batted in or not.
    Run {
        /// Who scored.
        runner: PlayerId,
        /// Who was at bat.
        batter: Option<PlayerId>,
        /// It was batted in.
        batted_in: bool,
    },
    /// A run, earned or not.
    Earned {
        /// Who scored.
        runner: PlayerId,
        /// Who answers for it.
        pitcher: Option<PlayerId>,
        /// Earned against him.
        earned: bool,
        /// Earned against the team.
        team_earned: bool,
        /// The half still goes on.
        provisional: bool,
    },
    /// A stolen base, a runner caught or picked off.
    Theft {
        /// Who ran.
        runner: PlayerId,
        /// What it counts as.
        theft: Theft,
    },
    /// A fielder's credit or charge.
    Fielding {
        /// Who.
        fielder: Option<PlayerId>,
        /// Where.
        position: Position,
        /// What.
        credit: Credit,
    },
    /// The pitch got away: wild pitch (true) or passed ball.
    GotAway {
        /// A wild pitch.
        wild: bool,
        /// Charged to.
        player: Option<PlayerId>,
    },
    /// A balk.
    Balk {
        /// Charged to.
        pitcher: Option<PlayerId>,
    },
    /// He grounded into a double play.
    GroundedIntoDoublePlay {
        /// Who.
        batter: PlayerId,
    },
    /// Outs made while a player was at a position: on the mound they are his innings.
    Outs {
        /// Who.
        player: PlayerId,
        /// Where.
        position: Position,
        /// How many.
        outs: u8,
    },
    /// The pitches of a turn at the plate, as far as one pitcher threw them.
    Pitches {
        /// Who threw.
        pitcher: PlayerId,
        /// To whom.
        batter: Option<PlayerId>,
        /// Balls.
        balls: u32,
        /// Strikes, balls in play among them.
        strikes: u32,
    },
    /// Runners left on base, by a batter or by the side.
    LeftOnBase {
        /// At whose out; `None` for the side's whole half.
        batter: Option<PlayerId>,
        /// How many.
        runners: u8,
    },
    /// A pitcher's decision.
    Decision {
        /// Whose.
        pitcher: PlayerId,
        /// Which.
        credit: PitcherCredit,
    },
}

/// A decision, or a credit like one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PitcherCredit {
    /// The win.
    Win,
    /// The loss.
    Loss,
    /// The save.
    Save,
    /// A shutout.
    Shutout,
    /// A complete game.
    CompleteGame,
    /// A hold: custom.
    Hold,
    /// A blown save: custom.
    BlownSave,
}

/// Why it was ruled so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Grounds {
    /// The reason of a ruling on one play.
    Ruling(Because),
    /// Why a run is earned or not, and why that pitcher answers for it.
    Run {
        /// For the pitcher.
        pitcher: earned::Reason,
        /// For the team, where that differs.
        team: Option<earned::Reason>,
        /// Why this pitcher.
        answers: earned::Answers,
    },
    /// Why a pitcher has the decision.
    Decision(Why),
}

/// A ruling with its reason and its rule.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reason {
    /// What was ruled.
    pub ruled: Ruled,
    /// Why.
    pub because: Grounds,
    /// Other plays it rests on.
    pub rests_on: Vec<EntryId>,
    /// Section of the Official Baseball Rules; "custom" where they have none.
    pub rule: &'static str,
    /// The entry of the play it rests on.
    pub entry: EntryId,
}

impl Account {
    /// Tells the game as it stands.
    pub fn of(game: &Game) -> Self {
        let book = Book::of(game);
        let mut teller = Teller { game, account: Self::default(), pitches: Vec::new() };
        let mut plays = book.plays(game);
        let mut before = None;
        for step in game.steps() {
            let judged = step.play.as_ref().and_then(|_| plays.next());
            teller.step(step, before, judged, &book);
            before = Some(step.after);
        }
        let mut account = teller.account;
        for told in &mut account.halves {
            let half = game.halves().iter().find(|h| h.inning == told.inning && h.half == told.half);
            told.left_on_base = half.and_then(|h| h.left_on_base);
        }
        account
    }

    /// The line of an entry, or the line whose turn that pitch belongs to.
    pub fn line(&self, entry: EntryId) -> Option<&Line> {
        let lines = || self.before.iter().chain(self.halves.iter().flat_map(|h| &h.lines));
        lines()
            .find(|line| line.entry == entry)
            .or_else(|| lines().find(|line| line.pitches.iter().any(|(pitch, _)| *pitch == entry)))
    }
}

struct Teller<'a> {
    game: &'a Game,
    account: Account,
    pitches: Vec<(EntryId, Thrown)>,
}

impl Teller<'_> {
    fn step(&mut self, step: &Step, before: Option<Situation>, judged: Option<(&Play, &Judged)>, book: &Book) {
        let event = self.game.event(step);
        let began = before.is_some_and(|b| b.phase != Phase::Before);
        if let Some(conflict) = step.conflict {
            let told = vec![Told::NoLongerFits { was: tell::kind(event) }];
            let line = Line { conflict: Some(conflict), ..Self::plain(step, told) };
            return self.push(line, before.unwrap_or(step.after));
        }
        let Some((play, judged)) = judged else {
            let Some(told) = tell::event(event) else { return };
            let noted = matches!(told, Told::Note { .. });
            let mut line = Self::plain(step, vec![told]);
            if began {
                Self::note_end(step, before, &mut line);
                self.push(line, before.unwrap_or(step.after));
            } else if noted {
                // All else before the game begins is the Card's to show.
                self.account.before.push(line);
            }
            return;
        };
        if let Some(thrown) = play.thrown {
            self.pitches.push((step.entry, thrown));
        }
        let told = tell::play(play, judged);
        if told.is_empty() {
            return;
        }
        let mut line = Self::plain(step, told);
        line.batter = play.turn.and_then(|t| t.batter);
        line.outs_made = play.outs();
        line.runs = play.runs();
        line.outs = play.before.outs + play.outs();
        line.score = play.before.score;
        line.score[play.batting().index()] += u16::from(play.runs());
        line.pitches_missed = play.pitches_missed;
        line.reasons = reasons::of(play, judged, book);
        if play.turn.is_some() || play.ends_half {
            line.pitches = core::mem::take(&mut self.pitches);
        }
        Self::note_end(step, before, &mut line);
        self.push(line, play.before);
        self.sum(play, judged);
    }

    fn plain(step: &Step, told: Vec<Told>) -> Line {
        Line {
            entry: step.entry,
            told,
            batter: None,
            pitches: Vec::new(),
            pitches_missed: false,
            outs: step.after.outs,
            outs_made: 0,
            runs: 0,
            score: step.after.score,
            reasons: Vec::new(),
            conflict: None,
        }
    }

    /// Adds that the game is over to the line that ended it.
    fn note_end(step: &Step, before: Option<Situation>, line: &mut Line) {
        let was_over = before.is_some_and(|b| matches!(b.phase, Phase::Over(_)));
        if let (Phase::Over(ending), false) = (step.after.phase, was_over) {
            line.told.push(Told::Over(ending));
        }
    }

    fn push(&mut self, line: Line, before: Situation) {
        let halves = &mut self.account.halves;
        if halves.last().is_none_or(|h| (h.inning, h.half) != (before.inning, before.half)) {
            halves.push(HalfAccount {
                inning: before.inning,
                half: before.half,
                lines: Vec::new(),
                runs: 0,
                hits: 0,
                errors: 0,
                left_on_base: None,
            });
        }
        if let Some(half) = halves.last_mut() {
            half.lines.push(line);
        }
    }

    fn sum(&mut self, play: &Play, judged: &Judged) {
        let Some(half) = self.account.halves.last_mut().filter(|_| !play.nullified) else { return };
        half.runs += u16::from(play.runs());
        half.hits += u16::from(judged.result.as_ref().is_some_and(|r| r.verdict.hit_bases().is_some()));
        half.errors += judged.credited(Credit::Error).count() as u16;
    }
}

/// True for what the Book's play-by-play leaves out: rosters, cards and rules are on the Card.
const fn is_paperwork(event: &Event) -> bool {
    matches!(
        event,
        Event::Heading(_)
            | Event::Rules(_)
            | Event::Team { .. }
            | Event::Player { .. }
            | Event::Card { .. }
            | Event::PlayBall
    )
}
