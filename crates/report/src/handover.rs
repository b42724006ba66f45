//! The list that goes with parts when they are handed over: what is in the folder, how many of each to print, what to look at first.

use arcata_languages::{Argument, Saying, Wording};

use crate::paper::{Board, Face, Paper, PdfError, ReadAs};

/// What is handed over.
///
/// ```
/// use arcata_languages::Wording;
/// use arcata_report::handover::{HandoverPart, HandoverView, handover_pdf};
/// use arcata_report::paper::Paper;
/// let view = HandoverView {
///     work: "The Ferry Bell".into(),
///     composer: None,
///     paper: (2100, 2970),
///     parts: vec![HandoverPart { name: "Violin I".into(), pages: 4, copies: 7 }],
///     files: Vec::new(),
///     look_at: Vec::new(),
///     wording: Wording::default(),
/// };
/// assert_eq!(view.pages_to_print(), 28);
/// assert!(handover_pdf(&view, Paper::A4)?.starts_with(b"%PDF"));
/// # Ok::<(), arcata_report::paper::PdfError>(())
/// ```
#[derive(Clone, Debug)]
pub struct HandoverView {
    /// The title of the work.
    pub work: String,
    /// Its composer.
    pub composer: Option<String>,
    /// Width and height of the parts' paper, tenths of a millimetre.
    pub paper: (i64, i64),
    /// The parts, in the order of the score.
    pub parts: Vec<HandoverPart>,
    /// All files.
    pub files: Vec<HandoverFile>,
    /// What wants a look before the parts go out, in sentences.
    pub look_at: Vec<String>,
    /// In whose words it is written.
    pub wording: Wording,
}

/// A part, and how often it is printed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HandoverPart {
    /// Its name.
    pub name: String,
    /// Pages of one copy.
    pub pages: usize,
    /// One for each stand.
    pub copies: u32,
}

/// A file in the folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HandoverFile {
    /// Its name.
    pub name: String,
    /// What it is.
    pub kind: HandoverKind,
}

/// What a file of a handover is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HandoverKind {
    /// A part's pages.
    Part,
    /// A part as MusicXML.
    PartFile,
    /// A part as sheets to be folded.
    Booklet,
    /// The score with the bowings.
    Score,
    /// A bowing layer.
    Layer,
    /// A change sheet.
    Changes,
    /// This list.
    Contents,
    /// The sums of all files.
    Sums,
}

impl HandoverKind {
    const fn key(self) -> &'static str {
        match self {
            Self::Part => "handover-is-part",
            Self::PartFile => "handover-is-part-file",
            Self::Booklet => "handover-is-booklet",
            Self::Score => "handover-is-score",
            Self::Layer => "handover-is-layer",
            Self::Changes => "handover-is-changes",
            Self::Contents => "handover-is-contents",
            Self::Sums => "handover-is-sums",
        }
    }
}

impl HandoverView {
    /// Pages of all copies together.
    #[must_use]
    pub fn pages_to_print(&self) -> usize {
        self.parts.iter().map(HandoverPart::to_print).sum()
    }

    fn paper_said(&self) -> String {
        let tenths = |length: i64| Argument::Tenths(length);
        let (width, height) = self.paper;
        let said = Saying::new("handover-paper").with("width", tenths(width)).with("height", tenths(height));
        self.wording.say(&said)
    }

    fn copies(&self) -> u32 {
        self.parts.iter().map(|part| part.copies).sum()
    }

    fn pages(&self) -> usize {
        self.parts.iter().map(|part| part.pages).sum()
    }
}

impl HandoverPart {
    fn to_print(&self) -> usize {
        self.pages * self.copies as usize
    }
}

/// The heads of the table of parts.
const COLUMNS: [&str; 4] = ["handover-part", "handover-pages", "handover-copies", "handover-printed"];
/// Sizes of letters and the distance of lines, points.
const BODY: f32 = 10.5;
const HEADING: f32 = 13.0;
const TITLE: f32 = 20.0;
const LINE: f32 = 15.0;
/// How far from the left the second column of the list of files stands.
const SECOND: f32 = 0.42;

/// The list as PDF.
///
/// # Errors
/// Only where the library that writes PDF refuses.
pub fn handover_pdf(view: &HandoverView, paper: Paper) -> Result<Vec<u8>, PdfError> {
    let title = view.wording.word("handover-title");
    let mut board = Board::new(paper, &format!("{}: {title}", view.work), view.wording.language.code())?;
    board.start_section(&title, &view.work);
    let mut pen = HandoverPen { y: board.top() + TITLE, board };
    pen.line(Face::Bold, TITLE, &title, ReadAs::Heading(1));
    let by = view.composer.as_ref().map_or(String::new(), |composer| format!(", {composer}"));
    pen.line(Face::Regular, BODY, &format!("{}{by}", view.work), ReadAs::Paragraph);
    pen.line(Face::Regular, BODY, &view.paper_said(), ReadAs::Paragraph);
    pen.y += LINE / 2.0;
    let heads = COLUMNS.map(|key| view.wording.word(key));
    pen.row(Face::Bold, &heads, &heads.join(", "));
    for part in &view.parts {
        let cells =
            [part.name.clone(), part.pages.to_string(), part.copies.to_string(), part.to_print().to_string()];
        pen.row(Face::Regular, &cells, &read_out(&heads, &cells));
    }
    let all = [
        view.wording.word("handover-in-all"),
        view.pages().to_string(),
        view.copies().to_string(),
        view.pages_to_print().to_string(),
    ];
    pen.row(Face::Bold, &all, &read_out(&heads, &all));
    pen.heading(&view.wording.word("handover-files"));
    for file in &view.files {
        pen.pair(&file.name, &view.wording.word(file.kind.key()));
    }
    if !view.look_at.is_empty() {
        pen.heading(&view.wording.word("handover-look-at"));
        view.look_at.iter().for_each(|line| pen.paragraph(line));
    }
    pen.board.finish()
}

/// A row of a table as it is read out: the heads of the columns with what stands in them.
fn read_out(heads: &[String; 4], cells: &[String; 4]) -> String {
    let numbers = heads.iter().zip(cells).skip(1).map(|(head, cell)| format!("{head}: {cell}"));
    format!("{}; {}", cells[0], numbers.collect::<Vec<_>>().join(", "))
}

/// Writes down a page, and goes on over leaf.
struct HandoverPen {
    board: Board,
    y: f32,
}

impl HandoverPen {
    fn down(&mut self, step: f32) {
        if self.y + step > self.board.bottom() {
            self.board.start_page();
            self.y = self.board.top() + LINE;
        } else {
            self.y += step;
        }
    }

    fn line(&mut self, face: Face, size: f32, text: &str, role: ReadAs) {
        self.board.begin(role);
        for part in self.board.wrapped(face, size, text, self.board.width()) {
            self.board.text(face, size, self.board.left(), self.y, &part);
            self.down(size * 1.45);
        }
        self.board.end();
    }

    fn heading(&mut self, text: &str) {
        self.down(LINE);
        // A heading does not stand alone at the foot of a page.
        if self.y + 3.0 * LINE > self.board.bottom() {
            self.board.start_page();
            self.y = self.board.top() + LINE;
        }
        self.line(Face::Bold, HEADING, text, ReadAs::Heading(2));
    }

    fn row(&mut self, face: Face, cells: &[String; 4], said: &str) {
        let (left, width) = (self.board.left(), self.board.width());
        self.board.begin(ReadAs::Said(said.to_owned()));
        let name = self.board.clipped(face, BODY, &cells[0], width * 0.4);
        self.board.text(face, BODY, left, self.y, &name);
        for (cell, share) in cells[1..].iter().zip([0.55_f32, 0.75, 1.0]) {
            self.board.text_right(face, BODY, left + width * share, self.y, cell);
        }
        self.board.end();
        self.board.rule(left, left + width, self.y + 4.0, 0.4);
        self.down(LINE + 2.0);
    }

    /// A name, and beside it what it is.
    fn pair(&mut self, name: &str, what: &str) {
        let (left, width) = (self.board.left(), self.board.width());
        self.board.begin(ReadAs::Paragraph);
        let name = self.board.clipped(Face::Regular, BODY, name, width * SECOND - 10.0);
        self.board.text(Face::Regular, BODY, left, self.y, &name);
        for part in self.board.wrapped(Face::Regular, BODY, what, width * (1.0 - SECOND)) {
            self.board.text(Face::Regular, BODY, left + width * SECOND, self.y, &part);
            self.down(LINE);
        }
        self.board.end();
    }

    fn paragraph(&mut self, text: &str) {
        self.line(Face::Regular, BODY, text, ReadAs::Paragraph);
    }
}
