//! The batted ball of a play being amended: how it came off the bat, where it went, who handled it; and what usually
//! follows from that.

use benchbook_stats::field::Position;
use benchbook_stats::log::{Batted, Event, Trajectory};
use benchbook_stats::propose::{Proposal, Seen, in_play, is_beyond_fence, is_fair, usual_spot};
use leptos::html;
use leptos::prelude::*;

use super::super::charts::field;
use super::pick::{Chain, Pick};
use super::play::Draft;
use crate::live::{Shown, live};
use crate::places::plate::{telling, words as plate};
use crate::words::say;

/// How a ball can come off the bat, with the value of its choice.
const TRAJECTORIES: [(&str, Trajectory); 5] = [
    ("ground", Trajectory::Ground),
    ("line", Trajectory::Line),
    ("fly", Trajectory::Fly),
    ("pop", Trajectory::Pop),
    ("bunt", Trajectory::Bunt),
];

/// The ball.
#[component]
pub fn Ball(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let trajectory = Signal::derive(move || {
        let now = of(draft, |ball| ball.trajectory);
        TRAJECTORIES.iter().find(|(_, t)| Some(*t) == now).map(|(value, _)| (*value).to_owned()).unwrap_or_default()
    });
    let options = TRAJECTORIES.map(|(value, t)| (value.to_owned(), plate::trajectory(t))).to_vec();
    let pick = Callback::new(move |value: String| {
        if let Some((_, trajectory)) = TRAJECTORIES.iter().find(|(v, _)| *v == value) {
            change(draft, |ball| ball.trajectory = *trajectory);
        }
    });
    let chain = Signal::derive(move || draft.chain());
    let set = Callback::new(move |by: Vec<Position>| handled(draft, &by));
    view! {
        <h3>{say!("book-amend-ball")}</h3>
        <Pick label=say!("book-amend-trajectory") options=options value=trajectory pick=pick/>
        <Chain label=say!("book-amend-handled") fielders=draft.fielders() chain=chain set=set/>
        <Where draft=draft/>
        <Usual draft=draft/>
    }
}

fn of<T>(draft: Draft, read: impl FnOnce(&Batted) -> T) -> Option<T> {
    draft.event.with(|event| match event {
        Event::InPlay(play) => Some(read(&play.ball)),
        _ => None,
    })
}

fn change(draft: Draft, change: impl FnOnce(&mut Batted)) {
    draft.event.update(|event| {
        if let Event::InPlay(play) = event {
            change(&mut play.ball);
        }
    });
}

/// Others handled the ball. An out that the same fielders made is theirs too; a ball that lay at the post of the first
/// goes with the ball to the new one's.
fn handled(draft: Draft, by: &[Position]) {
    draft.event.update(|event| {
        let Event::InPlay(play) = event else { return };
        let was = core::mem::replace(&mut play.ball.fielders, by.to_vec());
        for out in play.action.moves.iter_mut().filter_map(|m| m.out.as_mut()).filter(|out| out.by == was) {
            out.by = by.to_vec();
        }
        let at_post = was.first().is_none_or(|first| play.ball.spot == Some(usual_spot(*first)));
        if at_post && let Some(first) = by.first() {
            play.ball.spot = Some(usual_spot(*first));
        }
    });
}

/// Where it went: a point of the field to touch.
#[component]
fn Where(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let svg: NodeRef<html::Div> = NodeRef::new();
    let drawing = move || field::drawn() + &of(draft, |ball| ball.spot).flatten().map(field::pin).unwrap_or_default();
    let touch = move |event: web_sys::MouseEvent| {
        let Some(field) = svg.get_untracked() else { return };
        let frame = field.get_bounding_client_rect();
        let across = (f64::from(event.client_x()) - frame.left()) / frame.width();
        let down = (f64::from(event.client_y()) - frame.top()) / frame.height();
        let spot = field::spot_under(across, down);
        change(draft, |ball| {
            ball.spot = Some(spot);
            ball.foul &= !is_fair(spot);
            ball.left_park &= is_fair(spot) && is_beyond_fence(spot);
        });
    };
    view! {
        <details class="where">
            <summary>{say!("book-amend-where")}</summary>
            <p class="soft small">{say!("book-amend-where-hint")}</p>
            <div node_ref=svg on:click=touch>
                <svg class="field" viewBox=field::view_box() aria-hidden="true" inner_html=drawing></svg>
            </div>
        </details>
    }
}

/// What the rules and custom usually make of such a ball, each to be taken whole.
#[component]
fn Usual(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let s = draft.situation();
    let proposals = Memo::new(move |_| usual(draft));
    let button = move |proposal: Proposal| {
        let text = draft.before(|game| {
            let headline = telling::headline(game, &s, &proposal.outcome, &proposal.event);
            let running = telling::running(game, &s, &proposal.outcome, &proposal.event);
            if running.is_empty() { headline } else { format!("{headline}: {running}") }
        });
        view! { <button type="button" on:click=move |_| take(draft, &proposal.event)>{text}</button> }
    };
    view! {
        <Shown when=move || proposals.with(|p| !p.is_empty())>
            <details class="usual-ends">
                <summary>{say!("book-amend-usual")}</summary>
                <div class="chips">{live(move || proposals.get().into_iter().map(button).collect_view())}</div>
            </details>
        </Shown>
    }
}

fn usual(draft: Draft) -> Vec<Proposal> {
    let Some(ball) = of(draft, Batted::clone) else { return Vec::new() };
    let seen = |landed: bool| Seen {
        spot: ball.spot,
        landed,
        fielders: ball.fielders.clone(),
        trajectory: Some(ball.trajectory),
        foul: ball.foul,
    };
    draft.before(|game| {
        let mut all = in_play(game, &seen(false));
        for proposal in in_play(game, &seen(true)) {
            if all.iter().all(|p| p.event != proposal.event) {
                all.push(proposal);
            }
        }
        all
    })
}

/// Takes a proposal, with what was noted of the pitch.
fn take(draft: Draft, proposed: &Event) {
    draft.event.update(|event| {
        if let (Event::InPlay(now), Event::InPlay(new)) = (event, proposed) {
            now.ball = new.ball.clone();
            now.action = new.action.clone();
        }
    });
}
