//! The scoresheet: batters down, innings across, the marks of the paper book in each square; one sheet of paper a side.

use benchbook_stats::account::sentences;
use benchbook_stats::field::Side;
use benchbook_stats::sheet::{Cell, Column, Listed, Row, Sheet, Totals, draw};
use leptos::prelude::*;

use super::{Reading, words};
use crate::live::live;
use crate::words::{language, say};

/// Both sides' sheets.
#[component]
pub fn Sheets() -> impl IntoView {
    let print = move |_| {
        // A browser without printing leaves the sheet on the screen.
        let _ = window().print();
    };
    view! {
        <div class="sheets">
            <p class="tools"><button type="button" on:click=print>{say!("book-print")}</button></p>
            {Side::BOTH.map(|side| view! { <OneSheet side=side/> })}
        </div>
    }
}

#[component]
fn OneSheet(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let reading = Reading::get();
    let sheet = Memo::new(move |_| reading.scoring.game.with(|game| game.sheet(side)));
    let rows = Memo::new(move |_| sheet.with(|s| s.rows.len()));
    let heading = move || reading.scoring.game.with(|game| words::sheet_heading(game, side));
    view! {
        <section class="sheet" class:long=move || { rows.get() > 9 } class:longer=move || { rows.get() > 12 }>
            <header>
                <h2>{live(move || sheet.with(|s| s.team.clone()))}</h2>
                <p>{heading}</p>
            </header>
            <div class="scroll" tabindex="0" role="region" aria-label=move || say!("book-sheet-of", team = sheet.with(|s| s.team.clone()))>
                {live(move || sheet.with(|s| view! { <Grid sheet=s.clone()/> }))}
            </div>
            <Pitchers side=side.other()/>
            <p class="legend small">{say!("book-legend")}</p>
        </section>
    }
}

#[component]
fn Grid(
    /// What is drawn.
    sheet: Sheet,
) -> impl IntoView {
    let head = |column: &Column| {
        let part = (column.part > 1).then(|| format!(" ({})", column.part));
        view! { <th scope="col">{column.inning}{part}</th> }
    };
    let body = sheet.rows.iter().map(|row| view! { <Batters row=row.clone() sheet=sheet.clone()/> }).collect_view();
    let sums = |column: &Column| view! { <td>{column.sums.map(|s| words::sheet_sums(&s))}</td> };
    view! {
        <table>
            <thead>
                <tr>
                    <th scope="col">{say!("book-batters")}</th>
                    {sheet.columns.iter().map(head).collect_view()}
                    <th scope="col">{say!("book-at-bats")}</th>
                    <th scope="col">{say!("book-runs")}</th>
                    <th scope="col">{say!("book-hits")}</th>
                    <th scope="col">{say!("book-runs-batted-in")}</th>
                </tr>
            </thead>
            <tbody>{body}</tbody>
            <tfoot>
                <tr>
                    <th scope="row">{say!("book-sum-row")}</th>
                    {sheet.columns.iter().map(sums).collect_view()}
                    <td colspan="4"></td>
                </tr>
            </tfoot>
        </table>
    }
}

#[component]
fn Batters(
    /// The place.
    row: Row,
    /// The whole sheet.
    sheet: Sheet,
) -> impl IntoView {
    let place = row.place;
    let squares = (0..sheet.columns.len()).map(|column| square(sheet.cell(place, column))).collect_view();
    let total = |get: fn(&Totals) -> u32| {
        let lines = row.players.iter().map(|p| view! { <span>{get(&p.totals)}</span> }).collect_view();
        view! { <td class="total">{lines}</td> }
    };
    view! {
        <tr>
            <th scope="row">
                <span class="place" aria-hidden="true">{place + 1}</span>
                <span class="who">{row.players.iter().map(listed).collect_view()}</span>
            </th>
            {squares}
            {total(|t| t.at_bats)}
            {total(|t| t.runs)}
            {total(|t| t.hits)}
            {total(|t| t.runs_batted_in)}
        </tr>
    }
}

fn listed(player: &Listed) -> impl IntoView + use<> {
    view! {
        <span>
            <b>{player.number.clone()}</b>
            " "
            {player.name.clone()}
            " "
            <i>{player.posts.short(language())}</i>
        </span>
    }
}

/// One square, read aloud as its sentence.
fn square(cell: Option<&Cell>) -> AnyView {
    let Some(cell) = cell else { return view! { <td class="square"></td> }.into_any() };
    let reading = Reading::get();
    let told = match cell.entry {
        Some(entry) => reading.account.with_untracked(|account| {
            account
                .line(entry)
                .map(|line| sentences::line(line, language(), &|id| reading.name(id)))
                .unwrap_or_default()
        }),
        None => say!("book-unfinished"),
    };
    view! {
        <td class="square" class:new-batter=cell.new_batter class:new-pitcher=cell.new_pitcher>
            <svg viewBox="0 0 100 100" role="img" aria-label=told inner_html=draw::svg(cell)></svg>
        </td>
    }
    .into_any()
}

/// The pitchers these batters faced, so that one sheet tells the half of a game.
#[component]
fn Pitchers(
    /// Whose pitchers.
    side: Side,
) -> impl IntoView {
    let reading = Reading::get();
    let lines = Memo::new(move |_| reading.box_score.with(|score| score.side(side).pitching.clone()));
    let row = |line: benchbook_stats::lines::PitchingLine| {
        view! {
            <tr>
                <th scope="row">{line.name}</th>
                <td>{line.outs.to_string()}</td>
                <td>{line.hits}</td>
                <td>{line.runs}</td>
                <td>{line.earned_runs}</td>
                <td>{line.walks}</td>
                <td>{line.strikeouts}</td>
                <td>{line.pitches}</td>
            </tr>
        }
    };
    let columns = [
        say!("book-innings-pitched"),
        say!("book-hits"),
        say!("book-runs"),
        say!("book-earned-runs"),
        say!("book-walks"),
        say!("book-strikeouts"),
        say!("book-pitch-count"),
    ];
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=move || say!("book-pitchers-of", team = reading.team(side))>
            <table class="pitchers">
                <thead>
                    <tr>
                        <th scope="col">{live(move || say!("book-pitchers-of", team = reading.team(side)))}</th>
                        {columns.map(|h| view! { <th scope="col">{h}</th> })}
                    </tr>
                </thead>
                <tbody>{live(move || lines.get().into_iter().map(row).collect_view())}</tbody>
            </table>
        </div>
    }
}
