//! Legal games of every code of play, made up by chance from a seed: the likely and the odd, entry by entry.
//!
//! A game is given by its [`Plan`]; a shorter plan of the same seed is the beginning of the longer one, so a failure
//! shrinks by leaving entries off the end.

mod bases;
mod batted;
mod dice;
mod judge;
pub mod kinds;
mod people;
mod pitches;
mod scene;
mod setup;
pub mod trial;
pub mod wrong;

use std::collections::VecDeque;

use benchbook_stats::code::Preset;
use benchbook_stats::field::{Base, Count, Side};
use benchbook_stats::file::{self, GameFile};
use benchbook_stats::game::{Game, Phase, Step};
use benchbook_stats::log::{Entry, EntryId, Event, Running, Status};
use benchbook_stats::team::Change;

pub use dice::Dice;
use scene::Scene;

/// One game to be made up.
#[derive(Clone, Copy, Debug)]
pub struct Plan {
    /// The code of play it starts from.
    pub preset: Preset,
    /// All that chance decides.
    pub seed: u64,
    /// Entries after which it breaks off, if it is not over before.
    pub entries: usize,
}

/// What a game is like, drawn once.
#[derive(Clone, Copy, Debug)]
struct Style {
    /// Balls in play of a thousand entries: high where few pitches are written down.
    in_play: usize,
    /// Plate appearances known by their result alone, of a thousand.
    unseen: usize,
    /// Corrections of a thousand.
    corrections: usize,
    /// Things umpires and weather do, of a thousand.
    incidents: usize,
}

/// Whether somebody at the plate out of turn will be found out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Watch {
    /// Nobody looks.
    Asleep,
    /// While he bats.
    During(EntryId),
    /// When he is done.
    Afterwards(EntryId),
}

/// A game being made up.
pub struct Scribe {
    game: Game,
    dice: Dice,
    style: Style,
    plan: Plan,
    queue: VecDeque<Event>,
    left: usize,
    after_the_end: usize,
    watch: Watch,
}

impl Scribe {
    /// Nothing recorded yet.
    pub fn new(plan: Plan) -> Self {
        let mut dice = Dice::new(plan.seed);
        let style = Style {
            in_play: dice.pick(&[170, 170, 400, 700]),
            unseen: dice.pick(&[10, 10, 200]),
            corrections: dice.pick(&[0, 0, 0, 300]),
            incidents: dice.pick(&[5, 5, 40]),
        };
        let queue = setup::events(plan.preset, &mut dice).into();
        let after_the_end = dice.below(5);
        Self { game: Game::new(), dice, style, plan, queue, left: plan.entries, after_the_end, watch: Watch::Asleep }
    }

    /// The game so far.
    pub const fn game(&self) -> &Game {
        &self.game
    }

    /// Chance, for those who want to do more with this game.
    pub const fn dice(&mut self) -> &mut Dice {
        &mut self.dice
    }

    /// The whole game.
    pub fn finish(mut self) -> Game {
        while self.step() {}
        self.game
    }

    /// Records one more entry; false when the game has come to its end.
    ///
    /// # Panics
    /// If what is legal is refused.
    pub fn step(&mut self) -> bool {
        if self.left == 0 {
            return false;
        }
        self.left -= 1;
        let Some(event) = self.next() else { return false };
        let entry = Entry { id: self.game.next_id(), at: self.dice.percent(20).then_some(1_790_000_000_000), event };
        if let Err(refusal) = self.game.record(entry.clone()) {
            panic!("legal, but refused ({refusal:?}): {entry:?}\n{:?}\n{}", self.game.situation(), self.told());
        }
        true
    }

    /// How to get this game again, and its log in a file for looking at.
    pub fn told(&self) -> String {
        tell(&self.plan, &self.game)
    }

    fn next(&mut self) -> Option<Event> {
        if let Some(event) = self.queue.pop_front() {
            return Some(event);
        }
        for _ in 0..20 {
            if let Some(event) = self.choose() {
                return Some(event);
            }
            if matches!(self.game.situation().phase, Phase::Over(_)) && self.after_the_end == 0 {
                return None;
            }
        }
        Some(Event::Note { text: "Nothing to see.".into() })
    }

    fn choose(&mut self) -> Option<Event> {
        match self.game.situation().phase {
            Phase::Before => None,
            Phase::Delayed | Phase::Suspended => self.stopped(),
            Phase::Over(_) => self.over(),
            Phase::Underway => self.underway(),
        }
    }

    fn stopped(&mut self) -> Option<Event> {
        let why = || "Rain".to_owned();
        match self.dice.below(20) {
            0 => Some(Event::Status(Status::Called { why: why() })),
            1 => Some(Event::Status(Status::Suspended { why: why() })),
            2 => Some(Event::Note { text: "Still raining.".into() }),
            3 => {
                let changes = people::change(&self.game, &mut self.dice)?;
                self.several(changes)
            }
            4 => judge::judgment(&self.game, &mut self.dice),
            _ => Some(Event::Status(Status::Resumed)),
        }
    }

    fn over(&mut self) -> Option<Event> {
        self.after_the_end = self.after_the_end.checked_sub(1)?;
        match self.dice.below(6) {
            0 => Some(Event::Status(Status::Final)),
            1 => judge::pitchers(&self.game, &mut self.dice),
            2 | 3 => judge::judgment(&self.game, &mut self.dice),
            4 if self.style.corrections > 0 => judge::correction(&self.game, &mut self.dice),
            _ => Some(Event::Note { text: "Shook hands.".into() }),
        }
    }

    fn underway(&mut self) -> Option<Event> {
        let s = *self.game.situation();
        let lineup = self.game.lineup(s.fielding())?;
        if lineup.clash().is_some() || (self.game.code().players_pitch && s.pitcher.is_none()) {
            return people::mend(&self.game, &mut self.dice);
        }
        if let Some(appeal) = self.appeal() {
            return Some(appeal);
        }
        if s.batter.is_none() {
            return self.game.code().missing_batter_is_out.then_some(Event::EmptyPlace);
        }
        let Style { in_play, unseen, corrections, incidents } = self.style;
        let roll = self.dice.below(1000);
        let after_play = self.game.steps().last().and_then(|step| step.play.as_deref()).filter(|play| !play.ends_half);
        let runners = s.runners().next().is_some();
        if let Some(play) = after_play
            && runners
            && (play.batted.is_some() || play.turn.is_some())
            && !play.is_dead()
            && self.dice.percent(3)
        {
            let action = bases::afterwards(&mut self.scene());
            return Some(Event::Running(Running { action, same_play: true }));
        }
        match roll {
            0..25 => {
                let changes = people::change(&self.game, &mut self.dice)?;
                self.several(changes)
            }
            25..45 => judge::judgment(&self.game, &mut self.dice),
            45..50 => Some(self.aside()),
            50..60 => self.out_of_turn(),
            60..66 => {
                let balls = self.game.code().balls_for_walk.map_or(0, |n| self.dice.small(n));
                let strikes = self.dice.small(self.game.code().strikes_for_out);
                Some(Event::SetCount(Count::new(balls, strikes)))
            }
            66..74 => self.game.code().balls_for_walk.map(|_| Event::IntentionalWalk),
            74..120 if runners => {
                let action = bases::running(&mut self.scene(), false);
                Some(Event::Running(Running { action, same_play: false }))
            }
            120..140 if self.dice.thousandth(unseen) => Some(pitches::unseen(&mut self.scene())),
            140..200 if self.dice.thousandth(corrections) => {
                self.watch = Watch::Asleep;
                judge::correction(&self.game, &mut self.dice)
            }
            200..300 if self.dice.thousandth(incidents) => self.incident(),
            _ if self.dice.thousandth(unseen / 4) => Some(pitches::unseen(&mut self.scene())),
            _ if self.dice.thousandth(in_play) => Some(batted::in_play(&mut self.scene())),
            _ => Some(pitches::pitch(&mut self.scene())),
        }
    }

    fn scene(&mut self) -> Scene<'_> {
        Scene::new(&self.game, *self.game.situation(), &mut self.dice)
    }

    fn several(&mut self, events: Vec<Event>) -> Option<Event> {
        self.queue.extend(events);
        self.queue.pop_front()
    }

    fn aside(&mut self) -> Event {
        let side = self.dice.pick(&Side::BOTH);
        match self.dice.below(4) {
            0 => Event::Note { text: "Dog on the field 🐕".into() },
            1 => Event::Protest { text: "The visitors protest.".into() },
            2 => Event::Team { side, name: "Named \u{202e} late".into() },
            _ => {
                let roster: Vec<_> = self.game.roster(side).cloned().collect();
                let mut player = roster[self.dice.below(roster.len())].clone();
                player.name = "Named at last".into();
                Event::Player { side, player }
            }
        }
    }

    fn incident(&mut self) -> Option<Event> {
        let s = *self.game.situation();
        let why = || "The umpire says so.".to_owned();
        match self.dice.below(12) {
            0 | 1 => Some(Event::Status(Status::Delayed { why: why() })),
            2 => Some(Event::Status(Status::Suspended { why: why() })),
            3 => Some(Event::Status(Status::Called { why: why() })),
            4 => Some(Event::Status(Status::Final)),
            5 => Some(Event::Status(Status::Forfeited { winner: self.dice.pick(&Side::BOTH), why: why() })),
            6..=8 => Some(Event::EndHalf { why: why() }),
            _ => {
                // The players before the one at bat, furthest back on the base furthest on.
                let lineup = self.game.lineup(s.batting())?;
                let places = lineup.places() as u8;
                let base = Base::STANDING.into_iter().find(|base| s.on(*base).is_none())?;
                let back = s.runners().count() as u8 + 1;
                let player = lineup.batter((s.place + places - back % places) % places)?;
                let free = !s.runners().any(|(_, r)| r.player == player) && s.batter != Some(player);
                (free && s.outs == 0).then_some(Event::PlaceRunner { base, player })
            }
        }
    }

    /// Another than the proper batter comes to the plate.
    fn out_of_turn(&mut self) -> Option<Event> {
        let s = *self.game.situation();
        let lineup = self.game.lineup(s.batting())?;
        let fresh = s.count == self.game.code().starting_count;
        let ready =
            |p: &benchbook_stats::team::PlayerId| Some(*p) != s.batter && !s.runners().any(|(_, r)| r.player == *p);
        let others: Vec<_> = lineup.batting_order().filter_map(|(_, p, _)| p).filter(ready).collect();
        // One stranger a turn: a second could be the proper batter, come back.
        let strange = |step: &Step| matches!(self.game.event(step), Event::BatterUp { .. });
        let ended = |step: &Step| step.play.as_deref().is_some_and(|p| p.turn.is_some() || p.ends_half);
        let already = self.game.steps().iter().rev().take_while(|s| !ended(s)).any(strange);
        if !fresh || already || self.watch != Watch::Asleep || others.is_empty() {
            return None;
        }
        let player = self.dice.pick(&others);
        let id = self.game.next_id();
        self.watch = self.dice.pick(&[Watch::Asleep, Watch::During(id), Watch::Afterwards(id), Watch::Afterwards(id)]);
        Some(Event::BatterUp { player })
    }

    fn appeal(&mut self) -> Option<Event> {
        let (Watch::During(since) | Watch::Afterwards(since)) = self.watch else { return None };
        let later: Vec<_> = self.game.steps().iter().filter(|s| s.entry > since).collect();
        let ended = later.iter().position(|s| match self.game.event(s) {
            // Cut short: nobody's turn has ended, and there is nothing to appeal.
            Event::EndHalf { .. } | Event::Change { change: Change::Leave { .. }, .. } => true,
            _ => s.play.as_deref().is_some_and(|p| p.turn.is_some() || p.ends_half),
        });
        let due = match (self.watch, ended) {
            (Watch::During(_), None) => self.dice.percent(40),
            (Watch::Afterwards(_), Some(at)) => {
                let his = later[at].play.as_deref().is_some_and(|p| p.turn.is_some());
                his && later[at + 1..].iter().all(|s| match &s.play {
                    Some(play) => play.continues,
                    None => !matches!(self.game.event(s), Event::EndHalf { .. } | Event::PlaceRunner { .. }),
                })
            }
            _ => false,
        };
        if due || ended.is_some() {
            self.watch = Watch::Asleep;
        }
        due.then_some(Event::OutOfTurnAppeal)
    }
}

/// How to get a game again, and its log in a file for looking at.
pub fn tell(plan: &Plan, game: &Game) -> String {
    let path = std::env::temp_dir().join(format!("benchbook-{:?}-{}.json", plan.preset, plan.seed));
    let text = file::write(&GameFile { id: format!("{plan:?}"), log: game.log().to_vec() });
    match std::fs::write(&path, text) {
        Ok(()) => format!("{plan:?}; its log is in {}", path.display()),
        Err(error) => format!("{plan:?}; its log could not be written: {error}"),
    }
}
