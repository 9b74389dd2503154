//! Earned runs (OBR 9.16): each half-inning played again without errors and passed balls, once for the team and once for
//! each pitcher from his entry (9.16(i)), and who answers for each runner (9.16(g), 9.16(h)).
//!
//! Section numbers are those of the Official Baseball Rules, 2024 edition, from memory.

use crate::field::{Half, Side};
use crate::game::{Game, Play, RunnerKey};
use crate::log::{EntryId, Judgment};
use crate::ruling::Judgments;
use crate::team::PlayerId;

mod answer;
mod ledger;
mod reading;
mod reason;

use answer::Answering;
use ledger::Ledger;
use reading::Reading;

pub use reason::{Answers, Help, Reason};

/// One run, and who answers for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RunCharge {
    /// The entry of the play on which it scored.
    pub entry: EntryId,
    /// Inning.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// Who scored.
    pub runner: PlayerId,
    /// His time around the bases.
    pub key: RunnerKey,
    /// The pitcher charged (OBR 9.16(g)); `None` where no player pitches.
    pub pitcher: Option<PlayerId>,
    /// Earned against that pitcher.
    pub earned: bool,
    /// Earned against the team.
    pub team_earned: bool,
    /// The half-inning still goes on, and the answer may change.
    pub provisional: bool,
    /// Why it is earned or unearned against the pitcher.
    pub because: Reason,
    /// Why it is earned or unearned against the team.
    pub team_because: Reason,
    /// Why that pitcher answers for it.
    pub answers: Answers,
    /// Section of the Official Baseball Rules that decides whether it is earned against the pitcher.
    pub rule: &'static str,
}

/// Runs and earned runs of one side's defence.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Earned {
    /// Runs.
    pub runs: u32,
    /// Earned against the team.
    pub team: u32,
    /// Earned against its pitchers, added up: never fewer (OBR 9.16(i)).
    pub pitchers: u32,
}

impl Earned {
    /// The sums over `charges` of the side in the field.
    pub fn of(charges: &[RunCharge], fielding: Side) -> Self {
        let mut sums = Self::default();
        for charge in charges.iter().filter(|c| c.half.fielding() == fielding) {
            sums.runs += 1;
            sums.team += u32::from(charge.team_earned);
            sums.pitchers += u32::from(charge.earned);
        }
        sums
    }
}

/// Every run of the game, in the order in which they scored.
pub fn runs(game: &Game) -> Vec<RunCharge> {
    let judgments = Judgments::of(game);
    let mut charges = Vec::new();
    let mut half: Option<Reconstruction> = None;
    for play in game.plays() {
        let at = (play.before.inning, play.before.half);
        if half.as_ref().is_none_or(|h| h.at != at)
            && let Some(done) = half.replace(Reconstruction::new(at))
        {
            done.settle(game, &judgments, &mut charges);
        }
        let uneventful = play.turn.is_none() && play.moves.is_empty() && play.misplays.is_empty();
        if let Some(half) = half.as_mut().filter(|_| !uneventful && !play.nullified) {
            half.play(play, &judgments);
        }
    }
    if let Some(done) = half {
        done.settle(game, &judgments, &mut charges);
    }
    charges
}

/// One pitcher's time on the mound within a half-inning, from his entry.
struct Stint {
    pitcher: Option<PlayerId>,
    ledger: Ledger,
}

/// A run as it scored; whether it is earned is settled at the end of the half-inning.
struct Scored {
    entry: EntryId,
    runner: PlayerId,
    key: RunnerKey,
    stint: usize,
    answers: Answers,
}

/// One half-inning, played again.
struct Reconstruction {
    at: (u8, Half),
    team: Ledger,
    stints: Vec<Stint>,
    current: usize,
    answering: Answering,
    scored: Vec<Scored>,
}

impl Reconstruction {
    fn new(at: (u8, Half)) -> Self {
        Self {
            at,
            team: Ledger::default(),
            stints: Vec::new(),
            current: 0,
            answering: Answering::default(),
            scored: Vec::new(),
        }
    }

    fn play(&mut self, play: &Play, judgments: &Judgments) {
        let reading = Reading::new(play, judgments, self.answering.chooser(play));
        self.team.adopt(play);
        self.relieve(play);
        let batters = play.turn.map(|turn| self.stint_of(turn.pitcher, play));
        self.answer(play, &reading, batters);
        self.team.play(&reading);
        for stint in &mut self.stints {
            stint.ledger.adopt(play);
            stint.ledger.play(&reading);
        }
        for m in play.moves.iter().filter(|m| m.scored) {
            let (stint, answers) = self.answering.of(m.key).unwrap_or((self.current, Answers::Faced));
            self.scored.push(Scored { entry: play.entry, runner: m.runner, key: m.key, stint, answers });
        }
    }

    /// A new pitcher's ledger starts from the outs in the book and the bases as they are (OBR 9.16(i)).
    fn relieve(&mut self, play: &Play) {
        let pitcher = play.before.pitcher;
        if self.stints.get(self.current).is_none_or(|s| s.pitcher != pitcher) {
            self.current = self.stints.len();
            self.stints.push(Stint { pitcher, ledger: Ledger::at_entry(play, &self.team) });
        }
    }

    /// The stint of the pitcher charged with a batter: the present one's, or that of one who left in mid-count.
    fn stint_of(&mut self, pitcher: Option<PlayerId>, play: &Play) -> usize {
        if self.stints[self.current].pitcher == pitcher {
            return self.current;
        }
        self.stints.iter().rposition(|s| s.pitcher == pitcher).unwrap_or_else(|| {
            self.stints.push(Stint { pitcher, ledger: Ledger::at_entry(play, &self.team) });
            self.stints.len() - 1
        })
    }

    fn answer(&mut self, play: &Play, reading: &Reading, batters: Option<usize>) {
        for (_, runner) in play.before.runners() {
            if self.answering.of(runner.key).is_none() {
                let stint = self.stint_of(runner.pitcher, play);
                self.answering.add(runner.key, stint, Answers::Placed);
            }
        }
        if let (Some(m), Some(stint)) = (play.batter_move(), batters) {
            let how = if stint == self.current { Answers::Faced } else { Answers::LeftInMidCount };
            self.answering.add(m.key, stint, how);
        }
        let stints = &self.stints;
        self.answering.play(play, reading.newcomer, |stint, key| {
            stints.get(stint).is_some_and(|s| s.ledger.should_not_be_there(key))
        });
    }

    fn settle(self, game: &Game, judgments: &Judgments, charges: &mut Vec<RunCharge>) {
        let (inning, half) = self.at;
        let open = game.halves().last().is_some_and(|h| (h.inning, h.half) == self.at && h.left_on_base.is_none());
        for run in &self.scored {
            let Some(stint) = self.stints.get(run.stint) else { continue };
            let mut because = stint.ledger.reason(run.key);
            let mut team_because = self.team.reason(run.key);
            let judged = judgments.find(run.entry, |j| match j {
                Judgment::Earned { runner, yes, .. } if *runner == run.runner => Some(*yes),
                _ => None,
            });
            if let Some(earned) = judged {
                // A chance missed before the reliever came in stays missed for the team.
                if !(earned && because.is_earned() && !team_because.is_earned()) {
                    team_because = Reason::Judged { earned };
                }
                because = Reason::Judged { earned };
            }
            let may_change = because.may_change() || team_because.may_change();
            let only_his = because.is_earned() && !team_because.is_earned();
            charges.push(RunCharge {
                entry: run.entry,
                inning,
                half,
                runner: run.runner,
                key: run.key,
                pitcher: stint.pitcher,
                earned: because.is_earned(),
                team_earned: team_because.is_earned(),
                provisional: open && may_change,
                rule: if only_his { "9.16(i)" } else { because.rule() },
                because,
                team_because,
                answers: run.answers,
            });
        }
    }
}
