//! The desk: what the scorer does with the file at home.
fn main() {}
