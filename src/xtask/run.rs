//! Runs other programs and says how long everything has taken.

use anyhow::{Context, Result, bail};
use std::io::{BufRead, BufReader, IsTerminal, Read, Write};
use std::process::{Child, Command, ExitStatus, Stdio};
use std::sync::mpsc::{self, RecvTimeoutError, Sender};
use std::sync::{Arc, Mutex, OnceLock};
use std::thread;
use std::time::{Duration, Instant};

static STARTED: OnceLock<Instant> = OnceLock::new();

/// A long step says that it is still alive this often.
const HEARTBEAT: Duration = Duration::from_secs(30);

pub fn start_clock() {
    STARTED.get_or_init(Instant::now);
}

/// Prints one line of progress, with the seconds since the start.
pub fn say(text: &str) {
    let seconds = STARTED.get_or_init(Instant::now).elapsed().as_secs();
    println!("[{seconds:>4} s] {text}");
    // A closed pipe is no reason to stop the work.
    let _ = std::io::stdout().flush();
}

/// What a program printed, and how it ended.
pub struct Outcome {
    pub status: ExitStatus,
    pub text: String,
}

/// Runs a program that prints for itself; fails if it does.
pub fn run(command: &mut Command, doing: &str) -> Result<()> {
    let status = status(command, doing)?;
    if !status.success() {
        bail!("{doing} failed ({status}); what it printed is above");
    }
    Ok(())
}

/// Runs a program that prints for itself.
pub fn status(command: &mut Command, doing: &str) -> Result<ExitStatus> {
    let _alive = Heartbeat::start(doing);
    command.stdin(Stdio::null()).status().with_context(|| not_started(command))
}

/// Runs a program in silence and returns what it printed on standard output, if it succeeded.
pub fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs a program, showing what it prints and keeping it too.
pub fn watched(command: &mut Command, doing: &str) -> Result<Outcome> {
    let _alive = Heartbeat::start(doing);
    if std::io::stderr().is_terminal() {
        command.env("CARGO_TERM_COLOR", "always");
    }
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .with_context(|| not_started(command))?;
    let text = Arc::new(Mutex::new(String::new()));
    let readers = [
        child.stdout.take().map(|pipe| tee(pipe, Arc::clone(&text))),
        child.stderr.take().map(|pipe| tee(pipe, Arc::clone(&text))),
    ];
    let status = child.wait().with_context(|| not_started(command))?;
    for reader in readers.into_iter().flatten() {
        let _ = reader.join();
    }
    let text = text.lock().map(|text| text.clone()).unwrap_or_default();
    Ok(Outcome { status, text: without_colour(&text) })
}

/// Runs a program for at most `limit`; `None` if it had to be ended.
pub fn limited(command: &mut Command, limit: Duration) -> Result<Option<ExitStatus>> {
    let mut child = command.stdin(Stdio::null()).spawn().with_context(|| not_started(command))?;
    let end = Instant::now() + limit;
    loop {
        if let Some(status) = child.try_wait()? {
            return Ok(Some(status));
        }
        if Instant::now() >= end {
            end_child(&mut child);
            return Ok(None);
        }
        thread::sleep(Duration::from_millis(100));
    }
}

fn end_child(child: &mut Child) {
    // Either fails only when the child has just ended by itself.
    let _ = child.kill();
    let _ = child.wait();
}

fn tee(pipe: impl Read + Send + 'static, text: Arc<Mutex<String>>) -> thread::JoinHandle<()> {
    thread::spawn(move || {
        for line in BufReader::new(pipe).split(b'\n').map_while(Result::ok) {
            let line = String::from_utf8_lossy(&line);
            println!("{line}");
            if let Ok(mut text) = text.lock() {
                text.push_str(&line);
                text.push('\n');
            }
        }
    })
}

fn not_started(command: &Command) -> String {
    format!("can't start {}", command.get_program().to_string_lossy())
}

/// Removes terminal colour sequences (`ESC [ ... letter`).
pub fn without_colour(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        if letter == '\u{1b}' && letters.next_if_eq(&'[').is_some() {
            for letter in letters.by_ref() {
                if letter.is_ascii_alphabetic() {
                    break;
                }
            }
        } else {
            plain.push(letter);
        }
    }
    plain
}

/// Says every now and then that a step goes on, until dropped.
struct Heartbeat {
    stop: Option<Sender<()>>,
}

impl Heartbeat {
    fn start(doing: &str) -> Self {
        let (stop, stopped) = mpsc::channel::<()>();
        let doing = doing.to_owned();
        let began = Instant::now();
        thread::spawn(move || {
            while stopped.recv_timeout(HEARTBEAT) == Err(RecvTimeoutError::Timeout) {
                say(&format!("  ... {doing}, {} s so far", began.elapsed().as_secs()));
            }
        });
        Self { stop: Some(stop) }
    }
}

impl Drop for Heartbeat {
    fn drop(&mut self) {
        self.stop.take();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn colours_are_taken_out() {
        assert_eq!(without_colour("\u{1b}[32;1mok\u{1b}[0m 5 [passed]"), "ok 5 [passed]");
    }

    #[test]
    #[cfg(unix)]
    fn a_program_that_hangs_is_ended() {
        let began = Instant::now();
        let ended = limited(Command::new("sleep").arg("30"), Duration::from_millis(200)).unwrap();
        assert!(ended.is_none());
        assert!(began.elapsed() < Duration::from_secs(10));
    }

    #[test]
    fn a_program_that_is_not_there_is_named() {
        let failure = status(&mut Command::new("no-such-program-here"), "trying").unwrap_err();
        assert!(failure.to_string().contains("no-such-program-here"));
    }
}
