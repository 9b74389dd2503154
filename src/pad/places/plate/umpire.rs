//! What the umpire declares, what was missed, and what is only written down.

use benchbook_stats::field::{Base, Count, Side};
use benchbook_stats::game::Phase;
use benchbook_stats::log::{Action, Event, Status, Unseen, UnseenResult};
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use super::hand::Hand;
use super::words;
use crate::live::Shown;
use crate::words::say;

/// The umpire's panel.
#[component]
pub fn Umpire() -> impl IntoView {
    let hand = Hand::get();
    view! {
        <section class="tray umpire-tray" aria-label=say!("plate-umpire")>
            <div class="tray-head">
                <button type="button" class="cancel" aria-label=say!("plate-cancel") on:click=move |_| hand.cancel()>
                    <span aria-hidden="true">"✕"</span>
                </button>
                <p class="title">{say!("plate-umpire")}</p>
            </div>
            <div class="choices">
                <TheBatter/>
                <TheGame/>
            </div>
        </section>
    }
}

#[component]
fn TheBatter() -> impl IntoView {
    let hand = Hand::get();
    let unseen = move |result: UnseenResult| {
        hand.record_plain(Event::Unseen(Unseen { result, action: Action::default() }));
    };
    view! {
        <h2>{say!("plate-result-only")}</h2>
        <div class="chips">
            {UnseenResult::ALL.map(|result| view! {
                <button type="button" on:click=move |_| unseen(result)>{words::result(result)}</button>
            })}
        </div>
        <SetCount/>
        <OutOfTurn/>
    }
}

/// The count as the umpire gives it.
#[component]
fn SetCount() -> impl IntoView {
    let hand = Hand::get();
    let counts = move || {
        let (balls, strikes) = hand.game(|game| (game.code().balls_for_walk.unwrap_or(1), game.code().strikes_for_out));
        (0..balls)
            .flat_map(move |b| (0..strikes).map(move |s| Count::new(b, s)))
            .map(|count| {
                view! {
                    <button type="button" on:click=move |_| {
                        hand.record_plain(Event::SetCount(count));
                    }>{words::count(count)}</button>
                }
            })
            .collect_view()
    };
    view! {
        <h2>{say!("plate-the-count")}</h2>
        <div class="chips counts">{counts}</div>
    }
}

/// Another batter than the order says, and the appeal.
#[component]
fn OutOfTurn() -> impl IntoView {
    let hand = Hand::get();
    let order = move || {
        let batter = hand.situation.get().batter;
        batting_order(hand)
            .into_iter()
            .filter(|(id, _)| Some(*id) != batter)
            .map(|(player, name)| {
                view! {
                    <button type="button" on:click=move |_| {
                        hand.record_plain(Event::BatterUp { player });
                    }>{name}</button>
                }
            })
            .collect_view()
    };
    view! {
        <h2>{say!("plate-out-of-turn")}</h2>
        <div class="chips">{order}</div>
        <div class="chips">
            <button type="button" on:click=move |_| {
                hand.record_plain(Event::OutOfTurnAppeal);
            }>{say!("plate-appeal")}</button>
        </div>
    }
}

fn batting_order(hand: Hand) -> Vec<(PlayerId, String)> {
    let side = hand.situation.get().batting();
    hand.game(|game| {
        let lineup = game.lineup(side)?;
        Some(lineup.batting_order().filter_map(|(_, id, _)| id.map(|id| (id, game.label(id)))).collect())
    })
    .unwrap_or_default()
}

#[component]
fn TheGame() -> impl IntoView {
    let hand = Hand::get();
    let text = RwSignal::new(String::new());
    let why = move || text.get_untracked().trim().to_owned();
    let status = move |status: Status| {
        hand.record_plain(Event::Status(status));
    };
    let stopped = move || matches!(hand.situation.get().phase, Phase::Delayed | Phase::Suspended);
    view! {
        <h2>{say!("plate-the-game")}</h2>
        <label>
            <span class="says">{say!("plate-why")}</span>
            <input maxlength="300" autocomplete="off" bind:value=text/>
        </label>
        <div class="chips">
            <button type="button" on:click=move |_| {
                hand.record_plain(Event::EndHalf { why: why() });
            }>{say!("plate-end-half")}</button>
            <Shown
                when=stopped
                fallback=move || view! {
                    <button type="button" on:click=move |_| status(Status::Delayed { why: why() })>{say!("plate-delay")}</button>
                }
            >
                <button type="button" on:click=move |_| status(Status::Resumed)>{say!("plate-resume")}</button>
            </Shown>
            <button type="button" on:click=move |_| status(Status::Suspended { why: why() })>{say!("plate-suspend")}</button>
            <button type="button" on:click=move |_| status(Status::Called { why: why() })>{say!("plate-call-game")}</button>
            <button type="button" on:click=move |_| status(Status::Final)>{say!("plate-final")}</button>
            {Side::BOTH.map(|winner| {
                let label = hand.game_now(|game| say!("plate-forfeit-to", team = game.team_name(winner)));
                view! {
                    <button type="button" on:click=move |_| status(Status::Forfeited { winner, why: why() })>{label}</button>
                }
            })}
        </div>
        <div class="chips">
            <button type="button" on:click=move |_| {
                hand.record_plain(Event::Protest { text: why() });
            }>{say!("plate-protest")}</button>
            <button type="button" on:click=move |_| {
                hand.record_plain(Event::Note { text: why() });
            }>{say!("plate-note")}</button>
        </div>
        <Place/>
    }
}

/// A runner put on by rule: which base, then who.
#[component]
fn Place() -> impl IntoView {
    let hand = Hand::get();
    let at = RwSignal::new(Base::Second);
    let order = move || {
        batting_order(hand)
            .into_iter()
            .map(|(player, name)| {
                view! {
                    <button type="button" on:click=move |_| {
                        hand.record_plain(Event::PlaceRunner { base: at.get_untracked(), player });
                    }>{name}</button>
                }
            })
            .collect_view()
    };
    view! {
        <h2>{say!("plate-place-runner")}</h2>
        <div class="chips">
            {Base::STANDING.map(|base| view! {
                <button type="button" aria-pressed=move || (at.get() == base).to_string() on:click=move |_| at.set(base)>
                    {words::base(base)}
                </button>
            })}
        </div>
        <div class="chips">{order}</div>
    }
}
