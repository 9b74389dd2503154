//! Scoring by keyboard: B C S F are the pitches, 1 to 9 and 0 the fielders, Enter records, Escape cancels, U and R take
//! back and put back.

use benchbook_stats::field::Position;
use benchbook_stats::game::Phase;
use benchbook_stats::log::Call;
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, KeyboardEvent};

use super::gesture::Gesture;
use super::hand::Hand;

/// Listens as long as the Plate is shown.
pub fn listen(hand: Hand) {
    let listening = window_event_listener(ev::keydown, move |event| {
        if !is_writing(&event) && !event.repeat() && pressed(hand, &event) {
            event.prevent_default();
        }
    });
    on_cleanup(move || listening.remove());
}

/// The key belongs to a text field, or to a control that has the focus.
fn is_writing(event: &KeyboardEvent) -> bool {
    let Some(target) = event.target().and_then(|t| t.dyn_into::<HtmlElement>().ok()) else { return false };
    let name = target.tag_name();
    let own = matches!(name.as_str(), "INPUT" | "TEXTAREA" | "SELECT");
    let presses = matches!(name.as_str(), "BUTTON" | "A") && matches!(event.key().as_str(), "Enter" | " ");
    own || presses || event.alt_key()
}

fn pressed(hand: Hand, event: &KeyboardEvent) -> bool {
    let key = event.key().to_lowercase();
    if event.ctrl_key() || event.meta_key() {
        match (key.as_str(), event.shift_key()) {
            ("z", false) => hand.undo(),
            ("z", true) | ("y", _) => hand.redo(),
            _ => return false,
        }
        return true;
    }
    match key.as_str() {
        "u" | "backspace" => hand.undo(),
        "r" => hand.redo(),
        "escape" => hand.cancel(),
        _ if hand.situation.get_untracked().phase != Phase::Underway => return false,
        "enter" => confirm(hand),
        "b" => pitch(hand, Call::Ball),
        "c" => pitch(hand, Call::CalledStrike),
        "s" => pitch(hand, Call::SwingingStrike),
        "f" => pitch(hand, Call::Foul),
        _ => return digit(hand, &key),
    }
    true
}

/// A pitch counts while one is waited for; with the ball in play it would be a slip.
fn pitch(hand: Hand, call: Call) {
    if hand.gesture.with_untracked(|g| matches!(g, Gesture::Waiting | Gesture::MorePitches)) {
        hand.pitch(call);
    }
}

fn digit(hand: Hand, key: &str) -> bool {
    let position = match key {
        "0" => Some(Position::ShortField),
        _ => key.parse::<u8>().ok().and_then(|n| Position::try_from(n).ok()),
    };
    let there = position.filter(|p| {
        let fielding = hand.situation.get_untracked().fielding();
        hand.game_now(|game| game.lineup(fielding).is_some_and(|l| l.at(*p).is_some()))
    });
    if let Some(position) = there {
        hand.fielder(position);
    }
    there.is_some()
}

fn confirm(hand: Hand) {
    if hand.gesture.with_untracked(|g| matches!(g, Gesture::Adjusting(_))) {
        hand.record_draft();
    } else if hand.gesture.with_untracked(|g| !matches!(g, Gesture::Runner { .. }))
        && let Some(first) = hand.proposals.with_untracked(|list| list.first().cloned())
    {
        hand.accept(&first);
    }
}
