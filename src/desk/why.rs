//! `benchbook why`: one number of the book opened, with the plays behind it, each with its reason and its rule.

use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use benchbook_stats::account::why::{Batting, Catching, Number, Pitching, why};
use benchbook_stats::account::{Account, sentences};
use benchbook_stats::field::{Outs, Side};
use benchbook_stats::game::Game;
use benchbook_stats::ruling::Credit;
use benchbook_stats::team::PlayerId;
use benchbook_stats::words::Language;

use crate::open;
use crate::report::trouble;
use crate::text::plain;

/// What can be asked, as the help lists it.
pub const NUMBERS: &str = "\
plate appearances, at bats, runs, hits, doubles (2b), triples (3b), home runs (hr), runs batted in (rbi), walks (bb),
  intentional walks (ibb), strikeouts (so), hit by pitch (hbp), sacrifice hits (sh), sacrifice flies (sf), interference,
  reached on error, fielder's choices, stolen bases (sb), caught stealing (cs), double plays grounded into (gdp),
  left on base (lob) of a batter;
innings pitched (ip), batters faced (bf), hits allowed, home runs allowed, runs allowed, earned runs (er), walks allowed,
  intentional walks allowed, strikeouts thrown, hit batters (hb), wild pitches (wp), balks (bk), pitches, balls, strikes,
  decision of a pitcher;
putouts (po), assists (a), errors (e), double plays (dp), triple plays (tp), innings in the field of a fielder;
passed balls (pb), bases stolen off, runners caught of a catcher;
runs, hits, errors, earned runs, left on base of \"visitors\", \"home\" or a team by name";

#[derive(Clone, Copy)]
enum Kind {
    Batting(Batting),
    Pitching(Pitching),
    Fielding(Credit),
    Catching(Catching),
    InField,
    Decision,
    /// A side's number, when asked of a side; of a player it is the other one.
    Either(fn(Side) -> Number, fn(PlayerId) -> Number),
}

const KINDS: &[(&[&str], Kind)] = &[
    (&["plate appearances", "pa"], Kind::Batting(Batting::PlateAppearances)),
    (&["at bats", "ab"], Kind::Batting(Batting::AtBats)),
    (&["runs", "r"], Kind::Either(Number::RunsOf, |p| Number::Batting(p, Batting::Runs))),
    (&["hits", "h"], Kind::Either(Number::HitsOf, |p| Number::Batting(p, Batting::Hits))),
    (&["doubles", "two-base hits", "2b"], Kind::Batting(Batting::Doubles)),
    (&["triples", "three-base hits", "3b"], Kind::Batting(Batting::Triples)),
    (&["home runs", "hr"], Kind::Batting(Batting::HomeRuns)),
    (&["runs batted in", "rbi", "bi"], Kind::Batting(Batting::RunsBattedIn)),
    (&["walks", "bases on balls", "bb"], Kind::Batting(Batting::Walks)),
    (&["intentional walks", "ibb"], Kind::Batting(Batting::IntentionalWalks)),
    (&["strikeouts", "so", "k"], Kind::Batting(Batting::Strikeouts)),
    (&["hit by pitch", "hbp"], Kind::Batting(Batting::HitByPitch)),
    (&["sacrifice hits", "sh"], Kind::Batting(Batting::SacrificeHits)),
    (&["sacrifice flies", "sf"], Kind::Batting(Batting::SacrificeFlies)),
    (&["interference", "ci"], Kind::Batting(Batting::Interference)),
    (&["reached on error", "roe"], Kind::Batting(Batting::ReachedOnError)),
    (&["fielder's choices", "fc"], Kind::Batting(Batting::FieldersChoices)),
    (&["stolen bases", "sb"], Kind::Batting(Batting::StolenBases)),
    (&["caught stealing", "cs"], Kind::Batting(Batting::CaughtStealing)),
    (&["double plays grounded into", "gdp", "gidp"], Kind::Batting(Batting::GroundedIntoDoublePlays)),
    (&["left on base", "lob"], Kind::Either(Number::LeftOnBaseOf, |p| Number::Batting(p, Batting::LeftOnBase))),
    (&["innings pitched", "innings", "ip"], Kind::Pitching(Pitching::Outs)),
    (&["batters faced", "bf"], Kind::Pitching(Pitching::BattersFaced)),
    (&["hits allowed"], Kind::Pitching(Pitching::Hits)),
    (&["home runs allowed"], Kind::Pitching(Pitching::HomeRuns)),
    (&["runs allowed"], Kind::Pitching(Pitching::Runs)),
    (&["earned runs", "er"], Kind::Either(Number::EarnedAgainst, |p| Number::Pitching(p, Pitching::EarnedRuns))),
    (&["walks allowed"], Kind::Pitching(Pitching::Walks)),
    (&["intentional walks allowed"], Kind::Pitching(Pitching::IntentionalWalks)),
    (&["strikeouts thrown"], Kind::Pitching(Pitching::Strikeouts)),
    (&["hit batters", "hb"], Kind::Pitching(Pitching::HitBatters)),
    (&["wild pitches", "wp"], Kind::Pitching(Pitching::WildPitches)),
    (&["balks", "bk"], Kind::Pitching(Pitching::Balks)),
    (&["pitches"], Kind::Pitching(Pitching::Pitches)),
    (&["balls"], Kind::Pitching(Pitching::Balls)),
    (&["strikes"], Kind::Pitching(Pitching::Strikes)),
    (&["decision", "win", "loss", "save", "w", "l", "s"], Kind::Decision),
    (&["putouts", "po"], Kind::Fielding(Credit::Putout)),
    (&["assists", "a"], Kind::Fielding(Credit::Assist)),
    (&["errors", "e"], Kind::Either(Number::ErrorsOf, |p| Number::Fielding(p, Credit::Error))),
    (&["double plays", "dp"], Kind::Fielding(Credit::DoublePlay)),
    (&["triple plays", "tp"], Kind::Fielding(Credit::TriplePlay)),
    (&["innings in the field"], Kind::InField),
    (&["passed balls", "pb"], Kind::Catching(Catching::PassedBalls)),
    (&["bases stolen off"], Kind::Catching(Catching::StolenBases)),
    (&["runners caught"], Kind::Catching(Catching::CaughtStealing)),
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
        .find(|(names, _)| names.contains(&&*what))
        .map(|(_, kind)| *kind)
        .ok_or_else(|| format!("there is no number called \"{}\". What can be asked:\n{NUMBERS}", plain(&what)))?;
    if let Some(side) = side(game, who) {
        return match kind {
            Kind::Either(of_side, _) => Ok(of_side(side)),
            _ => Err(format!(
                "\"{what}\" is asked of a player; of a side ask runs, hits, errors, earned runs or left on base"
            )),
        };
    }
    let player = player(game, who)?;
    Ok(match kind {
        Kind::Batting(number) => Number::Batting(player, number),
        Kind::Pitching(number) => Number::Pitching(player, number),
        Kind::Fielding(credit) => Number::Fielding(player, credit),
        Kind::Catching(number) => Number::Catching(player, number),
        Kind::InField => Number::InField(player),
        Kind::Decision => Number::Decision(player),
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
    let sum = evidence.iter().map(|piece| piece.amount).sum();
    let counted = if number.is_innings() { Outs(sum).to_string() } else { sum.to_string() };
    let teams = |side: Side| game.team_name(side).to_owned();
    writeln!(
        out,
        "{}",
        plain(&format!("{}: {counted}", sentences::number(number, Language::English, &names, &teams)))
    )?;
    for piece in &evidence {
        let half = account.halves.iter().find(|h| h.lines.iter().any(|l| l.entry == piece.entry));
        let when = half.map_or_else(String::new, |h| format!("{} {}", h.half, h.inning));
        let what =
            account.line(piece.entry).map_or_else(String::new, |line| sentences::line(line, Language::English, &names));
        let sign = match piece.amount {
            0 => "-".to_owned(),
            1 => "+".to_owned(),
            more => format!("+{more}"),
        };
        writeln!(out)?;
        writeln!(out, "{sign} {}", plain(&format!("{when}, entry {}: {what}", piece.entry.0)))?;
        writeln!(out, "    {}", plain(&sentences::heading(&piece.reason.ruled, Language::English, &names)))?;
        let rule = match piece.reason.rule {
            "custom" => "by custom, not by rule".to_owned(),
            section => format!("OBR {section}"),
        };
        writeln!(
            out,
            "    {}",
            plain(&format!("{} ({rule})", sentences::grounds(&piece.reason.because, Language::English)))
        )?;
    }
    Ok(ExitCode::SUCCESS)
}
