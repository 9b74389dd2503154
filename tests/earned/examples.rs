//! Every example of OBR 9.16 and its Comments.

use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Count, Position};
use benchbook_stats::log::{Attempt, Cause, How, Move, Out, Start, Trajectory};
use benchbook_tests::scorer::{PETER, ROGER, SIERRA, Scorer, ball, by, forced, tagged, then, to};

use crate::charged;

#[test]
fn rule_9_16_a_comment_1_error_with_two_outs_then_two_home_runs() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).home_run().home_run().fly_out(&[]);
    charged(&book, &[(PETER, 3, 0)], (3, 0));
}

#[test]
fn rule_9_16_a_comment_2_triple_and_wild_pitch() {
    let mut book = Scorer::nine();
    book.strikeout().triple(&[]).running(&[by(Third, Home, Cause::WildPitch)]).strikeout().ground_out(&[]);
    charged(&book, &[(PETER, 1, 1)], (1, 1));
}

#[test]
fn rule_9_16_a_comment_3_error_with_two_outs_then_a_home_run() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]).home_run().strikeout();
    charged(&book, &[(PETER, 2, 0)], (2, 0));
}

/// No out is assumed: it is unknown how the batter would have fared.
#[test]
fn rule_9_16_a_comment_4_catchers_interference_with_two_outs_then_a_home_run() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().catcher_interference().home_run().strikeout();
    charged(&book, &[(PETER, 2, 1)], (2, 1));
}

#[test]
fn rule_9_16_g_comment_1_inherited_runner_scores() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.ground_out(&[to(First, Second)]).fly_out(&[]).single(&[to(Second, Home)]);
    charged(&book, &[(PETER, 1, 1), (ROGER, 0, 0)], (1, 1));
}

#[test]
fn rule_9_16_g_comment_2_the_batter_takes_the_place_of_the_runner_he_forces() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.choice(&[forced(First, Second)]).ground_out(&[to(First, Second)]).single(&[to(Second, Home)]);
    charged(&book, &[(PETER, 1, 1), (ROGER, 0, 0)], (1, 1));
}

/// The number of runners counts, not the runners: Abel is put out by the batter's action, so the first run is Peter's
/// though Baker reached against Roger. (Example 6 can't be right unless this is.)
#[test]
fn rule_9_16_g_comment_3_runner_out_at_home_another_scores_for_him() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.single(&[to(First, Third)])
        .choice(&[tagged(Third, Home), to(First, Second)])
        .fly_out(&[])
        .single(&[to(Second, Home), to(First, Second)]);
    charged(&book, &[(PETER, 1, 1), (ROGER, 0, 0)], (1, 1));
}

/// Abel is put out without action by the batter: Peter answers for nobody any more.
#[test]
fn rule_9_16_g_comment_4_inherited_runner_picked_off() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.walk().fly_out(&[]).running(&[picked_off(Second)]).double(&[to(First, Home)]);
    charged(&book, &[(PETER, 0, 0), (ROGER, 1, 1)], (1, 1));
}

#[test]
fn rule_9_16_g_comment_5_three_pitchers_a_run_each() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.walk().relieve(SIERRA);
    book.choice(&[forced(Second, Third), to(First, Second)])
        .choice(&[forced(Second, Third), to(First, Second)])
        .home_run();
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1), (SIERRA, 1, 1)], (3, 3));
}

#[test]
fn rule_9_16_g_comment_6_runner_forced_at_home_then_two_score() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    book.walk()
        .single(&[to(Second, Third), to(First, Second)])
        .choice(&[forced(Third, Home), to(Second, Third), to(First, Second)])
        .single(&[to(Third, Home), to(Second, Home), to(First, Third)]);
    charged(&book, &[(PETER, 1, 1), (ROGER, 1, 1)], (2, 2));
}

/// On a hit, no runner takes the place of the one thrown out: the exception to the number of runners.
#[test]
fn rule_9_16_g_comment_7_inherited_runner_out_on_a_hit() {
    let mut book = Scorer::nine();
    book.walk().relieve(ROGER);
    let batter = then(Move::safe(Start::Batter, First, Cause::Play), Second, Cause::Throw);
    book.in_play(ball(Trajectory::Line, Position::LeftField), &[tagged(First, Third)], batter, &[])
        .single(&[to(Second, Home)]);
    charged(&book, &[(PETER, 0, 0), (ROGER, 1, 1)], (1, 1));
}

/// Every count on which a reliever can come in, the batter walking in the end.
#[test]
fn rule_9_16_h_walk_in_mid_count() {
    let earlier = [(2, 0), (2, 1), (3, 0), (3, 1), (3, 2)];
    for balls in 0..4 {
        for strikes in 0..3 {
            let mut book = Scorer::nine();
            book.count(balls, strikes).relieve(ROGER);
            assert_eq!(book.game().situation().count, Count::new(balls, strikes));
            book.count(4 - balls, 0).home_run();
            let pitchers = if earlier.contains(&(balls, strikes)) {
                [(PETER, 1, 1), (ROGER, 1, 1)]
            } else {
                [(PETER, 0, 0), (ROGER, 2, 2)]
            };
            charged(&book, &pitchers, (2, 2));
        }
    }
}

/// However the count stood, a batter who reaches in any other way is the reliever's: hit, hit by a pitch, fielder's
/// choice, error (OBR 9.16(h)).
#[test]
fn rule_9_16_h_other_ways_of_reaching_in_mid_count() {
    for way in 0..4 {
        let mut book = Scorer::nine();
        book.count(3, 1).relieve(ROGER);
        let earned = match way {
            0 => book.single(&[]).home_run(),
            1 => book.hit_batter().home_run(),
            2 => book.choice(&[]).home_run(),
            _ => {
                book.error(Position::ThirdBase, &[]).home_run();
                charged(&book, &[(PETER, 0, 0), (ROGER, 2, 1)], (2, 1));
                continue;
            }
        };
        charged(earned, &[(PETER, 0, 0), (ROGER, 2, 2)], (2, 2));
    }
}

#[test]
fn rule_9_16_i_comment_1_reliever_has_no_benefit_of_the_missed_third_out() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk().error(Position::Shortstop, &[to(First, Second)]).relieve(ROGER);
    book.home_run();
    charged(&book, &[(PETER, 2, 0), (ROGER, 1, 1)], (3, 0));
}

#[test]
fn rule_9_16_i_comment_2_third_out_missed_behind_the_reliever() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk().walk().relieve(ROGER);
    book.error(Position::Shortstop, &[to(Second, Third), to(First, Second)]).home_run();
    charged(&book, &[(PETER, 2, 0), (ROGER, 2, 0)], (4, 0));
}

#[test]
fn rule_9_16_i_comment_3_missed_chances_on_both_sides_of_the_change() {
    let mut book = Scorer::nine();
    book.walk().error(Position::Shortstop, &[to(First, Second)]).relieve(ROGER);
    book.home_run().strikeout().strikeout().error(Position::Shortstop, &[]).home_run();
    charged(&book, &[(PETER, 2, 1), (ROGER, 3, 1)], (5, 2));
}

fn picked_off(base: Base) -> Move {
    let mut out = Out::new(How::Tag, base, &[Position::Pitcher, Position::Shortstop]);
    out.attempt = Some(Attempt::Pickoff);
    Move::out(base.into(), out)
}
