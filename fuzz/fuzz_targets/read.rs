//! Bytes are opened as a score file and walked through.
#![no_main]

use arcata_xml::{Limits, open_score};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let limits = Limits { max_unpacked_bytes: 4 << 20, ..Limits::default() };
    let file = match open_score(bytes.to_vec(), &limits) {
        Ok(file) => file,
        Err(error) => {
            assert!(error.to_string().contains("; "), "an error says what to do: {error}");
            return;
        }
    };
    let document = file.document();
    let mut seen = 0;
    for element in document.elements() {
        assert!(document.slice(element.range()).starts_with('<'));
        assert!(element.text().len() <= document.text().len());
        for attribute in element.attributes() {
            assert_eq!(element.attribute(attribute.name()), Some(attribute.value()));
        }
        for child in element.children() {
            assert_eq!(child.parent(), Some(element));
            seen += 1;
        }
        let _ = element.line_column();
    }
    assert_eq!(seen + 1, document.elements().len());
    assert_eq!(file.write(document.bytes()).unwrap(), bytes);
});
