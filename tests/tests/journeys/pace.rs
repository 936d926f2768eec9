//! A connection that takes its time: it stands between the browser and the site, waits, hands on in small pieces, or breaks off.

use std::io::{Read, Write};
use std::net::{TcpListener, TcpStream};
use std::sync::{Arc, Mutex};
use std::time::Duration;

/// How files come whose address ends in a text.
#[derive(Clone, Debug)]
pub struct Pace {
    /// The end of the address; an empty one is every file.
    pub of: String,
    /// How long it takes before the site is asked.
    pub before: Duration,
    /// How long what the site gave takes on its way, in small pieces.
    pub over: Duration,
    /// Whether the connection breaks in the middle.
    pub breaks: bool,
}

impl Pace {
    pub fn new(of: &str) -> Pace {
        Pace { of: of.to_owned(), before: Duration::ZERO, over: Duration::ZERO, breaks: false }
    }
}

/// How many pieces a file comes in.
const PIECES: u32 = 20;

/// The connection; whoever asks when it has no site any more gets nothing.
pub struct Connection {
    port: u16,
    paces: Arc<Mutex<Vec<Pace>>>,
}

impl Connection {
    /// A connection to a site.
    pub fn to(site: &str) -> Connection {
        let upstream = site.trim_start_matches("http://").trim_end_matches('/').to_owned();
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let port = listener.local_addr().unwrap().port();
        let paces: Arc<Mutex<Vec<Pace>>> = Arc::default();
        let known = Arc::clone(&paces);
        // It ends with the test's process.
        std::thread::spawn(move || {
            for stream in listener.incoming().flatten() {
                let (upstream, known) = (upstream.clone(), Arc::clone(&known));
                // What the browser gave up on is nobody's trouble.
                std::thread::spawn(move || drop(hand_on(stream, &upstream, &known)));
            }
        });
        Connection { port, paces }
    }

    /// The page's address over this connection.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}/", self.port)
    }

    /// From now on files come like this.
    pub fn takes(&self, paces: Vec<Pace>) {
        *self.paces.lock().unwrap() = paces;
    }
}

/// One request, one answer: the site's server closes after each.
fn hand_on(mut browser: TcpStream, upstream: &str, paces: &Mutex<Vec<Pace>>) -> std::io::Result<()> {
    let mut head = Vec::new();
    let mut byte = [0];
    while !head.ends_with(b"\r\n\r\n") {
        if browser.read(&mut byte)? == 0 {
            return Ok(());
        }
        head.push(byte[0]);
    }
    let request = String::from_utf8_lossy(&head);
    let path = request.split(' ').nth(1).unwrap_or_default().to_owned();
    let pace = paces.lock().unwrap().iter().find(|pace| path.ends_with(&pace.of)).cloned();
    let pace = pace.unwrap_or_else(|| Pace::new(""));
    std::thread::sleep(pace.before);
    let mut site = TcpStream::connect(upstream)?;
    site.write_all(&head)?;
    let mut answer = Vec::new();
    site.read_to_end(&mut answer)?;
    let most = if pace.breaks { answer.len() / 2 } else { answer.len() };
    let each = (answer.len() / PIECES as usize).max(1);
    for piece in answer[..most].chunks(each) {
        browser.write_all(piece)?;
        browser.flush()?;
        std::thread::sleep(pace.over / PIECES);
    }
    Ok(())
}
