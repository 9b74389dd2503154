//! The line score, as a scoreboard.

use benchbook_stats::account::why::Number;
use benchbook_stats::field::Side;
use benchbook_stats::lines::SideScore;
use leptos::html;
use leptos::prelude::*;

use super::why::Asked;
use super::{Reading, words};
use crate::live::live;
use crate::words::say;

/// The scoreboard.
#[component]
pub fn Board() -> impl IntoView {
    let reading = Reading::get();
    let game = reading.scoring.game;
    let state = Memo::new(move |_| game.with(|game| words::state(game.situation())));
    let innings = Memo::new(move |_| {
        let played = reading.line_score.with(|score| score.sides.iter().map(|s| s.innings.len()).max().unwrap_or(0));
        played.max(game.with(|game| usize::from(game.code().innings)))
    });
    let scroll: NodeRef<html::Div> = NodeRef::new();
    let inning = Memo::new(move |_| game.with(|game| usize::from(game.situation().inning)));
    Effect::new(move |_| {
        if let Some(scroll) = scroll.get() {
            bring_into_sight(&scroll, inning.get(), innings.get());
        }
    });
    view! {
        <section class="scoreboard">
            <p class="state" role="status">{state}</p>
            <div class="scroll" tabindex="0" role="region" aria-label=say!("book-line-score") node_ref=scroll>
                <table>
                    <thead>
                        <tr>
                            <th scope="col" class="team"><span class="spoken">{say!("book-team")}</span></th>
                            {live(move || (1..=innings.get()).map(|i| view! { <th scope="col">{i}</th> }).collect_view())}
                            <Sums/>
                        </tr>
                    </thead>
                    <tbody>{Side::BOTH.map(|side| view! { <Row side=side innings=innings/> })}</tbody>
                </table>
            </div>
        </section>
    }
}

/// Where the innings don't fit, the one now played is shown, not the first.
fn bring_into_sight(scroll: &web_sys::HtmlDivElement, inning: usize, innings: usize) {
    let hidden = f64::from(scroll.scroll_width() - scroll.client_width());
    #[allow(clippy::cast_precision_loss)] // a handful of innings
    let share = inning.saturating_sub(1) as f64 / innings.saturating_sub(1).max(1) as f64;
    scroll.set_scroll_left((hidden * share) as i32);
}

#[component]
fn Sums() -> impl IntoView {
    view! {
        <th scope="col" class="sum r"><abbr title=say!("book-runs-long")>{say!("book-runs")}</abbr></th>
        <th scope="col" class="sum h"><abbr title=say!("book-hits-long")>{say!("book-hits")}</abbr></th>
        <th scope="col" class="sum e"><abbr title=say!("book-errors-long")>{say!("book-errors")}</abbr></th>
    }
}

#[component]
fn Row(
    /// Whose.
    side: Side,
    /// Columns.
    innings: Memo<usize>,
) -> impl IntoView {
    let reading = Reading::get();
    let score = Memo::new(move |_| reading.line_score.with(|score| score.side(side).clone()));
    let now = Memo::new(move |_| {
        reading.scoring.game.with(|game| {
            let s = game.situation();
            (s.phase == benchbook_stats::game::Phase::Underway && s.batting() == side).then_some(usize::from(s.inning))
        })
    });
    view! {
        <tr>
            <th scope="row" class="team">{live(move || score.with(|s| s.team.clone()))}</th>
            {live(move || {
                (1..=innings.get())
                    .map(|inning| {
                        let text = score.with(|s| cell(s, inning));
                        view! { <td class:in-play=now.get() == Some(inning)>{text}</td> }
                    })
                    .collect_view()
            })}
            <td class="sum r"><Asked number=Number::RunsOf(side) value=Signal::derive(move || score.with(|s| s.runs.to_string()))/></td>
            <td class="sum h"><Asked number=Number::HitsOf(side) value=Signal::derive(move || score.with(|s| s.hits.to_string()))/></td>
            <td class="sum e"><Asked number=Number::ErrorsOf(side) value=Signal::derive(move || score.with(|s| s.errors.to_string()))/></td>
        </tr>
    }
}

/// Runs of an inning; "x" where the side did not need to bat.
fn cell(score: &SideScore, inning: usize) -> String {
    match score.innings.get(inning - 1) {
        Some(Some(runs)) => runs.to_string(),
        Some(None) => "x".into(),
        None => String::new(),
    }
}
