//! The Card: the lineup cards, the rules of play, the checks before the first pitch.

use benchbook_stats::field::Side;
use benchbook_stats::game::Phase;
use benchbook_stats::log::Event;
use benchbook_stats::team::Card as LineupCard;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::club::Club;
use crate::live::Shown;
use crate::scoring::Scoring;
use crate::words::say;

mod about;
mod bench;
mod changes;
mod checklist;
mod checks;
mod edit;
mod fields;
mod heading;
mod known;
mod order;
mod player;
mod reorder;
mod rules;
mod side;
mod start;
mod usual;
mod words;

use changes::Changes;
use heading::HeadingForm;
use rules::Rules;
use side::SideCard;
use start::Start;

/// The open game as the Card sees it.
#[derive(Clone, Copy)]
pub(super) struct Desk {
    scoring: Scoring,
    /// The first pitch has not been thrown: cards and rules can still be changed.
    before: Memo<bool>,
    /// What earlier games know.
    club: RwSignal<Club>,
    /// Hands and ages show.
    about: RwSignal<bool>,
}

impl Desk {
    fn provide() -> Self {
        let scoring = Scoring::get();
        let before = Memo::new(move |_| scoring.game.with(|game| game.situation().phase == Phase::Before));
        let club = RwSignal::new(Club::default());
        let open = scoring.id.get_value();
        spawn_local(async move {
            club.try_set(Club::of_this_device(&open).await);
        });
        let desk = Self { scoring, before, club, about: RwSignal::new(false) };
        provide_context(desk);
        desk
    }

    /// The desk of the open Card.
    fn get() -> Self {
        expect_context()
    }

    /// Records an event. A refusal shows at the foot of the Card.
    fn tap(self, event: Event) -> bool {
        self.scoring.tap(event)
    }

    /// A side's card as it stands.
    fn card(self, side: Side) -> LineupCard {
        self.scoring.game.with(|game| edit::card_of(game, side))
    }

    /// Records a side's card if it says anything new.
    fn put_card(self, side: Side, card: LineupCard) {
        if card != self.scoring.game.with_untracked(|game| edit::card_of(game, side)) {
            self.tap(Event::Card { side, card });
        }
    }
}

/// The Card.
#[component]
pub fn Card() -> impl IntoView {
    let desk = Desk::provide();
    desk.scoring.refusal.set(None);
    window().scroll_to_with_x_and_y(0.0, 0.0);
    view! {
        <main class="card" class:begun=move || !desk.before.get()>
            <h1 class="spoken">{say!("card-title")}</h1>
            <div class="paper">
                <HeadingForm/>
                <Rules/>
            </div>
            <div class="sides">{Side::BOTH.map(|side| view! { <SideCard side=side/> })}</div>
            <Shown when=move || desk.before.get() fallback=|| view! { <Changes/> }>
                <Start/>
            </Shown>
        </main>
    }
}
