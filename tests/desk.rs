//! The desk's program as it is used at home: what it prints, what it says of a bad file, and its exit status.

use std::path::PathBuf;
use std::process::Output;

use assert_cmd::Command;
use serde_json::Value;

const SMALL: &str = include_str!("games/small.benchbook.json");

fn games(name: &str) -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "..", "..", "tests", "games", name].iter().collect()
}

fn benchbook(words: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_benchbook"));
    command.args(words);
    command
}

/// Runs it with `text` on standard input.
fn fed(words: &[&str], text: impl Into<Vec<u8>>) -> (Option<i32>, String, String) {
    told(&benchbook(words).write_stdin(text.into()).output().expect("it starts"))
}

fn told(output: &Output) -> (Option<i32>, String, String) {
    let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).expect("text");
    (output.status.code(), text(&output.stdout), text(&output.stderr))
}

/// The small file with one thing changed in it.
fn edited(from: &str, to: &str) -> String {
    assert_eq!(SMALL.matches(from).count(), 1, "{from:?} must be in the small file exactly once");
    SMALL.replacen(from, to, 1)
}

/// A new file's path in a folder of this test's own.
fn scratch(name: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    drop(std::fs::remove_file(&path));
    path
}

#[test]
fn check_prints_the_book_and_the_proof() {
    let (status, out, err) = fed(&["check", "-"], SMALL);
    assert_eq!((status, err.as_str()), (Some(0), ""));
    for expected in [
        "Ferry Street at Quarry Road\nFriendly, 2026-05-09, 10:30, Back Field\nFinal\n",
        "              1  R  H  E  LOB\nFerry Street  1  1  1  1    1\nQuarry Road   3  3  2  0    0\n",
        "Nolan                2B   1  1  1   1   0   0\n",
        "  HR: Pell\n  SB: Marsh\n",
        "Upton (W)             1.0  1  1   1   1   1   0   5  14-8\n",
        "  WP: Upton\n",
        "  Ferry Street: 3 AB + 1 BB + 1 SH and SF = 5 and 1 R + 1 LOB + 3 PO = 5: proves\n",
        "  Quarry Road: 4 AB = 4 and 3 R + 0 LOB + 1 PO = 4: proves\n",
        "standard input: sound\n",
    ] {
        assert!(out.contains(expected), "{expected:?} is not in\n{out}");
    }
}

#[test]
fn check_of_the_paper_game() {
    let path = games("harbor-league.benchbook.json");
    let (status, out, err) = told(&benchbook(&["check"]).arg(&path).output().expect("it starts"));
    assert_eq!((status, err.as_str()), (Some(0), ""), "{out}");
    for expected in [
        "                    1  2  3  4  5  6  7  8  9  R  H  E  LOB\n",
        "Millrace Otters     0  0  0  1  1  0  3  0  1  6  7  2    3\n",
        "Pier Nine Lanterns  0  1  1  2  0  0  0  2  1  7  9  2   10\n",
        ": sound\n",
    ] {
        assert!(out.contains(expected), "{expected:?} is not in\n{out}");
    }
}

#[test]
fn check_says_where_a_file_is_broken() {
    let cases: [(String, &str); 7] = [
        (
            edited("{\"id\":30,", "{\"id\":29,"),
            "standard input: line 31: entry 30 of the log has the id 29, but the one before it has 29: ids must rise, each used once. `benchbook salvage - NEW` saves the entries that are whole into a new file",
        ),
        (
            edited("\"how\":\"fly\"", "\"how\":\"fried\""),
            "standard input: line 37: entry 36 of the log can't be read: unknown variant `fried`",
        ),
        (
            SMALL[..SMALL.find("\n{\"id\":25").expect("there") + 10].into(),
            "standard input: the file breaks off in line 26: it wasn't saved or copied to its end; the 24 entries before that are whole",
        ),
        (
            edited("\"version\":1", "\"version\":3"),
            "standard input: made by a newer Benchbook (file version 3, this one reads up to 1): update, then open it again; the file is unchanged\n",
        ),
        ("Dear diary".into(), "standard input: this is no Benchbook game file (line 1, column 1: expected value)\n"),
        ("{}".into(), "standard input: this is no Benchbook game file: it doesn't say that it is \"benchbook.game\"\n"),
        (String::new(), "standard input: the file is empty"),
    ];
    for (text, expected) in cases {
        let (status, out, err) = fed(&["check", "-"], text);
        assert_eq!((status, out.as_str()), (Some(1), ""), "{expected}");
        assert!(err.contains(expected), "{expected:?} is not in {err:?}");
    }
}

#[test]
fn check_says_which_entries_do_not_fit() {
    // A runner on second can't advance to second; and then nobody is on third to score on the fly after it.
    let (status, out, err) = fed(
        &["check", "-"],
        edited("\"to\":\"third\",\"cause\":\"wild_pitch\"", "\"to\":\"second\",\"cause\":\"wild_pitch\""),
    );
    assert_eq!(status, Some(1));
    assert!(err.contains("standard input: line 36: entry 35 doesn't fit the game: "), "{err}");
    assert!(err.contains("standard input: line 37: entry 36 doesn't fit the game: "), "{err}");
    assert!(out.contains("standard input: not sound, entries don't fit\n"), "{out}");
}

#[test]
fn check_goes_on_to_the_next_file() {
    let missing = scratch("missing.benchbook.json");
    let mut command = benchbook(&["check", "-"]);
    command.arg(&missing).arg(games("small.benchbook.json")).arg(env!("CARGO_TARGET_TMPDIR"));
    let (status, out, err) = told(&command.write_stdin(SMALL).output().expect("it starts"));
    assert_eq!(status, Some(1));
    assert_eq!(out.matches(": sound\n").count(), 2, "{out}");
    assert!(out.ends_with("\n2 of 4 files are sound.\n"), "{out}");
    assert!(err.contains("missing.benchbook.json: can't read it: "), "{err}");
    assert_eq!(err.lines().count(), 2, "{err}");
}

#[test]
fn an_enormous_file_is_refused_by_its_size() {
    let path = scratch("enormous.benchbook.json");
    let made = std::fs::File::create(&path).expect("made");
    made.set_len(3 << 40).or_else(|_| made.set_len(1 << 30)).expect("a file of nothing");
    let (status, out, err) = told(
        &benchbook(&["check"]).arg(&path).timeout(std::time::Duration::from_secs(20)).output().expect("it starts"),
    );
    drop(std::fs::remove_file(&path));
    assert_eq!((status, out.as_str()), (Some(1), ""));
    assert!(err.contains("the file is too large to be a game ("), "{err}");
}

#[test]
fn lines_as_json_are_as_their_schema_says() {
    let (status, schema, _) = fed(&["schema", "--lines"], "");
    assert_eq!(status, Some(0));
    let schema: Value = serde_json::from_str(&schema).expect("JSON");
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    for text in [
        SMALL.to_owned(),
        std::fs::read_to_string(games("harbor-league.benchbook.json")).expect("there"),
        edited("\n]}", ",\n{\"id\":51,\"event\":\"play_ball\"}\n]}"),
    ] {
        let (status, out, err) = fed(&["lines", "--json", "-"], text);
        assert_eq!((status, err.as_str()), (Some(0), ""));
        let lines: Value = serde_json::from_str(&out).expect("JSON");
        let faults: Vec<String> =
            validator.iter_errors(&lines).map(|e| format!("{}: {e}", e.instance_path())).collect();
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn every_property_of_the_lines_is_documented() {
    fn undocumented(schema: &Value, path: &str, found: &mut Vec<String>) {
        for (name, property) in schema["properties"].as_object().into_iter().flatten() {
            if property.get("description").is_none() {
                found.push(format!("{path}/{name}"));
            }
        }
    }
    let (_, schema, _) = fed(&["schema", "--lines"], "");
    let schema: Value = serde_json::from_str(&schema).expect("JSON");
    let mut found = Vec::new();
    undocumented(&schema, "", &mut found);
    for (name, definition) in schema["$defs"].as_object().expect("definitions") {
        undocumented(definition, name, &mut found);
    }
    assert!(found.is_empty(), "no doc comment: {found:?}");
    assert!(schema["properties"].as_object().is_some_and(|all| all.len() >= 10));
}

#[test]
fn lines_as_json_hold_the_numbers() {
    let (_, out, _) = fed(&["lines", "--json", "-"], SMALL);
    let lines: Value = serde_json::from_str(&out).expect("JSON");
    let at = |pointer: &str| lines.pointer(pointer).unwrap_or_else(|| panic!("{pointer} is not in {out}"));
    for (pointer, expected) in [
        ("/format", Value::from("benchbook.lines")),
        ("/game", "small-1".into()),
        ("/heading/date", "2026-05-09".into()),
        ("/state", "Final".into()),
        ("/over", true.into()),
        ("/regulation_innings", 1.into()),
        ("/line_score/sides/1/innings/0", 3.into()),
        ("/line_score/sides/0/left_on_base", 1.into()),
        ("/box_score/sides/0/batting/3/sacrifice_flies", 1.into()),
        ("/box_score/sides/1/batting/3/runs_batted_in", 2.into()),
        ("/box_score/sides/1/batting/0/stolen_bases", 1.into()),
        ("/box_score/sides/0/pitching/0/outs", 1.into()),
        ("/box_score/sides/0/pitching/0/runs", 3.into()),
        // The runner who reached on an error is unearned; the single and the home run are the pitcher's (OBR 9.16).
        ("/box_score/sides/0/pitching/0/earned_runs", 2.into()),
        ("/box_score/sides/1/pitching/0/earned_runs", 1.into()),
        ("/box_score/sides/1/pitching/0/pitches", 14.into()),
        ("/box_score/sides/0/fielding/0/errors", 1.into()),
        ("/proof/0/came_up", 5.into()),
        ("/proof/1/accounted_for", 4.into()),
        ("/proof/1/proves", true.into()),
        ("/conflicts", Value::Array(Vec::new())),
    ] {
        assert_eq!(*at(pointer), expected, "{pointer}");
    }
}

/// What another program reads from `benchbook lines --json`, against the numbers worked out on paper: line score, every
/// pitcher, the side's earned runs, and the proof. `harbor_league.rs` compares the rest with the crate itself.
#[test]
fn lines_as_json_are_the_papers() {
    let paper = include_str!("games/harbor-league.expected.json");
    let paper: Value = serde_json::from_str(paper).expect("JSON");
    let (_, out, _) =
        told(&benchbook(&["lines", "--json"]).arg(games("harbor-league.benchbook.json")).output().expect("it starts"));
    let lines: Value = serde_json::from_str(&out).expect("JSON");
    for (i, side, other) in [(0, "visitors", "home"), (1, "home", "visitors")] {
        let (score, expected) = (&lines["line_score"]["sides"][i], &paper["line_score"][side]);
        for (ours, theirs) in
            [("innings", "innings"), ("runs", "r"), ("hits", "h"), ("errors", "e"), ("left_on_base", "lob")]
        {
            assert_eq!(score[ours], expected[theirs], "{side} {ours}");
        }
        let pitchers = paper["pitching"][side]["pitchers"].as_array().expect("pitchers");
        assert_eq!(lines["box_score"]["sides"][i]["pitching"].as_array().map(Vec::len), Some(pitchers.len()));
        for (at, expected) in pitchers.iter().enumerate() {
            for field in ["player", "name", "outs", "hits", "runs", "earned_runs", "walks", "strikeouts", "pitches"] {
                let got = &lines["box_score"]["sides"][i]["pitching"][at][field];
                assert_eq!(*got, expected[field], "{side} pitcher {at} {field}");
            }
        }
        // On paper earned runs stand under the side that scored them.
        let earned = &lines["box_score"]["sides"][i]["pitching_total"]["earned_runs"];
        assert_eq!(*earned, paper["earned_runs"][other]["side_total"], "{side} earned runs");
        assert_eq!(lines["proof"][i]["came_up"], paper["proof"][side]["left_side"]);
        assert_eq!(lines["proof"][i]["accounted_for"], paper["proof"][side]["right_side"]);
    }
}

#[test]
fn lines_for_people_are_tables() {
    let (status, out, err) = fed(&["lines", "-"], SMALL);
    assert_eq!((status, err.as_str()), (Some(0), ""));
    for expected in
        ["Ferry Street batting", "Quarry Road pitching", "Ferry Street fielding", "  AVG    OBP    SLG\n", "SS 0.1"]
    {
        assert!(out.contains(expected), "{expected:?} is not in\n{out}");
    }
}

#[test]
fn why_opens_a_number() {
    let harbor = games("harbor-league.benchbook.json");
    let ask =
        |question: &str| told(&benchbook(&["why", &harbor.display().to_string(), question]).output().expect("runs"));
    // The paper: five earned, two not, of the seven runs against the visitors.
    let (status, out, err) = ask("earned runs of visitors");
    assert_eq!((status, err.as_str()), (Some(0), ""));
    assert!(out.starts_with("Earned runs against Millrace Otters, as a team: 5\n"), "{out}");
    assert_eq!((out.matches("\n+ ").count(), out.matches("\n- ").count()), (5, 2), "{out}");
    assert!(out.contains("reached base on an error by the third baseman. "), "{out}");
    let (status, out, _) = ask("rbi of okonjo");
    assert_eq!(status, Some(0));
    assert!(out.contains("Runs batted in: Matilde Okonjo: 1\n") && out.contains("(OBR 9.04(a)(1))"), "{out}");
    // Every number has a name; the abbreviations of the box score do too.
    for (question, expected) in [
        ("ip of corvane", "Innings pitched: Nadia Corvane: "),
        ("pitches of corvane", "Pitches: Nadia Corvane: 14\n"),
        ("decision of corvane", "Decision: Nadia Corvane: "),
        ("LOB of home", "Left on base: "),
        ("passed balls of okonjo", "Passed balls: Matilde Okonjo: 0\n"),
        ("innings in the field of okonjo", "Innings in the field: Matilde Okonjo: "),
        ("2b of okonjo", "Two-base hits: Matilde Okonjo: "),
        ("er of corvane", "Earned runs: Nadia Corvane: "),
    ] {
        let (status, out, err) = ask(question);
        assert_eq!((status, err.as_str()), (Some(0), ""), "{question}");
        assert!(out.starts_with(expected), "{question}: {out}");
        assert!(!out.contains("OBR custom"), "{out}");
    }
    for (question, expected) in [
        ("luck of Iyer", "there is no number called \"luck\""),
        ("hits of nobody", "nobody in this game is called \"nobody\""),
        ("hits", "ask like \"earned runs of #21\""),
        ("walks of home", "is asked of a player"),
        ("hits of a", "fits more than one"),
    ] {
        let (status, out, err) = ask(question);
        assert_eq!((status, out.as_str()), (Some(1), ""), "{question}");
        assert!(err.contains(expected), "{question}: {err}");
    }
}

#[test]
fn season_adds_games_up_and_counts_none_twice() {
    let (harbor, small) = (games("harbor-league.benchbook.json"), games("small.benchbook.json"));
    let (harbor, small) = (harbor.display().to_string(), small.display().to_string());
    let season = |files: &[&str]| told(&benchbook(&[&["season"], files].concat()).output().expect("runs"));
    let (status, out, err) = season(&[&harbor, &small]);
    assert_eq!((status, err.as_str()), (Some(0), ""));
    assert!(out.contains("Pier Nine Lanterns: 1 won, 0 lost; 7 runs for, 6 against"), "{out}");
    assert!(out.contains("Ferry Street: "), "{out}");
    assert!(out.contains("  Nadia Corvane: 2026-06-13 14\n"), "{out}");
    let (status, again, err) = season(&[&harbor, &small, &harbor]);
    assert_eq!((status, again), (Some(0), out), "twice is once");
    assert!(err.contains("was given twice and is counted once"), "{err}");
    let (status, _, err) = season(&[&harbor, "nowhere.benchbook.json"]);
    assert_eq!(status, Some(1));
    assert!(err.contains("nowhere.benchbook.json"), "{err}");
    let (_, json, _) = season(&["--json", &harbor]);
    let json: Value = serde_json::from_str(&json).expect("JSON");
    assert_eq!(json["teams"]["Pier Nine Lanterns"]["won"], 1);
}

#[test]
fn schema_is_the_published_one() {
    let (status, out, _) = fed(&["schema"], "");
    assert_eq!(status, Some(0));
    assert_eq!(out, include_str!("../src/stats/benchbook.schema.json"));
}

#[test]
fn names_command_no_terminal_and_break_no_table() {
    let name = "\\u001b[2J\\u0007⚾ 野球\\u202e<script>alert(1)</script>\\u009b31m\\n";
    let text = edited("\"name\":\"Abbot\"", &format!("\"name\":\"{name}\""))
        .replace("Ferry Street", "\\u001b]0;Ferry\\u0007 ⚾");
    for words in [&["check", "-"][..], &["lines", "-"], &["lines", "--json", "-"]] {
        let (status, out, _) = fed(words, text.as_str());
        assert_eq!(status, Some(0));
        let commands = |c: char| (c.is_control() && c != '\n') || c == '\u{202e}';
        assert!(!out.contains(commands), "{words:?}: {out:?}");
        assert!(out.contains("<script>alert(1"), "{out}");
    }
    let (_, out, _) = fed(&["lines", "--json", "-"], text.as_str());
    let lines: Value = serde_json::from_str(&out).expect("JSON");
    let printed: String = serde_json::from_str(&format!("\"{name}\"")).expect("JSON");
    assert_eq!(
        lines["box_score"]["sides"][0]["batting"][0]["name"],
        Value::from(printed),
        "data is handed on as it is"
    );
    let (_, _, err) = fed(&["check", "-"], edited("\"play_ball\"", "\"\\u001b[31m\\u009b\""));
    assert!(!err.contains(|c: char| c.is_control() && c != '\n'), "{err:?}");
}

#[test]
fn colour_is_for_terminals_only() {
    let forced = |no_color: Option<&str>| {
        let mut command = benchbook(&["check", "-"]);
        command.env_remove("NO_COLOR").env("CLICOLOR_FORCE", "1");
        if let Some(value) = no_color {
            command.env_remove("CLICOLOR_FORCE").env("NO_COLOR", value);
        }
        told(&command.write_stdin(SMALL).output().expect("it starts")).1
    };
    assert!(forced(None).contains("\u{1b}["), "asked for, there is colour");
    assert!(!forced(Some("1")).contains('\u{1b}'));
    let (_, piped, _) = fed(&["check", "-"], SMALL);
    assert!(!piped.contains('\u{1b}'));
}

#[test]
fn salvage_makes_a_new_file_and_keeps_the_old() {
    let (damaged, new) = (scratch("damaged.benchbook.json"), scratch("salvaged.benchbook.json"));
    let broken = &SMALL[..SMALL.len() - 40];
    std::fs::write(&damaged, broken).expect("written");
    let run = || told(&benchbook(&["salvage"]).arg(&damaged).arg(&new).output().expect("it starts"));
    let (status, out, err) = run();
    assert_eq!(
        (status, out.as_str(), err.as_str()),
        (Some(0), "", "benchbook: saved 49 entries; 1 place could not be read\n")
    );
    let saved = std::fs::read_to_string(&new).expect("there");
    assert_eq!(saved.lines().count(), 51);
    assert!(SMALL.starts_with(saved.trim_end().trim_end_matches("]}").trim_end()));
    assert_eq!(std::fs::read_to_string(&damaged).expect("there"), broken);
    let (status, _, err) = run();
    assert_eq!(status, Some(1), "a file that exists is not written over");
    assert!(err.contains("can't make it: "), "{err}");
    assert_eq!(std::fs::read_to_string(&new).expect("there"), saved);
    for text in [edited("\"version\":1", "\"version\":3"), "Dear diary".into()] {
        let (status, out, _) = fed(&["salvage", "-", "-"], text);
        assert_eq!((status, out.as_str()), (Some(1), ""));
    }
}

#[test]
fn help_tells_a_person_what_to_do() {
    let (status, out, _) = fed(&["--help"], "");
    assert_eq!(status, Some(0));
    for word in ["check", "lines", "schema", "salvage", "Examples:", "NO_COLOR"] {
        assert!(out.contains(word), "{word} is not in {out}");
    }
    let (status, _, err) = fed(&["check"], "");
    assert_eq!(status, Some(2), "no file is a mistake of use");
    assert!(err.contains("<FILE>"), "{err}");
    assert_eq!(fed(&["umpire"], "").0, Some(2));
}
