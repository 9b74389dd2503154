//! A small static server for the built app: on this machine only, and nothing is cached.

use crate::{places, run, system};
use anyhow::{Context, Result, bail};
use clap::Args;
use std::env;
use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::Duration;

const FIRST_PORT: u16 = 8080;
const PORTS_TRIED: u16 = 20;
/// Browsers open connections ahead of need; one that says nothing for so long is dropped.
const PATIENCE: Duration = Duration::from_secs(20);
/// No request of a browser has a longer head than this, in bytes.
const LONGEST_HEAD: u64 = 64 * 1024;

#[derive(Args)]
pub struct FolderArgs {
    folder: PathBuf,
    /// Path the folder appears under, such as /some/where/
    #[arg(long, default_value = "/")]
    under: String,
    /// 0 for any free one
    #[arg(long, default_value_t = 0)]
    port: u16,
}

/// A running server; stops when dropped.
pub struct Serving {
    pub address: String,
    socket: SocketAddr,
    stopping: Arc<AtomicBool>,
    listening: Option<JoinHandle<()>>,
}

impl Serving {
    /// Serves `folder` under the path `under` until dropped.
    pub fn start(folder: &Path, under: &str, port: u16) -> Result<Self> {
        if !folder.join("index.html").is_file() {
            bail!("{} holds no built app: run `cargo xtask build`", folder.display());
        }
        let listener = TcpListener::bind(SocketAddr::from((Ipv4Addr::LOCALHOST, port)))
            .with_context(|| format!("can't listen on port {port}"))?;
        let socket = listener.local_addr()?;
        let under = tidy(under);
        let address = format!("http://localhost:{}{under}", socket.port());
        let stopping = Arc::new(AtomicBool::new(false));
        let app = Arc::new(App { folder: folder.to_owned(), under });
        let stop = Arc::clone(&stopping);
        let listening = Some(thread::spawn(move || listen(&listener, &app, &stop)));
        Ok(Self { address, socket, stopping, listening })
    }

    fn wait(mut self) {
        if let Some(thread) = self.listening.take() {
            let _ = thread.join();
        }
    }
}

impl Drop for Serving {
    fn drop(&mut self) {
        self.stopping.store(true, Ordering::SeqCst);
        // Wakes the listener, which then sees that it is to stop.
        let _ = TcpStream::connect(self.socket);
        if let Some(thread) = self.listening.take() {
            let _ = thread.join();
        }
    }
}

/// Serves `dist/` and shows it in a browser.
pub fn app(port: Option<u16>, open: bool) -> Result<()> {
    let serving = match port {
        Some(port) => Serving::start(&places::dist(), "/", port)?,
        None => (FIRST_PORT..FIRST_PORT + PORTS_TRIED)
            .find_map(|port| Serving::start(&places::dist(), "/", port).ok())
            .with_context(|| format!("no free port from {FIRST_PORT} on: name one with --port"))?,
    };
    run::say(&format!("Benchbook is at {}", serving.address));
    run::say("Ctrl-C stops it");
    if open {
        open_browser(&serving.address);
    }
    serving.wait();
    Ok(())
}

/// Serves any folder, for the browser tests; the address is the only line printed.
pub fn folder(args: &FolderArgs) -> Result<()> {
    let serving = Serving::start(&args.folder, &args.under, args.port)?;
    println!("{}", serving.address);
    serving.wait();
    Ok(())
}

fn open_browser(address: &str) {
    if env::var_os("CI").is_some() {
        return;
    }
    let mut command = if cfg!(target_os = "macos") {
        Command::new("open")
    } else if cfg!(windows) {
        let mut command = Command::new("cmd");
        command.args(["/C", "start", ""]);
        command
    } else {
        let screen = env::var_os("DISPLAY").is_some() || env::var_os("WAYLAND_DISPLAY").is_some();
        if !screen || system::on_path("xdg-open").is_none() {
            return;
        }
        Command::new("xdg-open")
    };
    command.arg(address).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    // The address is on the screen already: a browser is a convenience.
    let _ = command.spawn();
}

fn tidy(under: &str) -> String {
    let inner = under.trim_matches('/');
    if inner.is_empty() { "/".to_owned() } else { format!("/{inner}/") }
}

struct App {
    folder: PathBuf,
    under: String,
}

/// A thread a connection and a connection a request: plain, and no browser can hold up another.
fn listen(listener: &TcpListener, app: &Arc<App>, stopping: &AtomicBool) {
    for connection in listener.incoming() {
        if stopping.load(Ordering::SeqCst) {
            return;
        }
        let Ok(connection) = connection else { continue };
        let app = Arc::clone(app);
        thread::spawn(move || {
            // A browser that went away in the middle is no concern of the next one.
            let _ = app.answer(&connection);
        });
    }
}

impl App {
    fn answer(&self, connection: &TcpStream) -> io::Result<()> {
        connection.set_read_timeout(Some(PATIENCE))?;
        connection.set_nodelay(true)?;
        let Some((method, target)) = request(connection)? else { return Ok(()) };
        if method != "GET" && method != "HEAD" {
            return respond(connection, "405 Method Not Allowed", "text/plain", b"Only GET is answered here\n", true);
        }
        let path = target.split(['?', '#']).next().unwrap_or_default();
        let file = locate(path, &self.under).map(|file| self.folder.join(file));
        match file.and_then(|file| Some((fs::read(&file).ok()?, mime(&file)))) {
            Some((content, mime)) => respond(connection, "200 OK", mime, &content, method == "GET"),
            None => respond(connection, "404 Not Found", "text/plain", b"Not found\n", method == "GET"),
        }
    }
}

/// Method and target of the request, whose head is read to its end.
fn request(connection: &TcpStream) -> io::Result<Option<(String, String)>> {
    let mut lines = BufReader::new(connection.take(LONGEST_HEAD)).lines();
    let Some(first) = lines.next().transpose()? else { return Ok(None) };
    for line in lines {
        if line?.is_empty() {
            let mut words = first.split(' ').map(str::to_owned);
            return Ok(words.next().zip(words.next()));
        }
    }
    Ok(None)
}

fn respond(mut connection: &TcpStream, status: &str, mime: &str, content: &[u8], body: bool) -> io::Result<()> {
    let length = content.len();
    let mut answer = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {mime}\r\nContent-Length: {length}\r\nCache-Control: no-store\r\n\
         X-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n"
    )
    .into_bytes();
    if body {
        answer.extend_from_slice(content);
    }
    connection.write_all(&answer)
}

/// The file a request names, relative to the folder; `None` for anything outside it.
fn locate(path: &str, under: &str) -> Option<PathBuf> {
    let relative = path.strip_prefix(under)?;
    let mut file = PathBuf::new();
    for part in decoded(relative)?.split('/') {
        match part {
            "" | "." => {}
            ".." => return None,
            part if part.contains(['\\', ':', '\0']) => return None,
            part => file.push(part),
        }
    }
    if relative.is_empty() || relative.ends_with('/') {
        file.push("index.html");
    }
    Some(file)
}

/// Undoes percent-encoding.
fn decoded(path: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(path.len());
    let mut rest = path.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let digits = [rest.next()?, rest.next()?];
            bytes.push(u8::from_str_radix(str::from_utf8(&digits).ok()?, 16).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok()
}

fn mime(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js" | "mjs") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("woff2") => "font/woff2",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn requests_stay_inside_the_folder() {
        for (path, under, file) in [
            ("/", "/", Some("index.html")),
            ("/icons/a%20b.svg", "/", Some("icons/a b.svg")),
            ("/some/where/", "/some/where/", Some("index.html")),
            ("/some/where/pad.wasm", "/some/where/", Some("pad.wasm")),
            ("/elsewhere/pad.wasm", "/some/where/", None),
            ("/../secret", "/", None),
            ("/%2e%2e/secret", "/", None),
            ("/a/..%2f..%2fsecret", "/", None),
            ("/c:%5csecret", "/", None),
            ("/%zz", "/", None),
        ] {
            assert_eq!(locate(path, under), file.map(PathBuf::from), "{path} under {under}");
        }
    }

    #[test]
    fn under_is_written_with_a_slash_at_both_ends() {
        assert_eq!(tidy(""), "/");
        assert_eq!(tidy("some/where"), "/some/where/");
        assert_eq!(tidy("/some/where/"), "/some/where/");
    }

    #[test]
    fn wasm_is_served_as_wasm_and_not_cached() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("index.html"), "page").unwrap();
        std::fs::write(folder.path().join("pad.wasm"), b"\0asm").unwrap();
        let serving = Serving::start(folder.path(), "/x/", 0).unwrap();
        let port: u16 = serving.address.trim_end_matches("/x/").rsplit(':').next().unwrap().parse().unwrap();
        let ask = |path: &str| {
            let mut stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
            write!(stream, "GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n").unwrap();
            let mut answer = Vec::new();
            stream.read_to_end(&mut answer).unwrap();
            String::from_utf8_lossy(&answer).into_owned()
        };
        let wasm = ask("/x/pad.wasm?v=1");
        assert!(wasm.starts_with("HTTP/1.1 200"), "{wasm}");
        assert!(wasm.contains("Content-Type: application/wasm"), "{wasm}");
        assert!(wasm.contains("Cache-Control: no-store"), "{wasm}");
        assert!(wasm.ends_with("\0asm"), "{wasm}");
        assert!(ask("/x/").ends_with("page"));
        assert!(ask("/pad.wasm").starts_with("HTTP/1.1 404"));
        assert!(ask("/x/absent").starts_with("HTTP/1.1 404"));
        let address = ("127.0.0.1", port);
        drop(serving);
        assert!(TcpStream::connect(address).is_err(), "it still answers after it was stopped");
    }

    #[test]
    fn silent_connections_hold_nobody_up() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("index.html"), "page").unwrap();
        let serving = Serving::start(folder.path(), "/", 0).unwrap();
        let silent: Vec<_> = (0..50).map(|_| TcpStream::connect(serving.socket).unwrap()).collect();
        for _ in 0..50 {
            let mut stream = TcpStream::connect(serving.socket).unwrap();
            stream.set_read_timeout(Some(Duration::from_secs(5))).unwrap();
            write!(stream, "GET / HTTP/1.1\r\n\r\n").unwrap();
            let mut answer = String::new();
            stream.read_to_string(&mut answer).unwrap();
            assert!(answer.ends_with("\r\n\r\npage"));
        }
        drop(silent);
    }

    #[test]
    fn a_folder_without_the_app_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        assert!(Serving::start(folder.path(), "/", 0).is_err());
    }
}
