//! A few pictures beside those on file, with a tolerance: what moves by a hair is the same, what a player would
//! see is not. `ARCATA_RENEW=1` writes them anew; then look at them.
#![expect(clippy::unwrap_used, clippy::disallowed_methods, reason = "tests")]

use std::path::PathBuf;

use arcata_bow::{LineOptions, Profile, all_lines, plan};
use arcata_engrave::{Cutter, Engraver, LanePlan, Painter, PictureContent, PictureStyle};
use arcata_xml::{Limits, open_score};
use resvg::tiny_skia::Pixmap;

/// Dots an inch: a block below is then about a third of a staff's space.
const DOTS: u16 = 100;
/// Edge of the blocks whose darkness is compared, in dots.
const BLOCK: u32 = 4;
/// How much darker or lighter a block may be, of 255: a line of a dot's width moved by half a dot.
const SHADE: u32 = 40;
/// Blocks in a thousand that may differ by more.
const DIFFERENT: u32 = 3;

const LANTERN: &[u8] = include_bytes!("../../../demo/lantern-study.musicxml");
const SLIPWAY: &[u8] = include_bytes!("../../../demo/slipway-strings.musicxml");
/// Portato, a hooked pair, a retake, a tremolo and a swell in one line.
const SIGNS: &str = "quarter=72\nviolin: mf (1/4 D4!- E4!-) <= (3/16 F4 1/16 G4) == f 1/4 A4 | D5!down D5!down 1/2 D5!down | \
     1/2 G4!trem3 p (1/4 F4 E4) |||";

/// Bars of a score with the lanes of one part, as dots.
fn drawn(xml: Vec<u8>, bars: std::ops::RangeInclusive<u32>) -> Vec<u8> {
    let file = open_score(xml, &Limits::default()).unwrap();
    let score = arcata_score::read(file.document());
    let profile = Profile::default();
    let lines = all_lines(&score, &profile, &LineOptions::default());
    let line = &lines[0];
    let settings = profile.plan_settings(line.instrument);
    let planned = plan(line, &settings);
    let lane = LanePlan {
        line,
        first: 0,
        planned: &planned.strokes,
        hair: settings.reach.hair,
        name: String::new(),
        open: Vec::new(),
    };
    let content = PictureContent {
        title: "On file".to_owned(),
        subtitle: String::new(),
        bars,
        lanes: &[lane],
        captions: Vec::new(),
    };
    let cutter = Cutter::new(file.document(), &score);
    let engraver = Engraver::new();
    let pictures = Painter::new(&cutter, &engraver, &PictureStyle::paper()).draw(&content).unwrap();
    pictures[0].png(DOTS).unwrap()
}

/// Mean lightness of every block, with the number of blocks in a row.
fn blocks(picture: &Pixmap, shift: u32) -> (u32, Vec<u32>) {
    let (columns, rows) = (picture.width().div_ceil(BLOCK), picture.height().div_ceil(BLOCK));
    let light = |column: u32, row: u32| {
        let dots =
            (0..BLOCK * BLOCK).map(|dot| (column * BLOCK + dot % BLOCK, row * BLOCK + dot / BLOCK + shift));
        let sum: u32 = dots
            .map(|(x, y)| {
                picture.pixel(x, y).map_or(255, |dot| {
                    (u32::from(dot.red()) + u32::from(dot.green()) + u32::from(dot.blue())) / 3
                })
            })
            .sum();
        sum / (BLOCK * BLOCK)
    };
    (columns, (0..rows).flat_map(|row| (0..columns).map(move |column| light(column, row))).collect())
}

/// Blocks in a thousand that differ.
fn different(one: &Pixmap, other: &Pixmap, shift: u32) -> u32 {
    let ((columns, one), (other_columns, other)) = (blocks(one, 0), blocks(other, shift));
    if columns != other_columns || one.len() != other.len() {
        return 1000;
    }
    let count = one.iter().zip(&other).filter(|(one, other)| one.abs_diff(**other) > SHADE).count();
    u32::try_from(count * 1000 / one.len()).unwrap()
}

fn compare(name: &str, png: &[u8]) {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/pictures").join(name);
    if std::env::var_os("ARCATA_RENEW").is_some() {
        std::fs::write(&path, png).unwrap();
    }
    let known = Pixmap::decode_png(&std::fs::read(&path).unwrap()).unwrap();
    let now = Pixmap::decode_png(png).unwrap();
    let differ = different(&known, &now, 0);
    assert!(differ <= DIFFERENT, "{name}: {differ} blocks in a thousand look otherwise");
    // The comparison can fail: moved up by a fifth of a staff's space it does.
    assert!(different(&known, &now, 1) > DIFFERENT, "{name}: a picture moved by a dot passes");
}

#[test]
fn a_swell_and_a_slur_too_long() {
    compare("lantern-17-25.png", &drawn(LANTERN.to_vec(), 16..=24));
}

#[test]
fn down_bows_in_a_row() {
    compare("slipway-29-34.png", &drawn(SLIPWAY.to_vec(), 28..=33));
}

#[test]
fn signs_of_all_kinds() {
    compare("signs.png", &drawn(arcata_testkit::musicxml(SIGNS).into_bytes(), 0..=2));
}
