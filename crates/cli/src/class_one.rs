//! One hand-in: read, bowed, reviewed; its sheets and its record written.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use arcata_analysis::{Config, Ground, Player, Snapshot, Source};
use arcata_class::pages::{StudentSheetView, sheet_html, sheet_pdf};
use arcata_class::{
    Concealed, GivenMaterial, HandInOutcome, KeptPicture, LookAtHandIn, Record, RememberedTask, Shown, Task,
    TeachersHand, Touch, Words, generic_names,
};
use arcata_engrave::{Engraver, Picture, music_style_sheet};
use arcata_export::Scenes;
use arcata_languages::Wording;
use arcata_xml::open_score;
use sha2::{Digest, Sha256};

use crate::class_hand_ins::{HandedIn, limits};
use crate::failure::Failure;
use crate::files;
use crate::studio::StudioScore;

/// What is asked of every hand-in.
pub(crate) struct SheetRequest<'a> {
    pub(crate) task: &'a Task,
    /// The task's file, what was given, the program: what every record is made of.
    pub(crate) made_of: String,
    pub(crate) material: &'a GivenMaterial,
    pub(crate) player: Player,
    pub(crate) engraver: &'a Engraver,
    pub(crate) words: &'a [Words],
    /// Everybody's names, which no page says.
    pub(crate) names: &'a [String],
    pub(crate) naming: StudentNames,
    /// The folder of the pages.
    pub(crate) out: &'a Path,
    /// The folder of the pages of the task before.
    pub(crate) before: Option<&'a Path>,
    pub(crate) hand: &'a TeachersHand,
    pub(crate) runs: Runs,
}

/// What pages say of a student.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum StudentNames {
    Pseudonyms,
    Own,
}

/// What becomes of sheets of a run before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Runs {
    /// What is as it was stays.
    GoesOn,
    /// All are made anew.
    Anew,
}

/// Whose hand-in it is, and where what is made of it goes.
pub(crate) struct Whose<'a> {
    pub(crate) hand_in: &'a HandedIn,
    pub(crate) pseudonym: &'a str,
    /// The name of its files, without an ending.
    pub(crate) stem: String,
}

/// What became of a hand-in.
pub(crate) struct MadeSheet {
    pub(crate) record: Record,
    pub(crate) by: MadeBy,
}

/// When a sheet was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum MadeBy {
    /// In a run before: nothing has changed.
    RunBefore,
    /// In this run.
    ThisRun,
    /// In this run, of a new file.
    NewFile,
}

impl SheetRequest<'_> {
    /// Pictures are drawn once, for sheets in all languages: their few words are in the first.
    pub(crate) fn pictures_wording(&self) -> Wording {
        let language = self.words.first().map(Words::language).unwrap_or_default();
        Wording { language, ..files::wording() }
    }

    /// A text without names, where pages say pseudonyms.
    fn nameless(&self, text: &str) -> String {
        match self.naming {
            StudentNames::Pseudonyms => Concealed::of_names(self.names.iter().map(String::as_str)).text(text),
            StudentNames::Own => text.to_owned(),
        }
    }
}

impl Whose<'_> {
    pub(crate) fn record(&self, pages: &Path) -> PathBuf {
        pages.join("records").join(format!("{}.json", self.stem))
    }

    /// The sheet in a language; where there is one language its name says none.
    pub(crate) fn sheet(&self, request: &SheetRequest<'_>, words: &Words, ending: &str) -> PathBuf {
        let language = words.language().code();
        let name = match request.words {
            [_] => format!("{}.{ending}", self.stem),
            _ => format!("{}.{language}.{ending}", self.stem),
        };
        request.out.join("sheets").join(name)
    }

    fn sheets(&self, request: &SheetRequest<'_>) -> Vec<PathBuf> {
        let of = |words: &Words| ["html", "pdf"].map(|ending| self.sheet(request, words, ending));
        request.words.iter().flat_map(of).collect()
    }

    fn called(&self, request: &SheetRequest<'_>) -> String {
        match request.naming {
            StudentNames::Pseudonyms => self.pseudonym.to_owned(),
            StudentNames::Own => self.hand_in.name.clone(),
        }
    }
}

/// A hand-in as it was found, before anything is made of it.
pub(crate) struct FoundHandIn {
    bytes: Result<Vec<u8>, String>,
    /// What its record is made of, and the file alone, as hashes.
    made_of: (String, String),
    /// The record of a run before.
    old: Option<Record>,
    earlier: Vec<RememberedTask>,
    touch: Touch,
}

/// Looks at a hand-in as it lies there.
pub(crate) fn find(whose: &Whose<'_>, request: &SheetRequest<'_>) -> FoundHandIn {
    // A record of an earlier task stands for somebody who has not handed in to this one.
    let old = read_record(&whose.record(request.out)).filter(|old| old.task == request.task.title);
    let earlier = request.before.and_then(|pages| read_record(&whose.record(pages)));
    let earlier = earlier.map(|record| arcata_class::before::remembered(&record)).unwrap_or_default();
    let bytes = whose.hand_in.bytes();
    let file = match &bytes {
        Ok(bytes) => hash(&[bytes]),
        Err(why) => hash(&[why.as_bytes()]),
    };
    let called = whose.called(request);
    let touch = request.hand.of(whose.pseudonym);
    let (remembered, touched) = (format!("{earlier:?}"), format!("{touch:?}"));
    let parts = [request.made_of.as_str(), &file, &called, &remembered, &touched];
    FoundHandIn { bytes, made_of: (hash(&parts.map(str::as_bytes)), file), old, earlier, touch }
}

impl FoundHandIn {
    /// The sheet of a run before, where it is still what would be made.
    pub(crate) fn kept(&self, whose: &Whose<'_>, request: &SheetRequest<'_>) -> Option<MadeSheet> {
        let old = self.old.as_ref().filter(|old| old.made_of == self.made_of.0)?;
        let is_there = || whose.sheets(request).iter().all(|sheet| sheet.is_file());
        let stays = request.runs == Runs::GoesOn && (old.shown().is_none() || is_there());
        stays.then(|| MadeSheet { record: old.clone(), by: MadeBy::RunBefore })
    }

    /// Makes the sheet. What goes wrong with the hand-in itself stands in its record; a failure is one of writing.
    pub(crate) fn make(
        mut self,
        whose: &Whose<'_>,
        request: &SheetRequest<'_>,
    ) -> Result<MadeSheet, Failure> {
        let bytes = std::mem::replace(&mut self.bytes, Err(String::new()));
        let looked = bytes.and_then(|bytes| {
            // A mistake of the program in one hand-in must not cost the others theirs.
            catch_unwind(AssertUnwindSafe(|| look(bytes, &self.touch, request)))
                .unwrap_or_else(|_| Err("the program failed over this file; please report it".to_owned()))
        });
        let outcome = match looked {
            Ok(shown) => HandInOutcome::Read(shown),
            // What cannot be read is told in words that may be out of the file.
            Err(why) => HandInOutcome::Unreadable { why: request.nameless(&why) },
        };
        self.write(whose, request, outcome)
    }

    /// Tells in the record why no sheet was made. The next run tries again.
    pub(crate) fn give_up(
        mut self,
        whose: &Whose<'_>,
        request: &SheetRequest<'_>,
        why: String,
    ) -> Result<MadeSheet, Failure> {
        self.made_of.0.clear();
        self.write(whose, request, HandInOutcome::Unreadable { why })
    }

    fn write(
        self,
        whose: &Whose<'_>,
        request: &SheetRequest<'_>,
        outcome: HandInOutcome,
    ) -> Result<MadeSheet, Failure> {
        let mut record = Record::new(&request.task.title, whose.pseudonym, self.made_of, outcome);
        (record.earlier, record.touch) = (self.earlier, self.touch);
        let is_new = self.old.as_ref().is_some_and(|old| old.file != record.file);
        record.replaced = self.old.map_or(0, |old| old.replaced + u32::from(is_new));
        write_sheets(whose, request, &record, &whose.called(request))?;
        let path = whose.record(request.out);
        let text = record.text().map_err(|why| Failure::Folder { path: path.clone(), why })?;
        arcata_files::write_whole(&path, text.as_bytes())?;
        Ok(MadeSheet { record, by: if is_new { MadeBy::NewFile } else { MadeBy::ThisRun } })
    }

    /// The sheet that another process has made of it.
    pub(crate) fn made(&self, whose: &Whose<'_>, request: &SheetRequest<'_>) -> Option<MadeSheet> {
        let record =
            read_record(&whose.record(request.out)).filter(|record| record.made_of == self.made_of.0)?;
        let is_new = self.old.as_ref().is_some_and(|old| old.file != record.file);
        Some(MadeSheet { record, by: if is_new { MadeBy::NewFile } else { MadeBy::ThisRun } })
    }
}

fn read_record(path: &Path) -> Option<Record> {
    Record::read(&files::read_text(path).ok()?)
}

/// A hash of some pieces, as text.
pub(crate) fn hash(pieces: &[&[u8]]) -> String {
    let mut hash = Sha256::new();
    for piece in pieces {
        hash.update((piece.len() as u64).to_le_bytes());
        hash.update(piece);
    }
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A hand-in as it is bowed for the task; parts are called by their instruments where no names are said.
pub(crate) fn bowed(bytes: Vec<u8>, request: &SheetRequest<'_>) -> Result<(StudioScore, Concealed), String> {
    let file = open_score(bytes, &limits()).map_err(|error| error.to_string())?;
    let mut source = Source::of(file)?;
    let concealed = match request.naming {
        StudentNames::Pseudonyms => {
            generic_names(&mut source.score);
            Concealed::new(request.names.iter().map(String::as_str), source.document())
        }
        StudentNames::Own => Concealed::default(),
    };
    if !source.score.parts.iter().any(|part| part.instrument.is_bowed()) {
        return Err("no part of it is for a bowed string instrument".to_owned());
    }
    let config = Config { player: request.player.clone(), tempo: request.task.tempo, ..Config::default() };
    Ok((StudioScore::whole(Snapshot::new(Arc::new(Ground::new(source, config)))), concealed))
}

fn look(bytes: Vec<u8>, touch: &Touch, request: &SheetRequest<'_>) -> Result<Shown, String> {
    let (desk, concealed) = bowed(bytes, request)?;
    let look = LookAtHandIn::new(desk.snapshot(), request.task);
    let chosen = look.chosen(touch);
    let wording = request.pictures_wording();
    let pictures = Scenes::new(desk.snapshot(), request.engraver, &wording).narrow().draw(&chosen);
    Ok(look.shown((&chosen, touch), pictures, request.material, &concealed))
}

fn write_sheets(
    whose: &Whose<'_>,
    request: &SheetRequest<'_>,
    record: &Record,
    called: &str,
) -> Result<(), Failure> {
    let Some(shown) = record.shown() else {
        // A sheet of the file before would pass for one of this file.
        whose.sheets(request).iter().try_for_each(|sheet| files::take_away(sheet))?;
        return Ok(());
    };
    for words in request.words {
        let view = StudentSheetView::new(words, request.task, called, (shown, record));
        let html = sheet_html(words, &view, request.task.sheet.paper, fonts(shown));
        arcata_files::write_whole(&whose.sheet(request, words, "html"), said(words, &html).as_bytes())?;
        let pdf = sheet_pdf(&view, request.task.sheet.paper, &outlined);
        let pdf = pdf.map_err(|error| Failure::Picture { why: error.to_string() })?;
        arcata_files::write_whole(&whose.sheet(request, words, "pdf"), &pdf)?;
    }
    Ok(())
}

/// A page with the run's word for bar, where it is English.
pub(crate) fn said(words: &Words, page: &str) -> String {
    match words.language() {
        arcata_languages::Language::English => files::bar_word().said(page).into_owned(),
        _ => page.to_owned(),
    }
}

/// The music font, where a picture writes with it.
pub(crate) fn fonts(shown: &Shown) -> &'static str {
    let passages = shown.passages.iter();
    let mut pictures = passages.flat_map(|passage| {
        passage.now.iter().chain(passage.repair.iter().filter_map(|repair| repair.picture.as_ref()))
    });
    if pictures.any(writes_music) { music_style_sheet() } else { "" }
}

/// Whether a picture has music signs as text.
pub(crate) fn writes_music(kept: &KeptPicture) -> bool {
    kept.svg.contains(r#"font-family="Bravura""#)
}

/// A picture as SVG that needs no font.
pub(crate) fn outlined(kept: &KeptPicture) -> Option<String> {
    let picture =
        Picture { title: String::new(), content: kept.svg.clone(), width: kept.width, height: kept.height };
    picture.outlines().ok()
}
