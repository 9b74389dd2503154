//! The words of the Mound.

use benchbook_stats::workload::{AgeRow, Rest};

use super::reading::ToLimit;

pub const MOUND: &str = "The Mound";
pub const WHOSE: &str = "Whose pitchers";
pub const IN_THE_FIELD: &str = "in the field";
pub const AT_BAT: &str = "at bat";
pub const NOBODY_PITCHES: &str = "Under these rules of play a machine or a coach pitches: there is nothing to count.";
pub const NOT_BEGUN: &str = "The count begins with the first pitch.";
pub const NO_PITCHER: &str = "Nobody is on the mound.";
pub const PITCHES: &str = "pitches today";
pub const STRIKES: &str = "Strikes";
pub const BALLS: &str = "Balls";
pub const THIS_BATTER: &str = "This batter";
pub const BEFORE_BATTER: &str = "Before this batter";
pub const BY_INNING: &str = "Pitches by inning";
pub const TODAY: &str = "Pitchers of today";
pub const PITCHER: &str = "Pitcher";
pub const INCOMPLETE: &str = "At least: some pitches were not seen.";
pub const THIS_GAME_ONLY: &str = "Counted in this game only. Pitches in other games of the day come on top.";
pub const REST: &str = "Rest";
pub const AGE: &str = "Age on the league's cut-off day";
pub const NO_AGE: &str = "With the age, the guideline's row shows here.";
pub const NO_ROW: &str = "The guideline has no row for this age.";
pub const CAUTION: &str = "Your league's rules and medical advice come first. A guideline is a limit, not a promise: an arm that hurts stops \
     pitching at any count.";
pub const FINISH_THE_BATTER: &str = "Some leagues let a pitcher who reaches the limit finish the batter, and reckon the \
                                     rest from the count before that batter.";
pub const DAYS: &str = "Days of rest";
pub const COUNT: &str = "Pitches in a day";
pub const NOW: &str = "now";

pub fn limit(limit: u16) -> String {
    format!("The league's limit: {limit}")
}

pub fn to_limit(to: ToLimit) -> String {
    match to {
        ToLimit::Left(1) => "1 pitch left to the league's limit".into(),
        ToLimit::Left(n) => format!("{n} left to the league's limit"),
        ToLimit::Reached => "The league's limit is reached".into(),
        ToLimit::Over(n) => format!("{n} over the league's limit"),
    }
}

pub fn row(row: &AgeRow) -> String {
    format!("Ages {} to {}: at most {} in a day", row.from_age, row.to_age, row.daily_maximum)
}

pub fn rest(pitches: u32, rest: Rest) -> String {
    match rest {
        Rest::Days(0) => format!("{pitches} pitches: no day of rest asked for"),
        Rest::Days(1) => format!("{pitches} pitches: 1 day of rest asked for"),
        Rest::Days(days) => format!("{pitches} pitches: {days} days of rest asked for"),
        Rest::BeyondTable => format!("{pitches} pitches: more than the guideline allows in a day"),
    }
}

pub fn band(from: u16, to: u16) -> String {
    format!("{from}–{to}")
}

pub fn shirt(number: &str) -> String {
    if number.is_empty() { String::new() } else { format!("#{number}") }
}
