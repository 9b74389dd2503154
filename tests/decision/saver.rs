//! Saves (OBR 9.19).

use benchbook_stats::field::Half;
use benchbook_stats::log::{Judgment, Status};
use benchbook_stats::ruling::decision::{Why, decisions};
use benchbook_tests::scorer::{PETER, ROGER, SIERRA};

use crate::{home_leads_by, play_to, to_the_end};

/// 9.19(d)(1) and (2) for every lead, every number of runners on base and every number of outs left in the ninth.
#[test]
fn rule_9_19_d_table_of_entries_in_the_ninth() {
    for lead in 1..9u32 {
        for on_base in 0..4u32 {
            for out in 0..3u32 {
                let mut book = home_leads_by(lead);
                play_to(&mut book, 9, Half::Top);
                for _ in 0..out {
                    book.strikeout();
                }
                for _ in 0..on_base {
                    book.walk();
                }
                book.relieve(ROGER);
                let decided = to_the_end(&mut book);
                let whole_inning = out == 0;
                let saves = (lead <= 3 && whole_inning) || lead <= on_base + 2;
                assert_eq!(decided.save_of().is_some(), saves, "ahead by {lead}, {on_base} on, {out} out");
                assert_eq!(decided.win_of(), Some(PETER));
                if let Some(save) = decided.save {
                    let rule = if lead <= 3 && whole_inning { "9.19(d)(1)" } else { "9.19(d)(2)" };
                    assert_eq!((save.pitcher, save.rule), (ROGER, rule));
                }
            }
        }
    }
}

/// 9.19(d)(3): three innings, whatever the lead; eight outs are not three innings.
#[test]
fn rule_9_19_d_3_three_innings() {
    for (outs_before, saved) in [(0, true), (1, false)] {
        let mut book = home_leads_by(9);
        play_to(&mut book, 7, Half::Top);
        for _ in 0..outs_before {
            book.strikeout();
        }
        book.relieve(ROGER);
        let decided = to_the_end(&mut book);
        assert_eq!(decided.save_of().is_some(), saved);
        assert_eq!(decided.finish_question, saved.then_some(ROGER));
        if saved {
            assert!(matches!(decided.save.map(|s| s.because), Some(Why::ThreeInnings { outs }) if outs.0 == 9));
            // The present rule has no "effectively"; a league that keeps the old word may judge.
            book.judge(Judgment::EffectiveFinish { pitcher: ROGER, yes: false });
            assert_eq!(decisions(book.game()).save, None);
            book.judge(Judgment::EffectiveFinish { pitcher: ROGER, yes: true });
            book.judge(Judgment::EffectiveFinish { pitcher: PETER, yes: false });
            assert_eq!(decisions(book.game()).save_of(), Some(ROGER));
        }
    }
}

/// 9.19(a): the finishing pitcher only; the one before him has a hold by custom.
#[test]
fn rule_9_19_a_only_the_one_who_finishes() {
    let mut book = home_leads_by(2);
    play_to(&mut book, 8, Half::Top);
    book.relieve(ROGER);
    play_to(&mut book, 9, Half::Top);
    book.relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert_eq!(decided.save_of(), Some(SIERRA));
    assert!(decided.has_hold(ROGER) && !decided.has_hold(SIERRA));
}

/// 9.19(b): not the winner; 9.19(c): at least a third of an inning.
#[test]
fn rule_9_19_b_and_c() {
    // The only reliever of a starter who left too early is the winner.
    let mut book = home_leads_by(2);
    play_to(&mut book, 4, Half::Top);
    book.relieve(ROGER);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.save), (Some(ROGER), None));

    // Called before he has put anybody out.
    let mut book = home_leads_by(2);
    play_to(&mut book, 7, Half::Top);
    book.walk().relieve(ROGER).walk();
    book.status(Status::Called { why: "rain".into() });
    let decided = decisions(book.game());
    assert_eq!((decided.win_of(), decided.save), (Some(PETER), None));
}

/// Whoever comes in with the score tied or behind has no lead to save.
#[test]
fn no_lead_no_save() {
    let mut book = home_leads_by(1);
    play_to(&mut book, 8, Half::Top);
    book.home_run().relieve(ROGER).side_retired();
    book.home_run().side_retired().relieve(SIERRA);
    let decided = to_the_end(&mut book);
    assert_eq!((decided.win_of(), decided.save_of()), (Some(ROGER), Some(SIERRA)));
    assert!(!decided.has_hold(ROGER));
}
