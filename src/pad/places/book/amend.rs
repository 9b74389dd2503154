//! What can be amended in the Book: how a play is scored, what a pitch was, what was forgotten; anything into anything.

use benchbook_stats::account::sentences;
use benchbook_stats::account::why::tally;
use benchbook_stats::game::{Game, Play, Slot, Thrown};
use benchbook_stats::log::{Call, EntryId, Event, Judgment, Pitch, Reached};
use leptos::prelude::*;

use super::{Reading, words};
use crate::live::live;
use crate::words::{language, say};

mod ball;
mod choose;
mod draft;
mod pick;
mod place;
mod play;
mod runner;
mod usual;

pub use draft::{Amending, can_be_amended};
pub use play::AmendPlay;

/// A batter who reached base on a batted ball: hit, error or fielder's choice.
#[component]
pub fn ScoreAs(
    /// The play.
    entry: EntryId,
) -> impl IntoView {
    let reading = Reading::get();
    let choices = reading.scoring.game.with_untracked(|game| game.play(entry).map(verdicts).unwrap_or_default());
    let choice = move |verdict: Reached| {
        let event = Event::Judgment(Judgment::BatterReached { on: entry, verdict });
        view! {
            <button type="button" on:click=move |_| reading.propose(entry, event.clone())>
                {words::reached(verdict)}
            </button>
        }
    };
    (!choices.is_empty()).then(|| {
        view! {
            <h4>{say!("book-score-as")}</h4>
            <p class="tools">{choices.into_iter().map(choice).collect_view()}</p>
        }
    })
}

/// How a play may be scored, if that is a judgment: the batter reached safely on a batted ball.
pub fn verdicts(play: &Play) -> Vec<Reached> {
    let Some(batted) = play.batted.as_ref().filter(|b| !b.left_park && !play.nullified) else { return Vec::new() };
    let Some(first) = play.batter_move().and_then(|m| m.legs.first()) else { return Vec::new() };
    let mut verdicts = vec![Reached::Hit(first.to.number())];
    let erred = play.misplays.iter().map(|m| m.by).chain(batted.fielders.iter().copied());
    for position in erred {
        if !verdicts.contains(&Reached::Error(position)) {
            verdicts.push(Reached::Error(position));
        }
    }
    verdicts.truncate(4);
    verdicts.push(Reached::Choice);
    verdicts
}

/// The pitches of a turn, each of which can be amended.
#[component]
pub fn Pitches(
    /// The line they belong to.
    line: EntryId,
    /// The pitches.
    pitches: Vec<(EntryId, Thrown)>,
    /// Some were not seen.
    missed: bool,
) -> impl IntoView {
    let (balls, strikes) = tally(&pitches);
    let names = pitches.iter().map(|(_, thrown)| sentences::pitch(*thrown, language())).collect::<Vec<_>>().join(", ");
    let told = say!("book-pitches-thrown", pitches = balls + strikes, balls = balls, strikes = strikes, names = names);
    let picked = RwSignal::new(None::<(EntryId, Thrown)>);
    let single = move |pitch: (EntryId, Thrown)| {
        let chosen = move || picked.get().is_some_and(|(entry, _)| entry == pitch.0).to_string();
        view! {
            <button type="button" aria-pressed=chosen on:click=move |_| picked.set(Some(pitch))>
                {sentences::pitch(pitch.1, language())}
            </button>
        }
    };
    (!pitches.is_empty()).then(|| {
        view! {
            <h4>{say!("book-pitches")}</h4>
            <p>{told}{missed.then_some(" ")}{missed.then_some(say!("book-pitches-missed"))}</p>
            <details>
                <summary>{say!("book-amend-pitch")}</summary>
                <p class="tools">{pitches.into_iter().map(single).collect_view()}</p>
                {live(move || picked.get().map(|(entry, thrown)| view! { <OnePitch line=line entry=entry thrown=thrown/> }))}
            </details>
        }
    })
}

/// What one pitch may have been instead, or what was forgotten before it.
#[component]
fn OnePitch(
    /// The line it belongs to.
    line: EntryId,
    /// Its entry.
    entry: EntryId,
    /// What it is now.
    thrown: Thrown,
) -> impl IntoView {
    let reading = Reading::get();
    let now = reading.scoring.game.with_untracked(|game| pitch_of(game, entry));
    let instead = now.map(|pitch| {
        let call = move |call: Call| {
            let event = Event::Replace { entry, event: Box::new(Event::Pitch(Pitch { call, ..pitch.clone() })) };
            button(reading, line, Thrown::Called(call), event)
        };
        let others = Call::COMMON.into_iter().filter(move |call| Thrown::Called(*call) != thrown);
        view! {
            <p>{say!("book-it-was")}</p>
            <p class="tools">
                {others.map(call).collect_view()}
                <Choosing line=line at=Slot::Of(entry) text=say!("book-instead-ask")/>
            </p>
        }
    });
    let before = move |call: Call| {
        let event = Event::Insert { before: entry, event: Box::new(Event::Pitch(Pitch::new(call))) };
        button(reading, line, Thrown::Called(call), event)
    };
    view! {
        {instead}
        <p>{say!("book-forgotten-before")}</p>
        <p class="tools">
            {Call::COMMON.map(before).collect_view()}
            <Choosing line=line at=Slot::Before(entry) text=say!("book-missing-other")/>
        </p>
        <p>
            <button type="button" on:click=move |_| reading.propose(line, Event::Retract { entry })>
                {say!("book-strike-out-pitch")}
            </button>
        </p>
    }
}

/// Opens the choice of all that could have happened there.
#[component]
pub fn Choosing(
    /// The line it is about.
    line: EntryId,
    /// Where.
    at: Slot,
    /// What the button says.
    text: String,
) -> impl IntoView {
    let reading = Reading::get();
    let open = move |_| reading.amending.set(Some(Amending::choosing(line, at)));
    view! { <button type="button" on:click=open>{text}</button> }
}

fn button(reading: Reading, line: EntryId, thrown: Thrown, event: Event) -> impl IntoView {
    view! {
        <button type="button" on:click=move |_| reading.propose(line, event.clone())>{sentences::pitch(thrown, language())}</button>
    }
}

/// The pitch an entry recorded, if nothing else happened on it: only then can it simply have been another one.
fn pitch_of(game: &Game, entry: EntryId) -> Option<Pitch> {
    let step = game.steps().iter().find(|step| step.entry == entry)?;
    match game.event(step) {
        Event::Pitch(pitch) if pitch.action.is_empty() => Some(pitch.clone()),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchbook_stats::field::Position;
    use benchbook_stats::file;

    fn harbor() -> Game {
        let text = include_str!("../../../../tests/games/harbor-league.benchbook.json");
        Game::replay(file::read(text).expect("the game file reads").log)
    }

    #[test]
    fn only_a_batter_who_reached_on_a_batted_ball_is_a_judgment() {
        let game = harbor();
        for play in game.plays() {
            let judged = !verdicts(play).is_empty();
            let reached = play.batter_move().is_some_and(|m| !m.legs.is_empty());
            let in_park = play.batted.as_ref().is_some_and(|b| !b.left_park);
            assert_eq!(judged, reached && in_park, "entry {}", play.entry.0);
        }
        assert!(game.plays().any(|p| verdicts(p).contains(&Reached::Error(Position::Shortstop))));
    }
}
