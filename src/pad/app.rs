//! The frame around the places: which one shows, and the open game they share.

use leptos::prelude::*;

use crate::interim::game::Game;
use crate::keep::GameId;
use crate::place::{self, Place, Room};
use crate::places::Sign;
use crate::places::book::Book;
use crate::places::card::Card;
use crate::places::clubhouse::Clubhouse;
use crate::places::mound::Mound;
use crate::places::plate::Plate;
use crate::scoring::Scoring;

/// The app.
#[component]
pub fn App() -> impl IntoView {
    let place = place::follow_address();
    let game = Memo::new(move |_| match place.get() {
        Place::Clubhouse => None,
        Place::Game(id, _) => Some(id),
    });
    let room = Memo::new(move |before: Option<&Room>| match place.get() {
        Place::Clubhouse => before.copied().unwrap_or(Room::Plate),
        Place::Game(_, room) => room,
    });
    move || match game.get() {
        None => view! { <Clubhouse/> }.into_any(),
        Some(id) => view! { <OpenGame id=id room=room/> }.into_any(),
    }
}

/// The places of one game, which share it by context.
#[component]
fn OpenGame(
    /// Which game.
    id: GameId,
    /// Which place.
    room: Memo<Room>,
) -> impl IntoView {
    provide_context(Scoring::new(id, Game::new()));
    view! {
        <Sign room=room/>
        {move || match room.get() {
            Room::Card => view! { <Card/> }.into_any(),
            Room::Plate => view! { <Plate/> }.into_any(),
            Room::Mound => view! { <Mound/> }.into_any(),
            Room::Book => view! { <Book/> }.into_any(),
        }}
    }
}
