//! Kind and speed of the pitch just thrown, for a scorer who notes them: a strip above the pitches that never moves them,
//! and is never waited for. What is noted replaces the pitch's entry in the log.

use benchbook_stats::game::{Game, Thrown};
use benchbook_stats::log::{EntryId, Event, PitchKind, SpeedUnit};
use leptos::prelude::*;

use super::hand::Hand;
use super::words;
use crate::keep::Preferences;
use crate::live::Shown;
use crate::words::say;

/// The more frequent first.
const BASEBALL: [PitchKind; 6] = [
    PitchKind::Fastball,
    PitchKind::Curveball,
    PitchKind::ChangeUp,
    PitchKind::Slider,
    PitchKind::Knuckleball,
    PitchKind::Other,
];
const SOFTBALL: [PitchKind; 6] = [
    PitchKind::Fastball,
    PitchKind::ChangeUp,
    PitchKind::Drop,
    PitchKind::Rise,
    PitchKind::Curveball,
    PitchKind::Other,
];
/// A ball of more than this many tenths of an inch round is a softball.
const BASEBALL_TENTHS: u16 = 95;

/// The last pitch thrown, and what is noted of it.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Noted {
    entry: EntryId,
    kind: Option<PitchKind>,
    speed: Option<u16>,
}

impl Noted {
    fn last(game: &Game) -> Option<Self> {
        let thrown = |play: &benchbook_stats::game::Play| play.thrown.is_some_and(Thrown::is_thrown);
        let step = game.steps().iter().rev().find(|step| step.play.as_deref().is_some_and(thrown))?;
        let entry = step.play.as_deref()?.entry;
        match game.event(step) {
            Event::Pitch(pitch) => Some(Self { entry, kind: pitch.kind, speed: pitch.speed }),
            Event::InPlay(in_play) => Some(Self { entry, kind: in_play.kind, speed: in_play.speed }),
            _ => None,
        }
    }

    /// The entry that puts these notes on the pitch; `None` if it has them already.
    fn replace(self, game: &Game) -> Option<Event> {
        if Self::last(game)? == self {
            return None;
        }
        let step =
            game.steps().iter().rev().find(|step| step.play.as_deref().is_some_and(|p| p.entry == self.entry))?;
        let mut event = game.event(step).clone();
        match &mut event {
            Event::Pitch(pitch) => (pitch.kind, pitch.speed) = (self.kind, self.speed),
            Event::InPlay(in_play) => (in_play.kind, in_play.speed) = (self.kind, self.speed),
            _ => return None,
        }
        Some(Event::Replace { entry: self.entry, event: Box::new(event) })
    }
}

/// The strip.
#[component]
pub fn Notes() -> impl IntoView {
    let hand = Hand::get();
    let noted = Memo::new(move |_| hand.game(Noted::last));
    let softball = hand.game_now(|game| game.code().ball_tenths.is_some_and(|round| round > BASEBALL_TENTHS));
    let kinds = if softball { SOFTBALL } else { BASEBALL };
    let unit = Preferences::get().speed_unit.get_untracked();
    let nothing = move || noted.with(Option::is_none);
    let choose = move |kind: PitchKind| {
        if let Some(before) = noted.get_untracked() {
            note(hand, unit, Noted { kind: (before.kind != Some(kind)).then_some(kind), ..before });
        }
    };
    view! {
        <section class="notes" aria-label=say!("plate-notes")>
            <div class="kinds">
                {kinds.map(|kind| {
                    let pressed = move || noted.get().is_some_and(|n| n.kind == Some(kind)).to_string();
                    view! {
                        <button type="button" disabled=nothing aria-pressed=pressed on:click=move |_| choose(kind)>
                            {words::kind(kind)}
                        </button>
                    }
                })}
            </div>
            <Speed noted=noted unit=unit/>
        </section>
    }
}

/// What the radar said.
#[component]
fn Speed(
    /// Of this pitch.
    noted: Memo<Option<Noted>>,
    /// In this unit.
    unit: SpeedUnit,
) -> impl IntoView {
    let hand = Hand::get();
    let wrong = RwSignal::new(false);
    let shown = move || {
        noted.track();
        noted.get().and_then(|n| n.speed).map(|tenths| unit.shown(tenths).to_string()).unwrap_or_default()
    };
    let typed = move |event: web_sys::Event| {
        let text = event_target_value(&event);
        let text = text.trim();
        let speed = text.parse().ok().and_then(|whole| unit.recorded(whole));
        wrong.set(!text.is_empty() && speed.is_none());
        if let (false, Some(before)) = (wrong.get_untracked(), noted.get_untracked()) {
            note(hand, unit, Noted { speed, ..before });
        }
    };
    view! {
        <label class="speed">
            <span class="spoken">{say!("plate-speed")}</span>
            <input
                inputmode="numeric"
                enterkeyhint="done"
                maxlength="3"
                autocomplete="off"
                disabled=move || noted.with(Option::is_none)
                aria-invalid=move || wrong.get().to_string()
                prop:value=shown
                on:change=typed
            />
            <span>{words::unit(unit)}</span>
        </label>
    }
}

/// Records what is noted, and says it. A gesture under way goes on.
fn note(hand: Hand, unit: SpeedUnit, notes: Noted) {
    if let Some(event) = hand.game_now(|game| notes.replace(game)) {
        hand.note(event, said(notes.kind, notes.speed, unit));
    }
}

fn said(kind: Option<PitchKind>, speed: Option<u16>, unit: SpeedUnit) -> String {
    let speed = speed.map(|tenths| say!("plate-speed-said", speed = unit.shown(tenths), unit = words::unit(unit)));
    match (kind.map(words::kind), speed) {
        (Some(kind), Some(speed)) => say!("plate-noted-both", kind = kind, speed = speed),
        (Some(only), None) | (None, Some(only)) => say!("plate-noted", what = only),
        (None, None) => say!("plate-noted-nothing"),
    }
}

/// Turns the strip on and off, and says in which unit speeds are.
#[component]
pub fn NotesSwitch() -> impl IntoView {
    let preferences = Preferences::get();
    let on = preferences.pitch_notes;
    view! {
        <div class="notes-switch">
            <button type="button" aria-pressed=move || on.get().to_string() on:click=move |_| on.update(|on| *on = !*on)>
                {say!("plate-note-pitches")}
            </button>
            {[SpeedUnit::MilesPerHour, SpeedUnit::KilometersPerHour].map(|unit| {
                let pressed = move || (preferences.speed_unit.get() == unit).to_string();
                view! {
                    <Shown when=move || on.get()>
                        <button type="button" aria-pressed=pressed on:click=move |_| preferences.speed_unit.set(unit)>
                            {words::unit(unit)}
                        </button>
                    </Shown>
                }
            })}
        </div>
    }
}
