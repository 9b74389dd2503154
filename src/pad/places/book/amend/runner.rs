//! One runner, or the batter, in a play being amended: where they ended, and how.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{Cause, MisplayKind, Start};
use benchbook_stats::propose::edit;
use benchbook_stats::propose::ends::{self, ATTEMPTS, End, MISPLAYS};
use leptos::prelude::*;

use super::super::words;
use super::draft::Draft;
use super::pick::{Chain, Pick, name};
use crate::live::Shown;
use crate::places::plate::words as plate;
use crate::words::say;

/// The value of "on an error".
const ERROR: &str = "error";

/// One of them.
#[component]
pub fn Runner(
    /// The play.
    draft: Draft,
    /// Who.
    who: Start,
) -> impl IntoView {
    let s = draft.situation();
    let player = if who == Start::Batter { s.batter } else { s.at(who).map(|runner| runner.player) };
    let name = player.map(|id| draft.before(|game| game.label(id))).unwrap_or_default();
    let title = words::from_where(&name, who);
    let batted = draft.batted();
    let value = Signal::derive(move || End::of(draft.move_of(who).as_ref()).value());
    let options = End::all(who, batted).into_iter().map(|end| (end.value(), words::end(end))).collect::<Vec<_>>();
    let pick = Callback::new(move |value: String| {
        if let Some(end) = End::parse(&value) {
            let chain = draft.chain();
            draft.change(|action| ends::set(action, &s, who, end, &chain, batted));
        }
    });
    let bases = Memo::new(move |_| {
        let gained = draft.move_of(who).map(|m| edit::gained(&m)).unwrap_or_default();
        gained.into_iter().map(|(base, _)| base).collect::<Vec<Base>>()
    });
    let is_out = Memo::new(move |_| draft.move_of(who).is_some_and(|m| m.out.is_some()));
    view! {
        <fieldset class="runner">
            <legend>{title}</legend>
            <Pick label=say!("book-amend-end") options=options value=value pick=pick/>
            <For each=move || bases.get() key=|base| *base let:base>
                <Because draft=draft who=who base=base/>
            </For>
            <Shown when=move || is_out.get()>
                <PutOut draft=draft who=who/>
            </Shown>
        </fieldset>
    }
}

/// By what one base was gained.
#[component]
fn Because(
    /// The play.
    draft: Draft,
    /// Whose.
    who: Start,
    /// Which base.
    base: Base,
) -> impl IntoView {
    let cause = Memo::new(move |_| {
        let gained = draft.move_of(who).map(|m| edit::gained(&m)).unwrap_or_default();
        gained.into_iter().find(|(to, _)| *to == base).map(|(_, cause)| cause)
    });
    let causes = ends::causes(draft.batted(), cause.get_untracked());
    let mut options: Vec<(String, String)> =
        causes.iter().enumerate().map(|(i, cause)| (i.to_string(), plate::cause(*cause))).collect();
    options.push((ERROR.to_owned(), say!("book-amend-on-error")));
    let of_value = causes.clone();
    let value = Signal::derive(move || match cause.get() {
        Some(Cause::Error(_)) => ERROR.to_owned(),
        Some(cause) => of_value.iter().position(|c| *c == cause).map(|i| i.to_string()).unwrap_or_default(),
        None => String::new(),
    });
    let pick = Callback::new(move |value: String| {
        if value == ERROR {
            let by = draft.chain().first().copied().unwrap_or(Position::Pitcher);
            err(draft, who, base, by, MisplayKind::Fielding);
        } else if let Some(cause) = value.parse().ok().and_then(|i: usize| causes.get(i).copied()) {
            draft.change(|action| edit::because_of(action, who, base, cause));
        }
    });
    let on_error = move || matches!(cause.get(), Some(Cause::Error(_)));
    view! {
        <Pick label=words::reaches(base) options=options value=value pick=pick/>
        <Shown when=on_error>
            <Error draft=draft who=who base=base cause=cause/>
        </Shown>
    }
}

fn err(draft: Draft, who: Start, base: Base, by: Position, kind: MisplayKind) {
    let chain = draft.chain();
    draft.change(|action| edit::on_error_at(action, who, base, by, kind, &chain));
}

/// Whose error, and of which kind.
#[component]
fn Error(
    /// The play.
    draft: Draft,
    /// Whom it helped.
    who: Start,
    /// To which base.
    base: Base,
    /// The cause as it stands.
    cause: Memo<Option<Cause>>,
) -> impl IntoView {
    let now = Memo::new(move |_| {
        let Some(Cause::Error(i)) = cause.get() else { return None };
        draft.event.with(|event| event.action()?.misplays.get(usize::from(i)).map(|m| (m.by, m.kind)))
    });
    let fielders = draft.fielders();
    let by_options = fielders.iter().map(|p| (p.number().to_string(), name(*p))).collect::<Vec<_>>();
    let by_value = Signal::derive(move || now.get().map(|(by, _)| by.number().to_string()).unwrap_or_default());
    let pick_by = Callback::new(move |value: String| {
        let by = value.parse().ok().and_then(|n: u8| Position::try_from(n).ok());
        if let Some((by, (_, kind))) = by.zip(now.get_untracked()) {
            err(draft, who, base, by, kind);
        }
    });
    let kind_options =
        MISPLAYS.iter().enumerate().map(|(i, kind)| (i.to_string(), plate::misplay(*kind))).collect::<Vec<_>>();
    let kind_value = Signal::derive(move || {
        let kind = now.get().map(|(_, kind)| kind);
        MISPLAYS.iter().position(|k| Some(*k) == kind).map(|i| i.to_string()).unwrap_or_default()
    });
    let pick_kind = Callback::new(move |value: String| {
        let kind = value.parse().ok().and_then(|i: usize| MISPLAYS.get(i).copied());
        if let Some((kind, (by, _))) = kind.zip(now.get_untracked()) {
            err(draft, who, base, by, kind);
        }
    });
    view! {
        <Pick label=say!("book-amend-error-by") options=by_options value=by_value pick=pick_by/>
        <Pick label=say!("book-amend-error-kind") options=kind_options value=kind_value pick=pick_kind/>
    }
}

/// How they were put out, and by whom.
#[component]
fn PutOut(
    /// The play.
    draft: Draft,
    /// Who.
    who: Start,
) -> impl IntoView {
    let out = Memo::new(move |_| draft.move_of(who).and_then(|m| m.out));
    let ways = ends::ways(draft.batted(), out.get_untracked().map(|out| out.how));
    let how_options = ways.iter().enumerate().map(|(i, how)| (i.to_string(), plate::how(*how))).collect::<Vec<_>>();
    let of_value = ways.clone();
    let how_value = Signal::derive(move || {
        let how = out.get().map(|out| out.how);
        of_value.iter().position(|h| Some(*h) == how).map(|i| i.to_string()).unwrap_or_default()
    });
    let pick_how = Callback::new(move |value: String| {
        if let Some(how) = value.parse().ok().and_then(|i: usize| ways.get(i).copied()) {
            draft.change(|action| edit::how(action, who, how));
        }
    });
    let chain = Signal::derive(move || out.get().map(|out| out.by).unwrap_or_default());
    let set = Callback::new(move |by: Vec<Position>| draft.change(|action| edit::put_out_by(action, who, by)));
    let running = (!draft.batted() && who != Start::Batter).then(|| {
        let options = ATTEMPTS.iter().enumerate().map(|(i, a)| (i.to_string(), words::attempt(*a))).collect::<Vec<_>>();
        let value = Signal::derive(move || {
            let now = out.get().and_then(|out| out.attempt);
            ATTEMPTS.iter().position(|a| Some(*a) == now).map(|i| i.to_string()).unwrap_or_default()
        });
        let pick = Callback::new(move |value: String| {
            if let Some(attempt) = value.parse().ok().and_then(|i: usize| ATTEMPTS.get(i).copied()) {
                draft.change(|action| edit::attempting(action, who, attempt));
            }
        });
        view! { <Pick label=say!("book-amend-attempt") options=options value=value pick=pick/> }
    });
    view! {
        <Pick label=say!("book-amend-how") options=how_options value=how_value pick=pick_how/>
        {running}
        <Chain label=say!("book-amend-out-by") fielders=draft.fielders() chain=chain set=set/>
    }
}
