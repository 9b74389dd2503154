//! The story of a game: the paper game, and small games for each way to end. Every number told is one of the box score.

use benchbook_stats::account::story::{Deed, Ended, Part, Sentence, Story, Who};
use benchbook_stats::code::Preset;
use benchbook_stats::field::Base::{First, Home, Third};
use benchbook_stats::field::{Half, Side};
use benchbook_stats::file;
use benchbook_stats::game::Game;
use benchbook_stats::log::{Cause, Status};
use benchbook_stats::ruling::BatterResult;
use benchbook_stats::words::Language;
use benchbook_tests::scorer::{PETER, ROGER, Scorer, by, to};

fn harbor() -> Game {
    let text = include_str!("games/harbor-league.benchbook.json");
    Game::replay(file::read(text).expect("the game file reads").log)
}

fn told(game: &Game, language: Language) -> Vec<String> {
    let who = Who { player: &|id| game.label(id), team: &|side| game.team_name(side).to_owned() };
    Story::of(game).map(|story| story.said(language, who)).unwrap_or_default()
}

fn english(game: &Game) -> Vec<String> {
    told(game, Language::English)
}

fn how(game: &Game) -> Ended {
    match Story::of(game).expect("a story").sentences[0] {
        Sentence::Result(result) => result.how,
        _ => panic!("the result comes first"),
    }
}

#[test]
fn the_paper_game() {
    let game = harbor();
    assert_eq!(
        english(&game),
        [
            "Pier Nine Lanterns beat Millrace Otters 7–6.",
            "The teams were tied 6–6.",
            "In the bottom of the 9th Delphine Abara won it for Pier Nine Lanterns with a two-base hit, 7–6.",
            "Nadia Corvane was the winning pitcher: 1 inning, 1 hit, 1 run (1 earned), no walks, 1 strikeout.",
            "Yusra Halvorsen was the losing pitcher: 1⅓ innings, no hits, 1 run (1 earned), 1 walk, 1 strikeout.",
            "Delphine Abara went 3 for 5, 1 two-base hit, 1 home run, 2 runs batted in, 1 run scored.",
            "Dov Marchessault went 1 for 2, 1 two-base hit, 3 runs batted in.",
            "Lena Brightwater went 2 for 3, 1 run scored.",
        ]
    );
    let spanish = told(&game, Language::Spanish);
    assert_eq!(spanish[0], "Victoria de Pier Nine Lanterns sobre Millrace Otters, 7–6.");
    assert!(spanish.iter().any(|s| s.starts_with("Delphine Abara se fue de 5-3, 1 doble, 1 jonrón")), "{spanish:?}");
}

#[test]
fn every_number_is_one_of_the_box_score() {
    let game = harbor();
    let score = game.box_score();
    let mut lines = 0;
    for sentence in Story::of(&game).expect("a story").sentences {
        match sentence {
            Sentence::Pitcher { line, .. } => {
                let of = score.sides.iter().flat_map(|s| &s.pitching).find(|l| l.player == Some(line.pitcher)).unwrap();
                assert_eq!(
                    (line.outs, line.hits, line.runs, line.earned_runs, line.walks, line.strikeouts),
                    (of.outs, of.hits, of.runs, of.earned_runs, of.walks, of.strikeouts)
                );
                lines += 1;
            }
            Sentence::Batter(line) => {
                let of = score.sides.iter().flat_map(|s| &s.batting).find(|l| l.player == Some(line.batter)).unwrap();
                assert_eq!(
                    (line.hits, line.at_bats, line.doubles, line.home_runs, line.runs_batted_in, line.runs),
                    (of.hits, of.at_bats, of.doubles, of.home_runs, of.runs_batted_in, of.runs)
                );
                lines += 1;
            }
            _ => {}
        }
    }
    assert_eq!(lines, 5);
}

#[test]
fn a_game_that_goes_on_has_no_story() {
    let mut book = Scorer::nine();
    assert_eq!(Story::of(book.game()), None);
    book.home_run().halves(4);
    assert_eq!(Story::of(book.game()), None);
    book.status(Status::Delayed { why: String::new() });
    assert_eq!(Story::of(book.game()), None);
}

#[test]
fn a_shutout_by_the_home_side() {
    let mut book = Scorer::nine();
    book.side_retired().walk().single(&[to(First, Third)]);
    book.running(&[by(Third, Home, Cause::WildPitch)]).halves(16);
    let game = book.game();
    let words = english(game);
    assert_eq!(words[0], "Home beat Visitors 1–0.");
    assert_eq!(words[1], "In the bottom of the 1st Batter 1 scored on a wild pitch and put Home ahead for good, 1–0.");
    assert!(
        words[2].starts_with("Batter 1 pitched the whole game and won it: 9 innings, no hits, no runs, no walks, 27 ")
    );
    assert_eq!(
        words[3],
        "Batter 1 pitched the whole game and lost it: 8 innings, 1 hit, 1 run (1 earned), 1 walk, 24 strikeouts."
    );
    assert_eq!(
        words[4..],
        [
            "A shutout for Batter 1: Visitors did not score.",
            "Visitors did not get a hit.",
            "Neither side made an error."
        ]
    );
    let story = Story::of(game).expect("a story");
    assert!(story.sentences.contains(&Sentence::NoRuns { side: Side::Visitors, pitcher: Some(PETER) }));
}

#[test]
fn from_behind_and_saved() {
    // The visitors lead 1-0; the home side goes ahead in the 8th on an error, and a reliever keeps it.
    let mut book = Scorer::nine();
    book.home_run().halves(15);
    book.walk().walk();
    book.error(
        benchbook_stats::field::Position::Shortstop,
        &[to(First, Third), to(benchbook_stats::field::Base::Second, Home)],
    );
    book.single(&[to(First, Third), to(Third, Home)]).side_retired();
    book.relieve(ROGER).side_retired();
    let game = book.game();
    let story = Story::of(game).expect("a story");
    let words = english(game);
    assert_eq!(words[0], "Home beat Visitors 2–1.");
    assert_eq!(words[1], "The teams were tied 1–1.");
    assert_eq!(words[2], "In the bottom of the 8th Batter 7 put Home ahead for good with a single, 2–1.");
    let ahead = story.sentences.iter().find_map(|s| match s {
        Sentence::Ahead(ahead) => Some(*ahead),
        _ => None,
    });
    let ahead = ahead.expect("who went ahead");
    assert_eq!((ahead.side, ahead.inning, ahead.half), (Side::Home, 8, Half::Bottom));
    assert!(matches!(ahead.on, Deed::Batted { result: BatterResult::Hit(1), .. }) && !ahead.ended_it);
    let save = story
        .sentences
        .iter()
        .any(|s| matches!(s, Sentence::Pitcher { part: Part::Save, line } if line.pitcher == ROGER));
    assert!(save, "{words:?}");
    assert!(words.contains(&"Home made no error.".into()) && !words.iter().any(|w| w.contains("did not score")));
}

#[test]
fn a_run_driven_in_from_behind_in_one_play() {
    let mut book = Scorer::nine();
    book.home_run().halves(17);
    book.walk().walk().home_run();
    let words = english(book.game());
    assert_eq!(
        words[..3],
        [
            "Home beat Visitors 3–1.".to_owned(),
            "Home trailed 0–1.".to_owned(),
            "In the bottom of the 9th Batter 9 won it for Home with a home run, 3–1.".to_owned(),
        ]
    );
}

#[test]
fn longer_than_planned_and_by_the_lead() {
    let mut book = Scorer::nine();
    book.halves(18).home_run().halves(2);
    assert_eq!(english(book.game())[0], "Visitors beat Home 2–0 in 10 innings.");

    let mut book = Scorer::by_code(Preset::Fastpitch7.code());
    for _ in 0..15 {
        book.home_run();
    }
    book.side_retired().halves(5);
    assert_eq!(how(book.game()), Ended::Mercy, "{:?}", book.game().situation());
    assert!(english(book.game())[0].contains("by the lead the rules of play set"));
}

#[test]
fn ties_and_games_that_were_called() {
    // Five innings make a regulation game by this code (OBR 7.01(c)).
    let called = || Status::Called { why: "rain".into() };
    let mut book = Scorer::nine();
    book.halves(3).home_run().status(called());
    assert_eq!(how(book.game()), Ended::CalledTooEarly);
    assert_eq!(
        english(book.game()),
        [
            "The umpire called the game in the bottom of the 2nd, before it was long enough to count. The score was Visitors \
          0, Home 1."
        ]
    );

    let mut book = Scorer::nine();
    book.home_run().halves(12).walk().status(called());
    assert_eq!(how(book.game()), Ended::Called);
    let words = english(book.game());
    assert_eq!(words[0], "Visitors beat Home 1–0; the umpire called the game in the top of the 7th.");
    assert!(words.iter().any(|w| w.starts_with("Batter 1 pitched the whole game and won it")), "{words:?}");

    let mut book = Scorer::nine();
    book.home_run().side_retired().home_run().halves(11).status(called());
    let words = english(book.game());
    assert_eq!(words[0], "Visitors and Home tied 1–1; the umpire called the game in the bottom of the 6th.");
    assert!(!words.iter().any(|w| w.contains("ahead for good") || w.contains("winning pitcher")), "{words:?}");

    let mut book = Scorer::nine();
    book.home_run().halves(10).status(Status::Final);
    assert_eq!(english(book.game())[0], "Visitors beat Home 1–0; the game ended in the bottom of the 5th.");
}

#[test]
fn forfeited_and_suspended() {
    let mut book = Scorer::nine();
    book.status(Status::Forfeited { winner: Side::Home, why: String::new() });
    assert_eq!(english(book.game()), ["Home won by forfeit over Visitors. The score was 0–0 when play stopped."]);

    // Forfeited to the side that was behind: nobody went ahead for good, and nobody has the win (OBR 9.03(e)(2)).
    let mut book = Scorer::nine();
    book.home_run().halves(12);
    book.status(Status::Forfeited { winner: Side::Home, why: String::new() });
    let words = english(book.game());
    assert_eq!(words[0], "Home won by forfeit over Visitors. The score was 0–1 when play stopped.");
    assert!(!words.iter().any(|w| w.contains("ahead") || w.contains("won it") || w.contains("lost it")), "{words:?}");

    let mut book = Scorer::nine();
    book.home_run().halves(3).walk().status(Status::Suspended { why: String::new() });
    assert_eq!(
        english(book.game()),
        ["The game is suspended in the bottom of the 2nd and is to be continued: Visitors 1, Home 0."]
    );
}
