//! A small static server for the built app: on this machine only, and nothing is cached.

use crate::{places, run, system};
use anyhow::{Context, Result, bail};
use clap::Args;
use std::env;
use std::fs::File;
use std::io;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::thread::{self, JoinHandle};
use tiny_http::{Header, Method, Request, Response};

const FIRST_PORT: u16 = 8080;
const PORTS_TRIED: u16 = 20;
const THREADS: usize = 4;

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
    server: Arc<tiny_http::Server>,
    threads: Vec<JoinHandle<()>>,
}

impl Serving {
    /// Serves `folder` under the path `under` until dropped.
    pub fn start(folder: &Path, under: &str, port: u16) -> Result<Self> {
        if !folder.join("index.html").is_file() {
            bail!("{} holds no built app: run `cargo xtask build`", folder.display());
        }
        let server = tiny_http::Server::http(SocketAddr::from((Ipv4Addr::LOCALHOST, port)))
            .map_err(|reason| anyhow::anyhow!("can't listen on port {port}: {reason}"))?;
        let port = server.server_addr().to_ip().context("the server has no port")?.port();
        let under = tidy(under);
        let server = Arc::new(server);
        let threads = (0..THREADS).map(|_| answering(Arc::clone(&server), folder.to_owned(), under.clone())).collect();
        Ok(Self { address: format!("http://localhost:{port}{under}"), server, threads })
    }

    fn wait(mut self) {
        for thread in self.threads.drain(..) {
            let _ = thread.join();
        }
    }
}

impl Drop for Serving {
    fn drop(&mut self) {
        for _ in 0..THREADS {
            self.server.unblock();
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

fn answering(server: Arc<tiny_http::Server>, folder: PathBuf, under: String) -> JoinHandle<()> {
    thread::spawn(move || {
        while let Ok(request) = server.recv() {
            // A browser that went away in the middle is no concern of the next one.
            let _ = answer(request, &folder, &under);
        }
    })
}

fn answer(request: Request, folder: &Path, under: &str) -> io::Result<()> {
    if !matches!(request.method(), Method::Get | Method::Head) {
        return request.respond(Response::from_string("Only GET is answered here\n").with_status_code(405));
    }
    let path = request.url().split(['?', '#']).next().unwrap_or_default();
    let file = locate(path, under)
        .map(|relative| folder.join(relative))
        .and_then(|path| Some((File::open(&path).ok()?, path)));
    match file {
        Some((file, path)) if path.is_file() => {
            let response = Response::from_file(file).with_chunked_threshold(usize::MAX);
            request.respond(with_headers(response, mime(&path)))
        }
        _ => request.respond(Response::from_string("Not found\n").with_status_code(404)),
    }
}

fn with_headers<R: io::Read>(mut response: Response<R>, mime: &str) -> Response<R> {
    for (name, value) in [("Content-Type", mime), ("Cache-Control", "no-store"), ("X-Content-Type-Options", "nosniff")]
    {
        if let Ok(header) = Header::from_bytes(name, value) {
            response.add_header(header);
        }
    }
    response
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
    use std::io::{Read, Write};
    use std::net::TcpStream;

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
    }

    #[test]
    fn a_folder_without_the_app_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        assert!(Serving::start(folder.path(), "/", 0).is_err());
    }
}
