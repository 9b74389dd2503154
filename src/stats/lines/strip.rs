//! Each pitcher's pitches by inning: how many, strikes, balls, and first-pitch strikes. A coach's tally, by custom; no
//! rule asks for it.

use crate::field::Side;
use crate::game::{Game, Play};
use crate::log::Event;
use crate::team::PlayerId;

/// One pitcher's innings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PitchStrip {
    /// Who.
    pub pitcher: PlayerId,
    /// Name or shirt number.
    pub name: String,
    /// Innings in which he pitched.
    pub innings: Vec<InningPitches>,
}

/// The pitches of one inning.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct InningPitches {
    /// Inning, from 1; 0 in a total.
    pub inning: u8,
    /// Pitches thrown and seen.
    pub pitches: u32,
    /// Of them strikes, balls in play included.
    pub strikes: u32,
    /// Of them balls, hit batters included.
    pub balls: u32,
    /// Turns at the plate of which he threw the first pitch and it was seen.
    pub first_pitches: u32,
    /// Of those first pitches, strikes.
    pub first_pitch_strikes: u32,
    /// Some pitches were missed: the counts are at least these.
    pub incomplete: bool,
}

impl PitchStrip {
    /// The sum of all innings.
    pub fn total(&self) -> InningPitches {
        let mut total = InningPitches::default();
        for inning in &self.innings {
            total.pitches += inning.pitches;
            total.strikes += inning.strikes;
            total.balls += inning.balls;
            total.first_pitches += inning.first_pitches;
            total.first_pitch_strikes += inning.first_pitch_strikes;
            total.incomplete |= inning.incomplete;
        }
        total
    }
}

impl Game {
    /// A side's pitchers in order of appearance, inning by inning.
    pub fn pitch_strips(&self, side: Side) -> Vec<PitchStrip> {
        let mut writer = Writer { game: self, strips: Vec::new(), turn: Turn::default() };
        for step in self.steps().iter().filter(|step| step.conflict.is_none()) {
            if let Some(play) = step.play.as_deref().filter(|play| play.before.fielding() == side) {
                writer.play(play);
            }
            let after = step.after;
            if matches!(self.event(step), Event::SetCount(_)) && after.fielding() == side {
                writer.missed(after.pitcher, after.inning);
            }
        }
        writer.settle();
        writer.strips
    }
}

struct Writer<'a> {
    game: &'a Game,
    strips: Vec<PitchStrip>,
    turn: Turn,
}

/// The turn under way.
#[derive(Default)]
struct Turn {
    /// Its first pitch, once thrown: by whom, in which inning, whether it was a strike.
    first: Option<(PlayerId, u8, bool)>,
    /// Pitches were missed, perhaps the first among them.
    missed: bool,
}

impl Writer<'_> {
    fn play(&mut self, play: &Play) {
        let Some(pitcher) = play.before.pitcher else { return };
        let inning = play.before.inning;
        if let Some(thrown) = play.thrown.filter(|t| t.is_thrown()) {
            let strike = thrown.is_strike();
            self.turn.first.get_or_insert((pitcher, inning, strike));
            let pitches = self.of(pitcher, inning);
            pitches.pitches += 1;
            pitches.strikes += u32::from(strike);
            pitches.balls += u32::from(!strike);
        }
        if play.pitches_missed {
            self.missed(Some(pitcher), inning);
        }
        if play.turn.is_some() || play.ends_half {
            self.settle();
        }
    }

    fn missed(&mut self, pitcher: Option<PlayerId>, inning: u8) {
        self.turn.missed = true;
        if let Some(pitcher) = pitcher {
            self.of(pitcher, inning).incomplete = true;
        }
    }

    /// The turn is over: its first pitch counts as one, unless it may have been among those missed.
    fn settle(&mut self) {
        let Turn { first, missed } = core::mem::take(&mut self.turn);
        let Some((pitcher, inning, strike)) = first.filter(|_| !missed) else { return };
        let pitches = self.of(pitcher, inning);
        pitches.first_pitches += 1;
        pitches.first_pitch_strikes += u32::from(strike);
    }

    fn of(&mut self, pitcher: PlayerId, inning: u8) -> &mut InningPitches {
        let at = self.strips.iter().position(|s| s.pitcher == pitcher).unwrap_or_else(|| {
            self.strips.push(PitchStrip { pitcher, name: self.game.label(pitcher), innings: Vec::new() });
            self.strips.len() - 1
        });
        let innings = &mut self.strips[at].innings;
        let at = innings.iter().position(|i| i.inning == inning).unwrap_or_else(|| {
            innings.push(InningPitches { inning, ..InningPitches::default() });
            innings.len() - 1
        });
        &mut innings[at]
    }
}
