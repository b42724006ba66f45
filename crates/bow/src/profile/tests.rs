use super::*;

#[test]
fn every_shipped_profile_reads_and_gives_reasons() {
    for shipped in Shipped::ALL {
        let profile = Profile::parse(shipped.text()).unwrap();
        assert_eq!(profile.name, shipped.name());
        for section in profile.table.values().filter_map(toml::Value::as_table) {
            for (key, setting) in section {
                for part in ["unit", "reason", "source", "status"] {
                    let text = setting.get(part).and_then(toml::Value::as_str).unwrap_or_default();
                    assert!(!text.is_empty(), "{}: {key} has no {part}", profile.name);
                }
                assert_ne!(setting.get("status").and_then(toml::Value::as_str), Some("yours"));
            }
        }
    }
}

#[test]
fn a_student_reaches_less_and_lifts_slower_than_a_professional() {
    let (student, professional) = (Profile::shipped(Shipped::Student), Profile::default());
    assert!(student.hair.cello.value < professional.hair.cello.value);
    assert!(student.lift() > professional.lift());
    assert_eq!(student.homes, professional.homes);
}

#[test]
fn every_dynamic_has_three_speeds_in_order() {
    for shipped in Shipped::ALL {
        let profile = Profile::shipped(shipped);
        for setting in profile.speed.in_order() {
            assert!(setting.value.is_sorted(), "{} {setting:?}", profile.name);
        }
    }
}

#[test]
fn a_profile_written_out_reads_back_the_same() {
    let own =
        Profile::parse("name = \"Ours\"\n[speed]\np = [6, 9, 20]\n[words]\nbar = \"measure\"\n").unwrap();
    let again = Profile::parse(&own.to_documented_toml()).unwrap();
    assert_eq!(own, again);
    assert_eq!(again.words.bar.value, "measure");
}

#[test]
fn the_manual_gives_one_profile_in_full_and_of_the_others_what_differs() {
    let manual = Profile::manual();
    let chapters: Vec<&str> = manual.split("\n## ").skip(1).collect();
    assert_eq!(chapters.len(), Shipped::ALL.len() + Style::ALL.len() - 1);
    let rows = |chapter: &str| chapter.lines().filter(|line| line.starts_with("| `")).count();
    let settings: usize =
        Profile::default().table.values().filter_map(toml::Value::as_table).map(toml::Table::len).sum();
    assert_eq!(rows(chapters[0]), settings);
    assert!(chapters[0].contains("| `p` | 5 / 10 / 25 | cm/s |"));
    assert!(chapters[1].contains("| `p` | 6 / 11 / 25 | cm/s |") && !chapters[1].contains("| `mf` |"));
    assert!((1..settings / 2).contains(&rows(chapters[2])));
}

#[test]
fn mistakes_say_where_and_what_is_allowed() {
    let message = |text: &str| Profile::parse(text).unwrap_err().to_string();
    let cases = [
        (
            "extends = \"soloist\"",
            "line 1, column 11: extends: no such profile; allowed are professional, amateur, student",
        ),
        ("[heir]\nviolin = 1", "line 1, column 2: heir: no such section; allowed are"),
        (
            "[hair]\nviolin = 0.6",
            "line 2, column 10: hair.violin: a whole number from 50 to 1000 is expected (mm)",
        ),
        (
            "[hair]\nviolin = { value = 60, unit = \"cm\" }",
            "line 2, column 31: hair.violin.unit: the unit is mm",
        ),
        (
            "[speed]\np = [6, 3, 9]",
            "line 2, column 5: speed.p: 3 whole numbers from small to large are expected",
        ),
        ("[words]\nbar = 3", "line 2, column 7: words.bar: a word in quotation marks is expected"),
        ("[hair\n", "line 1, column 6"),
    ];
    for (text, expected) in cases {
        let said = message(text);
        assert!(said.starts_with(expected), "{text}: {said}");
    }
}

#[test]
fn profiles_name_every_weight_and_no_other() {
    let mut settings = PlanSettings::default();
    let mut names: Vec<&str> = settings.weights.named().iter().map(|(name, _)| *name).collect();
    names.sort_unstable();
    for shipped in Shipped::ALL {
        let profile = Profile::shipped(shipped);
        assert_eq!(names, profile.weights.keys().map(String::as_str).collect::<Vec<_>>());
    }
}

#[test]
fn styles_price_what_the_profile_names_and_say_why() {
    for style in Style::ALL {
        let plain = Profile::default();
        for (name, setting) in style.weights() {
            let known = plain.weights.get(&name).map(|known| known.unit.clone());
            assert_eq!(known.as_ref(), Some(&setting.unit), "{name}");
            assert!(!setting.reason.is_empty() && !setting.source.is_empty(), "{name}");
            assert_ne!(setting.status, Status::Yours);
        }
        let styled = Profile::default().in_style(style);
        assert_eq!(styled.plan_settings(Instrument::Violin).style, style);
    }
}

#[test]
fn a_style_yields_to_the_user_s_own_prices() {
    let own = Profile::parse("style = \"dance\"\n[weights]\nhook = 900\n").unwrap();
    let settings = own.plan_settings(Instrument::Violin);
    let dance = Profile::default().in_style(Style::Dance).plan_settings(Instrument::Violin);
    assert_eq!((settings.style, settings.weights.hook), (Style::Dance, 900));
    assert_eq!(settings.weights.retake, dance.weights.retake);
    assert_eq!(Profile::parse(&own.to_documented_toml()).unwrap(), own);
    let wrong = Profile::parse("style = \"jazz\"").unwrap_err().to_string();
    assert_eq!(wrong, "line 1, column 9: style: no such style; allowed are concert, dance, early");
}

#[test]
fn the_planner_s_defaults_are_the_professional_s() {
    let settings = Profile::default().plan_settings(Instrument::Violin);
    assert_eq!((settings.weights, settings.reach), (Weights::default(), BowReach::default()));
}

#[test]
fn own_weights_and_hair_reach_the_planner() {
    let own = Profile::parse("[weights]\nhook = 900\n[hair]\ncello = 500\n").unwrap();
    let settings = own.plan_settings(Instrument::Cello);
    assert_eq!((settings.weights.hook, settings.reach.hair), (900, 500_000));
}
