//! The frame around the places: which one shows, and the open game they share.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::install::Offers;
use crate::keep::{GameId, NotLoaded, Preferences};
use crate::live::live;
use crate::place::{self, Place, Room};
use crate::places::Sign;
use crate::places::book::Book;
use crate::places::card::Card;
use crate::places::clubhouse::Clubhouse;
use crate::places::mound::Mound;
use crate::places::plate::Plate;
use crate::scoring::Scoring;
use crate::words::{InLanguage, say};

/// The app.
#[component]
pub fn App() -> impl IntoView {
    Preferences::provide();
    Offers::provide();
    let place = place::follow_address();
    let game = Memo::new(move |_| match place.get() {
        Place::Clubhouse => None,
        Place::Game(id, _) => Some(id),
    });
    let room = Memo::new(move |before: Option<&Room>| match place.get() {
        Place::Clubhouse => before.copied().unwrap_or(Room::Plate),
        Place::Game(_, room) => room,
    });
    let open = move || match game.get() {
        None => view! { <Clubhouse/> }.into_any(),
        Some(id) => view! { <OpenGame id=id room=room/> }.into_any(),
    };
    view! { <InLanguage>{open}</InLanguage> }
}

/// How far a game is open.
#[derive(Clone, PartialEq)]
enum Opening {
    Reading,
    Open,
    Failed(NotLoaded),
}

/// The places of one game, which share it by context.
#[component]
fn OpenGame(
    /// Which game.
    id: GameId,
    /// Which place.
    room: Memo<Room>,
) -> impl IntoView {
    let scoring = Scoring::closed(id);
    provide_context(scoring);
    let opening = RwSignal::new(Opening::Reading);
    spawn_local(async move {
        let opened = scoring.open().await.map_or_else(Opening::Failed, |()| Opening::Open);
        opening.try_set(opened);
    });
    live(move || match opening.get() {
        Opening::Reading => view! { <main aria-busy="true"></main> }.into_any(),
        Opening::Open => view! { <Rooms room=room/> }.into_any(),
        Opening::Failed(why) => view! { <NoGame why=why/> }.into_any(),
    })
}

/// The place of the open game in which the scorer is.
#[component]
fn Rooms(
    /// Which.
    room: Memo<Room>,
) -> impl IntoView {
    view! {
        <Sign room=room/>
        {live(move || match room.get() {
            Room::Card => view! { <Card/> }.into_any(),
            Room::Plate => view! { <Plate/> }.into_any(),
            Room::Mound => view! { <Mound/> }.into_any(),
            Room::Book => view! { <Book/> }.into_any(),
        })}
    }
}

/// Says that a game can't be opened, and where to look.
#[component]
fn NoGame(
    /// Why.
    why: NotLoaded,
) -> impl IntoView {
    let (title, words) = match why {
        NotLoaded::NotHere => (say!("frame-not-here"), say!("frame-not-here-why")),
        NotLoaded::Unreadable(why) => (say!("frame-unreadable"), say!("frame-unreadable-why", why = why)),
    };
    view! {
        <main class="no-game">
            <h1>{title}</h1>
            <p>{words}</p>
            <a class="button main" href=Place::Clubhouse.hash()>{say!("frame-to-the-clubhouse")}</a>
        </main>
    }
}
