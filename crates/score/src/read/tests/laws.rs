//! What holds for whatever a file says.

use proptest::prelude::*;

use super::*;
use crate::{NoteId, TieEnd};

/// One thing in a bar, sensible or not.
fn item() -> impl Strategy<Value = String> {
    let ticks = prop_oneof![4 => 0..9_i64, 1 => -5..0_i64, 1 => Just(i64::MAX)];
    let marks = prop::collection::vec(mark(), 0..3);
    let chord = prop::sample::select(vec!["", "", "", "<chord/>", "<grace/>", "<cue/>"]);
    let pitch = prop::sample::select(vec!["C", "D", "H"]);
    let played = (chord, pitch, ticks, 1..4_u8, marks).prop_map(|(role, step, ticks, voice, marks)| {
        format!(
            "<note>{role}<pitch><step>{step}</step><octave>4</octave></pitch><duration>{ticks}</duration>\
             <voice>{voice}</voice><notations>{}</notations></note>",
            marks.concat()
        )
    });
    let moved = (prop::sample::select(vec!["backup", "forward"]), -2..20_i64)
        .prop_map(|(name, ticks)| format!("<{name}><duration>{ticks}</duration></{name}>"));
    let directed = (direction_type(), -9..9_i64).prop_map(|(kind, offset)| {
        format!("<direction><direction-type>{kind}</direction-type><offset>{offset}</offset></direction>")
    });
    let other = prop::sample::select(vec![
        "<note><rest measure=\"yes\"/><duration>16</duration></note>",
        "<attributes><divisions>0</divisions></attributes>",
        "<attributes><divisions>3</divisions><time><beats>3</beats><beat-type>8</beat-type></time></attributes>",
        "<barline location=\"left\"><repeat direction=\"forward\"/></barline>",
        "<barline><repeat direction=\"backward\"/></barline>",
    ]);
    prop_oneof![6 => played, 2 => moved, 2 => directed, 1 => other.prop_map(str::to_owned)]
}

fn mark() -> impl Strategy<Value = String> {
    let ends = prop::sample::select(vec!["start", "stop"]);
    (prop::sample::select(vec!["slur", "tied"]), ends, 1..3_u8)
        .prop_map(|(name, end, number)| format!("<{name} type=\"{end}\" number=\"{number}\"/>"))
}

fn direction_type() -> impl Strategy<Value = String> {
    prop::sample::select(vec![
        "<wedge type=\"crescendo\"/>",
        "<wedge type=\"stop\"/>",
        "<dynamics><p/></dynamics>",
        "<words>più f</words>",
        "<words>cresc.</words><dashes type=\"start\"/>",
        "<dashes type=\"stop\"/>",
        "<words>Allegro</words>",
    ])
    .prop_map(str::to_owned)
}

proptest! {
    #[test]
    fn whatever_stands_in_the_bars_a_sound_score_comes_out(
        bars in prop::collection::vec(prop::collection::vec(item(), 0..9), 1..5)
    ) {
        let bars: Vec<String> = bars.iter().map(|items| items.concat()).collect();
        let bars: Vec<&str> = bars.iter().map(String::as_str).collect();
        let score = violin(&bars);
        for pair in score.bars.windows(2) {
            prop_assert_eq!(pair[0].start + pair[0].length, pair[1].start);
        }
        let part = only_part(&score);
        prop_assert!(part.notes.is_sorted_by_key(|note| (note.onset, note.bar)));
        for (index, note) in part.notes.iter().enumerate() {
            let bar = &score.bars[note.bar as usize];
            prop_assert!(bar.start <= note.onset && note.onset + note.length <= bar.start + bar.length);
            if let TieEnd::Joined(next) = note.tie.to_after {
                let next = part.note(next);
                prop_assert_eq!(next.tie.from_before, TieEnd::Joined(NoteId(index as u32)));
                prop_assert_eq!(next.pitch, note.pitch);
            }
        }
        let ends = 2 * part.slurs.len() + part.open_slurs.len();
        prop_assert_eq!(ends, bars.concat().matches("<slur").count());
        for slur in &part.slurs {
            prop_assert!(part.note(slur.start).onset <= part.note(slur.end).onset);
        }
        let lone = score.problems.iter().filter(|p| p.kind == ProblemKind::Slur).count();
        prop_assert!(lone >= part.open_slurs.len(), "every open slur is a problem");
        for swell in &part.swells {
            prop_assert!(swell.end.is_none_or(|end| end >= swell.place.at));
        }
        prop_assert!(score.problems.is_sorted_by_key(|problem| problem.node));
        prop_assert_eq!(format!("{score:?}"), format!("{:?}", violin(&bars)));
    }
}
