//! The vocabulary of the field: bases, positions, sides, halves, outs and the count.

use core::fmt;

use crate::words::{Language, say};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// One of the two sides in a game, named by its place in the order of batting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// Bats in the top half of every inning.
    Visitors,
    /// Bats in the bottom half of every inning.
    Home,
}

impl Side {
    /// Both sides, visitors first, as a line score lists them.
    pub const BOTH: [Self; 2] = [Self::Visitors, Self::Home];

    /// The other side.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Visitors => Self::Home,
            Self::Home => Self::Visitors,
        }
    }

    /// 0 for the visitors, 1 for the home side: the place in a `[T; 2]`.
    pub const fn index(self) -> usize {
        self as usize
    }
}

impl Side {
    /// Inside a sentence, in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::Visitors => say!(language, "side-visitors"),
            Self::Home => say!(language, "side-home"),
        }
    }
}

impl fmt::Display for Side {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

/// The half of an inning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Half {
    /// The visitors bat.
    Top,
    /// The home side bats.
    Bottom,
}

impl Half {
    /// The side at bat.
    pub const fn batting(self) -> Side {
        match self {
            Self::Top => Side::Visitors,
            Self::Bottom => Side::Home,
        }
    }

    /// The side in the field.
    pub const fn fielding(self) -> Side {
        self.batting().other()
    }
}

impl fmt::Display for Half {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Top => "top",
            Self::Bottom => "bottom",
        })
    }
}

/// A base, in the order in which a runner touches them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Base {
    /// First base.
    First,
    /// Second base.
    Second,
    /// Third base.
    Third,
    /// Home plate, as the last base touched.
    Home,
}

impl Base {
    /// The three bases on which a runner can stand, first to third.
    pub const STANDING: [Self; 3] = [Self::First, Self::Second, Self::Third];

    /// 1 for first to 4 for home: the number of bases from the plate.
    pub const fn number(self) -> u8 {
        self as u8 + 1
    }

    /// The base `number` bases from the plate, 1 to 4.
    pub const fn from_number(number: u8) -> Option<Self> {
        match number {
            1 => Some(Self::First),
            2 => Some(Self::Second),
            3 => Some(Self::Third),
            4 => Some(Self::Home),
            _ => None,
        }
    }

    /// The base after this one; `None` after home.
    pub const fn next(self) -> Option<Self> {
        Self::from_number(self.number() + 1)
    }
}

impl Base {
    /// Inside a sentence, in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::First => say!(language, "base-first"),
            Self::Second => say!(language, "base-second"),
            Self::Third => say!(language, "base-third"),
            Self::Home => say!(language, "base-home"),
        }
    }
}

impl fmt::Display for Base {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

/// A fielding position, numbered 1 to 9 as the trade numbers them; 10 is the short fielder of ten-fielder codes.
///
/// In a file a position is its number.
///
/// ```
/// use benchbook_stats::field::Position;
/// assert_eq!(Position::Shortstop.number(), 6);
/// assert_eq!(Position::try_from(3), Ok(Position::FirstBase));
/// assert_eq!(Position::CenterField.abbreviation(), "CF");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Position {
    /// 1
    Pitcher = 1,
    /// 2
    Catcher,
    /// 3
    FirstBase,
    /// 4
    SecondBase,
    /// 5
    ThirdBase,
    /// 6
    Shortstop,
    /// 7
    LeftField,
    /// 8
    CenterField,
    /// 9
    RightField,
    /// 10, in codes with ten fielders
    ShortField,
}

impl Position {
    /// Every position, 1 to 10.
    pub const ALL: [Self; 10] = [
        Self::Pitcher,
        Self::Catcher,
        Self::FirstBase,
        Self::SecondBase,
        Self::ThirdBase,
        Self::Shortstop,
        Self::LeftField,
        Self::CenterField,
        Self::RightField,
        Self::ShortField,
    ];

    /// The number on a scoresheet, 1 to 10.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The box score's abbreviation: P, C, 1B … RF, SF would clash with the sacrifice fly, so the tenth is 10.
    pub const fn abbreviation(self) -> &'static str {
        match self {
            Self::Pitcher => "P",
            Self::Catcher => "C",
            Self::FirstBase => "1B",
            Self::SecondBase => "2B",
            Self::ThirdBase => "3B",
            Self::Shortstop => "SS",
            Self::LeftField => "LF",
            Self::CenterField => "CF",
            Self::RightField => "RF",
            Self::ShortField => "10",
        }
    }

    /// The box score's abbreviation in a language.
    pub fn short(self, language: Language) -> String {
        match self {
            Self::Pitcher => say!(language, "short-pitcher"),
            Self::Catcher => say!(language, "short-catcher"),
            Self::FirstBase => say!(language, "short-first-base"),
            Self::SecondBase => say!(language, "short-second-base"),
            Self::ThirdBase => say!(language, "short-third-base"),
            Self::Shortstop => say!(language, "short-shortstop"),
            Self::LeftField => say!(language, "short-left-field"),
            Self::CenterField => say!(language, "short-center-field"),
            Self::RightField => say!(language, "short-right-field"),
            Self::ShortField => say!(language, "short-short-field"),
        }
    }

    /// True for 7, 8, 9 and 10.
    pub const fn is_outfield(self) -> bool {
        self.number() >= 7
    }

    /// Inside a sentence, in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::Pitcher => say!(language, "position-pitcher"),
            Self::Catcher => say!(language, "position-catcher"),
            Self::FirstBase => say!(language, "position-first-base"),
            Self::SecondBase => say!(language, "position-second-base"),
            Self::ThirdBase => say!(language, "position-third-base"),
            Self::Shortstop => say!(language, "position-shortstop"),
            Self::LeftField => say!(language, "position-left-field"),
            Self::CenterField => say!(language, "position-center-field"),
            Self::RightField => say!(language, "position-right-field"),
            Self::ShortField => say!(language, "position-short-field"),
        }
    }
}

impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

/// A number that is no fielding position.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0} is no fielding position: positions are 1 to 9, and 10 in ten-fielder codes")]
pub struct NoSuchPosition(pub u8);

impl TryFrom<u8> for Position {
    type Error = NoSuchPosition;

    fn try_from(number: u8) -> Result<Self, NoSuchPosition> {
        usize::from(number).checked_sub(1).and_then(|i| Self::ALL.get(i)).copied().ok_or(NoSuchPosition(number))
    }
}

impl Serialize for Position {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_u8(self.number())
    }
}

impl<'de> Deserialize<'de> for Position {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Self::try_from(u8::deserialize(deserializer)?).map_err(serde::de::Error::custom)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Position {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Position".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "integer", "minimum": 1, "maximum": 10,
            "description": "A fielding position by its number: 1 pitcher, 2 catcher, 3 first base, 4 second base, 5 third base, 6 shortstop, 7 left, 8 center, 9 right, 10 short field."
        })
    }
}

/// What a player in the game does for the side when it is in the field.
///
/// In a file: a position's number, `"DH"` or `"EH"`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Post {
    /// Plays a fielding position.
    Fields(Position),
    /// Designated hitter: bats for a player who only fields.
    DesignatedHitter,
    /// Extra hitter: bats and does not field, in codes that allow more batters than fielders.
    ExtraHitter,
}

impl Post {
    /// The fielding position, if the player has one.
    pub const fn position(self) -> Option<Position> {
        match self {
            Self::Fields(position) => Some(position),
            Self::DesignatedHitter | Self::ExtraHitter => None,
        }
    }

    /// The box score's abbreviation.
    pub const fn abbreviation(self) -> &'static str {
        match self {
            Self::Fields(position) => position.abbreviation(),
            Self::DesignatedHitter => "DH",
            Self::ExtraHitter => "EH",
        }
    }

    /// The box score's abbreviation in a language.
    pub fn short(self, language: Language) -> String {
        match self {
            Self::Fields(position) => position.short(language),
            Self::DesignatedHitter => say!(language, "short-designated-hitter"),
            Self::ExtraHitter => say!(language, "short-extra-hitter"),
        }
    }
}

impl From<Position> for Post {
    fn from(position: Position) -> Self {
        Self::Fields(position)
    }
}

impl Serialize for Post {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Fields(position) => position.serialize(serializer),
            Self::DesignatedHitter | Self::ExtraHitter => serializer.serialize_str(self.abbreviation()),
        }
    }
}

impl<'de> Deserialize<'de> for Post {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Visitor;

        impl serde::de::Visitor<'_> for Visitor {
            type Value = Post;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a position number from 1 to 10, \"DH\" or \"EH\"")
            }

            fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<Post, E> {
                let number = u8::try_from(number).unwrap_or(u8::MAX);
                Position::try_from(number).map(Post::Fields).map_err(E::custom)
            }

            fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Post, E> {
                match text {
                    "DH" => Ok(Post::DesignatedHitter),
                    "EH" => Ok(Post::ExtraHitter),
                    other => Err(E::invalid_value(serde::de::Unexpected::Str(other), &self)),
                }
            }
        }

        deserializer.deserialize_any(Visitor)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Post {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Post".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let position = generator.subschema_for::<Position>();
        schemars::json_schema!({ "anyOf": [position, { "enum": ["DH", "EH"] }] })
    }
}

/// Balls and strikes on the batter.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Count {
    /// Balls.
    pub balls: u8,
    /// Strikes.
    pub strikes: u8,
}

impl Count {
    /// A count of `balls` and `strikes`.
    pub const fn new(balls: u8, strikes: u8) -> Self {
        Self { balls, strikes }
    }
}

impl fmt::Display for Count {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}-{}", self.balls, self.strikes)
    }
}

/// A number of outs: those in a half-inning, or a pitcher's innings counted in thirds.
///
/// ```
/// use benchbook_stats::field::Outs;
/// assert_eq!(Outs(19).to_string(), "6.1"); // six full innings and one out in the seventh
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Outs(pub u32);

impl Outs {
    /// Whole innings in these outs.
    pub const fn innings(self) -> u32 {
        self.0 / 3
    }

    /// Outs beyond the last whole inning, 0 to 2.
    pub const fn thirds(self) -> u32 {
        self.0 % 3
    }
}

impl core::ops::Add for Outs {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl core::ops::AddAssign for Outs {
    fn add_assign(&mut self, other: Self) {
        self.0 += other.0;
    }
}

impl core::iter::Sum for Outs {
    fn sum<I: Iterator<Item = Self>>(outs: I) -> Self {
        Self(outs.map(|o| o.0).sum())
    }
}

impl fmt::Display for Outs {
    /// Innings as the trade prints them: whole innings, a point, and the outs beyond.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}.{}", self.innings(), self.thirds())
    }
}
