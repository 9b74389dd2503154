//! A correction: what would change is shown before the scorer agrees.

use benchbook_stats::account::compare::{Comparison, Shift, compare};
use benchbook_stats::account::why::Number;
use benchbook_stats::account::{Account, sentences};
use benchbook_stats::game::{Game, Refusal};
use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::drawer::Drawer;
use super::{Proposal, Reading, words};
use crate::live::live;
use crate::places::Refused;
use crate::words::{language, say};

/// The drawer that asks, while a correction is looked at.
#[component]
pub fn Correction() -> impl IntoView {
    let reading = Reading::get();
    let close = Callback::new(move |()| reading.proposed.set(None));
    live(move || {
        reading.proposed.get().map(|proposal| {
            view! {
                <Drawer title=say!("book-preview") close=close>
                    <Preview proposal=proposal close=close/>
                </Drawer>
            }
        })
    })
}

#[component]
fn Preview(
    /// What would be recorded.
    proposal: Proposal,
    /// Leaves the drawer.
    close: Callback<()>,
) -> impl IntoView {
    let reading = Reading::get();
    let Proposal { on, event } = proposal;
    let struck = matches!(event, Event::Retract { .. });
    let preview = reading.scoring.game.with_untracked(|game| {
        let after = game.preview(event.clone())?;
        Ok::<_, Refusal>((compare(game, &after), told_then(&event, game, &after)))
    });
    let what = words::proposal(&event);
    let agree = move |_| {
        if reading.scoring.tap(event.clone()) {
            reading.amending.set(None);
            close.run(());
        }
    };
    match preview {
        Err(refusal) => view! { <p class="notice refusal">{refusal.said(language())}</p> }.into_any(),
        Ok((comparison, then_told)) => view! {
            <p class:struck=struck>{reading.sentence(on)}</p>
            <p><b>{what}</b>{then_told.is_some().then_some(" ")}{then_told}</p>
            <Differences comparison=comparison/>
            <Refused/>
            <p class="soft small">{say!("book-stays-in-log")}</p>
            <p class="answers">
                <button type="button" class="main" on:click=agree>{say!("book-agree")}</button>
                <button type="button" on:click=move |_| close.run(())>{say!("book-leave")}</button>
            </p>
        }
        .into_any(),
    }
}

/// What would stand there, told as it would be then. Of a pitch that is no more than one, the heading says all.
fn told_then(event: &Event, before: &Game, after: &Game) -> Option<String> {
    let entry = match event {
        Event::Replace { entry, .. } => *entry,
        Event::Retract { .. } | Event::Reinstate { .. } | Event::Judgment(_) => return None,
        _ => before.next_id(),
    };
    let account = Account::of(after);
    let line = account.line(entry).filter(|line| line.entry == entry)?;
    Some(sentences::line(line, language(), &|id| after.label(id)))
}

#[component]
fn Differences(
    /// What differs.
    comparison: Comparison,
) -> impl IntoView {
    let reading = Reading::get();
    let nothing = comparison.is_empty();
    let (totals, players): (Vec<_>, Vec<_>) = comparison.numbers.into_iter().partition(|(n, ..)| n.is_of_a_side());
    let no_longer = move |(entry, refusal): (EntryId, Refusal)| {
        view! { <li>{reading.sentence(entry)}" "<b>{say!("book-no-longer-fits")}</b>" "{refusal.said(language())}</li> }
    };
    let few = players.len() <= FEW;
    let folded = say!("book-more-numbers", count = players.len());
    let players = view! { <Numbers numbers=players/> };
    view! {
        {nothing.then_some(say!("book-no-change"))}
        {comparison.situation.map(|s| view! { <p>{words::stands(&s)}</p> })}
        {comparison.shift.map(|Shift { plays, was, now, .. }| {
            let (was, now) = (reading.name(was), reading.name(now));
            view! { <p><b>{say!("book-would-shift", plays = plays, was = was, now = now)}</b></p> }
        })}
        <ul class="changes">{comparison.no_longer_fit.into_iter().map(no_longer).collect_view()}</ul>
        <Numbers numbers=totals/>
        {if few {
            players.into_any()
        } else {
            view! { <details><summary>{folded}</summary>{players}</details> }.into_any()
        }}
    }
}

/// Numbers of players that change, shown without being asked for.
const FEW: usize = 8;

#[component]
fn Numbers(
    /// Number, before, after.
    numbers: Vec<(Number, u32, u32)>,
) -> impl IntoView {
    let reading = Reading::get();
    let row = move |(number, before, after)| {
        let what = sentences::number(number, language(), &|id| reading.name(id), &|side| reading.team(side));
        view! { <tr><th scope="row">{what}</th><td>{words::from_to(before, after)}</td></tr> }
    };
    view! { <table class="changes"><tbody>{numbers.into_iter().map(row).collect_view()}</tbody></table> }
}
