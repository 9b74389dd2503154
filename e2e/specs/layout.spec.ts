/**
 * Where everything stands at every place, at the three sizes, and in which colours by day and by night, compared with
 * what is committed in e2e/snapshots. Kept as text: pictures differ from machine to machine by fonts and by the version
 * of the browser; boxes of a page set in one made font (support/blocks.ts) don't. After a change that is meant:
 * `cargo xtask test --only browser -- specs/layout.spec.ts --update-snapshots`.
 */
import type { Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { inBlocks } from '../support/blocks.ts';
import { SHAPES } from '../support/settings.ts';
import { light, PLACES, TOURS, type Place } from '../support/tour.ts';

test.use({ actionTimeout: 15_000, trace: 'off' });

/** What is recorded of each walk: the rest is looked at by other tests. */
const LOOKS: Record<Place, string[]> = {
  clubhouse: ['empty', 'furnished'],
  card: ['filled in', 'reordering'],
  plate: ['waiting', 'tray', 'adjusting', 'runner', 'more pitches', 'players', 'umpire', 'asked'],
  mound: ['age'],
  book: ['box score', 'why', 'play by play', 'scoresheet'],
};

for (const place of PLACES) {
  for (const [shape, size] of Object.entries(SHAPES)) {
    test(`the layout of the ${place}, ${shape}`, async ({ page }) => {
      test.setTimeout(120_000);
      await page.setViewportSize(size);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await startAt(page, new Date('2026-06-13T12:00:05'));
      const text: string[] = [];
      await TOURS[place](page, async (what) => {
        if (!LOOKS[place].includes(what)) return;
        const style = await page.addStyleTag({ content: inBlocks() });
        await page.evaluate(() => document.fonts.load('16px Blocks'));
        await page.evaluate(() => scrollTo(0, 0));
        // A button shows for a moment that it was touched.
        await page.waitForFunction(() => !document.querySelector('body :active'));
        const boxes = await boxesOf(page);
        expect(boxes.length).toBeGreaterThan(5);
        text.push(`## ${what}`, ...boxes);
        for (const value of ['day', 'night'] as const) {
          await light(page, value);
          text.push(`# colours by ${value}`, ...(await coloursOf(page)));
        }
        await light(page, 'day');
        await style.evaluate((el) => el.parentNode!.removeChild(el));
      });
      expect(text.filter((line) => line.startsWith('## '))).toHaveLength(LOOKS[place].length);
      expect(`${text.join('\n')}\n`).toMatchSnapshot(`${place}-${shape}.txt`);
    });
  }
}

/** Has the page's time run on from there: games written one after the other have to be told apart by when. */
async function startAt(page: Page, time: Date): Promise<void> {
  await page.addInitScript((ahead) => {
    const now = () => performance.timeOrigin + performance.now() + ahead;
    window.Date = class extends Date {
      constructor(...given: unknown[]) {
        super(...((given.length > 0 ? given : [now()]) as [number]));
      }
      static override now(): number {
        return now();
      }
    } as DateConstructor;
  }, time.getTime() - Date.now());
}

/** Everything of its own: what names a part of the page, and every control that is not one of a long list. */
const THINGS = `.sign, main, main > *, h1, h2, h3, section, details, table, .field, .token, dialog[open],
  :is(button, input:not([type=file]), select, summary, a):not(:is(td, th, li.line, .square) *)`;

/** A line a thing: what it is, what it says, and its box in px, rounded. */
function boxesOf(page: Page): Promise<string[]> {
  return page.evaluate((things) => {
    /** Px: less than anybody would see, more than rounding makes. */
    const STEP = 4;
    const lines: string[] = [];
    for (const el of document.querySelectorAll<HTMLElement>(things)) {
      const box = el.getBoundingClientRect();
      if (!el.checkVisibility() || box.width === 0 || el.closest('.spoken')) continue;
      const round = (value: number) => Math.round(value / STEP) * STEP;
      const [kind] = el.classList;
      const leaf = el.matches('button, a, summary, h1, h2, h3, label');
      const says = leaf ? ` "${(el.innerText || el.ariaLabel || '').replace(/\s+/g, ' ').trim().slice(0, 32)}"` : '';
      const [x, y, width, height] = [box.left, box.top, box.width, box.height].map(round);
      lines.push(`${el.tagName.toLowerCase()}${kind ? `.${kind}` : ''}${says} ${x},${y} ${width}x${height}`);
    }
    return lines;
  }, THINGS);
}

/** Which colours letters and grounds have, and on how many kinds of things. */
function coloursOf(page: Page): Promise<string[]> {
  return page.evaluate((things) => {
    const pairs = new Map<string, Set<string>>();
    for (const el of document.querySelectorAll<HTMLElement>(things)) {
      if (!el.checkVisibility()) continue;
      const { color, backgroundColor, borderTopColor } = getComputedStyle(el);
      const pair = `${color} on ${backgroundColor} edged ${borderTopColor}`;
      const kind = `${el.tagName.toLowerCase()}${el.classList[0] ? `.${el.classList[0]}` : ''}`;
      pairs.set(pair, (pairs.get(pair) ?? new Set()).add(kind));
    }
    return [...pairs].map(([pair, kinds]) => `${pair}: ${[...kinds].sort().join(' ')}`).sort();
  }, THINGS);
}
