//! What a touch does: it moves the gesture on, or it makes an event of it and has it recorded.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::game::{Game, Situation};
use benchbook_stats::log::{Action, Attempt, Call, Event, MisplayKind, Pitch, Spot, Start};
use benchbook_stats::propose::edit;
use benchbook_stats::propose::{self, Outcome, Proposal};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use web_sys::MouseEvent;

use super::gesture::{Adjusting, Chosen, Gesture};
use super::{telling, words};
use crate::scoring::Scoring;
use crate::words::say;

/// Two taps within this many ms and this many CSS px of each other are one double tap.
const ECHO: f64 = 350.0;
const NEAR: i32 = 20;

/// The scorer's hand at the Plate: the open game and the gesture under way.
#[derive(Clone, Copy)]
pub struct Hand {
    /// The open game.
    pub scoring: Scoring,
    /// The gesture under way.
    pub gesture: RwSignal<Gesture>,
    /// What was recorded last, in words.
    pub said: RwSignal<Said>,
    /// What may be recorded now.
    pub proposals: Memo<Vec<Proposal>>,
    /// The game as it stands.
    pub situation: Memo<Situation>,
    /// The touch that recorded last: when, in ms of the page's life, and where on the screen.
    recorded: StoredValue<Option<(f64, i32, i32)>>,
}

impl Hand {
    /// Lays the hand on the open game and provides it to the parts of the Plate.
    pub fn provide() -> Self {
        let scoring = Scoring::get();
        let gesture = RwSignal::new(Gesture::Waiting);
        let proposals = Memo::new(move |_| gesture.with(|g| scoring.game.with(|game| g.proposals(game))));
        let situation = Memo::new(move |_| scoring.game.with(|game| *game.situation()));
        let hand = Self {
            scoring,
            gesture,
            said: RwSignal::new(Said::default()),
            proposals,
            situation,
            recorded: StoredValue::new(None),
        };
        provide_context(hand);
        hand
    }

    /// For a part of the Plate.
    pub fn get() -> Self {
        expect_context()
    }

    /// Reads the game, now and whenever it changes.
    pub fn game<T>(&self, read: impl FnOnce(&Game) -> T) -> T {
        self.scoring.game.with(read)
    }

    /// Reads the game as it is at this moment.
    pub fn game_now<T>(&self, read: impl FnOnce(&Game) -> T) -> T {
        self.scoring.game.with_untracked(read)
    }

    // ---- Recording ----

    /// Records an event, and says in words what it was.
    pub fn record(&self, event: Event, words: String) -> bool {
        if !self.scoring.tap(event) {
            return false;
        }
        tick();
        self.turn(Gesture::Waiting);
        let said = self.game_now(|game| Said {
            words: telling::with_consequence(game, words),
            stands: telling::stands(game.situation()),
        });
        self.said.set(said);
        true
    }

    /// Records an event that needs no more words than its name.
    pub fn record_plain(&self, event: Event) -> bool {
        let words = self.game_now(|game| telling::entry(game, &event));
        self.record(event, words)
    }

    /// Records a note on an entry: no play, so the gesture under way goes on.
    pub fn note(&self, event: Event, words: String) {
        if self.scoring.tap(event) {
            tick();
            self.said.set(Said::only(words));
        }
    }

    /// Records a pitch not put in play.
    pub fn pitch(&self, call: Call) {
        self.record(Event::Pitch(Pitch::new(call)), words::call_said(call));
    }

    /// Records a proposal.
    pub fn accept(&self, proposal: &Proposal) {
        let words = self.words_of(proposal);
        self.record(proposal.event.clone(), words);
    }

    /// Records a proposal that was touched.
    pub fn touched(&self, proposal: &Proposal, event: &MouseEvent) {
        self.accept(proposal);
        self.recorded.set_value(Some((event.time_stamp(), event.client_x(), event.client_y())));
    }

    /// The second half of a double tap on what was just recorded: the pitches now lie where the outcome did.
    pub fn is_echo(&self, event: &MouseEvent) -> bool {
        self.recorded.get_value().is_some_and(|(when, x, y)| {
            let near = (event.client_x() - x).abs() < NEAR && (event.client_y() - y).abs() < NEAR;
            near && event.detail() > 0 && event.time_stamp() - when < ECHO
        })
    }

    /// The headline of a proposal and what the runners do.
    pub fn words_of(&self, proposal: &Proposal) -> String {
        self.game_now(|game| telling::proposal(game, &self.before(game), proposal))
    }

    /// The moment a proposal is about: now, or before the strikeout that is being corrected.
    pub fn before(&self, game: &Game) -> Situation {
        let corrects = self.gesture.with_untracked(|g| match g {
            Gesture::GotAway => true,
            Gesture::Adjusting(draft) => matches!(draft.event, Event::Replace { .. }),
            _ => false,
        });
        let play = game.steps().last().and_then(|step| step.play.as_deref());
        play.filter(|_| corrects).map_or(*game.situation(), |play| play.before)
    }

    /// Takes back the last touch of the gesture, or the last entry.
    pub fn undo(&self) {
        if let Some(before) = self.gesture.with_untracked(Gesture::back) {
            self.scoring.forgive();
            self.turn(before);
        } else if self.scoring.undo() {
            tick();
            self.said.set(Said::only(say!("plate-undone")));
        } else if self.scoring.refusal.with_untracked(Option::is_none) {
            self.said.set(Said::only(say!("plate-nothing-to-undo")));
        }
    }

    /// Puts back what was taken back last.
    pub fn redo(&self) {
        self.turn(Gesture::Waiting);
        if self.scoring.redo() {
            tick();
            self.said.set(Said::only(say!("plate-redone")));
        } else if self.scoring.refusal.with_untracked(Option::is_none) {
            self.said.set(Said::only(say!("plate-nothing-to-redo")));
        }
    }

    /// Forgets the gesture.
    pub fn cancel(&self) {
        self.scoring.forgive();
        self.turn(Gesture::Waiting);
    }

    // ---- Touches on the field ----

    /// A fielder.
    pub fn fielder(&self, position: Position) {
        if self.gesture.with_untracked(|g| matches!(g, Gesture::Adjusting(_))) {
            self.fielder_of_draft(position);
        } else if let Some(next) = self.gesture.with_untracked(|g| g.fielder(position)) {
            self.go(next);
        }
    }

    /// A point of the field.
    pub fn grass(&self, spot: Spot) {
        if let Some(next) = self.gesture.with_untracked(|g| g.grass(spot)) {
            self.go(next);
        }
    }

    /// A runner: what did they do, or, with a draft, where did they end.
    pub fn runner(&self, on: Base) {
        let next = self.gesture.with_untracked(|g| match g {
            Gesture::People(_) => Some(Gesture::People(Chosen::Runner(on))),
            Gesture::Ball(_) | Gesture::Chase { .. } | Gesture::GotAway | Gesture::Adjusting(_) => None,
            _ => Some(Gesture::Runner { on, on_pitch: self.game_now(propose::is_on_pitch) }),
        });
        match next {
            Some(next) => self.go(next),
            None => self.adjust_someone(on.into()),
        }
    }

    /// The batter.
    pub fn batter(&self) {
        let drafting =
            self.gesture.with_untracked(|g| matches!(g, Gesture::Ball(_) | Gesture::GotAway | Gesture::Adjusting(_)));
        if drafting {
            self.adjust_someone(Start::Batter);
        } else {
            self.go(Gesture::People(Chosen::Batter));
        }
    }

    /// A runner or the batter was dragged to a base.
    pub fn dragged(&self, who: Start, to: Base) {
        let waiting = self.gesture.with_untracked(|g| matches!(g, Gesture::Waiting | Gesture::Runner { .. }));
        if waiting {
            let Some(on) = who.base() else { return };
            let on_pitch = self.game_now(propose::is_on_pitch);
            let steal = self.game_now(|game| propose::on_runner(game, on, on_pitch)).into_iter().next();
            match steal {
                Some(p) if matches!(p.outcome, Outcome::Steal { to: next, .. } if next == to) => self.accept(&p),
                _ => self.go(Gesture::Runner { on, on_pitch }),
            }
            return;
        }
        self.adjust_someone(who);
        self.change(|action, _, about| {
            if to.number() > who.number() {
                edit::safe(action, who, to, about.batted);
            } else if who != Start::Batter {
                edit::stays(action, who);
            }
        });
    }

    // ---- Adjusting ----

    /// Begins to change a proposal.
    pub fn adjust(&self, proposal: &Proposal, who: Option<Start>) {
        let from = self.gesture.get_untracked();
        let mut chain = from.chain().to_vec();
        if let Event::InPlay(play) = &proposal.event {
            chain.clone_from(&play.ball.fielders);
        }
        let event = proposal.event.clone();
        self.go(Gesture::Adjusting(Adjusting {
            event,
            chain,
            who,
            awaits_error: None,
            naming_out: false,
            from: Box::new(from),
        }));
    }

    fn adjust_someone(&self, who: Start) {
        let mut began = false;
        self.gesture.update(|g| {
            if let Gesture::Adjusting(draft) = g {
                draft.who = Some(who);
                draft.awaits_error = None;
                draft.naming_out = false;
                began = true;
            }
        });
        if !began && let Some(first) = self.proposals.with_untracked(|list| list.first().cloned()) {
            self.adjust(&first, Some(who));
        }
    }

    /// Changes the draft's action.
    pub fn change(&self, change: impl FnOnce(&mut Action, &Situation, &About)) {
        let s = self.game_now(|game| self.before(game));
        self.gesture.update(|g| {
            if let Gesture::Adjusting(draft) = g {
                let about = About { batted: draft.event.is_batted(), chain: draft.chain.clone() };
                if let Some(action) = draft.event.action_mut() {
                    change(action, &s, &about);
                }
            }
        });
    }

    /// A fielder touched while a draft is adjusted: who erred, or who made the out, or who else handled the ball.
    fn fielder_of_draft(&self, position: Position) {
        let mut error = None;
        self.gesture.update(|g| {
            let Gesture::Adjusting(draft) = g else { return };
            match (draft.awaits_error.take(), draft.who) {
                (Some(kind), Some(who)) => error = Some((who, kind)),
                (_, Some(who)) => {
                    let by = draft
                        .event
                        .action_mut()
                        .and_then(|a| a.moves.iter_mut().find(|m| m.from == who))
                        .and_then(|m| m.out.as_mut())
                        .map(|out| &mut out.by);
                    if let Some(by) = by {
                        // The first touch begins the list anew; those after it go on.
                        if !draft.naming_out {
                            by.clear();
                        }
                        if by.last() != Some(&position) {
                            by.push(position);
                        }
                        draft.naming_out = true;
                    }
                }
                _ => {}
            }
        });
        if let Some((who, kind)) = error {
            self.error_by(who, position, kind);
        }
    }

    /// The last bases of `who` were gained on an error.
    pub fn error_by(&self, who: Start, by: Position, kind: MisplayKind) {
        self.change(|action, _, about| edit::on_error(action, who, by, kind, &about.chain));
        self.gesture.update(|g| {
            if let Gesture::Adjusting(draft) = g {
                draft.awaits_error = None;
            }
        });
    }

    /// Records the draft as adjusted.
    pub fn record_draft(&self) {
        let Some(event) = self.gesture.with_untracked(|g| match g {
            Gesture::Adjusting(draft) => Some(draft.event.clone()),
            _ => None,
        }) else {
            return;
        };
        let words = self.game_now(|game| telling::draft(game, &self.before(game), &event));
        self.record(event, words);
    }

    /// Begins a chase of the runner.
    pub fn chase(&self, on: Base, attempt: Attempt, on_pitch: bool) {
        self.go(Gesture::Chase { on, attempt, by: Vec::new(), on_pitch: on_pitch && attempt != Attempt::Pickoff });
    }

    /// Wakes nobody who shows this gesture already: most taps are a pitch, and begin none.
    fn turn(&self, next: Gesture) {
        if self.gesture.with_untracked(|now| *now != next) {
            self.gesture.set(next);
        }
    }

    /// Goes on to another gesture; a refusal no longer stands in the way.
    pub fn go(&self, next: Gesture) {
        self.scoring.forgive();
        self.turn(next);
    }
}

/// What was recorded last, in words.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Said {
    /// What it was.
    pub words: String,
    /// How things stand after it: spoken only, since the board shows it.
    pub stands: String,
}

impl Said {
    const fn only(words: String) -> Self {
        Self { words, stands: String::new() }
    }
}

/// What a change to a draft needs to know of it.
pub struct About {
    /// There is a batted ball.
    pub batted: bool,
    /// Who handled the ball.
    pub chain: Vec<Position>,
}

/// A short tick under the finger, where the device has one.
fn tick() {
    let Some(navigator) = web_sys::window().map(|w| w.navigator()) else { return };
    // Asked for by name: some browsers have no such function.
    if let Ok(vibrate) = js_sys::Reflect::get(&navigator, &JsValue::from_str("vibrate"))
        && let Some(vibrate) = vibrate.dyn_ref::<js_sys::Function>()
    {
        // A refused tick is no loss.
        let _ = vibrate.call1(&navigator, &JsValue::from_f64(8.0));
    }
}
