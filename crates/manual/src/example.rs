//! Examples in the fixtures' notation, engraved with the bow under them.

use arcata_bow::{Line, LineOptions, Plan, Profile, Reading, plan};
use arcata_engrave::{
    Cutter, Engraver, ExcerptStyle, LanePlan, Opening, Painter, PictureContent, PictureStyle, Surroundings,
    excerpts,
};
use arcata_testkit::Fixture;
use arcata_xml::{Document, Limits};

/// How a block of music begins in a page.
const OPENS: &str = "```music";

/// Width of an example, and height of its staves, mm.
const WIDTH: f64 = 170.0;
const STAFF: f64 = 6.5;

/// A page with a picture in front of each example, and the pictures by file name.
pub(crate) fn engraved(
    text: &str,
    name: &str,
    engraver: &Engraver,
) -> Result<(String, Vec<(String, String)>), String> {
    let mut out = String::with_capacity(text.len());
    let mut pictures = Vec::new();
    let mut lines = text.lines();
    while let Some(line) = lines.next() {
        if line.trim_end() != OPENS {
            out.push_str(line);
            out.push('\n');
            continue;
        }
        let example: Vec<&str> = lines.by_ref().take_while(|line| line.trim_end() != "```").collect();
        let example = example.join("\n");
        let file = format!("{name}-{}.svg", pictures.len() + 1);
        let picture =
            picture(&example, engraver).map_err(|problem| format!("the example of {name}: {problem}"))?;
        out.push_str(&format!("![The example, engraved]({file})\n\n"));
        out.push_str(&format!("In the notation of this manual:\n\n```text\n{example}\n```\n"));
        pictures.push((file, picture));
    }
    Ok((out, pictures))
}

/// The example as an SVG file.
fn picture(example: &str, engraver: &Engraver) -> Result<String, String> {
    let fixture = Fixture::parse(example).map_err(|problem| problem.to_string())?;
    let document = Document::parse(fixture.musicxml().into_bytes(), &Limits::default())
        .map_err(|problem| problem.to_string())?;
    let score = arcata_score::read(&document);
    let (profile, options) = (Profile::default(), LineOptions::default());
    let reading = Reading::new(&score, &profile, &options);
    let planned: Vec<(Line, Plan, i64)> = (0..score.parts.len())
        .flat_map(|part| reading.lines(part))
        .map(|line| {
            let settings = profile.plan_settings(line.instrument);
            let plan = plan(&line, &settings);
            (line, plan, settings.reach.hair)
        })
        .collect();
    let lanes: Vec<LanePlan<'_>> = planned
        .iter()
        .map(|(line, plan, hair)| LanePlan {
            line,
            first: 0,
            planned: &plan.strokes,
            hair: *hair,
            name: String::new(),
            open: Vec::new(),
        })
        .collect();
    let last = u32::try_from(score.bars.len()).unwrap_or(u32::MAX).saturating_sub(1);
    let cutter = Cutter::new(&document, &score);
    let parts: Vec<usize> = (0..score.parts.len()).collect();
    if parts.iter().any(|part| !planned.iter().any(|(line, ..)| line.part == *part)) {
        // A part that no bow plays has no lane: the music alone shows them all.
        let slice = cutter.cut(&parts, 0..=last, Opening::Excerpt).unnamed();
        let style = ExcerptStyle { staff: STAFF, width: WIDTH };
        let drawn = excerpts(engraver, &[(slice, Vec::new())], style).into_iter().next();
        let picture = drawn.ok_or("there is nothing to draw")?.map_err(|problem| problem.to_string())?;
        return Ok(picture.svg());
    }
    let content = PictureContent {
        title: String::new(),
        subtitle: String::new(),
        bars: 0..=last,
        lanes: &lanes,
        captions: Vec::new(),
    };
    let style = PictureStyle { width: 170.0, surroundings: Surroundings::Bare, ..PictureStyle::column() };
    let cutter = Cutter::new(&document, &score);
    let engraver = Engraver::new();
    let pictures =
        Painter::new(&cutter, &engraver, &style).draw(&content).map_err(|problem| problem.to_string())?;
    let picture = pictures.into_iter().next().ok_or("there is nothing to draw")?;
    Ok(picture.svg())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_example_becomes_a_picture_and_stays_readable() {
        let page = "# A\n\n```music\nviolin: 1/4 D4 E4 F4 G4 |||\n```\n\nAfter.\n";
        let (text, pictures) = engraved(page, "a", &Engraver::new()).unwrap();
        assert_eq!(pictures.len(), 1);
        assert_eq!(pictures[0].0, "a-1.svg");
        assert!(pictures[0].1.contains("<svg"));
        assert!(
            text.contains("](a-1.svg)") && text.contains("1/4 D4 E4 F4 G4") && text.ends_with("After.\n"),
            "{text}"
        );
        assert!(
            engraved("```music\nviolin: h\n```\n", "a", &Engraver::new())
                .unwrap_err()
                .starts_with("the example of a: ")
        );
    }
}
