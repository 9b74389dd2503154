//! Who writes: of several tabs on one game one holds the pen, the others follow until it is put down.
//!
//! The pen is a Web Lock, so that the browser takes it from a tab that is closed or killed. It is never snatched. Where
//! a browser has no Web Locks every tab believes it holds the pen; then the journal, which takes each position once,
//! tells the later of two writers apart ([`super::journal::JournalError::Taken`]).

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::GameId;

/// The pen of one game, or the place in the queue for it. Put down when dropped.
pub struct Pen {
    put_down: Rc<RefCell<Option<Function>>>,
    waiting: Option<(Object, Function)>,
}

impl Drop for Pen {
    fn drop(&mut self) {
        if let Some(put_down) = self.put_down.borrow_mut().take() {
            let _ = put_down.call0(&JsValue::NULL);
        }
        if let Some((controller, abort)) = self.waiting.take() {
            let _ = abort.call0(&controller);
        }
    }
}

/// True where the browser can tell tabs apart.
pub fn can_tell_tabs_apart() -> bool {
    locks().is_some()
}

/// Takes the pen of `game` if no other tab holds it. A browser without Web Locks always gives it.
pub async fn take(game: &GameId) -> Option<Pen> {
    let Some(locks) = locks() else { return Some(Pen { put_down: Rc::default(), waiting: None }) };
    let put_down = Rc::<RefCell<Option<Function>>>::default();
    let given = Rc::new(Cell::new(false));
    let options = Object::new();
    // A browser that can't even set a property has nothing to ask for either; the request below then fails.
    let _ = Reflect::set(&options, &"ifAvailable".into(), &true.into());
    let (send, answered) = promise();
    let granted = {
        let (put_down, given) = (Rc::clone(&put_down), Rc::clone(&given));
        Closure::once_into_js(move |lock: JsValue| {
            let held = if lock.is_null() {
                JsValue::UNDEFINED
            } else {
                given.set(true);
                let (resolve, promise) = promise();
                *put_down.borrow_mut() = Some(resolve);
                promise.into()
            };
            let _ = send.call0(&JsValue::NULL);
            held
        })
    };
    let Some(request) = request(&locks, game, &options, &granted) else {
        return Some(Pen { put_down, waiting: None });
    };
    // Refused outright (a sandboxed frame): then nobody else can hold it either.
    let race = Promise::race(&js_sys::Array::of2(&answered, &request));
    if JsFuture::from(race).await.is_err() {
        return Some(Pen { put_down, waiting: None });
    }
    given.get().then_some(Pen { put_down, waiting: None })
}

/// Queues for the pen of `game`; `granted` is called once when the tab that holds it puts it down.
pub fn wait(game: &GameId, granted: impl FnOnce() + 'static) -> Option<Pen> {
    let locks = locks()?;
    let put_down = Rc::<RefCell<Option<Function>>>::default();
    let options = Object::new();
    let waiting = give_up_with(&options);
    let on_granted = {
        let put_down = Rc::clone(&put_down);
        Closure::once_into_js(move |_lock: JsValue| {
            let (resolve, promise) = promise();
            *put_down.borrow_mut() = Some(resolve);
            granted();
            promise
        })
    };
    let request = request(&locks, game, &options, &on_granted)?;
    // Giving up the place in the queue rejects the request; that is no error.
    wasm_bindgen_futures::spawn_local(async move {
        let _ = JsFuture::from(request).await;
    });
    Some(Pen { put_down, waiting })
}

fn locks() -> Option<JsValue> {
    let navigator = web_sys::window()?.navigator();
    Reflect::get(&navigator, &"locks".into()).ok().filter(JsValue::is_object)
}

fn request(locks: &JsValue, game: &GameId, options: &Object, callback: &JsValue) -> Option<Promise> {
    let request: Function = Reflect::get(locks, &"request".into()).ok()?.dyn_into().ok()?;
    request.call3(locks, &format!("benchbook {game}").into(), options, callback).ok()?.dyn_into().ok()
}

/// A promise and the function that fulfils it.
fn promise() -> (Function, Promise) {
    let mut fulfil = None;
    let promise = Promise::new(&mut |resolve, _| fulfil = Some(resolve));
    (fulfil.unwrap_or_default(), promise)
}

/// Lets the request be given up: puts an abort signal into `options`.
fn give_up_with(options: &Object) -> Option<(Object, Function)> {
    let make: Function = Reflect::get(&js_sys::global(), &"AbortController".into()).ok()?.dyn_into().ok()?;
    let controller = Reflect::construct(&make, &js_sys::Array::new()).ok()?;
    let signal = Reflect::get(&controller, &"signal".into()).ok()?;
    Reflect::set(options, &"signal".into(), &signal).ok()?;
    let abort: Function = Reflect::get(&controller, &"abort".into()).ok()?.dyn_into().ok()?;
    Some((controller.dyn_into().ok()?, abort))
}
