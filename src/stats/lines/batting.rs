//! A batter's line (OBR 9.02(a)).

use serde::Serialize;

use super::duties;
use crate::field::Side;
use crate::game::{Game, Play};
use crate::log::Start;
use crate::rates::{self, Rate};
use crate::ruling::{BatterResult, Book, Theft};
use crate::team::{Duties, PlayerId};

/// What one player did at bat and on the bases.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BattingLine {
    /// Who; `None` in a total.
    pub player: Option<PlayerId>,
    /// Name, shirt number or batting place.
    pub name: String,
    /// Batting place, 1 for the leadoff batter; `None` for those who fielded only, and in totals.
    pub place: Option<u8>,
    /// Posts as a box score prints them: "PH-SS".
    #[cfg_attr(feature = "schema", schemars(with = "String"))]
    pub posts: Duties,
    /// Turns at the plate that ended, charged to him.
    pub plate_appearances: u32,
    /// At bats (OBR 9.02(a)(1)).
    pub at_bats: u32,
    /// Runs scored.
    pub runs: u32,
    /// Hits.
    pub hits: u32,
    /// Two-base hits.
    pub doubles: u32,
    /// Three-base hits.
    pub triples: u32,
    /// Home runs.
    pub home_runs: u32,
    /// Runs batted in (OBR 9.04).
    pub runs_batted_in: u32,
    /// Bases on balls, intentional ones included.
    pub walks: u32,
    /// Intentional bases on balls.
    pub intentional_walks: u32,
    /// Strikeouts.
    pub strikeouts: u32,
    /// Times hit by a pitch.
    pub hit_by_pitch: u32,
    /// Sacrifice hits (bunts).
    pub sacrifice_hits: u32,
    /// Sacrifice flies.
    pub sacrifice_flies: u32,
    /// First base on interference or obstruction.
    pub interference: u32,
    /// Reached on an error.
    pub reached_on_error: u32,
    /// Reached on a fielder's choice.
    pub fielders_choices: u32,
    /// Stolen bases.
    pub stolen_bases: u32,
    /// Caught stealing.
    pub caught_stealing: u32,
    /// Grounded into double plays.
    pub grounded_into_double_plays: u32,
    /// In a batter's line the runners still on base after each out he made at the plate, whatever number the out had: the
    /// glossary on the MLB site has it so. In a side's total the runners left when its half-innings ended, which prove
    /// the box score (OBR 9.03(c)): it is not the sum of the batters'. Neither is a batter's record in the rules.
    pub left_on_base: u32,
}

impl BattingLine {
    /// Bases gained by hits.
    pub const fn total_bases(&self) -> u32 {
        self.hits + self.doubles + 2 * self.triples + 3 * self.home_runs
    }

    /// Batting average (OBR 9.21(b)).
    pub const fn average(&self) -> Rate {
        rates::batting_average(self.hits, self.at_bats)
    }

    /// Slugging percentage (OBR 9.21(c)).
    pub const fn slugging(&self) -> Rate {
        rates::slugging(self.total_bases(), self.at_bats)
    }

    /// On-base percentage (OBR 9.21(f)).
    pub const fn on_base(&self) -> Rate {
        rates::on_base(
            self.hits + self.walks + self.hit_by_pitch,
            self.at_bats + self.walks + self.hit_by_pitch + self.sacrifice_flies,
        )
    }

    /// Adds another line's counts.
    pub fn add(&mut self, other: &Self) {
        let pairs: [(&mut u32, u32); 21] = [
            (&mut self.plate_appearances, other.plate_appearances),
            (&mut self.at_bats, other.at_bats),
            (&mut self.runs, other.runs),
            (&mut self.hits, other.hits),
            (&mut self.doubles, other.doubles),
            (&mut self.triples, other.triples),
            (&mut self.home_runs, other.home_runs),
            (&mut self.runs_batted_in, other.runs_batted_in),
            (&mut self.walks, other.walks),
            (&mut self.intentional_walks, other.intentional_walks),
            (&mut self.strikeouts, other.strikeouts),
            (&mut self.hit_by_pitch, other.hit_by_pitch),
            (&mut self.sacrifice_hits, other.sacrifice_hits),
            (&mut self.sacrifice_flies, other.sacrifice_flies),
            (&mut self.interference, other.interference),
            (&mut self.reached_on_error, other.reached_on_error),
            (&mut self.fielders_choices, other.fielders_choices),
            (&mut self.stolen_bases, other.stolen_bases),
            (&mut self.caught_stealing, other.caught_stealing),
            (&mut self.grounded_into_double_plays, other.grounded_into_double_plays),
            (&mut self.left_on_base, other.left_on_base),
        ];
        for (sum, more) in pairs {
            *sum += more;
        }
    }

    /// The sum of lines.
    pub fn total(lines: &[Self]) -> Self {
        let mut total = Self { name: "Totals".into(), ..Self::default() };
        for line in lines {
            total.add(line);
        }
        total
    }

    fn enter(&mut self, result: BatterResult) {
        self.plate_appearances += 1;
        self.at_bats += u32::from(result.is_at_bat());
        if let Some(bases) = result.hit_bases() {
            self.hits += 1;
            self.doubles += u32::from(bases == 2);
            self.triples += u32::from(bases == 3);
            self.home_runs += u32::from(bases == 4);
        }
        match result {
            BatterResult::Walk => self.walks += 1,
            BatterResult::IntentionalWalk => {
                self.walks += 1;
                self.intentional_walks += 1;
            }
            BatterResult::HitByPitch => self.hit_by_pitch += 1,
            BatterResult::Strikeout { .. } => self.strikeouts += 1,
            BatterResult::SacrificeHit { .. } => self.sacrifice_hits += 1,
            BatterResult::SacrificeFly { .. } => self.sacrifice_flies += 1,
            BatterResult::Interference | BatterResult::Obstruction => self.interference += 1,
            BatterResult::ReachedOnError(_) => self.reached_on_error += 1,
            BatterResult::FieldersChoice => self.fielders_choices += 1,
            BatterResult::Hit(_) | BatterResult::Out => {}
        }
    }
}

/// Runners whom a batter's out left on base: his own out, or another's on his fielder's choice; no sacrifice.
pub(crate) fn left_by(play: &Play, result: BatterResult) -> u32 {
    let makes_out = match result {
        BatterResult::Out | BatterResult::Strikeout { reached: false, .. } => true,
        BatterResult::FieldersChoice => play.outs() > 0,
        _ => false,
    };
    if !makes_out || play.nullified {
        return 0;
    }
    let gone = |from: Start| play.moves.iter().any(|m| m.from == from && (m.scored || m.out.is_some()));
    play.before.runners().filter(|(base, _)| !gone(Start::from(*base))).count() as u32
}

pub(super) fn lines(game: &Game, book: &Book, side: Side) -> Vec<BattingLine> {
    let Some(lineup) = game.lineup(side) else { return Vec::new() };
    let mut lines: Vec<BattingLine> = lineup
        .appearances()
        .into_iter()
        .map(|a| BattingLine {
            player: Some(a.player),
            name: game.label(a.player),
            place: a.place.map(|p| p + 1),
            posts: duties(game, side, a.player),
            ..BattingLine::default()
        })
        .collect();
    let find = |lines: &mut Vec<BattingLine>, player: PlayerId| -> usize {
        lines.iter().position(|l| l.player == Some(player)).unwrap_or_else(|| {
            lines.push(BattingLine { player: Some(player), name: game.label(player), ..BattingLine::default() });
            lines.len() - 1
        })
    };
    for (play, judged) in book.plays(game).filter(|(p, _)| p.batting() == side && !p.nullified) {
        if let (Some(batter), Some(result)) = (play.turn.and_then(|t| t.batter), &judged.result) {
            let at = find(&mut lines, batter);
            lines[at].enter(result.verdict);
            lines[at].runs_batted_in += judged.runs_batted_in();
            lines[at].grounded_into_double_plays += u32::from(judged.grounded_into_double_play.is_some());
            lines[at].left_on_base += left_by(play, result.verdict);
        }
        for m in play.moves.iter().filter(|m| m.scored) {
            let at = find(&mut lines, m.runner);
            lines[at].runs += 1;
        }
        for (runner, theft) in &judged.thefts {
            let at = find(&mut lines, *runner);
            match theft.verdict {
                Theft::Stolen(bases) => lines[at].stolen_bases += u32::from(bases),
                Theft::Caught { .. } => lines[at].caught_stealing += 1,
                Theft::PickedOff | Theft::NotStolen => {}
            }
        }
    }
    // Those who only fielded are in it if something befell them on the bases or at the plate.
    lines.retain(|line| {
        line.place.is_some() || line.plate_appearances + line.runs + line.stolen_bases + line.caught_stealing > 0
    });
    lines
}
