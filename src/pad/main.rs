//! The pad: the app with which a parent keeps the book during the game.
//!
//! A tap's way: tap -> `Event` -> [`scoring::Scoring::tap`] -> `Game::record` -> `keep` -> signal -> the views.

mod app;
mod carry;
mod clock;
mod club;
mod install;
mod keep;
mod live;
mod place;
mod places;
mod scoring;
mod words;

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(app::App);
}
