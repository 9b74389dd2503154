//! Every refusal: what can't follow is refused with its reason, and the game is left as it was.

use benchbook_stats::code::{Code, Preset, Reentry};
use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Count, Position, Side};
use benchbook_stats::game::{Game, Refusal};
use benchbook_stats::log::{
    Action, Attempt, Call, Cause, Entry, EntryId, Event, How, InPlay, Judgment, Leg, Misplay, MisplayKind, Move, Out,
    Pitch, Running, Start, Status, Trajectory, Unseen, UnseenResult,
};
use benchbook_stats::team::{Assignment, Card, Change, Player, PlayerId, Role};
use benchbook_tests::scorer::{Scorer, ball, by, to};

/// Offers `event`, and asserts that it is refused so and that nothing has changed.
fn refuses(game: &Game, event: Event, expected: Refusal) {
    let mut tried = game.clone();
    let entry = Entry { id: game.next_id(), at: None, event };
    let said = format!("{:?}", entry.event);
    assert_eq!(tried.record(entry), Err(expected), "{said}");
    assert_eq!(format!("{tried:?}"), format!("{game:?}"), "changed by {said}");
    assert!(expected.to_string().ends_with(['.', ')']), "a sentence: {expected}");
}

fn running(moves: &[Move]) -> Event {
    running_with(moves, &[])
}

fn running_with(moves: &[Move], misplays: &[Misplay]) -> Event {
    Event::Running(Running { action: Action { moves: moves.to_vec(), misplays: misplays.to_vec() }, same_play: false })
}

fn in_play(moves: &[Move]) -> Event {
    Event::InPlay(InPlay {
        ball: ball(Trajectory::Ground, Position::Shortstop),
        action: Action { moves: moves.to_vec(), misplays: Vec::new() },
        kind: None,
        speed: None,
        pitches_missed: false,
    })
}

fn safe(from: Start, base: Base) -> Move {
    Move::safe(from, base, Cause::Play)
}

fn tag(from: Start, at: Base) -> Move {
    Move::out(from, Out::new(How::Tag, at, &[Position::Catcher]))
}

fn substitute(side: Side, outgoing: u32, incoming: u32, role: Role) -> Event {
    let change = Change::Substitute { outgoing: PlayerId(outgoing), incoming: PlayerId(incoming), role };
    Event::Change { side, change }
}

fn before_the_game() -> Game {
    let mut game = Game::new();
    for (side, id) in [(Side::Visitors, 1), (Side::Visitors, 2), (Side::Home, 11)] {
        let event = Event::Player { side, player: Player::unnamed(PlayerId(id)) };
        game.record(Entry { id: game.next_id(), at: None, event }).expect("a roster is free to grow");
    }
    game
}

fn card(side: Side, order: &[(u32, Position)]) -> Event {
    let order = order.iter().map(|(id, position)| Assignment::new(PlayerId(*id), *position)).collect();
    Event::Card { side, card: Card { order, fielding_only: Vec::new() } }
}

#[test]
fn before_the_first_pitch() {
    let game = before_the_game();
    refuses(&game, Event::PlayBall, Refusal::NoCard(Side::Visitors));
    refuses(&game, Event::Pitch(Pitch::new(Call::Ball)), Refusal::NotBegun);
    refuses(&game, Event::Status(Status::Final), Refusal::NotBegun);
    refuses(&game, Event::Status(Status::Resumed), Refusal::NotStopped);
    refuses(&game, card(Side::Visitors, &[]), Refusal::CardEmpty);
    refuses(
        &game,
        card(Side::Visitors, &[(1, Position::Pitcher), (1, Position::Catcher)]),
        Refusal::PlayerTwiceOnCard(PlayerId(1)),
    );
    refuses(
        &game,
        card(Side::Visitors, &[(1, Position::Pitcher), (2, Position::Pitcher)]),
        Refusal::TwoAtPosition(Position::Pitcher),
    );
    refuses(&game, card(Side::Visitors, &[(9, Position::Pitcher)]), Refusal::UnknownPlayer(PlayerId(9)));
    refuses(&game, card(Side::Visitors, &[(11, Position::Pitcher)]), Refusal::OtherSidesPlayer(PlayerId(11)));
    let stolen = Event::Player { side: Side::Home, player: Player::unnamed(PlayerId(1)) };
    refuses(&game, stolen, Refusal::OtherSidesPlayer(PlayerId(1)));

    let mut game = game;
    for (side, id) in [(Side::Visitors, 1), (Side::Home, 11)] {
        let event = card(side, &[(id, Position::Catcher)]);
        game.record(Entry { id: game.next_id(), at: None, event }).expect("a card of one");
    }
    refuses(&game, Event::PlayBall, Refusal::NoPitcher(Side::Visitors));
}

#[test]
fn once_it_has_begun() {
    let book = Scorer::nine();
    let game = book.game();
    refuses(game, Event::PlayBall, Refusal::GameHasBegun);
    refuses(game, Event::Rules(Box::default()), Refusal::GameHasBegun);
    refuses(game, card(Side::Visitors, &[(1, Position::Pitcher)]), Refusal::GameHasBegun);
}

#[test]
fn when_play_is_stopped_or_over() {
    let mut book = Scorer::nine();
    book.status(Status::Delayed { why: "rain".into() });
    refuses(book.game(), Event::Pitch(Pitch::new(Call::Ball)), Refusal::Stopped);
    book.status(Status::Resumed);
    refuses(book.game(), Event::Status(Status::Resumed), Refusal::NotStopped);
    book.status(Status::Called { why: "dark".into() });
    refuses(book.game(), Event::Pitch(Pitch::new(Call::Ball)), Refusal::GameOver);
    refuses(book.game(), Event::Status(Status::Delayed { why: String::new() }), Refusal::GameOver);
    refuses(book.game(), substitute(Side::Visitors, 1, 11, Role::PinchHitter), Refusal::GameOver);
}

#[test]
fn runners_who_are_not_there() {
    let mut book = Scorer::nine();
    refuses(book.game(), running(&[by(First, Second, Cause::Steal)]), Refusal::EmptyBase(First));
    refuses(book.game(), running(&[]), Refusal::NothingHappened);
    book.single(&[]);
    refuses(book.game(), running(&[by(Third, Home, Cause::Steal)]), Refusal::EmptyBase(Third));
    let nowhere = Move { from: Start::First, legs: Vec::new(), out: None };
    refuses(book.game(), running(&[nowhere]), Refusal::EmptyMove(Start::First));
    let twice = [by(First, Second, Cause::Steal), tag(Start::First, Second)];
    refuses(book.game(), running(&twice), Refusal::MovedTwice(Start::First));
    refuses(book.game(), running(&[by(First, First, Cause::Steal)]), Refusal::Backwards(Start::First));
    let back = Move {
        from: Start::First,
        legs: vec![Leg { to: Third, cause: Cause::Steal }, Leg { to: Second, cause: Cause::Steal }],
        out: None,
    };
    refuses(book.game(), running(&[back]), Refusal::Backwards(Start::First));
    refuses(book.game(), running(&[safe(Start::Batter, First)]), Refusal::BatterDoesNotRun);
    refuses(book.game(), running(&[by(First, Second, Cause::Error(0))]), Refusal::NoSuchMisplay(0));
}

#[test]
fn two_on_a_base_or_one_past_another() {
    let mut book = Scorer::nine();
    book.single(&[]);
    refuses(book.game(), in_play(&[safe(Start::Batter, First)]), Refusal::TwoOnBase(First));
    refuses(book.game(), in_play(&[safe(Start::Batter, Second)]), Refusal::Passing(Start::Batter));
    refuses(book.game(), in_play(&[safe(Start::First, Second)]), Refusal::BatterMustMove);
    book.single(&[to(First, Second)]);
    refuses(book.game(), running(&[by(First, Third, Cause::Steal)]), Refusal::Passing(Start::First));
    refuses(book.game(), running(&[by(First, Second, Cause::Steal)]), Refusal::TwoOnBase(Second));
}

#[test]
fn a_fourth_out() {
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]).strikeout();
    let three = [tag(Start::Second, Third), tag(Start::First, Second), tag(Start::Batter, First)];
    refuses(book.game(), in_play(&three), Refusal::TooManyOuts(4));
}

#[test]
fn strike_three_that_is_caught_by_rule() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let dropped = |moves: &[Move]| {
        Event::Unseen(Unseen {
            result: UnseenResult::StrikeoutSwinging,
            action: Action { moves: moves.to_vec(), misplays: Vec::new() },
        })
    };
    let reaches = [by(First, Second, Cause::WildPitch), Move::safe(Start::Batter, First, Cause::WildPitch)];
    // First base is taken and there are fewer than two outs (OBR 5.05(a)(2)).
    refuses(book.game(), dropped(&reaches), Refusal::BatterCannotRun);
    // With two outs he may run.
    book.strikeout().strikeout();
    let mut two_out = book.clone();
    two_out.record(dropped(&reaches));
    assert_eq!(two_out.game().situation().runners().count(), 2);
    // Under a code without it he may never.
    let mut book = Scorer::by_code(Code { dropped_third_strike: false, ..Code::default() });
    refuses(book.game(), dropped(&[safe(Start::Batter, First)]), Refusal::BatterCannotRun);
    book.strikeout();
}

#[test]
fn what_the_code_does_not_have() {
    let mut slow = Scorer::by_code(Code { stealing: false, ..Code::default() });
    slow.single(&[]);
    refuses(slow.game(), running(&[by(First, Second, Cause::Steal)]), Refusal::NoStealing);
    let coach = Scorer::by_code(Code { balls_for_walk: None, ..Code::default() });
    refuses(coach.game(), Event::IntentionalWalk, Refusal::NoWalks);
    let mut nine = Scorer::nine();
    nine.single(&[]);
    refuses(nine.game(), substitute(Side::Visitors, 1, 11, Role::CourtesyRunner), Refusal::NoCourtesyRunner);
    let late = Event::Change {
        side: Side::Visitors,
        change: Change::Join(Assignment::new(PlayerId(11), Position::LeftField)),
    };
    refuses(nine.game(), late, Refusal::OrderIsClosed);
}

#[test]
fn people() {
    let mut book = Scorer::nine();
    let field = Role::Fielder(Position::LeftField.into());
    refuses(book.game(), substitute(Side::Visitors, 1, 999, field), Refusal::UnknownPlayer(PlayerId(999)));
    refuses(book.game(), substitute(Side::Visitors, 1, 101, field), Refusal::OtherSidesPlayer(PlayerId(101)));
    refuses(book.game(), substitute(Side::Visitors, 11, 12, field), Refusal::NotInGame(PlayerId(11)));
    refuses(book.game(), substitute(Side::Visitors, 1, 2, field), Refusal::AlreadyInGame(PlayerId(2)));
    refuses(book.game(), substitute(Side::Home, 101, 111, Role::PinchHitter), Refusal::NotAtBat);
    refuses(book.game(), substitute(Side::Visitors, 2, 11, Role::PinchHitter), Refusal::NotTheBatter(PlayerId(2)));
    refuses(book.game(), substitute(Side::Visitors, 2, 11, Role::PinchRunner), Refusal::NotOnBase(PlayerId(2)));
    let end_dh = Change::EndDesignatedHitter { batter: PlayerId(1), replaces: PlayerId(2) };
    refuses(book.game(), Event::Change { side: Side::Visitors, change: end_dh }, Refusal::NotFieldingOnly(PlayerId(1)));
    let leave = Event::Change { side: Side::Visitors, change: Change::Leave { player: PlayerId(11) } };
    refuses(book.game(), leave, Refusal::NotInGame(PlayerId(11)));
    refuses(book.game(), Event::EmptyPlace, Refusal::PlaceIsFilled);

    // He who has left may not come back under these rules.
    book.record(substitute(Side::Visitors, 1, 11, Role::PinchHitter));
    refuses(book.game(), substitute(Side::Visitors, 2, 1, field), Refusal::NoReentry(PlayerId(1)));

    // An empty place bats for nobody.
    let mut short = Scorer::nine();
    short.record(Event::Change { side: Side::Visitors, change: Change::Leave { player: PlayerId(1) } });
    refuses(short.game(), Event::Pitch(Pitch::new(Call::Ball)), Refusal::NobodyAtPlate);
    short.record(Event::EmptyPlace);
    assert_eq!(short.game().situation().outs, 1);
}

#[test]
fn coming_back() {
    let code = Code { reentry: Reentry::StartersOnce, courtesy_runner: true, ..Code::default() };
    let mut book = Scorer::by_code(code);
    let field = Role::Fielder(Position::LeftField.into());
    book.record(substitute(Side::Visitors, 7, 11, field));
    // In another's place.
    refuses(book.game(), substitute(Side::Visitors, 8, 7, field), Refusal::ReentryInOwnPlace(PlayerId(7)));
    book.record(substitute(Side::Visitors, 11, 7, field));
    // A substitute who has left, and a starter a second time.
    refuses(book.game(), substitute(Side::Visitors, 7, 11, field), Refusal::NoReentry(PlayerId(11)));
    book.record(substitute(Side::Visitors, 7, 12, field));
    refuses(book.game(), substitute(Side::Visitors, 12, 7, field), Refusal::NoReentry(PlayerId(7)));
    // A courtesy runner is for the battery alone: player 3 is the first baseman.
    book.strikeout().strikeout().single(&[]);
    refuses(
        book.game(),
        substitute(Side::Visitors, 3, 13, Role::CourtesyRunner),
        Refusal::CourtesyOnlyForBattery(PlayerId(3)),
    );
}

#[test]
fn the_defence_must_be_in_order() {
    let mut book = Scorer::nine();
    let shift = Change::Shift { to: vec![Assignment::new(PlayerId(107), Position::Shortstop)] };
    book.record(Event::Change { side: Side::Home, change: shift });
    refuses(book.game(), Event::Pitch(Pitch::new(Call::Ball)), Refusal::TwoAtPosition(Position::Shortstop));
    let mut book = Scorer::nine();
    book.record(Event::Change { side: Side::Home, change: Change::Leave { player: PlayerId(107) } });
    let fly = Move::out(Start::Batter, Out::new(How::Fly, First, &[Position::LeftField]));
    refuses(book.game(), in_play(&[fly]), Refusal::NobodyAt(Position::LeftField));
}

#[test]
fn batting_out_of_turn() {
    let mut book = Scorer::nine();
    refuses(book.game(), Event::OutOfTurnAppeal, Refusal::NothingToAppeal);
    refuses(book.game(), Event::BatterUp { player: PlayerId(11) }, Refusal::NotInGame(PlayerId(11)));
    book.single(&[]);
    refuses(book.game(), Event::BatterUp { player: PlayerId(1) }, Refusal::BatterOnBase(PlayerId(1)));
}

#[test]
fn placed_runners_counts_and_links() {
    let mut book = Scorer::nine();
    let place = |base, id| Event::PlaceRunner { base, player: PlayerId(id) };
    refuses(book.game(), place(Home, 9), Refusal::NotABase);
    book.record(place(Second, 9));
    refuses(book.game(), place(Second, 8), Refusal::BaseTaken(Second));
    refuses(book.game(), place(Third, 9), Refusal::AlreadyInPlay(PlayerId(9)));
    refuses(book.game(), Event::SetCount(Count::new(4, 0)), Refusal::ImpossibleCount(4, 0));
    refuses(book.game(), Event::SetCount(Count::new(0, 3)), Refusal::ImpossibleCount(0, 3));
    let linked = Event::Running(Running {
        action: Action { moves: vec![by(Second, Third, Cause::Steal)], misplays: Vec::new() },
        same_play: true,
    });
    refuses(book.game(), linked, Refusal::NoPlayBefore);
}

#[test]
fn corrections_and_judgments_that_point_nowhere() {
    let mut book = Scorer::nine();
    book.pitch(Call::Ball);
    let last = book.last();
    let nowhere = EntryId(9999);
    refuses(book.game(), Event::Retract { entry: nowhere }, Refusal::NoSuchEntry(nowhere));
    refuses(book.game(), Event::Reinstate { entry: last }, Refusal::AlreadySo(last));
    let strike = || Box::new(Event::Pitch(Pitch::new(Call::CalledStrike)));
    refuses(book.game(), Event::Replace { entry: nowhere, event: strike() }, Refusal::NoSuchEntry(nowhere));
    refuses(book.game(), Event::Insert { before: nowhere, event: strike() }, Refusal::NoSuchEntry(nowhere));
    let nested = Box::new(Event::Retract { entry: last });
    refuses(book.game(), Event::Replace { entry: last, event: nested }, Refusal::CorrectionInCorrection);
    let judgment = Judgment::BuntedForHit { on: EntryId(1), yes: true };
    refuses(book.game(), Event::Judgment(judgment), Refusal::NotAPlay(EntryId(1)));
    book.record(Event::Retract { entry: last });
    refuses(book.game(), Event::Retract { entry: last }, Refusal::AlreadySo(last));

    let mut game = book.game().clone();
    let old = Entry { id: EntryId(1), at: None, event: Event::Note { text: String::new() } };
    let expected = Refusal::OutOfSequence { id: EntryId(1), last: EntryId(game.next_id().0 - 1) };
    assert_eq!(game.record(old), Err(expected));
}

#[test]
fn an_error_listed_is_no_way_round_the_bases() {
    let mut book = Scorer::by_code(Preset::Baseball7.code());
    book.single(&[]);
    let error = [Misplay::new(Position::Catcher, MisplayKind::Throwing)];
    let move_on = Move {
        from: Start::First,
        legs: vec![Leg { to: Second, cause: Cause::Steal }, Leg { to: Third, cause: Cause::Error(1) }],
        out: None,
    };
    refuses(book.game(), running_with(&[move_on], &error), Refusal::NoSuchMisplay(1));
    let caught = Move::out(
        Start::Second,
        Out { how: How::Tag, at: Third, by: vec![Position::Catcher], attempt: Some(Attempt::Steal) },
    );
    refuses(book.game(), running(&[caught]), Refusal::EmptyBase(Second));
}

// ---- 5.06(c) The dead ball ----

fn pitch_with(call: Call, moves: &[Move]) -> Event {
    let action = Action { moves: moves.to_vec(), misplays: Vec::new() };
    Event::Pitch(Pitch { action, ..Pitch::new(call) })
}

#[test]
fn nobody_runs_on_a_dead_ball() {
    // 5.06(c)(1), (2), (3), (5): hit batter, interference by the catcher, by the batter, foul not caught.
    let mut book = Scorer::nine();
    book.triple(&[]);
    let calls = [Call::Foul, Call::FoulBunt, Call::HitByPitch, Call::CatcherInterference, Call::BatterInterference];
    for call in calls {
        for cause in [Cause::Steal, Cause::WildPitch, Cause::PassedBall, Cause::Play, Cause::Throw, Cause::Indifference]
        {
            refuses(book.game(), pitch_with(call, &[by(Third, Home, cause)]), Refusal::DeadBall(Start::Third));
        }
        refuses(book.game(), pitch_with(call, &[tag(Start::Third, Home)]), Refusal::DeadBall(Start::Third));
        // What the umpire gives stands.
        for cause in [Cause::Award, Cause::Obstruction, Cause::Interference, Cause::Balk] {
            let given = book.game().preview(pitch_with(call, &[by(Third, Home, cause)])).expect("a base is given");
            assert_eq!(given.situation().score, [1, 0], "{call:?} {cause:?}");
        }
    }
    // So does an out that the umpire calls: a runner who hindered the fielder under the foul fly (OBR 6.01(a)).
    let hindered = Move::out(Start::Third, Out::new(How::Interference, Home, &[Position::ThirdBase]));
    assert!(book.game().preview(pitch_with(Call::Foul, &[hindered])).is_ok());
    // With the result alone seen it is no different.
    for result in [UnseenResult::HitByPitch, UnseenResult::CatcherInterference] {
        let action = Action { moves: vec![by(Third, Home, Cause::WildPitch)], misplays: Vec::new() };
        refuses(book.game(), Event::Unseen(Unseen { result, action }), Refusal::DeadBall(Start::Third));
    }
    // The third strike bunted foul: out, and the runner stays.
    book.count(0, 2);
    refuses(book.game(), pitch_with(Call::FoulBunt, &[by(Third, Home, Cause::Steal)]), Refusal::DeadBall(Start::Third));
    book.pitch(Call::FoulBunt);
    assert_eq!((book.game().situation().outs, book.game().situation().score), (1, [0, 0]));
}

#[test]
fn a_dead_ball_is_the_end_of_the_play() {
    let linked = |moves: &[Move]| {
        let action = Action { moves: moves.to_vec(), misplays: Vec::new() };
        Event::Running(Running { action, same_play: true })
    };
    let steal = by(First, Second, Cause::Steal);
    let mut book = Scorer::nine();
    book.single(&[]).pitch(Call::Foul);
    refuses(book.game(), linked(core::slice::from_ref(&steal)), Refusal::DeadBall(Start::First));
    // Before the next pitch he may be picked off or steal; on a foul tip, a ball or a strike he may run.
    assert!(book.game().preview(running(core::slice::from_ref(&steal))).is_ok());
    for call in [Call::FoulTip, Call::Ball, Call::CalledStrike, Call::SwingingStrike, Call::Pitchout] {
        let mut book = book.clone();
        assert!(book.game().preview(pitch_with(call, core::slice::from_ref(&steal))).is_ok(), "{call:?}");
        book.pitch(call);
        assert!(book.game().preview(linked(core::slice::from_ref(&steal))).is_ok(), "{call:?}");
    }
    // 5.05(b)(2), 5.06(c)(1): the hit batter forces the runner on first, and not the one on third.
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Third)]).hit_batter();
    let on = |base| book.game().situation().on(base).map(|r| r.player.0);
    assert_eq!((on(First), on(Second), on(Third)), (Some(3), Some(2), Some(1)));
    refuses(book.game(), linked(&[by(Third, Home, Cause::WildPitch)]), Refusal::DeadBall(Start::Third));
    // A foul fly that is caught is alive: the runner on third may tag up.
    let mut book = Scorer::nine();
    book.triple(&[]);
    let mut foul = ball(Trajectory::Fly, Position::LeftField);
    foul.foul = true;
    let caught = Move::out(Start::Batter, Out::new(How::Fly, First, &[Position::LeftField]));
    book.in_play(foul, &[to(Third, Home)], caught, &[]);
    assert_eq!(book.game().situation().score, [1, 0]);
}
