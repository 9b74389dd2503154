//! The pitch strip: each pitcher's pitches, strikes, balls and first-pitch strikes by inning.

use benchbook_stats::field::Side;
use benchbook_stats::lines::{InningPitches, PitchStrip};
use leptos::prelude::*;

use super::super::Reading;
use crate::live::{Shown, live};
use crate::words::say;

/// One side's pitchers.
#[component]
pub fn Strips(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let reading = Reading::get();
    let strips = Memo::new(move |_| reading.scoring.game.with(|game| game.pitch_strips(side)));
    let missed = Memo::new(move |_| strips.with(|all| all.iter().any(|strip| strip.total().incomplete)));
    view! {
        <Shown when=move || strips.with(|s| !s.is_empty())>
            <section class="strips">
                <h2>{live(move || say!("book-strips-of", team = reading.team(side)))}</h2>
                {live(move || strips.get().into_iter().map(|strip| view! { <Strip strip=strip/> }).collect_view())}
                <p class="small soft">{say!("book-first-pitch-note")}</p>
                <Shown when=move || missed.get()>
                    <p class="small soft">"+ "{say!("book-pitches-missed")}</p>
                </Shown>
            </section>
        </Shown>
    }
}

#[component]
fn Strip(
    /// Whose.
    strip: PitchStrip,
) -> impl IntoView {
    let total = strip.total();
    let label = say!("book-strip-of", name = strip.name.as_str());
    let row = |what: String, cell: fn(&InningPitches) -> String| {
        view! {
            <tr>
                <th scope="row">{what}</th>
                {strip.innings.iter().map(|i| view! { <td>{cell(i)}</td> }).collect_view()}
                <td class="sum">{cell(&total)}</td>
            </tr>
        }
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=label>
            <table class="strip">
                <thead>
                    <tr>
                        <th scope="col">{strip.name.clone()}</th>
                        {strip.innings.iter().map(|i| view! { <th scope="col">{i.inning}</th> }).collect_view()}
                        <th scope="col" class="sum">{say!("book-strip-total")}</th>
                    </tr>
                </thead>
                <tbody>
                    {row(say!("book-pitch-count-long"), |i| at_least(i.pitches, i.incomplete))}
                    {row(say!("book-strip-strikes"), |i| at_least(i.strikes, i.incomplete))}
                    {row(say!("book-strip-balls"), |i| at_least(i.balls, i.incomplete))}
                    {row(say!("book-strip-first"), |i| format!("{}/{}", i.first_pitch_strikes, i.first_pitches))}
                </tbody>
            </table>
        </div>
    }
}

/// "14+": some were missed.
fn at_least(count: u32, incomplete: bool) -> String {
    if incomplete { format!("{count}+") } else { count.to_string() }
}
