//! The rules, one file each, by chapter.

use crate::{Registered, Rule};

/// Declares the rule files of each chapter and the register, in the order of the manual.
macro_rules! register {
    ($($family:ident { $($file:ident: $rule:ident,)* })*) => {
        $(
            /// One chapter's rules.
            pub mod $family { $(pub mod $file;)* }
        )*

        /// Every rule, in the order of the manual.
        pub static REGISTER: &[Registered] = &[$($(
            Registered::new(
                <$family::$file::$rule as Rule>::CARD,
                <$family::$file::$rule as Rule>::check,
                concat!(stringify!($file), ".rs"),
                include_str!(concat!(stringify!($family), "/", stringify!($file), ".rs")),
            ),
        )*)*];
    };
}

register! {
    length {
        slur_outlasts_bow: SlurOutlastsBow,
        note_outlasts_bow: NoteOutlastsBow,
        bow_drift: BowDrift,
        rushed_return: RushedReturn,
    }
}
