//! The box score: both sides' batters, pitchers and fielders.

use benchbook_stats::account::why::{Batting, Catching, Number, Pitching};
use benchbook_stats::field::Side;
use benchbook_stats::lines::{BattingLine, FieldingLine, PitchingLine, SideBox};
use benchbook_stats::ruling::Credit;
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;

use super::proof::Proof;
use super::why::Asked;
use super::{Reading, words};
use crate::live::live;
use crate::words::{language, say};

mod notes;

use notes::{on_batters, on_pitchers};

/// Both sides.
#[component]
pub fn Boxes() -> impl IntoView {
    view! { <div class="boxes">{Side::BOTH.map(|side| view! { <SideTables side=side/> })}</div> }
}

#[component]
fn SideTables(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let reading = Reading::get();
    let lines = Memo::new(move |_| reading.box_score.with(|score| score.side(side).clone()));
    let innings = Memo::new(move |_| reading.scoring.game.with(|game| game.code().innings));
    view! {
        <section class="side">
            <h2>{live(move || lines.with(|l| l.team.clone()))}</h2>
            {live(move || lines.with(|l| batters(side, l)))}
            <ul class="notes">{live(move || lines.with(on_batters))}</ul>
            {live(move || lines.with(|l| pitchers(side, l, innings.get())))}
            <ul class="notes">{live(move || lines.with(on_pitchers))}</ul>
            {live(move || lines.with(fielders))}
            <Proof side=side/>
        </section>
    }
}

/// A table that scrolls within itself, its first column staying in sight.
#[component]
fn Table(
    /// What it shows.
    title: String,
    /// Whose.
    team: String,
    /// Headings: what is printed, and what it means.
    columns: Vec<(String, String)>,
    /// Rows.
    children: Children,
) -> impl IntoView {
    let heading = |(short, long): (String, String)| view! { <th scope="col"><abbr title=long>{short}</abbr></th> };
    let label = say!("book-table-of", table = title.as_str(), team = team);
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=label>
            <table class="lines">
                <thead>
                    <tr>
                        <th scope="col">{title}</th>
                        {columns.into_iter().map(heading).collect_view()}
                    </tr>
                </thead>
                <tbody>{children()}</tbody>
            </table>
        </div>
    }
}

/// A cell: a number that answers "why?", unless it is 0.
fn cell(number: Option<Number>, value: u32) -> AnyView {
    printed(number, value, value.to_string())
}

/// A cell whose number is printed otherwise: innings from outs, pitches of which some were missed.
fn printed(number: Option<Number>, value: u32, text: String) -> AnyView {
    match number.filter(|_| value > 0) {
        Some(number) => view! { <td><Asked number=number value=text/></td> }.into_any(),
        None => view! { <td>{text}</td> }.into_any(),
    }
}

fn batters(side: Side, lines: &SideBox) -> impl IntoView + use<> {
    let columns = vec![
        (say!("book-at-bats"), say!("book-at-bats-long")),
        (say!("book-runs"), say!("book-runs-long")),
        (say!("book-hits"), say!("book-hits-long")),
        (say!("book-runs-batted-in"), say!("book-runs-batted-in-long")),
        (say!("book-walks"), say!("book-walks-long")),
        (say!("book-strikeouts"), say!("book-strikeouts-long")),
        (say!("book-left-on-base"), say!("book-left-on-base-long")),
    ];
    let mut last_place = None;
    let rows: Vec<_> = lines
        .batting
        .iter()
        .filter(|l| l.place.is_some() || l.plate_appearances > 0)
        .map(|line| {
            let follows = line.place.is_some() && line.place == last_place;
            last_place = line.place;
            batter(side, line, follows)
        })
        .collect();
    let total = batter(side, &lines.batting_total, false);
    view! { <Table title=say!("book-batting") team=lines.team.clone() columns=columns>{rows}{total}</Table> }
}

fn batter(side: Side, line: &BattingLine, follows: bool) -> impl IntoView + use<> {
    let number = |what| line.player.map(|id| Number::Batting(id, what));
    let left = number(Batting::LeftOnBase).or(Some(Number::LeftOnBaseOf(side)));
    let name = if line.player.is_some() { line.name.clone() } else { say!("book-totals") };
    view! {
        <tr class:total=line.player.is_none()>
            <th scope="row" class:follows=follows>
                <span class="who">{name}</span>
                " "
                <span class="posts">{line.posts.short(language())}</span>
            </th>
            {cell(number(Batting::AtBats), line.at_bats)}
            {cell(number(Batting::Runs), line.runs)}
            {cell(number(Batting::Hits), line.hits)}
            {cell(number(Batting::RunsBattedIn), line.runs_batted_in)}
            {cell(number(Batting::Walks), line.walks)}
            {cell(number(Batting::Strikeouts), line.strikeouts)}
            {cell(left, line.left_on_base)}
        </tr>
    }
}

fn pitchers(side: Side, lines: &SideBox, innings: u8) -> impl IntoView + use<> {
    let columns = vec![
        (say!("book-innings-pitched"), say!("book-innings-pitched-long")),
        (say!("book-hits"), say!("book-hits-long")),
        (say!("book-runs"), say!("book-runs-long")),
        (say!("book-earned-runs"), say!("book-earned-runs-long")),
        (say!("book-walks"), say!("book-walks-long")),
        (say!("book-strikeouts"), say!("book-strikeouts-long")),
        (say!("book-batters-faced"), say!("book-batters-faced-long")),
        (say!("book-pitch-count"), say!("book-pitch-count-long")),
        (say!("book-strikes"), say!("book-strikes-long")),
        (say!("book-average"), say!("book-average-long")),
    ];
    let sum: u32 = lines.pitching.iter().map(|l| l.earned_runs).sum();
    let rows: Vec<_> = lines.pitching.iter().map(|line| pitcher(side, line, innings)).collect();
    let total = pitcher(side, &lines.pitching_total, innings);
    let differs = sum != lines.pitching_total.earned_runs;
    let missed = lines.pitching_total.pitches_incomplete;
    view! {
        <Table title=say!("book-pitching") team=lines.team.clone() columns=columns>{rows}{total}</Table>
        {differs.then(|| view! { <p class="small soft">{say!("book-team-earned")}</p> })}
        {missed.then(|| view! { <p class="small soft">"+ "{say!("book-pitches-missed")}</p> })}
        <p class="small soft">{say!("book-average-reckoned", innings = innings)}</p>
    }
}

fn pitcher(side: Side, line: &PitchingLine, innings: u8) -> impl IntoView + use<> {
    let number = |what| line.player.map(|id| Number::Pitching(id, what));
    let earned = number(Pitching::EarnedRuns).or(Some(Number::EarnedAgainst(side)));
    let name = if line.player.is_some() { line.name.clone() } else { say!("book-totals") };
    let more = if line.pitches_incomplete { "+" } else { "" };
    view! {
        <tr class:total=line.player.is_none()>
            <th scope="row">
                <span class="who">{name}</span>
                {line.player.zip(line.decision.clone()).map(|(id, letter)| view! { <Decision id=id letter=letter/> })}
            </th>
            {printed(number(Pitching::Outs), line.outs.0, line.outs.to_string())}
            {cell(number(Pitching::Hits), line.hits)}
            {cell(number(Pitching::Runs), line.runs)}
            {cell(earned, line.earned_runs)}
            {cell(number(Pitching::Walks), line.walks)}
            {cell(number(Pitching::Strikeouts), line.strikeouts)}
            {cell(number(Pitching::BattersFaced), line.batters_faced)}
            {printed(number(Pitching::Pitches), line.pitches, format!("{}{more}", line.pitches))}
            {cell(number(Pitching::Strikes), line.strikes)}
            <td>{line.earned_run_average(innings).to_string()}</td>
        </tr>
    }
}

/// "W", "L" or "S", which answers "why?" too.
#[component]
fn Decision(
    /// Whose.
    id: PlayerId,
    /// As a box score prints it.
    letter: String,
) -> impl IntoView {
    let reading = Reading::get();
    let (letter, label) = words::decision(&letter, &reading.name(id));
    view! {
        " "
        <button
            type="button"
            class="asked decision"
            aria-label=label
            on:click=move |_| reading.asked.set(Some(Number::Decision(id)))
        >
            <span>{letter}</span>
        </button>
    }
}

fn fielders(lines: &SideBox) -> impl IntoView + use<> {
    let columns = vec![
        (say!("book-putouts"), say!("book-putouts-long")),
        (say!("book-assists"), say!("book-assists-long")),
        (say!("book-errors"), say!("book-errors-long")),
        (say!("book-double-plays"), say!("book-double-plays-long")),
        (say!("book-passed-balls"), say!("book-passed-balls-long")),
    ];
    let rows: Vec<_> = lines.fielding.iter().map(fielder).collect();
    let total = fielder(&lines.fielding_total);
    view! { <Table title=say!("book-fielding") team=lines.team.clone() columns=columns>{rows}{total}</Table> }
}

fn fielder(line: &FieldingLine) -> impl IntoView + use<> {
    let number = |what| line.player.map(|id| Number::Fielding(id, what));
    let passed_balls = line.player.map(|id| Number::Catching(id, Catching::PassedBalls));
    let name = if line.player.is_some() { line.name.clone() } else { say!("book-totals") };
    view! {
        <tr class:total=line.player.is_none()>
            <th scope="row"><span class="who">{name}</span>" "<span class="posts">{line.posts.short(language())}</span></th>
            {cell(number(Credit::Putout), line.putouts)}
            {cell(number(Credit::Assist), line.assists)}
            {cell(number(Credit::Error), line.errors)}
            {cell(number(Credit::DoublePlay), line.double_plays)}
            {cell(passed_balls, line.passed_balls)}
        </tr>
    }
}
