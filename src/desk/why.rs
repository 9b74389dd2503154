//! `benchbook why`: one number of the book opened, with the plays behind it, each with its reason and its rule.

use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use benchbook_stats::account::why::{Batting, Number, Pitching, why};
use benchbook_stats::account::{Account, english};
use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::ruling::Credit;
use benchbook_stats::team::PlayerId;

use crate::open;
use crate::report::trouble;
use crate::text::plain;

/// What can be asked, as the help lists it.
pub const NUMBERS: &str = "\
at bats, hits, runs, runs batted in (rbi), walks, strikeouts, stolen bases of a batter;
hits allowed, runs allowed, earned runs, walks allowed, strikeouts thrown of a pitcher;
putouts, assists, errors, double plays of a fielder;
hits, runs, errors, earned runs of \"visitors\", \"home\" or a team by name";

#[derive(Clone, Copy)]
enum Kind {
    Batting(Batting),
    Pitching(Pitching),
    Fielding(Credit),
    /// A side's number, when asked of a side; of a player it is the other one.
    Either(fn(Side) -> Number, fn(PlayerId) -> Number),
}

const KINDS: &[(&str, Kind)] = &[
    ("at bats", Kind::Batting(Batting::AtBats)),
    ("hits", Kind::Either(Number::HitsOf, |p| Number::Batting(p, Batting::Hits))),
    ("runs", Kind::Either(Number::RunsOf, |p| Number::Batting(p, Batting::Runs))),
    ("errors", Kind::Either(Number::ErrorsOf, |p| Number::Fielding(p, Credit::Error))),
    ("earned runs", Kind::Either(Number::EarnedAgainst, |p| Number::Pitching(p, Pitching::EarnedRuns))),
    ("runs batted in", Kind::Batting(Batting::RunsBattedIn)),
    ("rbi", Kind::Batting(Batting::RunsBattedIn)),
    ("walks", Kind::Batting(Batting::Walks)),
    ("strikeouts", Kind::Batting(Batting::Strikeouts)),
    ("stolen bases", Kind::Batting(Batting::StolenBases)),
    ("hits allowed", Kind::Pitching(Pitching::Hits)),
    ("runs allowed", Kind::Pitching(Pitching::Runs)),
    ("walks allowed", Kind::Pitching(Pitching::Walks)),
    ("strikeouts thrown", Kind::Pitching(Pitching::Strikeouts)),
    ("putouts", Kind::Fielding(Credit::Putout)),
    ("assists", Kind::Fielding(Credit::Assist)),
    ("double plays", Kind::Fielding(Credit::DoublePlay)),
];

/// Answers `question` ("earned runs of #21") from the game in `file`.
pub fn answer(file: &Path, question: &str, out: &mut impl Write) -> io::Result<ExitCode> {
    let game = match open::game_file(file) {
        Ok((read, _)) => Game::replay(read.log),
        Err(error) => {
            trouble(&open::explain(file, &error));
            return Ok(ExitCode::FAILURE);
        }
    };
    match parse(&game, question) {
        Ok(number) => tell(&game, number, out),
        Err(why_not) => {
            trouble(&why_not);
            Ok(ExitCode::FAILURE)
        }
    }
}

fn parse(game: &Game, question: &str) -> Result<Number, String> {
    let (what, who) = question
        .trim()
        .rsplit_once(" of ")
        .ok_or_else(|| format!("ask like \"earned runs of #21\". What can be asked:\n{NUMBERS}"))?;
    let what = what.trim().to_lowercase();
    let kind = KINDS
        .iter()
        .find(|(name, _)| *name == what)
        .map(|(_, kind)| *kind)
        .ok_or_else(|| format!("there is no number called \"{}\". What can be asked:\n{NUMBERS}", plain(&what)))?;
    if let Some(side) = side(game, who) {
        return match kind {
            Kind::Either(of_side, _) => Ok(of_side(side)),
            _ => Err(format!("\"{what}\" is asked of a player; of a side ask hits, runs, errors or earned runs")),
        };
    }
    let player = player(game, who)?;
    Ok(match kind {
        Kind::Batting(number) => Number::Batting(player, number),
        Kind::Pitching(number) => Number::Pitching(player, number),
        Kind::Fielding(credit) => Number::Fielding(player, credit),
        Kind::Either(_, of_player) => of_player(player),
    })
}

fn side(game: &Game, who: &str) -> Option<Side> {
    let who = who.trim();
    Side::BOTH
        .into_iter()
        .find(|side| who.eq_ignore_ascii_case(&side.to_string()) || who.eq_ignore_ascii_case(game.team_name(*side)))
}

/// The player of that name, part of a name, or shirt number ("#21", "home #21" where both sides have one).
fn player(game: &Game, who: &str) -> Result<PlayerId, String> {
    let mut who = who.trim();
    let mut sides = Side::BOTH.to_vec();
    for side in Side::BOTH {
        if let Some(rest) = who.strip_prefix(&format!("{side} ")) {
            who = rest.trim();
            sides = vec![side];
        }
    }
    let wanted = who.to_lowercase();
    let everyone = || sides.iter().flat_map(|side| game.roster(*side));
    let number = wanted.strip_prefix('#');
    let exact: Vec<PlayerId> = everyone()
        .filter(|p| number.map_or_else(|| game.label(p.id).to_lowercase() == wanted, |n| p.number == n))
        .map(|p| p.id)
        .collect();
    let found = if exact.is_empty() && number.is_none() {
        everyone().filter(|p| game.label(p.id).to_lowercase().contains(&wanted)).map(|p| p.id).collect()
    } else {
        exact
    };
    match found[..] {
        [one] => Ok(one),
        [] => Err(format!("nobody in this game is called \"{}\"", plain(who))),
        _ => {
            let names: Vec<String> = found.iter().map(|id| plain(&game.label(*id))).collect();
            Err(format!(
                "\"{}\" fits more than one: {}. Say \"visitors {}\" or \"home {}\", or more of the name",
                plain(who),
                names.join(", "),
                plain(who),
                plain(who)
            ))
        }
    }
}

fn tell(game: &Game, number: Number, out: &mut impl Write) -> io::Result<ExitCode> {
    let account = Account::of(game);
    let names = |id: PlayerId| game.label(id);
    let evidence = why(game, &account, number);
    let counted = evidence.iter().filter(|e| e.counts).count();
    let teams = |side: Side| game.team_name(side).to_owned();
    writeln!(out, "{}", plain(&format!("{}: {counted}", english::number(number, &names, &teams))))?;
    for piece in &evidence {
        let half = account.halves.iter().find(|h| h.lines.iter().any(|l| l.entry == piece.entry));
        let when = half.map_or_else(String::new, |h| format!("{} {}", h.half, h.inning));
        let what = account.line(piece.entry).map_or_else(String::new, |line| english::line(line, &names));
        writeln!(out)?;
        writeln!(
            out,
            "{} {}",
            if piece.counts { "+" } else { "-" },
            plain(&format!("{when}, entry {}: {what}", piece.entry.0))
        )?;
        let reason = piece.reason.because.as_ref().map(english::grounds).map(|r| format!("{r} ")).unwrap_or_default();
        let rule = piece.reason.rule;
        writeln!(out, "    {}", plain(&format!("{reason}(OBR {rule})")))?;
    }
    Ok(ExitCode::SUCCESS)
}
