//! Numbers as MusicXML writes them: whole, or with a decimal point, always exact here.

use arcata_xml::Element;

use crate::Length;

/// More decimals than this say nothing about music (rule of thumb).
const MOST_DECIMALS: usize = 9;

/// A whole number, with blanks around it forgiven.
pub(super) fn integer(text: &str) -> Option<i64> {
    text.trim().parse().ok()
}

/// A decimal number as an exact fraction.
pub(super) fn decimal(text: &str) -> Option<Length> {
    let text = text.trim();
    let (negative, digits) = match text.as_bytes().first()? {
        b'-' => (true, &text[1..]),
        b'+' => (false, &text[1..]),
        _ => (false, text),
    };
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
    let plain = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    if (whole.is_empty() && fraction.is_empty()) || !plain(whole) || !plain(fraction) {
        return None;
    }
    let fraction = &fraction[..fraction.len().min(MOST_DECIMALS)];
    let scale = 10_i64.pow(fraction.len() as u32);
    let whole: i64 = if whole.is_empty() { 0 } else { whole.parse().ok()? };
    let parts: i64 = if fraction.is_empty() { 0 } else { fraction.parse().ok()? };
    let value = whole.checked_mul(scale)?.checked_add(parts)?;
    Some(Length::new(if negative { -value } else { value }, scale))
}

/// The first number inside a text such as "c. 120" or "112-120".
pub(super) fn first_decimal(text: &str) -> Option<Length> {
    let start = text.find(|c: char| c.is_ascii_digit())?;
    let rest = &text[start..];
    let end = rest.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(rest.len());
    decimal(rest[..end].trim_end_matches('.'))
}

/// The whole number that an element holds, read from its bytes where they are plain digits.
pub(super) fn integer_in(element: Element<'_>) -> Option<i64> {
    integer(element.raw_text()).or_else(|| integer(&element.text()))
}

/// The decimal number that an element holds.
pub(super) fn decimal_in(element: Element<'_>) -> Option<Length> {
    match integer(element.raw_text()) {
        Some(whole) => Some(Length::new(whole, 1)),
        None => decimal(&element.text()),
    }
}

/// Passes of an ending: "1", "1, 2", "1-3", "1.".
pub(super) fn passes(text: &str) -> Vec<u16> {
    /// A bracket for more passes than this is a slip of the pen (a limit).
    const MOST: u16 = 64;
    let mut passes = Vec::new();
    for part in text.split([',', ' ', ';', '&']).map(|part| part.trim_end_matches('.')) {
        match part.split_once('-') {
            Some((from, to)) => {
                if let (Ok(from), Ok(to)) = (from.parse::<u16>(), to.parse::<u16>()) {
                    passes.extend(from..=to.min(from.saturating_add(MOST)));
                }
            }
            None => passes.extend(part.parse::<u16>().ok()),
        }
    }
    passes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_are_exact() {
        assert_eq!(decimal(" 1.5 "), Some(Length::new(3, 2)));
        assert_eq!(decimal("-.25"), Some(Length::new(-1, 4)));
        assert_eq!(decimal("84.33333333333333333"), Some(Length::new(84_333_333_333, 1_000_000_000)));
        for wrong in ["", ".", "-", "1e3", "NaN", "ten", "1.2.3", "99999999999999999999"] {
            assert_eq!(decimal(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn numbers_are_found_in_words() {
        assert_eq!(first_decimal("c. 120"), Some(Length::new(120, 1)));
        assert_eq!(first_decimal("112-120"), Some(Length::new(112, 1)));
        assert_eq!(first_decimal("ca. 63.5."), Some(Length::new(127, 2)));
        assert_eq!(first_decimal("presto"), None);
    }

    #[test]
    fn endings_name_their_passes() {
        assert_eq!(passes("1, 2"), [1, 2]);
        assert_eq!(passes("1-3"), [1, 2, 3]);
        assert_eq!(passes("2."), [2]);
        assert!(passes("").is_empty());
    }
}
