//! One line of the play-by-play, which opens to its rulings, its pitches and its correction.

use benchbook_stats::account::{Account, Line, Reason, sentences};
use benchbook_stats::game::{Game, Slot};
use benchbook_stats::log::{EntryId, Event};
use leptos::html;
use leptos::prelude::*;

use super::amend::{Choosing, Pitches, ScoreAs, can_be_amended};
use super::why::RestsOn;
use super::{Reading, words};
use crate::live::{Shown, live};
use crate::words::{language, say};

/// One line.
#[component]
pub fn LineOf(
    /// Its entry.
    entry: EntryId,
) -> impl IntoView {
    let reading = Reading::get();
    let line = Memo::new(move |_| reading.account.with(|account| account.line(entry).cloned()));
    let open = RwSignal::new(false);
    let text = move || reading.sentence(entry);
    let runs = move || line.with(|l| l.as_ref().map_or(0, |l| l.runs));
    let score = move || line.with(|l| l.as_ref().map(|l| format!("{}–{}", l.score[0], l.score[1])));
    let outs = move || line.with(|l| l.as_ref().and_then(out_words));
    let misfit = move || line.with(|l| l.as_ref().and_then(|l| l.conflict).map(|c| c.to_string()));
    let row: NodeRef<html::Li> = NodeRef::new();
    Effect::new(move |_| {
        if reading.shown.get() == Some(entry)
            && let Some(row) = row.get()
        {
            reading.shown.set(None);
            open.set(true);
            row.scroll_into_view();
        }
    });
    view! {
        <li class="line" node_ref=row class:scored=move || { runs() > 0 } class:misfit=move || misfit().is_some()>
            <button type="button" class="told" aria-expanded=move || open.get().to_string() on:click=move |_| open.update(|o| *o = !*o)>
                <span class="words">{text}{live(move || misfit().map(|why| format!(" {why}")))}</span>
                <span class="outs">{outs}</span>
                <Shown when=move || { runs() > 0 }><span class="score">{score}</span></Shown>
            </button>
            <Shown when=move || open.get()>{live(move || line.get().map(|line| view! { <Details line=line/> }))}</Shown>
        </li>
    }
}

fn out_words(line: &Line) -> Option<String> {
    (line.outs_made > 0).then(|| words::outs(line.outs))
}

#[component]
fn Details(
    /// Of which line.
    line: Line,
) -> impl IntoView {
    let reading = Reading::get();
    let entry = line.entry;
    let Line { reasons, pitches, pitches_missed, .. } = line;
    let has_reasons = !reasons.is_empty();
    let amendable = reading.scoring.game.with_untracked(|game| can_be_amended(game, entry));
    view! {
        <div class="details">
            {has_reasons.then(|| view! { <h4>{say!("book-rulings")}</h4> })}
            <dl class="rulings">{reasons.into_iter().map(|r| view! { <Ruling reason=r/> }).collect_view()}</dl>
            <ScoreAs entry=entry/>
            <Pitches line=entry pitches=pitches missed=pitches_missed/>
            <p class="tools">
                {amendable.then(|| {
                    view! { <button type="button" on:click=move |_| reading.amend(entry)>{say!("book-amend-this")}</button> }
                })}
                <Choosing line=entry at=Slot::Of(entry) text=say!("book-instead-ask")/>
                <Choosing line=entry at=Slot::Before(entry) text=say!("book-missing-ask")/>
                <button type="button" on:click=move |_| reading.propose(entry, Event::Retract { entry })>
                    {say!("book-strike-out")}
                </button>
            </p>
        </div>
    }
}

#[component]
fn Ruling(
    /// The ruling and its reason.
    reason: Reason,
) -> impl IntoView {
    let reading = Reading::get();
    view! {
        <dt>{sentences::heading(&reason.ruled, language(), &|id| reading.name(id))}</dt>
        <dd>
            {sentences::grounds(&reason.because, language())} " "
            <span class="rule">{words::rule(reason.rule)}</span>
            <RestsOn entries=reason.rests_on/>
        </dd>
    }
}

/// Entries struck out, latest first.
pub fn struck_out(game: &Game) -> Vec<EntryId> {
    let mut struck: Vec<EntryId> = Vec::new();
    for entry in game.log() {
        match &entry.event {
            Event::Retract { entry } => struck.push(*entry),
            Event::Reinstate { entry } => struck.retain(|id| id != entry),
            _ => {}
        }
    }
    struck.reverse();
    struck
}

/// An entry that was struck out as it would be told: a pitch by its name, a play by its sentence.
pub fn told_if_it_counted(game: &Game, entry: EntryId) -> String {
    let Ok(restored) = game.preview(Event::Reinstate { entry }) else { return words::entry(entry) };
    let account = Account::of(&restored);
    let line = account.line(entry);
    let own = line.filter(|l| l.entry == entry).map(|l| sentences::line(l, language(), &|id| restored.label(id)));
    let pitch = || line?.pitches.iter().find(|(id, _)| *id == entry).map(|(_, t)| sentences::pitch(*t, language()));
    own.or_else(pitch).unwrap_or_else(|| words::entry(entry))
}
