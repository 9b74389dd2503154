//! Before the first pitch: codes of play, rosters, cards.

use benchbook_stats::code::{Code, Preset, TieBreak};
use benchbook_stats::field::{Base, Position, Post, Side};
use benchbook_stats::log::{Event, Heading};
use benchbook_stats::team::{Assignment, Card, Hand, Player, PlayerId};

use super::Dice;

/// Players of a roster.
const ROSTER: u32 = 22;

/// A preset's code, as it is or with some of its values changed as a league might.
pub(super) fn code(preset: Preset, dice: &mut Dice) -> Code {
    let mut code = preset.code();
    if dice.percent(60) {
        return code;
    }
    // Short games reach their end, and every way to it, in fewer entries.
    code.innings = 2 + dice.small(4);
    for mercy in &mut code.mercy {
        mercy.after_inning = 1 + dice.small(code.innings);
        mercy.lead = 4 + dice.small(12);
    }
    if let Some(tie_break) = &mut code.tie_break {
        tie_break.from_inning = code.innings + 1;
    } else if dice.percent(30) {
        let bases = if dice.percent(50) { vec![Base::Second] } else { vec![Base::First, Base::Second] };
        code.tie_break = Some(TieBreak { from_inning: code.innings + dice.small(2), bases });
    }
    code
}

/// All that is said before the first pitch.
pub(super) fn events(preset: Preset, dice: &mut Dice) -> Vec<Event> {
    let code = code(preset, dice);
    let mut events = Vec::new();
    if dice.percent(70) {
        let date =
            jiff::civil::Date::new(2026, 1 + dice.small(12).cast_signed(), 1 + dice.small(28).cast_signed()).ok();
        events.push(Event::Heading(Heading {
            date,
            start: "10:30".into(),
            place: "Quay field".into(),
            ..Heading::default()
        }));
    }
    for side in Side::BOTH {
        if dice.percent(70) {
            let name = if side == Side::Home { "Harbor ⚓" } else { "<script>alert('Hill')</script>" };
            events.push(Event::Team { side, name: name.into() });
        }
        for number in 1..=ROSTER {
            events.push(Event::Player { side, player: player(id(side, number), number, dice) });
        }
    }
    events.push(Event::Rules(Box::new(code.clone())));
    for side in Side::BOTH {
        events.push(Event::Card { side, card: card(side, &code, dice) });
    }
    events.push(Event::PlayBall);
    events
}

/// The ids of a side's players.
pub(super) const fn id(side: Side, number: u32) -> PlayerId {
    PlayerId(side.index() as u32 * 100 + number)
}

fn player(id: PlayerId, number: u32, dice: &mut Dice) -> Player {
    let mut player = Player::unnamed(id);
    if dice.percent(60) {
        player.name = format!("Runner \"{number}\" of 🐟");
    }
    if dice.percent(60) {
        player.number = format!("{:02}", dice.below(100));
    }
    if dice.percent(40) {
        player.bats = Some(dice.pick(&[Hand::Right, Hand::Left, Hand::Both]));
        player.throws = Some(dice.pick(&[Hand::Right, Hand::Left]));
        player.age = Some(7 + dice.small(15));
        player.person = Some(format!("person-{number}"));
    }
    player
}

fn card(side: Side, code: &Code, dice: &mut Dice) -> Card {
    let mut positions: Vec<Position> = Position::ALL[..usize::from(code.fielders.clamp(9, 10))].to_vec();
    if !code.players_pitch && dice.percent(50) {
        positions.remove(0);
    }
    if dice.percent(8) {
        // A side short of a fielder, seldom of its catcher.
        let gone = if dice.percent(15) { Position::Catcher } else { Position::RightField };
        positions.retain(|p| *p != gone);
    }
    dice.shuffle(&mut positions);
    let mut posts: Vec<Post> = positions.into_iter().map(Post::Fields).collect();
    let mut card = Card::default();
    let mut number = 0;
    let mut next = || {
        number += 1;
        id(side, number)
    };
    if code.designated_hitter && dice.percent(50) {
        for post in &mut posts {
            if *post == Post::Fields(Position::Pitcher) {
                *post = Post::DesignatedHitter;
                card.fielding_only.push(Assignment::new(next(), Position::Pitcher));
            }
        }
    }
    let extra = if code.continuous_order { dice.small(4) } else { dice.small(code.extra_hitters + 1) };
    posts.extend((0..extra).map(|_| Post::ExtraHitter));
    dice.shuffle(&mut posts);
    card.order = posts.into_iter().map(|post| Assignment::new(next(), post)).collect();
    card
}
