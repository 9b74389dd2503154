//! The past corrected: what no longer fits is listed with its reason and with mends that do fit.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::game::{Game, MendKind, Refusal};
use benchbook_stats::log::{Cause, Entry, EntryId, Event};
use benchbook_tests::scorer::{Scorer, by, to};

fn record(game: &mut Game, event: Event) {
    let id = game.next_id();
    game.record(Entry { id, at: None, event }).expect("it fits");
}

/// Corrects the past, and gives the one entry that no longer fits.
fn corrected(book: &Scorer, event: Event) -> (Game, EntryId, Refusal) {
    let mut game = book.game().clone();
    record(&mut game, event);
    let conflicts: Vec<_> = game.conflicts().collect();
    assert_eq!(conflicts.len(), 1, "{conflicts:?}");
    let (entry, refusal) = conflicts[0];
    (game, entry, refusal)
}

fn kinds(game: &Game, entry: EntryId) -> Vec<MendKind> {
    game.mends(entry).iter().map(|m| m.kind).collect()
}

/// Every mend offered does what it says.
fn mends_hold(game: &Game, entry: EntryId) {
    for mend in game.mends(entry) {
        let mut mended = game.clone();
        record(&mut mended, mend.event.clone());
        assert_eq!(mended.conflicts().count(), mend.conflicts_left, "{:?}", mend.kind);
        assert!(mended.conflicts().all(|(id, _)| id != entry), "{:?}", mend.kind);
    }
}

#[test]
fn a_runner_who_never_was() {
    // A single that turns out to have been a fly-out: the next single had him go to third.
    let mut book = Scorer::nine();
    book.single(&[]);
    let single = book.last();
    book.single(&[to(First, Third)]);
    let second = book.last();
    let (game, entry, refusal) = corrected(&book, Event::Retract { entry: single });
    assert_eq!((entry, refusal), (second, Refusal::EmptyBase(First)));
    assert_eq!(kinds(&game, entry), [MendKind::WithoutMissingRunners, MendKind::StrikeOut]);
    mends_hold(&game, entry);
    let mut mended = game.clone();
    record(&mut mended, game.mends(entry)[0].event.clone());
    assert_eq!(mended.situation().runners().count(), 1, "only the batter, on first");
}

#[test]
fn a_runner_who_is_in_the_way() {
    // A double that was a single: the next batter's single left nobody on first then.
    let mut book = Scorer::nine();
    book.single(&[]);
    let walk_before = book.last();
    book.running(&[by(First, Second, Cause::Steal)]);
    let steal = book.last();
    book.single(&[]);
    let (game, entry, refusal) = corrected(&book, Event::Retract { entry: steal });
    assert_eq!(refusal, Refusal::TwoOnBase(First));
    assert!(entry > walk_before);
    assert_eq!(kinds(&game, entry), [MendKind::RunnersMakeRoom, MendKind::StrikeOut]);
    mends_hold(&game, entry);
    let mut mended = game.clone();
    record(&mut mended, game.mends(entry)[0].event.clone());
    assert_eq!(mended.situation().runners().count(), 2);
}

#[test]
fn what_fits_needs_no_mend() {
    let mut book = Scorer::nine();
    book.triple(&[]).single(&[to(Third, Home)]);
    assert_eq!(book.game().mends(book.last()), []);
    assert_eq!(book.game().mends(EntryId(9999)), []);
}

#[test]
fn amended_and_amended_back_is_the_same_book() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let first = book.last();
    let was = book.game().event(book.game().steps().last().expect("a step")).clone();
    book.single(&[to(First, Second)]).fly_out(&[to(Second, Third)]);
    let before = book.game().box_score();
    let mut other = Scorer::nine();
    other.triple(&[]);
    let triple = other.game().event(other.game().steps().last().expect("a step")).clone();
    let mut game = book.game().clone();
    record(&mut game, Event::Replace { entry: first, event: Box::new(triple) });
    assert!(game.box_score() != before && game.conflicts().count() > 0);
    record(&mut game, Event::Replace { entry: first, event: Box::new(was) });
    assert!(game.box_score() == before && game.conflicts().count() == 0);
    assert_eq!(game.log().len(), book.game().log().len() + 2, "the history of corrections stays");
}

#[test]
fn the_game_before_an_entry_is_the_game_as_it_stood_then() {
    let text = include_str!("games/harbor-league.benchbook.json");
    let mut game = Game::replay(benchbook_stats::file::read(text).expect("the game file reads").log);
    // With corrections in the log the order of the game is another than that of the log.
    let (early, late) = (game.plays().nth(30).unwrap().entry, game.plays().nth(60).unwrap().entry);
    record(&mut game, Event::Insert { before: late, event: Box::new(Event::Note { text: "forgotten".into() }) });
    record(&mut game, Event::Retract { entry: early });
    let mut seen = 0;
    for pair in game.steps().windows(2) {
        let before = game.before(pair[1].entry).expect("it is in the game");
        assert_eq!(*before.situation(), pair[0].after);
        if let Some(play) = &pair[1].play {
            assert_eq!(*before.situation(), play.before);
            seen += 1;
        }
    }
    assert!(seen > 200, "{seen}");
    assert!(game.before(early).is_none(), "it was struck out");
}

#[test]
fn a_whole_play_amended_and_amended_back_is_the_same_book() {
    use benchbook_stats::log::Start;
    use benchbook_stats::propose::edit;

    let text = include_str!("games/harbor-league.benchbook.json");
    let game = Game::replay(benchbook_stats::file::read(text).expect("the game file reads").log);
    let mut amended = 0;
    let plays: Vec<EntryId> = game.plays().filter(|p| p.batted.is_some()).map(|p| p.entry).collect();
    for entry in plays {
        let step = game.steps().iter().find(|s| s.entry == entry).unwrap();
        let was = game.event(step).clone();
        let mut now = was.clone();
        edit::safe(now.action_mut().unwrap(), Start::Batter, Home, true);
        if now == was {
            continue;
        }
        let mut other = game.clone();
        record(&mut other, Event::Replace { entry, event: Box::new(now) });
        // A run after the third out changes nothing.
        amended += u32::from(other.box_score() != game.box_score());
        record(&mut other, Event::Replace { entry, event: Box::new(was) });
        assert!(other.box_score() == game.box_score(), "{entry:?}");
        assert_eq!(other.situation(), game.situation());
    }
    assert!(amended > 50, "{amended}");
}
