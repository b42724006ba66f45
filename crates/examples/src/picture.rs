//! An example as a picture.

use arcata_bow::{Line, LineOptions, Plan, all_lines, plan};
use arcata_engrave::{
    Cutter, Engraver, ExcerptStyle, LanePlan, Opening, Painter, Picture, PictureContent, PictureStyle,
    Surroundings, excerpts,
};

use crate::Example;

/// Width of an example, and height of its staves where no bow is under them, mm.
const WIDTH: f64 = 170.0;
const STAFF: f64 = 6.5;

impl Example {
    /// The example engraved, with the bow under its staves.
    ///
    /// # Errors
    /// Why it cannot be engraved.
    pub fn picture(&self, engraver: &Engraver) -> Result<Picture, String> {
        // The parts that stand beside the score are shown, too.
        let score = arcata_score::read(&self.document);
        let planned: Vec<(Line, Plan, i64)> = all_lines(&score, &self.profile, &LineOptions::default())
            .into_iter()
            .map(|line| {
                let settings = self.profile.plan_settings(line.instrument);
                let plan = plan(&line, &settings);
                (line, plan, settings.reach.hair)
            })
            .collect();
        let last = u32::try_from(score.bars.len()).unwrap_or(u32::MAX).saturating_sub(1);
        let cutter = Cutter::new(&self.document, &score);
        let parts: Vec<usize> = (0..score.parts.len()).collect();
        let nothing = || "there is nothing to draw".to_owned();
        if parts.iter().any(|part| !planned.iter().any(|(line, ..)| line.part == *part)) {
            // A part that no bow plays has no lane: the music alone shows them all.
            let slice = cutter.cut(&parts, 0..=last, Opening::Excerpt).unnamed();
            let style = ExcerptStyle { staff: STAFF, width: WIDTH };
            let drawn = excerpts(engraver, &[(slice, Vec::new())], style).into_iter().next();
            return drawn.ok_or_else(nothing)?.map_err(|problem| problem.to_string());
        }
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
        let content = PictureContent {
            title: String::new(),
            subtitle: String::new(),
            bars: 0..=last,
            lanes: &lanes,
            captions: Vec::new(),
        };
        let style = PictureStyle { width: WIDTH, surroundings: Surroundings::Bare, ..PictureStyle::column() };
        let pictures =
            Painter::new(&cutter, engraver, &style).draw(&content).map_err(|problem| problem.to_string())?;
        pictures.into_iter().next().ok_or_else(nothing)
    }
}
