//! Ties, games called or forfeited, games still going on, games without pitchers (OBR 9.03(e), 7.01(c)).

use benchbook_stats::code::{Code, Preset};
use benchbook_stats::field::{Half, Side};
use benchbook_stats::log::{Entry, EntryId, Event, Status};
use benchbook_stats::ruling::decision::{Decisions, decisions, is_official};
use benchbook_tests::scorer::{PETER, Scorer, VISITING_STARTER};

use crate::{home_leads_by, play_to, to_the_end};

fn called() -> Status {
    Status::Called { why: "darkness".into() }
}

/// 9.03(e)(1): a tie has no winning or losing pitcher; the rest of the record counts.
#[test]
fn rule_9_03_e_1_a_tie() {
    let mut book = Scorer::nine();
    play_to(&mut book, 7, Half::Top);
    book.status(called());
    let decided = decisions(book.game());
    assert_eq!((decided.win, decided.loss, decided.save), (None, None, None));
    assert_eq!((decided.complete_games.len(), decided.shutouts.len()), (2, 2));
}

/// 7.01(c): a called game counts after five innings, or four and a half with the home side not behind.
#[test]
fn rule_7_01_c_regulation_game() {
    // (who leads, half-innings played, official)
    for (home_ahead, halves, official) in
        [(true, 8, false), (true, 9, true), (true, 10, true), (false, 8, false), (false, 9, false), (false, 10, true)]
    {
        // Stopped between two half-innings, or with a batter out in the next one.
        for more in [false, true] {
            let mut book = Scorer::nine();
            if !home_ahead {
                book.home_run();
            }
            book.side_retired();
            if home_ahead {
                book.home_run();
            }
            book.side_retired().halves(halves - 2);
            if more {
                book.strikeout();
            }
            assert!(is_official(book.game()), "while it goes on");
            book.status(called());
            assert_eq!(is_official(book.game()), official, "home ahead: {home_ahead}, {halves} half-innings");
            let decided = decisions(book.game());
            assert_eq!(decided.win.is_some(), official);
            if !official {
                assert_eq!(decided, Decisions::default(), "no records at all");
            }
        }
    }
}

/// Shorter games are official sooner, as their code says (common practice, no source).
#[test]
fn shorter_codes_are_official_sooner() {
    let code = Code { mercy: Vec::new(), run_limit: None, continuous_order: false, ..Preset::Youth6.code() };
    for (innings, official) in [(3, false), (4, true)] {
        let mut book = Scorer::by_code(code.clone());
        book.home_run().halves(innings * 2);
        book.status(called());
        assert_eq!(is_official(book.game()), official, "{innings} innings");
    }
}

/// Nobody turned up.
#[test]
fn forfeited_before_the_first_pitch() {
    let mut game = benchbook_stats::game::Game::new();
    let event = Event::Status(Status::Forfeited { winner: Side::Home, why: String::new() });
    game.record(Entry { id: EntryId(1), at: None, event }).expect("a forfeit needs no pitch");
    assert!(!is_official(&game));
    assert_eq!(decisions(&game), Decisions::default());
}

/// 9.03(e)(2): forfeited to the side that is ahead: as if called then. To the other, or with the score tied: nobody wins
/// or loses. Before it is a regulation game: no records at all.
#[test]
fn rule_9_03_e_2_forfeited() {
    for (winner, inning, win) in
        [(Side::Home, 7, Some(PETER)), (Side::Visitors, 7, None), (Side::Home, 3, None), (Side::Visitors, 3, None)]
    {
        let mut book = home_leads_by(1);
        play_to(&mut book, inning, Half::Top);
        book.status(Status::Forfeited { winner, why: "no players left".into() });
        let decided = decisions(book.game());
        assert_eq!(decided.win_of(), win);
        assert_eq!(decided.loss_of(), win.map(|_| VISITING_STARTER));
        assert_eq!(decided.complete_games.is_empty(), inning == 3);
    }
    let mut book = Scorer::nine();
    play_to(&mut book, 7, Half::Top);
    book.status(Status::Forfeited { winner: Side::Home, why: "no players left".into() });
    assert_eq!(decisions(book.game()).win, None);
}

/// Before the end it is what it would be if the game ended now.
#[test]
fn provisional_while_the_game_goes_on() {
    let mut book = home_leads_by(1);
    let decided = decisions(book.game());
    assert!(decided.provisional);
    assert_eq!((decided.win_of(), decided.loss_of()), (Some(PETER), Some(VISITING_STARTER)));
    book.home_run();
    assert_eq!(decisions(book.game()).win, None, "tied");
    book.home_run();
    assert_eq!(decisions(book.game()).win_of(), Some(VISITING_STARTER));
    assert!(!to_the_end(&mut book).provisional);
    assert_eq!(decisions(&benchbook_stats::game::Game::new()), Decisions::default());
}

/// Ended by a time limit, declared by the scorer: the league says it is a game.
#[test]
fn declared_final() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 4, Half::Top);
    book.status(Status::Final);
    let decided = decisions(book.game());
    assert_eq!(decided.win_of(), Some(PETER), "three innings in the field, and nobody relieved him");
}

/// A machine or a coach pitches.
#[test]
fn nobody_pitches() {
    let mut code = Preset::CoachPitch.code();
    code.fielders = 9;
    code.continuous_order = false;
    let mut book = Scorer::by_code(code);
    book.home_run();
    assert_eq!(to_the_end(&mut book), Decisions::default());
}

/// 9.18: a complete game is outs pitched; who has put nobody out has none, as things stand.
#[test]
fn no_complete_game_before_the_first_out() {
    let mut book = Scorer::nine();
    book.walk();
    assert!(decisions(book.game()).complete_games.is_empty() && decisions(book.game()).shutouts.is_empty());
    book.strikeout();
    assert!(decisions(book.game()).has_complete_game(PETER) && decisions(book.game()).has_shutout(PETER));
}
