//! What a browser asks for, and what is refused before a file is touched.
use std::path::PathBuf;

/// Why a request gets no file: an HTTP status (RFC 9110, 15) and a few words.
pub type Refusal = (u16, &'static str);

/// A request that may be answered.
#[derive(Debug, PartialEq, Eq)]
pub struct Request {
    /// Whether only the head is wanted.
    pub head: bool,
    /// The path below the served folder; empty for the folder itself.
    pub path: PathBuf,
    /// Whether the address ended in a slash.
    pub folder: bool,
    /// The path as it was asked for, without the query.
    pub address: String,
}

/// Reads the head of a request. With `own_only`, only this machine's own names are accepted as host: a page from
/// elsewhere whose name was pointed at 127.0.0.1 must not read what is served here.
pub fn read(head: &str, own_only: bool) -> Result<Request, Refusal> {
    let mut lines = head.split("\r\n");
    let mut words = lines.next().unwrap_or_default().split(' ');
    let (Some(method), Some(target), Some(version), None) = (words.next(), words.next(), words.next(), words.next())
    else {
        return Err((400, "not a request"));
    };
    if !version.starts_with("HTTP/1.") {
        return Err((505, "HTTP/1.1 only"));
    }
    let mut hosts = lines
        .filter_map(|line| line.split_once(':'))
        .filter(|(name, _)| name.eq_ignore_ascii_case("host"))
        .map(|(_, value)| value.trim());
    let (Some(host), None) = (hosts.next(), hosts.next()) else {
        return Err((400, "one host, please"));
    };
    if own_only && !is_own(host) {
        return Err((421, "not this machine's name"));
    }
    let head = match method {
        "GET" => false,
        "HEAD" => true,
        _ => return Err((405, "only GET and HEAD")),
    };
    let address = target.split(['?', '#']).next().unwrap_or_default();
    let path = below(address)?;
    Ok(Request { head, path, folder: address.ends_with('/'), address: address.to_owned() })
}

/// Whether a Host header names this machine's loopback, at any port.
fn is_own(host: &str) -> bool {
    let name = match host.strip_prefix('[') {
        Some(rest) => match rest.split_once(']') {
            Some((name, port)) if port_is_fine(port) => name,
            _ => return false,
        },
        None => match host.split_once(':') {
            Some((name, port)) if port.bytes().all(|b| b.is_ascii_digit()) => name,
            Some(_) => return false,
            None => host,
        },
    };
    name.eq_ignore_ascii_case("localhost")
        || name.parse::<std::net::IpAddr>().is_ok_and(|address| address.is_loopback())
}

/// Nothing, or a colon and digits.
fn port_is_fine(port: &str) -> bool {
    port.is_empty() || port.strip_prefix(':').is_some_and(|digits| digits.bytes().all(|b| b.is_ascii_digit()))
}

/// The path below the served folder. Decoded until nothing changes, so that no encoding of `..` gets past.
fn below(address: &str) -> Result<PathBuf, Refusal> {
    const NOT_HERE: Refusal = (400, "not an address here");
    if !address.starts_with('/') {
        return Err(NOT_HERE);
    }
    let mut text = address.to_owned();
    loop {
        let decoded = decoded(&text).ok_or(NOT_HERE)?;
        if decoded == text {
            break;
        }
        text = decoded;
    }
    let mut path = PathBuf::new();
    for part in text.split('/').filter(|part| !part.is_empty()) {
        let hidden = part.starts_with('.');
        let odd = part.contains(['\\', ':']) || part.chars().any(char::is_control);
        if hidden || odd {
            return Err(NOT_HERE);
        }
        path.push(part);
    }
    Ok(path)
}

/// Percent-decodes once (RFC 3986, 2.1); nothing when the result is not UTF-8 or a `%` stands alone.
fn decoded(text: &str) -> Option<String> {
    let mut bytes = text.bytes();
    let mut out = Vec::with_capacity(text.len());
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let high = char::from(bytes.next()?).to_digit(16)?;
            let low = char::from(bytes.next()?).to_digit(16)?;
            out.push(u8::try_from(high * 16 + low).ok()?);
        } else {
            out.push(byte);
        }
    }
    String::from_utf8(out).ok()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn get(target: &str) -> Result<PathBuf, Refusal> {
        let head = format!("GET {target} HTTP/1.1\r\nHost: localhost\r\n");
        read(&head, true).map(|request| request.path)
    }

    fn from(host: &str) -> Result<Request, Refusal> {
        read(&format!("GET / HTTP/1.1\r\nHost: {host}\r\n"), true)
    }

    #[test]
    fn a_plain_address_is_a_path() {
        assert_eq!(get("/").unwrap(), PathBuf::new());
        assert_eq!(get("/icons/icon.svg?x=1").unwrap(), PathBuf::from("icons/icon.svg"));
        assert_eq!(get("/a%20b//c/").unwrap(), PathBuf::from("a b/c"));
    }

    // The encodings are those of the OWASP Web Security Testing Guide, "Testing Directory Traversal File Include"
    // (from memory): plain, percent, double percent, backslash, overlong UTF-8.
    #[test]
    fn no_way_up_in_any_encoding() {
        for target in [
            "/..",
            "/../etc/passwd",
            "/a/../../b",
            "/%2e%2e/x",
            "/%2E%2e/x",
            "/.%2e/x",
            "/..%2fx",
            "/%252e%252e%252fx",
            "/%25252e%25252e/x",
            "/..\\x",
            "/..%5cx",
            "/%5c..%5cx",
            "/%c0%ae%c0%ae/x",
            "/%00",
            "/a%0d%0ab",
            "/c:/x",
            "/.git/config",
            "/%2egit/config",
            "/%",
            "/%2",
            "/%zz",
            "x",
            "*",
            "http://localhost/x",
        ] {
            assert_eq!(get(target).map_err(|(status, _)| status), Err(400), "{target}");
        }
    }

    #[test]
    fn only_this_machines_names_are_hosts() {
        for host in ["localhost", "LOCALHOST:80", "127.0.0.1:8080", "127.9.9.9", "[::1]", "[::1]:8080"] {
            assert!(from(host).is_ok(), "{host}");
        }
        for host in [
            "example.com",
            "example.com:8080",
            "localhost.example.com",
            "127.0.0.1.example.com",
            "localhost:80@example.com",
            "192.168.1.2",
            "[::2]",
            "[::1",
            "[::1]x",
            "",
        ] {
            assert!(from(host).is_err(), "{host}");
        }
        assert!(read("GET / HTTP/1.1\r\n", true).is_err());
        assert!(read("GET / HTTP/1.1\r\nHost: localhost\r\nHost: example.com\r\n", true).is_err());
        assert!(read("GET / HTTP/1.1\r\nHost: example.com\r\n", false).is_ok());
    }

    #[test]
    fn only_reading_is_answered() {
        assert!(read("HEAD / HTTP/1.1\r\nHost: localhost\r\n", true).unwrap().head);
        for (line, status) in
            [("POST / HTTP/1.1", 405), ("GET /", 400), ("GET / x HTTP/1.1", 400), ("GET / HTTP/2.0", 505), ("", 400)]
        {
            let head = format!("{line}\r\nHost: localhost\r\n");
            assert_eq!(read(&head, true).map_err(|(got, _)| got), Err(status), "{line}");
        }
    }
}
