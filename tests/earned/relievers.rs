//! Who answers for whom, beyond the rule book's examples, each with its reason.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::{Position, Side};
use benchbook_stats::log::{Cause, Event, How, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_stats::ruling::earned::{Answers, runs};
use benchbook_stats::team::{Change, PlayerId, Role};
use benchbook_tests::scorer::{PETER, ROGER, SIERRA, Scorer, ball, by, forced, tagged, to};

use crate::{charged, last};

/// Peter's runner is doubled up with the batter: nobody takes his place, so the next run is Roger's own.
#[test]
fn a_double_play_passes_nobody_on() {
    let batter_out = Move::out(Start::Batter, Out::new(How::Force, First, &[Position::FirstBase]));
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.in_play(ball(Trajectory::Ground, Position::Shortstop), &[forced(First, Second)], batter_out, &[]).home_run();
    charged(&book, &[(PETER, 0, 0), (ROGER, 1, 1)], (1, 1));
}

/// Roger's own runner is forced: Peter's, ahead of him, stays Peter's, and the batter is Roger's.
#[test]
fn a_force_on_the_relievers_own_runner() {
    let mut book = Scorer::nine();
    book.triple(&[]).relieve(ROGER);
    book.walk().choice(&[forced(First, Second)]).home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 2, 2)], (3, 3));
}

/// Roger's runner, in the middle, is forced: each pitcher still answers for as many as before, the earliest for the
/// runner furthest on.
#[test]
fn a_force_in_the_middle_keeps_the_order_of_the_pitchers() {
    let mut book = Scorer::nine();
    book.triple(&[]).relieve(ROGER);
    book.walk().relieve(SIERRA);
    book.walk().choice(&[forced(Second, Third), to(First, Second)]).home_run();
    // On base were Peter's on third, then Roger's and Sierra's: Sierra's runner now stands for Roger's.
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1), (SIERRA, 2, 2)], (4, 4));
}

/// The batter who replaced Peter's runner is himself forced: the third one along is still Peter's.
#[test]
fn passed_on_twice() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.choice(&[forced(First, Second)]).choice(&[forced(First, Second)]).home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1)], (2, 2));
    assert_eq!(runs(book.game())[0].answers.rule(), "9.16(g)");
    assert!(matches!(runs(book.game())[0].answers, Answers::PassedOn { .. }));
}

/// The batter who replaced Peter's runner is caught stealing: put out without action by the batter, so Peter is done.
#[test]
fn passed_on_and_then_put_out_on_the_bases() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.choice(&[forced(First, Second)]).running(&[tagged(First, Second)]).home_run();
    charged(&book, &[(PETER, 0, 0), (ROGER, 1, 1)], (1, 1));
}

/// A run scores on the very fielder's choice: the runner furthest on is the earliest pitcher's.
#[test]
fn a_run_on_the_fielders_choice_itself() {
    let mut book = Scorer::nine();
    book.triple(&[]).walk().relieve(ROGER);
    book.choice(&[to(Third, Home), forced(First, Second)]).home_run();
    charged(&book, &[(PETER, 2, 2), (ROGER, 1, 1)], (3, 3));
}

/// The choice and the out are two entries of one play.
#[test]
fn the_out_is_recorded_as_the_same_play() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.choice(&[to(First, Second)]).same_play(&[tagged(Second, Third)]).home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1)], (2, 2));
}

/// The same on a bunt, which is a sacrifice as far as its own entry says.
#[test]
fn the_out_after_a_bunt_is_recorded_as_the_same_play() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    let batter = Move::safe(Start::Batter, First, Cause::Choice);
    book.in_play(ball(Trajectory::Bunt, Position::Pitcher), &[to(First, Second)], batter, &[])
        .same_play(&[tagged(Second, Third)])
        .home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1)], (2, 2));
}

/// Peter's runner is forced and the relay to first is dropped: the batter is in his place, and unearned.
#[test]
fn a_dropped_relay_behind_an_inherited_runner() {
    let muff = Misplay::new(Position::FirstBase, MisplayKind::Muff);
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.reaches_on(muff, &[forced(First, Second)]).home_run();
    charged(&book, &[(PETER, 1, 0), (ROGER, 1, 1)], (2, 1));
    // An error alone, with nobody put out, is Roger's own.
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.error(Position::FirstBase, &[to(First, Second)]).home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 2, 1)], (3, 2));
}

/// Peter's runner reached on an error and is forced: the batter in his place is Peter's and unearned; a clean runner of
/// Roger's ahead does not become Peter's.
#[test]
fn the_place_of_a_runner_who_should_not_be_there() {
    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]).relieve(ROGER);
    book.single(&[to(First, Third)]).choice(&[tagged(Third, Home), to(First, Second)]).home_run();
    // In Roger's ledger all is real: one out, and Baker and Daniel clean. Charlie is Peter's, and should be out.
    charged(&book, &[(PETER, 1, 0), (ROGER, 2, 2)], (3, 2));
}

/// A pinch runner is the runner he runs for.
#[test]
fn pinch_runner() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    let change = Change::Substitute { outgoing: PlayerId(1), incoming: PlayerId(10), role: Role::PinchRunner };
    book.record(Event::Change { side: Side::Visitors, change }).home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1)], (2, 2));
    assert_eq!(runs(book.game())[0].runner, PlayerId(10));
}

/// The bases of a helped runner count from where he stood when the reliever came in, for the reliever alone: here for
/// the runner passed on to nobody, so the run is Peter's and unearned.
#[test]
fn an_inherited_runner_who_was_helped_before() {
    let mut book = Scorer::nine();
    book.walk()
        .running(&[by(First, Second, Cause::PassedBall)])
        .running(&[by(Second, Third, Cause::PassedBall)])
        .relieve(ROGER);
    book.single(&[to(Third, Home)]).strikeout().strikeout().strikeout();
    charged(&book, &[(PETER, 1, 0), (ROGER, 0, 0)], (1, 0));
}

/// 9.16(i): the missed third out under Peter ends the team's inning; three pitchers share what follows.
#[test]
fn two_relievers_after_the_inning_should_have_been_over() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).relieve(ROGER);
    book.walk().relieve(SIERRA);
    book.home_run();
    charged(&book, &[(PETER, 1, 0), (ROGER, 1, 1), (SIERRA, 1, 1)], (3, 0));
    assert_eq!(last(&book).rule, "9.16(i)");
}

/// A foul fly dropped under Peter, home run off Roger in the same turn: Roger has no benefit of it.
#[test]
fn a_foul_fly_dropped_before_the_reliever_came_in() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().foul_fly_muffed(Position::FirstBase).relieve(ROGER);
    book.home_run();
    charged(&book, &[(PETER, 0, 0), (ROGER, 1, 1)], (1, 0));
}

/// A pitcher who goes to another position and comes back in the same inning is a reliever then.
#[test]
fn the_same_pitcher_again() {
    let mut book = Scorer::nine();
    let swap = |p1: u32, p3: u32| Event::Change {
        side: Side::Home,
        change: Change::Shift {
            to: vec![
                benchbook_stats::team::Assignment::new(PlayerId(p1), Position::Pitcher),
                benchbook_stats::team::Assignment::new(PlayerId(p3), Position::FirstBase),
            ],
        },
    };
    book.strikeout().strikeout().error(Position::Shortstop, &[]);
    book.record(swap(103, 101)).walk();
    book.record(swap(101, 103)).home_run();
    charged(&book, &[(PETER, 2, 1), (PlayerId(103), 1, 1)], (3, 0));
}

/// The tie-break runner is the pitcher's who starts the inning with him, unearned.
#[test]
fn the_tie_break_runner_of_a_pitcher_relieved() {
    let mut code = benchbook_stats::code::Preset::Baseball9.code();
    code.tie_break = Some(benchbook_stats::code::TieBreak { from_inning: 1, bases: vec![Second] });
    let mut book = Scorer::by_code(code);
    book.strikeout().relieve(ROGER);
    book.single(&[to(Second, Home)]).home_run();
    charged(&book, &[(PETER, 1, 0), (ROGER, 2, 2)], (3, 2));
    assert_eq!(runs(book.game())[0].answers, Answers::Placed);
}

/// Found by chance: a batter in the place of a runner put on by interference is unearned, but no missed out; what
/// happens to him later is an out for the team and for the reliever alike.
#[test]
fn in_the_place_of_a_runner_put_on_by_interference() {
    let spared = Misplay { spared: Some(Start::First), ..Misplay::new(Position::SecondBase, MisplayKind::Muff) };
    let mut book = Scorer::nine();
    book.catcher_interference().choice(&[forced(First, Second)]).relieve(ROGER);
    book.erring(&[], &[spared]).strikeout().home_run();
    charged(&book, &[(PETER, 1, 0), (ROGER, 1, 0)], (2, 0));
}
