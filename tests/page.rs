//! Lines of the scorer's rules that no other file tries: each with its section of the Official Baseball Rules, 2024
//! edition, from memory.

use benchbook_stats::code::{Preset, presets};
use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Count, Half, Outs, Position, Side};
use benchbook_stats::game::Phase;
use benchbook_stats::lines::BattingLine;
use benchbook_stats::log::{Call, Cause, Event, How, Leg, Misplay, MisplayKind, Move, Out, Start, Trajectory};
use benchbook_stats::rates::{earned_run_average, on_base};
use benchbook_stats::ruling::Book;
use benchbook_stats::season::{Minimum, PlayerSeason, Streaks, Turns, for_fielding, for_pitching};
use benchbook_tests::scorer::{Scorer, ball, by, then};

fn line(book: &Scorer, id: u32) -> BattingLine {
    let lines = book.game().batting(Side::Visitors);
    lines.into_iter().find(|l| l.player.is_some_and(|p| p.0 == id)).expect("a line")
}

/// 9.04(a)(2): obstruction with the bases full forces in a run batted in, like a walk.
#[test]
fn a_run_forced_in_by_obstruction() {
    let mut book = Scorer::nine();
    book.walk().walk().walk();
    let runners = [(Third, Home), (Second, Third), (First, Second)].map(|(from, to)| by(from, to, Cause::Obstruction));
    let batter = Move::safe(Start::Batter, First, Cause::Obstruction);
    book.in_play(ball(Trajectory::Ground, Position::FirstBase), &runners, batter, &[]);
    assert_eq!((line(&book, 4).runs_batted_in, line(&book, 4).interference, line(&book, 4).at_bats), (1, 1, 0));
    assert!(book.game().box_score().sides[0].proof.balances());
}

/// 9.06(c): out sliding past a base, he has held the one before. 9.06(d): out for missing a base, likewise; with first
/// missed there is no hit at all.
#[test]
fn a_hit_is_worth_the_last_base_held() {
    let hit = |to: Base, out: Out| {
        let mut book = Scorer::nine();
        let batter = Move { from: Start::Batter, legs: vec![Leg { to, cause: Cause::Play }], out: Some(out) };
        book.in_play(ball(Trajectory::Line, Position::LeftField), &[], batter, &[]);
        let line = line(&book, 1);
        assert!(book.game().box_score().sides[0].proof.balances());
        assert_eq!(line.at_bats, 1);
        let result = Book::of(book.game()).plays(book.game()).last().and_then(|(_, judged)| judged.result.clone());
        (line.hits, line.total_bases(), result.expect("a turn").rule)
    };
    let tagged = |at| Out::new(How::Tag, at, &[Position::LeftField, Position::SecondBase]);
    let appealed = |at| Out::new(How::Appeal, at, &[Position::SecondBase]);
    assert_eq!(hit(Second, tagged(Third)), (1, 2, "9.05(a)"), "stretching it");
    assert_eq!(hit(Second, tagged(Second)), (1, 1, "9.06(c)"), "past second");
    assert_eq!(hit(Third, tagged(Third)), (1, 2, "9.06(c)"), "past third");
    assert_eq!(hit(First, tagged(First)), (1, 1, "9.05(a)"), "he may run past first");
    assert_eq!(hit(Third, appealed(Second)), (1, 1, "9.06(d)"), "missed second");
    assert_eq!(hit(Home, appealed(Third)), (1, 2, "9.06(d)"), "missed third");
    assert_eq!(hit(Home, appealed(Home)), (1, 3, "9.06(d)"), "missed home");
    assert_eq!(hit(Second, appealed(First)), (0, 0, "9.06(d)"), "missed first");
}

/// 9.06(f): the winning run is the one that breaks the tie, whatever the score.
#[test]
fn a_game_ending_hit_at_one_all_and_one_behind() {
    for behind in [false, true] {
        let mut book = Scorer::nine();
        book.home_run();
        if behind {
            book.home_run();
        }
        book.side_retired().home_run().side_retired().halves(15);
        assert_eq!((book.game().situation().inning, book.game().situation().half), (9, Half::Bottom));
        if behind {
            book.triple(&[]).walk().walk();
            // Two come in; the second of them, from second, needed two bases.
            book.triple(&[by(Third, Home, Cause::Play), by(Second, Home, Cause::Play), by(First, Home, Cause::Play)]);
        } else {
            book.triple(&[]).double(&[by(Third, Home, Cause::Play)]);
        }
        assert!(matches!(book.game().situation().phase, Phase::Over(_)));
        let last = Book::of(book.game()).plays(book.game()).last().and_then(|(_, judged)| judged.result.clone());
        let bases = if behind { 2 } else { 1 };
        assert_eq!(last.map(|r| r.verdict.hit_bases()), Some(Some(bases)));
    }
}

/// 9.10(a)(1): who turns the ball's way so that an out results has an assist: 1-6-3.
#[test]
fn a_deflection_is_an_assist() {
    let mut book = Scorer::nine();
    let out = Out::new(How::Force, First, &[Position::Pitcher, Position::Shortstop, Position::FirstBase]);
    book.in_play(ball(Trajectory::Ground, Position::Pitcher), &[], Move::out(Start::Batter, out), &[]);
    let lines = book.game().fielding(Side::Home);
    let of = |id: u32| lines.iter().find(|l| l.player.is_some_and(|p| p.0 == id)).map(|l| (l.assists, l.putouts));
    assert_eq!([101, 106, 103].map(of), [Some((1, 0)), Some((1, 0)), Some((0, 1))]);
}

/// 9.12(d)(1), (2): a throw on a steal is an error only if a base more is gained by it; the steal stands (9.07(a)).
#[test]
fn a_wild_throw_on_a_steal() {
    let mut book = Scorer::nine();
    let wild = Misplay::new(Position::Catcher, MisplayKind::Throwing);
    book.walk().erring(&[then(by(First, Second, Cause::Steal), Third, Cause::Error(0))], &[wild]);
    assert_eq!((line(&book, 1).stolen_bases, book.game().line_score().side(Side::Home).errors), (1, 1));
    let mut book = Scorer::nine();
    book.walk().running(&[by(First, Second, Cause::Steal)]);
    assert_eq!((line(&book, 1).stolen_bases, book.game().line_score().side(Side::Home).errors), (1, 0));
}

/// 9.21(e), (f): an average of nothing, and one that has no end; on base counts no sacrifice hit and no interference.
#[test]
fn averages_at_their_edges() {
    assert_eq!(earned_run_average(0, Outs(0), 9).to_string(), "-");
    assert_eq!(earned_run_average(2, Outs(0), 9).to_string(), "∞");
    assert_eq!(earned_run_average(2, Outs(0), 9).value(), None, "never NaN");
    assert_eq!(earned_run_average(3, Outs(28), 9).to_string(), "2.89");
    assert_eq!(on_base(0, 0).to_string(), "-");
    let mut book = Scorer::nine();
    // One batter for each way: 1 walks, 2 is hit, 3 has a single; 4 hits into a fielder's choice.
    book.walk();
    assert_eq!(line(&book, 1).on_base().to_string(), "1.000");
    let sums = BattingLine {
        at_bats: 10,
        hits: 3,
        walks: 2,
        hit_by_pitch: 1,
        sacrifice_flies: 1,
        sacrifice_hits: 5,
        interference: 4,
        ..BattingLine::default()
    };
    assert_eq!(sums.on_base().to_string(), ".429", "6 of 14");
}

/// 9.22(b), (c): a regulation inning a game for pitchers, the last out short of it is not enough.
#[test]
fn minimums_of_pitchers_and_fielders() {
    let mut player = PlayerSeason::default();
    player.pitching.line.outs = Outs(53);
    assert!(!for_pitching(&player, 18).met());
    player.pitching.line.outs = Outs(54);
    assert!(for_pitching(&player, 18).met());
    player.played.insert(Position::Pitcher, Outs(54));
    assert_eq!(for_fielding(&player, Position::Pitcher, 0, 18), Minimum { needed: 54, reached: 54 });
    assert_eq!(for_fielding(&player, Position::Shortstop, 11, 18).needed, 12);
    assert_eq!(for_fielding(&player, Position::Catcher, 9, 17).needed, 9);
}

/// 9.23(b): what ends a hitting streak and what does not; a walk keeps the other one, on base, alive.
#[test]
fn streaks_game_by_game() {
    let mut streaks = Streaks::default();
    let game = |change: fn(&mut BattingLine)| {
        let mut line = BattingLine { plate_appearances: 3, ..BattingLine::default() };
        change(&mut line);
        Turns::of(&line)
    };
    for (line, hitting, on_base) in [
        (game(|l| l.hits = 1), 1, 1),
        (game(|l| l.walks = 3), 1, 2),
        (game(|l| (l.walks, l.sacrifice_hits, l.hit_by_pitch) = (1, 1, 1)), 1, 3),
        (game(|l| l.interference = 3), 1, 0),
        (game(|l| l.hits = 2), 2, 1),
        (game(|l| (l.walks, l.sacrifice_flies) = (2, 1)), 0, 2),
        (game(|_| ()), 0, 0),
    ] {
        streaks.add(&line);
        assert_eq!((streaks.hitting, streaks.on_base), (hitting, on_base), "{line:?}");
    }
    assert_eq!((streaks.longest_hitting, streaks.longest_on_base), (2, 3));
}

// ---- Codes of play ----

/// Slow-pitch: the count starts at 1-1, a foul with two strikes is an out, nobody steals, and hitters may be extra.
#[test]
fn slow_pitch_softball() {
    let code = Preset::SlowPitch7.code();
    assert_eq!((code.innings, code.stealing, code.starting_count), (7, false, Count::new(1, 1)));
    assert!(code.extra_hitters > 0);
    let mut book = Scorer::by_code(benchbook_stats::code::Code { fielders: 9, ..code });
    assert_eq!(book.game().situation().count, Count::new(1, 1));
    book.pitch(Call::CalledStrike).pitch(Call::Foul);
    assert_eq!((book.game().situation().outs, book.game().situation().count), (1, Count::new(1, 1)));
    assert_eq!(line(&book, 1).strikeouts, 1);
}

/// Coach or machine pitch: no pitcher has a line, and no count of balls walks anybody.
#[test]
fn coach_pitch() {
    let code = Preset::CoachPitch.code();
    assert!(!code.players_pitch && code.balls_for_walk.is_none());
    let walk = Event::IntentionalWalk;
    let book = Scorer::by_code(benchbook_stats::code::Code { fielders: 9, continuous_order: false, ..code });
    assert_eq!(book.game().preview(walk).err().map(|r| format!("{r:?}")), Some("NoWalks".into()));
    assert!(book.game().box_score().sides.iter().all(|side| side.pitching.is_empty()));
}

/// Every preset says where it is from, and has an inning, a strike and a fielder to play with.
#[test]
fn presets_name_their_source() {
    for preset in presets() {
        let code = preset.code();
        assert!(code.source.len() > 12, "{}: {:?}", code.name, code.source);
        assert!(code.innings >= 6 || !code.players_pitch, "{}", code.name);
        assert!(code.strikes_for_out == 3 && code.fielders >= 9, "{}", code.name);
        assert!(code.official_after <= code.innings, "{}", code.name);
    }
    let youth = Preset::Youth6.code();
    assert!(youth.run_limit.is_some() && !youth.mercy.is_empty() && youth.courtesy_runner);
    assert!(youth.mandatory_outs.is_some() || youth.mandatory_at_bats.is_some());
    assert_eq!((Preset::Baseball9.code().innings, Preset::Baseball7.code().innings, youth.innings), (9, 7, 6));
}
