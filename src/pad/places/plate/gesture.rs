//! The unfinished gesture: what the scorer has touched and not yet recorded. The only state the Plate holds of its own.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::game::Game;
use benchbook_stats::log::{Attempt, Event, MisplayKind, Spot, Start};
use benchbook_stats::propose::{self, Proposal, Seen};

/// Where a gesture stands.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Gesture {
    /// Waiting for the pitch.
    #[default]
    Waiting,
    /// The rarer pitches.
    MorePitches,
    /// A ball in play: what was touched so far.
    Ball(Seen),
    /// A runner was touched: what did they do?
    Runner {
        on: Base,
        /// It happened on the pitch just recorded.
        on_pitch: bool,
    },
    /// A runner is thrown at: by whom so far.
    Chase { on: Base, attempt: Attempt, by: Vec<Position>, on_pitch: bool },
    /// Strike three got away.
    GotAway,
    /// A proposal is being changed.
    Adjusting(Adjusting),
    /// A change of players.
    People(Chosen),
    /// What the umpire declares, and what is written down.
    Umpire,
}

/// A draft of an event, changed by hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Adjusting {
    /// What would be recorded.
    pub event: Event,
    /// Who handled the ball, as touched: the usual answer to "out by whom".
    pub chain: Vec<Position>,
    /// Whose end is being changed.
    pub who: Option<Start>,
    /// The kind of error for which a fielder is still to be touched.
    pub awaits_error: Option<MisplayKind>,
    /// Fielders are being touched for the out of `who`.
    pub naming_out: bool,
    /// Where "Back" leads.
    pub from: Box<Gesture>,
}

/// Who is to be changed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Chosen {
    /// Nobody yet.
    #[default]
    Nobody,
    /// The fielder at a position.
    Fielder(Position),
    /// A player of the side in the field without a fielding position, or of the side at bat: by place in the order.
    Place { batting: bool, place: u8 },
    /// The batter.
    Batter,
    /// The runner on a base.
    Runner(Base),
}

impl Gesture {
    /// What may be recorded at this point, the usual first.
    pub fn proposals(&self, game: &Game) -> Vec<Proposal> {
        match self {
            Self::Ball(seen) => propose::in_play(game, seen),
            Self::Runner { on, on_pitch } => propose::on_runner(game, *on, *on_pitch),
            Self::Chase { on, attempt, by, on_pitch } => propose::chased(game, *on, *attempt, by, *on_pitch),
            Self::GotAway => propose::strike_three_got_away(game),
            _ => Vec::new(),
        }
    }

    /// Fielders touched so far.
    pub fn chain(&self) -> &[Position] {
        match self {
            Self::Ball(seen) => &seen.fielders,
            Self::Chase { by, .. } => by,
            Self::Adjusting(draft) => &draft.chain,
            _ => &[],
        }
    }

    /// The point touched.
    pub fn spot(&self) -> Option<Spot> {
        match self {
            Self::Ball(seen) => seen.spot,
            Self::Adjusting(draft) => match &draft.event {
                Event::InPlay(play) => play.ball.spot,
                _ => None,
            },
            _ => None,
        }
    }

    /// After a touch on the fielder at `position`; `None` if that means nothing here.
    pub fn fielder(&self, position: Position) -> Option<Self> {
        match self {
            Self::Waiting | Self::MorePitches | Self::Umpire | Self::GotAway => {
                Some(Self::Ball(Seen { fielders: vec![position], ..Seen::default() }))
            }
            Self::Ball(seen) => {
                let mut seen = seen.clone();
                push(&mut seen.fielders, position).then_some(Self::Ball(seen))
            }
            // A throw from behind the plate is at somebody going; any other is at somebody who stood off his base.
            Self::Runner { on, on_pitch } => {
                let attempt = if position == Position::Catcher { Attempt::Steal } else { Attempt::Pickoff };
                let on_pitch = *on_pitch && attempt == Attempt::Steal;
                Some(Self::Chase { on: *on, attempt, by: vec![position], on_pitch })
            }
            Self::Chase { on, attempt, by, on_pitch } => {
                let mut by = by.clone();
                push(&mut by, position).then_some(Self::Chase { on: *on, attempt: *attempt, by, on_pitch: *on_pitch })
            }
            Self::People(_) => Some(Self::People(Chosen::Fielder(position))),
            Self::Adjusting(_) => None,
        }
    }

    /// After a touch on the grass.
    pub fn grass(&self, spot: Spot) -> Option<Self> {
        match self {
            Self::Waiting | Self::MorePitches | Self::Umpire | Self::GotAway | Self::Runner { .. } => {
                Some(Self::Ball(Seen { spot: Some(spot), landed: true, ..Seen::default() }))
            }
            Self::Ball(seen) => {
                let landed = seen.fielders.is_empty() || seen.landed;
                Some(Self::Ball(Seen { spot: Some(spot), landed, ..seen.clone() }))
            }
            _ => None,
        }
    }

    /// One touch less; `None` if there is none to take back.
    pub fn back(&self) -> Option<Self> {
        match self {
            Self::Waiting => None,
            Self::Ball(seen) => {
                let mut seen = seen.clone();
                if seen.fielders.pop().is_none() {
                    return Some(Self::Waiting);
                }
                let nothing = seen.fielders.is_empty() && seen.spot.is_none();
                Some(if nothing { Self::Waiting } else { Self::Ball(seen) })
            }
            Self::Chase { on, attempt, by, on_pitch } => {
                let mut by = by.clone();
                if by.pop().is_none() {
                    return Some(Self::Runner { on: *on, on_pitch: *on_pitch });
                }
                Some(Self::Chase { on: *on, attempt: *attempt, by, on_pitch: *on_pitch })
            }
            Self::Adjusting(draft) if draft.who.is_some() => {
                Some(Self::Adjusting(Adjusting { who: None, awaits_error: None, naming_out: false, ..draft.clone() }))
            }
            Self::Adjusting(draft) => Some((*draft.from).clone()),
            Self::People(chosen) if *chosen != Chosen::Nobody => Some(Self::People(Chosen::Nobody)),
            _ => Some(Self::Waiting),
        }
    }
}

/// Adds a fielder; a second touch on the same one says nothing new.
fn push(by: &mut Vec<Position>, position: Position) -> bool {
    let fresh = by.last() != Some(&position);
    if fresh {
        by.push(position);
    }
    fresh
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn touches_add_up_and_go_back_one_by_one() {
        let six = Gesture::Waiting.fielder(Position::Shortstop).expect("begins a ball in play");
        let six_three = six.fielder(Position::FirstBase).expect("goes on");
        assert_eq!(six_three.chain(), [Position::Shortstop, Position::FirstBase]);
        assert_eq!(six_three.fielder(Position::FirstBase), None, "a double tap says nothing new");
        assert_eq!(six_three.back(), Some(six.clone()));
        assert_eq!(six.back(), Some(Gesture::Waiting));
        assert_eq!(Gesture::Waiting.back(), None);
    }

    #[test]
    fn grass_first_means_it_came_down_there() {
        let spot = Spot { x: 10, y: 200 };
        let landed = Gesture::Waiting.grass(spot).and_then(|g| g.fielder(Position::CenterField));
        let Some(Gesture::Ball(seen)) = landed else { panic!("a ball in play") };
        assert!(seen.landed && seen.fielders == [Position::CenterField]);
        let caught = Gesture::Waiting.fielder(Position::CenterField).and_then(|g| g.grass(spot));
        let Some(Gesture::Ball(seen)) = caught else { panic!("a ball in play") };
        assert!(!seen.landed && seen.spot == Some(spot));
    }
}
