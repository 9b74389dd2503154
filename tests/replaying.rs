//! What holds of every log whatever: replaying, refusing, correcting, and anything at all that a file may say.
//!
//! Over generated games of every code of play; `BENCHBOOK_GAMES` says how many.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use benchbook_stats::account::{Account, sentences};
use benchbook_stats::field::{Position, Side};
use benchbook_stats::file::{self, GameFile};
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::lines::{BoxScore, LineScore};
use benchbook_stats::log::{Entry, EntryId, Event};
use benchbook_stats::words::Language;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::generate::{Dice, Plan, Scribe, tell, wrong};
use serde_json::Value;

/// Everything a book shows.
fn lines(game: &Game) -> (BoxScore, LineScore) {
    (game.box_score(), game.line_score())
}

#[track_caller]
fn same_lines(a: &Game, b: &Game, plan: &Plan, what: &str) {
    assert!(lines(a) == lines(b), "{what}: other lines. {}", tell(plan, a));
    assert_eq!(a.situation(), b.situation(), "{what}: {}", tell(plan, a));
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
                    let pitcher = game.lineup(s.fielding()).and_then(|l| l.at(Position::Pitcher));
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
    let refusals: RefCell<BTreeMap<String, u32>> = RefCell::default();
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
    for line in Account::of(game).halves.iter().flat_map(|half| &half.lines) {
        let _ = sentences::line(line, Language::English, &|id| game.label(id));
    }
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
        for entry in &mut entries {
            distort(entry, &mut dice, &mut left);
        }
        let log: Vec<Entry> = entries.into_iter().filter_map(|e| serde_json::from_value(e).ok()).collect();
        read.set(read.get() + log.len());
        look_at(&Game::replay(log));
    });
    println!("{} distorted entries read", read.get());
}
