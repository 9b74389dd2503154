//! The shelf: the working state in local storage through gloo-storage. Quick to write and to read, and the first thing
//! a browser forgets when it is killed: the journal holds the promise.
//!
//! | key | value |
//! | --- | --- |
//! | `benchbook.index` | the games on this device and which of them are thrown away |
//! | `benchbook.game.ID` | a game file |
//! | `benchbook.ticks.ID` | the checks before the game that were ticked off |
//! | `benchbook.aside.LABEL` | what couldn't be read, when the journal can't take it |
//! | `benchbook.preferences` | the scorer's settings |

use std::collections::{BTreeMap, BTreeSet};

use gloo_storage::{LocalStorage, Storage};
use serde::{Deserialize, Serialize};
use wasm_bindgen::JsCast;
use web_sys::DomException;

use super::GameId;

const GAME: &str = "benchbook.game.";
const TICKS: &str = "benchbook.ticks.";
const ASIDE: &str = "benchbook.aside.";
const INDEX: &str = "benchbook.index";
const PREFERENCES: &str = "benchbook.preferences";

/// Why the shelf did not take something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShelfError {
    /// This browser has no local storage here.
    Missing,
    /// No room is left.
    Full,
}

/// What the index knows of a game. The game itself is in its log.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Indexed {
    /// When it was last written, in milliseconds since 1970.
    pub written: u64,
    /// The scorer threw it away. It stays until it is thrown away for good.
    #[serde(skip_serializing_if = "core::ops::Not::not")]
    pub thrown_away: bool,
}

/// The games on this device, by name.
pub type Index = BTreeMap<String, Indexed>;

/// `raw()` of gloo panics where there is no storage (blocked by the user, a private window): ask first.
fn storage() -> Option<web_sys::Storage> {
    let there = web_sys::window()?.local_storage().ok().flatten().is_some();
    there.then(LocalStorage::raw)
}

fn put(key: &str, text: &str) -> Result<(), ShelfError> {
    // Any refusal to store is treated as a full shelf: the remedy is the same.
    storage().ok_or(ShelfError::Missing)?.set_item(key, text).map_err(|error| {
        let denied = error.dyn_ref::<DomException>().is_some_and(|exception| exception.name() == "SecurityError");
        if denied { ShelfError::Missing } else { ShelfError::Full }
    })
}

fn get(key: &str) -> Option<String> {
    storage()?.get_item(key).ok().flatten()
}

fn remove(key: &str) {
    if let Some(storage) = storage() {
        // Nothing is lost if it stays.
        let _ = storage.remove_item(key);
    }
}

fn keys_after(prefix: &str) -> Vec<String> {
    let Some(storage) = storage() else { return Vec::new() };
    let count = storage.length().unwrap_or_default();
    (0..count)
        .filter_map(|place| storage.key(place).ok().flatten())
        .filter_map(|key| key.strip_prefix(prefix).map(str::to_owned))
        .collect()
}

/// True where the browser has local storage.
pub fn is_there() -> bool {
    storage().is_some()
}

/// The text of a game.
pub fn game(id: &GameId) -> Option<String> {
    get(&format!("{GAME}{id}"))
}

/// Writes a game's text and notes the time.
pub fn put_game(id: &GameId, text: &str) -> Result<(), ShelfError> {
    put(&format!("{GAME}{id}"), text)
}

/// Takes a game off the shelf, and out of the index.
pub fn remove_game(id: &GameId) {
    remove(&format!("{GAME}{id}"));
    remove(&format!("{TICKS}{id}"));
    change_index(|index| {
        index.remove(id.as_str());
    });
}

/// The checks ticked off before a game. They are a reminder to one person, no part of the game.
pub fn ticks(id: &GameId) -> BTreeSet<String> {
    get(&format!("{TICKS}{id}")).and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default()
}

/// Stores the checks ticked off.
pub fn put_ticks(id: &GameId, ticks: &BTreeSet<String>) {
    if let Ok(text) = serde_json::to_string(ticks) {
        // Without room they hold until the Card is left.
        let _ = put(&format!("{TICKS}{id}"), &text);
    }
}

/// Every game that has a text here.
pub fn games() -> Vec<GameId> {
    keys_after(GAME).iter().filter_map(|name| GameId::parse(name)).collect()
}

/// The index. One that can't be read is as good as none: the games are found without it.
pub fn index() -> Index {
    get(INDEX).and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default()
}

/// Changes the index.
pub fn change_index(change: impl FnOnce(&mut Index)) {
    let mut index = index();
    change(&mut index);
    if let Ok(text) = serde_json::to_string(&index) {
        // The index only orders the list: the games are found without it.
        let _ = put(INDEX, &text);
    }
}

/// Everything set aside here: label and text.
pub fn set_asides() -> Vec<(String, String)> {
    keys_after(ASIDE)
        .into_iter()
        .filter_map(|label| {
            let text = get(&format!("{ASIDE}{label}"))?;
            Some((label, text))
        })
        .collect()
}

/// Sets `text` aside under `label`.
pub fn set_aside(label: &str, text: &str) -> Result<(), ShelfError> {
    put(&format!("{ASIDE}{label}"), text)
}

/// Throws away what was set aside under `label`.
pub fn drop_aside(label: &str) {
    remove(&format!("{ASIDE}{label}"));
}

/// The scorer's settings, as stored.
pub fn preferences<T: for<'de> Deserialize<'de>>() -> Option<T> {
    serde_json::from_str(&get(PREFERENCES)?).ok()
}

/// Stores the scorer's settings.
pub fn put_preferences(preferences: &impl Serialize) {
    if let Ok(text) = serde_json::to_string(preferences) {
        // Without room the setting holds until the page closes.
        let _ = put(PREFERENCES, &text);
    }
}
