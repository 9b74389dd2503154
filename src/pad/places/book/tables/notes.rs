//! The notes under a side's batters, as newspapers print them: two-base hits, stolen bases and the like, by name. Each name
//! answers "why?".

use benchbook_stats::account::why::{Batting, Number, Pitching};
use benchbook_stats::lines::{BattingLine, PitchingLine, SideBox};
use leptos::prelude::*;

use super::super::why::Asked;

const BATTING: [(&str, Batting); 13] = [
    ("Two-base hits", Batting::Doubles),
    ("Three-base hits", Batting::Triples),
    ("Home runs", Batting::HomeRuns),
    ("Sacrifice hits", Batting::SacrificeHits),
    ("Sacrifice flies", Batting::SacrificeFlies),
    ("Hit by a pitch", Batting::HitByPitch),
    ("Walked intentionally", Batting::IntentionalWalks),
    ("Stolen bases", Batting::StolenBases),
    ("Caught stealing", Batting::CaughtStealing),
    ("Grounded into double plays", Batting::GroundedIntoDoublePlays),
    ("Reached on errors", Batting::ReachedOnError),
    ("Reached on fielder's choices", Batting::FieldersChoices),
    ("First base on interference", Batting::Interference),
];

const PITCHING: [(&str, Pitching); 5] = [
    ("Home runs allowed", Pitching::HomeRuns),
    ("Wild pitches", Pitching::WildPitches),
    ("Balks", Pitching::Balks),
    ("Batters hit", Pitching::HitBatters),
    ("Walked intentionally", Pitching::IntentionalWalks),
];

/// The notes on the batters that have somebody to name.
pub fn on_batters(lines: &SideBox) -> AnyView {
    let of = |column: Batting| {
        let one = |l: &BattingLine| Some((Number::Batting(l.player?, column), l.name.clone(), column.of(l)));
        lines.batting.iter().filter_map(one).collect()
    };
    BATTING.into_iter().map(|(what, column)| note(what, of(column))).collect_view().into_any()
}

/// The notes on the pitchers that have somebody to name.
pub fn on_pitchers(lines: &SideBox) -> AnyView {
    let of = |column: Pitching| {
        let one = |l: &PitchingLine| Some((Number::Pitching(l.player?, column), l.name.clone(), column.of(l)));
        lines.pitching.iter().filter_map(one).collect()
    };
    PITCHING.into_iter().map(|(what, column)| note(what, of(column))).collect_view().into_any()
}

/// "Stolen bases: Abara 2, Ravelo."
fn note(what: &'static str, named: Vec<(Number, String, u32)>) -> Option<AnyView> {
    let some: Vec<_> = named.into_iter().filter(|(.., count)| *count > 0).collect();
    let ask = |(number, name, count): (Number, String, u32)| {
        let text = if count == 1 { name } else { format!("{name} {count}") };
        view! { <Asked number=number value=text/> }
    };
    (!some.is_empty())
        .then(|| view! { <li><b>{what}":"</b>" "{some.into_iter().map(ask).collect_view()}</li> }.into_any())
}
