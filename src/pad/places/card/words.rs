//! The words of the Card.

use benchbook_stats::code::Reentry;
use benchbook_stats::field::{Half, Position, Post, Side};
use benchbook_stats::log::Heading;

use super::checklist::Check;
use super::checks::Missing;

pub const CARD: &str = "The Card";
pub const VISITORS_BAT_FIRST: &str = "Visitors (bat first)";
pub const HOME: &str = "Home";
pub const TEAM_NAME: &str = "Team name";
pub const NO_CARD: &str = "No lineup yet.";
pub const NUMBERED: &str = "Fill in numbered batters";
pub const NUMBERED_HINT: &str =
    "Names, numbers and positions can be changed at any time before play; names and numbers also during it.";
pub const SHIRT: &str = "No.";
pub const NAME: &str = "Name";
pub const POST: &str = "Plays";
pub const ADD_BATTER: &str = "Add a batter";
pub const REORDER: &str = "Change the order";
pub const REORDER_DONE: &str = "Done";
pub const MOVE_UP: &str = "up";
pub const MOVE_DOWN: &str = "down";
pub const TAKE_OFF: &str = "to the bench";
pub const DRAG: &str = "Drag to another place";
pub const FIELDS_ONLY: &str = "Fields, does not bat";
pub const NO_DH: &str = "No designated hitter";
pub const BENCH: &str = "Bench";
pub const ADD_TO_BENCH: &str = "Add a player to the bench";
pub const INTO_THE_ORDER: &str = "Into the order";
pub const GAME: &str = "The game";
pub const DATE: &str = "Date";
pub const START: &str = "Begins at";
pub const PLACE: &str = "Place";
pub const COMPETITION: &str = "Competition";
pub const SCORER: &str = "Who keeps this book";
pub const UNKNOWN_GAME: &str = "Date, place and competition";
pub const RULES: &str = "Rules of play";
pub const EVERY_RULE: &str = "Every rule, to be changed";
pub const LEAGUE_FIRST: &str = "Your league's rules come first.";
pub const RULES_FIXED: &str = "The game has begun: rules and cards are fixed. Changes are recorded at the Plate.";
pub const PRESET: &str = "Start from";
pub const RULES_NAME: &str = "What these rules are called";
pub const RULES_SOURCE: &str = "Where they come from";
pub const MERCY: &str = "The game ends by a lead";
pub const MERCY_LEAD: &str = "Runs ahead";
pub const MERCY_AFTER: &str = "after inning";
pub const ADD: &str = "Add";
pub const REMOVE: &str = "Remove";
pub const REENTRY: &str = "A player who has left may come back";
pub const BEFORE: &str = "Before the first pitch";
pub const NOTHING_MISSING: &str = "Nothing is missing.";
pub const USUAL_CHECKS: &str = "Balls, bats and field: the usual checks";
pub const USUAL_HINT: &str = "These are reminders from common practice, without a source.";
pub const STOPS: &str = "Needed:";
pub const GOOD_TO_KNOW: &str = "Good to know:";
pub const PLAY_BALL: &str = "Play ball";
pub const TO_THE_PLATE: &str = "To the Plate";
pub const CHANGES: &str = "Changes during the game";
pub const NO_CHANGES: &str = "None so far. They are recorded at the Plate.";

pub const fn side(side: Side) -> &'static str {
    match side {
        Side::Visitors => VISITORS_BAT_FIRST,
        Side::Home => HOME,
    }
}

pub fn batter(place: usize) -> String {
    format!("Batter {}", place + 1)
}

pub fn of(what: &str, whom: &str) -> String {
    format!("{what}, {whom}")
}

pub fn move_to(whom: &str, direction: &str) -> String {
    format!("{whom}: {direction}")
}

/// "1 P", "DH".
pub fn post(post: Post) -> String {
    match post {
        Post::Fields(Position::ShortField) => "10 SF".into(),
        Post::Fields(position) => format!("{} {}", position.number(), position.abbreviation()),
        Post::DesignatedHitter => "DH".into(),
        Post::ExtraHitter => "Bats only".into(),
    }
}

pub const fn reentry(reentry: Reentry) -> &'static str {
    match reentry {
        Reentry::Never => "Never",
        Reentry::StartersOnce => "Starters, once",
        Reentry::Free => "Anyone, any time",
    }
}

pub fn most_batters(most: usize) -> String {
    format!("The rules of play take {most} batters.")
}

pub fn differs(fields: usize) -> String {
    match fields {
        1 => "1 rule differs from it.".into(),
        n => format!("{n} rules differ from it."),
    }
}

pub fn heading(heading: &Heading) -> String {
    let date = heading.date.map(|d| d.to_string());
    let parts = [date.unwrap_or_default(), heading.start.clone(), heading.place.clone(), heading.competition.clone()];
    parts.iter().filter(|p| !p.is_empty()).cloned().collect::<Vec<_>>().join(" · ")
}

/// Tenths as a decimal, whole where they are.
fn tenth(tenths: u16) -> String {
    match tenths % 10 {
        0 => (tenths / 10).to_string(),
        rest => format!("{}.{rest}", tenths / 10),
    }
}

pub fn check(check: Check) -> String {
    match check {
        Check::Balls(few, many) => format!(
            "Game balls: {few} or so do for a youth game; where a new ball comes in every 5 or 6 pitches, about {many}."
        ),
        Check::Rubbed => "New balls rubbed, so that the gloss is off.".into(),
        Check::SmallBats => {
            "Bat weights by usual practice: 16 to 17 ounces for children of 8 to 10 under 50 inches tall, up to \
                             20 above 60 inches, 18 to 23 at 11 and 12 years. Metal only where it is allowed."
                .into()
        }
        Check::Bats => {
            "Bat weights by usual practice from high school on: 27 to 31 ounces. Metal only where it is allowed.".into()
        }
        Check::Mitts => "Mitts only for the positions that may wear one.".into(),
        Check::BasePaths(feet) => format!("Bases {feet} feet apart."),
        Check::PitchingDistance(tenths) if tenths % 10 == 0 => {
            format!("The pitcher's plate {} feet from home.", tenths / 10)
        }
        Check::PitchingDistance(tenths) => {
            format!("The pitcher's plate {} feet {} inches from home.", tenths / 10, tenths % 10 * 12 / 10)
        }
        Check::BallSize(tenths) => format!("The ball {} inches round.", tenth(tenths)),
        Check::BatLimits { length, barrel, wood } => {
            let limits = [
                length.map(|tenths| format!("at most {} inches long", tenth(tenths))),
                barrel.map(|hundredths| format!("at most {}.{:02} inches thick", hundredths / 100, hundredths % 100)),
                wood.then(|| "of wood".to_owned()),
            ];
            format!("Bats by the rules of play: {}.", limits.into_iter().flatten().collect::<Vec<_>>().join(", "))
        }
        Check::EveryonePlays { outs, at_bats } => {
            let shares = [outs.map(|n| format!("{n} outs in the field")), at_bats.map(|n| format!("{n} times at bat"))];
            format!("Everyone present is to get {}.", shares.into_iter().flatten().collect::<Vec<_>>().join(" and "))
        }
        Check::Arc(from, to) => {
            let limits = [from.map(|feet| format!("at least {feet}")), to.map(|feet| format!("at most {feet}"))];
            format!(
                "The arc of the pitch {} feet high.",
                limits.into_iter().flatten().collect::<Vec<_>>().join(" and ")
            )
        }
        Check::Umpire => "The umpire has approved field and equipment.".into(),
    }
}

pub fn missing(missing: &Missing, team: &dyn Fn(Side) -> String) -> String {
    match missing {
        Missing::Card(side) => format!("{}: no lineup yet.", team(*side)),
        Missing::Pitcher(side) => format!("{}: no pitcher.", team(*side)),
        Missing::Fielders(side, open) => {
            let names: Vec<_> = open.iter().map(|p| p.name()).collect();
            format!("{}: nobody is {}.", team(*side), names.join(", "))
        }
        Missing::TooManyBatters(side, has, most) => {
            format!("{}: {has} batters; the rules of play take {most}.", team(*side))
        }
        Missing::SameNumber(side, number) => format!("{}: two players wear {number}.", team(*side)),
        Missing::Unknown(side, 1) => format!("{}: one player has neither name nor number yet.", team(*side)),
        Missing::Unknown(side, n) => format!("{}: {n} players have neither name nor number yet.", team(*side)),
        Missing::NoDesignatedHitter(side) => {
            format!("{}: the rules of play have no designated hitter.", team(*side))
        }
        Missing::NobodyBatsFor(side) => {
            format!("{}: somebody only fields, and there is no designated hitter.", team(*side))
        }
        Missing::Date => "No date: pitch counts and rest go by the day.".into(),
    }
}

/// "Top of 7".
pub fn half(inning: u8, half: Half) -> String {
    match half {
        Half::Top => format!("Top of {inning}"),
        Half::Bottom => format!("Bottom of {inning}"),
    }
}
