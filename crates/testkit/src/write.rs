//! Writes a fixture as MusicXML, in the order the MusicXML 4.0 schema asks for.

use num_integer::Integer;

use crate::fixture::Fixture;
use crate::model::{
    BarFill, BarStyle, Clef, Direction, EndingStop, FixtureBar, FixtureChange, FixtureItem, FixturePart,
    FixtureSound, FixtureTempo, Fraction, Leave, Metre, Mode, TempoEquals, Wedge, WrittenValue,
};
use crate::settle::opening_changes;
use crate::write_note;

/// The whole document, partwise or timewise.
pub(crate) fn document(fixture: &Fixture) -> String {
    let header = &fixture.header;
    let (root, body) = if header.asks(Leave::Timewise) {
        ("score-timewise", timewise(fixture))
    } else {
        ("score-partwise", partwise(fixture))
    };
    let mut out = String::from("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.push_str(&format!("<{root} version=\"{}\">\n", header.version));
    if let Some(title) = &header.title {
        out.push_str(&format!("  <work><work-title>{}</work-title></work>\n", escape(title)));
    }
    if let Some(composer) = &header.composer {
        let composer = escape(composer);
        out.push_str(&format!(
            "  <identification><creator type=\"composer\">{composer}</creator></identification>\n"
        ));
    }
    out.push_str(&part_list(fixture));
    out.push_str(&body);
    out.push_str(&format!("</{root}>\n"));
    out
}

fn part_list(fixture: &Fixture) -> String {
    let mut out = String::from("  <part-list>\n");
    for (index, part) in fixture.parts.iter().enumerate() {
        let id = index + 1;
        let name = escape(&part.name);
        out.push_str(&format!("    <score-part id=\"P{id}\"><part-name>{name}</part-name>"));
        if let Some(abbreviation) = &part.abbreviation {
            out.push_str(&format!("<part-abbreviation>{}</part-abbreviation>", escape(abbreviation)));
        }
        if part.sound.is_some() || part.program.is_some() {
            out.push_str(&format!(
                "<score-instrument id=\"P{id}-I1\"><instrument-name>{name}</instrument-name>"
            ));
            if let Some(sound) = &part.sound {
                out.push_str(&format!("<instrument-sound>{}</instrument-sound>", escape(sound)));
            }
            out.push_str("</score-instrument>");
        }
        if let Some(program) = part.program {
            out.push_str(&format!(
                "<midi-instrument id=\"P{id}-I1\"><midi-program>{program}</midi-program></midi-instrument>"
            ));
        }
        out.push_str("</score-part>\n");
    }
    out.push_str("  </part-list>\n");
    out
}

fn partwise(fixture: &Fixture) -> String {
    let mut out = String::new();
    for (index, part) in fixture.parts.iter().enumerate() {
        out.push_str(&format!("  <part id=\"P{}\">\n", index + 1));
        let writer = PartWriter::new(fixture, part);
        for (bar_index, bar) in part.bars.iter().enumerate() {
            out.push_str(&format!("    <measure{}>\n", measure_attributes(bar)));
            out.push_str(&writer.bar(bar_index, bar));
            out.push_str("    </measure>\n");
        }
        out.push_str("  </part>\n");
    }
    out
}

fn timewise(fixture: &Fixture) -> String {
    let writers: Vec<PartWriter<'_>> =
        fixture.parts.iter().map(|part| PartWriter::new(fixture, part)).collect();
    let bars = fixture.parts.iter().map(|part| part.bars.len()).max().unwrap_or(0);
    let mut out = String::new();
    for bar_index in 0..bars {
        let attributes =
            fixture.parts.iter().find_map(|part| part.bars.get(bar_index)).map(measure_attributes);
        out.push_str(&format!("    <measure{}>\n", attributes.unwrap_or_default()));
        for (index, writer) in writers.iter().enumerate() {
            if let Some(bar) = writer.part.bars.get(bar_index) {
                out.push_str(&format!("  <part id=\"P{}\">\n", index + 1));
                out.push_str(&writer.bar(bar_index, bar));
                out.push_str("  </part>\n");
            }
        }
        out.push_str("    </measure>\n");
    }
    out
}

fn measure_attributes(bar: &FixtureBar) -> String {
    let unnumbered = bar.fill == BarFill::Unnumbered || bar.label == "0";
    format!(" number=\"{}\"{}", bar.label, if unnumbered { " implicit=\"yes\"" } else { "" })
}

/// Writes the bars of one part in divisions that make all its lengths whole numbers.
pub(crate) struct PartWriter<'a> {
    fixture: &'a Fixture,
    pub(crate) part: &'a FixturePart,
    /// Divisions of a quarter note.
    divisions: i64,
    pub(crate) staves: u32,
}

impl<'a> PartWriter<'a> {
    fn new(fixture: &'a Fixture, part: &'a FixturePart) -> Self {
        let quarter = Fraction::from_integer(4);
        let divisions = part.events.iter().map(|event| *(event.settled.length * quarter).denom());
        Self { fixture, part, divisions: divisions.fold(1, |all, one| all.lcm(&one)), staves: part.staves() }
    }

    /// A length in divisions; whole, because the divisions were chosen so.
    pub(crate) fn duration(&self, length: Fraction) -> i64 {
        (length * 4 * self.divisions).to_integer()
    }

    fn bar(&self, index: usize, bar: &FixtureBar) -> String {
        let mut out = left_bar_line(bar);
        if bar.starts_page {
            out.push_str("      <print new-page=\"yes\"/>\n");
        }
        if index == 0 {
            out.push_str(&self.first_attributes(bar));
        }
        if let Some(count) = bar.rest_bars {
            out.push_str(&format!(
                "      <attributes><measure-style><multiple-rest>{count}</multiple-rest></measure-style></attributes>\n"
            ));
        }
        let mut opening = index == 0;
        for item in &bar.items {
            opening &= !matches!(item, FixtureItem::Event(_) | FixtureItem::Voices(_));
            // Changes at the top of the part are already in its first attributes.
            if !(opening && matches!(item, FixtureItem::Change(_))) {
                self.item(&mut out, item, None);
            }
        }
        out.push_str(&right_bar_line(bar));
        out
    }

    /// One item; `voices` says which voice it belongs to where there are several.
    fn item(&self, out: &mut String, item: &FixtureItem, voice: Option<u32>) {
        match item {
            FixtureItem::Event(index) => {
                let event = &self.part.events[*index];
                match event.sound {
                    FixtureSound::Gap => out.push_str(&format!(
                        "      <forward><duration>{}</duration>{}{}</forward>\n",
                        self.duration(event.settled.length),
                        voice.map(|voice| format!("<voice>{voice}</voice>")).unwrap_or_default(),
                        self.staff(event.staff),
                    )),
                    _ => write_note::write(out, self, event),
                }
            }
            FixtureItem::Direction(direction, staff) => {
                out.push_str(&direction_xml(direction, voice, &self.staff(*staff)));
            }
            FixtureItem::Change(change) => {
                out.push_str(&format!(
                    "      <attributes>{}</attributes>\n",
                    change_xml(change, self.staves)
                ));
            }
            FixtureItem::Voices(voices) => self.voices(out, voices),
        }
    }

    fn voices(&self, out: &mut String, voices: &[Vec<FixtureItem>]) {
        let lengths: Vec<Fraction> = voices.iter().map(|voice| self.length(voice)).collect();
        let longest = lengths.iter().max().copied().unwrap_or_default();
        for (index, (voice, items)) in (1..).zip(voices).enumerate() {
            for item in items {
                self.item(out, item, Some(voice));
            }
            let last = index + 1 == voices.len();
            let (element, length) =
                if last { ("forward", longest - lengths[index]) } else { ("backup", lengths[index]) };
            if length > Fraction::default() {
                let duration = self.duration(length);
                out.push_str(&format!("      <{element}><duration>{duration}</duration></{element}>\n"));
            }
        }
    }

    fn length(&self, items: &[FixtureItem]) -> Fraction {
        items
            .iter()
            .map(|item| match item {
                FixtureItem::Event(index) => self.part.events[*index].settled.length,
                _ => Fraction::default(),
            })
            .sum()
    }

    pub(crate) fn staff(&self, staff: u32) -> String {
        if self.staves > 1 { format!("<staff>{staff}</staff>") } else { String::new() }
    }

    fn first_attributes(&self, bar: &FixtureBar) -> String {
        let header = &self.fixture.header;
        let mut key = FixtureChange::Key(header.key);
        let mut time = FixtureChange::Time(header.metre.clone());
        let mut clefs = usual_clefs(&self.part.name, self.staves);
        let mut transpose = usual_transposition(&self.part.name);
        for change in opening_changes(bar) {
            match change {
                FixtureChange::Key(_) => key = change.clone(),
                FixtureChange::Time(_) => time = change.clone(),
                FixtureChange::Transpose(_) => transpose = Some(change.clone()),
                FixtureChange::Clef(clef) => {
                    clefs.retain(|other| other.staff != clef.staff);
                    clefs.push(*clef);
                }
            }
        }
        clefs.sort_by_key(|clef| clef.staff);
        let mut out = format!("      <attributes><divisions>{}</divisions>", self.divisions);
        out.push_str(&change_xml(&key, self.staves));
        out.push_str(&change_xml(&time, self.staves));
        if self.staves > 1 {
            out.push_str(&format!("<staves>{}</staves>", self.staves));
        }
        for clef in clefs {
            out.push_str(&change_xml(&FixtureChange::Clef(clef), self.staves));
        }
        if let Some(transpose) = transpose {
            out.push_str(&change_xml(&transpose, self.staves));
        }
        out.push_str("</attributes>\n");
        out
    }
}

/// The clef an instrument is written in (common practice); a second staff takes the bass clef.
fn usual_clefs(name: &str, staves: u32) -> Vec<Clef> {
    let name = name.to_lowercase();
    let (sign, sign_line) = if name.contains("viola") {
        ('C', 3)
    } else if name.contains("cello") || name.contains("bass") {
        ('F', 4)
    } else {
        ('G', 2)
    };
    let mut clefs = vec![Clef { sign, sign_line, octave_change: 0, staff: 1 }];
    clefs.extend((2..=staves).map(|staff| Clef { sign: 'F', sign_line: 4, octave_change: 0, staff }));
    clefs
}

/// Double basses sound an octave below what is written (common practice).
fn usual_transposition(name: &str) -> Option<FixtureChange> {
    let name = name.to_lowercase();
    let bass = ["double bass", "contrabass", "string bass"].iter().any(|bass| name.contains(bass));
    bass.then_some(FixtureChange::Transpose(-12))
}

fn change_xml(change: &FixtureChange, staves: u32) -> String {
    match change {
        FixtureChange::Key(key) => {
            let mode = if key.mode == Mode::Minor { "minor" } else { "major" };
            format!("<key><fifths>{}</fifths><mode>{mode}</mode></key>", key.fifths)
        }
        FixtureChange::Time(metre) => metre_xml(metre),
        FixtureChange::Clef(clef) => {
            let number = if staves > 1 { format!(" number=\"{}\"", clef.staff) } else { String::new() };
            let octave = match clef.octave_change {
                0 => String::new(),
                change => format!("<clef-octave-change>{change}</clef-octave-change>"),
            };
            format!("<clef{number}><sign>{}</sign><line>{}</line>{octave}</clef>", clef.sign, clef.sign_line)
        }
        FixtureChange::Transpose(semitones) => transpose_xml(*semitones),
    }
}

fn transpose_xml(semitones: i32) -> String {
    // Letters passed in an interval of so many semitones: the simplest spelling, a fifth for seven.
    const LETTERS: [i32; 12] = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];
    let (octaves, chromatic) = (semitones / 12, semitones % 12);
    let letters = usize::try_from(chromatic.abs()).map_or(0, |size| LETTERS[size]);
    let diatonic = letters * chromatic.signum();
    let octaves =
        if octaves == 0 { String::new() } else { format!("<octave-change>{octaves}</octave-change>") };
    format!(
        "<transpose><diatonic>{diatonic}</diatonic><chromatic>{chromatic}</chromatic>{octaves}</transpose>"
    )
}

fn metre_xml(metre: &Metre) -> String {
    match metre {
        Metre::Common => "<time symbol=\"common\"><beats>4</beats><beat-type>4</beat-type></time>".to_owned(),
        Metre::Cut => "<time symbol=\"cut\"><beats>2</beats><beat-type>2</beat-type></time>".to_owned(),
        Metre::Free => "<time><senza-misura/></time>".to_owned(),
        Metre::Counted(groups) => {
            let groups: String = groups
                .iter()
                .map(|(beats, value)| format!("<beats>{beats}</beats><beat-type>{value}</beat-type>"))
                .collect();
            format!("<time>{groups}</time>")
        }
    }
}

fn left_bar_line(bar: &FixtureBar) -> String {
    if !bar.repeat_start && bar.ending_start.is_none() {
        return String::new();
    }
    let mut out = String::from("      <barline location=\"left\">");
    if bar.repeat_start {
        out.push_str("<bar-style>heavy-light</bar-style>");
    }
    if let Some(number) = &bar.ending_start {
        out.push_str(&format!("<ending number=\"{number}\" type=\"start\"/>"));
    }
    if bar.repeat_start {
        out.push_str("<repeat direction=\"forward\"/>");
    }
    out.push_str("</barline>\n");
    out
}

fn right_bar_line(bar: &FixtureBar) -> String {
    let style = match bar.end {
        BarStyle::Plain if bar.ending_stop.is_none() => return String::new(),
        BarStyle::Plain => "",
        BarStyle::Double => "<bar-style>light-light</bar-style>",
        BarStyle::Final | BarStyle::RepeatBack(_) => "<bar-style>light-heavy</bar-style>",
    };
    let ending = bar.ending_stop.as_ref().map(|(number, stop)| {
        let kind = if *stop == EndingStop::Closed { "stop" } else { "discontinue" };
        format!("<ending number=\"{number}\" type=\"{kind}\"/>")
    });
    let repeat = match bar.end {
        BarStyle::RepeatBack(Some(times)) => format!("<repeat direction=\"backward\" times=\"{times}\"/>"),
        BarStyle::RepeatBack(None) => "<repeat direction=\"backward\"/>".to_owned(),
        _ => String::new(),
    };
    format!("      <barline location=\"right\">{style}{}{repeat}</barline>\n", ending.unwrap_or_default())
}

fn direction_xml(direction: &Direction, voice: Option<u32>, staff: &str) -> String {
    let (placement, kind) = match direction {
        Direction::Dynamic(level) => ("below", format!("<dynamics><{level}/></dynamics>")),
        Direction::Words(words) => ("above", format!("<words>{}</words>", escape(words))),
        Direction::Rehearsal(label) => ("above", format!("<rehearsal>{}</rehearsal>", escape(label))),
        Direction::Tempo(tempo) => ("above", tempo_xml(tempo)),
        Direction::SoundTempo(rate) => return format!("      <sound tempo=\"{rate}\"/>\n"),
        Direction::Wedge(wedge) => ("below", wedge_xml(*wedge).to_owned()),
        Direction::DashesStart => ("above", "<dashes number=\"1\" type=\"start\"/>".to_owned()),
        Direction::DashesStop => ("above", "<dashes number=\"1\" type=\"stop\"/>".to_owned()),
    };
    let voice = voice.map(|voice| format!("<voice>{voice}</voice>")).unwrap_or_default();
    format!(
        "      <direction placement=\"{placement}\"><direction-type>{kind}</direction-type>{voice}{staff}</direction>\n"
    )
}

fn wedge_xml(wedge: Wedge) -> &'static str {
    match wedge {
        Wedge::Crescendo => "<wedge type=\"crescendo\"/>",
        Wedge::CrescendoFromNothing => "<wedge niente=\"yes\" type=\"crescendo\"/>",
        Wedge::Diminuendo => "<wedge type=\"diminuendo\"/>",
        Wedge::Stop => "<wedge type=\"stop\"/>",
        Wedge::StopToNothing => "<wedge niente=\"yes\" type=\"stop\"/>",
    }
}

fn tempo_xml(tempo: &FixtureTempo) -> String {
    let equals = match &tempo.equals {
        TempoEquals::PerMinute(rate) => format!("<per-minute>{rate}</per-minute>"),
        TempoEquals::Unit(unit) => unit_xml(*unit),
    };
    format!("<metronome>{}{equals}</metronome>", unit_xml(tempo.unit))
}

fn unit_xml(unit: WrittenValue) -> String {
    let dots = usize::try_from(unit.dots).unwrap_or_default();
    format!("<beat-unit>{}</beat-unit>{}", unit.name(), "<beat-unit-dot/>".repeat(dots))
}

/// Text as XML content.
pub(crate) fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
