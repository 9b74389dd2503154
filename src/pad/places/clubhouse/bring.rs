//! Bringing a game file in.

use benchbook_stats::file::GameFile;
use benchbook_stats::game::Game;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::{DragEvent, File, FileList, HtmlInputElement};

use super::board::Board;
use super::house::{House, not_placed};
use crate::carry::{self, Meeting};
use crate::keep::{self, GameId, NotLoaded};
use crate::words::say;

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
            <h2 id="bring-title">{say!("clubhouse-bring")}</h2>
            <label class="button">
                {say!("clubhouse-pick-file")}
                <input class="spoken" type="file" multiple accept=".json,application/json" on:change=picked/>
            </label>
            <p class="soft small">{say!("clubhouse-bring-hint")}</p>
        </section>
    }
}

/// Brings the files dropped on the Clubhouse.
pub fn bring_dropped(house: House, event: &DragEvent) {
    match event.data_transfer().and_then(|transfer| transfer.files()) {
        Some(files) if files.length() > 0 => bring_all(house, &files),
        _ => house.refuse(say!("clubhouse-no-file")),
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
                    said.push(say!("clubhouse-not-brought", file = file.name(), why = words));
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
    let Some(id) = GameId::parse(&id) else { return place(&GameId::fresh(), &log, is_here(title)).await };
    let here = match keep::load_to_read(&id).await {
        Ok(here) => here,
        Err(NotLoaded::NotHere) => return place(&id, &log, is_here(title)).await,
        Err(NotLoaded::Unreadable(why)) => {
            return Err(say!("clubhouse-unreadable-here", why = why));
        }
    };
    match carry::meet(&here, &log) {
        Meeting::Same => {
            keep::put_back(&id);
            Ok(say!("clubhouse-same-here", title = title))
        }
        Meeting::IsBehind => {
            keep::put_back(&id);
            Ok(say!("clubhouse-more-here", n = here.len() - log.len(), title = title))
        }
        Meeting::GoesOn => {
            let more = log.len() - here.len();
            keep::place_over(&id, &log).await.map_err(not_placed)?;
            Ok(say!("clubhouse-goes-on", n = more, title = title))
        }
        Meeting::PartWays => place(&GameId::fresh(), &log, say!("clubhouse-parts-ways", title = title)).await,
    }
}

async fn place(id: &GameId, log: &[benchbook_stats::log::Entry], words: String) -> Result<String, String> {
    match keep::place_new(id, log).await {
        Ok(()) => Ok(words),
        Err(why) => Err(not_placed(why)),
    }
}

fn is_here(title: String) -> String {
    say!("clubhouse-is-here", title = title)
}
