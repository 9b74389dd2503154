//! What must hold whatever happens: thousands of random half-innings with changes of pitcher.

use benchbook_stats::field::Base::{self, First, Home, Second, Third};
use benchbook_stats::field::{Half, Position, Side};
use benchbook_stats::game::Phase;
use benchbook_stats::log::{Cause, Misplay, MisplayKind, Move, Start};
use benchbook_stats::ruling::earned::{Earned, RunCharge, runs};
use benchbook_tests::scorer::{ROGER, SIERRA, Scorer, forced, tagged};
use proptest::prelude::*;

/// Every runner moves so many bases for this cause; those at home first.
fn all(book: &Scorer, bases: u8, cause: Cause) -> Vec<Move> {
    let ahead = |base: Base| Base::from_number((base.number() + bases).min(4)).unwrap_or(Home);
    book.game().situation().runners().rev().map(|(base, _)| Move::safe(base.into(), ahead(base), cause)).collect()
}

fn lead(book: &Scorer) -> Option<Base> {
    book.game().situation().runners().next_back().map(|(base, _)| base)
}

/// One random thing. `spice` varies its details.
fn play(book: &mut Scorer, what: u8, spice: u8) {
    let mostly = usize::from(spice % 3);
    let trailing = |mut moves: Vec<Move>| {
        // Sometimes the runner in front alone moves.
        if spice.is_multiple_of(4) {
            moves.truncate(1);
        }
        moves
    };
    let one = |book: &Scorer, cause| trailing(all(book, 1, cause));
    match what {
        0 | 1 => book.strikeout(),
        2 => book.walk(),
        3 => book.single(&all(book, 1 + u8::from(mostly == 0), Cause::Play)),
        4 => book.double(&all(book, 2, Cause::Play)),
        5 if spice.is_multiple_of(2) => book.home_run(),
        5 => book.catcher_interference(),
        6 => book.error(Position::Shortstop, &all(book, 1, if mostly == 0 { Cause::Error(0) } else { Cause::Play })),
        7 => match lead(book) {
            Some(base) if base != Third || mostly > 0 => {
                let next = base.next().unwrap_or(Home);
                let is_forced = book.game().situation().is_forced(base.into());
                let out = if is_forced { forced(base, next) } else { tagged(base, next) };
                let mut moves = vec![out];
                moves.extend(all(book, 1, Cause::Play).into_iter().skip(1));
                book.choice(&moves)
            }
            _ => book.ground_out(&[]),
        },
        8 if lead(book).is_some() => book.running(&one(book, Cause::PassedBall)),
        9 if lead(book).is_some() => book.running(&one(book, Cause::WildPitch)),
        10 if lead(book).is_some() => {
            let start: Start = lead(book).unwrap_or(First).into();
            let muff = Misplay::new(Position::SecondBase, MisplayKind::Muff);
            book.erring(&[], &[Misplay { spared: Some(start), ..muff }])
        }
        11 => book.foul_fly_muffed(Position::Catcher),
        12 => {
            if book.game().situation().on(First).is_none() {
                let cause = if mostly == 0 { Cause::WildPitch } else { Cause::PassedBall };
                book.strikeout_reaches(cause, &[], &[])
            } else {
                book.strikeout()
            }
        }
        13 => book.fly_out(&if book.game().situation().outs < 2 { one(book, Cause::Play) } else { Vec::new() }),
        14 if lead(book).is_some_and(|b| b != First) => {
            let base = lead(book).unwrap_or(Second);
            book.running(&[tagged(base, base)])
        }
        15 if lead(book).is_some() => {
            let wild = Misplay::new(Position::Pitcher, MisplayKind::Throwing);
            let moves = one(book, Cause::Error(0));
            book.erring(&moves, &[wild])
        }
        _ => book.ground_out(&if book.game().situation().outs < 2 { one(book, Cause::Play) } else { Vec::new() }),
    };
}

fn check(charges: &[RunCharge], book: &Scorer) -> Result<(), TestCaseError> {
    let sums = Earned::of(charges, Side::Home);
    prop_assert_eq!(sums.runs, u32::from(book.game().situation().score[0]), "every run is charged");
    prop_assert!(sums.team <= sums.pitchers && sums.pitchers <= sums.runs, "{:?}\n{:#?}", sums, charges);
    for charge in charges {
        prop_assert!(charge.pitcher.is_some());
        prop_assert!(!charge.team_earned || charge.earned, "earned for the team, not for its pitcher: {:#?}", charge);
        prop_assert!(!charge.because.to_string().is_empty() && !charge.answers.to_string().is_empty());
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1000, ..ProptestConfig::default() })]

    /// Every run is somebody's; team earned <= pitchers' earned <= runs, run by run; a run once earned stays earned
    /// as the half-inning goes on, and one that was not provisional does not change.
    #[test]
    fn whatever_happens(plays in proptest::collection::vec((0u8..20, any::<u8>()), 1..40)) {
        let mut book = Scorer::nine();
        let mut relievers = vec![SIERRA, ROGER];
        let mut before: Vec<RunCharge> = Vec::new();
        for (what, spice) in plays {
            if book.game().situation().half != Half::Top || book.game().situation().phase != Phase::Underway {
                break;
            }
            if what >= 18 {
                if let Some(reliever) = relievers.pop() {
                    book.relieve(reliever);
                }
                continue;
            }
            play(&mut book, what, spice);
            let charges = runs(book.game());
            check(&charges, &book)?;
            for (old, new) in before.iter().zip(&charges) {
                prop_assert_eq!((old.pitcher, old.key), (new.pitcher, new.key));
                prop_assert!(!old.earned || new.earned);
                prop_assert!(!old.team_earned || new.team_earned);
                prop_assert!(old.provisional || (old.earned, old.team_earned) == (new.earned, new.team_earned));
            }
            before = charges;
        }
    }

    /// Without an error, a passed ball or interference every run is earned, and team and pitchers agree.
    #[test]
    fn without_a_misplay_every_run_is_earned(plays in proptest::collection::vec((0usize..10, any::<u8>()), 1..40)) {
        const CLEAN: [u8; 10] = [0, 2, 3, 4, 7, 9, 13, 14, 16, 18];
        let mut book = Scorer::nine();
        let mut relievers = vec![SIERRA, ROGER];
        for (what, spice) in plays {
            if book.game().situation().half != Half::Top {
                break;
            }
            match CLEAN[what] {
                18 => {
                    if let Some(reliever) = relievers.pop() {
                        book.relieve(reliever);
                    }
                }
                clean => play(&mut book, clean, spice),
            }
        }
        let charges = runs(book.game());
        check(&charges, &book)?;
        prop_assert!(charges.iter().all(|c| c.earned && c.team_earned && !c.provisional), "{:#?}", charges);
    }
}
