//! `cargo xtask test`: every check in order, and one closing line with the totals.

use crate::others::Others;
use crate::serve::Serving;
use crate::totals::Totals;
use crate::wasm_target::{Compiler, TRIPLE};
use crate::{browser, bundle, node, open_data, places, run, system};
use anyhow::{Context, Result, bail};
use clap::{Args, ValueEnum};
use std::env;
use std::fs;
use std::path::PathBuf;
use std::process::{Command, ExitCode};
use std::time::Instant;

const PAD: &str = "benchbook-pad";
const STATS: [&str; 4] = ["-p", "benchbook-stats", "-p", "benchbook-tests"];

#[derive(Args)]
pub struct TestArgs {
    /// Run only this part (may be given more than once)
    #[arg(long, value_enum)]
    only: Vec<Part>,
    /// Browsers to test in
    #[arg(long, value_enum, default_value_t = Browsers::Chromium)]
    browsers: Browsers,
    /// Test the app in dist/ as it was built last
    #[arg(long)]
    as_built: bool,
    /// Passed on to the browser tests, such as a file name or `--grep WORD`
    #[arg(last = true)]
    browser_arguments: Vec<String>,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Part {
    /// Formatting
    Format,
    /// Clippy
    Lint,
    /// Tests of the stats crate and those against published sources
    Stats,
    /// All Rust tests
    Rust,
    /// The release build of the app
    Build,
    /// Tests of the built app in browsers
    Browser,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Browsers {
    Chromium,
    /// A whole game in `Firefox` and in `WebKit` too
    All,
}

impl TestArgs {
    fn wants(&self, part: Part) -> bool {
        self.only.is_empty() || self.only.contains(&part)
    }

    fn wants_build(&self) -> bool {
        !self.as_built && (self.wants(Part::Build) || self.wants(Part::Browser))
    }
}

/// Runs what was asked for; the code is a failure if anything failed.
pub fn all(args: &TestArgs) -> ExitCode {
    let mut report = Report::default();
    if args.wants(Part::Format) {
        report.check("Formatting", "run `cargo fmt --all`", format);
    }
    if args.wants(Part::Lint) {
        report.check("Clippy on what runs here", "mend what clippy names above", lint_host);
        report.check("Clippy on the app", "mend what clippy names above", lint_pad);
    }
    if args.wants(Part::Rust) {
        report.check("Rust tests", "the names of the failing tests are above", || rust_tests(&["--workspace"]));
        report.check("Examples in the documentation", "the failing examples are above", doc_tests);
    } else if args.wants(Part::Stats) {
        report.check("Tests of the stats crate", "the names of the failing tests are above", || rust_tests(&STATS));
    }
    let mut built = true;
    if args.wants_build() {
        built = report.check("Release build of the app", "the compiler's or Trunk's reason is above", || {
            bundle::build(bundle::ANY_PATH).map(|()| Totals::ONE_PASSED)
        });
    }
    if args.wants(Part::Browser) {
        if built {
            report.check("Types of the browser tests", "mend what the compiler names above", types);
            report.check("Browser tests", "the failing tests are above, pictures in e2e/.out", || browser_tests(args));
        } else {
            report.failures.push("Browser tests: not run, as there is no app to test".to_owned());
        }
    }
    report.close()
}

#[derive(Default)]
struct Report {
    totals: Totals,
    failures: Vec<String>,
}

impl Report {
    fn check(&mut self, name: &str, remedy: &str, work: impl FnOnce() -> Result<Totals>) -> bool {
        run::say(&format!("{name} ..."));
        let began = Instant::now();
        let (totals, reason) = match work() {
            Ok(totals) if totals.failed == 0 => (totals, None),
            Ok(totals) if totals.ran() == 1 => (totals, Some(remedy.to_owned())),
            Ok(totals) => (totals, Some(format!("{} of {} failed; {remedy}", totals.failed, totals.ran()))),
            Err(reason) => (Totals::ONE_FAILED, Some(format!("{reason:#}; {remedy}"))),
        };
        self.totals += totals;
        let seconds = began.elapsed().as_secs();
        let passed = reason.is_none();
        if let Some(reason) = reason {
            run::say(&format!("{name}: FAILED after {seconds} s"));
            self.failures.push(format!("{name}: {reason}"));
        } else {
            // Not the form of the closing line, which must be the only one of its kind.
            run::say(&format!("{name}: all {} well after {seconds} s", totals.ran()));
        }
        passed
    }

    fn close(&self) -> ExitCode {
        if !self.failures.is_empty() {
            println!("\nWhat failed:");
            for failure in &self.failures {
                println!("- {failure}");
            }
        }
        run::say("Done");
        println!("\n{}", self.totals);
        if self.failures.is_empty() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
    }
}

fn cargo(arguments: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.args(arguments).current_dir(places::root());
    command
}

fn one(command: &mut Command, doing: &str) -> Result<Totals> {
    let status = run::status(command, doing)?;
    Ok(if status.success() { Totals::ONE_PASSED } else { Totals::ONE_FAILED })
}

fn format() -> Result<Totals> {
    one(&mut cargo(&["fmt", "--all", "--check"]), "Checking the formatting")
}

fn lint_host() -> Result<Totals> {
    let mut command =
        cargo(&["clippy", "--workspace", "--exclude", PAD, "--all-targets", "--quiet", "--", "-D", "warnings"]);
    one(&mut command, "Running clippy")
}

fn lint_pad() -> Result<Totals> {
    let compiler = Compiler::ready()?;
    // Debian's compiler comes without clippy; the code of the app also compiles for this machine.
    let target: &[&str] = if compiler.has_clippy() { &["--target", TRIPLE] } else { &[] };
    let mut command = cargo(&["clippy", "-p", PAD, "--quiet"]);
    command.args(target).args(["--", "-D", "warnings"]);
    one(&mut command, "Running clippy on the app")
}

fn rust_tests(packages: &[&str]) -> Result<Totals> {
    open_data::ready()?;
    let has_nextest = run::answer(&mut cargo(&["nextest", "--version"])).is_some();
    let mut command = if has_nextest {
        cargo(&["nextest", "run", "--no-fail-fast", "--no-tests=fail", "--status-level=fail", "--hide-progress-bar"])
    } else {
        cargo(&["test", "--no-fail-fast", "--lib", "--bins", "--tests"])
    };
    let outcome = run::watched(command.args(packages), "Running the Rust tests")?;
    let count = if has_nextest { Totals::of_nextest } else { Totals::of_libtest };
    counted(&outcome, count(&outcome.text))
}

fn doc_tests() -> Result<Totals> {
    let outcome = run::watched(&mut cargo(&["test", "--doc", "--quiet"]), "Running the examples")?;
    counted(&outcome, Totals::of_libtest(&outcome.text))
}

/// Failing without a failed test, such as not compiling, counts as one failure.
fn counted(outcome: &run::Outcome, totals: Totals) -> Result<Totals> {
    if !outcome.status.success() && totals.failed == 0 {
        bail!("it ended before all tests had run ({})", outcome.status);
    }
    Ok(totals)
}

fn types() -> Result<Totals> {
    node::packages()?;
    let mut command = Command::new("node");
    command.arg(node::program("typescript/bin/tsc")).arg("--noEmit").current_dir(places::e2e());
    one(&mut command, "Checking the types of the browser tests")
}

/// The program used at home, built: the browser tests hand it the files they take home.
fn desk() -> Result<PathBuf> {
    run::run(&mut cargo(&["build", "--package", "benchbook", "--quiet"]), "Building the desk")?;
    let program = format!("benchbook{}", env::consts::EXE_SUFFIX);
    // Beside this program: the target folder may be elsewhere.
    Ok(env::current_exe()?.with_file_name(program))
}

fn browser_tests(args: &TestArgs) -> Result<Totals> {
    let others = (args.browsers == Browsers::All).then(Others::ready).transpose()?;
    in_browsers(&args.browser_arguments, |command| {
        if let Some(others) = &others {
            others.tell(command);
        }
    })
}

/// Runs the tests that only measure, and leaves their figures in `e2e/.out/trace.json`.
pub fn browser_figures() -> Result<()> {
    // Figures of an earlier run must not be taken for this one's.
    let _ = fs::remove_file(places::e2e_out().join("trace.json"));
    let arguments = ["specs/speed.spec.ts".to_owned()];
    let totals = in_browsers(&arguments, |command| {
        command.env("BENCHBOOK_FIGURES", "1");
    })?;
    if totals.failed > 0 {
        bail!("{} of the browser's figures could not be measured; the reason is above", totals.failed);
    }
    Ok(())
}

fn in_browsers(arguments: &[String], prepare: impl FnOnce(&mut Command)) -> Result<Totals> {
    node::packages()?;
    let chromium = browser::chromium()?;
    let desk = desk()?;
    let serving = Serving::start(&places::dist(), "/", 0)?;
    let report = places::e2e_out().join("report.json");
    fs::create_dir_all(places::e2e_out())?;
    // Counts of an earlier run must not be taken for this one's.
    let _ = fs::remove_file(&report);

    let mut command = browser::playwright(&["test"]);
    command.args(arguments);
    command.env("BASE_URL", &serving.address).env("BENCHBOOK_CHROMIUM", chromium);
    command.env("BENCHBOOK_DIST", places::dist()).env("BENCHBOOK_XTASK", places::own_copy());
    command.env("BENCHBOOK_REPORT", &report).env("BENCHBOOK_DESK", desk);
    prepare(&mut command);
    if system::is_root() {
        command.env("BENCHBOOK_ROOT", "1");
    }
    let status = run::status(&mut command, "Running the browser tests")?;
    let text = fs::read_to_string(&report).context("the browser tests left no report")?;
    let totals = Totals::of_playwright(&text)?;
    if !status.success() && totals.failed == 0 {
        bail!("the browser tests ended before all had run ({status})");
    }
    if totals.ran() == 0 {
        bail!("no browser test ran");
    }
    Ok(totals)
}
