//! Counts of tests that really ran, read from what the test programs print.

use anyhow::{Context, Result};
use serde_json::Value;
use std::fmt;
use std::ops::AddAssign;

#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Totals {
    pub passed: u64,
    pub failed: u64,
    pub skipped: u64,
}

impl Totals {
    pub const ONE_PASSED: Self = Self { passed: 1, failed: 0, skipped: 0 };
    pub const ONE_FAILED: Self = Self { passed: 0, failed: 1, skipped: 0 };

    /// How many tests ran.
    pub fn ran(self) -> u64 {
        self.passed + self.failed
    }

    /// Reads `Summary [ 0.1s] 12 tests run: 11 passed, 1 failed, 2 skipped`.
    pub fn of_nextest(text: &str) -> Self {
        let summary = text.lines().rev().find_map(|line| {
            let line = line.trim_start();
            line.starts_with("Summary [").then(|| line.split_once("run:")).flatten()
        });
        let Some((_, counts)) = summary else { return Self::default() };
        let failed = ["failed", "timed out", "exec failed"].iter().map(|word| count(counts, word)).sum();
        Self { passed: count(counts, "passed"), failed, skipped: count(counts, "skipped") }
    }

    /// Reads and adds up each `test result: ok. 5 passed; 0 failed; 1 ignored; ...`.
    pub fn of_libtest(text: &str) -> Self {
        let mut totals = Self::default();
        for line in text.lines() {
            let Some(counts) = line.trim_start().strip_prefix("test result: ") else { continue };
            totals += Self {
                passed: count(counts, "passed"),
                failed: count(counts, "failed"),
                skipped: count(counts, "ignored"),
            };
        }
        totals
    }

    /// Reads the statistics of Playwright's JSON report.
    pub fn of_playwright(report: &str) -> Result<Self> {
        let report: Value = serde_json::from_str(report).context("the browser tests' report is not JSON")?;
        let stats = report.get("stats").context("the browser tests' report has no statistics")?;
        let number = |name: &str| stats.get(name).and_then(Value::as_u64).unwrap_or_default();
        // A test that only passed when tried again has failed.
        Ok(Self {
            passed: number("expected"),
            failed: number("unexpected") + number("flaky"),
            skipped: number("skipped"),
        })
    }
}

/// The number before a word, as in `11 passed (2 slow), 1 failed`.
fn count(text: &str, word: &str) -> u64 {
    text.split([',', ';', '.', '(', ')'])
        .filter_map(|part| part.trim().split_once(' '))
        .find(|(_, what)| what.trim() == word)
        .and_then(|(number, _)| number.parse().ok())
        .unwrap_or_default()
}

impl AddAssign for Totals {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.skipped += other.skipped;
    }
}

impl fmt::Display for Totals {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} passed, {} failed", self.passed, self.failed)?;
        if self.skipped > 0 {
            write!(f, ", {} skipped", self.skipped)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nextest_summaries() {
        for (text, passed, failed, skipped) in [
            ("     Summary [   0.004s] 12 tests run: 12 passed, 0 skipped", 12, 0, 0),
            ("     Summary [   1.204s] 9 tests run: 7 passed (1 slow), 2 failed, 3 skipped", 7, 2, 3),
            ("     Summary [  60.0s] 4/9 tests run: 2 passed, 1 failed, 1 timed out, 0 skipped", 2, 2, 0),
            ("     Summary [   0.0s] 1 test run: 1 passed (1 flaky), 0 skipped\n  x\n", 1, 0, 0),
            ("     Summary [   0.0s] 3 tests run: 2 passed, 1 exec failed, 0 skipped", 2, 1, 0),
            ("error: could not compile", 0, 0, 0),
        ] {
            assert_eq!(Totals::of_nextest(text), Totals { passed, failed, skipped }, "{text}");
        }
    }

    #[test]
    fn libtest_results_are_added_up() {
        let text = "running 2 tests\ntest a ... ok\n\n\
            test result: ok. 2 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.00s\n\
            test result: FAILED. 3 passed; 1 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.00s\n";
        assert_eq!(Totals::of_libtest(text), Totals { passed: 5, failed: 1, skipped: 1 });
    }

    #[test]
    fn playwright_statistics() {
        let report = r#"{"suites": [], "stats": {"expected": 5, "unexpected": 1, "flaky": 1, "skipped": 2}}"#;
        assert_eq!(Totals::of_playwright(report).unwrap(), Totals { passed: 5, failed: 2, skipped: 2 });
        assert!(Totals::of_playwright("").is_err());
        assert!(Totals::of_playwright("{}").is_err());
    }

    #[test]
    fn the_closing_line() {
        let mut totals = Totals::ONE_PASSED;
        totals += Totals::ONE_FAILED;
        assert_eq!(totals.to_string(), "1 passed, 1 failed");
        totals.skipped = 3;
        assert_eq!(totals.to_string(), "1 passed, 1 failed, 3 skipped");
    }
}
