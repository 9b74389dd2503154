//! The losing pitcher (OBR 9.17(d)): responsible for the run that puts the other side ahead for good.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::{Half, Position};
use benchbook_tests::scorer::{PETER, ROGER, Scorer, VISITING_STARTER, to};

use crate::{VERA, home_leads_by, home_runs, play_to, to_the_end};

/// Peter leaves the bases full, Roger gives up a home run: who loses hangs on how far the home side led.
#[test]
fn rule_9_17_d_inherited_runners() {
    for (lead, loser) in [(0, PETER), (1, PETER), (2, PETER), (3, ROGER)] {
        let mut book = home_leads_by(lead);
        play_to(&mut book, 7, Half::Top);
        book.walk().walk().walk().relieve(ROGER).home_run();
        let decided = to_the_end(&mut book);
        assert_eq!((decided.loss_of(), decided.win_of()), (Some(loser), Some(VISITING_STARTER)), "led by {lead}");
        assert_eq!(decided.loss.map(|l| l.rule), Some("9.17(d)"));
    }
}

/// 9.17(d) Comment: a tie makes a new contest.
#[test]
fn rule_9_17_d_comment_a_tie_makes_a_new_contest() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 5, Half::Top);
    // Ahead against Peter, tied again, ahead for good against Roger.
    home_runs(&mut book, 2);
    book.side_retired().home_run();
    play_to(&mut book, 8, Half::Top);
    book.relieve(ROGER).home_run();
    let decided = to_the_end(&mut book);
    assert_eq!(decided.loss_of(), Some(ROGER));
}

/// The runner who was passed on to Peter by a fielder's choice (9.16(g)) is the run that loses the game.
#[test]
fn a_runner_passed_on_loses_the_game() {
    let mut book = Scorer::nine();
    play_to(&mut book, 7, Half::Top);
    book.walk().relieve(ROGER);
    book.choice(&[benchbook_tests::scorer::forced(First, Second)]).triple(&[to(First, Home)]);
    assert_eq!(to_the_end(&mut book).loss_of(), Some(PETER));
}

/// An unearned run loses as well.
#[test]
fn an_unearned_run_loses_the_game() {
    let mut book = Scorer::nine();
    book.side_retired().error(Position::Shortstop, &[]).triple(&[to(First, Home)]);
    assert_eq!(to_the_end(&mut book).loss_of(), Some(VISITING_STARTER));
}

/// The run that loses is the one that gave the lead, not the last: behind by two, the visitors' relievers give up more.
#[test]
fn later_runs_change_nothing() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 5, Half::Bottom);
    book.relieve(VERA);
    home_runs(&mut book, 4);
    play_to(&mut book, 9, Half::Top);
    home_runs(&mut book, 4);
    assert_eq!(to_the_end(&mut book).loss_of(), Some(VISITING_STARTER));
}

/// The tie-break runner, put on base by rule, is the run that ends the game: it is charged to the pitcher of that moment.
#[test]
fn the_tie_break_runner_loses_the_game() {
    let mut book = Scorer::nine();
    play_to(&mut book, 10, Half::Bottom);
    book.relieve(VERA);
    assert!(book.game().situation().on(Second).is_some());
    book.single(&[to(Second, Third)]).single(&[to(Third, Home), to(First, Second)]);
    let decided = to_the_end(&mut book);
    // Vera came in after the runner had been placed.
    assert_eq!((decided.win_of(), decided.loss_of()), (Some(PETER), Some(VISITING_STARTER)));
}
