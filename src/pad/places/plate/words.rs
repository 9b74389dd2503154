//! Every word the Plate shows or speaks, in one room, so that it can go into a catalogue of languages.

use benchbook_stats::field::{Base, Count, Half, Position, Side};
use benchbook_stats::game::{Ending, Game, Phase, Situation, Thrown, TurnKind};
use benchbook_stats::log::{
    Action, Attempt, Call, Cause, Event, How, Judgment, MisplayKind, Move, Reached, Start, Trajectory, UnseenResult,
};
use benchbook_stats::propose::{GotAway, Outcome};
use benchbook_stats::team::PlayerId;

pub const UNDO: &str = "Undo";
pub const REDO: &str = "Redo";
pub const PLAYERS: &str = "Players";
pub const UMPIRE: &str = "Umpire";
pub const CANCEL: &str = "Cancel";
pub const BACK: &str = "Back";
pub const RECORD: &str = "Record";
pub const MORE: &str = "More";
pub const ADJUST: &str = "Adjust";
pub const OUTS: &str = "Outs";
pub const AT_BAT: &str = "At bat";
pub const ON_DECK: &str = "On deck";
pub const PITCHING: &str = "Pitching";
pub const NOBODY: &str = "nobody";
pub const PLATE: &str = "Plate";
pub const BOARD: &str = "Scoreboard";
pub const OFF_THE_BAT: &str = "How it came off the bat";
pub const FIELD: &str = "The field: touch who fielded the ball, or where it came down";
pub const PITCHES: &str = "Pitches";
/// Printed on the drawing beyond the fence.
pub const OVER_THE_FENCE: &str = "HR";
pub const IN_PLAY_HINT: &str = "Hit? Touch the field: who had it, or where it came down.";
pub const GOT_AWAY: &str = "Strike three got away";
pub const WHAT_HAPPENED: &str = "What came of it";
pub const ON_THE_PITCH: &str = "On that pitch";
pub const BETWEEN: &str = "Between pitches";
pub const STAYS: &str = "Stays";
pub const SCORES: &str = "Scores";
pub const BECAUSE: &str = "How so";
pub const OUT_BY: &str = "Out by";
pub const TOUCH_FIELDERS: &str = "touch the fielders";
pub const TOUCH_WHO_ERRED: &str = "Touch the fielder who erred";
pub const RUN_TOO_LATE: &str = "Third out came before the run";
pub const FINISHED_ADJUSTING: &str = "Touch a runner, or drag them, to change where they ended";
pub const NOT_BEGUN: &str = "The game has not begun.";
pub const TO_THE_CARD: &str = "To the Card";
pub const TO_THE_BOOK: &str = "To the Book";
pub const PLAY_BALL: &str = "Play ball";
pub const PITCH_PLACE: &str = "the machine";
pub const NO_PLAYER: &str = "No player in this batting place.";
pub const EMPTY_PLACE_OUT: &str = "Record the out";

// People.
pub const WHO_CHANGES: &str = "Who changes? Touch a fielder, a runner or the batter.";
pub const NEW_PLAYER: &str = "Somebody not on the list";
pub const NUMBER: &str = "No.";
pub const NAME: &str = "Name";
pub const COME_IN: &str = "Comes in";
pub const SWAP_HINT: &str = "Or touch another fielder: the two change places.";
pub const LEAVES: &str = "Leaves; nobody takes the place";
pub const WAS_IN: &str = "was in";
pub const NOBODY_ON_BENCH: &str = "Nobody is on the bench list.";
pub const PINCH_HITTER: &str = "Pinch hitter for";
pub const PINCH_RUNNER: &str = "Pinch runner for";
pub const TAKES_OVER_FROM: &str = "Takes over from";
pub const AS_COURTESY: &str = "Courtesy runner";
pub const BATS_FOR_DH: &str = "Bats from now on; the designated hitter leaves";
pub const JOINS: &str = "Joins the end of the order";
pub const BATTING_SIDE: &str = "At bat";
pub const FIELDING_SIDE: &str = "In the field";

// The umpire's calls.
pub const RESULT_ONLY: &str = "Missed the pitches? The result alone";
pub const THE_COUNT: &str = "The count as the umpire gives it";
pub const OUT_OF_TURN: &str = "Another batter is up";
pub const APPEAL: &str = "Appeal: batted out of turn";
pub const PLACE_RUNNER: &str = "Put a runner on by rule";
pub const END_HALF: &str = "End the half-inning";
pub const DELAY: &str = "Play stops";
pub const RESUME: &str = "Play goes on";
pub const SUSPEND: &str = "Suspended to another day";
pub const CALL_GAME: &str = "Called: the game ends here";
pub const FINAL: &str = "Final";
pub const PROTEST: &str = "Protest";
pub const NOTE: &str = "Note";
pub const WHY: &str = "In your words (may stay empty)";
pub const THE_GAME: &str = "The game";

pub const fn result(result: UnseenResult) -> &'static str {
    match result {
        UnseenResult::Walk => "Walk",
        UnseenResult::IntentionalWalk => "Intentional walk",
        UnseenResult::HitByPitch => "Hit by pitch",
        UnseenResult::StrikeoutSwinging => "Struck out swinging",
        UnseenResult::StrikeoutLooking => "Struck out looking",
        UnseenResult::CatcherInterference => "Catcher's interference",
    }
}

pub fn forfeit_to(team: &str) -> String {
    format!("Forfeited to {team}")
}

/// The sign on a pitch's button: large word, small word.
pub const fn call(call: Call) -> (&'static str, &'static str) {
    match call {
        Call::Ball => ("Ball", ""),
        Call::CalledStrike => ("Called", "strike"),
        Call::SwingingStrike => ("Swinging", "strike"),
        Call::Foul => ("Foul", ""),
        Call::FoulTip => ("Foul tip", "held"),
        Call::FoulBunt => ("Foul bunt", ""),
        Call::MissedBunt => ("Missed bunt", ""),
        Call::Pitchout => ("Pitchout", "ball"),
        Call::IntentionalBall => ("Wide on purpose", "ball"),
        Call::AutomaticBall => ("Ball", "no pitch"),
        Call::AutomaticStrike => ("Strike", "no pitch"),
        Call::IllegalPitch => ("Illegal pitch", "ball"),
        Call::HitByPitch => ("Hit by pitch", "takes first"),
        Call::CatcherInterference => ("Catcher hindered", "takes first"),
        Call::BatterInterference => ("Batter hindered", "is out"),
    }
}

/// The pitch in a sentence.
pub const fn call_said(call: Call) -> &'static str {
    match call {
        Call::Ball => "Ball",
        Call::CalledStrike => "Called strike",
        Call::SwingingStrike => "Swinging strike",
        Call::Foul => "Foul",
        Call::FoulTip => "Foul tip",
        Call::FoulBunt => "Foul bunt",
        Call::MissedBunt => "Missed bunt",
        Call::Pitchout => "Pitchout",
        Call::IntentionalBall => "Intentional ball",
        Call::AutomaticBall => "Automatic ball",
        Call::AutomaticStrike => "Automatic strike",
        Call::IllegalPitch => "Illegal pitch",
        Call::HitByPitch => "Hit by pitch",
        Call::CatcherInterference => "Catcher's interference",
        Call::BatterInterference => "Batter's interference",
    }
}

pub const INTENTIONAL_WALK: (&str, &str) = ("Intentional walk", "no pitch");

pub const fn trajectory(trajectory: Trajectory) -> &'static str {
    match trajectory {
        Trajectory::Ground => "Ground",
        Trajectory::Line => "Line",
        Trajectory::Fly => "Fly",
        Trajectory::Pop => "Pop",
        Trajectory::Bunt => "Bunt",
    }
}
pub const FOUL_BALL: &str = "Foul";

pub const fn base(base: Base) -> &'static str {
    match base {
        Base::First => "first",
        Base::Second => "second",
        Base::Third => "third",
        Base::Home => "home",
    }
}

/// A fielder as the trade says it in a sentence.
pub const fn position(position: Position) -> &'static str {
    match position {
        Position::Pitcher => "pitcher",
        Position::Catcher => "catcher",
        Position::FirstBase => "first",
        Position::SecondBase => "second",
        Position::ThirdBase => "third",
        Position::Shortstop => "short",
        Position::LeftField => "left",
        Position::CenterField => "center",
        Position::RightField => "right",
        Position::ShortField => "short field",
    }
}

/// "6-4-3".
pub fn chain(by: &[Position]) -> String {
    by.iter().map(|p| p.number().to_string()).collect::<Vec<_>>().join("-")
}

fn handled(by: &[Position]) -> String {
    match by {
        [alone] => format!("{}, unassisted", alone.number()),
        _ => chain(by),
    }
}

/// The last word of a name: what fits on a token.
pub fn short(label: &str) -> &str {
    label.rsplit(' ').next().unwrap_or(label)
}

fn who(game: &Game, s: &Situation, start: Start) -> String {
    runner_id(s, start).map_or_else(|| "the runner".to_owned(), |id| short(&game.label(id)).to_owned())
}

const fn runner_id(s: &Situation, start: Start) -> Option<PlayerId> {
    let on = match start {
        Start::Batter => return s.batter,
        Start::First => s.bases[0],
        Start::Second => s.bases[1],
        Start::Third => s.bases[2],
    };
    match on {
        Some(runner) => Some(runner.player),
        None => None,
    }
}

const fn hit(bases: u8) -> &'static str {
    match bases {
        1 => "Single",
        2 => "Double",
        3 => "Triple",
        _ => "Home run inside the park",
    }
}

/// The outcome's headline: what the play was, without the other runners.
pub fn headline(game: &Game, s: &Situation, outcome: &Outcome, event: &Event) -> String {
    let name = |start: Start| who(game, s, start);
    let place = |p: Position| format!("{} ({})", position(p), p.number());
    match outcome {
        Outcome::GroundOut { by } => format!("Ground-out {}", handled(by)),
        Outcome::BuntOut { by } => format!("Bunt, out at first {}", handled(by)),
        Outcome::Caught { by, trajectory, foul, infield_fly } => caught(*by, *trajectory, *foul, *infield_fly),
        Outcome::DoublePlay { by } => format!("{} {}", double_play(event), handled(by)),
        Outcome::TriplePlay { by } => format!("Triple play {}", handled(by)),
        Outcome::RunnerOut { who, at, by } => {
            format!("{} out at {}, {}; batter safe", name(*who), base(*at), handled(by))
        }
        Outcome::Rundown { who, by } => format!("{} caught in a rundown {}", name(*who), chain(by)),
        Outcome::AllSafe => "Fielder's choice, everybody safe".into(),
        Outcome::Hit { bases: 1, infield: true } => "Infield single".into(),
        Outcome::Hit { bases, .. } => hit(*bases).into(),
        Outcome::HomeRun => "Home run".into(),
        Outcome::GroundRuleDouble => "Bounced out: two bases".into(),
        Outcome::HitAndOut { bases, who, at, by } => {
            format!("{}; {} out at {} {}", hit(*bases), name(*who), base(*at), chain(by))
        }
        Outcome::HitAndError { bases, by } => format!("{} and error by {}", hit(*bases), place(*by)),
        Outcome::FieldingError { by } => format!("Error by {}", place(*by)),
        Outcome::ThrowingError { by, to: Base::First } => format!("Bad throw by {}", place(*by)),
        Outcome::ThrowingError { by, to } => format!("Bad throw by {}, batter to {}", place(*by), base(*to)),
        Outcome::Muff { by } => format!("Throw dropped by {}", place(*by)),
        Outcome::DroppedFly { by } => format!("Fly dropped by {}", place(*by)),
        Outcome::DroppedFoul { by } => format!("Foul fly dropped by {}", place(*by)),
        Outcome::BatterInterfered => "Batter out: interference".into(),
        Outcome::RunnerHit { who } => format!("{} hit by the ball, out", name(*who)),
        Outcome::Steal { to, .. } => format!("Steals {}", base(*to)),
        Outcome::StealTogether => "All steal together".into(),
        Outcome::OutOnBases { at, attempt, by, .. } => {
            format!("{} {} {}", out_on_bases(*attempt), base(*at), handled(by))
        }
        Outcome::SafeOnError { to, by, throw: true, .. } => {
            format!("Safe at {}: bad throw by {}", base(*to), place(*by))
        }
        Outcome::SafeOnError { to, by, .. } => format!("Safe at {}: dropped by {}", base(*to), place(*by)),
        Outcome::WildPitch => "Wild pitch".into(),
        Outcome::PassedBall => "Passed ball".into(),
        Outcome::Balk => "Balk".into(),
        Outcome::IllegalPitch => "Illegal pitch: all move up".into(),
        Outcome::Indifference { to, .. } => format!("Takes {} unopposed", base(*to)),
        Outcome::StrikeThreeSafe(GotAway::WildPitch) => "Wild pitch, batter safe".into(),
        Outcome::StrikeThreeSafe(GotAway::PassedBall) => "Passed ball, batter safe".into(),
        Outcome::StrikeThreeSafe(GotAway::BadThrow) => "Bad throw by catcher (2), batter safe".into(),
        Outcome::StrikeThreeSafe(GotAway::Muff) => "Throw dropped by first (3), batter safe".into(),
        Outcome::StrikeThreeOut { by } => format!("Thrown out {}", chain(by)),
        Outcome::StrikeThreeForce { who, at, by } => format!("{} forced at {} {}", name(*who), base(*at), handled(by)),
    }
}

fn caught(by: Position, kind: Trajectory, foul: bool, infield_fly: bool) -> String {
    let what = match (kind, foul) {
        (Trajectory::Line, _) => "Line drive",
        (Trajectory::Pop, false) => "Pop",
        (Trajectory::Pop, true) => "Foul pop",
        (Trajectory::Bunt, _) => "Bunt",
        (_, true) => "Foul fly",
        (_, false) => "Fly",
    };
    let rule = if infield_fly { " (infield fly)" } else { "" };
    format!("{what} caught by {} ({}){rule}", position(by), by.number())
}

fn double_play(event: &Event) -> &'static str {
    if action(event).is_some_and(is_caught) { "Caught, double play" } else { "Double play" }
}

fn is_caught(action: &Action) -> bool {
    action.moves.iter().any(|m| m.out.as_ref().is_some_and(|out| out.how == How::Fly))
}

const fn out_on_bases(attempt: Attempt) -> &'static str {
    match attempt {
        Attempt::Steal => "Caught stealing at",
        Attempt::Pickoff => "Picked off at",
        Attempt::Advance => "Out advancing at",
    }
}

/// What each runner does, for the line under the headline: "Ruiz scores, Lee to third". The batter is named where the
/// headline leaves open where they ended, and outs where it leaves open whose.
pub fn running(game: &Game, s: &Situation, outcome: &Outcome, event: &Event) -> String {
    let Some(action) = action(event) else { return String::new() };
    let in_play = matches!(event, Event::InPlay(_));
    // On the ground the chain says it all; off a fly it matters who had left too early.
    let on_ground = !is_caught(action);
    let mut parts: Vec<String> = Vec::new();
    for m in &action.moves {
        if m.from == Start::Batter && !batter_is_worth_a_word(m, in_play) {
            continue;
        }
        if m.out.is_some() && (on_ground || !leaves_open_who_is_out(outcome)) {
            continue;
        }
        parts.push(way(&who(game, s, m.from), m));
    }
    parts.join(", ")
}

const fn leaves_open_who_is_out(outcome: &Outcome) -> bool {
    matches!(outcome, Outcome::TriplePlay { .. } | Outcome::DoublePlay { .. })
}

fn batter_is_worth_a_word(m: &Move, in_play: bool) -> bool {
    in_play && m.legs.len() > 1 && m.out.is_none()
}

/// "Ruiz to third", "Lee out at home".
fn way(name: &str, m: &Move) -> String {
    match (&m.out, m.reached()) {
        (Some(out), _) => format!("{name} out at {}", base(out.at)),
        (None, Some(Base::Home)) => format!("{name} scores"),
        (None, Some(to)) => format!("{name} to {}", base(to)),
        (None, None) => format!("{name} stays"),
    }
}

pub fn action(event: &Event) -> Option<&Action> {
    match event {
        Event::InPlay(play) => Some(&play.action),
        Event::Pitch(pitch) => Some(&pitch.action),
        Event::Running(running) => Some(&running.action),
        Event::Unseen(unseen) => Some(&unseen.action),
        Event::Replace { event, .. } | Event::Insert { event, .. } => action(event),
        _ => None,
    }
}

/// The draft as it stands after adjusting, whatever it was proposed as.
pub fn draft(game: &Game, s: &Situation, event: &Event) -> String {
    let Some(action) = action(event) else { return String::new() };
    let parts: Vec<String> = action.moves.iter().map(|m| way(&who(game, s, m.from), m)).collect();
    let errors: Vec<String> =
        action.misplays.iter().map(|m| format!("{} by {}", misplay(m.kind), position(m.by))).collect();
    let mut text = parts.join(", ");
    if !errors.is_empty() {
        if !text.is_empty() {
            text.push_str("; ");
        }
        text.push_str(&errors.join(", "));
    }
    text
}

pub const fn misplay(kind: MisplayKind) -> &'static str {
    match kind {
        MisplayKind::Fielding => "error",
        MisplayKind::Throwing => "bad throw",
        MisplayKind::Muff => "dropped throw",
        MisplayKind::DroppedFly => "dropped fly",
        MisplayKind::DroppedFoul => "dropped foul fly",
        MisplayKind::Obstruction => "obstruction",
        MisplayKind::Interference => "interference",
    }
}

pub fn misplay_by(kind: MisplayKind, by: Position) -> String {
    let what = match kind {
        MisplayKind::Fielding => "Error by",
        MisplayKind::Throwing => "Bad throw by",
        MisplayKind::Muff => "Dropped by",
        MisplayKind::DroppedFly | MisplayKind::DroppedFoul => "Fly dropped by",
        MisplayKind::Obstruction => "Obstruction by",
        MisplayKind::Interference => "Interference by",
    };
    format!("{what} {}", by.number())
}

pub const ANOTHER_ERROR: &str = "Error by …";

pub const fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Play => "On the ball hit",
        Cause::Throw => "On the throw",
        Cause::Choice => "Fielder's choice",
        Cause::Error(_) => "On the error",
        Cause::Obstruction => "Obstruction",
        Cause::Interference => "Interference",
        Cause::Award => "Awarded",
        Cause::Forced => "Forced along",
        Cause::Steal => "Stole it",
        Cause::WildPitch => "Wild pitch",
        Cause::PassedBall => "Passed ball",
        Cause::Balk => "Balk",
        Cause::IllegalPitch => "Illegal pitch",
        Cause::Indifference => "Unopposed",
    }
}

pub const fn how(how: How) -> &'static str {
    match how {
        How::Fly => "Caught in the air",
        How::Force => "Forced",
        How::Tag => "Tagged",
        How::Strikeout => "Struck out",
        How::Appeal => "On appeal",
        How::Interference => "Interfered",
        How::HitByBall => "Hit by the ball",
        How::Passing => "Passed a runner",
        How::LeftPath => "Left the path",
        How::OutOfTurn => "Out of turn",
        How::OtherRule => "Another rule",
    }
}

pub const SAFE: &str = "Safe";
pub const OUT: &str = "Out";

pub fn safe_at(to: Base) -> &'static str {
    match to {
        Base::First => "Safe at first",
        Base::Second => "Safe at second",
        Base::Third => "Safe at third",
        Base::Home => SCORES,
    }
}

pub fn out_at(at: Base) -> &'static str {
    match at {
        Base::First => "Out at first",
        Base::Second => "Out at second",
        Base::Third => "Out at third",
        Base::Home => "Out at home",
    }
}

/// Buttons of a runner that ask for fielders.
pub const fn attempt(attempt: Attempt) -> &'static str {
    match attempt {
        Attempt::Steal => "Caught stealing …",
        Attempt::Pickoff => "Picked off …",
        Attempt::Advance => "Out advancing …",
    }
}

pub fn chase(attempt: Attempt, name: &str) -> String {
    match attempt {
        Attempt::Steal => format!("{name} going: who threw, who tagged?"),
        Attempt::Pickoff => format!("{name} picked off: who threw, who tagged?"),
        Attempt::Advance => format!("{name} advancing: who threw, who tagged?"),
    }
}

pub fn runner_title(name: &str, on: Base) -> String {
    format!("{name}, on {}", base(on))
}

pub fn batter_title(name: &str) -> String {
    format!("{name}, batting")
}

pub fn fielder_label(p: Position, name: &str) -> String {
    format!("{} {}, {name}", p.number(), p.name())
}

pub fn runner_label(name: &str, on: Base) -> String {
    format!("Runner on {}: {name}", base(on))
}

pub fn batter_label(name: &str) -> String {
    format!("Batter: {name}")
}

pub fn inning(number: u8, half: Half) -> String {
    let arrow = match half {
        Half::Top => "▲",
        Half::Bottom => "▼",
    };
    format!("{arrow} {number}")
}

pub fn inning_said(number: u8, half: Half) -> String {
    let half = match half {
        Half::Top => "Top",
        Half::Bottom => "Bottom",
    };
    format!("{half} of the {}", ordinal(number))
}

fn ordinal(number: u8) -> String {
    let end = match (number % 10, number % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    };
    format!("{number}{end}")
}

pub fn outs(outs: u8) -> &'static str {
    match outs {
        0 => "No outs",
        1 => "1 out",
        2 => "2 outs",
        _ => "3 outs",
    }
}

pub fn count(count: Count) -> String {
    format!("{}-{}", count.balls, count.strikes)
}

pub fn count_said(count: Count) -> String {
    format!("{} balls, {} strikes", count.balls, count.strikes)
}

pub fn score_said(game: &Game, score: [u16; 2]) -> String {
    format!("{} {}, {} {}", game.team_name(Side::Visitors), score[0], game.team_name(Side::Home), score[1])
}

/// Batting place, counted from 1 for people.
pub fn place(place: u8) -> String {
    format!("{}.", place + 1)
}

pub fn pitches(thrown: usize) -> String {
    match thrown {
        1 => "1 pitch".into(),
        n => format!("{n} pitches"),
    }
}

/// The batter's day so far: "1 for 2, walk".
pub fn today(hits: u32, at_bats: u32, walks: u32, runs_batted_in: u32) -> String {
    let mut text = format!("{hits} for {at_bats}");
    if walks > 0 {
        text.push_str(if walks == 1 { ", walk" } else { ", walks" });
    }
    if runs_batted_in > 0 {
        let _ = core::fmt::Write::write_fmt(&mut text, format_args!(", {runs_batted_in} RBI"));
    }
    text
}
pub const FIRST_TIME_UP: &str = "first time up";

/// What the half just ended had, and who is up: the interlude.
pub fn interlude(game: &Game, s: &Situation) -> String {
    let when = match s.half {
        Half::Bottom => format!("Middle of the {}", ordinal(s.inning)),
        Half::Top => format!("End of the {}", ordinal(s.inning.saturating_sub(1))),
    };
    format!("{when}: {}", score_said(game, s.score))
}

pub fn coming_up(names: &[String]) -> String {
    format!("Coming up: {}", names.join(", "))
}

/// What the last play brought about besides, to be added to its words: the turn's end on a pitch, the end of the half.
pub fn consequence(game: &Game) -> String {
    let Some(play) = game.steps().last().and_then(|step| step.play.as_deref()) else { return String::new() };
    let mut text = String::new();
    if matches!(play.thrown, Some(Thrown::Called(_))) {
        text.push_str(match play.turn.map(|turn| turn.kind) {
            Some(TurnKind::Walk) => ": walk",
            Some(TurnKind::IntentionalWalk) => ": intentional walk",
            Some(TurnKind::Strikeout { .. }) if play.outs() > 0 => ": struck out",
            _ => "",
        });
    }
    if play.ends_half {
        text.push_str(". Side out");
    }
    text
}

/// Where things stand after an entry, for the voice and the status line.
pub fn stands(s: &Situation) -> String {
    format!("{}, {}", outs(s.outs).to_lowercase(), count(s.count))
}

pub fn over(ending: Ending, game: &Game) -> String {
    let score = score_said(game, game.situation().score);
    match ending {
        Ending::Played => format!("Final: {score}"),
        Ending::Mercy => format!("Final by the lead: {score}"),
        Ending::Declared => format!("Final as declared: {score}"),
        Ending::Called => format!("Called: {score}"),
        Ending::Forfeited(side) => format!("Forfeited to {}", game.team_name(side)),
    }
}

pub fn stopped(phase: Phase) -> &'static str {
    if phase == Phase::Suspended { "The game is suspended." } else { "Play is stopped." }
}

pub const LATER: &str = "Later: it waits in the Book";

/// An answer to it.
pub fn answer(game: &Game, judgment: &Judgment) -> String {
    match judgment {
        Judgment::BuntedForHit { yes, .. }
        | Judgment::WouldHaveScored { yes, .. }
        | Judgment::WouldHaveScoredAfterCatch { yes, .. }
        | Judgment::Earned { yes, .. }
        | Judgment::Undisputed { yes, .. }
        | Judgment::EffectiveFinish { yes, .. } => if *yes { "Yes" } else { "No" }.into(),
        Judgment::WinningPitcher { pitcher } => short(&game.label(*pitcher)).to_owned(),
        Judgment::GotAway { wild, .. } => if *wild { "Wild pitch" } else { "Passed ball" }.into(),
        Judgment::BatterReached { verdict, .. } => match verdict {
            Reached::Hit(_) => "Hit",
            Reached::Error(_) => "Error",
            Reached::Choice => "Fielder's choice",
        }
        .into(),
    }
}

pub const UNDONE: &str = "Took back the last entry";
pub const REDONE: &str = "Put it back";
pub const NOTHING_TO_UNDO: &str = "There is nothing to take back.";
pub const NOTHING_TO_REDO: &str = "There is nothing to put back.";

/// An entry that is no play, said in a few words.
pub fn entry(game: &Game, event: &Event) -> String {
    match event {
        Event::Pitch(pitch) => call_said(pitch.call).into(),
        Event::InPlay(_) => "In play".into(),
        Event::Running(_) => "On the bases".into(),
        Event::IntentionalWalk => "Intentional walk".into(),
        Event::Unseen(_) => "Result recorded; its pitches count as missed".into(),
        Event::SetCount(count) => format!("Count set to {}", self::count(*count)),
        Event::Change { .. } => "Change recorded".into(),
        Event::Player { player, .. } => format!("{} is on the roster", game.label(player.id)),
        Event::BatterUp { player } => format!("{} is at the plate", game.label(*player)),
        Event::EmptyPlace => "Out: nobody in this batting place".into(),
        Event::OutOfTurnAppeal => "Appeal recorded".into(),
        Event::PlaceRunner { base, player } => format!("{} placed on {}", game.label(*player), self::base(*base)),
        Event::EndHalf { .. } => "Half-inning ended".into(),
        Event::Status(_) => "Noted as the umpire declared it".into(),
        Event::Protest { .. } => "Protest noted with the situation".into(),
        Event::Note { .. } => "Noted".into(),
        Event::PlayBall => PLAY_BALL.into(),
        Event::Judgment(Judgment::GotAway { .. }) => "Ruling noted".into(),
        _ => "Recorded".into(),
    }
}

// Names of keys, for the help line of the pitch buttons.
pub const fn key_of(call: Call) -> Option<&'static str> {
    match call {
        Call::Ball => Some("B"),
        Call::CalledStrike => Some("C"),
        Call::SwingingStrike => Some("S"),
        Call::Foul => Some("F"),
        _ => None,
    }
}
