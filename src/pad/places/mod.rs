//! The five places.

pub mod book;
pub mod card;
pub mod clubhouse;
pub mod mound;
pub mod plate;
mod refused;
mod sign;

pub use refused::Refused;
pub use sign::Sign;
