//! Who may ask: only this machine, only the page that the program opened, only by name.
//!
//! The first address holds a random key, the one that the browser is started with a ticket for one use. Either becomes a cookie that no other site can make a browser send, and every request
//! must bring it. The `Host` must be the loopback address (a name that somebody points at it, DNS rebinding, is refused), and
//! what changes something must come from the page itself.

use std::net::SocketAddr;
use std::sync::{Arc, Mutex, PoisonError};

use axum::extract::{Request, State};
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use sha2::{Digest as _, Sha256};

use crate::page;

/// The secret of one run of the program, and a ticket that is worth as much, once.
///
/// The arguments of a program can be read by every user of the machine, those of the browser that is started, too: so the
/// address that it is started with holds the ticket, and who reads it there comes too late.
#[derive(Clone)]
pub struct AccessKey {
    text: Arc<str>,
    ticket: Arc<Mutex<Option<String>>>,
}

impl std::fmt::Debug for AccessKey {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Key")
    }
}

impl AccessKey {
    /// A new one: 32 random bytes from the operating system.
    ///
    /// # Errors
    /// Where the system has no randomness to give.
    pub fn random() -> Result<Self, String> {
        Ok(Self { text: secret()?.into(), ticket: Arc::new(Mutex::new(Some(secret()?))) })
    }

    /// A key for tests.
    #[must_use]
    pub fn of(text: &str) -> Self {
        Self { text: text.into(), ticket: Arc::default() }
    }

    /// The same with a ticket, for tests.
    #[must_use]
    pub fn with_ticket(self, ticket: &str) -> Self {
        Self { ticket: Arc::new(Mutex::new(Some(ticket.to_owned()))), ..self }
    }

    /// The ticket as it stands in the address that the browser is started with; nothing once it is used.
    #[must_use]
    pub fn ticket(&self) -> Option<String> {
        self.ticket.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// A new ticket in the place of the last.
    ///
    /// # Errors
    /// Where the system has no randomness to give.
    pub(crate) fn fresh_ticket(&self) -> Result<String, String> {
        let fresh = secret()?;
        *self.ticket.lock().unwrap_or_else(PoisonError::into_inner) = Some(fresh.clone());
        Ok(fresh)
    }

    /// As it stands in the first address.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// Whether a text is the key. The time it takes says nothing about it: digests are compared.
    fn is(&self, text: &str) -> bool {
        alike(&self.text, text)
    }

    /// Whether a text is the ticket; it is used up then.
    fn takes(&self, text: &str) -> bool {
        let mut ticket = self.ticket.lock().unwrap_or_else(PoisonError::into_inner);
        ticket.take_if(|ticket| alike(ticket, text)).is_some()
    }
}

/// 32 random bytes from the operating system, as text.
fn secret() -> Result<String, String> {
    let mut bytes = [0_u8; 32];
    getrandom::fill(&mut bytes).map_err(|problem| format!("no random numbers: {problem}"))?;
    Ok(bytes.iter().map(|byte| format!("{byte:02x}")).collect())
}

fn alike(one: &str, other: &str) -> bool {
    Sha256::digest(one.as_bytes()) == Sha256::digest(other.as_bytes())
}

/// What the guard knows.
#[derive(Clone, Debug)]
pub(crate) struct Guard {
    pub(crate) key: AccessKey,
    pub(crate) address: SocketAddr,
}

/// The page runs what this program serves and nothing else; pictures bring styles of their own, never scripts.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; \
                      font-src 'self' data:; connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; \
                      frame-ancestors 'none'";

impl Guard {
    /// Names that a browser may know this server by.
    fn hosts(&self) -> [String; 2] {
        let port = self.address.port();
        [format!("127.0.0.1:{port}"), format!("localhost:{port}")]
    }

    /// The name of the cookie; another on each port, as cookies do not tell ports apart.
    fn cookie(&self) -> String {
        format!("arcata-{}", self.address.port())
    }

    fn is_named(&self, headers: &HeaderMap) -> bool {
        let host = headers.get(header::HOST).and_then(|host| host.to_str().ok());
        host.is_some_and(|host| self.hosts().iter().any(|known| known == host))
    }

    fn has_key(&self, headers: &HeaderMap) -> bool {
        let cookies = headers.get_all(header::COOKIE).iter().filter_map(|cookies| cookies.to_str().ok());
        let mut pairs =
            cookies.flat_map(|cookies| cookies.split(';')).filter_map(|pair| pair.trim().split_once('='));
        let name = self.cookie();
        pairs.any(|(named, value)| named == name && self.key.is(value))
    }

    /// A request that changes something says where it comes from, and that is here.
    fn is_from_here(&self, headers: &HeaderMap) -> bool {
        let origin = headers.get(header::ORIGIN).and_then(|origin| origin.to_str().ok());
        let site = headers.get("sec-fetch-site").and_then(|site| site.to_str().ok());
        let own = |origin: &str| self.hosts().iter().any(|host| origin == format!("http://{host}"));
        origin.is_some_and(own) && site.is_none_or(|site| site == "same-origin")
    }
}

/// Lets a request pass or refuses it.
pub(crate) async fn guard(State(guard): State<Guard>, request: Request, next: Next) -> Response {
    let mut response = answer(&guard, request, next).await;
    let headers = response.headers_mut();
    for (name, value) in [
        ("content-security-policy", POLICY),
        ("x-content-type-options", "nosniff"),
        ("x-frame-options", "DENY"),
        ("referrer-policy", "no-referrer"),
        ("cross-origin-opener-policy", "same-origin"),
        ("cross-origin-resource-policy", "same-origin"),
        ("cache-control", "no-store"),
    ] {
        headers.insert(name, HeaderValue::from_static(value));
    }
    response
}

async fn answer(guard: &Guard, request: Request, next: Next) -> Response {
    let headers = request.headers();
    if !guard.is_named(headers) {
        return refused(StatusCode::MISDIRECTED_REQUEST, "this server answers to its own address only");
    }
    let asking = matches!(*request.method(), Method::GET | Method::HEAD);
    if asking
        && request.uri().path() == "/"
        && let Some(key) = key_in(request.uri().query())
    {
        return welcome(guard, key);
    }
    if !guard.has_key(headers) {
        return page::locked().into_response();
    }
    if !asking && !guard.is_from_here(headers) {
        return refused(StatusCode::FORBIDDEN, "what changes something must come from the page itself");
    }
    next.run(request).await
}

/// The key in the first address.
fn key_in(query: Option<&str>) -> Option<&str> {
    query?.split('&').find_map(|pair| pair.strip_prefix("key="))
}

/// Trades the key for a cookie, and takes it out of the address.
fn welcome(guard: &Guard, key: &str) -> Response {
    if !guard.key.is(key) && !guard.key.takes(key) {
        return page::locked().into_response();
    }
    let cookie = format!("{}={}; Path=/; HttpOnly; SameSite=Strict", guard.cookie(), guard.key.text());
    let mut response = Redirect::to("/").into_response();
    if let Ok(cookie) = HeaderValue::from_str(&cookie) {
        response.headers_mut().insert(header::SET_COOKIE, cookie);
    }
    response
}

fn refused(status: StatusCode, why: &'static str) -> Response {
    (status, why).into_response()
}
