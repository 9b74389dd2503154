//! Earned runs and who answers for them (OBR 9.16): the rule book's own examples, scorers' published innings, and hard
//! cases of our own with the reason why. Section numbers are those of the Official Baseball Rules, 2024 edition, from
//! memory. A name in the rule book's examples stands for a batter: Abel is the first, Baker the second ...

mod advanced;
mod either_side;
mod examples;
mod published;
mod reasons;
mod reconstructed;
mod relievers;
mod settled;
mod sums;

use benchbook_stats::field::{Base, Side};
use benchbook_stats::ruling::earned::{Earned, Reason, RunCharge, runs};
use benchbook_stats::team::PlayerId;
use benchbook_tests::scorer::Scorer;

/// The visitors' runs: for each of the home side's pitchers runs and earned runs, and those of the team.
#[track_caller]
fn charged(book: &Scorer, pitchers: &[(PlayerId, u32, u32)], team: (u32, u32)) {
    let charges = runs(book.game());
    let mut sums: Vec<(PlayerId, u32, u32)> = pitchers.iter().map(|(p, ..)| (*p, 0, 0)).collect();
    for charge in charges.iter().filter(|c| c.half.fielding() == Side::Home) {
        let pitcher = charge.pitcher.expect("players pitch");
        let Some((_, r, er)) = sums.iter_mut().find(|(p, ..)| *p == pitcher) else {
            panic!("{pitcher:?} answers for a run:\n{charges:#?}")
        };
        *r += 1;
        *er += u32::from(charge.earned);
    }
    let earned = Earned::of(&charges, Side::Home);
    assert_eq!(
        (sums.as_slice(), (earned.runs, earned.team)),
        (pitchers, team),
        "pitchers (runs, earned), team (runs, earned)\n{charges:#?}"
    );
}

/// The last run to score.
fn last(book: &Scorer) -> RunCharge {
    runs(book.game()).pop().expect("a run")
}

fn helped_to_stand_at(base: Base) -> impl Fn(&Reason) -> bool {
    move |reason| matches!(reason, Reason::Helped { stands, .. } if *stands == base)
}
