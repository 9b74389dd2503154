//! The five places.

pub mod book;
pub mod card;
pub mod clubhouse;
pub mod mound;
pub mod plate;
mod sign;

pub use sign::Sign;
