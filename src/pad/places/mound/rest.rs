//! What a guideline asks of the pitcher on the mound, by age. Never more than the guideline says.

use benchbook_stats::log::Event;
use benchbook_stats::team::PlayerId;
use benchbook_stats::workload::{AgeRow, PITCH_SMART_2015};
use leptos::prelude::*;

use super::{Bench, words};
use crate::places::Refused;

/// The row of the guideline for this pitcher's age.
#[component]
pub fn RestOf() -> impl IntoView {
    let bench = Bench::get();
    let pitcher = Memo::new(move |_| bench.now.with(|n| n.as_ref().and_then(|l| l.player)));
    let age = Memo::new(move |_| {
        let id = pitcher.get()?;
        bench.scoring.game.with(|g| g.player(id).and_then(|(_, p)| p.age))
    });
    view! {
        <section class="rest">
            <h2>{words::REST}</h2>
            <p class="notice small">{words::CAUTION}</p>
            {move || pitcher.get().map(|id| view! { <Age id=id age=age/> })}
            <Refused/>
            {move || match (age.get(), age.get().and_then(|age| PITCH_SMART_2015.row(age))) {
                (None, _) => view! { <p class="soft">{words::NO_AGE}</p> }.into_any(),
                (Some(_), None) => view! { <p>{words::NO_ROW}</p> }.into_any(),
                (Some(_), Some(row)) => view! { <Bands row=row/> }.into_any(),
            }}
            <p class="soft small">{words::FINISH_THE_BATTER}</p>
            <p class="soft small">{PITCH_SMART_2015.name}": "{PITCH_SMART_2015.source}"."</p>
        </section>
    }
}

#[component]
fn Age(
    /// Whose.
    id: PlayerId,
    /// In years, if known.
    age: Memo<Option<u8>>,
) -> impl IntoView {
    let bench = Bench::get();
    let put = move |event: web_sys::Event| {
        let age = event_target_value(&event).trim().parse::<u8>().ok();
        let known = bench.scoring.game.with_untracked(|g| g.player(id).map(|(side, p)| (side, p.clone())));
        if let Some((side, mut player)) = known.filter(|(_, p)| p.age != age) {
            player.age = age;
            bench.scoring.tap(Event::Player { side, player });
        }
    };
    view! {
        <label class="age">
            <span>{words::AGE}</span>
            <input inputmode="numeric" maxlength="2" prop:value=move || age.get().map(|a| a.to_string()).unwrap_or_default() on:change=put/>
        </label>
    }
}

#[component]
fn Bands(
    /// The guideline's row.
    row: &'static AgeRow,
) -> impl IntoView {
    let bench = Bench::get();
    let pitches = Memo::new(move |_| bench.now.with(|n| n.as_ref().map_or(0, |l| l.pitches)));
    let rest = Memo::new(move |_| row.rest(u16::try_from(pitches.get()).unwrap_or(u16::MAX)));
    let band = move |(days, from, to): (u8, u16, u16)| {
        let here = move || (u32::from(from)..=u32::from(to)).contains(&pitches.get());
        view! {
            <tr class:here=here>
                <th scope="row">{words::band(from, to)}</th>
                <td>{days}{move || here().then(|| view! { " " <span class="mark">"◂ " {words::NOW}</span> })}</td>
            </tr>
        }
    };
    view! {
        <p><b>{words::row(row)}</b></p>
        <p role="status">{move || words::rest(pitches.get(), rest.get())}</p>
        <table class="bands">
            <thead><tr><th scope="col">{words::COUNT}</th><th scope="col">{words::DAYS}</th></tr></thead>
            <tbody>{row.bands().into_iter().map(band).collect_view()}</tbody>
        </table>
    }
}
