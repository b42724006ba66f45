//! The change sheet as one HTML file that needs nothing else.

use std::fmt::Write as _;

use arcata_xml::seen;

use arcata_languages::Saying;

use super::signs;
use super::text::{COLUMNS, summary};
use super::view::{BarChanges, ChangeView, SectionSheet, SheetSign, SheetView, key, time_words};

/// Sizes are in points and millimetres: the page is made to be printed, on A4 and Letter alike.
const STYLE: &str = "\
:root{color-scheme:light;--ink:#111;--faint:#555;--rule:#999}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:var(--ink);font:11pt/1.35 'Noto Sans','Source Sans 3',Arial,sans-serif}
.page{max-width:186mm;margin:0 auto;padding:8mm 0 10mm}
.page+.page{border-top:1px solid var(--rule)}
header{display:flex;flex-wrap:wrap;align-items:baseline;justify-content:space-between;gap:0 6mm;border-bottom:1.5pt solid var(--ink);padding-bottom:1.5mm}
h1{font-size:20pt;line-height:1.2;margin:0}
.count{font-weight:700}
.about{margin:1.5mm 0;color:var(--faint);font-size:9.5pt}
.about b{color:var(--ink);font-weight:400}
.bars{columns:2;column-gap:9mm}
.movement{font-size:11pt;line-height:14pt;margin:1.2mm 0 .4mm;break-after:avoid}
.bar{break-inside:avoid;display:grid;grid-template-columns:13mm 1fr;border-bottom:.5pt solid var(--rule);padding:.8mm 0}
.bar h2{font-size:13pt;line-height:14.8pt;margin:0}
.bar.marked ul{padding-top:5.6mm}
.mark{display:table;border:1pt solid var(--ink);font-size:9pt;line-height:1.25;font-weight:700;padding:0 1mm;margin:.6mm 0}
.bar ul{list-style:none;margin:0;padding:0}
.bar li{display:grid;grid-template-columns:14mm 6mm 1fr;align-items:start}
.beat{font-variant-numeric:tabular-nums}
.was{color:var(--faint);font-size:9.5pt}
li svg{width:3.6mm;height:3.6mm;margin-top:.7mm;display:block}
.music{grid-column:1/-1;margin:1mm 0 .6mm}
.music svg{display:block;max-width:100%;height:auto}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
th,td{text-align:right;padding:1mm 2mm;border-bottom:.5pt solid var(--rule)}
th:first-child,td:first-child{text-align:left;padding-left:0}
tfoot td{font-weight:700;border-bottom:0}
h3{font-size:13pt;margin:5mm 0 1mm}
.left{margin:0;padding-left:5mm}
.left li{break-inside:avoid}
@media screen{.page{padding-left:6mm;padding-right:6mm;max-width:198mm}}
@media screen and (max-width:150mm){.bars{columns:1}}
@media print{.page{max-width:none;padding:0}.page+.page{break-before:page;border:0}}
@page{margin:12mm 14mm}
";

/// The whole sheet; no script, no other file, nothing fetched.
#[must_use]
pub fn sheet_html(view: &SheetView) -> String {
    let mut out = String::new();
    let title = escaped(&format!("{}: {}", view.work, view.wording.word("sheet-title")));
    let _ = write!(
        out,
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<title>{title}</title>\n\
         <style>\n{STYLE}</style>\n</head>\n<body>\n",
        view.wording.language.code()
    );
    for section in &view.sections {
        section_html(&mut out, view, section);
    }
    librarian_html(&mut out, view);
    out.push_str("</body>\n</html>\n");
    seen(&out).into_owned()
}

/// Text for HTML.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            letter => out.push(letter),
        }
    }
    out
}

fn head(out: &mut String, view: &SheetView, name: &str, count: &str) {
    let by = view.composer.as_ref().map_or(String::new(), |composer| format!(", {}", escaped(composer)));
    let _ = writeln!(
        out,
        "<header><h1>{}</h1><span class=\"count\">{}</span></header>\n\
         <p class=\"about\"><b>{}{by}</b><br>{} <b>{}</b><br>{} <b>{}</b></p>",
        escaped(name),
        escaped(count),
        escaped(&view.work),
        escaped(&view.wording.word("sheet-head-write")),
        escaped(&view.after.words()),
        escaped(&view.wording.word("sheet-head-so-far")),
        escaped(&view.before_words())
    );
}

fn section_html(out: &mut String, view: &SheetView, section: &SectionSheet) {
    out.push_str("<section class=\"page\">\n");
    let count = view.count(section);
    head(out, view, &section.name, &count);
    let _ = writeln!(out, "<p class=\"about\">{}</p>", escaped(&view.wording.word(key(section))));
    out.push_str("<div class=\"bars\">\n");
    section.bars.iter().for_each(|bar| bar_html(out, bar, view));
    out.push_str("</div>\n</section>\n");
}

fn bar_html(out: &mut String, bar: &BarChanges, view: &SheetView) {
    if let Some(movement) = &bar.movement {
        let _ = writeln!(out, "<h2 class=\"movement\">{}</h2>", escaped(movement));
    }
    let rehearsal = bar.rehearsal.as_ref();
    let rehearsal =
        rehearsal.map_or(String::new(), |mark| format!("<span class=\"mark\">{}</span>", escaped(mark)));
    let _ = write!(
        out,
        "<div class=\"bar{}\"><h2>{rehearsal}{}</h2><ul>",
        if bar.rehearsal.is_some() { " marked" } else { "" },
        escaped(&bar.bar)
    );
    for (change, beat) in bar.with_beats() {
        change_html(out, change, beat, view);
    }
    out.push_str("</ul>");
    if let Some(music) = &bar.music {
        let label = Saying::new("sheet-as-it-shall-look").quoting("bar", &bar.bar);
        let label = escaped(&view.wording.say(&label));
        // The size stands there in millimetres, so that all staves of a sheet are of one height.
        let _ = write!(
            out,
            "<div class=\"music\" role=\"img\" aria-label=\"{label}\" style=\"width:{:.2}mm\">{}</div>",
            music.width, music.svg
        );
    }
    out.push_str("</div>\n");
}

fn change_html(out: &mut String, change: &ChangeView, beat: &str, view: &SheetView) {
    let sign = change.sign.map_or(String::new(), |sign| sign_html(sign, view));
    let which = change.which.as_ref().map_or(String::new(), |which| format!(", {}", escaped(which)));
    let was = change.was.as_ref();
    let was =
        was.map_or(String::new(), |was| format!(" <span class=\"was\">{}</span>", escaped(&view.was(was))));
    let _ = write!(
        out,
        "<li><span class=\"beat\">{}</span><span>{sign}</span><span>{}{which}{was}</span></li>",
        escaped(beat),
        escaped(&change.words)
    );
}

fn sign_html(sign: SheetSign, view: &SheetView) -> String {
    let corners: Vec<String> = signs::outline(sign).iter().map(|(x, y)| format!("{x},{y}")).collect();
    format!(
        "<svg viewBox=\"0 0 10 10\" role=\"img\" aria-label=\"{}\"><polygon points=\"{}\"/></svg>",
        escaped(&signs::name(sign, &view.wording)),
        corners.join(" ")
    )
}

fn librarian_html(out: &mut String, view: &SheetView) {
    let librarian = &view.librarian;
    out.push_str("<section class=\"page\">\n");
    head(out, view, &view.wording.word("sheet-librarian"), &time_words(librarian.seconds));
    let heads = COLUMNS.map(|key| format!("<th>{}</th>", escaped(&view.wording.word(key)))).concat();
    let _ = writeln!(out, "<table><thead><tr>{heads}</tr></thead><tbody>");
    for section in &librarian.sections {
        let _ = writeln!(
            out,
            "<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td></tr>",
            escaped(&section.name),
            section.to_write,
            section.to_take_off,
            section.stands,
            section.marks,
            time_words(section.seconds)
        );
    }
    let _ = writeln!(
        out,
        "</tbody><tfoot><tr><td>{}</td><td></td><td></td><td></td><td>{}</td><td>{}</td></tr></tfoot></table>",
        escaped(&view.wording.word("sheet-all")),
        librarian.marks,
        time_words(librarian.seconds)
    );
    for line in summary(librarian, &view.wording) {
        let _ = writeln!(out, "<p>{}</p>", escaped(&line));
    }
    for list in librarian.lists(&view.wording) {
        let _ = writeln!(out, "<h3>{}</h3>\n<ul class=\"left\">", escaped(&list.heading));
        for (place, about) in &list.items {
            let _ = writeln!(out, "<li><b>{}</b>: {}</li>", escaped(place), escaped(about));
        }
        out.push_str("</ul>\n");
    }
    out.push_str("</section>\n");
}
