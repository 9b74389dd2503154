//! Averages and percentages: exact integers in, rounded half up (OBR 9.20, 9.21).

use core::fmt;

use serde::{Serialize, Serializer};

use crate::field::Outs;

/// A quotient, kept exact and rounded only when printed.
///
/// ```
/// use benchbook_stats::{field::Outs, rates::earned_run_average};
/// // OBR 9.21(e): 9 1/3 innings and 3 earned runs are an earned run average of 2.89.
/// assert_eq!(earned_run_average(3, Outs(28), 9).to_string(), "2.89");
/// assert_eq!(earned_run_average(2, Outs(0), 9).to_string(), "∞");
/// assert_eq!(earned_run_average(0, Outs(0), 9).to_string(), "-");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rate {
    numerator: u64,
    denominator: u64,
    decimals: u8,
}

impl Rate {
    /// `numerator / denominator`, printed with `decimals` places, at most 6.
    pub const fn new(numerator: u64, denominator: u64, decimals: u8) -> Self {
        Self { numerator, denominator, decimals }
    }

    /// The value in units of its last printed place, rounded half up: 2.89 is 289. `None` with a denominator of 0.
    pub const fn scaled(self) -> Option<u64> {
        if self.denominator == 0 {
            return None;
        }
        Some((2 * self.numerator * 10_u64.pow(self.decimals as u32) + self.denominator) / (2 * self.denominator))
    }

    /// The value as printed, as a number; `None` with a denominator of 0.
    #[allow(clippy::cast_precision_loss)] // at most seven digits of a printed average
    pub fn value(self) -> Option<f64> {
        self.scaled().map(|scaled| scaled as f64 / 10_f64.powi(i32::from(self.decimals)))
    }
}

impl fmt::Display for Rate {
    /// As the trade prints it: ".333" and "1.000" with three places, "2.89" with two; a dash where there is nothing to
    /// divide, the sign of infinity where there is nothing to divide by.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Some(scaled) = self.scaled() else {
            return f.write_str(if self.numerator == 0 { "-" } else { "∞" });
        };
        let unit = 10_u64.pow(u32::from(self.decimals));
        let (whole, part) = (scaled / unit, scaled % unit);
        let width = usize::from(self.decimals);
        if whole == 0 && self.decimals == 3 {
            write!(f, ".{part:0width$}")
        } else {
            write!(f, "{whole}.{part:0width$}")
        }
    }
}

impl Serialize for Rate {
    /// The printed value as a number, or null.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.value().serialize(serializer)
    }
}

/// Hits by at bats (OBR 9.21(b)), three places.
pub const fn batting_average(hits: u32, at_bats: u32) -> Rate {
    Rate::new(hits as u64, at_bats as u64, 3)
}

/// Total bases by at bats (OBR 9.21(c)), three places.
pub const fn slugging(total_bases: u32, at_bats: u32) -> Rate {
    Rate::new(total_bases as u64, at_bats as u64, 3)
}

/// Hits, walks and hit batters by at bats, walks, hit batters and sacrifice flies (OBR 9.21(f)), three places.
pub const fn on_base(reached: u32, turns: u32) -> Rate {
    Rate::new(reached as u64, turns as u64, 3)
}

/// Putouts and assists by those and errors (OBR 9.21(d)), three places.
pub const fn fielding_average(putouts: u32, assists: u32, errors: u32) -> Rate {
    let handled = putouts as u64 + assists as u64;
    Rate::new(handled, handled + errors as u64, 3)
}

/// Earned runs by innings pitched, times the innings of a regulation game (OBR 9.21(e)), two places.
pub const fn earned_run_average(earned_runs: u32, outs: Outs, regulation_innings: u8) -> Rate {
    Rate::new(earned_runs as u64 * regulation_innings as u64 * 3, outs.0 as u64, 2)
}

/// Walks and hits by innings pitched: customary, not in the rules; two places.
pub const fn walks_and_hits_per_inning(walks: u32, hits: u32, outs: Outs) -> Rate {
    Rate::new((walks as u64 + hits as u64) * 3, outs.0 as u64, 2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounds_half_up() {
        assert_eq!(batting_average(1, 16).to_string(), ".063"); // .0625
        assert_eq!(batting_average(3, 3).to_string(), "1.000");
        assert_eq!(batting_average(0, 4).to_string(), ".000");
        assert_eq!(batting_average(0, 0).to_string(), "-");
        assert_eq!(slugging(7, 3).to_string(), "2.333");
    }

    #[test]
    fn earned_run_average_is_by_the_codes_innings() {
        assert_eq!(earned_run_average(2, Outs(18), 6).to_string(), "2.00");
        assert_eq!(earned_run_average(2, Outs(18), 9).to_string(), "3.00");
        assert_eq!(earned_run_average(2, Outs(18), 7).to_string(), "2.33");
    }
}
