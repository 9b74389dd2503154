//! Streaks (OBR 9.23): consecutive games with a hit, consecutive games on base.

use serde::Serialize;

use crate::lines::BattingLine;

/// What of a game matters for a streak.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Turns {
    /// Plate appearances.
    pub plate_appearances: u32,
    /// Hits.
    pub hits: u32,
    /// Walks, hit batters, interference or obstruction, sacrifice hits: they neither lengthen nor end a hitting streak.
    pub neutral: u32,
    /// Reached by a hit, a walk or being hit.
    pub on_base: u32,
}

impl Turns {
    /// Those of a line.
    pub const fn of(line: &BattingLine) -> Self {
        Self {
            plate_appearances: line.plate_appearances,
            hits: line.hits,
            neutral: line.walks + line.hit_by_pitch + line.interference + line.sacrifice_hits,
            on_base: line.hits + line.walks + line.hit_by_pitch,
        }
    }
}

/// Streaks in games, in the order the games were added.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Streaks {
    /// Hitting streak that still runs.
    pub hitting: u32,
    /// Longest hitting streak.
    pub longest_hitting: u32,
    /// On-base streak that still runs.
    pub on_base: u32,
    /// Longest on-base streak.
    pub longest_on_base: u32,
}

impl Streaks {
    /// Adds the next game. A hitting streak is not ended by a game in which all turns were neutral; a sacrifice fly
    /// and no hit ends it (OBR 9.23(b)).
    pub fn add(&mut self, turns: &Turns) {
        if turns.hits > 0 {
            self.hitting += 1;
        } else if turns.plate_appearances > turns.neutral {
            self.hitting = 0;
        }
        if turns.on_base > 0 {
            self.on_base += 1;
        } else if turns.plate_appearances > 0 {
            self.on_base = 0;
        }
        self.longest_hitting = self.longest_hitting.max(self.hitting);
        self.longest_on_base = self.longest_on_base.max(self.on_base);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn turns(plate_appearances: u32, hits: u32, neutral: u32) -> Turns {
        Turns { plate_appearances, hits, neutral, on_base: hits }
    }

    /// OBR 9.23(b).
    #[test]
    fn hitting_streak() {
        let mut streaks = Streaks::default();
        for (game, expected) in [
            (turns(4, 1, 0), 1),
            (turns(3, 0, 3), 1), // only walks: goes on
            (turns(0, 0, 0), 1), // did not bat: goes on
            (turns(4, 2, 1), 2),
            (turns(1, 0, 0), 0), // a sacrifice fly and no hit: ended
            (turns(4, 1, 0), 1),
        ] {
            streaks.add(&game);
            assert_eq!(streaks.hitting, expected, "{game:?}");
        }
        assert_eq!(streaks.longest_hitting, 2);
    }
}
