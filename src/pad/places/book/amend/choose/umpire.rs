//! What the umpire declared, chosen: the count, who is at the plate, a runner put on by rule, the end of the half.

use benchbook_stats::field::Base;
use benchbook_stats::log::Event;
use benchbook_stats::propose::possible;
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use super::Moment;
use crate::places::plate::words as plate;
use crate::words::say;

/// The declarations, folded away; nothing where play was not on.
#[component]
pub fn Umpire(
    /// When.
    moment: Moment,
) -> impl IntoView {
    let counts = moment.at(possible::counts);
    let batters = moment.at(possible::out_of_turn);
    let declared = moment.at(possible::declared);
    let named = move |players: Vec<PlayerId>, event: fn(PlayerId, Base) -> Event, base: Base| {
        let chip = move |player| moment.chip(moment.at(|game| game.label(player)), event(player, base));
        players.into_iter().map(chip).collect_view()
    };
    let count = move |count| moment.chip(plate::count(count), Event::SetCount(count));
    let declare = move |event: Event| {
        let text = if event == Event::OutOfTurnAppeal { say!("plate-appeal") } else { say!("plate-end-half") };
        moment.chip(text, event)
    };
    let placed =
        Base::STANDING.map(|base| {
            let players = moment.at(|game| possible::placed_on(game, base));
            let heading = say!("book-instead-placed", base = base.said(crate::words::language()));
            (!players.is_empty()).then(|| view! {
            <details>
                <summary>{heading}</summary>
                <div class="chips">{named(players, |player, base| Event::PlaceRunner { base, player }, base)}</div>
            </details>
        })
        });
    (!declared.is_empty()).then(|| {
        view! {
            <details>
                <summary>{say!("book-instead-umpire")}</summary>
                <div class="chips">{declared.into_iter().map(declare).collect_view()}</div>
                <h4>{say!("plate-the-count")}</h4>
                <div class="chips">{counts.into_iter().map(count).collect_view()}</div>
                <h4>{say!("plate-out-of-turn")}</h4>
                <div class="chips">{named(batters, |player, _| Event::BatterUp { player }, Base::Home)}</div>
                {placed}
            </details>
        }
    })
}
