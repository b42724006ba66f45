//! What is said of marks and places of a layer: on change sheets, and by commands.

use arcata_languages::{Argument, SaidPlace, Wording};
use arcata_layer::{Address, Addresses, Mark, Spot};
use arcata_score::places::numeral;

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
        None => end.argument(),
    };
    wording.say(&said.saying(to))
}

/// A place of a layer with its part: by bar and beat; as its file has it where no score is known.
#[must_use]
pub fn place_said(place: &Address, addresses: Option<&Addresses<'_>>, wording: &Wording) -> String {
    match addresses {
        Some(addresses) => address(addresses, place, wording),
        None => in_file(place, wording),
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
    let Some((part, bar)) = known else { return spot.argument() };
    let beat = addresses.score().beat_at(part, bar, spot.offset);
    let which = spot.which().into_iter().map(|said| wording.say(&said));
    let pitch = spot.pitch.map(|pitch| pitch.to_string());
    let detail = which.chain(pitch).collect::<Vec<_>>().join(", ");
    SaidPlace::bar(&spot.bar).on_beat(beat).told_apart_by(detail).into()
}

/// A place as its file has it.
fn in_file(place: &Address, wording: &Wording) -> String {
    format!("{}, {}", place.part, wording.argument(&place.spot.argument()))
}

/// A place with its part, and its movement where there are several.
pub(super) fn address(addresses: &Addresses<'_>, place: &Address, wording: &Wording) -> String {
    let known = addresses.part(&place.part).zip(addresses.bar(&place.spot).ok());
    let Some((part, bar)) = known else { return in_file(place, wording) };
    let there = wording.argument(&spot(addresses, Some(part), &place.spot, wording));
    let movement = addresses.score().movement_said(bar).map(numeral);
    let movement = movement.map_or_else(String::new, |numeral| format!("{numeral}: "));
    format!("{movement}{}, {there}", place.part)
}
