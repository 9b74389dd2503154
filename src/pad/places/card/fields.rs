//! Every single-valued rule of play: its words, and how to read and write it. Lists have forms of their own.

use benchbook_stats::code::{Code, RunLimit, TieBreak};
use benchbook_stats::field::Base;

use crate::words::say;

/// A rule's value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Value {
    /// Yes or no.
    Yes(bool),
    /// A whole number.
    Whole(u16),
    /// A whole number, or none.
    Maybe(Option<u16>),
    /// Tenths of a foot or an inch, or none: written as whole ones.
    Tenths(Option<u16>),
}

/// One rule.
pub struct Field {
    /// What it says.
    pub says: fn() -> String,
    /// Reads it.
    pub get: fn(&Code) -> Value,
    /// Writes it.
    pub set: fn(&mut Code, Value),
}

impl Value {
    /// As a text field shows it; empty for none.
    pub fn written(self) -> String {
        match self {
            Self::Yes(_) | Self::Maybe(None) | Self::Tenths(None) => String::new(),
            Self::Whole(n) | Self::Maybe(Some(n)) => n.to_string(),
            Self::Tenths(Some(n)) if n % 10 == 0 => (n / 10).to_string(),
            Self::Tenths(Some(n)) => format!("{}.{}", n / 10, n % 10),
        }
    }

    /// What somebody wrote in the field of this value; `None` if it can't be read so.
    pub fn read(self, text: &str) -> Option<Self> {
        let text = text.trim();
        match self {
            Self::Yes(_) => None,
            Self::Whole(_) => text.parse().ok().map(Self::Whole),
            Self::Maybe(_) if text.is_empty() => Some(Self::Maybe(None)),
            Self::Maybe(_) => text.parse().ok().map(|n| Self::Maybe(Some(n))),
            Self::Tenths(_) if text.is_empty() => Some(Self::Tenths(None)),
            Self::Tenths(_) => {
                let (feet, tenth) = text.split_once(['.', ',']).unwrap_or((text, "0"));
                let tenths = feet.parse::<u16>().ok()?.checked_mul(10)?;
                let tenth = tenth.parse::<u16>().ok().filter(|t| *t < 10)?;
                Some(Self::Tenths(tenths.checked_add(tenth)))
            }
        }
    }

    const fn yes(self) -> bool {
        matches!(self, Self::Yes(true))
    }

    fn small(self) -> Option<u8> {
        match self {
            Self::Whole(n) | Self::Maybe(Some(n)) => Some(u8::try_from(n).unwrap_or(u8::MAX)),
            _ => None,
        }
    }

    const fn large(self) -> Option<u16> {
        match self {
            Self::Maybe(n) | Self::Tenths(n) => n,
            Self::Whole(n) => Some(n),
            Self::Yes(_) => None,
        }
    }

    /// At least 1.
    fn counted(self) -> u8 {
        self.small().unwrap_or(1).max(1)
    }
}

macro_rules! yes {
    ($says:expr, $field:ident) => {
        Field { says: || $says, get: |c| Value::Yes(c.$field), set: |c, v| c.$field = v.yes() }
    };
}

macro_rules! placed {
    ($says:expr, $base:expr) => {
        Field { says: || $says, get: |c| Value::Yes(is_placed(c, $base)), set: |c, v| place(c, $base, v.yes()) }
    };
}

/// All of them, in the order of the form.
pub const FIELDS: [Field; 33] = [
    Field {
        says: || say!("card-rule-innings"),
        get: |c| Value::Whole(c.innings.into()),
        set: |c, v| c.innings = v.counted().min(30),
    },
    Field {
        says: || say!("card-rule-fielders"),
        get: |c| Value::Whole(c.fielders.into()),
        set: |c, v| c.fielders = v.counted().clamp(9, 10),
    },
    yes!(say!("card-rule-players-pitch"), players_pitch),
    Field {
        says: || say!("card-rule-balls-for-walk"),
        get: |c| Value::Maybe(c.balls_for_walk.map(Into::into)),
        set: |c, v| c.balls_for_walk = v.small().filter(|n| *n > 0),
    },
    Field {
        says: || say!("card-rule-strikes-for-out"),
        get: |c| Value::Whole(c.strikes_for_out.into()),
        set: |c, v| c.strikes_for_out = v.counted(),
    },
    Field {
        says: || say!("card-rule-starting-balls"),
        get: |c| Value::Whole(c.starting_count.balls.into()),
        set: |c, v| {
            c.starting_count.balls = v.small().unwrap_or(0).min(c.balls_for_walk.unwrap_or(9).saturating_sub(1));
        },
    },
    Field {
        says: || say!("card-rule-starting-strikes"),
        get: |c| Value::Whole(c.starting_count.strikes.into()),
        set: |c, v| c.starting_count.strikes = v.small().unwrap_or(0).min(c.strikes_for_out.saturating_sub(1)),
    },
    yes!(say!("card-rule-foul-third-strike"), foul_is_third_strike),
    yes!(say!("card-rule-dropped-third"), dropped_third_strike),
    yes!(say!("card-rule-stealing"), stealing),
    Field {
        says: || say!("card-rule-run-limit"),
        get: |c| Value::Maybe(c.run_limit.map(|l| l.runs.into())),
        set: |c, v| {
            let open_last_inning = c.run_limit.is_none_or(|l| l.open_last_inning);
            c.run_limit = v.small().filter(|n| *n > 0).map(|runs| RunLimit { runs, open_last_inning });
        },
    },
    Field {
        says: || say!("card-rule-run-limit-open"),
        get: |c| Value::Yes(c.run_limit.is_some_and(|l| l.open_last_inning)),
        set: |c, v| {
            if let Some(limit) = &mut c.run_limit {
                limit.open_last_inning = v.yes();
            }
        },
    },
    Field {
        says: || say!("card-rule-tie-break"),
        get: |c| Value::Maybe(c.tie_break.as_ref().map(|t| t.from_inning.into())),
        set: |c, v| {
            let bases = c.tie_break.take().map_or_else(|| vec![Base::Second], |t| t.bases);
            c.tie_break = v.small().filter(|n| *n > 0).map(|from_inning| TieBreak { from_inning, bases });
        },
    },
    placed!(say!("card-rule-placed-first"), Base::First),
    placed!(say!("card-rule-placed-second"), Base::Second),
    placed!(say!("card-rule-placed-third"), Base::Third),
    yes!(say!("card-rule-courtesy-runner"), courtesy_runner),
    yes!(say!("card-rule-continuous"), continuous_order),
    yes!(say!("card-rule-designated-hitter"), designated_hitter),
    Field {
        says: || say!("card-rule-extra-hitters"),
        get: |c| Value::Whole(c.extra_hitters.into()),
        set: |c, v| c.extra_hitters = v.small().unwrap_or(0).min(20),
    },
    yes!(say!("card-rule-empty-place"), missing_batter_is_out),
    Field {
        says: || say!("card-rule-time-limit"),
        get: |c| Value::Maybe(c.time_limit_minutes),
        set: |c, v| c.time_limit_minutes = v.large(),
    },
    Field {
        says: || say!("card-rule-pitch-limit"),
        get: |c| Value::Maybe(c.pitch_limit),
        set: |c, v| c.pitch_limit = v.large(),
    },
    Field {
        says: || say!("card-rule-base-paths"),
        get: |c| Value::Maybe(c.base_path_feet),
        set: |c, v| c.base_path_feet = v.large(),
    },
    Field {
        says: || say!("card-rule-pitching-distance"),
        get: |c| Value::Tenths(c.pitching_distance_tenths),
        set: |c, v| c.pitching_distance_tenths = v.large(),
    },
    Field {
        says: || say!("card-rule-mandatory-outs"),
        get: |c| Value::Maybe(c.mandatory_outs),
        set: |c, v| c.mandatory_outs = v.large(),
    },
    Field {
        says: || say!("card-rule-mandatory-at-bats"),
        get: |c| Value::Maybe(c.mandatory_at_bats),
        set: |c, v| c.mandatory_at_bats = v.large(),
    },
    Field {
        says: || say!("card-rule-ball"),
        get: |c| Value::Tenths(c.ball_tenths),
        set: |c, v| c.ball_tenths = v.large(),
    },
    Field {
        says: || say!("card-rule-bat-length"),
        get: |c| Value::Tenths(c.bat_length_tenths),
        set: |c, v| c.bat_length_tenths = v.large(),
    },
    Field {
        says: || say!("card-rule-bat-barrel"),
        get: |c| Value::Maybe(c.bat_barrel_hundredths),
        set: |c, v| c.bat_barrel_hundredths = v.large(),
    },
    yes!(say!("card-rule-wooden-bats"), wooden_bats_only),
    Field {
        says: || say!("card-rule-arc-from"),
        get: |c| Value::Maybe(c.arc_from_feet),
        set: |c, v| c.arc_from_feet = v.large(),
    },
    Field {
        says: || say!("card-rule-arc-to"),
        get: |c| Value::Maybe(c.arc_to_feet),
        set: |c, v| c.arc_to_feet = v.large(),
    },
];

fn is_placed(code: &Code, base: Base) -> bool {
    code.tie_break.as_ref().is_some_and(|t| t.bases.contains(&base))
}

/// Nearest first: the batter before the leadoff stands furthest back.
fn place(code: &mut Code, base: Base, placed: bool) {
    if let Some(tie_break) = &mut code.tie_break {
        tie_break.bases.retain(|b| *b != base);
        if placed {
            tie_break.bases.push(base);
            tie_break.bases.sort_unstable();
        }
    }
}

/// How many rules of `code` differ from those of `other`, the lists counted as one each.
pub fn differences(code: &Code, other: &Code) -> usize {
    let fields = FIELDS.iter().filter(|f| (f.get)(code) != (f.get)(other)).count();
    fields + usize::from(code.reentry != other.reentry) + usize::from(code.mercy != other.mercy)
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::{Preset, presets};

    use super::*;

    #[test]
    fn every_rule_of_every_preset_is_written_back_as_it_was_read() {
        for preset in presets() {
            let mut code = preset.code();
            for field in &FIELDS {
                let value = (field.get)(&code);
                (field.set)(&mut code, value);
                if !matches!(value, Value::Yes(_)) {
                    assert_eq!(value.read(&value.written()), Some(value), "{}", (field.says)());
                }
            }
            assert_eq!(code, preset.code());
        }
    }

    #[test]
    fn what_cannot_be_read_is_no_rule() {
        assert_eq!(Value::Whole(6).read("six"), None);
        assert_eq!(Value::Maybe(None).read(""), Some(Value::Maybe(None)));
        assert_eq!(Value::Tenths(None).read("60,5"), Some(Value::Tenths(Some(605))));
        assert_eq!(Value::Tenths(None).read("46"), Some(Value::Tenths(Some(460))));
    }

    #[test]
    fn presets_differ_by_what_was_changed() {
        let mut code = Preset::Youth6.code();
        assert_eq!(differences(&code, &Preset::Youth6.code()), 0);
        code.pitch_limit = Some(85);
        place(&mut code, Base::First, true);
        assert_eq!(differences(&code, &Preset::Youth6.code()), 1, "without a tie-break nobody is placed");
    }
}
