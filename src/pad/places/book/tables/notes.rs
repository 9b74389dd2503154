//! The notes under a side's batters, as newspapers print them: two-base hits, stolen bases and the like, by name. Each name
//! answers "why?".

use benchbook_stats::account::why::{Batting, Number, Pitching};
use benchbook_stats::lines::{BattingLine, PitchingLine, SideBox};
use leptos::prelude::*;

use super::super::why::Asked;
use crate::words::say;

fn batting() -> [(String, Batting); 13] {
    [
        (say!("book-note-doubles"), Batting::Doubles),
        (say!("book-note-triples"), Batting::Triples),
        (say!("book-note-home-runs"), Batting::HomeRuns),
        (say!("book-note-sacrifice-hits"), Batting::SacrificeHits),
        (say!("book-note-sacrifice-flies"), Batting::SacrificeFlies),
        (say!("book-note-hit-by-pitch"), Batting::HitByPitch),
        (say!("book-note-walked-intentionally"), Batting::IntentionalWalks),
        (say!("book-note-stolen-bases"), Batting::StolenBases),
        (say!("book-note-caught-stealing"), Batting::CaughtStealing),
        (say!("book-note-double-plays"), Batting::GroundedIntoDoublePlays),
        (say!("book-note-on-errors"), Batting::ReachedOnError),
        (say!("book-note-on-choices"), Batting::FieldersChoices),
        (say!("book-note-interference"), Batting::Interference),
    ]
}

fn pitching() -> [(String, Pitching); 5] {
    [
        (say!("book-note-home-runs-allowed"), Pitching::HomeRuns),
        (say!("book-note-wild-pitches"), Pitching::WildPitches),
        (say!("book-note-balks"), Pitching::Balks),
        (say!("book-note-batters-hit"), Pitching::HitBatters),
        (say!("book-note-walked-intentionally"), Pitching::IntentionalWalks),
    ]
}

/// The notes on the batters that have somebody to name.
pub fn on_batters(lines: &SideBox) -> AnyView {
    let of = |column: Batting| {
        let one = |l: &BattingLine| Some((Number::Batting(l.player?, column), l.name.clone(), column.of(l)));
        lines.batting.iter().filter_map(one).collect()
    };
    batting().into_iter().map(|(what, column)| note(what, of(column))).collect_view().into_any()
}

/// The notes on the pitchers that have somebody to name.
pub fn on_pitchers(lines: &SideBox) -> AnyView {
    let of = |column: Pitching| {
        let one = |l: &PitchingLine| Some((Number::Pitching(l.player?, column), l.name.clone(), column.of(l)));
        lines.pitching.iter().filter_map(one).collect()
    };
    pitching().into_iter().map(|(what, column)| note(what, of(column))).collect_view().into_any()
}

/// "Stolen bases: Abara 2, Ravelo."
fn note(what: String, named: Vec<(Number, String, u32)>) -> Option<AnyView> {
    let some: Vec<_> = named.into_iter().filter(|(.., count)| *count > 0).collect();
    let ask = |(number, name, count): (Number, String, u32)| {
        let text = if count == 1 { name } else { format!("{name} {count}") };
        view! { <Asked number=number value=text/> }
    };
    (!some.is_empty())
        .then(|| view! { <li><b>{what}":"</b>" "{some.into_iter().map(ask).collect_view()}</li> }.into_any())
}
