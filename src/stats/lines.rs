//! The lines of the book: batting, pitching, fielding, the line score, the box score and its proof.

use serde::Serialize;

use crate::field::{Outs, Position, Side};
use crate::game::Game;
use crate::ruling::Book;
use crate::team::{Duties, PlayerId};

mod batting;
mod fielding;
mod kinds;
mod pitching;
mod proof;
mod score;
mod strip;

pub use batting::BattingLine;
pub(crate) use batting::left_by;
pub use fielding::FieldingLine;
pub use kinds::PitchNotes;
pub use pitching::PitchingLine;
pub use proof::Proof;
pub use score::{LineScore, SideScore};
pub use strip::{InningPitches, PitchStrip};

/// Both sides' lines of one game.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BoxScore {
    /// Visitors, then home.
    pub sides: [SideBox; 2],
}

/// One side's lines.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SideBox {
    /// Which side.
    pub side: Side,
    /// Its name.
    pub team: String,
    /// Batters by place in the order, then by entry; then those who fielded only.
    pub batting: Vec<BattingLine>,
    /// Sums of the batters' lines; its runners left on base are the side's.
    pub batting_total: BattingLine,
    /// Pitchers in order of appearance.
    pub pitching: Vec<PitchingLine>,
    /// Sums of the pitchers' lines; its earned runs are the team's, which can be fewer than the sum (OBR 9.16(i)).
    pub pitching_total: PitchingLine,
    /// Fielders in order of batting place, then those who fielded only.
    pub fielding: Vec<FieldingLine>,
    /// Sums of the fielders' lines.
    pub fielding_total: FieldingLine,
    /// The proof of its box score (OBR 9.03(c)).
    pub proof: Proof,
}

impl BoxScore {
    /// One side's lines.
    pub fn side(&self, side: Side) -> &SideBox {
        &self.sides[side.index()]
    }

    /// Both sides' proofs (OBR 9.03(c)).
    pub fn prove(&self) -> [&Proof; 2] {
        [&self.sides[0].proof, &self.sides[1].proof]
    }
}

impl Game {
    /// Both sides' lines, by the rulings and the judgments given so far.
    pub fn box_score(&self) -> BoxScore {
        let book = Book::of(self);
        BoxScore { sides: Side::BOTH.map(|side| side_box(self, &book, side)) }
    }

    /// Runs by inning, with runs, hits, errors and left on base.
    pub fn line_score(&self) -> LineScore {
        score::line_score(self, &Book::of(self))
    }

    /// A side's batters.
    pub fn batting(&self, side: Side) -> Vec<BattingLine> {
        batting::lines(self, &Book::of(self), side)
    }

    /// A side's pitchers.
    pub fn pitching(&self, side: Side) -> Vec<PitchingLine> {
        pitching::lines(self, &Book::of(self), side)
    }

    /// What was noted of the kinds and speeds of a side's pitches.
    pub fn pitch_notes(&self, side: Side) -> Vec<PitchNotes> {
        kinds::of(self, side)
    }

    /// A side's fielders.
    pub fn fielding(&self, side: Side) -> Vec<FieldingLine> {
        fielding::lines(self, &Book::of(self), side)
    }
}

fn side_box(game: &Game, book: &Book, side: Side) -> SideBox {
    let batting = batting::lines(game, book, side);
    let pitching = pitching::lines(game, book, side);
    let fielding = fielding::lines(game, book, side);
    let mut batting_total = BattingLine::total(&batting);
    batting_total.left_on_base = game.left_on_base(side);
    let mut pitching_total = PitchingLine::total(&pitching);
    pitching_total.earned_runs = book.team_earned_runs(side);
    let fielding_total = FieldingLine::total(&fielding);
    let proof = proof::prove(game, book, side, &batting_total);
    SideBox {
        side,
        team: game.team_name(side).to_owned(),
        batting,
        batting_total,
        pitching,
        pitching_total,
        fielding,
        fielding_total,
        proof,
    }
}

/// Posts as a box score prints them: "PH-SS".
fn duties(game: &Game, side: Side, player: PlayerId) -> Duties {
    let Some(lineup) = game.lineup(side) else { return Duties::default() };
    let part = lineup.appearances().into_iter().find(|a| a.player == player).map(|a| a.duties.clone());
    Duties(part.unwrap_or_default())
}

/// The posts at which outs were played, most common order of the field.
type PlayedOuts = Vec<(Position, Outs)>;
