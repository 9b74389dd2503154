//! The tray: what may have come of what was touched, the usual first. One tap records; the pencil changes it first.

use benchbook_stats::log::{Attempt, Trajectory};
use benchbook_stats::propose::{self, Proposal};
use leptos::prelude::*;

use super::gesture::Gesture;
use super::hand::Hand;
use super::{telling, words};
use crate::live::{Shown, live};
use crate::words::say;

/// The tray of a ball in play, a chase or a strike three that got away.
#[component]
pub fn Tray() -> impl IntoView {
    let hand = Hand::get();
    let in_play = Memo::new(move |_| hand.gesture.with(|g| matches!(g, Gesture::Ball(_))));
    view! {
        <section class="tray" aria-label=say!("plate-what-happened")>
            <div class="tray-head">
                <button type="button" class="cancel" aria-label=say!("plate-cancel") on:click=move |_| hand.cancel()>
                    <span aria-hidden="true">"✕"</span>
                </button>
                <Shown when=move || in_play.get() fallback=|| view! { <TrayTitle/> }>
                    <OffTheBat/>
                </Shown>
            </div>
            <Outcomes/>
        </section>
    }
}

/// What the chase is about, and by whom so far.
#[component]
fn TrayTitle() -> impl IntoView {
    let hand = Hand::get();
    let title = move || {
        hand.gesture.with(|g| match g {
            Gesture::Chase { on, attempt, by, .. } => {
                let name = super::board::runner_on(hand, *on).map(|(name, _)| name).unwrap_or_default();
                if by.is_empty() { words::chase(*attempt, &name) } else { words::chain(by) }
            }
            _ => say!("plate-got-away"),
        })
    };
    view! { <p class="title">{title}</p> }
}

/// How the ball came off the bat: said by the scorer, or left to the proposals.
#[component]
fn OffTheBat() -> impl IntoView {
    let hand = Hand::get();
    let outfield = Memo::new(move |_| {
        hand.gesture.with(|g| match g {
            Gesture::Ball(seen) => {
                let nearest = || seen.spot.map(|spot| propose::nearest(spot, |_| true));
                seen.fielders
                    .first()
                    .copied()
                    .or_else(nearest)
                    .is_some_and(benchbook_stats::field::Position::is_outfield)
            }
            _ => false,
        })
    });
    let kinds = move || {
        if outfield.get() {
            [Trajectory::Fly, Trajectory::Line, Trajectory::Ground, Trajectory::Pop]
        } else {
            [Trajectory::Ground, Trajectory::Line, Trajectory::Pop, Trajectory::Bunt]
        }
    };
    let said = Memo::new(move |_| {
        hand.gesture.with(|g| match g {
            Gesture::Ball(seen) => (seen.trajectory, seen.foul),
            _ => (None, false),
        })
    });
    let tell = move |kind: Trajectory| {
        hand.gesture.update(|g| {
            if let Gesture::Ball(seen) = g {
                seen.trajectory = if seen.trajectory == Some(kind) { None } else { Some(kind) };
            }
        });
    };
    let foul = move |_| {
        hand.gesture.update(|g| {
            if let Gesture::Ball(seen) = g {
                seen.foul = !seen.foul;
            }
        });
    };
    view! {
        <div class="off-the-bat" role="group" aria-label=say!("plate-off-the-bat")>
            {live(move || kinds().map(|kind| {
                let pressed = move || (said.get().0 == Some(kind)).to_string();
                view! {
                    <button type="button" aria-pressed=pressed on:click=move |_| tell(kind)>
                        {words::trajectory(kind)}
                    </button>
                }
            }))}
            <button type="button" aria-pressed=move || said.get().1.to_string() on:click=foul>
                {say!("plate-foul-ball")}
            </button>
        </div>
    }
}

/// The outcomes, one a row.
#[component]
pub fn Outcomes() -> impl IntoView {
    let hand = Hand::get();
    view! {
        <ol class="outcomes">
            {live(move || hand.proposals.get().into_iter().enumerate().map(|(i, proposal)| row(hand, i, proposal)).collect_view())}
        </ol>
    }
}

fn row(hand: Hand, i: usize, proposal: Proposal) -> impl IntoView {
    let (headline, running) = hand.game_now(|game| {
        let s = hand.before(game);
        let event = &proposal.event;
        (telling::headline(game, &s, &proposal.outcome, event), telling::running(game, &s, &proposal.outcome, event))
    });
    let says = say!("plate-adjust-this", headline = headline.as_str());
    let class = if i == 0 { "outcome main" } else { "outcome" };
    let changed = proposal.clone();
    view! {
        <li>
            <button type="button" class=class on:click=move |event| hand.touched(&proposal, &event)>
                <b>{headline}</b>
                {(!running.is_empty()).then(|| view! { <span>{running}</span> })}
            </button>
            <button type="button" class="adjust" aria-label=says on:click=move |_| hand.adjust(&changed, None)>
                <span aria-hidden="true">"✎"</span>
            </button>
        </li>
    }
}

/// A runner was touched: what did they do?
#[component]
pub fn RunnerTray() -> impl IntoView {
    let hand = Hand::get();
    let at = Memo::new(move |_| {
        hand.gesture.with(|g| match g {
            Gesture::Runner { on, on_pitch } => Some((*on, *on_pitch)),
            _ => None,
        })
    });
    let title = move || {
        let (on, _) = at.get()?;
        let (name, _) = super::board::runner_on(hand, on)?;
        Some(say!("plate-runner-title", name = name, base = words::base(on)))
    };
    let chase = move |attempt: Attempt| {
        if let Some((on, on_pitch)) = at.get_untracked() {
            hand.chase(on, attempt, on_pitch);
        }
    };
    let when = move |_| {
        hand.gesture.update(|g| {
            if let Gesture::Runner { on_pitch, .. } = g {
                *on_pitch = !*on_pitch;
            }
        });
    };
    let on_pitch = move || at.get().is_some_and(|(_, on_pitch)| on_pitch);
    view! {
        <section class="tray runner-tray" aria-label=say!("plate-what-happened")>
            <div class="tray-head">
                <button type="button" class="cancel" aria-label=say!("plate-cancel") on:click=move |_| hand.cancel()>
                    <span aria-hidden="true">"✕"</span>
                </button>
                <p class="title">{title}</p>
                <button type="button" class="when" on:click=when>
                    {live(move || if on_pitch() { say!("plate-on-the-pitch") } else { say!("plate-between") })}
                </button>
            </div>
            <div class="chases">
                {[Attempt::Steal, Attempt::Pickoff, Attempt::Advance].map(|attempt| view! {
                    <button type="button" on:click=move |_| chase(attempt)>{words::attempt(attempt)}</button>
                })}
            </div>
            <Outcomes/>
        </section>
    }
}
