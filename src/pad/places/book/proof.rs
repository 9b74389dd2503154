//! The proof of a box score (OBR 9.03(c)), live, with what is missing when it does not balance.

use benchbook_stats::field::Side;
use benchbook_stats::lines::Proof as Balance;
use leptos::prelude::*;

use super::{Reading, words};

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
        if proof.balances() {
            words::balances(proof.came_up())
        } else {
            words::does_not_balance(proof.came_up(), proof.accounted_for())
        }
    };
    view! {
        <section class="proof" class:off=move || !proof.get().balances()>
            <h3>{words::PROOF}" "<span class="rule">{words::PROOF_RULE}</span></h3>
            <p class="verdict">
                <span class="tick" aria-hidden="true">{move || if proof.get().balances() { "✓" } else { "✗" }}</span>
                {verdict}
            </p>
            <p class="sum">{move || sum(&left(&proof.get()))}" = "{move || sum(&right(&proof.get()))}</p>
        </section>
    }
}

fn left(proof: &Balance) -> Vec<(&'static str, u32, bool)> {
    vec![
        ("AB", proof.at_bats, true),
        ("BB", proof.walks, true),
        ("HBP", proof.hit_by_pitch, true),
        ("SH+SF", proof.sacrifices, true),
        ("interference", proof.interference, proof.interference > 0),
        ("placed runners", proof.placed_runners, proof.placed_runners > 0),
    ]
}

fn right(proof: &Balance) -> Vec<(&'static str, u32, bool)> {
    vec![("R", proof.runs, true), ("LOB", proof.left_on_base, true), ("opponents' PO", proof.opponents_putouts, true)]
}

/// "33 AB + 5 BB", without what never occurred and seldom does.
fn sum(terms: &[(&'static str, u32, bool)]) -> String {
    terms.iter().filter(|(.., shown)| *shown).map(|(what, n, _)| format!("{n} {what}")).collect::<Vec<_>>().join(" + ")
}
