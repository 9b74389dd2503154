//! The sheet of the invented game in `tests/games`, whose marks were written on paper beside it.

use super::draw::{self, Ink, Shape};
use super::*;
use crate::file;

fn harbor() -> Game {
    let text = include_str!("../../../tests/games/harbor-league.benchbook.json");
    Game::replay(file::read(text).expect("the game file reads").log)
}

fn marks(sheet: &Sheet, inning: u8) -> Vec<String> {
    let of = sheet.cells.iter().filter(|c| sheet.columns[c.column].inning == inning);
    of.filter_map(|c| c.mark.as_ref().map(Mark::to_string)).collect()
}

#[test]
fn the_marks_are_those_on_paper() {
    let game = harbor();
    let visitors = game.sheet(Side::Visitors);
    assert_eq!(marks(&visitors, 1), ["6-3", "1B", "K", "F9"]);
    assert_eq!(marks(&visitors, 2), ["K", "K", "6-4-3"]);
    let home = game.sheet(Side::Home);
    assert_eq!(marks(&home, 1), ["BB", "SH", "4-3", "K"]);
    assert_eq!(marks(&home, 4), ["HR", "HBP", "SH", "IF4", "K", "E6", "F7"]);
}

/// Every turn's marks as written on paper beside the game; there a sacrifice fly names the fly too, "SF F8".
#[test]
fn every_turn_is_marked_as_on_paper() {
    let paper = include_str!("../../../tests/games/harbor-league.expected.json");
    let paper: serde_json::Value = serde_json::from_str(paper).expect("the expectation reads");
    let game = harbor();
    let sheets = Side::BOTH.map(|side| game.sheet(side));
    let mut cells: Vec<&Cell> = sheets.iter().flat_map(|s| &s.cells).filter(|c| c.entry.is_some()).collect();
    cells.sort_by_key(|c| c.entry);
    let turns = paper["turns"].as_array().expect("turns");
    assert_eq!(turns.len(), cells.len());
    for (turn, cell) in turns.iter().zip(cells) {
        let written = turn["marks"].as_str().expect("marks").replace("SF F", "SF").replace(' ', "");
        let mark = cell.mark.as_ref().expect("a mark");
        assert!(written.contains(&mark.to_string()), "turn {}: {mark} for {written}", turn["turn"]);
        assert_eq!(
            matches!(mark, Mark::Strikeout { looking: true }),
            written.contains("(called)"),
            "turn {}",
            turn["turn"]
        );
        assert_eq!(cell.runs_batted_in, turn["runs_batted_in"].as_u64().expect("runs batted in") as u8);
    }
}

#[test]
fn every_turn_has_its_square() {
    let game = harbor();
    let sheets = Side::BOTH.map(|side| game.sheet(side));
    let turns: usize = sheets.iter().map(|s| s.cells.iter().filter(|c| c.entry.is_some()).count()).sum();
    assert_eq!(turns, 78);
    for sheet in &sheets {
        for cell in &sheet.cells {
            let same = sheet.cells.iter().filter(|c| (c.place, c.column) == (cell.place, cell.column)).count();
            assert_eq!(same, 1, "one square, one turn");
        }
        let outs = sheet.cells.iter().filter(|c| c.out.is_some()).count();
        assert_eq!(outs, if sheet.side == Side::Visitors { 27 } else { 25 });
    }
    let pitches: usize = sheets.iter().flat_map(|s| &s.cells).map(|c| c.pitches.len()).sum();
    assert_eq!(pitches, 280);
}

#[test]
fn sums_agree_with_the_line_score() {
    let game = harbor();
    let score = game.line_score();
    for side in Side::BOTH {
        let sheet = game.sheet(side);
        let sums: Vec<Sums> = sheet.columns.iter().filter_map(|c| c.sums).collect();
        assert_eq!(sums.iter().map(|s| s.runs).sum::<u16>(), score.side(side).runs);
        assert_eq!(sums.iter().map(|s| u32::from(s.hits)).sum::<u32>(), score.side(side).hits);
        assert_eq!(sums.iter().map(|s| u32::from(s.errors)).sum::<u32>(), score.side(side.other()).errors);
        assert_eq!(
            sums.iter().filter_map(|s| s.left_on_base).map(u32::from).sum::<u32>(),
            score.side(side).left_on_base
        );
        let runs = sheet.cells.iter().filter(|c| c.run.is_some()).count();
        assert_eq!(runs, usize::from(score.side(side).runs));
    }
}

#[test]
fn outs_are_numbered_within_their_half() {
    let sheet = harbor().sheet(Side::Home);
    for column in 1..=9 {
        let mut numbers: Vec<u8> = sheet
            .cells
            .iter()
            .filter(|c| sheet.columns[c.column].inning == column)
            .filter_map(|c| c.out.as_ref().map(|o| o.number))
            .collect();
        numbers.sort_unstable();
        assert_eq!(numbers, (1..=numbers.len() as u8).collect::<Vec<_>>(), "inning {column}");
    }
}

#[test]
fn a_called_third_strike_is_a_reversed_k() {
    let game = harbor();
    let sheet = game.sheet(Side::Visitors);
    let looking = sheet.cells.iter().find(|c| c.mark == Some(Mark::Strikeout { looking: true })).expect("there is one");
    assert!(draw::shapes(looking).iter().any(|s| matches!(s, Shape::Mirrored(_, k, _, Ink::Mark) if k == "K")));
    assert!(draw::svg(looking).contains("scale(-1 1)"));
}

#[test]
fn no_shape_leaves_its_square() {
    for side in Side::BOTH {
        for shape in harbor().sheet(side).cells.iter().flat_map(draw::shapes) {
            let inside =
                |points: &[draw::Point]| points.iter().all(|(x, y)| (0..=100).contains(x) && (0..=100).contains(y));
            match &shape {
                Shape::Line(points, _) | Shape::Area(points, _) => assert!(inside(points), "{shape:?}"),
                Shape::Circle(at, ..) | Shape::Text(at, ..) | Shape::Mirrored(at, ..) => {
                    assert!(inside(&[*at]), "{shape:?}");
                }
            }
        }
    }
}

#[test]
fn a_game_not_begun_has_an_empty_sheet() {
    let sheet = Game::new().sheet(Side::Home);
    assert!(sheet.cells.is_empty() && sheet.columns.is_empty() && sheet.rows.is_empty());
}
