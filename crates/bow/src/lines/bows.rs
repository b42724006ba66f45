//! Where one stroke ends and the next begins.

use arcata_score::{Length, NoteKind, Part, TremoloRole};

use super::events::{Event, Events, Sounding, TieInto};

/// How an event goes on from the one before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Going {
    /// A new stroke.
    Anew,
    /// In the same stroke, under a slur.
    Slurred,
    /// In the same stroke, held by a tie.
    Tied,
    /// In the same stroke: the second of two notes of one bowed tremolo.
    Alternating,
}

/// A slur from one event to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct SlurSpan {
    first: usize,
    last: usize,
}

/// A rest longer than this under a slur ends the stroke (rule of thumb).
const STOP_UNDER_SLUR: Length = Length::QUARTER;

/// How each event goes on; grace notes that a slur joins to the note before are moved there.
pub(super) fn goings(part: &Part, events: &mut Events, is_phrase_mark: impl Fn(usize) -> bool) -> Vec<Going> {
    let drawn = drawn(part, events, is_phrase_mark);
    let list = &events.list;
    let spans = keep_innermost(list, without_hooked(list, drawn.clone()));
    let mut goings = vec![Going::Anew; list.len()];
    for (index, span) in spans.iter().enumerate() {
        // A bow begins where a slur begins: overlapping or chained slurs hand over there.
        let next = spans.get(index + 1).map_or(usize::MAX, |next| next.first);
        let last = span.last.min(next.saturating_sub(1));
        if let Some(under) = goings.get_mut(span.first + 1..=last) {
            under.fill(Going::Slurred);
        }
    }
    for index in 0..list.len() {
        let Some(before) = index.checked_sub(1).map(|before| &list[before]) else { continue };
        goings[index] = settle(before, &list[index], goings[index]);
    }
    for index in met_on_ties(list, &spans, &drawn) {
        goings[index] = Going::Anew;
    }
    for index in marked_on_ties(part, list) {
        if goings[index] == Going::Tied {
            goings[index] = Going::Anew;
        }
    }
    goings
}

/// The held notes that carry the other bow than the mark before it on the same sound: the bow is changed there, as printed.
/// One that repeats the mark asks for what cannot be, and is left to the audit.
fn marked_on_ties(part: &Part, list: &[Event]) -> Vec<usize> {
    let mark =
        |event: &Event| event.notes.iter().find_map(|id| Some(part.note(*id).bow_mark.as_ref()?.direction));
    let mut last = None;
    let mut marked = Vec::new();
    for (index, event) in list.iter().enumerate() {
        if event.tie == TieInto::Not {
            last = None;
        }
        let Some(direction) = mark(event) else { continue };
        if last.replace(direction) == Some(direction.other()) {
            marked.push(index);
        }
    }
    marked
}

/// The held notes on which a bow is changed: one slur ends on the tied sound and the next begins on it, so that two
/// bows meet there (common practice: the hand changes inaudibly where the second slur begins). A slur over both is one
/// bow.
fn met_on_ties(list: &[Event], spans: &[SlurSpan], drawn: &[SlurSpan]) -> Vec<usize> {
    let mut met = Vec::new();
    for pair in spans.windows(2) {
        let (one, next) = (pair[0], pair[1]);
        if list[next.first].tie != TieInto::Held {
            continue;
        }
        let sounding = list[..=next.first].iter().rposition(|event| event.tie == TieInto::Not).unwrap_or(0);
        let meet = one.first < sounding && (sounding..=next.first).contains(&one.last);
        if meet && !drawn.iter().any(|outer| outer.first <= one.first && outer.last >= next.last) {
            met.push(next.first);
        }
    }
    met
}

fn settle(before: &Event, event: &Event, slurred: Going) -> Going {
    if before.stroke == Sounding::Otherwise || event.stroke == Sounding::Otherwise {
        return Going::Anew;
    }
    // A tie is one sound, also where rounded durations leave a gap.
    if event.tie == TieInto::Held {
        return if slurred == Going::Slurred { slurred } else { Going::Tied };
    }
    if event.onset - before.end > STOP_UNDER_SLUR {
        return Going::Anew;
    }
    let pair = before.tremolo == Some(TremoloRole::PairStart) && event.tremolo == Some(TremoloRole::PairStop);
    if slurred == Going::Anew && pair { Going::Alternating } else { slurred }
}

/// The slurs that may be bows, in order.
fn drawn(part: &Part, events: &mut Events, is_phrase_mark: impl Fn(usize) -> bool) -> Vec<SlurSpan> {
    let mut spans = Vec::new();
    for (index, slur) in part.slurs.iter().enumerate() {
        if is_phrase_mark(index) {
            continue;
        }
        let (Some(first), Some(mut last)) =
            (events.first_event(part, slur.start), events.last_event(part, slur.end))
        else {
            continue;
        };
        if first >= last {
            continue;
        }
        if !runs_through(part, &events.list[first..=last], part.note(slur.start).voice) {
            continue;
        }
        if part.note(slur.end).kind != NoteKind::Ordinary && part.note(slur.start).kind == NoteKind::Ordinary
        {
            last -= 1;
            bring_graces_back(part, &mut events.list, last);
        }
        if first < last {
            spans.push(SlurSpan { first, last });
        }
    }
    spans.sort_unstable_by_key(|span| (span.first, std::cmp::Reverse(span.last)));
    spans.dedup();
    spans
}

/// Whether a voice sounds in every one of some events. A slur binds the bow only then: where another
/// voice moves under it, that voice leads.
fn runs_through(part: &Part, events: &[Event], voice: u16) -> bool {
    events.iter().all(|event| event.notes.iter().any(|id| part.note(*id).voice == voice))
}

/// Moves the grace notes of the event after `index` to the end of event `index`.
fn bring_graces_back(part: &Part, list: &mut [Event], index: usize) {
    let Some(after) = list.get_mut(index + 1) else { return };
    let (graces, mains) = std::mem::take(&mut after.notes)
        .into_iter()
        .partition::<Vec<_>, _>(|id| part.note(*id).kind != NoteKind::Ordinary);
    after.notes = mains;
    list[index].notes.extend(graces);
}

/// Drops a span inside another that takes in one more note with a dot or a dash: there the outer slur is the bow, and the
/// note hooked on (a usual way to write a dotted figure in one bow).
fn without_hooked(list: &[Event], spans: Vec<SlurSpan>) -> Vec<SlurSpan> {
    let hooks = |outer: &SlurSpan, inner: &SlurSpan| {
        outer.first <= inner.first
            && inner.last + 1 == outer.last
            && list[outer.last].articulations.stops_the_bow()
    };
    let inside = |inner: &SlurSpan| spans.iter().any(|outer| hooks(outer, inner));
    spans.iter().filter(|span| !inside(span)).copied().collect()
}

/// Drops the spans that hold another one: they are phrase marks. A slur over two notes of one pitch is a
/// tie written wrongly and turns no slur around it into a phrase mark.
fn keep_innermost(list: &[Event], spans: Vec<SlurSpan>) -> Vec<SlurSpan> {
    let like_a_tie =
        |span: &SlurSpan| span.last == span.first + 1 && list[span.first].pitch == list[span.last].pitch;
    let mut earliest_end = usize::MAX;
    let mut kept = Vec::with_capacity(spans.len());
    for span in spans.into_iter().rev() {
        if like_a_tie(&span) {
            kept.push(span);
            continue;
        }
        if span.last < earliest_end {
            kept.push(span);
        }
        earliest_end = earliest_end.min(span.last);
    }
    kept.reverse();
    swallow_ties(kept)
}

/// A slur like a tie inside a kept slur adds nothing.
fn swallow_ties(spans: Vec<SlurSpan>) -> Vec<SlurSpan> {
    let mut kept: Vec<SlurSpan> = Vec::with_capacity(spans.len());
    for span in spans {
        if kept.last().is_none_or(|last| span.last > last.last) {
            kept.push(span);
        }
    }
    kept
}
