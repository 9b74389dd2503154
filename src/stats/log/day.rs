//! A day as the game file has it, `2026-05-09`, and as a scorer's device gives it.
//!
//! The library would read every way to write a moment, and say all that can be wrong with one: more code in the app than
//! the rules of an inning.

use jiff::civil::Date;
use serde::de::{Error, Unexpected};
use serde::{Deserialize, Deserializer, Serializer};

/// The day that is written so; `None` if none is.
///
/// ```
/// use benchbook_stats::log::day;
/// assert_eq!(day::read("2026-05-09").map(|day| day.to_string()), Some("2026-05-09".into()));
/// assert_eq!(day::read("2026-02-30"), None);
/// ```
pub fn read(text: &str) -> Option<Date> {
    let mut parts = text.splitn(3, '-');
    let mut part = |digits: usize| {
        let part = parts.next()?;
        (part.len() == digits && part.bytes().all(|b| b.is_ascii_digit())).then_some(part)
    };
    let (year, month, day) = (part(4)?, part(2)?, part(2)?);
    Date::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?).ok()
}

#[allow(clippy::ref_option, clippy::trivially_copy_pass_by_ref)] // how serde hands it over
pub(super) fn serialize<S: Serializer>(day: &Option<Date>, to: S) -> Result<S::Ok, S::Error> {
    match day {
        Some(day) => to.collect_str(day),
        None => to.serialize_none(),
    }
}

pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Date>, D::Error> {
    let Some(text) = Option::<String>::deserialize(from)? else { return Ok(None) };
    let day = read(&text).ok_or_else(|| D::Error::invalid_value(Unexpected::Str(&text), &"a day as in 2026-05-09"))?;
    Ok(Some(day))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_days_of_the_calendar_are_read() {
        let written = |text| read(text).map(|day| day.to_string());
        for good in ["2026-05-09", "2024-02-29", "0001-01-01", "9999-12-31"] {
            assert_eq!(written(good).as_deref(), Some(good));
        }
        for bad in
            ["", "2026", "2026-5-9", "2026-13-01", "2025-02-29", "2026-05-09T10:00", "+026-05-09", "２０２６-05-09"]
        {
            assert_eq!(written(bad), None, "{bad}");
        }
    }
}
