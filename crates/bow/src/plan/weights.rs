//! What the planner weighs.

/// The planner's weights, whole thousandths of a point. The yardstick is `downbeat`: what an up-bow on a
/// downbeat counts. Names are the keys of `[weights]` in a player
/// profile, where each stands with its reason, source and status.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Weights {
    /// An up-bow on a downbeat, one note shorter than a bar.
    pub downbeat: i64,
    /// The same for a slur shorter than a bar.
    pub downbeat_slurred: i64,
    /// The same for a stroke of about a bar.
    pub downbeat_bar: i64,
    /// The same for a stroke of several bars.
    pub downbeat_bars: i64,
    /// More for strokes shorter than a bar where bars count in twos.
    pub downbeat_even: i64,
    /// An up-bow on the middle of an even bar, one note.
    pub mid_bar: i64,
    /// The same for a slur.
    pub mid_bar_slurred: i64,
    /// A slur begun in the middle of an even bar taken down.
    pub half_bar: i64,
    /// A down-bow on a weak beat (odd parts down, even parts up: Mersenne 1636).
    pub beat: i64,
    /// A down-bow between beats.
    pub offbeat: i64,
    /// The last short note before a downbeat taken down.
    pub upbeat: i64,
    /// The same for a short slur.
    pub upbeat_slurred: i64,
    /// The same for a stroke that is longer than a beat of three.
    pub upbeat_long: i64,
    /// A short slur that flows into a downbeat taken up.
    pub flow_slurred: i64,
    /// The same for a stroke that is longer than a beat of three.
    pub flow_long: i64,
    /// The last short stroke before the middle of a bar taken down.
    pub upbeat_mid_bar: i64,
    /// An entry on the bow against the beat.
    pub entry: i64,
    /// An entry that neither holds nor leads to a downbeat taken up.
    pub entry_elsewhere: i64,
    /// The last stroke before a short rest taken down.
    pub before_rest: i64,
    /// A tremolo begun on the up-bow, so that like ones begin alike.
    pub tremolo: i64,
    /// An up-bow on a fully accented onset.
    pub accent: i64,
    /// A full accent begun at the tip rather than the frog.
    pub accent_place: i64,
    /// A soft entry begun at the frog rather than the tip.
    pub soft_entry_place: i64,
    /// A swell of one dynamic step against the bow.
    pub swell: i64,
    /// A phrase's last note on an up-bow, at a full joint.
    pub ending: i64,
    /// Two single strokes in one direction, stopped on the string.
    pub hook: i64,
    /// The last two of a bar's equal notes, each of a beat or more, both up.
    pub hook_last_two: i64,
    /// How much of the hook's cost a full phrase joint takes off, percent.
    pub hook_joint_relief: i64,
    /// How much of it goes when the stroke is half as long as the one before or shorter, percent.
    pub hook_short_relief: i64,
    /// More for a hook next to a slur.
    pub hook_by_slur: i64,
    /// More for a hook between two slurs without dots: only a mark or an anchor makes it worth it.
    pub hook_slurs: i64,
    /// A hook between two strokes that both carry the same printed bow.
    pub hook_asked: i64,
    /// A retake without a rest in a line that sounds on.
    pub retake: i64,
    /// The same where a dot, a chord or an accent parts the two strokes.
    pub retake_apart: i64,
    /// More for a retake on the up-bow.
    pub retake_up: i64,
    /// A retake between two strokes that both carry the same printed bow.
    pub retake_asked: i64,
    /// How much of the retake's cost a full phrase joint takes off, percent.
    pub retake_joint_relief: i64,
    /// A retake or reset the whole length of the bow, for its distance.
    pub retake_distance: i64,
    /// A lift that has not the time it needs: only a mark or an anchor makes it worth it.
    pub rushed: i64,
    /// The same where both strokes carry the same printed bow.
    pub rushed_asked: i64,
    /// What part of the price of a hook, a retake and a reset counts where none is printed but other marks are near, percent.
    pub unmarked: i64,
    /// What part of the price of coming back to the beginning of a repeated stretch counts, percent.
    pub turn: i64,
    /// Going on in one direction over a rest that has just the time to lift and carry a whole bow; up to
    /// twice as much over a shorter one, less over a longer one.
    pub reset: i64,
    /// An octave (a doubling) above the preferred speed, notes with the time to shape it.
    pub speed_fast: i64,
    /// The same for shorter notes.
    pub speed_fast_short: i64,
    /// An octave below it.
    pub speed_slow: i64,
    /// An octave beyond the fastest or slowest speed.
    pub speed_limit: i64,
    /// A whole bow away from where the stroke lives.
    pub place: i64,
    /// A printed mark not kept, where marks are advice.
    pub mark: i64,
    /// A stroke against the section that plays the same rhythm.
    pub unity: i64,
    /// The same for cellos and basses, which may bow the mirror image.
    pub unity_low: i64,
    /// The same for players who each have a part of their own.
    pub unity_alone: i64,
    /// A stroke of a repeated figure bowed otherwise than elsewhere in the part.
    pub likeness: i64,
    /// A stroke bowed otherwise than in the bar before, which has the same strokes.
    pub likeness_bars: i64,
    /// A stroke of an imitated figure bowed otherwise than in the other parts.
    pub imitation: i64,
    /// A slur split in two.
    pub split_slur: i64,
    /// The bow changed in the middle of a tied note.
    pub split_tie: i64,
    /// Two strokes joined under one slur.
    pub join_strokes: i64,
    /// Two notes taken on one bow, stopped, and written so.
    pub write_hook: i64,
    /// A slur's beginning or end moved by one note.
    pub move_slur_end: i64,
}

impl Default for Weights {
    /// The shipped professional profile.
    fn default() -> Self {
        Self {
            downbeat: 1100,
            downbeat_slurred: 600,
            downbeat_bar: 600,
            downbeat_bars: 50,
            downbeat_even: 200,
            mid_bar: 600,
            mid_bar_slurred: 0,
            half_bar: 700,
            beat: 50,
            offbeat: 250,
            upbeat: 200,
            upbeat_slurred: 0,
            upbeat_long: 0,
            flow_slurred: 400,
            flow_long: 400,
            upbeat_mid_bar: 100,
            entry: 1500,
            entry_elsewhere: 500,
            before_rest: 400,
            tremolo: 150,
            accent: 800,
            accent_place: 600,
            soft_entry_place: 300,
            swell: 1000,
            ending: 640,
            hook: 8000,
            hook_last_two: 600,
            hook_joint_relief: 50,
            hook_short_relief: 0,
            hook_by_slur: 1000,
            hook_slurs: 100000,
            hook_asked: 2700,
            retake: 9000,
            retake_apart: 3000,
            retake_up: 1500,
            retake_asked: 2200,
            retake_joint_relief: 80,
            retake_distance: 360,
            rushed: 100000,
            rushed_asked: 300,
            unmarked: 300,
            turn: 30,
            reset: 300,
            speed_fast: 400,
            speed_fast_short: 1200,
            speed_slow: 700,
            speed_limit: 4000,
            place: 540,
            mark: 5000,
            unity: 3000,
            unity_low: 700,
            unity_alone: 250,
            likeness: 150,
            likeness_bars: 1500,
            imitation: 60,
            split_slur: 2500,
            split_tie: 4000,
            join_strokes: 3000,
            write_hook: 2500,
            move_slur_end: 2000,
        }
    }
}

impl Weights {
    /// Those that are percentages of others; all others are thousandths of a point.
    pub const PERCENTAGES: [&'static str; 5] =
        ["hook_joint_relief", "hook_short_relief", "retake_joint_relief", "unmarked", "turn"];

    /// Every weight by its name, in the order of the profile; the one list that profile and tuning use.
    #[must_use]
    pub fn named(&mut self) -> Vec<(&'static str, &mut i64)> {
        vec![
            ("downbeat", &mut self.downbeat),
            ("downbeat_slurred", &mut self.downbeat_slurred),
            ("downbeat_bar", &mut self.downbeat_bar),
            ("downbeat_bars", &mut self.downbeat_bars),
            ("downbeat_even", &mut self.downbeat_even),
            ("mid_bar", &mut self.mid_bar),
            ("mid_bar_slurred", &mut self.mid_bar_slurred),
            ("half_bar", &mut self.half_bar),
            ("beat", &mut self.beat),
            ("offbeat", &mut self.offbeat),
            ("upbeat", &mut self.upbeat),
            ("upbeat_slurred", &mut self.upbeat_slurred),
            ("upbeat_long", &mut self.upbeat_long),
            ("flow_slurred", &mut self.flow_slurred),
            ("flow_long", &mut self.flow_long),
            ("upbeat_mid_bar", &mut self.upbeat_mid_bar),
            ("entry", &mut self.entry),
            ("entry_elsewhere", &mut self.entry_elsewhere),
            ("before_rest", &mut self.before_rest),
            ("tremolo", &mut self.tremolo),
            ("accent", &mut self.accent),
            ("accent_place", &mut self.accent_place),
            ("soft_entry_place", &mut self.soft_entry_place),
            ("swell", &mut self.swell),
            ("ending", &mut self.ending),
            ("hook", &mut self.hook),
            ("hook_last_two", &mut self.hook_last_two),
            ("hook_joint_relief", &mut self.hook_joint_relief),
            ("hook_short_relief", &mut self.hook_short_relief),
            ("hook_by_slur", &mut self.hook_by_slur),
            ("hook_slurs", &mut self.hook_slurs),
            ("hook_asked", &mut self.hook_asked),
            ("retake", &mut self.retake),
            ("retake_apart", &mut self.retake_apart),
            ("retake_up", &mut self.retake_up),
            ("retake_asked", &mut self.retake_asked),
            ("retake_joint_relief", &mut self.retake_joint_relief),
            ("retake_distance", &mut self.retake_distance),
            ("rushed", &mut self.rushed),
            ("rushed_asked", &mut self.rushed_asked),
            ("unmarked", &mut self.unmarked),
            ("turn", &mut self.turn),
            ("reset", &mut self.reset),
            ("speed_fast", &mut self.speed_fast),
            ("speed_fast_short", &mut self.speed_fast_short),
            ("speed_slow", &mut self.speed_slow),
            ("speed_limit", &mut self.speed_limit),
            ("place", &mut self.place),
            ("mark", &mut self.mark),
            ("unity", &mut self.unity),
            ("unity_low", &mut self.unity_low),
            ("unity_alone", &mut self.unity_alone),
            ("likeness", &mut self.likeness),
            ("likeness_bars", &mut self.likeness_bars),
            ("imitation", &mut self.imitation),
            ("split_slur", &mut self.split_slur),
            ("split_tie", &mut self.split_tie),
            ("join_strokes", &mut self.join_strokes),
            ("write_hook", &mut self.write_hook),
            ("move_slur_end", &mut self.move_slur_end),
        ]
    }
}
