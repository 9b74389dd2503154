//! Entries that can't follow from a game as it stands, each refused by a rule of play.

use benchbook_stats::field::{Base, Count, Position, Side};
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::log::{
    Action, Attempt, Batted, Call, Cause, EntryId, Event, How, InPlay, Judgment, Leg, Move, Out, Pitch, Running, Start,
    Status, Trajectory, Unseen, UnseenResult,
};
use benchbook_stats::team::{Assignment, Card, Change, Player, PlayerId, Role};

use super::Dice;
use super::scene::RUNNERS;

/// An entry that must be refused, whatever the moment; with the first word of the refusals that fit.
pub fn entry(game: &Game, dice: &mut Dice) -> (Event, &'static [&'static str]) {
    match game.situation().phase {
        Phase::Before => before(dice),
        Phase::Delayed | Phase::Suspended => stopped(dice),
        Phase::Over(_) => over(game, dice),
        Phase::Underway => loop {
            if let Some(wrong) = underway(game, dice) {
                return wrong;
            }
        },
    }
}

type Wrong = (Event, &'static [&'static str]);

fn ball() -> Event {
    Event::Pitch(Pitch::new(Call::Ball))
}

fn nobody() -> PlayerId {
    PlayerId(9999)
}

fn before(dice: &mut Dice) -> Wrong {
    let unknown = Card { order: vec![Assignment::new(nobody(), Position::Pitcher)], fielding_only: Vec::new() };
    match dice.below(7) {
        0 => (ball(), &["NotBegun"]),
        1 => (Event::IntentionalWalk, &["NotBegun", "NoWalks"]),
        2 => (Event::Card { side: Side::Home, card: unknown }, &["UnknownPlayer"]),
        3 => (Event::Card { side: Side::Home, card: Card::default() }, &["CardEmpty"]),
        4 => (Event::Status(Status::Resumed), &["NotStopped"]),
        5 => (Event::Status(Status::Final), &["NotBegun"]),
        _ => (Event::Retract { entry: EntryId(u32::MAX) }, &["NoSuchEntry"]),
    }
}

fn stopped(dice: &mut Dice) -> Wrong {
    match dice.below(5) {
        0 => (ball(), &["Stopped"]),
        1 => (Event::EndHalf { why: String::new() }, &["Stopped"]),
        2 => (Event::EmptyPlace, &["Stopped"]),
        3 => (Event::OutOfTurnAppeal, &["Stopped", "NothingToAppeal"]),
        _ => (Event::PlayBall, &["GameHasBegun"]),
    }
}

fn over(game: &Game, dice: &mut Dice) -> Wrong {
    let change = Change::Leave { player: nobody() };
    match dice.below(5) {
        0 => (ball(), &["GameOver"]),
        1 => (Event::Status(Status::Delayed { why: String::new() }), &["GameOver"]),
        2 => (Event::Change { side: Side::Home, change }, &["GameOver"]),
        3 => (Event::Status(Status::Resumed), &["NotStopped"]),
        _ => (Event::Rules(Box::new(game.code().clone())), &["GameHasBegun"]),
    }
}

fn run(moves: Vec<Move>) -> Event {
    Event::Running(Running { action: Action { moves, misplays: Vec::new() }, same_play: false })
}

fn batted(moves: Vec<Move>) -> Event {
    Event::InPlay(InPlay {
        ball: Batted {
            trajectory: Trajectory::Ground,
            spot: None,
            fielders: Vec::new(),
            foul: false,
            left_park: false,
            infield_fly: false,
        },
        action: Action { moves, misplays: Vec::new() },
        kind: None,
        speed: None,
        pitches_missed: false,
    })
}

fn tag(from: Start, at: Base) -> Move {
    Move::out(from, Out { attempt: Some(Attempt::Advance), ..Out::new(How::Tag, at, &[]) })
}

fn underway(game: &Game, dice: &mut Dice) -> Option<Wrong> {
    if dice.percent(45) { plays(game, dice) } else { others(game, dice) }
}

fn plays(game: &Game, dice: &mut Dice) -> Option<Wrong> {
    let s = game.situation();
    // Whoever mends the lineup first is refused nothing else.
    let lineup = game.lineup(s.fielding())?;
    if lineup.clash().is_some() || s.batter.is_none() || (game.code().players_pitch && s.pitcher.is_none()) {
        return Some((ball(), &["TwoAtPosition", "NobodyAtPlate", "NoPitcher"]));
    }
    let runners: Vec<Start> = RUNNERS.into_iter().filter(|r| s.at(*r).is_some()).collect();
    let absent = RUNNERS.into_iter().find(|r| s.at(*r).is_none());
    let next = |r: Start| Base::from_number(r.number() + 1);
    let who = if runners.is_empty() { None } else { Some(dice.pick(&runners)) };
    Some(match dice.below(17) {
        0 => (run(vec![Move::safe(absent?, Base::Home, Cause::WildPitch)]), &["EmptyBase"]),
        1 => (run(vec![Move::safe(Start::Batter, Base::First, Cause::WildPitch)]), &["BatterDoesNotRun"]),
        2 => (run(Vec::new()), &["NothingHappened"]),
        3 => (run(vec![Move { from: who?, legs: Vec::new(), out: None }]), &["EmptyMove"]),
        4 => {
            let back = Base::from_number(who?.number())?;
            (run(vec![Move::safe(who?, back, Cause::WildPitch)]), &["Backwards"])
        }
        5 => (run(vec![tag(who?, Base::Home), tag(who?, Base::Home)]), &["MovedTwice", "TooManyOuts"]),
        6 => {
            let legs = vec![Leg { to: next(who?)?, cause: Cause::Error(3) }];
            (run(vec![Move { from: who?, legs, out: None }]), &["NoSuchMisplay"])
        }
        7 => {
            let (behind, ahead) = (*runners.first()?, *runners.get(1)?);
            let to = Base::from_number(ahead.number())?;
            (run(vec![Move::safe(behind, to, Cause::WildPitch)]), &["TwoOnBase"])
        }
        8 => {
            let (behind, ahead) = (*runners.first()?, *runners.get(1)?);
            let to = Base::from_number(ahead.number() + 1)?;
            let event = run(vec![Move::safe(behind, to, Cause::WildPitch)]);
            (event, &["Passing"])
        }
        9 => {
            let mut moves = vec![tag(Start::Batter, Base::First)];
            moves.extend(runners.iter().filter_map(|r| Some(tag(*r, next(*r)?))));
            if usize::from(s.outs) + moves.len() <= 3 {
                return None;
            }
            (batted(moves), &["TooManyOuts"])
        }
        10 => (batted(Vec::new()), &["BatterMustMove"]),
        11 => {
            let absent = Position::ALL.into_iter().skip(1).find(|p| lineup.at(*p).is_none())?;
            let out = Out::new(How::Fly, Base::First, &[absent]);
            (batted(vec![Move::out(Start::Batter, out)]), &["NobodyAt"])
        }
        12 if !game.code().stealing => {
            (run(vec![Move::safe(*runners.last()?, next(*runners.last()?)?, Cause::Steal)]), &["NoStealing"])
        }
        13 => {
            s.on(Base::First)?;
            let free = s.on(Base::Second).is_none() && s.outs < 2;
            let unseen = Unseen {
                result: UnseenResult::StrikeoutSwinging,
                action: Action {
                    moves: vec![
                        Move::safe(Start::First, Base::Second, Cause::WildPitch),
                        Move::safe(Start::Batter, Base::First, Cause::WildPitch),
                    ],
                    misplays: Vec::new(),
                },
            };
            free.then_some(())?;
            (Event::Unseen(unseen), &["BatterCannotRun"])
        }
        14 if game.code().balls_for_walk.is_none() => (Event::IntentionalWalk, &["NoWalks"]),
        14 => (Event::SetCount(Count::new(0, game.code().strikes_for_out)), &["ImpossibleCount"]),
        15 => {
            let call = dice.pick(&[Call::Foul, Call::FoulBunt]);
            let action = Action { moves: vec![Move::safe(who?, next(who?)?, Cause::WildPitch)], misplays: Vec::new() };
            (Event::Pitch(Pitch { action, ..Pitch::new(call) }), &["DeadBall"])
        }
        _ if game.code().balls_for_walk.is_none() => {
            (Event::Unseen(Unseen { result: UnseenResult::Walk, action: Action::default() }), &["NoWalks"])
        }
        _ => (Event::SetCount(Count::new(game.code().balls_for_walk?, 0)), &["ImpossibleCount"]),
    })
}

fn others(game: &Game, dice: &mut Dice) -> Option<Wrong> {
    let s = game.situation();
    let (bat, field) = (s.batting(), s.fielding());
    let substitute = |side, outgoing, incoming, role| Event::Change {
        side,
        change: Change::Substitute { outgoing, incoming, role },
    };
    let runner = s.runners().next().map(|(_, r)| r.player);
    let starter = game.lineup(field)?.everyone().next()?.player;
    let bench = game.roster(bat).map(|p| p.id).find(|p| !game.lineup(bat).is_some_and(|l| l.contains(*p)))?;
    let on_field_bench =
        game.roster(field).map(|p| p.id).find(|p| !game.lineup(field).is_some_and(|l| l.contains(*p)))?;
    Some(match dice.below(20) {
        0 => (Event::PlayBall, &["GameHasBegun"]),
        1 => (Event::Rules(Box::new(game.code().clone())), &["GameHasBegun"]),
        2 => (Event::Card { side: bat, card: Card::default() }, &["GameHasBegun"]),
        3 => (Event::Status(Status::Resumed), &["NotStopped"]),
        4 => (Event::BatterUp { player: nobody() }, &["NotInGame", "TwoAtPosition", "NobodyAtPlate", "NoPitcher"]),
        5 => (
            Event::BatterUp { player: runner? },
            &["BatterOnBase", "NotInGame", "TwoAtPosition", "NobodyAtPlate", "NoPitcher"],
        ),
        6 => (Event::PlaceRunner { base: Base::Home, player: bench }, &["NotABase"]),
        7 => {
            let (base, _) = s.runners().next()?;
            (Event::PlaceRunner { base, player: bench }, &["BaseTaken"])
        }
        8 => (Event::PlaceRunner { base: Base::First, player: nobody() }, &["UnknownPlayer"]),
        9 => (substitute(field, starter, on_field_bench, Role::PinchHitter), &["NotAtBat"]),
        10 => (substitute(field, starter, on_field_bench, Role::PinchRunner), &["NotOnBase"]),
        11 => (substitute(bat, runner?, bench, Role::PinchHitter), &["NotTheBatter"]),
        12 if !game.code().courtesy_runner => {
            (substitute(bat, runner?, bench, Role::CourtesyRunner), &["NoCourtesyRunner"])
        }
        13 if !game.code().continuous_order => (
            Event::Change { side: bat, change: Change::Join(Assignment::new(bench, Position::Catcher)) },
            &["OrderIsClosed"],
        ),
        14 => (substitute(field, starter, nobody(), Role::Fielder(Position::Catcher.into())), &["UnknownPlayer"]),
        15 => {
            let other = game.lineup(field)?.everyone().nth(1)?.player;
            (substitute(field, starter, other, Role::Fielder(Position::Catcher.into())), &["AlreadyInGame"])
        }
        16 => (Event::Change { side: field, change: Change::Leave { player: nobody() } }, &["NotInGame"]),
        17 => {
            let id = game.steps().iter().find(|step| step.play.is_none())?.entry;
            (Event::Judgment(Judgment::BuntedForHit { on: id, yes: true }), &["NotAPlay"])
        }
        18 => {
            let nested = Event::Replace { entry: EntryId(1), event: Box::new(Event::Retract { entry: EntryId(1) }) };
            (nested, &["CorrectionInCorrection"])
        }
        _ => {
            let other = game.roster(field).next()?.id;
            (Event::Player { side: bat, player: Player::unnamed(other) }, &["OtherSidesPlayer"])
        }
    })
}
