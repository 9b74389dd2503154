//! Which word of the catalogue the Book says, where that takes a choice.

use benchbook_stats::account::sentences;
use benchbook_stats::field::{Base, Half, Side};
use benchbook_stats::game::{Ending, Game, MendKind, Phase, Situation, Thrown};
use benchbook_stats::log::{Attempt, EntryId, Event, Judgment, Reached, Start};
use benchbook_stats::propose::ends::End;
use benchbook_stats::sheet::Sums;
use benchbook_stats::spray::Fate;
use benchbook_stats::team::PlayerId;

use super::Page;
use crate::words::{language, say};

pub fn page(page: Page) -> String {
    match page {
        Page::Box => say!("book-page-box"),
        Page::Plays => say!("book-page-plays"),
        Page::Sheet => say!("book-page-sheet"),
        Page::Charts => say!("book-page-charts"),
    }
}

/// "at Pier Nine Lanterns · 2026-06-13, Pier Nine Ground".
pub fn sheet_heading(game: &Game, side: Side) -> String {
    let other = game.team_name(side.other());
    let against = match side {
        Side::Visitors => say!("book-sheet-at", team = other),
        Side::Home => say!("book-sheet-against", team = other),
    };
    let heading = game.heading();
    let date = heading.date.map(|d| d.to_string()).unwrap_or_default();
    let parts = [against, date, heading.place.clone(), heading.competition.clone(), score(game.situation())];
    parts.into_iter().filter(|p| !p.is_empty()).collect::<Vec<_>>().join(" · ")
}

fn score(s: &Situation) -> String {
    let [visitors, home] = s.score;
    format!("{visitors}–{home}")
}

/// Under a column of the sheet.
pub fn sheet_sums(sums: &Sums) -> String {
    let Sums { runs, hits, errors, left_on_base, .. } = *sums;
    match left_on_base {
        Some(left) => say!("book-sheet-sums-left", runs = runs, hits = hits, errors = errors, left = left),
        None => say!("book-sheet-sums", runs = runs, hits = hits, errors = errors),
    }
}

/// "Top of the 7th".
pub fn half(inning: u8, half: Half) -> String {
    match half {
        Half::Top => say!("book-half-top", inning = inning),
        Half::Bottom => say!("book-half-bottom", inning = inning),
    }
}

/// Where the game stands, on the scoreboard.
pub fn state(s: &Situation) -> String {
    match s.phase {
        Phase::Before => say!("book-state-before"),
        Phase::Underway => format!("{} · {}", half(s.inning, s.half), outs(s.outs)),
        Phase::Delayed => say!("book-state-delayed"),
        Phase::Suspended => say!("book-state-suspended"),
        Phase::Over(Ending::Played) => say!("book-state-final"),
        Phase::Over(Ending::Mercy) => say!("book-state-mercy"),
        Phase::Over(Ending::Declared) => say!("book-state-declared"),
        Phase::Over(Ending::Called) => say!("book-state-called"),
        Phase::Over(Ending::Forfeited(Side::Visitors)) => say!("book-state-forfeited-visitors"),
        Phase::Over(Ending::Forfeited(Side::Home)) => say!("book-state-forfeited-home"),
    }
}

pub fn outs(outs: u8) -> String {
    say!("book-outs", outs = outs)
}

/// The sums of a half-inning: "2 R · 3 H · 1 E · 2 LOB".
pub fn sums(runs: u16, hits: u16, errors: u16, left: Option<u8>) -> String {
    match left {
        Some(left) => say!("book-sums-left", runs = runs, hits = hits, errors = errors, left = left),
        None => say!("book-sums", runs = runs, hits = hits, errors = errors),
    }
}

/// "OBR 9.05(a)"; custom is no rule.
pub fn rule(rule: &str) -> String {
    if rule == "custom" { say!("book-by-custom") } else { say!("book-rule", rule = rule) }
}

/// A decision as the table prints it, and as it is read aloud. Stats gives the letters of the English box score.
pub fn decision(letter: &str, name: &str) -> (String, String) {
    match letter {
        "W" => (say!("book-win"), say!("book-win-of", name = name)),
        "L" => (say!("book-loss"), say!("book-loss-of", name = name)),
        _ => (say!("book-save"), say!("book-save-of", name = name)),
    }
}

/// How a batter reached, as a choice.
pub fn reached(verdict: Reached) -> String {
    match verdict {
        Reached::Hit(1) => say!("book-single"),
        Reached::Hit(2) => say!("book-double"),
        Reached::Hit(3) => say!("book-triple"),
        Reached::Hit(_) => say!("book-home-run"),
        Reached::Error(position) => say!("book-error-by", position = position.said(language())),
        Reached::Choice => say!("book-choice"),
    }
}

/// A correction not made yet.
pub fn proposal(event: &Event) -> String {
    match event {
        Event::Retract { .. } => say!("book-would-strike-out"),
        Event::Replace { event, .. } => match &**event {
            Event::Pitch(pitch) => {
                say!("book-would-be-pitch", pitch = sentences::pitch(Thrown::Called(pitch.call), language()))
            }
            _ => say!("book-it-was"),
        },
        Event::Insert { event, .. } => match &**event {
            Event::Pitch(pitch) => {
                say!("book-would-insert-pitch", pitch = sentences::pitch(Thrown::Called(pitch.call), language()))
            }
            _ => say!("book-would-insert"),
        },
        Event::Judgment(Judgment::BatterReached { verdict, .. }) => {
            say!("book-would-score-as", verdict = reached(*verdict))
        }
        Event::Judgment(_) | Event::Reinstate { .. } => String::new(),
        _ => say!("book-would-add"),
    }
}

/// What became of a batter, in a chart's legend.
pub fn fate(fate: Fate) -> String {
    match fate {
        Fate::Hit => say!("book-hit"),
        Fate::Out => say!("book-out"),
        Fate::Error => say!("book-error"),
        Fate::Safe => say!("book-safe-otherwise"),
    }
}

/// Who, and where they stood before the play.
pub fn from_where(name: &str, who: Start) -> String {
    match who {
        Start::Batter => say!("book-amend-batter", name = name),
        Start::First => say!("book-amend-on-first", name = name),
        Start::Second => say!("book-amend-on-second", name = name),
        Start::Third => say!("book-amend-on-third", name = name),
    }
}

/// An end as a choice.
pub fn end(end: End) -> String {
    match end {
        End::Stays => say!("book-end-stays"),
        End::Safe(Base::First) => say!("book-end-first"),
        End::Safe(Base::Second) => say!("book-end-second"),
        End::Safe(Base::Third) => say!("book-end-third"),
        End::Safe(Base::Home) => say!("book-end-scores"),
        End::Out(Base::First) => say!("book-end-out-first"),
        End::Out(Base::Second) => say!("book-end-out-second"),
        End::Out(Base::Third) => say!("book-end-out-third"),
        End::Out(Base::Home) => say!("book-end-out-home"),
    }
}

/// The base whose cause is chosen.
pub fn reaches(base: Base) -> String {
    match base {
        Base::First => say!("book-reaches-first"),
        Base::Second => say!("book-reaches-second"),
        Base::Third => say!("book-reaches-third"),
        Base::Home => say!("book-reaches-home"),
    }
}

/// What a runner put out was about.
pub fn attempt(attempt: Attempt) -> String {
    match attempt {
        Attempt::Steal => say!("book-attempt-steal"),
        Attempt::Pickoff => say!("book-attempt-pickoff"),
        Attempt::Advance => say!("book-attempt-advance"),
    }
}

/// What would mend an entry that no longer fits, and what that leaves to settle.
pub fn mend(kind: MendKind, left: usize) -> String {
    let mend = match kind {
        MendKind::WithoutMissingRunners => say!("book-mend-missing-runners"),
        MendKind::RunnersMakeRoom => say!("book-mend-make-room"),
        MendKind::WithoutLateOuts => say!("book-mend-late-outs"),
        MendKind::StrikeOut => say!("book-mend-strike-out"),
    };
    match left {
        0 => say!("book-mend-settles-all", mend = mend),
        left => say!("book-mend-leaves", mend = mend, left = left),
    }
}

/// The open questions: "To settle: 2".
pub fn to_settle(open: usize) -> String {
    match open {
        0 => say!("book-all-settled"),
        open => say!("book-settle", open = open),
    }
}

/// A judgment as an answer.
pub fn answer(judgment: &Judgment, names: &dyn Fn(PlayerId) -> String) -> String {
    match judgment {
        Judgment::BuntedForHit { yes, .. }
        | Judgment::WouldHaveScored { yes, .. }
        | Judgment::WouldHaveScoredAfterCatch { yes, .. }
        | Judgment::Earned { yes, .. }
        | Judgment::Undisputed { yes, .. }
        | Judgment::EffectiveFinish { yes, .. } => {
            if *yes {
                say!("book-yes")
            } else {
                say!("book-no")
            }
        }
        Judgment::WinningPitcher { pitcher } => names(*pitcher),
        Judgment::GotAway { wild: true, .. } => say!("book-wild-pitch"),
        Judgment::GotAway { .. } => say!("book-passed-ball"),
        Judgment::BatterReached { verdict: Reached::Hit(_), .. } => say!("book-hit"),
        Judgment::BatterReached { verdict: Reached::Error(_), .. } => say!("book-error"),
        Judgment::BatterReached { verdict: Reached::Choice, .. } => say!("book-choice"),
    }
}

/// Whether the proof comes out, and if not, by how much.
pub fn balance(came_up: u32, accounted: u32) -> String {
    let off = came_up.abs_diff(accounted);
    if off == 0 {
        say!("book-balances", batters = came_up)
    } else if came_up > accounted {
        say!("book-missing-right", cameup = came_up, accounted = accounted, off = off)
    } else {
        say!("book-missing-left", cameup = came_up, accounted = accounted, off = off)
    }
}

pub fn entry(entry: EntryId) -> String {
    say!("book-entry", number = entry.0)
}

/// A number that changes.
pub fn from_to(before: u32, after: u32) -> String {
    format!("{before} → {after}")
}

pub fn stands(s: &Situation) -> String {
    match s.phase {
        Phase::Underway => {
            let half = half(s.inning, s.half).to_lowercase();
            say!("book-would-stand", score = score(s), half = half, outs = outs(s.outs))
        }
        _ => say!("book-would-stand-over", score = score(s), state = state(s).to_lowercase()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ordinals_are_english() {
        let all = [1, 2, 3, 4, 11, 12, 13, 21, 22].map(|n| half(n, Half::Top));
        let words: Vec<&str> = all.iter().filter_map(|half| half.split(' ').next_back()).collect();
        assert_eq!(words, ["1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd"]);
    }
}
