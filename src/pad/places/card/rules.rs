//! The rules of play: a preset to start from, and every rule to be changed.

use benchbook_stats::code::{Code, Mercy, Preset, Reentry, presets};
use benchbook_stats::log::Event;
use leptos::prelude::*;

use super::fields::{FIELDS, Field, Value, differences};
use super::player::written;
use super::{Desk, words};
use crate::live::{Shown, live};
use crate::places::presets::{name, name_of, source_of};
use crate::words::say;

/// The rules, folded away.
#[component]
pub fn Rules() -> impl IntoView {
    let desk = Desk::get();
    let code = Memo::new(move |_| desk.scoring.game.with(|game| game.code().clone()));
    view! {
        <details class="rules">
            <summary>
                <span class="what">{say!("card-rules")}</span>
                <span class="says-now">{live(move || code.with(name_of))}</span>
            </summary>
            <p class="notice small">{say!("card-league-first")}</p>
            <p class="soft small">{live(move || say!("card-rules-come-from", source = code.with(source_of)))}</p>
            <Shown when=move || !desk.before.get()>
                <p class="soft small">{say!("card-rules-fixed")}</p>
            </Shown>
            <Presets code=code/>
            <Every code=code/>
        </details>
    }
}

/// Records rules that say anything new.
fn put(desk: Desk, code: Memo<Code>, change: impl FnOnce(&mut Code)) {
    let mut next = code.get_untracked();
    change(&mut next);
    if next != code.get_untracked() {
        desk.tap(Event::Rules(Box::new(next)));
    }
}

/// The preset with this name, or the one that differs least.
fn nearest(code: &Code) -> (usize, usize) {
    let of = presets().map(Preset::code);
    let named = of.iter().position(|p| p.name == code.name);
    let at = named.or_else(|| (0..of.len()).min_by_key(|i| differences(code, &of[*i]))).unwrap_or(0);
    (at, differences(code, &of[at]))
}

#[component]
fn Presets(
    /// The rules now.
    code: Memo<Code>,
) -> impl IntoView {
    let desk = Desk::get();
    let now = Memo::new(move |_| code.with(nearest));
    let choose = move |event: web_sys::Event| {
        let chosen = event_target_value(&event).parse::<usize>().ok().and_then(|i| presets().get(i).copied());
        if let Some(preset) = chosen {
            put(desk, code, |code| *code = preset.code());
        }
    };
    view! {
        <label>
            <span class="says">{say!("card-start-from")}</span>
            <select disabled=move || !desk.before.get() on:change=choose>
                {presets()
                    .into_iter()
                    .enumerate()
                    .map(|(i, preset)| {
                        view! { <option value=i prop:selected=move || now.get().0 == i>{name(preset)}</option> }
                    })
                    .collect_view()}
            </select>
        </label>
        <Shown when=move || { now.get().1 > 0 }>
            <p class="soft small">{live(move || say!("card-differs", n = now.get().1))}</p>
        </Shown>
    }
}

#[component]
fn Every(
    /// The rules now.
    code: Memo<Code>,
) -> impl IntoView {
    let desk = Desk::get();
    let text = move |says: String, get: fn(&Code) -> String, set: fn(&mut Code, String)| {
        view! {
            <label>
                <span class="says">{says}</span>
                <input
                    maxlength="120"
                    prop:value=move || code.with(get)
                    on:change=move |e| put(desk, code, |c| set(c, written(&event_target_value(&e))))
                />
            </label>
        }
    };
    view! {
        <details class="every">
            <summary>{say!("card-every-rule")}</summary>
            <fieldset disabled=move || !desk.before.get()>
                <legend class="spoken">{say!("card-every-rule")}</legend>
                {text(say!("card-rules-name"), name_of, |c, t| c.name = t)}
                {text(say!("card-rules-source"), source_of, |c, t| c.source = t)}
                {FIELDS.iter().map(|field| view! { <Rule field=field code=code/> }).collect_view()}
                <ReentryRule code=code/>
                <MercyRules code=code/>
            </fieldset>
        </details>
    }
}

#[component]
fn Rule(
    /// Which.
    field: &'static Field,
    /// The rules now.
    code: Memo<Code>,
) -> impl IntoView {
    let desk = Desk::get();
    let value = Memo::new(move |_| code.with(field.get));
    if matches!(value.get_untracked(), Value::Yes(_)) {
        let set = move |event: web_sys::Event| {
            put(desk, code, |code| (field.set)(code, Value::Yes(event_target_checked(&event))));
        };
        return view! {
            <label class="yes">
                <input type="checkbox" prop:checked=move || value.get() == Value::Yes(true) on:change=set/>
                {(field.says)()}
            </label>
        }
        .into_any();
    }
    let set = move |event: web_sys::Event| {
        match value.get_untracked().read(&event_target_value(&event)) {
            Some(new) => put(desk, code, |code| (field.set)(code, new)),
            // Back to what it was: the field shows the rule, not the slip.
            None => event_target::<web_sys::HtmlInputElement>(&event).set_value(&value.get_untracked().written()),
        }
    };
    view! {
        <label class="figure">
            <span>{(field.says)()}</span>
            <input inputmode="decimal" maxlength="6" prop:value=move || value.get().written() on:change=set/>
        </label>
    }
    .into_any()
}

#[component]
fn ReentryRule(
    /// The rules now.
    code: Memo<Code>,
) -> impl IntoView {
    const ALL: [Reentry; 3] = [Reentry::Never, Reentry::StartersOnce, Reentry::Free];
    let desk = Desk::get();
    let choose = move |event: web_sys::Event| {
        let chosen = event_target_value(&event).parse::<usize>().ok().and_then(|i| ALL.get(i).copied());
        if let Some(reentry) = chosen {
            put(desk, code, |code| code.reentry = reentry);
        }
    };
    view! {
        <label>
            <span class="says">{say!("card-reentry")}</span>
            <select on:change=choose>
                {ALL
                    .into_iter()
                    .enumerate()
                    .map(|(i, r)| {
                        view! {
                            <option value=i prop:selected=move || code.with(|c| c.reentry == r)>{words::reentry(r)}</option>
                        }
                    })
                    .collect_view()}
            </select>
        </label>
    }
}

#[component]
fn MercyRules(
    /// The rules now.
    code: Memo<Code>,
) -> impl IntoView {
    let desk = Desk::get();
    let count = Memo::new(move |_| code.with(|c| c.mercy.len()));
    let figure = move |says: String, at: usize, get: fn(&Mercy) -> u8, set: fn(&mut Mercy, u8)| {
        let shown = move || code.with(|c| c.mercy.get(at).map(|m| get(m).to_string()).unwrap_or_default());
        let write = move |event: web_sys::Event| {
            let number = event_target_value(&event).trim().parse::<u8>().ok().filter(|n| *n > 0);
            put(desk, code, |code| {
                if let (Some(mercy), Some(number)) = (code.mercy.get_mut(at), number) {
                    set(mercy, number);
                }
            });
        };
        view! { <label class="figure"><span>{says}</span><input inputmode="numeric" maxlength="3" prop:value=shown on:change=write/></label> }
    };
    view! {
        <fieldset class="mercy">
            <legend>{say!("card-mercy")}</legend>
            {live(move || {
                (0..count.get())
                    .map(|at| {
                        view! {
                            <div>
                                {figure(say!("card-mercy-lead"), at, |m| m.lead, |m, n| m.lead = n)}
                                {figure(say!("card-mercy-after"), at, |m| m.after_inning, |m, n| m.after_inning = n)}
                                <button type="button" on:click=move |_| put(desk, code, |c| remove(&mut c.mercy, at))>
                                    {say!("card-remove")}
                                </button>
                            </div>
                        }
                    })
                    .collect_view()
            })}
            <button
                type="button"
                on:click=move |_| put(desk, code, |c| c.mercy.push(Mercy { lead: 10, after_inning: 5 }))
            >
                {say!("card-add")}
            </button>
        </fieldset>
    }
}

fn remove(mercy: &mut Vec<Mercy>, at: usize) {
    if at < mercy.len() {
        mercy.remove(at);
    }
}
