//! What follows a play by itself: the next batter, the end of the half, of the game, runners placed by rule.

use super::moves::OUTS;
use super::{Ending, FinishedTurn, Game, HalfInning, OnBase, Phase, Refusal, RunnerKey, Turn};
use crate::field::{Base, Half, Position, Side};
use crate::team::PlayerId;

impl Game {
    /// Runs that end the game the moment they are in: the home side in its last turn at bat (OBR 5.08(b), 7.01(g)(3)).
    pub(super) fn runs_to_win(&self) -> Option<u16> {
        let s = &self.situation;
        (s.half == Half::Bottom && s.inning >= self.code.innings)
            .then(|| s.score[0].saturating_add(1).saturating_sub(s.score[1]))
    }

    pub(super) fn end_turn(&mut self, before: super::Situation) {
        self.next_key += 1;
        let side = before.batting().index();
        let places = self.lineups[side].as_ref().map_or(1, |l| l.places().max(1)) as u8;
        if let Some(proper) = self.turn.proper {
            self.finished_turn = Some(FinishedTurn { step: self.steps.len(), proper, before });
        }
        self.next_place[side] = (before.place + 1) % places;
        self.next_batter();
    }

    /// The next place in the order comes to the plate.
    pub(super) fn next_batter(&mut self) {
        let side = self.situation.batting().index();
        let place = match &self.lineups[side] {
            Some(lineup) => {
                let places = lineup.places().max(1) as u8;
                let first = self.next_place[side] % places;
                let on_base = |player| self.situation.runners().any(|(_, r)| r.player == player);
                // After somebody has batted out of turn the next in order may be on base: he stays there and the one
                // after him bats (OBR 6.03(b)).
                let up = |place: &u8| match lineup.batter(*place) {
                    Some(player) => !on_base(player),
                    None => self.code.missing_batter_is_out,
                };
                (0..places).map(|i| (first + i) % places).find(up).unwrap_or(first)
            }
            None => 0,
        };
        self.next_place[side] = place;
        self.situation.place = place;
        self.situation.batter = self.lineups[side].as_ref().and_then(|l| l.batter(place));
        self.situation.count = self.code.starting_count;
        self.turn = Turn::begin(self.situation.batter, self.situation.pitcher);
    }

    /// Ends the half or the game where the play did. True if the half is over.
    pub(super) fn after_play(&mut self, left: u8) -> bool {
        let s = self.situation;
        let (bat, field) = (s.score[s.batting().index()], s.score[s.fielding().index()]);
        let won = s.half == Half::Bottom && s.inning >= self.code.innings && bat > field;
        let mercy = s.half == Half::Bottom && self.is_mercy(s.inning, bat.saturating_sub(field));
        if won || mercy {
            self.close_half(left);
            self.situation.phase = Phase::Over(if won { Ending::Played } else { Ending::Mercy });
            return true;
        }
        let scored = self.halves.last().map_or(0, |h| self.runs_in(h));
        let full = self.code.run_limit_in(s.inning).is_some_and(|limit| scored >= u16::from(limit));
        if s.outs >= OUTS || full {
            self.end_half(left, false);
            return true;
        }
        false
    }

    /// Runs of a half that is going on: the score now less the score at its first step.
    pub(super) fn runs_in(&self, half: &HalfInning) -> u16 {
        let side = half.half.batting().index();
        let before = half.first_step.checked_sub(1).and_then(|i| self.steps.get(i)).map_or(0, |s| s.after.score[side]);
        self.situation.score[side].saturating_sub(before)
    }

    pub(super) fn is_mercy(&self, innings_of_trailing_side: u8, lead: u16) -> bool {
        self.code.mercy.iter().any(|m| lead >= u16::from(m.lead) && innings_of_trailing_side >= m.after_inning)
    }

    pub(super) fn close_half(&mut self, left: u8) {
        if let Some(half) = self.halves.last_mut() {
            half.left_on_base = Some(left);
        }
    }

    pub(super) fn end_half(&mut self, left: u8, by_umpire: bool) {
        self.close_half(left);
        let s = self.situation;
        // A turn cut short by a runner's third out is begun anew by the same batter.
        let [visitors, home] = s.score;
        let last = s.inning >= self.code.innings;
        let over = match s.half {
            Half::Top => (last && home > visitors).then_some(Ending::Played),
            Half::Bottom if last && home != visitors => Some(Ending::Played),
            Half::Bottom => None,
        };
        let lead_of_home = home.saturating_sub(visitors);
        let mercy = match s.half {
            Half::Top => self.is_mercy(s.inning, lead_of_home),
            Half::Bottom => self.is_mercy(s.inning, visitors.saturating_sub(home)),
        };
        if let Some(ending) = over.or(mercy.then_some(Ending::Mercy)).filter(|_| !by_umpire || over.is_some()) {
            self.situation.phase = Phase::Over(ending);
            self.situation.bases = [None; 3];
            return;
        }
        match s.half {
            Half::Top => self.begin_half(s.inning, Half::Bottom),
            Half::Bottom => self.begin_half(s.inning.saturating_add(1), Half::Top),
        }
    }

    pub(super) fn begin_half(&mut self, inning: u8, half: Half) {
        self.situation.inning = inning;
        self.situation.half = half;
        self.situation.outs = 0;
        self.situation.bases = [None; 3];
        self.field_taken = false;
        self.situation.pitcher = self.pitcher_of(half.fielding());
        self.next_batter();
        for (back, base) in self.code.placed_runners_in(inning).to_vec().into_iter().enumerate() {
            if let Some(player) = self.batter_before(back)
                && let Some(slot) = self.situation.bases.get_mut(base as usize)
            {
                let key = RunnerKey(self.next_key);
                *slot = Some(OnBase { player, key, pitcher: self.situation.pitcher, placed: true });
                self.next_key += 1;
            }
        }
        self.halves.push(HalfInning {
            inning,
            half,
            first_step: self.steps.len() + 1,
            placed: self.situation.bases,
            left_on_base: None,
        });
    }

    /// The pitcher of a side; `None` where a coach or a machine pitches, whoever stands at the position.
    pub(super) fn pitcher_of(&self, side: Side) -> Option<PlayerId> {
        self.lineup(side).filter(|_| self.code.players_pitch).and_then(|l| l.at(Position::Pitcher))
    }

    /// The player before the one at bat, and, by `back`, those before him; empty places are passed over.
    pub(super) fn batter_before(&self, back: usize) -> Option<PlayerId> {
        let lineup = self.lineup(self.situation.batting())?;
        let places = lineup.places() as u8;
        let before = (1..places).map(|i| (self.situation.place + places - i) % places);
        before.filter_map(|place| lineup.batter(place)).nth(back)
    }

    pub(super) fn place_runner(&mut self, base: Base, player: PlayerId) -> Result<(), Refusal> {
        self.underway()?;
        self.on_roster(self.situation.batting(), player)?;
        if base == Base::Home {
            return Err(Refusal::NotABase);
        }
        if self.situation.on(base).is_some() {
            return Err(Refusal::BaseTaken(base));
        }
        if self.situation.batter == Some(player) || self.situation.runners().any(|(_, r)| r.player == player) {
            return Err(Refusal::AlreadyInPlay(player));
        }
        if self.halves.last().is_some_and(|half| half.placed[base as usize].is_some()) {
            return Err(Refusal::PlacedAlready(base));
        }
        let runner = OnBase { player, key: RunnerKey(self.next_key), pitcher: self.situation.pitcher, placed: true };
        self.next_key += 1;
        self.finished_turn = None;
        self.situation.bases[base as usize] = Some(runner);
        if let Some(half) = self.halves.last_mut() {
            half.placed[base as usize] = Some(runner);
        }
        Ok(())
    }
}
