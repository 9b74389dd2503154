//! What is proposed, told and drawn, over generated games of every code of play: proposals that can be recorded,
//! scoresheets that add up. `BENCHBOOK_GAMES` says how many games.

use std::cell::Cell;

use benchbook_stats::account::Account;
use benchbook_stats::field::{Base, Position, Side};
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::log::{Attempt, Event, Spot, Trajectory};
use benchbook_stats::propose::{self, Proposal, Seen};
use benchbook_stats::sheet::draw;
use benchbook_tests::generate::trial::{games, over};
use benchbook_tests::generate::{Dice, Scribe, tell};

// ---- Proposals ----

fn seen(game: &Game, dice: &mut Dice) -> Seen {
    let lineup = game.lineup(game.situation().fielding()).expect("a card");
    let there: Vec<Position> = Position::ALL.into_iter().filter(|p| lineup.at(*p).is_some()).collect();
    let trajectories =
        [Trajectory::Ground, Trajectory::Line, Trajectory::Fly, Trajectory::Pop, Trajectory::Bunt].map(Some);
    Seen {
        spot: dice
            .percent(60)
            .then(|| Spot { x: i16::from(dice.small(250)) * 4 - 500, y: i16::from(dice.small(250)) * 2 - 40 }),
        landed: dice.percent(30),
        fielders: (0..dice.below(5)).map(|_| dice.pick(&there)).collect(),
        trajectory: if dice.percent(50) { None } else { dice.pick(&trajectories) },
        foul: dice.percent(15),
    }
}

/// Play is on and nothing has to be mended first.
fn is_ready(game: &Game) -> bool {
    let s = game.situation();
    let mended = game.lineup(s.fielding()).is_some_and(|l| l.clash().is_none());
    let pitched = !game.code().players_pitch || s.pitcher.is_some();
    s.phase == Phase::Underway && s.batter.is_some() && mended && pitched
}

#[test]
fn whatever_is_proposed_can_be_recorded() {
    let proposed = Cell::new(0);
    over(games(4), |plan| {
        let mut scribe = Scribe::new(plan);
        let mut dice = Dice::new(plan.seed ^ 7);
        while scribe.step() {
            let game = scribe.game();
            if !is_ready(game) || !dice.percent(6) {
                continue;
            }
            let seen = seen(game, &mut dice);
            let mut list: Vec<Proposal> = propose::in_play(game, &seen);
            let bases: Vec<Base> = game.situation().runners().map(|(base, _)| base).collect();
            for base in bases {
                list.extend(propose::on_runner(game, base, false));
                let attempt = dice.pick(&[Attempt::Steal, Attempt::Pickoff, Attempt::Advance]);
                list.extend(propose::chased(game, base, attempt, &seen.fielders, false));
            }
            list.extend(propose::strike_three_got_away(game));
            for proposal in list {
                proposed.set(proposed.get() + 1);
                if let Err(refusal) = game.preview(proposal.event.clone()) {
                    panic!("{refusal:?}: {proposal:?}\n{seen:?}\n{:?}\n{}", game.situation(), scribe.told());
                }
            }
        }
    });
    println!("{} outcomes proposed", proposed.get());
    assert!(proposed.get() > 100);
}

// ---- The scoresheet ----

#[test]
fn the_scoresheet_adds_up() {
    let drawn = Cell::new(0);
    over(games(4), |plan| {
        let game = Scribe::new(plan).finish();
        let (book, line) = (game.box_score(), game.line_score());
        for side in Side::BOTH {
            let sheet = game.sheet(side);
            let total = &book.side(side).batting_total;
            let told = || format!("the {side}'s sheet: {}", tell(&plan, &game));
            let runs_batted_in: u32 = sheet.cells.iter().map(|c| u32::from(c.runs_batted_in)).sum();
            assert_eq!(runs_batted_in, total.runs_batted_in, "RBI on {}", told());
            let sums = || sheet.columns.iter().filter_map(|c| c.sums.map(|s| (c.inning, s)));
            let hits: u32 = sums().map(|(_, s)| u32::from(s.hits)).sum();
            assert_eq!(hits, total.hits, "hits on {}", told());
            for (inning, sums) in sums() {
                let printed = line.side(side).innings.get(usize::from(inning) - 1).copied().flatten();
                assert_eq!(printed, Some(sums.runs), "runs of inning {inning} on {}", told());
            }
            let runs: u16 = sums().map(|(_, s)| s.runs).sum();
            assert_eq!(runs, line.side(side).runs, "runs on {}", told());
            for cell in &sheet.cells {
                assert!(cell.out.as_ref().is_none_or(|out| (1..=3).contains(&out.number)), "{cell:?} {}", told());
                let svg = draw::svg(cell);
                assert_eq!(svg.matches('<').count(), svg.matches('>').count(), "{svg}");
                drawn.set(drawn.get() + 1);
            }
        }
    });
    println!("{} squares drawn", drawn.get());
    assert!(drawn.get() > 1000);
}

/// A game's events in the order in which they were recorded lose nothing by being told.
#[test]
fn every_play_is_told() {
    over(games(4), |plan| {
        let game = Scribe::new(plan).finish();
        let account = Account::of(&game);
        for step in game.steps().iter().filter(|s| s.play.is_some()) {
            let plain = matches!(game.event(step), Event::Pitch(p) if p.action.is_empty());
            assert!(plain || account.line(step.entry).is_some(), "{step:?} {}", tell(&plan, &game));
        }
    });
}
