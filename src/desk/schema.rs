//! The JSON Schemas of what goes in and what comes out.

use std::io::{self, Write};
use std::process::ExitCode;

use crate::lines::GameLines;

/// Prints the schema of the game file, or of `benchbook lines --json`.
pub fn schema(lines: bool, out: &mut impl Write) -> io::Result<ExitCode> {
    let schema = if lines { schemars::schema_for!(GameLines) } else { benchbook_stats::file::schema() };
    writeln!(out, "{}", serde_json::to_string_pretty(&schema)?)?;
    Ok(ExitCode::SUCCESS)
}
