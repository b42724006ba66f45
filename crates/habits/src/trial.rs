//! How much better do learned prices foresee what they were not learned from?

use crate::Foreseen;

/// What the old prices and the new ones foresee of strokes that were left out, by the blocks that were left out.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Trial {
    /// For each block of bars, or work: strokes, those foreseen by the old prices, and by the new ones.
    pub blocks: Vec<[usize; 3]>,
}

impl Trial {
    /// Strokes that were left out.
    #[must_use]
    pub fn strokes(&self) -> usize {
        self.blocks.iter().map(|[strokes, ..]| strokes).sum()
    }

    /// What it comes to.
    #[must_use]
    pub fn foreseen(&self) -> Foreseen {
        let sum = |place: usize| self.blocks.iter().map(|block| block[place]).sum();
        Foreseen { strokes: sum(0), before: sum(1), after: sum(2), error: self.gain().1 }
    }

    /// What is won, hundredths of a point, and its standard error over the blocks (a ratio of sums: Cochran, Sampling
    /// techniques, 1977, 6.4).
    ///
    /// ```
    /// use arcata_habits::Trial;
    /// let even = Trial { blocks: vec![[10, 5, 6]; 8] };
    /// assert_eq!(even.gain(), (1000, 0));
    /// ```
    #[must_use]
    pub fn gain(&self) -> (i64, i64) {
        let (strokes, blocks) = (self.strokes() as f64, self.blocks.len() as f64);
        if strokes < 1.0 || blocks < 2.0 {
            return (0, i64::MAX);
        }
        let won: f64 = self.blocks.iter().map(|[_, old, new]| *new as f64 - *old as f64).sum();
        let gain = won / strokes;
        let off = |[count, old, new]: &[usize; 3]| {
            let off = *new as f64 - *old as f64 - gain * *count as f64;
            off * off
        };
        let variance =
            self.blocks.iter().map(off).sum::<f64>() * blocks / (blocks - 1.0) / (strokes * strokes);
        #[expect(clippy::cast_possible_truncation, reason = "at most a hundred points")]
        let hundredths = |share: f64| (share * 1e4).round() as i64;
        (hundredths(gain), hundredths(variance.sqrt()))
    }
}
