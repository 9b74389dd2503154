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
