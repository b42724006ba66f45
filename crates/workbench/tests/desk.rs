//! What lies on the desk: layers shown, hidden and held against each other; dynamics read otherwise; what leaves as files.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod support;

use arcata_workbench::{open_session, put_layer_on_desk};
use axum::http::StatusCode;
use serde_json::{Value, json};
use support::{Bench, bench, bench_of, get, post};

/// Does acts one after another; hands back what the last came to.
async fn acts(bench: &Bench, version: &mut u64, acts: &[Value]) -> Value {
    let mut last = Value::Null;
    for act in acts {
        let (status, done) = post(bench, "/api/acts", &json!({"act": act, "version": *version})).await;
        assert_eq!(status, StatusCode::OK, "{act}: {done}");
        *version = done["version"].as_u64().expect("a version");
        last = done;
    }
    last
}

async fn bows(bench: &Bench) -> String {
    let (_, text) = get(bench, "/api/strokes?line=0").await;
    let strokes: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    strokes.iter().map(|stroke| if stroke["bow"] == "down" { 'd' } else { 'u' }).collect()
}

#[tokio::test]
async fn layers_are_shown_hidden_taken_up_and_held_against_each_other() {
    let bench = bench();
    let mut version = 0;
    let plain = bows(&bench).await;
    acts(&bench, &mut version, &[json!({"act": "enter", "text": "violin 1/1 up"})]).await;
    let mine = bows(&bench).await;
    assert_ne!(plain, mine);
    let (_, layer) = get(&bench, "/api/export/layer").await;
    let done = acts(
        &bench,
        &mut version,
        &[
            json!({"act": "layer", "name": "guest"}),
            json!({"act": "enter", "text": "violin 1/1 down\nviolin 3/1 up"}),
        ],
    )
    .await;
    let named = |index: usize| (&done["layers"][index]["name"], &done["layers"][index]["written"]);
    assert_eq!((named(0), named(1)), ((&json!("bowings"), &json!(false)), (&json!("guest"), &json!(true))));
    assert!(bows(&bench).await.starts_with('d'), "the layer that is written in is on top");
    let (status, text) = get(&bench, "/api/layers/differences?one=0&other=1").await;
    let passages: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    assert_eq!((status, passages.len()), (StatusCode::OK, 2), "{text}");
    assert_eq!(
        (&passages[0]["differences"][0]["one"], &passages[0]["differences"][0]["other"]),
        (&json!("up-bow"), &json!("down-bow"))
    );
    assert_eq!((&passages[1]["first"], &passages[1]["differences"][0]["one"]), (&json!(2), &Value::Null));
    let picture = async |layer: usize| {
        let path = format!("/api/layers/picture?layer={layer}&line=0&first=0&last=0");
        let (status, text) = get(&bench, &path).await;
        assert_eq!(status, StatusCode::OK, "{text}");
        serde_json::from_str::<Value>(&text).expect("JSON")["svg"].clone()
    };
    assert_ne!(picture(0).await, picture(1).await, "each is bowed in its own way");
    for wrong in [
        "differences?one=0&other=7",
        "picture?layer=0&line=0&first=3&last=1",
        "picture?layer=0&line=9&first=0&last=0",
    ] {
        let (status, text) = get(&bench, &format!("/api/layers/{wrong}")).await;
        assert!(status.is_client_error(), "{wrong}: {text}");
    }
    acts(&bench, &mut version, &[json!({"act": "show", "name": "guest", "shown": false})]).await;
    assert_eq!(bows(&bench).await, mine);
    acts(&bench, &mut version, &[json!({"act": "show", "name": "bowings", "shown": false})]).await;
    assert_eq!(bows(&bench).await, plain, "nothing is shown");
    acts(&bench, &mut version, &[json!({"act": "choose", "name": "bowings"})]).await;
    assert_eq!(bows(&bench).await, mine, "what is written in is shown");
    acts(
        &bench,
        &mut version,
        &[json!({"act": "take-up", "name": "guest"}), json!({"act": "take-away", "name": "guest"})],
    )
    .await;
    assert!(bows(&bench).await.starts_with('d'), "the guest's bows are in it now");
    let file = bench.folder.path().join("leader.bowings.json");
    std::fs::write(&file, layer).expect("written");
    let other = arcata_testkit::musicxml("viola: 1/4 C4 D4 E4 F4");
    std::fs::write(bench.score().with_file_name("other.musicxml"), other).expect("written");
    let (path, folder) = (bench.score(), bench.folder);
    drop(bench.router);
    for _ in 0..50 {
        if let Ok(mut session) = open_session(&path, None) {
            put_layer_on_desk(&mut session, &file).expect("put on the desk");
            put_layer_on_desk(&mut session, &file).expect("it lies there");
            assert!(session.layer_text().contains(r#""mark":"down""#));
            assert!(put_layer_on_desk(&mut session, &path).is_err(), "a score is no layer");
            drop(session);
            let mut other =
                open_session(&folder.path().join("other.musicxml"), None).expect("the other score");
            assert!(put_layer_on_desk(&mut other, &file).is_err(), "it belongs to other music");
            return;
        }
        tokio::time::sleep(std::time::Duration::from_millis(20)).await;
    }
    panic!("the session does not open again");
}

#[tokio::test]
async fn dynamics_read_louder_or_softer_move_the_bow_and_say_so() {
    let bench = bench();
    let mut version = 0;
    let done = acts(&bench, &mut version, &[json!({"act": "louder", "steps": 3})]).await;
    let moved = done["turned"].as_u64().expect("a number") + done["elsewhere"].as_u64().expect("a number");
    assert!(done["everything"] == true && moved > 0, "{done}");
    let (_, score) = get(&bench, "/api/score").await;
    assert!(score.contains(r#""louder":3"#) && score.contains("3 steps louder"), "{score}");
    let (status, why) =
        post(&bench, "/api/acts", &json!({"act": {"act": "louder", "steps": 4}, "version": version})).await;
    assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "{why}");
}

#[tokio::test]
async fn another_style_bows_everything_anew_and_is_taken_back() {
    let demo = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo/lantern-study.musicxml");
    let bench = bench_of(&std::fs::read_to_string(demo).expect("a demo"));
    let mut version = 0;
    let strokes = async |bench: &Bench| get(bench, "/api/strokes?line=0").await.1;
    let concert = strokes(&bench).await;
    acts(&bench, &mut version, &[json!({"act": "style", "style": "early"})]).await;
    assert_ne!(strokes(&bench).await, concert);
    let (_, score) = get(&bench, "/api/score").await;
    assert!(score.contains(r#""style":"early""#), "{score}");
    let (status, why) =
        post(&bench, "/api/acts", &json!({"act": {"act": "style", "style": "loud"}, "version": version}))
            .await;
    assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "{why}");
    assert!(why.to_string().contains("concert, dance, early"), "{why}");
    acts(&bench, &mut version, &[json!({"act": "style", "style": "concert"})]).await;
    assert_eq!(strokes(&bench).await, concert);
}

#[tokio::test]
async fn parts_a_change_sheet_and_a_picture_leave_and_nothing_of_anybody_is_lost() {
    let bench = bench();
    let mut version = 0;
    let (status, why) = post(&bench, "/api/keep/sheet", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "nothing is to be written: {why}");
    acts(&bench, &mut version, &[json!({"act": "enter", "text": "violin 1/1 up"})]).await;
    let own = bench.folder.path().join("study.bowings.json");
    std::fs::write(&own, "somebody's own").expect("written");
    let keep = async |what: &str| {
        let (status, kept) = post(&bench, &format!("/api/keep/{what}"), &json!({"by": "a test"})).await;
        assert_eq!(status, StatusCode::OK, "{what}: {kept}");
        kept
    };
    let kept = keep("layer").await;
    assert_eq!(kept["file"], "study.bowings.json");
    let backup = bench.folder.path().join("study.bowings.json.backup");
    assert_eq!(std::fs::read_to_string(&backup).expect("the backup"), "somebody's own", "{kept}");
    keep("layer").await;
    assert!(!bench.folder.path().join("study.bowings.json.backup-2").exists(), "its own file it may replace");
    std::fs::write(&own, "somebody's own again").expect("written");
    keep("layer").await;
    let backup = bench.folder.path().join("study.bowings.json.backup-2");
    assert_eq!(std::fs::read_to_string(&backup).expect("the backup"), "somebody's own again");
    let kept = keep("parts").await;
    assert_eq!((&kept["file"], &kept["files"]), (&json!("study-parts"), &json!(2)));
    let part = std::fs::read_to_string(bench.folder.path().join("study-parts/01-violin.musicxml"));
    assert!(part.expect("the part").contains("up-bow"), "the bowing is in the part");
    assert_eq!(keep("sheet").await["file"], "study-changes.pdf");
    assert_eq!(keep("picture?first=1&last=2").await["file"], "study-bars-2-3.svg");
    for (what, begins) in
        [("sheet", "%PDF"), ("parts?part=0", "%PDF"), ("picture?first=0&last=1", "<svg"), ("pdf", "%PDF")]
    {
        let (status, text) = get(&bench, &format!("/api/export/{what}")).await;
        assert_eq!(status, StatusCode::OK, "{what}");
        assert!(text.starts_with(begins), "{what}: {}", text.chars().take(80).collect::<String>());
    }
    for wrong in ["parts?part=9", "picture?first=7&last=9", "picture?width=1"] {
        let (status, text) = get(&bench, &format!("/api/export/{wrong}")).await;
        assert!(status.is_client_error(), "{wrong}: {text}");
    }
}

#[tokio::test]
async fn changes_go_into_the_score_itself_when_told_so_and_the_file_as_it_was_is_kept() {
    let bench = bench();
    let mut version = 0;
    let before = std::fs::read(bench.score()).expect("the score");
    let (status, why) = post(&bench, "/api/write", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "nothing is changed: {why}");
    let (_, offers) = get(&bench, "/api/slurs?line=0&stroke=4").await;
    let offers: Vec<Value> = serde_json::from_str(&offers).expect("JSON");
    let split = offers.iter().find(|offer| offer["kind"] == "split").expect("a split");
    for offer in &offers {
        // The picture shows what changes, whatever bar was chosen.
        let bars = |key: &str| offer[key].as_u64().expect("a bar");
        let body = json!({
            "edits": offer["edits"], "line": 0, "first": bars("first"), "last": bars("last"), "version": version
        });
        let as_it_is = json!({
            "edits": [], "line": 0, "first": bars("first"), "last": bars("last"), "version": version
        });
        let ((status, then), (_, now)) =
            (post(&bench, "/api/look", &body).await, post(&bench, "/api/look", &as_it_is).await);
        assert_eq!(status, StatusCode::OK, "{then}");
        assert_ne!(now["svg"], then["svg"], "{}", offer["sentence"]);
    }
    let look = |edits: &Value, line: u64| json!({"edits": edits, "line": line, "first": 0, "last": 2, "version": version});
    let (status, now) = post(&bench, "/api/look", &look(&json!([]), 0)).await;
    assert_eq!(status, StatusCode::OK, "{now}");
    let (status, then) = post(&bench, "/api/look", &look(&split["edits"], 0)).await;
    assert_eq!(status, StatusCode::OK, "{then}");
    assert_ne!(now["svg"], then["svg"], "the picture shows the change");
    for wrong in [look(&split["edits"], 9), look(&json!([{"from": 0, "to": 9, "insert": "x"}]), 0)] {
        assert_eq!(post(&bench, "/api/look", &wrong).await.0, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
    }
    let change = json!({"act": "change", "sentence": split["sentence"], "edits": split["edits"]});
    acts(&bench, &mut version, &[json!({"act": "enter", "text": "violin 3/1 up"}), change]).await;
    let (_, exported) = get(&bench, "/api/export/score").await;
    let (status, written) = post(&bench, "/api/write", &json!({"by": "a test"})).await;
    assert_eq!((status, &written["kept"]), (StatusCode::OK, &json!("study.musicxml.backup")), "{written}");
    assert_eq!(std::fs::read(bench.folder.path().join("study.musicxml.backup")).expect("the backup"), before);
    let after = std::fs::read_to_string(bench.score()).expect("the score");
    assert!(after.matches("<slur").count() < String::from_utf8_lossy(&before).matches("<slur").count());
    assert!(!after.contains("up-bow"), "bowings stay in their layer");
    let (_, again) = get(&bench, "/api/export/score").await;
    assert_eq!(again, exported, "the desk shows what it showed before");
    // Undone past the writing, the change is not done a second time on other bytes.
    for _ in 0..3 {
        let (status, done) = post(&bench, "/api/undo", &json!({"by": "a test"})).await;
        assert_eq!(status, StatusCode::OK, "{done}");
    }
    let (_, undone) = get(&bench, "/api/export/score").await;
    assert_eq!(undone, after);
    for _ in 0..3 {
        post(&bench, "/api/redo", &json!({"by": "a test"})).await;
    }
    let (_, redone) = get(&bench, "/api/export/score").await;
    assert_eq!(redone, exported);
}

#[tokio::test]
async fn a_change_of_slurs_goes_into_the_layer_and_comes_off_with_it() {
    let bench = bench();
    let mut version = 0;
    let strokes = async || {
        let (_, score) = get(&bench, "/api/score").await;
        serde_json::from_str::<Value>(&score).expect("JSON")["lines"][0]["strokes"]
            .as_u64()
            .expect("a number")
    };
    let before = strokes().await;
    let offer = async |kind: &str| {
        let (_, offers) = get(&bench, "/api/slurs?line=0&stroke=4").await;
        let offers: Vec<Value> = serde_json::from_str(&offers).expect("JSON");
        offers
            .iter()
            .find(|offer| offer["kind"] == kind)
            .unwrap_or_else(|| panic!("a {kind}: {offers:?}"))
            .clone()
    };
    let split = offer("split").await;
    let (status, done) =
        post(&bench, "/api/slurs/layer", &json!({"edits": split["edits"], "version": version})).await;
    assert_eq!((status, &done["everything"]), (StatusCode::OK, &json!(true)), "{done}");
    version += 1;
    assert_eq!(strokes().await, before + 1, "the desk goes by the slurs of the layer");
    let (_, layer) = get(&bench, "/api/export/layer").await;
    assert_eq!(layer.matches("slur removed").count(), 1, "{layer}");
    // A join on top, into the score: its bytes are those of the score without the layer.
    let (_, offers) = get(&bench, "/api/slurs?line=0&stroke=2").await;
    let offers: Vec<Value> = serde_json::from_str(&offers).expect("JSON");
    let mut joined = false;
    for join in offers.iter().filter(|offer| offer["kind"] == "join") {
        let change = json!({"act": "change", "sentence": join["sentence"], "edits": join["edits"]});
        let (status, done) = post(&bench, "/api/acts", &json!({"act": change, "version": version})).await;
        if status == StatusCode::OK {
            version += 1;
            joined = true;
            break;
        }
        assert!(done["why"].as_str().is_some_and(|why| why.contains("layer")), "{done}");
    }
    assert!(joined, "{offers:?}");
    let shown = strokes().await;
    assert!(shown < before + 1, "{shown}");
    let (status, written) = post(&bench, "/api/write", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::OK, "{written}");
    version += 1;
    assert_eq!(strokes().await, shown, "the desk shows what it showed before");
    // Hidden, the layer lets the printed slur come back.
    let slurs = async || {
        let (_, score) = get(&bench, "/api/export/score").await;
        score.matches(r#"type="start""#).count()
    };
    let under_layer = slurs().await;
    acts(&bench, &mut version, &[json!({"act": "show", "name": "bowings", "shown": false})]).await;
    assert_eq!(slurs().await, under_layer + 1);
    acts(&bench, &mut version, &[json!({"act": "show", "name": "bowings", "shown": true})]).await;
    assert_eq!((slurs().await, strokes().await), (under_layer, shown));
}

/// A player has a line of one name in every movement: what a wish turns is told against the same movement.
#[tokio::test]
async fn what_turns_in_a_later_movement_is_what_the_wish_turned() {
    let bars = "1/4 C5 D5 E5 F5 | 1/1 G5 | 1/4 C5 D5 E5 F5 | G5 F5 E5 D5 | bar-rest | bar-rest | C5 D5 E5 F5 | 1/1 G5 |||";
    let mut xml = arcata_testkit::musicxml(&format!("quarter=60\nviolin: mf {bars}"));
    // The second movement begins at the third bar, numbered anew.
    for bar in 3..=8 {
        xml = xml.replace(&format!("<measure number=\"{bar}\""), &format!("<measure number=\"{}\"", bar - 2));
    }
    let bench = bench_of(&xml);
    let (_, text) = get(&bench, "/api/strokes?line=1").await;
    let before: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    assert_eq!(before.len(), 13);
    let last = if before[12]["bow"] == "down" { "up" } else { "down" };
    let asked = json!({"line": 1, "asks": [{"stroke": 12, "ask": last}], "version": 0});
    let (status, told) = post(&bench, "/api/bow", &asked).await;
    assert_eq!(status, StatusCode::OK, "{told}");
    let (_, text) = get(&bench, "/api/strokes?line=1").await;
    let after: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    let turned = before.iter().zip(&after).filter(|(was, is)| was["bow"] != is["bow"]).count();
    assert!((1..=5).contains(&turned), "{turned}: a rest of two bars lies between");
    assert!(told["turned"].as_u64().expect("a number") <= 5, "{told}");
}
