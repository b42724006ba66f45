//! From a document to a score.
//!
//! The passes, in order: find the music of each part ([`source`]) and the names of the parts ([`parts`]);
//! read each part bar by bar ([`part_reader`]); lay the bars end to end ([`bars`]); find the movements ([`movements`]); make moments absolute;
//! join slurs, ties and swells; put tempos and problems of all parts in order.

mod attributes;
mod barlines;
mod bars;
mod clock;
mod directions;
mod dynamics;
mod metronome;
mod movements;
mod notations;
mod notes;
mod numbers;
mod part_reader;
mod parts;
mod problems;
mod slurs;
mod sounds;
mod source;
mod swells;
mod tempos;
#[cfg(test)]
mod tests;
mod text;
mod ties;
mod wavy;

use arcata_xml::Document;

use self::barlines::SharedBar;
use self::bars::PartBars;
use self::part_reader::PartReader;
use self::problems::{ProblemPlace, Problems};
use self::source::PartSource;
use crate::instrument::players_of_score;
use crate::{Bar, Meter, Moment, Place, ProblemKind, Score, TempoKind};

/// Reads the music of a MusicXML document, partwise or timewise, 2.0 to 4.0.
///
/// Never fails: what cannot be understood is among the score's problems, and a document that is no score
/// gives an empty one with the problem [`ProblemKind::NotAScore`].
///
/// In a timewise score the [`measures`](crate::Part::measures) of a part are the `<part>` elements inside
/// the bars: the elements that hold the notes.
///
/// ```
/// use arcata_score::{Length, read};
/// use arcata_xml::{Document, Limits};
/// let file = br#"<score-partwise version="4.0">
///   <part-list><score-part id="P1"><part-name>Viola</part-name></score-part></part-list>
///   <part id="P1"><measure number="1">
///     <attributes><divisions>2</divisions></attributes>
///     <note><pitch><step>C</step><octave>4</octave></pitch><duration>3</duration></note>
///   </measure></part>
/// </score-partwise>"#;
/// let score = read(&Document::parse(file.to_vec(), &Limits::default())?);
/// assert_eq!(score.parts[0].notes[0].length, Length::new(3, 8));
/// # Ok::<(), arcata_xml::XmlError>(())
/// ```
#[must_use]
pub fn read(document: &Document) -> Score {
    let mut problems = Problems::default();
    let root = document.root();
    let Some(sources) = source::parts(document) else {
        let place = ProblemPlace { node: Some(root.id()), ..ProblemPlace::default() };
        let message = format!("This is XML, but not a score: it begins with <{}>.", root.name());
        problems.add(ProblemKind::NotAScore, place, message);
        return Score { problems: problems.in_document_order(), ..Score::default() };
    };
    let readers = read_parts(document, sources, &mut problems);
    let mut score = join_parts(readers, &mut problems);
    score.title = source::title(root);
    score.composer = source::composer(root);
    score.problems = problems.in_document_order();
    score
}

fn read_parts(document: &Document, sources: Vec<PartSource<'_>>, problems: &mut Problems) -> Vec<PartReader> {
    let mut listed = parts::part_list(document.root());
    let mut readers = Vec::with_capacity(sources.len());
    let mut recognised = Vec::with_capacity(sources.len());
    for (index, source) in sources.into_iter().enumerate() {
        let entry = listed.remove(source.id.as_ref());
        if entry.is_none() {
            let place = ProblemPlace { node: Some(source.element.id()), part: Some(index as u32), bar: None };
            let message =
                format!("The part \"{}\" is not in the list of parts, so it has no name.", source.id);
            problems.add(ProblemKind::PartMismatch, place, message);
        }
        recognised.push(entry.as_ref().map_or(parts::UNKNOWN, |entry| entry.recognised));
        let mut reader = PartReader::new(parts::empty_part(&source.id, entry.as_ref()), index as u32);
        for measure in source.measures {
            reader.read_bar(measure);
        }
        readers.push(reader);
    }
    for (reader, players) in readers.iter_mut().zip(players_of_score(&recognised)) {
        reader.part.players = players;
    }
    for entry in listed.values() {
        let place = ProblemPlace { node: Some(entry.node), ..ProblemPlace::default() };
        let message = format!("The part \"{}\" is in the list of parts, but has no music.", entry.name);
        problems.add(ProblemKind::PartMismatch, place, message);
    }
    readers
}

fn join_parts(mut readers: Vec<PartReader>, problems: &mut Problems) -> Score {
    let bar_count = readers.iter().map(|reader| reader.bars.len()).max().unwrap_or(0);
    let mut shared: Vec<SharedBar> = std::iter::repeat_with(SharedBar::default).take(bar_count).collect();
    for reader in &mut readers {
        for (bar, other) in shared.iter_mut().zip(std::mem::take(&mut reader.shared_bars)) {
            bar.merge(other);
        }
        if reader.part.meters.first().is_none_or(|(bar, _)| *bar > 0) {
            reader.part.meters.insert(0, (0, Meter::common()));
        }
        reader.part.measures.resize(bar_count, None);
    }
    let views: Vec<PartBars<'_>> =
        readers.iter().map(|reader| PartBars { part: &reader.part, bars: &reader.bars }).collect();
    let (mut bars, mut openings) = bars::lay_out(shared, &views, problems);
    for tempo in readers.iter().flat_map(|reader| &reader.tempos) {
        let opens = tempo.place.at == Moment::START;
        if let (true, TempoKind::Marked(_) | TempoKind::Word(_), Some(opening)) =
            (opens, &tempo.kind, openings.get_mut(tempo.place.bar as usize))
        {
            opening.tempo = movements::BarTempo::Written;
        }
    }
    let movements = movements::movements(&bars, &openings);
    for movement in &movements {
        bars::tell_codas_apart(&mut bars[*movement.bars.start() as usize..=*movement.bars.end() as usize]);
    }
    let mut score = Score { bars, movements, ..Score::default() };
    for reader in readers {
        finish(reader, &mut score, problems);
    }
    let later = later_movements(&score);
    score.tempos = tempos::in_order(std::mem::take(&mut score.tempos), movements::Ends(&later));
    score
}

/// The first bars of all movements but the first.
fn later_movements(score: &Score) -> Vec<u32> {
    score.movements.iter().skip(1).map(|movement| *movement.bars.start()).collect()
}

/// Makes the moments of a part absolute and joins what has two ends.
fn finish(reader: PartReader, score: &mut Score, problems: &mut Problems) {
    let PartReader {
        mut part,
        index,
        slurs,
        waves,
        mut swells,
        mut tempos,
        mut levels,
        ringing,
        bar_rests,
        problems: found,
        ..
    } = reader;
    problems.append(found);
    let bars = &score.bars;
    for rest in bar_rests {
        let rest = &mut part.notes[rest as usize];
        let length = bars[rest.bar as usize].length;
        rest.onset = rest.onset.min(Moment(length));
        rest.length = length - rest.onset.since_start();
    }
    for note in &mut part.notes {
        note.onset = bars[note.bar as usize].start + note.onset.since_start();
    }
    let places = part.dynamics.iter_mut().map(|dynamic| &mut dynamic.place);
    let places = places.chain(part.instructions.iter_mut().map(|instruction| &mut instruction.place));
    let places = places.chain(levels.iter_mut().map(|step| &mut step.place));
    let places = places.chain(swells.iter_mut().map(|mark| &mut mark.place));
    places.chain(tempos.iter_mut().map(|tempo| &mut tempo.place)).for_each(|place| settle(place, score));
    part.dynamics.sort_by_key(|dynamic| dynamic.place.at);
    let later = later_movements(score);
    text::take_steps(&mut part.dynamics, levels, movements::Ends(&later));
    part.instructions.sort_by_key(|instruction| instruction.place.at);
    wavy::trill_under_waves(&mut part.notes, &waves);
    ties::join(
        &mut part,
        (index, movements::Ends(&later)),
        &ringing,
        |bar| bars::entered_anew(bars, bar),
        problems,
    );
    slurs::join(&mut part, (index, movements::Ends(&later)), &slurs, problems);
    swells::join(&mut part, (index, movements::Ends(&later)), &swells, problems);
    score.tempos.append(&mut tempos);
    score.parts.push(part);
}

/// Makes a place absolute. An offset that leads out of its bar is followed, but not out of the score.
fn settle(place: &mut Place, score: &Score) {
    let bar: &Bar = &score.bars[place.bar as usize];
    let at = bar.start + place.at.since_start();
    place.at = at.max(Moment::START).min(score.end());
    let ends = bar.start + bar.length;
    if (place.at < bar.start || place.at > ends)
        && let Some(bar) = score.bar_at(place.at)
    {
        place.bar = bar;
    }
}
