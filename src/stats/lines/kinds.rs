//! What a pitcher threw, where somebody noted it: pitches by kind, and the speeds measured. Notes, not statistics of the
//! rule book: a pitch nobody noted is simply not among them.

use serde::Serialize;

use crate::field::Side;
use crate::game::{Game, Thrown};
use crate::log::{Event, PitchKind};
use crate::order::put_in_order;
use crate::team::PlayerId;

/// What was noted of one pitcher's pitches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PitchNotes {
    /// Who; `None` where nobody stood at the position.
    pub pitcher: Option<PlayerId>,
    /// Kinds with how often each was noted, the most frequent first.
    pub kinds: Vec<(PitchKind, u32)>,
    /// Every speed measured, in tenths of a mile per hour, in the order of the game.
    pub speeds: Vec<u16>,
}

impl PitchNotes {
    /// The fastest, in tenths of a mile per hour.
    pub fn top_speed(&self) -> Option<u16> {
        self.speeds.iter().copied().max()
    }

    /// The mean of the speeds measured, in tenths of a mile per hour, rounded half up.
    pub fn mean_speed(&self) -> Option<u16> {
        let n = self.speeds.len() as u64;
        let sum: u64 = self.speeds.iter().map(|s| u64::from(*s)).sum();
        (n > 0).then(|| u16::try_from((2 * sum + n) / (2 * n)).unwrap_or(u16::MAX))
    }

    fn note(&mut self, kind: Option<PitchKind>, speed: Option<u16>) {
        if let Some(kind) = kind {
            match self.kinds.iter_mut().find(|(k, _)| *k == kind) {
                Some((_, times)) => *times += 1,
                None => self.kinds.push((kind, 1)),
            }
        }
        self.speeds.extend(speed);
    }
}

/// The notes on a side's pitchers, in order of appearance; pitchers without any are left out.
pub(super) fn of(game: &Game, side: Side) -> Vec<PitchNotes> {
    let mut all: Vec<PitchNotes> = Vec::new();
    for step in game.steps() {
        let Some(play) = step.play.as_deref() else { continue };
        if play.before.fielding() != side || !play.thrown.is_some_and(Thrown::is_thrown) {
            continue;
        }
        let (kind, speed) = match game.event(step) {
            Event::Pitch(pitch) => (pitch.kind, pitch.speed),
            Event::InPlay(in_play) => (in_play.kind, in_play.speed),
            _ => (None, None),
        };
        if kind.is_none() && speed.is_none() {
            continue;
        }
        let pitcher = play.before.pitcher;
        let at = all.iter().position(|notes| notes.pitcher == pitcher).unwrap_or_else(|| {
            all.push(PitchNotes { pitcher, kinds: Vec::new(), speeds: Vec::new() });
            all.len() - 1
        });
        all[at].note(kind, speed);
    }
    for notes in &mut all {
        put_in_order(&mut notes.kinds, |a, b| (b.1, a.0) < (a.1, b.0));
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::file::{self, GameFile};
    use crate::log::{Entry, EntryId, Pitch};

    fn harbor() -> Game {
        let text = include_str!("../../../tests/games/harbor-league.benchbook.json");
        Game::replay(file::read(text).expect("the game file reads").log)
    }

    /// Notes on an entry, by a correction of it.
    fn note(game: &mut Game, entry: EntryId, kind: Option<PitchKind>, speed: Option<u16>) {
        let step = game.steps().iter().find(|s| s.play.as_deref().is_some_and(|p| p.entry == entry)).expect("a play");
        let event = match game.event(step).clone() {
            Event::Pitch(pitch) => Event::Pitch(Pitch { kind, speed, ..pitch }),
            Event::InPlay(mut in_play) => {
                (in_play.kind, in_play.speed) = (kind, speed);
                Event::InPlay(in_play)
            }
            other => panic!("{other:?} is no pitch"),
        };
        let event = Event::Replace { entry, event: Box::new(event) };
        game.record(Entry { id: game.next_id(), at: None, event }).expect("a note is never refused");
    }

    fn first_thrown(game: &Game, side: Side, n: usize) -> Vec<EntryId> {
        let own = game.plays().filter(|p| p.before.fielding() == side && p.thrown.is_some_and(Thrown::is_thrown));
        own.map(|p| p.entry).take(n).collect()
    }

    #[test]
    fn a_book_without_notes_has_none() {
        let game = harbor();
        assert!(Side::BOTH.into_iter().all(|side| game.pitch_notes(side).is_empty()));
    }

    #[test]
    fn notes_change_no_other_number_and_come_back_from_a_file() {
        let mut game = harbor();
        let before = game.box_score();
        let on = first_thrown(&game, Side::Home, 4);
        note(&mut game, on[0], Some(PitchKind::Curveball), Some(601));
        note(&mut game, on[1], Some(PitchKind::Fastball), Some(644));
        note(&mut game, on[2], Some(PitchKind::Fastball), None);
        note(&mut game, on[3], None, Some(630));
        assert_eq!(game.box_score(), before);
        let text = file::write(&GameFile { id: "notes".into(), log: game.log().to_vec() });
        let again = Game::replay(file::read(&text).expect("it reads").log);
        let [notes] = again.pitch_notes(Side::Home).try_into().expect("one pitcher has notes");
        assert_eq!(notes.kinds, [(PitchKind::Fastball, 2), (PitchKind::Curveball, 1)]);
        assert_eq!(notes.top_speed(), Some(644));
        // (60.1 + 64.4 + 63.0) / 3 = 62.5
        assert_eq!(notes.mean_speed(), Some(625));
        assert_eq!(again.pitch_notes(Side::Visitors), []);
    }

    #[test]
    fn a_note_taken_back_is_gone() {
        let mut game = harbor();
        let on = first_thrown(&game, Side::Visitors, 1);
        note(&mut game, on[0], Some(PitchKind::Rise), Some(550));
        assert_eq!(game.pitch_notes(Side::Visitors).len(), 1);
        note(&mut game, on[0], None, None);
        assert_eq!(game.pitch_notes(Side::Visitors), []);
    }
}
