//! Starting a game.

use benchbook_stats::code::{Preset, presets};
use benchbook_stats::game::Game;
use benchbook_stats::log::{Entry, Event};
use jiff::civil::Date;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::entrant::{Entrant, TeamOf};
use super::first_entries::{Choice, first_entries};
use super::house::{House, not_placed};
use crate::clock;
use crate::keep::{self, GameId};
use crate::place::{self, Place, Room};
use crate::places::presets::name;
use crate::words::{language, say};

/// The form that starts a game. All of it is optional.
#[component]
pub fn Start() -> impl IntoView {
    let house = House::get();
    let club = Memo::new(move |_| house.club());
    let teams = [Entrant::new(club), Entrant::new(club)];
    let preset = RwSignal::new(0_usize);
    let chosen = Memo::new(move |_| presets().get(preset.get()).copied().unwrap_or(Preset::Youth6));
    // Two taps at once start one game.
    let starting = RwSignal::new(false);
    let begin = move |numbered_batters: bool| {
        if starting.get_untracked() {
            return;
        }
        starting.set(true);
        let now = js_sys::Date::new_0();
        let choice = Choice {
            teams: teams.map(|team| team.name.get_untracked().trim().to_owned()),
            preset: chosen.get_untracked(),
            date: today(&now),
            start: hour(&now),
            cards: teams.map(Entrant::card),
            numbered_batters,
        };
        start(house, starting, &choice);
    };
    let score_now = move || {
        if teams.iter().all(|team| team.known.get() && team.with_card.get()) {
            say!("clubhouse-score-known")
        } else {
            say!("clubhouse-score-now", last = chosen.get().code().fielders)
        }
    };
    let [visitors, home] = teams;
    view! {
        <section class="start" aria-labelledby="start-title">
            <h2 id="start-title">{say!("clubhouse-start")}</h2>
            <form on:submit=move |event| {
                event.prevent_default();
                begin(true);
            }>
                <div class="sides">
                    <TeamOf says=say!("clubhouse-visitors") known=say!("clubhouse-known-visitors") team=visitors club=club/>
                    <TeamOf says=say!("clubhouse-home") known=say!("clubhouse-known-home") team=home club=club/>
                </div>
                <label>
                    <span class="says">{say!("clubhouse-rules")}</span>
                    <select on:change=move |event| preset.set(event_target_value(&event).parse().unwrap_or_default())>
                        {presets()
                            .into_iter()
                            .enumerate()
                            .map(|(place, preset)| view! { <option value=place>{name(preset)}</option> })
                            .collect_view()}
                    </select>
                </label>
                <div class="buttons">
                    <button type="submit" class="main">{score_now}</button>
                    <button type="button" on:click=move |_| begin(false)>{say!("clubhouse-cards-first")}</button>
                </div>
                <p class="soft small">{say!("clubhouse-start-hint")}</p>
            </form>
        </section>
    }
}

fn start(house: House, starting: RwSignal<bool>, choice: &Choice) {
    let mut game = Game::new();
    for event in first_entries(choice) {
        let entry = entry(&game, event);
        if let Err(refusal) = game.record(entry) {
            house.refuse(refusal.said(language()));
            starting.set(false);
            return;
        }
    }
    let room = if choice.numbered_batters { Room::Plate } else { Room::Card };
    spawn_local(async move {
        let id = GameId::fresh();
        if let Err(why) = keep::place_new(&id, game.log()).await {
            // The page's memory has it: play can begin, and the Plate says what is wrong.
            house.refuse(not_placed(why));
        }
        place::go(&Place::Game(id, room));
        keep::ask_to_persist().await;
    });
}

fn entry(game: &Game, event: Event) -> Entry {
    Entry { id: game.next_id(), at: Some(clock::now()), event }
}

/// The day by the device's clock and zone.
fn today(now: &js_sys::Date) -> Option<Date> {
    let year = i16::try_from(now.get_full_year()).ok()?;
    let (month, day) = (i8::try_from(now.get_month() + 1).ok()?, i8::try_from(now.get_date()).ok()?);
    Date::new(year, month, day).ok()
}

fn hour(now: &js_sys::Date) -> String {
    format!("{:02}:{:02}", now.get_hours(), now.get_minutes())
}
