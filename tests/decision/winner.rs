//! The winning pitcher (OBR 9.17(a) to (c)).

use benchbook_stats::code::{Code, Preset};
use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::{Half, Position, Side};
use benchbook_stats::log::{Event, Judgment, Status};
use benchbook_stats::ruling::decision::{Why, decisions};
use benchbook_stats::team::{Change, PlayerId, Role};
use benchbook_tests::scorer::{PETER, ROGER, SIERRA, Scorer, VISITING_STARTER, to};

use crate::{VERA, home_leads_by, home_runs, play_to, to_the_end};

#[test]
fn rule_9_17_a_ahead_for_good_with_the_starter() {
    let mut book = home_leads_by(1);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.loss_of(), decided.save_of()), (Some(PETER), Some(VISITING_STARTER), None));
    assert_eq!(decided.win.map(|w| w.rule), Some("9.17(a)"));
    assert_eq!(decided.question, None);
    assert!(!decided.provisional);
}

/// The visitors go ahead before their starter has thrown a pitch: he is in the game.
#[test]
fn rule_9_17_a_ahead_in_the_top_of_the_first() {
    let mut book = Scorer::nine();
    book.home_run();
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.loss_of()), (Some(VISITING_STARTER), Some(PETER)));
}

/// 9.17(a): removed for a pinch hitter in the inning on offense in which his side goes ahead.
#[test]
fn rule_9_17_a_pinch_hitter_for_the_pitcher_and_then_the_lead() {
    let mut book = Scorer::nine();
    // Three up and three down each inning: the pitcher, first in the order, leads off the seventh.
    play_to(&mut book, 7, Half::Bottom);
    assert_eq!(book.game().situation().batter, Some(PETER));
    let change = Change::Substitute { outgoing: PETER, incoming: PlayerId(115), role: Role::PinchHitter };
    book.record(Event::Change { side: Side::Home, change }).home_run().side_retired();
    let shift =
        Change::Substitute { outgoing: PlayerId(115), incoming: ROGER, role: Role::Fielder(Position::Pitcher.into()) };
    book.record(Event::Change { side: Side::Home, change: shift });
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(PETER));
    assert_eq!(decided.save_of(), Some(ROGER));
}

/// 9.17(a) Comment: a tie makes a new contest.
#[test]
fn rule_9_17_a_comment_a_tie_makes_a_new_contest() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER).home_run().side_retired();
    home_runs(&mut book, 1);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(ROGER), "Peter's lead was lost");
}

/// 9.17(a) Comment: once the other side goes ahead, pitchers replaced before are out of it; the one against whom it did
/// wins if he is still pitching when his side goes ahead again.
#[test]
fn rule_9_17_a_comment_the_other_side_ahead_and_back_again() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER);
    home_runs(&mut book, 2);
    book.side_retired();
    home_runs(&mut book, 2);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(ROGER));

    let mut book = home_leads_by(1);
    play_to(&mut book, 7, Half::Top);
    book.relieve(ROGER);
    home_runs(&mut book, 2);
    book.relieve(SIERRA).side_retired();
    home_runs(&mut book, 2);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(SIERRA), "Roger was replaced while behind");
}

/// 9.17(b): at every out from the first inning to the sixth a starter ahead by two leaves; fifteen outs make him winner.
#[test]
fn rule_9_17_b_fifteen_outs_for_a_starter() {
    for outs in 3..20u8 {
        let mut book = home_leads_by(2);
        play_to(&mut book, outs / 3 + 1, Half::Top);
        for _ in 0..outs % 3 {
            book.strikeout();
        }
        book.relieve(ROGER);
        let decided = to_the_end(&mut book);
        let winner = if outs >= 15 { PETER } else { ROGER };
        assert_eq!(decided.win_of(), Some(winner), "{outs} outs");
        if outs < 15 {
            assert_eq!(decided.win.map(|w| w.because), Some(Why::OnlyReliever { needed: 5 }));
        }
        assert_eq!(decided.question, None, "with one reliever there is no choice");
    }
}

/// 9.17(b): a game of five innings on defense asks for four.
#[test]
fn rule_9_17_b_four_of_five_innings() {
    for (innings, needed) in [(5u8, 4u8), (6, 5)] {
        for left_after in [needed - 1, needed] {
            let mut book = home_leads_by(2);
            play_to(&mut book, left_after + 1, Half::Top);
            book.relieve(ROGER);
            play_to(&mut book, innings, Half::Bottom);
            book.status(Status::Called { why: "rain".into() });
            let winner = if left_after >= needed { PETER } else { ROGER };
            assert_eq!(decisions(book.game()).win_of(), Some(winner), "{left_after} of {innings}");
        }
    }
}

/// The shorter codes say how long (common practice, no source).
#[test]
fn shorter_codes_have_their_own_measure() {
    for (preset, needed) in [(Preset::Baseball7, 4u8), (Preset::Youth6, 4), (Preset::Fastpitch7, 4)] {
        let code = Code { mercy: Vec::new(), run_limit: None, continuous_order: false, ..preset.code() };
        assert_eq!(code.starter_innings_to_win, needed);
        for left_after in [needed - 1, needed] {
            let mut book = Scorer::by_code(code.clone());
            book.side_retired().home_run().side_retired();
            play_to(&mut book, left_after + 1, Half::Top);
            book.relieve(ROGER);
            let decided = to_the_end(&mut book);
            let winner = if left_after >= needed { PETER } else { ROGER };
            assert_eq!(decided.win_of(), Some(winner), "{preset:?}: {left_after}");
        }
    }
}

/// 9.17(b): of several relievers the most effective, which is a judgment; the usual answer stands until it is given.
#[test]
fn rule_9_17_b_the_most_effective_of_several() {
    let mut book = home_leads_by(5);
    play_to(&mut book, 4, Half::Top);
    book.relieve(ROGER).home_run();
    play_to(&mut book, 6, Half::Top);
    book.relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win.map(|w| (w.pitcher, w.because)), Some((SIERRA, Why::MostEffective { needed: 5 })));
    let question = decided.question.as_ref().expect("a judgment");
    let lines: Vec<_> = question.candidates.iter().map(|c| (c.pitcher, c.outs.to_string(), c.earned_runs)).collect();
    assert_eq!(lines, [(SIERRA, "4.0".into(), 0), (ROGER, "2.0".into(), 1)]);
    assert_eq!(decided.save_of(), None, "the finisher is the winner");

    book.judge(Judgment::WinningPitcher { pitcher: ROGER });
    let decided = decisions(book.game());
    assert_eq!(decided.win.map(|w| (w.pitcher, w.because)), Some((ROGER, Why::Judged)));
    assert_eq!(decided.save_of(), Some(SIERRA), "four innings finished (9.19(d)(3))");
    assert!(decided.question.is_some(), "still open to another judgment");

    // A pitcher of the other side can't win.
    book.judge(Judgment::WinningPitcher { pitcher: VISITING_STARTER });
    assert_eq!(decisions(book.game()).win_of(), Some(SIERRA));
}

/// 9.17(b) Comment: of pitchers alike the earlier has the presumption; who finished an inning comes before who did not;
/// then runs, then how long.
#[test]
fn rule_9_17_b_comment_what_effective_means() {
    // Two innings each, nothing allowed.
    let mut book = home_leads_by(5);
    play_to(&mut book, 5, Half::Top);
    book.relieve(ROGER);
    play_to(&mut book, 7, Half::Top);
    book.relieve(SIERRA);
    play_to(&mut book, 9, Half::Top);
    book.relieve(PlayerId(113));
    assert_eq!(to_the_end(&mut book).win_of(), Some(ROGER));

    // One out alone is not enough against an inning and a run.
    let mut book = home_leads_by(5);
    play_to(&mut book, 5, Half::Top);
    book.relieve(ROGER).strikeout().relieve(SIERRA).home_run();
    assert_eq!(to_the_end(&mut book).win_of(), Some(SIERRA));

    // The same innings and no runs: fewer base runners.
    let mut book = home_leads_by(5);
    play_to(&mut book, 4, Half::Top);
    book.relieve(ROGER).walk().walk();
    play_to(&mut book, 7, Half::Top);
    book.relieve(SIERRA);
    assert_eq!(to_the_end(&mut book).win_of(), Some(SIERRA));
}

/// The line a scorer is to weigh: base runners by walks, hits and hit batters, not by errors or interference; runs of
/// others that scored while he pitched.
#[test]
fn a_candidates_line() {
    let mut book = home_leads_by(5);
    play_to(&mut book, 4, Half::Top);
    book.walk().relieve(ROGER);
    book.walk().hit_batter().single(&[to(Third, Home), to(Second, Third), to(First, Second)]);
    book.error(Position::Shortstop, &[to(Third, Home), to(Second, Third), to(First, Second)]).catcher_interference();
    book.side_retired();
    play_to(&mut book, 5, Half::Top);
    book.relieve(SIERRA);
    let question = to_the_end(&mut book).question.expect("a judgment");
    let roger = question.candidates.iter().find(|c| c.pitcher == ROGER).expect("he pitched");
    assert_eq!((roger.outs.0, roger.baserunners), (3, 3));
    assert_eq!(
        (roger.runs, roger.earned_runs),
        (3, 2),
        "Peter's one, and two of his own, the last forced in by interference"
    );
}

/// 9.17(c) and its Comment: less than an inning, two earned runs in (though charged to the starter), and after his side
/// has gone ahead again the next one holds the lead.
#[test]
fn rule_9_17_c_brief_and_ineffective() {
    // Sierra is pitching already when the home side goes ahead: hers by 9.17(a).
    let mut book = home_leads_by(1);
    play_to(&mut book, 8, Half::Top);
    book.single(&[]).single(&[to(First, Second)]).relieve(ROGER);
    book.triple(&[to(Second, Home), to(First, Home)]).strikeout().relieve(SIERRA).side_retired();
    home_runs(&mut book, 2);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win.map(|w| (w.pitcher, w.rule)), Some((SIERRA, "9.17(a)")));

    // Roger is the pitcher of record, Sierra comes in afterwards.
    let mut book = home_leads_by(1);
    play_to(&mut book, 8, Half::Top);
    book.strikeout().strikeout().single(&[]).single(&[to(First, Second)]).relieve(ROGER);
    book.triple(&[to(Second, Home), to(First, Home)]).strikeout();
    home_runs(&mut book, 2);
    book.side_retired().relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert_eq!(
        decided.win.map(|w| (w.pitcher, w.because, w.rule)),
        Some((SIERRA, Why::AfterIneffective { instead_of: ROGER }, "9.17(c)"))
    );
    let candidates: Vec<_> = decided.question.expect("a judgment").candidates.iter().map(|c| c.pitcher).collect();
    assert_eq!(candidates, [SIERRA, ROGER]);
    assert_eq!(decided.save, None);
    // The Comment says "generally should": the scorer may judge otherwise, and then Sierra has the save.
    book.judge(Judgment::WinningPitcher { pitcher: ROGER });
    let decided = decisions(book.game());
    assert_eq!((decided.win_of(), decided.save_of()), (Some(ROGER), Some(SIERRA)));
}

/// 9.17(b) Comment: a full inning without a run is more than two innings with one; the runs are weighed by the outs.
#[test]
fn rule_9_17_b_comment_runs_by_the_inning() {
    let mut book = home_leads_by(6);
    play_to(&mut book, 5, Half::Top);
    book.relieve(ROGER).home_run();
    play_to(&mut book, 7, Half::Top);
    book.relieve(SIERRA);
    play_to(&mut book, 8, Half::Top);
    book.relieve(PlayerId(113)).home_run().home_run();
    assert_eq!(to_the_end(&mut book).win_of(), Some(SIERRA));
}

/// 9.17(c) Comment: nobody after the ineffective one was better: one put nobody out, the others were as ineffective.
#[test]
fn rule_9_17_c_comment_nobody_after_him_was_effective() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 8, Half::Top);
    book.strikeout().strikeout().single(&[]).relieve(ROGER).home_run().strikeout();
    home_runs(&mut book, 9);
    book.side_retired().relieve(SIERRA).walk().relieve(PlayerId(113)).home_run().home_run().strikeout().strikeout();
    book.relieve(PlayerId(114)).home_run().home_run();
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win.map(|w| (w.pitcher, w.rule)), Some((ROGER, "9.17(a)")));
    assert_eq!(decided.question, None);
}

/// 9.17(c) needs a succeeding pitcher who keeps the lead; and one full inning is not brief, one earned run not two.
#[test]
fn rule_9_17_c_does_not_apply() {
    // Nobody after him.
    let mut book = home_leads_by(1);
    play_to(&mut book, 9, Half::Top);
    book.strikeout().strikeout().single(&[]).relieve(ROGER).home_run().strikeout();
    home_runs(&mut book, 2);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.question), (Some(ROGER), None));

    // A whole inning, and one earned run in two thirds.
    for (outs_before, runs) in [(0, 2), (1, 1)] {
        let mut book = home_leads_by(1);
        play_to(&mut book, 7, Half::Top);
        for _ in 0..outs_before {
            book.strikeout();
        }
        book.relieve(ROGER);
        home_runs(&mut book, runs);
        book.side_retired();
        home_runs(&mut book, 2);
        book.side_retired().relieve(SIERRA);
        let decided = to_the_end(&mut book);
        assert_eq!((decided.win_of(), decided.save_of()), (Some(ROGER), Some(SIERRA)));
    }
}

/// The home side wins in its last turn at bat: the one who pitched the top of the inning.
#[test]
fn the_winning_run_ends_the_game() {
    let mut book = Scorer::nine();
    play_to(&mut book, 9, Half::Top);
    book.relieve(ROGER).side_retired().triple(&[]).single(&[to(Third, Home)]);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.loss_of()), (Some(ROGER), Some(VISITING_STARTER)));
    assert_eq!((decided.save, decided.holds.len()), (None, 0));
}

/// The visiting side's relievers by the same rule.
#[test]
fn the_visitors_win() {
    let mut book = Scorer::nine();
    book.side_retired().home_run();
    play_to(&mut book, 7, Half::Bottom);
    book.relieve(VERA);
    play_to(&mut book, 9, Half::Top);
    home_runs(&mut book, 2);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.loss_of(), decided.save_of()), (Some(VERA), Some(PETER), None));
}

/// A game cut short by a lead before a starter could pitch as long as the rule says: he had nobody to relieve him.
#[test]
fn a_starter_alone_in_a_short_game() {
    let mut book = Scorer::by_code(Preset::Youth6.code());
    let code = book.game().code().clone();
    assert!(code.mercy.iter().any(|m| m.after_inning == 3));
    book.side_retired();
    for _ in 0..3 {
        home_runs(&mut book, 5);
        if matches!(book.game().situation().phase, benchbook_stats::game::Phase::Over(_)) {
            break;
        }
        book.side_retired();
    }
    let decided = to_the_end(&mut book);
    assert_eq!(decided.win_of(), Some(PETER));
    assert!(decided.has_complete_game(PETER) && decided.has_shutout(PETER));
}
