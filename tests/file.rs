//! The game file: what we write comes back byte for byte, and whatever else is opened is refused in true words.

use benchbook_stats::file::{self, FileError, GameFile, MAX_BYTES, read, read_bytes, salvage, write};
use benchbook_stats::log::{Entry, EntryId, Event};

const SMALL: &str = include_str!("games/small.benchbook.json");

/// The small file with one thing changed in it.
fn edited(from: &str, to: &str) -> String {
    assert_eq!(SMALL.matches(from).count(), 1, "{from:?} must be in the small file exactly once");
    SMALL.replacen(from, to, 1)
}

fn note(id: u32, text: &str) -> Entry {
    Entry { id: EntryId(id), at: None, event: Event::Note { text: text.into() } }
}

#[test]
fn what_we_wrote_comes_back_byte_for_byte() {
    let file = read(SMALL).expect("the small file is whole");
    assert_eq!(file.id, "small-1");
    assert_eq!(file.log.len(), 50);
    assert_eq!(write(&file), SMALL);
    let empty = GameFile { id: String::new(), log: Vec::new() };
    assert_eq!(read(&write(&empty)), Ok(empty));
}

#[test]
fn an_entry_is_a_line() {
    let file = read(SMALL).expect("whole");
    let lines: Vec<&str> = SMALL.lines().collect();
    assert_eq!(lines.len(), file.log.len() + 2);
    for (line, entry) in lines[1..].iter().zip(&file.log) {
        let alone: Entry = serde_json::from_str(line.trim_end_matches(',')).expect("a line is an entry");
        assert_eq!(alone, *entry);
    }
}

#[test]
fn any_layout_of_the_same_json_is_read() {
    let value: serde_json::Value = serde_json::from_str(SMALL).expect("JSON");
    let pretty = serde_json::to_string_pretty(&value).expect("writable").replace('\n', "\r\n");
    let log_first = format!(
        r#"{{"log":{},"id":{},"version":{},"format":{}}}"#,
        value["log"], value["id"], value["version"], value["format"]
    );
    for text in [pretty, value.to_string(), log_first, format!("\u{feff}{SMALL}")] {
        let file = read_bytes(text.as_bytes()).expect("the same game");
        assert_eq!(write(&file), SMALL);
    }
}

#[test]
fn names_survive_whatever_is_in_them() {
    for name in [
        "⚾ Niña 👩‍👩‍👧 \u{1f3f3}\u{fe0f}\u{200d}\u{1f308}",
        "<script>alert(\"out\")</script>",
        "'; DROP TABLE players; --",
        "tab\tnewline\nnul\u{0}bell\u{7}escape\u{1b}[31m",
        "\u{202e}backwards\u{2028}\u{2029}\u{feff}",
        "\\\"log\":[{\"id\":1}]",
        "",
    ] {
        let file = GameFile { id: name.into(), log: vec![note(1, name), note(7, name)] };
        let text = write(&file);
        assert_eq!(text.lines().count(), 4, "a newline in a name is no line of the file: {text}");
        assert_eq!(read(&text).as_ref(), Ok(&file));
        assert_eq!(read(&text).map(|file| write(&file)), Ok(text.clone()));
        assert_eq!(salvage(&text), (file, 0));
    }
}

#[test]
fn cut_anywhere_it_says_how_much_was_whole() {
    let mut full = read(&edited("Ferry Street", "Ferry ⚾ Street")).expect("whole");
    full.log.retain(|entry| matches!(entry.id.0, 1 | 3 | 25..=36));
    let text = write(&full);
    let length = text.trim_end().len();
    for cut in 0..length {
        let bytes = &text.as_bytes()[..cut];
        let lines: Vec<&[u8]> = bytes.split(|&b| b == b'\n').collect();
        let end = lines.last().copied().unwrap_or_default();
        // The last line may hold a whole entry that lacks only what follows it.
        let end_is_whole = serde_json::from_slice::<Entry>(end.strip_suffix(b",").unwrap_or(end)).is_ok();
        let whole = lines.len().saturating_sub(2) + usize::from(end_is_whole);
        let line = lines.len();
        match read_bytes(bytes) {
            Err(FileError::Empty) => assert_eq!(cut, 0),
            Err(error @ FileError::Truncated { .. }) => {
                // A newline is the end of the line it closes, and nothing of the next is there yet.
                let told = error.line().expect("a place");
                assert!(told == line || (told + 1 == line && end.is_empty()), "cut at {cut}: {told} for {line}");
                assert_eq!(error, FileError::Truncated { line: told, whole }, "cut at {cut}");
                assert!(error.can_salvage());
            }
            other => panic!("cut at {cut}: {other:?}"),
        }
        let (saved, lost) = salvage(&String::from_utf8_lossy(bytes));
        assert_eq!(saved.log, full.log[..whole], "cut at {cut}");
        assert!(lost <= 1, "cut at {cut}: {lost} lost");
    }
    assert_eq!(read(&text[..length]), Ok(full), "only the last newline is missing");
}

/// One byte of the file replaced by another: never a panic, and never another game without a word unless what was
/// written still is a game file.
#[test]
fn one_byte_changed_anywhere_is_a_game_or_an_error() {
    let mut file = read(SMALL).expect("whole");
    file.log.retain(|entry| (25..=36).contains(&entry.id.0));
    let text = write(&file);
    for at in 0..text.len() {
        for byte in [b'}', b'"', b'7', b'\n', 0xff] {
            let mut bytes = text.clone().into_bytes();
            bytes[at] = byte;
            match read_bytes(&bytes) {
                Ok(file) => assert!(read(&write(&file)).is_ok()),
                Err(error) => {
                    assert!(!error.to_string().is_empty());
                    let damaged_at = text[..at].matches('\n').count() + 1;
                    // Where the damage shows is never before it.
                    assert!(error.line().is_none_or(|line| line >= damaged_at || at == 0), "{at} {byte}: {error}");
                }
            }
            let (saved, _) = salvage(&String::from_utf8_lossy(&bytes));
            assert!(saved.log.windows(2).all(|pair| pair[0].id < pair[1].id));
            assert!(saved.log.len() >= 9, "one byte at {at} cost {} of 12 entries", 12 - saved.log.len());
        }
    }
}

#[test]
fn hand_edits_are_refused_with_the_line_and_the_reason() {
    let ball = r#"{"id":30,"at":1778322668000,"event":{"pitch":{"call":"ball"}}},"#;
    let damaged = |column, what: &str| FileError::Damaged { line: 31, column, what: what.into(), whole: 29 };
    let entry = |what: &str| FileError::Entry { number: 30, line: 31, what: what.into() };
    let order = |id, after| FileError::Order { number: 30, line: 31, id, after };
    let cases = [
        (
            "comma forgotten",
            ball.trim_end_matches(',').into(),
            FileError::Damaged { line: 32, column: 1, what: "expected `,` or `]`".into(), whole: 30 },
        ),
        (
            "comma doubled",
            format!("{ball},"),
            FileError::Damaged { line: 31, column: 64, what: "expected value".into(), whole: 30 },
        ),
        (
            "brace forgotten",
            ball.replace("}}},", "}},"),
            FileError::Damaged { line: 32, column: 1, what: "key must be a string".into(), whole: 29 },
        ),
        (
            "quote forgotten",
            ball.replace("\"ball\"", "\"ball"),
            damaged(63, "control character (\\u0000-\\u001F) found while parsing a string"),
        ),
        ("id doubled", ball.replace("30", "29"), order(29, 29)),
        ("id going back", ball.replace("30", "3"), order(3, 29)),
        ("id negative", ball.replace("30", "-30"), entry("invalid value: integer `-30`, expected u32")),
        ("id a word", ball.replace("30", "\"thirty\""), entry("invalid type: string \"thirty\", expected u32")),
        ("id enormous", ball.replace("30", "9999999999"), entry("invalid value: integer `9999999999`, expected u32")),
        ("no event", ball.replace(",\"event\":{\"pitch\":{\"call\":\"ball\"}}", ""), entry("missing field `event`")),
        (
            "field unknown",
            ball.replace("\"at\"", "\"when\""),
            entry("unknown field `when`, expected one of `id`, `at`, `event`"),
        ),
        (
            "event unknown",
            ball.replace("pitch", "pinch"),
            FileError::Entry { number: 30, line: 31, what: "unknown variant `pinch`".into() },
        ),
        (
            "call unknown",
            ball.replace("\"ball\"", "\"bal\""),
            FileError::Entry { number: 30, line: 31, what: "unknown variant `bal`".into() },
        ),
        (
            "position 11",
            r#"{"id":30,"event":{"in_play":{"ball":{"trajectory":"fly","fielders":[11]},"action":{}}}},"#.into(),
            entry("11 is no fielding position: positions are 1 to 9, and 10 in ten-fielder codes"),
        ),
        ("an entry that is a list", "[30],".into(), FileError::Entry { number: 30, line: 31, what: String::new() }),
        (
            "a merge conflict",
            format!("<<<<<<< ours\n{ball}"),
            FileError::Damaged { line: 31, column: 1, what: "expected value".into(), whole: 29 },
        ),
    ];
    for (name, line, expected) in cases {
        let error = read(&edited(ball, &line)).expect_err(name);
        match (&error, &expected) {
            // What serde lists of possible words may grow; the word refused must be named.
            (FileError::Entry { what, .. }, FileError::Entry { number, line, what: begins }) => {
                assert!(what.starts_with(begins.as_str()), "{name}: {error}");
                let told = FileError::Entry { number: *number, line: *line, what: what.clone() };
                assert_eq!(error, told, "{name}");
            }
            _ => assert_eq!(error, expected, "{name}: {error}"),
        }
        assert!(error.to_string().contains("line 3"), "{name}: {error}");
        assert!(error.can_salvage(), "{name}");
    }
}

#[test]
fn the_head_is_checked_too() {
    let head = r#"{"format":"benchbook.game","version":1,"id":"small-1","log":["#;
    let cases = [
        ("no id", head.replace("\"id\":\"small-1\",", ""), "line 1: the field \"id\" is missing"),
        ("no version", head.replace("\"version\":1,", ""), "line 1: the field \"version\" is missing"),
        ("version 0", head.replace(":1,", ":0,"), "line 1: there has never been a file version 0"),
        ("version a word", head.replace(":1,", ":\"1\","), "line 1: invalid type: string \"1\", expected u64"),
        ("id twice", head.replace("\"id\"", "\"id\":\"x\",\"id\""), "line 1: a field of the file is given twice"),
        ("log twice", head.replace("\"log\":[", "\"log\":[],\"log\":["), "line 1: a field of the file is given twice"),
        (
            "log an object",
            head.replace("\"log\":[", "\"log\":{},\"x\":["),
            "line 1: invalid type: map, expected a list of entries",
        ),
        (
            "a field of our own",
            head.replace("\"log\"", "\"umpire\":\"me\",\"log\""),
            "line 1: unknown field `umpire`, expected one of `format`, `version`, `id`, `log`",
        ),
        (
            "no format",
            head.replace("\"format\":\"benchbook.game\",", ""),
            "it doesn't say that it is \"benchbook.game\"",
        ),
        (
            "another format",
            head.replace("benchbook.game", "benchbook.season"),
            "this is no Benchbook game file: it says it is \"benchbook.season\", not \"benchbook.game\"",
        ),
    ];
    for (name, new, says) in cases {
        let error = read(&edited(head, &new)).expect_err(name).to_string();
        assert!(error.ends_with(says), "{name}: {error}");
    }
    let no_log = r#"{"format":"benchbook.game","version":1,"id":"x"}"#;
    assert_eq!(read(no_log).expect_err("no log").to_string(), "line 1: the field \"log\" is missing");
}

#[test]
fn a_newer_version_is_refused_whatever_it_holds() {
    let says = "made by a newer Benchbook (file version 3, this one reads up to 1): update, then open it again; the file is unchanged";
    for text in [
        edited("\"version\":1", "\"version\":3"),
        edited("\"version\":1", "\"version\":3").replace("swinging_strike", "whiff").replace(",\"at\":", ",\"tick\":"),
        edited("\"version\":1", "\"weather\":\"fine\",\"version\":3"),
        r#"{"log":[{"number":1}],"version":3,"format":"benchbook.game"}"#.into(),
        r#"{"format":"benchbook.game","version":3,"game":{}}"#.into(),
        r#"{"format":"benchbook.game","version":3,"log":[{"id":1,"event":{"#.into(),
    ] {
        let error = read(&text).expect_err("newer");
        assert_eq!(error, FileError::NewerVersion { found: 3 });
        assert_eq!(error.to_string(), says);
        assert!(!error.can_salvage(), "what a newer program wrote is left to it");
    }
}

#[test]
fn what_is_no_game_file_is_told_apart() {
    let cases: [(&[u8], &str); 14] = [
        (b"", "the file is empty"),
        (b" \r\n\t", "the file is empty"),
        (b"Dear diary", "this is no Benchbook game file (line 1, column 1: expected value)"),
        (b"\n\nH,R,E\n3,4,1\n", "this is no Benchbook game file (line 3, column 1: expected value)"),
        (b"<!doctype html>", "this is no Benchbook game file (line 1, column 1: expected value)"),
        (b"[1,2]", "it doesn't say that it is \"benchbook.game\""),
        (b"17", "it doesn't say that it is \"benchbook.game\""),
        (b"null", "it doesn't say that it is \"benchbook.game\""),
        (b"{}", "it doesn't say that it is \"benchbook.game\""),
        (b"{\"format\":7}", "it doesn't say that it is \"benchbook.game\""),
        (b"{\"type\":\"FeatureCollection\",\"log\":[]}", "it doesn't say that it is \"benchbook.game\""),
        (b"\x89PNG\r\n\x1a\n", "line 1 holds bytes that are no UTF-8 text"),
        (b"\xff\xfe{\0}\0", "the file is saved as UTF-16"),
        (b"{\"format\":\"caf\xe9\"}", "line 1 holds bytes that are no UTF-8 text"),
    ];
    for (bytes, says) in cases {
        let error = read_bytes(bytes).expect_err("no game file").to_string();
        assert!(error.contains(says), "{:?}: {error}", String::from_utf8_lossy(bytes));
    }
    let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
    assert!(read(&deep).is_err());
    let nested = format!(
        r#"{{"format":"benchbook.game","version":1,"id":"x","log":[{{"id":1,"event":{}"#,
        r#"{"insert":{"before":1,"event":"#.repeat(50_000)
    );
    assert!(matches!(read(&nested), Err(FileError::Damaged { line: 1, whole: 0, .. })));
}

#[test]
fn an_enormous_file_is_refused_before_it_is_parsed() {
    let text = " ".repeat(MAX_BYTES + 1);
    let begun = std::time::Instant::now();
    let error = read(&text).expect_err("too large");
    assert_eq!(error, FileError::TooLarge { bytes: MAX_BYTES as u64 + 1 });
    assert_eq!(read_bytes(text.as_bytes()), Err(error));
    assert!(begun.elapsed().as_millis() < 100, "took {:?}", begun.elapsed());
}

/// Texts made to be slow: time in proportion to their length, not to its square.
#[test]
fn salvage_is_quick_on_texts_made_to_be_slow() {
    let head = r#"{"format":"benchbook.game","version":1,"id":"x","log":["#;
    for piece in ["{},", "{", "[", "\"", "{\"id\":", "{\"id\":1,\n", "]", "{\"id\":1,\"event\":{\"card\":[", "{ \n"] {
        let text = format!("{head}{}", piece.repeat(1_000_000 / piece.len()));
        let begun = std::time::Instant::now();
        let (saved, _) = salvage(&text);
        assert!(saved.log.is_empty());
        assert!(read(&text).is_err());
        assert!(begun.elapsed().as_secs() < 10, "{piece:?} took {:?}", begun.elapsed());
    }
}

#[test]
fn salvage_takes_what_is_whole_and_counts_what_is_not() {
    let whole = read(SMALL).expect("whole");
    let without = |ids: &[u32]| whole.log.iter().filter(|e| !ids.contains(&e.id.0)).cloned().collect::<Vec<_>>();
    let line = |id: u32| SMALL.lines().find(|l| l.starts_with(&format!("{{\"id\":{id},"))).expect("a line");
    let pretty = serde_json::to_string_pretty(&serde_json::from_str::<serde_json::Value>(SMALL).expect("JSON"))
        .expect("writable");
    let cases: [(&str, String, &[u32], usize); 11] = [
        ("whole", SMALL.into(), &[], 0),
        ("pretty", pretty.clone(), &[], 0),
        (
            "pretty, one event unknown",
            pretty.replacen("\"intentional_walk\"", "", 1).replacen("play_ball", "play_bowl", 1),
            &[25],
            1,
        ),
        ("one call unknown", SMALL.replace(line(30), &line(30).replace("ball", "bowl")), &[30], 1),
        ("a brace lost", SMALL.replace(line(30), &line(30).replace("}}}", "}}")), &[30], 1),
        ("a quote lost", SMALL.replace(line(30), &line(30).replace("\"call", "call")), &[30], 1),
        ("a comma lost", SMALL.replace(line(30), line(30).trim_end_matches(',')), &[], 0),
        ("a line torn", SMALL.replace(line(36), &line(36)[40..]), &[36], 1),
        ("a line twice", SMALL.replace(line(30), &format!("{}\n{}", line(30), line(30))), &[], 1),
        ("head lost", SMALL.lines().skip(1).collect::<Vec<_>>().join("\n"), &[], 0),
        (
            "end overwritten",
            format!("{}\0\0\0\0", &SMALL[..SMALL.find(line(44)).expect("there") + 10]),
            &[44, 45, 46, 47, 48, 49, 50],
            1,
        ),
    ];
    for (name, text, missing, lost) in cases {
        let (saved, told) = salvage(&text);
        assert_eq!(saved.log, without(missing), "{name}");
        assert_eq!(told, lost, "{name}");
        assert_eq!(saved.id, if name == "head lost" { "" } else { "small-1" }, "{name}");
        assert_eq!(read(&write(&saved)).as_ref(), Ok(&saved), "{name}: what is saved is a game file");
    }
}

/// `cargo run -p benchbook -- schema > src/stats/benchbook.schema.json` writes the published one anew.
#[test]
fn the_published_schema_is_the_generated_one() {
    let published = include_str!("../src/stats/benchbook.schema.json");
    let generated = serde_json::to_string_pretty(&file::schema()).expect("writable") + "\n";
    assert!(
        published == generated,
        "src/stats/benchbook.schema.json is out of date: cargo run -p benchbook -- schema > src/stats/benchbook.schema.json"
    );
}

#[test]
fn the_schema_takes_what_we_read_and_refuses_what_we_refuse() {
    let schema = serde_json::to_value(file::schema()).expect("JSON");
    jsonschema::meta::validate(&schema).expect("a sound schema");
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/games");
    let mut games = 0;
    for path in std::fs::read_dir(folder).expect("games").map(|entry| entry.expect("entry").path()) {
        if path.to_string_lossy().ends_with(".benchbook.json") {
            let text = std::fs::read_to_string(&path).expect("text");
            let value: serde_json::Value = serde_json::from_str(&text).expect("JSON");
            let faults: Vec<String> =
                validator.iter_errors(&value).map(|e| format!("{}: {e}", e.instance_path())).collect();
            assert!(faults.is_empty(), "{}: {faults:#?}", path.display());
            let file = read(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
            assert_eq!(write(&file), text, "{} is written as we write it", path.display());
            games += 1;
        }
    }
    assert!(games >= 1);
    for (from, to) in [
        ("benchbook.game", "benchbook.season"),
        ("\"version\":1", "\"version\":2"),
        ("\"id\":\"small-1\"", "\"id\":7"),
        ("\"id\":\"small-1\",", ""),
        ("\"id\":\"small-1\"", "\"id\":\"small-1\",\"umpire\":\"me\""),
        ("\"play_ball\"", "\"play_bowl\""),
        ("{\"id\":30,", "{"),
        ("{\"id\":30,", "{\"id\":-30,"),
        ("{\"id\":30,", "{\"id\":30,\"why\":\"\","),
        ("\"by\":[6,3]", "\"by\":[6,11]"),
        ("\"how\":\"fly\"", "\"how\":\"fried\""),
        ("\"2026-05-09\"", "20260509"),
    ] {
        let text = edited(from, to);
        assert!(!validator.is_valid(&serde_json::from_str(&text).expect("JSON")), "the schema takes {to}");
        assert!(read(&text).is_err(), "we read {to}");
    }
}

proptest::proptest! {
    #![proptest_config(proptest::prelude::ProptestConfig { cases: 200, ..Default::default() })]

    /// Whatever bytes come, there is an answer; and what is saved out of them is a game file again.
    #[test]
    fn any_bytes_have_an_answer(
        cuts in proptest::collection::vec((0..SMALL.len(), 0_usize..200, ".{0,12}|[{}\\[\\]\",:\\n ]{0,12}"), 0..6)
    ) {
        let mut bytes = SMALL.as_bytes().to_vec();
        for (at, length, instead) in cuts {
            let from = at.min(bytes.len());
            let to = (from + length).min(bytes.len());
            bytes.splice(from..to, instead.into_bytes());
        }
        match read_bytes(&bytes) {
            Ok(file) => proptest::prop_assert_eq!(read(&write(&file)), Ok(file)),
            Err(error) => proptest::prop_assert!(!error.to_string().is_empty()),
        }
        let (saved, _) = salvage(&String::from_utf8_lossy(&bytes));
        proptest::prop_assert_eq!(read(&write(&saved)), Ok(saved));
    }
}
