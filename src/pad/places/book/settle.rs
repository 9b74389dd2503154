//! Matters of judgment: open questions first in mind, the usual answer standing until another is given.

use benchbook_stats::game::Game;
use benchbook_stats::log::{Event, Judgment};
use benchbook_stats::ruling::question::Question;
use leptos::prelude::*;

use super::{Reading, words};
use crate::live::{Shown, live};
use crate::words::say;

/// The list, folded away; nothing if there is nothing to judge.
#[component]
pub fn Settle() -> impl IntoView {
    let reading = Reading::get();
    let questions = Memo::new(move |_| reading.scoring.game.with(Game::questions));
    let open = Memo::new(move |_| questions.with(|q| q.iter().filter(|q| q.is_open()).count()));
    view! {
        <Shown when=move || questions.with(|q| !q.is_empty())>
            <details class="settle">
                <summary>{live(move || words::to_settle(open.get()))}</summary>
                <p class="soft small">{say!("book-settle-hint")}</p>
                <ol>
                    {live(move || questions.get().into_iter().map(|q| view! { <Matter question=q/> }).collect_view())}
                </ol>
            </details>
        </Shown>
    }
}

#[component]
fn Matter(
    /// What is asked.
    question: Question,
) -> impl IntoView {
    let reading = Reading::get();
    let text = question.asked.said(crate::words::language(), &|id| reading.name(id));
    let play = question.on.map(|entry| reading.sentence(entry));
    let given = question.given;
    let answer = move |(i, judgment): (usize, Judgment)| {
        let label = words::answer(&judgment, &|id| reading.name(id));
        let usual = (i == 0).then(|| view! { <span class="usual">{say!("book-usual")}</span> });
        let stands = given == Some(i);
        let give = move |_| {
            if !stands {
                reading.scoring.tap(Event::Judgment(judgment.clone()));
            }
        };
        view! {
            <button type="button" aria-pressed=stands.to_string() on:click=give>
                {label}
                {usual}
            </button>
        }
    };
    view! {
        <li class:open=given.is_none()>
            <p class="soft small">{play}</p>
            <p><b>{text.clone()}</b>" "<span class="rule">{words::rule(question.rule)}</span></p>
            <p class="tools" role="group" aria-label=text>
                {question.answers.into_iter().enumerate().map(answer).collect_view()}
            </p>
        </li>
    }
}
