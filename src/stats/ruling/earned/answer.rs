//! Which pitcher answers for which runner (OBR 9.16(g), 9.16(h)): a number of runners, not the runners themselves.

use super::Answers;
use crate::game::{Play, RunnerKey};
use crate::log::Start;

/// Who answers for the runners of one half-inning.
#[derive(Default)]
pub(super) struct Answering {
    runners: Vec<Charged>,
    /// A batter who reached on a fielder's choice that has put out nobody so far; the ball is still alive.
    choosing: Option<RunnerKey>,
}

struct Charged {
    key: RunnerKey,
    stint: usize,
    how: Answers,
}

impl Answering {
    pub fn of(&self, key: RunnerKey) -> Option<(usize, Answers)> {
        self.runners.iter().rev().find(|r| r.key == key).map(|r| (r.stint, r.how))
    }

    pub fn add(&mut self, key: RunnerKey, stint: usize, how: Answers) {
        self.runners.push(Charged { key, stint, how });
    }

    /// The batter of the play before, if this one goes on from his fielder's choice.
    pub fn chooser(&self, play: &Play) -> Option<RunnerKey> {
        self.choosing.filter(|_| play.continues)
    }

    /// After a fielder's choice that put out a runner, the pitchers answer for as many runners as before: in the order
    /// in which they put them on, the earliest for the runner furthest on (OBR 9.16(g) Comment, examples 2, 3, 5, 6).
    ///
    /// Our reading where the rule is silent: the place of a runner who should not have been on base goes to the batter
    /// alone, so that no clean runner turns into another pitcher's; and of two runners put out, the batter replaces the
    /// one of the earliest pitcher.
    pub fn play(
        &mut self,
        play: &Play,
        newcomer: Option<RunnerKey>,
        should_not_be_there: impl Fn(usize, RunnerKey) -> bool,
    ) {
        self.choosing = newcomer;
        let Some(newcomer) = newcomer else { return };
        let before = || play.before.runners().rev().map(|(_, r)| r.key).filter(|key| *key != newcomer);
        let is_out =
            |key: RunnerKey| play.moves.iter().any(|m| m.key == key && m.from != Start::Batter && m.out.is_some());
        if !before().any(is_out) {
            return;
        }
        self.choosing = None;
        let ghost =
            before().find(|key| is_out(*key) && self.of(*key).is_some_and(|(s, _)| should_not_be_there(s, *key)));
        if let Some(stint) = ghost.and_then(|key| self.of(key)).map(|(stint, _)| stint) {
            self.pass(newcomer, stint, play);
            return;
        }
        let owed: Vec<usize> = before().filter_map(|key| self.of(key)).map(|(stint, _)| stint).collect();
        let left: Vec<RunnerKey> = before().filter(|key| !is_out(*key)).chain([newcomer]).collect();
        for (key, stint) in left.into_iter().zip(owed) {
            self.pass(key, stint, play);
        }
    }

    fn pass(&mut self, key: RunnerKey, stint: usize, play: &Play) {
        if let Some(runner) = self.runners.iter_mut().rev().find(|r| r.key == key && r.stint != stint) {
            runner.stint = stint;
            runner.how = Answers::PassedOn { on: play.entry };
        }
    }
}
