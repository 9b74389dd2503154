/** The pictures of the README, taken of the paper game in e2e/pictures/. */
import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';
import { packed } from '../support/png.ts';

const FOLDER = fileURLToPath(new URL('../pictures', import.meta.url));
/** A picture in a repository stays small: bytes. */
const LIMIT = 150_000;

/** Last of the eighth, two on and a pinch hitter up, who stands for the tying runs. */
const EIGHTH = 292;
/** A runner on first and a strike on the batter, before a ground ball to short. */
const DOUBLE_PLAY = 82;

interface Picture {
  room: 'plate' | 'book' | 'mound' | 'clubhouse';
  width: number;
  height: number;
  entries?: number;
  touch?: (page: Page) => Promise<void>;
}

const touched = async (page: Page): Promise<void> => {
  for (const fielder of [6, 4, 3]) await page.locator(`.token.at-${fielder}`).tap();
  await expect(page.locator('.outcome').first()).toContainText('Double play 6-4-3');
};

const PICTURES: Picture[] = [
  { room: 'plate', width: 820, height: 1180, entries: DOUBLE_PLAY, touch: touched },
  { room: 'plate', width: 1180, height: 820, entries: EIGHTH },
  { room: 'plate', width: 360, height: 740, entries: EIGHTH },
  { room: 'book', width: 820, height: 1180 },
  { room: 'mound', width: 1180, height: 820, entries: EIGHTH },
  { room: 'clubhouse', width: 820, height: 1180, entries: EIGHTH },
];

for (const { room, width, height, entries, touch } of PICTURES) {
  const name = `${room}-${width}x${height}.png`;
  test(name, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await open(page, room, entries);
    await touch?.(page);
    mkdirSync(FOLDER, { recursive: true });
    const path = `${FOLDER}/${name}`;
    const taken = await page.screenshot({ animations: 'disabled', caret: 'hide' });
    const small = packed(taken);
    expect(await pixels(page, small)).toEqual(await pixels(page, taken));
    writeFileSync(path, small);
    expect(statSync(path).size).toBeGreaterThan(5_000);
    expect(statSync(path).size).toBeLessThan(LIMIT);
  });
}

async function open(page: Page, room: Picture['room'], entries?: number): Promise<void> {
  await harbor(page, room === 'clubhouse' ? 'plate' : room, entries);
  if (room !== 'clubhouse') return;
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Clubhouse' }).tap();
  await expect(page.locator('.game .open')).toBeVisible();
}

/** A picture's size, and a sum over its pixels that changes when one of them does. */
function pixels(page: Page, png: Buffer): Promise<number[]> {
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes]));
    const { width, height } = bitmap;
    const paper = new OffscreenCanvas(width, height).getContext('2d')!;
    paper.drawImage(bitmap, 0, 0);
    const { data } = paper.getImageData(0, 0, width, height);
    return [width, height, data.reduce((sum, value, i) => (sum * 31 + value + i) % 1_000_000_007, 0)];
  }, png.toString('base64'));
}
