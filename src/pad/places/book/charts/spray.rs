//! The spray chart: one batter's balls on the field, and the same as a list.

use benchbook_stats::field::Side;
use benchbook_stats::spray::{Fate, Placed, Spray, SprayBall};
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use super::super::{Reading, words};
use super::field;
use crate::live::{Shown, live};
use crate::words::say;

/// The chart of one batter, chosen from the order.
#[component]
pub fn Sprays() -> impl IntoView {
    let reading = Reading::get();
    let sprays = Memo::new(move |_| reading.scoring.game.with(|game| Side::BOTH.map(|side| game.spray(side)).concat()));
    let chosen = RwSignal::new(None::<PlayerId>);
    let shown = Memo::new(move |_| sprays.with(|all| of(all, chosen.get()).cloned()));
    let step = move |by: isize| {
        let next = sprays.with_untracked(|all| {
            let now = shown.with_untracked(|s| s.as_ref().map(|s| s.player));
            let at = all.iter().position(|s| Some(s.player) == now)?;
            all.get((at + all.len()).checked_add_signed(by)? % all.len()).map(|s| s.player)
        });
        chosen.set(next);
    };
    view! {
        <section class="spray">
            <h2>{say!("book-spray")}</h2>
            <Shown
                when=move || shown.with(Option::is_some)
                fallback=|| view! { <p class="soft">{say!("book-nobody-batted")}</p> }
            >
                <p class="tools">
                    <button type="button" on:click=move |_| step(-1)>{say!("book-batter-before")}</button>
                    <Choice sprays=sprays shown=shown chosen=chosen/>
                    <button type="button" on:click=move |_| step(1)>{say!("book-batter-after")}</button>
                </p>
                {live(move || shown.get().map(|spray| view! { <Chart spray=spray/> }))}
            </Shown>
        </section>
    }
}

/// The chart asked for; else the first with a ball on it, else the first.
fn of(all: &[Spray], chosen: Option<PlayerId>) -> Option<&Spray> {
    all.iter()
        .find(|s| chosen == Some(s.player))
        .or_else(|| all.iter().find(|s| !s.balls.is_empty()))
        .or_else(|| all.first())
}

/// Who is shown, of both sides' orders.
#[component]
fn Choice(
    /// All.
    sprays: Memo<Vec<Spray>>,
    /// The one shown.
    shown: Memo<Option<Spray>>,
    /// The one asked for.
    chosen: RwSignal<Option<PlayerId>>,
) -> impl IntoView {
    let reading = Reading::get();
    let option = move |spray: Spray| {
        let id = spray.player;
        let selected = move || shown.with(|s| s.as_ref().is_some_and(|s| s.player == id));
        let text = say!("book-batter-of-order", place = spray.place, name = spray.name, balls = spray.balls.len());
        view! { <option value=id.0.to_string() selected=selected>{text}</option> }
    };
    let group = move |side: Side| {
        let theirs = move || {
            let mut all = sprays.get();
            all.retain(|s| reading.scoring.game.with(|game| game.player(s.player).is_some_and(|(of, _)| of == side)));
            all.into_iter().map(option).collect_view()
        };
        view! { <optgroup label=move || reading.team(side)>{theirs}</optgroup> }
    };
    view! {
        <select
            aria-label=say!("book-batter-shown")
            on:change=move |event| chosen.set(event_target_value(&event).parse().ok().map(PlayerId))
        >
            {Side::BOTH.map(group)}
        </select>
    }
}

#[component]
fn Chart(
    /// Whose.
    spray: Spray,
) -> impl IntoView {
    let reading = Reading::get();
    let drawing = field::drawn() + &field::marks(&spray.balls);
    let label = say!("book-spray-of", name = spray.name.as_str());
    let by_fielder = spray.balls.iter().any(|ball| ball.placed == Placed::ByFielder);
    let none = spray.balls.is_empty();
    let item = move |ball: SprayBall| {
        let (told, fate) = (reading.sentence(ball.entry), words::fate(ball.fate));
        let text = match ball.placed {
            Placed::Touched => say!("book-ball", fate = fate, inning = ball.inning, told = told),
            Placed::ByFielder => say!("book-ball-by-fielder", fate = fate, inning = ball.inning, told = told),
        };
        view! { <li>{text}</li> }
    };
    view! {
        <div class="chart">
            <figure>
                <figcaption>{label.clone()}</figcaption>
                <svg class="field" viewBox=field::view_box() role="img" aria-label=label inner_html=drawing></svg>
                <Legend by_fielder=by_fielder/>
            </figure>
            <div>
                {none.then(|| view! { <p class="soft">{say!("book-no-balls")}</p> })}
                <ol>{spray.balls.into_iter().map(item).collect_view()}</ol>
            </div>
        </div>
    }
}

#[component]
fn Legend(
    /// Some ball is known by its fielder alone.
    by_fielder: bool,
) -> impl IntoView {
    let entry = |fate: Fate, placed: Placed, text: String| {
        view! {
            <li>
                <svg class="field" viewBox="-20 -20 40 40" aria-hidden="true" inner_html=field::mark(fate, placed)></svg>
                {text}
            </li>
        }
    };
    view! {
        <ul class="legend small">
            {Fate::ALL.map(|fate| entry(fate, Placed::Touched, words::fate(fate)))}
            {by_fielder.then(|| entry(Fate::Out, Placed::ByFielder, say!("book-placed-by-fielder")))}
        </ul>
    }
}
