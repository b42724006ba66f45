//! The marks that hang on a note, behind an exclamation mark.

use crate::cursor::CharacterCursor;
use crate::error::FixtureRead;

/// Where in a MusicXML note a mark is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum MarkHome {
    Articulations,
    Technical,
    Ornaments,
    Dynamics,
    /// Directly in `notations`, on the first note of a chord.
    Notations,
    /// Directly in `notations`, on every note of a chord.
    EveryNote,
    /// The note is a cue: written small for another player, not played.
    Cue,
    /// The notehead is a cross.
    CrossHead,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct FixtureMark {
    pub(crate) home: MarkHome,
    /// The finished element.
    pub(crate) xml: String,
}

/// Dynamics in the order of MusicXML 4.0; the niente `n` is among them.
pub(crate) const DYNAMICS: [&str; 25] = [
    "p", "pp", "ppp", "pppp", "ppppp", "pppppp", "f", "ff", "fff", "ffff", "fffff", "ffffff", "mp", "mf",
    "sf", "sfp", "sfpp", "fp", "rf", "rfz", "sfz", "sffz", "fz", "n", "pf",
];

/// The dynamic of this name, if it is one.
pub(crate) fn dynamic(name: &str) -> Option<&'static str> {
    DYNAMICS.into_iter().find(|known| *known == name)
}

/// Signs read by themselves, before any name.
const SIGNS: [(&str, MarkHome, &str); 7] = [
    (".", MarkHome::Articulations, "<staccato/>"),
    (">", MarkHome::Articulations, "<accent/>"),
    ("^", MarkHome::Articulations, "<strong-accent/>"),
    ("-", MarkHome::Articulations, "<tenuto/>"),
    ("'", MarkHome::Articulations, "<staccatissimo/>"),
    (",", MarkHome::Articulations, "<breath-mark/>"),
    ("//", MarkHome::Articulations, "<caesura/>"),
];

const NAMES: [(&str, MarkHome, &str); 38] = [
    ("staccato", MarkHome::Articulations, "<staccato/>"),
    ("accent", MarkHome::Articulations, "<accent/>"),
    ("marcato", MarkHome::Articulations, "<strong-accent/>"),
    ("tenuto", MarkHome::Articulations, "<tenuto/>"),
    ("wedge", MarkHome::Articulations, "<staccatissimo/>"),
    ("spiccato", MarkHome::Articulations, "<spiccato/>"),
    ("portato", MarkHome::Articulations, "<detached-legato/>"),
    ("stress", MarkHome::Articulations, "<stress/>"),
    ("breath", MarkHome::Articulations, "<breath-mark/>"),
    ("caesura", MarkHome::Articulations, "<caesura/>"),
    ("down", MarkHome::Technical, "<down-bow/>"),
    ("up", MarkHome::Technical, "<up-bow/>"),
    ("harmonic", MarkHome::Technical, "<harmonic><natural/></harmonic>"),
    ("artificial", MarkHome::Technical, "<harmonic><artificial/></harmonic>"),
    ("open", MarkHome::Technical, "<open-string/>"),
    ("thumb", MarkHome::Technical, "<thumb-position/>"),
    ("snap", MarkHome::Technical, "<snap-pizzicato/>"),
    ("stopped", MarkHome::Technical, "<stopped/>"),
    ("I", MarkHome::Technical, "<string>1</string>"),
    ("II", MarkHome::Technical, "<string>2</string>"),
    ("III", MarkHome::Technical, "<string>3</string>"),
    ("IV", MarkHome::Technical, "<string>4</string>"),
    ("0", MarkHome::Technical, "<fingering>0</fingering>"),
    ("1", MarkHome::Technical, "<fingering>1</fingering>"),
    ("2", MarkHome::Technical, "<fingering>2</fingering>"),
    ("3", MarkHome::Technical, "<fingering>3</fingering>"),
    ("4", MarkHome::Technical, "<fingering>4</fingering>"),
    ("trill", MarkHome::Ornaments, "<trill-mark/>"),
    ("turn", MarkHome::Ornaments, "<turn/>"),
    ("mordent", MarkHome::Ornaments, "<mordent/>"),
    ("invertedmordent", MarkHome::Ornaments, "<inverted-mordent/>"),
    ("fermata", MarkHome::Notations, "<fermata type=\"upright\"/>"),
    ("arp", MarkHome::EveryNote, "<arpeggiate/>"),
    ("arpup", MarkHome::EveryNote, "<arpeggiate direction=\"up\"/>"),
    ("arpdown", MarkHome::EveryNote, "<arpeggiate direction=\"down\"/>"),
    ("nonarp", MarkHome::EveryNote, "<non-arpeggiate type=\"bottom\"/>"),
    ("cue", MarkHome::Cue, ""),
    ("x", MarkHome::CrossHead, ""),
];

/// Reads the mark after its exclamation mark.
pub(crate) fn read(cursor: &mut CharacterCursor<'_>) -> FixtureRead<FixtureMark> {
    for (sign, home, xml) in SIGNS {
        if cursor.take_text(sign) {
            return Ok(FixtureMark { home, xml: xml.to_owned() });
        }
    }
    let from = cursor.position();
    let name = cursor.take_while(|c| c.is_ascii_alphanumeric());
    if let Some((_, home, xml)) = NAMES.into_iter().find(|(known, ..)| *known == name) {
        return Ok(FixtureMark { home, xml: xml.to_owned() });
    }
    if let Some(level) = dynamic(&name) {
        return Ok(FixtureMark { home: MarkHome::Dynamics, xml: format!("<{level}/>") });
    }
    if let Some(mark) = spanning(&name, cursor) {
        return Ok(mark);
    }
    let names: Vec<&str> = NAMES.iter().map(|(name, ..)| *name).collect();
    cursor.go_back(from);
    Err(cursor.error(format!(
        "a mark: . > ^ - ' , // or a dynamic or trem1 to trem4, trem1< trem1>, gliss< gliss>, wavy< wavy>, {}",
        names.join(", ")
    )))
}

/// Marks that reach from one note to another take their own bracket, not that of slurs: `!gliss<` … `!gliss>`.
fn spanning(name: &str, cursor: &mut CharacterCursor<'_>) -> Option<FixtureMark> {
    if let Some(strokes) = name.strip_prefix("trem").filter(|n| matches!(*n, "1" | "2" | "3" | "4")) {
        let kind = bracket(cursor).unwrap_or("single");
        let xml = format!("<tremolo type=\"{kind}\">{strokes}</tremolo>");
        return Some(FixtureMark { home: MarkHome::Ornaments, xml });
    }
    let (home, element) = match name {
        "gliss" => (MarkHome::Notations, "glissando"),
        "wavy" => (MarkHome::Ornaments, "wavy-line"),
        _ => return None,
    };
    let kind = bracket(cursor)?;
    Some(FixtureMark { home, xml: format!("<{element} number=\"1\" type=\"{kind}\"/>") })
}

fn bracket(cursor: &mut CharacterCursor<'_>) -> Option<&'static str> {
    if cursor.take('<') {
        Some("start")
    } else if cursor.take('>') {
        Some("stop")
    } else {
        None
    }
}
