//! Game files in and out: to the downloads or the share sheet, and from wherever the scorer picks them.

use benchbook_stats::field::Side;
use benchbook_stats::file::{self, GameFile};
use benchbook_stats::game::Game;
use js_sys::{Array, Function, Object, Reflect, Uint8Array};
use leptos::prelude::{document, window};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

use crate::keep::GameId;
use crate::places::team_name;
use crate::words::{language, say};

const TYPE: &str = "application/json";

/// The largest file read, in bytes. A tablet reads this much without a pause that looks like a fault.
const LARGEST: f64 = 8e6;

/// A file to take home.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Parcel {
    /// Its name.
    pub name: String,
    /// What is in it.
    pub text: String,
}

impl Parcel {
    /// A game as a game file, named by its day and its teams.
    pub fn of_game(id: &GameId, game: &Game) -> Self {
        let text = file::write(&GameFile { id: id.to_string(), log: game.log().to_vec() });
        Self { name: format!("{}.benchbook.json", file_stem(game)), text }
    }

    /// Something that is no game file, as it is.
    pub fn as_it_is(label: &str, text: String) -> Self {
        Self { name: format!("{}.set-aside.txt", in_file_name(label)), text }
    }

    /// Hands the file to the browser's downloads. False if the browser refused.
    pub fn download(&self) -> bool {
        let start = || -> Result<(), JsValue> {
            let url = Url::create_object_url_with_blob(&self.blob()?)?;
            let anchor: HtmlAnchorElement = document().create_element("a")?.dyn_into().map_err(JsValue::from)?;
            anchor.set_href(&url);
            anchor.set_download(&self.name);
            anchor.click();
            // The browser has taken the address by then; the file itself may still be on its way.
            leptos::prelude::set_timeout(
                move || {
                    let _ = Url::revoke_object_url(&url);
                },
                core::time::Duration::from_mins(1),
            );
            Ok(())
        };
        start().is_ok()
    }

    /// Opens the share sheet with the file. Call it from a tap. False if it could not be opened; a sheet that the
    /// scorer closed is no failure.
    pub async fn share(&self) -> bool {
        let share = || -> Result<js_sys::Promise, JsValue> {
            let navigator: JsValue = window().navigator().into();
            let share: Function = Reflect::get(&navigator, &"share".into())?.dyn_into()?;
            share.call1(&navigator, &share_data(&self.name, &self.blob()?)?)?.dyn_into()
        };
        let Ok(shared) = share() else { return false };
        match JsFuture::from(shared).await {
            Ok(_) => true,
            Err(error) => Reflect::get(&error, &"name".into()).is_ok_and(|name| name == "AbortError"),
        }
    }

    fn blob(&self) -> Result<Blob, JsValue> {
        let options = BlobPropertyBag::new();
        options.set_type(TYPE);
        Blob::new_with_str_sequence_and_options(&Array::of1(&JsValue::from_str(&self.text)), &options)
    }
}

/// True where the browser has a share sheet that takes files of this kind.
pub fn can_share() -> bool {
    let ask = || -> Result<JsValue, JsValue> {
        let navigator: JsValue = window().navigator().into();
        let can: Function = Reflect::get(&navigator, &"canShare".into())?.dyn_into()?;
        let empty = Parcel { name: "game.benchbook.json".into(), text: String::new() };
        can.call1(&navigator, &share_data(&empty.name, &empty.blob()?)?)
    };
    ask().is_ok_and(|answer| answer.is_truthy())
}

fn share_data(name: &str, blob: &Blob) -> Result<JsValue, JsValue> {
    // Built by name, since not every browser has the constructor of a file.
    let make: Function = Reflect::get(&js_sys::global(), &"File".into())?.dyn_into()?;
    let options = Object::new();
    Reflect::set(&options, &"type".into(), &TYPE.into())?;
    let file = Reflect::construct(&make, &Array::of3(&Array::of1(blob), &name.into(), &options))?;
    let data = Object::new();
    Reflect::set(&data, &"files".into(), &Array::of1(&file))?;
    Ok(data.into())
}

/// Reads a file the scorer picked.
///
/// # Errors
/// What is wrong with it, in words that name the place.
pub async fn read(file: &File) -> Result<GameFile, String> {
    // A size that is no game's is refused before it is in memory: a long game has a tenth of a megabyte.
    if file.size() > LARGEST {
        return Err(say!("carry-too-large", size = format!("{:.0}", file.size() / 1e6)));
    }
    let Ok(buffer) = JsFuture::from(file.array_buffer()).await else {
        return Err(say!("carry-not-handed-over"));
    };
    file::read_bytes(&Uint8Array::new(&buffer).to_vec()).map_err(|error| error.said(language()))
}

/// What a file coming in is to the game already here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meeting {
    /// The same, entry for entry.
    Same,
    /// It goes on where the one here ends.
    GoesOn,
    /// The one here goes on where it ends.
    IsBehind,
    /// They tell two courses of the game.
    PartWays,
}

/// Compares a log coming in with the one here.
pub fn meet(here: &[benchbook_stats::log::Entry], coming: &[benchbook_stats::log::Entry]) -> Meeting {
    match (coming.starts_with(here), here.starts_with(coming)) {
        (true, true) => Meeting::Same,
        (true, false) => Meeting::GoesOn,
        (false, true) => Meeting::IsBehind,
        (false, false) => Meeting::PartWays,
    }
}

fn file_stem(game: &Game) -> String {
    let [visitors, home] = Side::BOTH.map(|side| in_file_name(&team_name(game, side)));
    let teams = say!("carry-file-name", visitors = visitors, home = home);
    match game.heading().date {
        Some(date) => format!("{date}-{teams}"),
        None => teams,
    }
}

/// Letters and figures of any language; everything else is a hyphen, since systems differ in what they allow.
fn in_file_name(text: &str) -> String {
    let words: Vec<String> = text
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(|word| word.chars().take(40).collect())
        .take(6)
        .collect();
    if words.is_empty() { "game".to_owned() } else { words.join("-") }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::log::{Entry, EntryId, Event};

    use super::*;

    fn log(notes: &[&str]) -> Vec<Entry> {
        (1..)
            .zip(notes)
            .map(|(id, text)| Entry { id: EntryId(id), at: None, event: Event::Note { text: (*text).to_owned() } })
            .collect()
    }

    #[test]
    fn a_file_coming_in_meets_the_game_here() {
        let here = log(&["a", "b"]);
        for (coming, expected) in [
            (log(&["a", "b"]), Meeting::Same),
            (log(&["a", "b", "c"]), Meeting::GoesOn),
            (log(&["a"]), Meeting::IsBehind),
            (log(&[]), Meeting::IsBehind),
            (log(&["a", "x", "c"]), Meeting::PartWays),
        ] {
            assert_eq!(meet(&here, &coming), expected, "{coming:?}");
        }
    }

    #[test]
    fn a_file_name_holds_nothing_a_system_may_refuse() {
        for (name, expected) in [
            ("Harbor Herons", "Harbor-Herons"),
            ("<script>alert(1)</script>", "script-alert-1-script"),
            ("Añez ⚾ 9U", "Añez-9U"),
            ("../..", "game"),
            ("", "game"),
        ] {
            assert_eq!(in_file_name(name), expected);
        }
    }

    #[test]
    fn a_game_is_named_by_its_teams() {
        assert_eq!(file_stem(&Game::new()), "Visitors-at-Home");
    }
}
