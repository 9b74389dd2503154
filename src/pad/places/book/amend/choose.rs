//! What happened, chosen among all that could have at that moment: instead of what stands there, or because it was
//! forgotten.

use benchbook_stats::field::Position;
use benchbook_stats::game::{Game, Slot};
use benchbook_stats::log::{EntryId, Event, Pitch};
use benchbook_stats::propose::{Proposal, possible};
use leptos::prelude::*;

use super::super::{Reading, words};
use super::draft::{Amending, said_at};
use super::pick::{Pick, name};
use crate::live::live;
use crate::places::plate::{telling, words as plate};
use crate::words::{language, say};

mod people;
mod umpire;

use people::People;
use umpire::Umpire;

/// The moment that is being amended, for the parts of the choice.
#[derive(Clone, Copy)]
pub struct Moment {
    /// The game as it stood there.
    at: StoredValue<Game>,
    /// The line it was begun at.
    line: EntryId,
    slot: Slot,
    reading: Reading,
}

impl Moment {
    fn at<T>(self, read: impl FnOnce(&Game) -> T) -> T {
        self.at.with_value(read)
    }

    /// Goes on with what was chosen: to where each one ended, or, if there is no more to say, to what would change.
    fn choose(self, event: Event) {
        let was = self.reading.scoring.game.with_untracked(|game| said_at(game, self.slot));
        let event = match was {
            Some(was) => self.at(|game| possible::with_notes(game, &was, event)),
            None => event,
        };
        if self.at(|game| possible::is_open(game, &event)) {
            self.reading.amending.set(Some(Amending { line: self.line, slot: self.slot, says: Some(event) }));
        } else {
            self.reading.propose(self.line, self.slot.says(event));
        }
    }

    /// A button that chooses.
    fn chip(self, text: String, event: Event) -> impl IntoView {
        view! { <button type="button" on:click=move |_| self.choose(event.clone())>{text}</button> }
    }
}

/// The choice.
#[component]
pub fn Choose(
    /// The line it was begun at.
    line: EntryId,
    /// Where in the game.
    place: Slot,
) -> impl IntoView {
    let reading = Reading::get();
    let whens = if matches!(place, Slot::Of(_)) { Vec::new() } else { whens(reading, line) };
    let slot = RwSignal::new(place);
    let options: Vec<(String, String)> =
        whens.iter().enumerate().map(|(i, (_, text))| (i.to_string(), text.clone())).collect();
    let slots: Vec<Slot> = whens.into_iter().map(|(slot, _)| slot).collect();
    let of_value = slots.clone();
    let value = Signal::derive(move || {
        of_value.iter().position(|s| *s == slot.get()).map(|i| i.to_string()).unwrap_or_default()
    });
    let pick = Callback::new(move |value: String| {
        if let Some(chosen) = value.parse().ok().and_then(|i: usize| slots.get(i).copied()) {
            slot.set(chosen);
        }
    });
    let inserts = !options.is_empty();
    let (now, stands) = (say!("book-instead-now"), reading.sentence(line));
    view! {
        <div class="amending choosing">
            {if inserts {
                view! { <Pick label=say!("book-missing-when") options=options value=value pick=pick/> }.into_any()
            } else {
                view! { <p>{now}" "<b>{stands}</b></p> }.into_any()
            }}
            {live(move || {
                let slot = slot.get();
                let at = reading.scoring.game.with_untracked(|game| game.at(slot))?;
                Some(view! { <Choices moment=Moment { at: StoredValue::new(at), line, slot, reading }/> })
            })}
        </div>
    }
}

/// The moments of a line: before each pitch of the turn, before what it tells, after it.
fn whens(reading: Reading, line: EntryId) -> Vec<(Slot, String)> {
    let pitches = reading.account.with_untracked(|account| account.line(line).map(|l| l.pitches.clone()));
    let before = pitches.unwrap_or_default().into_iter().enumerate().filter(|(_, (entry, _))| *entry != line);
    let pitch = |(i, (entry, thrown)): (usize, _)| {
        let pitch = benchbook_stats::account::sentences::pitch(thrown, language());
        (Slot::Before(entry), say!("book-missing-before-pitch", number = i + 1, pitch = pitch))
    };
    let after = reading.scoring.game.with_untracked(|game| Slot::after(game, line));
    let own = [(Slot::Before(line), say!("book-missing-before")), (after, say!("book-missing-after"))];
    before.map(pitch).chain(own).collect()
}

#[component]
fn Choices(
    /// When.
    moment: Moment,
) -> impl IntoView {
    let s = moment.at(|game| *game.situation());
    let stood = format!("{} · {} · {}", words::half(s.inning, s.half), words::outs(s.outs), plate::count(s.count));
    view! {
        <p class="soft small">{stood}</p>
        <AtPlate moment=moment/>
        <OnBases moment=moment/>
        <People moment=moment/>
        <Umpire moment=moment/>
    }
}

/// Pitches, the ball hit, the turn's end.
#[component]
fn AtPlate(
    /// When.
    moment: Moment,
) -> impl IntoView {
    let pitches = moment.at(|game| {
        let said = |call| {
            let event = Event::Pitch(Pitch::new(call));
            (telling::named(game, &event), event)
        };
        possible::pitches(game).into_iter().map(said).collect::<Vec<_>>()
    });
    let turns = moment.at(|game| {
        possible::turns(game).into_iter().map(|event| (telling::named(game, &event), event)).collect::<Vec<_>>()
    });
    let fielders = moment.at(possible::fielders);
    let hit = move |position: Position| {
        let go = move |_| {
            if let Some(event) = moment.at(|game| possible::hit_to(game, position)) {
                moment.choose(event);
            }
        };
        view! {
            <button type="button" on:click=go><b>{position.number()}</b>" "{name(position)}</button>
        }
    };
    let (common, rare): (Vec<_>, Vec<_>) = {
        let mut pitches = pitches;
        let rare = pitches.split_off(pitches.len().min(benchbook_stats::log::Call::COMMON.len()));
        (pitches, rare)
    };
    let chips =
        move |list: Vec<(String, Event)>| list.into_iter().map(|(text, event)| moment.chip(text, event)).collect_view();
    (!common.is_empty()).then(|| {
        view! {
            <h3>{say!("book-instead-pitch")}</h3>
            <div class="chips">{chips(common)}</div>
            <details>
                <summary>{say!("book-instead-rare")}</summary>
                <div class="chips">{chips(rare)}</div>
            </details>
            <h3>{say!("book-instead-hit")}</h3>
            <div class="chips">{fielders.into_iter().map(hit).collect_view()}</div>
            <h3>{say!("book-instead-turn")}</h3>
            <p class="soft small">{say!("book-instead-turn-hint")}</p>
            <div class="chips">{chips(turns)}</div>
        }
    })
}

/// What the runners can have done.
#[component]
fn OnBases(
    /// When.
    moment: Moment,
) -> impl IntoView {
    let s = moment.at(|game| *game.situation());
    let possible = moment.at(possible::on_bases);
    let chip = move |proposal: Proposal| {
        let text = moment.at(|game| telling::headline(game, &s, &proposal.outcome, &proposal.event));
        moment.chip(text, proposal.event)
    };
    let runner = move |(base, list): (benchbook_stats::field::Base, Vec<Proposal>)| {
        let name = s.on(base).map(|runner| moment.at(|game| game.label(runner.player))).unwrap_or_default();
        view! {
            <h4>{words::from_where(&name, base.into())}</h4>
            <div class="chips">{list.into_iter().map(chip).collect_view()}</div>
        }
    };
    (!possible.everybody.is_empty()).then(|| {
        view! {
            <h3>{say!("book-instead-bases")}</h3>
            {possible.each.into_iter().map(runner).collect_view()}
            <h4>{say!("book-instead-everybody")}</h4>
            <div class="chips">{possible.everybody.into_iter().map(chip).collect_view()}</div>
        }
    })
}
