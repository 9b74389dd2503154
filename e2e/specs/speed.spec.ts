/** Time from a tap to the next painted frame, late in a game and over a whole one, on a slow device. Measured, not judged. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { CDPSession, Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';
import { openGame } from '../support/plate.ts';
import { OUT } from '../support/settings.ts';
import { enter } from '../support/whole-game/enter.ts';
import { firstPitch, nameOf, paper, played, wanted } from '../support/whole-game/game.ts';
import { Hand } from '../support/whole-game/hand.ts';
import { plays } from '../support/whole-game/record.ts';

// A trace costs more than the taps.
test.use({ trace: 'off', actionTimeout: 60_000 });

/** The game as far as this entry; then taps on top of it. */
const ENTRY = 300;
const ROUNDS = 20;
/** How much slower than this machine the processor is made. */
const SLOWER = 4;

/** Times of one tap, in ms: its scripts, and until the frame that shows it is painted. */
interface Sample {
  /** What was tapped. */
  on: string;
  script: number;
  frame: number;
}

test('a tap at entry 300, the processor four times slower', async ({ page }) => {
  test.setTimeout(5 * 60_000);
  await harbor(page, 'plate', ENTRY);
  await listen(page);
  const devtools = await page.context().newCDPSession(page);
  await slow(devtools, SLOWER);
  const ball = page.locator('.pitch[data-call="Ball"]');
  const undo = page.locator('.corner.undo');
  const taps: Record<'pitch' | 'undo', Sample[]> = { pitch: [], undo: [] };
  // The first of each compiles code and is no measure of what follows.
  await measured(page, () => ball.tap());
  await measured(page, () => undo.tap());
  for (let round = 0; round < ROUNDS; round += 1) {
    taps.pitch.push(await measured(page, () => ball.tap()));
    taps.undo.push(await measured(page, () => undo.tap()));
  }
  await slow(devtools, 1);
  expect(taps.pitch.length + taps.undo.length).toBe(2 * ROUNDS);
  for (const { script, frame } of [...taps.pitch, ...taps.undo]) {
    expect(script).toBeGreaterThan(0);
    expect(frame).toBeGreaterThanOrEqual(script);
  }
  const row = (samples: Sample[], of: 'script' | 'frame') => summary(samples.map((sample) => sample[of]));
  leave({
    [`Tap to painted frame at entry ${ENTRY}, ${SLOWER}x slower`]: row(taps.pitch, 'frame'),
    [`Scripts of that tap`]: row(taps.pitch, 'script'),
    [`Undo to painted frame at entry ${ENTRY}, ${SLOWER}x slower`]: row(taps.undo, 'frame'),
    [`Scripts of that undo`]: row(taps.undo, 'script'),
  });
});

test('every tap of a whole game, the processor four times slower @figures', async ({ page }) => {
  test.setTimeout(20 * 60_000);
  const game = 'slow';
  await openGame(page, game, paper.log.slice(0, firstPitch()).map(({ event }) => event));
  await listen(page);
  const devtools = await page.context().newCDPSession(page);
  await slow(devtools, SLOWER);
  const hand = new Hand(page, game);
  for (const { event } of played()) await enter(hand, event, nameOf);
  await slow(devtools, 1);
  expect(plays(await hand.entries())).toEqual(wanted());
  const times = await page.evaluate(() => (window as unknown as { times: Sample[] }).times);
  // Every entry takes a tap or more.
  expect(times.length).toBeGreaterThan(played().length);
  const slowest = [...times].sort((a, b) => b.frame - a.frame).slice(0, 5);
  console.log(`slowest: ${slowest.map(({ on, frame }) => `${on} ${frame.toFixed(0)} ms`).join(', ')}`);
  leave({
    [`Tap to painted frame, every tap of a whole game, ${SLOWER}x slower`]: summary(times.map(({ frame }) => frame)),
    [`Scripts of those taps`]: summary(times.map(({ script }) => script)),
  });
});

const slow = (devtools: CDPSession, rate: number) => devtools.send('Emulation.setCPUThrottlingRate', { rate });

/** Adds rows to the table of figures. */
function leave(rows: Record<string, string>): void {
  const file = `${OUT}/trace.json`;
  const before = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as object) : {};
  mkdirSync(OUT, { recursive: true });
  writeFileSync(file, JSON.stringify({ ...before, ...rows }, null, 2));
}

function summary(times: number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) => (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0).toFixed(1);
  return `${at(0.5)} ms median, ${at(0.95)} ms p95, ${at(1)} ms worst of ${sorted.length}`;
}

/** From now on the page times each tap: scripts run between the click's first and last listener and what they queue. */
async function listen(page: Page): Promise<void> {
  await page.evaluate(() => {
    const times: Sample[] = [];
    Object.assign(window, { times });
    interface Sample {
      on: string;
      script: number;
      frame: number;
    }
    addEventListener(
      'click',
      (event) => {
        const control = (event.target as Element).closest('button');
        const sample: Sample = { on: control?.className ?? 'the grass', script: 0, frame: 0 };
        const start = performance.now();
        const inNextTask = (then: () => void) => {
          const channel = new MessageChannel();
          channel.port1.onmessage = then;
          channel.port2.postMessage(undefined);
        };
        // Effects of the signals run as microtasks of the click: by the next task they are done.
        inNextTask(() => {
          sample.script = performance.now() - start;
        });
        requestAnimationFrame(() => {
          // Painted, once the task after the frame's own scripts runs.
          inNextTask(() => {
            sample.frame = performance.now() - event.timeStamp;
            times.push(sample);
          });
        });
      },
      true,
    );
  });
}

async function measured(page: Page, tap: () => Promise<void>): Promise<Sample> {
  const before = await count(page);
  await tap();
  await expect.poll(() => count(page)).toBe(before + 1);
  return page.evaluate(() => (window as unknown as { times: Sample[] }).times.at(-1)!);
}

function count(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as { times: unknown[] }).times.length);
}
