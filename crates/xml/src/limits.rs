//! How much a file may ask of the machine.

/// Hard limits on what is read.
///
/// A score that a person made stays far below every default; a file that was built to harm is refused
/// before it costs memory or time. Each may be raised or lowered:
///
/// ```
/// use arcata_xml::{Document, Limits};
/// let limits = Limits { max_depth: 2, ..Limits::default() };
/// let refused = Document::parse(b"<a><b><c/></b></a>".to_vec(), &limits).unwrap_err();
/// assert!(refused.to_string().contains("deeper than 2"));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Limits {
    /// Longest document, in bytes of the file and of its text as UTF-8.
    ///
    /// Default 256 MiB: ten times the largest orchestral movement measured (36 parts, 26.5 MB). Offsets
    /// are kept in 32 bits, so nothing above 4 GiB is ever read.
    pub max_bytes: usize,
    /// Deepest nesting of elements, the root being 1.
    ///
    /// Default 128: MusicXML nests about ten deep, and whoever walks a tree by recursion must not run
    /// out of stack.
    pub max_depth: usize,
    /// Most attributes on one element.
    ///
    /// Default 256: the element with the most attributes in MusicXML 4.0 has fewer than fifty.
    pub max_attributes: usize,
    /// Most elements in a document.
    ///
    /// Default 16 million, which takes 448 MiB; the largest movement measured has about one million.
    pub max_elements: usize,
    /// Most different element names beyond those of MusicXML.
    ///
    /// Default 4,096: a name costs memory of its own, and numbers of names have 16 bits.
    pub max_names: usize,
    /// Most members in a package (.mxl).
    ///
    /// Default 1,024: a score, its container file, and a picture or sound for every page.
    pub max_members: usize,
    /// Most bytes a package member may unpack to.
    ///
    /// Default 256 MiB, as `max_bytes`.
    pub max_unpacked_bytes: usize,
    /// How many times its packed size a member may unpack to, once it is past 1 MiB.
    ///
    /// Default 500: scores pack 20 to 60 times smaller, one with many empty bars perhaps 150 times;
    /// the densest possible packing is 1,032.
    pub max_ratio: usize,
}

impl Default for Limits {
    fn default() -> Limits {
        Limits {
            max_bytes: 256 << 20,
            max_depth: 128,
            max_attributes: 256,
            max_elements: 16_000_000,
            max_names: 4_096,
            max_members: 1_024,
            max_unpacked_bytes: 256 << 20,
            max_ratio: 500,
        }
    }
}
