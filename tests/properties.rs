//! What holds in every game whatever: over generated games of every code of play, at every point of each.
//!
//! `BENCHBOOK_GAMES` says how many games each property is tried on; the same games every time, so that a failure can be
//! looked at again. Sections are those of the Official Baseball Rules 2024, from memory.

use std::cell::{Cell, RefCell};
use std::env;

use benchbook_stats::code::presets;
use benchbook_stats::field::Side;
use benchbook_stats::file::{self, GameFile};
use benchbook_stats::game::{Ending, Game, Phase, Play, TurnKind};
use benchbook_stats::lines::{BoxScore, LineScore};
use benchbook_stats::log::{Entry, EntryId, Event};
use benchbook_stats::ruling::{BatterResult, Book, Credit};
use benchbook_tests::generate::kinds::Kinds;
use benchbook_tests::generate::{Dice, Plan, Scribe, tell, wrong};
use proptest::prelude::{Strategy, any};
use proptest::test_runner::{Config, RngAlgorithm, TestCaseError, TestRng, TestRunner};
use serde_json::Value;

/// Entries of the longest game made up; about fifty of them are said before the first pitch.
const LONGEST: usize = 700;

fn plans() -> impl Strategy<Value = Plan> {
    (0..presets().len(), any::<u64>().no_shrink(), 60..=LONGEST).prop_map(|(preset, seed, entries)| Plan {
        preset: presets()[preset],
        seed,
        entries,
    })
}

/// Tries a property on so many games; a failing one is shrunk by leaving entries off its end.
fn over(games: usize, property: impl Fn(Plan)) {
    let cases = u32::try_from(games.max(6)).unwrap_or(u32::MAX);
    let config = Config { cases, failure_persistence: None, max_shrink_iters: 40, ..Config::default() };
    let mut runner = TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha));
    let result = runner.run(&plans(), |plan| {
        property(plan);
        Ok::<(), TestCaseError>(())
    });
    if let Err(failure) = result {
        panic!("{failure}");
    }
}

/// Games to try, of the whole number asked for.
fn games(of_ten: usize) -> usize {
    let all = env::var("BENCHBOOK_GAMES").ok().and_then(|n| n.parse().ok()).unwrap_or(2000);
    all * of_ten / 10
}

/// Everything a book shows.
fn lines(game: &Game) -> (BoxScore, LineScore) {
    (game.box_score(), game.line_score())
}

#[track_caller]
fn same_lines(a: &Game, b: &Game, plan: &Plan, what: &str) {
    assert!(lines(a) == lines(b), "{what}: other lines. {}", tell(plan, a));
    assert_eq!(a.situation(), b.situation(), "{what}: {}", tell(plan, a));
}

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

/// Outs made in each half-inning, those of empty places apart.
fn outs_by_half(game: &Game) -> Vec<(u8, u8)> {
    let of = |play: &&Play, half: &benchbook_stats::game::HalfInning| {
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
    let last_play = game.plays().filter(|p| (p.before.inning, p.before.half) == (half.inning, half.half)).next_back();
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
        .filter(|(play, (position, c))| *c == credit && play.defence.at(*position).is_none())
        .count() as u32
}

#[test]
fn putouts_are_three_an_inning() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let outs = outs_by_half(&game);
        let last = outs.len().saturating_sub(1);
        for (i, (made, empty)) in outs.iter().enumerate() {
            let all = made + empty;
            assert!(all <= 3, "{all} outs in half {i}: {}", tell(&plan, &game));
            if i < last && !may_be_short(&game, i) {
                assert_eq!(all, 3, "half {i} of {last}: {}", tell(&plan, &game));
            }
        }
        // 9.02(c)(1): a pitcher's innings are the outs made, whoever makes them.
        let book = game.box_score();
        for side in Side::BOTH {
            let of_side = |i: &usize| game.halves()[*i].half.fielding() == side;
            let made: u32 = (0..outs.len()).filter(of_side).map(|i| u32::from(outs[i].0)).sum();
            let ours = book.side(side);
            let putouts = ours.fielding_total.putouts + nobodys(&game, side, Credit::Putout);
            assert_eq!(putouts, made, "putouts by the {side}: {}", tell(&plan, &game));
            assert_eq!(book.side(side.other()).proof.opponents_putouts, made, "{}", tell(&plan, &game));
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
        let (book, line) = lines(&game);
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
                assert!(judged.credits.contains(&(by, Credit::Error)), "{play:?} {judged:?} {}", tell(&plan, &game));
            }
        }
    });
    assert!(seen.get() > 0);
}

// ---- The replay ----

#[test]
fn situations_are_possible() {
    over(games(10), |plan| {
        let mut scribe = Scribe::new(plan);
        while scribe.step() {
            let game = scribe.game();
            let s = game.situation();
            let code = game.code();
            assert!(s.outs <= 2 || matches!(s.phase, Phase::Over(_)), "{s:?} {}", scribe.told());
            assert!(s.count.strikes < code.strikes_for_out, "{s:?} {}", scribe.told());
            assert!(code.balls_for_walk.is_none_or(|n| s.count.balls < n), "{s:?} {}", scribe.told());
            let on: Vec<_> = s.runners().map(|(_, r)| r.player).collect();
            for (i, runner) in on.iter().enumerate() {
                assert!(!on[..i].contains(runner), "{runner:?} on two bases: {s:?} {}", scribe.told());
                assert!(s.batter != Some(*runner), "the batter is on base: {s:?} {}", scribe.told());
            }
            let keys: Vec<_> = s.runners().map(|(_, r)| r.key).collect();
            assert!((1..keys.len()).all(|i| !keys[..i].contains(&keys[i])), "{s:?} {}", scribe.told());
            if matches!(s.phase, Phase::Underway) {
                let lineup = game.lineup(s.batting()).expect("a card");
                assert_eq!(s.batter, lineup.batter(s.place), "{s:?} {}", scribe.told());
                if code.players_pitch {
                    let pitcher =
                        game.lineup(s.fielding()).and_then(|l| l.at(benchbook_stats::field::Position::Pitcher));
                    assert!(s.pitcher == pitcher || pitcher.is_none(), "{s:?} {}", scribe.told());
                }
            }
        }
    });
}

#[test]
fn replaying_gives_what_recording_gave() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let again = Game::replay(game.log().iter().cloned());
        same_lines(&game, &again, &plan, "replayed");
        assert_eq!(game.steps(), again.steps(), "{}", tell(&plan, &game));
        assert_eq!(game.halves(), again.halves(), "{}", tell(&plan, &game));
        // What is not public must agree too: the next entry depends on it.
        assert!(format!("{game:?}") == format!("{again:?}"), "hidden state: {}", tell(&plan, &game));
    });
}

#[test]
fn a_file_comes_back_byte_for_byte() {
    over(games(10), |plan| {
        let game = Scribe::new(plan).finish();
        let file = GameFile { id: format!("{}", plan.seed), log: game.log().to_vec() };
        let text = file::write(&file);
        let read = file::read(&text).unwrap_or_else(|error| panic!("{error}: {}", tell(&plan, &game)));
        assert_eq!(read, file, "{}", tell(&plan, &game));
        assert!(file::write(&read) == text, "{}", tell(&plan, &game));
        same_lines(&game, &Game::replay(read.log), &plan, "read from a file");
    });
}

#[test]
fn a_refusal_changes_nothing() {
    let refusals: RefCell<std::collections::BTreeMap<String, u32>> = RefCell::default();
    over(games(5), |plan| {
        let mut scribe = Scribe::new(plan);
        let mut dice = Dice::new(plan.seed ^ 1);
        while scribe.step() {
            if !dice.percent(8) {
                continue;
            }
            let mut game = scribe.game().clone();
            let before = format!("{game:?}");
            let (event, expected) = wrong::entry(&game, &mut dice);
            let id = if dice.percent(5) { game.log()[0].id } else { game.next_id() };
            let refusal = match game.record(Entry { id, at: None, event: event.clone() }) {
                Err(refusal) => format!("{refusal:?}"),
                Ok(()) => {
                    panic!("accepted, but {expected:?}: {event:?}\n{:?}\n{}", scribe.game().situation(), scribe.told())
                }
            };
            let name = refusal.split(|c: char| !c.is_alphanumeric()).next().unwrap_or_default().to_owned();
            let fits = name == "OutOfSequence" || expected.contains(&name.as_str());
            assert!(fits, "{refusal} instead of {expected:?}: {event:?}\n{}", scribe.told());
            assert!(format!("{game:?}") == before, "changed by a refusal: {event:?} {}", scribe.told());
            *refusals.borrow_mut().entry(name).or_default() += 1;
        }
    });
    println!("refused: {:?}", refusals.borrow());
    assert!(refusals.borrow().len() > 35, "only {} kinds of refusal: {:?}", refusals.borrow().len(), refusals.borrow());
}

// ---- Correcting ----

#[test]
fn undo_then_redo_leaves_the_lines_as_they_were() {
    over(games(10), |plan| {
        let mut scribe = Scribe::new(plan);
        let mut dice = Dice::new(plan.seed ^ 2);
        while scribe.step() {}
        let mut game = scribe.game().clone();
        let depth = 1 + dice.below(8);
        let mut undone = 0;
        for _ in 0..depth {
            let Some(event) = game.undo() else { break };
            record(&mut game, event, &plan);
            undone += 1;
        }
        for _ in 0..undone {
            let event = game.redo().unwrap_or_else(|| panic!("nothing to redo: {}", tell(&plan, &game)));
            record(&mut game, event, &plan);
        }
        assert!(lines(&game) == lines(scribe.game()), "undone {undone}: {}", tell(&plan, &game));
        assert_eq!(game.situation(), scribe.game().situation(), "{}", tell(&plan, &game));
        assert!(game.conflicts().eq(scribe.game().conflicts()), "{}", tell(&plan, &game));
    });
}

fn record(game: &mut Game, event: Event, plan: &Plan) {
    let entry = Entry { id: game.next_id(), at: None, event };
    if let Err(refusal) = game.record(entry.clone()) {
        panic!("{refusal:?}: {entry:?} {}", tell(plan, game));
    }
}

#[test]
fn amend_then_amend_back_leaves_the_lines_as_they_were() {
    over(games(10), |plan| {
        let before = Scribe::new(plan).finish();
        let mut game = before.clone();
        let mut dice = Dice::new(plan.seed ^ 3);
        let step = &before.steps()[dice.below(before.steps().len())];
        let (entry, was) = (step.entry, before.event(step).clone());
        record(
            &mut game,
            Event::Replace { entry, event: Box::new(Event::Note { text: "What was it?".into() }) },
            &plan,
        );
        record(&mut game, Event::Replace { entry, event: Box::new(was) }, &plan);
        same_lines(&before, &game, &plan, "amended and back");
        assert!(before.conflicts().eq(game.conflicts()), "{}", tell(&plan, &game));
        assert_eq!(before.halves(), game.halves(), "{}", tell(&plan, &game));
    });
}

/// The log only grows, and every entry in it is in the game, struck out, or says something about one that is.
#[test]
fn corrections_lose_no_entry() {
    over(games(10), |plan| {
        let mut scribe = Scribe::new(plan);
        while scribe.step() {}
        let mut game = scribe.game().clone();
        let mut dice = Dice::new(plan.seed ^ 4);
        for _ in 0..4 {
            let before: Vec<Entry> = game.log().to_vec();
            let target = game.steps()[dice.below(game.steps().len())].entry;
            let note = || Box::new(Event::Note { text: "Later.".into() });
            let event = match dice.below(3) {
                0 => Event::Retract { entry: target },
                1 => Event::Insert { before: target, event: note() },
                _ => Event::Replace { entry: target, event: note() },
            };
            record(&mut game, event, &plan);
            assert_eq!(game.log().len(), before.len() + 1);
            assert!(game.log()[..before.len()] == before[..], "{}", tell(&plan, &game));
            all_accounted_for(&game, &plan);
        }
    });
}

fn all_accounted_for(game: &Game, plan: &Plan) {
    let mut struck: Vec<EntryId> = Vec::new();
    for entry in game.log() {
        match entry.event {
            Event::Retract { entry } => struck.push(entry),
            Event::Reinstate { entry } => struck.retain(|e| *e != entry),
            _ => {}
        }
    }
    let mut expected: Vec<EntryId> = game
        .log()
        .iter()
        .filter(|e| matches!(e.event, Event::Insert { .. }) || !e.event.is_correction())
        .map(|e| e.id)
        .filter(|id| !struck.contains(id))
        .collect();
    let mut there: Vec<EntryId> = game.steps().iter().map(|s| s.entry).collect();
    expected.sort_unstable();
    there.sort_unstable();
    assert_eq!(there, expected, "{}", tell(plan, game));
}

// ---- Anything at all ----

/// Everything derived, for what it might do.
fn look_at(game: &Game) {
    let (book, line) = lines(game);
    let text = serde_json::to_string(&(book, line)).expect("lines are JSON");
    assert!(!text.is_empty());
    for side in Side::BOTH {
        let players: Vec<_> = game.roster(side).map(|p| game.label(p.id)).collect();
        assert_eq!(players.len(), game.roster(side).count());
        let _ = game.left_on_base(side);
    }
    let _ = (game.on_deck(), game.next_player_id(), game.next_id(), game.undo(), game.redo());
    let _ = game.conflicts().map(|(_, refusal)| refusal.to_string().len()).sum::<usize>();
}

#[test]
fn no_order_of_entries_panics() {
    over(games(4), |plan| {
        let game = Scribe::new(plan).finish();
        let mut dice = Dice::new(plan.seed ^ 5);
        let mut log = game.into_log();
        match dice.below(4) {
            0 => dice.shuffle(&mut log),
            1 => log.reverse(),
            2 => {
                for _ in 0..20 {
                    let (a, b) = (dice.below(log.len()), dice.below(log.len()));
                    log.swap(a, b);
                }
            }
            // Half of it gone, some of it twice.
            _ => {
                let all = log.clone();
                log.retain(|_| dice.percent(50));
                let at = dice.below(all.len());
                log.extend(all[at..].iter().cloned());
            }
        }
        if dice.percent(70) {
            for (i, entry) in log.iter_mut().enumerate() {
                entry.id = EntryId(i as u32 + 1);
            }
        }
        look_at(&Game::replay(log.iter().cloned()));
        let mut game = Game::new();
        for mut entry in log {
            if dice.percent(90) {
                entry.id = game.next_id();
            }
            // Whatever it says to that, it must not panic.
            let _ = game.record(entry);
        }
        look_at(&game);
    });
}

/// Numbers in a file that nobody would write.
fn distort(value: &mut Value, dice: &mut Dice, left: &mut usize) {
    match value {
        Value::Array(items) => items.iter_mut().for_each(|item| distort(item, dice, left)),
        Value::Object(fields) => fields.values_mut().for_each(|field| distort(field, dice, left)),
        Value::Number(_) if *left > 0 && dice.percent(2) => {
            *left -= 1;
            let odd = [0_u64, 1, 2, 3, 4, 5, 10, 98, 127, 128, 200, 254, 255, 256, 65535, 4_294_967_295];
            *value = Value::from(dice.pick(&odd));
        }
        _ => {}
    }
}

#[test]
fn no_number_in_a_file_panics() {
    let read = Cell::new(0);
    over(games(4), |plan| {
        let game = Scribe::new(plan).finish();
        let mut dice = Dice::new(plan.seed ^ 6);
        let mut entries: Vec<Value> =
            game.log().iter().map(|e| serde_json::to_value(e).expect("an entry is JSON")).collect();
        let mut left = 1 + dice.below(12);
        // The code of play is where a number reaches furthest.
        if dice.percent(60) {
            for entry in entries.iter_mut().filter(|e| !e["event"]["rules"].is_null()) {
                let mut more = 40;
                for _ in 0..10 {
                    distort(&mut entry["event"]["rules"], &mut dice, &mut more);
                }
            }
        }
        entries.iter_mut().for_each(|entry| distort(entry, &mut dice, &mut left));
        let log: Vec<Entry> = entries.into_iter().filter_map(|e| serde_json::from_value(e).ok()).collect();
        read.set(read.get() + log.len());
        look_at(&Game::replay(log));
    });
    println!("{} distorted entries read", read.get());
}

// ---- What was tried ----

#[test]
fn every_kind_of_event_is_made() {
    let kinds = RefCell::new(Kinds::default());
    let (entries, conflicts, endings) = (Cell::new(0), Cell::new(0), RefCell::new(Vec::new()));
    over(games(10), |plan| {
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
    println!("{} games, {} entries, {} in conflict after corrections", games(10), entries.get(), conflicts.get());
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
