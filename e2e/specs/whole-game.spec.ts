/** One whole game, scored by touch with no network, against the numbers worked out for it on paper. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, keptOffline, test, watchErrors } from '../support/app.ts';
import { takeHome, toClubhouse } from '../support/clubhouse.ts';
import { given, OUT } from '../support/settings.ts';
import { CardHand } from '../support/whole-game/card.ts';
import { withBook, withLines } from '../support/whole-game/compare.ts';
import { expected, paper, played, RELOAD_AFTER, reloaded, score, TITLE, wanted, type Entered } from '../support/whole-game/game.ts';
import { Hand } from '../support/whole-game/hand.ts';
import { plays } from '../support/whole-game/record.ts';

// A trace of a thousand touches costs more than the game; a touch that finds nothing says so soon.
test.use({ trace: 'off', actionTimeout: 30_000 });

/** A ball in play with six fielders in it. */
const RUNDOWN = 196;

test('a whole game by touch with the network off', async ({ page, host, picture }) => {
  test.setTimeout(20 * 60_000);
  const errors = watchErrors(page);
  const server = await host();
  await page.goto(server.url);
  await keptOffline(page);
  await page.context().setOffline(true);
  await server.stop();

  const card = new CardHand(page, paper.log);
  const hand = new Hand(page, await card.fillIn());
  const entered: Entered[] = [];
  for (const entry of played()) {
    const { id } = entry;
    entered.push(await test.step(`entry ${id}`, () => score(hand, entry)));
    if (id === RELOAD_AFTER) await reloaded(hand);
    if (id === RUNDOWN) await picture('whole-game-middle');
  }
  await picture('whole-game-end');
  report(entered, card);

  const ours = plays(await hand.entries());
  expect(ours).toEqual(wanted());
  expect(ours.length).toBeGreaterThan(280);

  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Book' }).tap();
  await expect(page.locator('.boxes')).toBeVisible();
  const shown = await withBook(page, expected);
  expect(shown.differing).toEqual([]);
  expect(shown.compared).toBeGreaterThan(300);

  await toClubhouse(page);
  const { text } = await takeHome(page, TITLE);
  const file = `${OUT}/whole-game.benchbook.json`;
  writeFileSync(file, text);
  const lines = JSON.parse(execFileSync(given('BENCHBOOK_DESK'), ['lines', file, '--json'], { encoding: 'utf8' }));
  const derived = withLines(expected, lines);
  expect(derived.differing).toEqual([]);
  expect(derived.compared).toBeGreaterThan(600);
  expect(lines).toMatchObject({ state: 'Final', over: true, conflicts: [] });

  expect(entered.filter(({ taps, allowed }) => taps > allowed)).toEqual([]);
  expect(errors).toEqual([]);
});

/** Leaves the taps of every entry in a file, with their sums. */
function report(entered: Entered[], card: CardHand): void {
  const byKind: Record<string, { entries: number; taps: number; most: number }> = {};
  for (const { kind, taps } of entered) {
    const sum = (byKind[kind] ??= { entries: 0, taps: 0, most: 0 });
    sum.entries += 1;
    sum.taps += taps;
    sum.most = Math.max(sum.most, taps);
  }
  const taps = entered.reduce((sum, entry) => sum + entry.taps, 0);
  const over = entered.filter((entry) => entry.taps > entry.allowed);
  mkdirSync(OUT, { recursive: true });
  const cards = { taps: card.taps, fields: card.fields };
  writeFileSync(`${OUT}/taps.json`, JSON.stringify({ taps, cards, byKind, over, entered }, null, 1));
}
