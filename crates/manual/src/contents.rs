//! The pages of the book, in order.

use std::fs;
use std::path::{Path, PathBuf};

use arcata_review::{Family, REGISTER};

/// A page of the book.
#[derive(Clone, Debug)]
pub(crate) struct BookPage {
    /// Where it stands in the book.
    pub(crate) path: PathBuf,
    /// The file's name without ending.
    pub(crate) name: String,
    /// Its heading.
    pub(crate) title: String,
    /// The chapter whose pages it stands among; `None` at the top.
    pub(crate) chapter: Option<&'static str>,
    pub(crate) text: String,
}

/// The pages for users that are written by hand, in the order of reading.
const WRITTEN: [&str; 22] = [
    "workbench",
    "installing",
    "in-the-browser",
    "review",
    "class",
    "plan",
    "movements",
    "places",
    "style-concert",
    "style-dance",
    "style-early",
    "habits",
    "pictures",
    "together",
    "sentences",
    "marks",
    "layers",
    "shorthand",
    "change-sheet",
    "parts",
    "library",
    "aside",
];

/// All pages: what is written by hand, then the rules by chapter, then the tables.
pub(crate) fn pages(root: &Path, tried: Option<&TriedPage>) -> Result<Vec<BookPage>, String> {
    let docs = root.join("docs");
    let mut pages = vec![front(tried)];
    for name in WRITTEN {
        pages.push(page(&docs, &format!("manual/{name}.md"), None)?);
    }
    let strangers = crate::list(&docs.join("manual"))?;
    let unknown = strangers
        .iter()
        .find(|path| path.file_stem().is_none_or(|stem| !WRITTEN.contains(&stem.to_string_lossy().as_ref())));
    if let Some(unknown) = unknown {
        return Err(format!("{} is not in the book: name it in crates/manual", unknown.display()));
    }
    pages.push(page(&docs, "rules/README.md", None)?);
    for family in Family::ALL {
        for rule in REGISTER.iter().filter(|rule| rule.card.family == family) {
            pages.push(page(&docs, &format!("rules/{}.md", rule.card.id), Some(family.title()))?);
        }
    }
    for name in ["languages", "alarms", "profiles", "constants", "stops", "house", "trust", "dependencies"] {
        pages.push(page(&docs, &format!("{name}.md"), None)?);
    }
    Ok(pages)
}

/// The first page.
/// The page that needs no server, where it is in the book to be tried.
#[derive(Clone, Debug)]
pub(crate) struct TriedPage {
    /// Its demos: the names of their files without endings, and what the pieces are called.
    pub(crate) demos: Vec<(String, String)>,
}

/// Where it stands in the book.
pub(crate) const TRIED: &str = "try";

fn front(tried: Option<&TriedPage>) -> BookPage {
    let mut text = "# Arcata\n\nWhat a score makes the players' bows do: down or up, where in the bow, how much of it; what will \
                    not work and why; and bowings as layers that go onto clean parts and come off without a trace.\n\n"
        .to_owned();
    if let Some(tried) = tried {
        let demo = |(name, title): &(String, String)| format!("[{title}]({TRIED}/index.html?demo={name})");
        let demos: Vec<String> = tried.demos.iter().map(demo).collect();
        text.push_str(&format!(
            "Try it right here, in this browser, with {}, or [a score of your own]({TRIED}/index.html). Nothing leaves your \
             machine ([how that works](manual/in-the-browser.md)).\n\n",
            demos.join(", ")
        ));
    }
    text.push_str(
        "The tool advises; players decide. Where a technique strains a hand or arm, rest, and ask a teacher or a physician about \
         pain.\n",
    );
    BookPage {
        path: PathBuf::from("index.md"),
        name: "index".to_owned(),
        title: "Arcata".to_owned(),
        chapter: None,
        text,
    }
}

fn page(docs: &Path, path: &str, chapter: Option<&'static str>) -> Result<BookPage, String> {
    let file = docs.join(path);
    let text = fs::read_to_string(&file).map_err(|problem| format!("{}: {problem}", file.display()))?;
    let title = text
        .lines()
        .find_map(|line| line.strip_prefix("# "))
        .ok_or_else(|| format!("{path} has no heading"))?;
    let name = file.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    Ok(BookPage { path: PathBuf::from(path), name, title: title.trim().to_owned(), chapter, text })
}

/// The table of contents as the book wants it.
pub(crate) fn summary(pages: &[BookPage]) -> String {
    let mut out = "# Contents\n\n".to_owned();
    let mut chapter = None;
    for page in pages {
        if page.chapter != chapter {
            chapter = page.chapter;
            if let Some(chapter) = chapter {
                out.push_str(&format!("- [{chapter}]()\n"));
            }
        }
        let indent = if page.chapter.is_some() { "  " } else { "" };
        let title = page.title.replace(['[', ']'], "");
        out.push_str(&format!("{indent}- [{title}]({})\n", page.path.display()));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rules_stand_in_their_chapters() {
        let page = |title: &str, path: &str, chapter| BookPage {
            path: PathBuf::from(path),
            name: String::new(),
            title: title.to_owned(),
            chapter,
            text: String::new(),
        };
        let pages =
            [page("One", "a.md", None), page("A [b]", "r/b.md", Some("Slurs")), page("End", "c.md", None)];
        assert_eq!(
            summary(&pages),
            "# Contents\n\n- [One](a.md)\n- [Slurs]()\n  - [A b](r/b.md)\n- [End](c.md)\n"
        );
    }
}
