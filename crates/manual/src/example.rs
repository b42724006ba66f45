//! The examples of the rules' pages, engraved with the bow under them.

use arcata_engrave::Engraver;
use arcata_examples::{Example, music};

/// What a page says where its example stands as a file, down to the file's name.
const LINK: &str = "[The example as MusicXML](../../crates/examples/rules/";

/// A page with a picture above its example, and the files that go beside it: the picture and the music.
pub(crate) fn engraved(
    text: &str,
    name: &str,
    engraver: &Engraver,
) -> Result<(String, Vec<(String, String)>), String> {
    let (Some(example), Some(music)) = (Example::of_rule(name), music(name)) else {
        return Ok((text.to_owned(), Vec::new()));
    };
    let Some((before, after)) = text.split_once("## Example\n") else {
        return Ok((text.to_owned(), Vec::new()));
    };
    let failed = |problem: String| format!("the example of {name}: {problem}");
    let picture = example.picture(engraver).map_err(failed)?;
    let text = format!(
        "{before}## Example\n![The example, engraved]({name}.svg)\n\n{}",
        after.replace(LINK, "[The example as MusicXML](")
    );
    Ok((text, vec![(format!("{name}.svg"), picture.svg()), (format!("{name}.musicxml"), music.to_owned())]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_example_gets_a_picture_and_its_file() {
        let page = format!("# A\n\n## Example\n```text\nlanes\n```\n{LINK}no-tempo.musicxml)\n\nAfter.\n");
        let (text, files) = engraved(&page, "no-tempo", &Engraver::new()).unwrap();
        assert!(text.contains("## Example\n![The example, engraved](no-tempo.svg)\n\n```text\n"), "{text}");
        assert!(text.contains("[The example as MusicXML](no-tempo.musicxml)"), "{text}");
        let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
        assert_eq!(names, ["no-tempo.svg", "no-tempo.musicxml"]);
        assert!(files[0].1.contains("<svg") && files[1].1.contains("<score-partwise"));
        assert_eq!(engraved("# A\n", "index", &Engraver::new()).unwrap(), ("# A\n".to_owned(), Vec::new()));
    }
}
