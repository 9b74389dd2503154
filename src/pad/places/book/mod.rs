//! The Book: line score, box score and its proof, the game in words, the scoresheet, and "why?" behind every number.

use benchbook_stats::account::Account;
use benchbook_stats::account::why::Number;
use benchbook_stats::field::Side;
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::lines::{BoxScore, LineScore};
use benchbook_stats::log::{EntryId, Event};
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use crate::live::live;
use crate::places::Refused;
use crate::scoring::Scoring;
use crate::words::{language, say};

mod amend;
mod board;
mod charts;
mod conflicts;
mod correction;
mod drawer;
mod line;
mod plays;
mod proof;
mod settle;
mod sheet;
mod story;
mod tables;
mod why;
mod words;

use amend::{AmendPlay, Amending};
use board::Board;
use charts::Charts;
use conflicts::Conflicts;
use correction::Correction;
use plays::Plays;
use settle::Settle;
use sheet::Sheets;
use story::Story;
use tables::Boxes;
use why::Why;

/// What the Book reads from the game, derived once a change, and which of its pages lies open.
#[derive(Clone, Copy)]
pub(super) struct Reading {
    scoring: Scoring,
    line_score: Memo<LineScore>,
    box_score: Memo<BoxScore>,
    account: Memo<Account>,
    /// The game is over.
    over: Memo<bool>,
    page: RwSignal<Page>,
    /// The number asked about.
    asked: RwSignal<Option<Number>>,
    /// The correction that is looked at before it is agreed to.
    proposed: RwSignal<Option<Proposal>>,
    /// What is being amended.
    amending: RwSignal<Option<Amending>>,
    /// The line to be brought into sight.
    shown: RwSignal<Option<EntryId>>,
}

/// A correction not made yet.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Proposal {
    /// The line it is about.
    on: EntryId,
    /// What would be recorded.
    event: Event,
}

/// The pages of the Book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Page {
    Box,
    Plays,
    Sheet,
    Charts,
}

impl Page {
    const ALL: [Self; 4] = [Self::Box, Self::Plays, Self::Sheet, Self::Charts];
}

impl Reading {
    fn provide() -> Self {
        let scoring = Scoring::get();
        let game = scoring.game;
        let reading = Self {
            scoring,
            line_score: Memo::new(move |_| game.with(Game::line_score)),
            box_score: Memo::new(move |_| game.with(Game::box_score)),
            account: Memo::new(move |_| game.with(Account::of)),
            over: Memo::new(move |_| game.with(|game| matches!(game.situation().phase, Phase::Over(_)))),
            page: RwSignal::new(Page::Box),
            asked: RwSignal::new(None),
            proposed: RwSignal::new(None),
            amending: RwSignal::new(None),
            shown: RwSignal::new(None),
        };
        provide_context(reading);
        reading
    }

    /// The open Book.
    fn get() -> Self {
        expect_context()
    }

    /// Shows what a correction would change.
    fn propose(self, on: EntryId, event: Event) {
        self.proposed.set(Some(Proposal { on, event }));
    }

    /// Opens an entry to be amended within its kind.
    fn amend(self, entry: EntryId) {
        self.amending.set(Some(self.scoring.game.with_untracked(|game| Amending::entry(game, entry))));
    }

    /// Turns to the play-by-play, at the line of an entry.
    fn show(self, entry: EntryId) {
        self.asked.set(None);
        self.page.set(Page::Plays);
        self.shown.set(Some(entry));
    }

    fn name(self, id: PlayerId) -> String {
        self.scoring.game.with(|game| game.label(id))
    }

    fn team(self, side: Side) -> String {
        self.scoring.game.with(|game| game.team_name(side).to_owned())
    }

    /// The sentence of a line of the account.
    fn sentence(self, entry: EntryId) -> String {
        self.account.with(|account| {
            account.line(entry).map_or_else(String::new, |line| {
                benchbook_stats::account::sentences::line(line, language(), &|id| self.name(id))
            })
        })
    }
}

/// The Book.
#[component]
pub fn Book() -> impl IntoView {
    let reading = Reading::provide();
    reading.scoring.refusal.set(None);
    window().scroll_to_with_x_and_y(0.0, 0.0);
    view! {
        <main class="book">
            <h1 class="spoken">{say!("book-title")}</h1>
            <Board/>
            <Conflicts/>
            <Settle/>
            <Refused/>
            <Pages/>
            {live(move || match reading.page.get() {
                Page::Box => view! { <Story/><Boxes/> }.into_any(),
                Page::Plays => view! { <Plays/> }.into_any(),
                Page::Sheet => view! { <Sheets/> }.into_any(),
                Page::Charts => view! { <Charts/> }.into_any(),
            })}
            <Why/>
            <AmendPlay/>
            <Correction/>
        </main>
    }
}

/// The tabs of the Book's pages.
#[component]
fn Pages() -> impl IntoView {
    let reading = Reading::get();
    let tab = move |page: Page| {
        let chosen = move || reading.page.get() == page;
        view! {
            <button type="button" aria-pressed=move || chosen().to_string() on:click=move |_| reading.page.set(page)>
                {words::page(page)}
            </button>
        }
    };
    view! {
        <div class="pages" role="group" aria-label=say!("book-pages")>
            {Page::ALL.map(tab)}
        </div>
    }
}
