//! What is the custom of box scores rather than a rule: a batter's runners left on base, and pitches by day.

use benchbook_stats::code::Preset;
use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::{Position, Side};
use benchbook_stats::log::{Attempt, Call, Cause, Event, How, Move, Out, Start, Status};
use benchbook_stats::season::{DayOfPitches, Season};
use benchbook_tests::scorer::{PETER, Scorer, VISITING_STARTER, forced, to};

fn left_by(book: &Scorer, id: u32) -> u32 {
    let lines = book.game().batting(Side::Visitors);
    lines.iter().find(|l| l.player.is_some_and(|p| p.0 == id)).map_or(0, |l| l.left_on_base)
}

/// As the glossary on the MLB site has it: the runners on base after a batter's out at the plate, with any number of outs.
#[test]
fn a_batter_leaves_who_is_on_base_after_his_out() {
    let mut book = Scorer::nine();
    book.triple(&[]).walk().strikeout();
    assert_eq!(left_by(&book, 3), 2, "the first out");
    book.fly_out(&[to(Third, Home)]);
    assert_eq!(left_by(&book, 4), 0, "a sacrifice fly: he did his part");
    book.single(&[to(First, Third)]).choice(&[forced(First, Second)]);
    assert_eq!(left_by(&book, 5), 0, "a single");
    assert_eq!(left_by(&book, 6), 1, "the third out is his choice's: the runner on third, not himself on first");
    let total = &book.game().box_score().sides[0].batting_total;
    assert_eq!(total.left_on_base, 2, "the side's: those on base at the third out, not the sum");
    assert_eq!(book.game().line_score().side(Side::Visitors).left_on_base, 2);
}

#[test]
fn who_makes_no_out_leaves_nobody() {
    let mut book = Scorer::nine();
    book.walk().walk().error(Position::Shortstop, &[to(Second, Third), to(First, Second)]);
    assert_eq!([1, 2, 3].map(|id| left_by(&book, id)), [0, 0, 0]);
    // Struck out and safe: no out, so nobody is left.
    let mut book = Scorer::nine();
    book.double(&[]).strikeout_reaches(Cause::WildPitch, &[], &[]);
    assert_eq!(left_by(&book, 2), 0);
    // A runner put out on the bases for the third out is nobody's turn at the plate.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk().walk();
    let picked =
        Out { attempt: Some(Attempt::Pickoff), ..Out::new(How::Tag, First, &[Position::Pitcher, Position::FirstBase]) };
    book.running(&[Move::out(Start::First, picked)]);
    assert_eq!((1..=9).map(|id| left_by(&book, id)).sum::<u32>(), 0);
    assert_eq!(book.game().box_score().sides[0].batting_total.left_on_base, 1);
}

fn season(book: &Scorer) -> Season {
    let mut season = Season::new();
    season.add(book.game());
    season
}

fn day_of(season: &Season, side: Side, book: &Scorer, who: benchbook_stats::team::PlayerId) -> DayOfPitches {
    let name = book.game().label(who);
    season.teams[book.game().team_name(side)].players[&name].workload[""]
}

/// A day on which pitches were missed says so: the count is at least that.
#[test]
fn a_day_with_missed_pitches_says_so() {
    let mut book = Scorer::nine();
    book.record(Event::Team { side: Side::Visitors, name: "Reed Lane".into() });
    book.record(Event::Team { side: Side::Home, name: "Salt Yard".into() });
    book.pitch(Call::Ball).pitch(Call::CalledStrike).pitch(Call::SwingingStrike).pitch(Call::SwingingStrike);
    let seen = DayOfPitches { pitches: 4, incomplete: false };
    assert_eq!(day_of(&season(&book), Side::Home, &book, PETER), seen);
    // The result alone was seen.
    book.strikeout();
    let missed = DayOfPitches { pitches: 4, incomplete: true };
    assert_eq!(day_of(&season(&book), Side::Home, &book, PETER), missed);
    // Another game of that day is complete; the day is not.
    let mut both = season(&book);
    let mut second = Scorer::nine();
    second.record(Event::Team { side: Side::Home, name: "Salt Yard".into() });
    second.pitch(Call::Ball);
    both.add(second.game());
    let sum = DayOfPitches { pitches: 5, incomplete: true };
    assert_eq!(day_of(&both, Side::Home, &book, PETER), sum);
}

/// A game called before it was official counts in no average (OBR 9.03(e)), but the arm has thrown.
#[test]
fn pitches_of_a_game_that_was_not_official_count() {
    let mut book = Scorer::by_code(Preset::Baseball9.code());
    book.record(Event::Team { side: Side::Visitors, name: "Reed Lane".into() });
    book.record(Event::Team { side: Side::Home, name: "Salt Yard".into() });
    for _ in 0..3 {
        book.count(0, 3);
    }
    book.count(2, 0).status(Status::Called { why: "rain".into() });
    let season = season(&book);
    let thrown = |who, side| day_of(&season, side, &book, who).pitches;
    assert_eq!((thrown(PETER, Side::Home), thrown(VISITING_STARTER, Side::Visitors)), (9, 2));
    let pitcher = &season.teams["Salt Yard"].players[&book.game().label(PETER)];
    assert_eq!(pitcher.pitching.line.pitches, 0);
}
