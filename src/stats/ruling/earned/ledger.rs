//! One half-inning as it would have been without errors and passed balls, from a given moment on (OBR 9.16).
//!
//! Outs that should have been made count at the moment of the missed chance. A runner's base is where he would stand:
//! his own advances count in full while he stands where he should; once helped, he is granted what each later play gives
//! by its nature (the bases of a hit, one base on a wild pitch, balk or steal of his own), and whatever the runners
//! behind him force upon him. Everything else is doubt, and the pitcher has its benefit (9.16(f)).

use super::reading::{Fared, Reading};
use super::{Help, Reason};
use crate::field::Base;
use crate::game::{Moved, Play, RunnerKey, TurnKind};
use crate::log::{Cause, EntryId, How, Start};

const OUTS: u8 = 3;
const HOME: u8 = 4;

#[derive(Clone, Debug, Default)]
pub(super) struct Ledger {
    outs: u8,
    /// The play of the third out that should have been.
    over: Option<EntryId>,
    /// Plays on which a chance was missed.
    missed: Vec<EntryId>,
    /// Everyone who has been on base. Those who reached it themselves are in that order, so that each comes after those
    /// ahead of him.
    runners: Vec<Runner>,
    /// The batter at the plate should have been out on a foul fly.
    foul_fly: Option<EntryId>,
}

#[derive(Clone, Debug)]
struct Runner {
    key: RunnerKey,
    /// Bases from the plate at which he would stand; 4 is home.
    at: u8,
    standing: Standing,
    /// The first help he had.
    helped: Option<(EntryId, Help)>,
    /// The play on which he would have scored.
    home: Option<EntryId>,
    /// Put out in fact.
    gone: bool,
    /// In fact he scored when the inning should have been over.
    late: bool,
}

#[derive(Clone, Debug)]
enum Standing {
    /// On base by rights.
    Fair,
    /// On base by interference or by rule: no run of his is earned, but he was no missed out.
    Tainted(Reason),
    /// Should be out: the out has been counted.
    Out(Reason),
}

impl Runner {
    const fn new(key: RunnerKey, at: u8, standing: Standing) -> Self {
        Self { key, at, standing, helped: None, home: None, gone: false, late: false }
    }

    const fn is_fair(&self) -> bool {
        matches!(self.standing, Standing::Fair)
    }

    const fn is_out(&self) -> bool {
        matches!(self.standing, Standing::Out(_))
    }
}

/// Outs of one play, in the order of its moves.
struct Outs {
    outs: u8,
    /// The move with the third one, and whether it lets no run count (OBR 5.08(a)).
    third: Option<(usize, bool)>,
}

impl Outs {
    fn count(&mut self, at: usize, no_run: bool) {
        self.outs += 1;
        if self.outs == OUTS {
            self.third = Some((at, no_run));
        }
    }

    fn run_counts(&self, at: usize) -> bool {
        self.third.is_none_or(|(third, no_run)| !no_run && at < third)
    }
}

impl Ledger {
    /// The ledger of a pitcher who comes in now: outs and runners as they are in the book.
    pub fn at_entry(play: &Play, team: &Self) -> Self {
        let mut ledger = Self { outs: play.before.outs, ..Self::default() };
        for (base, runner) in play.before.runners().rev() {
            let tainted = team.find(runner.key).map(|r| r.standing.clone());
            let standing = match tainted {
                Some(Standing::Tainted(reason)) => Standing::Tainted(reason),
                _ => Standing::Fair,
            };
            ledger.runners.push(Runner::new(runner.key, base.number(), standing));
        }
        ledger
    }

    fn find(&self, key: RunnerKey) -> Option<&Runner> {
        self.runners.iter().find(|r| r.key == key)
    }

    fn index(&self, key: RunnerKey) -> Option<usize> {
        self.runners.iter().position(|r| r.key == key)
    }

    /// Takes in runners put on base by rule since the last play.
    pub fn adopt(&mut self, play: &Play) {
        for (base, runner) in play.before.runners().rev() {
            if self.find(runner.key).is_some() {
                continue;
            }
            let standing = if runner.placed { Standing::Tainted(Reason::Placed) } else { Standing::Fair };
            self.runners.push(Runner::new(runner.key, base.number(), standing));
        }
    }

    /// He is on base in fact, but not by rights.
    pub fn should_not_be_there(&self, key: RunnerKey) -> bool {
        self.find(key).is_some_and(|r| !r.is_fair())
    }

    /// Why the run that this runner scored is earned or not.
    pub fn reason(&self, key: RunnerKey) -> Reason {
        let inning_over = || match self.over {
            Some(third) => Reason::InningOver { third, missed: self.missed.clone() },
            None => Reason::Unaided,
        };
        let Some(r) = self.find(key) else { return inning_over() };
        match (&r.standing, r.home, r.helped) {
            (Standing::Tainted(reason) | Standing::Out(reason), ..) => reason.clone(),
            (Standing::Fair, Some(on), Some((helped, by))) => Reason::WouldHaveScored { helped, by, on },
            (Standing::Fair, Some(_), None) => Reason::Unaided,
            (Standing::Fair, None, Some((on, by))) if !r.late => {
                let stands = Base::from_number(r.at).unwrap_or(Base::Third);
                Reason::Helped { on, by, stands, over: self.over.is_some() }
            }
            (Standing::Fair, None, _) => inning_over(),
        }
    }

    pub fn play(&mut self, reading: &Reading) {
        let play = reading.play;
        if self.over.is_none() {
            let mut outs = Outs { outs: self.outs, third: None };
            self.put_out(reading, &mut outs);
            self.run(reading, &outs);
            if reading.foul_fly_muffed() && self.foul_fly.is_none() {
                self.foul_fly = Some(play.entry);
                self.missed.push(play.entry);
                outs.count(play.moves.len(), true);
            }
            self.outs = outs.outs.min(OUTS);
            self.over = outs.third.map(|_| play.entry);
        }
        if play.turn.is_some() {
            self.foul_fly = None;
        }
        if self.over.is_some() {
            for m in play.moves.iter().filter(|m| m.scored) {
                if let Some(i) = self.index(m.key) {
                    self.runners[i].late = true;
                }
            }
        }
    }

    /// The outs made and those that should have been, and who is on base for what.
    fn put_out(&mut self, reading: &Reading, outs: &mut Outs) {
        let play = reading.play;
        let retired = self.retired(play);
        if play.turn.is_some_and(|t| t.kind == TurnKind::EmptyPlace) {
            outs.count(0, true);
        }
        let mut missed = false;
        for (i, m) in play.moves.iter().enumerate() {
            if m.from == Start::Batter {
                missed |= self.batter(reading, m, i, outs);
                continue;
            }
            let Some(at) = self.index(m.key) else { continue };
            match &m.out {
                Some(out) => {
                    self.runners[at].gone = true;
                    if !self.runners[at].is_out() {
                        outs.count(i, out.how == How::Force);
                    }
                }
                None if reading.is_spared(m.from) => missed |= self.spare(at, reading, !m.legs.is_empty(), i, outs),
                None => {}
            }
        }
        for (base, runner) in play.before.runners() {
            let stays = !play.moves.iter().any(|m| m.key == runner.key);
            if let Some(at) = self.index(runner.key).filter(|_| stays && reading.is_spared(base.into())) {
                missed |= self.spare(at, reading, false, play.moves.len(), outs);
            }
        }
        if missed {
            self.missed.push(play.entry);
        }
        // Without the runner who should not have been there, the out on this ball was the batter's.
        if let Some(at) = reading.newcomer.filter(|_| retired.out_of_place && !retired.fair).and_then(|k| self.index(k))
            && self.runners[at].is_fair()
        {
            let reason = Reason::TookPlace { on: play.entry };
            self.runners[at].standing = if retired.counted_before {
                outs.count(play.moves.len(), true);
                Standing::Out(reason)
            } else {
                Standing::Tainted(reason)
            };
        }
    }

    /// The batter's part. True if a chance to put him out was missed.
    fn batter(&mut self, reading: &Reading, m: &Moved, at: usize, outs: &mut Outs) -> bool {
        let on = reading.play.entry;
        let reached = m.out.is_none();
        if let Some(on) = self.foul_fly {
            if reached {
                self.runners.push(Runner::new(m.key, 0, Standing::Out(Reason::FoulFlyMuffed { on })));
            }
            return false;
        }
        let reason = match reading.batter {
            Fared::StillUp => return false,
            Fared::Out => {
                outs.count(at, true);
                return false;
            }
            Fared::Safe if !reached => {
                outs.count(at, false);
                return false;
            }
            Fared::Safe => {
                self.runners.push(Runner::new(m.key, 0, Standing::Fair));
                if !reading.is_spared(Start::Batter) {
                    return false;
                }
                let last = self.runners.len() - 1;
                return self.spare(last, reading, false, at, outs);
            }
            Fared::Interference => {
                if reached {
                    let tainted = Standing::Tainted(Reason::ReachedOnInterference { on });
                    self.runners.push(Runner::new(m.key, 0, tainted));
                } else {
                    outs.count(at, false);
                }
                return false;
            }
            Fared::Error(by) => Reason::ReachedOnError { on, by },
            Fared::PassedBall => Reason::ReachedOnPassedBall { on },
            Fared::Obstruction => Reason::ReachedOnObstruction { on },
        };
        outs.count(at, true);
        if reached {
            self.runners.push(Runner::new(m.key, 0, Standing::Out(reason)));
        }
        true
    }

    /// A runner whom an error kept on base. True if that was a chance not counted before.
    fn spare(&mut self, at: usize, reading: &Reading, ran: bool, place: usize, outs: &mut Outs) -> bool {
        let play = reading.play;
        let runner = &mut self.runners[at];
        if runner.is_out() {
            return false;
        }
        runner.standing = Standing::Out(Reason::Spared { on: play.entry });
        let start = play.moves.iter().find(|m| m.key == runner.key).map(|m| m.from);
        let forced = ran
            && play.batted.is_some()
            && start.is_some_and(|s| s != Start::Batter && play.before.is_forced(s))
            && reading.batter != Fared::Out;
        outs.count(place, forced);
        true
    }

    fn retired(&self, play: &Play) -> Retired {
        let mut retired = Retired::default();
        for m in play.moves.iter().filter(|m| m.from != Start::Batter && m.out.is_some()) {
            match self.find(m.key) {
                Some(r) if r.is_out() => {
                    retired.out_of_place = true;
                    retired.counted_before = true;
                }
                Some(r) if !r.is_fair() => retired.out_of_place = true,
                _ => retired.fair = true,
            }
        }
        retired
    }

    /// How far everyone comes who is on base by rights.
    fn run(&mut self, reading: &Reading, outs: &Outs) {
        let play = reading.play;
        let retired = self.retired(play);
        let thrown_after_ghost =
            retired.out_of_place && !retired.fair && play.batter_move().is_none_or(|m| m.out.is_none());
        let unearned_ball = self.foul_fly.is_some() && play.turn.is_some();
        for (i, m) in play.moves.iter().enumerate() {
            let Some(at) = self.index(m.key).filter(|at| self.runners[*at].is_fair()) else { continue };
            let help = |cause: Cause| match cause {
                Cause::Play | Cause::Throw | Cause::Choice | Cause::Forced | Cause::Award if unearned_ball => {
                    Some(Help::FoulFly)
                }
                Cause::Throw if thrown_after_ghost => Some(Help::Throw),
                _ => None,
            };
            self.runners[at].advance(reading, m, help);
            self.runners[at].come_home(play.entry, outs.run_counts(i));
        }
        let counts = outs.third.is_none();
        let granted = if unearned_ball { 0 } else { reading.granted_to_absent() };
        let on_base = |key| play.before.runners().any(|(_, r)| r.key == key) || play.moves.iter().any(|m| m.key == key);
        let mut least = 0;
        for runner in self.runners.iter_mut().rev().filter(|r| r.is_fair() && !r.gone) {
            if !on_base(runner.key) {
                runner.at = (runner.at + granted).min(HOME);
            }
            // Nobody is passed: he is at least one base ahead of the next one behind him.
            runner.at = runner.at.max(least);
            least = (runner.at + 1).min(HOME);
            runner.come_home(play.entry, counts);
        }
    }
}

/// Who was put out on a play, besides the batter.
#[derive(Default)]
struct Retired {
    /// A runner who was there by rights.
    fair: bool,
    /// A runner who should not have been there.
    out_of_place: bool,
    /// One whose out had been counted before.
    counted_before: bool,
}

impl Runner {
    fn advance(&mut self, reading: &Reading, m: &Moved, help: impl Fn(Cause) -> Option<Help>) {
        let entry = reading.play.entry;
        let mut real = m.from.number();
        let was_helped = self.at < real;
        for leg in &m.legs {
            let to = leg.to.number();
            if let Some(help) = help(leg.cause).or_else(|| reading.help(*leg)) {
                self.helped.get_or_insert((entry, help));
            } else if self.at == real {
                self.at = if real == 0 && reading.hit > 0 { to.min(reading.hit) } else { to };
            } else if was_helped {
                self.at = (self.at + reading.granted(m, *leg, to - real)).min(to);
            }
            real = to;
        }
        match reading.would_have_scored(m) {
            Some(true) => self.at = HOME,
            Some(false) if self.at == HOME => {
                self.at = HOME - 1;
                self.helped.get_or_insert((entry, Help::Judged));
            }
            _ => {}
        }
        if self.at < real {
            self.helped.get_or_insert((entry, Help::Judged));
        }
    }

    fn come_home(&mut self, on: EntryId, counts: bool) {
        if self.at == HOME && counts && self.home.is_none() {
            self.home = Some(on);
        }
    }
}
