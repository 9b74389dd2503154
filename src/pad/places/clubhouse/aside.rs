//! What couldn't be read: shown until the scorer has taken it home and thrown it away.

use benchbook_stats::file::{self, GameFile};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::house::House;
use crate::carry::Parcel;
use crate::keep::{self, GameId, Labelled};
use crate::live::{Shown, live};
use crate::words::say;

/// What couldn't be read.
#[component]
pub fn SetAside() -> impl IntoView {
    let house = House::get();
    view! {
        <Shown when=move || !house.asides.with(Vec::is_empty)>
            <section class="set-aside" aria-labelledby="aside-title">
                <h2 id="aside-title">{say!("clubhouse-set-aside")}</h2>
                <p class="soft small">
                    {say!("clubhouse-set-aside-why")}
                </p>
                <ul class="list">
                    {live(move || house.asides.get().into_iter().map(|one| view! { <One one=one/> }).collect_view())}
                </ul>
            </section>
        </Shown>
    }
}

/// One thing set aside.
#[component]
fn One(
    /// It.
    one: Labelled,
) -> impl IntoView {
    let house = House::get();
    let Labelled { label, aside } = one;
    let sure = RwSignal::new(false);
    let whole = whole_entries(&aside.text);
    let parcel = Parcel::as_it_is(&aside.game, aside.text.clone());
    let take_home = move |_| {
        if !parcel.download() {
            house.refuse(say!("clubhouse-no-download"));
        }
    };
    let throw_away = move |_| {
        if !sure.get_untracked() {
            sure.set(true);
            return;
        }
        let label = label.clone();
        spawn_local(async move {
            keep::drop_aside(&label).await;
            house.look();
        });
    };
    let open_whole = whole.map(|log| {
        let count = log.len();
        let bring = move |_| {
            let log = log.clone();
            spawn_local(async move {
                match keep::place_new(&GameId::fresh(), &log).await {
                    Ok(()) => {
                        house.say(say!("clubhouse-whole-entries-listed", n = log.len()));
                    }
                    Err(why) => house.refuse(super::house::not_placed(why)),
                }
                house.look();
            });
        };
        view! {
            <button type="button" class="quiet" on:click=bring>
                {say!("clubhouse-make-of-whole", n = count)}
            </button>
        }
    });
    view! {
        <li class="aside">
            <p>{say!("clubhouse-aside-game", id = aside.game.as_str())}</p>
            <p class="soft small">{aside.why.clone()} "."</p>
            <div class="buttons">
                <button type="button" class="quiet" on:click=take_home>{say!("clubhouse-take-home-as-is")}</button>
                {open_whole}
                <button type="button" class="quiet" on:click=throw_away>
                    {live(move || if sure.get() { say!("clubhouse-throw-away-sure") } else { say!("clubhouse-throw-away") })}
                </button>
            </div>
        </li>
    }
}

/// The entries of a damaged game file that can still be read.
fn whole_entries(text: &str) -> Option<Vec<benchbook_stats::log::Entry>> {
    let log = match file::read(text) {
        Ok(GameFile { log, .. }) => log,
        Err(error) if error.can_salvage() => file::salvage(text).0.log,
        Err(_) => Vec::new(),
    };
    (!log.is_empty()).then_some(log)
}
