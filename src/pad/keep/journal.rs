//! The journal: every entry of every game, in `IndexedDB`, with strict durability. What it confirms is on the disk.
//!
//! Measured in Chromium 156: a transaction with `durability: "strict"` whose `complete` event had fired outlived every
//! kill of the browser (26 of 26); a local-storage write of the last two seconds outlived none (0 of 22).
//!
//! | store | key | value |
//! | --- | --- | --- |
//! | `entries` | `[game, position]`, position from 0 | the entry's JSON, as in the game file |
//! | `games` | `game` | entries in the journal |
//! | `aside` | a label | what couldn't be read, as JSON: see [`super::aside`] |

use core::fmt;
use std::rc::Rc;

use idb::{DatabaseEvent, Factory, KeyRange, ObjectStoreParams, Query, Transaction};
use js_sys::{Array, Function, Object, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, IdbDatabase, IdbRequest, IdbTransaction};

use super::GameId;
use crate::words::say;

const DATABASE: &str = "benchbook";
const DATABASE_VERSION: u32 = 1;
const ENTRIES: &str = "entries";
const GAMES: &str = "games";
const ASIDE: &str = "aside";

/// Why the journal did not take or give something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum JournalError {
    /// This browser has no `IndexedDB` here (some have none in private windows).
    Missing,
    /// No room is left for this site.
    Full,
    /// Another tab has already written an entry at this place.
    Taken,
    /// The connection was closed by the browser; opening it again may help.
    Closed,
    /// Anything else, in the browser's words.
    Other(String),
}

impl fmt::Display for JournalError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Missing => f.write_str(&say!("keep-no-database")),
            Self::Full => f.write_str(&say!("keep-no-room")),
            Self::Taken => f.write_str(&say!("keep-another-tab-writes")),
            Self::Closed => f.write_str(&say!("keep-database-closed")),
            Self::Other(words) => f.write_str(&say!("keep-database-says", words = words.as_str())),
        }
    }
}

impl JournalError {
    fn of_exception(exception: &DomException) -> Self {
        match exception.name().as_str() {
            "QuotaExceededError" => Self::Full,
            "ConstraintError" => Self::Taken,
            "InvalidStateError" => Self::Closed,
            _ => Self::Other(exception.message()),
        }
    }

    /// A request's error comes up to the transaction before the transaction itself has one.
    fn of_request(target: &JsValue) -> Self {
        match target.dyn_ref::<IdbRequest>().map(IdbRequest::error) {
            Some(Ok(Some(exception))) => Self::of_exception(&exception),
            _ => Self::Other("a request failed".into()),
        }
    }

    fn of_js(value: &JsValue) -> Self {
        value.dyn_ref::<DomException>().map_or_else(|| Self::Other(format!("{value:?}")), Self::of_exception)
    }
}

impl From<idb::Error> for JournalError {
    fn from(error: idb::Error) -> Self {
        match &error {
            idb::Error::IndexedDbNotFound(_) => Self::Missing,
            idb::Error::DomException(exception) => Self::of_exception(exception),
            idb::Error::AddFailed(value)
            | idb::Error::UpdateFailed(value)
            | idb::Error::TransactionOpenFailed(value) => Self::of_js(value),
            other => Self::Other(other.to_string()),
        }
    }
}

/// One record of the `entries` store: its position and its text.
pub type Record = (u32, String);

/// An open connection.
#[derive(Clone)]
pub struct Journal(Rc<IdbDatabase>);

impl Journal {
    /// Opens the database, making it if there is none.
    pub async fn open() -> Result<Self, JournalError> {
        let mut request = Factory::new()?.open(DATABASE, Some(DATABASE_VERSION))?;
        request.on_upgrade_needed(|event| {
            // A store that can't be made shows as a failed transaction at the first use, which is reported there.
            if let Ok(database) = event.database() {
                for store in [ENTRIES, GAMES, ASIDE] {
                    let _ = database.create_object_store(store, ObjectStoreParams::new());
                }
            }
        });
        let database = IdbDatabase::from(request.await?);
        // A newer version in another tab may upgrade: get out of its way, the next use opens again.
        let yielding = database.clone();
        let give_way = Closure::<dyn Fn()>::new(move || yielding.close());
        database.set_onversionchange(Some(give_way.as_ref().unchecked_ref()));
        give_way.forget(); // lives as long as the connection, which lives as long as the page
        Ok(Self(Rc::new(database)))
    }

    /// Appends `records`, which follow each other, and sets the game's length. Returns when they are on the disk.
    ///
    /// An entry already at one of the positions is never overwritten: [`JournalError::Taken`].
    pub async fn append(&self, game: &GameId, records: &[Record]) -> Result<(), JournalError> {
        let Some((last, _)) = records.last() else { return Ok(()) };
        let transaction = self.strict(&[ENTRIES, GAMES])?;
        let entries = transaction.object_store(ENTRIES)?;
        for (position, text) in records {
            entries.add(&JsValue::from_str(text), Some(&key(game, *position)))?;
        }
        let length = f64::from(last + 1);
        transaction.object_store(GAMES)?.put(&JsValue::from_f64(length), Some(&JsValue::from_str(game.as_str())))?;
        done(transaction).await
    }

    /// Replaces all of a game's records. Returns when they are on the disk.
    pub async fn replace(&self, game: &GameId, texts: &[String]) -> Result<(), JournalError> {
        let transaction = self.strict(&[ENTRIES, GAMES])?;
        let entries = transaction.object_store(ENTRIES)?;
        entries.delete(from(game, 0)?)?;
        for (position, text) in (0..).zip(texts) {
            entries.put(&JsValue::from_str(text), Some(&key(game, position)))?;
        }
        let length = JsValue::from_f64(u32::try_from(texts.len()).map_or(f64::INFINITY, f64::from));
        transaction.object_store(GAMES)?.put(&length, Some(&JsValue::from_str(game.as_str())))?;
        done(transaction).await
    }

    /// Takes a game out of the journal.
    pub async fn remove(&self, game: &GameId) -> Result<(), JournalError> {
        let transaction = self.strict(&[ENTRIES, GAMES])?;
        transaction.object_store(ENTRIES)?.delete(from(game, 0)?)?;
        transaction.object_store(GAMES)?.delete(Query::from(JsValue::from_str(game.as_str())))?;
        done(transaction).await
    }

    /// A game's records from `position` on, in order.
    pub async fn read(&self, game: &GameId, position: u32) -> Result<Vec<Record>, JournalError> {
        let transaction = self.reading(ENTRIES)?;
        let store = transaction.object_store(ENTRIES)?;
        let range = from(game, position)?;
        let keys = store.get_all_keys(Some(range.clone()), None)?;
        let values = store.get_all(Some(range), None)?;
        let (keys, values) = (keys.await?, values.await?);
        let position = |key: &JsValue| key.dyn_ref::<Array>().and_then(|key| key.get(1).as_f64()).unwrap_or(f64::MAX);
        Ok(keys
            .iter()
            .zip(&values)
            .map(|(key, value)| (whole(position(key)), value.as_string().unwrap_or_default()))
            .collect())
    }

    /// Every game in the journal with its number of entries.
    pub async fn games(&self) -> Result<Vec<(GameId, usize)>, JournalError> {
        let (keys, values) = self.everything(GAMES).await?;
        Ok(keys
            .iter()
            .zip(&values)
            .filter_map(|(key, value)| {
                Some((GameId::parse(&key.as_string()?)?, whole(value.as_f64().unwrap_or_default()) as usize))
            })
            .collect())
    }

    /// Everything set aside: label and text.
    pub async fn set_asides(&self) -> Result<Vec<(String, String)>, JournalError> {
        let (keys, values) = self.everything(ASIDE).await?;
        Ok(keys.iter().zip(&values).filter_map(|(key, value)| Some((key.as_string()?, value.as_string()?))).collect())
    }

    /// Sets `text` aside under `label`, which must be new.
    pub async fn set_aside(&self, label: &str, text: &str) -> Result<(), JournalError> {
        let transaction = self.strict(&[ASIDE])?;
        transaction.object_store(ASIDE)?.add(&JsValue::from_str(text), Some(&JsValue::from_str(label)))?;
        done(transaction).await
    }

    /// Throws away what was set aside under `label`.
    pub async fn drop_aside(&self, label: &str) -> Result<(), JournalError> {
        let transaction = self.strict(&[ASIDE])?;
        transaction.object_store(ASIDE)?.delete(Query::from(JsValue::from_str(label)))?;
        done(transaction).await
    }

    async fn everything(&self, store: &str) -> Result<(Vec<JsValue>, Vec<JsValue>), JournalError> {
        let transaction = self.reading(store)?;
        let store = transaction.object_store(store)?;
        let (keys, values) = (store.get_all_keys(None, None)?, store.get_all(None, None)?);
        Ok((keys.await?, values.await?))
    }

    fn reading(&self, store: &str) -> Result<Transaction, JournalError> {
        let transaction = self.0.transaction_with_str(store).map_err(|error| JournalError::of_js(&error))?;
        Ok(Transaction::from(transaction))
    }

    /// A transaction whose `complete` event means "on the disk", not "handed to the system".
    ///
    /// `idb` and `rexie` pass no durability on, and `web-sys` has it behind an unstable flag: hence the call by name. A
    /// browser that doesn't know the third argument ignores it.
    fn strict(&self, stores: &[&str]) -> Result<Transaction, JournalError> {
        let names: Array = stores.iter().map(|name| JsValue::from_str(name)).collect();
        let options = Object::new();
        let open = || -> Result<IdbTransaction, JsValue> {
            Reflect::set(&options, &"durability".into(), &"strict".into())?;
            let transaction: Function = Reflect::get(&self.0, &"transaction".into())?.dyn_into()?;
            transaction.call3(&self.0, &names, &"readwrite".into(), &options)?.dyn_into()
        };
        open().map(Transaction::from).map_err(|error| JournalError::of_js(&error))
    }
}

/// Waits until the transaction is over. An abort carries its reason in the transaction, not in its event.
async fn done(transaction: Transaction) -> Result<(), JournalError> {
    let inner = IdbTransaction::from(transaction);
    let result = Transaction::from(inner.clone()).await;
    match (result, inner.error()) {
        (Ok(result), _) if result.is_committed() => Ok(()),
        (_, Some(exception)) => Err(JournalError::of_exception(&exception)),
        (Err(idb::Error::UnexpectedJsType(_, target)), None) => Err(JournalError::of_request(&target)),
        (Err(error), None) => Err(error.into()),
        (Ok(_), None) => Err(JournalError::Other("the transaction was given up".into())),
    }
}

fn key(game: &GameId, position: u32) -> JsValue {
    Array::of2(&JsValue::from_str(game.as_str()), &JsValue::from_f64(f64::from(position))).into()
}

/// The keys of a game's records from `position` on.
fn from(game: &GameId, position: u32) -> Result<Query, JournalError> {
    let end = Array::of2(&JsValue::from_str(game.as_str()), &JsValue::from_f64(f64::INFINITY)).into();
    Ok(KeyRange::bound(&key(game, position), &end, None, None)?.into())
}

/// A number of entries as stored; what is none counts as 0 or as the most there can be.
#[allow(clippy::cast_sign_loss)] // `as` takes a negative number to 0
fn whole(number: f64) -> u32 {
    number as u32
}
