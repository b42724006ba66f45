//! How much of everything one page of a sheet holds: on the PDF, and where the HTML page is printed.

/// How much there is of everything.
#[derive(Clone, Copy, Debug)]
pub(super) struct SheetFit {
    /// Size of letters, points.
    pub(super) body: f32,
    /// Hundredths of the width that pictures may have.
    pub(super) pictures: f32,
    /// Millimetres that a picture may be high.
    pub(super) high: f32,
    /// Lines of one paragraph at most.
    pub(super) lines: usize,
    /// Lines for what was found besides.
    pub(super) rest: usize,
    /// Whether the reason is given.
    pub(super) why: KeepOnSheet,
    /// Whether the repair is pictured.
    pub(super) repair: KeepOnSheet,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum KeepOnSheet {
    Yes,
    No,
}

const fn fit(body: f32, pictures: f32, high: f32, lines: usize, rest: usize) -> SheetFit {
    SheetFit { body, pictures, high, lines, rest, why: KeepOnSheet::Yes, repair: KeepOnSheet::Yes }
}

/// From all that there is to what fits whatever was found.
pub(super) const FITS: [SheetFit; 12] = [
    fit(9.0, 100.0, 70.0, 8, 10),
    fit(8.8, 100.0, 56.0, 6, 10),
    fit(8.6, 100.0, 50.0, 5, 8),
    fit(8.4, 96.0, 45.0, 4, 7),
    fit(8.2, 92.0, 40.0, 4, 6),
    fit(8.0, 88.0, 36.0, 3, 5),
    fit(7.8, 84.0, 32.0, 3, 4),
    fit(7.7, 78.0, 27.0, 3, 4),
    fit(7.6, 72.0, 23.0, 3, 4),
    SheetFit { why: KeepOnSheet::No, ..fit(7.6, 66.0, 20.0, 3, 4) },
    SheetFit { why: KeepOnSheet::No, repair: KeepOnSheet::No, ..fit(7.4, 60.0, 18.0, 2, 3) },
    SheetFit { why: KeepOnSheet::No, repair: KeepOnSheet::No, ..fit(7.0, 50.0, 14.0, 1, 1) },
];
