//! The promise: a play that shows as kept is on the disk. The only room that touches storage.

mod id;

pub use id::GameId;
