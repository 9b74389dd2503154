//! The notes under a batting table, as newspapers print them: two-base hits, stolen bases and the like, by name.

use benchbook_stats::lines::{BattingLine, SideBox};
use leptos::prelude::*;

type Note = (&'static str, fn(&BattingLine) -> u32);

const NOTES: [Note; 12] = [
    ("Two-base hits", |l| l.doubles),
    ("Three-base hits", |l| l.triples),
    ("Home runs", |l| l.home_runs),
    ("Sacrifice hits", |l| l.sacrifice_hits),
    ("Sacrifice flies", |l| l.sacrifice_flies),
    ("Hit by a pitch", |l| l.hit_by_pitch),
    ("Walked intentionally", |l| l.intentional_walks),
    ("Stolen bases", |l| l.stolen_bases),
    ("Caught stealing", |l| l.caught_stealing),
    ("Grounded into double plays", |l| l.grounded_into_double_plays),
    ("Reached on errors", |l| l.reached_on_error),
    ("First base on interference", |l| l.interference),
];

/// The notes that have somebody to name.
pub fn notes(lines: &SideBox) -> impl IntoView + use<> {
    NOTES
        .iter()
        .filter_map(|(what, count)| {
            let names = named(&lines.batting, *count);
            (!names.is_empty()).then(|| view! { <li><b>{*what}":"</b>" "{names}"."</li> })
        })
        .collect_view()
}

/// "Abara 2, Ravelo".
fn named(lines: &[BattingLine], count: fn(&BattingLine) -> u32) -> String {
    let names = lines.iter().filter_map(|line| match count(line) {
        0 => None,
        1 => Some(line.name.clone()),
        n => Some(format!("{} {n}", line.name)),
    });
    names.collect::<Vec<_>>().join(", ")
}
