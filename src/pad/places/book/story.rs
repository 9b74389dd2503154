//! The game told in a few sentences, once it is over or suspended.

use benchbook_stats::account::story::{Story as Told, Who};
use leptos::prelude::*;

use super::Reading;
use crate::live::{Shown, live};
use crate::words::{language, say};

/// The story; nothing while the game goes on.
#[component]
pub fn Story() -> impl IntoView {
    let reading = Reading::get();
    let sentences = Memo::new(move |_| {
        reading.scoring.game.with(|game| {
            let who = Who { player: &|id| game.label(id), team: &|side| game.team_name(side).to_owned() };
            Told::of(game).map(|story| story.said(language(), who)).unwrap_or_default()
        })
    });
    view! {
        <Shown when=move || sentences.with(|s| !s.is_empty())>
            <section class="story">
                <h2>{say!("book-story")}</h2>
                {live(move || sentences.get().into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view())}
            </section>
        </Shown>
    }
}
