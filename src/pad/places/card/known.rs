//! What earlier games know of this side's team: its last card in one tap, and its players to be tapped into the order.

use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::team::Player;
use leptos::prelude::*;

use super::{Desk, edit};
use crate::club::{self, LastCard, Team};
use crate::live::{Shown, live};
use crate::words::say;

/// The team as earlier games know it. Nothing where they don't.
#[component]
pub fn Known(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let known = Memo::new(move |_| desk.known_team(side).is_some());
    let last = Memo::new(move |_| desk.known_team(side).and_then(|team| team.last));
    view! {
        <Shown when=move || desk.before.get()>
            <Shown when=move || known.get() fallback=move || view! { <PickTeam side=side/> }>
                {live(move || last.get().map(|last| view! { <CopyCard side=side last=last/> }))}
            </Shown>
        </Shown>
        <Roster side=side/>
        <datalist id=suggestions(side)>
            {live(move || desk.not_here(side).into_iter().map(|player| view! { <option value=player.name></option> }).collect_view())}
        </datalist>
    }
}

/// The list of names suggested while one is written.
pub const fn suggestions(side: Side) -> &'static str {
    match side {
        Side::Visitors => "known-visitors",
        Side::Home => "known-home",
    }
}

/// A team of earlier games, to be chosen.
#[component]
fn PickTeam(
    /// For which side.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let names =
        Memo::new(move |_| desk.club.with(|club| club.teams().map(|team| team.name.clone()).collect::<Vec<_>>()));
    let choose = move |event: web_sys::Event| {
        let name = event_target_value(&event);
        if !name.is_empty() {
            desk.tap(Event::Team { side, name });
        }
    };
    let option = |name: String| {
        let value = name.clone();
        view! { <option value=value>{name}</option> }
    };
    view! {
        <Shown when=move || names.with(|names| !names.is_empty())>
            <label>
                <span class="says">{say!("card-known-team")}</span>
                <select on:change=choose>
                    <option value="">"–"</option>
                    {live(move || names.get().into_iter().map(option).collect_view())}
                </select>
            </label>
        </Shown>
    }
}

/// The last card, taken over in one tap; in two where it writes over names.
#[component]
fn CopyCard(
    /// For which side.
    side: Side,
    /// The card.
    last: LastCard,
) -> impl IntoView {
    let desk = Desk::get();
    let sure = RwSignal::new(false);
    let last = StoredValue::new(last);
    // A card is only replaced by one that says something else.
    let events = Memo::new(move |_| {
        desk.scoring.game.with(|game| {
            let events = last.with_value(|last| club::take_card(game, side, last));
            let same = matches!(&events[..], [Event::Card { card, .. }] if *card == edit::card_of(game, side));
            (!same).then_some(events)
        })
    });
    let named = Memo::new(move |_| {
        let is_named = |game: &Game, id| game.player(id).is_some_and(|(_, p)| club::player_key(p).is_some());
        desk.scoring.game.with(|game| edit::card_of(game, side).order.iter().any(|a| is_named(game, a.player)))
    });
    let copy = move |_| {
        if named.get_untracked() && !sure.get_untracked() {
            sure.set(true);
            return;
        }
        sure.set(false);
        for event in events.get_untracked().into_iter().flatten() {
            if !desk.tap(event) {
                return;
            }
        }
    };
    let words = move || match last.with_value(|last| last.date) {
        _ if sure.get() => say!("card-copy-sure"),
        Some(date) => say!("card-copy-of", date = date.to_string()),
        None => say!("card-copy"),
    };
    view! {
        <Shown when=move || events.with(Option::is_some)>
            <button type="button" class="copy" class:main=move || !named.get() on:click=copy>
                {words}
            </button>
        </Shown>
    }
}

/// Players of the team who are not in this game yet.
#[component]
fn Roster(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let players = Memo::new(move |_| desk.not_here(side));
    let chip = move |player: Player| {
        let label = if player.number.is_empty() || player.name.is_empty() {
            player.label().unwrap_or_default()
        } else {
            format!("{} {}", player.number, player.name)
        };
        view! { <button type="button" on:click=move |_| pick(desk, side, &player)>{label}</button> }
    };
    view! {
        <Shown when=move || players.with(|players| !players.is_empty())>
            <details class="known">
                <summary>
                    <span class="what">{say!("card-roster")}</span>
                    <span class="says-now">{live(move || say!("card-roster-left", n = players.with(Vec::len)))}</span>
                </summary>
                <p class="soft small">
                    {live(move || if desk.before.get() { say!("card-roster-hint") } else { say!("card-roster-hint-begun") })}
                </p>
                <div class="chips">{live(move || players.get().into_iter().map(chip).collect_view())}</div>
            </details>
        </Shown>
    }
}

/// A known player comes into the first place without a name, else to the end of the order, else to the bench.
fn pick(desk: Desk, side: Side, known: &Player) {
    let unnamed = |game: &Game| {
        let card = edit::card_of(game, side);
        let mut players = card.everyone().filter_map(|a| game.player(a.player).map(|(_, player)| player.clone()));
        players.find(|player| club::player_key(player).is_none())
    };
    if let Some(here) = desk.scoring.game.with_untracked(unnamed) {
        desk.tap(Event::Player { side, player: club::fill(&here, known) });
        return;
    }
    let id = desk.scoring.game.with_untracked(Game::next_player_id);
    let entered = desk.tap(Event::Player { side, player: Player { id, ..known.clone() } });
    if entered && desk.before.get_untracked() {
        let card = desk.scoring.game.with_untracked(|game| {
            let card = edit::card_of(game, side);
            let room = card.order.len() < edit::most_batters(game.code());
            room.then(|| edit::with_batter(card, id, game.code()))
        });
        if let Some(card) = card {
            desk.put_card(side, card);
        }
    }
}

impl Desk {
    /// The team of this side as earlier games know it.
    fn known_team(self, side: Side) -> Option<Team> {
        let name = self.scoring.game.with(|game| game.team_name(side).to_owned());
        self.club.with(|club| club.team(&name).cloned())
    }

    /// Its players who are not in this game.
    fn not_here(self, side: Side) -> Vec<Player> {
        let Some(team) = self.known_team(side) else { return Vec::new() };
        self.scoring.game.with(|game| {
            let here: Vec<_> = game.roster(side).filter_map(club::player_key).collect();
            let missing = |player: &Player| club::player_key(player).is_some_and(|key| !here.contains(&key));
            team.players.into_iter().filter(missing).collect()
        })
    }

    /// The player of this side's team whom earlier games know by this name.
    pub(super) fn known_player(self, side: Side, name: &str) -> Option<Player> {
        let game_name = self.scoring.game.with_untracked(|game| game.team_name(side).to_owned());
        self.club.with_untracked(|club| {
            let mut players = club.team(&game_name)?.players.iter();
            players.find(|player| !name.is_empty() && club::key(&player.name) == club::key(name)).cloned()
        })
    }
}
