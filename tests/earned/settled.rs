//! What is still open, and what the scorer judges.

use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Position, Side};
use benchbook_stats::log::{Cause, Event, Judgment, Misplay, MisplayKind, Move, Reached, Start, Trajectory};
use benchbook_stats::ruling::earned::{Earned, Reason, runs};
use benchbook_stats::team::PlayerId;
use benchbook_tests::scorer::{PETER, ROGER, Scorer, ball, by, then, to};

use crate::{charged, last};

/// Only a run that a later play can still make earned is open, and only while the half-inning goes on.
#[test]
fn provisional_until_the_half_is_over() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::PassedBall)]).single(&[to(Second, Home)]);
    assert!(last(&book).provisional);
    book.strikeout().strikeout();
    assert!(last(&book).provisional);
    book.strikeout();
    assert!(!last(&book).provisional);
    charged(&book, &[(PETER, 1, 0)], (1, 0));

    // Reached on an error: nothing changes that.
    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]).home_run();
    assert!(runs(book.game()).iter().all(|c| !c.provisional));
}

/// A half-inning that the umpire ended is over, and so is what was open in it, though the next one is under way.
#[test]
fn not_provisional_after_a_half_ended_by_rule() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::PassedBall)]).single(&[to(Second, Home)]);
    assert!(last(&book).provisional);
    book.record(Event::EndHalf { why: String::new() }).strikeout();
    assert!(!last(&book).provisional);
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}

/// Open for the reliever is open, though for the team three should have been out (9.16(i)).
#[test]
fn provisional_for_the_reliever_alone() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).relieve(ROGER);
    book.walk().running(&[by(Second, Third, Cause::PassedBall), by(First, Second, Cause::PassedBall)]);
    book.single(&[to(Third, Home), to(Second, Home)]);
    assert!(last(&book).provisional, "{:?}", last(&book));
    book.strikeout();
    charged(&book, &[(PETER, 1, 0), (ROGER, 1, 0)], (2, 0));
}

/// Once three should be out, the reconstruction is closed though play goes on.
#[test]
fn not_provisional_after_the_third_out_that_should_have_been() {
    let mut book = Scorer::nine();
    book.strikeout()
        .walk()
        .running(&[by(First, Second, Cause::PassedBall)])
        .single(&[to(Second, Home)])
        .error(Position::Shortstop, &[to(First, Second)]);
    assert!(last(&book).provisional);
    book.error(Position::Shortstop, &[to(Second, Third), to(First, Second)]);
    assert!(!last(&book).provisional);
    book.home_run();
    charged(&book, &[(PETER, 5, 0)], (5, 0));
}

/// 9.16(d) leaves it to the scorer whether the run would have scored.
#[test]
fn judged_earned_and_judged_unearned() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::PassedBall)]).single(&[to(Second, Home)]);
    let (on, runner) = (book.last(), PlayerId(1));
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    book.judge(Judgment::Earned { on, runner, yes: true });
    charged(&book, &[(PETER, 1, 1)], (1, 1));
    assert_eq!(last(&book).because, Reason::Judged { earned: true });
    assert!(!last(&book).provisional);
    book.judge(Judgment::Earned { on, runner, yes: false });
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}

/// A judgment about the run is no judgment about chances missed before the reliever came in (9.16(i)).
#[test]
fn judged_earned_against_the_reliever_only() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).relieve(ROGER);
    book.home_run();
    let on = book.last();
    book.judge(Judgment::Earned { on, runner: PlayerId(4), yes: true });
    charged(&book, &[(PETER, 1, 0), (ROGER, 1, 1)], (2, 0));
}

/// 9.13: passed ball or wild pitch is a judgment, and the run follows it.
#[test]
fn a_passed_ball_judged_a_wild_pitch_and_back() {
    let mut book = Scorer::nine();
    book.triple(&[]).running(&[by(Third, Home, Cause::PassedBall)]);
    let on = book.last();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    book.judge(Judgment::GotAway { on, wild: true });
    charged(&book, &[(PETER, 1, 1)], (1, 1));
    book.judge(Judgment::GotAway { on, wild: false });
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}

/// 9.05, 9.12: hit or error is a judgment, and so are the runs behind it.
#[test]
fn an_error_judged_a_hit_and_a_hit_judged_an_error() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]);
    let on = book.last();
    book.home_run();
    charged(&book, &[(PETER, 2, 0)], (2, 0));
    book.judge(Judgment::BatterReached { on, verdict: Reached::Hit(1) });
    charged(&book, &[(PETER, 2, 2)], (2, 2));
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(Position::Shortstop) });
    charged(&book, &[(PETER, 2, 0)], (2, 0));

    let mut book = Scorer::nine();
    book.strikeout().strikeout().single(&[]);
    let on = book.last();
    book.home_run();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(Position::Shortstop) });
    charged(&book, &[(PETER, 2, 0)], (2, 0));
}

/// An error judged a fielder's choice: he is on base by rights, and nobody was helped by an error.
#[test]
fn an_error_judged_a_choice() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).error(Position::Shortstop, &[by(Third, Home, Cause::Error(0))]);
    let on = book.last();
    book.home_run();
    charged(&book, &[(PETER, 3, 0)], (3, 0));
    book.judge(Judgment::BatterReached { on, verdict: Reached::Choice });
    charged(&book, &[(PETER, 3, 3)], (3, 3));
    // Another fielder's error is an error all the same.
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(Position::ThirdBase) });
    charged(&book, &[(PETER, 3, 0)], (3, 0));
    assert_eq!(runs(book.game())[1].because, Reason::ReachedOnError { on, by: Some(Position::ThirdBase) });
}

/// The plays behind a run batted in and an earned run are the same, and so is what is usual of them: an error entered and
/// judged a hit is none for either (9.04(a), 9.16(a)). A wild throw that helped a runner too stays an error for both.
#[test]
fn an_error_judged_a_hit_is_none_for_the_run_batted_in_either() {
    let runs_of = |kind: MisplayKind, from: Base, outs: u8| {
        let mut book = Scorer::nine();
        for _ in 0..outs {
            book.strikeout();
        }
        match from {
            First => book.single(&[]),
            Second => book.double(&[]),
            _ => book.triple(&[]),
        };
        let error = Misplay { after: vec![Position::ThirdBase], ..Misplay::new(Position::Shortstop, kind) };
        book.reaches_on(error, &[by(from, Home, Cause::Error(0))]);
        let on = book.last();
        book.judge(Judgment::BatterReached { on, verdict: Reached::Hit(1) });
        (book.game().batting(Side::Visitors).iter().map(|l| l.runs_batted_in).sum::<u32>(), last(&book).earned)
    };
    for outs in 0..3 {
        for from in [First, Second, Third] {
            for kind in [MisplayKind::Fielding, MisplayKind::DroppedFly] {
                assert_eq!(runs_of(kind, from, outs), (1, true), "{kind:?} from {from} with {outs} out");
            }
            for kind in [MisplayKind::Throwing, MisplayKind::Muff] {
                // From third with fewer than two outs he would ordinarily have scored without it.
                let anyway = from == Third && outs < 2;
                assert_eq!(runs_of(kind, from, outs), (u32::from(anyway), anyway), "{kind:?} from {from}, {outs} out");
            }
        }
    }
}

/// The other way about: on a single judged an error the runner from third would ordinarily have scored with fewer than two
/// outs (9.04(a)(3)), and the one from second came in by the error.
#[test]
fn a_hit_judged_an_error_is_one_for_the_run_batted_in_too() {
    for (from, outs, expected) in
        [(Third, 0, (1, true)), (Third, 1, (1, true)), (Second, 0, (0, false)), (Second, 1, (0, false))]
    {
        let mut book = Scorer::nine();
        for _ in 0..outs {
            book.strikeout();
        }
        if from == Second {
            book.double(&[])
        } else {
            book.triple(&[])
        };
        book.single(&[to(from, Home)]);
        let on = book.last();
        let batted_in =
            |book: &Scorer| book.game().batting(Side::Visitors).iter().map(|l| l.runs_batted_in).sum::<u32>();
        assert_eq!((batted_in(&book), last(&book).earned), (1, true), "as it was entered");
        book.judge(Judgment::BatterReached { on, verdict: Reached::Error(Position::Shortstop) });
        assert_eq!((batted_in(&book), last(&book).earned), expected, "from {from} with {outs} out");
    }
}

/// OBR 9.16: an intentional walk is a walk like any other.
#[test]
fn an_intentional_walk() {
    let mut book = Scorer::nine();
    book.record(Event::IntentionalWalk).home_run();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// The same fact decides a run batted in and an earned run: would he have scored though the error was made (9.04(a)(3))?
#[test]
fn would_have_scored_on_the_hit_without_the_error() {
    let fumble = Misplay::new(Position::CenterField, MisplayKind::Fielding);
    let mut book = Scorer::nine();
    book.single(&[]).in_play(
        ball(Trajectory::Line, Position::CenterField),
        &[then(to(First, Third), Home, Cause::Error(0))],
        Move::safe(Start::Batter, Second, Cause::Play),
        &[fumble],
    );
    let (on, runner) = (book.last(), PlayerId(1));
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    book.judge(Judgment::WouldHaveScored { on, runner, yes: true });
    charged(&book, &[(PETER, 1, 1)], (1, 1));
    book.judge(Judgment::WouldHaveScored { on, runner, yes: false });
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}

/// 9.08(d): the dropped fly would not have been deep enough.
#[test]
fn would_not_have_scored_after_the_catch() {
    let mut book = Scorer::nine();
    let dropped = Misplay::new(Position::LeftField, MisplayKind::DroppedFly);
    book.triple(&[]).reaches_on(dropped, &[to(Third, Home)]);
    let on = book.last();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
    book.judge(Judgment::WouldHaveScoredAfterCatch { on, yes: false });
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}

/// 9.03(d): what an improper batter did is undone by the appeal, an out of the proper one stands.
#[test]
fn a_play_undone_by_an_appeal_counts_for_nothing() {
    let mut book = Scorer::nine();
    book.strikeout().walk();
    book.record(Event::BatterUp { player: PlayerId(4) }).error(Position::Shortstop, &[to(First, Third)]);
    book.record(Event::OutOfTurnAppeal);
    assert_eq!(book.game().situation().outs, 2);
    // Daniel bats in his own turn; two outs, no chance missed.
    book.home_run();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// A correction of the past settles the runs anew, and taking it back restores them.
#[test]
fn a_correction_and_its_correction() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]);
    let error = book.last();
    book.home_run();
    let before = runs(book.game());
    let single = book.game().log().iter().find(|e| e.id == error).map(|e| e.event.clone()).expect("the error");
    let mut hit = Scorer::nine();
    hit.single(&[]);
    let as_hit = hit.game().log().last().map(|e| e.event.clone()).expect("a single");
    book.record(Event::Replace { entry: error, event: Box::new(as_hit) });
    charged(&book, &[(PETER, 2, 2)], (2, 2));
    book.record(Event::Replace { entry: error, event: Box::new(single) });
    assert_eq!(runs(book.game()), before);
}

/// Both sides have their own sums.
#[test]
fn both_sides() {
    let mut book = Scorer::nine();
    book.home_run().side_retired();
    book.error(Position::Shortstop, &[]).home_run();
    let charges = runs(book.game());
    let visitors = Earned::of(&charges, Side::Visitors);
    assert_eq!((visitors.runs, visitors.team, visitors.pitchers), (2, 1, 1));
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}
