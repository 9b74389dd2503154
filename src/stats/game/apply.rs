//! One entry applied to the game: checked whole before anything changes.

use std::sync::Arc;

use super::moves::{Batter, Limits, OUTS, Resolved, resolve, with_forced};
use super::{
    Defence, Ending, FinishedTurn, Game, HalfInning, OnBase, Phase, Play, Refusal, RunnerKey, Thrown, Turn, TurnEnd,
    TurnKind,
};
use crate::field::{Base, Count, Half, Position, Side};
use crate::log::{
    Action, Batted, Call, Cause, EntryId, Event, How, InPlay, Move, Out, Pitch, Start, Status, UnseenResult,
};
use crate::team::{Card, Change, Lineup, Player, PlayerId, Role};

/// A play before it is checked.
struct Draft {
    entry: EntryId,
    thrown: Option<Thrown>,
    batted: Option<Batted>,
    action: Action,
    turn: Option<TurnKind>,
    /// The count after it, if the turn goes on.
    count: Count,
    continues: bool,
    pitches_missed: bool,
}

type Applied = Result<Option<Box<Play>>, Refusal>;

impl Game {
    pub(super) fn apply(&mut self, id: EntryId, event: &Event) -> Applied {
        match event {
            Event::Heading(heading) => self.heading = heading.clone(),
            Event::Rules(code) => {
                self.before_game()?;
                self.code = (**code).clone();
            }
            Event::Team { side, name } => self.teams[side.index()].clone_from(name),
            Event::Player { side, player } => self.add_player(*side, player)?,
            Event::Card { side, card } => self.set_card(*side, card)?,
            Event::PlayBall => self.play_ball()?,
            Event::Pitch(pitch) => return self.pitch(id, pitch),
            Event::InPlay(in_play) => return self.in_play(id, in_play),
            Event::Running(running) => {
                if running.action.is_empty() {
                    return Err(Refusal::NothingHappened);
                }
                if running.same_play && !self.steps.last().is_some_and(|s| s.play.is_some()) {
                    return Err(Refusal::NoPlayBefore);
                }
                let mut draft = self.draft(id, None, running.action.clone());
                draft.continues = running.same_play;
                return self.play_out(draft);
            }
            Event::IntentionalWalk => {
                self.walks()?;
                let mut draft = self.draft(id, None, Action::default());
                draft.turn = Some(TurnKind::IntentionalWalk);
                return self.play_out(draft);
            }
            Event::Unseen(unseen) => {
                let mut draft = self.draft(id, None, unseen.action.clone());
                draft.turn = Some(match unseen.result {
                    UnseenResult::Walk => TurnKind::Walk,
                    UnseenResult::IntentionalWalk => TurnKind::IntentionalWalk,
                    UnseenResult::HitByPitch => TurnKind::HitByPitch,
                    UnseenResult::StrikeoutSwinging => TurnKind::Strikeout { looking: false },
                    UnseenResult::StrikeoutLooking => TurnKind::Strikeout { looking: true },
                    UnseenResult::CatcherInterference => TurnKind::CatcherInterference,
                });
                draft.pitches_missed = true;
                return self.play_out(draft);
            }
            Event::SetCount(count) => {
                self.ready()?;
                let walked = self.code.balls_for_walk.is_some_and(|n| count.balls >= n);
                if walked || count.strikes >= self.code.strikes_for_out {
                    return Err(Refusal::ImpossibleCount(count.balls, count.strikes));
                }
                self.situation.count = *count;
                self.turn.pitches_missed = true;
            }
            Event::Change { side, change } => self.change(*side, change)?,
            Event::BatterUp { player } => self.batter_up(*player)?,
            Event::EmptyPlace => return self.empty_place(id),
            Event::OutOfTurnAppeal => return self.out_of_turn_appeal(id),
            Event::PlaceRunner { base, player } => self.place_runner(*base, *player)?,
            Event::EndHalf { .. } => {
                self.underway()?;
                self.end_half(self.situation.runners().count() as u8, true);
            }
            Event::Status(status) => self.set_status(status)?,
            Event::Protest { .. } | Event::Note { .. } => {}
            Event::Judgment(judgment) => {
                if let Some(on) = judgment.on()
                    && self.play(on).is_none()
                {
                    return Err(Refusal::NotAPlay(on));
                }
                self.judgments.push((id, judgment.clone()));
            }
            Event::Retract { .. } | Event::Reinstate { .. } | Event::Replace { .. } | Event::Insert { .. } => {
                return Err(Refusal::CorrectionInCorrection);
            }
        }
        Ok(None)
    }

    // ---- Before the game ----

    fn before_game(&self) -> Result<(), Refusal> {
        if self.situation.phase == Phase::Before { Ok(()) } else { Err(Refusal::GameHasBegun) }
    }

    fn add_player(&mut self, side: Side, player: &Player) -> Result<(), Refusal> {
        if self.roster.get(&player.id).is_some_and(|(s, _)| *s != side) {
            return Err(Refusal::OtherSidesPlayer(player.id));
        }
        self.roster.insert(player.id, (side, player.clone()));
        Ok(())
    }

    fn on_roster(&self, side: Side, player: PlayerId) -> Result<(), Refusal> {
        match self.roster.get(&player) {
            Some((s, _)) if *s == side => Ok(()),
            Some(_) => Err(Refusal::OtherSidesPlayer(player)),
            None => Err(Refusal::UnknownPlayer(player)),
        }
    }

    fn set_card(&mut self, side: Side, card: &Card) -> Result<(), Refusal> {
        self.before_game()?;
        for a in card.everyone() {
            self.on_roster(side, a.player)?;
        }
        self.lineups[side.index()] = Some(Lineup::from_card(card)?);
        Ok(())
    }

    fn play_ball(&mut self) -> Result<(), Refusal> {
        self.before_game()?;
        for side in Side::BOTH {
            let lineup = self.lineup(side).ok_or(Refusal::NoCard(side))?;
            if self.code.players_pitch && lineup.at(Position::Pitcher).is_none() {
                return Err(Refusal::NoPitcher(side));
            }
        }
        for side in Side::BOTH {
            self.refresh_defence(side);
        }
        self.situation.phase = Phase::Underway;
        self.begin_half(1, Half::Top);
        Ok(())
    }

    fn refresh_defence(&mut self, side: Side) {
        if let Some(lineup) = &self.lineups[side.index()] {
            self.defence[side.index()] = Arc::new(Defence::of(lineup));
        }
    }

    // ---- Play ----

    fn underway(&self) -> Result<(), Refusal> {
        match self.situation.phase {
            Phase::Underway => Ok(()),
            Phase::Before => Err(Refusal::NotBegun),
            Phase::Delayed | Phase::Suspended => Err(Refusal::Stopped),
            Phase::Over(_) => Err(Refusal::GameOver),
        }
    }

    /// Play is on, the defence is in order and somebody is at the plate.
    fn ready(&self) -> Result<PlayerId, Refusal> {
        self.in_order()?;
        self.situation.batter.ok_or(Refusal::NobodyAtPlate)
    }

    fn in_order(&self) -> Result<(), Refusal> {
        self.underway()?;
        match self.lineup(self.situation.fielding()).and_then(Lineup::clash) {
            Some(position) => Err(Refusal::TwoAtPosition(position)),
            None => Ok(()),
        }
    }

    fn walks(&self) -> Result<(), Refusal> {
        if self.code.balls_for_walk.is_some() { Ok(()) } else { Err(Refusal::NoWalks) }
    }

    fn draft(&self, entry: EntryId, thrown: Option<Thrown>, action: Action) -> Draft {
        Draft {
            entry,
            thrown,
            batted: None,
            action,
            turn: None,
            count: self.situation.count,
            continues: false,
            pitches_missed: false,
        }
    }

    fn pitch(&mut self, id: EntryId, pitch: &Pitch) -> Applied {
        self.ready()?;
        let call = pitch.call;
        let mut draft = self.draft(id, Some(Thrown::Called(call)), pitch.action.clone());
        let count = self.situation.count;
        let last_strike = count.strikes + 1 >= self.code.strikes_for_out;
        match call {
            _ if call.is_ball() => {
                if self.code.balls_for_walk.is_some_and(|n| count.balls + 1 >= n) {
                    draft.turn = Some(match call {
                        Call::IntentionalBall => TurnKind::IntentionalWalk,
                        _ => TurnKind::Walk,
                    });
                } else if self.code.balls_for_walk.is_some() {
                    draft.count.balls += 1;
                }
            }
            Call::HitByPitch => draft.turn = Some(TurnKind::HitByPitch),
            Call::CatcherInterference => draft.turn = Some(TurnKind::CatcherInterference),
            Call::BatterInterference => draft.turn = Some(TurnKind::BatterInterference),
            Call::Foul if last_strike && !self.code.foul_is_third_strike => {}
            _ if last_strike => {
                let looking = matches!(call, Call::CalledStrike | Call::AutomaticStrike);
                draft.turn = Some(TurnKind::Strikeout { looking });
            }
            _ => draft.count.strikes += 1,
        }
        self.play_out(draft)
    }

    fn in_play(&mut self, id: EntryId, in_play: &InPlay) -> Applied {
        self.ready()?;
        if !in_play.action.moves.iter().any(|m| m.from == Start::Batter) {
            return Err(Refusal::BatterMustMove);
        }
        let defence = &self.defence[self.situation.fielding().index()];
        if let Some(nobody) = in_play.ball.fielders.iter().find(|p| defence.at(**p).is_none()) {
            self.may_be_missing(*nobody)?;
        }
        let mut draft = self.draft(id, Some(Thrown::InPlay), in_play.action.clone());
        draft.batted = Some(in_play.ball.clone());
        draft.turn = Some(TurnKind::InPlay);
        draft.pitches_missed = in_play.pitches_missed;
        self.play_out(draft)
    }

    /// Where no player pitches, the machine's or coach's position may appear in a chain of fielders.
    fn may_be_missing(&self, position: Position) -> Result<(), Refusal> {
        if position == Position::Pitcher && !self.code.players_pitch {
            Ok(())
        } else {
            Err(Refusal::NobodyAt(position))
        }
    }

    /// Checks a play whole, then carries it out.
    fn play_out(&mut self, draft: Draft) -> Applied {
        let at_plate = if draft.turn.is_some() { Some(self.ready()?) } else { None };
        self.in_order()?;
        self.check_fielders(&draft.action)?;
        let moves = self.all_moves(draft.turn, draft.action.moves)?;
        let pitcher = draft.turn.and_then(|kind| self.turn.charged_pitcher(kind));
        let batter = at_plate.map(|player| Batter { player, key: RunnerKey(self.next_key), pitcher });
        let limits = Limits {
            misplays: draft.action.misplays.len(),
            runs_to_win: self.runs_to_win().filter(|_| !draft.batted.as_ref().is_some_and(|b| b.left_park)),
        };
        let resolved = resolve(&self.situation, batter.as_ref(), moves, &limits)?;

        // From here on nothing is refused.
        let before = self.situation;
        let fielding = before.fielding().index();
        if !self.field_taken {
            // Only now is it sure that a pinch hitter stayed in the game to field.
            self.field_taken = true;
            if let Some(lineup) = &mut self.lineups[fielding] {
                lineup.take_field();
            }
        }
        if draft.thrown.is_some() || (draft.turn.is_some() && !draft.continues) {
            self.finished_turn = None;
        }
        let turn = draft.turn.map(|kind| TurnEnd {
            kind,
            batter: self.turn.charged_batter(kind, self.code.strikes_for_out),
            pitcher,
            place: before.place,
            count: before.count,
        });
        let pitches_missed = draft.pitches_missed || (turn.is_some() && self.turn.pitches_missed);
        let Resolved { moves, bases, outs, runs, left } = resolved;
        let mut play = Box::new(Play {
            entry: draft.entry,
            before,
            thrown: draft.thrown,
            batted: draft.batted,
            moves,
            misplays: draft.action.misplays,
            turn,
            defence: Arc::clone(&self.defence[fielding]),
            continues: draft.continues,
            ends_half: false,
            nullified: false,
            pitches_missed,
        });
        self.situation.bases = bases;
        self.situation.outs += outs;
        self.situation.score[before.batting().index()] += u16::from(runs);
        self.situation.count = draft.count;
        if turn.is_some() {
            self.end_turn(before);
        }
        play.ends_half = self.after_play(left);
        Ok(Some(play))
    }

    fn check_fielders(&self, action: &Action) -> Result<(), Refusal> {
        let defence = &self.defence[self.situation.fielding().index()];
        let outs = action.moves.iter().filter_map(|m| m.out.as_ref()).flat_map(|out| &out.by);
        let errors = action.misplays.iter().flat_map(|m| m.after.iter().chain([&m.by]));
        for position in outs.chain(errors) {
            if defence.at(*position).is_none() {
                self.may_be_missing(*position)?;
            }
        }
        let steals = action.moves.iter().any(|m| m.legs.iter().any(|leg| leg.cause == Cause::Steal));
        if steals && !self.code.stealing {
            return Err(Refusal::NoStealing);
        }
        Ok(())
    }

    /// The moves recorded, with those the rules add.
    fn all_moves(&self, turn: Option<TurnKind>, mut moves: Vec<Move>) -> Result<Vec<Move>, Refusal> {
        let batter_moves = moves.iter().any(|m| m.from == Start::Batter);
        match turn {
            Some(TurnKind::Walk | TurnKind::IntentionalWalk | TurnKind::HitByPitch | TurnKind::CatcherInterference) => {
                Ok(with_forced(&self.situation, moves))
            }
            Some(TurnKind::Strikeout { .. }) if batter_moves => {
                let may_run = self.code.dropped_third_strike
                    && (self.situation.on(Base::First).is_none() || self.situation.outs + 1 >= OUTS);
                let reaches = moves.iter().any(|m| m.from == Start::Batter && !m.legs.is_empty());
                if reaches && !may_run { Err(Refusal::BatterCannotRun) } else { Ok(moves) }
            }
            Some(TurnKind::Strikeout { .. }) => {
                let out = Out::new(How::Strikeout, Base::First, self.catcher_putout());
                moves.insert(0, Move::out(Start::Batter, out));
                Ok(moves)
            }
            Some(TurnKind::BatterInterference) if !batter_moves => {
                let out = Out::new(How::Interference, Base::First, self.catcher_putout());
                moves.push(Move::out(Start::Batter, out));
                Ok(moves)
            }
            None if batter_moves => Err(Refusal::BatterDoesNotRun),
            _ => Ok(moves),
        }
    }

    /// The catcher's automatic putout, where somebody catches (OBR 9.09(b)).
    fn catcher_putout(&self) -> &'static [Position] {
        let defence = &self.defence[self.situation.fielding().index()];
        if defence.at(Position::Catcher).is_some() { &[Position::Catcher] } else { &[] }
    }

    /// Runs that end the game the moment they are in: the home side in its last turn at bat (OBR 5.08(b), 7.01(g)(3)).
    fn runs_to_win(&self) -> Option<u16> {
        let s = &self.situation;
        (s.half == Half::Bottom && s.inning >= self.code.innings).then(|| (s.score[0] + 1).saturating_sub(s.score[1]))
    }

    fn end_turn(&mut self, before: super::Situation) {
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
    fn next_batter(&mut self) {
        let side = self.situation.batting().index();
        let place = match &self.lineups[side] {
            Some(lineup) => {
                let places = lineup.places().max(1) as u8;
                let first = self.next_place[side] % places;
                if self.code.missing_batter_is_out {
                    first
                } else {
                    (0..places).map(|i| (first + i) % places).find(|p| lineup.batter(*p).is_some()).unwrap_or(first)
                }
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
    fn after_play(&mut self, left: u8) -> bool {
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
    fn runs_in(&self, half: &HalfInning) -> u16 {
        let side = half.half.batting().index();
        let before = half.first_step.checked_sub(1).and_then(|i| self.steps.get(i)).map_or(0, |s| s.after.score[side]);
        self.situation.score[side] - before
    }

    fn is_mercy(&self, innings_of_trailing_side: u8, lead: u16) -> bool {
        self.code.mercy.iter().any(|m| lead >= u16::from(m.lead) && innings_of_trailing_side >= m.after_inning)
    }

    fn close_half(&mut self, left: u8) {
        if let Some(half) = self.halves.last_mut() {
            half.left_on_base = Some(left);
        }
    }

    fn end_half(&mut self, left: u8, by_umpire: bool) {
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

    fn begin_half(&mut self, inning: u8, half: Half) {
        self.situation.inning = inning;
        self.situation.half = half;
        self.situation.outs = 0;
        self.situation.bases = [None; 3];
        let fielding = half.fielding();
        self.field_taken = false;
        self.situation.pitcher = self.lineups[fielding.index()].as_ref().and_then(|l| l.at(Position::Pitcher));
        self.next_batter();
        for (back, base) in self.code.placed_runners_in(inning).to_vec().into_iter().enumerate() {
            if let Some(player) = self.batter_before(back as u8 + 1)
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

    /// The player `back` places before the one at bat.
    fn batter_before(&self, back: u8) -> Option<PlayerId> {
        let lineup = self.lineup(self.situation.batting())?;
        let places = lineup.places() as u8;
        let back = back % places.max(1);
        lineup.batter((self.situation.place + places - back) % places.max(1))
    }

    fn place_runner(&mut self, base: Base, player: PlayerId) -> Result<(), Refusal> {
        self.underway()?;
        self.on_roster(self.situation.batting(), player)?;
        if base == Base::Home {
            return Err(Refusal::NotABase);
        }
        if self.situation.on(base).is_some() {
            return Err(Refusal::BaseTaken(base));
        }
        if self.situation.runners().any(|(_, r)| r.player == player) {
            return Err(Refusal::BatterOnBase(player));
        }
        let runner = OnBase { player, key: RunnerKey(self.next_key), pitcher: self.situation.pitcher, placed: true };
        self.next_key += 1;
        self.situation.bases[base as usize] = Some(runner);
        if let Some(half) = self.halves.last_mut() {
            half.placed[base as usize] = Some(runner);
        }
        Ok(())
    }

    // ---- People ----

    fn change(&mut self, side: Side, change: &Change) -> Result<(), Refusal> {
        if let Phase::Over(_) = self.situation.phase {
            return Err(Refusal::GameOver);
        }
        if self.situation.phase == Phase::Before {
            return Err(Refusal::NotBegun);
        }
        let at_bat = side == self.situation.batting();
        match change {
            Change::Substitute { incoming, .. } => self.on_roster(side, *incoming)?,
            Change::Join(a) => self.on_roster(side, a.player)?,
            Change::Shift { .. } | Change::EndDesignatedHitter { .. } | Change::Leave { .. } => {}
        }
        if let Change::Substitute { outgoing, role, .. } = change {
            match role {
                Role::PinchHitter if !at_bat => return Err(Refusal::NotAtBat),
                Role::PinchHitter if self.situation.batter != Some(*outgoing) => {
                    return Err(Refusal::NotTheBatter(*outgoing));
                }
                Role::PinchRunner | Role::CourtesyRunner
                    if !at_bat || !self.situation.runners().any(|(_, r)| r.player == *outgoing) =>
                {
                    return Err(Refusal::NotOnBase(*outgoing));
                }
                _ => {}
            }
        }
        let lineup = self.lineup(side).ok_or(Refusal::NoCard(side))?.changed(change, &self.code)?;
        self.lineups[side.index()] = Some(lineup);
        self.refresh_defence(side);
        self.field_taken &= at_bat;
        if let Change::Substitute { outgoing, incoming, .. } = change
            && at_bat
        {
            for runner in self.situation.bases.iter_mut().flatten().filter(|r| r.player == *outgoing) {
                runner.player = *incoming;
            }
        }
        self.refresh_people();
        Ok(())
    }

    /// Batter and pitcher as the lineups now have them.
    fn refresh_people(&mut self) {
        let count = self.situation.count;
        let pitcher = self.defence[self.situation.fielding().index()].at(Position::Pitcher);
        if pitcher != self.situation.pitcher {
            self.situation.pitcher = pitcher;
            let untouched = count == self.code.starting_count;
            if let Some(pitcher) = pitcher {
                if untouched {
                    self.turn.pitchers.clear();
                }
                let since = if untouched { Count::default() } else { count };
                self.turn.pitchers.push((pitcher, since));
            }
        }
        if self.turn.proper.is_none() {
            let batter = self.lineup(self.situation.batting()).and_then(|l| l.batter(self.situation.place));
            if batter != self.situation.batter {
                self.situation.batter = batter;
                if count == self.code.starting_count {
                    self.turn.batters.clear();
                }
                if let Some(batter) = batter {
                    self.turn.batters.push((batter, count.strikes));
                } else if !self.code.missing_batter_is_out {
                    self.next_batter();
                }
            }
        }
    }

    fn batter_up(&mut self, player: PlayerId) -> Result<(), Refusal> {
        let proper = self.ready()?;
        let side = self.situation.batting();
        let place = self.lineup(side).and_then(|l| l.place_of(player)).ok_or(Refusal::NotInGame(player))?;
        if self.situation.runners().any(|(_, r)| r.player == player) {
            return Err(Refusal::BatterOnBase(player));
        }
        let proper = self.turn.proper.unwrap_or((proper, self.situation.place));
        self.turn.proper = (proper.0 != player).then_some(proper);
        self.situation.batter = Some(player);
        self.situation.place = place;
        self.turn.batters = vec![(player, 0)];
        Ok(())
    }

    fn empty_place(&mut self, id: EntryId) -> Applied {
        self.in_order()?;
        if self.situation.batter.is_some() {
            return Err(Refusal::PlaceIsFilled);
        }
        let before = self.situation;
        let play = Box::new(Play {
            entry: id,
            before,
            thrown: None,
            batted: None,
            moves: Vec::new(),
            misplays: Vec::new(),
            turn: Some(TurnEnd {
                kind: TurnKind::EmptyPlace,
                batter: None,
                pitcher: before.pitcher,
                place: before.place,
                count: before.count,
            }),
            defence: Arc::clone(&self.defence[before.fielding().index()]),
            continues: false,
            ends_half: before.outs + 1 >= OUTS,
            nullified: false,
            pitches_missed: false,
        });
        self.situation.outs += 1;
        self.end_turn(before);
        self.after_play(before.runners().count() as u8);
        Ok(Some(play))
    }

    /// OBR 6.03(b), 9.03(d): before the turn is over the proper batter takes the count; after it and before the next
    /// pitch the proper batter is out and what the improper one did is undone.
    fn out_of_turn_appeal(&mut self, id: EntryId) -> Applied {
        if let Some((proper, place)) = self.turn.proper {
            self.underway()?;
            self.situation.batter = Some(proper);
            self.situation.place = place;
            self.turn.batters = vec![(proper, 0)];
            self.turn.proper = None;
            return Ok(None);
        }
        let Some(finished) = self.finished_turn.take() else { return Err(Refusal::NothingToAppeal) };
        let (proper, place) = finished.proper;
        if let Some(play) = self.steps.get_mut(finished.step).and_then(|s| s.play.as_mut()) {
            play.nullified = true;
        }
        self.halves.retain(|h| h.first_step <= finished.step);
        if let Some(half) = self.halves.last_mut() {
            half.left_on_base = None;
        }
        self.situation = finished.before;
        self.situation.place = place;
        self.situation.batter = Some(proper);
        self.next_place[self.situation.batting().index()] = place;
        self.turn = Turn::begin(Some(proper), self.situation.pitcher);
        let out = Out::new(How::OutOfTurn, Base::First, self.catcher_putout());
        let mut draft =
            self.draft(id, None, Action { moves: vec![Move::out(Start::Batter, out)], misplays: Vec::new() });
        draft.turn = Some(TurnKind::OutOfTurn);
        self.play_out(draft)
    }

    // ---- The game ----

    fn set_status(&mut self, status: &Status) -> Result<(), Refusal> {
        let phase = self.situation.phase;
        let stopped = matches!(phase, Phase::Delayed | Phase::Suspended);
        let phase = match status {
            Status::Resumed if stopped => Phase::Underway,
            Status::Resumed => return Err(Refusal::NotStopped),
            Status::Final if matches!(phase, Phase::Over(_)) => phase,
            Status::Forfeited { winner, .. } if !matches!(phase, Phase::Over(_)) => {
                Phase::Over(Ending::Forfeited(*winner))
            }
            _ if phase == Phase::Before => return Err(Refusal::NotBegun),
            _ if matches!(phase, Phase::Over(_)) => return Err(Refusal::GameOver),
            Status::Delayed { .. } => Phase::Delayed,
            Status::Suspended { .. } => Phase::Suspended,
            Status::Called { .. } => Phase::Over(Ending::Called),
            Status::Final => Phase::Over(Ending::Declared),
            Status::Forfeited { winner, .. } => Phase::Over(Ending::Forfeited(*winner)),
        };
        if matches!(phase, Phase::Over(_)) && self.halves.last().is_some_and(|h| h.left_on_base.is_none()) {
            self.close_half(self.situation.runners().count() as u8);
        }
        self.situation.phase = phase;
        Ok(())
    }
}
