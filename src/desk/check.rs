//! `benchbook check`: the book of each file, and whether it proves.

use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use benchbook_stats::file;
use benchbook_stats::game::Game;

use crate::report::{BAD, GOOD, trouble};
use crate::text::plain;
use crate::{boxscore, open};

/// Checks every file, and tells of each all that is wrong with it.
pub fn check(files: &[PathBuf], out: &mut impl Write) -> io::Result<ExitCode> {
    let mut sound = 0;
    for (i, path) in files.iter().enumerate() {
        if i > 0 {
            writeln!(out)?;
        }
        sound += usize::from(check_one(path, out)?);
    }
    if files.len() > 1 {
        writeln!(out, "\n{sound} of {} files are sound.", files.len())?;
    }
    Ok(if sound == files.len() { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

fn check_one(path: &Path, out: &mut impl Write) -> io::Result<bool> {
    let name = plain(&open::name(path));
    let (game_file, bytes) = match open::game_file(path) {
        Ok(read) => read,
        Err(error) => {
            out.flush()?;
            trouble(&open::explain(path, &error));
            return Ok(false);
        }
    };
    let game = Game::replay(game_file.log);
    writeln!(out, "{name}")?;
    boxscore::heading(&game, out)?;
    writeln!(out)?;
    boxscore::line_score(&game.line_score(), out)?;
    let score = game.box_score();
    for side in &score.sides {
        writeln!(out)?;
        boxscore::batting(side, out)?;
    }
    for side in &score.sides {
        writeln!(out)?;
        boxscore::pitching(side, out)?;
    }
    writeln!(out)?;
    let proves = boxscore::proof(&score, out)?;

    let conflicts: Vec<_> = game.conflicts().collect();
    for (entry, reason) in &conflicts {
        let number = game.log().iter().position(|e| e.id == *entry).map(|at| at + 1);
        let line = number.and_then(|number| file::entry_line(&String::from_utf8_lossy(&bytes), number));
        let line = line.map(|line| format!("line {line}: ")).unwrap_or_default();
        out.flush()?;
        trouble(&format!("{name}: {line}entry {} doesn't fit the game: {reason}", entry.0));
    }
    let sound = proves && conflicts.is_empty();
    match (sound, proves) {
        (true, _) => writeln!(out, "{name}: {GOOD}sound{GOOD:#}")?,
        (false, true) => writeln!(out, "{name}: {BAD}not sound{BAD:#}, entries don't fit")?,
        (false, false) => writeln!(out, "{name}: {BAD}not sound{BAD:#}, the box score doesn't prove")?,
    }
    Ok(sound)
}
