//! A table on a terminal: words to the left, numbers to the right, as wide as they need to be.

use std::io::{self, Write};

use anstyle::Style;

use crate::text::{fit, plain, width};

/// The widest a cell may be, in columns: longer names are cut.
const WIDEST: usize = 32;

const HEAD: Style = Style::new().bold();

/// A table being filled.
pub struct Table {
    words: usize,
    head: Vec<String>,
    rows: Vec<Vec<String>>,
    total: Option<Vec<String>>,
}

impl Table {
    /// A table whose first `words` columns hold words; the others numbers.
    pub fn new<'a>(words: usize, head: impl IntoIterator<Item = &'a str>) -> Self {
        Self { words, head: cells(head), rows: Vec::new(), total: None }
    }

    /// Adds a row.
    pub fn row<S: AsRef<str>>(&mut self, row: impl IntoIterator<Item = S>) {
        self.rows.push(cells(row));
    }

    /// The last row, ruled off.
    pub fn total<S: AsRef<str>>(&mut self, row: impl IntoIterator<Item = S>) {
        self.total = Some(cells(row));
    }

    /// Prints it.
    pub fn print(&self, out: &mut impl Write) -> io::Result<()> {
        let rows = || self.rows.iter().chain(&self.total).chain([&self.head]);
        let columns = rows().map(Vec::len).max().unwrap_or(0);
        let widths: Vec<usize> = (0..columns)
            .map(|i| rows().filter_map(|row| row.get(i)).map(|cell| width(cell)).max().unwrap_or(0))
            .collect();
        writeln!(out, "{HEAD}{}{HEAD:#}", self.line(&self.head, &widths))?;
        for row in &self.rows {
            writeln!(out, "{}", self.line(row, &widths))?;
        }
        if let Some(total) = &self.total {
            let ruled = widths.iter().sum::<usize>() + 2 * columns.saturating_sub(1);
            writeln!(out, "{}", "-".repeat(ruled))?;
            writeln!(out, "{}", self.line(total, &widths))?;
        }
        Ok(())
    }

    fn line(&self, row: &[String], widths: &[usize]) -> String {
        let mut line = String::new();
        for (i, (cell, columns)) in row.iter().zip(widths).enumerate() {
            let space = " ".repeat(columns.saturating_sub(width(cell)));
            line.push_str(if i == 0 { "" } else { "  " });
            if i < self.words {
                line.push_str(cell);
                line.push_str(&space);
            } else {
                line.push_str(&space);
                line.push_str(cell);
            }
        }
        line.trim_end().into()
    }
}

fn cells<S: AsRef<str>>(row: impl IntoIterator<Item = S>) -> Vec<String> {
    row.into_iter().map(|cell| fit(&plain(cell.as_ref()), WIDEST)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_stay_straight_under_wide_names() {
        let mut table = Table::new(1, ["", "AB", "H"]);
        table.row(["Ada", "4", "12"]);
        table.row(["野球 ⚾", "10", "1"]);
        table.row(["\u{1b}[1mBo\n", "0", "0"]);
        table.total(["Totals", "14", "13"]);
        let mut out = anstream::StripStream::new(Vec::new());
        table.print(&mut out).expect("a vector takes all");
        let printed = String::from_utf8(out.into_inner()).expect("text");
        let expected =
            "         AB   H\nAda       4  12\n野球 ⚾  10   1\n[1mBo     0   0\n---------------\nTotals   14  13\n";
        assert_eq!(printed, expected);
    }
}
