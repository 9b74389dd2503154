//! Order in short lists: the moves of a play, the lines of a team.

/// Puts a list in order by `precedes`; equals stay as they were. For lists of at most a few hundred: the standard
/// library's sort is for long ones too, and takes 4 KB of the app for every type it sorts.
///
/// ```
/// use benchbook_stats::order::put_in_order;
/// let mut runners = [(2, "Ash"), (1, "Bix"), (2, "Cal"), (1, "Dee")];
/// put_in_order(&mut runners, |a, b| a.0 < b.0);
/// assert_eq!(runners.map(|(_, name)| name), ["Bix", "Dee", "Ash", "Cal"]);
/// ```
pub fn put_in_order<T>(list: &mut [T], precedes: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while at > 0 && precedes(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}
