//! The account of the invented game in `tests/games`, worked out on paper beside it.

use super::sentences;
use super::why::{Batting, Number, Pitching, tally, why};
use super::*;
use crate::file;
use crate::log::Entry;
use crate::words::Language;

fn harbor() -> Game {
    let text = include_str!("../../../tests/games/harbor-league.benchbook.json");
    Game::replay(file::read(text).expect("the game file reads").log)
}

fn words(game: &Game) -> Vec<String> {
    let names = |id| game.label(id);
    Account::of(game)
        .halves
        .iter()
        .flat_map(|h| &h.lines)
        .map(|l| sentences::line(l, Language::English, &names))
        .collect()
}

#[track_caller]
fn says(words: &[String], sentence: &str) {
    assert!(words.iter().any(|w| w == sentence), "nothing says {sentence:?}");
}

fn player(game: &Game, name: &str) -> PlayerId {
    Side::BOTH
        .into_iter()
        .flat_map(|side| game.roster(side))
        .find(|p| p.name == name)
        .map(|p| p.id)
        .expect("the player is on a roster")
}

#[test]
fn plays_are_told_in_plain_words() {
    let words = words(&harbor());
    says(&words, "Tomas Okwera grounds out, shortstop to first baseman.");
    says(&words, "Lena Brightwater singles on a line drive to left field.");
    says(
        &words,
        "Søren Adeyinka strikes out swinging, but the ball gets away. Søren Adeyinka reaches first on a wild pitch.",
    );
    says(
        &words,
        "Mirela Castonguay grounds into a double play, shortstop to second baseman to first baseman. \
         Søren Adeyinka is forced out at second, shortstop to second baseman.",
    );
    says(&words, "Idris Fontaine is picked off and out at second, pitcher to first baseman to shortstop.");
    says(
        &words,
        "Idris Fontaine reaches on a throwing error by the shortstop. Emeka Sorrentino goes to third and scores on the \
         same error. Saoirse Villanueva goes to second and goes to third on the same error.",
    );
    says(&words, "Gustav Iyer comes in to pitch for Paloma Whitcombe.");
    says(&words, "Delphine Abara doubles on a line drive to center field. Bao Whitlock scores. The game is over.");
}

#[test]
fn a_note_before_the_first_pitch_is_told_before_the_first_half() {
    let mut log = file::read(include_str!("../../../tests/games/harbor-league.benchbook.json")).unwrap().log;
    let begins = log.iter().position(|entry| entry.event == Event::PlayBall).expect("it begins");
    log.truncate(begins);
    let mut game = Game::replay(log);
    assert_eq!(Account::of(&game), Account::default(), "the cards are not told");
    let id = game.next_id();
    game.record(Entry { id, at: None, event: Event::Note { text: "The plate is wet.".to_owned() } }).unwrap();
    let account = Account::of(&game);
    assert_eq!((account.before.len(), account.halves.len()), (1, 0));
    let names = |id| game.label(id);
    assert_eq!(sentences::line(account.line(id).unwrap(), Language::English, &names), "Note: The plate is wet.");
}

#[test]
fn every_half_has_its_sums() {
    let account = Account::of(&harbor());
    assert_eq!(account.halves.len(), 18);
    let runs = |side| account.halves.iter().filter(|h| h.half.batting() == side).map(|h| h.runs).sum::<u16>();
    assert_eq!([runs(Side::Visitors), runs(Side::Home)], [6, 7]);
    let hits = |side| account.halves.iter().filter(|h| h.half.batting() == side).map(|h| h.hits).sum::<u16>();
    assert_eq!([hits(Side::Visitors), hits(Side::Home)], [7, 9]);
    assert!(account.halves.iter().all(|h| h.left_on_base.is_some()));
}

#[test]
fn every_pitch_belongs_to_one_line() {
    let game = harbor();
    let account = Account::of(&game);
    let pitches: Vec<_> = account.halves.iter().flat_map(|h| &h.lines).flat_map(|l| &l.pitches).collect();
    assert_eq!(pitches.len(), 280);
    assert!(pitches.iter().all(|(entry, _)| account.line(*entry).is_some()));
    let first = &account.halves[0].lines[0];
    assert_eq!(tally(&first.pitches), (2, 3));
}

#[test]
fn a_number_opens_to_the_plays_behind_it() {
    let game = harbor();
    let account = Account::of(&game);
    let score = game.box_score();
    for side in Side::BOTH {
        for line in &score.side(side).batting {
            let Some(id) = line.player else { continue };
            let count =
                |number| why(&game, &account, Number::Batting(id, number)).iter().filter(|e| e.counts()).count() as u32;
            assert_eq!(count(Batting::Hits), line.hits, "{}", line.name);
            assert_eq!(count(Batting::AtBats), line.at_bats, "{}", line.name);
            assert_eq!(count(Batting::Runs), line.runs, "{}", line.name);
            assert_eq!(count(Batting::RunsBattedIn), line.runs_batted_in, "{}", line.name);
            assert_eq!(count(Batting::Walks), line.walks, "{}", line.name);
            assert_eq!(count(Batting::Strikeouts), line.strikeouts, "{}", line.name);
        }
        for line in &score.side(side).pitching {
            let Some(id) = line.player else { continue };
            let count = |number| {
                why(&game, &account, Number::Pitching(id, number)).iter().filter(|e| e.counts()).count() as u32
            };
            assert_eq!(count(Pitching::Hits), line.hits, "{}", line.name);
            assert_eq!(count(Pitching::Walks), line.walks, "{}", line.name);
            assert_eq!(count(Pitching::Strikeouts), line.strikeouts, "{}", line.name);
            assert_eq!(count(Pitching::Runs), line.runs, "{}", line.name);
            assert_eq!(count(Pitching::EarnedRuns), line.earned_runs, "{}", line.name);
        }
        let counted = |number| why(&game, &account, number).iter().filter(|e| e.counts()).count() as u32;
        assert_eq!(counted(Number::ErrorsOf(side)), game.line_score().side(side).errors);
        assert_eq!(counted(Number::HitsOf(side)), game.line_score().side(side).hits);
        assert_eq!(counted(Number::RunsOf(side)), u32::from(game.line_score().side(side).runs));
    }
}

/// OBR 9.04(b)(1): the reason why a run is not batted in is listed, and does not count.
#[test]
fn what_does_not_count_is_listed_with_its_reason() {
    let game = harbor();
    let account = Account::of(&game);
    let id = player(&game, "Idris Fontaine");
    let evidence = why(&game, &account, Number::Batting(id, Batting::Hits));
    assert!(evidence.iter().any(|e| !e.counts()));
    assert!(evidence.iter().all(|e| !e.reason.rule.is_empty()));
}

#[test]
fn an_entry_that_no_longer_fits_is_told_with_its_reason() {
    let mut game = harbor();
    let single = Account::of(&game).halves[0].lines[1].clone();
    let entry = Entry { id: game.next_id(), at: None, event: Event::Retract { entry: single.entry } };
    game.record(entry).expect("a play can be struck out");
    let account = Account::of(&game);
    let conflicts: Vec<_> = account.halves.iter().flat_map(|h| &h.lines).filter(|l| l.conflict.is_some()).collect();
    assert!(!conflicts.is_empty(), "her steal of second can't stand without her single");
    assert_eq!(conflicts.len(), game.conflicts().count());
}

/// OBR 9.17(a), (d): the paper says who won and who lost, and why.
#[test]
fn a_decision_has_its_reason() {
    let game = harbor();
    let account = Account::of(&game);
    let reasons = |name| {
        let number = Number::Decision(player(&game, name));
        why(&game, &account, number).into_iter().map(|e| (e.reason.ruled, e.reason.rule)).collect::<Vec<_>>()
    };
    assert!(matches!(reasons("Nadia Corvane")[0], (Ruled::Decision { credit: PitcherCredit::Win, .. }, "9.17(a)")));
    assert!(matches!(reasons("Yusra Halvorsen")[0], (Ruled::Decision { credit: PitcherCredit::Loss, .. }, "9.17(d)")));
    assert_eq!(reasons("Anselm Quarrie"), []);
}

/// OBR 9.16: an unearned run names the plays that made it so.
#[test]
fn an_unearned_run_rests_on_the_plays_before_it() {
    let game = harbor();
    let account = Account::of(&game);
    let unearned: Vec<_> =
        why(&game, &account, Number::EarnedAgainst(Side::Visitors)).into_iter().filter(|e| !e.counts()).collect();
    assert_eq!(unearned.len(), 2, "7 runs, 5 of them earned for the side");
    assert!(unearned.iter().any(|e| !e.reason.rests_on.is_empty()), "one reached base on an error in an earlier play");
    assert!(unearned.iter().flat_map(|e| &e.reason.rests_on).all(|entry| account.line(*entry).is_some()));
}

/// Striking out the home run of the fourth takes the run, the hit and the run batted in, and nothing else of hers.
#[test]
fn a_correction_shows_what_it_would_change() {
    let game = harbor();
    let entry = Account::of(&game)
        .halves
        .iter()
        .flat_map(|h| &h.lines)
        .find(|l| l.reasons.iter().any(|r| matches!(r.ruled, Ruled::Result { result: BatterResult::Hit(4), .. })))
        .map(|l| l.entry)
        .expect("somebody homered");
    let after = game.preview(Event::Retract { entry }).expect("a play can be struck out");
    let comparison = compare::compare(&game, &after);
    let id = player(&game, "Delphine Abara");
    let hits = comparison.numbers.iter().find(|(n, ..)| *n == Number::Batting(id, Batting::Hits));
    assert!(hits.is_some_and(|(_, before, after)| before > after));
    assert!(compare::compare(&game, &game).is_empty());
}

#[test]
fn a_game_not_begun_has_nothing_to_tell() {
    assert_eq!(Account::of(&Game::new()), Account::default());
}
