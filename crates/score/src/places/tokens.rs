//! A typed line cut into tokens: places, and what shorthand says of them.

/// What a token is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TokenKind<'t> {
    /// Digits, with letters glued on where a bar is called so: `37`, `12a`.
    Number(&'t str),
    /// Letters, with digits, dots, apostrophes and inner hyphens: `Vn1`, `m.`, `down-bow`.
    Word(&'t str),
    /// Text in quotation marks, escapes resolved.
    Quoted(String),
    /// `½` and its like.
    Fraction(i64, i64),
    /// What follows the word `pitch`; a pitch such as `F#5` or `C(+50)4` that no word can be.
    Raw(&'t str),
    /// The sign of a down-bow.
    DownSign,
    /// The sign of an up-bow.
    UpSign,
    /// `/`.
    Slash,
    /// A hyphen or dash of any length, `..`.
    Dash,
    /// `+`.
    Plus,
    /// `&`.
    Ampersand,
    /// `.`, where no word or number holds it.
    Dot,
    /// `,`.
    Comma,
    /// `;`.
    Semicolon,
    /// `:`.
    Colon,
    /// `(`.
    Open,
    /// `)`.
    Close,
    /// A character that means nothing here.
    Strange(char),
    /// A quotation mark that is never closed.
    Unclosed,
}

/// A token and where it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Token<'t> {
    /// What it is.
    pub kind: TokenKind<'t>,
    /// As typed.
    pub text: &'t str,
    /// Bytes from the start of the line.
    pub at: usize,
    /// Characters from the start of the line, from 1.
    pub column: u32,
    /// Characters.
    pub width: u32,
    /// Whether a space stands before it.
    pub before: BeforeToken,
}

/// What stands before a token.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BeforeToken {
    /// A space, or the start of the line.
    Space,
    /// Another token.
    Token,
}

/// The signs of fractions that are read.
const FRACTIONS: [(char, i64, i64); 18] = [
    ('½', 1, 2),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅕', 1, 5),
    ('⅖', 2, 5),
    ('⅗', 3, 5),
    ('⅘', 4, 5),
    ('⅙', 1, 6),
    ('⅚', 5, 6),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
    ('⅐', 1, 7),
    ('⅑', 1, 9),
    ('⅒', 1, 10),
];

/// What a sign of a fraction stands for, numerator and denominator.
///
/// ```
/// assert_eq!(arcata_score::places::tokens::fraction_of('¾'), Some((3, 4)));
/// ```
#[must_use]
pub fn fraction_of(sign: char) -> Option<(i64, i64)> {
    FRACTIONS.iter().find(|(known, ..)| *known == sign).map(|(_, above, below)| (*above, *below))
}

/// Cuts a line; what follows `#` after a space or at the start is the comment.
#[must_use]
pub fn tokens(line: &str) -> (Vec<Token<'_>>, Option<&str>) {
    let mut lexer = Lexer { line, at: 0, column: 1, found: Vec::new() };
    let comment = lexer.run();
    (lexer.found, comment)
}

struct Lexer<'t> {
    line: &'t str,
    at: usize,
    column: u32,
    found: Vec<Token<'t>>,
}

impl<'t> Lexer<'t> {
    fn run(&mut self) -> Option<&'t str> {
        let mut before = BeforeToken::Space;
        while let Some(letter) = self.rest().chars().next() {
            if letter.is_whitespace() || letter == '\u{feff}' {
                self.step(letter.len_utf8());
                before = BeforeToken::Space;
                continue;
            }
            if letter == '#' && before == BeforeToken::Space {
                return Some(self.rest()[1..].trim());
            }
            let wants_pitch = matches!(
                self.found.last(),
                Some(Token { kind: TokenKind::Word(word), .. }) if word.eq_ignore_ascii_case("pitch")
            );
            let (kind, length) = if wants_pitch { raw(self.rest()) } else { self.kind(letter) };
            let text = &self.rest()[..length];
            let width = count(text);
            self.found.push(Token { kind, text, at: self.at, column: self.column, width, before });
            self.step(length);
            before = BeforeToken::Token;
        }
        None
    }

    fn rest(&self) -> &'t str {
        &self.line[self.at..]
    }

    fn step(&mut self, length: usize) {
        self.column += count(&self.rest()[..length]);
        self.at += length;
    }

    fn kind(&self, letter: char) -> (TokenKind<'t>, usize) {
        let rest = self.rest();
        let one = letter.len_utf8();
        if letter.is_ascii_digit() {
            let length = span(rest, |letter| letter.is_ascii_digit());
            let letters = span(&rest[length..], |letter| letter.is_alphabetic());
            let text = &rest[..length + letters];
            return (TokenKind::Number(text), text.len());
        }
        if let Some((numerator, denominator)) = fraction_of(letter) {
            return (TokenKind::Fraction(numerator, denominator), one);
        }
        let sign = match letter {
            '/' => TokenKind::Slash,
            '-' | '\u{2010}'..='\u{2015}' | '−' => TokenKind::Dash,
            '+' => TokenKind::Plus,
            '&' => TokenKind::Ampersand,
            ',' => TokenKind::Comma,
            ';' => TokenKind::Semicolon,
            ':' => TokenKind::Colon,
            '(' => TokenKind::Open,
            ')' => TokenKind::Close,
            '⊓' | '∏' | 'Π' | '\u{1d1aa}' => TokenKind::DownSign,
            '\u{1d1ab}' | '∨' => TokenKind::UpSign,
            '.' if rest.starts_with("..") => return (TokenKind::Dash, span(rest, |letter| letter == '.')),
            '.' => TokenKind::Dot,
            '"' | '“' | '„' | '«' => return quoted(rest, letter),
            _ if pitch_length(rest) > 0 => {
                return (TokenKind::Raw(&rest[..pitch_length(rest)]), pitch_length(rest));
            }
            _ if letter.is_alphabetic() => return word(rest),
            _ => TokenKind::Strange(letter),
        };
        (sign, one)
    }
}

fn count(text: &str) -> u32 {
    u32::try_from(text.chars().count()).unwrap_or(u32::MAX)
}

fn span(text: &str, belongs: impl Fn(char) -> bool) -> usize {
    text.find(|letter| !belongs(letter)).unwrap_or(text.len())
}

fn raw(text: &str) -> (TokenKind<'_>, usize) {
    let length = span(text, |letter| !letter.is_whitespace() && !matches!(letter, ',' | ';'));
    match length {
        0 => (TokenKind::Strange(' '), text.chars().next().map_or(0, char::len_utf8)),
        _ => (TokenKind::Raw(&text[..length]), length),
    }
}

/// How long a pitch is that stands there and holds what no word does: `F#5`, `C(+50)4`; 0 where none does.
fn pitch_length(text: &str) -> usize {
    let after_step = text.strip_prefix(|step| ('A'..='G').contains(&step)).unwrap_or_default();
    let sharps = span(after_step, |sign| sign == '#');
    let cents =
        after_step.strip_prefix('(').and_then(|cents| cents.split_once(')')).map_or(0, |(cents, _)| {
            let digits = cents.strip_prefix(['+', '-']).unwrap_or_default();
            let sound = (1..=4).contains(&digits.len()) && digits.bytes().all(|digit| digit.is_ascii_digit());
            if sound { cents.len() + 2 } else { 0 }
        });
    let signs = sharps + cents;
    let octave = after_step[signs..].strip_prefix('-').unwrap_or(&after_step[signs..]);
    let digits = span(octave, |letter| letter.is_ascii_digit());
    let ends = !octave[digits..].starts_with(char::is_alphanumeric);
    let sound = signs > 0 && (1..=2).contains(&digits) && ends;
    if sound { text.len() - octave.len() + digits } else { 0 }
}

/// Letters, digits, dots, apostrophes and accents; a hyphen between two letters belongs to the word.
fn word(text: &str) -> (TokenKind<'_>, usize) {
    let mut length = 0;
    let mut letters = text.char_indices().peekable();
    let mut before = ' ';
    while let Some((at, letter)) = letters.next() {
        let next = letters.peek().map_or(' ', |(_, next)| *next);
        let inner = match letter {
            '\'' | '’' | '\u{300}'..='\u{36f}' | 'º' | 'ª' | '°' => true,
            '.' => next != '.',
            '-' | '\u{2010}' | '\u{2011}' => before.is_alphabetic() && next.is_alphabetic(),
            _ => letter.is_alphanumeric() && fraction_of(letter).is_none(),
        };
        if !inner {
            break;
        }
        length = at + letter.len_utf8();
        before = letter;
    }
    (TokenKind::Word(&text[..length]), length)
}

/// Text up to the closing mark; `\"`, `\\`, `\n` and `\r` stand for what cannot be typed.
fn quoted(text: &str, opening: char) -> (TokenKind<'_>, usize) {
    let closing: &[char] = match opening {
        '"' => &['"'],
        '«' => &['»'],
        _ => &['”', '“', '"'],
    };
    let mut said = String::new();
    let mut letters = text.char_indices().skip(1);
    while let Some((at, letter)) = letters.next() {
        if closing.contains(&letter) {
            return (TokenKind::Quoted(said), at + letter.len_utf8());
        }
        if letter != '\\' {
            said.push(letter);
            continue;
        }
        match letters.next() {
            Some((_, 'n')) => said.push('\n'),
            Some((_, 'r')) => said.push('\r'),
            Some((_, other)) => said.push(other),
            None => {}
        }
    }
    (TokenKind::Unclosed, text.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kinds(line: &str) -> Vec<TokenKind<'_>> {
        tokens(line).0.into_iter().map(|token| token.kind).collect()
    }

    #[test]
    fn bars_beats_and_words_are_told_apart() {
        use TokenKind::{Dash, Fraction, Number, Slash, Word};
        assert_eq!(kinds("Vn1 37/3 down"), [Word("Vn1"), Number("37"), Slash, Number("3"), Word("down")]);
        assert_eq!(kinds("12a/3½"), [Number("12a"), Slash, Number("3"), Fraction(1, 2)]);
        assert_eq!(kinds("41–42..43"), [Number("41"), Dash, Number("42"), Dash, Number("43")]);
        assert_eq!(kinds("down-bow X1-X4"), [Word("down-bow"), Word("X1"), Dash, Word("X4")]);
    }

    #[test]
    fn comments_need_a_space_before_them() {
        assert_eq!(tokens("# whole").1, Some("whole"));
        assert_eq!(tokens("37 down # why").1, Some("why"));
        assert_eq!(
            kinds("37 pitch F#5"),
            [TokenKind::Number("37"), TokenKind::Word("pitch"), TokenKind::Raw("F#5")]
        );
    }

    #[test]
    fn columns_count_characters() {
        let (found, _) = tokens("é „già“ 4");
        assert_eq!(found.iter().map(|token| token.column).collect::<Vec<_>>(), [1, 3, 9]);
        assert_eq!(found[1].kind, TokenKind::Quoted("già".into()));
    }

    #[test]
    fn quotes_can_hold_quotes() {
        assert_eq!(kinds(r#""a \"b\" \\ \n""#), [TokenKind::Quoted("a \"b\" \\ \n".into())]);
        assert_eq!(kinds("\"open"), [TokenKind::Unclosed]);
    }
}
