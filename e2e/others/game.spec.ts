/** The paper game in a browser other than Chromium, and what the book promises there: offline, two tabs, a file home. */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test as base, expect } from '../support/app.ts';
import { allKept, keeping, toClubhouse } from '../support/clubhouse.ts';
import type { Engine } from '../support/remote/engine.ts';
import { firefox } from '../support/remote/firefox.ts';
import { RemoteScreen } from '../support/remote/remote.ts';
import { webkit } from '../support/remote/webkit.ts';
import { says, seen, type Screen } from '../support/screen.ts';
import { given } from '../support/settings.ts';
import { CardHand } from '../support/whole-game/card.ts';
import { withBook, withLines } from '../support/whole-game/compare.ts';
import { expected, paper, played, RELOAD_AFTER, reloaded, score, TITLE, wanted } from '../support/whole-game/game.ts';
import { Hand } from '../support/whole-game/hand.ts';
import { plays } from '../support/whole-game/record.ts';

const test = base.extend<{ engine: Engine }>({
  engine: async ({}, use, { project }) => {
    const engine = await (project.name === 'firefox' ? firefox() : webkit());
    await use(engine);
    await engine.stop();
  },
});

/** Opens the app in a tab that gathers whatever goes wrong in it. */
async function open(engine: Engine, url: string): Promise<RemoteScreen> {
  const screen = new RemoteScreen(await engine.tab());
  await screen.goto(url);
  await seen(screen.locator('main'));
  await screen.evaluate(() => {
    const errors: string[] = [];
    Object.assign(window, { errors });
    addEventListener('error', (event) => errors.push(event.message));
    addEventListener('unhandledrejection', (event) => errors.push(String(event.reason)));
  }, null);
  return screen;
}

const errors = (screen: Screen) => screen.evaluate(() => (window as unknown as { errors?: string[] }).errors ?? [], null);

test('a whole game with the server gone, and its file home', async ({ engine, host }) => {
  test.setTimeout(20 * 60_000);
  const server = await host();
  const page = await open(engine, server.url);
  await expect.poll(() => page.locator('html').getAttribute('data-offline'), { timeout: 30_000 }).toBe('ready');
  await server.stop();

  const hand = new Hand(page, await new CardHand(page, paper.log).fillIn());
  for (const entry of played()) {
    await score(hand, entry);
    if (entry.id === RELOAD_AFTER) await reloaded(hand);
  }
  expect(plays(await hand.entries())).toEqual(wanted());
  await allKept(page);

  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Book' }).tap();
  await seen(page.locator('.boxes'));
  const shown = await withBook(page, expected);
  expect(shown.differing).toEqual([]);
  expect(shown.compared).toBeGreaterThan(300);

  await toClubhouse(page);
  await page.getByRole('button', { name: `Take home ${TITLE}`, exact: true }).tap();
  const file = await arrived(engine.downloads);
  const lines = JSON.parse(execFileSync(given('BENCHBOOK_DESK'), ['lines', file, '--json'], { encoding: 'utf8' }));
  const derived = withLines(expected, lines);
  expect(derived.differing).toEqual([]);
  expect(derived.compared).toBeGreaterThan(600);
  expect(await errors(page)).toEqual([]);
});

/** The whole file that was taken home. */
async function arrived(folder: string): Promise<string> {
  const file = () => readdirSync(folder).find((name) => name.endsWith('.benchbook.json'));
  await expect.poll(() => {
    const name = file();
    return name !== undefined && existsSync(join(folder, name)) && readFileSync(join(folder, name), 'utf8').trimEnd().endsWith('}');
  }, { timeout: 30_000, message: 'the file is in the downloads' }).toBe(true);
  return join(folder, file()!);
}

test('of two tabs one writes, the other follows, and takes over when the first is closed', async ({ engine, host }) => {
  test.setTimeout(120_000);
  const { url } = await host();
  const writer = await open(engine, url);
  await writer.getByLabel('Visitors (bat first)').fill('Harbor');
  await writer.getByRole('button', { name: /^Score now/ }).tap();
  await writer.getByRole('button', { name: 'Play ball' }).tap();
  await writer.locator('.pitch[data-call="Ball"]').tap();
  await allKept(writer);

  const follower = await open(engine, await writer.evaluate(() => location.href, null));
  await says(follower.locator('.notice'), 'Another tab keeps this book');
  await writer.locator('.pitch[data-call="CalledStrike"]').tap();
  await allKept(writer);
  const { recorded } = await keeping(writer);
  await expect.poll(async () => (await keeping(follower)).recorded).toBe(recorded);
  await says(follower.locator('.sign .kept'), 'following');
  await follower.locator('.pitch[data-call="Ball"]').tap();
  expect((await keeping(follower)).recorded).toBe(recorded);

  await writer.tab.close();
  await expect.poll(() => follower.locator('.notice').count()).toBe(0);
  await follower.locator('.pitch[data-call="Ball"]').tap();
  await allKept(follower);
  expect((await keeping(follower)).recorded).toBe(recorded + 1);
  expect(await errors(follower)).toEqual([]);
});
