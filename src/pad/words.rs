//! The language of the pad: which one it is, and a word of it.
//!
//! The catalogue is `words/LANGUAGE/*.ftl`, a file a place; what stats says (reasons, the account, refusals) comes from the
//! catalogue of stats, in the same language. A change of language mounts the places anew, so a view takes its words once,
//! as plain text.

use core::cell::Cell;

use benchbook_stats::words::{Language, With};
use fluent_templates::static_loader;
use leptos::prelude::*;

use crate::keep::Preferences;

static_loader! {
    static CATALOGUE = {
        locales: "./words",
        fallback_language: "en",
        customise: |bundle| bundle.set_use_isolating(false),
    };
}

thread_local! {
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
}

/// The language the places are in at the moment.
pub fn language() -> Language {
    SPOKEN.get()
}

/// A message of the pad's catalogue; [`say!`] is shorter.
pub fn look_up(key: &str, with: &With) -> String {
    language().look_up(&CATALOGUE, key, with)
}

/// A message without variables in every language: to know what was written in another one.
pub fn in_every_language(key: &str) -> [String; 3] {
    Language::ALL.map(|language| language.look_up(&CATALOGUE, key, &[]))
}

/// `say!("key", name = value)`: a message of the pad's catalogue, as a `String`.
macro_rules! say {
    ($key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::words::look_up(
            $key,
            &[$((stringify!($name), ::benchbook_stats::words::Value::from($value))),*],
        )
    };
}
pub(crate) use say;

/// Everything inside is in the scorer's language: the one chosen, else the first of the device's that we have.
#[component]
pub fn InLanguage(
    /// The places.
    children: ChildrenFn,
) -> impl IntoView {
    let preferences = Preferences::get();
    let language = Memo::new(move |_| preferences.language.get().unwrap_or_else(of_the_device));
    move || {
        SPOKEN.set(language.get());
        if let Some(page) = document().document_element() {
            // Only a screen reader's pronunciation depends on it.
            let _ = page.set_attribute("lang", language.get().tag());
        }
        children()
    }
}

fn of_the_device() -> Language {
    let wanted = window().navigator().languages();
    wanted.iter().find_map(|tag| Language::of(&tag.as_string()?)).unwrap_or_default()
}
