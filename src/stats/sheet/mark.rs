//! The marks of the trade, as data and as they are written.

use core::fmt;

use crate::account::whole_chain;
use crate::field::Position;
use crate::game::{Moved, Play};
use crate::log::{Cause, How, Trajectory};
use crate::ruling::{BatterResult, Judged, Theft};

/// What a plate appearance is marked with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mark {
    /// A hit of so many bases.
    Hit(u8),
    /// BB.
    Walk,
    /// IBB.
    IntentionalWalk,
    /// HBP.
    HitByPitch,
    /// K, reversed for a called third strike.
    Strikeout {
        /// On a called strike.
        looking: bool,
    },
    /// Put out by these, in order: 6-3, 3U.
    PutOut {
        /// Who.
        by: Vec<Position>,
        /// The out was the first of a double play he grounded into.
        double_play: bool,
    },
    /// Caught in the air.
    Caught {
        /// Fly, line drive or pop.
        trajectory: Trajectory,
        /// By whom.
        by: Option<Position>,
        /// In foul territory: FF.
        foul: bool,
        /// Out under the infield fly rule: IF.
        infield_fly: bool,
    },
    /// E6.
    Error(Position),
    /// FC.
    Choice,
    /// SH, with those who put him out.
    SacrificeHit(Vec<Position>),
    /// SF, with who caught it.
    SacrificeFly(Option<Position>),
    /// CI.
    Interference,
    /// OB.
    Obstruction,
    /// OT: batted out of turn, or out for interference.
    ByRule,
    /// Placed on base by rule.
    Placed,
}

/// What stands beside a base gained, or an out on the bases.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tag {
    /// Brought along by the batter in this place, from 1.
    Batter(u8),
    /// SB.
    Steal,
    /// WP.
    WildPitch,
    /// PB.
    PassedBall,
    /// BK.
    Balk,
    /// IP.
    IllegalPitch,
    /// E with the fielder's number.
    Error(Position),
    /// T: on a throw for somebody else.
    Throw,
    /// FC.
    Choice,
    /// OB.
    Obstruction,
    /// INT.
    Interference,
    /// AW: awarded by the umpire.
    Award,
    /// DI.
    Indifference,
    /// CS.
    CaughtStealing,
    /// PO: picked off.
    PickedOff,
}

pub(super) fn of(play: &Play, judged: &Judged, result: BatterResult) -> Mark {
    let own = play.batter_move();
    let out = own.filter(|m| m.legs.is_empty()).and_then(|m| m.out.as_ref());
    let by = || out.map(|o| o.by.clone()).unwrap_or_default();
    match result {
        BatterResult::Hit(bases) => Mark::Hit(bases),
        BatterResult::Walk => Mark::Walk,
        BatterResult::IntentionalWalk => Mark::IntentionalWalk,
        BatterResult::HitByPitch => Mark::HitByPitch,
        BatterResult::Strikeout { looking, .. } => Mark::Strikeout { looking },
        BatterResult::FieldersChoice => Mark::Choice,
        BatterResult::ReachedOnError(position) => Mark::Error(position),
        BatterResult::SacrificeHit { .. } => Mark::SacrificeHit(by()),
        BatterResult::SacrificeFly { .. } => Mark::SacrificeFly(handled_first(play, own)),
        BatterResult::Interference => Mark::Interference,
        BatterResult::Obstruction => Mark::Obstruction,
        BatterResult::Out => put_out(play, judged, out.map(|o| o.how), own),
    }
}

fn put_out(play: &Play, judged: &Judged, how: Option<How>, own: Option<&Moved>) -> Mark {
    let Some(batted) = &play.batted else { return Mark::ByRule };
    match how {
        Some(How::Fly) => {
            let (trajectory, foul, infield_fly) = (batted.trajectory, batted.foul, batted.infield_fly);
            let by = handled_last(own).or_else(|| handled_first(play, own));
            Mark::Caught { trajectory, by, foul, infield_fly }
        }
        Some(How::Interference | How::OutOfTurn | How::LeftPath | How::OtherRule) => Mark::ByRule,
        _ if judged.grounded_into_double_play.is_some() => Mark::PutOut { by: whole_chain(play), double_play: true },
        _ => {
            let by = own.and_then(|m| m.out.as_ref()).map(|o| o.by.clone()).unwrap_or_default();
            Mark::PutOut { by, double_play: false }
        }
    }
}

fn handled_last(own: Option<&Moved>) -> Option<Position> {
    own?.out.as_ref()?.by.last().copied()
}

fn handled_first(play: &Play, own: Option<&Moved>) -> Option<Position> {
    let batted = play.batted.as_ref().and_then(|b| b.fielders.first().copied());
    batted.or_else(|| handled_last(own))
}

/// By what a base was gained.
pub(super) fn tag(play: &Play, cause: Cause) -> Tag {
    match cause {
        Cause::Play | Cause::Forced => Tag::Batter(play.before.place + 1),
        Cause::Throw => Tag::Throw,
        Cause::Choice => Tag::Choice,
        Cause::Error(i) => Tag::Error(play.misplays.get(usize::from(i)).map_or(Position::Pitcher, |m| m.by)),
        Cause::Obstruction => Tag::Obstruction,
        Cause::Interference => Tag::Interference,
        Cause::Award => Tag::Award,
        Cause::Steal => Tag::Steal,
        Cause::WildPitch => Tag::WildPitch,
        Cause::PassedBall => Tag::PassedBall,
        Cause::Balk => Tag::Balk,
        Cause::IllegalPitch => Tag::IllegalPitch,
        Cause::Indifference => Tag::Indifference,
    }
}

pub(super) const fn theft(theft: Theft) -> Option<Tag> {
    match theft {
        Theft::Caught { .. } => Some(Tag::CaughtStealing),
        Theft::PickedOff => Some(Tag::PickedOff),
        Theft::Stolen(_) | Theft::NotStolen => None,
    }
}

/// "6-4-3"; alone and unassisted "3U".
pub fn chain(by: &[Position]) -> String {
    match by {
        [alone] => format!("{}U", alone.number()),
        by => by.iter().map(|p| p.number().to_string()).collect::<Vec<_>>().join("-"),
    }
}

impl Mark {
    /// A second line under it, if it has one.
    pub fn below(&self) -> Option<String> {
        match self {
            Self::PutOut { double_play: true, .. } => Some("DP".into()),
            Self::SacrificeHit(by) if !by.is_empty() => Some(chain(by)),
            _ => None,
        }
    }
}

impl fmt::Display for Mark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let numbered = |f: &mut fmt::Formatter<'_>, letters: &str, position: Option<Position>| match position {
            Some(position) => write!(f, "{letters}{}", position.number()),
            None => f.write_str(letters),
        };
        match self {
            Self::Hit(4) => f.write_str("HR"),
            Self::Hit(bases) => write!(f, "{bases}B"),
            Self::Walk => f.write_str("BB"),
            Self::IntentionalWalk => f.write_str("IBB"),
            Self::HitByPitch => f.write_str("HBP"),
            Self::Strikeout { .. } => f.write_str("K"),
            Self::PutOut { by, .. } if by.is_empty() => f.write_str("out"),
            Self::PutOut { by, .. } => f.write_str(&chain(by)),
            Self::Caught { trajectory, by, foul, infield_fly } => {
                let letter = match trajectory {
                    _ if *infield_fly => "IF",
                    _ if *foul => "FF",
                    Trajectory::Line => "L",
                    Trajectory::Pop => "P",
                    Trajectory::Bunt => "B",
                    Trajectory::Fly | Trajectory::Ground => "F",
                };
                numbered(f, letter, *by)
            }
            Self::Error(position) => numbered(f, "E", Some(*position)),
            Self::Choice => f.write_str("FC"),
            Self::SacrificeHit(_) => f.write_str("SH"),
            Self::SacrificeFly(by) => numbered(f, "SF", *by),
            Self::Interference => f.write_str("CI"),
            Self::Obstruction => f.write_str("OB"),
            Self::ByRule => f.write_str("out"),
            Self::Placed => f.write_str("TB"),
        }
    }
}

impl fmt::Display for Tag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Batter(place) => return write!(f, "({place})"),
            Self::Error(position) => return write!(f, "E{}", position.number()),
            Self::Steal => "SB",
            Self::WildPitch => "WP",
            Self::PassedBall => "PB",
            Self::Balk => "BK",
            Self::IllegalPitch => "IP",
            Self::Throw => "T",
            Self::Choice => "FC",
            Self::Obstruction => "OB",
            Self::Interference => "INT",
            Self::Award => "AW",
            Self::Indifference => "DI",
            Self::CaughtStealing => "CS",
            Self::PickedOff => "PO",
        })
    }
}
