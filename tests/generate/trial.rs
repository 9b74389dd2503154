//! A property tried on many games: the same ones every time, so that a failure can be looked at again.

use std::env;

use benchbook_stats::code::presets;
use proptest::prelude::{Strategy, any};
use proptest::test_runner::{Config, RngAlgorithm, TestCaseError, TestRng, TestRunner};

use super::Plan;

/// Entries of the longest game made up; about fifty of them are said before the first pitch.
const LONGEST: usize = 700;

/// Games made up, unless `BENCHBOOK_GAMES` says how many.
const GAMES: usize = 2000;

/// Games of every code of play; a failing one shrinks by losing entries off its end.
fn plans() -> impl Strategy<Value = Plan> {
    (0..presets().len(), any::<u64>().no_shrink(), 60..=LONGEST).prop_map(|(preset, seed, entries)| Plan {
        preset: presets()[preset],
        seed,
        entries,
    })
}

/// Games to try, of ten parts of all.
pub fn games(of_ten: usize) -> usize {
    env::var("BENCHBOOK_GAMES").ok().and_then(|n| n.parse().ok()).unwrap_or(GAMES) * of_ten / 10
}

/// Tries a property on so many games.
///
/// # Panics
/// If it fails on one, with the shortest beginning of that game on which it still does.
pub fn over(games: usize, property: impl Fn(Plan)) {
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
