//! A square of the scoresheet as shapes in a box of 100 by 100, and as SVG. What each [`Ink`] looks like is up to who
//! draws: black on paper, chalk on a dark board.

use core::fmt::Write;

use super::mark::chain;
use super::{Cell, Mark};
use crate::field::Base;
use crate::game::Thrown;
use crate::log::Call;

/// A point: to the right, down.
pub type Point = (i16, i16);

/// One shape.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A line through these points.
    Line(Vec<Point>, Ink),
    /// A closed figure.
    Area(Vec<Point>, Ink),
    /// A circle: middle, radius.
    Circle(Point, i16, Ink),
    /// Words: middle of their base line, height of the letters.
    Text(Point, String, i16, Ink),
    /// The same, seen in a mirror: the K of a called third strike.
    Mirrored(Point, String, i16, Ink),
}

/// What a shape is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// The printed diamond.
    Guide,
    /// Bases gained.
    Path,
    /// A run.
    Run,
    /// The mark of the turn.
    Mark,
    /// What stands beside a base.
    Tag,
    /// The number of an out.
    Out,
    /// A pitch.
    Pitch,
    /// A change of batter or pitcher.
    Change,
    /// The end of the half.
    Edge,
}

impl Ink {
    /// The class of its shapes in SVG.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Guide => "ink-guide",
            Self::Path => "ink-path",
            Self::Run => "ink-run",
            Self::Mark => "ink-mark",
            Self::Tag => "ink-tag",
            Self::Out => "ink-out",
            Self::Pitch => "ink-pitch",
            Self::Change => "ink-change",
            Self::Edge => "ink-edge",
        }
    }
}

const HOME: Point = (50, 92);
const FIRST: Point = (82, 60);
const SECOND: Point = (50, 28);
const THIRD: Point = (18, 60);

const fn at(base: Base) -> Point {
    match base {
        Base::First => FIRST,
        Base::Second => SECOND,
        Base::Third => THIRD,
        Base::Home => HOME,
    }
}

/// Where the words beside the way to a base stand.
const fn beside(base: Base) -> Point {
    match base {
        Base::First => (81, 88),
        Base::Second => (82, 38),
        Base::Third => (18, 38),
        Base::Home => (18, 78),
    }
}

/// The shapes of a cell, what lies under others first.
pub fn shapes(cell: &Cell) -> Vec<Shape> {
    let mut shapes = Vec::new();
    if cell.run.is_some() {
        shapes.push(Shape::Area(vec![HOME, FIRST, SECOND, THIRD], Ink::Run));
    }
    shapes.push(Shape::Area(vec![HOME, FIRST, SECOND, THIRD], Ink::Guide));
    way(cell, &mut shapes);
    if let Some(mark) = &cell.mark {
        words(mark, &mut shapes);
    }
    if let Some(out) = &cell.out {
        shapes.push(Shape::Circle((11, 89), 9, Ink::Out));
        shapes.push(Shape::Text((11, 94), out.number.to_string(), 13, Ink::Out));
    }
    if cell.run.is_some_and(|r| r.earned == Some(false)) {
        shapes.push(Shape::Text((91, 76), "UE".into(), 9, Ink::Tag));
    }
    for i in 0..i16::from(cell.runs_batted_in) {
        shapes.push(Shape::Circle((95, 26 + 8 * i), 3, Ink::Mark));
    }
    pitches(cell, &mut shapes);
    edges(cell, &mut shapes);
    shapes
}

fn way(cell: &Cell, shapes: &mut Vec<Shape>) {
    let mut points = vec![HOME];
    for gained in &cell.gained {
        let from = points.len() as u8;
        points.extend((from..=gained.to.number()).filter_map(Base::from_number).map(at));
        if let Some(tag) = gained.tag {
            shapes.push(Shape::Text(beside(gained.to), tag.to_string(), 10, Ink::Tag));
        }
    }
    if let Some(out) = cell.out.as_ref().filter(|_| !cell.gained.is_empty()) {
        let (x, y) = points.last().copied().unwrap_or(HOME);
        let (tx, ty) = at(out.at);
        // Out going back to the base he held: a bar across that base.
        let (hx, hy) = (x.midpoint(tx), y.midpoint(ty));
        points.push((hx, hy));
        let (dx, dy) = ((ty - y).signum() * 6, (x - tx).signum() * 6);
        let (dx, dy) = if (dx, dy) == (0, 0) { (6, 6) } else { (dx, dy) };
        shapes.push(Shape::Line(vec![(hx - dx, hy - dy), (hx + dx, hy + dy)], Ink::Path));
        let by = match &out.by[..] {
            // A rundown: who began it and who ended it.
            [first, .., last] if out.by.len() > 4 => format!("{}…{}", first.number(), last.number()),
            by => chain(by),
        };
        let text = out.tag.map_or_else(|| by.clone(), |tag| format!("{tag} {by}"));
        shapes.push(Shape::Text(beside(out.at), text.trim().into(), 10, Ink::Tag));
    }
    if points.len() > 1 {
        shapes.push(Shape::Line(points, Ink::Path));
    }
}

fn words(mark: &Mark, shapes: &mut Vec<Shape>) {
    let text = mark.to_string();
    let height = match text.len() {
        0..=2 => 24,
        3 => 19,
        4..=5 => 15,
        _ => 11,
    };
    let below = mark.below();
    let y = if below.is_some() { 63 } else { 68 };
    shapes.push(match mark {
        Mark::Strikeout { looking: true } => Shape::Mirrored((50, y), text, height, Ink::Mark),
        _ => Shape::Text((50, y), text, height, Ink::Mark),
    });
    if let Some(below) = below {
        shapes.push(Shape::Text((50, 76), below, 11, Ink::Mark));
    }
}

/// Pitches in order along the top: a ring for a ball, a bar for a called strike, a cross for a swing and a miss, a
/// stroke for a foul. The one put in play is the mark itself.
fn pitches(cell: &Cell, shapes: &mut Vec<Shape>) {
    const A_LINE: i16 = 11;
    for (i, thrown) in (0_i16..).zip(&cell.pitches) {
        let (x, y) = (8 + 8 * (i % A_LINE), 9 + 9 * (i / A_LINE));
        let stroke = |a: Point, b: Point| Shape::Line(vec![a, b], Ink::Pitch);
        match thrown {
            Thrown::InPlay => {}
            Thrown::Called(call) if call.is_ball() || *call == Call::HitByPitch => {
                shapes.push(Shape::Circle((x, y), 3, Ink::Pitch));
            }
            Thrown::Called(Call::CalledStrike | Call::AutomaticStrike) => shapes.push(stroke((x, y - 4), (x, y + 4))),
            Thrown::Called(Call::Foul | Call::FoulBunt | Call::FoulTip) => {
                shapes.push(stroke((x - 3, y + 4), (x + 3, y - 4)));
            }
            Thrown::Called(_) => {
                shapes.push(stroke((x - 3, y - 3), (x + 3, y + 3)));
                shapes.push(stroke((x - 3, y + 3), (x + 3, y - 3)));
            }
        }
    }
    if cell.pitches_missed {
        shapes.push(Shape::Text((94, 14), "+".into(), 12, Ink::Pitch));
    }
}

fn edges(cell: &Cell, shapes: &mut Vec<Shape>) {
    if cell.new_batter {
        shapes.push(Shape::Line(vec![(1, 0), (1, 100)], Ink::Change));
    }
    if cell.new_pitcher {
        shapes.push(Shape::Line(vec![(0, 1), (100, 1)], Ink::Change));
    }
    if cell.ends_half {
        shapes.push(Shape::Line(vec![(100, 84), (84, 100)], Ink::Edge));
    }
}

/// The inside of an `svg` element with `viewBox="0 0 100 100"`. Only marks are in it, never a name.
pub fn svg(cell: &Cell) -> String {
    let mut svg = String::new();
    for shape in shapes(cell) {
        // Writing into a string can't fail.
        let _ = write(&mut svg, &shape);
    }
    svg
}

fn write(svg: &mut String, shape: &Shape) -> core::fmt::Result {
    let points = |points: &[Point]| points.iter().map(|(x, y)| format!("{x},{y}")).collect::<Vec<_>>().join(" ");
    match shape {
        Shape::Line(line, ink) => write!(svg, r#"<polyline class="{}" points="{}"/>"#, ink.class(), points(line)),
        Shape::Area(area, ink) => write!(svg, r#"<polygon class="{}" points="{}"/>"#, ink.class(), points(area)),
        Shape::Circle((x, y), r, ink) => write!(svg, r#"<circle class="{}" cx="{x}" cy="{y}" r="{r}"/>"#, ink.class()),
        Shape::Text((x, y), text, height, ink) => {
            write!(svg, r#"<text class="{}" x="{x}" y="{y}" font-size="{height}">{text}</text>"#, ink.class())
        }
        Shape::Mirrored((x, y), text, height, ink) => write!(
            svg,
            r#"<text class="{}" transform="translate({x} {y}) scale(-1 1)" font-size="{height}">{text}</text>"#,
            ink.class()
        ),
    }
}
