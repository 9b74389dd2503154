//! Text from a file, made fit for a terminal: names may hold anything.

use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};

/// Without characters that a terminal obeys rather than shows: controls, and marks that turn the direction of writing.
pub fn plain(text: &str) -> String {
    text.chars().filter_map(|c| if c.is_whitespace() { Some(' ') } else { (!commands(c)).then_some(c) }).collect()
}

/// The character is an instruction to the terminal or the layout.
pub fn commands(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{61c}' | '\u{feff}')
}

/// Columns of a terminal that `text` takes.
pub fn width(text: &str) -> usize {
    text.width()
}

/// At most `columns` wide, the cut marked by an ellipsis. Of marks heaped on one letter no more than eight a column.
pub fn fit(text: &str, columns: usize) -> String {
    let most = columns * 8;
    if width(text) <= columns && text.chars().nth(most).is_none() {
        return text.into();
    }
    let mut cut = String::new();
    let mut used = 1;
    for c in text.chars().take(most) {
        used += c.width().unwrap_or(0);
        if used > columns {
            break;
        }
        cut.push(c);
    }
    format!("{}…", cut.trim_end_matches(['\u{200d}', ' ']))
}

/// JSON with such characters escaped: the same JSON, harmless on a terminal. They occur within strings only.
pub fn escaped(json: &str) -> String {
    let escape = |c: char| if commands(c) && c != '\n' { format!("\\u{:04x}", u32::from(c)) } else { c.into() };
    if json.contains(|c| commands(c) && c != '\n') { json.chars().map(escape).collect() } else { json.into() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_commands_the_terminal() {
        assert_eq!(plain("\u{1b}[2JAda\u{7}\u{9b}31m\u{202e}\tB\r\nC"), "[2JAda31m B  C");
        assert_eq!(plain("Niña ⚾ 👩‍👩‍👧"), "Niña ⚾ 👩‍👩‍👧");
        assert_eq!(escaped("{\"a\":\"\u{9b}1m\u{202e}é\"}\n"), "{\"a\":\"\\u009b1m\\u202eé\"}\n");
    }

    #[test]
    fn cut_by_columns_not_characters() {
        assert_eq!(fit("Okonjo", 6), "Okonjo");
        assert_eq!(fit("Okonjo", 5), "Okon…");
        assert_eq!(fit("野球野球", 6), "野球…");
        assert_eq!(fit(&"👩‍👩‍👧".repeat(9), 7), "👩‍👩‍👧…");
        assert_eq!(fit(&format!("e{}", "\u{301}".repeat(1000)), 4).chars().count(), 33);
    }
}
