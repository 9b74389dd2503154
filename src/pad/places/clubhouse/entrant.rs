//! A team of the game to be started: its name written, or chosen among those earlier games know, with its last card.

use leptos::prelude::*;

use crate::club::{Club, LastCard};
use crate::live::{Shown, live};
use crate::words::say;

/// The longest team name, in characters: what a board on a phone still shows.
const LONGEST_NAME: &str = "40";

/// A team of the game to be started.
#[derive(Clone, Copy)]
pub struct Entrant {
    /// Its name.
    pub name: RwSignal<String>,
    /// Earlier games know a card of it.
    pub known: Memo<bool>,
    /// It is to begin with that card.
    pub with_card: RwSignal<bool>,
    last: Memo<Option<LastCard>>,
}

impl Entrant {
    /// A team without a name.
    pub fn new(club: Memo<Club>) -> Self {
        let name = RwSignal::new(String::new());
        let last = Memo::new(move |_| club.with(|club| club.team(&name.get()).and_then(|team| team.last.clone())));
        let known = Memo::new(move |_| last.with(Option::is_some));
        Self { name, known, with_card: RwSignal::new(true), last }
    }

    /// The card it begins with, if earlier games know one.
    pub fn card(self) -> Option<LastCard> {
        self.with_card.get_untracked().then(|| self.last.get_untracked()).flatten()
    }
}

/// A team: its name, the known ones to choose from, and whether it begins with its last card.
#[component]
pub fn TeamOf(
    /// Which side.
    says: String,
    /// What the choice among the known teams is called.
    known: String,
    /// The team.
    team: Entrant,
    /// What earlier games know.
    club: Memo<Club>,
) -> impl IntoView {
    let names = Memo::new(move |_| club.with(|club| club.teams().map(|team| team.name.clone()).collect::<Vec<_>>()));
    let option = move |name: String| {
        let value = name.clone();
        let chosen = {
            let name = name.clone();
            move || team.name.get() == name
        };
        view! { <option value=value prop:selected=chosen>{name}</option> }
    };
    let with_card = move || {
        team.last.get().map(|last| match last.date {
            Some(date) => say!("clubhouse-with-card-of", date = date.to_string()),
            None => say!("clubhouse-with-card"),
        })
    };
    view! {
        <div class="entrant">
            <label>
                <span class="says">{says}</span>
                <input
                    type="text"
                    maxlength=LONGEST_NAME
                    autocomplete="off"
                    autocapitalize="words"
                    spellcheck="false"
                    prop:value=move || team.name.get()
                    on:input=move |event| team.name.set(event_target_value(&event))
                />
            </label>
            <Shown when=move || names.with(|names| !names.is_empty())>
                <select
                    aria-label=known.clone()
                    on:change=move |event| team.name.set(event_target_value(&event))
                >
                    <option value="">{say!("clubhouse-from-earlier")}</option>
                    {live(move || names.get().into_iter().map(option).collect_view())}
                </select>
            </Shown>
            <Shown when=move || team.known.get()>
                <label class="yes">
                    <input
                        type="checkbox"
                        prop:checked=move || team.with_card.get()
                        on:change=move |event| team.with_card.set(event_target_checked(&event))
                    />
                    <span>{with_card}</span>
                </label>
            </Shown>
        </div>
    }
}
