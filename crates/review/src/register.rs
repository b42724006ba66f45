//! The register: every rule, once.

use crate::{Card, Findings, Piece, Sees};

/// A rule in the register.
#[derive(Clone, Copy, Debug)]
pub struct Registered {
    /// What it says about itself.
    pub card: Card,
    /// How much it is given at once.
    pub sees: Sees,
    /// The rule's question; see [`Rule::check`](crate::Rule::check).
    pub check: fn(&Piece<'_>, &mut Findings<'_>),
    /// File name of its source, without the folder.
    pub file: &'static str,
    page: &'static str,
}

impl Registered {
    pub(crate) const fn new(
        (card, sees): (Card, Sees),
        check: fn(&Piece<'_>, &mut Findings<'_>),
        file: &'static str,
        page: &'static str,
    ) -> Self {
        Self { card, sees, check, file, page }
    }

    /// Its page of the manual, Markdown: the documentation at the head of its file.
    #[must_use]
    pub fn page(&self) -> String {
        let lines = self.page.lines().map_while(|line| line.strip_prefix("//!"));
        let mut page = String::new();
        for line in lines {
            page.push_str(line.strip_prefix(' ').unwrap_or(line));
            page.push('\n');
        }
        page
    }
}

/// Looks a rule up by its id.
#[must_use]
pub fn rule(id: &str) -> Option<&'static Registered> {
    crate::REGISTER.iter().find(|rule| rule.card.id == id)
}

/// The headings of every rule's page, in order.
pub const HEADINGS: [&str; 6] =
    ["What it finds", "Why it matters", "Example", "What it proposes", "What it cannot know", "Sources"];

/// How many bytes of a rule's source its page takes: the lines at its head that begin with `//!`.
pub(crate) const fn page_length(source: &str) -> usize {
    let bytes = source.as_bytes();
    let mut end = 0;
    while end + 2 < bytes.len() && bytes[end] == b'/' && bytes[end + 1] == b'/' && bytes[end + 2] == b'!' {
        while end < bytes.len() && bytes[end] != b'\n' {
            end += 1;
        }
        if end < bytes.len() {
            end += 1;
        }
    }
    end
}

/// The page at the head of a rule's source, copied, so that the program does not carry the rest of the source.
pub(crate) const fn page_of<const LENGTH: usize>(source: &str) -> [u8; LENGTH] {
    let mut page = [0; LENGTH];
    let mut at = 0;
    while at < LENGTH {
        page[at] = source.as_bytes()[at];
        at += 1;
    }
    page
}
