//! A team's season: what its games on this device add up to. Nothing is read or added before it is opened.

use std::sync::Arc;
use std::time::Duration;

use benchbook_stats::game::Game;
use benchbook_stats::lines::BattingLine;
use benchbook_stats::log::Entry;
use benchbook_stats::season::{DayOfPitches, PlayerSeason, Season, TeamSeason};
use leptos::prelude::*;

use super::house::House;

const COUNTED: &str = "Every game on the list that has begun counts, once for each time it is on the list. A game called \
                       or forfeited before it was official counts in the record alone (OBR 9.03(e)).";
const CAUTION: &str = "Counted in the games on this device only. Your league's limits and medical advice come first.";
const INCOMPLETE: &str = "+ At least: some of this pitcher's pitches were not seen.";

/// Headings: what is printed, and what it means.
type Columns = &'static [(&'static str, &'static str)];

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
        <Show when=move || any.get()>
            <details
                class="season"
                on:toggle=move |event| open.set(event_target::<web_sys::Element>(&event).has_attribute("open"))
            >
                <summary>"Season"</summary>
                {move || match season.get() {
                    None => view! { <p class="soft" aria-busy="true">"Adding up…"</p> }.into_any(),
                    Some(season) => view! { <Teams season=season chosen=chosen/> }.into_any(),
                }}
            </details>
        </Show>
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
            <span>"Team"</span>
            <select on:change=move |event| chosen.set(Some(event_target_value(&event)))>
                {names.into_iter().map(option).collect_view()}
            </select>
        </label>
        {move || season.teams.get(&name.get()).map(|team| one_team(&name.get(), team))}
        <p class="small soft">{COUNTED}</p>
    }
}

fn one_team(name: &str, team: &TeamSeason) -> impl IntoView + use<> {
    let mut players: Vec<PlayerSeason> = team.players.values().cloned().collect();
    players.sort_by(|a, b| a.name.cmp(&b.name));
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
    let undecided = match team.undecided {
        0 => String::new(),
        n => format!(", {n} tied or not finished"),
    };
    format!("{} won, {} lost{undecided}; {} runs to {}", team.won, team.lost, team.runs, team.runs_allowed)
}

/// A table that scrolls within itself, its first column staying in sight; nothing without rows.
fn table(title: &'static str, team: &str, columns: Columns, rows: Vec<(String, Vec<String>)>) -> Option<AnyView> {
    if rows.is_empty() {
        return None;
    }
    let heading = |(short, long): &(&'static str, &'static str)| {
        view! { <th scope="col"><abbr title=*long>{*short}</abbr></th> }
    };
    let row = |(name, cells): (String, Vec<String>)| {
        let cells = cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view();
        view! { <tr><th scope="row">{name}</th>{cells}</tr> }
    };
    let view = view! {
        <div class="scroll" tabindex="0" role="region" aria-label=format!("{title}: {team}")>
            <table>
                <thead><tr><th scope="col">{title}</th>{columns.iter().map(heading).collect_view()}</tr></thead>
                <tbody>{rows.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    };
    Some(view.into_any())
}

fn batting(name: &str, games: u32, players: &[PlayerSeason]) -> Option<AnyView> {
    const COLUMNS: Columns = &[
        ("G", "Games"),
        ("PA", "Plate appearances"),
        ("AB", "At bats"),
        ("R", "Runs"),
        ("H", "Hits"),
        ("RBI", "Runs batted in"),
        ("BB", "Bases on balls"),
        ("SO", "Strikeouts"),
        ("AVG", "Batting average"),
        ("OBP", "On-base percentage"),
        ("SLG", "Slugging percentage"),
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
        rows.push(("Team".to_owned(), cells(games, &total)));
    }
    table("Batting", name, COLUMNS, rows)
}

fn pitching(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    const COLUMNS: Columns = &[
        ("G", "Games"),
        ("IP", "Innings pitched"),
        ("H", "Hits"),
        ("R", "Runs"),
        ("ER", "Earned runs"),
        ("BB", "Bases on balls"),
        ("SO", "Strikeouts"),
        ("ERA", "Earned run average, by the innings of each game's rules"),
        ("W", "Games won"),
        ("L", "Games lost"),
        ("S", "Games saved"),
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
    table("Pitching", name, COLUMNS, rows)
}

fn fielding(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    const COLUMNS: Columns = &[("PO", "Putouts"), ("A", "Assists"), ("E", "Errors"), ("AVG", "Fielding average")];
    let cells = |p: &PlayerSeason| {
        let line = &p.fielding;
        let mut cells: Vec<_> = [line.putouts, line.assists, line.errors].iter().map(u32::to_string).collect();
        cells.push(line.average().to_string());
        cells
    };
    let fielded =
        |p: &&PlayerSeason| !p.played.is_empty() || p.fielding.putouts + p.fielding.assists + p.fielding.errors > 0;
    let rows = players.iter().filter(fielded).map(|p| (p.name.clone(), cells(p))).collect();
    table("Fielding", name, COLUMNS, rows)
}

/// Pitches by day, the latest first.
fn by_day(name: &str, players: &[PlayerSeason]) -> Option<AnyView> {
    const COLUMNS: Columns = &[("Pitches", "Pitches thrown that day")];
    let mut days: Vec<(&str, &PlayerSeason, DayOfPitches)> = Vec::new();
    for player in players {
        days.extend(player.workload.iter().map(|(day, thrown)| (day.as_str(), player, *thrown)));
    }
    days.sort_by(|a, b| b.0.cmp(a.0).then_with(|| a.1.name.cmp(&b.1.name)));
    let missed = days.iter().any(|(.., thrown)| thrown.incomplete);
    let row = |(day, player, thrown): (&str, &PlayerSeason, DayOfPitches)| {
        let day = if day.is_empty() { "No date" } else { day };
        let more = if thrown.incomplete { "+" } else { "" };
        (format!("{day} {}", player.name), vec![format!("{}{more}", thrown.pitches)])
    };
    let table = table("Pitches by day", name, COLUMNS, days.into_iter().map(row).collect())?;
    let view = view! {
        {table}
        <p class="small">{CAUTION}</p>
        {missed.then(|| view! { <p class="small">{INCOMPLETE}</p> })}
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
