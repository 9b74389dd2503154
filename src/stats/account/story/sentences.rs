//! The story in words.

use super::{Ahead, Batted, Deed, Ended, Part, Pitched, Result, Sentence, Story, leader};
use crate::field::{Half, Outs, Side};
use crate::log::Cause;
use crate::ruling::BatterResult;
use crate::team::PlayerId;
use crate::words::{Language, say};

/// Says who is who.
#[derive(Clone, Copy)]
pub struct Who<'a> {
    /// A player.
    pub player: &'a dyn Fn(PlayerId) -> String,
    /// A side.
    pub team: &'a dyn Fn(Side) -> String,
}

impl Story {
    /// In words, a sentence or two each.
    pub fn said(&self, language: Language, who: Who) -> Vec<String> {
        self.sentences.iter().map(|sentence| sentence.said(language, who)).collect()
    }
}

impl Sentence {
    /// In words.
    pub fn said(&self, language: Language, who: Who) -> String {
        let team = |side: Side| (who.team)(side);
        match self {
            Self::Result(result) => of_result(*result, language, who),
            Self::Before { ours, theirs, .. } if ours == theirs => {
                say!(language, "story-was-level", runs = *ours)
            }
            Self::Before { side, ours, theirs } => {
                say!(language, "story-was-behind", team = team(*side), ours = *ours, theirs = *theirs)
            }
            Self::Ahead(ahead) => of_ahead(ahead, language, who),
            Self::Pitcher { part, line } => pitcher(*part, line, language, who),
            Self::NoRuns { side, pitcher: Some(pitcher) } => {
                say!(language, "story-shutout", pitcher = (who.player)(*pitcher), team = team(*side))
            }
            Self::NoRuns { side, pitcher: None } => say!(language, "story-no-runs", team = team(*side)),
            Self::NoHits { side } => say!(language, "story-no-hits", team = team(*side)),
            Self::Batter(line) => batter(line, language, who),
            Self::NoErrors { side } => say!(language, "story-no-errors", team = team(*side)),
            Self::NobodyErred => say!(language, "story-nobody-erred"),
        }
    }
}

/// "the top of the 5th".
fn half(inning: u8, half: Half, language: Language) -> String {
    match half {
        Half::Top => say!(language, "story-top", inning = inning),
        Half::Bottom => say!(language, "story-bottom", inning = inning),
    }
}

fn of_result(result: Result, language: Language, who: Who) -> String {
    let Result { how, score, inning, regulation, .. } = result;
    let visitors = (who.team)(Side::Visitors);
    let home = (who.team)(Side::Home);
    let in_half = half(inning, result.half, language);
    match how {
        Ended::Suspended => {
            return say!(
                language,
                "story-suspended",
                half = in_half,
                visitors = visitors,
                home = home,
                first = score[0],
                second = score[1],
            );
        }
        Ended::CalledTooEarly => {
            return say!(
                language,
                "story-called-too-early",
                half = in_half,
                visitors = visitors,
                home = home,
                first = score[0],
                second = score[1],
            );
        }
        Ended::Forfeited(side) => {
            let (winner, loser) = ((who.team)(side), (who.team)(side.other()));
            let (ours, theirs) = (score[side.index()], score[side.other().index()]);
            return say!(language, "story-forfeited", winner = winner, loser = loser, ours = ours, theirs = theirs);
        }
        Ended::Played | Ended::Mercy | Ended::Early | Ended::Called => {}
    }
    let ended = match how {
        Ended::Mercy => "mercy",
        Ended::Early => "early",
        Ended::Called => "called",
        _ if inning > regulation => "extra",
        _ => "played",
    };
    let Some(side) = leader(score) else {
        return say!(
            language,
            "story-tied",
            visitors = visitors,
            home = home,
            runs = score[0],
            ended = ended,
            innings = inning,
            half = in_half,
        );
    };
    say!(
        language,
        "story-won",
        winner = (who.team)(side),
        loser = (who.team)(side.other()),
        ours = score[side.index()],
        theirs = score[side.other().index()],
        ended = ended,
        innings = inning,
        half = in_half,
    )
}

fn of_ahead(ahead: &Ahead, language: Language, who: Who) -> String {
    let team = (who.team)(ahead.side);
    let half = half(ahead.inning, ahead.half, language);
    let (ours, theirs) = (ahead.score[ahead.side.index()], ahead.score[ahead.side.other().index()]);
    match (ahead.on, ahead.ended_it) {
        (Deed::Batted { batter, result }, false) => say!(
            language,
            "story-ahead",
            batter = (who.player)(batter),
            deed = deed(result),
            team = team,
            half = half,
            ours = ours,
            theirs = theirs,
        ),
        (Deed::Batted { batter, result }, true) => say!(
            language,
            "story-won-it",
            batter = (who.player)(batter),
            deed = deed(result),
            team = team,
            half = half,
            ours = ours,
            theirs = theirs,
        ),
        (Deed::Scored { runner, cause }, false) => say!(
            language,
            "story-ahead-otherwise",
            runner = (who.player)(runner),
            cause = caused(cause),
            team = team,
            half = half,
            ours = ours,
            theirs = theirs,
        ),
        (Deed::Scored { runner, cause }, true) => say!(
            language,
            "story-won-it-otherwise",
            runner = (who.player)(runner),
            cause = caused(cause),
            team = team,
            half = half,
            ours = ours,
            theirs = theirs,
        ),
    }
}

/// The catalogue's name for what a batter did.
const fn deed(result: BatterResult) -> &'static str {
    match result {
        BatterResult::Hit(1) => "single",
        BatterResult::Hit(2) => "double",
        BatterResult::Hit(3) => "triple",
        BatterResult::Hit(_) => "homer",
        BatterResult::Walk | BatterResult::IntentionalWalk => "walk",
        BatterResult::HitByPitch => "plunked",
        BatterResult::SacrificeFly { .. } => "fly",
        BatterResult::SacrificeHit { .. } => "bunt",
        BatterResult::FieldersChoice => "choice",
        BatterResult::ReachedOnError(_) => "error",
        BatterResult::Out | BatterResult::Strikeout { .. } => "out",
        BatterResult::Interference | BatterResult::Obstruction => "award",
    }
}

/// The catalogue's name for a way to score.
const fn caused(cause: Cause) -> &'static str {
    match cause {
        Cause::Error(_) => "error",
        Cause::WildPitch => "wild",
        Cause::PassedBall => "passed",
        Cause::Balk => "balk",
        Cause::IllegalPitch => "illegal",
        Cause::Steal => "steal",
        Cause::Throw => "throw",
        Cause::Indifference | Cause::Play | Cause::Forced | Cause::Choice => "other",
        Cause::Obstruction | Cause::Interference | Cause::Award => "award",
    }
}

fn pitcher(part: Part, line: &Pitched, language: Language, who: Who) -> String {
    let part = match part {
        Part::Win if line.complete => "complete-win",
        Part::Win => "win",
        Part::Loss if line.complete => "complete-loss",
        Part::Loss => "loss",
        Part::Save => "save",
    };
    say!(
        language,
        "story-pitcher",
        part = part,
        name = (who.player)(line.pitcher),
        innings = innings(line.outs, language),
        hits = line.hits,
        runs = line.runs,
        earned = line.earned_runs,
        walks = line.walks,
        strikeouts = line.strikeouts,
    )
}

/// "6⅓ innings".
fn innings(outs: Outs, language: Language) -> String {
    let (whole, thirds) = (outs.innings(), outs.thirds());
    let part = ["", "⅓", "⅔"].get(thirds as usize).copied().unwrap_or_default();
    match (whole, thirds) {
        (0, 0) => say!(language, "story-no-out"),
        (0, _) => say!(language, "story-part-inning", part = part),
        (1, 0) => say!(language, "story-one-inning"),
        _ => say!(language, "story-innings", whole = whole, part = part),
    }
}

fn batter(line: &Batted, language: Language, who: Who) -> String {
    say!(
        language,
        "story-batter",
        name = (who.player)(line.batter),
        hits = line.hits,
        atbats = line.at_bats,
        doubles = line.doubles,
        triples = line.triples,
        homers = line.home_runs,
        rbi = line.runs_batted_in,
        runs = line.runs,
    )
}
