//! `benchbook season`: many games added up, team by team.

use std::io::{self, Write};
use std::path::PathBuf;
use std::process::ExitCode;

use benchbook_stats::game::Game;
use benchbook_stats::rates::walks_and_hits_per_inning;
use benchbook_stats::season::{PlayerSeason, Season, TeamSeason};

use crate::open;
use crate::report::trouble;
use crate::table::Table;
use crate::text::{escaped, fit, plain};

/// Adds up every file that can be read; exit status 1 if one can't be.
pub fn season(files: &[PathBuf], json: bool, out: &mut impl Write) -> io::Result<ExitCode> {
    let mut games = Vec::new();
    let mut status = ExitCode::SUCCESS;
    for path in files {
        match open::game_file(path) {
            Ok((read, _)) => games.push((read.id, Game::replay(read.log))),
            Err(error) => {
                trouble(&open::explain(path, &error));
                status = ExitCode::FAILURE;
            }
        }
    }
    // Streaks go from day to day; games without a date come first, in the order given.
    games.sort_by_key(|(_, game)| game.heading().date);
    let mut season = Season::new();
    let mut seen: Vec<&str> = Vec::new();
    for (id, game) in &games {
        if seen.contains(&id.as_str()) {
            trouble(&format!("game {} was given twice and is counted once", plain(id)));
            continue;
        }
        seen.push(id);
        season.add(game);
    }
    if json {
        match serde_json::to_string_pretty(&season) {
            Ok(text) => writeln!(out, "{}", escaped(&text))?,
            Err(error) => {
                trouble(&format!("can't write the season: {error}"));
                return Ok(ExitCode::FAILURE);
            }
        }
        return Ok(status);
    }
    for (i, (name, team)) in season.teams.iter().enumerate() {
        if i > 0 {
            writeln!(out)?;
        }
        heading(name, team, out)?;
        batting(team, out)?;
        pitching(team, out)?;
        fielding(team, out)?;
        workload(team, out)?;
    }
    Ok(status)
}

fn heading(name: &str, team: &TeamSeason, out: &mut impl Write) -> io::Result<()> {
    let undecided = if team.undecided > 0 { format!(", {} undecided", team.undecided) } else { String::new() };
    writeln!(
        out,
        "{}: {} won, {} lost{undecided}; {} runs for, {} against",
        fit(&plain(name), 60),
        team.won,
        team.lost,
        team.runs,
        team.runs_allowed
    )
}

fn players<'a>(
    team: &'a TeamSeason,
    took_part: impl Fn(&PlayerSeason) -> bool + 'a,
    most: impl Fn(&PlayerSeason) -> u32,
) -> Vec<&'a PlayerSeason> {
    let mut players: Vec<_> = team.players.values().filter(|p| took_part(p)).collect();
    players.sort_by_key(|p| core::cmp::Reverse(most(p)));
    players
}

fn batting(team: &TeamSeason, out: &mut impl Write) -> io::Result<()> {
    let head =
        ["Batting", "G", "PA", "AB", "R", "H", "2B", "3B", "HR", "RBI", "BB", "SO", "SB", "CS", "AVG", "OBP", "SLG"];
    let mut table = Table::new(1, head);
    for p in players(team, |p| p.batting.plate_appearances > 0, |p| p.batting.plate_appearances) {
        let b = &p.batting;
        let counts = [
            p.games,
            b.plate_appearances,
            b.at_bats,
            b.runs,
            b.hits,
            b.doubles,
            b.triples,
            b.home_runs,
            b.runs_batted_in,
            b.walks,
            b.strikeouts,
            b.stolen_bases,
            b.caught_stealing,
        ];
        let rates = [b.average(), b.on_base(), b.slugging()];
        let cells = counts.iter().map(u32::to_string).chain(rates.iter().map(ToString::to_string));
        table.row([fit(&plain(&p.name), 30)].into_iter().chain(cells));
    }
    writeln!(out)?;
    table.print(out)
}

fn pitching(team: &TeamSeason, out: &mut impl Write) -> io::Result<()> {
    let head = ["Pitching", "G", "GS", "W", "L", "S", "IP", "H", "R", "ER", "BB", "SO", "ERA", "WHIP"];
    let mut table = Table::new(1, head);
    for p in players(team, |p| p.pitching.games > 0, |p| p.pitching.line.outs.0) {
        let (s, l) = (&p.pitching, &p.pitching.line);
        let first = [s.games, s.starts, s.wins, s.losses, s.saves].map(|n| n.to_string());
        let then = [l.hits, l.runs, l.earned_runs, l.walks, l.strikeouts].map(|n| n.to_string());
        let rates = [s.earned_run_average(), walks_and_hits_per_inning(l.walks, l.hits, l.outs)].map(|r| r.to_string());
        let cells = first.into_iter().chain([l.outs.to_string()]).chain(then).chain(rates);
        table.row([fit(&plain(&p.name), 30)].into_iter().chain(cells));
    }
    writeln!(out)?;
    table.print(out)
}

fn fielding(team: &TeamSeason, out: &mut impl Write) -> io::Result<()> {
    let mut table = Table::new(1, ["Fielding", "Inn", "PO", "A", "E", "DP", "PB", "PCT"]);
    let outs = |p: &PlayerSeason| p.played.values().map(|o| o.0).sum::<u32>();
    for p in players(team, |p| !p.played.is_empty(), outs) {
        let f = &p.fielding;
        let innings = p.played.values().copied().sum::<benchbook_stats::field::Outs>();
        let counts = [f.putouts, f.assists, f.errors, f.double_plays, f.passed_balls].map(|n| n.to_string());
        let cells = [innings.to_string()].into_iter().chain(counts).chain([f.average().to_string()]);
        table.row([fit(&plain(&p.name), 30)].into_iter().chain(cells));
    }
    writeln!(out)?;
    table.print(out)
}

/// Pitches by day: what rest is reckoned by. The league's table decides, not this one.
fn workload(team: &TeamSeason, out: &mut impl Write) -> io::Result<()> {
    writeln!(out, "\nPitches by day (your league's limits and medical advice come first)")?;
    for p in players(team, |p| !p.workload.is_empty(), |p| p.workload.values().map(|day| day.pitches).sum()) {
        let days: Vec<String> = p
            .workload
            .iter()
            .map(|(day, thrown)| {
                let day = if day.is_empty() { "no date" } else { day };
                let missed = if thrown.incomplete { " or more (some were not seen)" } else { "" };
                format!("{day} {}{missed}", thrown.pitches)
            })
            .collect();
        writeln!(out, "  {}: {}", fit(&plain(&p.name), 30), plain(&days.join(", ")))?;
    }
    Ok(())
}
