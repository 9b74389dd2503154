//! The keeper of the open game: takes each entry to the journal and to the shelf, and says when it is kept.

use core::fmt;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;

use benchbook_stats::file::GameFile;
use benchbook_stats::log::{Entry, EntryId};
use leptos::leptos_dom::helpers::WindowListenerHandle;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::journal::{JournalError, Record};
use super::load::{JournalState, Loaded, load_to_follow, load_to_write};
use super::shelf::ShelfError;
use super::working::WorkingText;
use super::{
    Call, GameId, NotLoaded, aside, forget, pen, remember, remember_entry, remembered, reopen_the_journal, shelf,
    the_journal,
};
use crate::clock;
use crate::words::say;

/// How long the keeper waits before it tries a refused write again without a tap.
const TRY_AGAIN: Duration = Duration::from_secs(3);

/// What the keeper says to the views.
#[derive(Clone, Copy)]
pub struct Marks {
    /// The last entry the journal confirmed.
    pub kept: RwSignal<Option<EntryId>>,
    /// This tab writes.
    pub writes: RwSignal<bool>,
    /// What is wrong with storage at the moment.
    pub trouble: RwSignal<Trouble>,
}

/// What is wrong with storage. Play goes on in every case.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Trouble {
    /// The journal doesn't take entries.
    pub journal: Option<JournalError>,
    /// The shelf doesn't take the working state.
    pub shelf: Option<ShelfError>,
    /// A copy of this game that can't be read can't be set aside either: nothing of it is written.
    pub blocked: bool,
    /// Another tab recorded into this game while this one did. What this one had is set aside.
    pub overtaken: bool,
}

impl Trouble {
    /// Something is wrong.
    pub fn is_some(&self) -> bool {
        *self != Self::default()
    }
}

impl fmt::Display for Trouble {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.overtaken {
            return f.write_str(&say!("keep-overtaken"));
        }
        if self.blocked {
            return f.write_str(&say!("keep-blocked"));
        }
        match (&self.journal, &self.shelf) {
            (Some(journal), Some(_)) => f.write_str(&say!("keep-page-only", why = journal.to_string())),
            (Some(journal), None) => f.write_str(&say!("keep-may-be-lost", why = journal.to_string())),
            (None, Some(ShelfError::Full)) => f.write_str(&say!("keep-shelf-full")),
            (None, Some(ShelfError::Missing)) => f.write_str(&say!("keep-shelf-off")),
            (None, None) => Ok(()),
        }
    }
}

/// The keeper. Dropped when the scorer leaves the game: it then puts down the pen.
#[derive(Clone)]
pub struct Keeper(Rc<Inner>);

struct Inner {
    id: GameId,
    marks: Marks,
    /// Every entry of the game is in it, on the shelf or not.
    working: RefCell<WorkingText>,
    /// The shelf doesn't say yet what `working` says.
    unshelved: Cell<bool>,
    /// Entries the journal hasn't confirmed.
    pending: RefCell<Vec<(EntryId, Record)>>,
    /// The journal has to be written anew, with everything.
    rewrite: Cell<bool>,
    /// A write to the journal is under way.
    busy: Cell<bool>,
    /// This game was noted in the index since it was opened.
    indexed: Cell<bool>,
    pen: RefCell<Option<pen::Pen>>,
    call: RefCell<Option<Call>>,
    leaving: RefCell<Option<WindowListenerHandle>>,
    /// Told the whole log when this tab goes on from another one than it had.
    renewed: Box<dyn Fn(Vec<Entry>)>,
}

impl Drop for Inner {
    fn drop(&mut self) {
        if let Some(leaving) = self.leaving.get_mut().take() {
            leaving.remove();
        }
    }
}

/// Opens a game: takes the pen if it is free, else follows. `renewed` is called with the whole log whenever this tab
/// has to go on from another one than it had: another tab has written, or this one takes over.
///
/// # Errors
/// No storage has the game, or what is stored can't be read.
pub async fn open(
    id: GameId,
    marks: Marks,
    renewed: impl Fn(Vec<Entry>) + 'static,
) -> Result<(Keeper, Vec<Entry>), NotLoaded> {
    let pen = pen::take(&id).await;
    let loaded = if pen.is_some() {
        load_to_write(&id).await?
    } else {
        let log = load_to_follow(&id).await?;
        Loaded { log, journal: JournalState::Holds(0), shelf_is_stale: false, blocked: false }
    };
    let keeper = Keeper(Rc::new(Inner {
        id,
        marks,
        working: RefCell::new(WorkingText::of(&GameFile::default())),
        unshelved: Cell::new(false),
        pending: RefCell::default(),
        rewrite: Cell::new(false),
        busy: Cell::new(false),
        indexed: Cell::new(false),
        pen: RefCell::new(pen),
        call: RefCell::new(None),
        leaving: RefCell::new(None),
        renewed: Box::new(renewed),
    }));
    let log = loaded.log.clone();
    if keeper.0.pen.borrow().is_some() {
        keeper.write_from(loaded);
    } else {
        keeper.follow();
        keeper.queue();
    }
    Ok((keeper, log))
}

impl Keeper {
    /// Takes an entry just recorded, at `position` of the log (from 0). Returns at once; `kept` follows.
    pub fn keep(&self, position: usize, entry: &Entry) {
        remember_entry(&self.0.id, entry);
        // No entry is known that can't be written as JSON; if there is one, the page's memory has it.
        let Ok(text) = serde_json::to_string(entry) else { return };
        self.0.working.borrow_mut().push(&text);
        self.0.pending.borrow_mut().push((entry.id, (position as u32, text)));
        self.0.unshelved.set(true);
        // The journal before the views: not even a timer's wait in which a tap could be lost.
        self.pump();
        // After the frame in which the play shows: the tap doesn't wait for the shelf.
        let keeper = self.clone();
        request_animation_frame(move || set_timeout(move || keeper.shelve(), Duration::ZERO));
    }

    /// The game as a file, with every entry recorded.
    pub fn file_text(&self) -> String {
        self.0.working.borrow().as_str().to_owned()
    }

    /// This tab writes, on from what was loaded.
    fn write_from(&self, loaded: Loaded) {
        let inner = &self.0;
        inner.marks.writes.try_set(true);
        remember(&inner.id, loaded.log.clone());
        let (held, rewrite) = match loaded.journal {
            JournalState::Holds(held) => (held, false),
            JournalState::Differs => (0, true),
        };
        inner.rewrite.set(rewrite);
        let held_last = held.checked_sub(1).and_then(|last| loaded.log.get(last)).map(|entry| entry.id);
        inner.marks.kept.try_set(held_last);
        inner.pending.replace(numbered(&loaded.log, held));
        *inner.working.borrow_mut() = WorkingText::of(&GameFile { id: inner.id.to_string(), log: loaded.log });
        inner.unshelved.set(loaded.shelf_is_stale);
        inner.marks.trouble.try_update(|trouble| trouble.blocked = loaded.blocked);
        *inner.call.borrow_mut() = Call::open();
        // A page that goes to the background may be ended there without another word.
        let last_chance = Rc::downgrade(inner);
        *inner.leaving.borrow_mut() = Some(window_event_listener_untyped("pagehide", move |_| {
            if let Some(inner) = last_chance.upgrade() {
                Self(inner).shelve();
            }
        }));
        self.pump();
        self.shelve();
    }

    /// Another tab writes: this one reads what it wrote.
    fn follow(&self) {
        let inner = &self.0;
        inner.marks.writes.try_set(false);
        let keeper = Rc::downgrade(inner);
        *inner.call.borrow_mut() = Call::listen(move |id| {
            if let Some(inner) = keeper.upgrade().filter(|inner| inner.id == id) {
                spawn_local(async move { Self(inner).read_again().await });
            }
        });
    }

    /// Goes on from what is stored now.
    async fn read_again(&self) {
        if let Ok(log) = load_to_follow(&self.0.id).await {
            self.0.marks.kept.try_set(log.last().map(|entry| entry.id));
            (self.0.renewed)(log);
        }
    }

    /// Queues for the pen, to write once the tab that writes now is done.
    fn queue(&self) {
        let keeper = Rc::downgrade(&self.0);
        let granted = move || {
            let Some(inner) = keeper.upgrade() else { return };
            spawn_local(async move {
                if let Ok(loaded) = load_to_write(&inner.id).await {
                    (inner.renewed)(loaded.log.clone());
                    Self(inner).write_from(loaded);
                }
            });
        };
        let place_in_queue = pen::wait(&self.0.id, granted);
        *self.0.pen.borrow_mut() = place_in_queue;
    }

    /// Writes the working state, if the shelf doesn't say the same already.
    fn shelve(&self) {
        let inner = &self.0;
        if !inner.unshelved.get() || self.is_blocked() {
            return;
        }
        let result = shelf::put_game(&inner.id, inner.working.borrow().as_str());
        inner.unshelved.set(result.is_err());
        self.trouble(|trouble| trouble.shelf = result.err());
        if result.is_ok() && !inner.indexed.replace(true) {
            shelf::change_index(|index| {
                index.entry(inner.id.to_string()).or_default().written = clock::now();
            });
        }
    }

    /// Writes what is pending to the journal, a transaction at a time: what was tapped during one goes into the next.
    fn pump(&self) {
        if self.0.busy.get() || self.is_blocked() || (self.0.pending.borrow().is_empty() && !self.0.rewrite.get()) {
            return;
        }
        self.0.busy.set(true);
        let keeper = self.clone();
        spawn_local(async move {
            let result = keeper.write_pending().await;
            keeper.0.busy.set(false);
            match result {
                Ok(()) => {
                    keeper.trouble(|trouble| trouble.journal = None);
                    keeper.pump();
                }
                Err(JournalError::Taken) => keeper.overtaken().await,
                Err(error) => {
                    reopen_the_journal();
                    keeper.trouble(|trouble| trouble.journal = Some(error));
                    let again = Rc::downgrade(&keeper.0);
                    set_timeout(
                        move || {
                            if let Some(inner) = again.upgrade() {
                                Self(inner).pump();
                            }
                        },
                        TRY_AGAIN,
                    );
                }
            }
        });
    }

    async fn write_pending(&self) -> Result<(), JournalError> {
        let inner = &self.0;
        let pending = inner.pending.borrow().clone();
        match self.write(&pending).await {
            Err(JournalError::Closed) => {
                // Closed from outside: the browser may have cleared the site's data. Everything goes in once more.
                reopen_the_journal();
                let everything = numbered(&remembered(&inner.id).unwrap_or_default(), 0);
                inner.rewrite.set(true);
                inner.pending.replace(everything.clone());
                self.write(&everything).await?;
                self.written(&everything);
            }
            result => {
                result?;
                self.written(&pending);
            }
        }
        Ok(())
    }

    async fn write(&self, pending: &[(EntryId, Record)]) -> Result<(), JournalError> {
        let journal = the_journal().await?;
        let records: Vec<Record> = pending.iter().map(|(_, record)| record.clone()).collect();
        if self.0.rewrite.get() {
            let texts: Vec<String> = records.into_iter().map(|(_, text)| text).collect();
            journal.replace(&self.0.id, &texts).await
        } else {
            journal.append(&self.0.id, &records).await
        }
    }

    /// The journal has confirmed `pending`.
    fn written(&self, pending: &[(EntryId, Record)]) {
        let inner = &self.0;
        inner.rewrite.set(false);
        inner.pending.borrow_mut().drain(..pending.len());
        if let Some((last, _)) = pending.last() {
            inner.marks.kept.try_set(Some(*last));
        }
        if let Some(call) = inner.call.borrow().as_ref() {
            call.written(&inner.id);
        }
    }

    /// Another tab has written where this one wanted to: only possible where the browser has no Web Locks.
    async fn overtaken(&self) {
        let inner = &self.0;
        inner.marks.writes.try_set(false);
        let why = say!("keep-two-tabs");
        let journal = the_journal().await.ok();
        if aside::set_aside(journal.as_ref(), &inner.id, why, self.file_text()).await.is_err() {
            self.trouble(|trouble| trouble.blocked = true);
            return;
        }
        inner.pending.borrow_mut().clear();
        inner.unshelved.set(false);
        forget(&inner.id);
        self.trouble(|trouble| *trouble = Trouble { overtaken: true, ..Trouble::default() });
        self.follow();
        self.read_again().await;
    }

    fn is_blocked(&self) -> bool {
        self.0.marks.trouble.try_with_untracked(|trouble| trouble.blocked).unwrap_or_default()
    }

    /// Changes what is said to be wrong, without waking views that show the same already.
    fn trouble(&self, change: impl FnOnce(&mut Trouble)) {
        let Some(mut trouble) = self.0.marks.trouble.try_get_untracked() else { return };
        let before = trouble.clone();
        change(&mut trouble);
        if trouble != before {
            self.0.marks.trouble.try_set(trouble);
        }
    }
}

/// The records of a log from the entry at `first` on.
fn numbered(log: &[Entry], first: usize) -> Vec<(EntryId, Record)> {
    let record = |(position, entry): (u32, &Entry)| Some((entry.id, (position, serde_json::to_string(entry).ok()?)));
    (0..).zip(log).skip(first).filter_map(record).collect()
}
