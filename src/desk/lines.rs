//! `benchbook lines`: every derived line of one game, for people or for other programs.

use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::lines::{BattingLine, BoxScore, FieldingLine, LineScore, PitchingLine, SideBox};
use benchbook_stats::log::{EntryId, Heading};
use benchbook_stats::rates::walks_and_hits_per_inning;
use schemars::JsonSchema;
use serde::Serialize;

use crate::report::trouble;
use crate::table::Table;
use crate::text::{escaped, fit, plain};
use crate::{boxscore, open};

/// Everything Benchbook derives from one game file. Nothing of it is kept in the file: the log is the game.
#[derive(Serialize, JsonSchema)]
#[schemars(title = "Benchbook lines of one game")]
pub struct GameLines {
    /// What this is.
    #[schemars(extend("const" = FORMAT))]
    format: &'static str,
    /// Raised when a reader of the former version would misread what is printed.
    #[schemars(extend("const" = VERSION))]
    version: u32,
    /// The game's own name among all games.
    game: String,
    /// Date, place and competition.
    heading: Heading,
    /// How far the game is, in words: "Final", "In progress: top of inning 5, 2 out".
    state: String,
    /// The game is over.
    over: bool,
    /// Innings of a regulation game, by which an earned run average is reckoned (OBR 9.21(e)).
    regulation_innings: u8,
    /// Runs by inning, runs, hits, errors, left on base.
    line_score: LineScore,
    /// Both sides' batting, pitching and fielding lines, and the parts of the proof. Runs and earned runs of a pitcher
    /// are in his line, and the decision where one is known.
    box_score: BoxScore,
    /// The proof of the box score (OBR 9.03(c)), visitors and home.
    proof: [ProofLine; 2],
    /// Entries that don't fit the game and have no effect. A sound game has none.
    conflicts: Vec<Conflict>,
}

const FORMAT: &str = "benchbook.lines";
const VERSION: u32 = 1;

/// Whether one side's box score proves.
#[derive(Serialize, JsonSchema)]
struct ProofLine {
    /// Which side.
    side: Side,
    /// At bats, walks, hit batters, sacrifices, awards of first base, and runners placed by rule.
    came_up: u32,
    /// Runs, left on base, and the opponents' putouts.
    accounted_for: u32,
    /// The two are equal.
    proves: bool,
}

/// An entry that doesn't fit.
#[derive(Serialize, JsonSchema)]
struct Conflict {
    /// The entry.
    entry: EntryId,
    /// Why, in English.
    reason: String,
}

impl GameLines {
    fn of(id: String, game: &Game) -> Self {
        let box_score = game.box_score();
        let proof = Side::BOTH.map(|side| {
            let proof = box_score.side(side).proof;
            let (came_up, accounted_for) = (proof.came_up(), proof.accounted_for());
            ProofLine { side, came_up, accounted_for, proves: proof.balances() }
        });
        Self {
            format: FORMAT,
            version: VERSION,
            game: id,
            heading: game.heading().clone(),
            state: boxscore::state(game),
            over: matches!(game.situation().phase, benchbook_stats::game::Phase::Over(_)),
            regulation_innings: game.code().innings,
            line_score: game.line_score(),
            box_score,
            proof,
            conflicts: game.conflicts().map(|(entry, reason)| Conflict { entry, reason: reason.to_string() }).collect(),
        }
    }
}

/// Prints the lines of one game. Exit status 1 only if the file can't be read: judging the game is `check`'s.
pub fn lines(path: &Path, json: bool, out: &mut impl Write) -> io::Result<ExitCode> {
    let (file, _) = match open::game_file(path) {
        Ok(read) => read,
        Err(error) => {
            trouble(&open::explain(path, &error));
            return Ok(ExitCode::FAILURE);
        }
    };
    let game = Game::replay(file.log);
    let lines = GameLines::of(file.id, &game);
    if json {
        writeln!(out, "{}", escaped(&serde_json::to_string_pretty(&lines)?))?;
    } else {
        boxscore::heading(&game, out)?;
        writeln!(out)?;
        boxscore::line_score(&lines.line_score, out)?;
        for side in &lines.box_score.sides {
            batting(side, out)?;
            pitching(side, lines.regulation_innings, out)?;
            fielding(side, out)?;
        }
        writeln!(out)?;
        boxscore::proof(&lines.box_score, out)?;
        for conflict in &lines.conflicts {
            writeln!(
                out,
                "Entry {} doesn't fit the game and has no effect: {}",
                conflict.entry.0,
                plain(&conflict.reason)
            )?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn batting(side: &SideBox, out: &mut impl Write) -> io::Result<()> {
    let row = |l: &BattingLine| {
        let counts = [
            l.plate_appearances,
            l.at_bats,
            l.runs,
            l.hits,
            l.doubles,
            l.triples,
            l.home_runs,
            l.runs_batted_in,
            l.walks,
            l.intentional_walks,
            l.strikeouts,
            l.hit_by_pitch,
            l.sacrifice_hits,
            l.sacrifice_flies,
            l.interference,
            l.reached_on_error,
            l.fielders_choices,
            l.stolen_bases,
            l.caught_stealing,
            l.grounded_into_double_plays,
            l.left_on_base,
        ];
        let rates = [l.average(), l.on_base(), l.slugging()];
        [l.name.clone(), l.posts.to_string()]
            .into_iter()
            .chain(counts.map(|n| n.to_string()))
            .chain(rates.map(|rate| rate.to_string()))
    };
    let team = title(side, "batting");
    let head = "PA AB R H 2B 3B HR BI BB IBB SO HBP SH SF CI ROE FC SB CS GDP LOB AVG OBP SLG";
    let mut table = Table::new(2, [team.as_str(), ""].into_iter().chain(head.split(' ')));
    side.batting.iter().for_each(|line| table.row(row(line)));
    table.total(row(&side.batting_total));
    writeln!(out)?;
    table.print(out)
}

fn pitching(side: &SideBox, regulation: u8, out: &mut impl Write) -> io::Result<()> {
    let row = |l: &PitchingLine| {
        let counts = [
            l.batters_faced,
            l.hits,
            l.runs,
            l.earned_runs,
            l.walks,
            l.intentional_walks,
            l.strikeouts,
            l.hit_batters,
            l.wild_pitches,
            l.balks,
            l.home_runs,
            l.balls,
            l.strikes,
        ];
        let pitches = format!("{}{}", l.pitches, if l.pitches_incomplete { "+" } else { "" });
        let rates = [l.earned_run_average(regulation), walks_and_hits_per_inning(l.walks, l.hits, l.outs)];
        [l.name.clone(), l.decision.clone().unwrap_or_default(), l.innings().to_string()]
            .into_iter()
            .chain(counts.map(|n| n.to_string()))
            .chain([pitches])
            .chain(rates.map(|rate| rate.to_string()))
    };
    let team = title(side, "pitching");
    let head = "IP BF H R ER BB IBB SO HB WP BK HR balls strikes pitches ERA WHIP";
    let mut table = Table::new(2, [team.as_str(), ""].into_iter().chain(head.split(' ')));
    side.pitching.iter().for_each(|line| table.row(row(line)));
    table.total(row(&side.pitching_total));
    writeln!(out)?;
    table.print(out)?;
    writeln!(out, "  ERA over a {regulation}-inning game; WHIP is customary, not in the rules.")?;
    for line in &side.pitching {
        let innings: Vec<String> =
            line.by_inning.iter().map(|(inning, pitches)| format!("{inning}: {pitches}")).collect();
        if !innings.is_empty() {
            writeln!(out, "  Pitches by inning, {}: {}", fit(&plain(&line.name), 32), innings.join(", "))?;
        }
    }
    Ok(())
}

fn fielding(side: &SideBox, out: &mut impl Write) -> io::Result<()> {
    let row = |l: &FieldingLine| {
        let counts = [
            l.putouts,
            l.assists,
            l.errors,
            l.double_plays,
            l.triple_plays,
            l.passed_balls,
            l.stolen_bases_allowed,
            l.runners_caught,
        ];
        let played: Vec<String> =
            l.played.iter().map(|(position, outs)| format!("{} {outs}", position.abbreviation())).collect();
        [l.name.clone(), played.join(", ")]
            .into_iter()
            .chain(counts.map(|n| n.to_string()))
            .chain([l.average().to_string()])
    };
    let team = title(side, "fielding");
    let mut table = Table::new(2, [team.as_str(), "innings", "PO", "A", "E", "DP", "TP", "PB", "SB", "CS", "AVG"]);
    side.fielding.iter().for_each(|line| table.row(row(line)));
    table.total(row(&side.fielding_total));
    writeln!(out)?;
    table.print(out)
}

fn title(side: &SideBox, what: &str) -> String {
    format!("{} {what}", fit(&plain(&side.team), 22))
}
