//! What a cursor says about an element.

use arcata_xml::{NodeId, RemarkKind, Tag, TextPlace};

use crate::support::{find, find_named, parse, walk};

const NOTE: &str = "<measure number=\"1\">\n  <note default-x='4'>\n    <pitch><step> G </step><octave>4</octave></pitch>\n    <dot/><dot />\n    <lyric>Ah<!-- no --> &amp; <![CDATA[<oh>]]><elision>_</elision>&#x266F;\r\n!</lyric>\n  </note>\n  <note/>\n</measure>";

#[test]
fn children_siblings_and_parents() {
    let document = parse(NOTE);
    walk(&document);
    let measure = document.root();
    let note = measure.child(Tag::NOTE).unwrap();
    assert_eq!(measure.children().count(), 2);
    assert_eq!(note.children_named(Tag::DOT).count(), 2);
    assert_eq!(note.next_sibling().unwrap().id(), NodeId(9));
    assert_eq!(note.next_sibling().unwrap().next_sibling(), None);
    assert_eq!(find(&document, Tag::STEP).parent(), note.child(Tag::PITCH));
    assert_eq!(measure.parent(), None);
    assert_eq!(measure.next_sibling(), None);
    assert_eq!(measure.child(Tag::PART), None);
    assert_eq!(note.descendants().count(), 7);
    assert_eq!(document.element(NodeId(10)), None);
}

#[test]
fn text_is_trimmed_joined_and_resolved() {
    let document = parse(NOTE);
    assert_eq!(find(&document, Tag::STEP).text(), "G");
    assert_eq!(find(&document, Tag::STEP).raw_text(), " G ");
    assert_eq!(find(&document, Tag::LYRIC).text(), "Ah & <oh>♯\n!");
    assert_eq!(find(&document, Tag::PITCH).text(), "");
    assert_eq!(find(&document, Tag::DOT).text(), "");
}

#[test]
fn attributes_are_resolved() {
    let document = parse("<words font=\"Old &quot;Hand&quot;\" x='&#10;\n'   empty=''/>");
    let words = document.root();
    assert_eq!(words.attribute("font").unwrap(), "Old \"Hand\"");
    assert_eq!(words.attribute("x").unwrap(), "\n ");
    assert_eq!(words.attribute("empty").unwrap(), "");
    assert_eq!(words.attribute("fon"), None);
    assert_eq!(words.attributes().next().unwrap().raw_value(), "Old &quot;Hand&quot;");
}

#[test]
fn ranges_cut_out_what_they_name() {
    let document = parse(NOTE);
    let octave = find(&document, Tag::OCTAVE);
    assert_eq!(octave.source(), "<octave>4</octave>");
    assert_eq!(document.slice(octave.start_tag_range()), "<octave>");
    assert_eq!(document.slice(octave.content_range()), "4");
    let dot = find(&document, Tag::DOT);
    assert!(dot.is_empty_tag());
    assert_eq!(document.slice(dot.range()), "<dot/>");
    assert!(dot.content_range().is_empty());
    assert_eq!(dot.line_column(), TextPlace { line: 4, column: 5 });
}

#[test]
fn names_outside_musicxml_have_numbers_too() {
    let document = parse("<score xmlns:x=\"urn:x\"><x:thing/><note/><x:thing/><Überbau/></score>");
    let things: Vec<_> = document.root().children().map(|child| child.tag()).collect();
    assert_eq!(things[0], things[2]);
    assert_eq!(things[1], Tag::NOTE);
    assert_ne!(things[0], things[3]);
    assert_eq!(find_named(&document, "Überbau").tag(), things[3]);
    assert_eq!(document.tag("x:thing"), Some(things[0]));
    assert_eq!(document.tag("y:thing"), None);
}

#[test]
fn entities_stay_as_written_and_are_remarked_once() {
    let document = parse(
        "<!DOCTYPE a [<!ENTITY secret SYSTEM \"file:///etc/hostname\"><!ENTITY x \"y\">]>\n\
         <a b=\"&x;\">&secret; and &x;&x;</a>",
    );
    assert_eq!(document.root().text(), "&secret; and &x;&x;");
    assert_eq!(document.root().attribute("b").unwrap(), "&x;");
    let remarks = document.remarks();
    assert_eq!(remarks.len(), 2);
    assert_eq!((&remarks[0].kind, remarks[0].count), (&RemarkKind::Entity { name: "x".into() }, 3));
    assert_eq!(remarks[1].place, TextPlace { line: 2, column: 12 });
    assert_eq!(
        remarks[0].to_string(),
        "line 2, column 7: &x; is kept as it is written, not resolved (it stands 3 times in the file); \
         write the character itself"
    );
}

#[test]
fn swelling_entities_do_not_swell() {
    let mut text = "<!DOCTYPE a [<!ENTITY l0 \"lol\">".to_owned();
    for level in 1..30 {
        let below = format!("&l{};", level - 1).repeat(10);
        text.push_str(&format!("<!ENTITY l{level} \"{below}\">"));
    }
    text.push_str("]><a>&l29;</a>");
    let document = parse(&text);
    assert_eq!(document.root().text(), "&l29;");
    assert_eq!(document.remarks().len(), 1);
}
