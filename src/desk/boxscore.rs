//! The box score as a newspaper prints it: line score, batters, pitchers, and what is told below them.

use std::io::{self, Write};

use benchbook_stats::field::{Half, Side};
use benchbook_stats::game::{Ending, Game, Phase};
use benchbook_stats::lines::{BattingLine, BoxScore, FieldingLine, LineScore, PitchingLine, Proof, SideBox};

use crate::report::{BAD, GOOD};
use crate::table::Table;
use crate::text::{fit, plain};

/// Who played whom, where and when, and how far the game is.
pub fn heading(game: &Game, out: &mut impl Write) -> io::Result<()> {
    let heading = game.heading();
    let date = heading.date.map(|date| date.to_string()).unwrap_or_default();
    let told = [&heading.competition, &date, &heading.start, &heading.place];
    let told: Vec<String> =
        told.into_iter().filter(|word| !word.is_empty()).map(|word| fit(&plain(word), 60)).collect();
    let team = |side| fit(&plain(game.team_name(side)), 60);
    writeln!(out, "{} at {}", team(Side::Visitors), team(Side::Home))?;
    if !told.is_empty() {
        writeln!(out, "{}", told.join(", "))?;
    }
    writeln!(out, "{}", state(game))
}

/// How far the game is, in words.
pub fn state(game: &Game) -> String {
    let now = game.situation();
    let half = match now.half {
        Half::Top => "top",
        Half::Bottom => "bottom",
    };
    let where_now = format!("{half} of inning {}, {} out", now.inning, now.outs);
    match now.phase {
        Phase::Before => "Not begun".into(),
        Phase::Underway => format!("In progress: {where_now}"),
        Phase::Delayed => format!("Delayed: {where_now}"),
        Phase::Suspended => format!("Suspended: {where_now}"),
        Phase::Over(Ending::Played) => "Final".into(),
        Phase::Over(Ending::Mercy) => "Final, by the lead the rules of play set".into(),
        Phase::Over(Ending::Declared) => format!("Final, declared over in the {where_now}"),
        Phase::Over(Ending::Called) => format!("Called: {where_now}"),
        Phase::Over(Ending::Forfeited(side)) => format!("Forfeited to {}", fit(&plain(game.team_name(side)), 60)),
    }
}

/// Runs by inning, runs, hits, errors, left on base.
pub fn line_score(score: &LineScore, out: &mut impl Write) -> io::Result<()> {
    let innings = score.sides.iter().map(|side| side.innings.len()).max().unwrap_or(0);
    let numbers: Vec<String> = (1..=innings).map(|inning| inning.to_string()).collect();
    let mut table =
        Table::new(1, [""].into_iter().chain(numbers.iter().map(String::as_str)).chain(["R", "H", "E", "LOB"]));
    for side in &score.sides {
        let inning = |i: usize| match side.innings.get(i) {
            Some(Some(runs)) => runs.to_string(),
            Some(None) => "x".into(),
            None => String::new(),
        };
        let totals =
            [side.runs.to_string(), side.hits.to_string(), side.errors.to_string(), side.left_on_base.to_string()];
        table.row([side.team.clone()].into_iter().chain((0..innings).map(inning)).chain(totals));
    }
    table.print(out)
}

/// One side's batters as a box score lists them.
pub fn batting(side: &SideBox, out: &mut impl Write) -> io::Result<()> {
    let row = |line: &BattingLine, name: String| {
        let counts = [line.at_bats, line.runs, line.hits, line.runs_batted_in, line.walks, line.strikeouts];
        [name, line.posts.to_string()].into_iter().chain(counts.map(|n| n.to_string()))
    };
    let team = format!("{} batting", fit(&plain(&side.team), 22));
    let mut table = Table::new(2, [team.as_str(), "", "AB", "R", "H", "BI", "BB", "SO"]);
    let mut place = None;
    for line in &side.batting {
        // Those who came in stand under the one whose place they took.
        let came_in = line.place.is_some() && line.place == place;
        table.row(row(line, format!("{}{}", if came_in { "  " } else { "" }, line.name)));
        place = line.place;
    }
    table.total(row(&side.batting_total, "Totals".into()));
    table.print(out)?;
    let of = |what: fn(&BattingLine) -> u32| side.batting.iter().map(move |l| (l.name.as_str(), what(l)));
    told("2B", of(|l| l.doubles), out)?;
    told("3B", of(|l| l.triples), out)?;
    told("HR", of(|l| l.home_runs), out)?;
    told("SH", of(|l| l.sacrifice_hits), out)?;
    told("SF", of(|l| l.sacrifice_flies), out)?;
    told("HBP", of(|l| l.hit_by_pitch), out)?;
    told("SB", of(|l| l.stolen_bases), out)?;
    told("CS", of(|l| l.caught_stealing), out)?;
    told("GDP", of(|l| l.grounded_into_double_plays), out)?;
    told("E", side.fielding.iter().map(|l: &FieldingLine| (l.name.as_str(), l.errors)), out)?;
    told("PB", side.fielding.iter().map(|l: &FieldingLine| (l.name.as_str(), l.passed_balls)), out)
}

/// One side's pitchers.
pub fn pitching(side: &SideBox, out: &mut impl Write) -> io::Result<()> {
    let row = |line: &PitchingLine, name: String| {
        let counts =
            [line.hits, line.runs, line.earned_runs, line.walks, line.strikeouts, line.home_runs, line.batters_faced];
        let at_least = if line.pitches_incomplete { "+" } else { "" };
        let pitches = format!("{}{at_least}-{}", line.pitches, line.strikes);
        [name, line.innings().to_string()].into_iter().chain(counts.map(|n| n.to_string())).chain([pitches])
    };
    let team = format!("{} pitching", fit(&plain(&side.team), 22));
    let mut table = Table::new(1, [team.as_str(), "IP", "H", "R", "ER", "BB", "SO", "HR", "BF", "P-S"]);
    for line in &side.pitching {
        let decision = line.decision.as_ref().map(|d| format!(" ({d})")).unwrap_or_default();
        table.row(row(line, format!("{}{decision}", fit(&plain(&line.name), 26))));
    }
    table.total(row(&side.pitching_total, "Totals".into()));
    table.print(out)?;
    let of = |what: fn(&PitchingLine) -> u32| side.pitching.iter().map(move |l| (l.name.as_str(), what(l)));
    told("IBB", of(|l| l.intentional_walks), out)?;
    told("HB", of(|l| l.hit_batters), out)?;
    told("WP", of(|l| l.wild_pitches), out)?;
    told("BK", of(|l| l.balks), out)?;
    if side.pitching.iter().map(|l| l.earned_runs).sum::<u32>() != side.pitching_total.earned_runs {
        writeln!(out, "  The side's earned runs differ from its pitchers' (OBR 9.16(i)).")?;
    }
    Ok(())
}

/// "2B: Okonjo, Abara 2": those with any.
fn told<'a>(what: &str, counts: impl Iterator<Item = (&'a str, u32)>, out: &mut impl Write) -> io::Result<()> {
    let names: Vec<String> = counts
        .filter(|(_, count)| *count > 0)
        .map(|(name, count)| {
            let name = fit(&plain(name), 32);
            if count == 1 { name } else { format!("{name} {count}") }
        })
        .collect();
    if names.is_empty() { Ok(()) } else { writeln!(out, "  {what}: {}", names.join(", ")) }
}

/// The proof of both sides (OBR 9.03(c)), with its sum; true if both balance.
pub fn proof(score: &BoxScore, out: &mut impl Write) -> io::Result<bool> {
    writeln!(out, "Proof of the box score (OBR 9.03(c))")?;
    let mut proves = true;
    for side in &score.sides {
        let proof = side.proof;
        proves &= proof.balances();
        let team = fit(&plain(&side.team), 32);
        write!(out, "  {team}: {} = {} ", came_up(&proof), proof.came_up())?;
        let became = format!(
            "{} R + {} LOB + {} PO = {}",
            proof.runs,
            proof.left_on_base,
            proof.opponents_putouts,
            proof.accounted_for()
        );
        if proof.balances() {
            writeln!(out, "and {became}: {GOOD}proves{GOOD:#}")?;
        } else {
            let (more, fewer) =
                (proof.came_up().max(proof.accounted_for()), proof.came_up().min(proof.accounted_for()));
            let short = if proof.came_up() > proof.accounted_for() { "not accounted for" } else { "too many" };
            writeln!(out, "but {became}: {BAD}does not prove{BAD:#} ({} {short})", more - fewer)?;
        }
    }
    Ok(proves)
}

/// The left side of the balance; what there is none of is left out, but for at bats.
fn came_up(proof: &Proof) -> String {
    let parts = [
        (proof.walks, "BB"),
        (proof.hit_by_pitch, "HBP"),
        (proof.sacrifices, "SH and SF"),
        (proof.interference, "awarded first"),
        (proof.placed_runners, "placed by rule"),
    ];
    let there_are = parts.into_iter().filter(|(count, _)| *count > 0).map(|(count, what)| format!("{count} {what}"));
    [format!("{} AB", proof.at_bats)].into_iter().chain(there_are).collect::<Vec<_>>().join(" + ")
}
