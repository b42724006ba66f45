//! What is said of marks and places of a layer: on change sheets, and by commands.

use arcata_languages::{Argument, SaidPlace, Saying, Wording};
use arcata_layer::{Address, Addresses, BowPlace, Mark, Spot};
use arcata_score::BowDirection;
use arcata_score::places::{numeral, quoted};

/// A mark as players say it; ends of slurs as its file has them where no score is known.
///
/// ```
/// use arcata_languages::{Language, Wording};
/// use arcata_layer::Mark;
/// use arcata_report::sheet::mark_said;
///
/// let hooked = Mark::Retake { bow: None };
/// assert_eq!(mark_said(&hooked, "violin", None, &Wording::default()), "retake");
/// assert_eq!(mark_said(&hooked, "violin", None, &Wording::of(Language::French)), "reprise d'archet");
/// ```
#[must_use]
pub fn mark_said(said: &Mark, part: &str, addresses: Option<&Addresses<'_>>, wording: &Wording) -> String {
    let to = |end: &Spot| match addresses {
        Some(addresses) => spot(addresses, addresses.part(part), end, wording),
        None => Argument::Text(end.to_string()),
    };
    wording.say(&mark(said, to))
}

/// A place of a layer with its part: by bar and beat; as its file has it where no score is known.
#[must_use]
pub fn place_said(place: &Address, addresses: Option<&Addresses<'_>>, wording: &Wording) -> String {
    addresses.map_or_else(|| place.to_string(), |addresses| address(addresses, place, wording))
}

/// A mark as a saying; ends of slurs are said by `to`.
pub(super) fn mark(mark: &Mark, to: impl Fn(&Spot) -> Argument) -> Saying {
    let way = |bow: Option<BowDirection>| match bow {
        Some(BowDirection::Down) => "down",
        Some(BowDirection::Up) => "up",
        None => "any",
    };
    match mark {
        Mark::Down => Saying::new("mark-bow").choosing("bow", "down"),
        Mark::Up => Saying::new("mark-bow").choosing("bow", "up"),
        Mark::Double { first } => Saying::new("mark-both-bows").choosing("bow", way(Some(*first))),
        Mark::Hook { bow, sign } => Saying::new("mark-hook")
            .choosing("sign", sign.word().unwrap_or("marks"))
            .choosing("bow", way(*bow)),
        Mark::Retake { bow } => Saying::new("mark-retake").choosing("bow", way(*bow)),
        Mark::AsItComes => Saying::new("mark-as-it-comes"),
        Mark::Lift => Saying::new("mark-lift"),
        Mark::InBow { place } => Saying::new("mark-in-bow").choosing("place", bow_place(*place)),
        Mark::Text { text } => Saying::new("mark-text").quoting("text", text),
        Mark::SlurAdded { to: end } => Saying::new("mark-slur").with("to", to(end)),
        Mark::SlurRemoved { to: end } => Saying::new("mark-no-slur").with("to", to(end)),
        Mark::SlurMoved { to: end, new_from, new_to } => {
            let known = |spot: &Option<Spot>| if spot.is_some() { "yes" } else { "no" };
            let or_end = |spot: &Option<Spot>| to(spot.as_ref().unwrap_or(end));
            Saying::new("mark-slur-moved")
                .with("end", to(end))
                .choosing("moves-from", known(new_from))
                .with("from", or_end(new_from))
                .choosing("moves-to", known(new_to))
                .with("to", or_end(new_to))
        }
    }
}

const fn bow_place(place: BowPlace) -> &'static str {
    match place {
        BowPlace::Frog => "frog",
        BowPlace::LowerHalf => "lower-half",
        BowPlace::Middle => "middle",
        BowPlace::UpperHalf => "upper-half",
        BowPlace::Tip => "tip",
        BowPlace::Whole => "whole",
    }
}

/// A spot of a part where the score is known: `bar 1, beat 3½, F5`; as its file has it where it is not.
pub(super) fn spot(
    addresses: &Addresses<'_>,
    part: Option<usize>,
    spot: &Spot,
    wording: &Wording,
) -> Argument {
    let known = part.and_then(|part| Some((part, addresses.bar(spot).ok()?)));
    let Some((part, bar)) = known else { return Argument::Text(spot.to_string()) };
    let beat = addresses.score().beat_at(part, bar, spot.offset);
    let grace = spot.grace.map(|grace| Saying::new("which-grace").with("number", i64::from(grace)));
    let voice = (spot.voice != "1").then(|| {
        let plain = !spot.voice.is_empty() && spot.voice.bytes().all(|letter| letter.is_ascii_digit());
        let voice = if plain { spot.voice.clone() } else { quoted(&spot.voice) };
        Saying::new("which-voice").quoting("voice", voice)
    });
    let which = [grace, voice].into_iter().flatten().map(|said| wording.say(&said));
    let pitch = spot.pitch.map(|pitch| pitch.to_string());
    let detail = which.chain(pitch).collect::<Vec<_>>().join(", ");
    SaidPlace::bar(&spot.bar).on_beat(beat).told_apart_by(detail).into()
}

/// A place with its part, and its movement where there are several.
pub(super) fn address(addresses: &Addresses<'_>, place: &Address, wording: &Wording) -> String {
    let known = addresses.part(&place.part).zip(addresses.bar(&place.spot).ok());
    let Some((part, bar)) = known else { return place.to_string() };
    let there = wording.argument(&spot(addresses, Some(part), &place.spot, wording));
    let movement = addresses.score().movement_said(bar).map(numeral);
    let movement = movement.map_or_else(String::new, |numeral| format!("{numeral}: "));
    format!("{movement}{}, {there}", place.part)
}
