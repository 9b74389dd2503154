//! Bringing a game file in.

use benchbook_stats::file::GameFile;
use benchbook_stats::game::Game;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::{DragEvent, File, FileList, HtmlInputElement};

use super::board::Board;
use super::house::{House, not_placed};
use crate::carry::{self, Meeting};
use crate::keep::{self, GameId, NotLoaded, NotPlaced};

/// The button that picks files.
#[component]
pub fn Bring() -> impl IntoView {
    let house = House::get();
    let picked = move |event: leptos::ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        if let Some(files) = input.files() {
            bring_all(house, &files);
        }
        // So that the same file can be picked again after a refusal.
        input.set_value("");
    };
    view! {
        <section class="bring" aria-labelledby="bring-title">
            <h2 id="bring-title">"Bring a game file"</h2>
            <label class="button">
                "Pick a file"
                <input class="spoken" type="file" multiple accept=".json,application/json" on:change=picked/>
            </label>
            <p class="soft small">"A .benchbook.json file from another device. It can also be dropped anywhere here."</p>
        </section>
    }
}

/// Brings the files dropped on the Clubhouse.
pub fn bring_dropped(house: House, event: &DragEvent) {
    match event.data_transfer().and_then(|transfer| transfer.files()) {
        Some(files) if files.length() > 0 => bring_all(house, &files),
        _ => house.refuse("That was no file."),
    }
}

fn bring_all(house: House, files: &FileList) {
    let files: Vec<File> = (0..files.length()).filter_map(|place| files.get(place)).collect();
    spawn_local(async move {
        let mut said = Vec::new();
        let mut refused = false;
        for file in files {
            match bring(&file).await {
                Ok(words) => said.push(words),
                Err(words) => {
                    refused = true;
                    said.push(format!("{} was not brought in: {words}", file.name()));
                }
            }
        }
        if refused {
            house.refuse(said.join("\n"));
        } else {
            house.say(said.join("\n"));
        }
        house.look();
    });
}

/// Brings one file in. What came of it, or why not, in words.
async fn bring(file: &File) -> Result<String, String> {
    let GameFile { id, log } = carry::read(file).await?;
    let title = Board::of(&Game::replay(log.iter().cloned())).title();
    // A name that can't be an address: the game gets a new one.
    let Some(id) = GameId::parse(&id) else { return place(&GameId::fresh(), &log, format!("{title} is here.")).await };
    let here = match keep::load_to_read(&id).await {
        Ok(here) => here,
        Err(NotLoaded::NotHere) => return place(&id, &log, format!("{title} is here.")).await,
        Err(NotLoaded::Unreadable(why)) => {
            return Err(format!("a game of that name is here but can't be read ({why}); it is not written over"));
        }
    };
    match carry::meet(&here, &log) {
        Meeting::Same => {
            keep::put_back(&id);
            Ok(format!("{title} was here already, entry for entry."))
        }
        Meeting::IsBehind => {
            keep::put_back(&id);
            Ok(format!("{title} is here already, with {} more than the file.", entries(here.len() - log.len())))
        }
        Meeting::GoesOn => {
            let more = entries(log.len() - here.len());
            keep::place_over(&id, &log).await.map_err(not_placed)?;
            Ok(format!("{title} goes on with {more} from the file."))
        }
        Meeting::PartWays => {
            let words = format!(
                "{title} was here already, but the file tells another course of it. Both are kept; the file's is the \
                 upper one."
            );
            place(&GameId::fresh(), &log, words).await
        }
    }
}

async fn place(id: &GameId, log: &[benchbook_stats::log::Entry], words: String) -> Result<String, String> {
    match keep::place_new(id, log).await {
        Ok(()) => Ok(words),
        Err(NotPlaced::NoRoom) => Err(not_placed(NotPlaced::NoRoom).to_owned()),
        Err(why) => Err(not_placed(why).to_owned()),
    }
}

fn entries(count: usize) -> String {
    if count == 1 { "1 entry".to_owned() } else { format!("{count} entries") }
}
