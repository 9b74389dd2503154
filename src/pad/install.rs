//! Installing to the home screen, and the new version that waits: what the browser and the service worker offer.

use js_sys::{Function, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};

/// What is on offer, provided by context to the Clubhouse.
#[derive(Clone, Copy)]
pub struct Offers {
    /// The browser can install the app when asked.
    pub install: RwSignal<bool>,
    /// A new version waits.
    pub update: RwSignal<bool>,
}

impl Offers {
    /// Listens from now on, for as long as the page lives.
    pub fn provide() {
        let offers = Self {
            install: RwSignal::new(is_set("benchbookInstall")),
            update: RwSignal::new(is_set("benchbookUpdate")),
        };
        // The handles are dropped on purpose: dropping doesn't stop the listening.
        let _ =
            window_event_listener_untyped("benchbook-install", move |_| offers.install.set(is_set("benchbookInstall")));
        let _ = window_event_listener_untyped("benchbook-update", move |_| offers.update.set(true));
        provide_context(offers);
    }

    /// The offers, for a view.
    pub fn get() -> Self {
        expect_context()
    }

    /// Lets the browser ask the scorer whether to install. It may be asked once.
    pub fn install(self) {
        let ask = || -> Result<JsValue, JsValue> {
            let offer = Reflect::get(&window(), &"benchbookInstall".into())?;
            let prompt: Function = Reflect::get(&offer, &"prompt".into())?.dyn_into()?;
            prompt.call0(&offer)
        };
        // Refused or not, the offer is spent.
        let _ = ask();
        let _ = Reflect::set(&window(), &"benchbookInstall".into(), &JsValue::UNDEFINED);
        self.install.set(false);
    }

    /// Starts the new version; the page loads again.
    pub fn update(self) {
        let start = || -> Result<JsValue, JsValue> {
            let take_over: Function = Reflect::get(&window(), &"benchbookTakeOver".into())?.dyn_into()?;
            take_over.call0(&JsValue::NULL)
        };
        if start().is_err() {
            self.update.set(false);
        }
    }
}

fn is_set(name: &str) -> bool {
    Reflect::get(&window(), &name.into()).is_ok_and(|value| value.is_truthy())
}
