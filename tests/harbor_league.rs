//! One whole game, worked out on paper by the rules (games/harbor-league.paper.md), against what the crate derives.
//! The paper names the section of the Official Baseball Rules for every judgment.

use std::collections::BTreeMap;

use benchbook_stats::field::Side;
use benchbook_stats::file;
use benchbook_stats::game::{Ending, Game, Phase};
use benchbook_stats::season::{DayOfPitches, Season};
use serde::Serialize;
use serde_json::Value;

const FILE: &str = include_str!("games/harbor-league.benchbook.json");
const PAPER: &str = include_str!("games/harbor-league.expected.json");

fn game() -> Game {
    let mut game = Game::new();
    for entry in file::read(FILE).expect("the game file is whole").log {
        let id = entry.id;
        game.record(entry).unwrap_or_else(|refusal| panic!("entry {}: {refusal}", id.0));
    }
    game
}

fn paper() -> Value {
    serde_json::from_str(PAPER).expect("the paper's numbers are JSON")
}

/// Every number of the paper's line that the crate's line has too, under the crate's name for it; and how many.
fn differences(who: &str, paper: &Value, ours: &impl Serialize, names: &[(&str, &str)]) -> (usize, Vec<String>) {
    let ours = serde_json::to_value(ours).expect("lines are JSON");
    let mut wrong = Vec::new();
    for (theirs, our) in names {
        let (expected, got) = (&paper[*theirs], &ours[*our]);
        assert!(!expected.is_null() && !got.is_null(), "{who}: {theirs} or {our} is missing");
        if expected != got {
            wrong.push(format!("{who}: {theirs} is {expected} on paper, {got} here"));
        }
    }
    (names.len(), wrong)
}

const BATTING: &[(&str, &str)] = &[
    ("plate_appearances", "plate_appearances"),
    ("at_bats", "at_bats"),
    ("runs", "runs"),
    ("hits", "hits"),
    ("runs_batted_in", "runs_batted_in"),
    ("doubles", "doubles"),
    ("triples", "triples"),
    ("home_runs", "home_runs"),
    ("walks", "walks"),
    ("intentional_walks", "intentional_walks"),
    ("strikeouts", "strikeouts"),
    ("hit_by_pitch", "hit_by_pitch"),
    ("sacrifice_bunts", "sacrifice_hits"),
    ("sacrifice_flies", "sacrifice_flies"),
    ("stolen_bases", "stolen_bases"),
    ("caught_stealing", "caught_stealing"),
    ("grounded_into_double_plays", "grounded_into_double_plays"),
];

const PITCHING: &[(&str, &str)] = &[
    ("outs", "outs"),
    ("batters_faced", "batters_faced"),
    ("hits", "hits"),
    ("runs", "runs"),
    ("earned_runs", "earned_runs"),
    ("walks", "walks"),
    ("intentional_walks", "intentional_walks"),
    ("strikeouts", "strikeouts"),
    ("hit_batters", "hit_batters"),
    ("home_runs", "home_runs"),
    ("wild_pitches", "wild_pitches"),
    ("balks", "balks"),
    ("pitches", "pitches"),
    ("balls", "balls"),
    ("strikes", "strikes"),
];

const FIELDING: &[(&str, &str)] = &[
    ("putouts", "putouts"),
    ("assists", "assists"),
    ("errors", "errors"),
    ("double_plays", "double_plays"),
    ("passed_balls", "passed_balls"),
];

/// Compares a list of players' lines with the paper's, by player.
fn compare<L: Serialize>(
    section: &Value,
    lines: &[L],
    player: impl Fn(&L) -> u64,
    names: &[(&str, &str)],
) -> (usize, Vec<String>) {
    let ours: BTreeMap<u64, &L> = lines.iter().map(|l| (player(l), l)).collect();
    let rows = section.as_array().expect("a list of players");
    let (mut checked, mut wrong) = (0, Vec::new());
    for row in rows {
        let who = row["name"].as_str().unwrap_or("?");
        match ours.get(&row["player"].as_u64().expect("a player's number")) {
            Some(line) => {
                let (n, differs) = differences(who, row, line, names);
                checked += n;
                wrong.extend(differs);
            }
            None => wrong.push(format!("{who} has no line")),
        }
    }
    for stranger in ours.keys().filter(|id| !rows.iter().any(|row| row["player"].as_u64() == Some(**id))) {
        wrong.push(format!("player {stranger} has a line here and none on paper"));
    }
    (checked, wrong)
}

#[test]
fn every_entry_is_accepted_and_the_game_ends_on_its_last_hit() {
    let game = game();
    assert_eq!(game.situation().phase, Phase::Over(Ending::Played));
    assert_eq!(game.situation().score, [6, 7]);
    assert_eq!(game.conflicts().count(), 0);
}

#[test]
fn line_score_is_the_papers() {
    let (game, paper) = (game(), paper());
    let line = game.line_score();
    for side in Side::BOTH {
        let (ours, theirs) = (line.side(side), &paper["line_score"][side.to_string()]);
        let innings = serde_json::to_value(&ours.innings).expect("innings are JSON");
        assert_eq!(innings, theirs["innings"], "{side}");
        let ours = [u32::from(ours.runs), ours.hits, ours.errors, ours.left_on_base];
        let theirs = ["r", "h", "e", "lob"].map(|k| theirs[k].as_u64().expect("a number"));
        assert_eq!(ours.map(u64::from), theirs, "{side}: runs, hits, errors, left on base");
    }
}

#[test]
fn every_players_line_is_the_papers() {
    let (game, paper) = (game(), paper());
    let (mut checked, mut wrong) = (0, Vec::new());
    for side in Side::BOTH {
        let key = side.to_string();
        for (n, differs) in [
            compare(
                &paper["batting"][&key]["players"],
                &game.batting(side),
                |l| u64::from(l.player.map_or(0, |p| p.0)),
                BATTING,
            ),
            compare(
                &paper["pitching"][&key]["pitchers"],
                &game.pitching(side),
                |l| u64::from(l.player.map_or(0, |p| p.0)),
                PITCHING,
            ),
            compare(
                &paper["fielding"][&key]["players"],
                &game.fielding(side),
                |l| u64::from(l.player.map_or(0, |p| p.0)),
                FIELDING,
            ),
        ] {
            checked += n;
            wrong.extend(differs);
        }
    }
    assert!(checked > 600, "only {checked} numbers compared");
    assert!(wrong.is_empty(), "{} of {checked} differ:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn totals_and_team_earned_runs_are_the_papers() {
    let (game, paper) = (game(), paper());
    let book = game.box_score();
    let mut wrong = Vec::new();
    for side in Side::BOTH {
        let key = side.to_string();
        let ours = book.side(side);
        wrong.extend(differences(&key, &paper["batting"][&key]["totals"], &ours.batting_total, BATTING).1);
        let pitching: Vec<_> = PITCHING.iter().filter(|(k, _)| *k != "earned_runs").copied().collect();
        wrong.extend(differences(&key, &paper["pitching"][&key]["totals"], &ours.pitching_total, &pitching).1);
        // The paper's total of double plays counts plays, the crate's participations.
        wrong.extend(differences(&key, &paper["fielding"][&key]["totals"], &ours.fielding_total, &FIELDING[..3]).1);
        // The paper lists earned runs under the side that scored them.
        let scored_by = side.other().to_string();
        let team = paper["earned_runs"][&scored_by]["side_total"].as_u64();
        assert_eq!(Some(u64::from(ours.pitching_total.earned_runs)), team, "earned runs against the {side}");
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn both_box_scores_prove_as_on_paper() {
    let (game, paper) = (game(), paper());
    let book = game.box_score();
    for (side, proof) in Side::BOTH.into_iter().zip(book.prove()) {
        let theirs = &paper["proof"][side.to_string()];
        assert_eq!(Some(u64::from(proof.came_up())), theirs["left_side"].as_u64(), "{side}: came up");
        assert_eq!(Some(u64::from(proof.accounted_for())), theirs["right_side"].as_u64(), "{side}: accounted for");
        assert_eq!(Some(u64::from(proof.opponents_putouts)), theirs["opponents_putouts"].as_u64(), "{side}");
        assert!(proof.balances());
    }
}

#[test]
fn decisions_are_the_papers() {
    let (game, paper) = (game(), paper());
    let mut ours: Vec<(String, String)> = Side::BOTH
        .into_iter()
        .flat_map(|side| game.pitching(side))
        .filter_map(|line| Some((line.decision?, line.name)))
        .collect();
    ours.sort();
    let name = |key: &str| paper["decisions"][key]["name"].as_str().expect("a name").to_owned();
    assert_eq!(ours, [("L".to_owned(), name("loser")), ("W".to_owned(), name("winner"))]);
    assert!(paper["decisions"]["save"].is_null());
}

#[test]
fn a_season_of_one_game_is_that_game() {
    let game = game();
    let mut season = Season::new();
    season.add(&game);
    let otters = &season.teams["Millrace Otters"];
    assert_eq!((otters.games, otters.won, otters.lost, otters.runs, otters.runs_allowed), (1, 0, 1, 6, 7));
    let lanterns = &season.teams["Pier Nine Lanterns"];
    assert_eq!((lanterns.won, lanterns.lost), (1, 0));
    let hits: u32 = lanterns.players.values().map(|p| p.batting.hits).sum();
    assert_eq!(hits, game.line_score().side(Side::Home).hits);
    let winner = lanterns.players.values().find(|p| p.pitching.wins == 1).expect("somebody won");
    assert_eq!((winner.name.as_str(), winner.pitching.games, winner.pitching.starts), ("Nadia Corvane", 1, 0));
    assert_eq!(winner.workload["2026-06-13"], DayOfPitches { pitches: 14, incomplete: false });
    // Over two games of the same line the average stays what it is.
    let before = winner.pitching.earned_run_average().to_string();
    season.add(&game);
    let winner = season.teams["Pier Nine Lanterns"].players.values().find(|p| p.pitching.wins == 2).expect("twice");
    assert_eq!(winner.pitching.earned_run_average().to_string(), before);
    assert_eq!(winner.workload["2026-06-13"], DayOfPitches { pitches: 28, incomplete: false });
}
