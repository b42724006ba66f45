//! The pictures of a review: each finding as it stands, and with each of its proposals.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use arcata_analysis::Snapshot;
use arcata_bow::plan::Anchor;
use arcata_bow::{Join, Line, LineOptions, Link, Plan, Profile, Reading, plan};
use arcata_engrave::{Cutter, Engraver, LanePlan, Painter, Picture, PictureContent, PictureStyle, note_name};
use arcata_languages::{Saying, Wording};
use arcata_report::{DrawnPicture, FindingPictures};
use arcata_review::Finding;
use arcata_review::repair_words::place;
use arcata_review::words::bow;
use arcata_score::Score;
use arcata_xml::{Document, Limits};
use rayon::prelude::*;

use crate::waves::{Bars, Job, Wave, jobs, waves};

/// Bars that one picture shows at most: more are too small on a phone.
const MOST_BARS: u32 = 6;
/// Parts in a picture of a finding that means the whole score: those that speak for the section.
const MOST_PARTS: usize = 5;
/// Width of narrow pictures, mm.
const NARROW: f64 = 92.0;
/// Bars and parts that a narrow picture shows at most.
const NARROW_HOLDS: (u32, usize) = (3, 2);
/// Strokes told one by one in the words of a picture.
const TOLD: usize = 24;

/// What all pictures of one score share.
#[derive(Debug)]
pub struct Scenes<'a> {
    snapshot: &'a Snapshot,
    profile: &'a Profile,
    options: &'a LineOptions,
    engraver: &'a Engraver,
    wording: &'a Wording,
    style: PictureStyle,
    most_bars: u32,
    most_parts: usize,
}

/// Lines with their plans, of the score as it stands or of one with a proposal in it.
struct Staged<'a> {
    document: &'a Document,
    score: &'a Score,
    bowed: Vec<(&'a Line, &'a Plan)>,
    /// Notes that the finding is about, as they are named in pictures.
    about: BTreeSet<String>,
}

impl<'a> Scenes<'a> {
    /// Pictures of places in a score that was looked at, as wide as a column of text; who engraves, and in whose words.
    #[must_use]
    pub fn new(snapshot: &'a Snapshot, engraver: &'a Engraver, wording: &'a Wording) -> Self {
        let ground = snapshot.ground();
        let (profile, options) = (&ground.config.player.profile, &ground.options);
        let style = PictureStyle::column().in_words(wording);
        let (most_bars, most_parts) = (MOST_BARS, MOST_PARTS);
        Self { snapshot, profile, options, engraver, wording, style, most_bars, most_parts }
    }

    /// The same in narrower pictures, for sheets that have two of them beside each other on paper.
    #[must_use]
    pub fn narrow(mut self) -> Self {
        self.style.width = NARROW;
        (self.most_bars, self.most_parts) = NARROW_HOLDS;
        self
    }

    /// The pictures of all findings, on all cores. What cannot be drawn is left out: the words stand.
    #[must_use]
    pub fn draw(&self, findings: &[Finding]) -> Vec<FindingPictures> {
        let document = self.document();
        let cutter = Cutter::new(document, self.snapshot.score());
        let mut pictures: Vec<FindingPictures> =
            findings.par_iter().map(|finding| self.as_it_stands(&cutter, finding)).collect();
        let bars = Bars::new(document, self.snapshot.score());
        let jobs = jobs(findings, &bars, |finding| (self.parts(finding), self.bars(finding)));
        let drawn: Vec<_> = waves(jobs).par_iter().flat_map(|wave| self.with_proposals(wave)).collect();
        for ((finding, proposal), drawn) in drawn {
            pictures[finding].proposals[proposal] = drawn;
        }
        pictures
    }

    fn document(&self) -> &'a Document {
        self.snapshot.ground().source.file().document()
    }

    fn as_it_stands(&self, cutter: &Cutter<'_>, finding: &Finding) -> FindingPictures {
        let parts = self.parts(finding);
        let snapshot = self.snapshot;
        let staged = Staged {
            document: self.document(),
            score: snapshot.score(),
            bowed: snapshot
                .lines()
                .iter()
                .zip(snapshot.plans().iter().map(AsRef::as_ref))
                .filter(|(line, _)| parts.contains(&line.part))
                .collect(),
            about: self.about(finding),
        };
        FindingPictures {
            now: self.drawn(cutter, &staged, &self.bars(finding)),
            proposals: vec![None; finding.proposals.len()],
        }
    }

    fn parts(&self, finding: &Finding) -> Vec<usize> {
        finding.place.part.map_or_else(
            || {
                let mut parts: Vec<usize> = self.snapshot.lines().iter().map(|line| line.part).collect();
                parts.dedup();
                parts.truncate(self.most_parts);
                parts
            },
            |part| vec![part],
        )
    }

    /// The bars of the finding's notes, with a bar before; where that is little, with a bar after. All of one movement.
    fn bars(&self, finding: &Finding) -> RangeInclusive<u32> {
        let place = &finding.place;
        let part = place.part.and_then(|part| self.snapshot.score().parts.get(part));
        let notes = part.into_iter().flat_map(|part| {
            place.notes.iter().filter_map(|note| part.notes.get(note.0 as usize)).map(|note| note.bar)
        });
        let (first, last) =
            notes.fold((place.bar, place.bar), |(first, last), bar| (first.min(bar), last.max(bar)));
        let score = self.snapshot.score();
        let Some(movement) = score.movements.get(score.movement_of(place.bar)) else { return first..=last };
        let start = first.saturating_sub(1).max(*movement.bars.start());
        let last = last.max(start + 2).min(start + self.most_bars - 1).min(*movement.bars.end());
        start..=last
    }

    fn about(&self, finding: &Finding) -> BTreeSet<String> {
        let part = finding.place.part.and_then(|part| self.snapshot.score().parts.get(part));
        part.into_iter()
            .flat_map(|part| finding.place.notes.iter().filter_map(|note| part.notes.get(note.0 as usize)))
            .map(|note| note_name(note.node))
            .collect()
    }

    /// Bars in a score with proposals in it: read anew, bowed anew around the bars and as before elsewhere.
    fn with_proposals(&self, wave: &Wave<'_>) -> Vec<((usize, usize), Option<DrawnPicture>)> {
        let Some((document, score)) = self.changed(wave) else { return Vec::new() };
        let reading = Reading::new(&score, self.profile, self.options);
        let near = wave.near();
        let lines: Vec<(Line, Plan)> = near
            .par_iter()
            .flat_map_iter(|(part, near)| {
                let lines = reading.lines(*part).into_iter();
                lines.map(|line| {
                    let plan = self.planned_around(&line, near);
                    (line, plan)
                })
            })
            .collect();
        let cutter = Cutter::new(&document, &score);
        let draw = |job: &Job<'_>| {
            let bowed = lines.iter().filter(|(line, _)| job.parts.contains(&line.part));
            let staged = Staged {
                document: &document,
                score: &score,
                bowed: bowed.map(|(line, plan)| (line, plan)).collect(),
                about: BTreeSet::new(),
            };
            (job.at, self.drawn(&cutter, &staged, &job.bars))
        };
        wave.jobs.par_iter().map(draw).collect()
    }

    fn changed(&self, wave: &Wave<'_>) -> Option<(Document, Score)> {
        let bytes = self.document().apply(&wave.edits()?).ok()?;
        let document = Document::parse(bytes, &Limits::default()).ok()?;
        let mut score = arcata_score::read(&document);
        // Parts are called as on the desk, where they may be called otherwise than in the file.
        for (part, known) in score.parts.iter_mut().zip(&self.snapshot.score().parts) {
            part.name.clone_from(&known.name);
        }
        Some((document, score))
    }

    fn planned_around(&self, line: &Line, near: &[RangeInclusive<u32>]) -> Plan {
        let mut settings = self.profile.plan_settings(line.instrument);
        let snapshot = self.snapshot;
        let before = snapshot.lines().iter().position(|before| before.is_of(line));
        if let Some(before) = before {
            let is_far = |bar: u32| !near.iter().any(|near| near.contains(&bar));
            let far = line.strokes.iter().enumerate().filter(|(_, stroke)| is_far(stroke.bar));
            let strokes = &snapshot.lines()[before].strokes;
            settings.anchors = far
                .filter_map(|(index, stroke)| {
                    let old = strokes.binary_search_by_key(&stroke.onset, |old| old.onset).ok()?;
                    let planned = snapshot.plans()[before].strokes.get(old)?;
                    Some(Anchor {
                        stroke: index,
                        direction: Some(planned.direction),
                        link: Some(planned.link),
                    })
                })
                .collect();
        }
        plan(line, &settings)
    }

    fn drawn(
        &self,
        cutter: &Cutter<'_>,
        staged: &Staged<'_>,
        bars: &RangeInclusive<u32>,
    ) -> Option<DrawnPicture> {
        let hair = |line: &Line| self.profile.plan_settings(line.instrument).reach.hair;
        let lanes: Vec<LanePlan<'_>> = staged
            .bowed
            .iter()
            .map(|(line, plan)| LanePlan {
                line,
                first: 0,
                planned: &plan.strokes,
                hair: hair(line),
                name: String::new(),
                open: Vec::new(),
            })
            .collect();
        debug_assert_eq!(cutter.document().bytes(), staged.document.bytes());
        let content = PictureContent {
            title: String::new(),
            subtitle: String::new(),
            bars: bars.clone(),
            lanes: &lanes,
            captions: Vec::new(),
        };
        let pictures = Painter::new(cutter, self.engraver, &self.style).draw(&content).ok()?;
        let picture = pictures.into_iter().next()?;
        Some(DrawnPicture {
            svg: pointed(&picture.content, &staged.about),
            width: picture.width,
            height: picture.height,
            text: told((staged.score, self.wording), &staged.bowed, bars),
        })
    }
}

/// Names of notes are kept on those that the finding is about only, and not as ids: the same bars may
/// stand on the page several times.
fn pointed(content: &str, about: &BTreeSet<String>) -> String {
    let mut pieces = content.split(r#" id="note-"#);
    let mut out = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (number, rest) = piece.split_once('"').unwrap_or(("", piece));
        if about.contains(&format!("note-{number}")) {
            out.push_str(r#" data-about="""#);
        }
        out.push_str(rest);
    }
    out
}

/// A picture that was drawn elsewhere, with what the bows do in it in words.
#[must_use]
pub fn drawn_with_words(
    picture: &Picture,
    (score, wording): (&Score, &Wording),
    bowed: &[(&Line, &Plan)],
) -> DrawnPicture {
    let last = u32::try_from(score.bars.len()).unwrap_or(u32::MAX).saturating_sub(1);
    DrawnPicture {
        svg: pointed(&picture.content, &BTreeSet::new()),
        width: picture.width,
        height: picture.height,
        text: told((score, wording), bowed, &(0..=last)),
    }
}

/// What the bows do in the bars, in words.
fn told(
    (score, wording): (&Score, &Wording),
    bowed: &[(&Line, &Plan)],
    bars: &RangeInclusive<u32>,
) -> String {
    let label = |bar: u32| score.bars.get(bar as usize).map_or("", |bar| bar.label.as_str());
    let stretch =
        Saying::new("told-bars").quoting("first", label(*bars.start())).quoting("last", label(*bars.end()));
    let mut said = vec![wording.say(&stretch)];
    let mut room = TOLD;
    for (line, plan) in bowed {
        let first = line.strokes.partition_point(|stroke| stroke.bar < *bars.start());
        let here = line.strokes.iter().zip(&plan.strokes).skip(first);
        let here: Vec<String> = here
            .take_while(|(stroke, _)| stroke.bar <= *bars.end())
            .take(room)
            .map(|(stroke, planned)| {
                let how = match planned.link {
                    Link::Hooked => "hooked",
                    Link::Retake => "retake",
                    Link::Reset if stroke.join != Join::Entry => "reset",
                    Link::Reset | Link::Change => "change",
                };
                let said = Saying::new("told-stroke")
                    .with("at", place(score, line.part, stroke.bar, stroke.offset))
                    .choosing("bow", bow(planned.direction))
                    .choosing("link", how);
                wording.say(&said)
            })
            .collect();
        room -= here.len();
        if !here.is_empty() {
            let told =
                Saying::new("told-line").quoting("name", &line.name).quoting("strokes", here.join("; "));
            said.push(wording.say(&told));
        }
    }
    if said.len() == 1 {
        said.push(wording.word("told-none"));
    }
    said.join(". ")
}
