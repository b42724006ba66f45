//! Printed words taken at their meaning.

use super::movements::Ends;
use super::part_reader::PartReader;
use super::swells::{SwellMark, SwellSign};
use crate::words::{WordMeaning, meanings};
use crate::{Dynamic, DynamicKind, Jump, Level, Meter, Place, SwellKind, Tempo, TempoKind, tempo_words};

/// A step from the level in force, such as "più f": resolved when all dynamics of the part are known.
#[derive(Clone, Copy, Debug)]
pub(super) struct LevelStep {
    pub(super) place: Place,
    pub(super) way: SwellKind,
}

impl PartReader {
    /// Takes up everything that a printed text says.
    pub(super) fn read_text(&mut self, text: &str, place: Place) {
        for meaning in meanings(text) {
            match meaning {
                WordMeaning::Instruction(meaning) => self.instruct(place, meaning, text),
                WordMeaning::Swell(kind) => {
                    self.swells.push(SwellMark { place, number: 0, sign: SwellSign::Word(kind) });
                }
                WordMeaning::Tempo(kind) => {
                    let kind = self.in_this_meter(kind);
                    self.tempos.push(Tempo { place, kind, text: text.to_owned() });
                }
                WordMeaning::Jump(Jump::ToCoda) => self.shared.leave_for_coda(),
                WordMeaning::Jump(jump) => self.shared.jump(jump),
                WordMeaning::Dynamic(kind) => self.part.dynamics.push(Dynamic { place, kind }),
                WordMeaning::LevelStep(way) => self.levels.push(LevelStep { place, way }),
            }
        }
    }

    /// The speed of a tempo word counts beats; here it becomes quarter notes.
    fn in_this_meter(&self, kind: TempoKind) -> TempoKind {
        match kind {
            TempoKind::Word(beats) => {
                let meter = self.part.meter_at(self.bar).cloned().unwrap_or_else(Meter::common);
                TempoKind::Word(tempo_words::quarters_in(beats, &meter))
            }
            other => other,
        }
    }
}

/// Turns steps into levels: one above or below the lasting level in force. Both lists are in order of
/// time; a step before any level of its movement is left out, for nobody can know it.
pub(super) fn take_steps(dynamics: &mut Vec<Dynamic>, mut steps: Vec<LevelStep>, ends: Ends<'_>) {
    if steps.is_empty() {
        return;
    }
    steps.sort_by_key(|step| step.place.at);
    let mut merged = Vec::with_capacity(dynamics.len() + steps.len());
    let mut marks = std::mem::take(dynamics).into_iter().peekable();
    let mut steps = steps.into_iter().peekable();
    let mut level = None;
    let mut bar = 0;
    while marks.peek().is_some() || steps.peek().is_some() {
        let step_first = match (marks.peek(), steps.peek()) {
            (Some(mark), Some(step)) => step.place.at < mark.place.at,
            (mark, _) => mark.is_none(),
        };
        if step_first {
            let Some(step) = steps.next() else { break };
            level = level.filter(|_| !ends.between(bar, step.place.bar));
            bar = step.place.bar;
            let Some(next) = level.map(|level| neighbour(level, step.way)) else { continue };
            merged.push(Dynamic { place: step.place, kind: DynamicKind::Level(next) });
            level = Some(next);
        } else {
            let Some(mark) = marks.next() else { break };
            level = mark.kind.lasting().or(level.filter(|_| !ends.between(bar, mark.place.bar)));
            bar = mark.place.bar;
            merged.push(mark);
        }
    }
    *dynamics = merged;
}

fn neighbour(level: Level, way: SwellKind) -> Level {
    /// The dynamics from soft to loud (by definition).
    const SCALE: [Level; 8] =
        [Level::Ppp, Level::Pp, Level::P, Level::Mp, Level::Mf, Level::F, Level::Ff, Level::Fff];
    let here = SCALE.iter().position(|known| *known == level).unwrap_or(0);
    let next = match way {
        SwellKind::Growing => (here + 1).min(SCALE.len() - 1),
        SwellKind::Fading => here.saturating_sub(1),
    };
    SCALE[next]
}
