//! What a house profile asks for that cannot be had together.

use super::house::House;

/// White at the edge of a sheet that most printers cannot print on, tenths of a millimetre (rule of thumb).
const UNPRINTED: i64 = 50;
/// What a page's own head takes, and that of a first page with one line of title, tenths of a millimetre (they are the heights that
/// pages are set with).
const HEAD: i64 = 90;
/// See [`HEAD`].
const FIRST_HEAD: i64 = 209;

/// Two wishes that do not go together, or one that the paper has no room for. Lengths are tenths of a millimetre.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HouseConflict {
    /// More lines than a page has room for.
    Lines {
        /// Whether it is the first page.
        first: bool,
        /// How many are asked for.
        asked: i64,
        /// How many fit.
        fit: i64,
        /// From the first line of a staff to the fifth.
        staff: i64,
        /// Least white between two staves.
        apart: i64,
    },
    /// The smallest staff is higher than the staff.
    Smallest,
    /// A cue that is as long as the rest before whose end it stands, or longer.
    Cue {
        /// Bars of the cue.
        bars: i64,
        /// Bars of the rest.
        rest: i64,
    },
    /// White in front of a movement that takes more than a third of the line.
    Indent {
        /// The white.
        indent: i64,
        /// What is left of the line.
        left: i64,
    },
    /// A margin where most printers print nothing.
    Margin {
        /// The narrowest margin.
        margin: i64,
    },
}

impl House {
    /// What it asks for that cannot be had together; what does not depend on any music.
    ///
    /// ```
    /// use arcata_engrave::House;
    /// assert!(House::default().conflicts().is_empty());
    /// let large = House::parse("[staff]\nheight = 110\napart = 130\n")?;
    /// assert!(!large.conflicts().is_empty(), "twelve lines of 11 mm with 13 mm between them do not go on A4");
    /// # Ok::<(), arcata_engrave::HouseError>(())
    /// ```
    #[must_use]
    pub fn conflicts(&self) -> Vec<HouseConflict> {
        let paper = &self.paper;
        let room = paper.height.value - paper.head.value - paper.foot.value;
        let line = paper.width.value - 2 * paper.sides.value;
        let (staff, apart) = (self.staff.height.value, self.staff.apart.value);
        let mut found = Vec::new();
        for (first, asked, head) in
            [(true, self.pages.systems_first.value, FIRST_HEAD), (false, self.pages.systems.value, HEAD)]
        {
            // The last line has no white below it.
            let fit = (room - head + apart).div_euclid((staff + apart).max(1)).max(0);
            if asked > fit {
                found.push(HouseConflict::Lines { first, asked, fit, staff, apart });
            }
        }
        if self.staff.smallest.value > staff {
            found.push(HouseConflict::Smallest);
        }
        let (bars, rest) = (self.rests.cue_bars.value, self.rests.cue.value);
        if bars >= rest {
            found.push(HouseConflict::Cue { bars, rest });
        }
        let indent = self.movements.indent.value;
        if indent * 3 > line {
            found.push(HouseConflict::Indent { indent, left: line - indent });
        }
        let margin = paper.sides.value.min(paper.head.value).min(paper.foot.value);
        if margin < UNPRINTED {
            found.push(HouseConflict::Margin { margin });
        }
        found
    }
}
