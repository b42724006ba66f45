//! Reading a task file, TOML.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use arcata_bow::Style;
use arcata_bow::profile::Shipped;
use arcata_languages::Language;
use arcata_report::sheet::Paper;
use arcata_review::{Family, REGISTER, Severity};
use serde::Deserialize;
use toml::Spanned;

use super::{
    Criterion, Expected, Model, NameOf, Repairs, SheetSettings, StudentNaming, Task, TaskError, TaskGiven,
    TaskPlayer, nearest, profile,
};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-task";
/// The version that is read.
const VERSION: u32 = 1;
/// A sheet of one page holds no more passages.
const MOST_PASSAGES: u8 = 4;

/// What is read before anything else: the rest may be another in another version.
#[derive(Deserialize)]
struct TaskHead {
    format: Spanned<String>,
    version: Spanned<u32>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
struct TaskFile {
    #[serde(rename = "format")]
    _format: String,
    #[serde(rename = "version")]
    _version: u32,
    title: Spanned<String>,
    due: Option<String>,
    languages: Option<Spanned<Vec<Spanned<String>>>>,
    player: Option<Spanned<String>>,
    style: Option<Spanned<String>>,
    tempo: Option<Spanned<u32>>,
    #[serde(default)]
    trains: Trains,
    #[serde(default)]
    rules: Rules,
    #[serde(default)]
    thresholds: BTreeMap<Spanned<String>, Spanned<i64>>,
    #[serde(default)]
    given: GivenEntry,
    #[serde(default)]
    sheet: SheetEntry,
    #[serde(default)]
    criterion: Vec<CriterionEntry>,
    #[serde(default)]
    words: BTreeMap<Spanned<String>, String>,
    #[serde(default)]
    names: NamesEntry,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Trains {
    #[serde(default)]
    rules: Vec<Spanned<String>>,
    #[serde(default)]
    expects: Vec<Spanned<String>>,
    #[serde(default)]
    parts: Vec<Spanned<usize>>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Rules {
    #[serde(default)]
    off: Vec<Spanned<String>>,
    #[serde(default)]
    only: Vec<Spanned<String>>,
    lightest: Option<Spanned<String>>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct GivenEntry {
    melody: Option<String>,
    part: Option<Spanned<usize>>,
    #[serde(default)]
    model: Vec<ModelEntry>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ModelEntry {
    name: String,
    score: String,
    layer: Option<String>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct SheetEntry {
    passages: Option<Spanned<u8>>,
    repairs: Option<Spanned<String>>,
    paper: Option<Spanned<String>>,
    say: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CriterionEntry {
    words: String,
    #[serde(default)]
    rules: Vec<Spanned<String>>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct NamesEntry {
    of: Option<Spanned<String>>,
    before: Option<String>,
}

/// The text of the file, to say where something stands.
struct TaskText<'a>(&'a str);

impl TaskText<'_> {
    fn wrong(&self, span: &Range<usize>, why: String) -> TaskError {
        let before = self.0.get(..span.start.min(self.0.len())).unwrap_or_default();
        let line = before.matches('\n').count() + 1;
        let column = before.rsplit('\n').next().unwrap_or_default().chars().count() + 1;
        TaskError { line, column, why }
    }

    fn broken(&self, error: &toml::de::Error) -> TaskError {
        let why = error.message().trim().replace('\n', "; ");
        let why = match why.strip_prefix("missing field ") {
            Some(field) => format!("a line with {} is missing", field.replace('`', "\"")),
            None => why.replace('`', "\""),
        };
        self.wrong(&error.span().unwrap_or(0..0), why)
    }

    /// One of several names.
    fn one_of<T: Copy>(
        &self,
        given: Option<&Spanned<String>>,
        what: &str,
        all: &[(&'static str, T)],
    ) -> Result<Option<T>, TaskError> {
        let Some(given) = given else { return Ok(None) };
        let found = all.iter().find(|(name, _)| *name == given.get_ref().as_str());
        found.map(|(_, value)| Some(*value)).ok_or_else(|| {
            let known: Vec<&str> = all.iter().map(|(name, _)| *name).collect();
            let why = format!("{what} \"{}\" is not known: write {}", given.get_ref(), known.join(", "));
            self.wrong(&given.span(), why)
        })
    }

    /// The rules that names stand for: ids, or chapters, which stand for all their rules.
    fn rules(&self, names: &[Spanned<String>], with: With) -> Result<BTreeSet<String>, TaskError> {
        let mut rules = BTreeSet::new();
        for name in names {
            rules.extend(self.rule(name.get_ref(), &name.span(), with)?);
        }
        Ok(rules)
    }

    fn rule(&self, name: &str, span: &Range<usize>, with: With) -> Result<Vec<String>, TaskError> {
        if let Some(family) = Family::ALL.into_iter().find(|family| family.name() == name) {
            let of_family = REGISTER.iter().filter(|rule| rule.card.family == family);
            return Ok(of_family.map(|rule| rule.card.id.to_owned()).collect());
        }
        let expected = Expected::of_id(name).is_some() && with == With::Expectations;
        if expected || REGISTER.iter().any(|rule| rule.card.id == name) {
            return Ok(vec![name.to_owned()]);
        }
        let known = REGISTER.iter().map(|rule| rule.card.id).chain(Family::ALL.map(Family::name));
        let expectations = if with == With::Expectations { Expected::ALL.as_slice() } else { &[] };
        let meant = nearest(name, known.chain(expectations.iter().map(|expected| expected.id())));
        let do_this = meant.map_or_else(
            || "\"arcata rules\" lists them".to_owned(),
            |meant| format!("perhaps \"{meant}\" is meant"),
        );
        Err(self.wrong(span, format!("no rule is called \"{name}\": {do_this}")))
    }
}

/// Whether what is expected can stand among rules.
#[derive(Clone, Copy, PartialEq, Eq)]
enum With {
    Rules,
    Expectations,
}

pub(super) fn read(content: &str) -> Result<Task, TaskError> {
    let text = TaskText(content);
    let TaskHead { format, version } = toml::from_str(content).map_err(|error| text.broken(&error))?;
    if format.get_ref() != FORMAT {
        return Err(text.wrong(&format.span(), format!("the format is not \"{FORMAT}\": this is no task")));
    }
    if *version.get_ref() != VERSION {
        let why = format!("version {} is not known, only version {VERSION}", version.get_ref());
        return Err(text.wrong(&version.span(), why));
    }
    let file: TaskFile = toml::from_str(content).map_err(|error| text.broken(&error))?;
    if file.title.get_ref().trim().is_empty() {
        return Err(text.wrong(&file.title.span(), "the title is empty: give the task a name".to_owned()));
    }
    let severities = [Severity::A, Severity::B, Severity::C, Severity::D];
    let severities = severities.map(|severity| (["A", "B", "C", "D"][severity as usize], severity));
    let lightest = text.one_of(file.rules.lightest.as_ref(), "the severity", &severities)?;
    let player = player(&text, file.player.as_ref())?;
    let style =
        text.one_of(file.style.as_ref(), "the style", &Style::ALL.map(|style| (style.name(), style)))?;
    Ok(Task {
        title: file.title.get_ref().trim().to_owned(),
        due: file.due.clone().filter(|due| !due.trim().is_empty()),
        languages: languages(&text, file.languages.as_ref())?,
        style,
        tempo: number(&text, file.tempo.as_ref(), "the tempo, in quarter notes a minute,", 10..=400)?,
        trains: text.rules(&file.trains.rules, With::Rules)?,
        expects: expected(&text, &file.trains.expects)?,
        parts: parts(&text, file.trains.parts)?,
        off: text.rules(&file.rules.off, With::Rules)?,
        only: text.rules(&file.rules.only, With::Rules)?,
        lightest: lightest.unwrap_or(Severity::D),
        thresholds: thresholds(&text, &player, file.thresholds)?,
        player,
        given: given(&text, file.given)?,
        sheet: sheet(&text, file.sheet)?,
        criteria: criteria(&text, file.criterion)?,
        words: words(&text, file.words)?,
        names: StudentNaming {
            of: text
                .one_of(file.names.of.as_ref(), "the source", &NameOf::ALL.map(|of| (of.name(), of)))?
                .unwrap_or_default(),
            before: file.names.before.filter(|before| !before.is_empty()),
        },
    })
}

fn number(
    text: &TaskText<'_>,
    given: Option<&Spanned<u32>>,
    what: &str,
    allowed: std::ops::RangeInclusive<u32>,
) -> Result<Option<u32>, TaskError> {
    match given {
        Some(given) if !allowed.contains(given.get_ref()) => Err(text.wrong(
            &given.span(),
            format!("{what} is {}: write {} to {}", given.get_ref(), allowed.start(), allowed.end()),
        )),
        given => Ok(given.map(|given| *given.get_ref())),
    }
}

fn languages(
    text: &TaskText<'_>,
    given: Option<&Spanned<Vec<Spanned<String>>>>,
) -> Result<Vec<Language>, TaskError> {
    let Some(given) = given else { return Ok(vec![Language::default()]) };
    let mut languages = Vec::new();
    for name in given.get_ref() {
        let language = name.get_ref().parse().map_err(|why: String| text.wrong(&name.span(), why))?;
        if !languages.contains(&language) {
            languages.push(language);
        }
    }
    if languages.is_empty() {
        return Err(text.wrong(&given.span(), "no language is named: write one, such as [\"en\"]".to_owned()));
    }
    Ok(languages)
}

fn expected(text: &TaskText<'_>, given: &[Spanned<String>]) -> Result<Vec<Expected>, TaskError> {
    let all = Expected::ALL.map(|expected| (expected.name(), expected));
    let mut expects = Vec::new();
    for name in given {
        if let Some(expected) = text.one_of(Some(name), "what is expected,", &all)?
            && !expects.contains(&expected)
        {
            expects.push(expected);
        }
    }
    Ok(expects)
}

fn parts(text: &TaskText<'_>, given: Vec<Spanned<usize>>) -> Result<Vec<usize>, TaskError> {
    match given.iter().find(|part| *part.get_ref() == 0) {
        Some(part) => Err(text.wrong(&part.span(), "parts are counted from 1".to_owned())),
        None => Ok(given.into_iter().map(Spanned::into_inner).collect()),
    }
}

/// What ends so is the name of a profile file, and no mistyped name of a player.
const PROFILE_ENDING: &str = ".toml";

fn player(text: &TaskText<'_>, given: Option<&Spanned<String>>) -> Result<TaskPlayer, TaskError> {
    let Some(given) = given else { return Ok(TaskPlayer::Shipped(Shipped::default())) };
    let name = given.get_ref();
    if let Some(shipped) = Shipped::ALL.into_iter().find(|shipped| shipped.name() == name) {
        return Ok(TaskPlayer::Shipped(shipped));
    }
    if name.ends_with(PROFILE_ENDING) {
        return Ok(TaskPlayer::File { name: name.clone(), text: None });
    }
    let known = Shipped::ALL.map(Shipped::name).join(", ");
    let why = format!(
        "the player \"{name}\" is not known: write {known}, or a profile file whose name ends in {PROFILE_ENDING}"
    );
    Err(text.wrong(&given.span(), why))
}

/// Each is tried in a profile of its own, so that it is told where it stands. Names and bounds are the same in every profile.
fn thresholds(
    text: &TaskText<'_>,
    player: &TaskPlayer,
    given: BTreeMap<Spanned<String>, Spanned<i64>>,
) -> Result<BTreeMap<String, i64>, TaskError> {
    let usual = TaskPlayer::Shipped(Shipped::default());
    let player = if matches!(player, TaskPlayer::Shipped(_)) { player } else { &usual };
    let mut thresholds = BTreeMap::new();
    for (name, value) in given {
        let span = name.span();
        let is_name = |letter: char| letter.is_ascii_alphanumeric() || letter == '_';
        let known = name.get_ref().chars().all(is_name);
        let alone: BTreeMap<String, i64> = [(name.into_inner(), value.into_inner())].into();
        let tried = if known { profile(player, None, &alone) } else { Err("no such setting".to_owned()) };
        tried.map_err(|why| text.wrong(&span, format!("[thresholds]: {why}")))?;
        thresholds.extend(alone);
    }
    Ok(thresholds)
}

fn given(text: &TaskText<'_>, entry: GivenEntry) -> Result<TaskGiven, TaskError> {
    if let Some(part) = entry.part.as_ref().filter(|part| *part.get_ref() == 0) {
        return Err(text.wrong(&part.span(), "parts are counted from 1".to_owned()));
    }
    let models = entry.model.into_iter();
    Ok(TaskGiven {
        melody: entry.melody,
        part: entry.part.map(Spanned::into_inner),
        models: models.map(|ModelEntry { name, score, layer }| Model { name, score, layer }).collect(),
    })
}

fn sheet(text: &TaskText<'_>, entry: SheetEntry) -> Result<SheetSettings, TaskError> {
    let passages = match &entry.passages {
        Some(given) if *given.get_ref() > MOST_PASSAGES => {
            let why =
                format!("{} passages do not fit on one page: write 0 to {MOST_PASSAGES}", given.get_ref());
            return Err(text.wrong(&given.span(), why));
        }
        given => given.as_ref().map_or(3, |given| *given.get_ref()),
    };
    let papers = [("a4", Paper::A4), ("letter", Paper::Letter)];
    let repairs = Repairs::ALL.map(|repairs| (repairs.name(), repairs));
    Ok(SheetSettings {
        passages: usize::from(passages),
        repairs: text
            .one_of(entry.repairs.as_ref(), "what becomes of repairs,", &repairs)?
            .unwrap_or_default(),
        paper: text.one_of(entry.paper.as_ref(), "the paper", &papers)?.unwrap_or_default(),
        say: entry.say.filter(|say| !say.trim().is_empty()),
    })
}

fn criteria(text: &TaskText<'_>, entries: Vec<CriterionEntry>) -> Result<Vec<Criterion>, TaskError> {
    let read = |entry: CriterionEntry| {
        Ok(Criterion { words: entry.words, rules: text.rules(&entry.rules, With::Expectations)? })
    };
    entries.into_iter().map(read).collect()
}

fn words(
    text: &TaskText<'_>,
    given: BTreeMap<Spanned<String>, String>,
) -> Result<BTreeMap<String, String>, TaskError> {
    let mut words = BTreeMap::new();
    for (name, said) in given {
        let span = name.span();
        for rule in text.rule(name.get_ref(), &span, With::Expectations)? {
            words.insert(rule, said.clone());
        }
    }
    Ok(words)
}
