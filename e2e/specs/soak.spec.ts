/** Three games in one sitting, all by touch: what the first leaves behind must not have grown by the third. */
import type { CDPSession, Page } from '@playwright/test';
import { mkdirSync, writeFileSync } from 'node:fs';
import { drawn, expect, test, watchErrors } from '../support/app.ts';
import { allKept, drop, toClubhouse } from '../support/clubhouse.ts';
import { OUT } from '../support/settings.ts';
import { enter } from '../support/whole-game/enter.ts';
import { firstPitch, nameOf, paper, played, wanted } from '../support/whole-game/game.ts';
import { Hand } from '../support/whole-game/hand.ts';
import { plays } from '../support/whole-game/record.ts';

// A trace of a thousand touches costs more than the games.
test.use({ trace: 'off', actionTimeout: 30_000 });

const GAMES = ['First', 'Second', 'Third'];
/** How much more there may be after the third game than after the first. */
const MARGIN = {
  /** Bytes: what two more games on the shelf may take in scripts, and what the collector is slow to find. */
  scripts: 1_500_000,
  /** Bytes: memory of wasm comes in pages and is never given back. */
  wasm: 2_000_000,
  /** Nodes that are in no page any more and still held, or are the browser's own parts of the Clubhouse's controls. */
  detached: 150,
  /** Those of two more rows in the Clubhouse, and some. */
  listeners: 20,
};

type Size = Record<keyof typeof MARGIN, number>;

test('three games in one sitting leave no more behind than one', async ({ page }) => {
  test.setTimeout(10 * 60_000);
  const errors = watchErrors(page);
  await page.addInitScript(() =>
    addEventListener('TrunkApplicationStarted', (event) => Object.assign(window, { exports: (event as CustomEvent).detail.wasm })),
  );
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable');
  await page.goto('./');
  await drawn(page);
  const sizes: Size[] = [];
  const work: number[] = [];
  for (const game of GAMES) {
    work.push(median(await scored(page, game, devtools)));
    await toClubhouse(page);
    sizes.push(await size(page, devtools));
  }
  mkdirSync(OUT, { recursive: true });
  const [first, , third] = sizes;
  const more = Object.fromEntries(Object.keys(MARGIN).map((what) => [what, third![what as keyof Size] - first![what as keyof Size]]));
  const told = { sizes, more, 'ms of work for a pitch, median of a game': work.map((ms) => Number(ms.toFixed(2))) };
  writeFileSync(`${OUT}/soak.json`, JSON.stringify(told, null, 1));
  console.log(JSON.stringify(told));
  for (const [what, margin] of Object.entries(MARGIN)) expect(more[what], what).toBeLessThanOrEqual(margin);
  for (const value of Object.values(first!)) expect(value).toBeGreaterThan(0);
  expect(errors).toEqual([]);
});

/** Scores the whole game from the cards on, and gives the work of every pitch that is one tap: ms. */
async function scored(page: Page, game: string, devtools: CDPSession): Promise<number[]> {
  const id = `soak-${game.toLowerCase()}`;
  const log = JSON.stringify(paper.log.slice(0, firstPitch())).replaceAll('Millrace Otters', `${game} Otters`);
  const text = `{"format":"benchbook.game","version":1,"id":"${id}","log":${log}}`;
  await drop(page, text);
  await page.getByRole('link', { name: `Open ${game} Otters at Pier Nine Lanterns` }).tap();
  await expect(page.locator('.plate-board')).toBeVisible();
  const hand = new Hand(page, id);
  const work: number[] = [];
  for (const { event } of played()) {
    const before = await taskMs(devtools);
    hand.reset();
    await enter(hand, event, nameOf);
    if (typeof event === 'object' && event.pitch && hand.taps === 1) work.push((await taskMs(devtools)) - before);
  }
  await allKept(page);
  expect(plays(await hand.entries())).toEqual(wanted());
  return work;
}

async function metrics(devtools: CDPSession): Promise<Map<string, number>> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return new Map(metrics.map(({ name, value }) => [name, value]));
}

/** All work of the page's main thread so far: ms. */
async function taskMs(devtools: CDPSession): Promise<number> {
  return ((await metrics(devtools)).get('TaskDuration') ?? NaN) * 1000;
}

async function size(page: Page, devtools: CDPSession): Promise<Size> {
  // What one collection frees may hold what the next one frees.
  for (let i = 0; i < 3; i += 1) {
    await devtools.send('HeapProfiler.collectGarbage');
    await page.waitForTimeout(200);
  }
  const now = await metrics(devtools);
  const { wasm, shown } = await page.evaluate(() => {
    const { memory } = (window as unknown as { exports: { memory: WebAssembly.Memory } }).exports;
    const nodes = document.createTreeWalker(document, NodeFilter.SHOW_ALL);
    let shown = 1;
    while (nodes.nextNode()) shown += 1;
    return { wasm: memory.buffer.byteLength, shown };
  });
  const of = (name: string) => now.get(name) ?? NaN;
  return { scripts: of('JSHeapUsedSize'), wasm, detached: of('Nodes') - shown, listeners: of('JSEventListeners') };
}

function median(numbers: number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}
