//! What was ruled, as the heading above its reason; and the name of a pitch.

use super::Names;
use crate::account::why::{Batting, Catching, Number, Pitching};
use crate::account::{Grounds, PitcherCredit, Ruled};
use crate::field::Side;
use crate::game::Thrown;
use crate::log::Call;
use crate::ruling::{BatterResult, Credit, Theft};
use crate::team::PlayerId;
use crate::words::{Language, say};

/// A ruling as a heading: "Lena Brightwater: single".
pub fn heading(ruled: &Ruled, language: Language, names: Names) -> String {
    let some = |id: &Option<PlayerId>| id.map_or_else(|| say!(language, "ruled-nobody-known"), names);
    let one = |whom: String, what: String| say!(language, "ruled", whom = whom, what = what);
    match ruled {
        Ruled::Result { batter, result } => one(names(*batter), of_result(language, *result)),
        Ruled::Run { runner, batter, batted_in: true } => {
            say!(language, "ruled-batted-in", runner = names(*runner), batter = some(batter))
        }
        Ruled::Run { runner, .. } => say!(language, "ruled-not-batted-in", runner = names(*runner)),
        Ruled::Earned { runner, pitcher, earned, team_earned, provisional } => {
            let verdict = match (earned, team_earned) {
                (true, true) => say!(language, "ruled-earned"),
                (false, false) => say!(language, "ruled-unearned"),
                (true, false) => say!(language, "ruled-earned-pitcher-only"),
                (false, true) => say!(language, "ruled-earned-team-only"),
            };
            let (runner, pitcher) = (names(*runner), some(pitcher));
            if *provisional {
                say!(language, "ruled-charged-so-far", runner = runner, pitcher = pitcher, verdict = verdict)
            } else {
                say!(language, "ruled-charged", runner = runner, pitcher = pitcher, verdict = verdict)
            }
        }
        Ruled::Theft { runner, theft } => one(names(*runner), of_theft(language, *theft)),
        Ruled::Fielding { fielder, position, credit } => {
            let (position, what) = (position.said(language), of_credit(language, *credit));
            match fielder {
                Some(id) => say!(language, "ruled-fielder", fielder = names(*id), position = position, what = what),
                None => say!(language, "ruled-some-fielder", position = position, what = what),
            }
        }
        Ruled::GotAway { wild: true, player } => one(some(player), say!(language, "ruled-wild-pitch")),
        Ruled::GotAway { player, .. } => one(some(player), say!(language, "ruled-passed-ball")),
        Ruled::Balk { pitcher } => one(some(pitcher), say!(language, "ruled-balk")),
        Ruled::Decision { pitcher, credit } => one(names(*pitcher), of_pitcher(language, *credit)),
        Ruled::Outs { player, position, outs } => {
            let (fielder, position) = (names(*player), position.said(language));
            say!(language, "ruled-outs", fielder = fielder, position = position, outs = *outs)
        }
        Ruled::Pitches { pitcher, batter, balls, strikes } => {
            let balls = say!(language, "ruled-balls", balls = *balls);
            let strikes = say!(language, "ruled-strikes", strikes = *strikes);
            let (pitcher, batter) = (names(*pitcher), some(batter));
            say!(language, "ruled-pitches", pitcher = pitcher, batter = batter, balls = balls, strikes = strikes)
        }
        Ruled::LeftOnBase { batter: Some(batter), runners } => {
            say!(language, "ruled-left-on-base", batter = names(*batter), runners = *runners)
        }
        Ruled::LeftOnBase { runners, .. } => say!(language, "ruled-team-left-on-base", runners = *runners),
        Ruled::GroundedIntoDoublePlay { batter } => one(names(*batter), say!(language, "ruled-double-play")),
    }
}

fn of_credit(language: Language, credit: Credit) -> String {
    match credit {
        Credit::Putout => say!(language, "credit-putout"),
        Credit::Assist => say!(language, "credit-assist"),
        Credit::Error => say!(language, "credit-error"),
        Credit::DoublePlay => say!(language, "credit-double-play"),
        Credit::TriplePlay => say!(language, "credit-triple-play"),
    }
}

fn of_pitcher(language: Language, credit: PitcherCredit) -> String {
    match credit {
        PitcherCredit::Win => say!(language, "ruled-win"),
        PitcherCredit::Loss => say!(language, "ruled-loss"),
        PitcherCredit::Save => say!(language, "ruled-save"),
        PitcherCredit::Shutout => say!(language, "ruled-shutout"),
        PitcherCredit::CompleteGame => say!(language, "ruled-complete-game"),
        PitcherCredit::Hold => say!(language, "ruled-hold"),
        PitcherCredit::BlownSave => say!(language, "ruled-blown-save"),
    }
}

/// The reason of a ruling.
pub fn grounds(grounds: &Grounds, language: Language) -> String {
    match grounds {
        Grounds::Ruling(because) => because.said(language),
        Grounds::Decision(why) => why.said(language),
        Grounds::Run { pitcher, team: None, answers } => {
            format!("{} {}", pitcher.said(language), answers.said(language))
        }
        Grounds::Run { pitcher, team: Some(team), answers } => {
            let (pitcher, team) = (pitcher.said(language), team.said(language));
            say!(language, "grounds-both", pitcher = pitcher, team = team, answers = answers.said(language))
        }
    }
}

fn of_result(language: Language, result: BatterResult) -> String {
    match result {
        BatterResult::Hit(2) => say!(language, "result-two-base-hit"),
        BatterResult::Hit(3) => say!(language, "result-three-base-hit"),
        BatterResult::Hit(4) => say!(language, "result-home-run"),
        BatterResult::Hit(_) => say!(language, "result-single"),
        BatterResult::Walk => say!(language, "result-walk"),
        BatterResult::IntentionalWalk => say!(language, "result-intentional-walk"),
        BatterResult::HitByPitch => say!(language, "result-hit-by-pitch"),
        BatterResult::Strikeout { .. } => say!(language, "result-strikeout"),
        BatterResult::Out => say!(language, "result-out"),
        BatterResult::FieldersChoice => say!(language, "result-fielders-choice"),
        BatterResult::ReachedOnError(_) => say!(language, "result-on-error"),
        BatterResult::SacrificeHit { .. } => say!(language, "result-sacrifice-hit"),
        BatterResult::SacrificeFly { .. } => say!(language, "result-sacrifice-fly"),
        BatterResult::Interference => say!(language, "result-interference"),
        BatterResult::Obstruction => say!(language, "result-obstruction"),
    }
}

fn of_theft(language: Language, theft: Theft) -> String {
    match theft {
        Theft::Stolen(bases) => say!(language, "theft-stolen", bases = bases),
        Theft::Caught { at, out: true } => say!(language, "theft-caught", base = at.said(language)),
        Theft::Caught { at, .. } => say!(language, "theft-caught-saved", base = at.said(language)),
        Theft::PickedOff => say!(language, "theft-picked-off"),
        Theft::NotStolen => say!(language, "theft-not-stolen"),
    }
}

/// A number of the box score as a heading: "Hits: Lena Brightwater".
pub fn number(number: Number, language: Language, names: Names, team: &dyn Fn(Side) -> String) -> String {
    let of = |what: String, whom: String| say!(language, "number-of", what = what, whom = whom);
    match number {
        Number::Batting(who, what) => of(batting(language, what), names(who)),
        Number::Pitching(who, what) => of(pitching(language, what), names(who)),
        Number::Fielding(who, what) => of(fielding(language, what), names(who)),
        Number::Catching(who, what) => of(catching(language, what), names(who)),
        Number::InField(who) => of(say!(language, "number-in-field"), names(who)),
        Number::HitsOf(side) => of(say!(language, "number-hits"), team(side)),
        Number::RunsOf(side) => of(say!(language, "number-runs"), team(side)),
        Number::ErrorsOf(side) => of(say!(language, "number-fielder-error"), team(side)),
        Number::LeftOnBaseOf(side) => of(say!(language, "number-left-on-base"), team(side)),
        Number::Decision(who) => of(say!(language, "number-decision"), names(who)),
        Number::EarnedAgainst(side) => say!(language, "number-earned-against", whom = team(side)),
    }
}

fn batting(language: Language, what: Batting) -> String {
    match what {
        Batting::PlateAppearances => say!(language, "number-plate-appearances"),
        Batting::AtBats => say!(language, "number-at-bats"),
        Batting::Runs => say!(language, "number-runs"),
        Batting::Hits => say!(language, "number-hits"),
        Batting::Doubles => say!(language, "number-doubles"),
        Batting::Triples => say!(language, "number-triples"),
        Batting::HomeRuns => say!(language, "number-home-runs"),
        Batting::RunsBattedIn => say!(language, "number-runs-batted-in"),
        Batting::Walks => say!(language, "number-walks"),
        Batting::IntentionalWalks => say!(language, "number-intentional-walks"),
        Batting::Strikeouts => say!(language, "number-strikeouts"),
        Batting::HitByPitch => say!(language, "number-hit-by-pitch"),
        Batting::SacrificeHits => say!(language, "number-sacrifice-hits"),
        Batting::SacrificeFlies => say!(language, "number-sacrifice-flies"),
        Batting::Interference => say!(language, "number-interference"),
        Batting::ReachedOnError => say!(language, "number-reached-on-error"),
        Batting::FieldersChoices => say!(language, "number-fielders-choices"),
        Batting::StolenBases => say!(language, "number-stolen-bases"),
        Batting::CaughtStealing => say!(language, "number-caught-stealing"),
        Batting::GroundedIntoDoublePlays => say!(language, "number-grounded-into-double-plays"),
        Batting::LeftOnBase => say!(language, "number-left-on-base"),
    }
}

fn pitching(language: Language, what: Pitching) -> String {
    match what {
        Pitching::Outs => say!(language, "number-pitcher-outs"),
        Pitching::BattersFaced => say!(language, "number-pitcher-batters-faced"),
        Pitching::Hits => say!(language, "number-pitcher-hits"),
        Pitching::HomeRuns => say!(language, "number-pitcher-home-runs"),
        Pitching::Runs => say!(language, "number-pitcher-runs"),
        Pitching::EarnedRuns => say!(language, "number-pitcher-earned-runs"),
        Pitching::Walks => say!(language, "number-pitcher-walks"),
        Pitching::IntentionalWalks => say!(language, "number-pitcher-intentional-walks"),
        Pitching::Strikeouts => say!(language, "number-pitcher-strikeouts"),
        Pitching::HitBatters => say!(language, "number-pitcher-hit-batters"),
        Pitching::WildPitches => say!(language, "number-pitcher-wild-pitches"),
        Pitching::Balks => say!(language, "number-pitcher-balks"),
        Pitching::Pitches => say!(language, "number-pitcher-pitches"),
        Pitching::Balls => say!(language, "number-pitcher-balls"),
        Pitching::Strikes => say!(language, "number-pitcher-strikes"),
    }
}

fn fielding(language: Language, what: Credit) -> String {
    match what {
        Credit::Putout => say!(language, "number-fielder-putout"),
        Credit::Assist => say!(language, "number-fielder-assist"),
        Credit::Error => say!(language, "number-fielder-error"),
        Credit::DoublePlay => say!(language, "number-fielder-double-play"),
        Credit::TriplePlay => say!(language, "number-fielder-triple-play"),
    }
}

fn catching(language: Language, what: Catching) -> String {
    match what {
        Catching::PassedBalls => say!(language, "number-catcher-passed-balls"),
        Catching::StolenBases => say!(language, "number-catcher-stolen-bases"),
        Catching::CaughtStealing => say!(language, "number-catcher-caught-stealing"),
    }
}

/// The name of a pitch.
pub fn pitch(thrown: Thrown, language: Language) -> String {
    match thrown {
        Thrown::InPlay => say!(language, "pitch-in-play"),
        Thrown::Called(call) => match call {
            Call::Ball => say!(language, "pitch-ball"),
            Call::CalledStrike => say!(language, "pitch-called-strike"),
            Call::SwingingStrike => say!(language, "pitch-swinging-strike"),
            Call::Foul => say!(language, "pitch-foul"),
            Call::FoulTip => say!(language, "pitch-foul-tip"),
            Call::FoulBunt => say!(language, "pitch-foul-bunt"),
            Call::MissedBunt => say!(language, "pitch-missed-bunt"),
            Call::Pitchout => say!(language, "pitch-pitchout"),
            Call::IntentionalBall => say!(language, "pitch-intentional-ball"),
            Call::AutomaticBall => say!(language, "pitch-automatic-ball"),
            Call::AutomaticStrike => say!(language, "pitch-automatic-strike"),
            Call::IllegalPitch => say!(language, "pitch-illegal-pitch"),
            Call::HitByPitch => say!(language, "pitch-hit-by-pitch"),
            Call::CatcherInterference => say!(language, "pitch-catcher-interference"),
            Call::BatterInterference => say!(language, "pitch-batter-interference"),
        },
    }
}
