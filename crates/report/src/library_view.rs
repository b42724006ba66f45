//! A folder of works and layers as data, and as text, JSON and CSV.

use std::fmt::Write as _;

use schemars::JsonSchema;
use serde::Serialize;
use unicode_width::UnicodeWidthStr;

use arcata_languages::{Saying, Wording, retold};

use crate::style::{Ink, Page};

/// What a folder holds.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LibraryView {
    /// Always `arcata-library`.
    #[schemars(extend("const" = "arcata-library"))]
    pub format: &'static str,
    /// Version of this format.
    #[schemars(extend("const" = 1))]
    pub version: u32,
    /// The folder as named.
    pub folder: String,
    /// Works: scores by title.
    pub works: Vec<WorkRow>,
    /// Layers, by work, owner and date.
    pub layers: Vec<LayerRow>,
    /// Files that were not read or not looked at, and why.
    pub troubles: Vec<LibraryTrouble>,
}

/// One score.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct WorkRow {
    /// The file, within the folder.
    pub file: String,
    /// Its title; empty when it has none.
    pub title: String,
    /// Its composer; empty when it names none.
    pub composer: String,
}

/// One layer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct LayerRow {
    /// The file, within the folder.
    pub file: String,
    /// The work it belongs to.
    pub work: String,
    /// Its title.
    pub title: String,
    /// Whose it is.
    pub owner: String,
    /// For which orchestra or ensemble.
    pub ensemble: String,
    /// When.
    pub date: String,
    /// Decisions in it.
    pub entries: u64,
    /// Undecided conflicts in it.
    pub conflicts: u64,
    /// The score of the folder with the music that the layer was made for, when there is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub score: Option<String>,
}

/// A file that is not listed as what it should be.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct LibraryTrouble {
    /// The file, within the folder.
    pub file: String,
    /// What is wrong, and what to do.
    pub why: String,
}

impl LibraryView {
    /// A view of a folder with nothing in it so far.
    #[must_use]
    pub fn new(folder: &str) -> Self {
        let folder = folder.to_owned();
        let (works, layers, troubles) = (Vec::new(), Vec::new(), Vec::new());
        Self { format: "arcata-library", version: 1, folder, works, layers, troubles }
    }
}

/// A table of layers, then scores without a layer, then troubles.
#[must_use]
pub fn library_text(view: &LibraryView, page: Page) -> String {
    page.set(|page| library(view, page))
}

fn library(view: &LibraryView, page: Page) -> String {
    let mut out = String::new();
    let rows: Vec<[&str; 5]> = view
        .layers
        .iter()
        .map(|row| [row.work.as_str(), &row.title, &row.owner, &row.ensemble, &row.date])
        .collect();
    let wording = Wording::of(page.language);
    let heads = ["library-work", "library-layer", "library-owner", "library-ensemble", "library-date"];
    let heads = heads.map(|key| wording.word(key));
    let widths: Vec<usize> = (0..heads.len())
        .map(|column| {
            let widest = rows.iter().map(|row| width(row[column])).max().unwrap_or(0);
            widest.max(width(&heads[column])).min(if column < 2 { 28 } else { 18 })
        })
        .collect();
    if !rows.is_empty() {
        let mut head = String::new();
        for (name, width) in heads.iter().zip(&widths) {
            cell(&mut head, name, *width);
        }
        let _ = writeln!(
            out,
            "{}",
            page.ink(Ink::Faint, &{
                let (entries, file) = (wording.word("library-entries"), wording.word("library-file"));
                format!("{head}{entries:>7}  {file}")
            })
        );
    }
    for (row, layer) in rows.iter().zip(&view.layers) {
        for (text, width) in row.iter().zip(&widths) {
            cell(&mut out, text, *width);
        }
        let to_settle = Saying::new("library-to-settle").quoting("count", layer.conflicts.to_string());
        let conflicts =
            if layer.conflicts > 0 { format!("  {}", wording.say(&to_settle)) } else { String::new() };
        let _ = writeln!(out, "{:>7}  {}{conflicts}", layer.entries, layer.file);
    }
    if !view.works.is_empty() {
        let _ = writeln!(
            out,
            "{}{}",
            if out.is_empty() { "" } else { "\n" },
            page.ink(Ink::Faint, &wording.word("library-scores"))
        );
    }
    for work in &view.works {
        let untitled = wording.word("library-untitled");
        let title = if work.title.is_empty() { &untitled } else { &work.title };
        let by = if work.composer.is_empty() { String::new() } else { format!(", {}", work.composer) };
        let _ = writeln!(out, "{title}{by}  {}", work.file);
    }
    if !view.troubles.is_empty() {
        let _ = writeln!(
            out,
            "{}{}",
            if out.is_empty() { "" } else { "\n" },
            page.ink(Ink::Strong, &wording.word("library-not-listed"))
        );
    }
    for trouble in &view.troubles {
        let _ = writeln!(
            out,
            "{}",
            page.fill(&format!("{}: {}", trouble.file, wording.say(&retold(&trouble.why))), "", "  ")
        );
    }
    if out.is_empty() {
        out.push_str(&format!("{}\n", wording.word("library-nothing")));
    }
    out
}

fn width(text: &str) -> usize {
    if text.is_ascii() { text.len() } else { text.width() }
}

/// Text cut or filled to a column, and two spaces.
fn cell(out: &mut String, text: &str, columns: usize) {
    let have = width(text);
    if have <= columns {
        out.push_str(text);
        out.extend(std::iter::repeat_n(' ', columns - have + 2));
        return;
    }
    let mut used = 0;
    let mut buffer = [0; 4];
    for letter in text.chars() {
        let wide = width(letter.encode_utf8(&mut buffer));
        if used + wide + 1 > columns {
            break;
        }
        used += wide;
        out.push(letter);
    }
    out.push('…');
    out.extend(std::iter::repeat_n(' ', columns.saturating_sub(used + 1) + 2));
}

/// The layers as CSV, one row a layer.
#[must_use]
pub fn library_csv(view: &LibraryView) -> String {
    let mut table = csv::Writer::from_writer(Vec::new());
    let heads = ["work", "title", "owner", "ensemble", "date", "entries", "conflicts", "file", "score"];
    // Writing to memory does not fail.
    let _ = table.write_record(heads);
    for row in &view.layers {
        let (entries, conflicts) = (row.entries.to_string(), row.conflicts.to_string());
        let score = row.score.as_deref().unwrap_or_default();
        let cells = [
            &row.work,
            &row.title,
            &row.owner,
            &row.ensemble,
            &row.date,
            &entries,
            &conflicts,
            &row.file,
            score,
        ];
        let _ = table.write_record(cells.map(crate::csv::cell));
    }
    String::from_utf8(table.into_inner().unwrap_or_default()).unwrap_or_default()
}
