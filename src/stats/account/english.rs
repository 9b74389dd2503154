//! The sentences of the account in English: all its words are in this file and the one below it.

use crate::field::{Base, Position};
use crate::game::Ending;
use crate::log::{Attempt, Cause, How, Judgment, MisplayKind, Reached, Status, Trajectory};
use crate::ruling::BatterResult;
use crate::team::{Change, PlayerId, Role};

use super::{Ball, Line, Told, Was};

mod ruled;

pub use ruled::{grounds, heading, number, pitch};

/// Says who a player is.
pub type Names<'a> = &'a dyn Fn(PlayerId) -> String;

/// A line as one paragraph.
pub fn line(line: &Line, names: Names) -> String {
    let mut sentences: Vec<String> = Vec::new();
    let mut ran = None;
    let mut told_error = None;
    for told in &line.told {
        let Told::Gains { runner, to, cause, error } = told else {
            if let Told::Batted { result: BatterResult::ReachedOnError(position), misplay: Some(kind), .. } = told {
                told_error = Some((*position, *kind));
            }
            ran = None;
            sentences.push(sentence(told, names));
            continue;
        };
        let mut what = gains(*to, *cause, *error);
        if error.is_some() && *error == told_error {
            what = gains(*to, Cause::Play, None) + " on the same error";
        }
        told_error = error.or(told_error);
        match sentences.last_mut().filter(|_| ran == Some(*runner)) {
            // "goes to third and scores on the throw."
            Some(sentence) => sentence.replace_range(sentence.len() - 1.., &format!(" and {what}.")),
            None => sentences.push(format!("{} {what}.", names(*runner))),
        }
        ran = Some(*runner);
    }
    sentences.join(" ")
}

/// One sentence, with its full stop.
pub fn sentence(told: &Told, names: Names) -> String {
    let n = |id: &PlayerId| names(*id);
    match told {
        Told::AtPlate { batter, result } => format!("{} {}.", n(batter), at_plate(*result)),
        Told::Batted { batter, result, ball, how, by, double_play, misplay } => {
            format!("{} {}.", n(batter), batted(*result, *ball, *how, by, *double_play, *misplay))
        }
        Told::Gains { runner, to, cause, error } => format!("{} {}.", n(runner), gains(*to, *cause, *error)),
        Told::OutOnBases { runner, at, how, by, attempt } => {
            format!("{} {}{}.", n(runner), out_on_bases(*at, *how, *attempt), chain(by))
        }
        Told::Erred { fielder, position, kind } => match fielder {
            Some(fielder) => format!("{}, {position}, {}.", n(fielder), erred(*kind)),
            None => format!("The {position} {}.", erred(*kind)),
        },
        Told::MultiplePlay { outs: 2 } => "Double play.".into(),
        Told::MultiplePlay { .. } => "Triple play.".into(),
        Told::OutOfTurn { batter } => {
            format!("{} is out: somebody batted in that turn, and it was appealed.", n(batter))
        }
        Told::EmptyPlace { place } => format!("Place {place} in the order is empty: an out by the rules of play."),
        Told::Undone => "Undone by the appeal: only the pitches count.".into(),
        Told::Substituted { outgoing, incoming, role, .. } => substituted(&n(outgoing), &n(incoming), *role),
        Told::Changed { change, .. } => changed(change, names),
        Told::BatterUp { player } => format!("{} comes to bat out of turn.", n(player)),
        Told::Appealed => "Appeal: the proper batter takes over the count.".into(),
        Told::CountSet(count) => format!("The count is {count} by the umpire; pitches were missed."),
        Told::Placed { player, base } => format!("{} is placed on {base} by rule.", n(player)),
        Told::HalfEnded { why } => format!("The half-inning ends here{}.", reason(why)),
        Told::State(status) => state(status),
        Told::Over(ending) => over(*ending).into(),
        Told::Protest { text } => format!("Protest: {text}"),
        Told::Note { text } => format!("Note: {text}"),
        Told::Judged(judgment) => judged(judgment, names),
        Told::NoLongerFits { was } => match was {
            Was::Play => "A play recorded here no longer fits.".into(),
            Was::Change => "A change of players recorded here no longer fits.".into(),
            Was::Judgment => "A judgment given here no longer fits.".into(),
            Was::Other => "An entry made here no longer fits.".into(),
        },
    }
}

fn at_plate(result: BatterResult) -> &'static str {
    match result {
        BatterResult::Walk => "walks",
        BatterResult::IntentionalWalk => "is walked intentionally",
        BatterResult::HitByPitch => "is hit by a pitch and takes first",
        BatterResult::Strikeout { looking: true, reached: false } => "strikes out looking",
        BatterResult::Strikeout { looking: false, reached: false } => "strikes out swinging",
        BatterResult::Strikeout { looking: true, reached: true } => "is called out on strikes, but the ball gets away",
        BatterResult::Strikeout { looking: false, reached: true } => "strikes out swinging, but the ball gets away",
        BatterResult::Interference => "takes first on interference by the catcher",
        BatterResult::Obstruction => "is given first for obstruction",
        BatterResult::Out => "is out for interference",
        BatterResult::Hit(_) => "has a hit",
        BatterResult::FieldersChoice => "reaches on a fielder's choice",
        BatterResult::ReachedOnError(_) => "reaches on an error",
        BatterResult::SacrificeHit { .. } => "sacrifices",
        BatterResult::SacrificeFly { .. } => "hits a sacrifice fly",
    }
}

fn batted(
    result: BatterResult,
    ball: Ball,
    how: Option<How>,
    by: &[Position],
    double_play: bool,
    misplay: Option<MisplayKind>,
) -> String {
    match result {
        BatterResult::Hit(4) if ball.left_park => format!("hits a home run{}", to_field(ball)),
        BatterResult::Hit(bases) => {
            let verb = ["singles", "doubles", "triples", "hits a home run inside the park"]
                [usize::from(bases.clamp(1, 4)) - 1];
            format!("{verb} {}{}", off_the_bat(ball.trajectory), to_field(ball))
        }
        BatterResult::ReachedOnError(position) => {
            format!("reaches on {} by the {position}", an_error(misplay.unwrap_or(MisplayKind::Fielding)))
        }
        BatterResult::FieldersChoice => format!("reaches on a fielder's choice{}", to_field(ball)),
        BatterResult::SacrificeHit { reached: true } => "sacrifices with a bunt and is safe".into(),
        BatterResult::SacrificeHit { reached: false } => format!("sacrifices with a bunt{}", chain(by)),
        BatterResult::SacrificeFly { reached: false } => format!("hits a sacrifice fly{}", to_fielder(ball)),
        BatterResult::SacrificeFly { reached: true } => format!("hits a sacrifice fly, dropped{}", by_fielder(ball)),
        BatterResult::Obstruction => "is given first for obstruction".into(),
        BatterResult::Interference => "takes first on interference by the catcher".into(),
        _ => put_out(ball, how, by, double_play),
    }
}

fn put_out(ball: Ball, how: Option<How>, by: &[Position], double_play: bool) -> String {
    if double_play {
        return format!("grounds into a double play{}", chain(by));
    }
    match how {
        Some(How::Fly) if ball.infield_fly => format!("is out on the infield fly{}", to_fielder(ball)),
        Some(How::Fly) => {
            let verb = match ball.trajectory {
                _ if ball.foul => "fouls out",
                Trajectory::Line => "lines out",
                Trajectory::Pop => "pops out",
                Trajectory::Bunt => "bunts into an out in the air",
                Trajectory::Fly | Trajectory::Ground => "flies out",
            };
            format!("{verb}{}", to_fielder(Ball { toward: by.last().copied().or(ball.toward), ..ball }))
        }
        Some(How::Force | How::Tag) | None => {
            let verb = match ball.trajectory {
                Trajectory::Bunt => "bunts and is out",
                Trajectory::Ground => "grounds out",
                _ => "is out at first",
            };
            format!("{verb}{}", chain(by))
        }
        Some(how) => format!("is out: {}", out_for(how)),
    }
}

const fn off_the_bat(trajectory: Trajectory) -> &'static str {
    match trajectory {
        Trajectory::Ground => "on a ground ball",
        Trajectory::Line => "on a line drive",
        Trajectory::Fly => "on a fly ball",
        Trajectory::Pop => "on a pop-up",
        Trajectory::Bunt => "on a bunt",
    }
}

/// " to left field", " to the shortstop".
fn to_field(ball: Ball) -> String {
    match ball.toward {
        Some(Position::LeftField) => " to left field".into(),
        Some(Position::CenterField) => " to center field".into(),
        Some(Position::RightField) => " to right field".into(),
        _ => to_fielder(ball),
    }
}

fn to_fielder(ball: Ball) -> String {
    ball.toward.map_or_else(String::new, |p| format!(" to the {p}"))
}

fn by_fielder(ball: Ball) -> String {
    ball.toward.map_or_else(String::new, |p| format!(" by the {p}"))
}

/// ", shortstop to first baseman"; a long one is a rundown and told by its numbers.
fn chain(by: &[Position]) -> String {
    match by {
        [] => String::new(),
        [alone] => format!(", {alone} unassisted"),
        [..] if by.len() > 4 => {
            let numbers: Vec<_> = by.iter().map(|p| p.number().to_string()).collect();
            format!(" in a rundown, {}", numbers.join("-"))
        }
        [..] => format!(", {}", by.iter().map(|p| p.name()).collect::<Vec<_>>().join(" to ")),
    }
}

fn gains(to: Base, cause: Cause, error: Option<(Position, MisplayKind)>) -> String {
    let goes = match (to, cause) {
        (Base::Home, Cause::Steal) => return "steals home".into(),
        (_, Cause::Steal) => return format!("steals {to}"),
        (Base::Home, Cause::Forced) => return "is forced in and scores".into(),
        (_, Cause::Forced) => return format!("moves along to {to}"),
        (Base::Home, _) => "scores".to_owned(),
        (Base::First, _) => "reaches first".to_owned(),
        (_, _) => format!("goes to {to}"),
    };
    let by_what = match cause {
        Cause::Throw => " on the throw".into(),
        Cause::Choice => " on a fielder's choice".into(),
        Cause::Error(_) => match error {
            Some((position, kind)) => format!(" on {} by the {position}", an_error(kind)),
            None => " on an error".into(),
        },
        Cause::Obstruction => " for obstruction".into(),
        Cause::Interference => " for interference".into(),
        Cause::Award => " by the umpire's award".into(),
        Cause::WildPitch => " on a wild pitch".into(),
        Cause::PassedBall => " on a passed ball".into(),
        Cause::Balk => " on a balk".into(),
        Cause::IllegalPitch => " on an illegal pitch".into(),
        Cause::Indifference => " unopposed (defensive indifference)".into(),
        Cause::Play | Cause::Forced | Cause::Steal => String::new(),
    };
    goes + &by_what
}

fn out_on_bases(at: Base, how: How, attempt: Option<Attempt>) -> String {
    match (attempt, how) {
        (Some(Attempt::Steal), _) => format!("is caught stealing {at}"),
        (Some(Attempt::Pickoff), _) => format!("is picked off and out at {at}"),
        (Some(Attempt::Advance), _) => format!("is out trying for {at}"),
        (None, How::Force) => format!("is forced out at {at}"),
        (None, How::Tag | How::Fly | How::Strikeout) => format!("is out at {at}"),
        (None, how) => format!("is out at {at}: {}", out_for(how)),
    }
}

const fn out_for(how: How) -> &'static str {
    match how {
        How::Appeal => "on appeal",
        How::Interference => "interference",
        How::HitByBall => "touched by the batted ball",
        How::Passing => "passed a runner ahead",
        How::LeftPath => "ran out of the base path",
        How::OutOfTurn => "batted out of turn",
        How::OtherRule => "by rule",
        How::Strikeout => "struck out",
        How::Fly => "caught in the air",
        How::Force => "forced",
        How::Tag => "tagged",
    }
}

const fn an_error(kind: MisplayKind) -> &'static str {
    match kind {
        MisplayKind::Fielding => "a fielding error",
        MisplayKind::Throwing => "a throwing error",
        MisplayKind::Muff => "a muffed throw",
        MisplayKind::DroppedFly => "a dropped fly",
        MisplayKind::DroppedFoul => "a dropped foul fly",
        MisplayKind::Obstruction => "obstruction",
        MisplayKind::Interference => "interference",
    }
}

const fn erred(kind: MisplayKind) -> &'static str {
    match kind {
        MisplayKind::Fielding => "makes a fielding error",
        MisplayKind::Throwing => "makes a throwing error",
        MisplayKind::Muff => "muffs a throw: error",
        MisplayKind::DroppedFly => "drops a fly: error",
        MisplayKind::DroppedFoul => "drops a foul fly: error, and the turn at bat goes on",
        MisplayKind::Obstruction => "obstructs a runner: error",
        MisplayKind::Interference => "hinders the batter: error",
    }
}

fn substituted(outgoing: &str, incoming: &str, role: Role) -> String {
    match role {
        Role::PinchHitter => format!("{incoming} bats for {outgoing}."),
        Role::PinchRunner => format!("{incoming} runs for {outgoing}."),
        Role::CourtesyRunner => format!("{incoming} runs for {outgoing} as a courtesy runner."),
        Role::Fielder(post) => match post.position() {
            Some(Position::Pitcher) => format!("{incoming} comes in to pitch for {outgoing}."),
            Some(position) => format!("{incoming} comes in for {outgoing} as {position}."),
            None => format!("{incoming} comes in for {outgoing} ({}).", post.abbreviation()),
        },
    }
}

fn changed(change: &Change, names: Names) -> String {
    match change {
        Change::Substitute { outgoing, incoming, role } => substituted(&names(*outgoing), &names(*incoming), *role),
        Change::Shift { to } => {
            let posts: Vec<_> = to
                .iter()
                .map(|a| match a.post.position() {
                    Some(position) => format!("{} to {position}", names(a.player)),
                    None => format!("{} to {}", names(a.player), a.post.abbreviation()),
                })
                .collect();
            format!("The field changes: {}.", posts.join(", "))
        }
        Change::EndDesignatedHitter { batter, replaces } => {
            format!("No designated hitter from here on: {} bats in the place of {}.", names(*batter), names(*replaces))
        }
        Change::Leave { player } => format!("{} leaves the game, and nobody takes the place.", names(*player)),
        Change::Join(a) => format!("{} joins the end of the order.", names(a.player)),
    }
}

fn reason(why: &str) -> String {
    if why.is_empty() { String::new() } else { format!(": {why}") }
}

fn state(status: &Status) -> String {
    match status {
        Status::Delayed { why } => format!("Play is delayed{}.", reason(why)),
        Status::Resumed => "Play resumes.".into(),
        Status::Suspended { why } => format!("The game is suspended{}.", reason(why)),
        Status::Called { why } => format!("The umpire calls the game{}.", reason(why)),
        Status::Forfeited { winner, why } => format!("The game is forfeited to the {winner} side{}.", reason(why)),
        Status::Final => "The book is closed.".into(),
    }
}

const fn over(ending: Ending) -> &'static str {
    match ending {
        Ending::Played => "The game is over.",
        Ending::Mercy => "The game is over by the lead the rules of play set.",
        Ending::Declared => "The game ends here.",
        Ending::Called => "The game ends here, as called.",
        Ending::Forfeited(_) => "The game ends by forfeit.",
    }
}

fn judged(judgment: &Judgment, names: Names) -> String {
    let text = match judgment {
        Judgment::BatterReached { verdict: Reached::Hit(1), .. } => "a hit".into(),
        Judgment::BatterReached { verdict: Reached::Hit(bases), .. } => format!("a hit of {bases} bases"),
        Judgment::BatterReached { verdict: Reached::Error(position), .. } => format!("an error by the {position}"),
        Judgment::BatterReached { verdict: Reached::Choice, .. } => "a fielder's choice".into(),
        Judgment::BuntedForHit { yes: true, .. } => "bunted for a hit, no sacrifice".into(),
        Judgment::BuntedForHit { yes: false, .. } => "a sacrifice".into(),
        Judgment::WouldHaveScored { runner, yes: true, .. } => format!("{} would have scored anyway", names(*runner)),
        Judgment::WouldHaveScored { runner, .. } => format!("{} scored only for the error", names(*runner)),
        Judgment::WouldHaveScoredAfterCatch { yes: true, .. } => "the run would have scored after a catch".into(),
        Judgment::WouldHaveScoredAfterCatch { .. } => "the run would not have scored after a catch".into(),
        Judgment::Earned { runner, yes: true, .. } => format!("the run of {} is earned", names(*runner)),
        Judgment::Earned { runner, .. } => format!("the run of {} is unearned", names(*runner)),
        Judgment::GotAway { wild: true, .. } => "a wild pitch".into(),
        Judgment::GotAway { .. } => "a passed ball".into(),
        Judgment::Undisputed { yes: true, .. } => "indifference, no stolen base".into(),
        Judgment::Undisputed { .. } => "a stolen base".into(),
        Judgment::WinningPitcher { pitcher } => format!("{} is the winning pitcher", names(*pitcher)),
        Judgment::EffectiveFinish { pitcher, yes: true } => format!("{} pitched effectively: a save", names(*pitcher)),
        Judgment::EffectiveFinish { pitcher, .. } => format!("no save for {}", names(*pitcher)),
    };
    match judgment.on() {
        Some(_) => format!("The scorer judges an earlier play: {text}."),
        None => format!("The scorer judges: {text}."),
    }
}
