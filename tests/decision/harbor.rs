//! The whole game worked out on paper (games/harbor-league.paper.md).

use benchbook_stats::file;
use benchbook_stats::game::Game;
use benchbook_stats::ruling::decision::decisions;
use serde_json::Value;

#[test]
fn decisions_are_the_papers() {
    let game = Game::replay(file::read(include_str!("../games/harbor-league.benchbook.json")).expect("whole").log);
    let paper: Value = serde_json::from_str(include_str!("../games/harbor-league.expected.json")).expect("JSON");
    let (paper, decided) = (&paper["decisions"], decisions(&game));
    for (theirs, ours) in [("winner", decided.win), ("loser", decided.loss)] {
        let ours = ours.expect("a decision");
        assert_eq!(paper[theirs]["player"].as_u64(), Some(u64::from(ours.pitcher.0)), "{theirs}");
        assert_eq!(paper[theirs]["rule"].as_str(), Some(ours.rule), "{theirs}");
    }
    assert!(paper["save"].is_null() && decided.save.is_none());
    let blown: Vec<String> = decided.blown_saves.iter().map(|d| game.label(d.pitcher)).collect();
    let theirs: Vec<&str> = paper["customary_not_obr"]["blown_saves"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(Value::as_str)
        .collect();
    assert_eq!(blown, theirs);
    assert!(decided.holds.is_empty() && decided.shutouts.is_empty() && decided.complete_games.is_empty());
}
