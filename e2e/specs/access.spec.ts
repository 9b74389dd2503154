/** WCAG 2.2 AA by axe at every place, and what only a browser can tell of large text and of motion. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { opening, openGame, runnersOn } from '../support/plate.ts';
import { spoiltWords } from '../support/text.ts';
import { light, PLACES, TOURS, type Place } from '../support/tour.ts';

test.use({ actionTimeout: 15_000, trace: 'off' });

const AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** Read at a glance, in the sun: there the contrast is 7:1. */
const DURING_PLAY: Place[] = ['plate', 'mound'];

for (const place of PLACES) {
  for (const shape of ['tablet', 'phone'] as const) {
    test(`axe finds nothing in the ${place} on a ${shape}, by day and by night`, async ({ page }) => {
      test.setTimeout(180_000);
      if (shape === 'phone') await page.setViewportSize({ width: 360, height: 740 });
      // Without the fade from one colour to the other.
      await page.emulateMedia({ reducedMotion: 'reduce' });
      let looks = 0;
      await TOURS[place](page, async (what) => {
        await light(page, 'day');
        expect(await violations(page, place), `${what}, day`).toEqual([]);
        await light(page, 'night');
        expect(await violations(page, place, 'colours'), `${what}, night`).toEqual([]);
        await light(page, 'day');
        looks += 1;
      });
      expect(looks).toBeGreaterThan(1);
    });
  }
}

/** What axe finds, in words. At night only what colours can spoil is looked at: all else is as by day. */
async function violations(page: Page, place: Place, only?: 'colours'): Promise<string[]> {
  const contrast = DURING_PLAY.includes(place) ? 'color-contrast-enhanced' : 'color-contrast';
  const builder = new AxeBuilder({ page });
  if (only) builder.withRules([contrast]);
  else builder.options({ runOnly: { type: 'tag', values: AA }, rules: { [contrast]: { enabled: true } } });
  const { violations, passes } = await builder.analyze();
  expect(passes.some(({ id }) => id === contrast)).toBe(true);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.any[0]?.message ?? node.all[0]?.message ?? node.none[0]?.message ?? ''}`),
  );
}

test('what is written on the field stands out seven to one from every ground of it', async ({ page }) => {
  await openGame(page, 'grounds', [...opening(), ...runnersOn('first')]);
  for (const value of ['day', 'night'] as const) {
    await light(page, value);
    const { least, compared } = await page.evaluate(() => {
      const luminance = (css: string) => {
        const [r, g, b] = (css.match(/[\d.]+/g) ?? []).map((part) => {
          const value = Number(part) / 255;
          return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
      };
      const all = (css: string) => [...document.querySelectorAll(css)].map((el) => getComputedStyle(el));
      const words = [...all('.token .name').map(({ color }) => color), ...all('.ground text').map(({ fill }) => fill)];
      const grounds = all('.ground :is(.foul, .fair, .dirt, .infield)').map(({ fill }) => fill);
      const ratios = words.flatMap((word) =>
        grounds.map((ground) => {
          const [a, b] = [luminance(word), luminance(ground)];
          return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        }),
      );
      return { least: Math.min(...ratios), compared: ratios.length };
    });
    expect(compared).toBeGreaterThan(30);
    expect(least, value).toBeGreaterThanOrEqual(7);
  }
});

for (const shape of ['tablet', 'phone'] as const) {
  test(`with text twice as large no word on the Plate of a ${shape} is cut off or lies over another`, async ({ page }) => {
    test.setTimeout(120_000);
    if (shape === 'phone') await page.setViewportSize({ width: 360, height: 740 });
    const faults: string[] = [];
    await TOURS.plate(page, async (what) => {
      await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
      faults.push(...(await spoiltWords(page, '.plate')).map((fault) => `${what}: ${fault}`));
      await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    });
    expect(faults).toEqual([]);
  });
}

test('nothing moves by itself where less motion is asked for', async ({ page }) => {
  const moving = () =>
    page.evaluate(() => {
      const found = new Set<string>();
      for (const el of document.querySelectorAll('body, body *')) {
        const { animationDuration, animationTimingFunction, transitionDuration, scrollBehavior } = getComputedStyle(el);
        // What appears late, in one step, doesn't move.
        const animated = animationTimingFunction.startsWith('steps') ? '0s' : animationDuration;
        const longest = Math.max(...`${animated}, ${transitionDuration}`.split(',').map(parseFloat));
        if (longest > 0 || scrollBehavior === 'smooth') found.add(el.className || el.tagName);
      }
      return [...found];
    });
  test.setTimeout(180_000);
  for (const place of PLACES) {
    const moved: string[] = [];
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await TOURS[place](page, async (what) => {
      moved.push(...(await moving()).map((el) => `${what}: ${el}`));
    });
    expect(moved, place).toEqual([]);
  }
  // So that the question is known to be able to find something.
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  expect(await moving()).not.toEqual([]);
});
