//! The only place that opens and lists files, and prints.
#![expect(clippy::disallowed_methods, reason = "the command line is where files are opened")]
#![expect(clippy::disallowed_macros, reason = "the command line is where text is printed")]

use std::ffi::OsStr;
use std::io::{IsTerminal as _, Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::OnceLock;

use arcata_languages::{Language, TradeWords, Wording, retold};
use arcata_report::{BarWord, Characters, Colour, Page};
use arcata_xml::{acts_unseen, seen};

use crate::failure::Failure;

/// Texts that people write, and pages that are made of scores, are read up to this size.
const LARGEST_TEXT: usize = 1 << 30;

const ENDINGS: [&str; 3] = ["musicxml", "xml", "mxl"];

/// The scores that were named, folders searched through, in order of name; a file named outright is
/// taken whatever its ending.
pub(crate) fn scores(named: &[PathBuf]) -> Result<Vec<PathBuf>, Failure> {
    let mut found = Vec::new();
    for path in named {
        if path.is_dir() {
            search(path, &mut found)?;
        } else {
            found.push(path.clone());
        }
    }
    if found.is_empty() { Err(Failure::NoScores { named: named.to_vec() }) } else { Ok(found) }
}

fn search(folder: &Path, found: &mut Vec<PathBuf>) -> Result<(), Failure> {
    let failed =
        |error: std::io::Error| Failure::Read { path: folder.to_owned(), why: told(&error.to_string()) };
    let mut entries: Vec<PathBuf> = std::fs::read_dir(folder)
        .map_err(failed)?
        .map(|entry| entry.map(|entry| entry.path()))
        .collect::<Result<_, _>>()
        .map_err(failed)?;
    entries.sort();
    for entry in entries {
        let hidden = entry.file_name().and_then(OsStr::to_str).is_some_and(|name| name.starts_with('.'));
        // A link to a folder could lead in a circle.
        let is_folder = entry.is_dir() && !entry.is_symlink();
        if hidden {
            continue;
        } else if is_folder {
            search(&entry, found)?;
        } else if is_score(&entry) {
            found.push(entry);
        }
    }
    Ok(())
}

/// Whether a file's name ends like a score's.
pub(crate) fn is_score(path: &Path) -> bool {
    let ending = path.extension().and_then(OsStr::to_str).map(str::to_ascii_lowercase);
    path.is_file() && ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str()))
}

/// A file's bytes, not more than `most`; what is wrong without its name.
pub(crate) fn read(path: &Path, most: usize) -> Result<Vec<u8>, String> {
    arcata_files::read(path, most).map_err(|error| told(&error.why()))
}

/// What comes in at standard input, not more than `most`.
pub(crate) fn standard_input(most: usize) -> Result<Vec<u8>, Failure> {
    let failed = |why: String| Failure::Read { path: standard_input_said(), why: told(&why) };
    let mut bytes = Vec::new();
    let limit = u64::try_from(most).unwrap_or(u64::MAX);
    let read = std::io::stdin().lock().take(limit.saturating_add(1)).read_to_end(&mut bytes);
    read.map_err(|error| failed(error.to_string()))?;
    if bytes.len() > most {
        return Err(failed(format!("more than the limit of {most} bytes")));
    }
    Ok(bytes)
}

/// What standard input is called where a file is spoken of.
pub(crate) fn standard_input_said() -> PathBuf {
    PathBuf::from(wording().word("failure-standard-input"))
}

/// A text file of settings.
pub(crate) fn read_text(path: &Path) -> Result<String, String> {
    let bytes = read(path, LARGEST_TEXT)?;
    String::from_utf8(bytes).map_err(|_| told("it is not UTF-8 text"))
}

/// Makes a folder where there is none.
pub(crate) fn make_folder(path: &Path) -> Result<(), Failure> {
    std::fs::create_dir_all(path)
        .map_err(|error| Failure::Folder { path: path.to_owned(), why: told(&error.to_string()) })
}

/// Takes away a page that this program made; nothing where there is none.
pub(crate) fn take_away(path: &Path) -> Result<(), Failure> {
    match std::fs::remove_file(path) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
            Err(Failure::Folder { path: path.to_owned(), why: told(&error.to_string()) })
        }
        _ => Ok(()),
    }
}

/// Whether two paths are one file.
pub(crate) fn same(one: &Path, other: &Path) -> bool {
    match (one.canonicalize(), other.canonicalize()) {
        (Ok(one), Ok(other)) => one == other,
        _ => false,
    }
}

/// The language of this run: said once, by --language.
static LANGUAGE: OnceLock<Language> = OnceLock::new();
/// What things are called in this run: said once, by --terms or the profile.
static TRADE_WORDS: OnceLock<TradeWords> = OnceLock::new();

/// Says in what language the run speaks.
pub(crate) fn speak(language: Language) {
    let _ = LANGUAGE.set(language);
}

/// Says what things are called from now on; what was said first holds.
pub(crate) fn call_things(words: TradeWords) {
    let _ = TRADE_WORDS.set(words);
}

/// In whose words the run speaks.
pub(crate) fn wording() -> Wording {
    Wording {
        language: LANGUAGE.get().copied().unwrap_or_default(),
        words: TRADE_WORDS.get().cloned().unwrap_or_default(),
    }
}

/// What a crate below has said in English, in the language of the run.
pub(crate) fn told(english: &str) -> String {
    let wording = wording();
    match wording.language {
        Language::English => english.to_owned(),
        _ => wording.say(&retold(english)),
    }
}

/// What a bar is called where a sentence is made in English alone.
pub(crate) fn bar_word() -> BarWord {
    let wording = wording();
    match wording.language {
        Language::English => BarWord::named(&wording.words.bar),
        _ => BarWord::Bar,
    }
}

/// Prints a result for people: what acts unseen in names of files, titles and words is written out.
pub(crate) fn show(text: &str) {
    put(&seen(&bar_word().said(text)));
}

/// Prints a text that was set for a page ([`page`]): it has been seen to, and its colours are the page's own.
pub(crate) fn show_set(text: &str) {
    put(text);
}

/// Prints a result for programs as it is; where a terminal shows it, as for people.
pub(crate) fn hand_out(text: &str) {
    if std::io::stdout().is_terminal() { put(&seen(text)) } else { put(text) }
}

/// A reader that has seen enough (`| head`) is no error.
fn put(text: &str) {
    let _ = std::io::stdout().lock().write_all(text.as_bytes());
}

/// Says something beside the result, line by line as it is.
pub(crate) fn say(text: &str) {
    eprint!("{}", seen(text));
}

/// How text is filled: lines end at spaces alone, so that a path or an option is copied whole.
fn filled<'o>(width: usize) -> textwrap::Options<'o> {
    textwrap::Options::new(width)
        .break_words(false)
        .word_separator(textwrap::WordSeparator::AsciiSpace)
        .word_splitter(textwrap::WordSplitter::NoHyphenation)
}

/// Says what went wrong, filled to the width of the terminal.
pub(crate) fn complain(text: &str) {
    let options = filled(width(std::io::stderr().is_terminal()));
    let text = format!("arcata: {}", seen(&bar_word().said(text)));
    eprintln!("{}", textwrap::fill(&text, options));
}

/// Says what is wrong with the command line, or helps. What was typed is repeated there, and may be the name of a file.
pub(crate) fn misused(problem: &clap::Error) -> ExitCode {
    let text = problem.to_string();
    if text.contains(acts_unseen) {
        eprint!("{}", seen(&text));
    } else {
        // Nobody reading is no trouble.
        let _ = problem.print();
    }
    u8::try_from(problem.exit_code()).map_or(ExitCode::FAILURE, ExitCode::from)
}

/// Text filled to the width of the terminal, line by line; what is indented stays so.
pub(crate) fn wrapped(text: &str) -> String {
    let width = width(std::io::stdout().is_terminal());
    let filled = text.lines().map(|line| {
        let indent = &line[..line.len() - line.trim_start().len()];
        let further = if indent.is_empty() { String::new() } else { format!("{indent}  ") };
        let options = filled(width).initial_indent(indent).subsequent_indent(&further);
        textwrap::fill(line.trim_start(), options) + "\n"
    });
    filled.collect()
}

/// The page that the terminal is; plain and 80 wide where there is none.
pub(crate) fn page() -> Page {
    let terminal = std::io::stdout().is_terminal();
    let plain = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
    let colour = if terminal && !plain { Colour::On } else { Colour::Off };
    let characters = if terminal && speaks_utf8() { Characters::Unicode } else { Characters::Ascii };
    Page { width: width(terminal), colour, characters, bar: bar_word(), language: wording().language }
}

/// The page that a text file is: plain, 80 wide.
pub(crate) fn plain_page() -> Page {
    Page { bar: bar_word(), language: wording().language, ..Page::default() }
}

/// Columns to fill: what `COLUMNS` says, else the terminal's, else 80; within what is easy to read.
fn width(terminal: bool) -> usize {
    let columns = std::env::var("COLUMNS").ok().and_then(|columns| columns.parse().ok());
    let width = if terminal { columns.unwrap_or_else(textwrap::termwidth) } else { columns.unwrap_or(80) };
    width.clamp(40, 120)
}

/// Whether the terminal's language says UTF-8; the first of the three variables that is set counts.
fn speaks_utf8() -> bool {
    let set = |name: &&str| std::env::var(name).ok().filter(|value| !value.is_empty());
    let language = ["LC_ALL", "LC_CTYPE", "LANG"].iter().find_map(set).unwrap_or_default().to_lowercase();
    language.contains("utf-8") || language.contains("utf8")
}

/// A file's name as the address of a link into a folder, which ends with a slash.
pub(crate) fn address(folder: &str, name: &str) -> String {
    let mut out = String::from(folder);
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() || b"-._~".contains(&byte) {
            out.push(char::from(byte));
        } else {
            out.push_str(&format!("%{byte:02X}"));
        }
    }
    out
}
