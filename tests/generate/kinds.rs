//! Which kinds of the vocabulary a run has recorded, counted against all there are by the file's JSON Schema.

use std::collections::{BTreeMap, BTreeSet};

use benchbook_stats::game::Game;
use benchbook_stats::log::{
    Action, Attempt, Call, Cause, Entry, Event, How, Judgment, MisplayKind, PitchKind, Reached, Start, Status,
    Trajectory, UnseenResult,
};
use benchbook_stats::team::{Change, Role};
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;

/// How often each kind occurred, by the name of its enum and its own name in a file.
#[derive(Clone, Debug, Default)]
pub struct Kinds(BTreeMap<(&'static str, String), u64>);

impl Kinds {
    /// Counts what was accepted into a log.
    pub fn count_log(&mut self, log: &[Entry]) {
        for entry in log {
            self.event(&entry.event);
        }
    }

    /// Counts what the replay adds to what was recorded: forced advances, outs for batting out of turn.
    pub fn count_replay(&mut self, game: &Game) {
        for m in game.plays().flat_map(|play| &play.moves) {
            m.legs.iter().filter(|leg| leg.cause == Cause::Forced).for_each(|leg| self.one("cause", &leg.cause));
            m.out.iter().filter(|out| out.how == How::OutOfTurn).for_each(|out| self.one("how", &out.how));
        }
    }

    /// Adds another run's counts.
    pub fn add(&mut self, other: &Self) {
        for (key, n) in &other.0 {
            *self.0.entry(key.clone()).or_default() += n;
        }
    }

    /// Times a kind occurred.
    pub fn times(&self, of: &'static str, kind: &str) -> u64 {
        self.0.get(&(of, kind.to_owned())).copied().unwrap_or(0)
    }

    /// Every kind there is that never occurred.
    pub fn missing(&self) -> Vec<String> {
        let all = [
            ("event", variants::<Event>()),
            ("call", variants::<Call>()),
            ("pitch kind", variants::<PitchKind>()),
            ("trajectory", variants::<Trajectory>()),
            ("cause", variants::<Cause>()),
            ("how", variants::<How>()),
            ("attempt", variants::<Attempt>()),
            ("start", variants::<Start>()),
            ("misplay", variants::<MisplayKind>()),
            ("unseen", variants::<UnseenResult>()),
            ("change", variants::<Change>()),
            ("role", variants::<Role>()),
            ("status", variants::<Status>()),
            ("judgment", variants::<Judgment>()),
            ("reached", variants::<Reached>()),
        ];
        all.into_iter()
            .flat_map(|(of, kinds)| kinds.into_iter().map(move |kind| (of, kind)))
            .filter(|(of, kind)| self.times(of, kind) == 0)
            .map(|(of, kind)| format!("{of} {kind}"))
            .collect()
    }

    /// One line a kind.
    pub fn table(&self) -> String {
        self.0.iter().map(|((of, kind), n)| format!("{of} {kind}: {n}")).collect::<Vec<_>>().join("\n")
    }

    /// Kinds that occurred.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Nothing occurred.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    fn one(&mut self, of: &'static str, kind: &impl Serialize) {
        *self.0.entry((of, name(kind))).or_default() += 1;
    }

    fn event(&mut self, event: &Event) {
        self.one("event", event);
        match event {
            Event::Pitch(pitch) => {
                self.one("call", &pitch.call);
                pitch.kind.iter().for_each(|k| self.one("pitch kind", k));
                self.action(&pitch.action);
            }
            Event::InPlay(play) => {
                self.one("trajectory", &play.ball.trajectory);
                play.kind.iter().for_each(|k| self.one("pitch kind", k));
                self.action(&play.action);
            }
            Event::Running(running) => self.action(&running.action),
            Event::Unseen(unseen) => {
                self.one("unseen", &unseen.result);
                self.action(&unseen.action);
            }
            Event::Change { change, .. } => {
                self.one("change", change);
                if let Change::Substitute { role, .. } = change {
                    self.one("role", role);
                }
            }
            Event::Status(status) => self.one("status", status),
            Event::Judgment(judgment) => {
                self.one("judgment", judgment);
                if let Judgment::BatterReached { verdict, .. } = judgment {
                    self.one("reached", verdict);
                }
            }
            Event::Replace { event, .. } | Event::Insert { event, .. } => self.event(event),
            _ => {}
        }
    }

    fn action(&mut self, action: &Action) {
        for m in &action.moves {
            self.one("start", &m.from);
            m.legs.iter().for_each(|leg| self.one("cause", &leg.cause));
            if let Some(out) = &m.out {
                self.one("how", &out.how);
                out.attempt.iter().for_each(|a| self.one("attempt", a));
            }
        }
        action.misplays.iter().for_each(|m| self.one("misplay", &m.kind));
    }
}

/// A value's name in a file: the text it is, or the one key of the object.
fn name(of: &impl Serialize) -> String {
    match serde_json::to_value(of) {
        Ok(Value::String(name)) => name,
        Ok(Value::Object(fields)) => fields.keys().next().cloned().unwrap_or_default(),
        other => format!("{other:?}"),
    }
}

/// Every name an enum's values can have in a file.
///
/// # Panics
/// If its schema has another shape than those known here.
pub fn variants<T: JsonSchema>() -> BTreeSet<String> {
    let schema = schemars::schema_for!(T).to_value();
    let mut names = BTreeSet::new();
    let alternatives = schema["oneOf"].as_array().map_or(&[][..], Vec::as_slice);
    for schema in alternatives.iter().chain([&schema]) {
        if let Some(text) = schema["const"].as_str() {
            names.insert(text.to_owned());
        }
        let of_enum = schema["enum"].as_array().into_iter().flatten().filter_map(Value::as_str);
        names.extend(of_enum.map(str::to_owned));
        if schema["type"] == "object" {
            names.extend(
                schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned),
            );
        }
    }
    assert!(!names.is_empty(), "no variants found in {schema}");
    names
}
