//! The call from tab to tab: "this game has been written". What was written is read from storage.

use js_sys::Reflect;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

use super::GameId;

/// An open channel. Closed when dropped.
pub struct Call {
    channel: BroadcastChannel,
    /// Called by the browser as long as the channel is open.
    heard: Option<Closure<dyn Fn(MessageEvent)>>,
}

impl Drop for Call {
    fn drop(&mut self) {
        self.channel.set_onmessage(None);
        self.channel.close();
        self.heard = None;
    }
}

impl Call {
    /// A channel to call on. `None` where the browser has none.
    pub fn open() -> Option<Self> {
        let there = Reflect::has(&js_sys::global(), &"BroadcastChannel".into()).unwrap_or_default();
        let channel = there.then(|| BroadcastChannel::new("benchbook").ok()).flatten()?;
        Some(Self { channel, heard: None })
    }

    /// A channel that hands on the name of each game another tab has written.
    pub fn listen(heard: impl Fn(GameId) + 'static) -> Option<Self> {
        let mut call = Self::open()?;
        let closure = Closure::<dyn Fn(MessageEvent)>::new(move |message: MessageEvent| {
            if let Some(id) = message.data().as_string().and_then(|text| GameId::parse(&text)) {
                heard(id);
            }
        });
        call.channel.set_onmessage(Some(closure.as_ref().unchecked_ref()));
        call.heard = Some(closure);
        Some(call)
    }

    /// Tells the other tabs that `game` was written.
    pub fn written(&self, game: &GameId) {
        // A tab that doesn't hear it is up to date again when it is opened.
        let _ = self.channel.post_message(&JsValue::from_str(game.as_str()));
    }
}
