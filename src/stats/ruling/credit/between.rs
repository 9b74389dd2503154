//! Whether an error came between the outs of one play (OBR 9.11).
//!
//! The entry lists outs and errors, not their order, but who handled the ball tells most of it: an out whose fielders lead
//! up to the error came before it, one whose fielders go on from it, or whose runner had run on it, came after. Where that
//! tells nothing the usual answer stands: an error that let somebody live came between the outs, and one that only gave
//! bases away after them.

use crate::game::{Moved, Play};
use crate::log::{Cause, Misplay};

use super::reason::gave_life;

/// On which side of an error an out was made.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Side {
    Before,
    After,
    Unknown,
}

/// An error of one of `plays`, all of them one play for the rule, came between two of its outs. `void` says which misplay
/// of each was judged to be none.
pub(in crate::ruling) fn error_between_outs(plays: &[&Play], void: &[Option<u8>]) -> bool {
    let mut errors = plays.iter().enumerate().flat_map(|(at, play)| (0..play.misplays.len()).map(move |i| (at, i)));
    errors.any(|(at, i)| void.get(at) != Some(&Some(i as u8)) && intervenes(plays, (at, i)))
}

fn intervenes(plays: &[&Play], (at, index): (usize, usize)) -> bool {
    let misplay = &plays[at].misplays[index];
    let outs = plays.iter().enumerate().flat_map(|(i, play)| {
        let moves = play.moves.iter().filter(|m| m.out.is_some());
        moves.map(move |m| match i.cmp(&at) {
            core::cmp::Ordering::Less => Side::Before,
            core::cmp::Ordering::Equal => side(misplay, index, m),
            core::cmp::Ordering::Greater => Side::After,
        })
    });
    let sides: Vec<Side> = outs.collect();
    let is = |side| sides.contains(&side);
    let after = is(Side::After) || (is(Side::Unknown) && gave_life(plays[at], index, misplay));
    after && (is(Side::Before) || is(Side::Unknown))
}

fn side(misplay: &Misplay, index: usize, m: &Moved) -> Side {
    let ran_on_it = m.legs.iter().any(|leg| leg.cause == Cause::Error(index as u8));
    let handled: Vec<_> = misplay.after.iter().chain([&misplay.by]).copied().collect();
    let by = m.out.as_ref().map_or(&[][..], |out| &out.by);
    if ran_on_it || (by.len() > handled.len() && by.starts_with(&handled)) {
        Side::After
    } else if !by.is_empty() && handled.starts_with(by) {
        Side::Before
    } else {
        Side::Unknown
    }
}
