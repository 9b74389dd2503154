//! The field, which is the instrument: fielders to touch, runners to touch or drag, grass to say where the ball came down.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{Event, Start};
use benchbook_stats::team::Hand as Bats;
use leptos::html::Div;
use leptos::prelude::*;
use web_sys::{MouseEvent, PointerEvent};

use super::board::{runner_on, token_name};
use super::drawing::Drawing;
use super::geometry;
use super::gesture::{Chosen, Gesture};
use super::hand::Hand;
use super::people;
use super::words;
use crate::live::{Shown, live};
use crate::words::{language, say};

/// Whose token is dragged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Dragged {
    /// The batter or a runner: to a base.
    Running(Start),
    /// A fielder: onto another's, to change places.
    Fielding(Position),
}

/// A token under the finger.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drag {
    /// Who is dragged.
    pub who: Dragged,
    /// Where the finger came down and where it is, drawn.
    pub began: (f64, f64),
    /// Where it is.
    pub at: (f64, f64),
    /// It went far enough to be no tap.
    pub moved: bool,
}

/// Drawn units a finger may slip in a tap.
const SLIP: f64 = 16.0;

/// Where a finger is on the drawing.
#[derive(Clone, Copy)]
struct Surface {
    node: NodeRef<Div>,
    drag: RwSignal<Option<Drag>>,
    /// The tap that ends a drag is none.
    just_dragged: StoredValue<bool>,
}

impl Surface {
    fn point(&self, x: i32, y: i32) -> Option<(f64, f64)> {
        let rect = self.node.get_untracked()?.get_bounding_client_rect();
        if rect.width() <= 0.0 {
            return None;
        }
        let scale = geometry::WIDTH / rect.width();
        Some(((f64::from(x) - rect.left()) * scale, (f64::from(y) - rect.top()) * scale))
    }

    fn down(&self, hand: Hand, who: Dragged, event: &PointerEvent) {
        self.just_dragged.set_value(false);
        // While players are changed a fielder can be dragged; at any other time the slip of a finger is still a tap.
        let changing = hand.gesture.with_untracked(|g| matches!(g, Gesture::People(_)));
        if matches!(who, Dragged::Fielding(_)) && !changing {
            return;
        }
        let Some(at) = self.point(event.client_x(), event.client_y()) else { return };
        let token = event.current_target().map(wasm_bindgen::JsCast::unchecked_into::<web_sys::Element>);
        if let Some(token) = token {
            // Without the capture a drag that leaves the token is a tap, nothing worse.
            let _ = token.set_pointer_capture(event.pointer_id());
        }
        self.drag.set(Some(Drag { who, began: at, at, moved: false }));
    }

    fn moved(&self, event: &PointerEvent) {
        let Some(at) = self.point(event.client_x(), event.client_y()) else { return };
        if self.drag.with_untracked(Option::is_some) {
            self.drag.update(|drag| {
                if let Some(drag) = drag {
                    drag.at = at;
                    drag.moved |= (at.0 - drag.began.0).hypot(at.1 - drag.began.1) > SLIP;
                }
            });
        }
    }

    fn up(&self, hand: Hand) {
        let Some(drag) = self.drag.get_untracked() else { return };
        self.drag.set(None);
        if drag.moved {
            self.just_dragged.set_value(true);
            let (x, y) = drag.at;
            match drag.who {
                Dragged::Running(who) => geometry::nearest_base(x, y).map(|base| hand.dragged(who, base)),
                Dragged::Fielding(one) => {
                    let other = geometry::nearest_fielder(x, y).filter(|other| *other != one);
                    other.map(|other| people::change_places(hand, one, other))
                }
            };
        }
    }

    /// A tap, unless it is the end of a drag.
    fn tapped(&self) -> bool {
        let dragged = self.just_dragged.get_value();
        self.just_dragged.set_value(false);
        !dragged
    }
}

/// The field.
#[component]
pub fn Field() -> impl IntoView {
    let hand = Hand::get();
    let surface = Surface { node: NodeRef::new(), drag: RwSignal::new(None), just_dragged: StoredValue::new(false) };
    provide_context(surface);
    let touch_grass = move |event: MouseEvent| {
        if let Some((x, y)) = surface.point(event.client_x(), event.client_y()) {
            hand.grass(geometry::spot(x, y));
        }
    };
    view! {
        <div class="field-room">
            <div class="field" role="group" aria-label=say!("plate-field") node_ref=surface.node>
                <Drawing drag=surface.drag on_grass=touch_grass/>
                {Position::ALL.map(|position| view! { <Fielder position=position/> })}
                {Base::STANDING.map(|base| view! { <Runner base=base/> })}
                <Batter/>
                <Corners/>
            </div>
        </div>
    }
}

/// A number where there is one; a word of any length would run over the token.
fn printed(number: String) -> String {
    if number.is_empty() { "•".to_owned() } else { number }
}

/// A token. It stays while another player takes the place: a new batter is no new button.
#[component]
fn Token(
    /// Its class, which says where it lies.
    #[prop(into)]
    class: Signal<String>,
    /// What is printed on it and the name under it; without a player there is no token.
    who: Memo<Option<(String, String)>>,
    /// What it is called, with this name.
    label: Callback<String, String>,
    /// It is chosen.
    #[prop(into)]
    pressed: Signal<bool>,
    /// What is dragged with it.
    dragged: Dragged,
    /// When the ball came to this fielder.
    #[prop(optional)]
    order: Option<Memo<String>>,
    /// A tap.
    tap: Callback<()>,
) -> impl IntoView {
    let hand = Hand::get();
    let surface: Surface = expect_context();
    let printed = move || who.with(|who| who.as_ref().map(|(printed, _)| printed.clone()));
    let name = move || who.with(|who| who.as_ref().map(|(_, name)| name.clone()));
    view! {
        <Shown when=move || who.with(Option::is_some)>
            <button
                type="button"
                class=class
                aria-label=move || label.run(name().unwrap_or_default())
                data-touched=order.map(|order| move || (!order.with(String::is_empty)).to_string())
                aria-pressed=move || pressed.get().to_string()
                on:pointerdown=move |event| surface.down(hand, dragged, &event)
                on:pointermove=move |event| surface.moved(&event)
                on:pointerup=move |_| surface.up(hand)
                on:pointercancel=move |_| surface.drag.set(None)
                on:click=move |_| {
                    if surface.tapped() {
                        tap.run(());
                    }
                }
            >
                <b>{live(printed)}</b>
                <span class="name">{live(name)}</span>
                {order.map(|order| view! { <i class="order" aria-hidden="true">{order}</i> })}
            </button>
        </Shown>
    }
}

/// A fielder's token.
#[component]
fn Fielder(
    /// Where.
    position: Position,
) -> impl IntoView {
    let hand = Hand::get();
    let who = Memo::new(move |_| {
        let fielding = hand.situation.get().fielding();
        let name = hand.game(|game| {
            let player = game.lineup(fielding).and_then(|lineup| lineup.at(position));
            let machine = position == Position::Pitcher && !game.code().players_pitch;
            player.map(|id| token_name(game, id).0).or_else(|| machine.then(|| say!("plate-machine")))
        })?;
        Some((position.number().to_string(), name))
    });
    let order = Memo::new(move |_| {
        hand.gesture.with(|g| {
            let chain = g.chain().iter().enumerate().filter(|(_, p)| **p == position);
            chain.map(|(i, _)| (i + 1).to_string()).collect::<Vec<_>>().join(" ")
        })
    });
    let label = move |name: String| {
        say!("plate-fielder-label", number = position.number(), position = position.said(language()), name = name)
    };
    view! {
        <Token
            class=format!("token fielder at-{}", position.number())
            who=who
            label=Callback::new(label)
            pressed=move || hand.gesture.with(|g| *g == Gesture::People(Chosen::Fielder(position)))
            dragged=Dragged::Fielding(position)
            order=order
            tap=Callback::new(move |()| hand.fielder(position))
        />
    }
}

/// A runner's token, on a base.
#[component]
fn Runner(
    /// Where.
    base: Base,
) -> impl IntoView {
    let hand = Hand::get();
    let who = Memo::new(move |_| {
        let (name, number) = runner_on(hand, base)?;
        Some((printed(number), name))
    });
    let picked = move || {
        hand.gesture.with(|g| match g {
            Gesture::Runner { on, .. } | Gesture::Chase { on, .. } | Gesture::People(Chosen::Runner(on)) => *on == base,
            Gesture::Adjusting(draft) => draft.who == Some(base.into()),
            _ => false,
        })
    };
    view! {
        <Token
            class=format!("token runner on-{}", base.number())
            who=who
            label=Callback::new(move |name: String| say!("plate-runner-label", base = words::base(base), name = name))
            pressed=picked
            dragged=Dragged::Running(base.into())
            tap=Callback::new(move |()| hand.runner(base))
        />
    }
}

/// The batter's token, on their side of the plate.
#[component]
fn Batter() -> impl IntoView {
    let hand = Hand::get();
    let who = Memo::new(move |_| {
        let batter = hand.situation.get().batter?;
        let (name, number) = hand.game(|game| token_name(game, batter));
        Some((printed(number), name))
    });
    let left = Memo::new(move |_| {
        let batter = hand.situation.get().batter;
        hand.game(|game| batter.and_then(|id| game.player(id)).is_some_and(|(_, p)| p.bats == Some(Bats::Left)))
    });
    let picked = move || {
        hand.gesture.with(|g| match g {
            Gesture::People(Chosen::Batter) => true,
            Gesture::Adjusting(draft) => draft.who == Some(Start::Batter),
            _ => false,
        })
    };
    view! {
        <Token
            class=Signal::derive(move || if left.get() { "token batter bats-left" } else { "token batter" }.to_owned())
            who=who
            label=Callback::new(|name: String| say!("plate-batter-label", name = name))
            pressed=picked
            dragged=Dragged::Running(Start::Batter)
            tap=Callback::new(move |()| hand.batter())
        />
    }
}

/// What lies in the corners behind the plate: taking back, putting back, changing players, the umpire.
#[component]
fn Corners() -> impl IntoView {
    let hand = Hand::get();
    let people = move || hand.gesture.with(|g| matches!(g, Gesture::People(_)));
    let umpire = move || hand.gesture.with(|g| *g == Gesture::Umpire);
    let toggle = move |on: bool, to: Gesture| if on { hand.cancel() } else { hand.go(to) };
    view! {
        <button type="button" class="corner undo" on:click=move |_| hand.undo()>
            <span aria-hidden="true">"↶"</span>
            <small>{say!("plate-undo")}</small>
        </button>
        <button type="button" class="corner redo" on:click=move |_| hand.redo()>
            <span aria-hidden="true">"↷"</span>
            <small>{say!("plate-redo")}</small>
        </button>
        <button
            type="button"
            class="corner players"
            aria-pressed=move || people().to_string()
            on:click=move |_| toggle(people(), Gesture::People(Chosen::Nobody))
        >
            <span aria-hidden="true">"⇄"</span>
            <small>{say!("plate-players")}</small>
        </button>
        <button
            type="button"
            class="corner umpire"
            aria-pressed=move || umpire().to_string()
            on:click=move |_| toggle(umpire(), Gesture::Umpire)
        >
            <span aria-hidden="true">"⚖"</span>
            <small>{say!("plate-umpire")}</small>
        </button>
    }
}

/// The event whose arrows are drawn: the draft, or the first proposal for a ball in play.
pub fn shown_event(hand: Hand) -> Option<Event> {
    hand.gesture.with(|g| match g {
        Gesture::Adjusting(draft) => Some(draft.event.clone()),
        Gesture::Ball(_) | Gesture::Chase { .. } => hand.proposals.with(|list| list.first().map(|p| p.event.clone())),
        _ => None,
    })
}
