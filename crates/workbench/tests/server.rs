//! The server as a stranger would try it: without the key, from another site, with tricks in the path, with broken and too large
//! bodies; and as the page uses it.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod support;

use arcata_desk::{Act, Ask, Asked, JournalLine, NotePlace};
use arcata_workbench::{AccessKey, Journal, open_session};
use axum::body::Body;
use axum::http::{Method, Request, StatusCode, header};
use serde_json::{Value, json};
use support::{Bench, PORT, answer, bench, bench_of, bench_with, get, post, request};
use tower::ServiceExt as _;

/// What a test spoils in the headers of a request.
type Spoil = Box<dyn Fn(&mut axum::http::HeaderMap)>;

/// Everything that changes something, with a body that would do it.
fn changing() -> Vec<(&'static str, Value)> {
    let bow = json!({"line": 0, "asks": [{"stroke": 0, "ask": "up"}], "version": 0});
    vec![
        ("/api/acts", json!({"act": {"act": "tempo", "quarters": 90}, "version": 0})),
        ("/api/bow", bow),
        ("/api/slur", json!({"line": 0, "stroke": 4, "is": "phrase", "version": 0})),
        ("/api/proposal", json!({"finding": 0, "proposal": 0, "version": 0})),
        ("/api/break", json!({"part": 0, "bar": 2, "begins": "page", "version": 0})),
        ("/api/undo", json!({"by": "a test"})),
        ("/api/redo", json!({"by": "a test"})),
        ("/api/shorthand", json!({"text": "violin 1/1 up"})),
        ("/api/keep/score", json!({"by": "a test"})),
        ("/api/write", json!({"by": "a test"})),
        ("/api/slurs/layer", json!({"edits": [], "version": 0})),
        ("/api/look", json!({"edits": [], "line": 0, "first": 0, "last": 0, "version": 0})),
    ]
}

#[tokio::test]
async fn nobody_gets_in_without_the_key_or_by_another_name() {
    let bench = bench();
    for path in ["/", "/api/score", "/page/main.mjs", "/api/export/layer", "/fonts.css", "/api/nothing"] {
        let plain = Request::builder().uri(path).header(header::HOST, format!("127.0.0.1:{PORT}"));
        assert_eq!(
            answer(&bench, plain.body(Body::empty()).expect("a request")).await.0,
            StatusCode::UNAUTHORIZED,
            "{path}"
        );
        let wrong = Request::builder()
            .uri(path)
            .header(header::HOST, format!("127.0.0.1:{PORT}"))
            .header(header::COOKIE, format!("arcata-{PORT}=wrong; arcata-1=right"));
        assert_eq!(
            answer(&bench, wrong.body(Body::empty()).expect("a request")).await.0,
            StatusCode::UNAUTHORIZED,
            "{path}"
        );
        for host in ["evil.example", "127.0.0.1", "127.0.0.1:80", "evil.example:4242", ""] {
            let mut named = request(Method::GET, path);
            named.headers_mut().expect("headers").insert(header::HOST, host.parse().expect("a host"));
            let (status, _) = answer(&bench, named.body(Body::empty()).expect("a request")).await;
            assert_eq!(status, StatusCode::MISDIRECTED_REQUEST, "{path} as {host}");
        }
    }
    let (status, _) = get(&bench, "/api/score").await;
    assert_eq!(status, StatusCode::OK);
}

#[tokio::test]
async fn the_first_address_becomes_a_cookie_of_this_site_alone() {
    let bench = bench();
    let first = |key: &str| {
        Request::builder()
            .uri(format!("/?key={key}"))
            .header(header::HOST, format!("localhost:{PORT}"))
            .body(Body::empty())
            .expect("a request")
    };
    let response = bench.router.clone().oneshot(first("right")).await.expect("answers");
    assert_eq!(response.status(), StatusCode::SEE_OTHER);
    let cookie = response.headers()[header::SET_COOKIE].to_str().expect("text");
    assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), "{cookie}");
    assert_eq!(answer(&bench, first("wrong")).await.0, StatusCode::UNAUTHORIZED);
    assert_eq!(answer(&bench, first("")).await.0, StatusCode::UNAUTHORIZED);
}

/// The arguments of the browser that is started can be read by everybody on the machine.
#[tokio::test]
async fn the_address_that_the_browser_is_started_with_opens_once() {
    let bench = bench_with(AccessKey::of("right").with_ticket("once"));
    let first = |key: &str| {
        Request::builder()
            .uri(format!("/?key={key}"))
            .header(header::HOST, format!("127.0.0.1:{PORT}"))
            .body(Body::empty())
            .expect("a request")
    };
    assert_eq!(answer(&bench, first("twice")).await.0, StatusCode::UNAUTHORIZED);
    let response = bench.router.clone().oneshot(first("once")).await.expect("answers");
    assert_eq!(response.status(), StatusCode::SEE_OTHER);
    assert!(!format!("{:?}", response.headers()).contains("once"), "the ticket is no cookie");
    assert_eq!(answer(&bench, first("once")).await.0, StatusCode::UNAUTHORIZED);
    assert_eq!(answer(&bench, first("right")).await.0, StatusCode::SEE_OTHER);
    let (one, other) = (AccessKey::random().expect("a key"), AccessKey::random().expect("a key"));
    let ticket = one.ticket().expect("a ticket");
    assert!(ticket != one.text() && one.text() != other.text() && Some(ticket) != other.ticket());
}

#[tokio::test]
async fn what_changes_something_comes_from_the_page_itself() {
    let bench = bench();
    for (path, body) in changing() {
        let spoilt: [(&str, Spoil); 6] = [
            (
                "no key",
                Box::new(|headers| {
                    headers.remove(header::COOKIE);
                }),
            ),
            (
                "no origin",
                Box::new(|headers| {
                    headers.remove(header::ORIGIN);
                }),
            ),
            (
                "another site",
                Box::new(|headers| {
                    headers.insert(header::ORIGIN, "https://evil.example".parse().expect("text"));
                }),
            ),
            (
                "another port",
                Box::new(|headers| {
                    headers.insert(header::ORIGIN, "http://127.0.0.1:1".parse().expect("text"));
                }),
            ),
            (
                "null",
                Box::new(|headers| {
                    headers.insert(header::ORIGIN, "null".parse().expect("text"));
                }),
            ),
            (
                "cross-site",
                Box::new(|headers| {
                    headers.insert("sec-fetch-site", "cross-site".parse().expect("text"));
                }),
            ),
        ];
        for (what, spoil) in spoilt {
            let mut asked =
                request(Method::POST, path).body(Body::from(body.to_string())).expect("a request");
            spoil(asked.headers_mut());
            let (status, _) = answer(&bench, asked).await;
            assert!(
                matches!(status, StatusCode::FORBIDDEN | StatusCode::UNAUTHORIZED),
                "{path}, {what}: {status}"
            );
        }
        let mut form = request(Method::POST, path).body(Body::from(body.to_string())).expect("a request");
        form.headers_mut().insert(header::CONTENT_TYPE, "text/plain".parse().expect("text"));
        assert_eq!(answer(&bench, form).await.0, StatusCode::UNSUPPORTED_MEDIA_TYPE, "{path} as a form");
        assert_eq!(get(&bench, path).await.0, StatusCode::METHOD_NOT_ALLOWED, "{path} by GET");
    }
    let (_, score) = get(&bench, "/api/score").await;
    assert!(score.contains(r#""version":0"#), "nothing was done: {score}");
}

#[tokio::test]
async fn broken_and_too_large_bodies_and_tricks_in_the_path_do_nothing() {
    let bench = bench();
    for (path, _) in changing() {
        for body in [
            "",
            "{",
            "[]",
            "null",
            "\"x\"",
            "{\"version\":\"x\"}",
            "{\"act\":{\"act\":\"fly\"},\"version\":0}",
        ] {
            let asked = request(Method::POST, path).body(Body::from(body)).expect("a request");
            let (status, text) = answer(&bench, asked).await;
            assert!(status.is_client_error(), "{path} with {body}: {status} {text}");
        }
        let large = request(Method::POST, path).body(Body::from(vec![b' '; 17 << 20])).expect("a request");
        assert_eq!(answer(&bench, large).await.0, StatusCode::PAYLOAD_TOO_LARGE, "{path}");
    }
    for path in [
        "/page/../secret.txt",
        "/page/..%2fsecret.txt",
        "/page/%2e%2e/secret.txt",
        "/page/secret.txt",
        "/secret.txt",
        "/page//etc/passwd",
        "/api/export/..%2f..%2fetc%2fpasswd",
        "/api/export/secret",
        "/api/rules/..%2f..%2fsecret",
        "/api/export/%00",
    ] {
        let (status, text) = get(&bench, path).await;
        assert!(status.is_client_error() && !text.contains("not to be served"), "{path}: {status}");
    }
    for path in [
        "/api/system?first=9&last=3",
        "/api/system?first=99999&last=99999",
        "/api/system?width=9999",
        "/api/system?parts=x",
        "/api/system?parts=99",
        "/api/strokes?line=99",
        "/api/strokes",
        "/api/ways?line=0&first=99",
        "/api/ways?line=9",
        "/api/strokes?line=-1",
        "/api/rules/missing-arco?language=xx",
    ] {
        let (status, text) = get(&bench, path).await;
        assert!(status.is_client_error(), "{path}: {status} {text}");
        assert!(
            serde_json::from_str::<Value>(&text).is_ok_and(|value| value["why"].is_string()),
            "{path}: {text}"
        );
    }
}

#[tokio::test]
async fn a_bow_is_asked_for_undone_and_done_again_and_survives_the_end_of_the_program() {
    let bench = bench();
    let (status, done) =
        post(&bench, "/api/bow", &json!({"line": 0, "asks": [{"stroke": 0, "ask": "up"}], "version": 0}))
            .await;
    assert_eq!((status, &done["version"], &done["undo"]), (StatusCode::OK, &json!(1), &json!(1)), "{done}");
    assert_eq!(done["moved"][0]["first"], 0, "{done}");
    let strokes = |text: &str| serde_json::from_str::<Value>(text).expect("JSON");
    let (_, text) = get(&bench, "/api/strokes?line=0").await;
    assert_eq!((&strokes(&text)[0]["bow"], &strokes(&text)[0]["asked"]), (&json!("up"), &json!(true)));
    let (late, _) =
        post(&bench, "/api/bow", &json!({"line": 0, "asks": [{"stroke": 1, "ask": "up"}], "version": 0}))
            .await;
    assert_eq!(late, StatusCode::CONFLICT);
    let (_, undone) = post(&bench, "/api/undo", &json!({"by": "a test"})).await;
    assert_eq!((&undone["undo"], &undone["redo"]), (&json!(0), &json!(1)));
    let (_, text) = get(&bench, "/api/strokes?line=0").await;
    assert_eq!(strokes(&text)[0]["bow"], "down");
    post(&bench, "/api/redo", &json!({"by": "a test"})).await;
    let (status, score) = get(&bench, "/api/export/score").await;
    assert_eq!(status, StatusCode::OK);
    assert!(score.contains("<up-bow"), "the score that leaves has the bow");
    assert!(
        !std::fs::read_to_string(bench.score()).expect("the score").contains("<up-bow"),
        "the score itself is as it was"
    );
    let path = bench.score();
    let Bench { folder, router } = bench;
    drop(router);
    // Requests that were answered may hold the session a moment longer.
    for _ in 0..50 {
        if let Ok(session) = open_session(&path, None) {
            assert_eq!(session.reach(), (1, 0));
            assert!(session.layer_text().contains(r#""mark":"up""#));
            drop(folder);
            return;
        }
        tokio::time::sleep(std::time::Duration::from_millis(20)).await;
    }
    panic!("the session does not open again: {:?}", open_session(&path, None).err());
}

#[tokio::test]
async fn proposals_slurs_shorthand_and_settings_are_acts_like_all_others() {
    let bench = bench();
    let mut version = 0;
    let mut done = async |path: &str, mut body: Value| {
        body["version"] = json!(version);
        let (status, done) = post(&bench, path, &body).await;
        assert_eq!(status, StatusCode::OK, "{path}: {done}");
        version = done["version"].as_u64().expect("a version");
        done
    };
    done("/api/slur", json!({"line": 0, "stroke": 4, "is": "phrase"})).await;
    let (_, text) = get(&bench, "/api/strokes?line=0").await;
    assert_eq!(serde_json::from_str::<Vec<Value>>(&text).expect("JSON").len(), 12, "the slur binds no more");
    done("/api/acts", json!({"act": {"act": "enter", "text": "violin 3/1 up"}})).await;
    done("/api/acts", json!({"act": {"act": "tempo", "quarters": 132}})).await;
    done("/api/acts", json!({"act": {"act": "player", "profile": "student"}})).await;
    done("/api/acts", json!({"act": {"act": "aside", "rule": "no-tempo", "bar": "1", "beat": "1", "reason": "It is a study."}})).await;
    for _ in 0..5 {
        post(&bench, "/api/undo", &json!({"by": "a test"})).await;
    }
    let (_, score) = get(&bench, "/api/score").await;
    let score: Value = serde_json::from_str(&score).expect("JSON");
    assert_eq!(
        (&score["undo"], &score["redo"], &score["bowings"], &score["player"]),
        (&json!(0), &json!(5), &json!(0), &json!("professional"))
    );
    assert_eq!(score["lines"][0]["strokes"], 11);
    let (status, said) = post(&bench, "/api/shorthand", &json!({"text": "violin 99/1 up"})).await;
    assert_eq!((status, &said["sound"]), (StatusCode::OK, &json!(false)), "{said}");
}

#[tokio::test]
async fn slurs_are_changed_and_what_is_set_aside_is_kept_beside_the_score() {
    let bench = bench();
    let (_, offers) = get(&bench, "/api/slurs?line=0&stroke=4").await;
    let offers: Value = serde_json::from_str(&offers).expect("JSON");
    let split =
        offers.as_array().expect("offers").iter().find(|offer| offer["kind"] == "split").expect("a split");
    let act = json!({"act": "change", "sentence": split["sentence"], "edits": split["edits"]});
    let (status, done) = post(&bench, "/api/acts", &json!({"act": act, "version": 0})).await;
    assert_eq!((status, &done["everything"]), (StatusCode::OK, &json!(true)), "{done}");
    let (_, score) = get(&bench, "/api/score").await;
    assert!(score.contains(r#""strokes":12"#), "the slur of two notes is gone: {score}");
    let reason =
        json!({"act": "aside", "rule": "no-tempo", "bar": "1", "beat": "1", "reason": "It is a study."});
    post(&bench, "/api/acts", &json!({"act": reason, "version": 1})).await;
    for _ in 0..2 {
        let (status, kept) = post(&bench, "/api/keep/aside", &json!({"by": "a test"})).await;
        assert_eq!((status, &kept["file"]), (StatusCode::OK, &json!("study.aside.toml")), "{kept}");
    }
    let path = bench.folder.path().join("study.aside.toml");
    let text = std::fs::read_to_string(&path).expect("the file");
    assert_eq!(text.matches("It is a study.").count(), 1, "{text}");
    std::fs::write(&path, "broken").expect("written");
    let (status, why) = post(&bench, "/api/keep/aside", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "{why}");
    assert_eq!(
        std::fs::read_to_string(&path).expect("the file"),
        "broken",
        "what cannot be read is not written over"
    );
}

/// A figure that comes four times, played by two.
const TWO: &str = "time 4/4  quarter=100\n\
    violin i: mf 1/4 C5 E5 (G5 E5) | D5 F5 (A5 F5) | C5 E5 (G5 E5) | D5 F5 (A5 F5) |||\n\
    violin ii: mf 1/4 A4 C5 (E5 C5) | B4 D5 (F5 D5) | A4 C5 (E5 C5) | B4 D5 (F5 D5) |||";

#[tokio::test]
async fn an_act_goes_to_all_who_play_the_same_and_is_undone_as_one() {
    let bench = bench_of(&arcata_testkit::musicxml(TWO));
    let read = |text: String| serde_json::from_str::<Value>(&text).expect("JSON");
    let alike = read(get(&bench, "/api/alike?line=0&stroke=3").await.1);
    let count = |name: &str| alike[name].as_array().map_or(0, Vec::len);
    assert_eq!((count("places"), count("players"), count("all")), (2, 2, 4), "{alike}");
    let other = |bow: &str| if bow == "down" { "up" } else { "down" };
    let strokes = read(get(&bench, "/api/strokes?line=1").await.1);
    let wanted = other(strokes[3]["bow"].as_str().expect("a bow"));
    for (version, (goes, bowings)) in
        [("here", 1), ("places", 2), ("players", 2), ("all", 4)].into_iter().enumerate()
    {
        let body = json!({
            "line": 0, "asks": [{"stroke": 3, "ask": wanted}], "goes": goes, "version": 2 * version, "by": "me"
        });
        let (status, done) = post(&bench, "/api/bow", &body).await;
        assert_eq!((status, &done["bowings"]), (StatusCode::OK, &json!(bowings)), "{goes}: {done}");
        if goes == "all" {
            let strokes = read(get(&bench, "/api/strokes?line=1").await.1);
            for place in [3, 9] {
                assert_eq!(
                    (&strokes[place]["bow"], &strokes[place]["asked"]),
                    (&json!(wanted), &json!(true))
                );
            }
        }
        let (status, done) = post(&bench, "/api/undo", &json!({"by": "me"})).await;
        assert_eq!((status, &done["bowings"]), (StatusCode::OK, &json!(0)), "one act");
    }
    assert_eq!(get(&bench, "/api/alike?line=9&stroke=3").await.0, StatusCode::NOT_FOUND);
    let body = json!({"line": 0, "asks": [{"stroke": 3, "ask": "up"}], "goes": "nowhere", "version": 8});
    assert_ne!(post(&bench, "/api/bow", &body).await.0, StatusCode::OK);
}

#[tokio::test]
async fn the_description_names_every_address() {
    let bench = bench();
    let (status, text) = get(&bench, "/api/openapi.json").await;
    let description: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(status, StatusCode::OK);
    let paths = description["paths"].as_object().expect("paths");
    for (path, _) in changing() {
        let known = paths.keys().any(|known| {
            let pattern: Vec<&str> = known.split('/').collect();
            let asked: Vec<&str> = path.split('/').collect();
            pattern.len() == asked.len()
                && pattern.iter().zip(&asked).all(|(one, other)| one.starts_with('{') || one == other)
        });
        assert!(known, "{path} is not described");
    }
    assert!(paths.len() >= 25, "{}", paths.len());
}

#[test]
fn a_score_that_was_changed_meanwhile_keeps_what_fits_and_tells_the_rest() {
    let bench = bench();
    let path = bench.score();
    drop(bench.router);
    let place = |bar: &str, ordinal: u32| NotePlace {
        part: "violin".to_owned(),
        bar: bar.to_owned(),
        bar_ordinal: ordinal,
        offset: "0".to_owned(),
        voice: "1".to_owned(),
        grace: None,
    };
    let act = |place| JournalLine::Did(Act::Bow { asks: vec![Asked { place, ask: Ask::Up }] });
    let (mut journal, _) = Journal::open(&Journal::beside(&path)).expect("a journal");
    journal.put(&act(place("1", 1))).expect("kept");
    journal.put(&act(place("9", 9))).expect("kept");
    drop(journal);
    let session = open_session(&path, None).expect("opens");
    assert_eq!(session.reach(), (2, 0));
    assert_eq!(session.lost().len(), 1, "{:?}", session.lost());
    assert_eq!(session.layer_text().matches(r#""mark":"up""#).count(), 1);
}

/// `h` and `r` reach what leaves: two equal signs, on the stroke before and on the stroke itself.
#[tokio::test]
async fn hooks_and_retakes_leave_as_two_equal_signs() {
    let bench = bench();
    let asks = json!([{"stroke": 1, "ask": "hook"}, {"stroke": 5, "ask": "retake"}]);
    let (status, told) = post(&bench, "/api/bow", &json!({"line": 0, "asks": asks, "version": 0})).await;
    assert_eq!(status, StatusCode::OK, "{told}");
    let (status, text) = get(&bench, "/api/export/score").await;
    assert_eq!(status, StatusCode::OK);
    let read = |text: String| {
        let document = arcata_xml::Document::parse(text.into_bytes(), &arcata_xml::Limits::default());
        arcata_score::read(&document.expect("well-formed"))
    };
    let signs = |score: &arcata_score::Score| -> Vec<_> {
        score.parts[0].notes.iter().map(|note| note.bow_mark.map(|mark| mark.direction)).collect()
    };
    let bowed = signs(&read(text));
    assert!(bowed[0].is_some() && bowed[0] == bowed[1], "{bowed:?}");
    // The fifth stroke is the slur, the sixth the half note after it.
    assert!(bowed[4].is_some() && bowed[4] == bowed[6] && bowed[5].is_none(), "{bowed:?}");
    // Kept beside the score, the part says the same.
    let (status, kept) = post(&bench, "/api/keep/parts", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::OK, "{kept}");
    let part = bench.folder.path().join("study-parts/01-violin.musicxml");
    let part = read(std::fs::read_to_string(part).expect("a part"));
    assert_eq!(signs(&part), bowed);
}

/// A score that came in a package stays one, and what else is in the package stays with it.
#[tokio::test]
async fn a_package_stays_a_package_when_the_score_itself_is_changed() {
    let bench = bench();
    let plain = std::fs::read(bench.score()).expect("the score");
    let path = bench.folder.path().join("packed.mxl");
    std::fs::write(&path, arcata_xml::Package::around("study.musicxml", &plain).expect("packed"))
        .expect("written");
    let session = open_session(&path, None).expect("opens");
    let router = arcata_workbench::router(
        arcata_desk::Shared::new(session, std::sync::Arc::default()),
        AccessKey::of("right"),
        std::net::SocketAddr::from(([127, 0, 0, 1], PORT)),
    );
    let bench = Bench { router, ..bench };
    let text = String::from_utf8(plain.clone()).expect("text");
    let from = text.find("<note>").expect("a note") + "<note>".len();
    let edit = json!({"from": from, "to": from, "insert": "<!-- seen -->"});
    let change = json!({"act": {"act": "change", "sentence": "a remark", "edits": [edit]}, "version": 0});
    let (status, told) = post(&bench, "/api/acts", &change).await;
    assert_eq!(status, StatusCode::OK, "{told}");
    let (status, told) = post(&bench, "/api/write", &json!({"by": "a test"})).await;
    assert_eq!(status, StatusCode::OK, "{told}");
    let bytes = std::fs::read(&path).expect("written");
    assert_eq!(arcata_xml::Input::detect(&bytes), arcata_xml::Input::Package);
    let file = arcata_xml::open_score(bytes, &arcata_xml::Limits::default()).expect("a package");
    assert!(file.document().text().contains("<!-- seen -->"));
    // The bowed score leaves as a package, too.
    let (status, told) = post(&bench, "/api/keep/score", &json!({"by": "a test"})).await;
    assert_eq!((status, told["file"].as_str()), (StatusCode::OK, Some("packed-bowed.mxl")), "{told}");
}

/// The ends of the bow have their names in the language of who asks: in lines of music as everywhere.
#[tokio::test]
async fn frog_and_tip_are_named_in_the_language_of_the_page() {
    let bench = bench();
    let asking = |method: Method, path: &str, body: String| {
        let asked = request(method, path).header(header::ACCEPT_LANGUAGE, "de-AT").body(Body::from(body));
        answer(&bench, asked.expect("a request"))
    };
    let (status, picture) = asking(Method::GET, "/api/system?first=0&last=1", String::new()).await;
    assert_eq!(status, StatusCode::OK, "{picture}");
    assert!(picture.contains("Frosch") && picture.contains("Spitze"), "{picture}");
    let (_, english) = get(&bench, "/api/system?first=0&last=1").await;
    assert!(english.contains("frog") && !english.contains("Frosch"), "{english}");
}
