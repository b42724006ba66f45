//! Folders and programs that the checks use.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

use crate::outcome::Result;

/// Where the checks find what they need.
pub(crate) struct CheckSetting {
    /// The checkout.
    pub(crate) root: PathBuf,
    cache: PathBuf,
    python: Option<PathBuf>,
    /// Scores that were named for a check.
    pub(crate) given: Vec<PathBuf>,
}

impl CheckSetting {
    pub(crate) fn from_environment() -> Result<Self> {
        let folder = |name: &str| {
            env::var_os(name)
                .map(PathBuf::from)
                .ok_or(format!("{name} is not set; call this through cargo xtask"))
        };
        Ok(Self {
            root: folder("ARCATA_ROOT")?,
            cache: folder("ARCATA_CACHE")?,
            python: env::var_os("ARCATA_PYTHON").map(PathBuf::from),
            given: Vec::new(),
        })
    }

    /// A folder that a script of `outside/` fills: made by `make` when it is not there yet for this
    /// content of the scripts and this list of packages.
    pub(crate) fn made_once(&self, name: &str, make: impl FnOnce(&Path) -> Result<()>) -> Result<PathBuf> {
        let folder = self.cache.join(format!("{name}-{}", self.key_of_scripts()?));
        if folder.join("complete").is_file() {
            return Ok(folder);
        }
        if folder.exists() {
            fs::remove_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        }
        fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        make(&folder)?;
        write(&folder.join("complete"), "")?;
        Ok(folder)
    }

    /// An empty folder of the cache for this run alone.
    pub(crate) fn scratch(&self, name: &str) -> Result<PathBuf> {
        let folder = self.cache.join("scratch").join(format!("{name}-{}", std::process::id()));
        fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        Ok(folder)
    }

    /// A key for all Python files of `outside/`, the list of packages, and the Python whose packages what is made points into.
    fn key_of_scripts(&self) -> Result<String> {
        let outside = self.root.join("outside");
        let listed = fs::read_dir(&outside).map_err(|problem| format!("{}: {problem}", outside.display()))?;
        let mut files: Vec<PathBuf> = listed.filter_map(|entry| Some(entry.ok()?.path())).collect();
        files.retain(|path| path.extension().is_some_and(|ending| ending == "py" || ending == "txt"));
        files.sort();
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        let mut add = |bytes: &[u8]| {
            for byte in bytes {
                hash = (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
            }
        };
        for file in files {
            add(&read(&file)?);
        }
        if let Some(python) = &self.python {
            add(python.as_os_str().as_encoded_bytes());
        }
        Ok(format!("{hash:016x}"))
    }

    /// Runs a script of `outside/` and gives its standard output.
    pub(crate) fn script(&self, name: &str, arguments: &[&Path]) -> Result<String> {
        let python = self.python.as_ref().ok_or("ARCATA_PYTHON is not set; call this through cargo xtask")?;
        let outside = self.root.join("outside");
        let output = Command::new(python)
            // The checkout stays clean.
            .arg("-B")
            .arg(outside.join(name))
            .args(arguments)
            .output()
            .map_err(|problem| format!("cannot start {}: {problem}", python.display()))?;
        if output.status.success() {
            return Ok(String::from_utf8_lossy(&output.stdout).into_owned());
        }
        Err(format!("{name} failed: {}", String::from_utf8_lossy(&output.stderr).trim_end()))
    }
}

/// The bytes of a file.
pub(crate) fn read(path: &Path) -> Result<Vec<u8>> {
    fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// The text of a file.
pub(crate) fn read_text(path: &Path) -> Result<String> {
    fs::read_to_string(path).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// A JSON file whose outermost value is an array.
pub(crate) fn read_array(path: &Path) -> Result<Vec<Value>> {
    match serde_json::from_slice(&read(path)?) {
        Ok(Value::Array(entries)) => Ok(entries),
        Ok(_) => Err(format!("{}: not an array", path.display())),
        Err(problem) => Err(format!("{}: {problem}", path.display())),
    }
}

/// Writes a file of the cache or of `docs/`.
pub(crate) fn write(path: &Path, content: impl AsRef<[u8]>) -> Result<()> {
    fs::write(path, content).map_err(|problem| format!("{}: {problem}", path.display()))
}
