//! Packages are read, and written with nothing changed but the score.

use std::io::{Cursor, Read as _, Write as _};

use arcata_xml::{Edit, EditList, Input, Limits, Package, PackageRemark, open_score};
use zip::read::ZipArchive;
use zip::write::{SimpleFileOptions, ZipWriter};
use zip::{CompressionMethod, DateTime};

pub(crate) const SCORE: &str = "<?xml version='1.0'?>\n<score-partwise>\n  <part/>\n</score-partwise>\n";

pub(crate) fn container(path: &str, media_type: &str) -> String {
    let media_type =
        if media_type.is_empty() { String::new() } else { format!(" media-type='{media_type}'") };
    format!("<container><rootfiles><rootfile full-path='{path}'{media_type}/></rootfiles></container>")
}

/// A package of members, every second one packed.
pub(crate) fn package(members: &[(&str, &[u8])]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (index, (name, bytes)) in members.iter().enumerate() {
        let method = if index % 2 == 0 { CompressionMethod::Stored } else { CompressionMethod::Deflated };
        let time = DateTime::from_date_and_time(2001, 2, 3, 4, 5, 6).unwrap();
        let options = SimpleFileOptions::default()
            .compression_method(method)
            .last_modified_time(time)
            .unix_permissions(0o640)
            .into_full_options()
            .with_file_comment("kept");
        if name.ends_with('/') {
            writer.add_directory(*name, options).unwrap();
        } else {
            writer.start_file(*name, options).unwrap();
            writer.write_all(bytes).unwrap();
        }
    }
    writer.set_comment("made by nobody").unwrap();
    writer.finish().unwrap().into_inner()
}

fn usual() -> Vec<u8> {
    let container = container("music/score.xml", "application/vnd.recordare.musicxml+xml");
    package(&[
        ("mimetype", b"application/vnd.recordare.musicxml"),
        ("META-INF/container.xml", container.as_bytes()),
        ("pictures/", b""),
        ("pictures/cover.png", b"\x89PNG\r\n\x1A\n not really"),
        ("music/score.xml", SCORE.as_bytes()),
        ("sound.mid", &[7; 5000]),
    ])
}

/// Everything an archive says about its members, and their bytes as they are packed.
fn contents(bytes: &[u8]) -> Vec<(String, String, Vec<u8>)> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).unwrap();
    (0..archive.len())
        .map(|index| {
            let mut member = archive.by_index_raw(index).unwrap();
            let name = member.name().unwrap().into_owned();
            let about = format!(
                "{:?} {:?} {:?} {} {:08x} {:?}",
                member.compression(),
                member.last_modified(),
                member.unix_mode(),
                member.comment(),
                member.crc32(),
                member.extra_data(),
            );
            let mut packed = Vec::new();
            member.read_to_end(&mut packed).unwrap();
            (name, about, packed)
        })
        .collect()
}

#[test]
fn a_package_names_its_score() {
    let package = Package::open(usual(), &Limits::default()).unwrap();
    assert_eq!(package.score_name(), "music/score.xml");
    assert_eq!(package.score_bytes(), SCORE.as_bytes());
    assert_eq!(package.members().len(), 6);
    assert_eq!(package.members()[5].unpacked, 5000);
    assert_eq!(package.remarks(), []);
}

#[test]
fn an_unchanged_score_gives_the_same_package() {
    let bytes = usual();
    let package = Package::open(bytes.clone(), &Limits::default()).unwrap();
    assert_eq!(package.write_with_score(SCORE.as_bytes()).unwrap(), bytes);
    let file = open_score(bytes.clone(), &Limits::default()).unwrap();
    assert_eq!(file.write(SCORE.as_bytes()).unwrap(), bytes);
    assert_eq!(file.write_edited(&EditList::default()).unwrap(), bytes);
}

#[test]
fn a_changed_score_leaves_every_other_member_as_it_was() {
    let before = usual();
    let package = Package::open(before.clone(), &Limits::default()).unwrap();
    let after = package.write_with_score(b"<score-partwise/>").unwrap();
    let (old, new) = (contents(&before), contents(&after));
    assert_eq!(old.len(), new.len());
    for (old, new) in old.iter().zip(&new) {
        if old.0 == "music/score.xml" {
            assert_eq!(old.0, new.0);
            assert_ne!(old.2, new.2);
        } else {
            assert_eq!(old, new);
        }
    }
    assert_eq!(ZipArchive::new(Cursor::new(&after)).unwrap().comment(), b"made by nobody");
    let again = Package::open(after.clone(), &Limits::default()).unwrap();
    assert_eq!(again.score_bytes(), b"<score-partwise/>");
    // The old score again: not the old bytes perhaps, for another hand packed them, but the same music.
    let back = again.write_with_score(SCORE.as_bytes()).unwrap();
    assert_eq!(Package::open(back, &Limits::default()).unwrap().score_bytes(), SCORE.as_bytes());
    assert_eq!(package.write_with_score(b"<score-partwise/>").unwrap(), after, "the same on every run");
}

#[test]
fn the_container_may_leave_the_type_out_or_list_other_files_first() {
    for inside in [
        container("a.xml", ""),
        container("./a.xml", ""),
        "<c:container xmlns:c='urn:x'><c:rootfiles>\
         <c:rootfile full-path='a.pdf' media-type='application/pdf'/>\
         <c:rootfile full-path='a.xml' media-type='application/vnd.recordare.musicxml+xml'/>\
         </c:rootfiles></c:container>"
            .to_owned(),
    ] {
        let bytes = package(&[("META-INF/container.xml", inside.as_bytes()), ("a.xml", SCORE.as_bytes())]);
        let package = Package::open(bytes, &Limits::default()).unwrap();
        assert_eq!(package.score_bytes(), SCORE.as_bytes());
        assert_eq!(package.remarks(), []);
    }
}

#[test]
fn an_odd_type_is_remarked() {
    let inside = container("a.xml", "text/xml");
    let bytes = package(&[("META-INF/container.xml", inside.as_bytes()), ("a.xml", SCORE.as_bytes())]);
    let package = Package::open(bytes, &Limits::default()).unwrap();
    assert_eq!(package.remarks(), [PackageRemark::OtherMediaType { media_type: "text/xml".into() }]);
}

#[test]
fn without_a_container_the_only_score_is_taken() {
    let bytes = package(&[
        ("a.musicxml", SCORE.as_bytes()),
        ("__MACOSX/._a.musicxml", b"notes of an archiver"),
        ("readme.txt", b"x"),
    ]);
    let file = open_score(bytes, &Limits::default()).unwrap();
    assert_eq!(file.member_name(), Some("a.musicxml"));
    assert_eq!(
        file.package_remarks()[0].to_string(),
        "the package has no META-INF/container.xml; a.musicxml, the only score inside, was read"
    );
}

#[test]
fn a_score_file_is_written_as_the_kind_it_was() {
    let plain = open_score(SCORE.into(), &Limits::default()).unwrap();
    assert_eq!(plain.kind(), Input::Document);
    assert_eq!(plain.write(b"<a/>").unwrap(), b"<a/>");
    let packed = open_score(usual(), &Limits::default()).unwrap();
    assert_eq!(packed.kind(), Input::Package);
    let part = packed.document().root().children().next().unwrap();
    let edits = EditList::new(vec![Edit::deletion(part.range())]).unwrap();
    let again = open_score(packed.write_edited(&edits).unwrap(), &Limits::default()).unwrap();
    assert_eq!(again.document().text(), SCORE.replace("<part/>", ""));
}

/// MusicXML 4.0, "Compressed .mxl files" and container.xsd: the type first and unpacked, then a container file that names the
/// score and its type.
#[test]
fn a_new_package_says_what_it_is_and_names_its_score() {
    let bytes = Package::around("Nocturne & Fugue.musicxml", SCORE.as_bytes()).unwrap();
    // A zip archive's first member begins at byte 30 with its name; an unpacked one follows as it is.
    assert_eq!(&bytes[30..38], b"mimetype");
    assert_eq!(&bytes[38..38 + 34], b"application/vnd.recordare.musicxml");
    let package = Package::open(bytes.clone(), &Limits::default()).unwrap();
    assert_eq!(package.score_name(), "Nocturne & Fugue.musicxml");
    assert_eq!(package.score_bytes(), SCORE.as_bytes());
    assert_eq!(package.remarks(), []);
    let names: Vec<&str> = package.members().iter().map(|member| member.name.as_str()).collect();
    assert_eq!(names, ["mimetype", "META-INF/container.xml", "Nocturne & Fugue.musicxml"]);
    assert_eq!(Package::around("Nocturne & Fugue.musicxml", SCORE.as_bytes()).unwrap(), bytes);
    for outside in ["../a.musicxml", "/a.musicxml", "c:a.musicxml"] {
        assert!(Package::around(outside, SCORE.as_bytes()).is_err(), "{outside}");
    }
}

#[test]
fn a_score_is_written_as_the_kind_that_is_asked_for() {
    let packed = open_score(usual(), &Limits::default()).unwrap();
    let plain = open_score(SCORE.as_bytes().to_vec(), &Limits::default()).unwrap();
    assert_eq!(packed.other_members(), ["pictures/cover.png", "sound.mid"]);
    assert!(plain.other_members().is_empty());
    let changed = b"<score-partwise/>";
    for file in [&packed, &plain] {
        assert_eq!(file.write_as(Input::Document, "x.musicxml", changed).unwrap(), changed);
        let package = file.write_as(Input::Package, "x.musicxml", changed).unwrap();
        let package = Package::open(package, &Limits::default()).unwrap();
        assert_eq!(package.score_bytes(), changed);
    }
    assert_eq!(
        packed.write_as(Input::Package, "x.musicxml", changed).unwrap(),
        packed.write(changed).unwrap()
    );
}
