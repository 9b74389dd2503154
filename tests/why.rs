//! Every number that the Book and the desk print answers "why?", over the paper game and generated games of every code
//! of play: the plays shown add up to it, and each has a reason in words and a rule. `BENCHBOOK_GAMES` says how many games.

use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;

use benchbook_stats::account::why::{Batting, Catching, Number, Pitching, why};
use benchbook_stats::account::{Account, Grounds, PitcherCredit, Reason, Ruled, sentences};
use benchbook_stats::field::Side;
use benchbook_stats::file;
use benchbook_stats::game::Game;
use benchbook_stats::ruling::{Because, Credit};
use benchbook_stats::team::PlayerId;
use benchbook_stats::words::Language;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::generate::{Scribe, tell};

/// Every number of the box score and the line score, with what is printed.
fn numbers(game: &Game) -> Vec<(Number, u32)> {
    let (book, line) = (game.box_score(), game.line_score());
    let mut numbers = Vec::new();
    for side in Side::BOTH {
        let ours = book.side(side);
        for batter in &ours.batting {
            let who = batter.player.expect("a player's line");
            numbers.extend(Batting::ALL.map(|what| (Number::Batting(who, what), what.of(batter))));
        }
        for pitcher in &ours.pitching {
            let who = pitcher.player.expect("a player's line");
            numbers.extend(Pitching::ALL.map(|what| (Number::Pitching(who, what), what.of(pitcher))));
        }
        for fielder in &ours.fielding {
            let who = fielder.player.expect("a player's line");
            let credits = [
                (Credit::Putout, fielder.putouts),
                (Credit::Assist, fielder.assists),
                (Credit::Error, fielder.errors),
                (Credit::DoublePlay, fielder.double_plays),
                (Credit::TriplePlay, fielder.triple_plays),
            ];
            numbers.extend(credits.map(|(credit, printed)| (Number::Fielding(who, credit), printed)));
            numbers.extend(Catching::ALL.map(|what| (Number::Catching(who, what), what.of(fielder))));
            numbers.push((Number::InField(who), fielder.played.iter().map(|(_, outs)| outs.0).sum()));
        }
        let line = line.side(side);
        numbers.extend([
            (Number::HitsOf(side), line.hits),
            (Number::RunsOf(side), u32::from(line.runs)),
            (Number::ErrorsOf(side), line.errors),
            (Number::LeftOnBaseOf(side), line.left_on_base),
            (Number::EarnedAgainst(side), ours.pitching_total.earned_runs),
        ]);
    }
    numbers
}

fn has_words(reason: &Reason) -> bool {
    let player = |id: PlayerId| format!("Player {}", id.0);
    let said = [Language::English, Language::Spanish].map(|language| {
        let because = sentences::grounds(&reason.because, language);
        because.len() > 8 && because.ends_with('.') && sentences::heading(&reason.ruled, language, &player).len() > 8
    });
    said == [true, true] && !reason.rule.is_empty()
}

/// Asks every number why; how many had plays behind them.
fn ask_all(game: &Game, told: &dyn Fn() -> String) -> u32 {
    let account = Account::of(game);
    let mut with_plays = 0;
    for (number, printed) in numbers(game) {
        let evidence = why(game, &account, number);
        let shown: u32 = evidence.iter().map(|e| e.amount).sum();
        assert_eq!(shown, printed, "{number:?}: {shown} shown, {printed} printed. {}", told());
        for piece in &evidence {
            assert!(has_words(&piece.reason), "{number:?}: {piece:?} {}", told());
            let found = game.steps().iter().any(|step| step.entry == piece.entry);
            assert!(found, "{number:?}: there is no entry of {piece:?} {}", told());
        }
        with_plays += u32::from(!evidence.is_empty());
    }
    for reason in account.halves.iter().flat_map(|h| &h.lines).flat_map(|line| &line.reasons) {
        assert!(has_words(reason), "{reason:?} {}", told());
    }
    decisions(game, &account, told);
    with_plays
}

/// The letter beside a pitcher's name is among what is shown for it.
fn decisions(game: &Game, account: &Account, told: &dyn Fn() -> String) {
    for pitcher in Side::BOTH.into_iter().flat_map(|side| game.pitching(side)) {
        let expected = match pitcher.decision.as_deref() {
            Some("W") => PitcherCredit::Win,
            Some("L") => PitcherCredit::Loss,
            Some("S") => PitcherCredit::Save,
            _ => continue,
        };
        let evidence = why(game, account, Number::Decision(pitcher.player.expect("a player's line")));
        let shown = evidence.iter().any(|e| {
            matches!(e.reason.ruled, Ruled::Decision { credit, .. } if credit == expected) && has_words(&e.reason)
        });
        assert!(shown, "{expected:?} of {}: {evidence:?} {}", pitcher.name, told());
    }
}

#[test]
fn every_number_of_the_paper_game_has_its_plays_behind_it() {
    let text = include_str!("games/harbor-league.benchbook.json");
    let game = Game::replay(file::read(text).expect("the paper game").log);
    let with_plays = ask_all(&game, &String::new);
    println!("{} numbers, {with_plays} of them not 0", numbers(&game).len());
    assert!(with_plays > 200);
}

#[test]
fn every_number_of_generated_games_has_its_plays_behind_it() {
    let asked = Cell::new(0);
    over(games(4), |plan| {
        let game = Scribe::new(plan).finish();
        asked.set(asked.get() + ask_all(&game, &|| tell(&plan, &game)));
    });
    println!("{} numbers asked why", asked.get());
    assert!(asked.get() > 1000);
}

/// Of a game that still goes on, the pitches of the batter at the plate are shown too.
#[test]
fn a_game_that_goes_on_answers_as_well() {
    over(games(4), |plan| {
        let mut scribe = Scribe::new(plan);
        for _ in 0..60 + plan.seed % 90 {
            scribe.step();
        }
        let game = scribe.game();
        ask_all(game, &|| tell(&plan, game));
    });
}

/// The reasons are not a few that cover everything: the generated games bring up nearly all there are.
#[test]
fn reasons_of_every_kind_come_up() {
    let seen = RefCell::new(BTreeSet::new());
    over(games(4).max(200), |plan| {
        let account = Account::of(&Scribe::new(plan).finish());
        for reason in account.halves.iter().flat_map(|h| &h.lines).flat_map(|line| &line.reasons) {
            if let Grounds::Ruling(because) = reason.because {
                let because = match because {
                    Because::Misplayed { kind, .. } => format!("Misplayed {kind:?}"),
                    other => format!("{other:?}").split('(').next().unwrap_or_default().to_owned(),
                };
                seen.borrow_mut().insert((because, reason.rule));
            }
        }
    });
    let seen = seen.into_inner();
    println!("{} reasons: {seen:?}", seen.len());
    assert!(seen.len() >= 65, "{seen:?}");
}
