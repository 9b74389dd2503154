//! The rulings on one play, gathered for whoever asks "why?".

use super::{Grounds, PitcherCredit, Reason, Ruled};
use crate::field::Position;
use crate::game::{Game, Play};
use crate::ruling::decision::{Decision, decisions};
use crate::ruling::earned::RunCharge;
use crate::ruling::{Because, Book, GotAway, Judged, Ruling};
use crate::team::PlayerId;

pub(super) fn of(play: &Play, judged: &Judged, book: &Book) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if play.nullified {
        return reasons;
    }
    let batter = play.turn.and_then(|t| t.batter);
    if let (Some(batter), Some(ruling)) = (batter, &judged.result) {
        reasons.push(ruled(Ruled::Result { batter, result: ruling.verdict }, ruling));
    }
    if let (Some(batter), Some(ruling)) = (batter, &judged.grounded_into_double_play) {
        reasons.push(ruled(Ruled::GroundedIntoDoublePlay { batter }, ruling));
    }
    for (runner, ruling) in &judged.runs {
        reasons.push(ruled(Ruled::Run { runner: *runner, batter, batted_in: ruling.verdict }, ruling));
    }
    reasons.extend(book.runs().iter().filter(|c| c.entry == play.entry).map(run));
    for (runner, ruling) in &judged.thefts {
        reasons.push(ruled(Ruled::Theft { runner: *runner, theft: ruling.verdict }, ruling));
    }
    if let Some(ruling) = &judged.got_away {
        let wild = ruling.verdict == GotAway::WildPitch;
        let player = if wild { play.before.pitcher } else { play.defence.at(Position::Catcher) };
        reasons.push(ruled(Ruled::GotAway { wild, player }, ruling));
    }
    if let Some(ruling) = &judged.balk {
        reasons.push(ruled(Ruled::Balk { pitcher: play.before.pitcher }, ruling));
    }
    for (position, ruling) in &judged.credits {
        let (fielder, position) = (play.defence.at(*position), *position);
        reasons.push(ruled(Ruled::Fielding { fielder, position, credit: ruling.verdict }, ruling));
    }
    reasons
}

fn ruled<V>(what: Ruled, ruling: &Ruling<V>) -> Reason {
    let because: Because = ruling.because;
    Reason {
        ruled: what,
        because: Grounds::Ruling(because),
        rests_on: Vec::new(),
        rule: ruling.rule,
        entry: ruling.entry,
    }
}

fn run(charge: &RunCharge) -> Reason {
    let ruled = Ruled::Earned {
        runner: charge.runner,
        pitcher: charge.pitcher,
        earned: charge.earned,
        team_earned: charge.team_earned,
        provisional: charge.provisional,
    };
    let team = (charge.team_because != charge.because).then(|| charge.team_because.clone());
    let mut rests_on = charge.because.entries();
    rests_on.extend(team.iter().flat_map(crate::ruling::earned::Reason::entries));
    rests_on.sort_unstable();
    rests_on.dedup();
    rests_on.retain(|entry| *entry != charge.entry);
    let because = Grounds::Run { pitcher: charge.because.clone(), team, answers: charge.answers };
    Reason { ruled, because, rests_on, rule: charge.rule, entry: charge.entry }
}

/// A pitcher's decisions, the win first; each on the play it rests on, or on the last of the game.
pub(super) fn of_pitcher(game: &Game, pitcher: PlayerId) -> Vec<Reason> {
    let all = decisions(game);
    let Some(last) = game.plays().next_back().map(|play| play.entry) else { return Vec::new() };
    let one = |credit, decision: &Decision| {
        (decision.pitcher == pitcher).then(|| Reason {
            ruled: Ruled::Decision { pitcher, credit },
            because: Grounds::Decision(decision.because),
            rests_on: Vec::new(),
            rule: decision.rule,
            entry: decision.because.entry().unwrap_or(last),
        })
    };
    let some = |credit, decision: &Option<Decision>| decision.as_ref().and_then(|d| one(credit, d));
    let many = |credit, list: &[Decision]| list.iter().find_map(|d| one(credit, d));
    [
        some(PitcherCredit::Win, &all.win),
        some(PitcherCredit::Loss, &all.loss),
        some(PitcherCredit::Save, &all.save),
        many(PitcherCredit::Shutout, &all.shutouts),
        many(PitcherCredit::CompleteGame, &all.complete_games),
        many(PitcherCredit::Hold, &all.holds),
        many(PitcherCredit::BlownSave, &all.blown_saves),
    ]
    .into_iter()
    .flatten()
    .collect()
}
