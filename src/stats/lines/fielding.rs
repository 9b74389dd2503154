//! A fielder's line (OBR 9.02(b)).

use serde::Serialize;

use super::{PlayedOuts, duties};
use crate::field::{Outs, Position, Side};
use crate::game::Game;
use crate::rates::{self, Rate};
use crate::ruling::{Book, Credit, GotAway, Theft};
use crate::team::{Duties, PlayerId};

/// What one player did in the field.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FieldingLine {
    /// Who; `None` in a total.
    pub player: Option<PlayerId>,
    /// Name, shirt number or batting place.
    pub name: String,
    /// Posts as a box score prints them.
    #[cfg_attr(feature = "schema", schemars(with = "String"))]
    pub posts: Duties,
    /// Outs made while he was in the field, by position.
    pub played: PlayedOuts,
    /// Putouts (OBR 9.09).
    pub putouts: u32,
    /// Assists (OBR 9.10).
    pub assists: u32,
    /// Errors (OBR 9.12).
    pub errors: u32,
    /// Double plays taken part in (OBR 9.11).
    pub double_plays: u32,
    /// Triple plays taken part in (OBR 9.11).
    pub triple_plays: u32,
    /// Passed balls, for catchers (OBR 9.13).
    pub passed_balls: u32,
    /// Bases stolen while catching.
    pub stolen_bases_allowed: u32,
    /// Runners caught stealing while catching.
    pub runners_caught: u32,
}

impl FieldingLine {
    /// Fielding average (OBR 9.21(d)).
    pub const fn average(&self) -> Rate {
        rates::fielding_average(self.putouts, self.assists, self.errors)
    }

    /// Adds another line's counts.
    pub fn add(&mut self, other: &Self) {
        let pairs: [(&mut u32, u32); 8] = [
            (&mut self.putouts, other.putouts),
            (&mut self.assists, other.assists),
            (&mut self.errors, other.errors),
            (&mut self.double_plays, other.double_plays),
            (&mut self.triple_plays, other.triple_plays),
            (&mut self.passed_balls, other.passed_balls),
            (&mut self.stolen_bases_allowed, other.stolen_bases_allowed),
            (&mut self.runners_caught, other.runners_caught),
        ];
        for (sum, more) in pairs {
            *sum += more;
        }
    }

    /// The sum of lines. Double and triple plays in it count participations.
    pub fn total(lines: &[Self]) -> Self {
        let mut total = Self { name: "Totals".into(), ..Self::default() };
        for line in lines {
            total.add(line);
        }
        total
    }

    fn play_outs(&mut self, position: Position, outs: Outs) {
        match self.played.iter_mut().find(|(p, _)| *p == position) {
            Some((_, sum)) => *sum += outs,
            None => self.played.push((position, outs)),
        }
    }
}

pub(super) fn lines(game: &Game, book: &Book, side: Side) -> Vec<FieldingLine> {
    let mut lines: Vec<FieldingLine> = Vec::new();
    let find = |lines: &mut Vec<FieldingLine>, player: PlayerId| -> usize {
        lines.iter().position(|l| l.player == Some(player)).unwrap_or_else(|| {
            lines.push(FieldingLine {
                player: Some(player),
                name: game.label(player),
                posts: duties(game, side, player),
                ..FieldingLine::default()
            });
            lines.len() - 1
        })
    };
    if let Some(lineup) = game.lineup(side) {
        for a in lineup.appearances() {
            if a.duties.iter().any(|d| matches!(d, crate::team::Duty::Post(post) if post.position().is_some())) {
                find(&mut lines, a.player);
            }
        }
    }
    for (play, judged) in book.plays(game).filter(|(p, _)| p.batting() != side && !p.nullified) {
        let outs = Outs(u32::from(play.outs()));
        if outs.0 > 0 {
            for (position, player) in play.defence.players() {
                let at = find(&mut lines, player);
                lines[at].play_outs(position, outs);
            }
        }
        for (position, ruling) in &judged.credits {
            let Some(player) = play.defence.at(*position) else { continue };
            let at = find(&mut lines, player);
            match ruling.verdict {
                Credit::Putout => lines[at].putouts += 1,
                Credit::Assist => lines[at].assists += 1,
                Credit::Error => lines[at].errors += 1,
                Credit::DoublePlay => lines[at].double_plays += 1,
                Credit::TriplePlay => lines[at].triple_plays += 1,
            }
        }
        if let Some(catcher) = play.defence.at(Position::Catcher) {
            let stolen: u32 = judged.thefts.iter().filter_map(|(_, t)| t.verdict.stolen()).map(u32::from).sum();
            let caught = judged.thefts.iter().filter(|(_, t)| matches!(t.verdict, Theft::Caught { .. })).count() as u32;
            let passed = judged.is(GotAway::PassedBall);
            if passed || stolen > 0 || caught > 0 {
                let at = find(&mut lines, catcher);
                lines[at].passed_balls += u32::from(passed);
                lines[at].stolen_bases_allowed += stolen;
                lines[at].runners_caught += caught;
            }
        }
    }
    lines
}
