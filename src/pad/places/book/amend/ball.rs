//! The batted ball of a play being amended: how it came off the bat, where it went, who handled it.

use benchbook_stats::field::Position;
use benchbook_stats::log::{Batted, Event, Trajectory};
use benchbook_stats::propose::usual_spot;
use leptos::prelude::*;

use super::draft::Draft;
use super::pick::{Chain, Pick};
use super::place::Where;
use crate::places::plate::words as plate;
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
