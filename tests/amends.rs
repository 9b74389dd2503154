//! Anything amended into anything: what is offered for a moment can follow there; amended and amended back, put in and
//! taken out, the book is what it was; what is refused changes nothing.

use benchbook_stats::account::Account;
use benchbook_stats::account::compare::compare;
use benchbook_stats::field::Base::{self, First, Second};
use benchbook_stats::field::Side;
use benchbook_stats::game::{Game, Refusal, Slot};
use benchbook_stats::log::{Action, Call, Cause, Entry, EntryId, Event, Pitch, Running, Start, Unseen, UnseenResult};
use benchbook_stats::propose::{self, Outcome, possible};
use benchbook_stats::team::{Change, Lineup, PlayerId};
use benchbook_tests::generate::Scribe;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::scorer::{Scorer, by};

fn record(game: &mut Game, event: Event) {
    let id = game.next_id();
    game.record(Entry { id, at: None, event }).expect("it fits");
}

fn harbor() -> Game {
    let text = include_str!("games/harbor-league.benchbook.json");
    Game::replay(benchbook_stats::file::read(text).expect("the game file reads").log)
}

/// Everything offered for a moment.
fn everything(at: &Game) -> Vec<Event> {
    let mut all: Vec<Event> = possible::pitches(at).into_iter().map(|call| Event::Pitch(Pitch::new(call))).collect();
    all.extend(possible::turns(at));
    all.extend(possible::fielders(at).into_iter().filter_map(|position| possible::hit_to(at, position)));
    let bases = possible::on_bases(at);
    let runners = bases.each.into_iter().flat_map(|(_, list)| list).chain(bases.everybody);
    all.extend(runners.map(|proposal| proposal.event));
    all.extend(possible::counts(at).into_iter().map(Event::SetCount));
    all.extend(possible::out_of_turn(at).into_iter().map(|player| Event::BatterUp { player }));
    for base in Base::STANDING {
        all.extend(possible::placed_on(at, base).into_iter().map(|player| Event::PlaceRunner { base, player }));
    }
    all.extend(possible::declared(at));
    for side in Side::BOTH {
        let players: Vec<PlayerId> = at.lineup(side).into_iter().flat_map(Lineup::everyone).map(|a| a.player).collect();
        let changes = players.into_iter().flat_map(|player| propose::changes(at, side, player));
        all.extend(changes.map(|change| Event::Change { side, change }));
    }
    all
}

/// What the game says, entry by entry: the log as it counts.
fn said(game: &Game) -> Vec<(EntryId, Event)> {
    game.steps().iter().map(|step| (step.entry, game.event(step).clone())).collect()
}

fn same_book(one: &Game, two: &Game) {
    assert_eq!(said(one), said(two));
    assert_eq!(one.situation(), two.situation());
    assert!(one.box_score() == two.box_score() && one.line_score() == two.line_score());
    assert!(one.conflicts().eq(two.conflicts()));
}

/// Entries of the course of the game.
fn entries(game: &Game) -> Vec<EntryId> {
    let begun = game.steps().iter().skip_while(|step| *game.event(step) != Event::PlayBall).skip(1);
    begun.map(|step| step.entry).collect()
}

/// One in so many of the offers, another one at each entry.
fn some(all: Vec<Event>, entry: EntryId, of: usize) -> impl Iterator<Item = Event> {
    all.into_iter().skip(entry.0 as usize % of).step_by(of)
}

/// Tries a part of what is offered for every `step`th entry; gives how many it tried.
fn there_and_back(game: &Game, step: usize, of: usize) -> usize {
    let mut tried = 0;
    for entry in entries(game).into_iter().step_by(step) {
        let at = game.at(Slot::Of(entry)).expect("it is in the game");
        let now = game.steps().iter().find(|step| step.entry == entry).expect("it is in the game");
        let was = game.event(now).clone();
        for event in some(everything(&at), entry, of) {
            let event = possible::with_notes(&at, &was, event);
            for slot in [Slot::Of(entry), Slot::Before(entry)] {
                let mut amended = game.clone();
                let stands = slot.entry(&amended);
                record(&mut amended, slot.says(event.clone()));
                let conflict = amended.conflicts().find(|(id, _)| *id == stands);
                assert!(conflict.is_none(), "{event:?} at {entry:?}: {conflict:?}");
                assert_eq!(game.why_not(slot, &event), None);
                let back = match slot {
                    Slot::Of(_) => Event::Replace { entry, event: Box::new(was.clone()) },
                    _ => Event::Retract { entry: stands },
                };
                record(&mut amended, back);
                same_book(game, &amended);
                tried += 1;
            }
        }
    }
    tried
}

#[test]
fn amended_into_anything_and_back_it_is_the_same_book() {
    let tried = there_and_back(&harbor(), 7, 13);
    assert!(tried > 200, "{tried}");
}

#[test]
fn so_it_is_in_any_game() {
    over((games(10) / 100).max(8), |plan| {
        let mut scribe = Scribe::new(plan);
        while scribe.step() {}
        there_and_back(scribe.game(), 41, 29);
    });
}

#[test]
fn what_is_taken_out_and_put_back_was_never_out() {
    let game = harbor();
    for entry in entries(&game).into_iter().step_by(7) {
        let mut amended = game.clone();
        record(&mut amended, Event::Retract { entry });
        record(&mut amended, Event::Reinstate { entry });
        same_book(&game, &amended);
    }
}

#[test]
fn a_ball_in_play_that_was_strike_three() {
    // Ground-out on a 0-2 pitch: it was a swing and a miss, and the putout is the catcher's.
    let mut book = Scorer::nine();
    let strike = || Event::Pitch(Pitch::new(Call::SwingingStrike));
    book.record(strike()).record(strike()).ground_out(&[]);
    let entry = book.last();
    book.single(&[]);
    let before = book.game().clone();
    let at = before.at(Slot::Of(entry)).unwrap();
    assert!(possible::pitches(&at).contains(&Call::SwingingStrike));
    let mut game = before.clone();
    record(&mut game, Slot::Of(entry).says(strike()));
    assert_eq!(game.conflicts().count(), 0);
    let difference = compare(&before, &game);
    assert!(difference.shift.is_none(), "the turn ends where it did");
    let batter = game.box_score().side(Side::Visitors).batting[0].clone();
    assert_eq!((batter.at_bats, batter.strikeouts), (1, 1));
}

#[test]
fn a_turn_that_no_longer_ends_shifts_the_batters_and_it_is_said() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let single = book.last();
    book.record(Event::Pitch(Pitch::new(Call::Ball)));
    let first = book.last();
    book.fly_out(&[]);
    let difference = |event: Event| {
        let after = book.game().preview(Slot::Of(single).says(event)).unwrap();
        compare(book.game(), &after).shift
    };
    let shift = difference(Event::Pitch(Pitch::new(Call::Foul))).expect("the turn goes on");
    assert_eq!((shift.entry, shift.plays, shift.was, shift.now), (first, 2, PlayerId(2), PlayerId(1)));
    // The result alone ends the turn as well: nobody shifts.
    let struck_out = UnseenResult::StrikeoutSwinging;
    assert_eq!(difference(Event::Unseen(Unseen { result: struck_out, action: Action::default() })), None);
}

#[test]
fn a_steal_that_was_a_wild_pitch() {
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::Steal)]);
    let entry = book.last();
    let event = book.game().event(book.game().steps().last().unwrap()).clone();
    let at = book.game().at(Slot::Of(entry)).unwrap();
    let usual = possible::usual(&at, &event);
    let wild = usual.iter().find(|p| p.outcome == Outcome::WildPitch).expect("it is offered");
    let caught = |p: &&propose::Proposal| matches!(p.outcome, Outcome::OutOnBases { at: Second, .. });
    assert!(usual.iter().any(|p| caught(&p)), "caught stealing is offered too");
    let mut game = book.game().clone();
    record(&mut game, Slot::Of(entry).says(wild.event.clone()));
    let score = game.box_score();
    assert_eq!(score.side(Side::Visitors).batting[0].stolen_bases, 0);
    assert_eq!(score.side(Side::Home).pitching[0].wild_pitches, 1);
    assert!(game.situation().on(Second).is_some());
}

#[test]
fn strike_three_that_got_away_is_offered_for_the_moment_it_was_thrown() {
    let mut book = Scorer::nine();
    let strike = || Event::Pitch(Pitch::new(Call::SwingingStrike));
    book.record(strike()).record(strike()).record(strike());
    let entry = book.last();
    book.single(&[]);
    let at = book.game().at(Slot::Of(entry)).unwrap();
    let usual = possible::usual(&at, &strike());
    assert!(possible::is_open(&at, &strike()));
    assert!(usual.iter().all(|p| matches!(p.event, Event::Pitch(_))), "each says the pitch anew");
    assert!(usual.iter().any(|p| p.event.action().unwrap().moves.iter().any(|m| m.from == Start::Batter)));
    let first = Event::Pitch(Pitch::new(Call::SwingingStrike));
    let earlier = book.game().at(Slot::Of(EntryId(entry.0 - 1))).unwrap();
    assert_eq!(possible::usual(&earlier, &first), [], "strike two does not get away");
}

#[test]
fn a_forgotten_entry_stands_where_it_is_put() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let single = book.last();
    book.fly_out(&[]);
    let fly = book.last();
    let slot = Slot::after(book.game(), single);
    assert_eq!(slot, Slot::Before(fly));
    assert_eq!(Slot::after(book.game(), fly), Slot::Now);
    let mut game = book.game().clone();
    let stands = slot.entry(&game);
    let steal = possible::on_bases(&game.at(slot).unwrap()).each[0].1[0].event.clone();
    record(&mut game, slot.says(steal));
    let order: Vec<EntryId> = game.steps().iter().rev().take(3).map(|step| step.entry).collect();
    assert_eq!(order, [fly, stands, single]);
    assert_eq!(game.box_score().side(Side::Visitors).batting[0].stolen_bases, 1);
    assert!(Account::of(&game).line(stands).is_some_and(|line| line.entry == stands));
}

#[test]
fn a_change_of_fielders_forgotten_before_a_play_moves_the_credit() {
    let mut book = Scorer::nine();
    book.ground_out(&[]);
    let out = book.last();
    let at = book.game().at(Slot::Before(out)).unwrap();
    let short =
        at.lineup(Side::Home).unwrap().everyone().find(|a| a.post.position().is_some_and(|p| p.number() == 6)).unwrap();
    let changes = propose::changes(&at, Side::Home, short.player);
    let comes_in = |c: &&Change| matches!(c, Change::Substitute { .. });
    let change = changes.iter().find(comes_in).expect("somebody is on the bench").clone();
    let Change::Substitute { incoming, .. } = change else { unreachable!() };
    let mut game = book.game().clone();
    record(&mut game, Slot::Before(out).says(Event::Change { side: Side::Home, change }));
    let fielding = game.box_score().side(Side::Home).fielding.clone();
    assert!(fielding.iter().any(|line| line.player == Some(incoming) && line.assists == 1));
}

#[test]
fn what_cannot_follow_is_refused_and_nothing_is_changed() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let single = book.last();
    book.fly_out(&[]);
    let game = book.game().clone();
    // Nobody is on base before the first single.
    let steal = Event::Running(Running {
        action: Action { moves: vec![by(First, Second, Cause::Steal)], misplays: Vec::new() },
        same_play: false,
    });
    assert_eq!(game.why_not(Slot::Of(single), &steal), Some(Refusal::EmptyBase(First)));
    assert_eq!(game.why_not(Slot::Before(single), &steal), Some(Refusal::EmptyBase(First)));
    let nested = Event::Retract { entry: single };
    assert_eq!(game.why_not(Slot::Of(single), &nested), Some(Refusal::CorrectionInCorrection));
    let mut refused = game.clone();
    let id = refused.next_id();
    let event = Slot::Of(EntryId(9999)).says(steal);
    assert_eq!(refused.record(Entry { id, at: None, event }), Err(Refusal::NoSuchEntry(EntryId(9999))));
    same_book(&game, &refused);
    assert_eq!(game.log(), refused.log());
}
