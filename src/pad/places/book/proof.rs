//! The proof of a box score (OBR 9.03(c)), live, with what is missing when it does not balance.

use benchbook_stats::field::Side;
use benchbook_stats::lines::Proof as Balance;
use leptos::prelude::*;

use super::{Reading, words};
use crate::live::live;
use crate::words::say;

/// One side's proof.
#[component]
pub fn Proof(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let reading = Reading::get();
    let proof = Memo::new(move |_| reading.box_score.with(|score| score.side(side).proof));
    let verdict = move || {
        let proof = proof.get();
        words::balance(proof.came_up(), proof.accounted_for())
    };
    view! {
        <section class="proof" class:off=move || !proof.get().balances()>
            <h3>{say!("book-proof")}" "<span class="rule">{say!("book-proof-rule")}</span></h3>
            <p class="verdict">
                <span class="tick" aria-hidden="true">{live(move || if proof.get().balances() { "✓" } else { "✗" })}</span>
                {verdict}
            </p>
            <p class="sum">{live(move || sum(&left(&proof.get())))}" = "{live(move || sum(&right(&proof.get())))}</p>
        </section>
    }
}

fn left(proof: &Balance) -> Vec<(String, u32, bool)> {
    vec![
        (say!("book-at-bats"), proof.at_bats, true),
        (say!("book-walks"), proof.walks, true),
        (say!("book-proof-hit-by-pitch"), proof.hit_by_pitch, true),
        (say!("book-proof-sacrifices"), proof.sacrifices, true),
        (say!("book-proof-interference"), proof.interference, proof.interference > 0),
        (say!("book-proof-placed"), proof.placed_runners, proof.placed_runners > 0),
    ]
}

fn right(proof: &Balance) -> Vec<(String, u32, bool)> {
    vec![
        (say!("book-runs"), proof.runs, true),
        (say!("book-left-on-base"), proof.left_on_base, true),
        (say!("book-proof-putouts"), proof.opponents_putouts, true),
    ]
}

/// "33 AB + 5 BB", without what never occurred and seldom does.
fn sum(terms: &[(String, u32, bool)]) -> String {
    terms.iter().filter(|(.., shown)| *shown).map(|(what, n, _)| format!("{n} {what}")).collect::<Vec<_>>().join(" + ")
}
