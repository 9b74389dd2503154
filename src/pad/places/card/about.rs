//! What else is known of a player: hands and age. Shown for all when asked for.

use benchbook_stats::field::Side;
use benchbook_stats::log::Event;
use benchbook_stats::team::{Hand, Player, PlayerId};
use leptos::prelude::*;

use super::Desk;
use crate::live::Shown;
use crate::places::label;
use crate::words::say;

/// Oldest and youngest age taken, in years: what two figures hold, and nobody pitches before.
const AGES: core::ops::RangeInclusive<u8> = 3..=99;

/// The three fields.
#[component]
pub fn About(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
) -> impl IntoView {
    let desk = Desk::get();
    let player = Memo::new(move |_| desk.scoring.game.with(|game| game.player(id).map(|(_, p)| p.clone())));
    let whom = move || desk.scoring.game.with(|game| label(game, id));
    let put = move |change: &dyn Fn(&mut Player)| {
        let before = player.get_untracked().unwrap_or_else(|| Player::unnamed(id));
        let mut next = before.clone();
        change(&mut next);
        if next != before {
            desk.tap(Event::Player { side, player: next });
        }
    };
    let age = move || player.with(|p| age_of(p.as_ref()));
    let put_age = move |event: web_sys::Event| {
        let text = event_target_value(&event);
        let age = text.trim().parse().ok().filter(|age| AGES.contains(age));
        if age.is_some() || text.trim().is_empty() {
            put(&|p| p.age = age);
        } else {
            // Back to what it was: the field shows the age, not the slip.
            event_target::<web_sys::HtmlInputElement>(&event).set_value(&player.with_untracked(|p| age_of(p.as_ref())));
        }
    };
    view! {
        <Shown when=move || desk.about.get()>
            <div class="about">
                <label>
                    <span class="says">{say!("card-bats")}</span>
                    <HandField
                        of=Signal::derive(move || player.with(|p| p.as_ref().and_then(|p| p.bats)))
                        label=Signal::derive(move || say!("card-bats-of", whom = whom()))
                        put=Callback::new(move |hand| put(&|p| p.bats = hand))
                    />
                </label>
                <label>
                    <span class="says">{say!("card-throws")}</span>
                    <HandField
                        of=Signal::derive(move || player.with(|p| p.as_ref().and_then(|p| p.throws)))
                        label=Signal::derive(move || say!("card-throws-of", whom = whom()))
                        put=Callback::new(move |hand| put(&|p| p.throws = hand))
                    />
                </label>
                <label>
                    <span class="says">{say!("card-age")}</span>
                    <input
                        class="age"
                        inputmode="numeric"
                        maxlength="2"
                        autocomplete="off"
                        aria-label=move || say!("card-age-of", whom = whom())
                        prop:value=age
                        on:change=put_age
                    />
                </label>
            </div>
        </Shown>
    }
}

fn age_of(player: Option<&Player>) -> String {
    player.and_then(|p| p.age).map(|age| age.to_string()).unwrap_or_default()
}

const HANDS: [Option<Hand>; 4] = [None, Some(Hand::Right), Some(Hand::Left), Some(Hand::Both)];

#[component]
fn HandField(
    /// The hand now.
    of: Signal<Option<Hand>>,
    /// Whose, and for what.
    label: Signal<String>,
    /// Takes the new one.
    put: Callback<Option<Hand>>,
) -> impl IntoView {
    let choose = move |event: web_sys::Event| {
        if let Some(hand) = event_target_value(&event).parse::<usize>().ok().and_then(|i| HANDS.get(i)) {
            put.run(*hand);
        }
    };
    let option = move |(i, hand): (usize, Option<Hand>)| {
        let chosen = move || of.get() == hand;
        view! { <option value=i selected=chosen prop:selected=chosen>{hand.map_or_else(|| "–".to_owned(), said)}</option> }
    };
    view! {
        <select aria-label=move || label.get() on:change=choose>
            {HANDS.into_iter().enumerate().map(option).collect_view()}
        </select>
    }
}

fn said(hand: Hand) -> String {
    match hand {
        Hand::Right => say!("card-hand-right"),
        Hand::Left => say!("card-hand-left"),
        Hand::Both => say!("card-hand-both"),
    }
}
