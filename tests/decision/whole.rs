//! Complete games and shutouts (OBR 9.18).

use benchbook_stats::field::Half;
use benchbook_stats::field::Position;
use benchbook_stats::ruling::decision::Why;
use benchbook_tests::scorer::{PETER, ROGER, SIERRA, Scorer, VISITING_STARTER};

use crate::{home_leads_by, play_to, to_the_end};

#[test]
fn rule_9_18_the_whole_game_without_a_run() {
    let mut book = home_leads_by(1);
    let decided = to_the_end(&mut book);
    assert!(decided.has_complete_game(PETER) && decided.has_shutout(PETER));
    // The loser pitched a complete game of eight innings too.
    assert!(decided.has_complete_game(VISITING_STARTER) && !decided.has_shutout(VISITING_STARTER));
}

/// An unearned run is a run.
#[test]
fn rule_9_18_an_unearned_run_spoils_it() {
    let mut book = home_leads_by(3);
    book.strikeout().strikeout().error(Position::Shortstop, &[]).home_run();
    let decided = to_the_end(&mut book);
    assert!(decided.has_complete_game(PETER) && !decided.has_complete_game(ROGER) && decided.shutouts.is_empty());
}

/// Two pitchers share it: nobody's.
#[test]
fn rule_9_18_two_pitchers() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 9, Half::Top);
    book.relieve(ROGER);
    let decided = to_the_end(&mut book);
    assert!(!decided.has_complete_game(PETER) && decided.shutouts.is_empty());
}

/// Unless the second came in with nobody out and no run in, in the first inning, and pitched the rest without a run.
#[test]
fn rule_9_18_from_the_first_out_on() {
    for (outs, third, shutout) in [(0, false, true), (1, false, false), (0, true, false)] {
        let mut book = Scorer::nine();
        for _ in 0..outs {
            book.strikeout();
        }
        book.walk().relieve(ROGER).side_retired();
        book.home_run();
        if third {
            play_to(&mut book, 9, Half::Top);
            book.relieve(SIERRA);
        }
        let decided = to_the_end(&mut book);
        assert_eq!(decided.has_shutout(ROGER), shutout);
        assert!(!decided.has_complete_game(ROGER), "he did not start");
        if shutout {
            assert_eq!(decided.shutouts[0].because, Why::FromTheFirstOut);
        }
    }
}
