//! The page of the workbench as a folder of files: any server of files can offer it, and the browser computes everything.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};

use crate::command::{cargo, run};
use crate::notice::{self, Engraving};
use crate::places::{Folders, key};
use crate::tools;

/// The system that a browser is.
pub(crate) const BROWSER: &str = "wasm32-unknown-unknown";

/// Instructions on several numbers at once, which browsers have had since 2021 (Safari since 2023), and a stack that deep music
/// does not overflow, bytes.
const FLAGS: &str = "-Ctarget-feature=+simd128 -Clink-arg=-zstack-size=4194304";

/// Scores to try.
const DEMOS: [&str; 3] = ["lantern-study", "ferry-bell-quartet", "slipway-strings"];

/// What the page may do: it runs and asks for what is in its folder and nothing else. Modules are compiled from bytes, which a
/// browser allows by a word of its own.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; style-src 'self' 'unsafe-inline'; \
                      img-src 'self' data: blob:; font-src 'self' data:; connect-src 'self'; manifest-src 'self'; base-uri 'none'; \
                      form-action 'none'";

/// Where the folder goes unless --out says otherwise, among the built files.
pub(crate) const OUT: &str = "arcata-site";

/// A mark of a folder that this command made: it may be made anew.
const MARK: &str = "offline.js";

/// Makes the folder.
pub(crate) fn site(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let out = match arguments {
        [] => places.target.join(OUT),
        [name, folder] if name == "--out" => PathBuf::from(folder),
        _ => return Err("site takes --out FOLDER and nothing else".to_owned()),
    };
    make(places, &out)?;
    let folder = out.display();
    println!(
        "\n{folder} is the page. To see it here:\n\n  python3 -m http.server --bind 127.0.0.1 --directory {folder} 8000\n"
    );
    println!("and open http://localhost:8000");
    Ok(ExitCode::SUCCESS)
}

/// Whether this toolchain can build for a browser; rustup is asked for what is missing.
pub(crate) fn can_build() -> bool {
    tools::rust_target(BROWSER).is_ok()
}

/// Makes the folder anew.
pub(crate) fn make(places: &Folders, out: &Path) -> Result<(), String> {
    if !can_build() {
        return Err(format!(
            "this toolchain has no standard library for {BROWSER}, and rustup could not get it"
        ));
    }
    let module = module(places)?;
    let packages = tools::packages(places)?.join("node_modules");
    if out.exists() && !out.join(MARK).is_file() && !tools::is_empty(out) {
        return Err(format!("{} holds other files; name a folder that is empty or new", out.display()));
    }
    let _ = fs::remove_dir_all(out);
    let folder = |name: &str| {
        let path = out.join(name);
        fs::create_dir_all(&path).map_err(|problem| format!("{}: {problem}", path.display())).map(|()| path)
    };
    let page = folder("page")?;
    for source in ["crates/workbench/page", "crates/web/page"] {
        for path in tools::list(&places.root.join(source))? {
            let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            let ends = |ending: &str| name.ends_with(ending);
            match name.as_str() {
                "locked.html" | "tsconfig.json" | "index.html" | "entrance.mjs" => {}
                "manifest.webmanifest" => tools::copy(&path, &out.join(&name))?,
                _ if ends(".mjs") || ends(".css") || ends(".svg") || name == "able.js" => {
                    tools::copy(&path, &page.join(&name))?;
                }
                _ => {}
            }
        }
    }
    write(&out.join("index.html"), index(places)?.as_bytes())?;
    tools::copy(&module, &out.join("arcata.wasm"))?;
    let library = packages.join("verovio").join("dist").join("verovio-module.mjs");
    tools::copy(&library, &folder("verovio")?.join("verovio-module.mjs"))?;
    let demos = folder("demo")?;
    for name in DEMOS {
        let name = format!("{name}.musicxml");
        tools::copy(&places.root.join("demo").join(&name), &demos.join(&name))?;
    }
    tools::copy(
        &notice::folder_of(places, "verovio-data")?.join("data").join("Bravura.css"),
        &out.join("fonts.css"),
    )?;
    notice::licences(places, &folder("licences")?)?;
    let text = notice::of_package(places, "arcata-web", BROWSER, Engraving::InAFile)?;
    write(&out.join("NOTICE.txt"), text.as_bytes())?;
    offline(places, out)?;
    sizes(places, out)
}

/// The module, built.
fn module(places: &Folders) -> Result<PathBuf, String> {
    let mut build = cargo(
        places,
        &["build", "--quiet", "--package", "arcata-web", "--lib", "--profile", "site", "--target", BROWSER],
    );
    build.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", FLAGS);
    if !run(&mut build, "  ")?.well {
        return Err("the module does not build; see above".to_owned());
    }
    Ok(places.target.join(BROWSER).join("site").join("arcata_web.wasm"))
}

/// The page's first file: the workbench's, with its policy and what a folder has besides.
fn index(places: &Folders) -> Result<String, String> {
    let text = read(&places.root.join("crates/workbench/page/index.html"))?;
    let head = "<meta name=\"viewport\"";
    let style = "  <link rel=\"stylesheet\" href=\"page/style.css\">\n";
    if !text.contains(head) || !text.contains(style) {
        return Err("the workbench's index.html is not as xtask knows it".to_owned());
    }
    let policy = format!("<meta http-equiv=\"content-security-policy\" content=\"{POLICY}\">\n  {head}");
    let more = format!(
        "{style}  <link rel=\"stylesheet\" href=\"page/start.css\">\n  <link rel=\"manifest\" href=\"manifest.webmanifest\">\n  \
         <script src=\"page/able.js\"></script>\n"
    );
    Ok(text.replacen(head, &policy, 1).replacen(style, &more, 1))
}

/// The service worker, which knows every file of the folder and the sum of all.
fn offline(places: &Folders, out: &Path) -> Result<(), String> {
    let mut files = Vec::new();
    below(out, out, &mut files)?;
    files.sort();
    let mut all = Vec::new();
    for file in &files {
        all.extend(file.as_bytes());
        all.extend(fs::read(out.join(file)).map_err(|problem| format!("{file}: {problem}"))?);
    }
    // Licences are there to be read, and need not be at hand without a network.
    let kept = files.iter().filter(|file| !file.starts_with("licences/"));
    let names: Vec<String> =
        ["\"./\"".to_owned()].into_iter().chain(kept.map(|file| format!("{file:?}"))).collect();
    let text = read(&places.root.join("crates/web/page").join(MARK))?;
    let text = text.replace("/*SUM*/", &key(&all)).replace("/*FILES*/[]", &format!("[{}]", names.join(", ")));
    write(&out.join(MARK), text.as_bytes())
}

/// Prints how large the files are, and what of them goes over the wire where a server compresses.
fn sizes(places: &Folders, out: &Path) -> Result<(), String> {
    let mut node = Command::new("node");
    node.arg(places.root.join("browser").join("site-sizes.mjs")).arg(out);
    run(&mut node, "  ")?;
    Ok(())
}

fn below(root: &Path, folder: &Path, files: &mut Vec<String>) -> Result<(), String> {
    for path in tools::list(folder)? {
        if path.is_dir() {
            below(root, &path, files)?;
        } else if let Ok(name) = path.strip_prefix(root) {
            files.push(name.to_string_lossy().replace('\\', "/"));
        }
    }
    Ok(())
}

fn read(path: &Path) -> Result<String, String> {
    fs::read_to_string(path).map_err(|problem| format!("{}: {problem}", path.display()))
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), String> {
    fs::write(path, bytes).map_err(|problem| format!("{}: {problem}", path.display()))
}
