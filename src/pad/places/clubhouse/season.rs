//! A team's season: what its games on this device add up to. Nothing is read or added before it is opened.

use std::sync::Arc;
use std::time::Duration;

use benchbook_stats::game::Game;
use benchbook_stats::lines::BattingLine;
use benchbook_stats::log::Entry;
use benchbook_stats::order::put_in_order;
use benchbook_stats::season::{DayOfPitches, PlayerSeason, Season, TeamSeason};
use leptos::prelude::*;

use super::house::House;
use crate::live::{Shown, live};
use crate::words::say;

/// Headings: what is printed, and what it means.
type Columns = Vec<(String, String)>;

/// The season, once a game has begun.
#[component]
pub fn Seasons() -> impl IntoView {
    let house = House::get();
    let any = Memo::new(move |_| {
        house.games.with(|rows| rows.iter().flatten().any(|r| counts(r.thrown_away, r.board.score)))
    });
    let open = RwSignal::new(false);
    let season = RwSignal::new(None::<Season>);
    let chosen = RwSignal::new(None);
    let runs = StoredValue::new(0_u32);
    Effect::new(move |_| {
        if open.get() {
            // Written first comes last on the list, and is added first.
            let logs = house.games.with(|rows| {
                let rows = rows.iter().flatten().filter(|row| counts(row.thrown_away, row.board.score));
                rows.map(|row| Arc::clone(&row.log)).collect()
            });
            runs.update_value(|runs| *runs += 1);
            add_up(logs, Season::new(), Run { runs, this: runs.get_value() }, season);
        }
    });
    view! {
        <Shown when=move || any.get()>
            <details
                class="season"
                on:toggle=move |event| open.set(event_target::<web_sys::Element>(&event).has_attribute("open"))
            >
                <summary>{say!("clubhouse-season")}</summary>
                {live(move || match season.get() {
                    None => view! { <p class="soft" aria-busy="true">{say!("clubhouse-adding-up")}</p> }.into_any(),
                    Some(season) => view! { <Teams season=season chosen=chosen/> }.into_any(),
                })}
            </details>
        </Shown>
    }
}

const fn counts(thrown_away: bool, score: Option<[u16; 2]>) -> bool {
    !thrown_away && score.is_some()
}

/// One adding up. A later one puts an end to it.
#[derive(Clone, Copy)]
struct Run {
    runs: StoredValue<u32>,
    this: u32,
}

/// Adds one game, then lets the page breathe: a long list must not hold up a tap.
fn add_up(mut left: Vec<Arc<[Entry]>>, mut so_far: Season, run: Run, done: RwSignal<Option<Season>>) {
    if run.runs.try_get_value() != Some(run.this) {
        return;
    }
    let Some(log) = left.pop() else {
        done.try_set(Some(so_far));
        return;
    };
    so_far.add(&Game::replay(log.iter().cloned()));
    set_timeout(move || add_up(left, so_far, run, done), Duration::ZERO);
}

/// Which team, and its season. The team with most games is shown first.
#[component]
fn Teams(
    /// All teams.
    season: Season,
    /// The name picked, if one was.
    chosen: RwSignal<Option<String>>,
) -> impl IntoView {
    let names: Vec<String> = season.teams.keys().cloned().collect();
    let most = season.teams.iter().max_by_key(|(_, team)| team.games).map(|(name, _)| name.clone()).unwrap_or_default();
    let known = names.clone();
    let name = Memo::new(move |_| chosen.get().filter(|name| known.contains(name)).unwrap_or_else(|| most.clone()));
    let option = move |one: String| {
        let value = one.clone();
        let text = one.clone();
        view! { <option value=value selected=move || name.get() == one>{text}</option> }
    };
    view! {
        <label class="team">
            <span>{say!("clubhouse-team")}</span>
            <select on:change=move |event| chosen.set(Some(event_target_value(&event)))>
                {names.into_iter().map(option).collect_view()}
            </select>
        </label>
        {live(move || season.teams.get(&name.get()).map(|team| one_team(&name.get(), team)))}
        <p class="small soft">{say!("clubhouse-season-counted")}</p>
    }
}

fn one_team(name: &str, team: &TeamSeason) -> impl IntoView + use<> {
    let mut players: Vec<PlayerSeason> = team.players.values().cloned().collect();
    put_in_order(&mut players, |a, b| a.name < b.name);
    view! {
        <p class="record">{record(team)}</p>
        {batting(name, team.games, &players)}
        {pitching(name, &players)}
        {fielding(name, &players)}
        {by_day(name, &players)}
    }
}

/// "3 won, 1 lost; 20 runs to 11".
fn record(team: &TeamSeason) -> String {
    say!(
        "clubhouse-record",
        won = team.won,
        lost = team.lost,
        undecided = team.undecided,
        runs = team.runs,
        allowed = team.runs_allowed
    )
}

/// A table that scrolls within itself, its first column staying in sight; nothing without rows.
fn table(title: String, team: &str, columns: Columns, rows: Vec<(String, Vec<String>)>) -> Option<AnyView> {
    if rows.is_empty() {
        return None;
    }
    let heading = |(short, long): (String, String)| {
        view! { <th scope="col"><abbr title=long>{short}</abbr></th> }
    };
    let row = |(name, cells): (String, Vec<String>)| {
        let cells = cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view();
        view! { <tr><th scope="row">{name}</th>{cells}</tr> }
    };
    let region = say!("clubhouse-table", title = title.as_str(), team = team);
    let view = view! {
        <div class="scroll" tabindex="0" role="region" aria-label=region>
            <table>
                <thead><tr><th scope="col">{title}</th>{columns.into_iter().map(heading).collect_view()}</tr></thead>
                <tbody>{rows.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    };
    Some(view.into_any())
}

fn batting(name: &str, games: u32, players: &[PlayerSeason]) -> Option<AnyView> {
    let columns: Columns = vec![
        (say!("clubhouse-column-games"), say!("clubhouse-column-games-long")),
        (say!("clubhouse-column-appearances"), say!("clubhouse-column-appearances-long")),
        (say!("clubhouse-column-at-bats"), say!("clubhouse-column-at-bats-long")),
        (say!("clubhouse-column-runs"), say!("clubhouse-column-runs-long")),
        (say!("clubhouse-column-hits"), say!("clubhouse-column-hits-long")),
        (say!("clubhouse-column-batted-in"), say!("clubhouse-column-batted-in-long")),
        (say!("clubhouse-column-walks"), say!("clubhouse-column-walks-long")),
        (say!("clubhouse-column-strikeouts"), say!("clubhouse-column-strikeouts-long")),
        (say!("clubhouse-column-average"), say!("clubhouse-column-average-long")),
        (say!("clubhouse-column-on-base"), say!("clubhouse-column-on-base-long")),
        (say!("clubhouse-column-slugging"), say!("clubhouse-column-slugging-long")),
    ];
    let cells = |games: u32, b: &BattingLine| {
        let counts = [games, b.plate_appearances, b.at_bats, b.runs, b.hits, b.runs_batted_in, b.walks, b.strikeouts];
        let rates = [b.average(), b.on_base(), b.slugging()];
        counts.iter().map(u32::to_string).chain(rates.iter().map(ToString::to_string)).collect::<Vec<_>>()
    };
    let batted = players.iter().filter(|p| p.batting.plate_appearances + p.batting.runs > 0);
    let mut rows: Vec<_> = batted.clone().map(|p| (p.name.clone(), cells(p.games, &p.batting))).collect();
    if !rows.is_empty() {
        let mut total = BattingLine::default();
        batted.for_each(|p| total.add(&p.batting));
        rows.push((say!("clubhouse-team"), cells(games, &total)));
    }
    table(say!("clubhouse-batting"), name, columns, rows)
}

fn pitching(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    let columns: Columns = vec![
        (say!("clubhouse-column-games"), say!("clubhouse-column-games-long")),
        (say!("clubhouse-column-innings"), say!("clubhouse-column-innings-long")),
        (say!("clubhouse-column-hits"), say!("clubhouse-column-hits-long")),
        (say!("clubhouse-column-runs"), say!("clubhouse-column-runs-long")),
        (say!("clubhouse-column-earned"), say!("clubhouse-column-earned-long")),
        (say!("clubhouse-column-walks"), say!("clubhouse-column-walks-long")),
        (say!("clubhouse-column-strikeouts"), say!("clubhouse-column-strikeouts-long")),
        (say!("clubhouse-column-earned-average"), say!("clubhouse-column-earned-average-long")),
        (say!("clubhouse-column-wins"), say!("clubhouse-column-wins-long")),
        (say!("clubhouse-column-losses"), say!("clubhouse-column-losses-long")),
        (say!("clubhouse-column-saves"), say!("clubhouse-column-saves-long")),
    ];
    let cells = |p: &PlayerSeason| {
        let (season, line) = (&p.pitching, &p.pitching.line);
        let mut cells = vec![season.games.to_string(), line.outs.to_string()];
        cells.extend([line.hits, line.runs, line.earned_runs, line.walks, line.strikeouts].map(|n| n.to_string()));
        cells.push(season.earned_run_average().to_string());
        cells.extend([season.wins, season.losses, season.saves].map(|n| n.to_string()));
        cells
    };
    let rows = players.iter().filter(|p| p.pitching.games > 0).map(|p| (p.name.clone(), cells(p))).collect();
    table(say!("clubhouse-pitching"), name, columns, rows)
}

fn fielding(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    let columns: Columns = vec![
        (say!("clubhouse-column-putouts"), say!("clubhouse-column-putouts-long")),
        (say!("clubhouse-column-assists"), say!("clubhouse-column-assists-long")),
        (say!("clubhouse-column-errors"), say!("clubhouse-column-errors-long")),
        (say!("clubhouse-column-fielding-average"), say!("clubhouse-column-fielding-average-long")),
    ];
    let cells = |p: &PlayerSeason| {
        let line = &p.fielding;
        let mut cells: Vec<_> = [line.putouts, line.assists, line.errors].iter().map(u32::to_string).collect();
        cells.push(line.average().to_string());
        cells
    };
    let fielded =
        |p: &&PlayerSeason| !p.played.is_empty() || p.fielding.putouts + p.fielding.assists + p.fielding.errors > 0;
    let rows = players.iter().filter(fielded).map(|p| (p.name.clone(), cells(p))).collect();
    table(say!("clubhouse-fielding"), name, columns, rows)
}

/// Pitches by day, the latest first.
fn by_day(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    let columns: Columns = vec![(say!("clubhouse-column-pitches"), say!("clubhouse-column-pitches-long"))];
    let mut days: Vec<(&str, &PlayerSeason, DayOfPitches)> = Vec::new();
    for player in players {
        days.extend(player.workload.iter().map(|(day, thrown)| (day.as_str(), player, *thrown)));
    }
    days.sort_by(|a, b| b.0.cmp(a.0).then_with(|| a.1.name.cmp(&b.1.name)));
    let missed = days.iter().any(|(.., thrown)| thrown.incomplete);
    let row = |(day, player, thrown): (&str, &PlayerSeason, DayOfPitches)| {
        let day = if day.is_empty() { say!("clubhouse-no-date") } else { day.to_owned() };
        let more = if thrown.incomplete { "+" } else { "" };
        (format!("{day} {}", player.name), vec![format!("{}{more}", thrown.pitches)])
    };
    let table = table(say!("clubhouse-by-day"), name, columns, days.into_iter().map(row).collect())?;
    let view = view! {
        {table}
        <p class="small">{say!("clubhouse-season-caution")}</p>
        {missed.then(|| view! { <p class="small">{say!("clubhouse-season-incomplete")}</p> })}
    };
    Some(view.into_any())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_record_names_what_is_undecided_only_if_there_is_some() {
        let mut team = TeamSeason { games: 4, won: 3, lost: 1, runs: 20, runs_allowed: 11, ..TeamSeason::default() };
        assert_eq!(record(&team), "3 won, 1 lost; 20 runs to 11");
        team.undecided = 2;
        assert_eq!(record(&team), "3 won, 1 lost, 2 tied or not finished; 20 runs to 11");
    }

    #[test]
    fn games_thrown_away_or_not_begun_do_not_count() {
        assert!(counts(false, Some([0, 0])));
        assert!(!counts(true, Some([0, 0])));
        assert!(!counts(false, None));
    }
}
