//! `arcata class`.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

use arcata_analysis::{Player, Source};
use arcata_bow::Profile;
use arcata_class::{GivenMaterial, HandInOutcome, Key, Task, TeachersHand, Words};
use arcata_engrave::Engraver;
use arcata_languages::{Saying, retold};
use arcata_review::trade_words;
use indicatif::{ProgressBar, ProgressFinish, ProgressStyle};

use crate::args::ClassArguments;
use crate::class_hand_ins::{HandedIn, handed_in};
use crate::class_one::{MadeBy, MadeSheet, Runs, SheetRequest, StudentNames, Whose, find, hash};
use crate::class_pages::{WrittenPages, is_small, write};
use crate::class_workers::{ClassSheetMaker, HandInLimits, NotMade};
use crate::failure::Failure;
use crate::{class_before, class_given, class_hand, class_key, class_workers, engraving, files};

pub(crate) fn run(arguments: &ClassArguments) -> Result<ExitCode, Failure> {
    let class = ClassFiles::read(arguments)?;
    let hand_ins = handed_in((&arguments.folder, &arguments.out), &class.task.names, composer)?;
    let names: Vec<&str> = hand_ins.iter().map(|hand_in| hand_in.name.as_str()).collect();
    for folder in ["sheets", "records"] {
        files::make_folder(&arguments.out.join(folder))?;
    }
    let key = class_key::with(&class_key::path(arguments), &names)?;
    let known = class.known(&key);
    let request = class.request(arguments, &known);
    let limits = HandInLimits { time: Duration::from_secs(arguments.limit), megabytes: arguments.memory };
    let all = make_all(&hand_ins, &key, &request, limits)?;
    class_before::carry(&request, &key)?;
    let nothing_from = nothing_from(&class.students, &hand_ins, &key, arguments);
    let written = write(&request, &all, &nothing_from)?;
    tell(&all, &written);
    if arguments.go_through {
        class_hand::go_through(arguments, written.to_go_through)?;
    }
    let unread = all.iter().any(|(_, made)| made.record.shown().is_none());
    Ok(if unread { ExitCode::from(1) } else { ExitCode::SUCCESS })
}

/// Makes the sheets of the hand-ins that a run tells this process of, one after another. The run has written the key.
pub(crate) fn work(arguments: &ClassArguments) -> Result<ExitCode, Failure> {
    let class = ClassFiles::read(arguments)?;
    let key = class_key::read(&class_key::path(arguments))?;
    let known = class.known(&key);
    let request = class.request(arguments, &known);
    class_workers::serve(|hand_in| {
        let whose = whose(hand_in, &key);
        let made = find(&whose, &request).make(&whose, &request);
        made.map(|_| ()).map_err(|failure| failure.to_string())
    })
    .map_err(|why| Failure::Folder { path: arguments.out.clone(), why })?;
    Ok(ExitCode::SUCCESS)
}

/// What a run is told by files besides the hand-ins.
struct ClassFiles {
    task: Task,
    profile: Profile,
    material: GivenMaterial,
    students: Vec<String>,
    hand: TeachersHand,
    words: Vec<Words>,
    engraver: Engraver,
    /// What every record is made of.
    made_of: String,
}

impl ClassFiles {
    fn read(arguments: &ClassArguments) -> Result<Self, Failure> {
        let failed = |why: String| Failure::Task { path: arguments.task.clone(), why: files::told(&why) };
        let text = files::read_text(&arguments.task).map_err(failed)?;
        let task = Task::read(&text).map_err(|error| failed(error.to_string()))?;
        let task = match task.profile_file() {
            None => task,
            Some(name) => {
                let described = files::read_text(&beside(arguments, name))
                    .map_err(|why| failed(format!("player = \"{name}\": {why}")))?;
                task.described_by(&described).map_err(failed)?
            }
        };
        let profile = task.profile().map_err(failed)?;
        files::call_things(trade_words(&profile));
        Ok(Self {
            material: class_given::material(&arguments.task, &task)?,
            students: arguments.students.as_deref().map(students).transpose()?.unwrap_or_default(),
            hand: class_hand::read(arguments)?,
            words: task.languages.iter().map(|language| Words::of(*language)).collect(),
            engraver: engraving::engraver(),
            made_of: made_of(&text, arguments, &task)?,
            task,
            profile,
        })
    }

    /// Everybody's names, which no page says. Who comes later must not be named by a sheet that was made before.
    fn known(&self, key: &Key) -> Vec<String> {
        let of_key = key.students.iter().map(|student| student.name.clone());
        let known: BTreeSet<String> = of_key.chain(self.students.iter().cloned()).collect();
        known.into_iter().collect()
    }

    fn request<'a>(&'a self, arguments: &'a ClassArguments, known: &'a [String]) -> SheetRequest<'a> {
        SheetRequest {
            made_of: hash(&[self.made_of.as_bytes(), known.join("\n").as_bytes()]),
            task: &self.task,
            material: &self.material,
            player: Player { profile: self.profile.clone(), told: Vec::new() },
            engraver: &self.engraver,
            words: &self.words,
            names: known,
            naming: if arguments.named { StudentNames::Own } else { StudentNames::Pseudonyms },
            out: &arguments.out,
            before: arguments.before.as_deref(),
            hand: &self.hand,
            runs: if arguments.anew { Runs::Anew } else { Runs::GoesOn },
        }
    }
}

/// The composer that a score names.
fn composer(bytes: Vec<u8>) -> Option<String> {
    Source::open(bytes).ok()?.score.composer
}

/// A file that the task names: it lies beside it.
fn beside(arguments: &ClassArguments, name: &str) -> PathBuf {
    arguments.task.with_file_name("").join(name)
}

/// What every record is made of besides the hand-in: another task, another model, another program make another sheet.
fn made_of(text: &str, arguments: &ClassArguments, task: &Task) -> Result<String, Failure> {
    let models =
        task.given.models.iter().flat_map(|model| [Some(&model.score), model.layer.as_ref()]).flatten();
    let mut given = Vec::new();
    for name in
        task.profile_file().into_iter().chain(task.given.melody.iter().chain(models).map(String::as_str))
    {
        let path = beside(arguments, name);
        given.push(files::read(&path, usize::MAX).map_err(|why| Failure::Read { path, why })?);
    }
    let bar = files::bar_word().said("bar").into_owned();
    let fixed = [env!("CARGO_PKG_VERSION").as_bytes(), text.as_bytes(), bar.as_bytes()];
    let pieces: Vec<&[u8]> = fixed.into_iter().chain(given.iter().map(Vec::as_slice)).collect();
    Ok(hash(&pieces))
}

/// The list of the class, a name a line.
fn students(path: &Path) -> Result<Vec<String>, Failure> {
    let text = files::read_text(path).map_err(|why| Failure::Read { path: path.to_owned(), why })?;
    let lines = text.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with('#'));
    Ok(lines.map(str::to_owned).collect())
}

/// Names on the list from whom nothing came, as pages say them. Who has never handed in has no pseudonym: only how many they are
/// is told.
fn nothing_from(
    students: &[String],
    hand_ins: &[HandedIn],
    key: &Key,
    arguments: &ClassArguments,
) -> Vec<String> {
    let came: BTreeSet<&str> = hand_ins.iter().map(|hand_in| hand_in.name.as_str()).collect();
    let missing: Vec<&String> = students.iter().filter(|name| !came.contains(name.as_str())).collect();
    if arguments.named {
        return missing.into_iter().cloned().collect();
    }
    let mut known: Vec<String> =
        missing.iter().filter_map(|name| key.pseudonym(name)).map(str::to_owned).collect();
    known.sort();
    let unknown = missing.len() - known.len();
    if unknown > 0 {
        known.push(format!("+ {unknown}"));
    }
    known
}

/// Whose a hand-in is, by the key.
fn whose<'a>(hand_in: &'a HandedIn, key: &'a Key) -> Whose<'a> {
    let pseudonym = key.pseudonym(&hand_in.name).unwrap_or_default();
    Whose { hand_in, pseudonym, stem: arcata_class::slug(pseudonym) }
}

/// What has become of one hand-in after another.
type MadeSheets<'a> = Vec<(Whose<'a>, MadeSheet)>;

/// As many at once as there are cores, each in a process of its own.
fn make_all<'a>(
    hand_ins: &'a [HandedIn],
    key: &'a Key,
    request: &SheetRequest<'_>,
    limits: HandInLimits,
) -> Result<MadeSheets<'a>, Failure> {
    let bar = ProgressBar::new(hand_ins.len() as u64).with_style(
        ProgressStyle::with_template("{bar:30} {pos}/{len} hand-ins, {eta} left")
            .unwrap_or_else(|_| ProgressStyle::default_bar()),
    );
    let bar = bar.with_finish(ProgressFinish::AndClear);
    let next = AtomicUsize::new(0);
    let work = || {
        let mut maker = ClassSheetMaker::new(limits);
        let mut made = Vec::new();
        while let Some((index, hand_in)) = {
            let index = next.fetch_add(1, Ordering::Relaxed);
            hand_ins.get(index).map(|hand_in| (index, hand_in))
        } {
            let whose = whose(hand_in, key);
            let sheet = one(&whose, request, &mut maker)
                .inspect_err(|_| next.store(hand_ins.len(), Ordering::Relaxed))?;
            made.push((index, (whose, sheet)));
            bar.inc(1);
        }
        Ok(made)
    };
    let cores = std::thread::available_parallelism().map_or(1, usize::from).min(hand_ins.len());
    let done: Vec<Result<_, Failure>> = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..cores).map(|_| scope.spawn(work)).collect();
        let gone =
            || Failure::Folder { path: request.out.to_owned(), why: files::told("the program failed") };
        threads.into_iter().map(|thread| thread.join().unwrap_or_else(|_| Err(gone()))).collect()
    });
    let mut all = Vec::new();
    for made in done {
        all.extend(made?);
    }
    all.sort_by_key(|(index, _)| *index);
    Ok(all.into_iter().map(|(_, made)| made).collect())
}

fn one(
    whose: &Whose<'_>,
    request: &SheetRequest<'_>,
    maker: &mut ClassSheetMaker,
) -> Result<MadeSheet, Failure> {
    let found = find(whose, request);
    if let Some(kept) = found.kept(whose, request) {
        return Ok(kept);
    }
    match maker.make(whose.hand_in) {
        Ok(()) => match found.made(whose, request) {
            Some(made) => Ok(made),
            // The file has become another meanwhile, or somebody has taken its record away.
            None => find(whose, request).make(whose, request),
        },
        Err(NotMade::HandIn(why)) => found.give_up(whose, request, why),
        Err(NotMade::Writing(why)) => Err(Failure::Folder { path: request.out.to_owned(), why }),
        Err(NotMade::NoWorker) => found.make(whose, request),
    }
}

/// What the teacher reads on the terminal.
fn tell(all: &[(Whose<'_>, MadeSheet)], written: &WrittenPages) {
    let read = all.iter().filter(|(_, made)| made.record.shown().is_some()).count();
    let kept = all.iter().filter(|(_, made)| made.by == MadeBy::RunBefore).count();
    let wording = files::wording();
    let done = Saying::new("class-done").with("read", read).with("all", all.len()).with("kept", kept);
    let mut text = format!("{}\n", wording.say(&done));
    let mut add = |saying: Saying| text.push_str(&format!("{}\n", wording.say(&saying)));
    for (whose, made) in all {
        let Whose { hand_in, pseudonym, .. } = whose;
        let of = |key: &'static str| {
            Saying::new(key).quoting("file", &hand_in.file).quoting("pseudonym", pseudonym.to_string())
        };
        if let HandInOutcome::Unreadable { why } = &made.record.outcome {
            add(of("class-not-read").with("why", retold(why)));
        }
        if made.by == MadeBy::NewFile {
            add(of("class-new-file"));
        }
    }
    if let Some((path, pairs)) = &written.alike {
        let alike = Saying::new("class-alike-told").with("pairs", *pairs);
        add(alike.quoting("path", path.display().to_string()));
    }
    add(Saying::new("class-for-you").quoting("path", written.index.display().to_string()));
    let small = if is_small(read) { "yes" } else { "no" };
    let to_show = Saying::new("class-shown").quoting("path", written.to_show.display().to_string());
    add(to_show.choosing("small", small));
    files::show(&files::wrapped(&text));
}
