//! Where the balls each batter put in play went: the spray chart, as data.
//!
//! Nothing is invented: a ball of which no point was touched lies at the post of the fielder who handled it, and says so.

use crate::field::{Position, Side};
use crate::game::{Game, Play};
use crate::log::{EntryId, Spot, Trajectory};
use crate::propose::usual_spot;
use crate::ruling::{BatterResult, Book};
use crate::team::PlayerId;

/// The balls of one batter.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spray {
    /// Who.
    pub player: PlayerId,
    /// Name, shirt number or batting place.
    pub name: String,
    /// Batting place, 1 for the leadoff batter.
    pub place: u8,
    /// The balls put in play, first to last.
    pub balls: Vec<SprayBall>,
}

/// One ball put in play, or caught foul.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SprayBall {
    /// The play.
    pub entry: EntryId,
    /// Inning, from 1.
    pub inning: u8,
    /// Where it came down or was first handled.
    pub spot: Spot,
    /// How the spot is known.
    pub placed: Placed,
    /// How it came off the bat.
    pub trajectory: Trajectory,
    /// The fielder who handled it first, or who stood nearest.
    pub toward: Position,
    /// What became of the batter, as it is marked.
    pub fate: Fate,
    /// As what the turn counts.
    pub result: BatterResult,
}

/// How the place of a ball is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placed {
    /// The scorer touched the point.
    Touched,
    /// Only the fielder is known: the ball lies where that fielder usually stands.
    ByFielder,
}

/// What became of the batter, as a chart tells it apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fate {
    /// A hit.
    Hit,
    /// Put out.
    Out,
    /// Safe on an error.
    Error,
    /// Safe otherwise: a fielder's choice, or somebody's interference.
    Safe,
}

impl Fate {
    /// All of them, in the order of a legend.
    pub const ALL: [Self; 4] = [Self::Hit, Self::Out, Self::Error, Self::Safe];

    const fn of(result: BatterResult) -> Self {
        match result {
            BatterResult::Hit(_) => Self::Hit,
            BatterResult::ReachedOnError(_) | BatterResult::SacrificeFly { reached: true } => Self::Error,
            BatterResult::FieldersChoice
            | BatterResult::SacrificeHit { reached: true }
            | BatterResult::Interference
            | BatterResult::Obstruction => Self::Safe,
            _ => Self::Out,
        }
    }
}

impl Game {
    /// The spray charts of a side's batters in the order of the lineup; also of those who put no ball in play.
    pub fn spray(&self, side: Side) -> Vec<Spray> {
        let book = Book::of(self);
        let mut sprays: Vec<Spray> = self
            .batting(side)
            .into_iter()
            .filter_map(|line| Some((line.player?, line.place?, line.name)))
            .map(|(player, place, name)| Spray { player, name, place, balls: Vec::new() })
            .collect();
        for (play, judged) in book.plays(self).filter(|(play, _)| play.batting() == side && !play.nullified) {
            let result = judged.result.as_ref().map(|r| r.verdict);
            let batter = play.turn.and_then(|turn| turn.batter);
            let Some((batter, ball)) = batter.zip(result.and_then(|result| ball(play, result))) else { continue };
            if let Some(spray) = sprays.iter_mut().find(|s| s.player == batter) {
                spray.balls.push(ball);
            }
        }
        sprays
    }
}

fn ball(play: &Play, result: BatterResult) -> Option<SprayBall> {
    let batted = play.batted.as_ref()?;
    let first = batted.fielders.first().copied();
    let toward = first.or_else(|| batted.spot.map(|spot| crate::propose::nearest(spot, |_| true)))?;
    // The Plate fills in the usual spot of the fielder where the scorer touched no other.
    let spot = batted.spot.unwrap_or(usual_spot(toward));
    let placed = if first.is_some() && spot == usual_spot(toward) { Placed::ByFielder } else { Placed::Touched };
    Some(SprayBall {
        entry: play.entry,
        inning: play.before.inning,
        spot,
        placed,
        trajectory: batted.trajectory,
        toward,
        fate: Fate::of(result),
        result,
    })
}
