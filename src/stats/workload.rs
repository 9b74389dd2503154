//! Pitch counts and rest: dated tables, and what a count asks for. Pure arithmetic: the league's own rules and medical
//! advice come first, and a count within a table is not thereby safe.

/// A guideline, as published at one time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Guideline {
    /// Its name.
    pub name: &'static str,
    /// Who published it, and when. Newer editions may differ.
    pub source: &'static str,
    /// Its rows, youngest first.
    pub rows: &'static [AgeRow],
}

/// One age group's row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AgeRow {
    /// From this age, in years.
    pub from_age: u8,
    /// To this age, in years.
    pub to_age: u8,
    /// Most pitches in a day.
    pub daily_maximum: u16,
    /// Most pitches that ask for 0, 1, 2 … days of rest.
    pub most: &'static [u16],
    /// More than the last of `most` ask for one day more than it, up to the daily maximum.
    pub one_day_more: bool,
}

/// What a count asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rest {
    /// So many whole days without pitching.
    Days(u8),
    /// The table has no rest for so many pitches: they are more than it allows in a day.
    BeyondTable,
}

/// MLB and USA Baseball "Pitch Smart".
pub const PITCH_SMART_2015: Guideline = Guideline {
    name: "Pitch Smart",
    source: "MLB / USA Baseball, as published in 2015; newer editions changed the upper bands",
    rows: &[
        AgeRow { from_age: 7, to_age: 8, daily_maximum: 50, most: &[20, 35, 50], one_day_more: false },
        AgeRow { from_age: 9, to_age: 10, daily_maximum: 75, most: &[20, 35, 50, 65], one_day_more: true },
        AgeRow { from_age: 11, to_age: 12, daily_maximum: 85, most: &[20, 35, 50, 65], one_day_more: true },
        AgeRow { from_age: 13, to_age: 14, daily_maximum: 95, most: &[20, 35, 50, 65], one_day_more: true },
        AgeRow { from_age: 15, to_age: 16, daily_maximum: 95, most: &[30, 45, 60, 75], one_day_more: true },
        AgeRow { from_age: 17, to_age: 18, daily_maximum: 105, most: &[30, 45, 60, 75], one_day_more: true },
        AgeRow { from_age: 19, to_age: 22, daily_maximum: 120, most: &[30, 45, 60, 75], one_day_more: true },
    ],
};

impl Guideline {
    /// The row of an age in years, if the guideline has one.
    pub fn row(&self, age: u8) -> Option<&'static AgeRow> {
        self.rows.iter().find(|row| (row.from_age..=row.to_age).contains(&age))
    }
}

impl AgeRow {
    /// What so many pitches in a day ask for.
    pub fn rest(&self, pitches: u16) -> Rest {
        let days = self.most.iter().position(|most| pitches <= *most);
        match days {
            Some(days) => Rest::Days(days as u8),
            None if self.one_day_more && pitches <= self.daily_maximum => Rest::Days(self.most.len() as u8),
            None => Rest::BeyondTable,
        }
    }

    /// The bands: days of rest, fewest and most pitches that ask for them.
    pub fn bands(&self) -> Vec<(u8, u16, u16)> {
        let mut from = 1;
        let mut bands = Vec::new();
        let last = self.one_day_more.then_some(self.daily_maximum);
        for (days, most) in (0..).zip(self.most.iter().copied().chain(last)) {
            bands.push((days, from, most));
            from = most + 1;
        }
        bands
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn days(age: u8, pitches: u16) -> Rest {
        PITCH_SMART_2015.row(age).expect("a row").rest(pitches)
    }

    /// The guideline's table as published in 2015: the edges of every band.
    #[test]
    fn rest_by_age_and_pitches() {
        let young = [(20, 0), (21, 1), (35, 1), (36, 2), (50, 2)];
        for (pitches, rest) in young {
            for age in [7, 8, 9, 10, 11, 12, 13, 14] {
                assert_eq!(days(age, pitches), Rest::Days(rest), "age {age}, {pitches} pitches");
            }
        }
        for (pitches, rest) in [(51, 3), (65, 3), (66, 4), (75, 4)] {
            for age in [9, 12, 14] {
                assert_eq!(days(age, pitches), Rest::Days(rest), "age {age}, {pitches} pitches");
            }
        }
        for (pitches, rest) in [(30, 0), (31, 1), (45, 1), (46, 2), (60, 2), (61, 3), (75, 3), (76, 4)] {
            for age in [15, 16, 17, 18, 19, 22] {
                assert_eq!(days(age, pitches), Rest::Days(rest), "age {age}, {pitches} pitches");
            }
        }
    }

    #[test]
    fn more_than_a_day_allows_is_beyond_the_table() {
        for (age, maximum) in [(8, 50), (10, 75), (12, 85), (14, 95), (16, 95), (18, 105), (22, 120)] {
            assert_ne!(days(age, maximum), Rest::BeyondTable, "age {age}");
            assert_eq!(days(age, maximum + 1), Rest::BeyondTable, "age {age}");
        }
        assert_eq!(PITCH_SMART_2015.row(6), None);
        assert_eq!(PITCH_SMART_2015.row(23), None);
    }

    #[test]
    fn bands_follow_each_other() {
        for row in PITCH_SMART_2015.rows {
            let bands = row.bands();
            assert_eq!(bands.last().map(|(.., most)| *most), Some(row.daily_maximum));
            assert!(bands.windows(2).all(|w| w[0].2 + 1 == w[1].1));
            assert!(
                bands.iter().all(
                    |(days, from, most)| row.rest(*from) == row.rest(*most) && row.rest(*most) == Rest::Days(*days)
                )
            );
        }
    }
}
