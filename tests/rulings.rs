//! Either side of each condition the rulings hang on: cases that the rule book's own leave open. Each was written
//! because the condition could be turned about without a test noticing. Sections: OBR 2024 edition, from memory.

use benchbook_stats::code::Preset;
use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::log::{
    Attempt, Batted, Call, Cause, Event, How, Judgment, Leg, Misplay, MisplayKind, Move, Out, Pitch, Reached, Start,
    Trajectory,
};
use benchbook_stats::ruling::{BatterResult, Because, Book, Credit, Judged, Theft};
use benchbook_stats::team::PlayerId;
use benchbook_tests::scorer::{Scorer, ball, by, forced, tagged, to};

use Position::{Catcher, CenterField, FirstBase, LeftField, Pitcher, SecondBase, Shortstop, ThirdBase};

/// The rulings on the play recorded last.
fn judged(book: &Scorer) -> Judged {
    let game = book.game();
    Book::of(game).plays(game).last().map(|(_, judged)| judged.clone()).expect("a play")
}

fn result(book: &Scorer) -> BatterResult {
    judged(book).result.expect("a turn ended").verdict
}

/// Runs of the last play, each batted in or not, and why.
fn batted_in(book: &Scorer) -> Vec<(bool, Because)> {
    judged(book).runs.iter().map(|(_, run)| (run.verdict, run.because)).collect()
}

fn credits(book: &Scorer, credit: Credit) -> Vec<Position> {
    let mut who: Vec<Position> = judged(book).credited(credit).collect();
    who.sort_unstable();
    who
}

fn grounder(by: Position) -> Batted {
    ball(Trajectory::Ground, by)
}

fn batter_safe(at: Base, cause: Cause) -> Move {
    Move::safe(Start::Batter, at, cause)
}

fn batter_out(how: How, by: &[Position]) -> Move {
    Move::out(Start::Batter, Out::new(how, First, by))
}

fn runner_out(from: Base, how: How, at: Base, by: &[Position]) -> Move {
    Move::out(from.into(), Out::new(how, at, by))
}

// ---- 9.04 Runs batted in ----

#[test]
fn only_a_muff_at_first_that_spoils_a_double_play_costs_the_run_batted_in() {
    let first_and_third = || {
        let mut book = Scorer::nine();
        book.triple(&[]).walk();
        book
    };
    let runners = [to(Third, Home), forced(First, Second)];
    let muff = [Misplay::new(FirstBase, MisplayKind::Muff)];
    let wild_throw = [Misplay::new(SecondBase, MisplayKind::Throwing)];
    // 9.04(b)(2)
    let mut book = first_and_third();
    book.in_play(grounder(Shortstop), &runners, batter_safe(First, Cause::Error(0)), &muff);
    assert_eq!(batted_in(&book), [(false, Because::MuffedDoublePlay)]);
    // A bad throw is not a muff.
    let mut book = first_and_third();
    book.in_play(grounder(Shortstop), &runners, batter_safe(First, Cause::Error(0)), &wild_throw);
    assert!(batted_in(&book)[0].0);
    // No runner was forced out: there was no double play to spoil.
    let mut book = Scorer::nine();
    book.triple(&[]);
    book.in_play(grounder(Shortstop), &[to(Third, Home)], batter_safe(First, Cause::Error(0)), &muff);
    assert_eq!(batted_in(&book), [(true, Because::ErrorButScoresAnyway)]);
    // A runner forced out and the batter safe on the choice: the run is batted in (9.04(a)(1)).
    let mut book = first_and_third();
    book.in_play(grounder(Shortstop), &runners, batter_safe(First, Cause::Choice), &[]);
    assert_eq!(batted_in(&book), [(true, Because::BattedIn)]);
}

#[test]
fn on_the_batters_error_only_the_runner_from_third_with_fewer_than_two_out_is_batted_in() {
    // 9.04(a)(3), the run itself unaided by the error.
    let mut book = Scorer::nine();
    book.triple(&[]).error(Shortstop, &[to(Third, Home)]);
    assert_eq!(batted_in(&book), [(true, Because::ErrorButScoresAnyway)]);
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).error(Shortstop, &[to(Third, Home)]);
    assert_eq!(batted_in(&book), [(false, Because::OnError)], "two out");
    let mut book = Scorer::nine();
    book.double(&[]).error(Shortstop, &[to(Second, Home)]);
    assert_eq!(batted_in(&book), [(false, Because::OnError)], "from second");
    // A hit, and the error came after: the runner from third helped home by it is not batted in.
    let mut book = Scorer::nine();
    let wild = [Misplay::new(CenterField, MisplayKind::Throwing)];
    book.double(&[]).in_play(
        ball(Trajectory::Line, CenterField),
        &[by(Second, Home, Cause::Error(0))],
        batter_safe(First, Cause::Play),
        &wild,
    );
    assert_eq!(batted_in(&book), [(false, Because::OnError)]);
}

#[test]
fn a_fly_dropped_with_two_out_is_no_sacrifice() {
    // 9.08(d): before two are out.
    let mut book = Scorer::nine();
    let dropped = Misplay::new(LeftField, MisplayKind::DroppedFly);
    book.strikeout().strikeout().triple(&[]).reaches_on(dropped, &[to(Third, Home)]);
    assert_eq!(result(&book), BatterResult::ReachedOnError(LeftField));
}

#[test]
fn a_force_and_a_tag_ahead_of_a_safe_batter_are_no_ground_ball_double_play() {
    // 9.02(a)(17): a force and reverse-force play has the batter out at first.
    let mut book = Scorer::nine();
    let at_home = runner_out(Third, How::Tag, Home, &[Shortstop, SecondBase, Catcher]);
    book.triple(&[]).walk();
    book.in_play(grounder(Shortstop), &[forced(First, Second), at_home], batter_safe(First, Cause::Choice), &[]);
    assert_eq!(judged(&book).grounded_into_double_play, None);
    assert_eq!(credits(&book, Credit::DoublePlay), [Catcher, SecondBase, Shortstop]);
}

#[test]
fn a_run_on_a_sacrifice_fly_says_so() {
    // 9.04(a)(1): from third after the catch; who comes in behind him from second did so on the ball too.
    let mut book = Scorer::nine();
    book.double(&[]).single(&[to(Second, Third)]).walk();
    book.fly_out(&[to(Third, Home), to(Second, Home)]);
    assert_eq!(batted_in(&book), [(true, Because::SacrificeFly), (true, Because::BattedIn)]);
}

#[test]
fn a_judgment_on_one_runner_says_nothing_of_another() {
    let mut book = Scorer::nine();
    book.triple(&[]).double(&[to(Third, Home)]);
    book.error(CenterField, &[by(Second, Home, Cause::Error(0))]);
    let on = book.last();
    let runner = PlayerId(2);
    assert_eq!(batted_in(&book), [(false, Because::OnError)]);
    book.judge(Judgment::WouldHaveScored { on, runner: PlayerId(9), yes: true });
    assert_eq!(batted_in(&book), [(false, Because::OnError)], "another runner's");
    book.judge(Judgment::WouldHaveScored { on, runner, yes: true });
    assert_eq!(batted_in(&book), [(true, Because::Judged)]);
    // 9.07(g), undisputed: one of two runners on a double steal.
    let mut book = Scorer::nine();
    book.walk().walk().running(&[by(Second, Third, Cause::Steal), by(First, Second, Cause::Steal)]);
    let on = book.last();
    book.judge(Judgment::Undisputed { on, runner: PlayerId(1), yes: true });
    let ruled: Vec<_> = judged(&book).thefts.iter().map(|(who, t)| (*who, t.verdict, t.because, t.rule)).collect();
    let (undisputed, stole) = ((Because::Undisputed, "9.07(g)"), (Because::Stole, "9.07(a)"));
    assert_eq!(
        ruled,
        [
            (PlayerId(1), Theft::NotStolen, undisputed.0, undisputed.1),
            (PlayerId(2), Theft::Stolen(1), stole.0, stole.1)
        ]
    );
    // Indifference seen at once is as good as judged.
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::Indifference)]);
    assert_eq!(thefts(&book), [(1, Theft::NotStolen)]);
}

// ---- 9.05, 9.06 Hits ----

#[test]
fn a_strikeout_says_whether_he_reached() {
    let mut book = Scorer::nine();
    book.strikeout();
    assert_eq!(result(&book), BatterResult::Strikeout { looking: false, reached: false });
    book.strikeout_reaches(Cause::WildPitch, &[], &[]);
    let ruling = judged(&book).result.expect("a turn ended");
    assert_eq!(ruling.verdict, BatterResult::Strikeout { looking: false, reached: true });
    assert_eq!(ruling.because, Because::StrikeoutReached);
}

#[test]
fn whom_the_outfield_or_a_long_way_puts_out_costs_no_hit() {
    // 9.05(b)(3) is about a fielder who puts out the runner instead of the batter: an infielder, at the next base.
    let on_second = || {
        let mut book = Scorer::nine();
        book.double(&[]);
        book
    };
    let safe = || batter_safe(First, Cause::Play);
    let table: [(&str, Batted, Move, bool); 6] = [
        ("shortstop to third", grounder(Shortstop), tagged(Second, Third), false),
        ("back at second", grounder(Shortstop), tagged(Second, Second), false),
        ("from left field", ball(Trajectory::Line, LeftField), tagged(Second, Third), true),
        ("two bases on, at home", grounder(Shortstop), tagged(Second, Home), true),
        (
            "after third was his",
            grounder(Shortstop),
            {
                let mut m = tagged(Second, Third);
                m.legs.push(Leg { to: Third, cause: Cause::Play });
                m
            },
            true,
        ),
        ("on appeal", grounder(Shortstop), runner_out(Second, How::Appeal, Third, &[ThirdBase]), true),
    ];
    for (what, ball, runner, is_hit) in table {
        let mut book = on_second();
        book.in_play(ball, &[runner], safe(), &[]);
        assert_eq!(result(&book).hit_bases().is_some(), is_hit, "{what}");
    }
}

#[test]
fn only_a_hit_that_ends_the_game_is_cut_short() {
    // 9.06(f): going ahead in the bottom of the first ends nothing.
    let mut book = Scorer::nine();
    book.halves(1).triple(&[]).double(&[to(Third, Home)]);
    assert_eq!(result(&book), BatterResult::Hit(2));
    // Nor does a run of the visitors in the ninth.
    let mut book = Scorer::nine();
    book.halves(16).triple(&[]).double(&[to(Third, Home)]);
    assert_eq!(result(&book), BatterResult::Hit(2));
    // Nor does a run limit: the half is over, the game is not, though the home side was level before it.
    for visitors in [0, 1, 4] {
        let mut book = Scorer::by_code(Preset::Youth6.code());
        for _ in 0..visitors {
            book.home_run();
        }
        book.halves(1);
        for _ in 0..4 {
            book.home_run();
        }
        book.triple(&[]).double(&[to(Third, Home)]);
        assert_eq!(book.game().situation().inning, 2, "five runs end a half");
        assert_eq!(result(&book), BatterResult::Hit(2), "against {visitors}");
    }
    // A single is what it took: nothing is cut short, and the reason says so.
    let mut book = Scorer::nine();
    book.halves(17).triple(&[]).single(&[to(Third, Home)]);
    assert_eq!(judged(&book).result.map(|r| r.because), Some(Because::SafeHit(1)));
    // Two runs behind: the second of them wins, and he came from second.
    let mut book = Scorer::nine();
    book.home_run().halves(17).triple(&[]).walk();
    book.running(&[by(First, Second, Cause::Steal)]).triple(&[to(Third, Home), to(Second, Home)]);
    assert_eq!(book.game().situation().score, [1, 2]);
    assert_eq!(result(&book), BatterResult::Hit(2));
    // All the way round inside the park: the runner from first wins it on a triple; alone, he needs all four bases.
    let around = |book: &mut Scorer, runners: &[Move]| {
        book.in_play(ball(Trajectory::Line, CenterField), runners, batter_safe(Home, Cause::Play), &[]);
        assert_eq!(book.game().situation().score, [0, 1]);
    };
    let mut book = Scorer::nine();
    book.halves(17).single(&[]);
    around(&mut book, &[to(First, Home)]);
    assert_eq!(result(&book), BatterResult::Hit(3));
    let mut book = Scorer::nine();
    book.halves(17);
    around(&mut book, &[]);
    assert_eq!(result(&book), BatterResult::Hit(4));
}

// ---- 9.07 Stolen bases, caught stealing ----

fn thefts(book: &Scorer) -> Vec<(u32, Theft)> {
    judged(book).thefts.iter().map(|(runner, theft)| (runner.0, theft.verdict)).collect()
}

fn thrown_out(from: Base, at: Base, attempt: Attempt, legs: &[Base]) -> Move {
    let out = Out { attempt: Some(attempt), ..Out::new(How::Tag, at, &[Catcher, Shortstop]) };
    let legs = legs.iter().map(|to| Leg { to: *to, cause: Cause::Steal }).collect();
    Move { from: from.into(), legs, out: Some(out) }
}

#[test]
fn what_the_catcher_allows_and_catches() {
    let mut book = Scorer::nine();
    let catching = |book: &Scorer| {
        let lines = book.game().fielding(benchbook_stats::field::Side::Home);
        let line = lines.into_iter().find(|l| l.player == Some(PlayerId(102))).expect("the catcher's line");
        (line.stolen_bases_allowed, line.runners_caught)
    };
    book.walk().running(&[by(First, Second, Cause::Steal)]);
    assert_eq!(catching(&book), (1, 0));
    book.walk().running(&[by(Second, Third, Cause::Steal), by(First, Second, Cause::Steal)]);
    assert_eq!(catching(&book), (3, 0));
    book.running(&[thrown_out(Third, Home, Attempt::Steal, &[])]);
    assert_eq!(catching(&book), (3, 1));
    // Back at his base: nobody's caught stealing (9.07(h)).
    book.running(&[thrown_out(Second, Second, Attempt::Pickoff, &[])]);
    assert_eq!((catching(&book), thefts(&book)), ((3, 1), vec![(2, Theft::PickedOff)]));
}

#[test]
fn thrown_out_after_a_base_was_his() {
    // 9.07(c): past the base and tagged: caught, no steal. A base on, he has stolen the first and is caught at the next.
    let caught = |at| Theft::Caught { at, out: true };
    let mut book = Scorer::nine();
    book.walk().running(&[thrown_out(First, Second, Attempt::Steal, &[Second])]);
    assert_eq!(thefts(&book), [(1, caught(Second))]);
    let mut book = Scorer::nine();
    book.walk().running(&[thrown_out(First, Third, Attempt::Steal, &[Second])]);
    assert_eq!(thefts(&book), [(1, caught(Third)), (1, Theft::Stolen(1))]);
    // 9.07(d): the other of a double steal has none.
    let mut book = Scorer::nine();
    book.walk().walk();
    book.running(&[by(Second, Third, Cause::Steal), thrown_out(First, Second, Attempt::Steal, &[])]);
    assert_eq!(thefts(&book), [(1, Theft::NotStolen), (2, caught(Second))]);
}

#[test]
fn a_muffed_throw_is_a_runner_caught_whoever_is_named() {
    // 9.07(f), 9.07(h) Comment: caught stealing, an error, an assist, and no stolen base.
    let muff = |spared: Option<Start>| Misplay {
        after: vec![Catcher],
        spared,
        stealing: true,
        ..Misplay::new(SecondBase, MisplayKind::Muff)
    };
    let spared_at = |at| Theft::Caught { at, out: false };
    let two_on = || {
        let mut book = Scorer::nine();
        book.walk().walk();
        book
    };
    // Named by the advance: the second error of the play is the muff.
    let mut book = two_on();
    let wild = Misplay::new(Pitcher, MisplayKind::Throwing);
    let moves = [by(Second, Third, Cause::Error(0)), by(First, Second, Cause::Error(1))];
    book.erring(&moves, &[wild.clone(), muff(None)]);
    assert_eq!(thefts(&book), [(2, spared_at(Second))]);
    // Named as spared, though both moved.
    let mut book = two_on();
    book.erring(&moves, &[wild, muff(Some(Start::Second))]);
    assert_eq!(thefts(&book), [(1, spared_at(Third))]);
    // Named as spared, and back at his base.
    let mut book = two_on();
    book.erring(&[], &[muff(Some(Start::First))]);
    assert_eq!(thefts(&book), [(2, spared_at(Second))]);
    assert_eq!(credits(&book, Credit::Assist), [Catcher]);
}

// ---- 9.08 Sacrifices ----

#[test]
fn what_is_no_sacrifice() {
    let bunt = |by| ball(Trajectory::Bunt, by);
    let on_second = || {
        let mut book = Scorer::nine();
        book.double(&[]);
        book
    };
    // Caught in the air, though the runner went on after it.
    let mut book = on_second();
    book.in_play(bunt(Catcher), &[to(Second, Third)], batter_out(How::Fly, &[Catcher]), &[]);
    assert_eq!(result(&book), BatterResult::Out);
    // Nobody moved up.
    let mut book = on_second();
    book.in_play(bunt(Pitcher), &[], batter_out(How::Force, &[Pitcher, FirstBase]), &[]);
    assert_eq!(result(&book), BatterResult::Out);
    // Two out already.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().double(&[]);
    book.in_play(bunt(Pitcher), &[to(Second, Third)], batter_safe(First, Cause::Choice), &[]);
    assert_eq!(result(&book), BatterResult::FieldersChoice);
    // Not a bunt.
    let mut book = on_second();
    book.ground_out(&[to(Second, Third)]);
    assert_eq!(result(&book), BatterResult::Out);
    // 9.08(d): a fly on which the runner scored by an error alone, and a dropped fly on which nobody scored.
    let mut book = Scorer::nine();
    let wild = [Misplay::new(CenterField, MisplayKind::Throwing)];
    book.triple(&[]).in_play(
        ball(Trajectory::Fly, CenterField),
        &[by(Third, Home, Cause::Error(0))],
        batter_out(How::Fly, &[CenterField]),
        &wild,
    );
    assert_eq!(result(&book), BatterResult::Out);
    let mut book = Scorer::nine();
    book.triple(&[]).reaches_on(Misplay::new(CenterField, MisplayKind::DroppedFly), &[]);
    let on = book.last();
    book.judge(Judgment::WouldHaveScoredAfterCatch { on, yes: true });
    assert_eq!(result(&book), BatterResult::ReachedOnError(CenterField));
    // Dropped, and the batter thrown out at first all the same.
    let mut book = Scorer::nine();
    let thrown_out = batter_out(How::Force, &[CenterField, FirstBase]);
    book.triple(&[]).in_play(ball(Trajectory::Fly, CenterField), &[to(Third, Home)], thrown_out, &[]);
    assert_eq!(result(&book), BatterResult::Out);
    // A fly nobody reached, thrown away afterwards, is no dropped fly.
    let mut book = Scorer::nine();
    book.triple(&[]).in_play(
        ball(Trajectory::Fly, CenterField),
        &[to(Third, Home)],
        batter_safe(First, Cause::Error(0)),
        &wild,
    );
    assert_eq!(result(&book), BatterResult::ReachedOnError(CenterField));
}

// ---- 9.02(a)(17) Grounded into double plays ----

#[test]
fn grounding_into_a_double_play_takes_a_force() {
    let is_one = |book: &Scorer| judged(book).grounded_into_double_play.is_some();
    let at_first = || batter_out(How::Force, &[Shortstop, FirstBase]);
    // Nobody was forced: the runner from second ran into the out.
    let mut book = Scorer::nine();
    book.double(&[]).in_play(grounder(Shortstop), &[tagged(Second, Third)], at_first(), &[]);
    assert!(!is_one(&book), "not forced");
    // Forced once, but put out further on.
    let mut book = Scorer::nine();
    let mut beyond = tagged(First, Third);
    beyond.legs.push(Leg { to: Second, cause: Cause::Play });
    book.walk().in_play(grounder(Shortstop), &[beyond], at_first(), &[]);
    assert!(!is_one(&book), "beyond second");
    // Reverse force: the batter first, then the runner by a tag at second.
    let mut book = Scorer::nine();
    book.walk().in_play(grounder(FirstBase), &[tagged(First, Second)], batter_out(How::Force, &[FirstBase]), &[]);
    assert!(is_one(&book), "reverse force");
    // Two forced out on the bases, the batter safe.
    let mut book = Scorer::nine();
    book.walk().walk();
    let both = [forced(Second, Third), forced(First, Second)];
    book.in_play(grounder(ThirdBase), &both, batter_safe(First, Cause::Choice), &[]);
    assert!(is_one(&book), "two forces");
    // 9.03(d): undone by the appeal of an improper batter, it never was.
    let mut book = Scorer::nine();
    book.walk().record(Event::BatterUp { player: PlayerId(4) });
    book.in_play(grounder(Shortstop), &[forced(First, Second)], at_first(), &[]);
    assert!(is_one(&book), "before the appeal");
    book.record(Event::OutOfTurnAppeal);
    let game = book.game();
    assert!(Book::of(game).plays(game).all(|(_, judged)| judged.grounded_into_double_play.is_none()), "undone");
    // One force, and the batter out at second trying for more.
    let mut book = Scorer::nine();
    let stretched = Move {
        from: Start::Batter,
        legs: vec![Leg { to: First, cause: Cause::Choice }],
        out: Some(Out::new(How::Tag, Second, &[FirstBase, Shortstop])),
    };
    book.walk().in_play(grounder(Shortstop), &[forced(First, Second)], stretched, &[]);
    assert!(!is_one(&book), "out after first was his");
    // One out only, and a line drive.
    let mut book = Scorer::nine();
    book.walk().ground_out(&[to(First, Second)]);
    assert!(!is_one(&book), "one out");
    let mut book = Scorer::nine();
    let doubled = runner_out(First, How::Appeal, First, &[Shortstop, FirstBase]);
    let liner = ball(Trajectory::Line, Shortstop);
    book.walk().in_play(liner, &[doubled], batter_out(How::Fly, &[Shortstop]), &[]);
    assert!(!is_one(&book), "a line drive");
}

// ---- 9.09 to 9.12 Credits ----

#[test]
fn an_error_is_charged_as_the_batter_is_judged_to_have_reached() {
    // 9.12(a)(1): on a clean single judged an error, one to the fielder judged.
    let mut book = Scorer::nine();
    book.single(&[]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(CenterField) });
    assert_eq!(credits(&book, Credit::Error), [CenterField]);
    // Recorded as the shortstop's, judged the first baseman's; judged a hit; judged a choice.
    let mut book = Scorer::nine();
    let mut wild = Misplay::new(Shortstop, MisplayKind::Throwing);
    wild.after = vec![ThirdBase];
    book.reaches_on(wild.clone(), &[]);
    assert_eq!((credits(&book, Credit::Error), credits(&book, Credit::Assist)), (vec![Shortstop], vec![ThirdBase]));
    let on = book.last();
    for (verdict, errors) in [
        (Reached::Error(FirstBase), vec![FirstBase]),
        (Reached::Error(Shortstop), vec![Shortstop]),
        (Reached::Hit(1), vec![]),
        (Reached::Choice, vec![]),
    ] {
        book.judge(Judgment::BatterReached { on, verdict });
        assert_eq!(credits(&book, Credit::Error), errors, "{verdict:?}");
    }
    // The error that also helped a runner stays one error, whatever the batter's turn counts as.
    let mut book = Scorer::nine();
    book.walk().reaches_on(wild, &[by(First, Third, Cause::Error(0))]);
    let on = book.last();
    for verdict in [Reached::Hit(1), Reached::Error(Shortstop)] {
        book.judge(Judgment::BatterReached { on, verdict });
        assert_eq!(credits(&book, Credit::Error), [Shortstop], "{verdict:?}");
    }
}

#[test]
fn who_has_the_putout_where_nobody_is_named() {
    // 9.09(b), (c)
    let mut fly = ball(Trajectory::Fly, LeftField);
    fly.fielders.push(Shortstop);
    let mut book = Scorer::nine();
    book.in_play(fly, &[], batter_out(How::Fly, &[]), &[]);
    assert_eq!(credits(&book, Credit::Putout), [LeftField], "who caught it");
    let mut relayed = grounder(Shortstop);
    relayed.fielders.push(FirstBase);
    book.in_play(relayed, &[], batter_out(How::Force, &[]), &[]);
    assert_eq!(credits(&book, Credit::Putout), [FirstBase], "who had it last");
    let mut untouched = grounder(Shortstop);
    untouched.fielders.clear();
    book.in_play(untouched, &[], batter_out(How::OtherRule, &[]), &[]);
    assert_eq!(credits(&book, Credit::Putout), [Catcher], "nobody touched it");
}

#[test]
fn interference_is_charged_once() {
    // 9.12(a)(8): to the catcher, unless the entry charges it to somebody.
    let hindered = |misplays: Vec<Misplay>| {
        let mut book = Scorer::nine();
        let mut pitch = Pitch::new(Call::CatcherInterference);
        pitch.action.misplays = misplays;
        book.record(Event::Pitch(pitch));
        credits(&book, Credit::Error)
    };
    assert_eq!(hindered(vec![]), [Catcher]);
    assert_eq!(hindered(vec![Misplay::new(FirstBase, MisplayKind::Interference)]), [FirstBase]);
    assert_eq!(hindered(vec![Misplay::new(ThirdBase, MisplayKind::Fielding)]), [Catcher, ThirdBase]);
}

#[test]
fn double_plays_are_of_one_play() {
    // 9.11: two outs of two plays are none.
    let mut book = Scorer::nine();
    book.walk().strikeout().running(&[{
        let out = Out { attempt: Some(Attempt::Steal), ..Out::new(How::Tag, Second, &[Catcher, Shortstop]) };
        Move::out(Start::First, out)
    }]);
    assert_eq!(credits(&book, Credit::DoublePlay), []);
    // An error that let somebody live spoils it; one that let nobody live is taken to have come after it.
    for (spared, part) in [(Some(Start::Second), vec![]), (None, vec![FirstBase, SecondBase, Shortstop])] {
        let mut book = Scorer::nine();
        let dropped = [Misplay { spared, ..Misplay::new(ThirdBase, MisplayKind::Muff) }];
        let runners = [to(Second, Third), forced(First, Second)];
        book.walk().walk();
        book.in_play(grounder(Shortstop), &runners, batter_out(How::Force, &[Shortstop, FirstBase]), &dropped);
        assert_eq!(credits(&book, Credit::DoublePlay), part, "{spared:?}");
    }
    // One participation a fielder, though he handled the ball twice.
    let mut book = Scorer::nine();
    book.walk().in_play(
        grounder(Shortstop),
        &[runner_out(First, How::Force, Second, &[Shortstop, SecondBase])],
        batter_out(How::Force, &[Shortstop, SecondBase, FirstBase]),
        &[],
    );
    assert_eq!(credits(&book, Credit::DoublePlay), [FirstBase, SecondBase, Shortstop]);
}
