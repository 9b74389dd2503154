//! The Mound: pitches by pitcher, large enough to read from the bench.

use benchbook_stats::field::Side;
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::lines::PitchingLine;
use leptos::prelude::*;

use crate::live::live;
use crate::scoring::Scoring;
use crate::words::say;

mod figure;
mod reading;
mod rest;
mod today;

use figure::Figure;
use rest::RestOf;
use today::Today;

/// The pitchers of the side looked at.
#[derive(Clone, Copy)]
pub(super) struct Bench {
    scoring: Scoring,
    /// The side looked at; `None` follows the side in the field.
    chosen: RwSignal<Option<Side>>,
    /// The side looked at.
    side: Memo<Side>,
    /// Its pitchers of today, in order of appearance.
    lines: Memo<Vec<PitchingLine>>,
    /// The one on the mound, or the last who was.
    now: Memo<Option<PitchingLine>>,
}

impl Bench {
    fn provide() -> Self {
        let scoring = Scoring::get();
        let game = scoring.game;
        let chosen = RwSignal::new(None);
        let side = Memo::new(move |_| chosen.get().unwrap_or_else(|| game.with(|g| g.situation().fielding())));
        let lines = Memo::new(move |_| game.with(|g| g.pitching(side.get())));
        let now = Memo::new(move |_| game.with(|g| reading::on_the_mound(g, side.get(), &lines.get())));
        let bench = Self { scoring, chosen, side, lines, now };
        provide_context(bench);
        bench
    }

    /// The bench of the open Mound.
    fn get() -> Self {
        expect_context()
    }
}

/// The Mound.
#[component]
pub fn Mound() -> impl IntoView {
    let bench = Bench::provide();
    let game = bench.scoring.game;
    let counted = Memo::new(move |_| game.with(|g| g.code().players_pitch));
    bench.scoring.refusal.set(None);
    window().scroll_to_with_x_and_y(0.0, 0.0);
    let begun = Memo::new(move |_| game.with(|g| g.situation().phase != Phase::Before));
    view! {
        <main class="mound">
            <h1 class="spoken">{say!("mound-place")}</h1>
            <Sides/>
            {live(move || match (counted.get(), begun.get()) {
                (false, _) => view! { <p class="notice">{say!("mound-nobody-pitches")}</p> }.into_any(),
                (true, false) => view! { <p class="soft">{say!("mound-not-begun")}</p> }.into_any(),
                (true, true) => {
                    view! {
                        <Figure/>
                        <div class="beside">
                            <Today/>
                            <RestOf/>
                        </div>
                    }
                        .into_any()
                }
            })}
        </main>
    }
}

/// Whose pitchers.
#[component]
fn Sides() -> impl IntoView {
    let bench = Bench::get();
    let button = move |side: Side| {
        let name = move || bench.scoring.game.with(|g: &Game| g.team_name(side).to_owned());
        let in_field = move || bench.scoring.game.with(|g| g.situation().fielding() == side);
        view! {
            <button
                type="button"
                aria-pressed=move || (bench.side.get() == side).to_string()
                on:click=move |_| bench.chosen.set(Some(side))
            >
                {name}
                <span class="where">{live(move || if in_field() { say!("mound-in-the-field") } else { say!("mound-at-bat") })}</span>
            </button>
        }
    };
    view! { <div class="sides" role="group" aria-label=say!("mound-whose")>{Side::BOTH.map(button)}</div> }
}
