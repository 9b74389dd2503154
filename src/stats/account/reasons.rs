//! The rulings on one play, gathered for whoever asks "why?".

use super::{Reason, Ruled};
use crate::field::Position;
use crate::game::Play;
use crate::ruling::{Book, Credit, Judged};

pub(super) fn of(play: &Play, judged: &Judged, book: &Book) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if play.nullified {
        return reasons;
    }
    let batter = play.turn.and_then(|t| t.batter);
    if let (Some(batter), Some(ruling)) = (batter, &judged.result) {
        reasons.push(Reason {
            ruled: Ruled::Result { batter, result: ruling.verdict },
            because: Some(ruling.because),
            rule: ruling.rule,
            entry: ruling.entry,
        });
    }
    let plain = |ruled, rule| Reason { ruled, because: None, rule, entry: play.entry };
    if let Some(batter) = batter.filter(|_| judged.grounded_into_double_play) {
        reasons.push(plain(Ruled::GroundedIntoDoublePlay { batter }, "9.02(a)(17)"));
    }
    for (runner, ruling) in &judged.runs {
        reasons.push(Reason {
            ruled: Ruled::Run { runner: *runner, batter, batted_in: ruling.verdict },
            because: Some(ruling.because),
            rule: ruling.rule,
            entry: ruling.entry,
        });
    }
    for charge in book.runs().iter().filter(|c| c.entry == play.entry) {
        let ruled = Ruled::Earned {
            runner: charge.runner,
            pitcher: charge.pitcher,
            earned: charge.earned,
            team_earned: charge.team_earned,
            provisional: charge.provisional,
        };
        reasons.push(plain(ruled, "9.16"));
    }
    for (runner, ruling) in &judged.thefts {
        reasons.push(Reason {
            ruled: Ruled::Theft { runner: *runner, theft: ruling.verdict },
            because: Some(ruling.because),
            rule: ruling.rule,
            entry: ruling.entry,
        });
    }
    if judged.wild_pitch {
        reasons.push(plain(Ruled::GotAway { wild: true, player: play.before.pitcher }, "9.13(a)"));
    }
    if judged.passed_ball {
        let player = play.defence.at(Position::Catcher);
        reasons.push(plain(Ruled::GotAway { wild: false, player }, "9.13(b)"));
    }
    if judged.balk {
        reasons.push(plain(Ruled::Balk { pitcher: play.before.pitcher }, "6.02(a)"));
    }
    for (position, credit) in &judged.credits {
        let ruled = Ruled::Fielding { fielder: play.defence.at(*position), position: *position, credit: *credit };
        reasons.push(plain(ruled, rule_of(*credit)));
    }
    reasons
}

const fn rule_of(credit: Credit) -> &'static str {
    match credit {
        Credit::Putout => "9.09",
        Credit::Assist => "9.10",
        Credit::Error => "9.12",
        Credit::DoublePlay | Credit::TriplePlay => "9.11",
    }
}
