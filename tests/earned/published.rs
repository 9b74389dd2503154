//! Innings worked out by official scorers and teachers of scoring, as published; players and teams left out.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::log::{Cause, How, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_tests::scorer::{PETER, ROGER, Scorer, ball, by, tagged, then, to};

use crate::charged;

/// A scorer's blog on this rule, June 2004 (then 10.18(i)): double, single (1 in), dropped throw at first, double steal,
/// double (2 in); reliever; single with a runner out at home, single, infield fly, single (1 in), fly. The starter has
/// two earned runs of three; the reliever's one is earned against him and unearned against the team.
#[test]
fn team_unearned_run() {
    let mut book = Scorer::nine();
    let muff = Misplay { after: vec![Position::ThirdBase], ..Misplay::new(Position::FirstBase, MisplayKind::Muff) };
    book.double(&[])
        .single(&[to(Second, Home)])
        .reaches_on(muff, &[to(First, Second)])
        .running(&[by(Second, Third, Cause::Steal), by(First, Second, Cause::Steal)])
        .double(&[to(Third, Home), to(Second, Home)])
        .relieve(ROGER);
    book.single(&[tagged(Second, Home)])
        .single(&[to(First, Second)])
        .fly_out(&[])
        .single(&[to(Second, Home), to(First, Second)])
        .fly_out(&[]);
    charged(&book, &[(PETER, 3, 2), (ROGER, 1, 1)], (4, 2));
}

/// A British scoring quiz, 2009: two strikeouts, home run, walk, dropped foul pop by the first baseman, home run on the
/// next pitch, fly out. One of three runs is earned.
#[test]
fn quiz_dropped_foul_pop_with_two_outs() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().home_run().walk().foul_fly_muffed(Position::FirstBase).home_run().fly_out(&[]);
    charged(&book, &[(PETER, 3, 1)], (3, 1));
}

/// The same quiz, February 2009 (9.16(e), then 10.16(e)): the pitcher's own error with two outs, home run, the second
/// baseman's error, home run. None of four.
#[test]
fn quiz_an_error_by_the_pitcher_is_like_any_other() {
    let mut book = Scorer::nine();
    book.strikeout()
        .strikeout()
        .error(Position::Pitcher, &[])
        .home_run()
        .error(Position::SecondBase, &[])
        .home_run()
        .fly_out(&[]);
    charged(&book, &[(PETER, 4, 0)], (4, 0));
}

/// A question to a public forum, 2005, with the score as it was officially kept: bases full and one out; a ground ball
/// is bobbled at third, one run in, everyone safe; a slow bouncer to first, another run in. Exactly one is earned: the
/// double play that might have been can't be assumed.
#[test]
fn bases_full_error_then_a_ground_out() {
    let mut book = Scorer::nine();
    book.strikeout()
        .walk()
        .walk()
        .walk()
        .error(Position::ThirdBase, &[to(Third, Home), to(Second, Third), to(First, Second)])
        .ground_out(&[to(Third, Home), to(Second, Third), to(First, Second)]);
    charged(&book, &[(PETER, 2, 1)], (2, 1));
}

/// A case that the statistician of a major league put right in 2013: the first batter reaches on an error and is hit by
/// the next one's ground ball, which is a hit by rule, so that no out can be supposed on it. Then a single with a
/// throwing error (one base too many for the runner ahead), a steal, a strikeout, a double (2 in), a single (1 in), a
/// runner caught stealing. Supposing the out, the inning ends on the strikeout; without it, all three are earned.
#[test]
fn runner_hit_by_the_ball_makes_a_hit_and_no_supposed_out() {
    let hit_by_ball = Move::out(Start::First, Out::new(How::HitByBall, Second, &[Position::SecondBase]));
    let wild = Misplay::new(Position::Shortstop, MisplayKind::Throwing);
    let mut book = Scorer::nine();
    book.error(Position::ThirdBase, &[])
        .in_play(
            ball(Trajectory::Ground, Position::SecondBase),
            &[hit_by_ball],
            Move::safe(Start::Batter, First, Cause::Play),
            &[],
        )
        .in_play(
            ball(Trajectory::Ground, Position::Shortstop),
            &[then(to(First, Second), Third, Cause::Error(0))],
            Move::safe(Start::Batter, First, Cause::Play),
            &[wild],
        )
        .running(&[by(First, Second, Cause::Steal)])
        .strikeout()
        .double(&[to(Third, Home), to(Second, Home)])
        .single(&[to(Second, Home)])
        .strikeout();
    charged(&book, &[(PETER, 3, 3)], (3, 3));
}

/// An official scorer's column on imaginary innings: a steal of second with an overthrow to third, then a sacrifice fly.
/// Unearned so far, though what follows may make it earned.
#[test]
fn overthrow_on_a_steal_then_a_sacrifice_fly() {
    let wild = Misplay::new(Position::Catcher, MisplayKind::Throwing);
    let mut book = Scorer::nine();
    book.single(&[])
        .erring(&[then(by(First, Second, Cause::Steal), Third, Cause::Error(0))], &[wild])
        .fly_out(&[to(Third, Home)]);
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(crate::last(&book).provisional);
    book.double(&[]);
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// A question to a school baseball forum: walk, to second on the catcher's wild pickoff throw, bunt with everyone safe on
/// a choice, sacrifice fly, fly, strikeout. Without the error he would have been at second on the fly.
#[test]
fn wild_pickoff_then_bunt_then_sacrifice_fly() {
    let wild = Misplay::new(Position::Catcher, MisplayKind::Throwing);
    let mut book = Scorer::nine();
    book.walk()
        .erring(&[by(First, Second, Cause::Error(0))], &[wild])
        .choice(&[to(Second, Third)])
        .fly_out(&[to(Third, Home), by(First, Second, Cause::Throw)])
        .fly_out(&[])
        .strikeout();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}
