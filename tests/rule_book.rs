//! The rule book's own cases for OBR 9.03 to 9.15, each with its section (2024 edition, from memory).

use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Position, Side};
use benchbook_stats::lines::{BattingLine, FieldingLine, PitchingLine};
use benchbook_stats::log::{
    Attempt, Batted, Call, Cause, Event, How, Judgment, Leg, Misplay, MisplayKind, Move, Out, Pitch, Reached, Start,
    Trajectory,
};
use benchbook_stats::team::{Change, PlayerId, Role};
use benchbook_tests::scorer::{PETER, Scorer, ball, by, forced, tagged, then, to};

use Position::{Catcher, CenterField, FirstBase, LeftField, Pitcher, SecondBase, Shortstop, ThirdBase};

fn batter(book: &Scorer, id: u32) -> BattingLine {
    let lines = book.game().batting(if id < 100 { Side::Visitors } else { Side::Home });
    lines.into_iter().find(|l| l.player == Some(PlayerId(id))).expect("the player is on the card")
}

fn pitcher(book: &Scorer, id: PlayerId) -> PitchingLine {
    book.game().pitching(Side::Home).into_iter().find(|l| l.player == Some(id)).expect("he pitched")
}

/// The home side's fielder at a position: players 101 to 109 play 1 to 9.
fn fielder(book: &Scorer, position: Position) -> FieldingLine {
    let id = PlayerId(100 + u32::from(position.number()));
    book.game().fielding(Side::Home).into_iter().find(|l| l.player == Some(id)).expect("he is in the field")
}

fn proves(book: &Scorer) {
    for proof in book.game().box_score().prove() {
        assert!(proof.balances(), "{proof:?}");
    }
}

fn out(from: Start, how: How, at: Base, by: &[Position]) -> Move {
    Move::out(from, Out::new(how, at, by))
}

fn stealing(from: Base, at: Base, by: &[Position], attempt: Attempt) -> Move {
    Move::out(from.into(), Out { how: How::Tag, at, by: by.to_vec(), attempt: Some(attempt) })
}

/// Safe at first on the batted ball itself.
fn reaches(trajectory: Trajectory, by: Position, runners: &[Move], book: &mut Scorer) {
    book.in_play(ball(trajectory, by), runners, Move::safe(Start::Batter, First, Cause::Play), &[]);
}

/// A runner on third: a triple by the first batter.
fn on_third() -> Scorer {
    let mut book = Scorer::nine();
    book.triple(&[]);
    book
}

// ---- 9.04 Runs batted in ----

#[test]
fn rbi_on_a_hit_a_sacrifice_an_out_and_a_choice() {
    // 9.04(a)(1)
    let mut book = on_third();
    book.single(&[to(Third, Home)]);
    assert_eq!(batter(&book, 2).runs_batted_in, 1, "hit");
    let mut book = on_third();
    book.ground_out(&[to(Third, Home)]);
    assert_eq!(batter(&book, 2).runs_batted_in, 1, "infield out");
    let mut book = on_third();
    book.choice(&[to(Third, Home)]);
    assert_eq!(batter(&book, 2).runs_batted_in, 1, "fielder's choice");
    let mut book = on_third();
    book.fly_out(&[to(Third, Home)]);
    assert_eq!((batter(&book, 2).runs_batted_in, batter(&book, 2).sacrifice_flies), (1, 1), "sacrifice fly");
    let mut book = on_third();
    book.home_run();
    assert_eq!(batter(&book, 2).runs_batted_in, 2, "home run: the runner and himself");
    proves(&book);
}

#[test]
fn rbi_forced_in_with_the_bases_full() {
    // 9.04(a)(2)
    let full = || {
        let mut book = Scorer::nine();
        book.walk().walk().walk();
        book
    };
    let mut book = full();
    book.walk();
    assert_eq!(batter(&book, 4).runs_batted_in, 1, "walk");
    let mut book = full();
    book.hit_batter();
    assert_eq!(batter(&book, 4).runs_batted_in, 1, "hit by a pitch");
    let mut book = full();
    book.catcher_interference();
    assert_eq!(batter(&book, 4).runs_batted_in, 1, "interference");
    // A run that comes in on the same pitch without being forced is nobody's.
    let mut book = Scorer::nine();
    book.triple(&[]).count(3, 0);
    let mut ball_four = Pitch::new(Call::Ball);
    ball_four.action.moves.push(by(Third, Home, Cause::WildPitch));
    book.record(Event::Pitch(ball_four));
    assert_eq!((batter(&book, 2).walks, batter(&book, 2).runs_batted_in), (1, 0));
    assert_eq!(batter(&book, 1).runs, 1);
    proves(&book);
}

#[test]
fn rbi_on_an_error_is_for_a_runner_from_third_with_fewer_than_two_outs() {
    // 9.04(a)(3)
    let mut book = on_third();
    book.error(Shortstop, &[by(Third, Home, Cause::Error(0))]);
    let on = book.last();
    assert_eq!(batter(&book, 2).runs_batted_in, 1, "the usual answer: he would have scored");
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(1), yes: false });
    assert_eq!(batter(&book, 2).runs_batted_in, 0, "judged otherwise");
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).error(Shortstop, &[by(Third, Home, Cause::Error(0))]);
    assert_eq!(batter(&book, 4).runs_batted_in, 0, "two outs");
    let mut book = Scorer::nine();
    book.double(&[]).error(CenterField, &[by(Second, Home, Cause::Error(0))]);
    assert_eq!(batter(&book, 2).runs_batted_in, 0, "from second");
}

#[test]
fn no_rbi_on_a_ground_ball_double_play() {
    let start = || {
        let mut book = Scorer::nine();
        book.triple(&[]).walk();
        book
    };
    // 9.04(b)(1): force double play, then reverse force.
    let mut book = start();
    let force = [to(Third, Home), out(Start::First, How::Force, Second, &[Shortstop, SecondBase])];
    let at_first = out(Start::Batter, How::Force, First, &[Shortstop, SecondBase, FirstBase]);
    book.in_play(ball(Trajectory::Ground, Shortstop), &force, at_first, &[]);
    let line = batter(&book, 3);
    assert_eq!((line.runs_batted_in, line.grounded_into_double_plays, line.at_bats), (0, 1, 1));
    assert_eq!(batter(&book, 1).runs, 1);
    let mut book = start();
    let reverse = [to(Third, Home), out(Start::First, How::Tag, Second, &[FirstBase, Shortstop])];
    book.in_play(
        ball(Trajectory::Ground, FirstBase),
        &reverse,
        out(Start::Batter, How::Force, First, &[FirstBase]),
        &[],
    );
    assert_eq!((batter(&book, 3).runs_batted_in, batter(&book, 3).grounded_into_double_plays), (0, 1));
    proves(&book);
    // 9.04(b)(2): the throw that would have completed it is muffed at first.
    let mut book = start();
    let mut muff = Misplay::new(FirstBase, MisplayKind::Muff);
    muff.after = vec![Shortstop, SecondBase];
    book.in_play(
        ball(Trajectory::Ground, Shortstop),
        &[to(Third, Home), out(Start::First, How::Force, Second, &[Shortstop, SecondBase])],
        Move::safe(Start::Batter, First, Cause::Error(0)),
        &[muff],
    );
    assert_eq!(batter(&book, 3).runs_batted_in, 0);
    proves(&book);
}

#[test]
fn rbi_when_the_runner_keeps_going() {
    // 9.04(c): the ball is thrown elsewhere and the runner never stops.
    let mut book = Scorer::nine();
    book.double(&[]);
    let home = then(to(Second, Third), Home, Cause::Throw);
    book.in_play(ball(Trajectory::Line, LeftField), &[home], Move::safe(Start::Batter, First, Cause::Play), &[]);
    let on = book.last();
    assert_eq!(batter(&book, 2).runs_batted_in, 1);
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(1), yes: false });
    assert_eq!(batter(&book, 2).runs_batted_in, 0, "he stopped and started again");
}

// ---- 9.05, 9.06 Base hits ----

#[test]
fn no_hit_when_a_runner_is_forced_or_put_out_by_the_infield() {
    // 9.05(b)(1)
    let mut book = Scorer::nine();
    book.single(&[]);
    reaches(Trajectory::Ground, Shortstop, &[forced(First, Second)], &mut book);
    let line = batter(&book, 2);
    assert_eq!((line.hits, line.at_bats, line.fielders_choices), (0, 1, 1));
    // 9.05(b)(3): a runner who need not go is put out advancing one base.
    let mut book = Scorer::nine();
    book.double(&[]);
    reaches(Trajectory::Ground, Shortstop, &[tagged(Second, Third)], &mut book);
    assert_eq!((batter(&book, 2).hits, batter(&book, 2).fielders_choices), (0, 1));
    // An outfielder's throw that gets a runner takes no hit away.
    let mut book = Scorer::nine();
    book.double(&[]);
    let thrown_out = out(Start::Second, How::Tag, Home, &[LeftField, Catcher]);
    reaches(Trajectory::Line, LeftField, &[thrown_out], &mut book);
    assert_eq!(batter(&book, 2).hits, 1);
    proves(&book);
}

#[test]
fn a_hit_when_a_runner_is_touched_by_the_ball() {
    // 9.05(a)(5), and the putout goes to the fielder nearest (9.09(c)(2)).
    let mut book = Scorer::nine();
    book.single(&[]);
    reaches(Trajectory::Ground, SecondBase, &[out(Start::First, How::HitByBall, Second, &[])], &mut book);
    assert_eq!(batter(&book, 2).hits, 1);
    assert_eq!(fielder(&book, SecondBase).putouts, 1);
    proves(&book);
}

#[test]
fn value_of_a_hit() {
    // 9.06(a): what he gained by the hit itself, not on the throw.
    let mut book = Scorer::nine();
    book.double(&[]);
    let took_second = then(Move::safe(Start::Batter, First, Cause::Play), Second, Cause::Throw);
    book.in_play(ball(Trajectory::Line, LeftField), &[to(Second, Home)], took_second, &[]);
    assert_eq!((batter(&book, 2).hits, batter(&book, 2).doubles), (1, 0));
    // 9.06(d): out stretching it, credit for the last base held.
    let mut stretched = Move::safe(Start::Batter, Second, Cause::Play);
    stretched.out = Some(Out::new(How::Tag, Third, &[LeftField, ThirdBase]));
    book.in_play(ball(Trajectory::Line, LeftField), &[], stretched, &[]);
    assert_eq!((batter(&book, 3).hits, batter(&book, 3).doubles), (1, 1));
    proves(&book);
}

fn bottom_of_the_ninth() -> Scorer {
    let mut book = Scorer::nine();
    book.halves(17);
    book
}

#[test]
fn a_game_ending_hit_counts_what_the_winning_run_needed() {
    // 9.06(f): the runner from third needs one base, so a clean double is a single.
    let mut book = bottom_of_the_ninth();
    book.triple(&[]);
    let up = book.game().situation().batter.expect("somebody bats").0;
    book.double(&[to(Third, Home)]);
    assert_eq!((batter(&book, up).hits, batter(&book, up).doubles), (1, 0));
    assert_eq!(book.game().situation().score, [0, 1]);
    // From first it is worth all the bases he ran.
    let mut book = bottom_of_the_ninth();
    book.single(&[]);
    let up = book.game().situation().batter.expect("somebody bats").0;
    book.triple(&[to(First, Home)]);
    assert_eq!(batter(&book, up).triples, 1);
    // 9.06(g): out of the park, everybody scores.
    let mut book = bottom_of_the_ninth();
    book.triple(&[]);
    let up = book.game().situation().batter.expect("somebody bats").0;
    book.home_run();
    assert_eq!((batter(&book, up).home_runs, batter(&book, up).runs_batted_in), (1, 2));
    assert_eq!(book.game().situation().score, [0, 2]);
    proves(&book);
}

// ---- 9.07 Stolen bases, caught stealing ----

#[test]
fn stolen_bases() {
    // 9.07(a)
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::Steal)]);
    assert_eq!(batter(&book, 1).stolen_bases, 1);
    // 9.07(b): the wild pitch gives the base beyond, the steal stands.
    let mut book = Scorer::nine();
    book.single(&[]).running(&[then(by(First, Second, Cause::Steal), Third, Cause::WildPitch)]);
    assert_eq!((batter(&book, 1).stolen_bases, pitcher(&book, PETER).wild_pitches), (1, 1));
    // 9.07(d): one out of a double steal, no steal for the other.
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]);
    book.running(&[stealing(Second, Third, &[Catcher, ThirdBase], Attempt::Steal), by(First, Second, Cause::Steal)]);
    assert_eq!((batter(&book, 1).caught_stealing, batter(&book, 2).stolen_bases), (1, 0));
    // 9.07(g): indifference.
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::Indifference)]);
    assert_eq!(batter(&book, 1).stolen_bases, 0);
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::Steal)]);
    let on = book.last();
    book.judge(Judgment::Undisputed { on, runner: PlayerId(1), yes: true });
    assert_eq!(batter(&book, 1).stolen_bases, 0);
}

#[test]
fn no_steal_of_a_base_the_walk_gives() {
    // 9.07(a): entitled to it, whatever he did on the pitch.
    let mut book = Scorer::nine();
    book.single(&[]).count(3, 0);
    let mut ball_four = Pitch::new(Call::Ball);
    ball_four.action.moves.push(by(First, Second, Cause::Steal));
    book.record(Event::Pitch(ball_four));
    assert_eq!(batter(&book, 1).stolen_bases, 0);
    assert_eq!(book.game().situation().runners().count(), 2);
}

#[test]
fn caught_stealing() {
    // 9.07(h)(1); the catcher's assist, the second baseman's putout.
    let mut book = Scorer::nine();
    book.single(&[]).running(&[stealing(First, Second, &[Catcher, SecondBase], Attempt::Steal)]);
    assert_eq!(batter(&book, 1).caught_stealing, 1);
    assert_eq!((fielder(&book, Catcher).assists, fielder(&book, SecondBase).putouts), (1, 1));
    assert_eq!(fielder(&book, Catcher).runners_caught, 1);
    // 9.07(c): overslid the base he had stolen.
    let mut book = Scorer::nine();
    let mut overslid = by(First, Second, Cause::Steal);
    overslid.out =
        Some(Out { how: How::Tag, at: Second, by: vec![Catcher, SecondBase], attempt: Some(Attempt::Steal) });
    book.single(&[]).running(&[overslid]);
    assert_eq!((batter(&book, 1).caught_stealing, batter(&book, 1).stolen_bases), (1, 0));
    // 9.07(h)(2): picked off and breaks for second; (h): going back it is no caught stealing.
    let mut book = Scorer::nine();
    book.single(&[]).running(&[stealing(First, Second, &[Pitcher, FirstBase, Shortstop], Attempt::Pickoff)]);
    assert_eq!(batter(&book, 1).caught_stealing, 1);
    let mut book = Scorer::nine();
    book.single(&[]).running(&[stealing(First, First, &[Pitcher, FirstBase], Attempt::Pickoff)]);
    assert_eq!(batter(&book, 1).caught_stealing, 0);
    // 9.07(f): the throw had him, and was muffed.
    let mut book = Scorer::nine();
    let mut muff = Misplay::new(SecondBase, MisplayKind::Muff);
    muff.after = vec![Catcher];
    muff.stealing = true;
    book.single(&[]).erring(&[by(First, Second, Cause::Error(0))], &[muff]);
    assert_eq!((batter(&book, 1).caught_stealing, batter(&book, 1).stolen_bases), (1, 0));
    assert_eq!((fielder(&book, SecondBase).errors, fielder(&book, Catcher).assists), (1, 1));
}

// ---- 9.08 Sacrifices ----

fn bunt(book: &mut Scorer, runners: &[Move], batter: Move, misplays: &[Misplay]) {
    book.in_play(ball(Trajectory::Bunt, Pitcher), runners, batter, misplays);
}

fn thrown_out_at_first() -> Move {
    out(Start::Batter, How::Force, First, &[Pitcher, FirstBase])
}

#[test]
fn sacrifice_hits() {
    let on_first = || {
        let mut book = Scorer::nine();
        book.single(&[]);
        book
    };
    // 9.08(a)
    let mut book = on_first();
    bunt(&mut book, &[to(First, Second)], thrown_out_at_first(), &[]);
    assert_eq!((batter(&book, 2).sacrifice_hits, batter(&book, 2).at_bats), (1, 0));
    let on = book.last();
    book.judge(Judgment::BuntedForHit { on, yes: true });
    assert_eq!((batter(&book, 2).sacrifice_hits, batter(&book, 2).at_bats), (0, 1), "he bunted for a hit");
    // With two outs there is none.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().single(&[]);
    bunt(&mut book, &[to(First, Second)], thrown_out_at_first(), &[]);
    assert_eq!(batter(&book, 4).sacrifice_hits, 0);
    // 9.08(a): he would have been out but for an error.
    let mut book = on_first();
    let wild = [Misplay::new(Pitcher, MisplayKind::Throwing)];
    bunt(&mut book, &[to(First, Second)], Move::safe(Start::Batter, First, Cause::Error(0)), &wild);
    assert_eq!((batter(&book, 2).sacrifice_hits, batter(&book, 2).at_bats), (1, 0));
    // 9.08(b): they try for the runner, without error, and get nobody.
    let mut book = on_first();
    bunt(&mut book, &[by(First, Second, Cause::Choice)], Move::safe(Start::Batter, First, Cause::Choice), &[]);
    assert_eq!((batter(&book, 2).sacrifice_hits, batter(&book, 2).hits), (1, 0));
    // 9.08(c): a runner is put out trying to advance one base.
    let mut book = on_first();
    bunt(&mut book, &[forced(First, Second)], Move::safe(Start::Batter, First, Cause::Choice), &[]);
    assert_eq!((batter(&book, 2).sacrifice_hits, batter(&book, 2).at_bats), (0, 1));
    proves(&book);
}

#[test]
fn sacrifice_flies() {
    // 9.08(d)(1): a foul fly counts.
    let mut book = on_third();
    let foul = Batted { foul: true, ..ball(Trajectory::Fly, LeftField) };
    let caught = out(Start::Batter, How::Fly, First, &[LeftField]);
    book.in_play(foul, &[to(Third, Home)], caught, &[]);
    assert_eq!((batter(&book, 2).sacrifice_flies, batter(&book, 2).at_bats), (1, 0));
    // Two outs: none.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).fly_out(&[]);
    assert_eq!((batter(&book, 4).sacrifice_flies, batter(&book, 4).at_bats), (0, 1));
    // 9.08(d)(2): dropped, and the runner would have scored after a catch.
    let dropped = Misplay::new(CenterField, MisplayKind::DroppedFly);
    let mut book = on_third();
    book.reaches_on(dropped.clone(), &[to(Third, Home)]);
    assert_eq!((batter(&book, 2).sacrifice_flies, batter(&book, 2).runs_batted_in), (1, 1));
    assert_eq!(fielder(&book, CenterField).errors, 1);
    let on = book.last();
    book.judge(Judgment::WouldHaveScoredAfterCatch { on, yes: false });
    assert_eq!((batter(&book, 2).sacrifice_flies, batter(&book, 2).reached_on_error), (0, 1));
    // 9.08(d) Comment: nobody scores, no sacrifice fly.
    let mut book = Scorer::nine();
    book.double(&[]).fly_out(&[to(Second, Third)]);
    assert_eq!((batter(&book, 2).sacrifice_flies, batter(&book, 2).at_bats), (0, 1));
    proves(&book);
}

// ---- 9.09, 9.10 Putouts and assists ----

#[test]
fn automatic_putouts() {
    // 9.09(b)(1): strike three caught; no assist to the pitcher (9.10(b)(1)).
    let mut book = Scorer::nine();
    book.strikeout();
    assert_eq!((fielder(&book, Catcher).putouts, fielder(&book, Pitcher).assists), (1, 0));
    // 9.09(c)(1): an infield fly nobody caught goes to the fielder who would have.
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]);
    let fly = Batted { infield_fly: true, ..ball(Trajectory::Pop, SecondBase) };
    book.in_play(fly, &[], out(Start::Batter, How::Fly, First, &[]), &[]);
    assert_eq!(fielder(&book, SecondBase).putouts, 1);
    // 9.09(b): a bunt fouled with two strikes, interference with the catcher.
    let mut book = Scorer::nine();
    book.count(0, 2).pitch(Call::FoulBunt).pitch(Call::BatterInterference);
    assert_eq!(fielder(&book, Catcher).putouts, 2);
    assert_eq!((batter(&book, 1).strikeouts, batter(&book, 2).strikeouts), (1, 0));
    proves(&book);
}

#[test]
fn one_assist_a_fielder_in_a_rundown() {
    // 9.10(a)(1) Comment: 1-3-6-3-6-4, and the one who tags has the putout.
    let mut book = Scorer::nine();
    let throws = [Pitcher, FirstBase, Shortstop, FirstBase, Shortstop, SecondBase];
    book.single(&[]).running(&[stealing(First, Second, &throws, Attempt::Pickoff)]);
    for (position, assists, putouts) in
        [(Pitcher, 1, 0), (FirstBase, 1, 0), (Shortstop, 1, 0), (SecondBase, 0, 1), (ThirdBase, 0, 0)]
    {
        let line = fielder(&book, position);
        assert_eq!((line.assists, line.putouts), (assists, putouts), "{position}");
    }
}

#[test]
fn an_assist_stands_when_the_error_follows() {
    // 9.10(a)(1): the throw was good, the first baseman dropped it.
    let mut book = Scorer::nine();
    let mut muff = Misplay::new(FirstBase, MisplayKind::Muff);
    muff.after = vec![Shortstop];
    book.in_play(ball(Trajectory::Ground, Shortstop), &[], Move::safe(Start::Batter, First, Cause::Error(0)), &[muff]);
    assert_eq!((fielder(&book, Shortstop).assists, fielder(&book, FirstBase).errors), (1, 1));
    assert_eq!((batter(&book, 1).at_bats, batter(&book, 1).hits, batter(&book, 1).reached_on_error), (1, 0, 1));
}

// ---- 9.11 Double and triple plays ----

#[test]
fn strike_him_out_throw_him_out_is_a_double_play() {
    let mut book = Scorer::nine();
    book.single(&[]).strikeout().same_play(&[stealing(First, Second, &[Catcher, Shortstop], Attempt::Steal)]);
    assert_eq!((fielder(&book, Catcher).double_plays, fielder(&book, Shortstop).double_plays), (1, 1));
    assert_eq!(batter(&book, 2).grounded_into_double_plays, 0);
    // Two outs on one pitch and the next are none.
    let mut book = Scorer::nine();
    book.single(&[]).strikeout().running(&[stealing(First, Second, &[Catcher, Shortstop], Attempt::Steal)]);
    assert_eq!(fielder(&book, Catcher).double_plays, 0);
}

#[test]
fn a_triple_play() {
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]);
    let caught = out(Start::Batter, How::Fly, First, &[Shortstop]);
    let doubled_off = [
        out(Start::Second, How::Appeal, Second, &[Shortstop]),
        out(Start::First, How::Appeal, First, &[Shortstop, FirstBase]),
    ];
    book.in_play(ball(Trajectory::Line, Shortstop), &doubled_off, caught, &[]);
    let line = fielder(&book, Shortstop);
    assert_eq!((line.triple_plays, line.double_plays, line.putouts, line.assists), (1, 0, 2, 1));
    assert_eq!(book.game().halves()[0].left_on_base, Some(0));
    proves(&book);
}

// ---- 9.12 Errors ----

#[test]
fn an_error_that_helps_two_runners_is_one_error() {
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]);
    let wild = [Misplay::new(ThirdBase, MisplayKind::Throwing)];
    let runners = [by(Second, Home, Cause::Error(0)), by(First, Third, Cause::Error(0))];
    book.in_play(
        ball(Trajectory::Ground, ThirdBase),
        &runners,
        Move::safe(Start::Batter, Second, Cause::Error(0)),
        &wild,
    );
    assert_eq!(fielder(&book, ThirdBase).errors, 1);
    assert_eq!(book.game().line_score().side(Side::Home).errors, 1);
}

#[test]
fn a_muffed_foul_fly_and_interference_are_errors() {
    // 9.12(a)(2), and 9.12(a)(8): catcher's interference; no time at bat (9.02(a)(1)).
    let mut book = Scorer::nine();
    book.foul_fly_muffed(LeftField).catcher_interference();
    assert_eq!((fielder(&book, LeftField).errors, fielder(&book, Catcher).errors), (1, 1));
    let line = batter(&book, 1);
    assert_eq!((line.plate_appearances, line.at_bats, line.interference), (1, 0, 1));
    proves(&book);
}

#[test]
fn the_scorer_judges_hit_or_error() {
    let mut book = Scorer::nine();
    book.error(Shortstop, &[]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Hit(1) });
    assert_eq!((batter(&book, 1).hits, batter(&book, 1).reached_on_error), (1, 0));
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(Shortstop) });
    assert_eq!((batter(&book, 1).hits, batter(&book, 1).reached_on_error), (0, 1), "the last judgment holds");
}

// ---- 9.13 Wild pitches and passed balls ----

#[test]
fn a_wild_pitch_or_a_passed_ball_never_both() {
    let mut book = Scorer::nine();
    book.single(&[]).running(&[by(First, Second, Cause::WildPitch)]);
    assert_eq!((pitcher(&book, PETER).wild_pitches, fielder(&book, Catcher).passed_balls), (1, 0));
    book.running(&[by(Second, Third, Cause::PassedBall)]);
    assert_eq!((pitcher(&book, PETER).wild_pitches, fielder(&book, Catcher).passed_balls), (1, 1));
    let on = book.last();
    book.judge(Judgment::GotAway { on, wild: true });
    assert_eq!((pitcher(&book, PETER).wild_pitches, fielder(&book, Catcher).passed_balls), (2, 0));
    // 9.13(a) Comment: two runners on one wild pitch are one wild pitch.
    book.walk().running(&[by(Third, Home, Cause::WildPitch), by(First, Second, Cause::WildPitch)]);
    assert_eq!(pitcher(&book, PETER).wild_pitches, 3);
    // 9.15: a strikeout all the same, when strike three gets away.
    book.strikeout_reaches(Cause::WildPitch, &[], &[]);
    assert_eq!((batter(&book, 3).strikeouts, pitcher(&book, PETER).strikeouts), (1, 1));
    proves(&book);
}

// ---- 9.14, 9.15 Walks and strikeouts ----

fn pinch_hit(book: &mut Scorer, outgoing: u32, incoming: u32) {
    let change =
        Change::Substitute { outgoing: PlayerId(outgoing), incoming: PlayerId(incoming), role: Role::PinchHitter };
    book.record(Event::Change { side: Side::Visitors, change });
}

#[test]
fn a_strikeout_belongs_to_the_batter_who_had_two_strikes() {
    // 9.15(b)
    let mut book = Scorer::nine();
    book.count(0, 2);
    pinch_hit(&mut book, 1, 11);
    book.pitch(Call::SwingingStrike);
    assert_eq!((batter(&book, 1).strikeouts, batter(&book, 1).at_bats), (1, 1));
    assert_eq!((batter(&book, 11).strikeouts, batter(&book, 11).plate_appearances), (0, 0));
    // With one strike, or any other result, it is the second batter's.
    let mut book = Scorer::nine();
    book.count(0, 1);
    pinch_hit(&mut book, 1, 11);
    book.pitch(Call::SwingingStrike).pitch(Call::SwingingStrike);
    assert_eq!((batter(&book, 1).strikeouts, batter(&book, 11).strikeouts), (0, 1));
    let mut book = Scorer::nine();
    book.count(3, 2);
    pinch_hit(&mut book, 1, 11);
    book.pitch(Call::Ball);
    assert_eq!((batter(&book, 1).walks, batter(&book, 11).walks), (0, 1));
    proves(&book);
}

#[test]
fn walks_on_purpose() {
    // 9.14(b), (d)
    let mut book = Scorer::nine();
    book.record(Event::IntentionalWalk).count(3, 0).pitch(Call::IntentionalBall);
    assert_eq!((batter(&book, 1).intentional_walks, batter(&book, 2).intentional_walks), (1, 1));
    assert_eq!((pitcher(&book, PETER).walks, pitcher(&book, PETER).intentional_walks), (2, 2));
    assert_eq!(pitcher(&book, PETER).pitches, 4, "none for the first, four for the second");
}

// ---- 9.03(d) Batting out of turn ----

#[test]
fn out_of_turn_and_appealed() {
    let mut book = Scorer::nine();
    book.record(Event::BatterUp { player: PlayerId(2) }).single(&[]);
    book.record(Event::OutOfTurnAppeal);
    // The proper batter is out, the catcher has the putout, the hit never was; the next batter is the one after him.
    assert_eq!((batter(&book, 1).at_bats, batter(&book, 2).hits), (1, 0));
    assert_eq!(fielder(&book, Catcher).putouts, 1);
    let situation = book.game().situation();
    assert_eq!((situation.outs, situation.batter, situation.runners().count()), (1, Some(PlayerId(2)), 0));
    proves(&book);
}

#[test]
fn out_of_turn_and_not_appealed() {
    let mut book = Scorer::nine();
    book.record(Event::BatterUp { player: PlayerId(2) }).single(&[]).strikeout();
    assert_eq!((batter(&book, 2).hits, batter(&book, 3).strikeouts), (1, 1), "who follows is the one after him");
    proves(&book);
    // Appealed while he is still at the plate: the proper batter takes the count, and nobody is out.
    let mut book = Scorer::nine();
    book.record(Event::BatterUp { player: PlayerId(2) }).count(2, 1).record(Event::OutOfTurnAppeal);
    let situation = book.game().situation();
    assert_eq!((situation.batter, situation.outs, situation.count.balls), (Some(PlayerId(1)), 0, 2));
}

// ---- 5.08 When a run counts ----

#[test]
fn no_run_on_a_third_out_by_force() {
    let two_out = || {
        let mut book = Scorer::nine();
        book.strikeout().strikeout().triple(&[]).walk();
        book
    };
    let mut book = two_out();
    reaches(Trajectory::Ground, Shortstop, &[to(Third, Home), forced(First, Second)], &mut book);
    assert_eq!(book.game().situation().score, [0, 0]);
    assert_eq!(book.game().halves()[0].left_on_base, Some(2), "the runner from third and the batter");
    // A tag after the run is in: it counts. Before: it doesn't.
    let mut book = two_out();
    reaches(Trajectory::Line, LeftField, &[to(Third, Home), tagged(First, Third)], &mut book);
    assert_eq!(book.game().situation().score, [1, 0]);
    let mut book = two_out();
    reaches(Trajectory::Line, LeftField, &[tagged(First, Third), to(Third, Home)], &mut book);
    assert_eq!(book.game().situation().score, [0, 0]);
    proves(&book);
}

#[test]
fn an_advance_in_legs_keeps_each_cause() {
    // A single, then on by the throw, then home on an error: one hit, no run batted in for the last leg (9.04(a)).
    let mut book = Scorer::nine();
    let wild = Misplay::new(LeftField, MisplayKind::Throwing);
    let way = Move {
        from: Start::Batter,
        legs: vec![
            Leg { to: First, cause: Cause::Play },
            Leg { to: Second, cause: Cause::Throw },
            Leg { to: Home, cause: Cause::Error(0) },
        ],
        out: None,
    };
    book.in_play(ball(Trajectory::Line, LeftField), &[], way, &[wild]);
    let line = batter(&book, 1);
    assert_eq!((line.hits, line.doubles, line.runs, line.runs_batted_in), (1, 0, 1, 0));
    proves(&book);
}
