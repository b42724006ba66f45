//! The module's functions as a page calls them. Pointers stay in this file.
//!
//! The page asks for `room`, writes packed pieces there and calls a function with the place and length; what the function has to
//! say lies at `said` and is `said_length` bytes long until the next call.
#![allow(
    unsafe_code,
    reason = "the border of a WebAssembly module is made of pointers; each one is explained"
)]

use std::cell::RefCell;

use arcata_desk::{AskedBy, PageRequest};
use arcata_engrave::give_music_style_sheet;
use serde::Serialize;

use crate::pieces::{pack, unpack};
use crate::web_desk::{AsItIs, Opened, WebAnswer, WebDesk};
use crate::web_shelf::JournalKeeper;

#[link(wasm_import_module = "page")]
unsafe extern "C" {
    /// Puts text at the end of the journal; 0 where it stays.
    fn append(text: *const u8, length: usize) -> u32;
    /// Cuts the journal after so many bytes; 0 where that is done.
    fn cut(after: usize) -> u32;
    /// Keeps the journal under another name; the number in that name, or 0.
    fn keep_broken() -> u32;
    /// Hears the last words of a program that breaks off.
    fn broke_off(text: *const u8, length: usize);
}

/// What the page keeps.
#[derive(Debug)]
struct PageKeeper;

impl JournalKeeper for PageKeeper {
    fn append(&mut self, text: &str) -> Result<(), String> {
        // SAFETY: the page reads `length` bytes from `text`, which lives until it returns.
        match unsafe { append(text.as_ptr(), text.len()) } {
            0 => Ok(()),
            _ => {
                Err("the browser has no room left for this; save your work as files, then make room"
                    .to_owned())
            }
        }
    }

    fn cut(&mut self, after: usize) -> Result<(), String> {
        // SAFETY: a number goes over, and a number comes back.
        match unsafe { cut(after) } {
            0 => Ok(()),
            _ => Err("the browser does not let the journal be changed".to_owned()),
        }
    }

    fn keep_broken(&mut self) -> Result<String, String> {
        // SAFETY: a number comes back.
        match unsafe { keep_broken() } {
            0 => Err("the browser has no room for a second copy of the journal".to_owned()),
            number => Ok(format!("acts-{number}.jsonl")),
        }
    }
}

thread_local! {
    static DESK: RefCell<Option<WebDesk>> = const { RefCell::new(None) };
    static SAID: RefCell<Vec<u8>> = const { RefCell::new(Vec::new()) };
}

fn say(bytes: Vec<u8>) {
    SAID.with(|said| *said.borrow_mut() = bytes);
}

/// Takes over what the page has written into a room.
fn written(place: *mut u8, length: usize) -> Vec<u8> {
    // SAFETY: the page got the place from `room(length)`, wrote it once and gives it up with this call.
    unsafe { Vec::from_raw_parts(place, length, length) }
}

/// Room for so many bytes.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn room(length: usize) -> *mut u8 {
    let boxed = vec![0_u8; length].into_boxed_slice();
    Box::into_raw(boxed).cast()
}

/// Where the last answer lies.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn said() -> *const u8 {
    SAID.with(|said| said.borrow().as_ptr())
}

/// How long it is.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn said_length() -> usize {
    SAID.with(|said| said.borrow().len())
}

/// Opens a score: its name, its bytes, its journal, the style sheet of the music font. Says nothing, or why not.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn open(place: *mut u8, length: usize) {
    std::panic::set_hook(Box::new(|problem| {
        let text = problem.to_string();
        // SAFETY: the page reads `length` bytes from `text`, which lives until it returns.
        unsafe { broke_off(text.as_ptr(), text.len()) };
    }));
    let bytes = written(place, length);
    let opened = match unpack(&bytes).as_deref() {
        Some([name, score, journal, style]) => {
            give_music_style_sheet(String::from_utf8_lossy(style).into_owned());
            let name = String::from_utf8_lossy(name);
            WebDesk::open(&Opened { name: &name, score, journal }, Box::new(PageKeeper))
        }
        _ => Err("the page and its module are of different versions: load the page anew".to_owned()),
    };
    match opened {
        Ok(desk) => {
            DESK.with(|own| *own.borrow_mut() = Some(desk));
            say(Vec::new());
        }
        Err(why) => say(why.into_bytes()),
    }
}

/// Carries what is open over to a newer version of the score, its bytes. Says the event as JSON, `null` where nothing is open or it
/// is the same file.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn carry(place: *mut u8, length: usize) {
    let bytes = written(place, length);
    let score =
        unpack(&bytes).and_then(|pieces| pieces.first().map(|piece| piece.to_vec())).unwrap_or_default();
    let happened = DESK.with(|own| own.borrow_mut().as_mut().and_then(|desk| desk.carry_to(score)));
    say(serde_json::to_vec(&happened).unwrap_or_default());
}

/// Begins a request: `get` or `post`, address, query, languages, body. Hands back its number.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn begin(place: *mut u8, length: usize) -> u32 {
    let bytes = written(place, length);
    let pieces = unpack(&bytes).unwrap_or_default();
    let text = |index: usize| {
        pieces.get(index).map_or(String::new(), |piece| String::from_utf8_lossy(piece).into_owned())
    };
    let request = PageRequest {
        by: if text(0) == "post" { AskedBy::Post } else { AskedBy::Get },
        path: text(1),
        query: text(2),
        languages: text(3),
        body: pieces.get(4).map_or_else(Vec::new, |body| body.to_vec()),
    };
    DESK.with(|own| own.borrow_mut().as_mut().map_or(u32::MAX, |desk| desk.begin(request)))
}

/// What goes before the bytes of an answer.
#[derive(Serialize)]
struct AnswerHead<'a> {
    status: u16,
    kind: &'a str,
    file: Option<&'a str>,
}

/// Finishes a request; with `as_it_is` other than 0 without what is not drawn. 0: an answer was said, its head and its bytes;
/// 1: orders were said; 2: there is no such request.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn finish(number: u32, as_it_is: u32) -> u32 {
    let as_it_is = if as_it_is == 0 { AsItIs::No } else { AsItIs::Yes };
    let finished = DESK.with(|own| own.borrow_mut().as_mut().and_then(|desk| desk.finish(number, as_it_is)));
    match finished {
        Some(WebAnswer::Answer(answer)) => {
            let head = AnswerHead { status: answer.status, kind: answer.kind, file: answer.file.as_deref() };
            say(pack(&[&serde_json::to_vec(&head).unwrap_or_default(), &answer.bytes]));
            0
        }
        Some(WebAnswer::Orders(orders)) => {
            say(serde_json::to_vec(&orders).unwrap_or_default());
            1
        }
        None => 2,
    }
}

/// Hands in a drawing: its key and the SVG, or the key alone where there is none.
#[unsafe(no_mangle)]
pub(crate) extern "C" fn hand_in(place: *mut u8, length: usize) {
    let bytes = written(place, length);
    let pieces = unpack(&bytes).unwrap_or_default();
    let text = |index: usize| pieces.get(index).map(|piece| String::from_utf8_lossy(piece).into_owned());
    DESK.with(|own| {
        if let (Some(desk), Some(key)) = (own.borrow().as_ref(), text(0)) {
            desk.hand_in(&key, text(1));
        }
    });
}
