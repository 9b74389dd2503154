//! What could have happened at a moment, of every kind: for an entry that was put in as something else, or forgotten.
//! Each event named here can follow; how one is said, and in which order one looks for it, is the view's matter.

use super::ends::ATTEMPTS;
use super::{Outcome, Proposal, Seen, chased, in_play, is_on_pitch, on_runner, strike_three_got_away, usual_chase};
use crate::field::{Base, Count, Position};
use crate::game::{Game, Phase};
use crate::log::{Action, Attempt, Call, Event, Pitch, Start, Unseen, UnseenResult};
use crate::team::{Lineup, PlayerId};

/// Pitches not put in play, the more frequent first.
pub fn pitches(at: &Game) -> Vec<Call> {
    let calls = Call::COMMON.into_iter().chain(Call::RARE);
    calls.filter(|call| at.could_follow(&Event::Pitch(Pitch::new(*call)))).collect()
}

/// Ends of the turn at the plate without a pitch to go with them.
pub fn turns(at: &Game) -> Vec<Event> {
    let all = UnseenResult::ALL.into_iter().map(|result| match result {
        UnseenResult::IntentionalWalk => Event::IntentionalWalk, // there were no pitches to miss
        result => Event::Unseen(Unseen { result, action: Action::default() }),
    });
    let all = all.chain([Event::EmptyPlace]);
    all.filter(|event| at.could_follow(event)).collect()
}

/// Fielders to whom a ball can have been hit; none if no ball can be put in play now.
pub fn fielders(at: &Game) -> Vec<Position> {
    let s = at.situation();
    let can_hit = s.phase == Phase::Underway && s.batter.is_some();
    let there = |position: &Position| {
        let nobody_pitches = *position == Position::Pitcher && !at.code().players_pitch;
        nobody_pitches || at.lineup(s.fielding()).is_some_and(|lineup| lineup.at(*position).is_some())
    };
    Position::ALL.into_iter().filter(|p| can_hit && there(p) && hit_to(at, *p).is_some()).collect()
}

/// What usually comes of a ball hit to a fielder, with nothing else known of it.
pub fn hit_to(at: &Game, position: Position) -> Option<Event> {
    let seen = Seen { fielders: vec![position], ..Seen::default() };
    let mut usual = in_play(at, &seen).into_iter().map(|proposal| proposal.event);
    usual.find(|event| at.could_follow(event))
}

/// What runners can have done without a batted ball.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OnBases {
    /// Each by themselves, the lead runner first.
    pub each: Vec<(Base, Vec<Proposal>)>,
    /// All of them at once.
    pub everybody: Vec<Proposal>,
}

/// What runners can have done.
pub fn on_bases(at: &Game) -> OnBases {
    let same_play = is_on_pitch(at);
    let mut possible = OnBases::default();
    for (base, _) in at.situation().runners().rev() {
        let mut list = on_runner(at, base, same_play);
        list.extend(ATTEMPTS.into_iter().filter_map(|attempt| {
            let on_pitch = same_play && attempt != Attempt::Pickoff;
            chased(at, base, attempt, &usual_chase(base, attempt), on_pitch).into_iter().next()
        }));
        list.retain(|proposal| at.could_follow(&proposal.event));
        let (everybody, own) = list.into_iter().partition(|proposal| is_of_everybody(&proposal.outcome));
        possible.everybody = everybody;
        possible.each.push((base, own));
    }
    possible
}

/// All at once: the same of whichever runner it is asked.
const fn is_of_everybody(outcome: &Outcome) -> bool {
    matches!(
        outcome,
        Outcome::StealTogether | Outcome::WildPitch | Outcome::PassedBall | Outcome::Balk | Outcome::IllegalPitch
    )
}

/// Counts the umpire can give, another one than there is.
pub fn counts(at: &Game) -> Vec<Count> {
    let code = at.code();
    let balls = 0..code.balls_for_walk.unwrap_or(1);
    let all = balls.flat_map(|balls| (0..code.strikes_for_out).map(move |strikes| Count::new(balls, strikes)));
    let fits = |count: &Count| *count != at.situation().count && at.could_follow(&Event::SetCount(*count));
    all.filter(fits).collect()
}

/// Those who can have been at the plate though it was another's turn.
pub fn out_of_turn(at: &Game) -> Vec<PlayerId> {
    let fits = |player: &PlayerId| at.could_follow(&Event::BatterUp { player: *player });
    order(at).filter(|player| Some(*player) != at.situation().batter).filter(fits).collect()
}

/// Those who can be put on `base` by rule, whoever bats last before the batter first.
pub fn placed_on(at: &Game, base: Base) -> Vec<PlayerId> {
    let mut order: Vec<PlayerId> = order(at).collect();
    if let Some(up) = order.iter().position(|player| Some(*player) == at.situation().batter) {
        order.rotate_left(up);
    }
    order.reverse();
    order.retain(|player| at.could_follow(&Event::PlaceRunner { base, player: *player }));
    order
}

/// What else the umpire can declare in the course of a game.
pub fn declared(at: &Game) -> Vec<Event> {
    let all = [Event::OutOfTurnAppeal, Event::EndHalf { why: String::new() }];
    all.into_iter().filter(|event| at.could_follow(event)).collect()
}

fn order(at: &Game) -> impl Iterator<Item = PlayerId> + '_ {
    at.lineup(at.situation().batting()).into_iter().flat_map(Lineup::batting_order).filter_map(|(_, player, _)| player)
}

/// What usually follows from what an event already says: the outcomes of the same ball, of the same strike three, of the
/// same runner's way.
pub fn usual(at: &Game, event: &Event) -> Vec<Proposal> {
    let mut list = match event {
        Event::InPlay(play) => {
            let ball = &play.ball;
            let seen = |landed: bool| Seen {
                spot: ball.spot,
                landed,
                fielders: ball.fielders.clone(),
                trajectory: Some(ball.trajectory),
                foul: ball.foul,
            };
            let mut list = in_play(at, &seen(false));
            list.extend(in_play(at, &seen(true)));
            list
        }
        Event::Pitch(pitch) => strike_three(at, pitch),
        Event::Running(running) => {
            let Some(m) = running.action.moves.iter().min_by_key(|m| m.from) else { return Vec::new() };
            let Some(base) = m.from.base() else { return Vec::new() };
            let mut list = on_runner(at, base, running.same_play);
            let thrown = m.out.as_ref().and_then(|out| Some((out.attempt?, out.by.clone())));
            for attempt in ATTEMPTS {
                let by = match &thrown {
                    Some((now, by)) if *now == attempt => by.clone(),
                    _ => usual_chase(base, attempt),
                };
                list.extend(chased(at, base, attempt, &by, running.same_play && attempt != Attempt::Pickoff));
            }
            list
        }
        _ => Vec::new(),
    };
    let mut seen: Vec<Event> = Vec::new();
    list.retain(|proposal| {
        let fresh = !seen.contains(&proposal.event) && at.could_follow(&proposal.event);
        seen.push(proposal.event.clone());
        fresh
    });
    list
}

/// What else may have come of a pitch that was strike three.
fn strike_three(at: &Game, pitch: &Pitch) -> Vec<Proposal> {
    let plain = Event::Pitch(Pitch { action: Action::default(), ..pitch.clone() });
    let Ok(struck_out) = at.preview(plain) else { return Vec::new() };
    let instead = |proposal: Proposal| match proposal.event {
        Event::Replace { event, .. } => Proposal { outcome: proposal.outcome, event: *event },
        event => Proposal { outcome: proposal.outcome, event },
    };
    strike_three_got_away(&struck_out).into_iter().map(instead).collect()
}

/// `now` with what was noted of `was` and still holds: kind and speed of the pitch, what runners did on it, whether pitches
/// were missed before.
pub fn with_notes(at: &Game, was: &Event, mut now: Event) -> Event {
    let noted = match was {
        Event::Pitch(pitch) => (pitch.kind, pitch.speed),
        Event::InPlay(play) => (play.kind, play.speed),
        _ => (None, None),
    };
    match &mut now {
        Event::Pitch(pitch) => {
            (pitch.kind, pitch.speed) = noted;
            if let Event::Pitch(before) = was
                && pitch.action.is_empty()
                && before.action.moves.iter().all(|m| m.from != Start::Batter)
            {
                let running = Event::Pitch(Pitch { action: before.action.clone(), ..pitch.clone() });
                if at.could_follow(&running) {
                    return running;
                }
            }
        }
        Event::InPlay(play) => {
            (play.kind, play.speed) = noted;
            play.pitches_missed = matches!(was, Event::InPlay(before) if before.pitches_missed);
        }
        _ => {}
    }
    now
}

/// More can be said of such an event than that it happened: a ball, a runner, a catch not held.
pub fn is_open(at: &Game, event: &Event) -> bool {
    let Some(action) = event.action() else { return false };
    event.is_batted() || !action.is_empty() || at.situation().runners().next().is_some() || !usual(at, event).is_empty()
}
