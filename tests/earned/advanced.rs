//! Where runners would stand (OBR 9.16(d), 9.16(f)): hard cases of our own, each with its reason.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::log::{Cause, Misplay, MisplayKind, Move, Start, Trajectory};
use benchbook_stats::ruling::earned::{Help, Reason};
use benchbook_tests::scorer::{PETER, Scorer, ball, by, then, to};

use crate::{charged, helped_to_stand_at, last};

fn misplay(by: Position, kind: MisplayKind) -> Misplay {
    Misplay::new(by, kind)
}

/// 9.16(d): a passed ball to second, then a single; with bases enough behind it the run becomes earned.
#[test]
fn passed_balls_are_made_good_by_later_hits() {
    let mut book = Scorer::nine();
    book.walk()
        .running(&[by(First, Second, Cause::PassedBall)])
        .running(&[by(Second, Third, Cause::PassedBall)])
        .single(&[to(Third, Home)]);
    assert!(helped_to_stand_at(Second)(&last(&book).because));
    assert!(last(&book).provisional);
    // From second on another single: third for certain, home in doubt.
    book.single(&[to(First, Second)]);
    assert!(helped_to_stand_at(Third)(&last(&book).because));
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    // With two behind him and first base taken, a walk forces him in.
    book.walk();
    assert!(matches!(last(&book).because, Reason::WouldHaveScored { by: Help::PassedBall, .. }));
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// Helped all the way round, then forced in by walks alone.
#[test]
fn three_walks_would_have_forced_him_in() {
    let mut book = Scorer::nine();
    book.walk();
    for (from, at) in [(First, Second), (Second, Third), (Third, Home)] {
        book.running(&[by(from, at, Cause::PassedBall)]);
    }
    book.walk().walk();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Third)(&last(&book).because));
    book.walk();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
    assert!(!last(&book).provisional);
}

/// An extra base on an outfielder's error, then an infield out that scores him: from second he would not have come in,
/// and outs give him nothing (9.16(f): the pitcher has the benefit of the doubt).
#[test]
fn an_extra_base_then_outs() {
    let mut book = Scorer::nine();
    let fumble = misplay(Position::CenterField, MisplayKind::Fielding);
    let batter = then(Move::safe(Start::Batter, Second, Cause::Play), Third, Cause::Error(0));
    book.in_play(ball(Trajectory::Line, Position::CenterField), &[], batter, &[fumble])
        .ground_out(&[to(Third, Home)])
        .strikeout()
        .strikeout();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Second)(&last(&book).because));
    assert!(!last(&book).provisional, "the half-inning is over");
}

/// The same, and a triple after it: he would have come in from second.
#[test]
fn an_extra_base_then_an_out_then_a_triple() {
    let mut book = Scorer::nine();
    let fumble = misplay(Position::CenterField, MisplayKind::Fielding);
    let batter = then(Move::safe(Start::Batter, Second, Cause::Play), Third, Cause::Error(0));
    book.in_play(ball(Trajectory::Line, Position::CenterField), &[], batter, &[fumble])
        .ground_out(&[to(Third, Home)])
        .triple(&[])
        .strikeout()
        .strikeout();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// Nobody is passed: if the runner behind him comes in without help, so would he.
#[test]
fn a_runner_behind_comes_in_without_help() {
    let mut book = Scorer::nine();
    book.walk()
        .running(&[by(First, Second, Cause::PassedBall)])
        .running(&[by(Second, Third, Cause::PassedBall)])
        .running(&[by(Third, Home, Cause::PassedBall)])
        .single(&[])
        .running(&[by(First, Second, Cause::Steal)])
        .running(&[by(Second, Third, Cause::Steal)]);
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// A home run is enough for anybody.
#[test]
fn a_home_run_makes_everything_good() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::PassedBall)]).home_run();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(b)(1): the hit of a batter who should have been out on a foul fly moves nobody along by rights.
#[test]
fn the_hit_after_a_dropped_foul_fly() {
    let mut book = Scorer::nine();
    book.single(&[]).foul_fly_muffed(Position::FirstBase).double(&[to(First, Third)]).fly_out(&[to(Third, Home)]);
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(First)(&last(&book).because));
    book.home_run();
    // Nobody out but the foul and the sacrifice fly: Abel comes in from first on the home run; Baker never.
    charged(&book, &[(PETER, 3, 2)], (3, 2));
}

/// A wild throw on a steal gives a base but costs no out.
#[test]
fn a_wild_throw_on_a_steal_costs_no_out() {
    let mut book = Scorer::nine();
    let wild = misplay(Position::Catcher, MisplayKind::Throwing);
    book.strikeout()
        .strikeout()
        .single(&[])
        .erring(&[then(by(First, Second, Cause::Steal), Third, Cause::Error(0))], &[wild])
        .single(&[to(Third, Home)])
        .home_run();
    charged(&book, &[(PETER, 3, 3)], (3, 3));
}

/// Interference with the batter forces in a run: the runner was helped (9.16(d)), until a walk would have done the same.
#[test]
fn a_run_forced_in_by_catchers_interference() {
    let mut book = Scorer::nine();
    book.walk().walk().walk().catcher_interference();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(matches!(last(&book).because, Reason::Helped { by: Help::Interference, stands: Third, .. }));
    book.walk();
    charged(&book, &[(PETER, 2, 1)], (2, 1));
    book.single(&[to(Third, Home), to(Second, Third), to(First, Second)]);
    // In: Abel and Baker by a walk and a single; Charlie would be on third; the batter interfered with never.
    charged(&book, &[(PETER, 3, 2)], (3, 2));
}

/// 9.08(d): a fly is dropped, the runner from third would have scored after a catch: an out, and the run is earned.
#[test]
fn sacrifice_fly_dropped() {
    let mut book = Scorer::nine();
    book.triple(&[])
        .reaches_on(misplay(Position::LeftField, MisplayKind::DroppedFly), &[by(Third, Home, Cause::Error(0))])
        .strikeout()
        .strikeout();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// 9.04(a)(3): with fewer than two outs the runner from third would ordinarily score on the ball that was bobbled; with
/// two he would not, and from second only the error brings him in.
#[test]
fn in_from_third_on_the_batters_error() {
    for (outs, earned) in [(0, 1), (1, 1), (2, 0)] {
        let mut book = Scorer::nine();
        for _ in 0..outs {
            book.strikeout();
        }
        book.double(&[])
            .triple(&[to(Second, Home)])
            .error(Position::Shortstop, &[by(Third, Home, Cause::Error(0))])
            .side_retired();
        charged(&book, &[(PETER, 2, 1 + earned)], (2, 1 + earned));
    }
    let mut book = Scorer::nine();
    book.double(&[]).error(Position::Shortstop, &[by(Second, Home, Cause::Error(0))]).side_retired();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}
