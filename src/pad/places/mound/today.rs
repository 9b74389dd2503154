//! Every pitcher of the day, of the side looked at.

use benchbook_stats::lines::{PitchNotes, PitchingLine};
use benchbook_stats::log::SpeedUnit;
use leptos::prelude::*;

use super::Bench;
use crate::keep::Preferences;
use crate::places::plate::words;
use crate::words::say;

/// The table.
#[component]
pub fn Today() -> impl IntoView {
    let bench = Bench::get();
    let unit = Preferences::get().speed_unit.get_untracked();
    let notes = Memo::new(move |_| bench.scoring.game.with(|game| game.pitch_notes(bench.side.get())));
    let rows = move || {
        let notes = notes.get();
        let noted = |line: &PitchingLine| notes.iter().find(|n| n.pitcher == line.player).map(|n| said(n, unit));
        let lines = bench.lines.get().into_iter();
        lines
            .map(|line| {
                let noted = noted(&line);
                row(line, noted)
            })
            .collect_view()
    };
    view! {
        <section class="today">
            <h2>{say!("mound-today")}</h2>
            <div class="scroll" tabindex="0" role="region" aria-label=say!("mound-today")>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{say!("mound-pitcher")}</th>
                            <th scope="col"><abbr title=say!("mound-p-long")>{say!("mound-p")}</abbr></th>
                            <th scope="col"><abbr title=say!("mound-s-long")>{say!("mound-s")}</abbr></th>
                            <th scope="col"><abbr title=say!("mound-b-long")>{say!("mound-b")}</abbr></th>
                            <th scope="col"><abbr title=say!("mound-bf-long")>{say!("mound-bf")}</abbr></th>
                            <th scope="col"><abbr title=say!("mound-ip-long")>{say!("mound-ip")}</abbr></th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
            <p class="soft small">{say!("mound-this-game-only")}</p>
        </section>
    }
}

fn row(line: PitchingLine, notes: Option<String>) -> impl IntoView {
    let more = line.pitches_incomplete.then_some("+");
    view! {
        <tr>
            <th scope="row">{line.name}</th>
            <td class="pitches">{line.pitches}{more}</td>
            <td>{line.strikes}</td>
            <td>{line.balls}</td>
            <td>{line.batters_faced}</td>
            <td>{line.outs.to_string()}</td>
        </tr>
        {notes.map(|notes| view! {
            <tr class="noted"><td colspan="6">{say!("mound-notes", notes = notes)}</td></tr>
        })}
    }
}

/// "Fastball 12, Curve 5, fastest 61, on average 57 mph".
fn said(notes: &PitchNotes, unit: SpeedUnit) -> String {
    let kinds = notes.kinds.iter().map(|(kind, times)| say!("mound-kind", kind = words::kind(*kind), times = *times));
    let speeds = notes.top_speed().zip(notes.mean_speed()).map(|(top, mean)| {
        let (top, mean, measured) = (unit.shown(top), unit.shown(mean), notes.speeds.len());
        say!("mound-speeds", top = top, mean = mean, unit = words::unit(unit), measured = measured)
    });
    let all = kinds.chain(speeds);
    all.reduce(|before, next| say!("mound-kinds-list", before = before, next = next)).unwrap_or_default()
}
