//! One entry applied to the game: checked whole before anything changes.

use super::{Game, Play, Refusal, TurnKind};
use crate::log::{Action, EntryId, Event, Start, UnseenResult};

pub(super) type Applied = Result<Option<Box<Play>>, Refusal>;

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
                if running.same_play {
                    let before = self.steps.last().and_then(|step| step.play.as_deref());
                    let before = before.filter(|play| !play.ends_half).ok_or(Refusal::NoPlayBefore)?;
                    if before.is_dead() {
                        return Err(Refusal::DeadBall(running.action.moves.first().map_or(Start::Batter, |m| m.from)));
                    }
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
                if matches!(unseen.result, UnseenResult::Walk | UnseenResult::IntentionalWalk) {
                    self.walks()?;
                }
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
                self.finished_turn = None;
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
}
