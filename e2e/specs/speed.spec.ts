/** Time from a tap to the next painted frame, late in a game, on a slow device. Measured, not judged. */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';
import { OUT } from '../support/settings.ts';

/** The game as far as this entry; then taps on top of it. */
const ENTRY = 300;
const ROUNDS = 20;
/** How much slower than this machine the processor is made. */
const SLOWER = 4;

/** Times of one tap, in ms: its scripts, and until the frame that shows it is painted. */
interface Sample {
  script: number;
  frame: number;
}

test('a tap at entry 300, the processor four times slower', async ({ page }) => {
  test.setTimeout(5 * 60_000);
  await harbor(page, 'plate', ENTRY);
  await listen(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
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
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  expect(taps.pitch.length + taps.undo.length).toBe(2 * ROUNDS);
  for (const { script, frame } of [...taps.pitch, ...taps.undo]) {
    expect(script).toBeGreaterThan(0);
    expect(frame).toBeGreaterThanOrEqual(script);
  }
  const row = (samples: Sample[], of: keyof Sample) => summary(samples.map((sample) => sample[of]));
  const rows = {
    [`Tap to painted frame at entry ${ENTRY}, ${SLOWER}x slower`]: row(taps.pitch, 'frame'),
    [`Scripts of that tap`]: row(taps.pitch, 'script'),
    [`Undo to painted frame at entry ${ENTRY}, ${SLOWER}x slower`]: row(taps.undo, 'frame'),
    [`Scripts of that undo`]: row(taps.undo, 'script'),
  };
  mkdirSync(OUT, { recursive: true });
  writeFileSync(`${OUT}/trace.json`, JSON.stringify(rows, null, 2));
});

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
      script: number;
      frame: number;
    }
    addEventListener(
      'click',
      (event) => {
        const sample: Sample = { script: 0, frame: 0 };
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
