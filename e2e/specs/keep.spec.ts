import { drawn, expect, test } from '../support/app.ts';
import { allKept, journal, keeping, startGame, takeHome, toClubhouse, working } from '../support/clubhouse.ts';
import type { BrowserContext, Locator, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';

const playBall = (page: Page) => page.getByRole('button', { name: 'Play ball' }).tap();

/** One pitch, by touch; returns when it shows as recorded. */
async function pitch(page: Page, call: 'Ball' | 'CalledStrike' = 'CalledStrike'): Promise<void> {
  const { recorded } = await keeping(page);
  await page.locator(`.pitch[data-call="${call}"]`).tap();
  await expect.poll(async () => (await keeping(page)).recorded).toBe(recorded + 1);
}

/** The middle of a pitch's button, for taps as quick as a finger. */
async function middle(page: Page, call: string): Promise<{ x: number; y: number }> {
  const button = page.locator(`.pitch[data-call="${call}"]`);
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  return { x: (box?.x ?? 0) + (box?.width ?? 0) / 2, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
}

/** The log as the game file has it. */
const log = (text: string) => (JSON.parse(text) as { log: { id: number }[] }).log;

/** Fills local storage to the last kilobyte. */
const fillShelf = (page: Page) =>
  page.evaluate(() => {
    for (let size = 1 << 20; size >= 16; size /= 2) {
      try {
        for (let i = 0; ; i += 1) localStorage.setItem(`full.${size}.${i}`, 'x'.repeat(size));
      } catch {
        // No more of this size.
      }
    }
  });

test('twenty kills at random points of a game lose nothing that showed as kept', async ({ device, host }) => {
  test.setTimeout(420_000);
  const { url } = await host();
  let page = await device.open(url);
  await drawn(page);
  const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
  await playBall(page);
  await allKept(page);
  let before = await journal(page, game);
  const rounds: string[] = [];

  for (let kill = 1; kill <= 20; kill += 1) {
    const taps = 1 + Math.floor(Math.random() * 8);
    const buttons = [await middle(page, 'CalledStrike'), await middle(page, 'Ball')];
    for (let i = 0; i < taps; i += 1) {
      const { x, y } = buttons[Math.random() < 0.6 ? 0 : 1] ?? { x: 0, y: 0 };
      await page.touchscreen.tap(x, y);
    }
    // From within the strict write of the last tap to well after it.
    const shown = await keeping(page);
    expect(shown.recorded, `kill ${kill}: the taps were recorded`).toBeGreaterThan(before.length);
    await new Promise((resolve) => setTimeout(resolve, Math.random() * 60));
    await device.kill();

    // What local storage alone has, seen from a page without the app.
    page = await device.open(`${url}manifest.webmanifest`);
    const alone = log((await working(page, game)) ?? '{"log":[]}').length;
    await page.goto(`${url}#/game/${game}/plate`);
    await expect(page.locator('.sign .kept')).toBeVisible();
    const after = await keeping(page);
    expect(after.recorded, `kill ${kill}: kept entries are there`).toBeGreaterThanOrEqual(shown.kept);
    const now = await journal(page, game);
    expect(now.slice(0, before.length), `kill ${kill}: what was there is unchanged`).toEqual(before);
    await allKept(page);
    before = await journal(page, game);
    expect(before.length).toBe(after.recorded);
    rounds.push(`${shown.kept}/${shown.recorded}->${after.recorded} (${alone})`);
  }
  console.log(`kept/recorded before each kill -> found after it (local storage alone): ${rounds.join(', ')}`);

  await toClubhouse(page);
  await expect(page.locator('.aside')).toHaveCount(0);
  const taken = await takeHome(page, 'Harbor at Mill Lane');
  expect(log(taken.text)).toEqual(before.map((entry) => JSON.parse(entry) as unknown));
});

test.describe('on the page', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto('./');
    await drawn(page);
  });

  test('reload, the back button and closing come back to the same place', async ({ page, context }) => {
    await startGame(page);
    await playBall(page);
    await pitch(page);
    await allKept(page);
    const { recorded } = await keeping(page);
    const address = page.url();

    await page.reload();
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
    expect(page.url()).toBe(address);

    await toClubhouse(page);
    await page.goBack();
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
    await pitch(page);

    await page.close();
    const again = await context.newPage();
    await again.goto(address);
    await expect.poll(() => keeping(again)).toEqual({ recorded: recorded + 1, kept: recorded + 1 });
  });

  test('the working state follows every tap, and is a game file', async ({ page }) => {
    const game = await startGame(page);
    await playBall(page);
    for (let i = 0; i < 3; i += 1) await pitch(page);
    await allKept(page);
    const entries = await journal(page, game);
    await expect.poll(async () => log((await working(page, game)) ?? '{"log":[]}').length).toBe(entries.length);
    expect(log((await working(page, game)) ?? '')).toEqual(entries.map((entry) => JSON.parse(entry) as unknown));
  });

  test('the journal makes good what the working state lost, and the other way round', async ({ page }) => {
    const game = await startGame(page);
    await playBall(page);
    for (let i = 0; i < 3; i += 1) await pitch(page);
    await allKept(page);
    const { recorded } = await keeping(page);
    const whole = await journal(page, game);
    const address = page.url();

    await page.goto('about:blank');
    await page.goto('./');
    await page.evaluate((name) => localStorage.removeItem(`benchbook.game.${name}`), game);
    await page.goto('about:blank');
    await page.goto(address);
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
    await expect.poll(() => working(page, game)).not.toBeNull();

    await page.goto('about:blank');
    await page.goto('./');
    await changeJournal(page, game, { keep: 5 });
    await page.goto('about:blank');
    await page.goto(address);
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
    expect(await journal(page, game)).toEqual(whole);
  });

  test('a stored game that cannot be read is set aside as it is; the others stay', async ({ page }) => {
    await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await toClubhouse(page);
    const game = await startGame(page, { visitors: 'Quarry Hill', home: 'Old Orchard' });
    await toClubhouse(page);
    const garbage = '{"format":"benchbook.game","version":1,"id":"x","log":[\u0007 nothing of use';
    await page.evaluate(([name, text]) => localStorage.setItem(`benchbook.game.${name}`, text ?? ''), [game, garbage]);
    await changeJournal(page, game, { keep: 0 });
    await page.reload();

    await expect(page.locator('.game')).toHaveCount(1);
    await expect(page.locator('.game')).toContainText('Harbor');
    const aside = page.locator('.aside');
    await expect(aside).toHaveCount(1);
    await expect(aside).toContainText(game);
    await expect(aside).toContainText('could not be read');
    expect(await working(page, game)).toBeNull();
    const taken = await downloaded(page, aside.getByRole('button', { name: 'Take home as it is' }));
    expect(taken).toBe(garbage);

    // It stays there until the scorer throws it away.
    await page.reload();
    await expect(aside).toHaveCount(1);
    await page.goto(`./#/game/${game}/plate`);
    await expect(page.getByRole('heading', { name: "This game isn't on this device" })).toBeVisible();
  });

  test('a damaged working state gives way to the journal and is set aside', async ({ page }) => {
    const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await allKept(page);
    const { recorded } = await keeping(page);
    await toClubhouse(page);
    await page.evaluate((name) => {
      const key = `benchbook.game.${name}`;
      localStorage.setItem(key, (localStorage.getItem(key) ?? '').slice(0, -40));
    }, game);
    await page.reload();
    await page.getByRole('link', { name: 'Open Harbor at Mill Lane' }).tap();
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
    await toClubhouse(page);
    await expect(page.locator('.game')).toHaveCount(1);
    await expect(page.locator('.aside')).toContainText('breaks off');
  });

  test('of two tabs one writes, the other follows, and takes over when the first is closed', async ({ page, context }) => {
    await startGame(page);
    await playBall(page);
    await allKept(page);
    const follower = await context.newPage();
    await follower.goto(page.url());
    await expect(follower.locator('.notice')).toContainText('Another tab keeps this book');
    await pitch(page);
    await pitch(page);
    const { recorded } = await keeping(page);
    await expect.poll(async () => (await keeping(follower)).recorded).toBe(recorded);
    await expect(follower.locator('.sign .kept')).toHaveText('following');

    // A tap here records nothing.
    await follower.locator('.pitch[data-call="Ball"]').tap();
    await expect.poll(async () => (await keeping(follower)).recorded).toBe(recorded);
    expect((await keeping(page)).recorded).toBe(recorded);

    await page.close();
    await expect(follower.locator('.notice')).toHaveCount(0);
    await pitch(follower, 'Ball');
    await allKept(follower);
    expect((await keeping(follower)).recorded).toBe(recorded + 1);
  });

  test('where tabs cannot be told apart, the later of two writers gives way and nothing of it is lost', async ({
    page,
    context,
  }) => {
    await context.addInitScript(() => Object.defineProperty(navigator, 'locks', { value: undefined }));
    await page.reload();
    await drawn(page);
    await expect(page.locator('.safety')).toContainText("can't tell two tabs apart");
    const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await playBall(page);
    await allKept(page);
    const late = await context.newPage();
    await late.goto(page.url());
    await allKept(late);
    await pitch(page, 'Ball');
    await allKept(page);
    const first = await journal(page, game);

    await late.locator('.pitch[data-call="CalledStrike"]').tap();
    await expect(late.locator('.notice')).toContainText('Another tab recorded into this game');
    await expect(late.locator('.sign .kept')).toHaveText('following');
    await pitch(page);
    await allKept(page);
    const { recorded } = await keeping(page);
    await expect.poll(async () => (await keeping(late)).recorded).toBe(recorded);
    expect((await journal(page, game)).slice(0, first.length)).toEqual(first);

    await toClubhouse(late);
    const taken = await downloaded(late, late.locator('.aside').getByRole('button', { name: 'Take home as it is' }));
    expect(taken).toContain('called_strike');
    expect(log(taken)).toHaveLength(first.length);
  });

  test('with quick storage full, plays are recorded and kept all the same', async ({ page }) => {
    const game = await startGame(page);
    await playBall(page);
    await allKept(page);
    await fillShelf(page);
    for (let i = 0; i < 30; i += 1) await pitch(page, i % 3 ? 'CalledStrike' : 'Ball');
    await allKept(page);
    await expect(page.locator('.notice')).toContainText('quick storage is full');
    const { recorded } = await keeping(page);
    expect(await journal(page, game)).toHaveLength(recorded);
    await page.reload();
    await expect.poll(() => keeping(page)).toEqual({ recorded, kept: recorded });
  });

  test('with no room from the start, a game is played and taken home, and is kept once there is room', async ({
    page,
    context,
  }) => {
    await fillShelf(page);
    await quota(context, page, 1);
    const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await playBall(page);
    for (let i = 0; i < 3; i += 1) await pitch(page);
    await expect(page.locator('.sign .kept')).toHaveText('keeping…');
    await expect(page.locator('.notice')).toContainText('no room left');
    const { recorded } = await keeping(page);

    const taken = await downloaded(page, page.getByRole('button', { name: 'Take the file home now' }));
    expect(log(taken)).toHaveLength(recorded);

    // A walk to the Clubhouse and back loses nothing either.
    await toClubhouse(page);
    await page.getByRole('link', { name: 'Open Harbor at Mill Lane' }).tap();
    await expect.poll(async () => (await keeping(page)).recorded).toBe(recorded);
    await expect(page.locator('.sign .kept')).toHaveText('keeping…');

    await quota(context, page, undefined);
    await allKept(page);
    expect(await journal(page, game)).toHaveLength(recorded);
  });

  test('when the room runs out in mid-game, plays go on being recorded', async ({ page, context }) => {
    test.setTimeout(120_000);
    const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await playBall(page);
    await allKept(page);
    const before = await keeping(page);
    await quota(context, page, 1);
    // This browser looks at the room left for a database twice a minute at most.
    await page.waitForTimeout(32_000);
    for (let i = 0; i < 5; i += 1) await pitch(page);
    await expect(page.locator('.notice')).toContainText('may not outlive a crash');
    expect((await keeping(page)).kept).toBe(before.kept);
    await quota(context, page, undefined);
    await allKept(page);
    await expect(page.locator('.notice')).toHaveCount(0);
    expect(await journal(page, game)).toHaveLength(before.recorded + 5);
  });

  test('a game thrown away can be put back, and is gone only when thrown away for good', async ({ page }) => {
    const game = await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
    await toClubhouse(page);
    await page.getByRole('button', { name: 'Throw away Harbor at Mill Lane' }).tap();
    await expect(page.locator('.game')).toHaveCount(0);
    await page.getByRole('button', { name: 'Put it back' }).tap();
    await expect(page.locator('.game')).toHaveCount(1);

    await page.getByRole('button', { name: 'Throw away Harbor at Mill Lane' }).tap();
    await page.reload();
    await page.getByText('Thrown away (1)').tap();
    await page.getByRole('button', { name: 'Throw away for good' }).tap();
    expect((await journal(page, game)).length).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Tap again: gone for good' }).tap();
    await expect(page.locator('.thrown')).toHaveCount(0);
    expect(await journal(page, game)).toEqual([]);
    expect(await working(page, game)).toBeNull();
  });

  test('the night setting is kept', async ({ page }) => {
    await page.getByRole('button', { name: 'Night' }).tap();
    await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('data-light', 'night');
  });
});

/** The text of the file that `button` hands to the downloads. */
async function downloaded(page: Page, button: Locator): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), button.tap()]);
  return readFileSync(await download.path(), 'utf8');
}

/** Limits what this site may store, in bytes; `undefined` lifts the limit. */
async function quota(context: BrowserContext, page: Page, bytes: number | undefined): Promise<void> {
  const client = await context.newCDPSession(page);
  const origin = new URL(page.url()).origin;
  await client.send('Storage.overrideQuotaForOrigin', bytes === undefined ? { origin } : { origin, quotaSize: bytes });
}

/** Takes all but the first `keep` records of a game out of the journal. */
async function changeJournal(page: Page, game: string, { keep }: { keep: number }): Promise<void> {
  await page.evaluate(
    ([name, first]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('benchbook');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction('entries', 'readwrite');
          transaction.objectStore('entries').delete(IDBKeyRange.bound([name, first], [name, Infinity]));
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          transaction.onerror = () => reject(transaction.error);
        };
      }),
    [game, keep] as const,
  );
}
