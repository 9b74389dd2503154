//! The usual checks, folded away and ticked off at will. Reminders only: nothing here stops a game.

use std::collections::BTreeSet;

use benchbook_stats::game::Game;
use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::Desk;
use super::checklist::{Check, checks};
use crate::keep;
use crate::live::live;
use crate::words::{in_every_language, say};

/// The checks.
#[component]
pub fn Usual() -> impl IntoView {
    let desk = Desk::get();
    let all = Memo::new(move |_| desk.scoring.game.with(|game| checks(game.code())));
    let ticked = RwSignal::new(keep::ticks(&desk.scoring.id.get_value()));
    let approved = Memo::new(move |_| desk.scoring.game.with(approval));
    let is_ticked = move |check: Check| match check {
        Check::Umpire => approved.get().is_some(),
        other => ticked.with(|ticked| ticked.contains(other.slug())),
    };
    let done = move || all.get().into_iter().filter(|check| is_ticked(*check)).count();
    view! {
        <details class="usual">
            <summary>
                <span class="what">{say!("card-usual-checks")}</span>
                <span class="says-now">{live(move || say!("card-usual-done", done = done(), all = all.with(Vec::len)))}</span>
            </summary>
            <p class="notice small">{say!("card-usual-hint")}</p>
            <p class="notice small">{say!("card-usual-caution")}</p>
            <ul>
                <For each=move || all.get() key=|check| *check let:check>
                    <li>
                        <label class="yes">
                            <input
                                type="checkbox"
                                prop:checked=move || is_ticked(check)
                                on:change=move |event| tick(desk, ticked, check, event_target_checked(&event))
                            />
                            <span>{said(check)}</span>
                        </label>
                    </li>
                </For>
            </ul>
        </details>
    }
}

/// Ticks a check off, or takes the tick back. The umpire's approval is part of the game and goes into its log.
fn tick(desk: Desk, ticked: RwSignal<BTreeSet<String>>, check: Check, on: bool) {
    if check == Check::Umpire {
        match (desk.scoring.game.with_untracked(approval), on) {
            (None, true) => desk.tap(Event::Note { text: said(check) }),
            (Some(entry), false) => desk.tap(Event::Retract { entry }),
            _ => true,
        };
        return;
    }
    ticked.update(|ticked| {
        if on {
            ticked.insert(check.slug().to_owned());
        } else {
            ticked.remove(check.slug());
        }
    });
    ticked.with_untracked(|ticked| keep::put_ticks(&desk.scoring.id.get_value(), ticked));
}

/// The note of the umpire's approval, in whatever language it was taken.
pub fn approval(game: &Game) -> Option<EntryId> {
    let words = in_every_language("card-check-umpire");
    let noted = |event: &Event| matches!(event, Event::Note { text } if words.contains(text));
    game.steps().iter().find(|step| noted(game.event(step))).map(|step| step.entry)
}

/// Tenths as a decimal, whole where they are.
fn tenths(tenths: u16) -> String {
    match tenths % 10 {
        0 => (tenths / 10).to_string(),
        rest => format!("{}.{rest}", tenths / 10),
    }
}

fn hundredths(hundredths: u16) -> String {
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}

fn said(check: Check) -> String {
    match check {
        Check::Balls { pitches, from, to } => say!("card-check-balls", pitches = pitches, from = from, to = to),
        Check::Rubbed => say!("card-check-rubbed"),
        Check::BallSize(inches) => say!("card-check-ball-size", inches = tenths(inches)),
        Check::BatLength(inches) => say!("card-check-bat-length", inches = tenths(inches)),
        Check::BatBarrel(inches) => say!("card-check-bat-barrel", inches = hundredths(inches)),
        Check::WoodenBats => say!("card-check-wooden-bats"),
        Check::SmallBats => say!("card-check-small-bats"),
        Check::MetalBats => say!("card-check-metal-bats"),
        Check::ChildrensWeights => say!("card-check-childrens-weights"),
        Check::GrownWeights => say!("card-check-grown-weights"),
        Check::Mitts => say!("card-check-mitts"),
        Check::BasePaths(feet) => say!("card-check-base-paths", feet = feet),
        Check::PitchingDistance(tenths) => {
            say!("card-check-pitching-distance", feet = tenths / 10, inches = tenths % 10 * 12 / 10)
        }
        Check::ArcFrom(feet) => say!("card-check-arc-from", feet = feet),
        Check::ArcTo(feet) => say!("card-check-arc-to", feet = feet),
        Check::ArcBetween(from, to) => say!("card-check-arc-between", from = from, to = to),
        Check::SlowPitch => say!("card-check-slow-pitch"),
        Check::OutsForEveryone(outs) => say!("card-check-outs", outs = outs),
        Check::AtBatsForEveryone(turns) => say!("card-check-at-bats", turns = turns),
        Check::Umpire => say!("card-check-umpire"),
    }
}
