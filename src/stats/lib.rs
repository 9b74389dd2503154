//! The scorer's rules of baseball and softball, offline and pure.
//!
//! The [`log`] holds what the scorer saw. [`game::Game`] replays it and refuses what cannot follow. Everything a book
//! shows is derived from there, each number with the rule that gave it.
#![warn(missing_docs)]

pub mod account;
pub mod code;
pub mod field;
pub mod file;
pub mod game;
pub mod lines;
pub mod log;
pub mod order;
pub mod propose;
pub mod rates;
pub mod ruling;
pub mod season;
pub mod sheet;
pub mod spray;
pub mod team;
pub mod words;
pub mod workload;
