//! Winner, loser, save, shutout, complete game (OBR 9.17 to 9.19, 9.03(e)): what the rules and their Comments say, each
//! with its section number (2024 edition, from memory), and hard cases of our own with the reason why.

mod customs;
mod harbor;
mod loser;
mod no_decision;
mod saver;
mod whole;
mod winner;

use benchbook_stats::field::Half;
use benchbook_stats::ruling::decision::{Decisions, decisions};
use benchbook_stats::team::PlayerId;
use benchbook_tests::scorer::Scorer;

/// The visitors' relief pitcher.
const VERA: PlayerId = PlayerId(11);

/// The home side has scored so many in the bottom of the first, each on a home run; the top of the second begins.
fn home_leads_by(runs: u32) -> Scorer {
    let mut book = Scorer::nine();
    book.side_retired();
    home_runs(&mut book, runs);
    book.side_retired();
    book
}

/// So many home runs with the bases empty.
fn home_runs(book: &mut Scorer, runs: u32) {
    for _ in 0..runs {
        book.home_run();
    }
}

/// Strikeouts up to the beginning of that half-inning.
fn play_to(book: &mut Scorer, inning: u8, half: Half) {
    while (book.game().situation().inning, book.game().situation().half) != (inning, half) {
        book.side_retired();
    }
}

/// Strikeouts to the end of the game.
fn to_the_end(book: &mut Scorer) -> Decisions {
    while !matches!(book.game().situation().phase, benchbook_stats::game::Phase::Over(_)) {
        book.side_retired();
    }
    decisions(book.game())
}
