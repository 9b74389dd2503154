//! Sentences about a play: what a proposal would record, what was recorded, and what came of it besides.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::game::{Game, Situation, Thrown, TurnKind};
use benchbook_stats::log::{Action, Attempt, Event, How, Judgment, Move, Start, Trajectory};
use benchbook_stats::propose::{GotAway, Outcome, Proposal};
use benchbook_stats::team::PlayerId;

use super::words::{base, call_said, chain, handled, misplay, position, result, short};
use crate::words::say;

fn who(game: &Game, s: &Situation, start: Start) -> String {
    runner_id(s, start).map_or_else(|| say!("plate-the-runner"), |id| short(&game.label(id)).to_owned())
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

fn hit(bases: u8) -> String {
    match bases {
        1 => say!("plate-single"),
        2 => say!("plate-double"),
        3 => say!("plate-triple"),
        _ => say!("plate-inside-the-park"),
    }
}

/// The outcome's headline: what the play was, without the other runners.
pub fn headline(game: &Game, s: &Situation, outcome: &Outcome, event: &Event) -> String {
    let name = |start: Start| who(game, s, start);
    match outcome {
        Outcome::GroundOut { by } => say!("plate-ground-out", by = handled(by)),
        Outcome::BuntOut { by } => say!("plate-bunt-out", by = handled(by)),
        Outcome::Caught { by, trajectory, foul, infield_fly } => caught(*by, *trajectory, *foul, *infield_fly),
        Outcome::DoublePlay { by } if action(event).is_some_and(is_caught) => {
            say!("plate-caught-double-play", by = handled(by))
        }
        Outcome::DoublePlay { by } => say!("plate-double-play", by = handled(by)),
        Outcome::TriplePlay { by } => say!("plate-triple-play", by = handled(by)),
        Outcome::RunnerOut { who, at, by } => {
            say!("plate-runner-out", runner = name(*who), base = base(*at), by = handled(by))
        }
        Outcome::Rundown { who, by } => say!("plate-rundown", runner = name(*who), by = chain(by)),
        Outcome::AllSafe => say!("plate-all-safe"),
        Outcome::Hit { bases: 1, infield: true } => say!("plate-infield-single"),
        Outcome::Hit { bases, .. } => hit(*bases),
        Outcome::HomeRun => say!("plate-home-run"),
        Outcome::GroundRuleDouble => say!("plate-ground-rule-double"),
        Outcome::HitAndOut { bases, who, at, by } => {
            say!("plate-hit-and-out", hit = hit(*bases), runner = name(*who), base = base(*at), by = chain(by))
        }
        Outcome::HitAndError { .. }
        | Outcome::FieldingError { .. }
        | Outcome::ThrowingError { .. }
        | Outcome::Muff { .. }
        | Outcome::DroppedFly { .. }
        | Outcome::DroppedFoul { .. }
        | Outcome::SafeOnError { .. } => error(outcome),
        Outcome::BatterInterfered => say!("plate-batter-interfered"),
        Outcome::RunnerHit { who } => say!("plate-runner-hit", runner = name(*who)),
        Outcome::Steal { to: Base::Home, .. } => say!("plate-steals-home"),
        Outcome::Steal { to, .. } => say!("plate-steals", base = base(*to)),
        Outcome::StealTogether => say!("plate-steal-together"),
        Outcome::OutOnBases { at, attempt, by, .. } => out_on_bases(*attempt, *at, by),
        Outcome::WildPitch => say!("plate-wild-pitch"),
        Outcome::PassedBall => say!("plate-passed-ball"),
        Outcome::Balk => say!("plate-balk"),
        Outcome::IllegalPitch => say!("plate-illegal-pitch-all"),
        Outcome::Indifference { to, .. } => say!("plate-unopposed-to", base = base(*to)),
        Outcome::StrikeThreeSafe(GotAway::WildPitch) => say!("plate-wild-pitch-safe"),
        Outcome::StrikeThreeSafe(GotAway::PassedBall) => say!("plate-passed-ball-safe"),
        Outcome::StrikeThreeSafe(GotAway::BadThrow) => say!("plate-catcher-throws-badly"),
        Outcome::StrikeThreeSafe(GotAway::Muff) => say!("plate-first-drops"),
        Outcome::StrikeThreeOut { by } => say!("plate-thrown-out", by = chain(by)),
        Outcome::StrikeThreeForce { who, at, by } => {
            say!("plate-forced-at", runner = name(*who), base = base(*at), by = handled(by))
        }
    }
}

fn caught(by: Position, kind: Trajectory, foul: bool, infield_fly: bool) -> String {
    let (fielder, number) = (position(by), by.number());
    let caught = match (kind, foul) {
        (Trajectory::Line, _) => say!("plate-caught-line", fielder = fielder, number = number),
        (Trajectory::Pop, false) => say!("plate-caught-pop", fielder = fielder, number = number),
        (Trajectory::Pop, true) => say!("plate-caught-foul-pop", fielder = fielder, number = number),
        (Trajectory::Bunt, _) => say!("plate-caught-bunt", fielder = fielder, number = number),
        (_, true) => say!("plate-caught-foul-fly", fielder = fielder, number = number),
        (_, false) => say!("plate-caught-fly", fielder = fielder, number = number),
    };
    if infield_fly { say!("plate-infield-fly", caught = caught) } else { caught }
}

/// The headline of an outcome that rests on an error.
fn error(outcome: &Outcome) -> String {
    let (Outcome::HitAndError { by, .. }
    | Outcome::FieldingError { by }
    | Outcome::ThrowingError { by, .. }
    | Outcome::Muff { by }
    | Outcome::DroppedFly { by }
    | Outcome::DroppedFoul { by }
    | Outcome::SafeOnError { by, .. }) = outcome
    else {
        return String::new();
    };
    let (fielder, number) = (position(*by), by.number());
    match outcome {
        Outcome::HitAndError { bases, .. } => {
            say!("plate-hit-and-error", hit = hit(*bases), fielder = fielder, number = number)
        }
        Outcome::ThrowingError { to: Base::First, .. } => {
            say!("plate-bad-throw-by-fielder", fielder = fielder, number = number)
        }
        Outcome::ThrowingError { to, .. } => {
            say!("plate-bad-throw-batter-to", fielder = fielder, number = number, base = base(*to))
        }
        Outcome::Muff { .. } => say!("plate-throw-dropped-by", fielder = fielder, number = number),
        Outcome::DroppedFly { .. } => say!("plate-fly-dropped-by-fielder", fielder = fielder, number = number),
        Outcome::DroppedFoul { .. } => say!("plate-foul-fly-dropped-by", fielder = fielder, number = number),
        Outcome::SafeOnError { to, throw: true, .. } => {
            say!("plate-safe-on-bad-throw", base = base(*to), fielder = fielder, number = number)
        }
        Outcome::SafeOnError { to, .. } => {
            say!("plate-safe-on-drop", base = base(*to), fielder = fielder, number = number)
        }
        _ => say!("plate-error-by-fielder", fielder = fielder, number = number),
    }
}

fn is_caught(action: &Action) -> bool {
    action.moves.iter().any(|m| m.out.as_ref().is_some_and(|out| out.how == How::Fly))
}

fn out_on_bases(attempt: Attempt, at: Base, by: &[Position]) -> String {
    let (base, by) = (base(at), handled(by));
    match attempt {
        Attempt::Steal => say!("plate-caught-stealing-at", base = base, by = by),
        Attempt::Pickoff => say!("plate-picked-off-at", base = base, by = by),
        Attempt::Advance => say!("plate-out-advancing-at", base = base, by = by),
    }
}

/// A proposal's headline and what the runners do.
pub fn proposal(game: &Game, s: &Situation, proposal: &Proposal) -> String {
    let Proposal { outcome, event } = proposal;
    let headline = headline(game, s, outcome, event);
    match running(game, s, outcome, event).as_str() {
        "" => headline,
        running => say!("plate-headline-and-running", headline = headline, running = running),
    }
}

/// What each runner does, for the line under the headline: "Ruiz scores, Lee to third". The batter is named where the
/// headline leaves open where they ended, and outs where it leaves open whose.
pub fn running(game: &Game, s: &Situation, outcome: &Outcome, event: &Event) -> String {
    let Some(action) = action(event) else { return String::new() };
    let in_play = matches!(event, Event::InPlay(_));
    // On the ground the chain says it all; off a fly it matters who had left too early.
    let on_ground = !is_caught(action);
    let worth_a_word = |m: &&Move| {
        let batter = m.from != Start::Batter || batter_is_worth_a_word(m, in_play);
        let out = m.out.is_none() || (!on_ground && leaves_open_who_is_out(outcome));
        batter && out
    };
    list(action.moves.iter().filter(worth_a_word).map(|m| way(&who(game, s, m.from), m)))
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
        (Some(out), _) => say!("plate-way-out", runner = name, base = base(out.at)),
        (None, Some(Base::Home)) => say!("plate-way-scores", runner = name),
        (None, Some(to)) => say!("plate-way-to", runner = name, base = base(to)),
        (None, None) => say!("plate-way-stays", runner = name),
    }
}

/// "this, that, the other".
pub fn list(parts: impl Iterator<Item = String>) -> String {
    parts.reduce(|before, next| say!("plate-list", before = before, next = next)).unwrap_or_default()
}

/// What an event does on the bases.
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
    let moves = list(action.moves.iter().map(|m| way(&who(game, s, m.from), m)));
    let errors = list(
        action.misplays.iter().map(|m| say!("plate-misplay-by", misplay = misplay(m.kind), fielder = position(m.by))),
    );
    match (moves.is_empty(), errors.is_empty()) {
        (_, true) => moves,
        (true, false) => errors,
        (false, false) => say!("plate-draft-and-errors", moves = moves, errors = errors),
    }
}

/// The words for what was recorded, with what it brought about besides: the turn's end on a pitch, the end of the half.
pub fn with_consequence(game: &Game, said: String) -> String {
    let Some(play) = game.steps().last().and_then(|step| step.play.as_deref()) else { return said };
    let mut said = said;
    if matches!(play.thrown, Some(Thrown::Called(_))) {
        said = match play.turn.map(|turn| turn.kind) {
            Some(TurnKind::Walk) => say!("plate-then-walk", said = said),
            Some(TurnKind::IntentionalWalk) => say!("plate-then-intentional-walk", said = said),
            Some(TurnKind::Strikeout { .. }) if play.outs() > 0 => say!("plate-then-struck-out", said = said),
            _ => said,
        };
    }
    if play.ends_half { say!("plate-then-side-out", said = said) } else { said }
}

/// Where things stand after an entry, for the voice.
pub fn stands(s: &Situation) -> String {
    say!("plate-stands", outs = s.outs, balls = s.count.balls, strikes = s.count.strikes)
}

/// What an event would be in the game as it stands, in a few words: a call with what it brings about, a result.
pub fn named(game: &Game, event: &Event) -> String {
    let named = match event {
        Event::Unseen(unseen) => result(unseen.result),
        event => entry(game, event),
    };
    match (event, game.preview(event.clone())) {
        (Event::Pitch(_), Ok(after)) => with_consequence(&after, named),
        _ => named,
    }
}

/// An entry that is no play, said in a few words.
pub fn entry(game: &Game, event: &Event) -> String {
    match event {
        Event::Pitch(pitch) => call_said(pitch.call),
        Event::InPlay(_) => say!("plate-recorded-in-play"),
        Event::Running(_) => say!("plate-recorded-running"),
        Event::IntentionalWalk => say!("plate-intentional-walk"),
        Event::Unseen(_) => say!("plate-recorded-unseen"),
        Event::SetCount(count) => say!("plate-recorded-count", balls = count.balls, strikes = count.strikes),
        Event::Change { .. } => say!("plate-recorded-change"),
        Event::Player { player, .. } => say!("plate-recorded-player", name = game.label(player.id)),
        Event::BatterUp { player } => say!("plate-recorded-batter-up", name = game.label(*player)),
        Event::EmptyPlace => say!("plate-recorded-empty-place"),
        Event::OutOfTurnAppeal => say!("plate-recorded-appeal"),
        Event::PlaceRunner { base: on, player } => {
            say!("plate-recorded-place-runner", name = game.label(*player), base = base(*on))
        }
        Event::EndHalf { .. } => say!("plate-recorded-end-half"),
        Event::Status(_) => say!("plate-recorded-status"),
        Event::Protest { .. } => say!("plate-recorded-protest"),
        Event::Note { .. } => say!("plate-recorded-note"),
        Event::PlayBall => say!("plate-play-ball"),
        Event::Judgment(Judgment::GotAway { .. }) => say!("plate-recorded-ruling"),
        _ => say!("plate-recorded"),
    }
}
