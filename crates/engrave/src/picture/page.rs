//! Blocks on pages: title, systems, sentences, what the signs of the lane mean.

use std::fmt::Write as _;

use arcata_xml::{escape, seen};

use super::system::PageBlock;
use super::{PictureContent, PictureStyle, Surroundings};
use crate::Picture;
use crate::fonts::WORDS;
use crate::sheet::rounded;

/// Between blocks, mm.
const BETWEEN: f64 = 5.0;
/// Sizes of letters, mm.
const TITLE: f64 = 5.0;
const BODY: f64 = 3.0;
const SMALL: f64 = 2.5;

/// Letters are about this wide against their size in the serif fonts (measured on English sentences).
const LETTER: f64 = 0.45;

/// The pages, or the one picture.
pub(super) fn pages(
    content: &PictureContent<'_>,
    style: &PictureStyle,
    systems: Vec<PageBlock>,
) -> Vec<Picture> {
    let explained = style.surroundings == Surroundings::Explained;
    let mut blocks: Vec<PageBlock> = explained.then(|| head(content, style)).into_iter().collect();
    blocks.extend(systems);
    for caption in &content.captions {
        blocks.push(text(&caption.name, &caption.text, BODY, style));
    }
    if explained {
        blocks.push(text("", &key(content, style), SMALL, style));
    }
    let mut pages: Vec<(String, f64)> = Vec::new();
    let room = style.page_height.map_or(f64::MAX, |height| height - style.head);
    for block in blocks {
        match pages.last_mut() {
            Some((page, y)) if *y + block.height <= room => place(&block, style, page, y),
            _ => {
                let (mut page, mut y) = (String::new(), style.head);
                place(&block, style, &mut page, &mut y);
                pages.push((page, y));
            }
        }
    }
    pages
        .into_iter()
        .map(|(page, y)| Picture {
            title: content.title.clone(),
            content: page,
            width: style.width,
            height: style.page_height.unwrap_or(y - BETWEEN + style.head),
        })
        .collect()
}

fn place(block: &PageBlock, style: &PictureStyle, page: &mut String, y: &mut f64) {
    let _ = write!(
        page,
        r#"<g transform="translate({} {})">{}</g>"#,
        rounded(style.side),
        rounded(*y),
        block.content
    );
    *y += block.height + BETWEEN;
}

fn head(content: &PictureContent<'_>, style: &PictureStyle) -> PageBlock {
    let mut out = String::new();
    let mut y = TITLE * 0.8;
    for line in wrapped(&content.title, style.width - 2.0 * style.side, TITLE) {
        words(&line, 0.0, y, TITLE, "", &mut out);
        y += TITLE * 1.2;
    }
    for line in wrapped(&content.subtitle, style.width - 2.0 * style.side, BODY) {
        words(&line, 0.0, y, BODY, "", &mut out);
        y += BODY * 1.4;
    }
    PageBlock { content: out, height: y - BODY }
}

/// A paragraph, its name in bold in front.
fn text(name: &str, sentence: &str, size: f64, style: &PictureStyle) -> PageBlock {
    let indent = if name.is_empty() { 0.0 } else { size * 1.6 };
    let mut out = String::new();
    let mut y = size;
    words(name, 0.0, y, size, r#" font-weight="bold""#, &mut out);
    for line in wrapped(sentence, style.width - 2.0 * style.side - indent, size) {
        words(&line, indent, y, size, "", &mut out);
        y += size * 1.35;
    }
    // Paragraphs stand closer together than systems.
    PageBlock { content: out, height: (y - size * 1.1 - BETWEEN + size * 0.6).max(0.0) }
}

/// What the lane means, in the words of the style.
fn key(content: &PictureContent<'_>, style: &PictureStyle) -> String {
    let (key, hollow) = &style.key;
    let open = content.lanes.iter().any(|lane| !lane.open.is_empty());
    if open { format!("{key} {hollow}") } else { key.clone() }
}

fn words(line: &str, x: f64, y: f64, size: f64, more: &str, out: &mut String) {
    if line.is_empty() {
        return;
    }
    let _ = write!(
        out,
        r#"<text x="{}" y="{}" font-family="{WORDS}" font-size="{}" fill="currentColor"{more}>{}</text>"#,
        rounded(x),
        rounded(y),
        rounded(size),
        escape(&seen(line))
    );
}

/// Lines no wider than the room, as far as can be told without measuring each letter.
pub(crate) fn wrapped(text: &str, width: f64, size: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        // French parts its colons and semicolons from what stands before them; they begin no line all the same.
        if let (true, Some(line)) =
            (word.chars().all(|letter| letter.is_ascii_punctuation()), lines.last_mut())
        {
            line.push(' ');
            line.push_str(word);
            continue;
        }
        let letters = |line: &str| (line.chars().count() + 1 + word.chars().count()) as f64;
        match lines.last_mut() {
            Some(line) if letters(line) * size * LETTER <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
