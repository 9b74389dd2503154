//! How safe the games are on this device, and what makes them safer.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::house::House;
use crate::install::Offers;
use crate::keep::{self, Health};
use crate::live::{Shown, live};
use crate::words::say;

/// How safe it is here.
#[component]
pub fn Safety() -> impl IntoView {
    let house = House::get();
    view! {
        <section class="safety" aria-labelledby="safety-title">
            <h2 id="safety-title">{say!("clubhouse-safety")}</h2>
            {live(move || house.health.get().map(|health| view! { <Answers health=health/> }))}
            <p class="small">
                {say!("clubhouse-safety-hint")}
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
            <dt>{say!("clubhouse-promise")}</dt>
            <dd data-persisted=format!("{:?}", health.persisted)>
                {promise(&health)}
                <Shown when=move || health.persisted == Some(false)>
                    <button type="button" class="quiet" on:click=ask>{say!("clubhouse-ask-promise")}</button>
                </Shown>
            </dd>
            <dt>{say!("clubhouse-room")}</dt>
            <dd>{room(&health)}</dd>
            <dt>{say!("clubhouse-home-screen")}</dt>
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
        <Shown
            when=move || !installed
            fallback=|| say!("clubhouse-installed")
        >
            <Shown
                when=move || offers.install.get()
                fallback=|| say!("clubhouse-not-installed")
            >
                <button type="button" on:click=move |_| offers.install()>{say!("clubhouse-install")}</button>
            </Shown>
        </Shown>
    }
}

fn promise(health: &Health) -> String {
    match health.persisted {
        Some(true) => say!("clubhouse-promised"),
        Some(false) => say!("clubhouse-not-promised"),
        None => say!("clubhouse-promise-unknown"),
    }
}

fn room(health: &Health) -> String {
    match (health.used, health.quota) {
        (Some(used), Some(quota)) => say!("clubhouse-room-of", used = bytes(used), quota = bytes(quota)),
        (Some(used), None) => say!("clubhouse-room-used", used = bytes(used)),
        _ => say!("clubhouse-room-unknown"),
    }
}

/// What to know before a game is trusted to this browser.
fn warnings(health: &Health) -> Vec<String> {
    let mut warnings = Vec::new();
    if health.clears_after_a_week && !health.installed {
        warnings.push(say!("clubhouse-warn-week"));
    }
    match (health.shelf, health.journal) {
        (false, false) => warnings.push(say!("clubhouse-warn-nothing")),
        (true, false) => warnings.push(say!("clubhouse-warn-no-database")),
        (_, true) => {}
    }
    if !health.tells_tabs_apart {
        warnings.push(say!("clubhouse-warn-tabs"));
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
        assert_eq!(warnings(&well), Vec::<String>::new());
        assert_eq!(warnings(&Health { clears_after_a_week: true, ..well }).len(), 1);
        assert_eq!(warnings(&Health { clears_after_a_week: true, installed: true, ..well }).len(), 0);
        assert_eq!(warnings(&Health { journal: false, shelf: false, tells_tabs_apart: false, ..well }).len(), 2);
    }
}
