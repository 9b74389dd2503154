//! Every pitcher of the day, of the side looked at.

use benchbook_stats::lines::PitchingLine;
use leptos::prelude::*;

use super::{Bench, words};

/// The table.
#[component]
pub fn Today() -> impl IntoView {
    let bench = Bench::get();
    view! {
        <section class="today">
            <h2>{words::TODAY}</h2>
            <div class="scroll" tabindex="0" role="region" aria-label=words::TODAY>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{words::PITCHER}</th>
                            <th scope="col"><abbr title="Pitches">"P"</abbr></th>
                            <th scope="col"><abbr title="Strikes, balls in play among them">"S"</abbr></th>
                            <th scope="col"><abbr title="Balls, hit batters among them">"B"</abbr></th>
                            <th scope="col"><abbr title="Batters faced">"BF"</abbr></th>
                            <th scope="col"><abbr title="Innings pitched">"IP"</abbr></th>
                        </tr>
                    </thead>
                    <tbody>{move || bench.lines.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </div>
            <p class="soft small">{words::THIS_GAME_ONLY}</p>
        </section>
    }
}

fn row(line: PitchingLine) -> impl IntoView {
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
    }
}
