//! The list of games, and of those thrown away.

use std::sync::Arc;

use benchbook_stats::game::Game;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::board::Board;
use super::house::{House, Row};
use crate::carry::{self, Parcel};
use crate::live::{Shown, live};
use crate::place::Place;
use crate::words::say;

/// The games on this device.
#[component]
pub fn Games() -> impl IntoView {
    let house = House::get();
    let rows = Memo::new(move |_| chosen(house, false));
    view! {
        <section class="games" aria-labelledby="games-title">
            <h2 id="games-title">{say!("clubhouse-games")}</h2>
            {live(move || match rows.get() {
                None => view! { <p class="soft" aria-busy="true">{say!("clubhouse-reading")}</p> }.into_any(),
                Some(rows) if rows.is_empty() => view! { <NoGames/> }.into_any(),
                Some(rows) => {
                    view! { <ul class="list">{rows.into_iter().map(|row| view! { <OneGame row=row/> }).collect_view()}</ul> }
                        .into_any()
                }
            })}
        </section>
    }
}

fn chosen(house: House, thrown_away: bool) -> Option<Vec<Row>> {
    house.games.with(|rows| {
        let rows = rows.as_ref()?.iter();
        Some(rows.filter(|row| row.thrown_away == thrown_away).cloned().collect())
    })
}

/// What the list says while it is empty.
#[component]
fn NoGames() -> impl IntoView {
    view! {
        <div class="no-games">
            <svg viewBox="-100 -14 200 140" role="img" aria-label=say!("clubhouse-empty-field")>
                <path class="grass" d="M0 120 L-92 28 A130 130 0 0 1 92 28 Z"/>
                <path class="clay" d="M0 120 L-44 76 A46 46 0 0 1 44 76 Z"/>
                <path class="grass" d="M0 112 L-24 88 L0 64 L24 88 Z"/>
                <path class="chalk" d="M-92 28 L0 120 L92 28"/>
                <circle class="clay" cx="0" cy="89" r="5"/>
                <path
                    class="bag"
                    d="M29 87.5l3.5-3.5 3.5 3.5-3.5 3.5zM-3.5 55l3.5-3.5 3.5 3.5-3.5 3.5z"
                />
                <path class="bag" d="M-36 87.5l3.5-3.5 3.5 3.5-3.5 3.5zM-3 115h6v3l-3 3-3-3zM-2 88.3h4v1.4h-4z"/>
            </svg>
            <p>{say!("clubhouse-no-games")}</p>
        </div>
    }
}

/// One game: its board, which opens it, and what else can be done with it.
#[component]
fn OneGame(
    /// The game.
    row: Row,
) -> impl IntoView {
    let house = House::get();
    let row = Arc::new(row);
    let title = row.board.title();
    let (taken, shared, thrown) = (Arc::clone(&row), Arc::clone(&row), Arc::clone(&row));
    let take_home = move |_| {
        let parcel = parcel(&taken);
        if parcel.download() {
            house.say(say!("clubhouse-downloaded", file = parcel.name));
        } else {
            house.refuse(say!("clubhouse-no-download"));
        }
    };
    let share = move |_| {
        let parcel = parcel(&shared);
        spawn_local(async move {
            if !parcel.share().await {
                house.refuse(say!("clubhouse-not-shared"));
            }
        });
    };
    view! {
        <li class="game" data-game=row.id.to_string()>
            <a class="open" href=Place::Game(row.id.clone(), row.board.room).hash() aria-label=say!("clubhouse-open-game", title = title.as_str())>
                <BoardView board=row.board.clone()/>
            </a>
            <div class="buttons">
                <button type="button" class="quiet" on:click=take_home aria-label=say!("clubhouse-take-home-game", title = title.as_str())>
                    {say!("clubhouse-take-home")}
                </button>
                <Shown when=carry::can_share>
                    <button type="button" class="quiet" on:click=share.clone()>{say!("clubhouse-share")}</button>
                </Shown>
                <button
                    type="button"
                    class="quiet"
                    aria-label=say!("clubhouse-throw-away-game", title = title.as_str())
                    on:click=move |_| house.throw_away(&thrown)
                >
                    {say!("clubhouse-throw-away")}
                </button>
            </div>
        </li>
    }
}

fn parcel(row: &Row) -> Parcel {
    Parcel::of_game(&row.id, &Game::replay(row.log.iter().cloned()))
}

/// A game's board: two names, two figures, how far they are.
#[component]
fn BoardView(
    /// The board.
    board: Board,
) -> impl IntoView {
    let figure = |side: usize| board.score.map_or_else(|| "–".to_owned(), |score| score[side].to_string());
    let [visitors, home] = board.teams.clone();
    let state = match board.conflicts {
        0 => board.state.clone(),
        conflicts => say!("clubhouse-to-settle", n = conflicts, state = board.state.as_str()),
    };
    view! {
        <span class="board">
            <span class="team">{visitors}</span>
            <span class="runs">{figure(0)}</span>
            <span class="team">{home}</span>
            <span class="runs">{figure(1)}</span>
            <span class="foot">
                <span class="state">{state}</span>
                <span class="heading">{board.heading.clone()}</span>
            </span>
        </span>
    }
}

/// The games thrown away, until they are thrown away for good.
#[component]
pub fn ThrownAway() -> impl IntoView {
    let house = House::get();
    let rows = Memo::new(move |_| chosen(house, true).unwrap_or_default());
    view! {
        <Shown when=move || !rows.with(Vec::is_empty)>
            <details class="thrown-away">
                <summary>{live(move || say!("clubhouse-thrown-away", n = rows.with(Vec::len)))}</summary>
                <ul class="list">
                    {live(move || rows.get().into_iter().map(|row| view! { <Thrown row=row/> }).collect_view())}
                </ul>
            </details>
        </Shown>
    }
}

/// A game thrown away.
#[component]
fn Thrown(
    /// The game.
    row: Row,
) -> impl IntoView {
    let house = House::get();
    let sure = RwSignal::new(false);
    let back = row.id.clone();
    let for_good = move |_| {
        if sure.get_untracked() {
            house.remove(row.id.clone());
        } else {
            sure.set(true);
        }
    };
    view! {
        <li class="thrown">
            <span>{row.board.title()} <span class="soft small">{row.board.heading.clone()}</span></span>
            <div class="buttons">
                <button type="button" class="quiet" on:click=move |_| house.put_back(&back)>{say!("clubhouse-put-back")}</button>
                <button type="button" class="quiet" on:click=for_good>
                    {live(move || if sure.get() { say!("clubhouse-throw-away-sure") } else { say!("clubhouse-throw-away-for-good") })}
                </button>
            </div>
        </li>
    }
}
