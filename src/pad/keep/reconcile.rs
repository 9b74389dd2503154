//! Which of a game's stored copies to go on with. Pure: it decides, others act.
//!
//! The longest log that can be read wins. A copy that holds less of the same game is written again; one that says
//! something else, or that could not be read to its end, is set aside before it is written again. Nothing is dropped.

use core::fmt;

use benchbook_stats::file::{self, GameFile};
use benchbook_stats::log::Entry;

use super::journal::Record;
use crate::words::{language, say};

/// Where a copy lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// The strict journal.
    Journal,
    /// The working state in local storage.
    Working,
    /// This page, in which the game was open a moment ago.
    Memory,
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::Journal => say!("keep-copy-journal"),
            Self::Working => say!("keep-copy-working"),
            Self::Memory => say!("keep-copy-page"),
        })
    }
}

/// One copy of a game, as far as it could be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stored {
    /// Where it lies.
    pub source: Source,
    /// The entries read, from the first to the last whole one.
    pub log: Vec<Entry>,
    /// Why it ends there, if it should not.
    pub damage: Option<String>,
    /// The copy as it is, kept while it may have to be set aside.
    pub raw: String,
}

impl Stored {
    /// A copy in which nothing is wrong.
    pub fn sound(source: Source, log: Vec<Entry>) -> Self {
        Self { source, log, damage: None, raw: String::new() }
    }

    /// Reads the working state's text. A damaged text gives no entries: the place of the damage says nothing of what
    /// is missing.
    pub fn working(text: &str) -> (Self, Option<GameFile>) {
        match file::read(text) {
            Ok(file) => {
                let sound = Self { raw: text.to_owned(), ..Self::sound(Source::Working, file.log.clone()) };
                (sound, Some(file))
            }
            Err(error) => {
                let damage = Some(error.said(language()));
                (Self { source: Source::Working, log: Vec::new(), damage, raw: text.to_owned() }, None)
            }
        }
    }

    /// Reads the journal's records: entry after entry until one is missing, unreadable or out of order.
    pub fn journal(records: &[Record]) -> Self {
        let mut log: Vec<Entry> = Vec::with_capacity(records.len());
        let mut damage = None;
        for ((position, text), expected) in records.iter().zip(0..) {
            let number = expected + 1;
            match serde_json::from_str::<Entry>(text) {
                _ if *position > expected => damage = Some(say!("keep-entry-missing", number = number)),
                Ok(entry) if log.last().is_none_or(|last| last.id < entry.id) => log.push(entry),
                Ok(entry) => damage = Some(say!("keep-entry-numbered", number = number, id = entry.id.0)),
                Err(error) => damage = Some(say!("keep-entry-unread", number = number, why = error.to_string())),
            }
            if damage.is_some() {
                break;
            }
        }
        let lines: Vec<String> = records.iter().map(|(position, text)| format!("{position}\t{text}")).collect();
        let raw = lines.join("\n");
        Self { source: Source::Journal, log, damage, raw }
    }

    /// The copy's text to be set aside: as it is where it has one, else as a game file.
    pub fn text(&self, id: &str) -> String {
        if self.raw.is_empty() {
            file::write(&GameFile { id: id.to_owned(), log: self.log.clone() })
        } else {
            self.raw.clone()
        }
    }
}

/// What to do with the copies, each named by its place among those given.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Verdict {
    /// The copy to go on with. `None`: there is no copy, or none of them can be read.
    pub winner: Option<usize>,
    /// Copies that don't say what the winner says: to be written again.
    pub stale: Vec<usize>,
    /// Copies that hold something which the winner doesn't: to be set aside first.
    pub aside: Vec<usize>,
}

/// Decides. Among logs of the same length the copy given first wins.
pub fn reconcile(copies: &[Stored]) -> Verdict {
    let readable = |copy: &Stored| copy.damage.is_none() || !copy.log.is_empty();
    let mut winner: Option<usize> = None;
    for (place, copy) in copies.iter().enumerate() {
        if readable(copy) && winner.is_none_or(|best| copies[best].log.len() < copy.log.len()) {
            winner = Some(place);
        }
    }
    let Some(best) = winner else {
        return Verdict { winner, stale: Vec::new(), aside: (0..copies.len()).collect() };
    };
    let log = &copies[best].log;
    let places = |wanted: &dyn Fn(&Stored) -> bool| (0..copies.len()).filter(|&i| wanted(&copies[i])).collect();
    Verdict {
        winner,
        stale: places(&|copy| copy.damage.is_some() || copy.log != *log),
        aside: places(&|copy| copy.damage.is_some() || !log.starts_with(&copy.log)),
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::log::{EntryId, Event};

    use super::*;

    fn log(notes: &[&str]) -> Vec<Entry> {
        (1..)
            .zip(notes)
            .map(|(id, text)| Entry { id: EntryId(id), at: None, event: Event::Note { text: (*text).to_owned() } })
            .collect()
    }

    fn journal(notes: &[&str]) -> Stored {
        Stored::journal(&records(&log(notes)))
    }

    fn working(notes: &[&str]) -> Stored {
        Stored::working(&file::write(&GameFile { id: "g".into(), log: log(notes) })).0
    }

    fn records(log: &[Entry]) -> Vec<Record> {
        (0..).zip(log).map(|(i, entry)| (i, serde_json::to_string(entry).expect("an entry"))).collect()
    }

    /// What was decided, in words: the winning log's length, then which copies are stale and which set aside.
    fn decided(copies: &[Stored]) -> (Option<usize>, Vec<usize>, Vec<usize>) {
        let verdict = reconcile(copies);
        (verdict.winner.map(|place| copies[place].log.len()), verdict.stale, verdict.aside)
    }

    #[test]
    fn equal_copies_need_nothing() {
        assert_eq!(decided(&[journal(&["a", "b"]), working(&["a", "b"])]), (Some(2), vec![], vec![]));
    }

    #[test]
    fn the_longer_copy_wins_and_the_shorter_is_written_again() {
        // A kill loses the last seconds of the working state.
        assert_eq!(decided(&[journal(&["a", "b", "c"]), working(&["a"])]), (Some(3), vec![1], vec![]));
        // A full or closed database loses the end of the journal.
        assert_eq!(decided(&[journal(&["a"]), working(&["a", "b"])]), (Some(2), vec![0], vec![]));
    }

    #[test]
    fn a_missing_copy_is_written_again() {
        assert_eq!(decided(&[journal(&[]), working(&["a"])]), (Some(1), vec![0], vec![]));
        assert_eq!(decided(&[journal(&["a"])]), (Some(1), vec![], vec![]));
    }

    #[test]
    fn copies_that_part_ways_are_both_kept_and_the_longer_goes_on() {
        assert_eq!(decided(&[journal(&["a", "x"]), working(&["a", "b", "c"])]), (Some(3), vec![0], vec![0]));
        assert_eq!(decided(&[journal(&["a", "x", "y"]), working(&["a", "b"])]), (Some(3), vec![1], vec![1]));
    }

    #[test]
    fn of_two_equally_long_ones_the_journal_goes_on() {
        let copies = [journal(&["a", "x"]), working(&["a", "b"])];
        assert_eq!(reconcile(&copies), Verdict { winner: Some(0), stale: vec![1], aside: vec![1] });
    }

    #[test]
    fn a_gap_ends_the_journal() {
        let mut gapped = records(&log(&["a", "b", "c", "d"]));
        gapped.remove(2);
        let copy = Stored::journal(&gapped);
        assert_eq!((copy.log.len(), copy.damage.as_deref()), (2, Some("entry 3 is missing")));
        // The working state has all of it: it wins, and the gapped journal is set aside before it is written again.
        let copies = [copy.clone(), working(&["a", "b", "c", "d"])];
        assert_eq!(decided(&copies), (Some(4), vec![0], vec![0]));
        // Nothing else is there: what came before the gap goes on.
        assert_eq!(decided(&[copy]), (Some(2), vec![0], vec![0]));
    }

    #[test]
    fn a_corrupt_record_ends_the_journal() {
        let mut corrupt = records(&log(&["a", "b", "c"]));
        corrupt[1].1.truncate(9);
        let copy = Stored::journal(&corrupt);
        assert_eq!(copy.log.len(), 1);
        assert!(copy.damage.as_deref().is_some_and(|words| words.starts_with("entry 2: ")), "{:?}", copy.damage);
        assert_eq!(decided(&[copy, working(&["a", "b"])]), (Some(2), vec![0], vec![0]));
    }

    #[test]
    fn ids_that_do_not_rise_end_the_journal() {
        let mut twice = records(&log(&["a", "b"]));
        let first = twice[0].1.clone();
        twice[1].1 = first;
        assert_eq!(Stored::journal(&twice).log.len(), 1);
        assert!(Stored::journal(&twice).damage.is_some());
    }

    #[test]
    fn a_corrupt_working_state_gives_way_to_the_journal_and_is_set_aside() {
        let (broken, file) = Stored::working("{\"format\":\"benchbook.game\",\"vers");
        assert_eq!(file, None);
        assert_eq!(decided(&[journal(&["a"]), broken]), (Some(1), vec![1], vec![1]));
    }

    #[test]
    fn when_nothing_can_be_read_everything_is_set_aside() {
        let (broken, _) = Stored::working("not a game");
        let lost = Stored::journal(&[(3, "{}".into())]);
        assert_eq!(decided(&[lost, broken]), (None, vec![], vec![0, 1]));
    }

    #[test]
    fn no_copies_at_all_are_no_game() {
        assert_eq!(reconcile(&[]), Verdict::default());
        // An empty journal and an empty working state are a game in which nothing was recorded.
        assert_eq!(decided(&[journal(&[]), working(&[])]), (Some(0), vec![], vec![]));
    }

    #[test]
    fn the_page_remembers_what_neither_storage_took() {
        let memory = Stored::sound(Source::Memory, log(&["a", "b", "c"]));
        assert_eq!(decided(&[journal(&["a"]), working(&["a", "b"]), memory]), (Some(3), vec![0, 1], vec![]));
    }

    #[test]
    fn what_is_set_aside_is_the_text_as_it_was() {
        assert_eq!(Stored::working("not a game").0.text("g"), "not a game");
        let memory = Stored::sound(Source::Memory, log(&["a"]));
        assert_eq!(file::read(&memory.text("g")).map(|file| file.log), Ok(log(&["a"])));
    }
}
