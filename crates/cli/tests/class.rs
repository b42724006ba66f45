//! `arcata class` over the demo class, and over what goes wrong with classes.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod class_support;

use std::path::{Path, PathBuf};

use class_support::{class, demo, demo_class, files, folder_of, hand_in, text};
use serde_json::Value;

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
fn a_journal_of_the_hand_that_is_not_understood_is_kept_whole_and_what_stands_before_counts() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder_of(folder.path(), &[("A - x.musicxml", &hand_in("Lowen Castrell"))]);
    let task = folder.path().join("task.toml");
    std::fs::write(
        &task,
        "format = \"arcata-task\"\nversion = 1\ntitle = \"x\"\n[names]\nbefore = \" - \"\n",
    )
    .expect("written");
    let run = || class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert!(run().status.success());
    let record = &records(&folder.path().join("pages"))[0];
    let pseudonym = record["pseudonym"].as_str().expect("a pseudonym").to_owned();
    let note = |note: &str| {
        format!("{{\"hand_in\":\"{pseudonym}\",\"touch\":{{\"note\":\"{note}\"}}}}\n").into_bytes()
    };
    let head = b"{\"format\":\"arcata-class-hand-journal\",\"version\":1}\n".to_vec();
    let journal = folder.path().join("task.hand.jsonl");
    let later = String::from_utf8(head.clone()).expect("text").replace("1}", "2}").into_bytes();
    let cases = [
        (
            [head.clone(), note("Bring it again."), b"scribble\n".to_vec(), note("Lost.")].concat(),
            "line 3",
            true,
        ),
        ([head.clone(), note("Bring it again."), b"\xff\xfe\n".to_vec()].concat(), "line 3", true),
        ([later, note("Bring it again.")].concat(), "line 1", false),
        (b"my notes\n".to_vec(), "line 1", false),
    ];
    for (number, (broken, line, counts)) in cases.iter().enumerate() {
        std::fs::write(&journal, broken).expect("written");
        let done = run();
        let kept = match number {
            0 => "task.hand.jsonl.backup".to_owned(),
            number => format!("task.hand.jsonl.backup-{}", number + 1),
        };
        let told = text(&done.stderr);
        assert!(done.status.success() && told.contains(line), "{number}: {told}");
        assert!(told.replace(' ', "").contains(&kept), "{number}: {told}");
        assert_eq!(&std::fs::read(folder.path().join(kept)).expect("kept"), broken);
        let note = records(&folder.path().join("pages"))[0]["touch"]["note"].clone();
        assert_eq!(note == "Bring it again.", *counts, "{number}: {note}");
        let again = run();
        assert!(again.status.success() && again.stderr.is_empty(), "{number}: {}", text(&again.stderr));
    }
    // A heading that the machine did not write to its end.
    std::fs::write(&journal, &head[..20]).expect("written");
    let begun = run();
    assert!(begun.status.success() && begun.stderr.is_empty(), "{}", text(&begun.stderr));
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

#[test]
fn names_do_not_slip_in_wherever_they_stand() {
    let folder = tempfile::tempdir().expect("a folder");
    let good = hand_in("Rafe Dunnoway");
    let whose = |name: &str, other: &str| {
        let head = format!(
            "<work><work-title>Sheet of {name}</work-title></work><movement-title>{name}</movement-title>\
             <identification><creator type=\"composer\">{name}</creator><creator type=\"lyricist\">{other}</creator>\
             <rights>© {name}</rights><encoding><encoder>{name}</encoder></encoding><miscellaneous>\
             <miscellaneous-field name=\"owner\">{name}</miscellaneous-field></miscellaneous></identification>\
             <credit page=\"1\"><credit-words>{name}, with {other}</credit-words></credit><!-- {name} --><part-list>"
        );
        let words = format!(
            "<direction placement=\"above\"><direction-type><words>for {name} by {other}</words></direction-type></direction><note"
        );
        let start = good.find("<part-list>").expect("a list of parts");
        let mut text = good[..good.find("<score-partwise").expect("a score")].to_owned();
        text.push_str("<score-partwise version=\"4.0\">");
        text.push_str(&head);
        text.push_str(&good[start + "<part-list>".len()..]);
        let text = text.replace("<part-name>", &format!("<part-name>{name} "));
        text.replace("<note", &words)
    };
    let names = ["Ut", "Ada Li", "Viola Forte", "Grace Long"];
    let files: Vec<(String, String)> = names
        .iter()
        .zip(names.iter().cycle().skip(1))
        .map(|(name, other)| (format!("{name} - harbour melody.musicxml"), whose(name, other)))
        .collect();
    let mut hand_ins: Vec<(&str, &str)> =
        files.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    // One that cannot be read, in the words of the file.
    hand_ins.push(("Pia Ott - harbour melody.musicxml", "<score-partwise><Ott></Pia></score-partwise>"));
    let hand_ins = folder_of(folder.path(), &hand_ins);
    let done = class(&hand_ins, &demo().join("task.toml"), folder.path(), "pages", &[]);
    assert!(text(&done.stdout).contains("4 of 5 hand-ins have a sheet"), "{}", text(&done.stdout));
    for (path, bytes) in files_of_text(&folder.path().join("pages")) {
        for word in ["Ut", "Ada", "Li", "Viola Forte", "Forte", "Grace", "Pia", "Ott"] {
            let said = bytes
                .split(|letter: char| !letter.is_alphanumeric())
                .any(|said| said == word || word.contains(' ') && bytes.contains(word));
            assert!(!said, "{} says {word}", path.display());
        }
    }
}

/// What is text below a folder: pages, tables, records, and the text of each PDF.
fn files_of_text(folder: &Path) -> Vec<(PathBuf, String)> {
    let texts = files(folder).into_iter().map(|(path, bytes)| {
        let said = if path.extension().is_some_and(|ending| ending == "pdf") {
            let document = lopdf::Document::load_mem(&bytes).expect("a PDF");
            let pages: Vec<u32> = document.get_pages().into_keys().collect();
            document.extract_text(&pages).expect("text")
        } else {
            // Letters of a font in the page are no words.
            let text = String::from_utf8_lossy(&bytes).into_owned();
            text.split("base64,")
                .map(|piece| piece.split_once([')', '"']).map_or(piece, |(_, rest)| rest))
                .collect()
        };
        (path, said)
    });
    texts.collect()
}

#[test]
fn players_can_be_described_in_a_file_of_their_own() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder_of(folder.path(), &[("A - x.musicxml", &hand_in("Lowen Castrell"))]);
    let task = folder.path().join("task.toml");
    let head = "format = \"arcata-task\"\nversion = 1\ntitle = \"x\"\nplayer = \"ours.toml\"\n[names]\nbefore = \" - \"\n";
    std::fs::write(&task, head).expect("written");
    let missing = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert_eq!(missing.status.code(), Some(2));
    assert!(text(&missing.stderr).contains("player = \"ours.toml\":"), "{}", text(&missing.stderr));
    std::fs::write(folder.path().join("ours.toml"), "extends = \"student\"\n[hair]\nviolon = 5\n")
        .expect("written");
    let broken = class(&hand_ins, &task, folder.path(), "pages", &[]);
    assert!(text(&broken.stderr).contains("line 3"), "{}", text(&broken.stderr));
    let sheet = |hair: &str| {
        let profile = format!("extends = \"student\"\n[hair]\nviolin = {hair}\n");
        std::fs::write(folder.path().join("ours.toml"), profile).expect("written");
        let done = class(&hand_ins, &task, folder.path(), "pages", &[]);
        assert!(done.status.success(), "{}", text(&done.stderr));
        let all = files(&folder.path().join("pages/sheets"));
        let html = all.iter().find(|(path, _)| path.extension().is_some_and(|ending| ending == "html"));
        String::from_utf8_lossy(html.expect("a sheet").1).into_owned()
    };
    let short = sheet("200");
    assert!(short.contains("the players whom your teacher describes") && !short.contains("ours.toml"));
    assert_ne!(short, sheet("650"), "another bow makes another sheet");
}

#[test]
fn a_year_of_tasks_remembers_who_missed_one() {
    let folder = tempfile::tempdir().expect("a folder");
    for given in ["melody.musicxml", "one-way.musicxml"] {
        std::fs::copy(demo().join(given), folder.path().join(given)).expect("copied");
    }
    let task = std::fs::read_to_string(demo().join("task.toml")).expect("the task");
    // Edda slurs over a rest, then not, then again; Jory is ill for the second task.
    let weeks: [&[(&str, &str)]; 3] = [
        &[("Edda", "Edda Brimmoor"), ("Jory", "Tamsa Wellick")],
        &[("Edda", "Lowen Castrell")],
        &[("Edda", "Edda Brimmoor"), ("Jory", "Lowen Castrell")],
    ];
    for (week, hand_ins) in weeks.into_iter().enumerate() {
        let week = week + 1;
        let here = folder.path().join(format!("week-{week}"));
        let task = task.replace("Harbour Melody: slurs, and a cello part", &format!("Week {week}"));
        let file = folder.path().join(format!("task-{week}.toml"));
        std::fs::write(&file, task).expect("written");
        std::fs::create_dir_all(&here).expect("made");
        for (name, of) in hand_ins {
            std::fs::write(here.join(format!("{name} - x.musicxml")), hand_in(of)).expect("written");
        }
        let before = folder.path().join(format!("pages-{}", week - 1));
        let before = ["--before", before.to_str().expect("a name")];
        let more: &[&str] = if week == 1 { &[] } else { &before };
        let done = class(&here, &file, folder.path(), &format!("pages-{week}"), more);
        assert!(done.status.success(), "{}", text(&done.stderr));
        assert!(!text(&done.stdout).contains("New file"), "{}", text(&done.stdout));
    }
    let key = std::fs::read_to_string(folder.path().join("key.toml")).expect("the key");
    let pseudonym = |name: &str| {
        let after = key.split(&format!("name = \"{name}\"")).nth(1).expect("in the key");
        after.split('"').nth(1).expect("a pseudonym").to_owned()
    };
    let sheet = |name: &str| {
        let stem = pseudonym(name).to_lowercase().replace(' ', "-");
        let path = folder.path().join(format!("pages-3/sheets/{stem}.html"));
        std::fs::read_to_string(path).expect("a sheet")
    };
    let edda = sheet("Edda");
    assert!(edda.contains("Since Week 2") && edda.contains("back again: A rest under a slur"), "{edda}");
    let jory = sheet("Jory");
    assert!(jory.contains("Since Week 1") && jory.contains("not found any more:"), "{jory}");
    let class = std::fs::read_to_string(folder.path().join("pages-3/index.html")).expect("the class");
    let picture = class.split("<svg class=\"course\"").nth(1).expect("a picture");
    let picture = picture.split("</svg>").next().expect("its end");
    let at = |week: &str| picture.find(week).unwrap_or_else(|| panic!("{week} is in the picture: {picture}"));
    assert!(at("Week 1") < at("Week 2") && at("Week 2") < at("Week 3"));
    assert_eq!(picture.matches("Week 3").count(), 1, "each task once");
    // A rest under a slur: half of the class, nobody, half of the class.
    let row = picture.split("A rest under a slur").nth(1).expect("a row");
    let shares: Vec<&str> =
        row.split(" %<").take(3).map(|cell| cell.rsplit('>').next().expect("a number")).collect();
    assert_eq!(shares, ["50", "0", "50"]);
    // Two hand-ins are not broken down in what may be shown.
    let to_show = std::fs::read_to_string(folder.path().join("pages-3/class-to-show.html")).expect("there");
    assert!(!to_show.contains("<svg class=\"course\"") && !to_show.contains("1 of 2"));
}

#[test]
fn pages_among_the_hand_ins_are_no_hand_ins() {
    let folder = tempfile::tempdir().expect("a folder");
    let hand_ins = folder_of(folder.path(), &[("A - x.musicxml", &hand_in("Lowen Castrell"))]);
    let task = demo().join("task.toml");
    class(&hand_ins, &task, folder.path(), "hand-ins/pages", &[]);
    let again = class(&hand_ins, &task, folder.path(), "hand-ins/pages", &[]);
    assert!(text(&again.stdout).contains("1 of 1 hand-ins have a sheet"), "{}", text(&again.stdout));
}

#[test]
fn the_three_example_tasks_make_their_sheets() {
    for (task, sheets) in [
        ("slurs-for-a-melody.toml", 22),
        ("piano-piece-for-quartet.toml", 44),
        ("page-for-string-orchestra.toml", 22),
    ] {
        let folder = tempfile::tempdir().expect("a folder");
        let task = demo().join("tasks").join(task);
        let done = class(&demo().join("hand-ins"), &task, folder.path(), "pages", &[]);
        assert_eq!(done.status.code(), Some(1), "{}", text(&done.stderr));
        let all = files(&folder.path().join("pages/sheets"));
        assert_eq!(all.len(), sheets, "{}", task.display());
        let size = if task.ends_with("page-for-string-orchestra.toml") { (612, 792) } else { (595, 842) };
        for (path, bytes) in
            all.iter().filter(|(path, _)| path.extension().is_some_and(|ending| ending == "pdf"))
        {
            let document = lopdf::Document::load_mem(bytes).expect("a PDF");
            let pages = document.get_pages();
            assert_eq!(pages.len(), 1, "{}", path.display());
            let page = document.get_dictionary(pages[&1]).expect("a page");
            let paper = page.get(b"MediaBox").and_then(lopdf::Object::as_array).expect("a paper");
            let side = |index: usize| paper[index].as_float().expect("points").round();
            assert!(
                (side(2) - size.0 as f32).abs() < 1.0 && (side(3) - size.1 as f32).abs() < 1.0,
                "{paper:?}"
            );
        }
    }
}
