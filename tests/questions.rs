//! Matters of judgment: asked once where the rules leave them open, never where the entries answer; the usual answer
//! first, and the same with no answer as with the usual one.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::game::Game;
use benchbook_stats::log::{Cause, Judgment, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_stats::log::{Entry, Event, How};
use benchbook_stats::ruling::question::{Asked, Question};
use benchbook_stats::team::PlayerId;
use benchbook_stats::words::Language;
use benchbook_tests::scorer::{ROGER, SIERRA, Scorer, ball, by, then, to};

/// The one open question of the game.
fn only(game: &Game) -> Question {
    let mut questions = game.questions();
    assert_eq!(questions.len(), 1, "{questions:#?}");
    questions.remove(0)
}

/// Each answer changes the book or leaves it; the first leaves it.
fn answers_hold(game: &Game, question: &Question) {
    let with = |judgment: &Judgment| {
        let mut game = game.clone();
        let event = Event::Judgment(judgment.clone());
        game.record(Entry { id: game.next_id(), at: None, event }).expect("an answer fits");
        game
    };
    assert!(question.is_open());
    let usual = with(&question.answers[0]);
    assert!(usual.box_score() == game.box_score(), "the usual answer stands by itself: {:?}", question.asked);
    let other = with(&question.answers[1]);
    assert!(other.box_score() != game.box_score(), "the other changes something: {:?}", question.asked);
    // Answered, it is still listed, with what was said, and can be answered again.
    let asked_again = only(&other);
    assert_eq!((asked_again.given, &asked_again.answers), (Some(1), &question.answers));
    let said = Language::ALL.map(|language| question.asked.said(language, &|id| format!("Batter {}", id.0)));
    assert!(said.iter().all(|words| words.ends_with('?')), "{said:?}");
    assert_ne!(said[0], said[1]);
}

#[test]
fn nothing_is_asked_of_plain_plays() {
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::Steal)]).running(&[by(Second, Third, Cause::WildPitch)]);
    book.fly_out(&[to(Third, Home)]).error(Position::Shortstop, &[]).strikeout().strikeout();
    assert_eq!(book.game().questions(), []);
}

#[test]
fn a_bunt_that_moves_a_runner_up() {
    let mut book = Scorer::nine();
    book.single(&[]);
    let out = Out::new(How::Force, First, &[Position::Pitcher, Position::FirstBase]);
    let bunt = ball(Trajectory::Bunt, Position::Pitcher);
    book.in_play(bunt, &[to(First, Second)], Move::out(Start::Batter, out), &[]);
    let question = only(book.game());
    assert_eq!(question.asked, Asked::BuntedForHit { batter: PlayerId(2) });
    answers_hold(book.game(), &question);
}

#[test]
fn a_run_on_an_error() {
    let mut book = Scorer::nine();
    book.triple(&[]).error(Position::Shortstop, &[by(Third, Home, Cause::Error(0))]);
    let question = only(book.game());
    assert_eq!((&question.asked, question.rule), (&Asked::WouldHaveScored { runner: PlayerId(1) }, "9.04(a)(3)"));
    answers_hold(book.game(), &question);
    // With two outs the rule decides.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).error(Position::Shortstop, &[by(Third, Home, Cause::Error(0))]);
    assert_eq!(book.game().questions(), []);
}

#[test]
fn a_fly_dropped_with_a_runner_on_third() {
    let mut book = Scorer::nine();
    book.triple(&[]).reaches_on(Misplay::new(Position::LeftField, MisplayKind::DroppedFly), &[to(Third, Home)]);
    let question = only(book.game());
    assert_eq!((&question.asked, question.rule), (&Asked::WouldHaveScoredAfterCatch, "9.08(d)"));
    answers_hold(book.game(), &question);
}

#[test]
fn a_runner_who_goes_home_while_they_throw_elsewhere() {
    let mut book = Scorer::nine();
    book.double(&[]);
    let home = then(to(Second, Third), Home, Cause::Throw);
    let batter = Move::safe(Start::Batter, First, Cause::Play);
    book.in_play(ball(Trajectory::Line, Position::LeftField), &[home], batter, &[]);
    let question = only(book.game());
    assert_eq!((&question.asked, question.rule), (&Asked::KeptGoing { runner: PlayerId(1) }, "9.04(c)"));
    answers_hold(book.game(), &question);
}

#[test]
fn a_run_that_a_passed_ball_helped() {
    // On second by a passed ball, he scores on a single: would he have scored from first? Settled with the inning.
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::PassedBall)]).single(&[to(Second, Home)]);
    assert_eq!(book.game().questions(), [], "not while the inning may still answer it");
    book.strikeout().strikeout().strikeout();
    let question = only(book.game());
    assert_eq!((&question.asked, question.rule), (&Asked::Earned { runner: PlayerId(1) }, "9.16(d)"));
    answers_hold(book.game(), &question);
}

#[test]
fn the_most_effective_reliever() {
    // The starter goes three innings; two relievers share the rest; the home side leads from the first.
    let mut book = Scorer::nine();
    book.side_retired().home_run().side_retired().halves(4);
    book.relieve(ROGER).side_retired().halves(5).relieve(SIERRA).side_retired();
    while !matches!(book.game().situation().phase, benchbook_stats::game::Phase::Over(_)) {
        book.side_retired();
    }
    let question = only(book.game());
    assert_eq!((&question.asked, question.rule), (&Asked::WinningPitcher, "9.17(b)"));
    assert_eq!(question.answers.len(), 2);
    answers_hold(book.game(), &question);
}
