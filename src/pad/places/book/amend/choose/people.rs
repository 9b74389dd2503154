//! A change of players, chosen: who is changed, then what becomes of them.

use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::propose::changes;
use benchbook_stats::team::{Change, Lineup, PlayerId, Role};
use leptos::prelude::*;

use super::Moment;
use crate::live::live;
use crate::places::book::amend::pick::Pick;

use crate::words::{language, say};

/// The changes, folded away.
#[component]
pub fn People(
    /// When.
    moment: Moment,
) -> impl IntoView {
    let players = moment.at(in_the_game);
    let mut options = vec![(String::new(), say!("book-change-nobody"))];
    options.extend(players.iter().enumerate().map(|(i, (.., text))| (i.to_string(), text.clone())));
    let chosen = RwSignal::new(None::<(Side, PlayerId)>);
    let ids: Vec<(Side, PlayerId)> = players.into_iter().map(|(side, id, _)| (side, id)).collect();
    let of_value = ids.clone();
    let value = Signal::derive(move || {
        of_value.iter().position(|id| Some(*id) == chosen.get()).map(|i| i.to_string()).unwrap_or_default()
    });
    let pick = Callback::new(move |value: String| {
        chosen.set(value.parse().ok().and_then(|i: usize| ids.get(i).copied()));
    });
    let chips = move || {
        let (side, player) = chosen.get()?;
        let list = moment.at(|game| {
            let list = changes(game, side, player);
            list.into_iter().map(|change| (said(game, player, &change), change)).collect::<Vec<_>>()
        });
        let chip = move |(text, change)| moment.chip(text, Event::Change { side, change });
        Some(list.into_iter().map(chip).collect_view())
    };
    view! {
        <details>
            <summary>{say!("book-instead-players")}</summary>
            <Pick label=say!("book-change-who") options=options value=value pick=pick/>
            <div class="chips">{live(chips)}</div>
        </details>
    }
}

/// Both sides' players, the side in the field first.
fn in_the_game(game: &Game) -> Vec<(Side, PlayerId, String)> {
    let fielding = game.situation().fielding();
    let of = |side: Side| {
        let players = game.lineup(side).into_iter().flat_map(Lineup::everyone);
        players.map(move |a| {
            let (team, name, post) = (game.team_name(side), game.label(a.player), a.post.short(language()));
            (side, a.player, say!("book-change-player", team = team, name = name, post = post))
        })
    };
    [fielding, fielding.other()].into_iter().flat_map(of).collect()
}

fn said(game: &Game, player: PlayerId, change: &Change) -> String {
    match change {
        Change::Substitute { incoming, role, .. } => {
            let name = game.label(*incoming);
            match role {
                Role::PinchHitter => say!("book-change-pinch-hits", name = name),
                Role::PinchRunner => say!("book-change-pinch-runs", name = name),
                Role::CourtesyRunner => say!("book-change-courtesy", name = name),
                Role::Fielder(_) => say!("book-change-comes-in", name = name),
            }
        }
        Change::Shift { to } => {
            let other = to.iter().find(|a| a.player != player).map(|a| game.label(a.player)).unwrap_or_default();
            say!("book-change-swaps", name = other)
        }
        Change::EndDesignatedHitter { .. } => say!("plate-bats-for-dh"),
        Change::Leave { .. } => say!("plate-leaves"),
        Change::Join(a) => game.label(a.player),
    }
}
