//! What holds of the scorer's judgments, of the pitchers' decisions and of a season's sums, over generated games of
//! every code of play. `BENCHBOOK_GAMES` says how many. Sections: Official Baseball Rules 2024, from memory.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use benchbook_stats::field::Side;
use benchbook_stats::game::{Ending, Game, Phase};
use benchbook_stats::log::{Entry, Event, Judgment};
use benchbook_stats::ruling::Book;
use benchbook_stats::ruling::decision::{decisions, is_official};
use benchbook_stats::season::Season;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::generate::{Plan, Scribe, tell};

fn judge(game: &mut Game, judgment: &Judgment, plan: &Plan) {
    let entry = Entry { id: game.next_id(), at: None, event: Event::Judgment(judgment.clone()) };
    if let Err(refusal) = game.record(entry) {
        panic!("an answer was refused ({refusal:?}): {judgment:?} {}", tell(plan, game));
    }
}

#[test]
fn the_usual_answer_is_what_stood_without_it() {
    let asked = Cell::new(0);
    over(games(5), |plan| {
        // One judgment may change what is usual in another matter, so none has been given before.
        let log = Scribe::new(plan).finish().into_log();
        let game = Game::replay(log.into_iter().filter(|e| !matches!(e.event, Event::Judgment(_))));
        let before = (game.box_score(), game.line_score());
        for question in game.questions().iter().filter(|q| q.is_open()).take(8) {
            asked.set(asked.get() + 1);
            let mut answered = game.clone();
            judge(&mut answered, &question.answers[0], &plan);
            let after = (answered.box_score(), answered.line_score());
            assert!(after == before, "{question:?} {}", tell(&plan, &game));
            let again = answered.questions();
            let same = again.iter().find(|q| q.on == question.on && q.asked == question.asked);
            assert_eq!(same.and_then(|q| q.given), Some(0), "{question:?} {}", tell(&plan, &game));
        }
    });
    println!("{} questions answered as usual", asked.get());
    assert!(asked.get() > 0);
}

#[test]
fn no_answer_unbalances_the_book() {
    over(games(5), |plan| {
        let mut game = Scribe::new(plan).finish();
        for question in game.questions() {
            let answer = question.answers.last().expect("a question has answers");
            judge(&mut game, answer, &plan);
        }
        assert!(game.questions().iter().all(|q| !q.is_open()), "{}", tell(&plan, &game));
        let book = game.box_score();
        assert!(book.prove().iter().all(|proof| proof.balances()), "{}", tell(&plan, &game));
        for side in Side::BOTH {
            let (bat, pitch) = (&book.side(side).batting_total, &book.side(side.other()).pitching);
            if game.code().players_pitch {
                assert_eq!(bat.hits, pitch.iter().map(|l| l.hits).sum::<u32>(), "{}", tell(&plan, &game));
                assert_eq!(bat.runs, pitch.iter().map(|l| l.runs).sum::<u32>(), "{}", tell(&plan, &game));
            }
        }
    });
}

#[test]
fn every_ruling_says_why_and_by_which_rule() {
    let reasons: RefCell<BTreeMap<String, u32>> = RefCell::default();
    over(games(5), |plan| {
        let game = Scribe::new(plan).finish();
        let book = Book::of(&game);
        let say = |because: String, rule: &str| {
            assert!(because.ends_with('.') && rule.starts_with("9."), "{because} {rule} {}", tell(&plan, &game));
            *reasons.borrow_mut().entry(because).or_default() += 1;
        };
        for (_, judged) in book.plays(&game) {
            judged.result.iter().for_each(|r| say(r.because.to_string(), r.rule));
            judged.runs.iter().for_each(|(_, r)| say(r.because.to_string(), r.rule));
            judged.thefts.iter().for_each(|(_, r)| say(r.because.to_string(), r.rule));
        }
        for run in book.runs() {
            assert!(run.rule.starts_with("9.16") || run.rule == "7.01(b)", "{run:?}");
        }
    });
    let reasons = reasons.into_inner();
    println!("{} reasons given", reasons.len());
    assert!(reasons.len() >= 40, "{reasons:#?}");
}

/// 9.17 to 9.19: a winner on the side that won, a loser on the other, a save for neither of them.
#[test]
fn decisions_fit_the_result() {
    let (wins, saves) = (Cell::new(0), Cell::new(0));
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let decided = decisions(&game);
        let [visitors, home] = game.situation().score;
        let told = || format!("{decided:?} {}", tell(&plan, &game));
        let side_of = |id| game.player(id).map(|(side, _)| side);
        if !is_official(&game) || !game.code().players_pitch {
            assert!(decided.win.is_none() && decided.loss.is_none() && decided.save.is_none(), "{}", told());
            return;
        }
        let ahead = match visitors.cmp(&home) {
            std::cmp::Ordering::Greater => Some(Side::Visitors),
            std::cmp::Ordering::Less => Some(Side::Home),
            std::cmp::Ordering::Equal => None,
        };
        let forfeited = matches!(game.situation().phase, Phase::Over(Ending::Forfeited(_)));
        match ahead {
            None => assert!(decided.win.is_none() && decided.loss.is_none() && decided.save.is_none(), "{}", told()),
            Some(_) if forfeited => {}
            Some(side) => {
                assert_eq!(decided.win_of().and_then(side_of), Some(side), "{}", told());
                assert_eq!(decided.loss_of().and_then(side_of), Some(side.other()), "{}", told());
            }
        }
        if let Some(saver) = decided.save_of() {
            saves.set(saves.get() + 1);
            assert_ne!(Some(saver), decided.win_of(), "9.19: {}", told());
            assert_eq!(side_of(saver), ahead, "{}", told());
        }
        wins.set(wins.get() + u32::from(decided.win.is_some()));
        let book = game.box_score();
        for side in Side::BOTH {
            let pitching = &book.side(side).pitching;
            for line in pitching {
                let Some(pitcher) = line.player else { continue };
                if decided.has_complete_game(pitcher) {
                    assert_eq!(line.outs, book.side(side).pitching_total.outs, "{}", told());
                }
                if decided.has_shutout(pitcher) {
                    assert_eq!(game.situation().score[side.other().index()], 0, "9.18: {}", told());
                }
            }
        }
    });
    println!("{} games won, {} saved", wins.get(), saves.get());
    assert!(saves.get() > 0 && wins.get() > saves.get());
}

/// 9.20: a season is the sum of its games, whoever is added first.
#[test]
fn a_season_is_the_sum_of_its_games() {
    let (season, sums) = (RefCell::new(Season::new()), RefCell::new([0_u64; 8]));
    let counted = RefCell::new(Vec::new());
    over(games(2), |plan| {
        let game = Scribe::new(plan).finish();
        season.borrow_mut().add(&game);
        if game.situation().phase != Phase::Before && is_official(&game) {
            let book = game.box_score();
            let mut sums = sums.borrow_mut();
            for side in &book.sides {
                let (bat, pitch, field) = (&side.batting_total, &side.pitching, &side.fielding_total);
                let pitched = |of: fn(&benchbook_stats::lines::PitchingLine) -> u32| pitch.iter().map(of).sum::<u32>();
                let more = [
                    bat.at_bats,
                    bat.hits,
                    bat.runs,
                    pitched(|l| l.outs.0),
                    pitched(|l| l.earned_runs),
                    pitched(|l| l.pitches),
                    field.putouts,
                    field.errors,
                ];
                for (sum, more) in sums.iter_mut().zip(more) {
                    *sum += u64::from(more);
                }
            }
        }
        counted.borrow_mut().push(game);
    });
    let of = |season: &Season| {
        let mut sums = [0_u64; 8];
        let players = season.teams.values().flat_map(|team| team.players.values());
        for player in players {
            let (bat, pitch, field) = (&player.batting, &player.pitching.line, &player.fielding);
            let workload = player.workload.values().map(|day| day.pitches).sum::<u32>();
            // A game that was not official counts for the arm all the same.
            assert!(workload >= pitch.pitches, "{}", player.name);
            let more = [
                bat.at_bats,
                bat.hits,
                bat.runs,
                pitch.outs.0,
                pitch.earned_runs,
                pitch.pitches,
                field.putouts,
                field.errors,
            ];
            for (sum, more) in sums.iter_mut().zip(more) {
                *sum += u64::from(more);
            }
        }
        sums
    };
    assert_eq!(of(&season.borrow()), *sums.borrow());
    let mut backwards = Season::new();
    counted.borrow().iter().rev().for_each(|game| backwards.add(game));
    assert_eq!(of(&backwards), *sums.borrow());
    let won: u32 = season.borrow().teams.values().map(|t| t.won).sum();
    let lost: u32 = season.borrow().teams.values().map(|t| t.lost).sum();
    assert_eq!(won, lost);
}
