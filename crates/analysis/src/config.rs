//! How a score is to be read and bowed.

use arcata_bow::plan::MarkReading;
use arcata_bow::profile::Shipped;
use arcata_bow::timing::TempoChoice;
use arcata_bow::{LineOptions, Profile, Style};
use arcata_habits::Habits;
use arcata_languages::Saying;
use arcata_score::Length;

/// Who plays, and in which style.
#[derive(Clone, Debug, Default)]
pub struct Player {
    /// Level, style and habits, as prices and thresholds.
    pub profile: Profile,
    /// What is to be told of it with every result, in words.
    pub told: Vec<Saying>,
}

impl Player {
    /// The name of the level that a player has where nobody says otherwise.
    pub const USUAL: &str = "professional";

    /// A player of one of the levels that come with the program, in the usual style.
    ///
    /// # Errors
    /// A name that there is not, in words.
    pub fn named(level: &str) -> Result<Profile, String> {
        let shipped = Shipped::ALL.into_iter().find(|shipped| shipped.name() == level);
        shipped.map(Profile::shipped).ok_or_else(|| {
            let known = Shipped::ALL.map(Shipped::name).join(", ");
            format!("there is no player called \"{level}\": {known}")
        })
    }

    /// A player in a style, with a leader's habits. Without a style it is that of the habits, else the profile's own.
    ///
    /// ```
    /// use arcata_analysis::Player;
    /// use arcata_bow::Style;
    ///
    /// let player = Player::new(Player::named("student")?, Some(Style::Early), None)?;
    /// assert_eq!(player.profile.style, Style::Early);
    /// assert!(Player::named("virtuoso").is_err());
    /// # Ok::<(), String>(())
    /// ```
    ///
    /// # Errors
    /// Habits that were learned in another style than the one asked for, in words.
    pub fn new(profile: Profile, style: Option<Style>, habits: Option<&Habits>) -> Result<Self, String> {
        let style = style.or(habits.map(|habits| habits.style));
        let profile = style.map_or_else(|| profile.clone(), |style| profile.clone().in_style(style));
        let Some(habits) = habits else { return Ok(Self { profile, told: Vec::new() }) };
        let told = vec![Saying::new("assume-habits").quoting("count", habits.strokes.to_string())];
        Ok(Self { profile: habits.put_into(profile)?, told })
    }
}

/// Whether the lines of a score know of each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Planning {
    /// Lines of one rhythm, figures that come back and entries that imitate are bowed alike, unless going their own way saves
    /// more.
    #[default]
    Together,
    /// Each line for itself, which is much quicker.
    Apart,
}

/// How a score is to be read and bowed.
#[derive(Clone, Debug, Default)]
pub struct Config {
    /// Who plays.
    pub player: Player,
    /// Quarter notes a minute at the opening; none goes by the score.
    pub tempo: Option<u32>,
    /// The movement that [`Self::tempo`] speaks of; the others keep their proportion to it.
    pub opening_movement: usize,
    /// Steps of the dynamics (p to mp is one) by which everything is played louder than written; softer where negative.
    pub louder: i8,
    /// How printed bow marks are taken.
    pub marks: MarkReading,
    /// Whether the lines know of each other.
    pub planning: Planning,
}

impl Config {
    /// How a player bows a score by what stands in it.
    #[must_use]
    pub fn of(profile: Profile) -> Self {
        Self { player: Player { profile, told: Vec::new() }, ..Self::default() }
    }

    /// How professionals bow a score, as the program takes it where nobody says who plays.
    #[must_use]
    pub fn usual() -> Self {
        Self::of(Profile::shipped(Shipped::Professional))
    }

    /// What shapes the lines of the score.
    #[must_use]
    pub fn line_options(&self) -> LineOptions {
        let opening = |quarters| TempoChoice::Opening(Length::new(i64::from(quarters), 1));
        LineOptions {
            tempo: self.tempo.map_or(TempoChoice::Written, opening),
            opening_movement: self.opening_movement,
            louder: self.louder,
            ..LineOptions::default()
        }
    }
}
