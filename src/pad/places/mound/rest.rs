//! What a guideline asks of the pitcher on the mound, by age. Never more than the guideline says.

use benchbook_stats::log::Event;
use benchbook_stats::team::PlayerId;
use benchbook_stats::workload::{AgeRow, PITCH_SMART_2015, Rest};
use leptos::prelude::*;

use super::Bench;
use crate::live::live;
use crate::places::Refused;
use crate::words::say;

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
            <h2>{say!("mound-rest")}</h2>
            <p class="notice small">{say!("mound-caution")}</p>
            {live(move || pitcher.get().map(|id| view! { <Age id=id age=age/> }))}
            <Refused/>
            {live(move || match (age.get(), age.get().and_then(|age| PITCH_SMART_2015.row(age))) {
                (None, _) => view! { <p class="soft">{say!("mound-no-age")}</p> }.into_any(),
                (Some(_), None) => view! { <p>{say!("mound-no-row")}</p> }.into_any(),
                (Some(_), Some(row)) => view! { <Bands row=row/> }.into_any(),
            })}
            <p class="soft small">{say!("mound-finish-the-batter")}</p>
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
            <span>{say!("mound-age")}</span>
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
                <th scope="row">{format!("{from}–{to}")}</th>
                <td>{days}{live(move || here().then(|| view! { " " <span class="mark">"◂ " {say!("mound-now")}</span> }))}</td>
            </tr>
        }
    };
    view! {
        <p><b>{say!("mound-row", from = row.from_age, to = row.to_age, most = row.daily_maximum)}</b></p>
        <p role="status">{live(move || rest_said(pitches.get(), rest.get()))}</p>
        <table class="bands">
            <thead><tr><th scope="col">{say!("mound-count")}</th><th scope="col">{say!("mound-days")}</th></tr></thead>
            <tbody>{row.bands().into_iter().map(band).collect_view()}</tbody>
        </table>
    }
}

fn rest_said(pitches: u32, rest: Rest) -> String {
    match rest {
        Rest::Days(days) => say!("mound-rest-days", pitches = pitches, days = days),
        Rest::BeyondTable => say!("mound-beyond-table", pitches = pitches),
    }
}
