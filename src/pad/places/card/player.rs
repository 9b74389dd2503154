//! A player's number and name, to be written at any time.

use benchbook_stats::field::Side;
use benchbook_stats::log::Event;
use benchbook_stats::team::{Player, PlayerId};
use leptos::prelude::*;

use super::Desk;
use super::known::suggestions;
use crate::club;
use crate::words::say;

/// Longest name and shirt number, in UTF-16 units as browsers count: what a line of the book still holds.
const LONGEST_NAME: &str = "40";
const LONGEST_NUMBER: &str = "4";

/// The two fields. Leaving one commits it.
#[component]
pub fn PlayerFields(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
    /// Who this is while nothing is known: "Batter 4".
    #[prop(into)]
    stand_in: Signal<String>,
) -> impl IntoView {
    let desk = Desk::get();
    let player = Memo::new(move |_| {
        desk.scoring.game.with(|game| game.player(id).map_or_else(|| Player::unnamed(id), |(_, p)| p.clone()))
    });
    let whom = move || player.with(benchbook_stats::team::Player::label).unwrap_or_else(|| stand_in.get());
    let put = move |change: &dyn Fn(&mut Player)| {
        let mut next = player.get_untracked();
        change(&mut next);
        if next != player.get_untracked() {
            desk.tap(Event::Player { side, player: next });
        }
    };
    view! {
        <input
            class="number"
            inputmode="numeric"
            maxlength=LONGEST_NUMBER
            autocomplete="off"
            placeholder=say!("card-shirt")
            aria-label=move || say!("card-shirt-of", whom = whom())
            prop:value=move || player.with(|p| p.number.clone())
            on:change=move |event| {
                let number = written(&event_target_value(&event));
                put(&|p| p.number.clone_from(&number));
            }
        />
        <input
            class="name"
            maxlength=LONGEST_NAME
            autocomplete="off"
            autocapitalize="words"
            spellcheck="false"
            list=suggestions(side)
            placeholder=move || stand_in.get()
            aria-label=move || say!("card-name-of", whom = whom())
            prop:value=move || player.with(|p| p.name.clone())
            on:change=move |event| {
                let name = written(&event_target_value(&event));
                let known = desk.known_player(side, &name);
                put(&|p| {
                    p.name.clone_from(&name);
                    if let Some(known) = &known {
                        *p = club::fill(p, known);
                    }
                });
            }
        />
    }
}

/// What was written, without what a line can't show: outer blanks and control characters.
pub fn written(text: &str) -> String {
    let kept: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    kept.trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::written;

    #[test]
    fn any_name_is_kept_as_written() {
        for name in ["Søren", "🧢 Ana", "<script>alert(1)</script>", "O'Neil \"Ace\"", "山田"] {
            assert_eq!(written(name), name);
        }
        assert_eq!(written("  Ana\tMaría\n"), "Ana María");
    }
}
