//! The scorer thinks again: judgments, and corrections of earlier entries.

use benchbook_stats::field::Base;
use benchbook_stats::game::{Game, Phase, Play, Step, TurnKind};
use benchbook_stats::log::{Call, Cause, Event, Judgment, MisplayKind, Pitch, Reached, Start, Trajectory};

use super::scene::Scene;
use super::{Dice, bases, batted};

/// A judgment on one of the plays so far, where the rules leave one.
pub(super) fn judgment(game: &Game, dice: &mut Dice) -> Option<Event> {
    let plays: Vec<&Play> = game.plays().filter(|p| !p.nullified).collect();
    let recent = plays.len().saturating_sub(30);
    let mut of = Vec::new();
    for play in &plays[if dice.percent(70) { recent } else { 0 }..] {
        of.extend(matters(play, dice));
    }
    if of.is_empty() {
        return pitchers(game, dice);
    }
    let judgment = of.swap_remove(dice.below(of.len()));
    Some(Event::Judgment(judgment))
}

/// The judgments about the game as a whole.
pub(super) fn pitchers(game: &Game, dice: &mut Dice) -> Option<Event> {
    let pitcher = game.situation().pitcher?;
    Some(Event::Judgment(if dice.percent(50) {
        Judgment::WinningPitcher { pitcher }
    } else {
        Judgment::EffectiveFinish { pitcher, yes: dice.percent(50) }
    }))
}

fn matters(play: &Play, dice: &mut Dice) -> Vec<Judgment> {
    let (on, yes) = (play.entry, dice.percent(50));
    let mut of = Vec::new();
    let in_play = play.turn.is_some_and(|t| t.kind == TurnKind::InPlay);
    if in_play && let Some(m) = play.batter_move().filter(|m| !m.legs.is_empty()) {
        let bases = m.reached().map_or(1, Base::number);
        let by = play.defence.players().next().map(|(position, _)| position);
        of.push(Judgment::BatterReached {
            on,
            verdict: match (dice.below(3), by) {
                (0, Some(by)) => Reached::Error(by),
                (1, _) => Reached::Choice,
                _ => Reached::Hit(1 + dice.small(bases)),
            },
        });
        if play.misplays.iter().any(|m| m.kind == MisplayKind::DroppedFly) {
            of.push(Judgment::WouldHaveScoredAfterCatch { on, yes });
        }
    }
    if play.batted.as_ref().is_some_and(|b| b.trajectory == Trajectory::Bunt) {
        of.push(Judgment::BuntedForHit { on, yes });
    }
    for m in &play.moves {
        if m.scored {
            of.push(Judgment::Earned { on, runner: m.runner, yes });
            if m.from != Start::Batter {
                of.push(Judgment::WouldHaveScored { on, runner: m.runner, yes });
            }
        }
        for cause in m.legs.iter().map(|leg| leg.cause) {
            match cause {
                Cause::WildPitch | Cause::PassedBall => of.push(Judgment::GotAway { on, wild: yes }),
                Cause::Steal => of.push(Judgment::Undisputed { on, runner: m.runner, yes }),
                _ => {}
            }
        }
    }
    of
}

/// A correction of something recorded since the first pitch.
pub(super) fn correction(game: &Game, dice: &mut Dice) -> Option<Event> {
    let steps = game.steps();
    let play_ball = steps.iter().position(|s| s.after.phase != Phase::Before)?;
    let played = steps.len().saturating_sub(play_ball + 1);
    if played == 0 {
        return None;
    }
    let back = if dice.percent(80) { played.min(10) } else { played };
    let at = steps.len() - 1 - dice.below(back);
    let step = &steps[at];
    match dice.below(6) {
        0 => game.undo().filter(|e| matches!(e, Event::Retract { entry } if *entry >= steps[play_ball + 1].entry)),
        1 => game.redo(),
        2 => Some(Event::Retract { entry: step.entry }),
        3 => reinstate(game, dice),
        4 => Some(Event::Replace { entry: step.entry, event: Box::new(instead(game, at, step, dice)) }),
        _ => Some(Event::Insert { before: step.entry, event: Box::new(before(game, at, dice)) }),
    }
}

fn reinstate(game: &Game, dice: &mut Dice) -> Option<Event> {
    let mut struck = Vec::new();
    for entry in game.log() {
        match entry.event {
            Event::Retract { entry } => struck.push(entry),
            Event::Reinstate { entry } => struck.retain(|e| *e != entry),
            _ => {}
        }
    }
    if struck.is_empty() { None } else { Some(Event::Reinstate { entry: dice.pick(&struck) }) }
}

/// What else might have been recorded there.
fn instead(game: &Game, at: usize, step: &Step, dice: &mut Dice) -> Event {
    let s = steps_before(game, at);
    match game.event(step) {
        Event::Pitch(_) => Event::Pitch(Pitch::new(dice.pick(&[Call::Ball, Call::Foul, Call::CalledStrike]))),
        Event::InPlay(_) => batted::in_play(&mut Scene::new(game, s, dice)),
        event if dice.percent(50) => event.clone(),
        _ => Event::Note { text: "Struck out by mistake.".into() },
    }
}

fn before(game: &Game, at: usize, dice: &mut Dice) -> Event {
    let s = steps_before(game, at);
    let mut scene = Scene::new(game, s, dice);
    match scene.dice.below(4) {
        0 if !scene.runners().is_empty() => Event::Running(benchbook_stats::log::Running {
            action: bases::running(&mut scene, false),
            same_play: false,
        }),
        1 => batted::in_play(&mut scene),
        2 => Event::Pitch(Pitch::new(Call::Ball)),
        _ => Event::Note { text: "Forgotten, written in later.".into() },
    }
}

fn steps_before(game: &Game, at: usize) -> benchbook_stats::game::Situation {
    at.checked_sub(1).and_then(|i| game.steps().get(i)).map_or(*game.situation(), |s| s.after)
}
