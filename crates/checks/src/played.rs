//! Bow directions as players took them on film, against the planner, which sees the notes and slurs alone.
//! The data stays outside the project: a folder of scores with a `strokes.json` is named by whoever runs this.

use std::collections::BTreeMap;
use std::fmt;
use std::path::Path;

use arcata_bow::plan::{Inverse, as_it_comes, sureness};
use arcata_bow::{Join, Line, Link, Profile, Style, plan};
use arcata_score::{BowDirection, NoteKind, Score};
use rayon::prelude::*;
use serde_json::Value;

use crate::outcome::Result;
use crate::scores;
use crate::setting::read_array;

/// The kinds of place that the data tells apart.
pub(crate) const PLACES: [&str; 4] = ["downbeat", "mid-bar", "other beat", "off the beat"];

/// One piece: its line, and for every stroke what the player did.
pub(crate) struct PlayedPiece {
    pub(crate) file: String,
    pub(crate) line: Line,
    /// For each stroke of the player the one of the line that begins with it. The line may have more: a bow
    /// that the table runs over a rest is two strokes to our reading.
    pub(crate) strokes: Vec<usize>,
    pub(crate) bows: Vec<BowDirection>,
    /// Indices into [`PLACES`].
    places: Vec<usize>,
    pub(crate) after_silence: Vec<bool>,
}

impl PlayedPiece {
    /// What is known of each stroke of the line.
    pub(crate) fn known(&self) -> Vec<Option<BowDirection>> {
        let mut known = vec![None; self.line.strokes.len()];
        for (stroke, bow) in self.strokes.iter().zip(&self.bows) {
            known[*stroke] = Some(*bow);
        }
        known
    }
}

/// What a bowing of a piece, or of several, comes to.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct PlayedFigures {
    pub(crate) agreed: usize,
    pub(crate) strokes: usize,
    /// Agreement of each piece in millionths, added up.
    pieces_millionths: u64,
    pieces: u64,
    by_place: [(usize, usize); PLACES.len()],
    /// Two strokes in one direction with no silence between them, and all joints without one.
    one_way: usize,
    joints: usize,
}

impl PlayedFigures {
    pub(crate) fn of(piece: &PlayedPiece, directions: &[BowDirection]) -> Self {
        let mut played = Self { pieces: 1, ..Self::default() };
        for (index, (bow, stroke)) in piece.bows.iter().zip(&piece.strokes).enumerate() {
            let planned = directions[*stroke];
            let agrees = usize::from(*bow == planned);
            played.agreed += agrees;
            played.strokes += 1;
            let (right, all) = &mut played.by_place[piece.places[index]];
            *right += agrees;
            *all += 1;
            if index > 0 && !piece.after_silence[index] && piece.strokes[index - 1] + 1 == *stroke {
                played.joints += 1;
                played.one_way += usize::from(directions[stroke - 1] == planned);
            }
        }
        played.pieces_millionths = (played.agreed * 1_000_000 / played.strokes.max(1)) as u64;
        played
    }

    pub(crate) fn plus(mut self, other: Self) -> Self {
        self.agreed += other.agreed;
        self.strokes += other.strokes;
        self.pieces_millionths += other.pieces_millionths;
        self.pieces += other.pieces;
        self.one_way += other.one_way;
        self.joints += other.joints;
        for (mine, theirs) in self.by_place.iter_mut().zip(other.by_place) {
            mine.0 += theirs.0;
            mine.1 += theirs.1;
        }
        self
    }

    /// Percent of strokes, and as the mean over pieces.
    pub(crate) fn shares(&self) -> (f64, f64) {
        let strokes = percent(self.agreed, self.strokes);
        (strokes, self.pieces_millionths as f64 / self.pieces.max(1) as f64 / 1e4)
    }
}

fn percent(part: usize, of: usize) -> f64 {
    part as f64 * 100.0 / of.max(1) as f64
}

impl fmt::Display for PlayedFigures {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (strokes, pieces) = self.shares();
        write!(out, "{strokes:6.2} {pieces:6.2} {:8.2}   ", percent(self.one_way, self.joints))?;
        for (right, all) in self.by_place {
            write!(out, " {:>18}", format!("{:.1} ({right}/{all})", percent(right, all)))?;
        }
        Ok(())
    }
}

/// Reads the pieces of a folder.
pub(crate) fn load(folder: &Path, profile: &Profile) -> Result<Vec<PlayedPiece>> {
    let index = read_array(&folder.join("strokes.json"))?;
    index.par_iter().map(|entry| piece(folder, entry, profile)).collect()
}

fn piece(folder: &Path, entry: &Value, profile: &Profile) -> Result<PlayedPiece> {
    let file = entry["file"].as_str().ok_or("strokes.json: an entry without a file")?.to_owned();
    let opened = scores::open(&folder.join(&file))?;
    let score = arcata_score::read(opened.document());
    let lines = scores::lines(&score, profile);
    let [line] = <[Line; 1]>::try_from(lines).map_err(|lines| format!("{file}: {} lines", lines.len()))?;
    let told = entry["strokes"].as_array().ok_or(format!("{file}: no strokes"))?;
    let begins = begins(&score, &line);
    let stands = told.iter().map(|stroke| stroke["note"].as_u64().and_then(|at| usize::try_from(at).ok()));
    let stroke_of: BTreeMap<usize, usize> =
        begins.into_iter().enumerate().map(|(index, note)| (note, index)).collect();
    let strokes: Option<Vec<usize>> =
        stands.map(|note| note.and_then(|note| stroke_of.get(&note).copied())).collect();
    let strokes = strokes.ok_or(format!("{file}: a stroke of strokes.json begins where ours do not"))?;
    let bow = |stroke: &Value| match stroke["bow"].as_str() {
        Some("down") => Ok(BowDirection::Down),
        Some("up") => Ok(BowDirection::Up),
        _ => Err(format!("{file}: a bow that is neither down nor up")),
    };
    let place = |stroke: &Value| {
        let place = PLACES.iter().position(|place| stroke["place"] == **place);
        place.ok_or(format!("{file}: a place that is not known"))
    };
    Ok(PlayedPiece {
        bows: told.iter().map(bow).collect::<Result<_>>()?,
        places: told.iter().map(place).collect::<Result<_>>()?,
        after_silence: told.iter().map(|stroke| stroke["after_silence"] == true).collect(),
        strokes,
        line,
        file,
    })
}

/// For each stroke the number of its first note among those that sound.
fn begins(score: &Score, line: &Line) -> Vec<usize> {
    let notes = &score.parts[line.part].notes;
    let sounding: Vec<bool> =
        notes.iter().map(|note| note.kind == NoteKind::Ordinary && note.pitch.cents().is_some()).collect();
    let number = |note: usize| sounding[..note].iter().filter(|sounds| **sounds).count();
    line.strokes.iter().filter_map(|stroke| Some(number(stroke.notes.first()?.0 as usize))).collect()
}

/// What the planner does with a piece.
pub(crate) fn planned(piece: &PlayedPiece, profile: &Profile) -> Vec<BowDirection> {
    let settings = scores::blind(&piece.line, profile);
    plan(&piece.line, &settings).strokes.iter().map(|stroke| stroke.direction).collect()
}

/// What the plan says of how sure it is, by tens, against what was done: strokes, those that went as planned, and what was
/// said, added up.
type Tens = [(usize, usize, usize); 11];

fn reliability(piece: &PlayedPiece, profile: &Profile) -> Tens {
    let settings = scores::blind(&piece.line, profile);
    let planned = plan(&piece.line, &settings);
    let said = sureness(&piece.line, &settings, &planned);
    let mut tens = Tens::default();
    for (stroke, bow) in piece.strokes.iter().zip(&piece.bows) {
        let Some(sure) = said[*stroke] else { continue };
        let (strokes, right, sum) = &mut tens[usize::from(sure.0) / 10];
        *strokes += 1;
        *right += usize::from(planned.strokes[*stroke].direction == *bow);
        *sum += usize::from(sure.0);
    }
    tens
}

/// The chance of the planned direction over all ways, ten-thousandths, by these steps: what the table of sureness is made
/// from.
const STEPS: [u32; 8] = [0, 4_500, 5_500, 6_500, 8_000, 9_900, 9_970, 9_999];

fn report_chances(pieces: &[PlayedPiece], profile: &Profile) {
    let mut steps = [(0, 0); STEPS.len()];
    for piece in pieces {
        let settings = scores::blind(&piece.line, profile);
        let planned = plan(&piece.line, &settings);
        let chances = Inverse::new(&piece.line, &settings, &[]).chances(&[], &[]);
        for (stroke, bow) in piece.strokes.iter().zip(&piece.bows) {
            let direction = planned.strokes[*stroke].direction;
            let down = chances.down[*stroke];
            let chance = if direction == BowDirection::Down { down } else { 1.0 - down };
            let step = STEPS.iter().rposition(|step| f64::from(*step) <= chance * 1e4).unwrap_or(0);
            steps[step].0 += 1;
            steps[step].1 += usize::from(direction == *bow);
        }
    }
    for (step, (strokes, right)) in STEPS.iter().zip(steps).filter(|(_, (strokes, _))| *strokes > 0) {
        println!(
            "chance from {step:5} in ten thousand: {strokes:5} strokes, {:5.1} % went so",
            percent(right, strokes)
        );
    }
}

fn report_reliability(pieces: &[PlayedPiece], profile: &Profile) {
    let each: Vec<Tens> = pieces.iter().map(|piece| reliability(piece, profile)).collect();
    let of = |ten: usize, pieces: &mut dyn Iterator<Item = &Tens>| {
        pieces.fold((0, 0, 0), |sum, tens| (sum.0 + tens[ten].0, sum.1 + tens[ten].1, sum.2 + tens[ten].2))
    };
    let (mut missed, mut left_out, mut all) = (0.0, 0.0, 0);
    for ten in 0..11 {
        let (strokes, right, sum) = of(ten, &mut each.iter());
        if strokes == 0 {
            continue;
        }
        println!(
            "said {:3} to {:3}: {strokes:5} strokes, {:5.1} % went so, {:5.1} % said",
            ten * 10,
            ten * 10 + 9,
            percent(right, strokes),
            sum as f64 / strokes as f64
        );
        missed += (right as f64 * 100.0 - sum as f64).abs();
        all += strokes;
        // What the other pieces would have said of each.
        let said: f64 = each
            .iter()
            .enumerate()
            .map(|(nth, tens)| {
                let others = each.iter().enumerate().filter(|(other, _)| *other != nth).map(|(_, tens)| tens);
                let (strokes, right, _) = of(ten, &mut others.into_iter());
                percent(right, strokes) * tens[ten].0 as f64
            })
            .sum();
        left_out += (right as f64 * 100.0 - said).abs();
    }
    println!(
        "expected calibration error {:.2} %; {:.2} % where each piece is told by what the others say",
        missed / all.max(1) as f64,
        left_out / all.max(1) as f64
    );
}

/// A piece bar by bar: offset of each stroke in whole notes, `~` where it is slurred, the planned direction, its link where the
/// bow does not just change, `!` where the player went the other way, `?` where the table tells nothing.
fn by_bars(piece: &PlayedPiece, profile: &Profile) -> String {
    let settings = scores::blind(&piece.line, profile);
    let planned = plan(&piece.line, &settings);
    let mut text = String::new();
    let mut bar = None;
    for (index, (stroke, bow)) in piece.line.strokes.iter().zip(&planned.strokes).enumerate() {
        if bar != Some(stroke.bar) {
            bar = Some(stroke.bar);
            text += &format!("\n{:4}:", stroke.bar);
        }
        let told = piece.strokes.iter().position(|known| *known == index).map(|nth| piece.bows[nth]);
        let rest = if stroke.join == Join::Continues { "" } else { "| " };
        let kind = if stroke.note_count > 1 { "~" } else { "" };
        let against = match told {
            None => "?",
            Some(told) if told != bow.direction => "!",
            Some(_) => "",
        };
        let link = match bow.link {
            Link::Change | Link::Reset => "",
            Link::Hooked => "(hooked)",
            Link::Retake => "(retake)",
        };
        let direction = if bow.direction == BowDirection::Down { "d" } else { "u" };
        text += &format!(" {rest}{}{kind}{direction}{against}{link}", stroke.offset);
    }
    text
}

/// Prints how each style and plain alternation agree with what was played; `--bars FILE` a piece bar by bar.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let (folder, prices) =
        arguments.split_first().ok_or("played wants the folder that holds strokes.json")?;
    if let [option, file, prices @ ..] = prices
        && option == "--bars"
    {
        let profile = scores::priced(Profile::default(), prices)?;
        let pieces = load(Path::new(folder), &profile)?;
        let piece = pieces.iter().find(|piece| piece.file.contains(file.as_str()));
        println!("{}", by_bars(piece.ok_or(format!("there is no piece \"{file}\""))?, &profile));
        return Ok(());
    }
    let profile = scores::priced(Profile::default(), prices)?;
    let pieces = load(Path::new(folder), &profile)?;
    print!(
        "agreement with what was played, percent\n{:24} {:>6} {:>6} {:>8}   ",
        "", "all", "pieces", "one way"
    );
    for place in PLACES {
        print!(" {place:>18}");
    }
    println!();
    for style in Style::ALL {
        let styled = scores::priced(Profile::default().in_style(style), prices)?;
        let reached = pieces.iter().map(|piece| PlayedFigures::of(piece, &planned(piece, &styled)));
        println!("{:24} {}", style.name(), reached.fold(PlayedFigures::default(), PlayedFigures::plus));
    }
    let plain = pieces.iter().map(|piece| PlayedFigures::of(piece, &as_it_comes(&piece.line)));
    println!("{:24} {}", "as it comes", plain.fold(PlayedFigures::default(), PlayedFigures::plus));
    println!("\npiece by piece, concert");
    for piece in &pieces {
        println!("{:24} {}", piece.file, PlayedFigures::of(piece, &planned(piece, &profile)));
    }
    println!("\nhow sure the plan is, concert");
    report_chances(&pieces, &profile);
    report_reliability(&pieces, &profile);
    println!("\n\"one way\": two strokes in one direction without a silence, in 100 joints without one");
    let rested = |piece: &PlayedPiece| {
        piece.line.strokes.iter().filter(|stroke| stroke.join != Join::Continues).count()
    };
    let silences: usize = pieces.iter().map(rested).sum();
    println!("{} pieces; our reading has {silences} strokes that begin after a silence", pieces.len());
    Ok(())
}
