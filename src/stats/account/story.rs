//! The game in a few sentences, for those who were not there: the result, when the lead changed for good, who decided it,
//! the pitchers, and what else is worth telling. Every number is one of the box score.
//!
//! A game that goes on has no story yet.

use crate::field::{Half, Outs, Side};
use crate::game::{Ending, Game, Phase};
use crate::lines::{BattingLine, BoxScore, PitchingLine};
use crate::log::Cause;
use crate::order::put_in_order;
use crate::ruling::decision::{Decisions, ahead_for_good, decisions, is_official};
use crate::ruling::{BatterResult, Book};
use crate::team::PlayerId;

mod sentences;

pub use sentences::Who;

/// Batters told of, at most, for each side.
const BATTERS: usize = 3;

/// What is told of a game.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Story {
    /// Sentence after sentence.
    pub sentences: Vec<Sentence>,
}

/// One sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Sentence {
    /// How it ended.
    Result(Result),
    /// A side went ahead, and stayed ahead.
    Ahead(Ahead),
    /// The score just before that, as the side that then went ahead saw it.
    Before {
        /// Who then went ahead.
        side: Side,
        /// Runs of that side.
        ours: u16,
        /// Runs of the other.
        theirs: u16,
    },
    /// A pitcher's part in the decision.
    Pitcher {
        /// Which.
        part: Part,
        /// His line.
        line: Pitched,
    },
    /// A side did not score.
    NoRuns {
        /// Which side was held.
        side: Side,
        /// The pitcher with the shutout; `None` where several share in it.
        pitcher: Option<PlayerId>,
    },
    /// A side had no hit.
    NoHits {
        /// Which side was held.
        side: Side,
    },
    /// A batter's day.
    Batter(Batted),
    /// A side made no error.
    NoErrors {
        /// Which.
        side: Side,
    },
    /// Neither side made an error.
    NobodyErred,
}

/// How a game ended, or where it stopped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Result {
    /// How.
    pub how: Ended,
    /// Runs: visitors, home.
    pub score: [u16; 2],
    /// The last inning played, or begun.
    pub inning: u8,
    /// Its half.
    pub half: Half,
    /// The innings of a whole game by the code.
    pub regulation: u8,
}

/// The ways to end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ended {
    /// Played out, in its innings or in more.
    Played,
    /// By the lead the code sets.
    Mercy,
    /// Ended before all innings were played.
    Early,
    /// Called by the umpire, and long enough to count.
    Called,
    /// Called by the umpire before it was long enough to count (OBR 7.01).
    CalledTooEarly,
    /// Forfeited to this side.
    Forfeited(Side),
    /// To be continued.
    Suspended,
}

/// The lead that lasted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ahead {
    /// Who went ahead.
    pub side: Side,
    /// Inning, from 1.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// Runs after that play: visitors, home.
    pub score: [u16; 2],
    /// On what.
    pub on: Deed,
    /// The game ended with it.
    pub ended_it: bool,
}

/// What brought a run in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Deed {
    /// A batter drove it in.
    Batted {
        /// Who.
        batter: PlayerId,
        /// With what.
        result: BatterResult,
    },
    /// A runner came in otherwise.
    Scored {
        /// Who.
        runner: PlayerId,
        /// On what.
        cause: Cause,
    },
}

/// A pitcher's part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The win.
    Win,
    /// The loss.
    Loss,
    /// The save.
    Save,
}

/// A pitcher's line, as far as it is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pitched {
    /// Who.
    pub pitcher: PlayerId,
    /// Innings, as outs.
    pub outs: Outs,
    /// Hits.
    pub hits: u32,
    /// Runs.
    pub runs: u32,
    /// Earned runs.
    pub earned_runs: u32,
    /// Bases on balls.
    pub walks: u32,
    /// Strikeouts.
    pub strikeouts: u32,
    /// The whole game was his.
    pub complete: bool,
}

/// A batter's line, as far as it is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Batted {
    /// Who.
    pub batter: PlayerId,
    /// Hits.
    pub hits: u32,
    /// At bats.
    pub at_bats: u32,
    /// Two-base hits.
    pub doubles: u32,
    /// Three-base hits.
    pub triples: u32,
    /// Home runs.
    pub home_runs: u32,
    /// Runs batted in.
    pub runs_batted_in: u32,
    /// Runs.
    pub runs: u32,
}

impl Story {
    /// The story of a game that is over or suspended; `None` while it goes on.
    pub fn of(game: &Game) -> Option<Self> {
        let result = result(game)?;
        let mut sentences = vec![Sentence::Result(result)];
        let played = game.plays().next().is_some();
        if played && !matches!(result.how, Ended::Suspended | Ended::CalledTooEarly) {
            Teller { game, score: game.box_score(), sentences: &mut sentences }.tell(result);
        }
        Some(Self { sentences })
    }
}

fn result(game: &Game) -> Option<Result> {
    let s = game.situation();
    let how = match s.phase {
        Phase::Over(Ending::Played) => Ended::Played,
        Phase::Over(Ending::Mercy) => Ended::Mercy,
        Phase::Over(Ending::Declared) => Ended::Early,
        Phase::Over(Ending::Called) if is_official(game) => Ended::Called,
        Phase::Over(Ending::Called) => Ended::CalledTooEarly,
        Phase::Over(Ending::Forfeited(side)) => Ended::Forfeited(side),
        Phase::Suspended => Ended::Suspended,
        Phase::Before | Phase::Underway | Phase::Delayed => return None,
    };
    let last = game.halves().iter().rev().find(|half| has_plays(game, half.inning, half.half));
    let (inning, half) = last.map_or((s.inning, s.half), |half| (half.inning, half.half));
    Some(Result { how, score: s.score, inning, half, regulation: game.code().innings })
}

fn has_plays(game: &Game, inning: u8, half: Half) -> bool {
    game.plays().any(|play| play.before.inning == inning && play.before.half == half)
}

/// The side ahead, unless the score is level.
fn leader(score: [u16; 2]) -> Option<Side> {
    match score[0].cmp(&score[1]) {
        core::cmp::Ordering::Greater => Some(Side::Visitors),
        core::cmp::Ordering::Less => Some(Side::Home),
        core::cmp::Ordering::Equal => None,
    }
}

struct Teller<'a> {
    game: &'a Game,
    score: BoxScore,
    sentences: &'a mut Vec<Sentence>,
}

impl Teller<'_> {
    fn tell(&mut self, result: Result) {
        let winner = match result.how {
            Ended::Forfeited(side) => Some(side),
            _ => leader(result.score),
        };
        // A forfeit gives the win to a side that need not have been ahead: then no lead decided anything.
        if winner.is_some() && winner == leader(result.score) {
            self.lead();
        }
        self.pitchers();
        let sides = match winner {
            Some(Side::Home) => [Side::Home, Side::Visitors],
            _ => Side::BOTH,
        };
        for side in sides {
            self.held(side.other());
        }
        for side in sides {
            self.batters(side);
        }
        self.errors(sides);
    }

    fn lead(&mut self) {
        let Some((side, entry)) = ahead_for_good(self.game) else { return };
        let book = Book::of(self.game);
        let Some((play, judged)) = book.plays(self.game).find(|(play, _)| play.entry == entry) else { return };
        let before = play.before;
        let (ours, theirs) = (before.score[side.index()], before.score[side.other().index()]);
        // The run that counts is the one after as many as the other side has.
        let short = usize::from(theirs.saturating_sub(ours));
        let Some(run) = play.moves.iter().filter(|m| m.scored).nth(short) else { return };
        let batted_in = judged.runs.iter().any(|(runner, ruling)| *runner == run.runner && ruling.verdict);
        let result = judged.result.as_ref().map(|r| r.verdict);
        let on = match play.turn.and_then(|turn| turn.batter).zip(result).filter(|_| batted_in) {
            Some((batter, result)) => Deed::Batted { batter, result },
            None => Deed::Scored { runner: run.runner, cause: run.legs.last().map_or(Cause::Play, |leg| leg.cause) },
        };
        let mut score = before.score;
        score[side.index()] += u16::from(play.runs());
        if theirs > 0 {
            self.sentences.push(Sentence::Before { side, ours, theirs });
        }
        self.sentences.push(Sentence::Ahead(Ahead {
            side,
            inning: before.inning,
            half: before.half,
            score,
            on,
            ended_it: play.ends_game,
        }));
    }

    fn pitchers(&mut self) {
        let decisions = decisions(self.game);
        if decisions.provisional {
            return;
        }
        for (part, pitcher) in
            [(Part::Win, decisions.win_of()), (Part::Loss, decisions.loss_of()), (Part::Save, decisions.save_of())]
        {
            let line = pitcher.and_then(|id| self.pitching().find(|line| line.player == Some(id)));
            if let Some(line) = line.and_then(|line| pitched(line, &decisions)) {
                self.sentences.push(Sentence::Pitcher { part, line });
            }
        }
    }

    fn pitching(&self) -> impl Iterator<Item = &PitchingLine> {
        self.score.sides.iter().flat_map(|side| &side.pitching)
    }

    /// A side without a run, or without a hit, though it had its innings.
    fn held(&mut self, side: Side) {
        let at_bat = self.score.side(side).batting_total.plate_appearances > 0;
        if !at_bat || !is_official(self.game) {
            return;
        }
        if self.game.situation().score[side.index()] == 0 {
            let decisions = decisions(self.game);
            let ours = |id: &PlayerId| self.score.side(side.other()).pitching.iter().any(|l| l.player == Some(*id));
            let pitcher = decisions.shutouts.iter().map(|d| d.pitcher).find(ours);
            self.sentences.push(Sentence::NoRuns { side, pitcher });
        }
        if self.score.side(side).batting_total.hits == 0 {
            self.sentences.push(Sentence::NoHits { side });
        }
    }

    /// The side's best days at bat: two hits or two runs batted in, or a home run.
    fn batters(&mut self, side: Side) {
        let mut lines: Vec<&BattingLine> = self
            .score
            .side(side)
            .batting
            .iter()
            .filter(|l| l.hits >= 2 || l.runs_batted_in >= 2 || l.home_runs > 0)
            .collect();
        let worth = |l: &BattingLine| (l.hits + l.runs_batted_in, l.total_bases(), l.runs);
        put_in_order(&mut lines, |a, b| worth(a) > worth(b));
        let told = lines.into_iter().take(BATTERS).filter_map(|line| {
            Some(Sentence::Batter(Batted {
                batter: line.player?,
                hits: line.hits,
                at_bats: line.at_bats,
                doubles: line.doubles,
                triples: line.triples,
                home_runs: line.home_runs,
                runs_batted_in: line.runs_batted_in,
                runs: line.runs,
            }))
        });
        self.sentences.extend(told);
    }

    fn errors(&mut self, sides: [Side; 2]) {
        let score = self.game.line_score();
        let fielded = |side: Side| self.score.side(side.other()).batting_total.plate_appearances > 0;
        let clean: Vec<Side> = sides.into_iter().filter(|s| fielded(*s) && score.side(*s).errors == 0).collect();
        match clean[..] {
            [_, _] => self.sentences.push(Sentence::NobodyErred),
            [side] => self.sentences.push(Sentence::NoErrors { side }),
            _ => {}
        }
    }
}

fn pitched(line: &PitchingLine, decisions: &Decisions) -> Option<Pitched> {
    let pitcher = line.player?;
    Some(Pitched {
        pitcher,
        outs: line.outs,
        hits: line.hits,
        runs: line.runs,
        earned_runs: line.earned_runs,
        walks: line.walks,
        strikeouts: line.strikeouts,
        complete: decisions.has_complete_game(pitcher),
    })
}
