//! Languages: what stats says, from one catalogue of Fluent files (`words/LANGUAGE/*.ftl`).
//!
//! A message that a language lacks is said in English; a test allows that only where a language says it has begun.

use std::borrow::Cow;
use std::collections::HashMap;
use std::sync::LazyLock;

use fluent_templates::fluent_bundle::FluentValue;
use fluent_templates::{LanguageIdentifier, StaticLoader};

fluent_templates::static_loader! {
    static CATALOGUE = {
        locales: "./words",
        fallback_language: "en",
        customise: |bundle| bundle.set_use_isolating(false),
    };
}

/// The languages as the catalogues know them, in the order of [`Language::ALL`]: a word is looked up too often to read its
/// language's tag anew.
static IDENTIFIERS: LazyLock<[LanguageIdentifier; 3]> =
    LazyLock::new(|| Language::ALL.map(|language| language.tag().parse().unwrap_or_default()));

/// A language the book can be read in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
    /// Japanese: begun, with the Plate.
    Japanese,
}

/// What a message is filled in with.
pub type With<'a> = [(&'static str, Value<'a>)];

/// A value in a message. Fluent's own is a hundred bytes and more, too much to build in a thousand places.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value<'a> {
    /// Words.
    Text(Cow<'a, str>),
    /// A number, by which a language can choose its form.
    Number(i64),
}

impl Value<'_> {
    fn fluent(&self) -> FluentValue<'_> {
        match self {
            Self::Text(text) => FluentValue::from(&**text),
            Self::Number(number) => FluentValue::from(*number),
        }
    }
}

impl From<String> for Value<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl<'a> From<&'a String> for Value<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a str> for Value<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

macro_rules! from_whole_number {
    ($($number:ty)+) => {
        $(impl From<$number> for Value<'_> {
            fn from(number: $number) -> Self {
                Self::Number(i64::from(number))
            }
        })+
    };
}
from_whole_number!(u8 u16 u32 i8 i16 i32 i64);

macro_rules! from_large_number {
    ($($number:ty)+) => {
        $(impl From<$number> for Value<'_> {
            fn from(number: $number) -> Self {
                Self::Number(i64::try_from(number).unwrap_or(i64::MAX))
            }
        })+
    };
}
from_large_number!(u64 usize);

impl Language {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::English, Self::Spanish, Self::Japanese];

    /// Its BCP 47 tag.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
            Self::Japanese => "ja",
        }
    }

    /// Its own name for itself.
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
            Self::Japanese => "日本語",
        }
    }

    /// The language for a BCP 47 tag, whatever its region: `es-MX` is Spanish.
    pub fn of(tag: &str) -> Option<Self> {
        let language = tag.split(['-', '_']).next()?;
        Self::ALL.into_iter().find(|l| l.tag().eq_ignore_ascii_case(language))
    }

    /// A message of this crate's catalogue.
    pub fn say(self, key: &str, with: &With) -> String {
        self.look_up(&CATALOGUE, key, with)
    }

    /// A message of any catalogue: in this language, else in English, else its key.
    pub fn look_up(self, catalogue: &StaticLoader, key: &str, with: &With) -> String {
        let with: HashMap<Cow<'static, str>, FluentValue> =
            with.iter().map(|(name, value)| (Cow::Borrowed(*name), value.fluent())).collect();
        let with = (!with.is_empty()).then_some(&with);
        let said = |language: Self| catalogue.lookup_single_language(&IDENTIFIERS[language as usize], key, with).ok();
        said(self).or_else(|| said(Self::English)).unwrap_or_else(|| key.to_owned())
    }
}

/// `say!(language, "key", name = value)`: a message of this crate's catalogue.
macro_rules! say {
    ($language:expr, $key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $language.say($key, &[$((stringify!($name), $crate::words::Value::from($value))),*])
    };
}
pub(crate) use say;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_region_does_not_matter() {
        assert_eq!(Language::of("es-MX"), Some(Language::Spanish));
        assert_eq!(Language::of("EN"), Some(Language::English));
        assert_eq!(Language::of("tlh"), None);
    }

    #[test]
    fn a_message_nobody_wrote_is_its_key() {
        assert_eq!(Language::Spanish.say("no-such-message", &[]), "no-such-message");
    }
}
