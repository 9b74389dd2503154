//! The device's clock.

/// Now, in milliseconds since 1970-01-01T00:00Z. A clock set before 1970 reads as 1970.
#[allow(clippy::cast_sign_loss)] // `as` takes a negative number to 0
pub fn now() -> u64 {
    js_sys::Date::now() as u64
}
