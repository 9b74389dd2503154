//! The scorer's settings on this device.

use benchbook_stats::log::SpeedUnit;
use benchbook_stats::words::Language;
use leptos::prelude::*;
use serde::{Deserialize, Serialize};

use super::shelf;

/// The settings, as signals provided by context to the whole app.
#[derive(Clone, Copy)]
pub struct Preferences {
    /// Chalk on a dark board instead of ink on chalk.
    pub night: RwSignal<bool>,
    /// What is tapped most lies under the left thumb.
    pub left_handed: RwSignal<bool>,
    /// Kind and speed of each pitch can be noted.
    pub pitch_notes: RwSignal<bool>,
    /// Of the radar.
    pub speed_unit: RwSignal<SpeedUnit>,
    /// The language chosen; `None` follows the device.
    pub language: RwSignal<Option<Language>>,
}

#[derive(Serialize, Deserialize, Default)]
#[serde(default)]
#[allow(clippy::struct_excessive_bools)] // each is a switch of its own
struct Stored {
    night: bool,
    left_handed: bool,
    #[serde(skip_serializing_if = "is_false")]
    pitch_notes: bool,
    #[serde(skip_serializing_if = "is_false")]
    kilometers: bool,
    /// BCP 47 tag.
    #[serde(skip_serializing_if = "Option::is_none")]
    language: Option<String>,
}

#[allow(clippy::trivially_copy_pass_by_ref)] // as serde calls it
const fn is_false(b: &bool) -> bool {
    !*b
}

impl Preferences {
    /// The settings, for a view.
    pub fn get() -> Self {
        expect_context()
    }

    /// Reads them, and from now on stores each change and marks the page with `data-light` and `data-hand`.
    pub fn provide() -> Self {
        let stored: Stored = shelf::preferences().unwrap_or_default();
        let preferences = Self {
            night: RwSignal::new(stored.night),
            left_handed: RwSignal::new(stored.left_handed),
            pitch_notes: RwSignal::new(stored.pitch_notes),
            speed_unit: RwSignal::new(if stored.kilometers {
                SpeedUnit::KilometersPerHour
            } else {
                SpeedUnit::MilesPerHour
            }),
            language: RwSignal::new(stored.language.as_deref().and_then(Language::of)),
        };
        Effect::new(move |before: Option<()>| {
            let (night, left_handed) = (preferences.night.get(), preferences.left_handed.get());
            let pitch_notes = preferences.pitch_notes.get();
            let kilometers = preferences.speed_unit.get() == SpeedUnit::KilometersPerHour;
            let language = preferences.language.get().map(|language| language.tag().to_owned());
            if let Some(page) = document().document_element() {
                // The page looks as before if it refuses the mark.
                let _ = page.set_attribute("data-light", if night { "night" } else { "day" });
                let _ = page.set_attribute("data-hand", if left_handed { "left" } else { "right" });
            }
            if before.is_some() {
                shelf::put_preferences(&Stored { night, left_handed, pitch_notes, kilometers, language });
            }
        });
        provide_context(preferences);
        preferences
    }
}
