//! Replay of one whole game from its log, one more entry on top of it, its lines, and its file: in one run, so that
//! the figures compare.

use std::hint::black_box;

use benchbook_stats::file;
use benchbook_stats::game::Game;
use benchbook_stats::log::{Entry, Event};
use criterion::{BatchSize, Criterion, Throughput, criterion_group, criterion_main};

const FILE: &str = include_str!("../games/harbor-league.benchbook.json");

fn log() -> Vec<Entry> {
    file::read(FILE).expect("the game file is whole").log
}

fn replay(c: &mut Criterion) {
    let log = log();
    let mut group = c.benchmark_group("game");
    group.throughput(Throughput::Elements(log.len() as u64));
    group.bench_function("replay", |b| b.iter_batched(|| log.clone(), Game::replay, BatchSize::SmallInput));
    group.bench_function("record_each", |b| {
        b.iter_batched(
            || log.clone(),
            |log| {
                let mut game = Game::new();
                for entry in log {
                    game.record(entry).expect("every entry fits");
                }
                game
            },
            BatchSize::SmallInput,
        );
    });
    group.finish();

    let mut group = c.benchmark_group("on_top");
    let last_pitch = log.iter().rposition(|e| matches!(e.event, Event::Pitch(_))).expect("a pitch was thrown");
    let game = Game::replay(log[..last_pitch].to_vec());
    let entry = log[last_pitch].clone();
    group.bench_function("one_more_entry", |b| {
        b.iter_batched(
            || (game.clone(), entry.clone()),
            |(mut game, entry)| {
                game.record(entry).expect("the entry fits");
                game
            },
            BatchSize::SmallInput,
        );
    });
    let whole = Game::replay(log.clone());
    group.bench_function("box_score", |b| b.iter(|| black_box(&whole).box_score()));
    group.bench_function("undo", |b| {
        b.iter_batched(
            || whole.clone(),
            |mut game| {
                let event = game.undo().expect("there is something to undo");
                let id = game.next_id();
                game.record(Entry { id, at: None, event }).expect("undo fits");
                game
            },
            BatchSize::SmallInput,
        );
    });
    group.finish();

    let mut group = c.benchmark_group("file");
    group.throughput(Throughput::Bytes(FILE.len() as u64));
    group.bench_function("read", |b| b.iter(|| file::read(black_box(FILE)).expect("whole")));
    group.bench_function("serde_json_value", |b| {
        b.iter(|| serde_json::from_str::<serde_json::Value>(black_box(FILE)).expect("JSON"));
    });
    let game_file = file::read(FILE).expect("whole");
    group.bench_function("write", |b| b.iter(|| file::write(black_box(&game_file))));
    group.finish();
}

criterion_group!(benches, replay);
criterion_main!(benches);
