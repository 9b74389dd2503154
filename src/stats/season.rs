//! Many games into season lines: sums, rates, streaks (OBR 9.23) and minimums (OBR 9.22).

use std::collections::BTreeMap;

use serde::Serialize;

use crate::field::{Outs, Position, Side};
use crate::game::{Ending, Game, Phase};
use crate::lines::{BattingLine, FieldingLine, PitchingLine};
use crate::rates::Rate;
use crate::ruling::decision::{decisions, is_official};
use crate::team::PlayerId;

mod minimum;
mod streak;

pub use minimum::{Minimum, for_batting, for_fielding, for_pitching};
pub use streak::{Streaks, Turns};

/// Games added up, team by team.
#[derive(Clone, Debug, Default, Serialize)]
pub struct Season {
    /// Teams by name.
    pub teams: BTreeMap<String, TeamSeason>,
}

/// One team's games.
#[derive(Clone, Debug, Default, Serialize)]
pub struct TeamSeason {
    /// Games counted.
    pub games: u32,
    /// Won.
    pub won: u32,
    /// Lost.
    pub lost: u32,
    /// Neither: tied, or not finished.
    pub undecided: u32,
    /// Runs scored.
    pub runs: u32,
    /// Runs allowed.
    pub runs_allowed: u32,
    /// Players by key: the club's own key where the roster has one, else name, else shirt number.
    pub players: BTreeMap<String, PlayerSeason>,
}

/// One player's games for one team.
#[derive(Clone, Debug, Default, Serialize)]
pub struct PlayerSeason {
    /// Name as last written.
    pub name: String,
    /// Games he took part in.
    pub games: u32,
    /// Batting.
    pub batting: BattingLine,
    /// Pitching, if he pitched.
    pub pitching: PitchingSeason,
    /// Fielding.
    pub fielding: FieldingLine,
    /// Outs in the field by position.
    pub played: BTreeMap<Position, Outs>,
    /// Hitting and on-base streaks.
    pub streaks: Streaks,
    /// Pitches thrown by day ("2026-05-02"; "" for games without a date). Every game counts, official or not: an arm has
    /// thrown them.
    pub workload: BTreeMap<String, DayOfPitches>,
}

/// What a pitcher threw in one day.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct DayOfPitches {
    /// Pitches seen.
    pub pitches: u32,
    /// Some were missed: there were at least so many.
    pub incomplete: bool,
}

/// A pitcher's games.
#[derive(Clone, Debug, Default, Serialize)]
pub struct PitchingSeason {
    /// Games pitched in.
    pub games: u32,
    /// Games started.
    pub starts: u32,
    /// Complete games.
    pub complete_games: u32,
    /// Shutouts (OBR 9.18).
    pub shutouts: u32,
    /// Won.
    pub wins: u32,
    /// Lost.
    pub losses: u32,
    /// Saved.
    pub saves: u32,
    /// Sums.
    pub line: PitchingLine,
    /// Earned runs, each times the regulation innings of its game's code.
    pub weighted_earned_runs: u32,
}

impl PitchingSeason {
    /// Earned run average: each earned run counts the regulation innings of its own game (OBR 9.21(e)).
    pub const fn earned_run_average(&self) -> Rate {
        Rate::new(self.weighted_earned_runs as u64 * 3, self.line.outs.0 as u64, 2)
    }
}

impl Season {
    /// A season of no games.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds one game. A game called or forfeited before it was official counts in the teams' records alone
    /// (OBR 9.03(e)).
    pub fn add(&mut self, game: &Game) {
        let situation = game.situation();
        if situation.phase == Phase::Before {
            return;
        }
        let box_score = game.box_score();
        let decided = decisions(game);
        let counts = is_official(game);
        for side in Side::BOTH {
            let team = self.teams.entry(game.team_name(side).to_owned()).or_default();
            team.count_result(game, side);
            let lines = box_score.side(side);
            team.count_pitches(game, &lines.pitching);
            if !counts {
                continue;
            }
            for line in &lines.batting {
                let Some(player) = line.player else { continue };
                let season = team.player(game, player);
                season.games += 1;
                season.batting.add(line);
                season.streaks.add(&Turns::of(line));
            }
            for line in &lines.fielding {
                let Some(player) = line.player else { continue };
                let batted = lines.batting.iter().any(|b| b.player == Some(player));
                let season = team.player(game, player);
                season.games += u32::from(!batted);
                season.fielding.add(line);
                for (position, outs) in &line.played {
                    *season.played.entry(*position).or_default() += *outs;
                }
            }
            for (i, line) in lines.pitching.iter().enumerate() {
                let Some(player) = line.player else { continue };
                let season = team.player(game, player);
                let pitching = &mut season.pitching;
                pitching.games += 1;
                pitching.starts += u32::from(i == 0);
                pitching.wins += u32::from(decided.win_of() == Some(player));
                pitching.losses += u32::from(decided.loss_of() == Some(player));
                pitching.saves += u32::from(decided.save_of() == Some(player));
                pitching.complete_games += u32::from(decided.has_complete_game(player));
                pitching.shutouts += u32::from(decided.has_shutout(player));
                pitching.line.add(line);
                pitching.weighted_earned_runs += line.earned_runs * u32::from(game.code().innings);
            }
        }
    }
}

impl TeamSeason {
    fn count_result(&mut self, game: &Game, side: Side) {
        let s = game.situation();
        let (ours, theirs) = (s.score[side.index()], s.score[side.other().index()]);
        self.games += 1;
        self.runs += u32::from(ours);
        self.runs_allowed += u32::from(theirs);
        match s.phase {
            Phase::Over(Ending::Forfeited(winner)) if winner == side => self.won += 1,
            Phase::Over(Ending::Forfeited(_)) => self.lost += 1,
            Phase::Over(_) if ours > theirs => self.won += 1,
            Phase::Over(_) if ours < theirs => self.lost += 1,
            _ => self.undecided += 1,
        }
    }

    fn count_pitches(&mut self, game: &Game, lines: &[PitchingLine]) {
        let day = game.heading().date.map_or_else(String::new, |d| d.to_string());
        for line in lines.iter().filter(|l| l.pitches > 0 || l.pitches_incomplete) {
            let Some(player) = line.player else { continue };
            let thrown = self.player(game, player).workload.entry(day.clone()).or_default();
            thrown.pitches += line.pitches;
            thrown.incomplete |= line.pitches_incomplete;
        }
    }

    fn player(&mut self, game: &Game, id: PlayerId) -> &mut PlayerSeason {
        let name = game.label(id);
        let key = game.player(id).and_then(|(_, p)| p.person.clone()).unwrap_or_else(|| name.clone());
        let season = self.players.entry(key).or_default();
        season.name = name;
        season
    }
}
