//! How safe what is stored here is: whether the browser may clear it, and how much room is left.

use js_sys::Reflect;
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{StorageEstimate, StorageManager};

use super::{pen, shelf};

/// The health of storage, as far as the browser tells.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[allow(clippy::struct_excessive_bools)] // each is an independent answer of the browser
pub struct Health {
    /// The browser has promised not to clear it by itself. `None`: it doesn't say.
    pub persisted: Option<bool>,
    /// Bytes stored.
    pub used: Option<f64>,
    /// Bytes allowed.
    pub quota: Option<f64>,
    /// Local storage works.
    pub shelf: bool,
    /// The journal can be opened.
    pub journal: bool,
    /// Two tabs on one game can be told apart.
    pub tells_tabs_apart: bool,
    /// Runs installed, from the home screen or as a window of its own.
    pub installed: bool,
    /// Of the family of browsers that clears what a site stored after seven days without a visit, unless installed.
    pub clears_after_a_week: bool,
}

/// Looks.
pub async fn look(journal: bool) -> Health {
    let estimate = estimate().await;
    Health {
        persisted: persisted().await,
        used: estimate.as_ref().and_then(StorageEstimate::get_usage),
        quota: estimate.as_ref().and_then(StorageEstimate::get_quota),
        shelf: shelf::is_there(),
        journal,
        tells_tabs_apart: pen::can_tell_tabs_apart(),
        installed: is_installed(),
        clears_after_a_week: clears_after_a_week(),
    }
}

/// Asks the browser not to clear what is stored here by itself. It may ask the scorer, or answer by its own rules.
pub async fn ask_to_persist() {
    if persisted().await == Some(false)
        && let Some(manager) = manager("persist")
        && let Ok(asked) = manager.persist()
    {
        // The Clubhouse shows what came of it.
        let _ = JsFuture::from(asked).await;
    }
}

async fn persisted() -> Option<bool> {
    let asked = manager("persisted")?.persisted().ok()?;
    JsFuture::from(asked).await.ok()?.as_bool()
}

async fn estimate() -> Option<StorageEstimate> {
    let asked = manager("estimate")?.estimate().ok()?;
    Some(JsFuture::from(asked).await.ok()?.unchecked_into())
}

/// The storage manager, if it can do `what`: many tablets' browser has one that can't.
fn manager(what: &str) -> Option<StorageManager> {
    let manager = Reflect::get(&window().navigator(), &"storage".into()).ok().filter(JsValue::is_object)?;
    Reflect::get(&manager, &what.into()).ok().filter(JsValue::is_function)?;
    Some(manager.unchecked_into())
}

fn is_installed() -> bool {
    let standalone = Reflect::get(&window().navigator(), &"standalone".into()).is_ok_and(|value| value.is_truthy());
    let shown_alone = |mode: &str| {
        let query = format!("(display-mode: {mode})");
        window().match_media(&query).ok().flatten().is_some_and(|list| list.matches())
    };
    standalone || ["standalone", "fullscreen", "minimal-ui"].into_iter().any(shown_alone)
}

/// The browsers on that engine are known by what they have: a vendor string of their own.
fn clears_after_a_week() -> bool {
    Reflect::get(&window().navigator(), &"vendor".into())
        .ok()
        .and_then(|vendor| vendor.as_string())
        .is_some_and(|vendor| vendor.starts_with("Apple"))
}
