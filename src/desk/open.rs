//! Opens a game file from a path or from standard input.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use benchbook_stats::file::{self, FileError, GameFile, MAX_BYTES};

/// Why nothing was read.
#[derive(Debug, thiserror::Error)]
pub enum Unopened {
    /// The system gave no bytes.
    #[error("can't read it: {0}")]
    Io(#[from] io::Error),
    /// The bytes are no sound game file.
    #[error("{0}")]
    File(#[from] FileError),
}

/// Its bytes, unless there are too many.
pub fn bytes(path: &Path) -> Result<Vec<u8>, Unopened> {
    let mut bytes = Vec::new();
    let limit = MAX_BYTES as u64;
    if path == Path::new("-") {
        io::stdin().lock().take(limit + 1).read_to_end(&mut bytes)?;
    } else {
        let file = File::open(path)?;
        let told = file.metadata()?;
        if told.is_dir() {
            return Err(io::Error::new(io::ErrorKind::IsADirectory, "it is a folder").into());
        }
        if told.len() > limit {
            return Err(FileError::TooLarge { bytes: told.len() }.into());
        }
        file.take(limit + 1).read_to_end(&mut bytes)?;
    }
    if bytes.len() > MAX_BYTES {
        return Err(FileError::TooLarge { bytes: bytes.len() as u64 }.into());
    }
    Ok(bytes)
}

/// The game in it, with its bytes.
pub fn game_file(path: &Path) -> Result<(GameFile, Vec<u8>), Unopened> {
    let bytes = bytes(path)?;
    Ok((file::read_bytes(&bytes)?, bytes))
}

/// What to call it in a message.
pub fn name(path: &Path) -> String {
    if path == Path::new("-") { "standard input".into() } else { path.display().to_string() }
}

/// The whole message: which file, what is wrong, and what can be done.
pub fn explain(path: &Path, error: &Unopened) -> String {
    let name = name(path);
    match error {
        Unopened::File(file) if file.can_salvage() => {
            let told = path.display();
            format!("{name}: {error}. `benchbook salvage {told} NEW` saves the entries that are whole into a new file")
        }
        _ => format!("{name}: {error}"),
    }
}
