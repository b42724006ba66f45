//! The literate tests: every rule's document in `tests/suite`, and the laws that hold for each case.
//!
//! `ARCATA_RENEW=1 cargo test -p arcata-review --test suite` writes what the review says now into the
//! documents; read the difference before keeping it.
#![allow(
    clippy::disallowed_methods,
    clippy::expect_used,
    reason = "tests read and renew their documents, and say what a document lacks"
)]

mod support;

use std::collections::BTreeSet;
use std::path::PathBuf;

use arcata_bow::Profile;
use arcata_review::{Finding, Proposal, ProposalKind, REGISTER, Registered};
use arcata_testkit::suite::{self, Case};
use arcata_xml::EditList;

use support::{Read, all, only, text};

fn document_of(rule: &Registered) -> PathBuf {
    let root = PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/suite"));
    root.join(rule.card.family.name()).join(format!("{}.md", rule.card.id))
}

fn profile_of(case: &Case) -> Profile {
    match &case.profile {
        None => Profile::default(),
        Some(block) => Profile::parse(&block.text).expect("a case's profile is sound"),
    }
}

fn read_case(rule: &Registered, case: &Case) -> Read {
    let fixture = case.fixture().unwrap_or_else(|error| panic!("{}: {error}", rule.card.id));
    Read::new(fixture.musicxml().into_bytes(), &profile_of(case))
}

/// Every document says what its rule finds, in every case.
#[test]
fn the_documents_hold() {
    let renew = std::env::var_os("ARCATA_RENEW").is_some();
    let mut wrong = String::new();
    for rule in REGISTER {
        let path = document_of(rule);
        let markdown = std::fs::read_to_string(&path)
            .unwrap_or_else(|error| panic!("{} has no test document: {error}", rule.card.id));
        let cases = suite::parse(&markdown).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let found: Vec<String> =
            cases.iter().map(|case| text(&read_case(rule, case).review(&only(rule.card.id)))).collect();
        if renew {
            let renewed = suite::renew(&markdown, &found).expect("one text a case");
            std::fs::write(&path, renewed).expect("the document can be written");
            continue;
        }
        for (case, found) in cases.iter().zip(&found).filter(|(case, found)| !case.expects(found)) {
            wrong += &format!("\n{}, {}:\n{found}\n", rule.card.id, case.heading);
        }
        assert!(found.iter().any(|text| !text.is_empty()), "{}: no case is found", rule.card.id);
        assert!(found.iter().any(String::is_empty), "{}: no case is quiet", rule.card.id);
    }
    assert!(wrong.is_empty(), "the review says something else now:{wrong}");
}

/// For every case of every rule: the review is deterministic, and each proposal that changes the file
/// does what it says and nothing else.
#[test]
fn proposals_do_what_they_say() {
    let mut applied = 0;
    let mut kinds = BTreeSet::new();
    for rule in REGISTER {
        let markdown = std::fs::read_to_string(document_of(rule)).expect("see the_documents_hold");
        for case in suite::parse(&markdown).expect("see the_documents_hold") {
            let before = read_case(rule, &case);
            let found = before.review(&all());
            assert_eq!(found, before.review(&all()), "{}: {}", rule.card.id, case.heading);
            for finding in before.review(&only(rule.card.id)) {
                for proposal in finding.proposals.iter().filter(|proposal| !proposal.edits.is_empty()) {
                    check(&before, &found, &finding, proposal, &case);
                    applied += 1;
                    kinds.insert(proposal.kind);
                }
            }
        }
    }
    assert!(applied >= 20, "only {applied} proposals were tried");
    for kind in [ProposalKind::Hook, ProposalKind::Start, ProposalKind::Retake] {
        assert!(kinds.contains(&kind), "no case tries \"{}\" in the file", kind.name());
    }
}

fn check(before: &Read, found: &[Finding], finding: &Finding, proposal: &Proposal, case: &Case) {
    let told = format!(
        "{}, {}: {}",
        finding.rule,
        case.heading,
        arcata_languages::Wording::default().say(&proposal.sentence)
    );
    let list = EditList::new(proposal.edits.clone()).unwrap_or_else(|error| panic!("{told}: {error}"));
    assert_eq!(list.edits(), proposal.edits, "{told}: edits are not in order");
    let bytes = before.document.apply(&list).unwrap_or_else(|error| panic!("{told}: {error}"));
    untouched_outside(before.document.text(), std::str::from_utf8(&bytes).expect("UTF-8"), &list, &told);
    let after = Read::new(bytes, &profile_of(case)).review(&all());
    for left in after.iter().filter(|left| left.rule == finding.rule) {
        let same = places(left).any(|place| places(finding).any(|was| same_place(place, was)));
        assert!(!same, "{told}: the finding is still there");
    }
    for fresh in after.iter().filter(|fresh| fresh.severity <= finding.severity) {
        let known = found.iter().any(|was| {
            was.rule == fresh.rule
                && was.severity <= fresh.severity
                && places(fresh).all(|place| places(was).any(|was| same_place(place, was)))
        });
        assert!(
            known,
            "{told}: something as bad appeared: {}",
            arcata_languages::Wording::default().say(&fresh.sentence)
        );
    }
}

fn places(finding: &Finding) -> impl Iterator<Item = &arcata_review::FindingPlace> {
    std::iter::once(&finding.place).chain(&finding.further)
}

fn same_place(one: &arcata_review::FindingPlace, other: &arcata_review::FindingPlace) -> bool {
    (one.part, one.bar, one.beat) == (other.part, other.bar, other.beat)
}

/// What lies between the edits is in the new text, byte for byte and in order.
fn untouched_outside(old: &str, new: &str, list: &EditList, told: &str) {
    let (mut at_old, mut at_new) = (0, 0);
    for edit in list.edits() {
        let kept = &old[at_old..edit.range.start];
        assert_eq!(
            new.get(at_new..at_new + kept.len()),
            Some(kept),
            "{told}: bytes outside the edits changed"
        );
        at_new += kept.len();
        assert!(new[at_new..].starts_with(&edit.insert), "{told}: an edit is missing");
        at_new += edit.insert.len();
        at_old = edit.range.end;
    }
    assert_eq!(&new[at_new..], &old[at_old..], "{told}: bytes after the edits changed");
}
