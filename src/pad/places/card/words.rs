//! Words of the Card that depend on what they are about.

use benchbook_stats::code::Reentry;
use benchbook_stats::field::{Half, Position, Post, Side};
use benchbook_stats::log::Heading;

use super::checks::Missing;
use crate::words::{language, say};

pub fn side(side: Side) -> String {
    match side {
        Side::Visitors => say!("card-visitors-bat-first"),
        Side::Home => say!("card-home"),
    }
}

/// "6 SS", "DH".
pub fn post(post: Post) -> String {
    match post {
        // Which has no other name than its number.
        Post::Fields(Position::ShortField) => Position::ShortField.short(language()),
        Post::Fields(position) => format!("{} {}", position.number(), position.short(language())),
        Post::DesignatedHitter => post.short(language()),
        Post::ExtraHitter => say!("card-post-extra-hitter"),
    }
}

pub fn reentry(reentry: Reentry) -> String {
    match reentry {
        Reentry::Never => say!("card-reentry-never"),
        Reentry::StartersOnce => say!("card-reentry-starters-once"),
        Reentry::Free => say!("card-reentry-free"),
    }
}

/// Day, hour, place and competition, as far as noted.
pub fn heading(heading: &Heading) -> String {
    let date = heading.date.map(|d| d.to_string()).unwrap_or_default();
    let parts = [date.as_str(), &heading.start, &heading.place, &heading.competition];
    parts.into_iter().filter(|p| !p.is_empty()).collect::<Vec<_>>().join(" · ")
}

pub fn missing(missing: &Missing, team: &dyn Fn(Side) -> String) -> String {
    match missing {
        Missing::Card(side) => say!("card-missing-card", team = team(*side)),
        Missing::Pitcher(side) => say!("card-missing-pitcher", team = team(*side)),
        Missing::Fielders(side, open) => {
            let names: Vec<_> = open.iter().map(|p| p.said(language())).collect();
            say!("card-missing-fielders", team = team(*side), positions = names.join(", "))
        }
        Missing::TooManyBatters(side, has, most) => {
            say!("card-missing-too-many", team = team(*side), has = *has, most = *most)
        }
        Missing::SameNumber(side, number) => {
            say!("card-missing-same-number", team = team(*side), number = number.as_str())
        }
        Missing::Unknown(side, n) => say!("card-missing-unknown", team = team(*side), n = *n),
        Missing::NoDesignatedHitter(side) => say!("card-missing-no-designated-hitter", team = team(*side)),
        Missing::NobodyBatsFor(side) => say!("card-missing-nobody-bats-for", team = team(*side)),
        Missing::Date => say!("card-missing-date"),
    }
}

/// "Top of 7".
pub fn half(inning: u8, half: Half) -> String {
    match half {
        Half::Top => say!("card-top-of", inning = inning),
        Half::Bottom => say!("card-bottom-of", inning = inning),
    }
}
