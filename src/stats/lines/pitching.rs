//! A pitcher's line (OBR 9.02(c)).

use serde::Serialize;

use crate::field::{Outs, Side};
use crate::game::{Game, Thrown};
use crate::rates::{self, Rate};
use crate::ruling::decision::Decisions;
use crate::ruling::{BatterResult, Book, GotAway};
use crate::team::PlayerId;

/// What one pitcher did.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PitchingLine {
    /// Who; `None` in a total.
    pub player: Option<PlayerId>,
    /// Name or shirt number.
    pub name: String,
    /// Outs made while he pitched: his innings, in thirds.
    pub outs: Outs,
    /// Batters charged to him.
    pub batters_faced: u32,
    /// Hits allowed.
    pub hits: u32,
    /// Runs charged (OBR 9.16(g)).
    pub runs: u32,
    /// Earned runs (OBR 9.16).
    pub earned_runs: u32,
    /// Bases on balls, intentional ones included.
    pub walks: u32,
    /// Intentional bases on balls.
    pub intentional_walks: u32,
    /// Strikeouts.
    pub strikeouts: u32,
    /// Batters hit.
    pub hit_batters: u32,
    /// Wild pitches.
    pub wild_pitches: u32,
    /// Balks.
    pub balks: u32,
    /// Home runs allowed.
    pub home_runs: u32,
    /// Pitches thrown and seen.
    pub pitches: u32,
    /// Of them balls, hit batters included.
    pub balls: u32,
    /// Of them strikes, balls in play included.
    pub strikes: u32,
    /// Some pitches were missed: the counts are at least these.
    pub pitches_incomplete: bool,
    /// Pitches by inning, from the first he pitched in: inning, pitches.
    pub by_inning: Vec<(u8, u32)>,
    /// Pitches when the present or last batter's turn began: some leagues reckon rest by it.
    pub pitches_before_last_batter: u32,
    /// "W", "L" or "S", once the game is over (OBR 9.17, 9.19).
    pub decision: Option<String>,
}

impl PitchingLine {
    /// Innings pitched, as outs; prints as the trade does ("6.1").
    pub const fn innings(&self) -> Outs {
        self.outs
    }

    /// Earned runs (OBR 9.16).
    pub const fn earned_runs(&self) -> u32 {
        self.earned_runs
    }

    /// Earned run average over `regulation` innings (OBR 9.21(e)).
    pub const fn earned_run_average(&self, regulation: u8) -> Rate {
        rates::earned_run_average(self.earned_runs, self.outs, regulation)
    }

    /// Adds another line's counts; innings keep apart by number.
    pub fn add(&mut self, other: &Self) {
        self.outs += other.outs;
        let pairs: [(&mut u32, u32); 14] = [
            (&mut self.batters_faced, other.batters_faced),
            (&mut self.hits, other.hits),
            (&mut self.runs, other.runs),
            (&mut self.earned_runs, other.earned_runs),
            (&mut self.walks, other.walks),
            (&mut self.intentional_walks, other.intentional_walks),
            (&mut self.strikeouts, other.strikeouts),
            (&mut self.hit_batters, other.hit_batters),
            (&mut self.wild_pitches, other.wild_pitches),
            (&mut self.balks, other.balks),
            (&mut self.home_runs, other.home_runs),
            (&mut self.pitches, other.pitches),
            (&mut self.balls, other.balls),
            (&mut self.strikes, other.strikes),
        ];
        for (sum, more) in pairs {
            *sum += more;
        }
        self.pitches_incomplete |= other.pitches_incomplete;
    }

    /// The sum of lines.
    pub fn total(lines: &[Self]) -> Self {
        let mut total = Self { name: "Totals".into(), ..Self::default() };
        for line in lines {
            total.add(line);
        }
        total
    }

    fn pitch(&mut self, inning: u8, thrown: Thrown) {
        self.pitches += 1;
        if thrown.is_strike() {
            self.strikes += 1;
        } else {
            self.balls += 1;
        }
        match self.by_inning.last_mut() {
            Some((last, pitches)) if *last == inning => *pitches += 1,
            _ => self.by_inning.push((inning, 1)),
        }
    }

    fn face(&mut self, result: BatterResult) {
        self.batters_faced += 1;
        if let Some(bases) = result.hit_bases() {
            self.hits += 1;
            self.home_runs += u32::from(bases == 4);
        }
        match result {
            BatterResult::Walk => self.walks += 1,
            BatterResult::IntentionalWalk => {
                self.walks += 1;
                self.intentional_walks += 1;
            }
            BatterResult::HitByPitch => self.hit_batters += 1,
            BatterResult::Strikeout { .. } => self.strikeouts += 1,
            _ => {}
        }
    }
}

pub(super) fn lines(game: &Game, book: &Book, side: Side) -> Vec<PitchingLine> {
    let mut lines: Vec<PitchingLine> = Vec::new();
    let find = |lines: &mut Vec<PitchingLine>, player: PlayerId| -> usize {
        lines.iter().position(|l| l.player == Some(player)).unwrap_or_else(|| {
            lines.push(PitchingLine { player: Some(player), name: game.label(player), ..PitchingLine::default() });
            lines.len() - 1
        })
    };
    let mut turn_began = None;
    for (play, judged) in book.plays(game).filter(|(p, _)| p.batting() != side) {
        let Some(pitcher) = play.before.pitcher else { continue };
        let at = find(&mut lines, pitcher);
        let turn = (play.before.inning, play.before.place, pitcher);
        if turn_began != Some(turn) {
            turn_began = Some(turn);
            lines[at].pitches_before_last_batter = lines[at].pitches;
        }
        if let Some(thrown) = play.thrown.filter(|t| t.is_thrown()) {
            lines[at].pitch(play.before.inning, thrown);
        }
        lines[at].pitches_incomplete |= play.pitches_missed;
        if play.nullified {
            continue;
        }
        lines[at].outs += Outs(u32::from(play.outs()));
        lines[at].wild_pitches += u32::from(judged.is(GotAway::WildPitch));
        lines[at].balks += u32::from(judged.balk.is_some());
        if let (Some(charged), Some(result)) = (play.turn.and_then(|t| t.pitcher), &judged.result) {
            let at = find(&mut lines, charged);
            lines[at].face(result.verdict);
        }
    }
    if let Some(pitcher) = game.situation().pitcher
        && game.situation().fielding() == side
    {
        find(&mut lines, pitcher);
    }
    for charge in book.runs().iter().filter(|c| c.half.fielding() == side) {
        if let Some(pitcher) = charge.pitcher {
            let at = find(&mut lines, pitcher);
            lines[at].runs += 1;
            lines[at].earned_runs += u32::from(charge.earned);
        }
    }
    let decided = Decisions::of(game, book.runs());
    if !decided.provisional {
        for (pitcher, letter) in [(decided.win_of(), "W"), (decided.loss_of(), "L"), (decided.save_of(), "S")] {
            if let Some(line) = lines.iter_mut().find(|l| pitcher.is_some() && l.player == pitcher) {
                line.decision = Some(letter.into());
            }
        }
    }
    lines
}
