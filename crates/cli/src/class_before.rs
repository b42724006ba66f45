//! Who has not handed in to this task keeps what is remembered of the tasks before.

use arcata_class::{Key, Record, slug};

use crate::class_one::SheetRequest;
use crate::failure::Failure;
use crate::files;

/// Takes the records of those over who have none here: a later task that looks back on this one finds them.
pub(crate) fn carry(request: &SheetRequest<'_>, key: &Key) -> Result<(), Failure> {
    let Some(before) = request.before else { return Ok(()) };
    for student in &key.students {
        let name = format!("{}.json", slug(&student.pseudonym));
        let here = request.out.join("records").join(&name);
        let read = |path| files::read_text(path).ok().and_then(|text| Some((Record::read(&text)?, text)));
        if read(&here).is_some_and(|(record, _)| record.task == request.task.title) {
            continue;
        }
        if let Some((_, text)) = read(&before.join("records").join(&name)) {
            arcata_files::write_whole(&here, text.as_bytes())?;
        }
    }
    Ok(())
}
