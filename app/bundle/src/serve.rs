//! The static server: files of one folder, read at every request, to this machine unless told otherwise.
use crate::request::{self, Refusal, Request};
use crate::{Outcome, at, mime, names};
use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

/// The policy of the page, as in `index.html`, and what only a header can say: no frame may hold the page.
const POLICY: &str = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; media-src 'self' blob:; worker-src 'self'; object-src 'none'; base-uri 'none'; \
    form-action 'none'; frame-ancestors 'none'";
/// The longest head of a request that is read.
const LONGEST_HEAD: u64 = 16 * 1024;
/// How long a connection may take to ask or to take its answer.
const PATIENCE: Duration = Duration::from_secs(10);
/// How many connections are answered at a time.
const MOST: usize = 64;

/// Serves a folder until the program is ended.
pub fn forever(dir: &Path, address: SocketAddr) -> Outcome<()> {
    if !dir.is_dir() {
        return Err(format!("there is no folder {}", dir.display()));
    }
    answer(&listen(address)?, dir, address)
}

/// Takes the address.
pub fn listen(address: SocketAddr) -> Outcome<TcpListener> {
    TcpListener::bind(address).map_err(|error| format!("cannot listen on {address} ({error}); --port takes another"))
}

/// Answers every request, each in a thread of its own.
pub fn answer(listener: &TcpListener, dir: &Path, asked: SocketAddr) -> Outcome<()> {
    let own_only = asked.ip().is_loopback();
    let here = listener.local_addr().map_err(|error| format!("cannot tell the address: {error}"))?;
    println!("Bedwright is at http://{here}/");
    if !own_only {
        println!(
            "Other devices reach it over plain http: there the service worker (offline use), the camera \
             and locks between tabs are not available. Serve the folder over https for those."
        );
    }
    let root = Arc::new(dir.canonicalize().map_err(at("open", dir))?);
    let busy = Arc::new(AtomicUsize::new(0));
    for stream in listener.incoming() {
        // A caller that has gone already is no reason to stop.
        let Ok(stream) = stream else { continue };
        if busy.fetch_add(1, Ordering::SeqCst) >= MOST {
            busy.fetch_sub(1, Ordering::SeqCst);
            continue;
        }
        let (root, busy) = (Arc::clone(&root), Arc::clone(&busy));
        std::thread::spawn(move || {
            // A caller that hangs up midway gets no answer; nobody else is touched.
            let _ = converse(&stream, &root, own_only);
            busy.fetch_sub(1, Ordering::SeqCst);
        });
    }
    Ok(())
}

/// One request, one answer.
fn converse(stream: &TcpStream, root: &Path, own_only: bool) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    let mut head = String::new();
    let mut lines = BufReader::new(stream.take(LONGEST_HEAD));
    loop {
        let before = head.len();
        if lines.read_line(&mut head)? == 0 {
            return write(stream, &refused((431, "too long")), false);
        }
        if head.get(before..).is_some_and(|line| line.trim_end().is_empty()) {
            break;
        }
    }
    match request::read(&head, own_only) {
        Ok(request) => {
            let answer = found(&request, root).unwrap_or_else(refused);
            write(stream, &answer, request.head)
        }
        Err(refusal) => write(stream, &refused(refusal), false),
    }
}

/// What goes back.
struct Answer {
    status: u16,
    kind: &'static str,
    keep: &'static str,
    /// Where the folder is, when the slash was forgotten.
    moved: Option<String>,
    body: Vec<u8>,
}

/// A refusal as plain text.
fn refused((status, why): Refusal) -> Answer {
    Answer {
        status,
        kind: "text/plain; charset=utf-8",
        keep: "no-store",
        moved: None,
        body: format!("{why}\n").into_bytes(),
    }
}

/// The file that was asked for; a folder's file is its `index.html`.
fn found(request: &Request, root: &Path) -> Result<Answer, Refusal> {
    const MISSING: Refusal = (404, "no such file");
    let mut path = root.join(&request.path);
    if path.is_dir() {
        if !request.folder {
            let mut answer = refused((308, "a folder ends in a slash"));
            // Two slashes at the front would name another host.
            answer.moved = Some(format!("/{}/", request.address.trim_matches('/')));
            return Ok(answer);
        }
        path.push("index.html");
    } else if request.folder {
        return Err(MISSING);
    }
    // A link may not lead out of the folder.
    let real: PathBuf = path.canonicalize().map_err(|_| MISSING)?;
    if !real.starts_with(root) || !real.is_file() {
        return Err(MISSING);
    }
    let name = real.to_string_lossy();
    Ok(Answer {
        status: 200,
        kind: mime::of(&name),
        keep: kept(&name),
        moved: None,
        body: fs::read(&real).map_err(|_| MISSING)?,
    })
}

/// How long a file may be kept: for ever if its name changes with its content, else it is asked for each time.
fn kept(name: &str) -> &'static str {
    if names::is_hashed(name) { "public, max-age=31536000, immutable" } else { "no-cache" }
}

/// Sends an answer and closes.
fn write(mut stream: &TcpStream, answer: &Answer, head_only: bool) -> io::Result<()> {
    let phrase = match answer.status {
        200 => "OK",
        308 => "Permanent Redirect",
        404 => "Not Found",
        405 => "Method Not Allowed",
        _ => "Refused",
    };
    let mut head = format!(
        "HTTP/1.1 {} {phrase}\r\nContent-Type: {}\r\nContent-Length: {}\r\nCache-Control: {}\r\n\
         Content-Security-Policy: {POLICY}\r\nX-Content-Type-Options: nosniff\r\n\
         Referrer-Policy: no-referrer\r\nCross-Origin-Resource-Policy: same-origin\r\nConnection: close\r\n",
        answer.status,
        answer.kind,
        answer.body.len(),
        answer.keep,
    );
    if answer.status == 405 {
        head.push_str("Allow: GET, HEAD\r\n");
    }
    if let Some(place) = &answer.moved {
        head.push_str(&format!("Location: {place}\r\n"));
    }
    head.push_str("\r\n");
    stream.write_all(head.as_bytes())?;
    if !head_only {
        stream.write_all(&answer.body)?;
    }
    stream.flush()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    /// Serves a folder with a page, a hashed script, a folder below and a link that leads out.
    fn served(name: &str) -> (PathBuf, SocketAddr) {
        let outer = std::env::temp_dir().join(format!("bedwright-serve-{name}-{}", std::process::id()));
        let dir = outer.join("site");
        fs::create_dir_all(dir.join("below")).unwrap();
        fs::write(outer.join("secret.txt"), "secret").unwrap();
        fs::write(dir.join("index.html"), "page").unwrap();
        fs::write(dir.join("below/index.html"), "below").unwrap();
        fs::write(dir.join("app-0123456789abcdef.wasm"), "\0asm").unwrap();
        #[cfg(unix)]
        if !dir.join("way-out.txt").exists() {
            std::os::unix::fs::symlink(outer.join("secret.txt"), dir.join("way-out.txt")).unwrap();
        }
        let listener = listen("127.0.0.1:0".parse().unwrap()).unwrap();
        let address = listener.local_addr().unwrap();
        std::thread::spawn(move || answer(&listener, &dir, address));
        (outer, address)
    }

    fn ask(address: SocketAddr, request: &str) -> String {
        let mut stream = TcpStream::connect(address).unwrap();
        stream.write_all(request.as_bytes()).unwrap();
        let mut text = String::new();
        stream.read_to_string(&mut text).unwrap();
        text
    }

    fn get(address: SocketAddr, path: &str) -> String {
        ask(address, &format!("GET {path} HTTP/1.1\r\nHost: {address}\r\n\r\n"))
    }

    // RFC 9110 (status, Allow, Location), RFC 9111 and RFC 8246 (Cache-Control), Fetch standard (nosniff).
    #[test]
    fn files_come_with_their_type_and_how_long_they_keep() {
        let (outer, address) = served("files");
        let page = get(address, "/");
        assert!(page.starts_with("HTTP/1.1 200 OK\r\n") && page.ends_with("\r\n\r\npage"));
        assert!(page.contains("Cache-Control: no-cache\r\n"));
        assert!(page.contains("X-Content-Type-Options: nosniff\r\n"));
        assert!(page.contains("Content-Security-Policy: default-src 'self'; script-src 'self' 'wasm-unsafe-eval';"));
        let wasm = get(address, "/app-0123456789abcdef.wasm?again");
        assert!(wasm.contains("Content-Type: application/wasm\r\n"));
        assert!(wasm.contains("max-age=31536000, immutable"));
        assert!(get(address, "/below/").ends_with("below"));
        assert!(get(address, "/below").contains("308 Permanent Redirect"));
        assert!(get(address, "//below").contains("Location: /below/\r\n"));
        let head = ask(address, &format!("HEAD / HTTP/1.1\r\nHost: {address}\r\n\r\n"));
        assert!(head.contains("Content-Length: 4\r\n") && head.ends_with("\r\n\r\n"));
        fs::remove_dir_all(outer).unwrap();
    }

    #[test]
    fn nothing_outside_the_folder_and_nobody_elses_name() {
        let (outer, address) = served("refusals");
        for path in ["/../secret.txt", "/%2e%2e/secret.txt", "/way-out.txt", "/secret.txt"] {
            let said = get(address, path);
            assert!(!said.contains("200 OK") && !said.ends_with("secret"), "{path}: {said}");
        }
        let foreign = ask(address, "GET / HTTP/1.1\r\nHost: example.com\r\n\r\n");
        assert!(foreign.starts_with("HTTP/1.1 421"), "{foreign}");
        let post = ask(address, &format!("POST / HTTP/1.1\r\nHost: {address}\r\n\r\n"));
        assert!(post.contains("405") && post.contains("Allow: GET, HEAD\r\n"));
        fs::remove_dir_all(outer).unwrap();
    }
}
