//! Shorthand, change sheets and the list of a folder, as a user runs them.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

/// The program, its cache in a folder of the test.
fn arcata(cache: &Path) -> Command {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.env("XDG_CACHE_HOME", cache);
    command
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("UTF-8")
}

fn enter(folder: &Path, typed: &str, more: &[&str]) -> Output {
    let mut command = arcata(folder);
    command.args(["layer", "enter"]).arg(demo("ferry-bell-quartet.musicxml")).args(more);
    command.current_dir(folder).write_stdin(typed).output().expect("runs")
}

fn list(folder: &Path, more: &[&str]) -> Output {
    arcata(&folder.join("cache")).args(["layer", "list"]).arg(folder).args(more).output().expect("runs")
}

#[test]
fn typed_bowings_become_a_layer_and_print_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let typed = "Vn1 1/1 down, 3 up\nVc 5-6 hook 2\n";
    let done = enter(folder.path(), typed, &["--layer", "a.json", "--owner", "leader", "--title", "Spring"]);
    assert!(done.status.success(), "{}", text(&done.stderr));
    let written = std::fs::read(folder.path().join("a.json")).expect("the layer");
    let layer = arcata_layer::read(&written).expect("a layer");
    assert_eq!((layer.owner.as_str(), layer.entries.len()), ("leader", 3));
    let done = enter(folder.path(), "", &["--layer", "a.json", "--print"]);
    assert_eq!(text(&done.stdout), "Violin I:\n1/1 down\n3/1 up\n\nVioloncello:\n6/1 hook\n");
    // The same again changes nothing.
    let done = enter(folder.path(), typed, &["--layer", "a.json"]);
    assert!(done.status.success());
    assert_eq!(std::fs::read(folder.path().join("a.json")).expect("the layer"), written);
}

#[test]
fn a_text_with_troubles_writes_nothing_and_tells_them_all() {
    let folder = tempfile::tempdir().expect("a folder");
    let done = enter(folder.path(), "Vn1 1/1 dwon\nVoila 2 up\nVn1 999 up", &["--layer", "a.json"]);
    let told = text(&done.stderr);
    assert_eq!(done.status.code(), Some(1), "{told}");
    assert!(told.contains("line 1, column 9") && told.contains("Did you mean \"down\"?"), "{told}");
    assert!(told.contains("line 2, column 1") && told.contains("Did you mean \"Viola\"?"), "{told}");
    assert!(told.contains("line 3, column 5") && told.contains("3 troubles"), "{told}");
    assert!(!folder.path().join("a.json").exists());
}

#[test]
fn hostile_and_half_written_input_is_refused_in_plain_words() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    let large = "Vn1 1 up\n".repeat(200_000);
    let done = enter(path, &large, &[]);
    assert!(text(&done.stderr).contains("limit"), "{}", text(&done.stderr));
    std::fs::write(path.join("latin.txt"), b"Vn1 1 up\n# gi\xf9").expect("written");
    let done = enter(path, "", &["--notes", "latin.txt"]);
    assert!(text(&done.stderr).contains("line 2 is not UTF-8"), "{}", text(&done.stderr));
    std::fs::write(path.join("half.json"), "{\n\"format\": \"arcata-layer\",\n\"version\": 1,\n\"ent")
        .expect("written");
    std::fs::write(path.join("later.json"), "{\"format\": \"arcata-layer\", \"version\": 2}")
        .expect("written");
    for (name, told) in [("half.json", "half.json"), ("later.json", "version 2")] {
        let before = std::fs::read(path.join(name)).expect("there");
        let done = enter(path, "Vn1 1 up", &["--layer", name]);
        assert_eq!(done.status.code(), Some(2));
        assert!(text(&done.stderr).contains(told), "{}", text(&done.stderr));
        assert_eq!(std::fs::read(path.join(name)).expect("there"), before, "{name} is left as it was");
    }
    let score = demo("ferry-bell-quartet.musicxml");
    let done = enter(path, "Vn1 1 up", &["--out", score.to_str().expect("a path")]);
    assert!(text(&done.stderr).contains("not written over"));
}

#[test]
fn a_change_sheet_comes_in_three_forms() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    assert!(enter(path, "Vn1 1/1 down; Vn2 4 d u u d", &["--out", "old.json"]).status.success());
    assert!(enter(path, "Vn1 1/1 up; Vn2 4 d u u d", &["--out", "new.json"]).status.success());
    let sheet = |more: &[&str]| -> Output {
        let mut command = arcata(path);
        command.args(["layer", "sheet"]).arg(demo("ferry-bell-quartet.musicxml"));
        command.args(["--layer", "new.json", "--before", "old.json"]).args(more).current_dir(path);
        command.output().expect("runs")
    };
    let told = text(&sheet(&["--stands", "Vn1=7, Vn2=6"]).stdout);
    assert!(told.contains("up-bow (was: down-bow)") && told.contains("14 marks on all stands"), "{told}");
    assert!(told.starts_with("Violin I ") && told.matches(" to write, ").count() == 1, "{told}");
    assert!(told.contains("so far:   untitled layer (old.json)"), "{told}");
    for (name, head) in [("s.pdf", "%PDF-"), ("s.html", "<!DOCTYPE html>"), ("s.txt", "Violin I")] {
        assert!(sheet(&["--out", name]).status.success());
        let bytes = std::fs::read(path.join(name)).expect("written");
        assert!(bytes.starts_with(head.as_bytes()), "{name}");
    }
    assert!(text(&sheet(&["--stands", "Flute=2"]).stderr).contains("expected a section"));
    assert!(text(&sheet(&["--format", "pdf"]).stderr).contains("--out"));
    let refused =
        text(&sheet(&["--out", "old.json"]).stderr).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(refused.contains("not written over"), "{refused}");
}

#[test]
fn a_folder_is_listed_searched_and_never_trusted_when_stale() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    std::fs::copy(demo("ferry-bell-quartet.musicxml"), path.join("ferry.musicxml")).expect("copied");
    for (name, owner, ensemble) in
        [("a.json", "Leader", "Hafenorchester Übersee"), ("b.json", "principal", "Quartet")]
    {
        let more = ["--out", name, "--owner", owner, "--ensemble", ensemble];
        assert!(enter(path, "Vn1 1 up", &more).status.success());
    }
    let all = text(&list(path, &[]).stdout);
    assert!(all.contains("a.json") && all.contains("b.json") && all.contains("ferry.musicxml"), "{all}");
    let found = text(&list(path, &["--ensemble", "ubersee", "--work", "FERRY", "--format", "csv"]).stdout);
    assert_eq!(found.lines().count(), 2, "{found}");
    assert!(found.ends_with("a.json,ferry.musicxml\n"), "{found}");
    // Changed within the same tick and to the same size; removed; new.
    let written = std::fs::read_to_string(path.join("a.json")).expect("there");
    std::fs::write(path.join("a.json"), written.replace("Leader", "Bugler")).expect("written");
    std::fs::remove_file(path.join("b.json")).expect("removed");
    let all = text(&list(path, &["--format", "json"]).stdout);
    assert!(all.contains("Bugler") && !all.contains("Leader") && !all.contains("b.json"), "{all}");
    assert!(all.starts_with("{\n  \"format\": \"arcata-library\",\n  \"version\": 1"), "{all}");
    // A broken index is made anew.
    let cache = path.join("cache/arcata");
    for entry in std::fs::read_dir(&cache).expect("a cache") {
        std::fs::write(entry.expect("an entry").path(), "no database").expect("written");
    }
    assert_eq!(text(&list(path, &["--format", "json"]).stdout), all);
    assert_eq!(text(&list(path, &["--format", "json", "--rebuild"]).stdout), all);
    // Without a place for the index the folder is read all the same.
    let blocked = path.join("no-folder");
    std::fs::write(&blocked, "").expect("written");
    let mut command = arcata(&blocked);
    let done = command.args(["layer", "list", "--format", "json"]).arg(path).output().expect("runs");
    assert_eq!(text(&done.stdout), all);
}

#[test]
fn broken_layers_and_links_are_listed_as_such() {
    let folder = tempfile::tempdir().expect("a folder");
    let outside = tempfile::tempdir().expect("another folder");
    let path = folder.path();
    assert!(enter(outside.path(), "Vn1 1 up", &["--out", "far.json"]).status.success());
    std::fs::write(path.join("half.json"), "{\n\"format\": \"arcata-layer\",\n\"version\": 1,\n\"ent")
        .expect("written");
    std::fs::write(path.join("later.json"), "{\"format\": \"arcata-layer\", \"version\": 2}")
        .expect("written");
    std::fs::write(path.join("other.json"), "{\"colour\": 3}").expect("written");
    std::fs::write(path.join("broken.musicxml"), "<score-partwise><part>").expect("written");
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(outside.path(), path.join("out")).expect("linked");
        std::os::unix::fs::symlink(outside.path().join("far.json"), path.join("far.json")).expect("linked");
        std::os::unix::fs::symlink(path, path.join("circle")).expect("linked");
    }
    let done = list(path, &["--format", "json"]);
    let told = text(&done.stdout);
    assert_eq!(done.status.code(), Some(1));
    for (name, why) in [("half.json", "arcata"), ("later.json", "version 2"), ("broken.musicxml", "line 1")] {
        assert!(told.contains(name), "{name} {why}: {told}");
    }
    assert!(told.contains("version 2") && told.contains("line 1"), "{told}");
    assert!(!told.contains("other.json") && told.contains("\"layers\": []"), "{told}");
    #[cfg(unix)]
    assert_eq!(told.matches("not followed").count(), 3, "{told}");
    let done = list(&path.join("nowhere"), &[]);
    assert!(text(&done.stderr).contains("no such folder"));
    let done = list(&path.join("half.json"), &[]);
    assert!(text(&done.stderr).contains("not a folder"));
}

#[test]
fn programs_that_write_one_layer_at_once_lose_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    assert!(enter(path, "Vc 1/1 down", &["--layer", "a.json"]).status.success());
    let said: Vec<(bool, String)> = std::thread::scope(|scope| {
        let writers: Vec<_> = (2..10)
            .map(|bar| {
                scope.spawn(move || {
                    let done = enter(path, &format!("Vc {bar} up"), &["--layer", "a.json"]);
                    (done.status.success(), text(&done.stderr))
                })
            })
            .collect();
        writers.into_iter().map(|writer| writer.join().expect("no panic")).collect()
    });
    // Who comes too late is told so; who was told that it is written finds it written.
    let written = said.iter().filter(|(well, _)| *well).count();
    for (_, told) in said.iter().filter(|(well, _)| !well) {
        let told = told.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(told.contains("changed by somebody else"), "{told}");
    }
    let layer = arcata_layer::read(&std::fs::read(path.join("a.json")).expect("there")).expect("a layer");
    assert_eq!(layer.entries.len(), 1 + written);
    assert!(written > 0);
    let left = std::fs::read_dir(path).expect("a folder").count();
    assert_eq!(left, 1, "neither lock nor backup stays");
}

#[test]
fn a_spread_takes_the_groups_of_the_planner_and_the_layer_remembers_what_it_did_not_reach() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    assert!(enter(path, "Vn1 5 down; 22/1 up", &["--layer", "a.json"]).status.success());
    let mut command = arcata(path);
    command.args(["layer", "spread"]).arg(demo("ferry-bell-quartet.musicxml")).current_dir(path);
    command.args(["--layer", "a.json", "--from", "Violin I", "--to", "Viola", "--out", "a.json"]);
    let told = text(&command.output().expect("runs").stdout);
    assert!(
        told.contains("Viola, bar 5, beat 1, G3: down-bow") && told.contains("but for some notes"),
        "{told}"
    );
    let layer = arcata_layer::read(&std::fs::read(path.join("a.json")).expect("there")).expect("a layer");
    assert_eq!(layer.entries.len(), 3);
    let left: Vec<(&str, &str)> =
        layer.not_reached.iter().map(|left| (left.part.as_str(), left.bar.as_str())).collect();
    assert_eq!(left, [("Viola", "22")]);
}

#[test]
fn a_sheet_shows_changed_bars_engraved_and_lists_what_has_no_sign() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    assert!(enter(path, "Vn1 1/1 down; 18/1 hook", &["--layer", "a.json"]).status.success());
    let sheet = |more: &[&str]| -> String {
        let mut command = arcata(path);
        command.args(["layer", "sheet"]).arg(demo("ferry-bell-quartet.musicxml")).current_dir(path);
        command.args(["--layer", "a.json", "--out", "a.html"]).args(more);
        let done = command.output().expect("runs");
        assert!(done.status.success(), "{}", text(&done.stderr));
        std::fs::read_to_string(path.join("a.html")).expect("a page")
    };
    let page = sheet(&[]);
    assert_eq!(
        page.matches("as it shall look\"").count(),
        3,
        "two bars change, and the one with the stroke before the hook"
    );
    assert!(!page.contains("<text"), "letters of the music are outlines: the page needs no font");
    assert!(page.contains("hooked (") && !page.contains("which way the bow goes"), "the plan says which way");
    let words = sheet(&["--words-only"]);
    assert_eq!(words.matches("as it shall look").count(), 0);
    assert!(words.len() < page.len() / 2);
}
