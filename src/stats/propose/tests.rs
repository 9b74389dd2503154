//! Tables of usual plays, and the promise that whatever is proposed can be recorded.

use super::*;
use crate::field::{Half, Side};
use crate::log::{Call, Cause, Entry, Pitch};
use crate::team::{Assignment, Card, Player, PlayerId};

fn tell(game: &mut Game, event: Event) {
    let entry = Entry { id: game.next_id(), at: None, event };
    game.record(entry.clone()).unwrap_or_else(|refusal| panic!("{entry:?}: {refusal}"));
}

/// A game at the first pitch.
fn begun(code: Code) -> Game {
    let mut game = Game::new();
    let fielders = usize::from(code.fielders);
    tell(&mut game, Event::Rules(Box::new(code)));
    for side in Side::BOTH {
        let first = 1 + 100 * side.index() as u32;
        let mut card = Card::default();
        for i in 0..fielders {
            let player = PlayerId(first + i as u32);
            tell(&mut game, Event::Player { side, player: Player::unnamed(player) });
            card.order.push(Assignment::new(player, Position::ALL[i]));
        }
        tell(&mut game, Event::Card { side, card });
    }
    tell(&mut game, Event::PlayBall);
    game
}

/// So many out, and runners on first (1), second (2) and third (4), added up.
fn situation(code: Code, outs: u8, bases: u8) -> Game {
    let mut game = begun(code);
    for _ in 0..outs {
        let strikes = game.code().strikes_for_out - game.situation().count.strikes;
        for _ in 0..strikes {
            tell(&mut game, Event::Pitch(Pitch::new(Call::SwingingStrike)));
        }
    }
    for base in Base::STANDING {
        if bases & (1 << base as u8) != 0 {
            let player = PlayerId(9 - u32::from(base.number()));
            tell(&mut game, Event::PlaceRunner { base, player });
        }
    }
    assert_eq!(game.situation().outs, outs);
    game
}

fn chain(text: &str) -> Vec<Position> {
    text.split('-')
        .filter(|p| !p.is_empty())
        .map(|p| Position::try_from(p.parse::<u8>().expect("a number")).expect("a position"))
        .collect()
}

fn record(game: &Game, proposal: &Proposal, about: &str) -> Game {
    game.preview(proposal.event.clone()).unwrap_or_else(|refusal| panic!("{about}: {proposal:?}: {refusal}"))
}

/// The state after the first proposal, as "outs/bases/runs in": bases as in [`situation`].
fn after(before: &Game, after: &Game) -> String {
    let s = after.situation();
    let runs = s.score[0] - before.situation().score[0];
    if s.half != Half::Top {
        return format!("side out, {runs} in");
    }
    let bases = s.runners().map(|(base, _)| 1_u8 << base as u8).sum::<u8>();
    format!("{} out, bases {bases}, {runs} in", s.outs)
}

/// Handled by fielders: the first proposal, by rule and common practice.
#[test]
fn first_proposal_for_a_chain_of_fielders() {
    let table = [
        // outs, bases, fielders, outcome, then ... why
        (0, 0, "6-3", "GroundOut", "1 out, bases 0, 0 in", "routine"),
        (0, 0, "6", "GroundOut", "1 out, bases 0, 0 in", "the throw to first goes without saying"),
        (0, 0, "3", "GroundOut", "1 out, bases 0, 0 in", "unassisted"),
        (0, 0, "3-1", "GroundOut", "1 out, bases 0, 0 in", "pitcher covers"),
        (0, 0, "1-6-3", "GroundOut", "1 out, bases 0, 0 in", "deflected, then 6 to 3"),
        (0, 1, "6-3", "GroundOut", "1 out, bases 2, 0 in", "the forced runner moves up"),
        (0, 1, "6-4-3", "DoublePlay", "2 out, bases 0, 0 in", "force at second, on to first"),
        (1, 1, "6-4-3", "DoublePlay", "side out, 0 in", "and that is three"),
        (2, 1, "6-4-3", "RunnerOut", "side out, 0 in", "one was enough"),
        (0, 1, "6-4", "RunnerOut", "1 out, bases 1, 0 in", "force; the batter is on by choice"),
        (2, 1, "6-4", "RunnerOut", "side out, 0 in", "force, third out"),
        (0, 1, "6", "DoublePlay", "2 out, bases 0, 0 in", "the usual try with a runner on first"),
        (0, 1, "3-4", "GroundOut", "1 out, bases 2, 0 in", "the second baseman covers first"),
        (0, 1, "3-6-1", "DoublePlay", "2 out, bases 0, 0 in", "pitcher covers first on the return"),
        (0, 3, "5-4-3", "DoublePlay", "2 out, bases 4, 0 in", "around the horn, the lead runner to third"),
        (0, 7, "1-2-3", "DoublePlay", "2 out, bases 6, 0 in", "force at home, on to first"),
        (0, 7, "6-4-3", "DoublePlay", "2 out, bases 4, 1 in", "the run from third comes in"),
        (1, 7, "6-4-3", "DoublePlay", "side out, 0 in", "no run on a third out by force (OBR 5.08(a))"),
        (0, 7, "6-2", "RunnerOut", "1 out, bases 7, 0 in", "force at home, all others move up"),
        (0, 4, "5-2", "RunnerOut", "1 out, bases 1, 0 in", "tagged at home, the batter is safe"),
        (0, 4, "6-3", "GroundOut", "1 out, bases 0, 1 in", "middle infielders play back"),
        (0, 4, "5-3", "GroundOut", "1 out, bases 4, 0 in", "the runner on third stays on a ball in front of him"),
        (2, 4, "6-3", "GroundOut", "side out, 0 in", "third out before the batter reaches first"),
        (0, 2, "4-3", "GroundOut", "1 out, bases 4, 0 in", "behind the runner: he takes third"),
        (0, 2, "6-3", "GroundOut", "1 out, bases 2, 0 in", "in front of the runner: he stays"),
        (0, 2, "6-5", "RunnerOut", "1 out, bases 1, 0 in", "tagged at third, unforced"),
        (0, 4, "5-2-5-2-6-1", "Rundown", "1 out, bases 2, 0 in", "the batter takes second during the rundown"),
        (0, 4, "5-2-5", "Rundown", "1 out, bases 2, 0 in", "back and forth between third and home"),
        (0, 1, "3-6-3", "DoublePlay", "2 out, bases 0, 0 in", "to second and back to first: no rundown"),
        (0, 0, "8", "Caught", "1 out, bases 0, 0 in", "a fly to an outfielder touched is caught"),
        (1, 4, "8", "Caught", "2 out, bases 0, 1 in", "sacrifice fly"),
        (2, 4, "8", "Caught", "side out, 0 in", "third out"),
        (0, 0, "2", "Caught", "1 out, bases 0, 0 in", "a ball only the catcher touches: foul pop"),
        (0, 0, "2-3", "GroundOut", "1 out, bases 0, 0 in", "in front of the plate"),
        (0, 2, "8-2", "HitAndOut", "1 out, bases 1, 0 in", "single, thrown out at home"),
        (0, 4, "8-2", "DoublePlay", "2 out, bases 0, 0 in", "caught, and the runner tagging up is out"),
        (0, 0, "7-4", "HitAndOut", "1 out, bases 0, 0 in", "out stretching a single"),
        (0, 1, "9-5", "HitAndOut", "1 out, bases 1, 0 in", "first to third, thrown out"),
    ];
    for (outs, bases, fielders, outcome, then, why) in table {
        let game = situation(Code::default(), outs, bases);
        let seen = Seen { fielders: chain(fielders), ..Seen::default() };
        let list = in_play(&game, &seen);
        let about = format!("{outs} out, bases {bases}, {fielders}: {why}");
        let first = list.first().unwrap_or_else(|| panic!("{about}: nothing proposed"));
        assert!(format!("{:?}", first.outcome).starts_with(outcome), "{about}: {:?}", first.outcome);
        assert_eq!(after(&game, &record(&game, first, &about)), then, "{about}");
    }
}

/// A point touched: the first proposal for where it came down.
#[test]
fn first_proposal_for_a_point_of_the_field() {
    let table = [
        ((-150, 230), 0, "Hit { bases: 1, infield: false }", "0 out, bases 1, 0 in", "in front of the left fielder"),
        (
            (-150, 230),
            3,
            "Hit { bases: 1, infield: false }",
            "0 out, bases 3, 1 in",
            "second scores, first stops at second",
        ),
        ((0, 420), 1, "Hit { bases: 2, infield: false }", "0 out, bases 6, 0 in", "to the wall: first stops at third"),
        ((130, 310), 0, "Hit { bases: 2, infield: false }", "0 out, bases 2, 0 in", "in the gap"),
        ((0, 460), 7, "HomeRun", "0 out, bases 0, 4 in", "over the fence"),
        ((20, 60), 0, "Hit { bases: 1, infield: true }", "0 out, bases 1, 0 in", "died in front of the mound"),
        ((-80, 20), 0, "Caught", "1 out, bases 0, 0 in", "foul side: a foul fly"),
    ];
    for ((x, y), bases, outcome, then, why) in table {
        let game = situation(Code::default(), 0, bases);
        let seen = Seen { spot: Some(Spot { x, y }), ..Seen::default() };
        let first = in_play(&game, &seen).into_iter().next().unwrap_or_else(|| panic!("{why}: nothing proposed"));
        assert!(format!("{:?}", first.outcome).starts_with(outcome), "{why}: {:?}", first.outcome);
        assert_eq!(after(&game, &record(&game, &first, why)), then, "{why}");
    }
}

/// How it came off the bat, as said by the scorer.
#[test]
fn what_the_scorer_says_of_the_ball_comes_first() {
    let table = [
        (
            "6",
            Trajectory::Pop,
            0,
            3,
            "infield_fly: true",
            "1 out, bases 3, 0 in",
            "infield fly: first and second, none out",
        ),
        ("6", Trajectory::Pop, 2, 3, "infield_fly: false", "side out, 0 in", "two out: no infield fly"),
        ("6", Trajectory::Pop, 0, 1, "infield_fly: false", "1 out, bases 1, 0 in", "first only: no infield fly"),
        (
            "4-3",
            Trajectory::Line,
            0,
            1,
            "DoublePlay",
            "2 out, bases 0, 0 in",
            "lined to second, the runner doubled off first",
        ),
        ("1-3", Trajectory::Bunt, 0, 1, "BuntOut", "1 out, bases 2, 0 in", "sacrifice"),
        ("1-4", Trajectory::Bunt, 0, 1, "BuntOut", "1 out, bases 2, 0 in", "the second baseman covers first on a bunt"),
        ("5-3", Trajectory::Bunt, 0, 3, "BuntOut", "1 out, bases 6, 0 in", "both move up"),
        ("1", Trajectory::Bunt, 1, 1, "BuntOut", "2 out, bases 2, 0 in", "the throw goes without saying"),
    ];
    for (fielders, trajectory, outs, bases, outcome, then, why) in table {
        let game = situation(Code::default(), outs, bases);
        let seen = Seen { fielders: chain(fielders), trajectory: Some(trajectory), ..Seen::default() };
        let first = in_play(&game, &seen).into_iter().next().unwrap_or_else(|| panic!("{why}: nothing proposed"));
        assert!(format!("{:?}", first.outcome).contains(outcome), "{why}: {:?}", first.outcome);
        assert_eq!(after(&game, &record(&game, &first, why)), then, "{why}");
    }
}

/// 9.10: one assist for each who threw, none twice. A double play 6-4-3 is an out by 6 and 4 and one by 4 and 3.
#[test]
fn a_double_play_divides_the_chain_between_its_outs() {
    let game = situation(Code::default(), 0, 1);
    let seen = Seen { fielders: chain("6-4-3"), ..Seen::default() };
    let Event::InPlay(play) = &in_play(&game, &seen)[0].event else { panic!("a ball in play") };
    let by: Vec<_> = play.action.moves.iter().filter_map(|m| m.out.as_ref()).map(|out| out.by.clone()).collect();
    assert_eq!(by, [chain("6-4"), chain("4-3")]);
    assert_eq!(play.ball.fielders, chain("6-4-3"));
}

#[test]
fn nothing_touched_nothing_proposed() {
    assert!(in_play(&situation(Code::default(), 0, 0), &Seen::default()).is_empty());
}

/// Outcomes a scorer will look for are all on the list.
#[test]
fn the_list_has_what_may_have_happened() {
    let table = [
        ("6", 0, 0, ["GroundOut", "FieldingError", "Hit", "ThrowingError", "Caught"]),
        ("6-3", 0, 1, ["GroundOut", "ThrowingError", "Muff", "AllSafe", "Hit"]),
        ("6-4-3", 0, 1, ["DoublePlay", "ThrowingError", "Muff", "RunnerOut", "Hit"]),
        ("8", 0, 1, ["Caught", "Hit", "DroppedFly", "HitAndError", "GroundRuleDouble"]),
        ("2", 0, 1, ["Caught", "DroppedFoul", "GroundOut", "FieldingError", "ThrowingError"]),
        ("6", 0, 1, ["DoublePlay", "GroundOut", "RunnerOut", "RunnerHit", "BatterInterfered"]),
    ];
    for (fielders, outs, bases, wanted) in table {
        let game = situation(Code::default(), outs, bases);
        let list = in_play(&game, &Seen { fielders: chain(fielders), ..Seen::default() });
        let names: Vec<String> = list.iter().map(|p| format!("{:?}", p.outcome)).collect();
        for outcome in wanted {
            assert!(
                names.iter().any(|n| n.starts_with(outcome)),
                "{fielders}, bases {bases}: no {outcome} in {names:#?}"
            );
        }
    }
}

/// The promise: every proposal for a ball in play can be recorded, whatever the situation and the touches.
#[test]
fn every_proposal_in_play_is_accepted() {
    every_situation(|game, about| {
        for seen in touches() {
            let list = in_play(game, &seen);
            assert!(!list.is_empty(), "{about} {seen:?}: nothing proposed");
            assert!(list.len() <= 28, "{about} {seen:?}: {} proposals", list.len());
            for (i, proposal) in list.iter().enumerate() {
                assert!(list[..i].iter().all(|q| q.event != proposal.event), "{about} {seen:?}: {proposal:?} twice");
                record(game, proposal, about);
            }
        }
    });
}

/// The same for what happens between pitches.
#[test]
fn every_proposal_on_the_bases_is_accepted() {
    let chains = ["2", "3", "1-3", "2-6", "2-4", "1-3-6", "2-5", "1-3-6-3-4", "2-5-2-5", "1-2"];
    every_situation(|game, about| {
        for base in Base::STANDING {
            let there = game.situation().on(base).is_some();
            let simple = on_runner(game, base, false);
            assert_eq!(!simple.is_empty(), there, "{about} {base}");
            for proposal in &simple {
                record(game, proposal, about);
            }
            for attempt in [Attempt::Steal, Attempt::Pickoff, Attempt::Advance] {
                for by in chains {
                    let list = chased(game, base, attempt, &chain(by), false);
                    assert_eq!(!list.is_empty(), there, "{about} {base} {attempt:?} {by}");
                    for proposal in &list {
                        record(game, proposal, &format!("{about} {attempt:?} {by}"));
                    }
                }
            }
        }
    });
}

/// Between pitches: the first proposal, and what it leaves.
#[test]
fn first_proposal_on_the_bases() {
    let table = [
        (1, Base::First, Attempt::Steal, "2-6", "OutOnBases", "1 out, bases 0, 0 in", "caught stealing"),
        (1, Base::First, Attempt::Pickoff, "1-3", "OutOnBases", "1 out, bases 0, 0 in", "picked off"),
        (3, Base::Second, Attempt::Steal, "2-5", "OutOnBases", "1 out, bases 1, 0 in", "caught at third, first stays"),
        (
            4,
            Base::Third,
            Attempt::Advance,
            "2-1",
            "OutOnBases",
            "1 out, bases 0, 0 in",
            "out at home on a ball that got away",
        ),
    ];
    for (bases, base, attempt, by, outcome, then, why) in table {
        let game = situation(Code::default(), 0, bases);
        let first = chased(&game, base, attempt, &chain(by), false).into_iter().next().expect(why);
        assert!(format!("{:?}", first.outcome).starts_with(outcome), "{why}: {:?}", first.outcome);
        assert_eq!(after(&game, &record(&game, &first, why)), then, "{why}");
    }
    let game = situation(Code::default(), 0, 5);
    let outcomes: Vec<Outcome> = on_runner(&game, Base::First, false).into_iter().map(|p| p.outcome).collect();
    assert_eq!(outcomes[0], Outcome::Steal { who: Start::First, to: Base::Second });
    let wild = on_runner(&game, Base::First, false).into_iter().find(|p| p.outcome == Outcome::WildPitch).expect("one");
    assert_eq!(after(&game, &record(&game, &wild, "everybody moves up")), "0 out, bases 2, 1 in");
}

/// Where the rules of play have no stealing, none is proposed.
#[test]
fn no_steals_where_there_are_none() {
    let game = situation(Code { stealing: false, ..Code::default() }, 0, 1);
    assert!(on_runner(&game, Base::First, false).iter().all(|p| !matches!(p.outcome, Outcome::Steal { .. })));
}

/// 5.09(a)(3): the batter may run on strike three with first base free, or with two out.
#[test]
fn strike_three_got_away_only_where_the_batter_may_run() {
    let strikeout = |outs: u8, bases: u8, code: Code, call: Call| {
        let mut game = situation(code, outs, bases);
        for _ in 0..2 {
            tell(&mut game, Event::Pitch(Pitch::new(Call::CalledStrike)));
        }
        tell(&mut game, Event::Pitch(Pitch::new(call)));
        game
    };
    let none = Code { dropped_third_strike: false, ..Code::default() };
    let table = [
        (0, 0, Code::default(), Call::SwingingStrike, true, "first is free"),
        (0, 6, Code::default(), Call::CalledStrike, true, "first is free"),
        (0, 1, Code::default(), Call::SwingingStrike, false, "first is taken, none out"),
        (2, 1, Code::default(), Call::SwingingStrike, true, "two out"),
        (2, 7, Code::default(), Call::SwingingStrike, true, "two out, bases full"),
        (0, 0, Code::default(), Call::FoulTip, false, "a foul tip is caught by definition"),
        (0, 0, none, Call::SwingingStrike, false, "the rules of play have no dropped third strike"),
    ];
    for (outs, bases, code, call, may, why) in table {
        let game = strikeout(outs, bases, code, call);
        let list = strike_three_got_away(&game);
        assert_eq!(!list.is_empty(), may, "{why}");
        for proposal in &list {
            let after = record(&game, proposal, why);
            assert_eq!(after.conflicts().count(), 0, "{why}: {proposal:?}");
        }
    }
    let game = strikeout(0, 0, Code::default(), Call::SwingingStrike);
    let safe = record(&game, &strike_three_got_away(&game)[0], "wild pitch");
    let s = safe.situation();
    assert_eq!((s.outs, s.on(Base::First).is_some()), (0, true));
    assert!(strike_three_got_away(&safe).is_empty(), "once is enough");
}

fn every_situation(test: impl Fn(&Game, &str)) {
    let nine_and_short = Code { fielders: 10, ..Code::default() };
    let coach = Code { players_pitch: false, stealing: false, ..Code::default() };
    for (name, code) in [("nine", Code::default()), ("ten", nine_and_short), ("coach", coach)] {
        for outs in 0..3 {
            // The other codes differ in who is there and what may be done, not in the running.
            let all = [0, 1, 2, 3, 4, 5, 6, 7];
            for &bases in if name == "nine" { &all[..] } else { &[1, 4, 7] } {
                let game = situation(code.clone(), outs, bases);
                test(&game, &format!("{name}: {outs} out, bases {bases}:"));
            }
        }
    }
}

/// Chains a scorer may touch, points of the field, and what may be said of each.
fn touches() -> Vec<Seen> {
    let mut list = Vec::new();
    let mut chains: Vec<Vec<Position>> = Vec::new();
    for a in 1..=9_u8 {
        chains.push(chain(&a.to_string()));
        for b in 1..=9_u8 {
            if a != b {
                chains.push(chain(&format!("{a}-{b}")));
            }
        }
    }
    let long = [
        "6-4-3",
        "4-6-3",
        "5-4-3",
        "3-6-3",
        "3-6-1",
        "1-6-3",
        "1-2-3",
        "2-3-2",
        "5-2-3",
        "6-2-5-4",
        "8-6-2",
        "9-4-5",
        "5-2-5-2-6-1",
        "1-3-6-3-4",
        "7-6-5-2-5-1",
        "5-5-3",
        "4-3-6-5",
        "6-4-3-2",
    ];
    chains.extend(long.iter().map(|text| chain(text)));
    let said = [
        None,
        Some(Trajectory::Ground),
        Some(Trajectory::Line),
        Some(Trajectory::Fly),
        Some(Trajectory::Pop),
        Some(Trajectory::Bunt),
    ];
    for fielders in &chains {
        list.push(Seen { fielders: fielders.clone(), foul: true, ..Seen::default() });
        // What is said of the ball matters for who had it first; a pair of fielders is tried with less.
        let said = if fielders.len() == 2 { &said[..2] } else { &said[..] };
        for &trajectory in said {
            list.push(Seen { fielders: fielders.clone(), trajectory, ..Seen::default() });
        }
    }
    let points = [
        (0, 40),
        (30, 120),
        (-60, 70),
        (150, 230),
        (-150, 290),
        (0, 430),
        (100, 300),
        (0, 470),
        (-300, 310),
        (120, 20),
        (-90, -20),
        (350, 340),
    ];
    for (x, y) in points {
        for fielders in ["", "8", "7-6", "6-3", "9-2"] {
            for trajectory in [None, Some(Trajectory::Ground), Some(Trajectory::Fly), Some(Trajectory::Line)] {
                list.push(Seen {
                    spot: Some(Spot { x, y }),
                    fielders: chain(fielders),
                    trajectory,
                    landed: trajectory.is_none(),
                    ..Seen::default()
                });
            }
        }
    }
    list
}

/// Where the code has nine fielders the tenth is never named, and a base nobody covers is not thrown to.
#[test]
fn only_fielders_who_are_there_are_named() {
    let mut game = situation(Code::default(), 0, 1);
    let first = game.lineup(Side::Home).and_then(|l| l.at(Position::FirstBase)).expect("there at first");
    tell(&mut game, Event::Change { side: Side::Home, change: crate::team::Change::Leave { player: first } });
    for seen in touches().into_iter().filter(|s| !s.fielders.contains(&Position::FirstBase)) {
        for proposal in in_play(&game, &seen) {
            record(&game, &proposal, &format!("{seen:?}"));
        }
    }
}

/// An error with two out never names an advance on the play itself: it is the error that keeps the inning going.
#[test]
fn advances_on_an_error_are_by_the_error() {
    let game = situation(Code::default(), 2, 2);
    let list = in_play(&game, &Seen { fielders: chain("6"), ..Seen::default() });
    let error = list.iter().find(|p| matches!(p.outcome, Outcome::FieldingError { .. })).expect("on the list");
    let Event::InPlay(play) = &error.event else { panic!("a ball in play") };
    let causes: Vec<Cause> = play.action.moves.iter().flat_map(|m| &m.legs).map(|leg| leg.cause).collect();
    assert!(causes.iter().all(|c| matches!(c, Cause::Error(0))), "{causes:?}");
}
