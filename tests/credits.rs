//! Why a fielder has a putout (OBR 9.09), an assist (9.10), an error (9.12) or a part in a double play (9.11), and a pitcher
//! a wild pitch or a balk: each with its reason and its section. Sections: OBR 2024 edition, from memory.

use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::Position::{
    self, Catcher, CenterField, FirstBase, Pitcher, SecondBase, Shortstop, ThirdBase,
};
use benchbook_stats::log::{
    Attempt, Call, Cause, Event, How, Judgment, Leg, Misplay, MisplayKind, Move, Out, Pitch, Reached, Start, Trajectory,
};
use benchbook_stats::ruling::{Because, Book, Credit, GotAway, Judged};
use benchbook_tests::scorer::{Scorer, ball, by, forced, to};

fn judged(book: &Scorer) -> Judged {
    Book::of(book.game()).plays(book.game()).last().map(|(_, judged)| judged.clone()).expect("a play")
}

type Given = (Position, Credit, Because, &'static str);

fn given(book: &Scorer) -> Vec<Given> {
    judged(book).credits.iter().map(|(who, r)| (*who, r.verdict, r.because, r.rule)).collect()
}

fn batter_out(how: How, by: &[Position]) -> Move {
    Move::out(Start::Batter, Out::new(how, First, by))
}

/// The credits of an out of the runner on first, who went for second, made so.
fn of_out(how: How, by: &[Position], batted: bool) -> Vec<Given> {
    let mut book = Scorer::nine();
    let runner = Move::out(Start::First, Out::new(how, Second, by));
    book.walk();
    if batted {
        let batter = Move::safe(Start::Batter, First, Cause::Play);
        book.in_play(ball(Trajectory::Ground, SecondBase), &[runner], batter, &[]);
    } else {
        book.running(&[runner]);
    }
    given(&book)
}

#[test]
fn a_putout_says_how_it_came_about() {
    let putout = |who, because, rule| vec![(who, Credit::Putout, because, rule)];
    let threw = |who| (who, Credit::Assist, Because::Threw, "9.10(a)(1)");
    // 9.09(a): caught, held, touched, tagged.
    let mut book = Scorer::nine();
    book.fly_out(&[]);
    assert_eq!(given(&book), putout(CenterField, Because::CaughtFly, "9.09(a)(1)"));
    let mut book = Scorer::nine();
    book.ground_out(&[]);
    let held = (FirstBase, Credit::Putout, Because::HeldThrow, "9.09(a)(2)");
    assert_eq!(given(&book), [threw(Shortstop), held]);
    let mut book = Scorer::nine();
    book.in_play(ball(Trajectory::Ground, FirstBase), &[], batter_out(How::Force, &[FirstBase]), &[]);
    assert_eq!(given(&book), putout(FirstBase, Because::TouchedBase, "9.09(a)"));
    let tagged = (Shortstop, Credit::Putout, Because::Tagged, "9.09(a)(3)");
    assert_eq!(of_out(How::Tag, &[Catcher, Shortstop], false), [threw(Catcher), tagged]);
    assert_eq!(of_out(How::Appeal, &[SecondBase], false), putout(SecondBase, Because::Appealed, "9.09(a)"));
    // 9.09(b): the catcher's by rule. With a throw to first it is a play like any other.
    let mut book = Scorer::nine();
    book.strikeout();
    assert_eq!(given(&book), putout(Catcher, Because::CaughtThirdStrike, "9.09(b)"));
    let mut book = Scorer::nine();
    book.count(0, 2);
    let mut pitch = Pitch::new(Call::SwingingStrike);
    pitch.action.moves.push(batter_out(How::Strikeout, &[Catcher, FirstBase]));
    book.record(Event::Pitch(pitch));
    assert_eq!(given(&book), [threw(Catcher), held]);
    let mut book = Scorer::nine();
    book.pitch(Call::BatterInterference);
    assert_eq!(given(&book), putout(Catcher, Because::CatcherByRule, "9.09(b)"));
}

#[test]
fn an_out_by_rule_goes_to_the_fielder_the_rule_names() {
    let putout = |who, because, rule| vec![(who, Credit::Putout, because, rule)];
    // 9.09(c)(1): the infield fly that fell.
    let mut book = Scorer::nine();
    book.walk().walk();
    let mut fly = ball(Trajectory::Pop, ThirdBase);
    fly.infield_fly = true;
    book.in_play(fly, &[], batter_out(How::Fly, &[]), &[]);
    assert_eq!(given(&book), putout(ThirdBase, Because::InfieldFly, "9.09(c)(1)"));
    // 9.09(c)(2) to (6), with nobody named: the fielder at the ball.
    for (how, because, rule) in [
        (How::HitByBall, Because::NearestTheBall, "9.09(c)(2)"),
        (How::LeftPath, Because::WasAvoided, "9.09(c)(3)"),
        (How::Passing, Because::NearestThePassing, "9.09(c)(4)"),
        (How::Interference, Because::WasHindered, "9.09(c)(6)"),
        (How::OtherRule, Because::NearestByRule, "9.09(c)"),
    ] {
        assert_eq!(of_out(how, &[], true), putout(SecondBase, because, rule), "{how:?}");
        // Without a batted ball, and nobody named, the catcher is left.
        assert_eq!(of_out(how, &[], false), putout(Catcher, Because::CatcherByRule, "9.09(b)"), "{how:?}");
    }
    // Hindered were the fielder who is named, the catcher at a bunt or the second baseman in a rundown.
    for (by, batted) in [(Catcher, true), (SecondBase, false)] {
        assert_eq!(of_out(How::Interference, &[by], batted), putout(by, Because::WasHindered, "9.09(c)(6)"));
    }
    assert_eq!(of_out(How::Interference, &[Catcher], false), putout(Catcher, Because::CatcherByRule, "9.09(b)"));
    // 9.10(a)(2): who threw in such a play has an assist.
    for how in [How::Interference, How::LeftPath] {
        let first = of_out(how, &[Shortstop, SecondBase], true)[0];
        assert_eq!(first, (Shortstop, Credit::Assist, Because::ThrewToRuleOut, "9.10(a)(2)"));
    }
}

#[test]
fn an_error_says_what_was_misplayed_and_what_it_cost() {
    let misplayed = |kind, gave_life| Because::Misplayed { kind, gave_life };
    let error = |who, kind, life, rule| (who, Credit::Error, misplayed(kind, life), rule);
    // It let the batter reach first ...
    for (kind, rule) in [
        (MisplayKind::Fielding, "9.12(a)(1)"),
        (MisplayKind::Throwing, "9.12(a)(5)"),
        (MisplayKind::Muff, "9.12(a)(1)"),
        (MisplayKind::DroppedFly, "9.12(a)(1)"),
    ] {
        let mut book = Scorer::nine();
        book.reaches_on(Misplay::new(Shortstop, kind), &[]);
        assert_eq!(given(&book), [error(Shortstop, kind, true, rule)]);
    }
    // ... or a runner go a base further.
    for (kind, rule) in [
        (MisplayKind::Fielding, "9.12(a)(1)"),
        (MisplayKind::Throwing, "9.12(a)(6)"),
        (MisplayKind::Muff, "9.12(a)(8)"),
        (MisplayKind::Obstruction, "9.12(c)"),
    ] {
        let mut book = Scorer::nine();
        book.walk().erring(&[by(First, Second, Cause::Error(0))], &[Misplay::new(SecondBase, kind)]);
        assert_eq!(given(&book), [error(SecondBase, kind, false, rule)]);
    }
    // The throw was good, and the muff alone saved him: an assist for it.
    let mut book = Scorer::nine();
    let muff = Misplay { after: vec![Shortstop], ..Misplay::new(FirstBase, MisplayKind::Muff) };
    book.reaches_on(muff, &[]);
    let in_vain = (Shortstop, Credit::Assist, Because::ThrewInVain, "9.10(a)(1)");
    assert_eq!(given(&book), [in_vain, error(FirstBase, MisplayKind::Muff, true, "9.12(a)(1)")]);
    // 9.12(a)(2): the turn at the plate goes on.
    let mut book = Scorer::nine();
    book.foul_fly_muffed(Catcher);
    assert_eq!(given(&book), [error(Catcher, MisplayKind::DroppedFoul, true, "9.12(a)(2)")]);
    // 9.12(c): interference.
    let mut book = Scorer::nine();
    book.catcher_interference();
    assert_eq!(given(&book), [(Catcher, Credit::Error, Because::CatcherInterference, "9.12(c)")]);
    // The scorer calls it an error, whatever the entry says.
    let mut book = Scorer::nine();
    book.single(&[]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(ThirdBase) });
    assert_eq!(given(&book), [(ThirdBase, Credit::Error, Because::Judged, "9.12(a)(1)")]);
    // Though he has an assist in the same play, and somebody else an error.
    let mut book = Scorer::nine();
    let thrown_out = Move::out(Start::First, Out::new(How::Tag, Third, &[CenterField, ThirdBase]));
    let wild = Misplay::new(ThirdBase, MisplayKind::Throwing);
    let batter = Move {
        from: Start::Batter,
        legs: vec![Leg { to: First, cause: Cause::Play }, Leg { to: Second, cause: Cause::Error(0) }],
        out: None,
    };
    book.walk().in_play(ball(Trajectory::Line, CenterField), &[thrown_out], batter, &[wild]);
    let on = book.last();
    book.judge(Judgment::BatterReached { on, verdict: Reached::Error(CenterField) });
    assert_eq!(judged(&book).credited(Credit::Error).collect::<Vec<_>>(), [ThirdBase, CenterField]);
}

#[test]
fn a_double_play_says_that_he_had_a_part_in_it() {
    let mut book = Scorer::nine();
    let out = Out::new(How::Force, First, &[Shortstop, SecondBase, FirstBase]);
    book.walk().in_play(
        ball(Trajectory::Ground, Shortstop),
        &[forced(First, Second)],
        Move::out(Start::Batter, out),
        &[],
    );
    let part = |who| (who, Credit::DoublePlay, Because::TookPart(2), "9.11");
    assert_eq!(given(&book)[5..], [part(FirstBase), part(SecondBase), part(Shortstop)]);
    let double_play = judged(&book).grounded_into_double_play.expect("a double play");
    assert_eq!((double_play.because, double_play.rule), (Because::Grounded, "9.02(a)(17)"));
}

#[test]
fn what_the_battery_let_through_has_its_reason() {
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::WildPitch)]);
    let got_away = |book: &Scorer| judged(book).got_away.map(|r| (r.verdict, r.because, r.rule));
    assert_eq!(got_away(&book), Some((GotAway::WildPitch, Because::PitchedWild, "9.13(a)")));
    let on = book.last();
    book.judge(Judgment::GotAway { on, wild: false });
    assert_eq!(got_away(&book), Some((GotAway::PassedBall, Because::Judged, "9.13(b)")));
    book.running(&[by(Second, Third, Cause::PassedBall)]);
    assert_eq!(got_away(&book), Some((GotAway::PassedBall, Because::LetPass, "9.13(b)")));
    book.running(&[by(Third, Home, Cause::Balk)]);
    assert_eq!(judged(&book).balk.map(|r| (r.because, r.rule)), Some((Because::Balked, "6.02(a)")));
    assert_eq!(got_away(&book), None);
}

/// 9.07(d), 9.07(g): why a base gained was not stolen.
#[test]
fn a_base_that_was_not_stolen_says_why() {
    let mut book = Scorer::nine();
    let caught =
        Move::out(Start::First, Out { attempt: Some(Attempt::Steal), ..Out::new(How::Tag, Second, &[Pitcher]) });
    book.walk().walk().running(&[by(Second, Third, Cause::Steal), caught]);
    let why = |book: &Scorer| judged(book).thefts.iter().map(|(_, r)| (r.because, r.rule)).collect::<Vec<_>>();
    assert_eq!(why(&book), [(Because::OtherRunnerOut, "9.07(d)"), (Because::CaughtStealing, "9.07(h)(1)")]);
    book.running(&[by(Third, Home, Cause::Steal)]);
    assert_eq!(why(&book), [(Because::Stole, "9.07(a)")]);
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Second)]).running(&[by(Second, Third, Cause::Indifference)]);
    assert_eq!(why(&book), [(Because::Undisputed, "9.07(g)")]);
}

// ---- 9.11: an error between the outs, and one after them ----

/// Runners on first and second, nobody out: the shortstop starts a double play at second and first, and this goes wrong.
fn double_play_with(misplay: Misplay, lead: Move) -> Scorer {
    let mut book = Scorer::nine();
    book.walk().walk();
    let batter = batter_out(How::Force, &[Shortstop, SecondBase, FirstBase]);
    book.in_play(ball(Trajectory::Ground, Shortstop), &[lead, forced(First, Second)], batter, &[misplay]);
    book
}

fn is_double_play(book: &Scorer) -> (bool, bool) {
    let judged = judged(book);
    (judged.credited(Credit::DoublePlay).next().is_some(), judged.grounded_into_double_play.is_some())
}

#[test]
fn an_error_after_the_second_out_leaves_the_double_play() {
    // The first baseman then throws wildly home: the runner scores, and the two outs had been made.
    let wild = Misplay::new(FirstBase, MisplayKind::Throwing);
    let scores = Move {
        from: Start::Second,
        legs: vec![Leg { to: Third, cause: Cause::Play }, Leg { to: Home, cause: Cause::Error(0) }],
        out: None,
    };
    let book = double_play_with(wild.clone(), scores.clone());
    assert_eq!(is_double_play(&book), (true, true));
    // With who handled the ball before, it is plain: 6-4-3 and then the throw.
    let told = Misplay { after: vec![Shortstop, SecondBase], ..wild };
    assert_eq!(is_double_play(&double_play_with(told, scores)), (true, true));
}

/// A runner thrown out after a base that the ball gave him had not run on the error, which came later.
#[test]
fn who_ran_on_the_ball_was_out_before_a_late_error() {
    let mut book = Scorer::nine();
    book.single(&[]).single(&[to(First, Third)]);
    let scores = by(Third, Home, Cause::Error(0));
    let runner = Move {
        from: Start::First,
        legs: vec![Leg { to: Second, cause: Cause::Play }],
        out: Some(Out::new(How::Tag, Third, &[FirstBase, ThirdBase])),
    };
    let wild = Misplay::new(ThirdBase, MisplayKind::Throwing);
    let batter = batter_out(How::Force, &[Shortstop, FirstBase]);
    book.in_play(ball(Trajectory::Ground, Shortstop), &[runner, scores], batter, &[wild]);
    assert_eq!(is_double_play(&book), (true, false));
}

#[test]
fn an_error_between_the_outs_is_no_double_play() {
    // Out at second, the throw to first is muffed, and the runner from second is thrown out at home.
    let muffed = |after: &[Position], home: &[Position]| {
        let mut book = Scorer::nine();
        book.walk().walk();
        let at_home = Move::out(Start::Second, Out::new(How::Tag, Home, home));
        let muff = Misplay { after: after.to_vec(), ..Misplay::new(FirstBase, MisplayKind::Muff) };
        let safe = Move::safe(Start::Batter, First, Cause::Error(0));
        book.in_play(ball(Trajectory::Ground, Shortstop), &[forced(First, Second), at_home], safe, &[muff]);
        is_double_play(&book)
    };
    assert_eq!(muffed(&[Shortstop, SecondBase], &[Shortstop, SecondBase, FirstBase, Catcher]), (false, false));
    assert_eq!(muffed(&[], &[FirstBase, Catcher]), (false, false));
    // Where nothing tells the order, an error that let him live is taken to have come between.
    assert_eq!(muffed(&[], &[Catcher]), (false, false));
    // 6-5 and 6-5-4, and then 4-3 muffed: both were out before.
    let mut book = Scorer::nine();
    book.walk().walk();
    let lead = Move::out(Start::Second, Out::new(How::Force, Third, &[Shortstop, ThirdBase]));
    let second = Move::out(Start::First, Out::new(How::Force, Second, &[Shortstop, ThirdBase, SecondBase]));
    let muff = Misplay { after: vec![Shortstop, ThirdBase, SecondBase], ..Misplay::new(FirstBase, MisplayKind::Muff) };
    let safe = Move::safe(Start::Batter, First, Cause::Error(0));
    book.in_play(ball(Trajectory::Ground, Shortstop), &[lead, second], safe, &[muff]);
    assert_eq!(is_double_play(&book), (true, true));
}

#[test]
fn an_error_before_both_outs_does_not_come_between_them() {
    // The left fielder drops the fly, and the runners who had waited are forced: 7-5-4.
    let mut book = Scorer::nine();
    book.walk().walk();
    let lead = Move::out(Start::Second, Out::new(How::Force, Third, &[Position::LeftField, ThirdBase]));
    let second = Move::out(Start::First, Out::new(How::Force, Second, &[Position::LeftField, ThirdBase, SecondBase]));
    let dropped = Misplay::new(Position::LeftField, MisplayKind::DroppedFly);
    let safe = Move::safe(Start::Batter, First, Cause::Error(0));
    book.in_play(ball(Trajectory::Fly, Position::LeftField), &[lead, second], safe, &[dropped]);
    assert_eq!(is_double_play(&book), (true, false));
    // A runner out who had first run on the error was put out after it; the batter had been out before.
    let mut book = Scorer::nine();
    book.walk();
    let wild = Misplay::new(FirstBase, MisplayKind::Throwing);
    let runner = Move {
        from: Start::First,
        legs: vec![Leg { to: Second, cause: Cause::Play }, Leg { to: Third, cause: Cause::Error(0) }],
        out: Some(Out::new(How::Tag, Home, &[CenterField, Catcher])),
    };
    let out = batter_out(How::Force, &[Shortstop, FirstBase]);
    book.in_play(ball(Trajectory::Ground, Shortstop), &[runner], out, &[wild]);
    assert_eq!(is_double_play(&book), (false, false));
}

/// An error of the first part of a play comes before an out of the second part, and is not forgotten.
#[test]
fn an_error_in_a_play_told_in_two_entries() {
    let in_two = |spared: Option<Start>| {
        let mut book = Scorer::nine();
        book.walk();
        let wild = Misplay { spared, ..Misplay::new(FirstBase, MisplayKind::Throwing) };
        let to_second = by(First, Second, Cause::Error(0));
        let out = batter_out(How::Force, &[Shortstop, FirstBase]);
        book.in_play(ball(Trajectory::Ground, Shortstop), &[to_second], out, &[wild]);
        book.same_play(&[Move::out(Start::Second, Out::new(How::Tag, Third, &[CenterField, ThirdBase]))]);
        is_double_play(&book).0
    };
    assert!(!in_two(None));
    assert!(!in_two(Some(Start::First)));
}
