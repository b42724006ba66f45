//! Breaks that somebody has asked for, as JSON: one a line.

use arcata_xml::seen_json;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::breaks::{AskedBreak, AskedBreaks, BreakOpening};

/// What the file calls its format.
const FORMAT: &str = "arcata-breaks";
/// The version that is written and read (by definition).
const VERSION: u64 = 1;
/// Largest file that is read, bytes: a hundred thousand breaks (a limit).
const LARGEST: usize = 16 << 20;

/// Pages and lines of parts that somebody has asked to begin at a bar.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct BreaksDocument {
    /// Always `arcata-breaks`.
    format: String,
    /// Version of the format; this is 1.
    version: u64,
    /// The breaks, by part and bar.
    breaks: Vec<BreakDocument>,
}

/// One break.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct BreakDocument {
    /// The part, as layers name it.
    part: String,
    /// The bar as printed.
    bar: String,
    /// The bar by position in the file, from 1.
    bar_ordinal: u32,
    /// What begins with it.
    begins: OpeningName,
    /// Sums of the bars around it, four before and four from it on; a bar that there is not is a dash.
    around: Vec<String>,
}

/// What begins at a break.
#[derive(Clone, Copy, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
enum OpeningName {
    /// A line of music.
    Line,
    /// A page.
    Page,
}

#[derive(Deserialize)]
struct BreaksHeading {
    format: Option<String>,
    version: Option<u64>,
}

/// The JSON Schema of a file of breaks.
#[must_use]
pub fn breaks_schema() -> schemars::Schema {
    schemars::schema_for!(BreaksDocument)
}

/// Breaks as JSON, each on a line of its own, with a newline at the end. The same breaks give the same bytes.
///
/// ```
/// use arcata_layer::{AskedBreaks, read_breaks, write_breaks};
///
/// let text = write_breaks(&AskedBreaks::default());
/// assert_eq!(text, "{\n\"format\": \"arcata-breaks\",\n\"version\": 1,\n\"breaks\": []\n}\n");
/// assert_eq!(read_breaks(&text), Ok(AskedBreaks::default()));
/// assert!(read_breaks("{\"format\": \"arcata-breaks\", \"version\": 2}").unwrap_err().contains("version 2"));
/// ```
#[must_use]
pub fn write_breaks(asked: &AskedBreaks) -> String {
    let line = |one: &AskedBreak| {
        let document = BreakDocument {
            part: one.part.clone(),
            bar: one.bar.clone(),
            bar_ordinal: one.bar_ordinal,
            begins: match one.begins {
                BreakOpening::Line => OpeningName::Line,
                BreakOpening::Page => OpeningName::Page,
            },
            around: one.around.clone(),
        };
        serde_json::to_string(&document).unwrap_or_default()
    };
    let lines: Vec<String> = asked.all().iter().map(line).collect();
    let lines = if lines.is_empty() { "[]".to_owned() } else { format!("[\n{}\n]", lines.join(",\n")) };
    seen_json(format!("{{\n\"format\": \"{FORMAT}\",\n\"version\": {VERSION},\n\"breaks\": {lines}\n}}\n"))
}

/// Breaks from JSON.
///
/// # Errors
/// Something else than such a file, one of a later version, one that is not sound; in words, with the line.
pub fn read_breaks(text: &str) -> Result<AskedBreaks, String> {
    if text.len() > LARGEST {
        return Err(format!("it holds more than {LARGEST} bytes, which no file of breaks does"));
    }
    let unsound = |problem: serde_json::Error| format!("it is not sound: {problem}");
    let heading: BreaksHeading = serde_json::from_str(text).map_err(unsound)?;
    if heading.format.as_deref() != Some(FORMAT) {
        return Err(format!("it is no file of breaks: that is JSON with \"format\": \"{FORMAT}\""));
    }
    match heading.version {
        Some(VERSION) => {}
        Some(later) => {
            return Err(format!(
                "it is written in version {later}, and this program reads version {VERSION}"
            ));
        }
        None => return Err("\"version\" is missing".to_owned()),
    }
    let document: BreaksDocument = serde_json::from_str(text).map_err(unsound)?;
    let one = |document: BreakDocument| AskedBreak {
        part: document.part,
        bar: document.bar,
        bar_ordinal: document.bar_ordinal,
        begins: match document.begins {
            OpeningName::Line => BreakOpening::Line,
            OpeningName::Page => BreakOpening::Page,
        },
        around: document.around,
    };
    let mut asked = AskedBreaks { breaks: document.breaks.into_iter().map(one).collect() };
    asked.put_in_order();
    Ok(asked)
}
