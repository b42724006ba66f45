//! Bar lines, repeats, and where one bar becomes the next.

use crate::cursor::{CharacterCursor, FixturePlace};
use crate::error::FixtureRead;
use crate::model::{BarFill, BarStyle, EndingStop, FixtureBar, FixtureItem, FixturePart, Leave};
use crate::music::PartBuilder;

impl PartBuilder {
    /// `|`, `||`, `|||`, `|:`, `:|`, `:|*3`, `:|:`.
    pub(crate) fn read_bar_line(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let from = cursor.position();
        if cursor.take_text(":|:") {
            self.end_bar(BarStyle::RepeatBack(None), &cursor.place_from(from))?;
            self.bar.repeat_start = true;
        } else if cursor.take_text(":|") {
            let times = if cursor.take('*') { cursor.take_number()? } else { None };
            self.end_bar(BarStyle::RepeatBack(times), &cursor.place_from(from))?;
        } else if cursor.take_text("|:") {
            if self.bar_has_events() || self.bar.fill == BarFill::Empty {
                self.end_bar(BarStyle::Plain, &cursor.place_from(from))?;
            }
            self.bar.repeat_start = true;
        } else if cursor.take_text("|||") {
            self.end_bar(BarStyle::Final, &cursor.place_from(from))?;
        } else if cursor.take_text("||") {
            self.end_bar(BarStyle::Double, &cursor.place_from(from))?;
        } else if cursor.take('|') {
            self.end_bar(BarStyle::Plain, &cursor.place_from(from))?;
        } else {
            return Err(cursor.error("a bar line: | || ||| |: :| :|: or :|*3"));
        }
        Ok(())
    }

    fn end_bar(&mut self, end: BarStyle, place: &FixturePlace) -> FixtureRead<()> {
        self.check_all_closed()?;
        let has_music = self.bar_has_events() || self.bar.fill == BarFill::Empty;
        if !has_music {
            let nothing_yet = self.bar.items.is_empty() || self.part.bars.is_empty();
            return match end {
                // A bar line before any music, or twice in a row at the join of two lines.
                BarStyle::Plain if nothing_yet => Ok(()),
                _ => Err(place
                    .error("music before this bar line: bar-rest for a bar's rest, empty for an empty bar")),
            };
        }
        if end != BarStyle::Plain
            && let Some(open) = self.open_ending.take()
        {
            self.bar.ending_stop.get_or_insert((open, EndingStop::Closed));
        }
        self.bar.end = end;
        self.bar.place = place.clone();
        let bar = std::mem::take(&mut self.bar);
        match bar.rest_bars {
            Some(count) => self.push_rest_bars(bar, count),
            None => self.part.bars.push(bar),
        }
        Ok(())
    }

    /// Several bars printed as one rest are still several bars.
    fn push_rest_bars(&mut self, first: FixtureBar, count: u32) {
        let template = self.part.events[self.part.events.len() - 1].clone();
        let mut bars = vec![FixtureBar { end: BarStyle::Plain, ending_stop: None, ..first.clone() }];
        for _ in 1..count {
            let items = vec![FixtureItem::Event(self.part.events.len())];
            self.part.events.push(template.clone());
            bars.push(FixtureBar { items, place: first.place.clone(), ..FixtureBar::default() });
        }
        if let Some(last) = bars.last_mut() {
            last.end = first.end;
            last.ending_stop = first.ending_stop;
        }
        self.part.bars.append(&mut bars);
    }

    /// Ends the last bar and gives the part away.
    pub(crate) fn finish(mut self) -> FixtureRead<FixturePart> {
        self.check_all_closed()?;
        if self.bar_has_events() || self.bar.fill == BarFill::Empty {
            self.end_bar(BarStyle::Plain, &self.last_line.clone())?;
        } else if let Some(last) = self.part.bars.last_mut() {
            // Directions after the last bar line, such as the end of a hairpin, belong to the last bar.
            last.items.append(&mut self.bar.items);
        }
        let last = self.part.bars.last_mut();
        if let (Some(open), Some(last)) = (self.open_ending.take(), last) {
            last.ending_stop.get_or_insert((open, EndingStop::Closed));
        }
        if let Some(open) = self.open_slurs.first()
            && !self.asks(Leave::BrokenSlurs)
        {
            return Err(open.place.error(format!(
                "slur {} to be closed by the end of the part (or the header broken-slurs)",
                open.number
            )));
        }
        if self.part.bars.is_empty() {
            return Err(self.last_line.error(format!("music for {}", self.part.name)));
        }
        Ok(self.part)
    }
}
