//! The acts of a session, and what they came to after each: going back is taking up what was there.
//!
//! What was there is kept for a number of acts behind and ahead. Beyond that the acts are done again from the beginning, which
//! plans nothing on the way: only bytes and states change, and the score is read where an act names notes.

use std::borrow::Cow;
use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;

use arcata_analysis::Source;
use arcata_layer::{Addresses, Layer, identity};
use arcata_score::Score;
use arcata_xml::{Document, Edit, EditList, Limits};
use sha2::{Digest as _, Sha256};

use crate::act::Act;
use crate::desk::{Base, Desk, edit_list};
use crate::layers::Layers;
use crate::session::SessionError;
use crate::state::{Given, SessionState};

/// How much is kept.
#[derive(Clone, Copy, Debug)]
struct Most {
    /// States, of few bowings each.
    states: usize,
    /// Bowings in all of them: of layers with thousands fewer states are kept, though never fewer than [`FEWEST`].
    bowings: usize,
    /// Scores that were read and planned: each change of the score itself, of tempo, player or style makes one.
    bases: usize,
}

/// Each moment holds its layers and the plan of a line. Unbounded, 80 of them took 756 MB after 10,000 acts on a quartet of 400
/// bars, which had asked for thousands of bows (`cargo bench -p arcata-workbench`).
const MOST: Most = Most { states: 80, bowings: 100_000, bases: 24 };

/// So many acts can be undone without doing all the others again.
const FEWEST: usize = 24;

impl Most {
    /// How many states like this one are kept.
    fn like(&self, state: &SessionState) -> usize {
        let bowings: usize = state.layers.all().iter().map(|one| one.layer.entries.len()).sum();
        self.states.min((self.bowings / bowings.max(1)).max(FEWEST))
    }
}

/// What the acts had come to at one moment.
#[derive(Clone, Debug)]
pub(crate) struct ActMoment {
    pub(crate) state: Arc<SessionState>,
    pub(crate) desk: Desk,
}

/// A moment of which the desk may have been given up.
#[derive(Clone, Debug)]
struct Kept {
    state: Arc<SessionState>,
    desk: Option<Desk>,
}

/// The acts, and what they came to.
#[derive(Debug)]
pub(crate) struct History {
    /// All acts that were not given up; those before `counting` count.
    acts: Vec<Act>,
    counting: usize,
    given: Given,
    most: Most,
    now: ActMoment,
    /// What was there after so many acts.
    kept: BTreeMap<usize, Kept>,
}

impl History {
    /// What the first `counting` of some acts come to. Acts that fit the score no more are left out and told.
    ///
    /// # Errors
    /// A score that cannot be read.
    pub(crate) fn of(
        score: (&[u8], Source),
        acts: Vec<Act>,
        counting: usize,
        given: Given,
    ) -> Result<(Self, Vec<String>), String> {
        Self::keeping(MOST, score, acts, (counting, given))
    }

    fn keeping(
        most: Most,
        (bytes, source): (&[u8], Source),
        acts: Vec<Act>,
        (counting, given): (usize, Given),
    ) -> Result<(Self, Vec<String>), String> {
        let folded = fold(&source, &acts[..counting], &given, most);
        let base = match folded.state.edits.is_empty() {
            true => Base::of(source, &folded.state, None)?,
            false => Base::new(bytes, &folded.state)?,
        };
        let base = Arc::new(base);
        let desk = Desk::new(base, &folded.state.layers.together(), None);
        let now = ActMoment { state: folded.state, desk };
        let mut history = Self { acts, counting, given, most, now, kept: BTreeMap::new() };
        history.keep_states(folded.last);
        history.keep();
        Ok((history, folded.lost))
    }

    pub(crate) const fn now(&self) -> &ActMoment {
        &self.now
    }

    /// How many acts can be undone, and how many done again.
    pub(crate) fn reach(&self) -> (usize, usize) {
        (self.counting, self.acts.len() - self.counting)
    }

    /// One act more, and what it has made; hands back what was before.
    pub(crate) fn did(&mut self, act: Act, made: ActMoment) -> ActMoment {
        self.acts.truncate(self.counting);
        self.acts.push(act);
        self.kept.split_off(&(self.counting + 1));
        self.go(self.counting + 1, made)
    }

    /// Goes to what was there after so many acts; hands back what was before.
    pub(crate) fn go(&mut self, counting: usize, there: ActMoment) -> ActMoment {
        self.counting = counting;
        let before = std::mem::replace(&mut self.now, there);
        self.keep();
        before
    }

    /// Gives up all that was there before.
    pub(crate) fn forget(&mut self) {
        self.kept.clear();
        self.keep();
    }

    /// What was there after so many acts.
    ///
    /// # Errors
    /// A score that cannot be read any more.
    pub(crate) fn moment(&mut self, bytes: &[u8], counting: usize) -> Result<ActMoment, SessionError> {
        if !self.kept.contains_key(&counting) {
            let source = Source::open(bytes.to_vec()).map_err(SessionError::Score)?;
            let folded = fold(&source, &self.acts[..counting], &self.given, self.most);
            self.keep_states(folded.last);
        }
        let Some(Kept { state, desk }) = self.kept.get(&counting).cloned() else {
            return Err(SessionError::Act("there is no such act".to_owned()));
        };
        if let Some(desk) = desk {
            return Ok(ActMoment { state, desk });
        }
        let alike = |kept: &&Kept| kept.desk.is_some() && kept.state.reads_as(&state);
        let base = match self.kept.values().find(alike).and_then(|kept| kept.desk.as_ref()) {
            Some(desk) => desk.base.clone(),
            None => {
                let base = Base::after(bytes, &state, &self.now.desk.base);
                base.map(Arc::new).map_err(SessionError::Score)?
            }
        };
        let desk = Desk::new(base, &state.layers.together(), Some(&self.now.desk));
        Ok(ActMoment { state, desk })
    }

    fn keep_states(&mut self, states: Vec<(usize, Arc<SessionState>)>) {
        for (counting, state) in states {
            self.kept.entry(counting).or_insert(Kept { state, desk: None });
        }
    }

    /// Keeps what is there now, and gives up what is farthest from it.
    fn keep(&mut self) {
        let ActMoment { state, desk } = self.now.clone();
        self.kept.insert(self.counting, Kept { state, desk: Some(desk) });
        let most = self.most.like(&self.now.state);
        while self.kept.len() > most {
            let first = self.kept.keys().next().copied().unwrap_or(0);
            let last = self.kept.keys().next_back().copied().unwrap_or(0);
            let from_now = |counting: usize| counting.abs_diff(self.counting);
            self.kept.remove(if from_now(first) >= from_now(last) { &first } else { &last });
        }
        let mut nearest: Vec<usize> = self.kept.keys().copied().collect();
        nearest.sort_by_key(|counting| counting.abs_diff(self.counting));
        let mut bases: Vec<Arc<Base>> = Vec::new();
        for counting in nearest {
            let Some(kept) = self.kept.get_mut(&counting) else { continue };
            let Some(desk) = &kept.desk else { continue };
            if bases.iter().any(|base| Arc::ptr_eq(base, &desk.base)) {
                continue;
            }
            if bases.len() < self.most.bases {
                bases.push(desk.base.clone());
            } else {
                kept.desk = None;
            }
        }
    }
}

/// Tells one state of a score from another.
pub(crate) fn checksum(document: &[u8]) -> String {
    let digest = Sha256::digest(document);
    digest.iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}

/// What acts come to.
struct FoldedActs {
    state: Arc<SessionState>,
    /// The states after the last acts, and after how many.
    last: Vec<(usize, Arc<SessionState>)>,
    /// Acts that fit the score no more, in words.
    lost: Vec<String>,
}

/// The score as the acts so far leave it; it is read where an act names notes.
struct ActedScore<'d> {
    /// The document as the file has it.
    like: &'d Document,
    text: Cow<'d, str>,
    score: PageMusic<'d>,
    /// Music with the same notes: the score itself, or one before it from which only signs on notes tell it.
    notes: PageMusic<'d>,
    sum: OnceCell<String>,
}

/// The music of a page.
#[derive(Clone)]
enum PageMusic<'d> {
    /// As somebody has read it before.
    Before(&'d Score),
    /// To be read where it is asked for.
    Once(Rc<OnceCell<Score>>),
}

/// Elements of signs on notes: with or without them the notes are the same, and stand at the same places.
const SIGNS: [&str; 18] = [
    "notations",
    "slur",
    "tied",
    "fermata",
    "technical",
    "down-bow",
    "up-bow",
    "articulations",
    "accent",
    "strong-accent",
    "staccato",
    "staccatissimo",
    "tenuto",
    "detached-legato",
    "spiccato",
    "stress",
    "breath-mark",
    "caesura",
];

/// Whether a change of a text puts in and takes out nothing but signs on notes.
fn changes_signs_alone(text: &str, edits: &EditList) -> bool {
    edits.edits().iter().all(|edit| {
        let gone = text.get(edit.range.clone());
        stays_inside_a_sign(text, edit)
            || gone.is_some_and(holds_signs_alone) && holds_signs_alone(&edit.insert)
    })
}

/// Whether an edit lies inside the tag of a sign, where it changes attributes: a slur that is drawn dashed.
fn stays_inside_a_sign(text: &str, edit: &Edit) -> bool {
    let (Some(before), Some(gone)) = (text.get(..edit.range.start), text.get(edit.range.clone())) else {
        return false;
    };
    let Some((opened, tag)) = before.rfind('<').map(|at| (at, &before[at + 1..])) else { return false };
    let name = tag.split(|c: char| c == '/' || c.is_whitespace()).next().unwrap_or_default();
    let plain = |piece: &str| !piece.contains(['<', '>']);
    before.rfind('>').is_none_or(|closed| closed < opened)
        && SIGNS.contains(&name)
        && plain(gone)
        && plain(&edit.insert)
}

/// Whether a piece of a file is whole elements of signs, or whole directions: words, dynamics and hairpins stand between notes.
fn holds_signs_alone(piece: &str) -> bool {
    let mut tags = piece.split('<');
    if !tags.next().unwrap_or_default().trim().is_empty() {
        return false;
    }
    let mut in_direction = false;
    let all = tags.all(|tag| {
        let Some((tag, after)) = tag.split_once('>') else { return false };
        let name = tag.trim_start_matches('/').split(|c: char| c == '/' || c.is_whitespace()).next();
        if name == Some("direction") {
            in_direction = !tag.starts_with('/');
        } else if in_direction {
            return true;
        } else if !name.is_some_and(|name| SIGNS.contains(&name)) {
            return false;
        }
        in_direction || after.trim().is_empty()
    });
    all && !in_direction
}

impl<'d> ActedScore<'d> {
    fn new(like: &'d Document, text: Cow<'d, str>, score: PageMusic<'d>) -> Self {
        Self { like, text, notes: score.clone(), score, sum: OnceCell::new() }
    }

    fn score(&self) -> &Score {
        let once = match &self.score {
            PageMusic::Before(score) => return score,
            PageMusic::Once(once) => once,
        };
        once.get_or_init(|| {
            let document = Document::parse(self.like.encoded(&self.text), &Limits::default());
            // The acts were done on this text before: it is a document.
            document.map_or_else(|_| Score::default(), |document| arcata_score::read(&document))
        })
    }

    /// A score with these notes, signs on them aside.
    fn notes(&self) -> &Score {
        match &self.notes {
            PageMusic::Before(score) => score,
            PageMusic::Once(once) => once.get().unwrap_or_else(|| self.score()),
        }
    }

    fn checksum(&self) -> &str {
        self.sum.get_or_init(|| checksum(&self.like.encoded(&self.text)))
    }

    /// The same with edits in it.
    fn with(&self, edits: &EditList) -> Result<Self, String> {
        let text = edits.apply_to(&self.text).map_err(|problem| problem.to_string())?;
        let changed = Self::new(self.like, Cow::Owned(text), PageMusic::Once(Rc::default()));
        let same_notes = changes_signs_alone(&self.text, edits);
        Ok(if same_notes { Self { notes: self.notes.clone(), ..changed } } else { changed })
    }
}

/// What acts come to, from the beginning. Acts that fit the score no more are left out and told.
fn fold(source: &Source, acts: &[Act], given: &Given, most: Most) -> FoldedActs {
    let (document, score) = (source.document(), &source.score);
    let layer = Layer {
        parts: Addresses::new(score).part_keys().to_vec(),
        score: identity::of(document, score),
        ..Layer::default()
    };
    let mut page = ActedScore::new(document, Cow::Borrowed(document.text()), PageMusic::Before(score));
    let plain = SessionState::new(Layer::default(), given.clone());
    let mut state = SessionState { layers: Layers::new(layer), ..plain };
    let (mut lost, mut last) = (Vec::new(), Vec::new());
    let first_kept = acts.len().saturating_sub(most.states.saturating_sub(1));
    if first_kept == 0 {
        last.push((0, Arc::new(state.clone())));
    }
    let mut done = 0;
    while done < acts.len() {
        // Until the score itself changes, acts name the notes of one score.
        let mut changed = None;
        let addresses = NamedOn::default();
        while let Some(act) = acts.get(done) {
            done += 1;
            changed = one_more(&page, act, &mut state, &mut lost, &addresses);
            if done >= first_kept {
                last.push((done, Arc::new(state.clone())));
            }
            if changed.is_some() {
                break;
            }
        }
        drop(addresses);
        page = changed.unwrap_or(page);
    }
    FoldedActs { state: Arc::new(state), last, lost }
}

/// The addresses of a page, made where an act asks for them: of its notes, and of all that it says.
#[derive(Default)]
struct NamedOn<'p> {
    notes: OnceCell<Addresses<'p>>,
    score: OnceCell<Addresses<'p>>,
}

/// Does one act more; hands back the score where the act has changed it.
fn one_more<'p, 'd>(
    page: &'p ActedScore<'d>,
    act: &Act,
    state: &mut SessionState,
    lost: &mut Vec<String>,
    addresses: &NamedOn<'p>,
) -> Option<ActedScore<'d>> {
    if let Act::Change { sentence, of: Some(of), .. } = act
        && of != page.checksum()
    {
        lost.push(format!("\"{sentence}\" was for the file as it was"));
        return None;
    }
    let on_page = || match act {
        // A bow is asked of a note, whatever signs it bears.
        Act::Bow { .. } => addresses.notes.get_or_init(|| Addresses::new(page.notes())),
        _ => addresses.score.get_or_init(|| Addresses::new(page.score())),
    };
    if let Err(why) = state.act(act, on_page) {
        lost.push(why);
        return None;
    }
    if matches!(act, Act::Carried { .. }) {
        // What did not fit was for the file as it was before; the layer was carried over from it whole.
        lost.clear();
    }
    let Act::Change { edits, .. } = act else { return None };
    match edit_list(edits).and_then(|edits| page.with(&edits)) {
        Ok(changed) => Some(changed),
        Err(why) => {
            state.edits.pop();
            lost.push(why);
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use arcata_testkit::Random;
    use proptest::prelude::*;

    use super::*;
    use crate::act::{Ask, Asked, ByteEdit, NotePlace};

    const MUSIC: &str = "violin: mf 1/4 C5 D5 E5 F5 | (G5 F5) 1/2 E5 | 1/4 C5 D5 E5 F5 | 1/1 G5\n\
                         viola: mf 1/4 C4 D4 E4 F4 | (G4 F4) 1/2 E4 | 1/4 C4 D4 E4 F4 | 1/1 G4";

    fn read(bytes: &[u8]) -> Source {
        Source::open(bytes.to_vec()).unwrap()
    }

    /// Something that somebody could do now.
    fn any_act(now: &ActMoment, random: &mut Random) -> Act {
        let base = &now.desk.base;
        match random.below(7) {
            6 => {
                // A sign on some note: the bows that are asked for before and after find their notes.
                let text = base.file().document().text();
                let ends: Vec<usize> = text.match_indices("</note>").map(|(at, _)| at).collect();
                let at = *random.pick(&ends);
                let insert = "<notations><technical><down-bow/></technical></notations>".to_owned();
                let of = Some(checksum(base.file().document().bytes()));
                let edits = vec![ByteEdit { from: at, to: at, insert }];
                Act::Change { sentence: "a bow".to_owned(), edits, of }
            }
            0 => Act::Tempo { quarters: Some(60 + u32::try_from(random.below(3)).unwrap()) },
            1 => {
                // A comment behind the root: other bytes, the same music.
                let end = base.file().document().text().len();
                let insert = format!("<!-- {} -->", random.below(1000));
                let edits = vec![ByteEdit { from: end, to: end, insert }];
                let of = Some(checksum(base.file().document().bytes()));
                Act::Change { sentence: "a comment".to_owned(), edits, of }
            }
            2 => Act::Enter {
                text: format!("viola {}/1 {}", 1 + random.below(4), random.pick(&["up", "down"])),
            },
            _ => {
                let line = random.below(base.lines().len());
                let stroke = random.pick(&base.lines()[line].strokes);
                let addresses = Addresses::new(base.score());
                let found = arcata_layer::NamedNote { part: base.lines()[line].part, note: stroke.notes[0] };
                let place = NotePlace::of(&addresses, found).unwrap();
                let ask = *random.pick(&[Ask::Down, Ask::Up, Ask::Hook, Ask::Retake]);
                Act::Bow { asks: vec![Asked { place, ask }] }
            }
        }
    }

    fn made(history: &History, act: &Act, bytes: &[u8]) -> Option<ActMoment> {
        let mut state = history.now().state.as_ref().clone();
        let addresses = Addresses::new(history.now().desk.base.score());
        state.act(act, || &addresses).ok()?;
        let base = Arc::new(Base::new(bytes, &state).ok()?);
        let desk = Desk::new(base, &state.layers.together(), None);
        Some(ActMoment { state: Arc::new(state), desk })
    }

    /// What is there is what the acts come to from the beginning.
    fn assert_as_from_the_beginning(history: &History, bytes: &[u8]) {
        let acts = history.acts[..history.counting].to_vec();
        let count = acts.len();
        let (fresh, lost) = History::of((bytes, read(bytes)), acts, count, Given::default()).unwrap();
        assert!(lost.is_empty(), "{lost:?}");
        assert_eq!(history.now().state, fresh.now().state);
        assert_eq!(history.now().desk.plans(), fresh.now().desk.plans());
        assert_eq!(history.now().desk.hook_signs, fresh.now().desk.hook_signs);
        let bytes = |history: &History| history.now().desk.base.document().bytes().to_vec();
        assert_eq!(bytes(history), bytes(&fresh));
    }

    #[test]
    fn signs_are_told_from_notes() {
        assert!(holds_signs_alone(" <notations>\n<slur number=\"1\" type=\"stop\"/></notations> "));
        assert!(holds_signs_alone(""));
        assert!(holds_signs_alone(
            "<direction><direction-type><words>at the tip</words></direction-type><staff>1</staff></direction>"
        ));
        let inside = |text: &str, from: usize, insert: &str| {
            let edit = Edit { range: from..from, insert: insert.to_owned() };
            stays_inside_a_sign(text, &edit)
        };
        let text = "<note default-x=\"1\"><notations><slur number=\"1\"/></notations></note>";
        let in_slur = text.find("number").unwrap();
        assert!(inside(text, in_slur, "line-type=\"dashed\" "));
        assert!(!inside(text, in_slur, "/><pitch "));
        assert!(!inside(text, text.find("default").unwrap(), "print-object=\"no\" "));
        assert!(!inside(text, text.find("<slur").unwrap(), "x"));
        for other in [
            "<note>",
            "<duration>4</duration>",
            "<technical><fingering>1</fingering></technical>",
            "<slur",
            "4",
        ] {
            assert!(!holds_signs_alone(other), "{other}");
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(24))]
        #[test]
        fn wherever_one_goes_it_is_as_the_acts_come_to_from_the_beginning(
            seed in any::<u64>(),
            (states, bases) in (1_usize..6, 1_usize..4),
            steps in prop::collection::vec(0_u8..4, 1..24),
        ) {
            let bytes = arcata_testkit::musicxml(MUSIC).into_bytes();
            let mut random = Random::new(seed);
            let most = Most { states, bases, bowings: 100 };
            let (mut history, _) = History::keeping(most, (&bytes, read(&bytes)), Vec::new(), (0, Given::default())).unwrap();
            for step in steps {
                let (behind, ahead) = history.reach();
                match step {
                    0 if behind > 0 => {
                        let there = history.moment(&bytes, behind - 1).unwrap();
                        history.go(behind - 1, there);
                    }
                    1 if ahead > 0 => {
                        let there = history.moment(&bytes, behind + 1).unwrap();
                        history.go(behind + 1, there);
                    }
                    _ => {
                        let act = any_act(history.now(), &mut random);
                        let Some(made) = made(&history, &act, &bytes) else { continue };
                        history.did(act, made);
                    }
                }
                prop_assert!(history.kept.len() <= states);
                assert_as_from_the_beginning(&history, &bytes);
            }
        }
    }
}
