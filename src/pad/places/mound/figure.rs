//! The pitch count of the pitcher on the mound, as a scoreboard figure.

use leptos::prelude::*;

use super::Bench;
use super::reading::{self, ToLimit};
use crate::live::{Shown, live};
use crate::words::say;

/// The figure, with what belongs to it.
#[component]
pub fn Figure() -> impl IntoView {
    let bench = Bench::get();
    let game = bench.scoring.game;
    let there = Memo::new(move |_| bench.now.with(Option::is_some));
    let name = move || bench.now.with(|n| n.as_ref().map(|l| l.name.clone()));
    let shirt = move || {
        let id = bench.now.with(|n| n.as_ref().and_then(|l| l.player));
        id.and_then(|id| game.with(|g| g.player(id).map(|(_, p)| shirt(&p.number))))
    };
    let pitches = Memo::new(move |_| bench.now.with(|n| n.as_ref().map_or(0, |l| l.pitches)));
    let at_least = Memo::new(move |_| bench.now.with(|n| n.as_ref().is_some_and(|l| l.pitches_incomplete)));
    let limit = Memo::new(move |_| game.with(|g| g.code().pitch_limit));
    view! {
        <section class="figure">
            <Shown when=move || there.get() fallback=|| view! { <p>{say!("mound-no-pitcher")}</p> }>
                <h2>{name}" "<span class="shirt">{shirt}</span></h2>
                <p class="count" class:three=move || { pitches.get() > 99 }>
                    <span class="digits">{pitches}{live(move || at_least.get().then_some("+"))}</span>
                    <span class="unit">{say!("mound-pitches-today")}</span>
                </p>
                {live(move || limit.get().map(|limit| view! { <Limit limit=limit pitches=pitches/> }))}
                <Parts/>
                <Innings/>
                <Shown when=move || at_least.get()><p class="small">{say!("mound-incomplete")}</p></Shown>
            </Shown>
        </section>
    }
}

#[component]
fn Limit(
    /// The league's limit.
    limit: u16,
    /// The count.
    pitches: Memo<u32>,
) -> impl IntoView {
    let to = Memo::new(move |_| reading::to_limit(pitches.get(), limit));
    let passed = move || !matches!(to.get(), ToLimit::Left(_));
    view! {
        <p class="limit" class:passed=passed role="status">
            <b>{live(move || to_limit_said(to.get()))}</b>
            " "
            <span>{say!("mound-limit", limit = limit)}</span>
        </p>
    }
}

fn to_limit_said(to: ToLimit) -> String {
    match to {
        ToLimit::Left(left) => say!("mound-to-limit", left = left),
        ToLimit::Reached => say!("mound-limit-reached"),
        ToLimit::Over(over) => say!("mound-over-limit", over = over),
    }
}

fn shirt(number: &str) -> String {
    if number.is_empty() { String::new() } else { format!("#{number}") }
}

/// Strikes and balls, and those of the batter at the plate.
#[component]
fn Parts() -> impl IntoView {
    let bench = Bench::get();
    let strikes = move || bench.now.with(|n| n.as_ref().map_or(0, |l| l.strikes));
    let balls = move || bench.now.with(|n| n.as_ref().map_or(0, |l| l.balls));
    let batter = Memo::new(move |_| {
        let pitcher = bench.now.with(|n| n.as_ref().and_then(|l| l.player));
        bench.scoring.game.with(|g| reading::this_batter(g, pitcher))
    });
    let before = move || bench.now.with(|n| n.as_ref().map_or(0, |l| l.pitches)) - batter.get().unwrap_or(0);
    view! {
        <dl class="parts">
            <div><dt>{say!("mound-strikes")}</dt><dd>{strikes}</dd></div>
            <div><dt>{say!("mound-balls")}</dt><dd>{balls}</dd></div>
            <Shown when=move || batter.get().is_some()>
                <div><dt>{say!("mound-this-batter")}</dt><dd>{live(move || batter.get())}</dd></div>
                <div><dt>{say!("mound-before-batter")}</dt><dd>{before}</dd></div>
            </Shown>
        </dl>
    }
}

/// Pitches by inning.
#[component]
fn Innings() -> impl IntoView {
    let bench = Bench::get();
    let innings = Memo::new(move |_| bench.now.with(|n| n.as_ref().map(|l| l.by_inning.clone()).unwrap_or_default()));
    view! {
        <Shown when=move || innings.with(|i| !i.is_empty())>
            <div class="scroll" tabindex="0" role="region" aria-label=say!("mound-by-inning")>
                <table class="innings">
                    <caption class="spoken">{say!("mound-by-inning")}</caption>
                    <thead>
                        <tr>{live(move || innings.get().into_iter().map(|(i, _)| view! { <th scope="col">{i}</th> }).collect_view())}</tr>
                    </thead>
                    <tbody>
                        <tr>{live(move || innings.get().into_iter().map(|(_, n)| view! { <td>{n}</td> }).collect_view())}</tr>
                    </tbody>
                </table>
            </div>
        </Shown>
    }
}
