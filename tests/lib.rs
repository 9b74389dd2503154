//! Checks of the stats crate and the desk against published sources and open data.

pub mod generate;
pub mod scorer;
