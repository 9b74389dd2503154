//! "Why?": a number opened to the plays and rules behind it.

use benchbook_stats::account::sentences;
use benchbook_stats::account::why::{Evidence, Number, why};
use benchbook_stats::log::EntryId;
use leptos::prelude::*;

use super::drawer::Drawer;
use super::{Reading, words};
use crate::live::{Shown, live};
use crate::words::{language, say};

/// A number that answers "why?" when it is touched.
#[component]
pub fn Asked(
    /// Which.
    number: Number,
    /// Its value, as it is printed.
    #[prop(into)]
    value: Signal<String>,
) -> impl IntoView {
    let reading = Reading::get();
    let label = move || {
        let what = sentences::number(number, language(), &|id| reading.name(id), &|side| reading.team(side));
        say!("book-asked", value = value.get(), what = what)
    };
    view! {
        <button type="button" class="asked" aria-label=label on:click=move |_| reading.asked.set(Some(number))>
            {value}
        </button>
    }
}

/// The drawer with the answer.
#[component]
pub fn Why() -> impl IntoView {
    let reading = Reading::get();
    let close = Callback::new(move |()| reading.asked.set(None));
    live(move || {
        reading.asked.get().map(|number| {
            let title = sentences::number(number, language(), &|id| reading.name(id), &|side| reading.team(side));
            view! { <Drawer title=title close=close><Answer number=number/></Drawer> }
        })
    })
}

#[component]
fn Answer(
    /// To what.
    number: Number,
) -> impl IntoView {
    let reading = Reading::get();
    let evidence = Memo::new(move |_| {
        reading.account.with(|account| reading.scoring.game.with(|game| why(game, account, number)))
    });
    view! {
        <Shown
            when=move || evidence.with(|e| !e.is_empty())
            fallback=|| view! { <p>{say!("book-no-evidence")}</p> }
        >
            <ol class="evidence">
                {live(move || evidence.get().into_iter().map(|e| view! { <Play evidence=e/> }).collect_view())}
            </ol>
        </Shown>
    }
}

#[component]
fn Play(
    /// What stands behind the number.
    evidence: Evidence,
) -> impl IntoView {
    let reading = Reading::get();
    let counts = evidence.counts();
    let Evidence { entry, reason, .. } = evidence;
    let heading = sentences::heading(&reason.ruled, language(), &|id| reading.name(id));
    let rule = words::rule(reason.rule);
    let place = reading.account.with_untracked(|account| {
        let half = account.halves.iter().find(|h| h.lines.iter().any(|l| l.entry == entry));
        half.map(|h| words::half(h.inning, h.half))
    });
    let because = sentences::grounds(&reason.because, language());
    // Nothing is told yet of a turn at the plate that goes on.
    let told = reading.sentence(entry);
    let show = move |_| reading.show(entry);
    view! {
        <li class:against=!counts>
            <p class="soft small">{place}</p>
            {(!told.is_empty()).then(|| view! { <p><button type="button" class="quiet" on:click=show>{told}</button></p> })}
            <p><b>{heading}</b>" — "{if counts { say!("book-counts") } else { say!("book-does-not-count") }}</p>
            <p>{because}" "<span class="rule">{rule}</span></p>
            <RestsOn entries=reason.rests_on/>
        </li>
    }
}

/// Other plays a ruling rests on.
#[component]
pub fn RestsOn(
    /// Which.
    entries: Vec<EntryId>,
) -> impl IntoView {
    let reading = Reading::get();
    (!entries.is_empty()).then(|| {
        let plays = entries.into_iter().map(|entry| view! { <li>{reading.sentence(entry)}</li> }).collect_view();
        view! {
            <div class="rests-on small">
                <p>{say!("book-rests-on")}</p>
                <ul>{plays}</ul>
            </div>
        }
    })
}
