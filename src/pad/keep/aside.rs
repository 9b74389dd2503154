//! What could not be read: set aside under a label of its own, reported in the Clubhouse, never overwritten.

use benchbook_stats::order::put_in_order;
use serde::{Deserialize, Serialize};

use super::journal::{Journal, JournalError};
use super::{GameId, shelf};
use crate::clock;
use crate::words::say;

/// Something set aside.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Aside {
    /// The game it belonged to.
    pub game: String,
    /// When it was set aside, in milliseconds since 1970.
    pub at: u64,
    /// Why, in words.
    pub why: String,
    /// What was stored, as it was.
    pub text: String,
}

/// Something set aside, with the label under which it lies.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Labelled {
    /// The label.
    pub label: String,
    /// What lies there. A record that can't be read is shown whole, as text.
    pub aside: Aside,
}

/// Sets `text` aside. Only when it lies there may the place it came from be written.
///
/// # Errors
/// Neither the journal nor the shelf has room for it.
pub async fn set_aside(
    journal: Option<&Journal>,
    game: &GameId,
    why: String,
    text: String,
) -> Result<(), JournalError> {
    let at = clock::now();
    // Two copies of one game may be set aside in the same millisecond.
    let label = format!("{game} {at} {}", GameId::fresh());
    let aside = Aside { game: game.to_string(), at, why, text };
    let text = serde_json::to_string(&aside).map_err(|error| JournalError::Other(error.to_string()))?;
    let refused = match journal {
        Some(journal) => match journal.set_aside(&label, &text).await {
            Ok(()) => return Ok(()),
            Err(error) => error,
        },
        None => JournalError::Missing,
    };
    shelf::set_aside(&label, &text).map_err(|_| refused)
}

/// Everything set aside, latest first.
pub async fn all(journal: Option<&Journal>) -> Vec<Labelled> {
    let mut found = shelf::set_asides();
    if let Some(journal) = journal {
        found.extend(journal.set_asides().await.unwrap_or_default());
    }
    let mut all: Vec<Labelled> = found
        .into_iter()
        .map(|(label, text)| {
            let unread = |_| Aside { game: label.clone(), at: 0, why: say!("keep-unread"), text: text.clone() };
            let aside = serde_json::from_str(&text).unwrap_or_else(unread);
            Labelled { label, aside }
        })
        .collect();
    put_in_order(&mut all, |a, b| a.aside.at > b.aside.at);
    all
}

/// Throws away what lies under `label`, wherever it lies.
pub async fn throw_away(journal: Option<&Journal>, label: &str) {
    shelf::drop_aside(label);
    if let Some(journal) = journal {
        // If it stays it shows again, and can be thrown away again.
        let _ = journal.drop_aside(label).await;
    }
}
