//! The field to scale, as drawing data: a unit is a hundredth of a base path, home is at (0, 0), y goes down.

use core::f64::consts::FRAC_PI_4;
use core::fmt::Write;

use benchbook_stats::log::Spot;
use benchbook_stats::propose::fence;
use benchbook_stats::spray::{Fate, Placed, SprayBall};

/// Left, top, width and height of the drawing.
const FRAME: (f64, f64, f64, f64) = (-310.0, -490.0, 620.0, 550.0);
/// Marks stay this far inside the drawing.
const MARGIN: f64 = 16.0;
/// Marks nearer than this would hide each other.
const NEAR: f64 = 24.0;

/// The drawing's box.
pub fn view_box() -> String {
    let (left, top, width, height) = FRAME;
    format!("{left} {top} {width} {height}")
}

/// The empty field.
pub fn drawn() -> String {
    let mut fair = String::from("M0 0");
    for step in -12..=12 {
        let angle = f64::from(step) / 12.0 * FRAC_PI_4;
        let far = fence(spot_at(angle, 300.0));
        // Writing to a string never fails.
        let _ = write!(fair, "L{:.1} {:.1}", far * angle.sin(), -far * angle.cos());
    }
    format!(
        "<path class=\"fair\" d=\"{fair}Z\"/>\
         <path class=\"dirt\" d=\"M0 12L-99 -91A106 106 0 0 1 99 -91Z\"/>\
         <path class=\"fair\" d=\"M0 -18L55 -71L0 -124L-55 -71Z\"/>\
         <circle class=\"dirt\" cx=\"0\" cy=\"-67\" r=\"10\"/>\
         <path class=\"chalk\" d=\"M-259.5 -259.5L0 0L259.5 -259.5\"/>\
         <path class=\"base\" d=\"M71 -79l8 8-8 8-8-8zM0 -149l8 8-8 8-8-8zM-71 -79l8 8-8 8-8-8zM-7 -7h14v7l-7 7-7-7z\"/>"
    )
}

fn spot_at(angle: f64, distance: f64) -> Spot {
    Spot { x: (distance * angle.sin()).round() as i16, y: (distance * angle.cos()).round() as i16 }
}

/// A spot as drawn, kept inside the drawing.
fn point(spot: Spot) -> (f64, f64) {
    let (left, top, width, height) = FRAME;
    let x = f64::from(spot.x).clamp(left + MARGIN, left + width - MARGIN);
    let y = (-f64::from(spot.y)).clamp(top + MARGIN, top + height - MARGIN);
    (x, y)
}

/// The spot, or the nearest to it inside the drawing.
pub fn within(spot: Spot) -> Spot {
    let (x, y) = point(spot);
    Spot { x: x.round() as i16, y: -y.round() as i16 }
}

/// The spot under a point given as shares of the drawing's width and height.
pub fn spot_under(across: f64, down: f64) -> Spot {
    let (left, top, width, height) = FRAME;
    Spot { x: (left + across * width).round() as i16, y: -(top + down * height).round() as i16 }
}

/// The balls, numbered from 1. Those that came down in one place are moved apart so that each can be seen.
pub fn marks(balls: &[SprayBall]) -> String {
    let mut drawn: Vec<(f64, f64)> = Vec::new();
    let mut all = String::new();
    for (i, ball) in balls.iter().enumerate() {
        let (mut x, mut y) = point(ball.spot);
        let crowded = drawn.iter().filter(|(a, b)| (a - x).hypot(b - y) < NEAR).map(|_| 1.0).sum::<f64>();
        if crowded > 0.0 {
            let angle = crowded * 1.1;
            let away = NEAR * (1.0 + (crowded / 6.0).floor());
            (x, y) = (x + away * angle.cos(), y + away * angle.sin());
        }
        drawn.push((x, y));
        let _ = write!(
            all,
            "<g transform=\"translate({x:.1} {y:.1})\">{}<text x=\"14\" y=\"-9\">{}</text></g>",
            mark(ball.fate, ball.placed),
            i + 1
        );
    }
    all
}

/// A spot by itself.
pub fn pin(spot: Spot) -> String {
    let (x, y) = point(spot);
    format!("<g transform=\"translate({x:.1} {y:.1})\">{}</g>", mark(Fate::Hit, Placed::Touched))
}

/// One mark, around (0, 0): told apart by its shape.
pub fn mark(fate: Fate, placed: Placed) -> String {
    let shape = match fate {
        Fate::Hit => "<circle class=\"mark full\" r=\"9\"/>",
        Fate::Out => "<path class=\"mark\" d=\"M-8 -8L8 8M8 -8L-8 8\"/>",
        Fate::Error => "<path class=\"mark open\" d=\"M0 -11L11 8H-11Z\"/>",
        Fate::Safe => "<path class=\"mark open\" d=\"M0 -11L11 0L0 11L-11 0Z\"/>",
    };
    match placed {
        Placed::Touched => shape.to_owned(),
        Placed::ByFielder => format!("<circle class=\"about\" r=\"17\"/>{shape}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_touched_point_names_its_spot() {
        for (x, y) in [(0, 0), (71, 71), (-150, 265), (0, 444), (300, -40)] {
            let (px, py) = point(Spot { x, y });
            let (left, top, width, height) = FRAME;
            let back = spot_under((px - left) / width, (py - top) / height);
            assert!((back.x - x).abs() <= 16 && (back.y - y).abs() <= 16, "({x}, {y}): {back:?}");
        }
        assert_eq!(spot_under(0.5, 490.0 / 550.0), Spot { x: 0, y: 0 }, "home plate");
    }

    #[test]
    fn no_two_fates_look_alike() {
        let shapes: Vec<String> = Fate::ALL.into_iter().map(|fate| mark(fate, Placed::Touched)).collect();
        for (i, shape) in shapes.iter().enumerate() {
            assert!(!shapes[..i].contains(shape), "{shape}");
        }
    }
}
