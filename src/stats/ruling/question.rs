//! What is left to the scorer's judgment: one typed question a matter, with the usual answer first. Where none is
//! given the usual answer stands; what the entries already answer is not asked.

use super::decision::decisions;
use super::earned::{Reason, RunCharge};
use super::{BatterResult, Book, Judged};
use crate::game::{Game, Play};
use crate::log::{Cause, EntryId, Judgment, MisplayKind, Start, Trajectory};
use crate::order::put_in_order;
use crate::team::PlayerId;
use crate::words::{Language, say};

/// What is asked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Asked {
    /// Did the batter bunt for a hit rather than to move the runner up (OBR 9.08(a))?
    BuntedForHit {
        /// The batter.
        batter: PlayerId,
    },
    /// Would the runner have scored without the error (OBR 9.04(a)(3))?
    WouldHaveScored {
        /// The runner.
        runner: PlayerId,
    },
    /// Would a run have scored after a catch of the fly that was dropped (OBR 9.08(d))?
    WouldHaveScoredAfterCatch,
    /// Did the runner keep going while the ball was held or thrown elsewhere (OBR 9.04(c))?
    KeptGoing {
        /// The runner.
        runner: PlayerId,
    },
    /// Would the run have come in without the help it had (OBR 9.16(d))?
    Earned {
        /// The runner.
        runner: PlayerId,
    },
    /// Which relief pitcher was the most effective (OBR 9.17(b), (c))?
    WinningPitcher,
    /// Were the innings he finished effective (OBR 9.19(d))?
    EffectiveFinish {
        /// The pitcher.
        pitcher: PlayerId,
    },
}

/// An open matter of judgment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The play; `None` for matters of the whole game.
    pub on: Option<EntryId>,
    /// What is asked.
    pub asked: Asked,
    /// The judgments that would answer it, the usual one first.
    pub answers: Vec<Judgment>,
    /// The one given already, if one was: its place in `answers`.
    pub given: Option<usize>,
    /// Section of the Official Baseball Rules.
    pub rule: &'static str,
}

impl Question {
    /// Nobody has answered it yet: the usual answer stands.
    pub const fn is_open(&self) -> bool {
        self.given.is_none()
    }
}

/// A question before it is known whether it was answered.
struct Matter {
    on: Option<EntryId>,
    asked: Asked,
    answers: Vec<Judgment>,
    rule: &'static str,
}

impl Asked {
    /// The question, by name.
    pub fn said(&self, language: Language, names: &dyn Fn(PlayerId) -> String) -> String {
        match self {
            Self::BuntedForHit { batter } => say!(language, "asked-bunted-for-hit", batter = names(*batter)),
            Self::WouldHaveScored { runner } => say!(language, "asked-would-have-scored", runner = names(*runner)),
            Self::WouldHaveScoredAfterCatch => say!(language, "asked-would-have-scored-after-catch"),
            Self::KeptGoing { runner } => say!(language, "asked-kept-going", runner = names(*runner)),
            Self::Earned { runner } => say!(language, "asked-earned", runner = names(*runner)),
            Self::WinningPitcher => say!(language, "asked-winning-pitcher"),
            Self::EffectiveFinish { pitcher } => say!(language, "asked-effective-finish", pitcher = names(*pitcher)),
        }
    }
}

impl Game {
    /// Every matter of judgment so far, answered or not, in the order of the game.
    pub fn questions(&self) -> Vec<Question> {
        let matters = if self.judgments().next().is_none() {
            matters(self)
        } else {
            // What is usual is what stands without an answer.
            matters(&self.unanswered())
        };
        matters
            .into_iter()
            .map(|Matter { on, asked, answers, rule }| {
                let given = self.judgments().rev().find_map(|j| answers.iter().position(|answer| answer == j));
                Question { on, asked, answers, given, rule }
            })
            .collect()
    }
}

fn matters(game: &Game) -> Vec<Matter> {
    let book = Book::of(game);
    let mut matters = Vec::new();
    for (play, judged) in book.plays(game).filter(|(p, _)| !p.nullified && p.batted.is_some()) {
        on_batted(play, judged, &mut matters);
    }
    // Whether he would have scored on that very play is asked already, and answers this too.
    let asked: Vec<Option<EntryId>> =
        matters.iter().filter(|m| !matches!(m.asked, Asked::BuntedForHit { .. })).map(|m| m.on).collect();
    matters.extend(book.runs().iter().filter(|run| !asked.contains(&Some(run.entry))).filter_map(on_run));
    put_in_order(&mut matters, |a, b| a.on < b.on);
    matters.extend(on_game(game));
    matters
}

fn on_batted(play: &Play, judged: &Judged, matters: &mut Vec<Matter>) {
    let on = play.entry;
    let mut ask = |asked, answers: [Judgment; 2], rule| {
        matters.push(Matter { on: Some(on), asked, answers: answers.to_vec(), rule });
    };
    let result = judged.result.as_ref().map(|r| r.verdict);
    let bunt = play.batted.as_ref().is_some_and(|b| b.trajectory == Trajectory::Bunt);
    if let (Some(BatterResult::SacrificeHit { .. }), Some(batter)) = (result, play.turn.and_then(|t| t.batter))
        && bunt
    {
        ask(Asked::BuntedForHit { batter }, [false, true].map(|yes| Judgment::BuntedForHit { on, yes }), "9.08(a)");
    }
    let dropped = dropped_fly(play);
    if dropped && play.before.outs < 2 && play.runs() > 0 {
        let usual = play.moves.iter().any(|m| m.scored && m.from == Start::Third);
        let answers = [usual, !usual].map(|yes| Judgment::WouldHaveScoredAfterCatch { on, yes });
        ask(Asked::WouldHaveScoredAfterCatch, answers, "9.08(d)");
    }
    let batter_erred = matches!(result, Some(BatterResult::ReachedOnError(_)));
    for (runner, run) in &judged.runs {
        let runner = *runner;
        let Some(m) = play.moves.iter().find(|m| m.scored && m.runner == runner) else { continue };
        if m.from == Start::Batter || dropped || matches!(run.rule, "9.04(b)(1)" | "9.04(b)(2)") {
            continue;
        }
        let on_error = batter_erred || m.legs.iter().any(|leg| matches!(leg.cause, Cause::Error(_)));
        let answers = [run.verdict, !run.verdict].map(|yes| Judgment::WouldHaveScored { on, runner, yes });
        if on_error {
            // With two out, or from further back, a batter who reached on the error has brought in nobody.
            if !batter_erred || (play.before.outs < 2 && m.from == Start::Third) {
                ask(Asked::WouldHaveScored { runner }, answers, "9.04(a)(3)");
            }
        } else if play.outs() == 0 && m.legs.last().is_some_and(|leg| leg.cause == Cause::Throw) {
            ask(Asked::KeptGoing { runner }, answers, "9.04(c)");
        }
    }
}

fn dropped_fly(play: &Play) -> bool {
    play.batter_move().and_then(|m| m.legs.first()).is_some_and(|leg| match leg.cause {
        Cause::Error(i) => play.misplays.get(usize::from(i)).is_some_and(|m| m.kind == MisplayKind::DroppedFly),
        _ => false,
    })
}

/// Only where the reconstruction hangs on how far he would have come (OBR 9.16(d)): the rest is rule.
fn on_run(run: &RunCharge) -> Option<Matter> {
    let doubtful = matches!(run.because, Reason::WouldHaveScored { .. } | Reason::Helped { .. });
    let on = run.entry;
    (doubtful && !run.provisional).then(|| Matter {
        on: Some(on),
        asked: Asked::Earned { runner: run.runner },
        answers: [run.earned, !run.earned].map(|yes| Judgment::Earned { on, runner: run.runner, yes }).to_vec(),
        rule: "9.16(d)",
    })
}

fn on_game(game: &Game) -> Vec<Matter> {
    let decided = decisions(game);
    let mut matters = Vec::new();
    if let Some(question) = decided.question {
        let answers = question.candidates.iter().map(|c| Judgment::WinningPitcher { pitcher: c.pitcher }).collect();
        matters.push(Matter { on: None, asked: Asked::WinningPitcher, answers, rule: question.rule });
    }
    if let Some(pitcher) = decided.finish_question {
        let answers = [true, false].map(|yes| Judgment::EffectiveFinish { pitcher, yes }).to_vec();
        matters.push(Matter { on: None, asked: Asked::EffectiveFinish { pitcher }, answers, rule: "9.19(d)" });
    }
    matters
}
