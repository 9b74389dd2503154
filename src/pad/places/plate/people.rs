//! Changes of players: touch who, then who comes in, or with whom to change places. The rules of the card are the crate's.

use benchbook_stats::field::{Position, Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::propose;
use benchbook_stats::team::{Assignment, Change, Player, PlayerId, Role};
use leptos::prelude::*;

use super::gesture::{Chosen, Gesture};
use super::hand::Hand;
use super::telling;
use crate::live::{Shown, live};
use crate::words::{language, say};

/// Who is to be changed, as the game knows them.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Leaving {
    side: Side,
    player: PlayerId,
    post: Post,
    chosen: Chosen,
}

impl Leaving {
    fn of(game: &Game, chosen: Chosen) -> Option<Self> {
        let s = game.situation();
        let (batting, fielding) = (s.batting(), s.fielding());
        let (side, player) = match chosen {
            Chosen::Nobody => return None,
            Chosen::Fielder(position) => (fielding, game.lineup(fielding)?.at(position)?),
            Chosen::Batter => (batting, s.batter?),
            Chosen::Runner(base) => (batting, s.on(base)?.player),
            Chosen::Place { batting: true, place } => (batting, game.lineup(batting)?.batter(place)?),
            Chosen::Place { batting: false, place } => (fielding, game.lineup(fielding)?.batter(place)?),
        };
        let post = game.lineup(side)?.post_of(player).unwrap_or(Post::ExtraHitter);
        Some(Self { side, player, post, chosen })
    }

    /// What the one who comes in does.
    fn role(&self) -> Role {
        match self.chosen {
            Chosen::Batter => Role::PinchHitter,
            Chosen::Runner(_) => Role::PinchRunner,
            _ => Role::Fielder(self.post),
        }
    }

    fn title(&self, game: &Game) -> String {
        let (name, post) = (game.label(self.player), self.post.short(language()));
        match self.chosen {
            Chosen::Batter => say!("plate-pinch-hitter-for", name = name, post = post),
            Chosen::Runner(_) => say!("plate-pinch-runner-for", name = name, post = post),
            _ => say!("plate-takes-over-from", name = name, post = post),
        }
    }
}

/// Changes of players.
#[component]
pub fn People() -> impl IntoView {
    let hand = Hand::get();
    let chosen = Memo::new(move |_| {
        hand.gesture.with(|g| match g {
            Gesture::People(chosen) => *chosen,
            _ => Chosen::Nobody,
        })
    });
    let leaving = Memo::new(move |_| hand.game(|game| Leaving::of(game, chosen.get())));
    let title = move || match leaving.get() {
        Some(leaving) => hand.game(|game| leaving.title(game)),
        None => say!("plate-who-changes"),
    };
    view! {
        <section class="tray people" aria-label=say!("plate-players")>
            <div class="tray-head">
                <button type="button" class="cancel" aria-label=say!("plate-cancel") on:click=move |_| hand.cancel()>
                    <span aria-hidden="true">"✕"</span>
                </button>
                <p class="title">{title}</p>
            </div>
            <div class="choices">
                {live(move || match leaving.get() {
                    Some(leaving) => view! { <Change_ leaving=leaving/> }.into_any(),
                    None => view! { <Everybody/> }.into_any(),
                })}
            </div>
        </section>
    }
}

/// Both sides' players, for those who stand on no spot of the field.
#[component]
fn Everybody() -> impl IntoView {
    let hand = Hand::get();
    let side = move |batting: bool| {
        let s = hand.situation.get();
        let side = if batting { s.batting() } else { s.fielding() };
        let rows = hand.game(|game| {
            let lineup = game.lineup(side)?;
            let rows = lineup.batting_order().filter_map(|(place, player, post)| {
                let post = post.short(language());
                let row = |id| say!("plate-player-row", place = place + 1, name = game.label(id), post = post);
                player.map(|id| (place, row(id)))
            });
            Some(rows.collect::<Vec<_>>())
        });
        rows.unwrap_or_default()
            .into_iter()
            .map(|(place, text)| {
                view! {
                    <button type="button" on:click=move |_| hand.go(Gesture::People(Chosen::Place { batting, place }))>
                        {text}
                    </button>
                }
            })
            .collect_view()
    };
    view! {
        <p class="hint">{say!("plate-drag-hint")}</p>
        <h2>{say!("plate-fielding-side")}</h2>
        <div class="chips">{live(move || side(false))}</div>
        <h2>{say!("plate-batting-side")}</h2>
        <div class="chips">{live(move || side(true))}</div>
        <Joins/>
    }
}

/// One player chosen: who comes in for them, and what else may change.
#[component]
fn Change_(
    /// Who leaves, or changes.
    leaving: Leaving,
) -> impl IntoView {
    let hand = Hand::get();
    let courtesy = RwSignal::new(false);
    let may_lend = matches!(leaving.chosen, Chosen::Runner(_)) && hand.game_now(|game| game.code().courtesy_runner);
    let bench = move || hand.game(|game| bench(game, leaving.side));
    let come_in = move |incoming: PlayerId| {
        let role = if courtesy.get_untracked() { Role::CourtesyRunner } else { leaving.role() };
        let change = Change::Substitute { outgoing: leaving.player, incoming, role };
        record(hand, leaving.side, change);
    };
    view! {
        <Shown when=move || may_lend>
            <div class="chips">
                <button type="button" aria-pressed=move || courtesy.get().to_string() on:click=move |_| courtesy.update(|c| *c = !*c)>
                    {say!("plate-as-courtesy")}
                </button>
            </div>
        </Shown>
        <div class="chips bench">
            {live(move || {
                let bench = bench();
                if bench.is_empty() {
                    view! { <p class="hint">{say!("plate-nobody-on-bench")}</p> }.into_any()
                } else {
                    bench.into_iter().map(|(id, text)| view! {
                        <button type="button" on:click=move |_| come_in(id)>{text}</button>
                    }).collect_view().into_any()
                }
            })}
        </div>
        <Newcomer side=leaving.side come_in=come_in/>
        <Swap leaving=leaving/>
        <Otherwise leaving=leaving/>
    }
}

/// Those who can come in, those who have never been in first.
fn bench(game: &Game, side: Side) -> Vec<(PlayerId, String)> {
    let row = |(id, was_in): (PlayerId, bool)| {
        let shirt = game.player(id).map_or("", |(_, player)| player.number.as_str());
        let row = match (game.label(id), shirt) {
            (name, "") => name,
            (name, shirt) => say!("plate-bench-row", shirt = shirt, name = name),
        };
        (id, if was_in { say!("plate-bench-row-was-in", row = row) } else { row })
    };
    propose::bench(game, side).into_iter().map(row).collect()
}

fn record(hand: Hand, side: Side, change: Change) -> bool {
    let words = hand.game_now(|game| said(game, &change));
    hand.record(Event::Change { side, change }, words)
}

fn said(game: &Game, change: &Change) -> String {
    match change {
        Change::Substitute { outgoing, incoming, .. } => {
            say!("plate-came-in", incoming = game.label(*incoming), outgoing = game.label(*outgoing))
        }
        _ => telling::entry(game, &Event::Change { side: Side::Home, change: change.clone() }),
    }
}

/// Somebody nobody thought of: number or name, and in they come.
#[component]
fn Newcomer(
    /// Whose.
    side: Side,
    /// What then.
    come_in: impl Fn(PlayerId) + Copy + 'static,
) -> impl IntoView {
    let hand = Hand::get();
    let (number, name) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let go = move |_| {
        let id = hand.game_now(Game::next_player_id);
        let mut player = Player::unnamed(id);
        number.get_untracked().trim().clone_into(&mut player.number);
        name.get_untracked().trim().clone_into(&mut player.name);
        let open = hand.gesture.get_untracked();
        if hand.scoring.tap(Event::Player { side, player }) {
            hand.gesture.set(open);
            come_in(id);
        }
    };
    let empty = move || number.with(|n| n.trim().is_empty()) && name.with(|n| n.trim().is_empty());
    view! {
        <h2>{say!("plate-new-player")}</h2>
        <div class="newcomer">
            <label>
                <span class="says">{say!("plate-number")}</span>
                <input inputmode="numeric" maxlength="3" autocomplete="off" bind:value=number/>
            </label>
            <label>
                <span class="says">{say!("plate-name")}</span>
                <input maxlength="60" autocomplete="off" bind:value=name/>
            </label>
            <button type="button" disabled=empty on:click=go>{say!("plate-come-in")}</button>
        </div>
    }
}

/// Two players of the side in the field change places.
#[component]
fn Swap(
    /// One of them.
    leaving: Leaving,
) -> impl IntoView {
    let hand = Hand::get();
    let others = move || {
        hand.game(|game| {
            let lineup = game.lineup(leaving.side)?;
            let others = lineup.everyone().filter(|a| a.player != leaving.player && a.post != leaving.post);
            Some(
                others
                    .map(|a| (a, format!("{} {}", a.post.short(language()), game.label(a.player))))
                    .collect::<Vec<_>>(),
            )
        })
        .unwrap_or_default()
    };
    view! {
        <h2>{say!("plate-swap-hint")}</h2>
        <div class="chips">
            {live(move || others().into_iter().map(|(other, text)| view! {
                <button type="button" on:click=move |_| swap(hand, leaving, other)>{text}</button>
            }).collect_view())}
        </div>
    }
}

/// Two fielders change places: one was dragged onto the other.
pub fn change_places(hand: Hand, one: Position, two: Position) {
    let both = hand.game_now(|game| {
        let leaving = Leaving::of(game, Chosen::Fielder(one))?;
        let player = game.lineup(leaving.side)?.at(two)?;
        Some((leaving, Assignment { player, post: Post::Fields(two) }))
    });
    if let Some((leaving, other)) = both {
        swap(hand, leaving, other);
    }
}

fn swap(hand: Hand, leaving: Leaving, other: Assignment) {
    let (one, two) = (leaving.post, other.post);
    let hitter = [(leaving.player, one, other.player), (other.player, two, leaving.player)]
        .into_iter()
        .find(|(_, post, _)| *post == Post::DesignatedHitter);
    // A designated hitter who goes into the field: whoever fielded only bats from now on, in the place of the fielder
    // who leaves.
    if let Some((hitter, _, fielder)) = hitter {
        let pitcher = hand.game_now(|game| game.lineup(leaving.side).and_then(|l| l.fielding_only().first().copied()));
        let post = if fielder == other.player { two } else { one };
        if let Some(pitcher) = pitcher.filter(|p| p.player != fielder)
            && record(hand, leaving.side, Change::EndDesignatedHitter { batter: pitcher.player, replaces: fielder })
        {
            record(hand, leaving.side, Change::Shift { to: vec![Assignment { player: hitter, post }] });
        }
        return;
    }
    let to = vec![Assignment { player: leaving.player, post: two }, Assignment { player: other.player, post: one }];
    record(hand, leaving.side, Change::Shift { to });
}

/// What is rarer: leaving without a substitute, the end of the designated hitter.
#[component]
fn Otherwise(
    /// Who.
    leaving: Leaving,
) -> impl IntoView {
    let hand = Hand::get();
    let hitter = hand.game_now(|game| {
        let lineup = game.lineup(leaving.side)?;
        let fields_only = lineup.fielding_only().iter().any(|a| a.player == leaving.player);
        let hitter = lineup.everyone().find(|a| a.post == Post::DesignatedHitter)?;
        fields_only.then_some(hitter.player)
    });
    view! {
        <div class="chips">
            {hitter.map(|replaces| view! {
                <button type="button" on:click=move |_| {
                    record(hand, leaving.side, Change::EndDesignatedHitter { batter: leaving.player, replaces });
                }>{say!("plate-bats-for-dh")}</button>
            })}
            <button type="button" class="puts-out" on:click=move |_| {
                record(hand, leaving.side, Change::Leave { player: leaving.player });
            }>{say!("plate-leaves")}</button>
        </div>
    }
}

/// Late arrivals, where everyone present bats.
#[component]
fn Joins() -> impl IntoView {
    let hand = Hand::get();
    let open = hand.game_now(|game| game.code().continuous_order);
    let join = move |side: Side, player: PlayerId| {
        record(hand, side, Change::Join(Assignment { player, post: Post::ExtraHitter }));
    };
    let lists = move || {
        Side::BOTH.map(|side| {
            let bench = hand.game(|game| bench(game, side));
            let team = hand.game(|game| game.team_name(side).to_owned());
            view! {
                <h2>{say!("plate-joins", team = team)}</h2>
                <div class="chips">
                    {bench.into_iter().map(|(id, text)| view! {
                        <button type="button" on:click=move |_| join(side, id)>{text}</button>
                    }).collect_view()}
                </div>
                <Newcomer side=side come_in=move |id| join(side, id)/>
            }
        })
    };
    view! { <Shown when=move || open>{lists}</Shown> }
}
