//! How safe the games are on this device, and what makes them safer.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::house::House;
use crate::install::Offers;
use crate::keep::{self, Health};

/// How safe it is here.
#[component]
pub fn Safety() -> impl IntoView {
    let house = House::get();
    view! {
        <section class="safety" aria-labelledby="safety-title">
            <h2 id="safety-title">"How safe it is here"</h2>
            {move || house.health.get().map(|health| view! { <Answers health=health/> })}
            <p class="small">
                "A device can be lost or cleared. After the game, take the file home: it holds everything, and any \
                 Benchbook reads it."
            </p>
        </section>
    }
}

/// What the browser answers.
#[component]
fn Answers(
    /// The answers.
    health: Health,
) -> impl IntoView {
    let house = House::get();
    let ask = move |_| {
        spawn_local(async move {
            keep::ask_to_persist().await;
            house.look();
        });
    };
    let warnings = warnings(&health);
    view! {
        {warnings.into_iter().map(|words| view! { <p class="notice small">{words}</p> }).collect_view()}
        <dl class="answers">
            <dt>"Promise"</dt>
            <dd data-persisted=format!("{:?}", health.persisted)>
                {promise(&health)}
                <Show when=move || health.persisted == Some(false)>
                    <button type="button" class="quiet" on:click=ask>"Ask it to promise"</button>
                </Show>
            </dd>
            <dt>"Room"</dt>
            <dd>{room(&health)}</dd>
            <dt>"Home screen"</dt>
            <dd><HomeScreen installed=health.installed/></dd>
        </dl>
    }
}

/// Installing, where the browser offers it; else how to do it by hand.
#[component]
fn HomeScreen(
    /// Already done.
    installed: bool,
) -> impl IntoView {
    let offers = Offers::get();
    view! {
        <Show
            when=move || !installed
            fallback=|| "Benchbook is installed on this device."
        >
            <Show
                when=move || offers.install.get()
                fallback=|| {
                    "Not installed. In the browser's menu, or behind its share button, choose \u{201c}Add to home \
                     screen\u{201d}: then it starts like any other app, also with no signal."
                }
            >
                <button type="button" on:click=move |_| offers.install()>"Install on this device"</button>
            </Show>
        </Show>
    }
}

fn promise(health: &Health) -> &'static str {
    match health.persisted {
        Some(true) => "The browser has promised not to clear what is kept here by itself.",
        Some(false) => "The browser may clear what is kept here when the device runs short of room.",
        None => "The browser doesn't say whether it clears what is kept here.",
    }
}

fn room(health: &Health) -> String {
    match (health.used, health.quota) {
        (Some(used), Some(quota)) => format!("{} used of {}.", bytes(used), bytes(quota)),
        (Some(used), None) => format!("{} used.", bytes(used)),
        _ => "The browser doesn't say.".to_owned(),
    }
}

/// What to know before a game is trusted to this browser.
fn warnings(health: &Health) -> Vec<&'static str> {
    let mut warnings = Vec::new();
    if health.clears_after_a_week && !health.installed {
        warnings.push(
            "This browser clears what a site keeps after seven days without a visit, unless it is added to the home \
             screen. Add it, and take each game's file home.",
        );
    }
    match (health.shelf, health.journal) {
        (false, false) => warnings.push(
            "This browser keeps nothing here (a private window, or storage switched off): a game lasts until the page \
             is closed. Take its file home before.",
        ),
        (true, false) => warnings.push(
            "This browser has no database here (a private window?): the last seconds before a crash may be lost. Take \
             each game's file home.",
        ),
        (_, true) => {}
    }
    if !health.tells_tabs_apart {
        warnings.push("This browser can't tell two tabs apart: open each game in one tab only.");
    }
    warnings
}

/// "1.2 MB": two figures are enough to see how full it is.
fn bytes(bytes: f64) -> String {
    const UNITS: [&str; 4] = ["KB", "MB", "GB", "TB"];
    let mut amount = bytes / 1000.0;
    let mut unit = 0;
    while amount >= 1000.0 && unit + 1 < UNITS.len() {
        amount /= 1000.0;
        unit += 1;
    }
    if amount < 10.0 { format!("{amount:.1} {}", UNITS[unit]) } else { format!("{amount:.0} {}", UNITS[unit]) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn room_is_told_in_units_a_person_reads() {
        for (amount, words) in [(0.0, "0.0 KB"), (43_210.0, "43 KB"), (1_234_567.0, "1.2 MB"), (6e10, "60 GB")] {
            assert_eq!(bytes(amount), words);
        }
    }

    #[test]
    fn a_browser_in_which_all_is_well_gives_no_warning() {
        let well = Health { shelf: true, journal: true, tells_tabs_apart: true, ..Health::default() };
        assert_eq!(warnings(&well), Vec::<&str>::new());
        assert_eq!(warnings(&Health { clears_after_a_week: true, ..well }).len(), 1);
        assert_eq!(warnings(&Health { clears_after_a_week: true, installed: true, ..well }).len(), 0);
        assert_eq!(warnings(&Health { journal: false, shelf: false, tells_tabs_apart: false, ..well }).len(), 2);
    }
}
