//! Why: each run's reason names its plays and the section of the rule.

use benchbook_stats::code::{Preset, TieBreak};
use benchbook_stats::field::Base::{First, Home, Second, Third};
use benchbook_stats::field::Position;
use benchbook_stats::log::{Cause, EntryId, How, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_stats::ruling::earned::{Answers, Help, Reason, runs};
use benchbook_tests::scorer::{ROGER, Scorer, ball, by, forced, tagged, then, to};

use crate::last;

/// The first run's reason after a home run, with its section.
fn first_run(book: &mut Scorer) -> (Reason, &'static str) {
    book.home_run();
    let run = runs(book.game()).into_iter().next().expect("a run");
    (run.because, run.rule)
}

fn misplay(kind: MisplayKind) -> Misplay {
    Misplay::new(Position::FirstBase, kind)
}

/// Where the inning should have been over, the play of the third out and every chance missed, and no other play.
#[test]
fn inning_over_names_the_third_out_and_the_chances_missed() {
    // The error is the third out itself.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().error(Position::Shortstop, &[]);
    let error = book.last();
    book.home_run();
    assert_eq!(last(&book).because, Reason::InningOver { third: error, missed: vec![error] });
    assert_eq!(last(&book).because.entries(), [error]);
    assert_eq!(last(&book).rule, "9.16");

    // Two errors, between outs of every kind, and a real third out.
    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]);
    let first = book.last();
    book.foul_fly_muffed(Position::Catcher);
    let second = book.last();
    book.single(&[to(First, Second)]).ground_out(&[to(Second, Third), to(First, Second)]);
    let third = book.last();
    book.home_run();
    assert_eq!(last(&book).because, Reason::InningOver { third, missed: vec![first, second] });
    assert_eq!(last(&book).because.entries(), [first, second, third]);

    // Runners put out and batters out advancing are no missed chances.
    let mut book = Scorer::nine();
    let mut stretching = Move::safe(Start::Batter, First, Cause::Play);
    stretching.out = Some(Out::new(How::Tag, Second, &[Position::CenterField, Position::SecondBase]));
    book.in_play(ball(Trajectory::Line, Position::CenterField), &[], stretching, &[]).walk();
    book.running(&[tagged(First, Second)]).error(Position::Shortstop, &[]);
    let error = book.last();
    book.home_run();
    assert_eq!(last(&book).because, Reason::InningOver { third: error, missed: vec![error] });
}

/// A runner who was helped and comes in when three should be out: the inning was over, whatever helped him.
#[test]
fn helped_and_then_the_inning_should_be_over() {
    let mut book = Scorer::nine();
    book.strikeout().strikeout().walk().running(&[by(First, Second, Cause::PassedBall)]);
    book.error(Position::Shortstop, &[]);
    let error = book.last();
    book.single(&[to(Second, Home), to(First, Second)]);
    assert_eq!(last(&book).because, Reason::InningOver { third: error, missed: vec![error] });
    // In before that, he was helped, and nothing can bring him in any more.
    let mut book = Scorer::nine();
    book.strikeout().strikeout().triple(&[]).running(&[by(Third, Home, Cause::PassedBall)]);
    let helped = book.last();
    book.error(Position::Shortstop, &[]);
    let expected = Reason::Helped { on: helped, by: Help::PassedBall, stands: Third, over: true };
    assert_eq!(last(&book).because, expected);
}

#[test]
fn reached_on_something_the_pitcher_does_not_answer_for() {
    let on = |book: &Scorer| book.last();

    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]);
    let reason = Reason::ReachedOnError { on: on(&book), by: Some(Position::Shortstop) };
    assert_eq!(first_run(&mut book), (reason, "9.16(b)(3)"));

    let mut book = Scorer::nine();
    book.strikeout_reaches(Cause::PassedBall, &[], &[]);
    let reason = Reason::ReachedOnPassedBall { on: on(&book) };
    assert_eq!(first_run(&mut book), (reason, "9.16(a)"));

    let mut book = Scorer::nine();
    book.catcher_interference();
    let reason = Reason::ReachedOnInterference { on: on(&book) };
    assert_eq!(first_run(&mut book), (reason, "9.16(b)(2)"));

    for cause in [Cause::Obstruction, Cause::Error(0)] {
        let mut book = Scorer::nine();
        let batter = Move::safe(Start::Batter, First, cause);
        let obstruction = misplay(MisplayKind::Obstruction);
        book.in_play(ball(Trajectory::Ground, Position::FirstBase), &[], batter, &[obstruction]);
        let reason = Reason::ReachedOnObstruction { on: on(&book) };
        assert_eq!(first_run(&mut book), (reason, "9.16(b)(2)"));
    }

    let mut book = Scorer::nine();
    book.foul_fly_muffed(Position::Catcher);
    let reason = Reason::FoulFlyMuffed { on: on(&book) };
    book.single(&[]);
    assert_eq!(first_run(&mut book), (reason, "9.16(b)(1)"));

    let mut book = Scorer::nine();
    book.single(&[]).erring(&[], &[Misplay { spared: Some(Start::First), ..misplay(MisplayKind::Muff) }]);
    let reason = Reason::Spared { on: on(&book) };
    assert_eq!(first_run(&mut book), (reason, "9.16(c)"));

    let mut book = Scorer::nine();
    book.error(Position::Shortstop, &[]).choice(&[forced(First, Second)]);
    let reason = Reason::TookPlace { on: on(&book) };
    assert_eq!(first_run(&mut book), (reason, "9.16"));

    let mut code = Preset::Baseball9.code();
    code.tie_break = Some(TieBreak { from_inning: 1, bases: vec![Third] });
    assert_eq!(first_run(&mut Scorer::by_code(code)), (Reason::Placed, "7.01(b)"));
}

/// A batter safe at first on a hit, spared by an error going to second.
#[test]
fn a_batter_spared_after_reaching_first() {
    let mut book = Scorer::nine();
    let batter = then(Move::safe(Start::Batter, First, Cause::Play), Second, Cause::Error(0));
    let muff = Misplay { spared: Some(Start::Batter), ..misplay(MisplayKind::Muff) };
    book.strikeout().strikeout().in_play(ball(Trajectory::Line, Position::RightField), &[], batter, &[muff]);
    let on = book.last();
    assert_eq!(first_run(&mut book), (Reason::Spared { on }, "9.16(c)"));
    assert_eq!(last(&book).because, Reason::InningOver { third: on, missed: vec![on] });
}

/// Every kind of help, by name, and where it leaves him.
#[test]
fn helped_along() {
    let cases: [(Cause, Option<MisplayKind>, Option<Help>); 9] = [
        (Cause::Error(0), Some(MisplayKind::Throwing), Some(Help::Error)),
        (Cause::Error(0), Some(MisplayKind::Obstruction), Some(Help::Obstruction)),
        (Cause::Error(0), Some(MisplayKind::Interference), Some(Help::Interference)),
        (Cause::Obstruction, None, Some(Help::Obstruction)),
        (Cause::Interference, None, Some(Help::Interference)),
        (Cause::PassedBall, None, Some(Help::PassedBall)),
        (Cause::WildPitch, None, None),
        (Cause::Balk, None, None),
        (Cause::Indifference, None, None),
    ];
    for (cause, kind, help) in cases {
        let mut book = Scorer::nine();
        book.triple(&[]);
        let misplays: Vec<Misplay> = kind.map(misplay).into_iter().collect();
        book.erring(&[by(Third, Home, cause)], &misplays);
        let on = book.last();
        let expected = match help {
            Some(by) => Reason::Helped { on, by, stands: Third, over: false },
            None => Reason::Unaided,
        };
        assert_eq!(last(&book).because, expected, "{cause:?}");
        assert_eq!(last(&book).because.entries().is_empty(), help.is_none());
        // From third any single brings him in.
        book.single(&[]);
        if let Some(by) = help {
            assert_eq!(last(&book).because, Reason::WouldHaveScored { helped: on, by, on: book.last() });
            assert_eq!((last(&book).rule, last(&book).because.entries()), ("9.16(d)", vec![on, book.last()]));
        }
    }
}

/// What a later play gives a helped runner who is still on base one base further than he should be.
#[test]
fn what_later_plays_give_a_helped_runner() {
    // (cause of his next base, where he would stand then)
    for (cause, stands) in [
        (Cause::Steal, Second),
        (Cause::WildPitch, Second),
        (Cause::Balk, Second),
        (Cause::IllegalPitch, Second),
        (Cause::Throw, First),
        (Cause::Indifference, First),
        (Cause::PassedBall, First),
    ] {
        let mut book = Scorer::nine();
        book.walk()
            .running(&[by(First, Second, Cause::PassedBall)])
            .running(&[by(Second, Third, cause)])
            .running(&[by(Third, Home, Cause::PassedBall)]);
        assert!(
            matches!(last(&book).because, Reason::Helped { stands: s, .. } if s == stands),
            "{cause:?}: {:?}",
            last(&book).because
        );
    }
    // An out gives nothing, a single one base, a double two.
    let stands_after = |play: fn(&mut Scorer)| {
        let mut book = Scorer::nine();
        book.walk().running(&[by(First, Second, Cause::PassedBall)]).running(&[by(Second, Third, Cause::PassedBall)]);
        play(&mut book);
        let run = runs(book.game()).into_iter().next().expect("a run");
        match run.because {
            Reason::Helped { stands, .. } => Some(stands),
            _ => None,
        }
    };
    assert_eq!(stands_after(|b| _ = b.ground_out(&[to(Third, Home)])), Some(First));
    assert_eq!(stands_after(|b| _ = b.fly_out(&[to(Third, Home)])), Some(First));
    assert_eq!(stands_after(|b| _ = b.single(&[to(Third, Home)])), Some(Second));
    assert_eq!(stands_after(|b| _ = b.double(&[to(Third, Home)])), Some(Third));
    assert_eq!(stands_after(|b| _ = b.triple(&[to(Third, Home)])), None);
}

/// A balk moves everyone, also one who is home already and should not be.
#[test]
fn a_balk_moves_everyone() {
    let mut book = Scorer::nine();
    book.triple(&[]).running(&[by(Third, Home, Cause::PassedBall)]).walk();
    assert!(!last(&book).earned);
    book.running(&[by(First, Second, Cause::Balk)]);
    assert!(last(&book).earned);
}

/// A throw after a runner who should not be there gives the batter no base by rights.
#[test]
fn a_base_on_a_throw_after_somebody_who_should_not_be_there() {
    let run = |first: fn(&mut Scorer)| {
        let mut book = Scorer::nine();
        first(&mut book);
        let batter = then(Move::safe(Start::Batter, First, Cause::Play), Second, Cause::Throw);
        let out = tagged(First, Third);
        book.in_play(ball(Trajectory::Line, Position::LeftField), &[out], batter, &[]);
        book.single(&[to(Second, Home)]);
        last(&book).because
    };
    assert_eq!(run(|b| _ = b.walk()), Reason::Unaided);
    assert!(matches!(
        run(|b| _ = b.error(Position::Shortstop, &[])),
        Reason::Helped { by: Help::Throw, stands: Second, .. }
    ));
}

/// Why this pitcher.
#[test]
fn who_answers_and_why() {
    let mut book = Scorer::nine();
    book.count(3, 1).relieve(ROGER).count(1, 0).home_run();
    let answers: Vec<(Answers, &str)> = runs(book.game()).iter().map(|r| (r.answers, r.answers.rule())).collect();
    assert_eq!(answers, [(Answers::LeftInMidCount, "9.16(h)"), (Answers::Faced, "9.16(g)")]);

    let mut book = Scorer::nine();
    book.walk().relieve(ROGER).choice(&[forced(First, Second)]);
    let on = book.last();
    book.home_run();
    assert_eq!(runs(book.game())[0].answers, Answers::PassedOn { on });
}

/// Every reason and every answer says something of its own.
#[test]
fn in_words() {
    let on = EntryId(7);
    let reasons = [
        Reason::Unaided,
        Reason::WouldHaveScored { helped: on, by: Help::Error, on },
        Reason::Judged { earned: true },
        Reason::Judged { earned: false },
        Reason::ReachedOnError { on, by: Some(Position::Shortstop) },
        Reason::ReachedOnPassedBall { on },
        Reason::ReachedOnInterference { on },
        Reason::ReachedOnObstruction { on },
        Reason::FoulFlyMuffed { on },
        Reason::Spared { on },
        Reason::Placed,
        Reason::TookPlace { on },
        Reason::InningOver { third: on, missed: vec![on] },
        Reason::InningOver { third: on, missed: vec![on, EntryId(8)] },
        Reason::Helped { on, by: Help::PassedBall, stands: Third, over: true },
        Reason::Helped { on, by: Help::Obstruction, stands: Third, over: true },
    ];
    let mut words: Vec<String> = reasons.iter().map(ToString::to_string).collect();
    words.extend(
        [Answers::Faced, Answers::LeftInMidCount, Answers::PassedOn { on }, Answers::Placed].map(|a| a.to_string()),
    );
    assert!(words.iter().all(|w| w.ends_with('.') && w.len() > 20), "{words:#?}");
    let all = words.len();
    words.sort_unstable();
    words.dedup();
    assert_eq!(words.len(), all);
    assert!(reasons[4].to_string().contains("shortstop") && reasons[13].to_string().contains('2'));
}
