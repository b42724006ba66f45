//! One clear error for each thing that may be wrong with a package.

use arcata_xml::{ContainerError, Limits, Package, open_score};

use crate::packages::{SCORE, container, package};

fn refuse(bytes: Vec<u8>) -> ContainerError {
    Package::open(bytes, &Limits::default()).unwrap_err()
}

fn pointing_at(path: &str) -> ContainerError {
    let inside = container(path, "");
    refuse(package(&[("META-INF/container.xml", inside.as_bytes()), ("score.xml", SCORE.as_bytes())]))
}

/// Changes every header of the last member: local headers begin with PK 3 4, central ones with PK 1 2.
fn patched(mut bytes: Vec<u8>, local: usize, central: usize, value: &[u8]) -> Vec<u8> {
    for (signature, offset) in [(b"PK\x03\x04", local), (b"PK\x01\x02", central)] {
        let at = bytes.windows(4).rposition(|window| window == signature).unwrap() + offset;
        bytes[at..at + value.len()].copy_from_slice(value);
    }
    bytes
}

#[test]
fn not_a_package() {
    assert_eq!(refuse(b"<score/>".to_vec()), ContainerError::NotAPackage);
    assert!(matches!(refuse(b"PK\x03\x04 and nothing more".to_vec()), ContainerError::Damaged { .. }));
    assert!(matches!(refuse(b"PK".to_vec()), ContainerError::Damaged { .. }));
}

#[test]
fn cut_short_anywhere() {
    let inside = container("score.xml", "");
    let whole = package(&[("META-INF/container.xml", inside.as_bytes()), ("score.xml", SCORE.as_bytes())]);
    for length in 0..whole.len() - "made by nobody".len() {
        Package::open(whole[..length].to_vec(), &Limits::default()).unwrap_err();
    }
}

#[test]
fn bytes_that_do_not_match_their_sum() {
    let mut bytes = package(&[("score.xml", SCORE.as_bytes())]);
    let at = bytes.windows(6).position(|window| window == b"<part/").unwrap();
    bytes[at + 1] = b'q';
    let error = refuse(bytes).to_string();
    assert!(error.starts_with("the package is damaged (score.xml: "), "{error}");
    assert!(error.ends_with("copy or export it again"), "{error}");
}

#[test]
fn a_container_that_points_nowhere() {
    assert_eq!(
        pointing_at("lost.xml").to_string(),
        "META-INF/container.xml names \"lost.xml\", which is not in the package (it holds score.xml); \
         export the score again, or unpack it and open the .musicxml file inside"
    );
    assert!(matches!(pointing_at(""), ContainerError::PointsNowhere { .. }));
}

#[test]
fn a_container_that_points_outside() {
    for path in ["/etc/passwd", "../score.xml", "a/../../score.xml", "..\\score.xml", "C:/score.xml", "a\\b"]
    {
        let error = pointing_at(path);
        assert!(matches!(error, ContainerError::LeavesPackage { .. }), "{path}: {error}");
        assert!(error.to_string().contains("lies outside the package"));
    }
}

#[test]
fn a_container_that_says_nothing() {
    let score = ("score.xml", SCORE.as_bytes());
    let error = refuse(package(&[("META-INF/container.xml", b"<container/>"), score]));
    assert_eq!(error, ContainerError::NamesNoScore);
    let inside = container("score.pdf", "application/pdf");
    let error = refuse(package(&[("META-INF/container.xml", inside.as_bytes()), score]));
    assert_eq!(error, ContainerError::NamesNoScore);
    let error = refuse(package(&[("META-INF/container.xml", b"<container>\n"), score]));
    assert!(error.to_string().starts_with("META-INF/container.xml in the package cannot be read: line 2"));
}

#[test]
fn no_score_or_several() {
    assert_eq!(refuse(package(&[])), ContainerError::NoScore);
    assert_eq!(refuse(package(&[("readme.txt", b"x")])), ContainerError::NoScore);
    let error = refuse(package(&[("a.xml", b"<a/>"), ("b.musicxml", b"<b/>")]));
    assert!(error.to_string().contains("several scores (a.xml, b.musicxml)"));
}

#[test]
fn locked_with_a_password() {
    let bytes = patched(package(&[("score.xml", SCORE.as_bytes())]), 6, 8, &[1, 0]);
    assert_eq!(refuse(bytes), ContainerError::Encrypted { member: "score.xml".into() });
}

#[test]
fn packed_in_an_unknown_way() {
    let bytes = patched(package(&[("score.xml", SCORE.as_bytes())]), 8, 10, &[12, 0]);
    let error = refuse(bytes);
    assert!(matches!(error, ContainerError::UnknownPacking { .. }), "{error}");
}

#[test]
fn two_members_of_one_name() {
    let mut bytes = package(&[("score1.xml", SCORE.as_bytes()), ("score2.xml", SCORE.as_bytes())]);
    while let Some(at) = bytes.windows(6).position(|window| window == b"score2") {
        bytes[at + 5] = b'1';
    }
    let error = refuse(bytes);
    assert!(error.to_string().contains("two members have the same name"), "{error}");
}

#[test]
fn a_member_that_swells() {
    let blank = format!("<a>{}</a>", " ".repeat(8 << 20));
    let bytes = package(&[("readme.txt", b"x"), ("score.xml", blank.as_bytes())]);
    assert!(bytes.len() < 20_000);
    let error = refuse(bytes.clone());
    assert_eq!(error, ContainerError::TooDense { member: "score.xml".into(), limit: 500 });
    assert!(error.to_string().contains("more than 500 times its packed size"));
    // What the headers say does not matter: here they promise a hundred bytes.
    let lying = patched(bytes.clone(), 22, 24, &100u32.to_le_bytes());
    Package::open(lying, &Limits::default()).unwrap_err();
    let limits = Limits { max_ratio: 2000, ..Limits::default() };
    assert!(Package::open(bytes.clone(), &limits).is_ok());
    let limits = Limits { max_ratio: 2000, max_unpacked_bytes: 4 << 20, ..Limits::default() };
    let error = Package::open(bytes, &limits).unwrap_err();
    assert!(error.to_string().contains("more than the limit of 4194304 bytes"), "{error}");
}

#[test]
fn a_container_that_swells() {
    let blank = format!("<a>{}</a>", " ".repeat(8 << 20));
    let bytes = package(&[("readme.txt", b"x"), ("META-INF/container.xml", blank.as_bytes())]);
    let error = refuse(bytes);
    assert!(matches!(error, ContainerError::TooLarge { .. }), "{error}");
}

#[test]
fn too_many_members() {
    let names: Vec<String> = (0..1025).map(|number| format!("{number}.txt")).collect();
    let members: Vec<(&str, &[u8])> = names.iter().map(|name| (name.as_str(), &b""[..])).collect();
    let error = refuse(package(&members));
    assert_eq!(
        error.to_string(),
        "the package has 1025 members, more than the limit of 1024; \
         if it is a real score, raise the limit"
    );
}

#[test]
fn too_long() {
    let limits = Limits { max_bytes: 100, ..Limits::default() };
    let error = Package::open(package(&[("score.xml", SCORE.as_bytes())]), &limits).unwrap_err();
    assert!(error.to_string().contains("longer than 100 bytes"));
}

#[test]
fn a_broken_score_inside_is_named() {
    let error = open_score(package(&[("score.xml", b"<a>\n<b>")]), &Limits::default()).unwrap_err();
    assert!(error.to_string().starts_with("score.xml in the package: line 2, column 4: the file ends"));
}
