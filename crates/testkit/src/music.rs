//! Reads the music of a part, line by line.

use crate::changes::{read_clef, read_key, read_tempo, read_time, read_transpose};
use crate::cursor::{CharacterCursor, FixturePlace};
use crate::error::FixtureRead;
use crate::marks::{self, dynamic};
use crate::model::{
    BarFill, Direction, EndingStop, FixtureBar, FixtureChange, FixtureEvent, FixtureItem, FixturePart,
    FixtureSound, Grace, Leave, SettledEvent, Tuplet, TupletEdge, Wedge, WrittenValue,
};
use crate::notes::{read_notes, read_value};

/// What has been opened inside a bar and must be closed in it.
#[derive(Debug)]
enum Frame {
    Tuplet { first_event: usize, place: FixturePlace },
    Voices { outer: Vec<FixtureItem>, done: Vec<Vec<FixtureItem>>, place: FixturePlace },
}

/// A slur that has been opened and not yet closed.
#[derive(Debug)]
pub(crate) struct UnclosedSlur {
    pub(crate) number: u32,
    pub(crate) place: FixturePlace,
}

/// Builds one part out of its lines.
#[derive(Debug)]
pub(crate) struct PartBuilder {
    pub(crate) part: FixturePart,
    leave: Vec<Leave>,
    pub(crate) bar: FixtureBar,
    pub(crate) last_line: FixturePlace,
    frames: Vec<Frame>,
    tuplets: Vec<Tuplet>,
    value: WrittenValue,
    staff: u32,
    slur_starts: Vec<(u32, FixturePlace)>,
    grace: Option<Grace>,
    /// Where the prefixes of the next note began.
    prefix: Option<usize>,
    pub(crate) open_slurs: Vec<UnclosedSlur>,
    /// The label of the ending that is under way.
    pub(crate) open_ending: Option<String>,
}

impl PartBuilder {
    pub(crate) fn new(part: FixturePart, leave: Vec<Leave>) -> Self {
        Self {
            part,
            leave,
            bar: FixtureBar::default(),
            last_line: FixturePlace::default(),
            frames: Vec::new(),
            tuplets: Vec::new(),
            value: WrittenValue::QUARTER,
            staff: 1,
            slur_starts: Vec::new(),
            grace: None,
            prefix: None,
            open_slurs: Vec::new(),
            open_ending: None,
        }
    }

    pub(crate) fn asks(&self, leave: Leave) -> bool {
        self.leave.contains(&leave)
    }

    /// Reads one line of music.
    pub(crate) fn read_line(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        loop {
            cursor.skip_spaces();
            if cursor.peek().is_none() {
                return Ok(());
            }
            self.read_token(cursor)?;
        }
    }

    fn read_token(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        match (cursor.peek(), cursor.peek_by(1)) {
            (Some('|' | ':'), _) => self.read_bar_line(cursor),
            (Some('"'), _) => {
                cursor.take('"');
                let words = cursor.take_quoted()?;
                self.direction(Direction::Words(words));
                Ok(())
            }
            (Some('['), _) => self.read_bracket(cursor),
            (Some('('), _) => self.open_slur(cursor),
            (Some(')'), _) => self.close_slur(cursor),
            (Some('{'), Some('v')) => self.open_voices(cursor),
            (Some('{'), _) => self.open_tuplet(cursor),
            (Some('}'), _) => self.close_brace(cursor),
            (Some('<' | '>' | '='), Some('=')) => self.read_hairpin(cursor),
            (Some('A'..='G'), _) => self.read_notes(cursor),
            (Some('0'..='9'), _) => {
                self.value = read_value(cursor)?;
                Ok(())
            }
            (Some('*'), _) => {
                self.prefix.get_or_insert(cursor.position());
                cursor.take('*');
                self.grace = Some(if cursor.take('/') { Grace::Slashed } else { Grace::Plain });
                Ok(())
            }
            _ => self.read_word(cursor),
        }
    }

    fn direction(&mut self, direction: Direction) {
        self.bar.items.push(FixtureItem::Direction(direction, self.staff));
    }

    /// `<=` and `>=` open a hairpin, `==` closes it; `<=o` comes from nothing, `==o` goes to nothing.
    fn read_hairpin(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let wedge = if cursor.take_text("<=o") {
            Wedge::CrescendoFromNothing
        } else if cursor.take_text("<=") {
            Wedge::Crescendo
        } else if cursor.take_text(">=") {
            Wedge::Diminuendo
        } else if cursor.take_text("==o") {
            Wedge::StopToNothing
        } else if cursor.take_text("==") {
            Wedge::Stop
        } else {
            return Err(cursor.error("a hairpin: <= or >= opens it, == closes it"));
        };
        self.direction(Direction::Wedge(wedge));
        Ok(())
    }

    /// `[A]` is a rehearsal mark.
    fn read_bracket(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        cursor.take('[');
        let label = cursor.take_while(char::is_alphanumeric);
        if label.is_empty() || !cursor.take(']') {
            cursor.go_back(from);
            return Err(cursor.error("a rehearsal mark such as [A]"));
        }
        self.direction(Direction::Rehearsal(label));
        Ok(())
    }

    /// `ending=1` or `ending=1,2` opens an ending.
    fn open_ending(&mut self, cursor: &mut CharacterCursor<'_>, from: usize) -> FixtureRead<()> {
        let label = if cursor.take('=') {
            cursor.take_while(|c| c.is_ascii_digit() || c == ',')
        } else {
            String::new()
        };
        if label.is_empty() {
            cursor.go_back(from);
            return Err(cursor.error("an ending such as ending=1 or ending=1,2"));
        }
        if self.bar_has_events() {
            cursor.go_back(from);
            return Err(cursor.error("a bar line before the ending"));
        }
        let before = self.part.bars.last_mut();
        if let (Some(open), Some(before)) = (self.open_ending.take(), before) {
            before.ending_stop.get_or_insert((open, EndingStop::Closed));
        }
        self.bar.ending_start = Some(label.clone());
        self.open_ending = Some(label);
        Ok(())
    }

    /// The ending goes on to the right, with no end of its own.
    fn leave_ending_open(&mut self, cursor: &CharacterCursor<'_>, from: usize) -> FixtureRead<()> {
        let Some(open) = self.open_ending.take().filter(|_| self.bar_has_events()) else {
            return Err(cursor.place_from(from).error("open-ended at the end of a bar under an ending"));
        };
        self.bar.ending_stop = Some((open, EndingStop::Open));
        Ok(())
    }

    fn open_slur(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = *self.prefix.get_or_insert(cursor.position());
        cursor.take('(');
        let number = self.read_slur_number(cursor)?;
        self.slur_starts.push((number, cursor.place_from(from)));
        Ok(())
    }

    fn read_slur_number(&self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<u32> {
        let from = cursor.position();
        let number = cursor.take_number()?;
        // In `(1/8 E4` the number is that of a value.
        if cursor.peek() == Some('/') {
            cursor.go_back(from);
            return Ok(1);
        }
        let number = number.unwrap_or(1);
        if (1..=16).contains(&number) {
            return Ok(number);
        }
        cursor.go_back(from);
        Err(cursor.error("a slur number from 1 to 16"))
    }

    fn close_slur(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        cursor.take(')');
        let number = self.read_slur_number(cursor)?;
        let place = cursor.place_from(from);
        let Some(last) = self.part.events.len().checked_sub(1).filter(|_| self.bar_has_events()) else {
            return Err(place.error("a note before the end of the slur"));
        };
        let event = &mut self.part.events[last];
        event.place.to = place.to;
        event.slur_stops.push(number);
        let open = self.open_slurs.iter().position(|slur| slur.number == number);
        let started_here = event.slur_starts.contains(&number);
        match open {
            // A slur may end on the note another of the same number begins on: the older one ends.
            Some(index) => {
                self.open_slurs.remove(index);
                Ok(())
            }
            None if self.leave.contains(&Leave::BrokenSlurs) => Ok(()),
            None if started_here => {
                Err(place.error("a slur over more than one note (or the header broken-slurs)"))
            }
            None => Err(place.error(format!("slur {number} to be open here (or the header broken-slurs)"))),
        }
    }

    fn open_voices(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        if !self.frames.is_empty() {
            return Err(cursor.error("voices outside tuplets and other voices"));
        }
        if !cursor.take_text("{voices") {
            return Err(cursor.error("a tuplet {3:2 … } or voices {voices … over … }"));
        }
        let outer = std::mem::take(&mut self.bar.items);
        self.frames.push(Frame::Voices { outer, done: Vec::new(), place: cursor.place_from(from) });
        Ok(())
    }

    fn next_voice(&mut self, cursor: &CharacterCursor<'_>, from: usize) -> FixtureRead<()> {
        let Some(Frame::Voices { done, .. }) = self.frames.last_mut() else {
            return Err(cursor
                .place_from(from)
                .error("over only between the voices inside {voices … }, with tuplets closed"));
        };
        done.push(std::mem::take(&mut self.bar.items));
        Ok(())
    }

    fn open_tuplet(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        cursor.take('{');
        let actual = cursor.take_number()?.filter(|n| (1..=99).contains(n));
        let normal = if cursor.take(':') { cursor.take_number()? } else { None };
        let (Some(actual), Some(normal)) = (actual, normal.filter(|n| (1..=99).contains(n))) else {
            return Err(cursor.place_from(from).error("a tuplet {3:2 … } or voices {voices … over … }"));
        };
        self.tuplets.push(Tuplet { actual, normal });
        let first_event = self.part.events.len();
        self.frames.push(Frame::Tuplet { first_event, place: cursor.place_from(from) });
        Ok(())
    }

    /// `}` closes the innermost tuplet; where none is open, it closes the voices.
    fn close_brace(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        match self.frames.pop() {
            Some(Frame::Tuplet { first_event, place }) => {
                cursor.take('}');
                let level = self.tuplets.len();
                let bracket = self.tuplets.pop().is_some_and(Tuplet::has_bracket);
                let inside = &mut self.part.events[first_event..];
                let (Some(first), Some(last)) = (
                    inside.iter().position(|event| event.grace.is_none()),
                    inside.iter().rposition(|event| event.grace.is_none()),
                ) else {
                    return Err(place.error("notes inside the tuplet"));
                };
                if bracket {
                    inside[first].tuplet_edges.push(TupletEdge::Start(level));
                    inside[last].tuplet_edges.push(TupletEdge::Stop(level));
                }
                Ok(())
            }
            Some(Frame::Voices { outer, mut done, place }) => {
                cursor.take('}');
                done.push(std::mem::replace(&mut self.bar.items, outer));
                if done.len() < 2 {
                    return Err(place.error("two voices or more, with over between them"));
                }
                self.bar.items.push(FixtureItem::Voices(done));
                Ok(())
            }
            None => Err(cursor.error("a `{` that this closes")),
        }
    }

    /// A note, or several joined by `+`: a chord.
    fn read_notes(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        let notes = read_notes(cursor)?;
        self.finish_event(cursor, from, FixtureSound::Notes(notes))
    }

    fn read_word(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        if let Some(tempo) = read_tempo(cursor)? {
            self.direction(tempo);
            return Ok(());
        }
        let from = cursor.position();
        let word = cursor.take_while(|c| c.is_ascii_lowercase() || c == '-');
        let alone = cursor.peek().is_none_or(|c| c.is_whitespace() || c == '|' || c == ':');
        if alone && let Some(level) = dynamic(&word) {
            self.direction(Direction::Dynamic(level));
            return Ok(());
        }
        match word.as_str() {
            "time" if self.bar_has_events() => {
                return Err(cursor.place_from(from).error("a new metre only at the start of its bar"));
            }
            "time" => self.change(FixtureChange::Time(read_time(cursor)?)),
            "key" => self.change(FixtureChange::Key(read_key(cursor)?)),
            "clef" => self.change(FixtureChange::Clef(read_clef(cursor, self.staff)?)),
            "transpose" => self.change(read_transpose(cursor)?),
            "staff" => self.read_staff(cursor)?,
            "short" => self.bar.fill = BarFill::Short,
            "unnumbered" => self.bar.fill = BarFill::Unnumbered,
            "empty" => self.bar.fill = BarFill::Empty,
            "page" => self.bar.starts_page = true,
            "dashes" if cursor.take('(') => self.direction(Direction::DashesStart),
            "dashes" if cursor.take(')') => self.direction(Direction::DashesStop),
            "ending" => return self.open_ending(cursor, from),
            "open-ended" => return self.leave_ending_open(cursor, from),
            "over" => return self.next_voice(cursor, from),
            "bar-rest" => return self.read_bar_rest(cursor, from),
            "rest" => return self.finish_event(cursor, from, FixtureSound::Rest),
            "gap" => return self.finish_event(cursor, from, FixtureSound::Gap),
            _ => {
                cursor.go_back(from);
                return Err(cursor.error(
                    "a note such as F#4, a chord such as D4+A4, rest, bar-rest, a value such as 1/4, a bar line, a \
                     dynamic, \"words\", or one of time, key, clef, staff, transpose, quarter=, sound=, ending=, \
                     dashes(, dashes), short, unnumbered, empty, page",
                ));
            }
        }
        Ok(())
    }

    fn change(&mut self, change: FixtureChange) {
        self.bar.items.push(FixtureItem::Change(change));
    }

    fn read_staff(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        cursor.skip_spaces();
        self.staff = cursor
            .take_number()?
            .filter(|staff| (1..=4).contains(staff))
            .ok_or_else(|| cursor.error("a staff from 1 to 4"))?;
        Ok(())
    }

    /// `bar-rest` rests for a bar, `bar-rest*8` for eight bars printed as one rest.
    fn read_bar_rest(&mut self, cursor: &mut CharacterCursor<'_>, from: usize) -> FixtureRead<()> {
        if cursor.take('*') {
            let count = cursor.take_number()?.filter(|count| (2..=999).contains(count));
            let count = count.ok_or_else(|| cursor.error("a number of bars from 2 to 999"))?;
            if !self.frames.is_empty() || self.bar_has_events() {
                return Err(cursor.place_from(from).error("a rest of several bars alone between bar lines"));
            }
            self.bar.rest_bars = Some(count);
        }
        self.finish_event(cursor, from, FixtureSound::BarRest)
    }

    /// Reads the suffixes of an event and puts it into the bar.
    fn finish_event(
        &mut self,
        cursor: &mut CharacterCursor<'_>,
        from: usize,
        sound: FixtureSound,
    ) -> FixtureRead<()> {
        let from = self.prefix.take().unwrap_or(from);
        let grace = self.grace.take();
        let value = match grace {
            Some(_) if cursor.take('=') => read_value(cursor)?,
            Some(_) => WrittenValue::SIXTEENTH,
            None => self.value,
        };
        let mut event = FixtureEvent {
            sound,
            value,
            tuplets: if grace.is_some() { Vec::new() } else { self.tuplets.clone() },
            tuplet_edges: Vec::new(),
            grace,
            marks: Vec::new(),
            slur_starts: Vec::new(),
            slur_stops: Vec::new(),
            staff: self.staff,
            place: cursor.place_from(from),
            settled: SettledEvent::default(),
        };
        if grace.is_some() && event.notes().is_empty() {
            return Err(event.place.error("a note after the `*` of a grace note"));
        }
        if grace.is_some() && event.notes().iter().any(|note| note.tied_on) {
            return Err(event.place.error("a tie only after a full note"));
        }
        event.slur_starts = self.slur_starts.iter().map(|(number, _)| *number).collect();
        self.bar.items.push(FixtureItem::Event(self.part.events.len()));
        self.part.events.push(event);
        self.read_suffixes(cursor, from)?;
        self.settle_slur_starts()?;
        let separated = cursor.peek().is_none_or(|c| c.is_whitespace() || matches!(c, '|' | ':' | '}'));
        if separated {
            Ok(())
        } else {
            Err(cursor.error("a space after the note, or _ for a tie, ! for a mark, )"))
        }
    }

    fn read_suffixes(&mut self, cursor: &mut CharacterCursor<'_>, from: usize) -> FixtureRead<()> {
        let index = self.part.events.len() - 1;
        loop {
            if cursor.peek() == Some(')') {
                self.close_slur(cursor)?;
            } else if cursor.take('!') {
                let mark = marks::read(cursor)?;
                self.part.events[index].marks.push(mark);
            } else {
                self.part.events[index].place.to = cursor.place_from(from).to;
                return Ok(());
            }
        }
    }

    /// Opens the slurs that stood before a note, after those that end on it are closed.
    fn settle_slur_starts(&mut self) -> FixtureRead<()> {
        let last = self.part.events.len() - 1;
        for (number, place) in std::mem::take(&mut self.slur_starts) {
            if self.asks(Leave::BrokenSlurs) && self.part.events[last].slur_stops.contains(&number) {
                continue;
            }
            if self.open_slurs.iter().any(|slur| slur.number == number) {
                if self.asks(Leave::BrokenSlurs) {
                    continue;
                }
                return Err(place.error(format!(
                    "slur {number} to be closed first; an inner or crossing slur takes another number, as in (2 … )2"
                )));
            }
            self.open_slurs.push(UnclosedSlur { number, place });
        }
        Ok(())
    }

    pub(crate) fn bar_has_events(&self) -> bool {
        fn any(items: &[FixtureItem]) -> bool {
            items.iter().any(|item| match item {
                FixtureItem::Event(_) => true,
                FixtureItem::Voices(voices) => voices.iter().any(|voice| any(voice)),
                _ => false,
            })
        }
        let outer = self.frames.iter().any(|frame| match frame {
            Frame::Voices { outer, done, .. } => any(outer) || done.iter().any(|voice| any(voice)),
            Frame::Tuplet { .. } => false,
        });
        outer || any(&self.bar.items)
    }

    /// The trouble if something is still open where the bar ends.
    pub(crate) fn check_all_closed(&self) -> FixtureRead<()> {
        match self.frames.last() {
            Some(Frame::Tuplet { place, .. }) => {
                return Err(place.error("the tuplet to be closed in its bar by `}`"));
            }
            Some(Frame::Voices { place, .. }) => {
                return Err(place.error("the voices to be closed in their bar by `}`"));
            }
            None => {}
        }
        match self.slur_starts.first() {
            Some((_, place)) => Err(place.error("a note in this bar after the `(` of a slur")),
            None => Ok(()),
        }
    }
}
