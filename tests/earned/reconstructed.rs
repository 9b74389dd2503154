//! Which outs should have been made: hard cases of our own, each with its reason.

use benchbook_stats::code::{Preset, TieBreak};
use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::log::{Attempt, Cause, How, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_stats::ruling::earned::{Reason, runs};
use benchbook_tests::scorer::{PETER, Scorer, ball, by, forced, tagged, to};

use crate::charged;

fn misplay(by: Position, kind: MisplayKind) -> Misplay {
    Misplay::new(by, kind)
}

fn spared(start: Start, stealing: bool) -> Misplay {
    Misplay { spared: Some(start), stealing, ..misplay(Position::SecondBase, MisplayKind::Muff) }
}

fn caught_stealing(base: Base, at: Base) -> Move {
    let out = Out::new(How::Tag, at, &[Position::Catcher, Position::Shortstop]);
    Move::out(base.into(), Out { attempt: Some(Attempt::Steal), ..out })
}

/// 9.16(b)(3), 9.16(c): the runner is spared once; his later out on the bases is not a second one.
#[test]
fn an_out_is_assumed_once_for_each_runner() {
    let mut book = Scorer::nine();
    // Abel should be out (1), Baker strikes out (2), Charlie's single and Daniel's home run count.
    book.error(Position::Shortstop, &[])
        .running(&[caught_stealing(First, Second)])
        .strikeout()
        .single(&[])
        .home_run()
        .strikeout();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// Without the runner who reached on an error, the ground ball on which he is forced would have put out the batter.
#[test]
fn forcing_a_runner_who_should_not_be_there_is_the_batters_out() {
    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]).choice(&[forced(First, Second)]).home_run();
    // Baker's run is unearned, Charlie's own is not: two should be out.
    charged(&book, &[(PETER, 2, 1)], (2, 1));
    assert!(matches!(runs(book.game())[0].because, Reason::TookPlace { .. }));
    // The next out is the third that should have been.
    book.strikeout().home_run();
    charged(&book, &[(PETER, 3, 1)], (3, 1));
}

/// A double play on a runner who should not be there adds one out, the batter's.
#[test]
fn double_play_on_a_runner_who_should_not_be_there() {
    let batter_out = Move::out(Start::Batter, Out::new(How::Force, First, &[Position::FirstBase]));
    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[])
        .in_play(ball(Trajectory::Ground, Position::Shortstop), &[forced(First, Second)], batter_out, &[])
        .home_run()
        .home_run()
        .strikeout();
    // Outs that should have been: Abel, Baker; then two home runs before the third.
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(a): strike three and a passed ball is a chance to put the batter out; a wild pitch is the pitcher's own.
#[test]
fn third_strike_gets_away() {
    let wild_throw = misplay(Position::Catcher, MisplayKind::Throwing);
    for (cause, misplays, pitcher) in [
        (Cause::WildPitch, vec![], (PETER, 2, 2)),
        (Cause::PassedBall, vec![], (PETER, 2, 0)),
        (Cause::Error(0), vec![wild_throw], (PETER, 2, 0)),
    ] {
        let mut book = Scorer::nine();
        book.strikeout().strikeout().strikeout_reaches(cause, &misplays, &[]).home_run().strikeout();
        charged(&book, &[pitcher], (2, pitcher.2));
    }
}

/// His out after the foul fly is not a second one.
#[test]
fn an_out_after_a_dropped_foul_fly_is_the_same_out() {
    let mut book = Scorer::nine();
    book.foul_fly_muffed(Position::Catcher).strikeout().strikeout().home_run().strikeout();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// 9.16(c): a dropped throw spares a runner who was stealing; he comes home on clean hits, unearned, and the out counts.
#[test]
fn an_error_prolongs_a_runners_time_on_base() {
    for misplays in [vec![spared(Start::First, true)], vec![Misplay { stealing: true, ..spared(Start::First, false) }]]
    {
        let mut book = Scorer::nine();
        book.strikeout()
            .strikeout()
            .single(&[])
            .erring(&[by(First, Second, Cause::Error(0))], &misplays)
            .single(&[to(Second, Home)])
            .home_run()
            .strikeout();
        charged(&book, &[(PETER, 3, 0)], (3, 0));
    }
}

/// The same in a rundown that moves nobody: the error stands alone in the book.
#[test]
fn an_error_in_a_rundown_that_moves_nobody() {
    let mut book = Scorer::nine();
    book.single(&[]).erring(&[], &[spared(Start::First, false)]).home_run();
    charged(&book, &[(PETER, 2, 1)], (2, 1));
    assert!(matches!(runs(book.game())[0].because, Reason::Spared { .. }));
}

/// A good throw to second is dropped on a force: the runner should be out, the batter is on by a choice.
#[test]
fn a_dropped_throw_on_a_force() {
    let mut book = Scorer::nine();
    let muff = Misplay { after: vec![Position::Shortstop], ..misplay(Position::SecondBase, MisplayKind::Muff) };
    let batter = Move::safe(Start::Batter, First, Cause::Choice);
    book.single(&[])
        .in_play(ball(Trajectory::Ground, Position::Shortstop), &[by(First, Second, Cause::Error(0))], batter, &[muff])
        .home_run();
    charged(&book, &[(PETER, 3, 2)], (3, 2));
}

/// 9.12(d)(3): the relay of a double play is dropped at first: both should be out.
#[test]
fn a_dropped_relay_of_a_double_play() {
    let mut book = Scorer::nine();
    let muff = Misplay { after: vec![Position::SecondBase], ..misplay(Position::FirstBase, MisplayKind::Muff) };
    book.single(&[]).reaches_on(muff, &[forced(First, Second)]).home_run().strikeout().home_run();
    // Two should be out before Charlie's home run; the strikeout is the third.
    charged(&book, &[(PETER, 3, 1)], (3, 1));
}

/// 9.16(a): obstruction of the batter is a fielding chance, the catcher's interference is none (its Comment).
#[test]
fn obstruction_is_a_chance_and_catchers_interference_is_none() {
    let mut book = Scorer::nine();
    let obstruction = misplay(Position::FirstBase, MisplayKind::Obstruction);
    let batter = Move::safe(Start::Batter, First, Cause::Obstruction);
    book.strikeout()
        .strikeout()
        .in_play(ball(Trajectory::Ground, Position::FirstBase), &[], batter, &[obstruction])
        .home_run()
        .strikeout();
    charged(&book, &[(PETER, 2, 0)], (2, 0));
}

/// A runner who is out for a batter put on by interference leaves him no clean place.
#[test]
fn choice_on_a_runner_put_on_by_interference() {
    let mut book = Scorer::nine();
    book.catcher_interference().choice(&[forced(First, Second)]).home_run().strikeout().strikeout();
    // One real out by then, and no other is assumed.
    charged(&book, &[(PETER, 2, 1)], (2, 1));
}

/// OBR 7.01(b): the tie-break runner counts as having reached on an error charged to nobody, and no out is assumed.
#[test]
fn tie_break_runner() {
    let tie_break = |from_inning| {
        let mut code = Preset::Baseball9.code();
        code.tie_break = Some(TieBreak { from_inning, bases: vec![Second] });
        Scorer::by_code(code)
    };
    let mut book = tie_break(1);
    book.single(&[to(Second, Home)]).home_run();
    charged(&book, &[(PETER, 3, 2)], (3, 2));
    assert_eq!(runs(book.game())[0].rule, "7.01(b)");

    // Two outs, and the runner is no third one.
    let mut book = tie_break(1);
    book.strikeout().strikeout().home_run().strikeout();
    charged(&book, &[(PETER, 2, 1)], (2, 1));

    // His real out counts.
    let mut book = tie_break(1);
    book.running(&[caught_stealing(Second, Third)]).strikeout().error(Position::Shortstop, &[]).home_run();
    charged(&book, &[(PETER, 2, 0)], (2, 0));

    // Out on a choice: without him the batter would have been.
    let mut book = tie_break(1);
    book.choice(&[tagged(Second, Third)]).home_run();
    charged(&book, &[(PETER, 2, 1)], (2, 1));
}

/// 5.08(a): no run counts on a third out that should have been made before the batter reached first, or by a force.
#[test]
fn runs_on_the_play_of_the_third_out_that_should_have_been() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).error(Position::Shortstop, &[to(Third, Home)]).strikeout();
    charged(&book, &[(PETER, 1, 0)], (1, 0));

    // A run in before the tag that was dropped counts, one listed after it does not.
    for (first, earned) in [(true, 1), (false, 0)] {
        let mut book = Scorer::nine();
        let (home, safe) = (to(Third, Home), by(First, Second, Cause::Error(0)));
        let moves = if first { [home, safe] } else { [safe, home] };
        let muff = Misplay { spared: Some(Start::First), ..misplay(Position::SecondBase, MisplayKind::Muff) };
        book.strikeout()
            .strikeout()
            .triple(&[])
            .walk()
            .in_play(
                ball(Trajectory::Line, Position::RightField),
                &moves,
                Move::safe(Start::Batter, First, Cause::Play),
                &[muff],
            )
            .strikeout();
        // The dropped throw was for a force at second: then neither counts.
        charged(&book, &[(PETER, 1, 0)], (1, 0));

        let mut book = Scorer::nine();
        let (home, safe) = (by(Third, Home, Cause::Steal), by(First, Second, Cause::Error(0)));
        let moves = if first { [home, safe] } else { [safe, home] };
        book.strikeout().strikeout().triple(&[]).walk().erring(&moves, &[spared(Start::First, true)]).strikeout();
        charged(&book, &[(PETER, 1, earned)], (1, earned));
    }
}

/// A bunt on which the batter reaches by an error is an out that should have been, sacrifice or not.
#[test]
fn sacrifice_bunt_and_an_error() {
    let mut book = Scorer::nine();
    let wild = misplay(Position::ThirdBase, MisplayKind::Throwing);
    let batter = Move::safe(Start::Batter, First, Cause::Error(0));
    book.single(&[])
        .in_play(ball(Trajectory::Bunt, Position::ThirdBase), &[to(First, Second)], batter, &[wild])
        .strikeout()
        .single(&[to(Second, Home), to(First, Second)])
        .home_run();
    // Abel was on second by the sacrifice, so the single brings him in by rights. Baker never does. Daniel and Edward
    // score with two that should be out.
    charged(&book, &[(PETER, 4, 3)], (4, 3));
}

/// A machine or a coach pitches: the runs are nobody's, and earned or not for the team.
#[test]
fn nobody_pitches() {
    let mut code = Preset::CoachPitch.code();
    code.fielders = 9;
    let mut book = Scorer::by_code(code);
    book.strikeout().strikeout().error(Position::Shortstop, &[]).home_run();
    let charges = runs(book.game());
    assert_eq!(charges.len(), 2);
    assert!(charges.iter().all(|c| !c.team_earned));
}

/// Each half-inning starts anew.
#[test]
fn a_chance_missed_in_one_half_means_nothing_in_the_next() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).strikeout();
    book.side_retired();
    book.strikeout().strikeout().home_run();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}
