//! The catalogues of words: every message the code asks for is there, in every finished language, with the same
//! variables; and none is left that nobody asks for.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

/// The crates that have a catalogue.
const CRATES: [&str; 2] = ["stats", "pad"];

/// Message -> its variables.
type Catalogue = BTreeMap<String, BTreeSet<String>>;

#[test]
fn every_message_asked_for_is_there_with_its_variables() {
    for name in CRATES {
        let english = catalogue(name, "en", None);
        let asked = asked_for(name);
        assert!(!asked.is_empty(), "{name}: found no say! in the source: the scan is broken");
        for (key, (with, place)) in &asked {
            let wants = english.get(key).unwrap_or_else(|| panic!("{place}: no message `{key}`"));
            assert_eq!(wants, with, "{place}: `{key}` wants the variables on the left, is given those on the right");
        }
        let idle: Vec<&String> = english.keys().filter(|key| !asked.contains_key(*key)).collect();
        assert!(idle.is_empty(), "{name}: nobody asks for {idle:?}");
    }
}

#[test]
fn spanish_is_complete() {
    for name in CRATES {
        same(name, &catalogue(name, "en", None), &catalogue(name, "es", None));
    }
}

#[test]
fn japanese_has_all_of_the_plate() {
    for (name, file) in [("pad", "plate.ftl"), ("stats", "field.ftl")] {
        same(name, &catalogue(name, "en", Some(file)), &catalogue(name, "ja", Some(file)));
    }
}

/// No key missing, none too many, the same variables in each.
fn same(name: &str, english: &Catalogue, other: &Catalogue) {
    let missing: Vec<&String> = english.keys().filter(|key| !other.contains_key(*key)).collect();
    assert!(missing.is_empty(), "{name}: not translated: {missing:?}");
    let strange: Vec<&String> = other.keys().filter(|key| !english.contains_key(*key)).collect();
    assert!(strange.is_empty(), "{name}: translated, but not in English: {strange:?}");
    for (key, with) in english {
        assert_eq!(with, &other[key], "{name}: `{key}` has other variables than in English");
    }
}

fn source(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../src").join(name)
}

fn catalogue(name: &str, language: &str, only: Option<&str>) -> Catalogue {
    let mut all = Catalogue::new();
    let folder = source(name).join("words").join(language);
    for file in fs::read_dir(&folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display())) {
        let path = file.unwrap().path();
        if only.is_some_and(|only| !path.ends_with(only)) {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        let resource =
            parser::parse(text.as_str()).unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", path.display()));
        for entry in resource.body {
            let Entry::Message(message) = entry else { continue };
            let mut with = BTreeSet::new();
            pattern(message.value.as_ref().expect("a message has words"), &mut with);
            let twice = all.insert(message.id.name.to_owned(), with);
            assert!(twice.is_none(), "{}: `{}` is there twice", path.display(), message.id.name);
        }
    }
    all
}

fn pattern(words: &Pattern<&str>, with: &mut BTreeSet<String>) {
    for element in &words.elements {
        if let PatternElement::Placeable { expression } = element {
            self::expression(expression, with);
        }
    }
}

fn expression(of: &Expression<&str>, with: &mut BTreeSet<String>) {
    match of {
        Expression::Inline(one) => inline(one, with),
        Expression::Select { selector, variants } => {
            inline(selector, with);
            for variant in variants {
                pattern(&variant.value, with);
            }
        }
    }
}

fn inline(of: &InlineExpression<&str>, with: &mut BTreeSet<String>) {
    match of {
        InlineExpression::VariableReference { id } => {
            with.insert(id.name.to_owned());
        }
        InlineExpression::FunctionReference { arguments: CallArguments { positional, .. }, .. } => {
            for one in positional {
                inline(one, with);
            }
        }
        InlineExpression::Placeable { expression: of } => expression(of, with),
        _ => {}
    }
}

/// What a crate's source asks for: message -> (its variables, where).
fn asked_for(name: &str) -> BTreeMap<String, (BTreeSet<String>, String)> {
    let mut asked = BTreeMap::new();
    let mut folders = vec![source(name)];
    while let Some(folder) = folders.pop() {
        for file in fs::read_dir(folder).unwrap() {
            let path = file.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                read_source(&path, &mut asked);
            }
        }
    }
    asked
}

fn read_source(path: &Path, asked: &mut BTreeMap<String, (BTreeSet<String>, String)>) {
    let text = fs::read_to_string(path).unwrap();
    let code: String = text
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .fold(String::new(), |all, line| all + line + "\n");
    for (at, _) in code.match_indices("say!(") {
        let call = balanced(&code[at + 4..]);
        let Some(quote) = call.find('"') else { continue };
        let rest = &call[quote + 1..];
        let Some(end) = rest.find('"') else { continue };
        let key = rest[..end].to_owned();
        let with: BTreeSet<String> = named(&rest[end + 1..]);
        let place = path.display().to_string();
        if let Some((before, elsewhere)) = asked.insert(key.clone(), (with.clone(), place.clone())) {
            assert_eq!(before, with, "`{key}` has other variables in {elsewhere} than in {place}");
        }
    }
}

/// From the opening bracket to the one that closes it.
fn balanced(code: &str) -> &str {
    let mut depth = 0;
    for (at, c) in code.char_indices() {
        match c {
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return &code[..at];
        }
    }
    code
}

/// The names of `, name = value` at the outermost level of what follows a key.
fn named(arguments: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut depth = 0;
    let mut fresh = false;
    let mut word = String::new();
    let mut characters = arguments.chars().peekable();
    while let Some(c) = characters.next() {
        match c {
            '(' | '[' | '{' => depth += 1,
            ')' | ']' | '}' => depth -= 1,
            ',' if depth == 0 => {
                fresh = true;
                word.clear();
            }
            '=' if depth == 0 && fresh && characters.peek() != Some(&'=') => {
                names.insert(word.trim().to_owned());
                fresh = false;
            }
            _ if fresh && depth == 0 => word.push(c),
            _ => {}
        }
    }
    names
}
