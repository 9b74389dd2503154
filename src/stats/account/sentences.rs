//! The sentences of the account: which message of the catalogue tells what, and with what in it.

use crate::field::{Base, Position};
use crate::game::Ending;
use crate::log::{Attempt, Cause, How, Judgment, MisplayKind, Reached, Status, Trajectory};
use crate::ruling::BatterResult;
use crate::team::{Change, PlayerId, Role};
use crate::words::{Language, say};

use super::{Ball, Line, Told, Was};

mod ruled;

pub use ruled::{grounds, heading, number, pitch};

/// Says who a player is.
pub type Names<'a> = &'a dyn Fn(PlayerId) -> String;

/// A line as one paragraph.
pub fn line(line: &Line, language: Language, names: Names) -> String {
    let mut sentences: Vec<String> = Vec::new();
    let mut ran = None;
    let mut told_error = None;
    for told in &line.told {
        let Told::Gains { runner, to, cause, error } = told else {
            if let Told::Batted { result: BatterResult::ReachedOnError(position), misplay: Some(kind), .. } = told {
                told_error = Some((*position, *kind));
            }
            ran = None;
            sentences.push(sentence(told, language, names));
            continue;
        };
        let mut what = gains(language, *to, *cause, *error);
        if error.is_some() && *error == told_error {
            what = say!(language, "told-same-error", what = gains(language, *to, Cause::Play, None));
        }
        told_error = error.or(told_error);
        match sentences.last_mut().filter(|_| ran == Some(*runner)) {
            // "goes to third and scores on the throw."
            Some(sentence) => {
                *sentence = say!(language, "told-and", what = what, before = sentence.trim_end_matches('.'));
            }
            None => sentences.push(say!(language, "told-runner", runner = names(*runner), what = what)),
        }
        ran = Some(*runner);
    }
    sentences.join(" ")
}

/// One sentence, with its full stop.
pub fn sentence(told: &Told, language: Language, names: Names) -> String {
    let n = |id: &PlayerId| names(*id);
    let runner = |id: &PlayerId, what: String| say!(language, "told-runner", runner = n(id), what = what);
    match told {
        Told::AtPlate { batter, result } => runner(batter, at_plate(language, *result)),
        Told::Batted { batter, result, ball, how, by, double_play, misplay } => {
            runner(batter, batted(language, *result, *ball, *how, by, *double_play, *misplay))
        }
        Told::Gains { runner: who, to, cause, error } => runner(who, gains(language, *to, *cause, *error)),
        Told::OutOnBases { runner: who, at, how, by, attempt } => {
            runner(who, out_on_bases(language, *at, *how, *attempt) + &chain(language, by))
        }
        Told::Erred { fielder, position, kind } => {
            let (position, what) = (position.said(language), erred(language, *kind));
            match fielder {
                Some(fielder) => {
                    say!(language, "told-fielder", fielder = n(fielder), position = position, what = what)
                }
                None => say!(language, "told-some-fielder", position = position, what = what),
            }
        }
        Told::MultiplePlay { outs: 2 } => say!(language, "told-double-play"),
        Told::MultiplePlay { .. } => say!(language, "told-triple-play"),
        Told::OutOfTurn { batter } => say!(language, "told-out-of-turn", batter = n(batter)),
        Told::EmptyPlace { place } => say!(language, "told-empty-place", place = *place),
        Told::Undone => say!(language, "told-undone"),
        Told::Substituted { outgoing, incoming, role, .. } => substituted(language, n(outgoing), n(incoming), *role),
        Told::Changed { change, .. } => changed(language, change, names),
        Told::BatterUp { player } => say!(language, "told-batter-up", batter = n(player)),
        Told::Appealed => say!(language, "told-appealed"),
        Told::CountSet(count) => say!(language, "told-count-set", count = count.to_string()),
        Told::Placed { player, base } => {
            say!(language, "told-placed", runner = n(player), base = base.said(language))
        }
        Told::HalfEnded { why } => say!(language, "told-half-ended", why = reason(why)),
        Told::State(status) => state(language, status),
        Told::Over(ending) => over(language, *ending),
        Told::Protest { text } => say!(language, "told-protest", text = text.as_str()),
        Told::Note { text } => say!(language, "told-note", text = text.as_str()),
        Told::Judged(judgment) => judged(language, judgment, names),
        Told::NoLongerFits { was } => match was {
            Was::Play => say!(language, "told-no-longer-fits-play"),
            Was::Change => say!(language, "told-no-longer-fits-change"),
            Was::Judgment => say!(language, "told-no-longer-fits-judgment"),
            Was::Other => say!(language, "told-no-longer-fits-entry"),
        },
    }
}

fn at_plate(language: Language, result: BatterResult) -> String {
    match result {
        BatterResult::Walk => say!(language, "at-plate-walk"),
        BatterResult::IntentionalWalk => say!(language, "at-plate-intentional-walk"),
        BatterResult::HitByPitch => say!(language, "at-plate-hit-by-pitch"),
        BatterResult::Strikeout { looking: true, reached: false } => say!(language, "at-plate-looking"),
        BatterResult::Strikeout { looking: false, reached: false } => say!(language, "at-plate-swinging"),
        BatterResult::Strikeout { looking: true, reached: true } => say!(language, "at-plate-looking-got-away"),
        BatterResult::Strikeout { looking: false, reached: true } => say!(language, "at-plate-swinging-got-away"),
        BatterResult::Interference => say!(language, "at-plate-interference"),
        BatterResult::Obstruction => say!(language, "at-plate-obstruction"),
        BatterResult::Out => say!(language, "at-plate-out"),
        BatterResult::Hit(_) => say!(language, "at-plate-hit"),
        BatterResult::FieldersChoice => say!(language, "at-plate-choice"),
        BatterResult::ReachedOnError(_) => say!(language, "at-plate-error"),
        BatterResult::SacrificeHit { .. } => say!(language, "at-plate-sacrifice"),
        BatterResult::SacrificeFly { .. } => say!(language, "at-plate-sacrifice-fly"),
    }
}

fn batted(
    language: Language,
    result: BatterResult,
    ball: Ball,
    how: Option<How>,
    by: &[Position],
    double_play: bool,
    misplay: Option<MisplayKind>,
) -> String {
    let off = || off_the_bat(language, ball.trajectory);
    let to = || to_field(language, ball);
    match result {
        BatterResult::Hit(4) if ball.left_park => say!(language, "batted-home-run", to = to()),
        BatterResult::Hit(1) => say!(language, "batted-single", off = off(), to = to()),
        BatterResult::Hit(2) => say!(language, "batted-double", off = off(), to = to()),
        BatterResult::Hit(3) => say!(language, "batted-triple", off = off(), to = to()),
        BatterResult::Hit(_) => say!(language, "batted-home-run-inside", off = off(), to = to()),
        BatterResult::ReachedOnError(position) => {
            let error = an_error(language, misplay.unwrap_or(MisplayKind::Fielding));
            say!(language, "batted-error", error = error, position = position.said(language))
        }
        BatterResult::FieldersChoice => say!(language, "batted-choice", to = to()),
        BatterResult::SacrificeHit { reached: true } => say!(language, "batted-sacrifice-safe"),
        BatterResult::SacrificeHit { reached: false } => {
            say!(language, "batted-sacrifice", by = chain(language, by))
        }
        BatterResult::SacrificeFly { reached: false } => {
            say!(language, "batted-sacrifice-fly", to = to_fielder(language, ball))
        }
        BatterResult::SacrificeFly { reached: true } => {
            say!(language, "batted-sacrifice-fly-dropped", by = by_fielder(language, ball))
        }
        BatterResult::Obstruction => say!(language, "at-plate-obstruction"),
        BatterResult::Interference => say!(language, "at-plate-interference"),
        _ => put_out(language, ball, how, by, double_play),
    }
}

fn put_out(language: Language, ball: Ball, how: Option<How>, by: &[Position], double_play: bool) -> String {
    if double_play {
        return say!(language, "batted-double-play", by = chain(language, by));
    }
    let caught = || to_fielder(language, Ball { toward: by.last().copied().or(ball.toward), ..ball });
    match how {
        Some(How::Fly) if ball.infield_fly => say!(language, "batted-infield-fly", to = to_fielder(language, ball)),
        Some(How::Fly) => match ball.trajectory {
            _ if ball.foul => say!(language, "batted-foul-out", to = caught()),
            Trajectory::Line => say!(language, "batted-line-out", to = caught()),
            Trajectory::Pop => say!(language, "batted-pop-out", to = caught()),
            Trajectory::Bunt => say!(language, "batted-bunt-caught", to = caught()),
            Trajectory::Fly | Trajectory::Ground => say!(language, "batted-fly-out", to = caught()),
        },
        Some(How::Force | How::Tag) | None => match ball.trajectory {
            Trajectory::Bunt => say!(language, "batted-bunt-out", by = chain(language, by)),
            Trajectory::Ground => say!(language, "batted-ground-out", by = chain(language, by)),
            _ => say!(language, "batted-out-at-first", by = chain(language, by)),
        },
        Some(how) => say!(language, "batted-out-for", how = out_for(language, how)),
    }
}

fn off_the_bat(language: Language, trajectory: Trajectory) -> String {
    match trajectory {
        Trajectory::Ground => say!(language, "off-bat-ground"),
        Trajectory::Line => say!(language, "off-bat-line"),
        Trajectory::Fly => say!(language, "off-bat-fly"),
        Trajectory::Pop => say!(language, "off-bat-pop"),
        Trajectory::Bunt => say!(language, "off-bat-bunt"),
    }
}

/// " to left field", " to the shortstop".
fn to_field(language: Language, ball: Ball) -> String {
    match ball.toward {
        Some(Position::LeftField) => spaced(&say!(language, "to-left-field")),
        Some(Position::CenterField) => spaced(&say!(language, "to-center-field")),
        Some(Position::RightField) => spaced(&say!(language, "to-right-field")),
        _ => to_fielder(language, ball),
    }
}

fn to_fielder(language: Language, ball: Ball) -> String {
    ball.toward.map_or_else(String::new, |p| spaced(&say!(language, "to-fielder", position = p.said(language))))
}

fn by_fielder(language: Language, ball: Ball) -> String {
    ball.toward.map_or_else(String::new, |p| spaced(&say!(language, "by-fielder", position = p.said(language))))
}

/// A part of a sentence that may be missing brings its own space.
fn spaced(part: &str) -> String {
    format!(" {part}")
}

/// ", shortstop to first baseman"; a long one is a rundown and told by its numbers.
fn chain(language: Language, by: &[Position]) -> String {
    match by {
        [] => String::new(),
        [alone] => say!(language, "chain-alone", position = alone.said(language)),
        [..] if by.len() > 4 => {
            let numbers: Vec<_> = by.iter().map(|p| p.number().to_string()).collect();
            spaced(&say!(language, "chain-rundown", numbers = numbers.join("-")))
        }
        [first, rest @ ..] => {
            let start = first.said(language);
            let all = rest
                .iter()
                .fold(start, |before, next| say!(language, "chain-link", before = before, next = next.said(language)));
            say!(language, "chain", fielders = all)
        }
    }
}

fn gains(language: Language, to: Base, cause: Cause, error: Option<(Position, MisplayKind)>) -> String {
    let base = to.said(language);
    let goes = match (to, cause) {
        (Base::Home, Cause::Steal) => return say!(language, "gains-steals-home"),
        (_, Cause::Steal) => return say!(language, "gains-steals", base = base),
        (Base::Home, Cause::Forced) => return say!(language, "gains-forced-in"),
        (_, Cause::Forced) => return say!(language, "gains-moves-along", base = base),
        (Base::Home, _) => say!(language, "gains-scores"),
        (Base::First, _) => say!(language, "gains-reaches-first"),
        (_, _) => say!(language, "gains-goes-to", base = base),
    };
    let by_what = match cause {
        Cause::Throw => say!(language, "gains-by-throw"),
        Cause::Choice => say!(language, "gains-by-choice"),
        Cause::Error(_) => match error {
            Some((position, kind)) => {
                let (error, position) = (an_error(language, kind), position.said(language));
                say!(language, "gains-by-error", error = error, position = position)
            }
            None => say!(language, "gains-by-some-error"),
        },
        Cause::Obstruction => say!(language, "gains-by-obstruction"),
        Cause::Interference => say!(language, "gains-by-interference"),
        Cause::Award => say!(language, "gains-by-award"),
        Cause::WildPitch => say!(language, "gains-by-wild-pitch"),
        Cause::PassedBall => say!(language, "gains-by-passed-ball"),
        Cause::Balk => say!(language, "gains-by-balk"),
        Cause::IllegalPitch => say!(language, "gains-by-illegal-pitch"),
        Cause::Indifference => say!(language, "gains-by-indifference"),
        Cause::Play | Cause::Forced | Cause::Steal => return goes,
    };
    goes + &spaced(&by_what)
}

fn out_on_bases(language: Language, at: Base, how: How, attempt: Option<Attempt>) -> String {
    let base = at.said(language);
    match (attempt, how) {
        (Some(Attempt::Steal), _) => say!(language, "out-stealing", base = base),
        (Some(Attempt::Pickoff), _) => say!(language, "out-picked-off", base = base),
        (Some(Attempt::Advance), _) => say!(language, "out-advancing", base = base),
        (None, How::Force) => say!(language, "out-forced", base = base),
        (None, How::Tag | How::Fly | How::Strikeout) => say!(language, "out-at", base = base),
        (None, how) => say!(language, "out-at-for", base = base, how = out_for(language, how)),
    }
}

fn out_for(language: Language, how: How) -> String {
    match how {
        How::Appeal => say!(language, "out-for-appeal"),
        How::Interference => say!(language, "out-for-interference"),
        How::HitByBall => say!(language, "out-for-hit-by-ball"),
        How::Passing => say!(language, "out-for-passing"),
        How::LeftPath => say!(language, "out-for-left-path"),
        How::OutOfTurn => say!(language, "out-for-out-of-turn"),
        How::OtherRule => say!(language, "out-for-other-rule"),
        How::Strikeout => say!(language, "out-for-strikeout"),
        How::Fly => say!(language, "out-for-fly"),
        How::Force => say!(language, "out-for-force"),
        How::Tag => say!(language, "out-for-tag"),
    }
}

fn an_error(language: Language, kind: MisplayKind) -> String {
    match kind {
        MisplayKind::Fielding => say!(language, "error-fielding"),
        MisplayKind::Throwing => say!(language, "error-throwing"),
        MisplayKind::Muff => say!(language, "error-muff"),
        MisplayKind::DroppedFly => say!(language, "error-dropped-fly"),
        MisplayKind::DroppedFoul => say!(language, "error-dropped-foul"),
        MisplayKind::Obstruction => say!(language, "error-obstruction"),
        MisplayKind::Interference => say!(language, "error-interference"),
    }
}

fn erred(language: Language, kind: MisplayKind) -> String {
    match kind {
        MisplayKind::Fielding => say!(language, "erred-fielding"),
        MisplayKind::Throwing => say!(language, "erred-throwing"),
        MisplayKind::Muff => say!(language, "erred-muff"),
        MisplayKind::DroppedFly => say!(language, "erred-dropped-fly"),
        MisplayKind::DroppedFoul => say!(language, "erred-dropped-foul"),
        MisplayKind::Obstruction => say!(language, "erred-obstruction"),
        MisplayKind::Interference => say!(language, "erred-interference"),
    }
}

fn substituted(language: Language, outgoing: String, incoming: String, role: Role) -> String {
    match role {
        Role::PinchHitter => say!(language, "sub-pinch-hitter", incoming = incoming, outgoing = outgoing),
        Role::PinchRunner => say!(language, "sub-pinch-runner", incoming = incoming, outgoing = outgoing),
        Role::CourtesyRunner => say!(language, "sub-courtesy-runner", incoming = incoming, outgoing = outgoing),
        Role::Fielder(post) => match post.position() {
            Some(Position::Pitcher) => say!(language, "sub-pitcher", incoming = incoming, outgoing = outgoing),
            Some(position) => {
                let position = position.said(language);
                say!(language, "sub-fielder", incoming = incoming, outgoing = outgoing, position = position)
            }
            None => {
                let post = post.short(language);
                say!(language, "sub-other", incoming = incoming, outgoing = outgoing, post = post)
            }
        },
    }
}

fn changed(language: Language, change: &Change, names: Names) -> String {
    match change {
        Change::Substitute { outgoing, incoming, role } => {
            substituted(language, names(*outgoing), names(*incoming), *role)
        }
        Change::Shift { to } => {
            let posts: Vec<_> = to
                .iter()
                .map(|a| {
                    let to = a.post.position().map_or_else(|| a.post.short(language), |p| p.said(language));
                    say!(language, "change-shift-one", player = names(a.player), to = to)
                })
                .collect();
            say!(language, "change-shift", moves = posts.join(", "))
        }
        Change::EndDesignatedHitter { batter, replaces } => {
            say!(language, "change-dh-ends", batter = names(*batter), replaces = names(*replaces))
        }
        Change::Leave { player } => say!(language, "change-leaves", player = names(*player)),
        Change::Join(a) => say!(language, "change-joins", player = names(a.player)),
    }
}

/// The scorer's words, if there are any.
fn reason(why: &str) -> String {
    if why.is_empty() { String::new() } else { format!(": {why}") }
}

fn state(language: Language, status: &Status) -> String {
    match status {
        Status::Delayed { why } => say!(language, "state-delayed", why = reason(why)),
        Status::Resumed => say!(language, "state-resumed"),
        Status::Suspended { why } => say!(language, "state-suspended", why = reason(why)),
        Status::Called { why } => say!(language, "state-called", why = reason(why)),
        Status::Forfeited { winner, why } => {
            say!(language, "state-forfeited", winner = winner.said(language), why = reason(why))
        }
        Status::Final => say!(language, "state-final"),
    }
}

fn over(language: Language, ending: Ending) -> String {
    match ending {
        Ending::Played => say!(language, "over-played"),
        Ending::Mercy => say!(language, "over-mercy"),
        Ending::Declared => say!(language, "over-declared"),
        Ending::Called => say!(language, "over-called"),
        Ending::Forfeited(_) => say!(language, "over-forfeited"),
    }
}

fn judged(language: Language, judgment: &Judgment, names: Names) -> String {
    let what = match judgment {
        Judgment::BatterReached { verdict: Reached::Hit(bases), .. } => say!(language, "judged-hit", bases = *bases),
        Judgment::BatterReached { verdict: Reached::Error(position), .. } => {
            say!(language, "judged-error", position = position.said(language))
        }
        Judgment::BatterReached { verdict: Reached::Choice, .. } => say!(language, "judged-choice"),
        Judgment::BuntedForHit { yes: true, .. } => say!(language, "judged-bunted-for-hit"),
        Judgment::BuntedForHit { yes: false, .. } => say!(language, "judged-sacrifice"),
        Judgment::WouldHaveScored { runner, yes: true, .. } => {
            say!(language, "judged-would-have-scored", runner = names(*runner))
        }
        Judgment::WouldHaveScored { runner, .. } => {
            say!(language, "judged-scored-for-error", runner = names(*runner))
        }
        Judgment::WouldHaveScoredAfterCatch { yes: true, .. } => say!(language, "judged-scored-after-catch"),
        Judgment::WouldHaveScoredAfterCatch { .. } => say!(language, "judged-not-after-catch"),
        Judgment::Earned { runner, yes: true, .. } => say!(language, "judged-earned", runner = names(*runner)),
        Judgment::Earned { runner, .. } => say!(language, "judged-unearned", runner = names(*runner)),
        Judgment::GotAway { wild: true, .. } => say!(language, "judged-wild-pitch"),
        Judgment::GotAway { .. } => say!(language, "judged-passed-ball"),
        Judgment::Undisputed { yes: true, .. } => say!(language, "judged-indifference"),
        Judgment::Undisputed { .. } => say!(language, "judged-stolen-base"),
        Judgment::WinningPitcher { pitcher } => say!(language, "judged-winner", pitcher = names(*pitcher)),
        Judgment::EffectiveFinish { pitcher, yes: true } => {
            say!(language, "judged-save", pitcher = names(*pitcher))
        }
        Judgment::EffectiveFinish { pitcher, .. } => say!(language, "judged-no-save", pitcher = names(*pitcher)),
    };
    match judgment.on() {
        Some(_) => say!(language, "judged-on-play", what = what),
        None => say!(language, "judged-on-game", what = what),
    }
}
