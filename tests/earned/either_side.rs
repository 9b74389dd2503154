//! Either side of each condition of the reconstruction (OBR 9.16): cases of our own in which the rule's logic alone
//! decides, written because the condition could be turned about without a test noticing.

use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::Position::{self, CenterField, FirstBase, Pitcher, RightField, SecondBase, Shortstop};
use benchbook_stats::log::{
    Action, Batted, Cause, Event, How, Judgment, Misplay, MisplayKind, Move, Out, Reached, Start, Trajectory, Unseen,
    UnseenResult,
};
use benchbook_stats::ruling::earned::{Reason, runs};
use benchbook_stats::team::PlayerId;
use benchbook_tests::scorer::{PETER, ROGER, Scorer, ball, by, forced, tagged, then, to};

use crate::{charged, helped_to_stand_at, last};

fn line() -> Batted {
    ball(Trajectory::Line, CenterField)
}

fn batter(to: Base) -> Move {
    Move::safe(Start::Batter, to, Cause::Play)
}

/// The batter reached there and was put out at the next base.
fn stretched(reached: Base, at: Base) -> Move {
    Move { out: Some(Out::new(How::Tag, at, &[CenterField, SecondBase])), ..batter(reached) }
}

fn misplay(by: Position, kind: MisplayKind) -> Misplay {
    Misplay::new(by, kind)
}

// ---- Outs that should have been, and the runs of that play ----

/// 5.08(a), 9.16(a): the second out in fact is the third that should be. By a force, no run of the play would count; by
/// a tag, the one in before it would.
#[test]
fn a_run_ahead_of_the_third_out_that_should_have_been() {
    for (out, earned) in [(forced(First, Second), 0), (tagged(First, Third), 1)] {
        let mut book = Scorer::nine();
        book.strikeout().error(Shortstop, &[]).triple(&[to(First, Home)]).walk();
        book.choice(&[to(Third, Home), out]).strikeout();
        charged(&book, &[(PETER, 2, earned)], (2, earned));
    }
}

/// 5.08(a), 9.16(c): the throw for a runner who was not forced is dropped; the run that was in before it counts.
#[test]
fn a_dropped_tag_of_a_runner_who_was_not_forced() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk().double(&[to(First, Third)]);
    let muff = misplay(Position::ThirdBase, MisplayKind::Muff);
    book.in_play(line(), &[to(Third, Home), by(Second, Third, Cause::Error(0))], batter(First), &[muff]).strikeout();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// 9.16(c): an error spares a runner who ends where he was, while another moves up behind him.
#[test]
fn a_spared_runner_stays_while_another_moves() {
    let muff = Misplay { spared: Some(Start::Third), ..misplay(Position::Catcher, MisplayKind::Muff) };
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).walk().erring(&[by(First, Second, Cause::Throw)], &[muff]);
    let on = book.last();
    book.home_run().strikeout();
    charged(&book, &[(PETER, 3, 0)], (3, 0));
    assert_eq!(last(&book).because, Reason::InningOver { third: on, missed: vec![on] });
}

/// 9.16(c): a wild throw past third after the out at first gives a base; it lost no out.
#[test]
fn a_wild_throw_behind_a_batted_ball_spares_nobody() {
    let mut book = Scorer::nine();
    book.strikeout().double(&[]);
    let out = Out::new(How::Force, First, &[Shortstop, FirstBase]);
    let wild = misplay(FirstBase, MisplayKind::Throwing);
    let grounder = ball(Trajectory::Ground, Shortstop);
    book.in_play(grounder, &[by(Second, Third, Cause::Error(0))], Move::out(Start::Batter, out), &[wild]);
    book.home_run().strikeout();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(c): a pickoff throw is dropped and the runner takes second: the entry names nobody who should be out.
#[test]
fn a_muffed_pickoff_spares_nobody_unless_the_entry_says_so() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk();
    book.erring(&[by(First, Second, Cause::Error(0))], &[misplay(FirstBase, MisplayKind::Muff)]);
    book.home_run().strikeout();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(c): the throw to second is dropped on a fielder's choice; the runner who came in meanwhile was spared nothing.
#[test]
fn a_dropped_throw_spares_its_own_runner_alone() {
    let mut book = Scorer::nine();
    book.triple(&[]).walk();
    let muff = misplay(SecondBase, MisplayKind::Muff);
    let chosen = Move::safe(Start::Batter, First, Cause::Choice);
    let grounder = ball(Trajectory::Ground, Shortstop);
    book.in_play(grounder, &[to(Third, Home), by(First, Second, Cause::Error(0))], chosen, &[muff]).side_retired();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

// ---- Who takes whose place ----

/// 9.16(g): a hit is no fielder's choice. The runner who should not be there is out on it, and the batter is on by right.
#[test]
fn a_hit_puts_nobody_in_the_place_of_a_runner_put_out() {
    let mut book = Scorer::nine();
    book.error(Shortstop, &[]);
    book.in_play(ball(Trajectory::Line, RightField), &[tagged(First, Third)], batter(First), &[]);
    book.home_run().side_retired();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(g): the batter is safe on an error while Peter's runner is tagged going two bases: nobody was chosen, and he is
/// the reliever's own.
#[test]
fn a_tag_on_the_batters_error_is_no_choice() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.reaches_on(misplay(Shortstop, MisplayKind::Fielding), &[tagged(First, Third)]).home_run().side_retired();
    charged(&book, &[(PETER, 0, 0), (ROGER, 2, 1)], (2, 1));
}

/// 9.16(g): nor is he who walks while Peter's runner is put out.
#[test]
fn a_walk_is_no_choice() {
    let mut book = Scorer::nine();
    book.double(&[]).relieve(ROGER);
    let moves = vec![tagged(Second, Third)];
    let action = Action { moves, misplays: Vec::new() };
    book.record(Event::Unseen(Unseen { result: UnseenResult::Walk, action })).home_run().side_retired();
    charged(&book, &[(PETER, 0, 0), (ROGER, 2, 2)], (2, 2));
}

/// 9.16(g): the batter who reached on a choice and is put out in the same play takes nobody's place, nor does the next
/// runner: Roger's own is Roger's.
#[test]
fn a_batter_put_out_after_the_choice_passes_nobody_on() {
    let mut book = Scorer::nine();
    book.double(&[]).relieve(ROGER).walk();
    let chosen = Move::safe(Start::Batter, First, Cause::Choice);
    let out = Move { out: Some(Out::new(How::Tag, First, &[Position::ThirdBase, FirstBase])), ..chosen };
    book.in_play(ball(Trajectory::Ground, Pitcher), &[tagged(Second, Third), to(First, Second)], out, &[]);
    book.home_run().strikeout();
    charged(&book, &[(PETER, 0, 0), (ROGER, 2, 2)], (2, 2));
}

// ---- How far a runner would have come ----

/// 9.16(d): a base taken on the throw is no help from anybody.
#[test]
fn a_base_taken_on_the_throw() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk();
    book.in_play(line(), &[to(First, Third)], then(batter(First), Second, Cause::Throw), &[]);
    book.single(&[to(Third, Home), to(Second, Home)]).strikeout();
    charged(&book, &[(PETER, 2, 2)], (2, 2));
}

/// 9.16(d): a double gives two bases to one who without the passed ball would be on second, though he ran only one.
#[test]
fn a_double_brings_home_the_runner_who_would_be_on_second() {
    let mut book = Scorer::nine();
    book.double(&[]).running(&[by(Second, Third, Cause::PassedBall)]).double(&[to(Third, Home)]).side_retired();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// 9.16(f): a double on which the batter is put out at third gives a runner no more than he ran; whether he could have
/// run further is doubt.
#[test]
fn no_more_than_he_ran() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::PassedBall)]);
    book.in_play(line(), &[to(Second, Third)], stretched(Second, Third), &[]);
    book.single(&[to(Third, Home)]).side_retired();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Third)(&last(&book).because), "{:?}", last(&book));
}

/// 9.16(d): helped on this very play, he is given nothing more by the rest of it.
#[test]
fn what_follows_the_help_in_the_same_play() {
    let mut book = Scorer::nine();
    let wild = misplay(Pitcher, MisplayKind::Throwing);
    book.walk().erring(&[then(by(First, Second, Cause::Error(0)), Third, Cause::Steal)], &[wild]);
    book.double(&[to(Third, Home)]).side_retired();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Third)(&last(&book).because), "{:?}", last(&book));
}

/// 9.05, 9.16(d): an error for two bases that the scorer judges a single: the second base was the error's all the same.
#[test]
fn a_two_base_error_judged_a_single() {
    let mut book = Scorer::nine();
    let batter = Move::safe(Start::Batter, Second, Cause::Error(0));
    book.strikeout().strikeout();
    book.in_play(line(), &[], batter, &[misplay(CenterField, MisplayKind::Fielding)]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Hit(1) });
    book.single(&[to(Second, Home)]).strikeout();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Second)(&last(&book).because), "{:?}", last(&book));
}

/// 9.12(a), 9.16(d): a wild throw that brought in the runner too is an error, though the batter himself is judged to have
/// had a hit.
#[test]
fn a_wild_throw_that_brings_both_home_judged_a_single() {
    let mut book = Scorer::nine();
    let all_the_way = Move::safe(Start::Batter, Home, Cause::Error(0));
    let grounder = ball(Trajectory::Ground, Shortstop);
    book.strikeout().strikeout().walk();
    let wild = misplay(Shortstop, MisplayKind::Throwing);
    book.in_play(grounder, &[by(First, Home, Cause::Error(0))], all_the_way, &[wild]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Hit(1) }).strikeout();
    charged(&book, &[(PETER, 2, 0)], (2, 0));
}

// ---- Would he have scored? ----

/// 9.16(d): the word on one runner is no word on the other who scored on the same play.
#[test]
fn judged_for_one_of_two_runners() {
    for (runner, earned) in [(1, [false, false]), (2, [true, false])] {
        let mut book = Scorer::nine();
        book.triple(&[]).walk();
        let home = then(to(First, Second), Home, Cause::Error(0));
        book.in_play(line(), &[to(Third, Home), home], batter(First), &[misplay(CenterField, MisplayKind::Fielding)]);
        let on = book.last();
        book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(runner), yes: false }).side_retired();
        assert_eq!(runs(book.game()).iter().map(|c| c.earned).collect::<Vec<_>>(), earned, "word on {runner}");
    }
}

/// 9.16(d): on a play without a misplay there is nothing to judge: he did score.
#[test]
fn a_judgment_on_a_clean_play_changes_nothing() {
    let mut book = Scorer::nine();
    book.triple(&[]).single(&[to(Third, Home)]);
    let on = book.last();
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(1), yes: false }).side_retired();
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

/// 9.16(d), (f): judged not to have scored, he stands on third, and three walks would have forced him in.
#[test]
fn judged_to_stand_on_third_and_then_forced_in() {
    let mut book = Scorer::nine();
    let fumble = misplay(CenterField, MisplayKind::Fielding);
    book.triple(&[]).in_play(line(), &[to(Third, Home)], then(batter(First), Second, Cause::Error(0)), &[fumble]);
    let on = book.last();
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(1), yes: false }).walk();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
    assert!(helped_to_stand_at(Third)(&last(&book).because), "{:?}", last(&book));
    book.walk().walk();
    let charges = runs(book.game());
    assert!(charges[0].earned, "{charges:#?}");
}

/// 9.16(d): judged not to have scored, he stands where he was before the errors, and no further on.
#[test]
fn judged_not_to_have_scored_from_first() {
    let mut book = Scorer::nine();
    book.walk().erring(&[by(First, Home, Cause::Error(0))], &[misplay(Pitcher, MisplayKind::Throwing)]);
    let on = book.last();
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(1), yes: false });
    assert!(helped_to_stand_at(First)(&last(&book).because), "{:?}", last(&book));
    book.single(&[]).side_retired();
    charged(&book, &[(PETER, 1, 0)], (1, 0));
}
