//! Sizes as a browser would transfer them, and the machine they were measured on.

use anyhow::Result;
use flate2::Compression;
use flate2::write::GzEncoder;
use std::fs;
use std::io::{self, Write};
use std::path::Path;
use std::process::Command;
use std::time::{SystemTime, UNIX_EPOCH};

use crate::{precache, run};

/// Bytes of something, as it is and compressed.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Size {
    pub plain: u64,
    pub gzip: u64,
    pub brotli: u64,
}

impl Size {
    fn of(content: &[u8]) -> Result<Self> {
        let mut gzip = GzEncoder::new(Counter(0), Compression::best());
        gzip.write_all(content)?;
        let gzip = gzip.finish()?.0;
        let mut brotli = Counter(0);
        let parameters = brotli::enc::BrotliEncoderParams::default();
        brotli::BrotliCompress(&mut &*content, &mut brotli, &parameters)?;
        Ok(Self { plain: content.len() as u64, gzip, brotli: brotli.0 })
    }

    fn plus(self, other: Self) -> Self {
        Self { plain: self.plain + other.plain, gzip: self.gzip + other.gzip, brotli: self.brotli + other.brotli }
    }
}

struct Counter(u64);

impl Write for Counter {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.0 += bytes.len() as u64;
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

/// The wasm of a built app, and all of its files together.
pub fn sizes(app: &Path) -> Result<(Size, Size)> {
    let (mut wasm, mut total) = (Size::default(), Size::default());
    let worker = precache::WORKER.to_owned();
    for path in precache::paths(app)?.into_iter().chain([worker]) {
        let size = Size::of(&fs::read(app.join(&path))?)?;
        if Path::new(&path).extension().is_some_and(|extension| extension == "wasm") {
            wasm = wasm.plus(size);
        }
        total = total.plus(size);
    }
    Ok((wasm, total))
}

/// Processor, cores, system and day: figures mean little without them.
pub fn machine() -> String {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let (os, arch) = (std::env::consts::OS, std::env::consts::ARCH);
    format!("{}, {cores} cores, {os} {arch}, {}", processor(), today())
}

fn processor() -> String {
    let linux = fs::read_to_string("/proc/cpuinfo").ok().and_then(|info| {
        let line = info.lines().find(|line| line.starts_with("model name"))?;
        Some(line.split_once(':')?.1.trim().to_owned())
    });
    linux
        .or_else(|| run::answer(Command::new("sysctl").args(["-n", "machdep.cpu.brand_string"])))
        .or_else(|| std::env::var("PROCESSOR_IDENTIFIER").ok())
        .unwrap_or_else(|| "processor unknown".to_owned())
}

fn today() -> String {
    let seconds = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |time| time.as_secs());
    date(seconds / (24 * 60 * 60))
}

/// The day of the Gregorian calendar (UTC) so many days after 1970-01-01.
fn date(mut days: u64) -> String {
    let is_leap = |year: u64| year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    let mut year = 1970;
    while days >= 365 + u64::from(is_leap(year)) {
        days -= 365 + u64::from(is_leap(year));
        year += 1;
    }
    let february = 28 + u64::from(is_leap(year));
    let mut month = 1;
    for length in [31, february, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] {
        if days < length {
            break;
        }
        days -= length;
        month += 1;
    }
    format!("{year}-{month:02}-{:02}", days + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_of_the_calendar() {
        // date -u -d @$((DAYS * 86400)) +%F
        for (days, expected) in [
            (0, "1970-01-01"),
            (59, "1970-03-01"),
            (11_016, "2000-02-29"),
            (19_723, "2024-01-01"),
            (20_819, "2027-01-01"),
        ] {
            assert_eq!(date(days), expected);
        }
    }

    #[test]
    fn compression_is_really_done() {
        let size = Size::of(&b"ball strike foul ".repeat(500)).unwrap();
        assert_eq!(size.plain, 8_500);
        assert!(size.gzip > 20 && size.gzip < 300, "{size:?}");
        assert!(size.brotli > 10 && size.brotli < 300, "{size:?}");
    }

    #[test]
    fn wasm_counts_in_the_total() {
        let folder = tempfile::tempdir().unwrap();
        for (name, length) in [("index.html", 10), ("pad.wasm", 100), ("sw.js", 1)] {
            fs::write(folder.path().join(name), vec![0; length]).unwrap();
        }
        let (wasm, total) = sizes(folder.path()).unwrap();
        assert_eq!((wasm.plain, total.plain), (100, 111));
    }

    #[test]
    fn the_machine_names_its_cores() {
        assert!(machine().contains(" cores, "));
    }
}
