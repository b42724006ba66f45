//! Where things are kept.

use std::env;
use std::fs;
use std::path::PathBuf;

/// The folders that the commands use.
pub(crate) struct Folders {
    /// The checkout.
    pub(crate) root: PathBuf,
    /// What is fetched or made once and used by later runs.
    pub(crate) cache: PathBuf,
    /// Built files. Outside the checkout, so that a clean checkout does not build anew what is there.
    pub(crate) target: PathBuf,
}

impl Folders {
    pub(crate) fn find() -> Result<Self, String> {
        // Cargo says at run time which checkout it was called in; the one it was built in may be another that
        // shares the target folder.
        let here = folder("CARGO_MANIFEST_DIR").unwrap_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")));
        let root = here.parent().ok_or("the checkout cannot be found from where xtask was built")?.to_owned();
        let cache = match (folder("XDG_CACHE_HOME"), folder("HOME")) {
            (Some(cache), _) => cache.join("arcata"),
            (None, Some(home)) => home.join(".cache").join("arcata"),
            (None, None) => return Err("neither XDG_CACHE_HOME nor HOME is set; set one of them".to_owned()),
        };
        let target = folder("CARGO_TARGET_DIR").unwrap_or_else(|| cache.join("target"));
        for folder in [&cache, &target] {
            fs::create_dir_all(folder)
                .map_err(|problem| format!("cannot make the folder {}: {problem}", folder.display()))?;
        }
        let target =
            fs::canonicalize(&target).map_err(|problem| format!("{}: {problem}", target.display()))?;
        Ok(Self { root, cache, target })
    }
}

/// A folder that the environment names; an empty value counts as none.
fn folder(variable: &str) -> Option<PathBuf> {
    env::var_os(variable).filter(|value| !value.is_empty()).map(PathBuf::from)
}

/// A short key for a content (FNV-1a, 64 bits): folders of the cache are named after what they hold.
pub(crate) fn key(content: &[u8]) -> String {
    let hash = content.iter().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    });
    format!("{hash:016x}")
}
