//! The scoreboard: score, inning, outs, count, who bats, who is next, who pitches.

use std::time::Duration;

use benchbook_stats::field::{Base, Count, Side};
use benchbook_stats::game::{Game, Thrown};
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use super::hand::Hand;
use super::words;
use crate::live::live;
use crate::words::say;

/// Time enough for the tap itself to show.
const AFTER_PAINT: Duration = Duration::from_millis(60);

/// The board. Always in sight.
#[component]
pub fn Board() -> impl IntoView {
    let hand = Hand::get();
    let s = hand.situation;
    view! {
        <section class="plate-board" aria-label=say!("plate-board")>
            <div class="score">{Side::BOTH.map(|side| view! { <SideScore side=side/> })}</div>
            <div class="inning">
                <span aria-hidden="true">{live(move || words::inning(s.get().inning, s.get().half))}</span>
                <span class="spoken">{live(move || words::inning_said(s.get().inning, s.get().half))}</span>
            </div>
            <div class="outs" data-outs=move || s.get().outs.to_string()>
                <span class="says" aria-hidden="true">{say!("plate-outs")}</span>
                <span class="lamps" aria-hidden="true">
                    <i data-lit=move || (s.get().outs > 0).to_string()></i>
                    <i data-lit=move || (s.get().outs > 1).to_string()></i>
                </span>
                <span class="spoken">{live(move || say!("plate-outs-said", outs = s.get().outs))}</span>
            </div>
            <div class="count" data-count=move || words::count(s.get().count)>
                <span class="figure" aria-hidden="true">{live(move || words::count(s.get().count))}</span>
                <span class="spoken">{live(move || count_said(s.get().count))}</span>
            </div>
            <Now/>
        </section>
    }
}

fn count_said(count: Count) -> String {
    say!("plate-count-said", balls = count.balls, strikes = count.strikes)
}

/// A side's name and runs; a mark for the side at bat.
#[component]
fn SideScore(
    /// Which.
    side: Side,
) -> impl IntoView {
    let hand = Hand::get();
    let name = Memo::new(move |_| hand.game(|game| game.team_name(side).to_owned()));
    let runs = move || hand.situation.get().score[side.index()];
    let at_bat = move || hand.situation.get().batting() == side;
    view! {
        <div class="side" data-bats=move || at_bat().to_string()>
            <span class="mark" aria-hidden="true">{live(move || if at_bat() { "▸" } else { "" })}</span>
            <span class="team">{name}</span>
            <span class="runs">{runs}</span>
        </div>
    }
}

/// Who bats, who is on deck, who pitches.
#[component]
fn Now() -> impl IntoView {
    let hand = Hand::get();
    let s = hand.situation;
    let batter = Memo::new(move |_| name_of(hand, s.get().batter));
    let on_deck = Memo::new(move |_| hand.game(|game| game.on_deck().map(|id| game.label(id))).unwrap_or_default());
    let pitcher = Memo::new(move |_| name_of(hand, s.get().pitcher));
    let today = line_of_the_day(hand);
    let thrown = Memo::new(move |_| hand.game(|game| pitches_of(game, s.get().pitcher)));
    view! {
        <dl class="now">
            <div class="at-bat">
                <dt>{say!("plate-at-bat")}</dt>
                <dd>
                    <b class="who">{live(move || say!("plate-order-place", place = s.get().place + 1, name = batter.get()))}</b>
                    <span class="today">{today}</span>
                </dd>
            </div>
            <div class="on-deck">
                <dt>{say!("plate-on-deck")}</dt>
                <dd><span class="who">{live(move || words::short(&on_deck.get()).to_owned())}</span></dd>
            </div>
            <div class="pitching">
                <dt>{say!("plate-pitching")}</dt>
                <dd>
                    <span class="who">{live(move || words::short(&pitcher.get()).to_owned())}</span>
                    <b class="pitch-count">{live(move || say!("plate-pitch-count", pitches = thrown.get()))}</b>
                </dd>
            </div>
        </dl>
    }
}

/// The batter's day so far. It rests on every ruling of the game, which may take longer than a frame on a slow tablet, so
/// it is reckoned when the next batter is already shown, and once a batter.
fn line_of_the_day(hand: Hand) -> RwSignal<String> {
    let line = RwSignal::new(String::new());
    let turn = Memo::new(move |_| (hand.situation.get().batter, hand.situation.get().batting()));
    Effect::new(move |_| {
        let (batter, side) = turn.get();
        line.set(String::new());
        set_timeout(
            move || {
                let still_up = turn.try_get_untracked().is_some_and(|now| now == (batter, side));
                if let (true, Some(batter)) = (still_up, batter) {
                    line.try_set(hand.game_now(|game| today(game, side, batter)));
                }
            },
            AFTER_PAINT,
        );
    });
    line
}

fn name_of(hand: Hand, player: Option<PlayerId>) -> String {
    player.map_or_else(|| say!("plate-nobody"), |id| hand.game(|game| game.label(id)))
}

/// Pitches the pitcher has thrown in this game.
fn pitches_of(game: &Game, pitcher: Option<PlayerId>) -> usize {
    game.plays().filter(|p| p.before.pitcher == pitcher && p.thrown.is_some_and(Thrown::is_thrown)).count()
}

/// What the batter has done today, short.
fn today(game: &Game, side: Side, batter: PlayerId) -> String {
    let line = game.batting(side).into_iter().find(|line| line.player == Some(batter));
    match line {
        Some(line) if line.plate_appearances > 0 => {
            let (hits, at_bats, walks, runs) = (line.hits, line.at_bats, line.walks, line.runs_batted_in);
            say!("plate-today", hits = hits, at_bats = at_bats, walks = walks, runs = runs)
        }
        _ => say!("plate-first-time-up"),
    }
}

/// The name and shirt number that fit on a token.
pub fn token_name(game: &Game, player: PlayerId) -> (String, String) {
    let label = game.label(player);
    let number = game.player(player).map(|(_, p)| p.number.clone()).unwrap_or_default();
    (words::short(&label).to_owned(), number)
}

/// The runner on a base: who, and what to print.
pub fn runner_on(hand: Hand, base: Base) -> Option<(String, String)> {
    let player = hand.situation.get().on(base)?.player;
    Some(hand.game(|game| token_name(game, player)))
}
