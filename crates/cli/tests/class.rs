//! `arcata class` over the demo class, and over what goes wrong with classes.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;
use serde_json::Value;

fn demo() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo/class")
}

fn class(hand_ins: &Path, task: &Path, folder: &Path, out: &str, more: &[&str]) -> Output {
    let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata.arg("class").arg(hand_ins).arg("--task").arg(task);
    arcata.arg("--out").arg(folder.join(out)).arg("--key").arg(folder.join("key.toml"));
    arcata.args(more).output().expect("runs")
}

fn demo_class(folder: &Path, out: &str, more: &[&str]) -> Output {
    class(&demo().join("hand-ins"), &demo().join("task.toml"), folder, out, more)
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Every file below a folder, by its path in it.
fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut all = BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(next) = open.pop() {
        for entry in std::fs::read_dir(&next).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                open.push(path);
            } else {
                let bytes = std::fs::read(&path).expect("a file");
                all.insert(path.strip_prefix(folder).expect("within").to_owned(), bytes);
            }
        }
    }
    all
}

fn records(pages: &Path) -> Vec<Value> {
    let all = files(&pages.join("records"));
    all.values().map(|bytes| serde_json::from_slice(bytes).expect("a record")).collect()
}

fn students() -> Vec<String> {
    let list = std::fs::read_to_string(demo().join("students.txt")).expect("the list");
    list.lines().filter(|line| !line.starts_with('#')).map(str::to_owned).collect()
}

#[test]
fn the_demo_class_has_its_sheets_and_twice_the_same() {
    let folder = tempfile::tempdir().expect("a folder");
    let list = demo().join("students.txt");
    let list = ["--students", list.to_str().expect("a name")];
    let one = demo_class(folder.path(), "one", &list);
    assert_eq!(one.status.code(), Some(1), "one hand-in cannot be read: {}", text(&one.stderr));
    assert!(text(&one.stdout).contains("11 of 12 hand-ins have a sheet"), "{}", text(&one.stdout));
    assert!(text(&one.stdout).contains("the file was cut short"));
    demo_class(folder.path(), "other", &list);
    let (one, other) = (files(&folder.path().join("one")), files(&folder.path().join("other")));
    assert_eq!(one.keys().collect::<Vec<_>>(), other.keys().collect::<Vec<_>>());
    for (path, bytes) in &one {
        assert!(other[path] == *bytes, "{} differs", path.display());
    }
    let sheets: Vec<&PathBuf> = one.keys().filter(|path| path.starts_with("sheets")).collect();
    assert_eq!(sheets.len(), 22, "HTML and PDF of eleven");
    for pdf in sheets.iter().filter(|path| path.extension().is_some_and(|ending| ending == "pdf")) {
        let document = lopdf::Document::load_mem(&one[*pdf]).expect("a PDF");
        assert_eq!(document.get_pages().len(), 1, "{}", pdf.display());
        assert!(
            document.catalog().expect("a catalogue").has(b"StructTreeRoot"),
            "{} has no tags",
            pdf.display()
        );
        let said = document.extract_text(&[1]).expect("text");
        assert!(said.contains("What works") && said.contains("Harbour Melody"), "{}: {said}", pdf.display());
    }
    let csv = String::from_utf8_lossy(&one[Path::new("class.csv")]);
    assert_eq!(csv.lines().count(), 13);
    let class = String::from_utf8_lossy(&one[Path::new("index.html")]);
    assert!(class.contains("No file: + 1"), "one name on the list is without a file");
}

#[test]
fn no_page_names_anybody_and_the_key_is_private() {
    let folder = tempfile::tempdir().expect("a folder");
    demo_class(folder.path(), "pages", &[]);
    let names: Vec<String> = students();
    let parts: Vec<&str> = names.iter().flat_map(|name| name.split(' ')).collect();
    for (path, bytes) in files(&folder.path().join("pages")) {
        let said = String::from_utf8_lossy(&bytes);
        for part in &parts {
            assert!(!said.contains(part), "{} says {part}", path.display());
            assert!(!path.to_string_lossy().contains(part), "{}", path.display());
        }
    }
    let key = std::fs::read_to_string(folder.path().join("key.toml")).expect("the key");
    assert!(names.iter().filter(|name| key.contains(*name)).count() == 12, "{key}");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        let mode = std::fs::metadata(folder.path().join("key.toml")).expect("there").permissions().mode();
        assert_eq!(mode & 0o777, 0o600);
    }
    let named = demo_class(folder.path(), "named", &["--named"]);
    assert!(named.status.code() == Some(1));
    let all = files(&folder.path().join("named"));
    let class = String::from_utf8_lossy(&all[Path::new("index.html")]).into_owned();
    assert!(class.contains("Lowen Castrell"));
}

#[test]
fn slurs_that_were_deleted_are_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder.path().join("hand-ins");
    std::fs::create_dir(&hand_ins).expect("made");
    let full = std::fs::read_to_string(demo().join("hand-ins/Lowen Castrell - harbour melody.musicxml"))
        .expect("read");
    let bare: String =
        full.lines().filter(|line| !line.contains("<slur ")).map(|line| format!("{line}\n")).collect();
    let mut bare = bare;
    while let Some(at) = bare.find("<slur ") {
        let end = bare[at..].find("/>").expect("an end") + at + 2;
        bare.replace_range(at..end, "");
    }
    std::fs::write(hand_ins.join("full - a.musicxml"), full).expect("written");
    std::fs::write(hand_ins.join("bare - a.musicxml"), bare).expect("written");
    let done = class(&hand_ins, &demo().join("task.toml"), folder.path(), "pages", &[]);
    assert!(done.status.success(), "{}", text(&done.stderr));
    let lacking: Vec<bool> = records(&folder.path().join("pages"))
        .iter()
        .map(|record| record["outcome"]["read"]["met"].get("lacks-slurs").is_some())
        .collect();
    assert_eq!(lacking.iter().filter(|lacks| **lacks).count(), 1, "{lacking:?}");
}

#[test]
fn a_run_goes_on_where_it_was_and_a_new_file_is_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder.path().join("hand-ins");
    std::fs::create_dir(&hand_ins).expect("made");
    for name in ["Lowen Castrell", "Edda Brimmoor"] {
        let file = format!("{name} - harbour melody.musicxml");
        std::fs::copy(demo().join("hand-ins").join(&file), hand_ins.join(&file)).expect("copied");
    }
    let task = demo().join("task.toml");
    class(&hand_ins, &task, folder.path(), "pages", &[]);
    let before = files(&folder.path().join("pages"));
    let again = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert!(text(&again.stdout).contains("2 were as they had been"), "{}", text(&again.stdout));
    assert_eq!(files(&folder.path().join("pages")), before);
    // A sheet that is missing is made again, and nothing else.
    let is_sheet = |path: &&PathBuf| {
        path.starts_with("sheets") && path.extension().is_some_and(|ending| ending == "pdf")
    };
    let sheet = before.keys().find(is_sheet).expect("a sheet");
    std::fs::remove_file(folder.path().join("pages").join(sheet)).expect("removed");
    let mended = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert!(text(&mended.stdout).contains("1 were as they had been"), "{}", text(&mended.stdout));
    let new = std::fs::read_to_string(demo().join("hand-ins/Jory Ventrave - harbour melody.musicxml"))
        .expect("read");
    std::fs::write(hand_ins.join("Edda Brimmoor - harbour melody.musicxml"), new).expect("written");
    let replaced = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert!(text(&replaced.stdout).contains("New file: Edda Brimmoor"), "{}", text(&replaced.stdout));
}

#[test]
fn broken_hostile_and_equal_names_stop_nobody() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder.path().join("hand-ins");
    let good = demo().join("hand-ins/Lowen Castrell - harbour melody.musicxml");
    for week in ["one", "two"] {
        std::fs::create_dir_all(hand_ins.join(week)).expect("made");
        std::fs::copy(&good, hand_ins.join(week).join("Lowen.musicxml")).expect("copied");
    }
    std::fs::write(hand_ins.join("binary.mxl"), [0_u8, 159, 146, 150]).expect("written");
    std::fs::write(hand_ins.join("page.pdf"), "%PDF-1.7").expect("written");
    std::fs::write(hand_ins.join("empty.musicxml"), "").expect("written");
    let bomb = "<!DOCTYPE a [<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\">]><score-partwise>&c;</score-partwise>";
    std::fs::write(hand_ins.join("bomb.musicxml"), bomb).expect("written");
    let deep = format!("<score-partwise>{}", "<part>".repeat(100_000));
    std::fs::write(hand_ins.join("deep.musicxml"), deep).expect("written");
    let task = demo().join("task.toml");
    let done = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert_eq!(done.status.code(), Some(1), "{}", text(&done.stderr));
    assert!(text(&done.stdout).contains("2 of 7 hand-ins have a sheet"), "{}", text(&done.stdout));
    let key = std::fs::read_to_string(folder.path().join("key.toml")).expect("the key");
    assert!(key.contains("\"Lowen\"") && key.contains("\"Lowen (2)\""), "{key}");
}

#[test]
fn an_archive_is_as_good_as_a_folder() {
    use std::io::Write as _;
    let folder = tempfile::tempdir().expect("a folder");
    let archive = folder.path().join("hand-ins.zip");
    let mut zip = zip::ZipWriter::new(std::fs::File::create(&archive).expect("made"));
    for (path, bytes) in files(&demo().join("hand-ins")) {
        let options = zip::write::SimpleFileOptions::default();
        zip.start_file(format!("../{}", path.display()), options).expect("begun");
        zip.write_all(&bytes).expect("written");
    }
    zip.finish().expect("finished");
    let task = demo().join("task.toml");
    demo_class(folder.path(), "of-folder", &[]);
    let done = class(&archive, &task, folder.path(), "of-archive", &[]);
    assert_eq!(done.status.code(), Some(1), "{}", text(&done.stderr));
    assert!(files(&folder.path().join("of-folder")) == files(&folder.path().join("of-archive")));
}

#[test]
fn the_next_task_says_what_has_gone() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder.path().join("hand-ins");
    std::fs::create_dir(&hand_ins).expect("made");
    let copy = |from: &str| {
        let from = demo().join(format!("hand-ins/{from} - harbour melody.musicxml"));
        std::fs::copy(from, hand_ins.join("Edda Brimmoor - harbour melody.musicxml")).expect("copied");
    };
    copy("Edda Brimmoor");
    let task = demo().join("task.toml");
    class(&hand_ins, &task, folder.path(), "first", &[]);
    copy("Lowen Castrell");
    let later = std::fs::read_to_string(&task).expect("the task").replace("Harbour Melody", "Second Melody");
    let second = folder.path().join("task-2.toml");
    std::fs::write(&second, later).expect("written");
    for given in ["melody.musicxml", "one-way.musicxml"] {
        std::fs::copy(demo().join(given), folder.path().join(given)).expect("copied");
    }
    let first = folder.path().join("first");
    let done =
        class(&hand_ins, &second, folder.path(), "second", &["--before", first.to_str().expect("a name")]);
    assert!(done.status.success(), "{}", text(&done.stderr));
    let pages = files(&folder.path().join("second"));
    let sheet = pages.iter().find(|(path, _)| {
        path.starts_with("sheets") && path.extension().is_some_and(|ending| ending == "html")
    });
    let sheet = String::from_utf8_lossy(sheet.expect("a sheet").1).into_owned();
    assert!(sheet.contains("Since Harbour Melody"), "{sheet}");
    assert!(sheet.contains("not found any more: A rest under a slur"), "{sheet}");
}

#[test]
fn a_broken_task_is_told_with_line_and_column_and_what_to_do() {
    let folder = tempfile::tempdir().expect("a folder");
    let task = folder.path().join("task.toml");
    let head = "format = \"arcata-task\"\nversion = 1\n";
    let cases = [
        (
            format!("{head}title = \"x\"\n[rules]\noff = [\"bow-drif\"]\n"),
            "line 5, column 8: no rule is called \"bow-drif\": perhaps \"bow-drift\" is meant",
        ),
        (format!("{head}titel = \"x\"\n"), "line 3, column 1: unknown field"),
        (format!("{head}title = \"x\n"), "line 3, column 11:"),
        (format!("{head}title = \"x\"\n[sheet]\nrepairs = \"maybe\"\n"), "write shown, hinted, withheld"),
        (
            format!("{head}title = \"x\"\n[thresholds]\nslur_too_lon = 3\n"),
            "line 5, column 1: [thresholds]: no such setting",
        ),
        (
            format!("{head}title = \"x\"\nlanguages = [\"pt\"]\n"),
            "line 4, column 14: there are no explanations in \"pt\"",
        ),
        (format!("{head}title = \"x\"\n[given]\nmelody = \"nowhere.musicxml\"\n"), "nowhere.musicxml"),
        (
            "format = \"arcata-habits\"\nversion = 1\n".to_owned(),
            "line 1, column 10: the format is not \"arcata-task\"",
        ),
        (String::new(), "a line with \"format\" is missing"),
    ];
    for (content, told) in cases {
        std::fs::write(&task, &content).expect("written");
        let done = class(&demo().join("hand-ins"), &task, folder.path(), "pages", &[]);
        assert_eq!(done.status.code(), Some(2), "{content}");
        // Lines are broken at hyphens, too.
        let (said, told) = (text(&done.stderr).replace(' ', ""), told.replace(' ', ""));
        assert!(said.contains(&told), "{content}: {}", text(&done.stderr));
        assert!(!folder.path().join("pages").exists(), "nothing was written");
    }
}

#[test]
fn an_empty_folder_and_a_broken_key_are_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let empty = folder.path().join("empty");
    std::fs::create_dir(&empty).expect("made");
    let done = class(&empty, &demo().join("task.toml"), folder.path(), "pages", &[]);
    assert_eq!(done.status.code(), Some(2));
    assert!(text(&done.stderr).contains("Nothing was handed in"), "{}", text(&done.stderr));
    std::fs::write(folder.path().join("key.toml"), "format = \"other\"\nversion = 1\n").expect("written");
    let done = demo_class(folder.path(), "pages", &[]);
    assert_eq!(done.status.code(), Some(2));
    assert!(text(&done.stderr).contains("line 1"), "{}", text(&done.stderr));
    let kept = std::fs::read_to_string(folder.path().join("key.toml")).expect("there");
    assert_eq!(kept, "format = \"other\"\nversion = 1\n", "a file that is no key is not written over");
}

#[test]
fn the_teachers_hand_is_in_the_sheet() {
    let folder = tempfile::tempdir().expect("a folder");
    demo_class(folder.path(), "pages", &[]);
    let pages = folder.path().join("pages");
    let all = records(&pages);
    let shown =
        |record: &&Value| record["outcome"]["read"]["passages"].as_array().is_some_and(|all| all.len() == 2);
    let record = all.iter().find(shown).expect("a sheet with two passages");
    let pseudonym = record["pseudonym"].as_str().expect("a name");
    let ids: Vec<&str> = record["outcome"]["read"]["candidates"]
        .as_array()
        .expect("candidates")
        .iter()
        .map(|candidate| candidate["id"].as_str().expect("an id"))
        .collect();
    let hand = serde_json::json!({
        "format": "arcata-class-hand", "version": 1,
        "hand_ins": { pseudonym: {
            "struck": [ids[0]], "said": { ids[1]: "Bow it in the air first." }, "ticked": [2],
            "note": "Bring it again on Monday.", "marks": "passed"
        } }
    });
    let file = folder.path().join("hand.json");
    std::fs::write(&file, hand.to_string()).expect("written");
    let done = demo_class(folder.path(), "pages", &["--hand", file.to_str().expect("a name")]);
    assert!(
        text(&done.stdout).contains("11 were as they had been"),
        "one sheet is made anew: {}",
        text(&done.stdout)
    );
    let after = records(&pages);
    let after = after.iter().find(|one| one["pseudonym"] == *pseudonym).expect("still there");
    let passages = after["outcome"]["read"]["passages"].as_array().expect("passages");
    assert_eq!(passages.len(), 1, "the other was struck");
    let stem = pseudonym.to_lowercase().replace(' ', "-");
    let html = std::fs::read_to_string(pages.join(format!("sheets/{stem}.html"))).expect("the sheet");
    for said in ["Bow it in the air first.", "Bring it again on Monday.", "passed", "☑ The cello part"] {
        assert!(html.contains(said), "{said}");
    }
    std::fs::write(&file, "{\"format\": 3").expect("written");
    let broken = demo_class(folder.path(), "pages", &["--hand", file.to_str().expect("a name")]);
    assert_eq!(broken.status.code(), Some(2));
    assert!(text(&broken.stderr).contains("line 1, column"), "{}", text(&broken.stderr));
}
