//! What holds in every game whatever: the arithmetic of the book, over generated games of every code of play.
//!
//! `BENCHBOOK_GAMES` says how many games each property is tried on. Sections are those of the Official Baseball Rules
//! 2024, from memory.

use std::cell::{Cell, RefCell};

use benchbook_stats::field::Side;
use benchbook_stats::game::{Ending, Game, HalfInning, Phase, Play, TurnKind};
use benchbook_stats::log::Event;
use benchbook_stats::ruling::{BatterResult, Book, Credit};
use benchbook_tests::generate::kinds::Kinds;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::generate::{Scribe, tell};

// ---- The arithmetic of the book ----

#[test]
fn the_box_score_proves_after_every_entry() {
    let points = Cell::new(0_u64);
    over(games(10), |plan| {
        let mut scribe = Scribe::new(plan);
        while scribe.step() {
            let game = scribe.game();
            for proof in game.box_score().prove() {
                assert!(proof.balances(), "9.03(c): {proof:?}\nafter {:?}\n{}", game.log().last(), scribe.told());
            }
            points.set(points.get() + 1);
        }
    });
    println!("proved at {} points of {} games", points.get(), games(10));
}

/// Outs made in each half-inning, and those of empty places among them.
fn outs_by_half(game: &Game) -> Vec<(u8, u8)> {
    let of = |play: &&Play, half: &HalfInning| {
        !play.nullified && (play.before.inning, play.before.half) == (half.inning, half.half)
    };
    let empty = |play: &Play| play.turn.is_some_and(|t| t.kind == TurnKind::EmptyPlace);
    game.halves()
        .iter()
        .map(|half| {
            let plays = || game.plays().filter(|p| of(p, half));
            (plays().map(Play::outs).sum(), plays().filter(|p| empty(p)).count() as u8)
        })
        .collect()
}

/// The half-innings that the umpire, a run limit or an end of the game can cut short: all others have three outs.
fn may_be_short(game: &Game, index: usize) -> bool {
    let half = &game.halves()[index];
    let Some(next) = game.halves().get(index + 1) else { return true };
    let by_umpire =
        game.steps().get(next.first_step - 1).is_some_and(|s| matches!(game.event(s), Event::EndHalf { .. }));
    let last_play = game.plays().rfind(|p| (p.before.inning, p.before.half) == (half.inning, half.half));
    let runs: u32 = game
        .plays()
        .filter(|p| (p.before.inning, p.before.half) == (half.inning, half.half))
        .map(|p| u32::from(p.runs()))
        .sum();
    let full = game.code().run_limit_in(half.inning).is_some_and(|limit| runs >= u32::from(limit));
    by_umpire || (full && last_play.is_some_and(|p| p.ends_half))
}

/// Credits of one kind to posts that nobody fills: the coach's or machine's, or a catcher's whom a short side lacks.
/// They count in the proof, and in no player's line.
fn nobodys(game: &Game, fielding: Side, credit: Credit) -> u32 {
    let book = Book::of(game);
    let plays = book.plays(game).filter(|(p, _)| p.batting() != fielding && !p.nullified);
    plays
        .flat_map(|(play, judged)| judged.credits.iter().map(move |c| (play, c)))
        .filter(|(play, (position, c))| c.verdict == credit && play.defence.at(*position).is_none())
        .count() as u32
}

#[test]
fn putouts_are_three_an_inning() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let outs = outs_by_half(&game);
        let last = outs.len().saturating_sub(1);
        for (i, (made, _)) in outs.iter().enumerate() {
            assert!(*made <= 3, "{made} outs in half {i}: {}", tell(&plan, &game));
            if i < last && !may_be_short(&game, i) {
                assert_eq!(*made, 3, "half {i} of {last}: {}", tell(&plan, &game));
            }
        }
        // 9.02(c)(1): a pitcher's innings are the outs made, whoever makes them; of an empty place too, which is nobody's
        // putout.
        let book = game.box_score();
        for side in Side::BOTH {
            let of_side = |i: &usize| game.halves()[*i].half.fielding() == side;
            let made: u32 = (0..outs.len()).filter(of_side).map(|i| u32::from(outs[i].0)).sum();
            let put_out: u32 = (0..outs.len()).filter(of_side).map(|i| u32::from(outs[i].0 - outs[i].1)).sum();
            let ours = book.side(side);
            let putouts = ours.fielding_total.putouts + nobodys(&game, side, Credit::Putout);
            assert_eq!(putouts, put_out, "putouts by the {side}: {}", tell(&plan, &game));
            assert_eq!(book.side(side.other()).proof.opponents_putouts, put_out, "{}", tell(&plan, &game));
            if game.code().players_pitch {
                assert_eq!(ours.pitching_total.outs.0, made, "innings of the {side}: {}", tell(&plan, &game));
            } else {
                assert!(ours.pitching.is_empty(), "nobody pitches, yet there is a line: {}", tell(&plan, &game));
            }
        }
    });
}

#[test]
fn every_run_is_somebodys_and_earned_runs_are_among_them() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let book = game.box_score();
        for side in Side::BOTH {
            let scored = u32::from(game.situation().score[side.index()]);
            let (ours, theirs) = (book.side(side), book.side(side.other()));
            assert_eq!(ours.batting_total.runs, scored, "runs of the {side}: {}", tell(&plan, &game));
            assert!(ours.batting_total.runs_batted_in <= scored, "{}", tell(&plan, &game));
            if game.code().players_pitch {
                assert_eq!(theirs.pitching_total.runs, scored, "runs charged: {}", tell(&plan, &game));
                let earned: u32 = theirs.pitching.iter().map(|l| l.earned_runs).sum();
                // 9.16(i): what a reliever is denied the team has, so the team's are never the more.
                assert!(
                    theirs.pitching_total.earned_runs <= earned,
                    "team {} > {earned}: {}",
                    theirs.pitching_total.earned_runs,
                    tell(&plan, &game)
                );
                for line in &theirs.pitching {
                    assert!(line.earned_runs <= line.runs, "{line:?}: {}", tell(&plan, &game));
                }
            }
        }
    });
}

#[test]
fn batting_and_pitching_are_one_account() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let book = game.box_score();
        for side in Side::BOTH {
            let (bat, pitch) = (&book.side(side).batting_total, &book.side(side.other()).pitching_total);
            if game.code().players_pitch {
                let batted = [
                    bat.plate_appearances,
                    bat.hits,
                    bat.home_runs,
                    bat.walks,
                    bat.intentional_walks,
                    bat.strikeouts,
                    bat.hit_by_pitch,
                ];
                let pitched = [
                    pitch.batters_faced,
                    pitch.hits,
                    pitch.home_runs,
                    pitch.walks,
                    pitch.intentional_walks,
                    pitch.strikeouts,
                    pitch.hit_batters,
                ];
                assert_eq!(batted, pitched, "PA, H, HR, BB, IBB, SO, HBP of the {side}: {}", tell(&plan, &game));
            }
            for line in &book.side(side).batting {
                assert!(line.doubles + line.triples + line.home_runs <= line.hits, "{line:?} {}", tell(&plan, &game));
                assert!(
                    line.hits + line.strikeouts + line.reached_on_error + line.fielders_choices <= line.at_bats,
                    "{line:?} {}",
                    tell(&plan, &game)
                );
                let turns = line.at_bats
                    + line.walks
                    + line.hit_by_pitch
                    + line.sacrifice_hits
                    + line.sacrifice_flies
                    + line.interference;
                assert_eq!(turns, line.plate_appearances, "{line:?} {}", tell(&plan, &game));
            }
            for line in &book.side(side).pitching {
                assert_eq!(line.balls + line.strikes, line.pitches, "{line:?} {}", tell(&plan, &game));
                let by_inning: u32 = line.by_inning.iter().map(|(_, n)| n).sum();
                assert_eq!(by_inning, line.pitches, "{line:?} {}", tell(&plan, &game));
                assert!(line.pitches_before_last_batter <= line.pitches, "{line:?} {}", tell(&plan, &game));
            }
        }
    });
}

#[test]
fn the_line_score_adds_up() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let (book, line) = (game.box_score(), game.line_score());
        for side in Side::BOTH {
            let ours = line.side(side);
            let by_inning: u16 = ours.innings.iter().flatten().sum();
            assert_eq!(by_inning, game.situation().score[side.index()], "{side}: {}", tell(&plan, &game));
            assert_eq!(ours.runs, by_inning);
            assert_eq!(ours.hits, book.side(side).batting_total.hits, "{side}: {}", tell(&plan, &game));
            let errors = book.side(side).fielding_total.errors + nobodys(&game, side, Credit::Error);
            assert_eq!(ours.errors, errors, "{side}: {}", tell(&plan, &game));
            assert_eq!(ours.left_on_base, book.side(side).proof.left_on_base, "{side}: {}", tell(&plan, &game));
        }
    });
}

/// 9.05, 9.12: a batter who reached on a fielder's error has that fielder charged with one, whoever judged it so.
#[test]
fn who_reaches_on_an_error_has_a_fielder_charged() {
    let seen = Cell::new(0);
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let book = Book::of(&game);
        for (play, judged) in book.plays(&game).filter(|(p, _)| !p.nullified) {
            if let Some(BatterResult::ReachedOnError(by)) = judged.result.as_ref().map(|r| r.verdict) {
                seen.set(seen.get() + 1);
                let charged = judged.credited(Credit::Error).any(|position| position == by);
                assert!(charged, "{play:?} {judged:?} {}", tell(&plan, &game));
            }
        }
    });
    assert!(seen.get() > 0);
}

// ---- What was tried ----

#[test]
fn every_kind_of_event_is_made() {
    // Fewer would not meet every kind.
    let games = games(10).max(1500);
    let kinds = RefCell::new(Kinds::default());
    let (entries, conflicts, endings) = (Cell::new(0), Cell::new(0), RefCell::new(Vec::new()));
    over(games, |plan| {
        let game = Scribe::new(plan).finish();
        kinds.borrow_mut().count_log(game.log());
        kinds.borrow_mut().count_replay(&game);
        entries.set(entries.get() + game.log().len());
        conflicts.set(conflicts.get() + game.conflicts().count());
        if let Phase::Over(ending) = game.situation().phase {
            endings.borrow_mut().push(ending);
        }
    });
    let (kinds, endings) = (kinds.into_inner(), endings.into_inner());
    println!("{games} games, {} entries, {} in conflict after corrections", entries.get(), conflicts.get());
    println!("{} games came to an end", endings.len());
    println!("{} kinds\n{}", kinds.len(), kinds.table());
    assert_eq!(kinds.missing(), Vec::<String>::new());
    let ways = [
        Ending::Played,
        Ending::Mercy,
        Ending::Declared,
        Ending::Called,
        Ending::Forfeited(Side::Home),
        Ending::Forfeited(Side::Visitors),
    ];
    for way in ways {
        assert!(endings.contains(&way), "no game ended so: {way:?}");
    }
}
