//! What was ruled, as the heading above its reason; and the name of a pitch.

use super::Names;
use crate::account::why::{Batting, Catching, Number, Pitching};
use crate::account::{Grounds, PitcherCredit, Ruled};
use crate::field::Side;
use crate::game::Thrown;
use crate::log::Call;
use crate::ruling::{BatterResult, Credit, Theft};
use crate::team::PlayerId;

/// A ruling as a heading: "Single for Batter 4".
pub fn heading(ruled: &Ruled, names: Names) -> String {
    let some = |id: &Option<PlayerId>| id.map_or_else(|| "nobody known".to_owned(), names);
    match ruled {
        Ruled::Result { batter, result } => format!("{}: {}", names(*batter), of_result(*result)),
        Ruled::Run { runner, batter, batted_in: true } => {
            format!("Run of {}: batted in by {}", names(*runner), some(batter))
        }
        Ruled::Run { runner, .. } => format!("Run of {}: batted in by nobody", names(*runner)),
        Ruled::Earned { runner, pitcher, earned, team_earned, provisional } => {
            let verdict = match (earned, team_earned) {
                (true, true) => "earned",
                (false, false) => "unearned",
                (true, false) => "earned for the pitcher, not for the team",
                (false, true) => "earned for the team, not for the pitcher",
            };
            let so_far = if *provisional { ", so far" } else { "" };
            format!("Run of {}: charged to {}, {verdict}{so_far}", names(*runner), some(pitcher))
        }
        Ruled::Theft { runner, theft } => format!("{}: {}", names(*runner), of_theft(*theft)),
        Ruled::Fielding { fielder, position, credit } => {
            let what = match credit {
                Credit::Putout => "putout",
                Credit::Assist => "assist",
                Credit::Error => "error",
                Credit::DoublePlay => "part in a double play",
                Credit::TriplePlay => "part in a triple play",
            };
            match fielder {
                Some(fielder) => format!("{}, {position}: {what}", names(*fielder)),
                None => format!("The {position}: {what}"),
            }
        }
        Ruled::GotAway { wild: true, player } => format!("{}: wild pitch", some(player)),
        Ruled::GotAway { player, .. } => format!("{}: passed ball", some(player)),
        Ruled::Balk { pitcher } => format!("{}: balk", some(pitcher)),
        Ruled::Decision { pitcher, credit } => format!("{}: {}", names(*pitcher), of_pitcher(*credit)),
        Ruled::Outs { player, position, outs } => {
            format!("{}, {position}: {}", names(*player), counted(u32::from(*outs), "out", "outs"))
        }
        Ruled::Pitches { pitcher, batter, balls, strikes } => format!(
            "{} to {}: {}, {}",
            names(*pitcher),
            some(batter),
            counted(*balls, "ball", "balls"),
            counted(*strikes, "strike", "strikes")
        ),
        Ruled::LeftOnBase { batter: Some(batter), runners } => format!("{}: {runners} left on base", names(*batter)),
        Ruled::LeftOnBase { runners, .. } => format!("{runners} left on base"),
        Ruled::GroundedIntoDoublePlay { batter } => format!("{}: grounded into a double play", names(*batter)),
    }
}

/// "1 out", "2 outs".
fn counted(count: u32, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

const fn of_pitcher(credit: PitcherCredit) -> &'static str {
    match credit {
        PitcherCredit::Win => "winning pitcher",
        PitcherCredit::Loss => "losing pitcher",
        PitcherCredit::Save => "save",
        PitcherCredit::Shutout => "shutout",
        PitcherCredit::CompleteGame => "complete game",
        PitcherCredit::Hold => "hold, by custom",
        PitcherCredit::BlownSave => "blown save, by custom",
    }
}

/// The reason of a ruling.
pub fn grounds(grounds: &Grounds) -> String {
    match grounds {
        Grounds::Ruling(because) => because.to_string(),
        Grounds::Decision(why) => why.to_string(),
        Grounds::Run { pitcher, team: None, answers } => format!("{pitcher} {answers}"),
        Grounds::Run { pitcher, team: Some(team), answers } => {
            format!("For the pitcher: {pitcher} For the team: {team} {answers}")
        }
    }
}

const fn of_result(result: BatterResult) -> &'static str {
    match result {
        BatterResult::Hit(2) => "two-base hit",
        BatterResult::Hit(3) => "three-base hit",
        BatterResult::Hit(4) => "home run",
        BatterResult::Hit(_) => "single",
        BatterResult::Walk => "base on balls",
        BatterResult::IntentionalWalk => "intentional base on balls",
        BatterResult::HitByPitch => "hit by a pitch",
        BatterResult::Strikeout { .. } => "strikeout",
        BatterResult::Out => "out",
        BatterResult::FieldersChoice => "fielder's choice",
        BatterResult::ReachedOnError(_) => "reached on an error, no hit",
        BatterResult::SacrificeHit { .. } => "sacrifice hit",
        BatterResult::SacrificeFly { .. } => "sacrifice fly",
        BatterResult::Interference => "first base on interference",
        BatterResult::Obstruction => "first base on obstruction",
    }
}

fn of_theft(theft: Theft) -> String {
    match theft {
        Theft::Stolen(1) => "stolen base".into(),
        Theft::Stolen(bases) => format!("{bases} stolen bases"),
        Theft::Caught { at, out: true } => format!("caught stealing {at}"),
        Theft::Caught { at, .. } => format!("caught stealing {at}, saved by an error"),
        Theft::PickedOff => "picked off, not caught stealing".into(),
        Theft::NotStolen => "no stolen base".into(),
    }
}

/// A number of the box score as a heading: "Hits of Lena Brightwater".
pub fn number(number: Number, names: Names, team: &dyn Fn(Side) -> String) -> String {
    match number {
        Number::Batting(who, what) => {
            let what = match what {
                Batting::PlateAppearances => "Plate appearances",
                Batting::AtBats => "At bats",
                Batting::Runs => "Runs",
                Batting::Hits => "Hits",
                Batting::Doubles => "Two-base hits",
                Batting::Triples => "Three-base hits",
                Batting::HomeRuns => "Home runs",
                Batting::RunsBattedIn => "Runs batted in",
                Batting::Walks => "Bases on balls",
                Batting::IntentionalWalks => "Intentional bases on balls",
                Batting::Strikeouts => "Strikeouts",
                Batting::HitByPitch => "Hit by a pitch",
                Batting::SacrificeHits => "Sacrifice hits",
                Batting::SacrificeFlies => "Sacrifice flies",
                Batting::Interference => "First base on interference",
                Batting::ReachedOnError => "Reached on errors",
                Batting::FieldersChoices => "Fielder's choices",
                Batting::StolenBases => "Stolen bases",
                Batting::CaughtStealing => "Caught stealing",
                Batting::GroundedIntoDoublePlays => "Grounded into double plays",
                Batting::LeftOnBase => "Left on base",
            };
            format!("{what}: {}", names(who))
        }
        Number::Pitching(who, what) => {
            let what = match what {
                Pitching::Outs => "Innings pitched",
                Pitching::BattersFaced => "Batters faced",
                Pitching::Hits => "Hits allowed",
                Pitching::HomeRuns => "Home runs allowed",
                Pitching::Runs => "Runs charged",
                Pitching::EarnedRuns => "Earned runs",
                Pitching::Walks => "Bases on balls given",
                Pitching::IntentionalWalks => "Intentional bases on balls given",
                Pitching::Strikeouts => "Strikeouts pitched",
                Pitching::HitBatters => "Batters hit",
                Pitching::WildPitches => "Wild pitches",
                Pitching::Balks => "Balks",
                Pitching::Pitches => "Pitches",
                Pitching::Balls => "Balls",
                Pitching::Strikes => "Strikes",
            };
            format!("{what}: {}", names(who))
        }
        Number::Fielding(who, what) => {
            let what = match what {
                Credit::Putout => "Putouts",
                Credit::Assist => "Assists",
                Credit::Error => "Errors",
                Credit::DoublePlay => "Double plays",
                Credit::TriplePlay => "Triple plays",
            };
            format!("{what}: {}", names(who))
        }
        Number::Catching(who, what) => {
            let what = match what {
                Catching::PassedBalls => "Passed balls",
                Catching::StolenBases => "Bases stolen while catching",
                Catching::CaughtStealing => "Runners caught while catching",
            };
            format!("{what}: {}", names(who))
        }
        Number::InField(who) => format!("Innings in the field: {}", names(who)),
        Number::HitsOf(side) => format!("Hits: {}", team(side)),
        Number::RunsOf(side) => format!("Runs: {}", team(side)),
        Number::ErrorsOf(side) => format!("Errors: {}", team(side)),
        Number::LeftOnBaseOf(side) => format!("Left on base: {}", team(side)),
        Number::Decision(who) => format!("Decision: {}", names(who)),
        Number::EarnedAgainst(side) => format!("Earned runs against {}, as a team", team(side)),
    }
}

/// The name of a pitch.
pub const fn pitch(thrown: Thrown) -> &'static str {
    match thrown {
        Thrown::InPlay => "in play",
        Thrown::Called(call) => match call {
            Call::Ball => "ball",
            Call::CalledStrike => "called strike",
            Call::SwingingStrike => "swing and a miss",
            Call::Foul => "foul",
            Call::FoulTip => "foul tip",
            Call::FoulBunt => "foul bunt",
            Call::MissedBunt => "missed bunt",
            Call::Pitchout => "pitchout",
            Call::IntentionalBall => "intentional ball",
            Call::AutomaticBall => "automatic ball, no pitch",
            Call::AutomaticStrike => "automatic strike, no pitch",
            Call::IllegalPitch => "illegal pitch",
            Call::HitByPitch => "hit the batter",
            Call::CatcherInterference => "catcher's interference",
            Call::BatterInterference => "batter's interference",
        },
    }
}
