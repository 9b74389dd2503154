//! The charts' data: where batted balls went, and each pitcher's pitches inning by inning.

use std::collections::BTreeMap;

use benchbook_stats::field::{Base, Count, Position, Side};
use benchbook_stats::file;
use benchbook_stats::game::{Game, TurnKind};
use benchbook_stats::log::{Action, Batted, Call, Cause, Event, How, InPlay, Move, Out, Spot, Start, Trajectory};
use benchbook_stats::propose::usual_spot;
use benchbook_stats::spray::{Fate, Placed};
use benchbook_tests::scorer::{ROGER, Scorer, ball, to};

fn harbor() -> Game {
    let text = include_str!("games/harbor-league.benchbook.json");
    Game::replay(file::read(text).expect("the game file reads").log)
}

#[test]
fn the_paper_game_has_every_batted_ball_once() {
    let game = harbor();
    let batted = game.plays().filter(|p| p.turn.is_some_and(|t| t.kind == TurnKind::InPlay) && !p.nullified).count();
    let sprays: Vec<_> = Side::BOTH.into_iter().flat_map(|side| game.spray(side)).collect();
    assert_eq!(sprays.iter().map(|s| s.balls.len()).sum::<usize>(), batted);
    for side in Side::BOTH {
        let lines: BTreeMap<_, _> = game.batting(side).into_iter().map(|l| (l.player, l)).collect();
        for spray in game.spray(side) {
            let line = &lines[&Some(spray.player)];
            let count = |fate| spray.balls.iter().filter(|b| b.fate == fate).count() as u32;
            assert_eq!(count(Fate::Hit), line.hits, "{}", spray.name);
            assert_eq!(count(Fate::Error), line.reached_on_error, "{}", spray.name);
            assert_eq!(Some(spray.place), line.place);
        }
    }
}

fn put_in_play(book: &mut Scorer, spot: Option<Spot>, by: Position) {
    let ball = Batted { spot, ..ball(Trajectory::Ground, by) };
    let moves = vec![Move::out(Start::Batter, Out::new(How::Force, Base::First, &[by, Position::FirstBase]))];
    let action = Action { moves, misplays: Vec::new() };
    book.record(Event::InPlay(InPlay { ball, action, kind: None, speed: None, pitches_missed: false }));
}

#[test]
fn a_ball_without_a_point_lies_at_its_fielder_and_says_so() {
    let mut book = Scorer::nine();
    let touched = Spot { x: -20, y: 130 };
    put_in_play(&mut book, Some(touched), Position::Shortstop);
    put_in_play(&mut book, None, Position::Shortstop);
    // The Plate gives the fielder's usual spot where no other was touched.
    put_in_play(&mut book, Some(usual_spot(Position::Shortstop)), Position::Shortstop);
    let sprays = book.game().spray(Side::Visitors);
    let balls: Vec<_> = sprays.iter().flat_map(|s| &s.balls).map(|b| (b.spot, b.placed, b.fate)).collect();
    let post = usual_spot(Position::Shortstop);
    assert_eq!(
        balls,
        [
            (touched, Placed::Touched, Fate::Out),
            (post, Placed::ByFielder, Fate::Out),
            (post, Placed::ByFielder, Fate::Out)
        ]
    );
}

#[test]
fn hits_outs_errors_and_choices_are_told_apart() {
    let mut book = Scorer::nine();
    book.double(&[])
        .error(Position::ThirdBase, &[])
        .choice(&[to(Base::First, Base::Third), to(Base::Second, Base::Home)])
        .fly_out(&[]);
    let sprays = book.game().spray(Side::Visitors);
    let fates: Vec<_> = sprays.iter().flat_map(|s| &s.balls).map(|b| b.fate).collect();
    assert_eq!(fates, [Fate::Hit, Fate::Error, Fate::Safe, Fate::Out]);
    assert!(sprays[4].balls.is_empty(), "who put nothing in play is listed all the same");
}

#[test]
fn the_strips_of_the_paper_game_add_up_to_the_pitchers_lines() {
    let game = harbor();
    for side in Side::BOTH {
        let strips = game.pitch_strips(side);
        for line in game.pitching(side) {
            let strip = strips.iter().find(|s| Some(s.pitcher) == line.player).expect("pitched");
            let total = strip.total();
            assert_eq!((total.pitches, total.strikes, total.balls), (line.pitches, line.strikes, line.balls));
            let by_inning: Vec<_> = strip.innings.iter().map(|i| (i.inning, i.pitches)).collect();
            assert_eq!(by_inning, line.by_inning, "{}", line.name);
            assert_eq!(total.incomplete, line.pitches_incomplete);
            assert!(total.first_pitch_strikes <= total.first_pitches && total.first_pitches <= line.batters_faced);
        }
    }
}

#[test]
fn first_pitches_are_those_of_a_turn_and_of_who_threw_them() {
    let mut book = Scorer::nine();
    book.pitch(Call::CalledStrike).pitch(Call::Ball).single(&[]); // strike
    book.pitch(Call::Ball).relieve(ROGER).pitch(Call::SwingingStrike).fly_out(&[]); // ball, by the one who left
    book.fly_out(&[]); // put in play: a strike
    let strips = book.game().pitch_strips(Side::Home);
    let tally = |at: usize| (strips[at].innings[0].first_pitches, strips[at].innings[0].first_pitch_strikes);
    assert_eq!([tally(0), tally(1)], [(2, 1), (1, 1)]);
    assert_eq!([strips[0].total().pitches, strips[1].total().pitches], [4, 3]);
}

#[test]
fn pitches_that_were_missed_are_marked_and_their_first_is_not_guessed() {
    let mut book = Scorer::nine();
    book.pitch(Call::Ball).record(Event::SetCount(Count::new(2, 1)));
    let strip = |book: &Scorer| book.game().pitch_strips(Side::Home)[0].innings[0];
    assert!(strip(&book).incomplete, "while the turn goes on");
    book.fly_out(&[]);
    assert_eq!((strip(&book).first_pitches, strip(&book).pitches), (0, 2));
    book.walk(); // known by its result alone
    assert_eq!((strip(&book).first_pitches, strip(&book).pitches), (0, 2));
    book.running(&[Move::safe(Start::First, Base::Second, Cause::Steal)]).single(&[]);
    assert_eq!((strip(&book).first_pitches, strip(&book).first_pitch_strikes), (1, 1));
}
