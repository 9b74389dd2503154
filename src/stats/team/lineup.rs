//! The lineup as it stands: who bats where, who fields where, who has left; and whether a change is legal.

use super::{Assignment, Card, Change, PlayerId, Role};
use crate::code::{Code, Reentry};
use crate::field::{Position, Post};
use crate::game::Refusal;
use crate::order::put_in_order;
use crate::words::{Language, say};
use serde::{Serialize, Serializer};
use std::fmt;

/// Places a batting order may have. No code comes near it; a damaged file may.
const MOST_PLACES: usize = 99;

/// What a player has done in the game, in the order a box score prints it ("PH-SS").
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Duty {
    /// Played a post.
    Post(Post),
    /// Batted for another.
    PinchHitter,
    /// Ran for another.
    PinchRunner,
}

impl Duty {
    /// The box score's abbreviation.
    pub const fn abbreviation(self) -> &'static str {
        match self {
            Self::Post(post) => post.abbreviation(),
            Self::PinchHitter => "PH",
            Self::PinchRunner => "PR",
        }
    }

    /// The box score's abbreviation in a language.
    pub fn short(self, language: Language) -> String {
        match self {
            Self::Post(post) => post.short(language),
            Self::PinchHitter => say!(language, "short-pinch-hitter"),
            Self::PinchRunner => say!(language, "short-pinch-runner"),
        }
    }
}

/// All that a player has done, in order. As a string it is what an English box score prints: "PH-SS".
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Duties(pub Vec<Duty>);

impl Duties {
    /// As a box score in a language prints them.
    pub fn short(&self, language: Language) -> String {
        self.0.iter().map(|duty| duty.short(language)).collect::<Vec<_>>().join("-")
    }
}

impl fmt::Display for Duties {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, duty) in self.0.iter().enumerate() {
            f.write_str(if i > 0 { "-" } else { "" })?;
            f.write_str(duty.abbreviation())?;
        }
        Ok(())
    }
}

impl Serialize for Duties {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// One player's part in the game.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Appearance {
    /// Who.
    pub player: PlayerId,
    /// Batting place, counted from 0; `None` for players who only field.
    pub place: Option<u8>,
    /// What they did, in order, without repeats in a row.
    pub duties: Vec<Duty>,
    /// Started the game.
    pub starter: bool,
    /// Has left the game at least once.
    pub left: bool,
    /// Came back after leaving.
    pub reentered: bool,
}

/// A batting place and who holds it now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Place {
    player: Option<PlayerId>,
    post: Post,
}

/// One side's lineup as it stands.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Lineup {
    order: Vec<Place>,
    fielding_only: Vec<Assignment>,
    appearances: Vec<Appearance>,
}

impl Lineup {
    /// The lineup a card sets out.
    pub fn from_card(card: &Card) -> Result<Self, Refusal> {
        if card.order.is_empty() {
            return Err(Refusal::CardEmpty);
        }
        if card.order.len() > MOST_PLACES {
            return Err(Refusal::OrderTooLong);
        }
        let mut lineup = Self::default();
        for (i, a) in card.everyone().enumerate() {
            if card.everyone().take(i).any(|b| b.player == a.player) {
                return Err(Refusal::PlayerTwiceOnCard(a.player));
            }
            if let Post::Fields(position) = a.post
                && card.everyone().take(i).any(|b| b.post == a.post)
            {
                return Err(Refusal::TwoAtPosition(position));
            }
            let place = (i < card.order.len()).then_some(i as u8);
            lineup.appearances.push(Appearance {
                player: a.player,
                place,
                duties: vec![Duty::Post(a.post)],
                starter: true,
                left: false,
                reentered: false,
            });
        }
        lineup.order = card.order.iter().map(|a| Place { player: Some(a.player), post: a.post }).collect();
        lineup.fielding_only.clone_from(&card.fielding_only);
        Ok(lineup)
    }

    /// Batting places, those without a player included.
    pub fn places(&self) -> usize {
        self.order.len()
    }

    /// The player in a batting place counted from 0, `None` if the place has no player now.
    pub fn batter(&self, place: u8) -> Option<PlayerId> {
        self.order.get(usize::from(place)).and_then(|p| p.player)
    }

    /// The batting place, from 0, of a player in the game.
    pub fn place_of(&self, player: PlayerId) -> Option<u8> {
        self.order.iter().position(|p| p.player == Some(player)).map(|i| i as u8)
    }

    /// Everyone in the game now, batters first.
    pub fn everyone(&self) -> impl Iterator<Item = Assignment> + '_ {
        self.order
            .iter()
            .filter_map(|p| p.player.map(|player| Assignment { player, post: p.post }))
            .chain(self.fielding_only.iter().copied())
    }

    /// The batting order now: place from 0, player, post.
    pub fn batting_order(&self) -> impl Iterator<Item = (u8, Option<PlayerId>, Post)> + '_ {
        self.order.iter().enumerate().map(|(i, p)| (i as u8, p.player, p.post))
    }

    /// Players who field and do not bat.
    pub fn fielding_only(&self) -> &[Assignment] {
        &self.fielding_only
    }

    /// The player now at `position`.
    pub fn at(&self, position: Position) -> Option<PlayerId> {
        self.everyone().find(|a| a.post == Post::Fields(position)).map(|a| a.player)
    }

    /// The post of a player in the game.
    pub fn post_of(&self, player: PlayerId) -> Option<Post> {
        self.everyone().find(|a| a.player == player).map(|a| a.post)
    }

    /// Every part played so far, in the order a box score lists them: by batting place, then by entry.
    pub fn appearances(&self) -> Vec<&Appearance> {
        let mut all: Vec<_> = self.appearances.iter().collect();
        let place = |a: &Appearance| a.place.map_or(u8::MAX, |p| p);
        put_in_order(&mut all, |a, b| place(a) < place(b));
        all
    }

    /// True if the player is in the game now.
    pub fn contains(&self, player: PlayerId) -> bool {
        self.everyone().any(|a| a.player == player)
    }

    /// Two players at one position, if a change has left it so. Play can't go on until it is mended.
    pub fn clash(&self) -> Option<Position> {
        let mut seen = [false; 11];
        for a in self.everyone() {
            if let Post::Fields(position) = a.post {
                let at = usize::from(position.number());
                if seen[at] {
                    return Some(position);
                }
                seen[at] = true;
            }
        }
        None
    }

    /// The side takes the field: pinch hitters and runners who stayed in now play their post.
    pub fn take_field(&mut self) {
        let now: Vec<_> = self.everyone().filter(|a| matches!(a.post, Post::Fields(_))).collect();
        for a in now {
            self.note(a.player, Duty::Post(a.post));
        }
    }

    fn note(&mut self, player: PlayerId, duty: Duty) {
        if let Some(a) = self.appearances.iter_mut().find(|a| a.player == player)
            && a.duties.last() != Some(&duty)
        {
            a.duties.push(duty);
        }
    }

    /// The lineup after `change`. Pinch hitting and running are checked against the situation by the replay.
    pub fn changed(&self, change: &Change, code: &Code) -> Result<Self, Refusal> {
        let mut next = self.clone();
        match change {
            Change::Substitute { role: Role::CourtesyRunner, outgoing, incoming } => {
                if !code.courtesy_runner {
                    return Err(Refusal::NoCourtesyRunner);
                }
                let post = self.post_of(*outgoing).ok_or(Refusal::NotInGame(*outgoing))?;
                if !matches!(post, Post::Fields(Position::Pitcher | Position::Catcher)) {
                    return Err(Refusal::CourtesyOnlyForBattery(*outgoing));
                }
                if self.contains(*incoming) {
                    return Err(Refusal::AlreadyInGame(*incoming));
                }
                if !self.appearances.iter().any(|a| a.player == *incoming) {
                    next.appearances.push(Appearance {
                        player: *incoming,
                        place: self.place_of(*outgoing),
                        duties: vec![Duty::PinchRunner],
                        starter: false,
                        left: false,
                        reentered: false,
                    });
                }
            }
            Change::Substitute { outgoing, incoming, role } => next.substitute(*outgoing, *incoming, *role, code)?,
            Change::Shift { to } => {
                for a in to {
                    next.set_post(a.player, a.post)?;
                }
                for a in to {
                    next.note(a.player, Duty::Post(a.post));
                }
            }
            Change::EndDesignatedHitter { batter, replaces } => next.end_designated_hitter(*batter, *replaces)?,
            Change::Leave { player } => {
                if let Some(place) = next.order.iter_mut().find(|p| p.player == Some(*player)) {
                    place.player = None;
                } else if let Some(i) = next.fielding_only.iter().position(|a| a.player == *player) {
                    next.fielding_only.remove(i);
                } else {
                    return Err(Refusal::NotInGame(*player));
                }
                next.mark_left(*player);
            }
            Change::Join(a) => {
                if !code.continuous_order {
                    return Err(Refusal::OrderIsClosed);
                }
                if next.order.len() >= MOST_PLACES {
                    return Err(Refusal::OrderTooLong);
                }
                next.may_enter(a.player, None, code)?;
                let place = next.order.len() as u8;
                next.order.push(Place { player: Some(a.player), post: a.post });
                next.enter(a.player, Some(place), Duty::Post(a.post));
            }
        }
        Ok(next)
    }

    fn substitute(&mut self, outgoing: PlayerId, incoming: PlayerId, role: Role, code: &Code) -> Result<(), Refusal> {
        let place = self.place_of(outgoing);
        if place.is_none() && !self.contains(outgoing) {
            return Err(Refusal::NotInGame(outgoing));
        }
        self.may_enter(incoming, place, code)?;
        let old = self.post_of(outgoing).unwrap_or(Post::ExtraHitter);
        let (post, duty) = match role {
            Role::PinchHitter => (old, Duty::PinchHitter),
            Role::PinchRunner | Role::CourtesyRunner => (old, Duty::PinchRunner),
            Role::Fielder(post) => (post, Duty::Post(post)),
        };
        match place {
            Some(i) => self.order[usize::from(i)] = Place { player: Some(incoming), post },
            None => {
                for a in &mut self.fielding_only {
                    if a.player == outgoing {
                        *a = Assignment { player: incoming, post };
                    }
                }
            }
        }
        self.mark_left(outgoing);
        self.enter(incoming, place, duty);
        Ok(())
    }

    fn end_designated_hitter(&mut self, batter: PlayerId, replaces: PlayerId) -> Result<(), Refusal> {
        let i = self.fielding_only.iter().position(|a| a.player == batter).ok_or(Refusal::NotFieldingOnly(batter))?;
        let place = self.place_of(replaces).ok_or(Refusal::NotInGame(replaces))?;
        let a = self.fielding_only.remove(i);
        self.order[usize::from(place)] = Place { player: Some(batter), post: a.post };
        self.mark_left(replaces);
        if let Some(appearance) = self.appearances.iter_mut().find(|x| x.player == batter) {
            appearance.place = Some(place);
        }
        Ok(())
    }

    fn set_post(&mut self, player: PlayerId, post: Post) -> Result<(), Refusal> {
        if let Some(place) = self.order.iter_mut().find(|p| p.player == Some(player)) {
            place.post = post;
        } else if let Some(a) = self.fielding_only.iter_mut().find(|a| a.player == player) {
            a.post = post;
        } else {
            return Err(Refusal::NotInGame(player));
        }
        Ok(())
    }

    fn may_enter(&self, player: PlayerId, place: Option<u8>, code: &Code) -> Result<(), Refusal> {
        if self.contains(player) {
            return Err(Refusal::AlreadyInGame(player));
        }
        let Some(before) = self.appearances.iter().find(|a| a.player == player && a.left) else {
            return Ok(());
        };
        match code.reentry {
            Reentry::Never => Err(Refusal::NoReentry(player)),
            Reentry::StartersOnce if !before.starter || before.reentered => Err(Refusal::NoReentry(player)),
            Reentry::StartersOnce | Reentry::Free if place.is_some() && before.place != place => {
                Err(Refusal::ReentryInOwnPlace(player))
            }
            Reentry::StartersOnce | Reentry::Free => Ok(()),
        }
    }

    fn mark_left(&mut self, player: PlayerId) {
        if let Some(a) = self.appearances.iter_mut().find(|a| a.player == player) {
            a.left = true;
        }
    }

    fn enter(&mut self, player: PlayerId, place: Option<u8>, duty: Duty) {
        if let Some(a) = self.appearances.iter_mut().find(|a| a.player == player) {
            a.reentered = a.left;
            if a.place.is_none() {
                a.place = place;
            }
            a.duties.push(duty);
        } else {
            self.appearances.push(Appearance {
                player,
                place,
                duties: vec![duty],
                starter: false,
                left: false,
                reentered: false,
            });
        }
    }
}
