//! The line score: runs by inning, then runs, hits, errors and left on base.

use serde::Serialize;

use crate::field::Side;
use crate::game::{Game, Phase};
use crate::ruling::{Book, Credit};

/// Both sides' line scores.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LineScore {
    /// Visitors, then home.
    pub sides: [SideScore; 2],
}

impl LineScore {
    /// One side's line score.
    pub fn side(&self, side: Side) -> &SideScore {
        &self.sides[side.index()]
    }
}

/// One side's line score.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SideScore {
    /// Which side.
    pub side: Side,
    /// Its name.
    pub team: String,
    /// Runs by inning; `None` for an inning it did not need to bat in (printed "x"). Innings to come are not listed.
    pub innings: Vec<Option<u16>>,
    /// Runs.
    pub runs: u16,
    /// Hits.
    pub hits: u32,
    /// Errors it made.
    pub errors: u32,
    /// Left on base; runners now on base included while its half goes on.
    pub left_on_base: u32,
}

pub(super) fn line_score(game: &Game, book: &Book) -> LineScore {
    let mut sides = Side::BOTH.map(|side| SideScore {
        side,
        team: game.team_name(side).to_owned(),
        innings: Vec::new(),
        runs: game.situation().score[side.index()],
        hits: 0,
        errors: 0,
        left_on_base: game.left_on_base(side),
    });
    for half in game.halves() {
        sides[half.half.batting().index()].innings.push(Some(0));
    }
    for (play, judged) in book.plays(game).filter(|(p, _)| !p.nullified) {
        let side = &mut sides[play.batting().index()];
        if let Some(Some(runs)) = side.innings.get_mut(usize::from(play.before.inning) - 1) {
            *runs = runs.saturating_add(u16::from(play.runs()));
        }
        side.hits += u32::from(judged.result.as_ref().is_some_and(|r| r.verdict.hit_bases().is_some()));
        let errors = judged.credited(Credit::Error).count() as u32;
        sides[play.batting().other().index()].errors += errors;
    }
    let over = matches!(game.situation().phase, Phase::Over(_));
    if over && sides[1].innings.len() < sides[0].innings.len() {
        sides[1].innings.push(None);
    }
    LineScore { sides }
}
