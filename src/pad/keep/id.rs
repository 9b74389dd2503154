//! The name of a game: in its address, under which it is stored, and in its file.

use core::fmt;

/// A game's name: 1 to 40 of the characters a-z, A-Z, 0-9, `-` and `_`, so that it needs no escaping anywhere.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct GameId(String);

impl GameId {
    /// Longest name accepted, in characters.
    const LONGEST: usize = 40;

    /// The name `text`, if it is one.
    pub fn parse(text: &str) -> Option<Self> {
        let good = (1..=Self::LONGEST).contains(&text.len())
            && text.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_');
        good.then(|| Self(text.to_owned()))
    }

    /// A new name: ten characters by chance, 50 bits, so that two tablets of one club don't give out the same.
    pub fn fresh() -> Self {
        const LETTERS: &[u8; 32] = b"0123456789abcdefghjkmnpqrstvwxyz";
        #[allow(clippy::cast_sign_loss)] // a random number isn't negative
        let letter = || char::from(LETTERS[(js_sys::Math::random() * 32.0) as usize % LETTERS.len()]);
        Self((0..10).map(|_| letter()).collect())
    }

    /// The name itself.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for GameId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
