import { appendFileSync } from 'node:fs';
import { drawn, expect, keptOffline, test, watchErrors } from '../support/app.ts';
import { bring, keeping, startGame, toClubhouse } from '../support/clubhouse.ts';
import type { Page } from '@playwright/test';

/** The Clubhouse with a game on the list, one thrown away and one set aside. */
async function furnished(page: Page): Promise<void> {
  const broken = await startGame(page, { visitors: 'Quarry Hill', home: 'Old Orchard' });
  await toClubhouse(page);
  await startGame(page, { visitors: 'Tidewater Terns', home: 'Mill Lane' });
  await toClubhouse(page);
  await page.getByRole('button', { name: 'Throw away Tidewater Terns at Mill Lane' }).tap();
  await startGame(page, { visitors: 'Harbor Herons', home: 'Mill Lane Foxes' });
  await toClubhouse(page);
  await page.evaluate((name) => localStorage.setItem(`benchbook.game.${name}`, 'damaged'), broken);
  await page.getByRole('link', { name: 'Open Quarry Hill at Old Orchard' }).tap();
  await expect(page.locator('.sign .kept')).toBeVisible();
  await toClubhouse(page);
  await expect(page.locator('.aside')).toHaveCount(1);
  await page.getByText('Thrown away (1)').tap();
}

const widerThanScreen = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Whatever can be tapped and is smaller than a thumb needs, in CSS px. */
const tooSmall = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a, select, summary, .button, input:not(.spoken)')]
      .map((control) => ({ words: control.textContent?.trim().slice(0, 30), box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 48 || box.height < 48))
      .map(({ words, box }) => `${words}: ${Math.round(box.width)}x${Math.round(box.height)}`),
  );

test('the Clubhouse fits every shape, by day and by night, and with large text @shapes', async ({
  page,
  picture,
}, { project }) => {
  const errors = watchErrors(page);
  await page.goto('./');
  await drawn(page);
  await expect(page.getByText('No game yet')).toBeVisible();
  await picture(`clubhouse-empty-${project.name}`);
  await furnished(page);
  expect(await widerThanScreen(page)).toBe(0);
  expect(await tooSmall(page)).toEqual([]);
  await picture(`clubhouse-day-${project.name}`);
  await page.getByRole('button', { name: 'Night' }).tap();
  await picture(`clubhouse-night-${project.name}`);
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  expect(await widerThanScreen(page)).toBe(0);
  await picture(`clubhouse-large-text-${project.name}`);
  expect(errors).toEqual([]);
});

test('the sign to the other places fits, with room for the mark @shapes', async ({ page }) => {
  await page.goto('./');
  await startGame(page);
  const overflow = await page.locator('.sign').evaluate((sign) => sign.scrollWidth - sign.clientWidth);
  expect(overflow).toBe(0);
  await expect(page.locator('.sign .kept')).toBeInViewport({ ratio: 1 });
});

test('what is read stands out from its ground seven to one, by day and by night', async ({ page }) => {
  // Without the fade from one colour to the other.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('./');
  await furnished(page);
  for (const light of ['day', 'night']) {
    await page.evaluate((value) => (document.documentElement.dataset.light = value), light);
    const faint = await page.evaluate(() => {
      const channels = (css: string) => (css.match(/[\d.]+/g) ?? []).map(Number);
      const over = (top: number[], ground: number[]) => {
        const alpha = top[3] ?? 1;
        return [0, 1, 2].map((i) => (top[i] ?? 0) * alpha + (ground[i] ?? 0) * (1 - alpha));
      };
      const luminance = (rgb: number[]) => {
        const linear = rgb.map((value) => {
          const part = value / 255;
          return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * (linear[0] ?? 0) + 0.7152 * (linear[1] ?? 0) + 0.0722 * (linear[2] ?? 0);
      };
      const ground = (element: Element): number[] => {
        const chain: Element[] = [];
        for (let at: Element | null = element; at; at = at.parentElement) chain.unshift(at);
        return chain.reduce((below, at) => over(channels(getComputedStyle(at).backgroundColor), below), [255, 255, 255]);
      };
      const found: string[] = [];
      for (const element of document.querySelectorAll('.clubhouse *')) {
        const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
        if (!own || element.closest('svg')) continue;
        const below = ground(element);
        const [a, b] = [luminance(over(channels(getComputedStyle(element).color), below)), luminance(below)];
        const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        if (ratio < 7) found.push(`${element.className || element.tagName}: ${ratio.toFixed(1)}`);
      }
      return found;
    });
    expect(faint, light).toEqual([]);
  }
});

test('a new version is offered in the Clubhouse, not at the Plate, and starts when asked', async ({
  page,
  copy,
  host,
}) => {
  const server = await host({ folder: copy.folder });
  await page.goto(server.url);
  await keptOffline(page);
  await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
  appendFileSync(`${copy.folder}/register.js`, '\n// another version\n');
  copy.list();
  await page.reload();
  await page.waitForFunction(() => Boolean((window as unknown as { benchbookUpdate?: object }).benchbookUpdate));
  await expect(page.locator('.sign .kept')).toBeVisible();
  await expect(page.getByText('A new version of Benchbook is ready')).toHaveCount(0);

  await toClubhouse(page);
  await expect(page.getByText('A new version of Benchbook is ready')).toBeVisible();
  await Promise.all([
    page.waitForEvent('load'),
    page.getByRole('button', { name: 'Start the new version' }).tap(),
  ]);
  await expect(page.locator('.game')).toContainText('Harbor');
  await expect(page.getByText('A new version of Benchbook is ready')).toHaveCount(0);
});

test('where the browser has a share sheet, it gets the game file', async ({ page }) => {
  await page.addInitScript(() => {
    const shared: { name: string; text: string }[] = [];
    Object.assign(window, { shared });
    Object.assign(navigator, {
      canShare: () => true,
      share: async ({ files }: { files: File[] }) => {
        for (const file of files) shared.push({ name: file.name, text: await file.text() });
      },
    });
  });
  await page.goto('./');
  await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
  await toClubhouse(page);
  await page.getByRole('button', { name: 'Share' }).tap();
  const shared = () =>
    page.evaluate(() => (window as unknown as { shared: { name: string; text: string }[] }).shared);
  await expect.poll(async () => (await shared()).length).toBe(1);
  const [file] = await shared();
  expect(file?.name).toMatch(/-Harbor-at-Mill-Lane\.benchbook\.json$/);
  expect(JSON.parse(file?.text ?? '')).toMatchObject({ format: 'benchbook.game', version: 1 });
});

test('the offer to install is passed on, once', async ({ page }) => {
  await page.goto('./');
  await drawn(page);
  await expect(page.locator('.safety')).toContainText('Not installed');
  await page.evaluate(() => {
    const offer = new Event('beforeinstallprompt', { cancelable: true });
    Object.assign(offer, { prompt: () => Object.assign(window, { asked: true }) });
    window.dispatchEvent(offer);
  });
  await page.getByRole('button', { name: 'Install on this device' }).tap();
  expect(await page.evaluate(() => (window as unknown as { asked?: boolean }).asked)).toBe(true);
  await expect(page.getByRole('button', { name: 'Install on this device' })).toHaveCount(0);
});

test('a browser that clears what it keeps after a week says so until it is on the home screen', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(navigator, 'vendor', { value: 'Apple Computer, Inc.' }));
  await page.goto('./');
  await expect(page.locator('.safety .notice')).toContainText('after seven days without a visit');
  await page.addInitScript(() => Object.defineProperty(navigator, 'standalone', { value: true }));
  await page.reload();
  await expect(page.locator('.safety')).toContainText('Benchbook is installed');
  await expect(page.locator('.safety .notice')).toHaveCount(0);
});

test('a browser without a promise, a share sheet, locks or channels still keeps a game', async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ['storage', 'locks', 'share', 'canShare']) {
      Object.defineProperty(navigator, name, { value: undefined });
    }
    Reflect.deleteProperty(window, 'BroadcastChannel');
  });
  const errors = watchErrors(page);
  await page.goto('./');
  await expect(page.locator('.safety')).toContainText("The browser doesn't say whether it clears");
  await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
  await expect.poll(async () => (await keeping(page)).kept).toBeGreaterThan(0);
  const { recorded } = await keeping(page);
  await page.reload();
  await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
  expect(errors).toEqual([]);
});

test('a game opens where its scorer goes on', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Fill in the cards first' }).tap();
  await expect(page).toHaveURL(/\/card$/);
  await toClubhouse(page);
  await page.getByRole('link', { name: 'Open Visitors at Home' }).tap();
  await expect(page).toHaveURL(/\/card$/);
  await toClubhouse(page);
  const over =
    '{"format":"benchbook.game","version":1,"id":"over","log":[' +
    '{"id":1,"event":{"team":{"side":"home","name":"Foxes"}}},' +
    '{"id":2,"event":{"status":{"forfeited":{"winner":"home","why":"no nine players"}}}}]}';
  await bring(page, { name: 'over.json', text: over });
  await expect(page.locator('.board .state').first()).toHaveText('Forfeited to Foxes');
  await page.getByRole('link', { name: 'Open Visitors at Foxes' }).tap();
  await expect(page).toHaveURL(/\/game\/over\/book$/);
});

test('the address of a game that is not here says where to look', async ({ page }) => {
  await page.goto('./#/game/nowhere/plate');
  await expect(page.getByRole('heading', { name: "This game isn't on this device" })).toBeVisible();
  await page.getByRole('link', { name: 'To the Clubhouse' }).tap();
  await expect(page.locator('.clubhouse')).toBeVisible();
});
