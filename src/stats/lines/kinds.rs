//! What a pitcher threw, where somebody noted it: pitches by kind, and the speeds measured. Notes, not statistics of the
//! rule book: a pitch nobody noted is simply not among them.

use serde::Serialize;

use crate::field::Side;
use crate::game::{Game, Thrown};
use crate::log::{Event, PitchKind};
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
        notes.kinds.sort_by_key(|(kind, times)| (core::cmp::Reverse(*times), *kind));
    }
    all
}
