//! A matter of judgment the last play left: one line with its answers, the usual first. Waits for nobody: left alone, the
//! usual answer stands, and the Book keeps the question on its list.

use std::time::Duration;

use benchbook_stats::game::Game;
use benchbook_stats::log::{EntryId, Event, Judgment};
use benchbook_stats::ruling::question::Question;
use leptos::prelude::*;

use super::hand::Hand;
use super::words;
use crate::live::live;
use crate::words::language;
use crate::words::say;

/// Judging takes all rulings of the game: only once the tap itself has shown.
const AFTER_PAINT: Duration = Duration::from_millis(120);

/// The question of the last play, if it has an open one.
#[component]
pub fn Ask() -> impl IntoView {
    let hand = Hand::get();
    let question = RwSignal::new(None::<Question>);
    let last_play = Memo::new(move |_| hand.game(batted_last));
    Effect::new(move |_| {
        question.set(None);
        if let Some(on) = last_play.get() {
            set_timeout(
                move || {
                    if last_play.try_get_untracked() == Some(Some(on)) {
                        question.try_set(hand.game_now(|game| open_question(game, on)));
                    }
                },
                AFTER_PAINT,
            );
        }
    });
    live(move || question.get().map(|q| view! { <Line question=q dismiss=move || question.set(None)/> }))
}

#[component]
fn Line(
    /// What is asked.
    question: Question,
    /// Leaves it for later.
    dismiss: impl Fn() + Copy + 'static,
) -> impl IntoView {
    let hand = Hand::get();
    let (text, answers) = hand.game_now(|game| {
        let answers = question.answers.iter().map(|a| (words::answer(game, a), a.clone())).collect::<Vec<_>>();
        (question.asked.said(language(), &|id| words::short(&game.label(id)).to_owned()), answers)
    });
    let give = move |words: String, judgment: Judgment| {
        dismiss();
        hand.record(Event::Judgment(judgment), words);
    };
    let label = text.clone();
    view! {
        <div class="ask" role="group" aria-label=label>
            <p>{text}</p>
            {answers
                .into_iter()
                .enumerate()
                .map(|(i, (label, judgment))| {
                    let said = label.clone();
                    view! {
                        <button type="button" class:main=i == 0 on:click=move |_| give(said.clone(), judgment.clone())>
                            {label}
                        </button>
                    }
                })
                .collect_view()}
            <button type="button" class="later" aria-label=say!("plate-later") on:click=move |_| dismiss()>
                <span aria-hidden="true">"✕"</span>
            </button>
        </div>
    }
}

/// The entry of the last thing recorded, if it was a ball in play.
fn batted_last(game: &Game) -> Option<EntryId> {
    let play = game.steps().last()?.play.as_deref()?;
    play.batted.is_some().then_some(play.entry)
}

fn open_question(game: &Game, on: EntryId) -> Option<Question> {
    game.questions().into_iter().find(|q| q.on == Some(on) && q.is_open())
}
