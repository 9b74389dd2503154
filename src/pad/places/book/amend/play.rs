//! Any earlier play amended whole: the ball, who handled it, where each runner ended and how. What would change is seen
//! before it is agreed to.

use benchbook_stats::field::Position;
use benchbook_stats::game::{Game, Situation};
use benchbook_stats::log::{Action, EntryId, Event, Move, Start};
use benchbook_stats::propose::edit;
use leptos::prelude::*;

use super::super::drawer::Drawer;
use super::super::{Reading, words};
use super::ball::Ball;
use super::runner::Runner;
use crate::live::{Shown, live};
use crate::places::plate::telling;
use crate::words::{language, say};

/// A play as it is being amended.
#[derive(Clone, Copy)]
pub struct Draft {
    /// Its entry.
    pub entry: EntryId,
    /// The game just before it.
    before: StoredValue<Game>,
    /// What the entry says now.
    was: StoredValue<Event>,
    /// The same without runners who are not there: what an amendment begins with.
    begun: StoredValue<Event>,
    /// What it would say.
    pub event: RwSignal<Event>,
}

impl Draft {
    fn of(game: &Game, entry: EntryId) -> Option<Self> {
        let before = game.before(entry)?;
        let was = event_of(game, entry)?;
        let mut begun = was.clone();
        if let Some(action) = begun.action_mut() {
            edit::leave_out_missing(action, before.situation());
        }
        Some(Self {
            entry,
            before: StoredValue::new(before),
            was: StoredValue::new(was),
            begun: StoredValue::new(begun.clone()),
            event: RwSignal::new(begun),
        })
    }

    /// Reads the game as it was just before the play.
    pub fn before<T>(self, read: impl FnOnce(&Game) -> T) -> T {
        self.before.with_value(read)
    }

    /// The moment of the play.
    pub fn situation(self) -> Situation {
        self.before(|game| *game.situation())
    }

    /// The fielders there are.
    pub fn fielders(self) -> Vec<Position> {
        self.before(|game| {
            let lineup = game.lineup(game.situation().fielding());
            let there: Vec<Position> =
                lineup.iter().flat_map(|l| l.everyone()).filter_map(|a| a.post.position()).collect();
            Position::ALL.into_iter().filter(|p| there.contains(p)).collect()
        })
    }

    /// Who handled the batted ball.
    pub fn chain(self) -> Vec<Position> {
        self.event.with(|event| match event {
            Event::InPlay(play) => play.ball.fielders.clone(),
            _ => Vec::new(),
        })
    }

    /// There is a batted ball.
    pub fn batted(self) -> bool {
        self.was.with_value(Event::is_batted)
    }

    /// The part of `who`; `None` if they stay.
    pub fn move_of(self, who: Start) -> Option<Move> {
        self.event.with(|event| event.action()?.moves.iter().find(|m| m.from == who).cloned())
    }

    /// Changes what batter and runners do.
    pub fn change(self, change: impl FnOnce(&mut Action)) {
        self.event.update(|event| {
            if let Some(action) = event.action_mut() {
                change(action);
            }
        });
    }

    /// Those whose end can be changed, the lead runner first.
    fn everyone(self) -> Vec<Start> {
        let s = self.situation();
        let bats = self.batted() || self.move_of(Start::Batter).is_some();
        let there = |who: &Start| if *who == Start::Batter { bats } else { s.at(*who).is_some() };
        [Start::Third, Start::Second, Start::First, Start::Batter].into_iter().filter(there).collect()
    }
}

/// What an entry says at the moment.
fn event_of(game: &Game, entry: EntryId) -> Option<Event> {
    game.steps().iter().find(|step| step.entry == entry).map(|step| game.event(step).clone())
}

/// The entry is a play of which more than the call of a pitch can be amended.
pub fn can_be_amended(game: &Game, entry: EntryId) -> bool {
    let Some(event) = event_of(game, entry) else { return false };
    let Some(action) = event.action() else { return false };
    let runners = || game.before(entry).is_some_and(|before| before.situation().runners().count() > 0);
    event.is_batted() || !action.is_empty() || runners()
}

/// The drawer in which a play is amended, while one is.
#[component]
pub fn AmendPlay() -> impl IntoView {
    let reading = Reading::get();
    let close = Callback::new(move |()| reading.amending.set(None));
    live(move || {
        let entry = reading.amending.get()?;
        let draft = reading.scoring.game.with_untracked(|game| Draft::of(game, entry))?;
        Some(view! {
            <Drawer title=say!("book-amend-play") close=close>
                <Form draft=draft/>
            </Drawer>
        })
    })
}

#[component]
fn Form(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let reading = Reading::get();
    let refusal = RwSignal::new(None::<String>);
    let s = draft.situation();
    let moment = format!("{} · {}", words::half(s.inning, s.half), words::outs(s.outs));
    // A pitch on which nobody did anything yet has no words of its own: the line's stand.
    let sentence = move || {
        let drafted = draft.event.with(|event| draft.before(|game| telling::draft(game, &s, event)));
        if drafted.is_empty() { reading.sentence(draft.entry) } else { drafted }
    };
    let differs = move |from: StoredValue<Event>| draft.event.with(|event| from.with_value(|from| from != event));
    let changed = Memo::new(move |_| differs(draft.was));
    let begun = Memo::new(move |_| differs(draft.begun));
    let late = move || draft.event.with(|event| event.action().is_some_and(|a| edit::has_run_and_out(a, s.outs)));
    let look = move |_| {
        let event = Event::Replace { entry: draft.entry, event: Box::new(draft.event.get_untracked()) };
        let why = reading.scoring.game.with_untracked(|game| why_not(game, draft.entry, &event));
        let fits = why.is_none();
        refusal.set(why);
        if fits {
            reading.propose(draft.entry, event);
        }
    };
    let start_over = move |_| {
        refusal.set(None);
        draft.event.set(draft.begun.get_value());
    };
    view! {
        <div class="amending">
            <p class="soft small">{moment}</p>
            <p class="as-drafted" aria-live="polite"><b>{sentence}</b></p>
            {draft.batted().then(|| view! { <Ball draft=draft/> })}
            <h3>{say!("book-amend-everyone")}</h3>
            {draft.everyone().into_iter().map(|who| view! { <Runner draft=draft who=who/> }).collect_view()}
            <Shown when=late>
                <button type="button" on:click=move |_| draft.change(edit::outs_first)>{say!("book-amend-late")}</button>
            </Shown>
            <div role="status">
                {live(move || refusal.get().map(|why| view! { <p class="notice refusal">{why}</p> }))}
            </div>
            <p class="answers">
                <button type="button" class="main" disabled=move || !changed.get() on:click=look>
                    {say!("book-amend-look")}
                </button>
                <button type="button" disabled=move || !begun.get() on:click=start_over>
                    {say!("book-amend-start-over")}
                </button>
            </p>
        </div>
    }
}

/// Why the play itself would not fit so, if it would not.
fn why_not(game: &Game, entry: EntryId, event: &Event) -> Option<String> {
    match game.preview(event.clone()) {
        Err(refusal) => Some(refusal.said(language())),
        Ok(after) => after.conflicts().find(|(id, _)| *id == entry).map(|(_, refusal)| refusal.said(language())),
    }
}
