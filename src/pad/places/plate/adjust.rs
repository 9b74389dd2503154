//! Changing a proposal before it is recorded: whose end, where, how so.

use benchbook_stats::log::{Action, Cause, How, MisplayKind, Move, Start};
use benchbook_stats::propose::edit;
use benchbook_stats::propose::ends::{self, End};
use leptos::prelude::*;

use super::gesture::{Adjusting, Gesture};
use super::hand::Hand;
use super::{telling, words};
use crate::live::{Shown, live};
use crate::words::say;

/// The draft, and what can be changed in it.
#[component]
pub fn Adjust() -> impl IntoView {
    let hand = Hand::get();
    let draft = Memo::new(move |_| {
        hand.gesture.with(|g| match g {
            Gesture::Adjusting(draft) => Some(draft.clone()),
            _ => None,
        })
    });
    let sentence = move || {
        let draft = draft.get()?;
        Some(hand.game(|game| telling::draft(game, &hand.before(game), &draft.event)))
    };
    let who = Memo::new(move |_| draft.get().and_then(|d| d.who));
    let late = move || {
        let outs = hand.game(|game| hand.before(game)).outs;
        draft.get().and_then(|d| telling::action(&d.event).map(|a| edit::has_run_and_out(a, outs))).unwrap_or(false)
    };
    view! {
        <section class="tray adjusting" aria-label=say!("plate-adjust")>
            <div class="tray-head">
                <button type="button" class="cancel" aria-label=say!("plate-back") on:click=move |_| hand.undo()>
                    <span aria-hidden="true">"‹"</span>
                </button>
                <p class="title sentence">{sentence}</p>
                <button type="button" class="record main" on:click=move |_| hand.record_draft()>{say!("plate-record")}</button>
            </div>
            <div class="choices">
                {live(move || match who.get() {
                    Some(who) => view! { <Ends who=who draft=draft/> }.into_any(),
                    None => view! { <Everyone draft=draft/> }.into_any(),
                })}
                <Shown when=late>
                    <button type="button" on:click=move |_| hand.change(|action, _, _| edit::outs_first(action))>
                        {say!("plate-run-too-late")}
                    </button>
                </Shown>
            </div>
        </section>
    }
}

/// Nobody picked yet: everybody who can be.
#[component]
fn Everyone(
    /// The draft.
    draft: Memo<Option<Adjusting>>,
) -> impl IntoView {
    let hand = Hand::get();
    let everyone = move || {
        let batted = draft
            .get()
            .is_some_and(|d| d.event.is_batted() || !matches!(*d.from, Gesture::Runner { .. } | Gesture::Chase { .. }));
        let s = hand.game(|game| hand.before(game));
        [Start::Third, Start::Second, Start::First, Start::Batter]
            .into_iter()
            .filter(|who| if *who == Start::Batter { batted } else { s.at(*who).is_some() })
            .map(|who| {
                let name = title(hand, who);
                view! { <button type="button" on:click=move |_| pick(hand, who)>{name}</button> }
            })
            .collect_view()
    };
    view! {
        <p class="hint">{say!("plate-touch-a-runner")}</p>
        <div class="chips">{everyone}</div>
    }
}

fn pick(hand: Hand, who: Start) {
    hand.gesture.update(|g| {
        if let Gesture::Adjusting(draft) = g {
            draft.who = Some(who);
        }
    });
}

/// "Ruiz, on second".
fn title(hand: Hand, who: Start) -> String {
    let s = hand.game(|game| hand.before(game));
    let player = match who.base() {
        None => s.batter,
        Some(base) => s.on(base).map(|r| r.player),
    };
    let label = player.map(|id| hand.game(|game| game.label(id))).unwrap_or_default();
    let name = words::short(&label);
    match who.base() {
        None => say!("plate-batter-title", name = name),
        Some(on) => say!("plate-runner-title", name = name, base = words::base(on)),
    }
}

fn move_of(draft: &Adjusting, who: Start) -> Option<Move> {
    telling::action(&draft.event)?.moves.iter().find(|m| m.from == who).cloned()
}

/// Where one of them ends, and how so.
#[component]
fn Ends(
    /// Who.
    who: Start,
    /// The draft.
    draft: Memo<Option<Adjusting>>,
) -> impl IntoView {
    let hand = Hand::get();
    let now = Memo::new(move |_| draft.get().and_then(|d| move_of(&d, who)));
    let name = title(hand, who);
    let chip = move |end: End| {
        let pressed = move || (End::of(now.get().as_ref()) == end).to_string();
        let (class, says, shown) = match end {
            End::Stays => ("", None, say!("plate-stays")),
            End::Safe(to) => ("", Some(words::safe_at(to)), words::base(to)),
            End::Out(at) => ("puts-out", Some(words::out_at(at)), words::base(at)),
        };
        view! {
            <button type="button" class=class aria-pressed=pressed aria-label=says on:click=move |_| {
                hand.change(|action, s, about| ends::set(action, s, who, end, &about.chain, about.batted));
            }>{shown}</button>
        }
    };
    let (out, safe): (Vec<End>, Vec<End>) = End::all(who, true).into_iter().partition(|end| matches!(end, End::Out(_)));
    view! {
        <h2>{name}</h2>
        <div class="chips ends"><b aria-hidden="true">{say!("plate-safe")}</b>{safe.into_iter().map(chip).collect_view()}</div>
        <div class="chips ends"><b aria-hidden="true">{say!("plate-out")}</b>{out.into_iter().map(chip).collect_view()}</div>
        {live(move || {
            let m = now.get()?;
            Some(match m.out {
                Some(_) => view! { <HowOut who=who draft=draft/> }.into_any(),
                None => view! { <HowSo who=who draft=draft/> }.into_any(),
            })
        })}
    }
}

/// Why the last bases were gained.
#[component]
fn HowSo(
    /// Who gained them.
    who: Start,
    /// The draft.
    draft: Memo<Option<Adjusting>>,
) -> impl IntoView {
    let hand = Hand::get();
    let now = move || draft.get().and_then(|d| move_of(&d, who)).and_then(|m| m.legs.last().map(|leg| leg.cause));
    let causes = move || {
        let batted = draft.get().is_some_and(|d| d.event.is_batted());
        ends::causes(batted, now())
            .into_iter()
            .map(|cause| {
                let pressed = move || (now() == Some(cause)).to_string();
                view! {
                    <button type="button" aria-pressed=pressed on:click=move |_| {
                        hand.change(|action, _, _| edit::because(action, who, cause));
                    }>{words::cause(cause)}</button>
                }
            })
            .collect_view()
    };
    view! {
        <h2>{say!("plate-because")}</h2>
        <div class="chips">{causes}</div>
        <Errors who=who draft=draft/>
    }
}

/// The errors that may have helped: those of the fielders touched, or of any other.
#[component]
fn Errors(
    /// Whom.
    who: Start,
    /// The draft.
    draft: Memo<Option<Adjusting>>,
) -> impl IntoView {
    let hand = Hand::get();
    let likely = move || {
        let chain = draft.get().map(|d| d.chain).unwrap_or_default();
        let mut list = Vec::new();
        for (i, position) in chain.iter().enumerate() {
            list.push((*position, if i == 0 { MisplayKind::Fielding } else { MisplayKind::Muff }));
            if i + 1 < chain.len() || i == 0 {
                list.push((*position, MisplayKind::Throwing));
            }
        }
        list.dedup();
        list.into_iter()
            .map(move |(by, kind)| {
                let pressed = move || {
                    let Some(draft) = draft.get() else { return false };
                    telling::action(&draft.event).is_some_and(|a| is_error_of(a, who, by, kind))
                };
                view! {
                    <button type="button" aria-pressed=move || pressed().to_string() on:click=move |_| {
                        hand.error_by(who, by, kind);
                    }>{words::misplay_by(kind, by)}</button>
                }
            })
            .collect_view()
    };
    let awaits = move |kind: MisplayKind| {
        hand.gesture.update(|g| {
            if let Gesture::Adjusting(draft) = g {
                draft.awaits_error = Some(kind);
            }
        });
    };
    let waiting = move || draft.get().is_some_and(|d| d.awaits_error.is_some());
    view! {
        <div class="chips">
            {likely}
            <button type="button" aria-pressed=move || waiting().to_string() on:click=move |_| awaits(MisplayKind::Throwing)>
                {say!("plate-another-error")}
            </button>
        </div>
        <Shown when=waiting>
            <p class="hint">{say!("plate-touch-who-erred")}</p>
            <div class="chips">
                {[MisplayKind::Throwing, MisplayKind::Fielding, MisplayKind::Muff, MisplayKind::Obstruction].map(|kind| {
                    let pressed = move || draft.get().is_some_and(|d| d.awaits_error == Some(kind)).to_string();
                    view! {
                        <button type="button" aria-pressed=pressed on:click=move |_| awaits(kind)>
                            {words::misplay(kind)}
                        </button>
                    }
                })}
            </div>
        </Shown>
    }
}

fn is_error_of(action: &Action, who: Start, by: benchbook_stats::field::Position, kind: MisplayKind) -> bool {
    let cause = action.moves.iter().find(|m| m.from == who).and_then(|m| m.legs.last()).map(|leg| leg.cause);
    match cause {
        Some(Cause::Error(i)) => action.misplays.get(usize::from(i)).is_some_and(|m| m.by == by && m.kind == kind),
        _ => false,
    }
}

/// How somebody was put out, and by whom.
#[component]
fn HowOut(
    /// Who.
    who: Start,
    /// The draft.
    draft: Memo<Option<Adjusting>>,
) -> impl IntoView {
    let hand = Hand::get();
    let out = move || draft.get().and_then(|d| move_of(&d, who)).and_then(|m| m.out);
    let by = move || say!("plate-out-by", by = out().map(|out| words::chain(&out.by)).unwrap_or_default());
    let how = move |how: How| {
        let pressed = move || out().is_some_and(|out| out.how == how).to_string();
        view! {
            <button type="button" aria-pressed=pressed on:click=move |_| {
                hand.change(|action, _, _| edit::how(action, who, how));
            }>{words::how(how)}</button>
        }
    };
    let ways = move || {
        let batted = draft.get().is_some_and(|d| d.event.is_batted());
        ends::ways(batted, out().map(|out| out.how)).into_iter().map(how).collect_view()
    };
    view! {
        <p class="hint">{by}</p>
        <div class="chips">{ways}</div>
    }
}
