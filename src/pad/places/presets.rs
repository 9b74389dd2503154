//! The presets of the rules of play as a person reads them. The log keeps them as they were published, in English.

use benchbook_stats::code::{Code, Preset, presets};

use crate::words::say;

/// A preset's name.
pub fn name(preset: Preset) -> String {
    match preset {
        Preset::Baseball9 => say!("presets-baseball-9"),
        Preset::Baseball7 => say!("presets-baseball-7"),
        Preset::Youth6 => say!("presets-youth-6"),
        Preset::Fastpitch7 => say!("presets-fastpitch-7"),
        Preset::SlowPitch7 => say!("presets-slow-pitch-7"),
        Preset::CoachPitch => say!("presets-coach-pitch"),
    }
}

fn source(preset: Preset) -> String {
    match preset {
        Preset::Baseball9 => say!("presets-source-baseball"),
        Preset::Baseball7 => say!("presets-source-school"),
        Preset::Youth6 | Preset::CoachPitch => say!("presets-source-youth"),
        Preset::Fastpitch7 => say!("presets-source-fastpitch"),
        Preset::SlowPitch7 => say!("presets-source-slow-pitch"),
    }
}

/// What a code is called: a preset's name in the scorer's language, any other as it was written.
pub fn name_of(code: &Code) -> String {
    let preset = presets().into_iter().find(|preset| preset.code().name == code.name);
    preset.map_or_else(|| code.name.clone(), name)
}

/// Where a code comes from, likewise.
pub fn source_of(code: &Code) -> String {
    let preset = presets().into_iter().find(|preset| preset.code().source == code.source);
    preset.map_or_else(|| code.source.clone(), source)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn in_english_presets_read_as_the_log_has_them() {
        for preset in presets() {
            let code = preset.code();
            assert_eq!((name_of(&code), source_of(&code)), (code.name, code.source));
        }
    }
}
