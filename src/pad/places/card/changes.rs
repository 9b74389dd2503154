//! Once play has begun: who came in for whom, in order.

use benchbook_stats::account::{Account, Told, sentences};
use leptos::prelude::*;

use super::usual::approval;
use super::{Desk, words};
use crate::live::{Shown, live};
use crate::place::{Place, Room};
use crate::places::{Refused, label};
use crate::words::{language, say};

/// The changes so far.
#[component]
pub fn Changes() -> impl IntoView {
    let desk = Desk::get();
    let changes = Memo::new(move |_| {
        desk.scoring.game.with(|game| {
            let account = Account::of(game);
            let halves = account.halves.iter();
            let changes = halves.flat_map(|half| half.lines.iter().map(move |line| (half.inning, half.half, line)));
            changes
                .filter(|(.., line)| line.conflict.is_none() && line.told.iter().any(is_change))
                .map(|(inning, half, line)| {
                    (words::half(inning, half), sentences::line(line, language(), &|id| label(game, id)))
                })
                .collect::<Vec<_>>()
        })
    });
    let plate = Place::Game(desk.scoring.id.get_value(), Room::Plate).hash();
    view! {
        <section class="changes">
            <h2>{say!("card-changes")}</h2>
            <Refused/>
            <Shown
                when=move || changes.with(|c| !c.is_empty())
                fallback=|| view! { <p class="soft">{say!("card-no-changes")}</p> }
            >
                <dl>
                    {live(move || {
                        let row = |(when, what)| view! { <dt>{when}</dt><dd>{what}</dd> };
                        changes.get().into_iter().map(row).collect_view()
                    })}
                </dl>
            </Shown>
            <Shown when=move || desk.scoring.game.with(|game| approval(game).is_some())>
                <p class="soft">{say!("card-check-umpire")}</p>
            </Shown>
            <a class="button main" href=plate>{say!("card-to-the-plate")}</a>
        </section>
    }
}

const fn is_change(told: &Told) -> bool {
    matches!(told, Told::Substituted { .. } | Told::Changed { .. })
}
