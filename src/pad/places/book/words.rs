//! The words of the Book.

use benchbook_stats::account::english;
use benchbook_stats::field::{Half, Side};
use benchbook_stats::game::{Ending, Game, MendKind, Phase, Situation, Thrown};
use benchbook_stats::log::{EntryId, Event, Judgment, Reached};
use benchbook_stats::sheet::Sums;
use benchbook_stats::team::PlayerId;

use super::Page;

pub const BOOK: &str = "The Book";
pub const PAGES: &str = "Pages of the Book";
pub const LINE_SCORE: &str = "Line score";
pub const TEAM: &str = "Team";
pub const NOTHING_YET: &str = "Nothing has happened yet. What is scored at the Plate is told here.";
pub const BATTING: &str = "At bat";
pub const PITCHING: &str = "Pitching";
pub const FIELDING: &str = "In the field";
pub const TOTALS: &str = "Totals";
pub const TEAM_EARNED: &str = "Earned runs of the team can be fewer than its pitchers' sum (OBR 9.16(i)).";
pub const PITCHES_MISSED: &str = "At least this many: some pitches were not seen.";
pub const PROOF: &str = "Proof of the box score";
pub const PROOF_RULE: &str = "OBR 9.03(c)";
pub const WHY: &str = "Why?";
pub const CLOSE: &str = "Close";
pub const NO_EVIDENCE: &str = "No play stands behind this number.";
pub const COUNTS: &str = "counts";
pub const DOES_NOT_COUNT: &str = "does not count";
pub const PITCHES: &str = "Pitches";
pub const RULINGS: &str = "Why it is scored so";
pub const STRIKE_OUT: &str = "Strike this out…";
pub const STRIKE_OUT_PITCH: &str = "Strike this pitch out…";
pub const AMEND_PITCH: &str = "Amend a pitch";
pub const IT_WAS: &str = "It was instead:";
pub const FORGOTTEN_BEFORE: &str = "Forgotten just before it:";
pub const SCORE_AS: &str = "Score it as";
pub const AGREE: &str = "Agree";
pub const LEAVE: &str = "Leave it as it is";
pub const PREVIEW: &str = "What would change";
pub const NO_CHANGE: &str = "No number would change.";
pub const STAYS_IN_LOG: &str = "The history of corrections stays in the log, and each can be undone.";
pub const UNDO: &str = "Undo last entry";
pub const REDO: &str = "Put it back";
pub const CONFLICTS: &str = "To settle: these entries no longer fit";
pub const CONFLICTS_HINT: &str = "After a correction earlier in the game they count for nothing. Mend the first: those after it may fit again. Or strike \
     each one out, or undo the correction.";
pub const NO_LONGER_FITS: &str = "No longer fits.";
pub const NEWEST_FIRST: &str = "Newest first";
pub const OLDEST_FIRST: &str = "From the first pitch on";
pub const STRUCK_OUT: &str = "Struck out";
pub const PUT_BACK: &str = "Put back";

pub const RESTS_ON: &str = "It rests on:";
pub const SETTLE_HINT: &str = "The rules leave these to the scorer. Until you answer, the usual answer stands; an answer can be changed at any time.";
pub const USUAL: &str = "usual";
pub const PRINT: &str = "Print, one page a side";
pub const BATTERS: &str = "Batters";
pub const SUMS: &str = "Sums";
pub const UNFINISHED: &str = "A turn at bat that goes on, or was cut short.";
pub const LEGEND: &str = "Pitches along the top: ○ ball, | called strike, × swing and a miss, ⁄ foul; + some not seen. A \
                          turned K is a called third strike. A filled diamond is a run, UE an unearned one; dots are \
                          runs batted in; (4) means moved up by the batter in place 4. A line at the left is a new \
                          batter, at the top a new pitcher; a stroke in the corner ends the half-inning.";

pub const fn page(page: Page) -> &'static str {
    match page {
        Page::Box => "Box score",
        Page::Plays => "Play by play",
        Page::Sheet => "Scoresheet",
    }
}

/// "At bat: Pier Nine Lanterns".
pub fn table_of(title: &str, team: &str) -> String {
    format!("{title}: {team}")
}

pub fn sheet_of(team: &str) -> String {
    format!("Scoresheet of {team}")
}

pub fn pitchers_of(team: &str) -> String {
    format!("Pitchers of {team}")
}

/// "at Pier Nine Lanterns · 2026-06-13, Pier Nine Ground".
pub fn sheet_heading(game: &Game, side: Side) -> String {
    let against = if side == Side::Visitors { "at" } else { "against" };
    let heading = game.heading();
    let date = heading.date.map(|d| d.to_string()).unwrap_or_default();
    let [visitors, home] = game.situation().score;
    let score = format!("{visitors}–{home}");
    let parts = [
        format!("{against} {}", game.team_name(side.other())),
        date,
        heading.place.clone(),
        heading.competition.clone(),
        score,
    ];
    parts.into_iter().filter(|p| !p.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// Under a column of the sheet.
pub fn sheet_sums(sums: &Sums) -> String {
    let left = sums.left_on_base.map_or_else(String::new, |left| format!(" {left} LOB"));
    format!("{} R {} H {} E{left}", sums.runs, sums.hits, sums.errors)
}

/// "1st", "2nd" … "11th".
pub fn ordinal(n: u8) -> String {
    let ending = match (n % 10, n % 100) {
        (1, rest) if rest != 11 => "st",
        (2, rest) if rest != 12 => "nd",
        (3, rest) if rest != 13 => "rd",
        _ => "th",
    };
    format!("{n}{ending}")
}

/// "Top of the 7th".
pub fn half(inning: u8, half: Half) -> String {
    let half = match half {
        Half::Top => "Top",
        Half::Bottom => "Bottom",
    };
    format!("{half} of the {}", ordinal(inning))
}

/// Where the game stands, on the scoreboard.
pub fn state(s: &Situation) -> String {
    match s.phase {
        Phase::Before => "Before the first pitch".into(),
        Phase::Underway => format!("{} · {}", half(s.inning, s.half), outs(s.outs)),
        Phase::Delayed => "Delayed".into(),
        Phase::Suspended => "Suspended".into(),
        Phase::Over(Ending::Played) => "Final".into(),
        Phase::Over(Ending::Mercy) => "Final, by the lead".into(),
        Phase::Over(Ending::Declared) => "Ended early".into(),
        Phase::Over(Ending::Called) => "Called".into(),
        Phase::Over(Ending::Forfeited(Side::Visitors)) => "Forfeited to the visitors".into(),
        Phase::Over(Ending::Forfeited(Side::Home)) => "Forfeited to the home side".into(),
    }
}

pub fn outs(outs: u8) -> String {
    match outs {
        1 => "1 out".into(),
        n => format!("{n} outs"),
    }
}

/// The sums of a half-inning: "2 R, 3 H, 1 E, 2 left".
pub fn sums(runs: u16, hits: u16, errors: u16, left: Option<u8>) -> String {
    let left = left.map_or_else(String::new, |left| format!(" · {left} LOB"));
    format!("{runs} R · {hits} H · {errors} E{left}")
}

/// "OBR 9.05(a)"; custom is no rule.
pub fn rule(rule: &str) -> String {
    if rule == "custom" { "By custom, not by rule".into() } else { format!("OBR {rule}") }
}

pub fn decision(letter: &str, name: &str) -> String {
    let what = match letter {
        "W" => "Winning pitcher",
        "L" => "Losing pitcher",
        "S" => "Save",
        other => other,
    };
    format!("{what}: {name}. {WHY}")
}

/// How a batter reached, as a choice.
pub fn reached(verdict: Reached) -> String {
    match verdict {
        Reached::Hit(1) => "Single".into(),
        Reached::Hit(2) => "Two-base hit".into(),
        Reached::Hit(3) => "Three-base hit".into(),
        Reached::Hit(_) => "Home run".into(),
        Reached::Error(position) => format!("Error, {position}"),
        Reached::Choice => "Fielder's choice".into(),
    }
}

/// A correction not made yet.
pub fn proposal(event: &Event) -> String {
    let said = |event: &Event| match event {
        Event::Pitch(pitch) => english::pitch(Thrown::Called(pitch.call)),
        _ => "another entry",
    };
    match event {
        Event::Retract { .. } => "Struck out.".into(),
        Event::Replace { event, .. } if !matches!(**event, Event::Pitch(_)) => "Changed so that it fits.".into(),
        Event::Replace { event, .. } => format!("The pitch was instead: {}.", said(event)),
        Event::Insert { event, .. } => format!("One pitch more before it: {}.", said(event)),
        Event::Judgment(Judgment::BatterReached { verdict, .. }) => format!("Scored as: {}.", reached(*verdict)),
        _ => String::new(),
    }
}

/// What would mend an entry that no longer fits, and what that leaves to settle.
pub fn mend(kind: MendKind, left: usize) -> String {
    let what = match kind {
        MendKind::WithoutMissingRunners => "Leave out runners who are not there",
        MendKind::RunnersMakeRoom => "Move the runners in the way up one base",
        MendKind::WithoutLateOuts => "Leave out the outs after the third",
        MendKind::StrikeOut => "Strike this entry out",
    };
    match left {
        0 => format!("{what} (settles all)"),
        n => format!("{what} (leaves {n})"),
    }
}

/// The open questions: "To settle: 2".
pub fn to_settle(open: usize) -> String {
    match open {
        0 => "Judgments, all settled".into(),
        n => format!("To settle: {n}"),
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
        | Judgment::EffectiveFinish { yes, .. } => if *yes { "Yes" } else { "No" }.into(),
        Judgment::WinningPitcher { pitcher } => names(*pitcher),
        Judgment::GotAway { wild: true, .. } => "Wild pitch".into(),
        Judgment::GotAway { .. } => "Passed ball".into(),
        Judgment::BatterReached { verdict: Reached::Hit(_), .. } => "Hit".into(),
        Judgment::BatterReached { verdict: Reached::Error(_), .. } => "Error".into(),
        Judgment::BatterReached { verdict: Reached::Choice, .. } => "Fielder's choice".into(),
    }
}

pub fn balances(came_up: u32) -> String {
    format!("It balances: {came_up} came up, {came_up} are accounted for.")
}

pub fn does_not_balance(came_up: u32, accounted: u32) -> String {
    let off = came_up.abs_diff(accounted);
    let batters = if off == 1 { "1 batter".to_owned() } else { format!("{off} batters") };
    if came_up > accounted {
        format!("{came_up} came up, but only {accounted} are accounted for: {batters} missing on the right.")
    } else {
        format!("{accounted} are accounted for, but only {came_up} came up: {batters} missing on the left.")
    }
}

pub fn entry(entry: EntryId) -> String {
    format!("Entry {}", entry.0)
}

pub fn more_numbers(count: usize) -> String {
    format!("{count} numbers of players would change")
}

/// A number that changes.
pub fn from_to(before: u32, after: u32) -> String {
    format!("{before} → {after}")
}

pub fn stands(s: &Situation) -> String {
    let [visitors, home] = s.score;
    match s.phase {
        Phase::Underway => {
            format!(
                "The game would stand at {visitors}–{home}, {}, {}.",
                half(s.inning, s.half).to_lowercase(),
                outs(s.outs)
            )
        }
        _ => format!("The game would stand at {visitors}–{home}: {}.", state(s).to_lowercase()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ordinals_are_english() {
        let all: Vec<_> = [1, 2, 3, 4, 11, 12, 13, 21, 22].map(ordinal).into();
        assert_eq!(all, ["1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd"]);
    }
}

/// What the average is reckoned by, and how to read it. The yardstick is common practice, no source.
pub fn earned_run_average(innings: u8) -> String {
    format!(
        "ERA: earned runs for every {innings} innings pitched. Common practice, no source: among professionals about 4 \
         is average and 2 or less excellent."
    )
}
