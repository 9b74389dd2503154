//! Where in the ballpark the scorer is: the five places and their addresses behind the `#`.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;

use crate::keep::GameId;
use crate::words::say;

/// A place of the app.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// `#/`: the games on this device.
    Clubhouse,
    /// `#/game/ID/ROOM`: one of the four places of a game.
    Game(GameId, Room),
}

/// The places of one game.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Room {
    /// The lineup card.
    Card,
    /// The scoring place.
    Plate,
    /// The pitchers.
    Mound,
    /// The book.
    Book,
}

impl Room {
    /// All four, in the order in which a game uses them.
    pub const ALL: [Self; 4] = [Self::Card, Self::Plate, Self::Mound, Self::Book];

    /// The last part of its address.
    pub const fn slug(self) -> &'static str {
        match self {
            Self::Card => "card",
            Self::Plate => "plate",
            Self::Mound => "mound",
            Self::Book => "book",
        }
    }

    /// Its name on the sign.
    pub fn name(self) -> String {
        match self {
            Self::Card => say!("frame-card"),
            Self::Plate => say!("frame-plate"),
            Self::Mound => say!("frame-mound"),
            Self::Book => say!("frame-book"),
        }
    }
}

impl Place {
    /// The place an address names. An address nobody gave out leads to the Clubhouse.
    pub fn from_hash(hash: &str) -> Self {
        let mut parts = hash.trim_start_matches('#').split('/').filter(|part| !part.is_empty());
        if parts.next() != Some("game") {
            return Self::Clubhouse;
        }
        let Some(id) = parts.next().and_then(GameId::parse) else { return Self::Clubhouse };
        let slug = parts.next().unwrap_or_default();
        Self::Game(id, Room::ALL.into_iter().find(|room| room.slug() == slug).unwrap_or(Room::Plate))
    }

    /// Its address, `#` included.
    pub fn hash(&self) -> String {
        match self {
            Self::Clubhouse => "#/".to_owned(),
            Self::Game(id, room) => format!("#/game/{id}/{}", room.slug()),
        }
    }
}

/// The place the address bar names, now and after every change of it.
pub fn follow_address() -> ReadSignal<Place> {
    let (place, set_place) = signal(Place::from_hash(&current_hash()));
    let changed = Closure::<dyn Fn()>::new(move || set_place.set(Place::from_hash(&current_hash())));
    window().set_onhashchange(Some(changed.as_ref().unchecked_ref()));
    changed.forget(); // lives as long as the page
    place
}

/// Goes to `place`, as a link would.
pub fn go(place: &Place) {
    // A refused assignment leaves the scorer where they are.
    let _ = window().location().set_hash(&place.hash());
}

fn current_hash() -> String {
    window().location().hash().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_and_its_place_name_each_other() {
        let id = GameId::parse("k7m2q9").expect("a good id");
        for place in [Place::Clubhouse, Place::Game(id.clone(), Room::Card), Place::Game(id, Room::Book)] {
            assert_eq!(Place::from_hash(&place.hash()), place);
        }
    }

    #[test]
    fn an_address_nobody_gave_out_leads_to_the_clubhouse() {
        for hash in ["", "#", "#/", "#/nowhere", "#/game", "#/game/", "#/game/<script>/plate", "#/game/a b/plate"] {
            assert_eq!(Place::from_hash(hash), Place::Clubhouse, "{hash}");
        }
    }

    #[test]
    fn a_game_without_a_room_opens_at_the_plate() {
        let id = GameId::parse("k7m2q9").expect("a good id");
        assert_eq!(Place::from_hash("#/game/k7m2q9"), Place::Game(id, Room::Plate));
    }
}
