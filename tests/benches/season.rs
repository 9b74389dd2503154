//! A season of 10,000 games from their files to every line, on all cores; beside it the bare reading of the same JSON,
//! which is the limit.

use std::hint::black_box;
use std::time::Duration;

use benchbook_stats::file;
use benchbook_stats::game::Game;
use criterion::{Criterion, SamplingMode, Throughput, criterion_group, criterion_main};
use rayon::prelude::*;
use serde::de::IgnoredAny;

const FILE: &str = include_str!("../games/harbor-league.benchbook.json");
const GAMES: usize = 10_000;

fn season(c: &mut Criterion) {
    let mut group = c.benchmark_group("season");
    group.sample_size(10).sampling_mode(SamplingMode::Flat).measurement_time(Duration::from_secs(30));
    group.throughput(Throughput::Bytes((FILE.len() * GAMES) as u64));
    group.bench_function("lines_of_10000_games", |b| {
        b.iter(|| {
            (0..GAMES)
                .into_par_iter()
                .map(|_| {
                    let game = Game::replay(file::read(black_box(FILE)).expect("whole").log);
                    game.box_score().sides[0].batting_total.hits
                })
                .sum::<u32>()
        });
    });
    group.bench_function("json_of_10000_games_alone", |b| {
        b.iter(|| {
            (0..GAMES)
                .into_par_iter()
                .map(|_| serde_json::from_str::<IgnoredAny>(black_box(FILE)).map(|_| 1).expect("JSON"))
                .sum::<u32>()
        });
    });
    group.finish();
}

criterion_group!(benches, season);
criterion_main!(benches);
