//! Holds and blown saves: custom, not in the rules, and labelled so.

use benchbook_stats::field::Half;
use benchbook_tests::scorer::{PETER, ROGER, SIERRA};

use crate::{home_leads_by, home_runs, play_to, to_the_end};

/// In with a lead to keep, lost: blown; his side goes ahead again: he wins all the same.
#[test]
fn a_blown_save_and_a_win() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 9, Half::Top);
    book.relieve(ROGER).home_run().side_retired().home_run();
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(ROGER));
    assert!(decided.has_blown_save(ROGER) && decided.holds.is_empty());
    assert_eq!(decided.blown_saves[0].rule, "custom");
}

/// The tying run was the starter's own runner: the save is blown by the one who was pitching.
#[test]
fn blown_with_an_inherited_runner() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 8, Half::Top);
    book.walk().relieve(ROGER).home_run();
    let decided = to_the_end(&mut book);
    assert!(decided.has_blown_save(ROGER));
    assert_eq!(decided.loss_of(), Some(ROGER), "his own run put them ahead");
}

/// A hold stands though the next one loses the lead; without an out there is none.
#[test]
fn holds() {
    let mut book = home_leads_by(2);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER).side_retired();
    play_to(&mut book, 8, Half::Top);
    book.relieve(SIERRA);
    home_runs(&mut book, 3);
    let decided = to_the_end(&mut book);
    assert!(decided.has_hold(ROGER) && !decided.has_hold(SIERRA));
    assert!(decided.has_blown_save(SIERRA) && !decided.has_blown_save(ROGER));
    assert_eq!(decided.loss_of(), Some(SIERRA));

    let mut book = home_leads_by(2);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER).walk().relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert!(decided.holds.is_empty());
    assert_eq!((decided.win_of(), decided.save_of()), (Some(PETER), Some(SIERRA)));
}

/// Far ahead there is nothing to hold.
#[test]
fn no_hold_with_a_large_lead() {
    let mut book = home_leads_by(6);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER).side_retired();
    play_to(&mut book, 8, Half::Top);
    book.relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert!(decided.holds.is_empty() && decided.save.is_none());
    assert!(!decided.has_hold(ROGER) && !decided.has_blown_save(ROGER));
}

/// What there is to keep: a lead of three or fewer, or the tying run on base, at bat or on deck.
#[test]
fn what_there_is_to_hold() {
    for (lead, on_base, held) in [(1, 0, true), (3, 0, true), (4, 0, false), (4, 1, false), (4, 2, true), (5, 3, true)]
    {
        let mut book = home_leads_by(lead);
        play_to(&mut book, 7, Half::Top);
        for _ in 0..on_base {
            book.walk();
        }
        book.relieve(ROGER).side_retired();
        play_to(&mut book, 8, Half::Top);
        book.relieve(SIERRA);
        assert_eq!(to_the_end(&mut book).has_hold(ROGER), held, "ahead by {lead}, {on_base} on base");
    }
}
