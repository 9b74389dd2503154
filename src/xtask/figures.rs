//! The table of figures in DEVELOPERS.md: sizes, benchmarks and times in the browser, with the machine.

use crate::measure::{self, Size};
use crate::{bundle, check, places, run};
use anyhow::{Context, Result, bail};
use serde_json::Value;
use std::fmt::Write;
use std::fs;
use std::path::Path;
use std::process::Command;

const BEGIN: &str = "<!-- figures: written by `cargo xtask figures` -->";
const END: &str = "<!-- figures end -->";

/// Measures and writes the table between its marks.
pub fn write(as_measured: bool) -> Result<()> {
    bundle::build(bundle::ANY_PATH)?;
    if !as_measured {
        run_benchmarks()?;
        check::browser_figures()?;
    }

    let mut rows = sizes()?;
    rows.extend(benchmarks(&places::root().join("target/criterion"))?);
    rows.extend(browser(&places::e2e_out().join("trace.json"))?);
    let table = table(&rows, &measure::machine());

    let guide = places::root().join("DEVELOPERS.md");
    let text = fs::read_to_string(&guide).context("DEVELOPERS.md can't be read")?;
    fs::write(&guide, replaced(&text, &table)?)?;
    print!("{table}");
    run::say("The table in DEVELOPERS.md is up to date");
    Ok(())
}

fn run_benchmarks() -> Result<()> {
    run::say("Running the benchmarks");
    let mut bench = Command::new("cargo");
    run::run(
        bench.args(["bench", "--workspace", "--exclude", "benchbook-pad", "--benches"]).current_dir(places::root()),
        "Running the benchmarks",
    )
}

type Row = (String, String);

fn sizes() -> Result<Vec<Row>> {
    let (wasm, total) = measure::sizes(&places::dist())?;
    let row = |name: &str, size: Size| {
        let kb = |bytes: u64| format!("{}.{} KB", bytes / 1000, bytes % 1000 / 100);
        let value = format!("{} gzip, {} brotli ({} as it is)", kb(size.gzip), kb(size.brotli), kb(size.plain));
        (name.to_owned(), value)
    };
    Ok(vec![row("wasm", wasm), row("Whole app, first visit", total)])
}

/// One row a benchmark: Criterion's median estimate.
fn benchmarks(folder: &Path) -> Result<Vec<Row>> {
    let mut rows = Vec::new();
    estimates(folder, folder, &mut rows)?;
    rows.sort();
    Ok(rows)
}

fn estimates(root: &Path, folder: &Path, rows: &mut Vec<Row>) -> Result<()> {
    let Ok(entries) = fs::read_dir(folder) else { return Ok(()) };
    for entry in entries.flatten().filter(|entry| entry.path().is_dir()) {
        let path = entry.path();
        let file = path.join("estimates.json");
        if path.ends_with("new") && file.is_file() {
            let estimates: Value = serde_json::from_str(&fs::read_to_string(&file)?)?;
            let median = estimates.pointer("/median/point_estimate").and_then(Value::as_f64);
            let nanoseconds = median.with_context(|| format!("{} holds no median", file.display()))?;
            let name = folder.strip_prefix(root).unwrap_or(folder).to_string_lossy().replace('_', " ");
            rows.push((name, time(nanoseconds)));
        } else {
            estimates_below(root, &path, rows)?;
        }
    }
    Ok(())
}

fn estimates_below(root: &Path, folder: &Path, rows: &mut Vec<Row>) -> Result<()> {
    // `base` holds the run before; `report` holds pictures.
    if folder.ends_with("base") || folder.ends_with("report") {
        return Ok(());
    }
    estimates(root, folder, rows)
}

/// The rows a browser test left: an object of `"what": "value with unit"`.
fn browser(file: &Path) -> Result<Vec<Row>> {
    let Ok(text) = fs::read_to_string(file) else {
        run::say("No times from the browser: without --as-measured they are included");
        return Ok(Vec::new());
    };
    let figures: Value = serde_json::from_str(&text).with_context(|| format!("{} is not JSON", file.display()))?;
    let figures = figures.as_object().with_context(|| format!("{} is not an object", file.display()))?;
    Ok(figures
        .iter()
        .map(|(name, value)| (name.clone(), value.as_str().map_or(value.to_string(), str::to_owned)))
        .collect())
}

fn time(nanoseconds: f64) -> String {
    match nanoseconds {
        n if n < 1e3 => format!("{n:.0} ns"),
        n if n < 1e6 => format!("{:.1} µs", n / 1e3),
        n if n < 1e9 => format!("{:.1} ms", n / 1e6),
        n => format!("{:.1} s", n / 1e9),
    }
}

fn table(rows: &[Row], machine: &str) -> String {
    let mut table = format!("Measured on {machine}.\n\n| what | figure |\n| --- | --- |\n");
    for (what, figure) in rows {
        // Writing to a String can't fail.
        let _ = writeln!(table, "| {what} | {figure} |");
    }
    table
}

fn replaced(text: &str, table: &str) -> Result<String> {
    let Some((before, rest)) = text.split_once(BEGIN) else {
        bail!("DEVELOPERS.md lacks the line {BEGIN}");
    };
    let Some((_, after)) = rest.split_once(END) else {
        bail!("DEVELOPERS.md lacks the line {END}");
    };
    Ok(format!("{before}{BEGIN}\n{table}{END}{after}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_goes_between_its_marks_and_again() {
        let text = format!("# Guide\n\n{BEGIN}\nold\n{END}\n\nmore\n");
        let once = replaced(&text, "new\n").unwrap();
        assert_eq!(once, format!("# Guide\n\n{BEGIN}\nnew\n{END}\n\nmore\n"));
        assert_eq!(replaced(&once, "new\n").unwrap(), once);
        assert!(replaced("# Guide\n", "new\n").is_err());
    }

    #[test]
    fn criterion_medians_become_rows() {
        let folder = tempfile::tempdir().unwrap();
        for (run, median) in
            [("replay/whole_game/new", 1_234_567.0), ("replay/whole_game/base", 9.0), ("one_entry/new", 512.0)]
        {
            fs::create_dir_all(folder.path().join(run)).unwrap();
            let json = format!(r#"{{"median": {{"point_estimate": {median:?}}}}}"#);
            fs::write(folder.path().join(run).join("estimates.json"), json).unwrap();
        }
        let rows = benchmarks(folder.path()).unwrap();
        let expected = [("one entry", "512 ns"), ("replay/whole game", "1.2 ms")];
        assert_eq!(rows, expected.map(|(name, time)| (name.to_owned(), time.to_owned())));
    }

    #[test]
    fn times_carry_a_fitting_unit() {
        assert_eq!(time(999.0), "999 ns");
        assert_eq!(time(15_300.0), "15.3 µs");
        assert_eq!(time(2.5e9), "2.5 s");
    }

    #[test]
    fn rows_of_the_browser_are_taken_as_they_are() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("trace.json");
        fs::write(&file, r#"{"Tap to frame at entry 300": "9.1 ms"}"#).unwrap();
        assert_eq!(browser(&file).unwrap(), [("Tap to frame at entry 300".to_owned(), "9.1 ms".to_owned())]);
        assert_eq!(browser(&folder.path().join("absent")).unwrap(), []);
    }
}
