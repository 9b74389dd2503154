//! Winning and losing pitcher (OBR 9.17), shutouts (9.18), saves (9.19) and complete games; holds and blown saves, which
//! are custom and not in the rules.
//!
//! Section numbers are those of the Official Baseball Rules, 2024 edition, from memory.

use super::earned::{RunCharge, runs};
use crate::field::Side;
use crate::game::{Ending, Game, Phase};
use crate::log::{EntryId, Judgment};
use crate::order::put_in_order;
use crate::team::PlayerId;

mod effective;
mod record;
mod why;

use effective::most_effective;
use record::{Lead, Record};

pub use effective::Candidate;
pub use why::Why;

/// One pitcher's credit or charge, with its reason.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decision {
    /// Who.
    pub pitcher: PlayerId,
    /// Why.
    pub because: Why,
    /// Section of the Official Baseball Rules; "custom" where they have none.
    pub rule: &'static str,
}

impl Decision {
    const fn new(pitcher: PlayerId, because: Why) -> Self {
        Self { pitcher, because, rule: because.rule() }
    }
}

/// Who is to be credited with the win: a matter of judgment (OBR 9.17(b), 9.17(c)).
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WinQuestion {
    /// Those who may be, the usual answer first, then in order of appearance.
    pub candidates: Vec<Candidate>,
    /// Section of the Official Baseball Rules.
    pub rule: &'static str,
}

/// The pitchers' decisions of a game.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Decisions {
    /// Winning pitcher.
    pub win: Option<Decision>,
    /// Losing pitcher.
    pub loss: Option<Decision>,
    /// Save.
    pub save: Option<Decision>,
    /// Shutouts.
    pub shutouts: Vec<Decision>,
    /// Complete games.
    pub complete_games: Vec<Decision>,
    /// Holds: custom, not in the rules.
    pub holds: Vec<Decision>,
    /// Blown saves: custom, not in the rules.
    pub blown_saves: Vec<Decision>,
    /// Whom to credit with the win, where that is a judgment.
    pub question: Option<WinQuestion>,
    /// The pitcher for whom it matters whether three innings at the end were effective; usually they are.
    pub finish_question: Option<PlayerId>,
    /// The game goes on: this is how it would be if it ended now.
    pub provisional: bool,
}

impl Decisions {
    /// The winning pitcher.
    pub fn win_of(&self) -> Option<PlayerId> {
        self.win.map(|d| d.pitcher)
    }

    /// The losing pitcher.
    pub fn loss_of(&self) -> Option<PlayerId> {
        self.loss.map(|d| d.pitcher)
    }

    /// The pitcher with the save.
    pub fn save_of(&self) -> Option<PlayerId> {
        self.save.map(|d| d.pitcher)
    }

    /// This pitcher pitched a shutout.
    pub fn has_shutout(&self, pitcher: PlayerId) -> bool {
        self.shutouts.iter().any(|d| d.pitcher == pitcher)
    }

    /// This pitcher pitched a complete game.
    pub fn has_complete_game(&self, pitcher: PlayerId) -> bool {
        self.complete_games.iter().any(|d| d.pitcher == pitcher)
    }

    /// This pitcher has a hold, by custom.
    pub fn has_hold(&self, pitcher: PlayerId) -> bool {
        self.holds.iter().any(|d| d.pitcher == pitcher)
    }

    /// This pitcher has a blown save, by custom.
    pub fn has_blown_save(&self, pitcher: PlayerId) -> bool {
        self.blown_saves.iter().any(|d| d.pitcher == pitcher)
    }

    /// The decisions, from the runs as [`runs`] charges them.
    pub fn of(game: &Game, charges: &[RunCharge]) -> Self {
        let phase = game.situation().phase;
        if phase == Phase::Before || !game.code().players_pitch || !is_official(game) {
            return Self::default();
        }
        let record = Record::of(game, charges);
        let mut decisions = Self { provisional: !matches!(phase, Phase::Over(_)), ..Self::default() };
        for side in Side::BOTH {
            decisions.whole_games(game, &record, side);
        }
        if let Some((lead, forfeited_to)) = record.lead.map(|lead| (lead, forfeited_to(game)))
            // A side that wins by forfeit though it was not ahead has no winning pitcher (OBR 9.03(e)(2)).
            && forfeited_to.is_none_or(|side| side == lead.side)
        {
            decisions.winner(game, &record, charges, lead);
            decisions.loss = charges
                .get(lead.run)
                .and_then(|run| run.pitcher)
                .map(|pitcher| Decision::new(pitcher, Why::GaveUpTheLead { on: lead.entry }));
            decisions.saver(game, &record, lead.side);
        }
        for side in Side::BOTH {
            decisions.customs(&record, side);
        }
        decisions
    }

    fn winner(&mut self, game: &Game, record: &Record, charges: &[RunCharge], lead: Lead) {
        let side = lead.side;
        let pitchers = record.pitchers(side);
        let lineup = || game.lineup(side).and_then(|l| l.at(crate::field::Position::Pitcher));
        let of_record = lead.of_record.and_then(|i| record.stints(side).get(i)).map(|s| s.pitcher);
        let Some(of_record) = of_record.or(pitchers.first().copied()).or_else(lineup) else { return };
        let usual = Decision::new(of_record, Why::AheadForGood { on: lead.entry });
        let line = |pitcher: &PlayerId| Candidate::new(*pitcher, side, record, charges);

        let starter = pitchers.first().is_none_or(|p| *p == of_record);
        let relievers: Vec<Candidate> = if starter {
            pitchers.iter().skip(1).map(line).collect()
        } else {
            pitchers.iter().skip_while(|p| **p != of_record).map(line).collect()
        };
        let needed = innings_needed(game, record, side);
        self.win = Some(if starter && record.outs_of(side, of_record).innings() < u32::from(needed) {
            match (relievers.as_slice(), most_effective(&relievers)) {
                ([only], _) => Decision::new(only.pitcher, Why::OnlyReliever { needed }),
                (_, Some(best)) => {
                    let best = best.pitcher;
                    self.ask(relievers, best, "9.17(b)");
                    Decision::new(best, Why::MostEffective { needed })
                }
                // Nobody relieved him: a game cut so short that the starter had no chance to pitch longer.
                (_, None) => usual,
            }
        } else if !starter && relievers.first().is_some_and(Candidate::is_brief_and_ineffective) {
            let effective: Vec<Candidate> =
                relievers.iter().skip(1).filter(|c| c.outs.0 > 0 && !c.is_brief_and_ineffective()).cloned().collect();
            match most_effective(&effective).map(|c| c.pitcher) {
                Some(best) => {
                    self.ask(relievers, best, "9.17(c)");
                    Decision::new(best, Why::AfterIneffective { instead_of: of_record })
                }
                None => usual,
            }
        } else {
            usual
        });
        let judged = game.judgments().rev().find_map(|j| match j {
            Judgment::WinningPitcher { pitcher } => Some(*pitcher),
            _ => None,
        });
        if let Some(pitcher) = judged.filter(|p| pitchers.contains(p)) {
            self.win = Some(Decision::new(pitcher, Why::Judged));
        }
    }

    fn ask(&mut self, mut candidates: Vec<Candidate>, usual: PlayerId, rule: &'static str) {
        put_in_order(&mut candidates, |a, b| a.pitcher == usual && b.pitcher != usual);
        self.question = Some(WinQuestion { candidates, rule });
    }

    fn saver(&mut self, game: &Game, record: &Record, side: Side) {
        let stints = record.stints(side);
        let Some(last) = stints.last().filter(|last| stints[0].pitcher != last.pitcher) else { return };
        if Some(last.pitcher) == self.win_of() || last.outs.0 == 0 || last.lead <= 0 {
            return;
        }
        let lead = u8::try_from(last.lead).unwrap_or(u8::MAX);
        let because = if lead <= 3 && last.outs.0 >= 3 {
            Some(Why::SmallLead { lead })
        } else if last.tying_run_is_near() {
            Some(Why::TyingRunNear { lead, on_base: last.on_base })
        } else if last.outs.0 >= 9 {
            self.finish_question = Some(last.pitcher);
            let effective = game.judgments().rev().find_map(|j| match j {
                Judgment::EffectiveFinish { pitcher, yes } if *pitcher == last.pitcher => Some(*yes),
                _ => None,
            });
            effective.unwrap_or(true).then_some(Why::ThreeInnings { outs: last.outs })
        } else {
            None
        };
        self.save = because.map(|why| Decision::new(last.pitcher, why));
    }

    fn whole_games(&mut self, game: &Game, record: &Record, side: Side) {
        let no_runs = game.situation().score[side.other().index()] == 0;
        match record.stints(side) {
            [only] if only.outs.0 > 0 => {
                self.complete_games.push(Decision::new(only.pitcher, Why::WholeGame));
                if no_runs {
                    self.shutouts.push(Decision::new(only.pitcher, Why::WholeGame));
                }
            }
            [_, second] if no_runs && second.inning == 1 && second.outs_before == 0 && second.runs_before == 0 => {
                self.shutouts.push(Decision::new(second.pitcher, Why::FromTheFirstOut));
            }
            _ => {}
        }
    }

    /// Holds and blown saves of the side's relief pitchers. Who has not lost the lead has left with it.
    fn customs(&mut self, record: &Record, side: Side) {
        let stints = record.stints(side);
        let relief = stints.iter().enumerate().skip(1).filter(|(_, s)| s.is_save_situation());
        for (i, stint) in relief {
            let lead = u8::try_from(stint.lead).unwrap_or(u8::MAX);
            let finished = i + 1 == stints.len();
            if stint.lost_lead {
                self.blown_saves.push(Decision::new(stint.pitcher, Why::LostTheLead { lead }));
            } else if stint.outs.0 > 0 && !finished && self.win_of() != Some(stint.pitcher) {
                self.holds.push(Decision::new(stint.pitcher, Why::KeptTheLead { lead }));
            }
        }
    }
}

/// The decisions of a game; provisional ones while it goes on.
pub fn decisions(game: &Game) -> Decisions {
    Decisions::of(game, &runs(game))
}

/// The side that went ahead for good, as things stand, and the play on which it did; `None` while the score is level.
pub fn ahead_for_good(game: &Game) -> Option<(Side, EntryId)> {
    let lead = Record::of(game, &runs(game)).lead?;
    Some((lead.side, lead.entry))
}

fn forfeited_to(game: &Game) -> Option<Side> {
    match game.situation().phase {
        Phase::Over(Ending::Forfeited(winner)) => Some(winner),
        _ => None,
    }
}

/// The records of this game count (OBR 9.03(e)): always, unless it was called or forfeited before it was a regulation
/// game (OBR 7.01(c)): so many innings as the code says, half an inning fewer when the home side is not behind.
pub fn is_official(game: &Game) -> bool {
    let situation = game.situation();
    if !matches!(situation.phase, Phase::Over(Ending::Called | Ending::Forfeited(_))) {
        return true;
    }
    let [visitors, home] = situation.score;
    // The half-inning in which it was stopped is the one that was not played to its end.
    let stopped = (situation.inning, situation.half);
    let played = game.halves().iter().filter(|h| (h.inning, h.half) != stopped).count();
    let needed = usize::from(game.code().official_after) * 2;
    played >= needed || (played + 1 == needed && home >= visitors)
}

/// Innings a starter must finish to win (OBR 9.17(b)): as the code says, and one fewer than his side was in the field if
/// that was no longer.
fn innings_needed(game: &Game, record: &Record, side: Side) -> u8 {
    let lasted = record.stints(side).iter().map(|s| s.outs).sum::<crate::field::Outs>().innings();
    let lasted = u8::try_from(lasted).unwrap_or(u8::MAX);
    game.code().starter_innings_to_win.min(lasted.saturating_sub(1)).max(1)
}
