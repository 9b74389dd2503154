//! The Plate's words for what the book has a name for: a call, a base, a cause. Which one, not how it is said: that is
//! the catalogue's (`words/LANGUAGE/plate.ftl`). Sentences about a play are in [`super::telling`].

use benchbook_stats::field::{Base, Count, Half, Position, Side};
use benchbook_stats::game::{Ending, Game, Phase, Situation};
use benchbook_stats::log::{
    Attempt, Call, Cause, How, Judgment, MisplayKind, PitchKind, Reached, SpeedUnit, Trajectory, UnseenResult,
};

use crate::words::{language, say};

pub fn result(result: UnseenResult) -> String {
    match result {
        UnseenResult::Walk => say!("plate-result-walk"),
        UnseenResult::IntentionalWalk => say!("plate-intentional-walk"),
        UnseenResult::HitByPitch => say!("plate-hit-by-pitch"),
        UnseenResult::StrikeoutSwinging => say!("plate-result-struck-out-swinging"),
        UnseenResult::StrikeoutLooking => say!("plate-result-struck-out-looking"),
        UnseenResult::CatcherInterference => say!("plate-catcher-interference"),
    }
}

/// The sign on a pitch's button: large word, and a small one if it has any.
pub fn call(call: Call) -> (String, Option<String>) {
    let strike = || Some(say!("plate-small-strike"));
    let ball = || Some(say!("plate-small-ball"));
    match call {
        Call::Ball => (say!("plate-ball"), None),
        Call::CalledStrike => (say!("plate-called"), strike()),
        Call::SwingingStrike => (say!("plate-swinging"), strike()),
        Call::Foul => (say!("plate-foul"), None),
        Call::FoulTip => (say!("plate-foul-tip"), Some(say!("plate-small-held"))),
        Call::FoulBunt => (say!("plate-foul-bunt"), None),
        Call::MissedBunt => (say!("plate-missed-bunt"), None),
        Call::Pitchout => (say!("plate-pitchout"), ball()),
        Call::IntentionalBall => (say!("plate-wide-on-purpose"), ball()),
        Call::AutomaticBall => (say!("plate-automatic-ball"), Some(say!("plate-small-no-pitch"))),
        Call::AutomaticStrike => (say!("plate-automatic-strike"), Some(say!("plate-small-no-pitch"))),
        Call::IllegalPitch => (say!("plate-illegal-pitch"), ball()),
        Call::HitByPitch => (say!("plate-hit-by-pitch"), Some(say!("plate-small-takes-first"))),
        Call::CatcherInterference => (say!("plate-catcher-hindered"), Some(say!("plate-small-takes-first"))),
        Call::BatterInterference => (say!("plate-batter-hindered"), Some(say!("plate-small-is-out"))),
    }
}

/// The pitch in a sentence.
pub fn call_said(call: Call) -> String {
    match call {
        Call::Ball => say!("plate-said-ball"),
        Call::CalledStrike => say!("plate-said-called-strike"),
        Call::SwingingStrike => say!("plate-said-swinging-strike"),
        Call::Foul => say!("plate-foul"),
        Call::FoulTip => say!("plate-foul-tip"),
        Call::FoulBunt => say!("plate-foul-bunt"),
        Call::MissedBunt => say!("plate-missed-bunt"),
        Call::Pitchout => say!("plate-pitchout"),
        Call::IntentionalBall => say!("plate-said-intentional-ball"),
        Call::AutomaticBall => say!("plate-said-automatic-ball"),
        Call::AutomaticStrike => say!("plate-said-automatic-strike"),
        Call::IllegalPitch => say!("plate-illegal-pitch"),
        Call::HitByPitch => say!("plate-hit-by-pitch"),
        Call::CatcherInterference => say!("plate-catcher-interference"),
        Call::BatterInterference => say!("plate-batter-interference"),
    }
}

/// A kind of pitch.
pub fn kind(kind: PitchKind) -> String {
    match kind {
        PitchKind::Fastball => say!("plate-fastball"),
        PitchKind::Curveball => say!("plate-curveball"),
        PitchKind::Slider => say!("plate-slider"),
        PitchKind::ChangeUp => say!("plate-change-up"),
        PitchKind::Knuckleball => say!("plate-knuckleball"),
        PitchKind::Drop => say!("plate-drop"),
        PitchKind::Rise => say!("plate-rise"),
        PitchKind::Other => say!("plate-other-pitch"),
    }
}

pub fn unit(unit: SpeedUnit) -> String {
    match unit {
        SpeedUnit::MilesPerHour => say!("plate-mph"),
        SpeedUnit::KilometersPerHour => say!("plate-kmh"),
    }
}

/// Its key, for whoever is told the keys by a screen reader.
pub const fn key_of(call: Call) -> Option<&'static str> {
    match call {
        Call::Ball => Some("B"),
        Call::CalledStrike => Some("C"),
        Call::SwingingStrike => Some("S"),
        Call::Foul => Some("F"),
        _ => None,
    }
}

pub fn trajectory(trajectory: Trajectory) -> String {
    match trajectory {
        Trajectory::Ground => say!("plate-ground"),
        Trajectory::Line => say!("plate-line"),
        Trajectory::Fly => say!("plate-fly"),
        Trajectory::Pop => say!("plate-pop"),
        Trajectory::Bunt => say!("plate-bunt"),
    }
}

pub fn base(base: Base) -> String {
    base.said(language())
}

/// A fielder as the trade says it in a sentence.
pub fn position(position: Position) -> String {
    match position {
        Position::Pitcher => say!("plate-pitcher"),
        Position::Catcher => say!("plate-catcher"),
        Position::FirstBase => say!("plate-first"),
        Position::SecondBase => say!("plate-second"),
        Position::ThirdBase => say!("plate-third"),
        Position::Shortstop => say!("plate-short"),
        Position::LeftField => say!("plate-left"),
        Position::CenterField => say!("plate-center"),
        Position::RightField => say!("plate-right"),
        Position::ShortField => say!("plate-short-field"),
    }
}

/// "6-4-3".
pub fn chain(by: &[Position]) -> String {
    by.iter().map(|p| p.number().to_string()).collect::<Vec<_>>().join("-")
}

/// "6-3", or "3, unassisted".
pub fn handled(by: &[Position]) -> String {
    match by {
        [alone] => say!("plate-unassisted", number = alone.number()),
        _ => chain(by),
    }
}

/// The family name: what fits on a token. It comes last, but first in the scripts of Japan. "Batter 2" has none: "2 out at
/// second" would be read as a number of outs.
pub fn short(label: &str) -> &str {
    let mut words = label.split_whitespace();
    let family_first = label.chars().any(|c| matches!(c, '\u{3040}'..='\u{30ff}' | '\u{4e00}'..='\u{9fff}'));
    let family = if family_first { words.next() } else { words.next_back() };
    family.filter(|word| word.chars().any(char::is_alphabetic)).unwrap_or(label)
}

pub fn misplay(kind: MisplayKind) -> String {
    match kind {
        MisplayKind::Fielding => say!("plate-misplay-fielding"),
        MisplayKind::Throwing => say!("plate-misplay-throwing"),
        MisplayKind::Muff => say!("plate-misplay-muff"),
        MisplayKind::DroppedFly => say!("plate-misplay-dropped-fly"),
        MisplayKind::DroppedFoul => say!("plate-misplay-dropped-foul"),
        MisplayKind::Obstruction => say!("plate-misplay-obstruction"),
        MisplayKind::Interference => say!("plate-misplay-interference"),
    }
}

pub fn misplay_by(kind: MisplayKind, by: Position) -> String {
    let number = by.number();
    match kind {
        MisplayKind::Fielding => say!("plate-error-by", number = number),
        MisplayKind::Throwing => say!("plate-bad-throw-by", number = number),
        MisplayKind::Muff => say!("plate-dropped-by", number = number),
        MisplayKind::DroppedFly | MisplayKind::DroppedFoul => say!("plate-fly-dropped-by", number = number),
        MisplayKind::Obstruction => say!("plate-obstruction-by", number = number),
        MisplayKind::Interference => say!("plate-interference-by", number = number),
    }
}

pub fn cause(cause: Cause) -> String {
    match cause {
        Cause::Play => say!("plate-cause-play"),
        Cause::Throw => say!("plate-cause-throw"),
        Cause::Choice => say!("plate-cause-choice"),
        Cause::Error(_) => say!("plate-cause-error"),
        Cause::Obstruction => say!("plate-cause-obstruction"),
        Cause::Interference => say!("plate-cause-interference"),
        Cause::Award => say!("plate-cause-award"),
        Cause::Forced => say!("plate-cause-forced"),
        Cause::Steal => say!("plate-cause-steal"),
        Cause::WildPitch => say!("plate-wild-pitch"),
        Cause::PassedBall => say!("plate-passed-ball"),
        Cause::Balk => say!("plate-balk"),
        Cause::IllegalPitch => say!("plate-cause-illegal-pitch"),
        Cause::Indifference => say!("plate-cause-indifference"),
    }
}

pub fn how(how: How) -> String {
    match how {
        How::Fly => say!("plate-how-fly"),
        How::Force => say!("plate-how-force"),
        How::Tag => say!("plate-how-tag"),
        How::Strikeout => say!("plate-how-strikeout"),
        How::Appeal => say!("plate-how-appeal"),
        How::Interference => say!("plate-how-interference"),
        How::HitByBall => say!("plate-how-hit-by-ball"),
        How::Passing => say!("plate-how-passing"),
        How::LeftPath => say!("plate-how-left-path"),
        How::OutOfTurn => say!("plate-how-out-of-turn"),
        How::OtherRule => say!("plate-how-other"),
    }
}

pub fn safe_at(to: Base) -> String {
    match to {
        Base::First => say!("plate-safe-at-first"),
        Base::Second => say!("plate-safe-at-second"),
        Base::Third => say!("plate-safe-at-third"),
        Base::Home => say!("plate-scores"),
    }
}

pub fn out_at(at: Base) -> String {
    match at {
        Base::First => say!("plate-out-at-first"),
        Base::Second => say!("plate-out-at-second"),
        Base::Third => say!("plate-out-at-third"),
        Base::Home => say!("plate-out-at-home"),
    }
}

/// Buttons of a runner that ask for fielders.
pub fn attempt(attempt: Attempt) -> String {
    match attempt {
        Attempt::Steal => say!("plate-caught-stealing-ask"),
        Attempt::Pickoff => say!("plate-picked-off-ask"),
        Attempt::Advance => say!("plate-out-advancing-ask"),
    }
}

pub fn chase(attempt: Attempt, name: &str) -> String {
    match attempt {
        Attempt::Steal => say!("plate-chase-steal", runner = name),
        Attempt::Pickoff => say!("plate-chase-pickoff", runner = name),
        Attempt::Advance => say!("plate-chase-advance", runner = name),
    }
}

/// The inning as the board shows it, in every language.
pub fn inning(number: u8, half: Half) -> String {
    let arrow = match half {
        Half::Top => "▲",
        Half::Bottom => "▼",
    };
    format!("{arrow} {number}")
}

pub fn inning_said(number: u8, half: Half) -> String {
    match half {
        Half::Top => say!("plate-inning-top", inning = number),
        Half::Bottom => say!("plate-inning-bottom", inning = number),
    }
}

/// The count as the board shows it, in every language.
pub fn count(count: Count) -> String {
    format!("{}-{}", count.balls, count.strikes)
}

pub fn score_said(game: &Game, score: [u16; 2]) -> String {
    let [away, at_home] = score;
    say!(
        "plate-score-said",
        visitors = game.team_name(Side::Visitors),
        away = away,
        home = game.team_name(Side::Home),
        at_home = at_home,
    )
}

/// What the half just ended left: said between halves.
pub fn interlude(game: &Game, s: &Situation) -> String {
    let score = score_said(game, s.score);
    match s.half {
        Half::Bottom => say!("plate-middle-of", inning = s.inning, score = score),
        Half::Top => say!("plate-end-of", inning = s.inning.saturating_sub(1), score = score),
    }
}

pub fn over(ending: Ending, game: &Game) -> String {
    let score = score_said(game, game.situation().score);
    match ending {
        Ending::Played => say!("plate-over-played", score = score),
        Ending::Mercy => say!("plate-over-mercy", score = score),
        Ending::Declared => say!("plate-over-declared", score = score),
        Ending::Called => say!("plate-over-called", score = score),
        Ending::Forfeited(side) => say!("plate-forfeit-to", team = game.team_name(side)),
    }
}

pub fn stopped(phase: Phase) -> String {
    if phase == Phase::Suspended { say!("plate-suspended") } else { say!("plate-stopped") }
}

/// An answer to a question.
pub fn answer(game: &Game, judgment: &Judgment) -> String {
    match judgment {
        Judgment::BuntedForHit { yes, .. }
        | Judgment::WouldHaveScored { yes, .. }
        | Judgment::WouldHaveScoredAfterCatch { yes, .. }
        | Judgment::Earned { yes, .. }
        | Judgment::Undisputed { yes, .. }
        | Judgment::EffectiveFinish { yes, .. } => {
            if *yes {
                say!("plate-yes")
            } else {
                say!("plate-no")
            }
        }
        Judgment::WinningPitcher { pitcher } => short(&game.label(*pitcher)).to_owned(),
        Judgment::GotAway { wild: true, .. } => say!("plate-wild-pitch"),
        Judgment::GotAway { wild: false, .. } => say!("plate-passed-ball"),
        Judgment::BatterReached { verdict, .. } => match verdict {
            Reached::Hit(_) => say!("plate-hit"),
            Reached::Error(_) => say!("plate-error"),
            Reached::Choice => say!("plate-cause-choice"),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_token_has_the_family_name() {
        assert_eq!(short("Yusra Halvorsen"), "Halvorsen");
        assert_eq!(short("Otter"), "Otter");
        assert_eq!(short("Batter 2"), "Batter 2");
        assert_eq!(short("三浦 梢"), "三浦");
        assert_eq!(short("三浦\u{3000}梢"), "三浦");
        assert_eq!(short(""), "");
    }
}
