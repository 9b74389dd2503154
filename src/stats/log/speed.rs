//! The speed of a pitch, which the log keeps in tenths of a mile per hour, in the unit of whoever reads the radar.

/// A unit of speed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum SpeedUnit {
    /// Miles per hour.
    #[default]
    MilesPerHour,
    /// Kilometers per hour.
    KilometersPerHour,
}

/// Mm in a mile (exact, international mile) and in a kilometer.
const MILE: u64 = 1_609_344;
const KILOMETER: u64 = 1_000_000;

impl SpeedUnit {
    /// The log's tenths of a mile per hour for a whole number of this unit, rounded half up; `None` for what no pitch can be.
    pub fn recorded(self, whole: u16) -> Option<u16> {
        let whole = u64::from(whole);
        let tenths = match self {
            Self::MilesPerHour => whole * 10,
            Self::KilometersPerHour => (whole * 10 * KILOMETER + MILE / 2) / MILE,
        };
        u16::try_from(tenths).ok().filter(|tenths| (100..=1300).contains(tenths))
    }

    /// The whole number of this unit nearest to the log's tenths of a mile per hour: what was recorded comes out again.
    pub fn shown(self, tenths: u16) -> u16 {
        let tenths = u64::from(tenths);
        let whole = match self {
            Self::MilesPerHour => (tenths + 5) / 10,
            Self::KilometersPerHour => (tenths * MILE + 5 * KILOMETER) / (10 * KILOMETER),
        };
        u16::try_from(whole).unwrap_or(u16::MAX)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_read_off_the_radar_comes_out_again() {
        let mut seen = 0;
        for unit in [SpeedUnit::MilesPerHour, SpeedUnit::KilometersPerHour] {
            for whole in 0..=300 {
                if let Some(tenths) = unit.recorded(whole) {
                    assert_eq!(unit.shown(tenths), whole, "{unit:?}");
                    seen += 1;
                }
            }
        }
        // 10 to 130 mph; 16 km/h (9.9 mph) is too slow, 209 km/h (129.9 mph) the last.
        assert_eq!(seen, 121 + 193);
    }

    #[test]
    fn a_mile_is_1609_344_meters() {
        assert_eq!(SpeedUnit::KilometersPerHour.recorded(100), Some(621));
        assert_eq!(SpeedUnit::KilometersPerHour.shown(600), 97);
        assert_eq!(SpeedUnit::MilesPerHour.recorded(131), None);
        assert_eq!(SpeedUnit::MilesPerHour.recorded(9), None);
    }
}
