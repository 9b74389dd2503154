/** One whole game, scored by touch with no network, against the numbers worked out for it on paper. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, keptOffline, test, watchErrors } from '../support/app.ts';
import { allKept, takeHome, toClubhouse } from '../support/clubhouse.ts';
import type { Event } from '../support/plate.ts';
import { given, OUT } from '../support/settings.ts';
import { budget } from '../support/whole-game/budget.ts';
import { CardHand } from '../support/whole-game/card.ts';
import { withBook, withLines } from '../support/whole-game/compare.ts';
import { enter } from '../support/whole-game/enter.ts';
import { Hand } from '../support/whole-game/hand.ts';
import { names, parts, plays, type Entry } from '../support/whole-game/record.ts';

const PAPER = new URL('../../tests/games/harbor-league', import.meta.url);
const paper = JSON.parse(readFileSync(`${PAPER.pathname}.benchbook.json`, 'utf8')) as { log: Entry[] };
const expected = JSON.parse(readFileSync(`${PAPER.pathname}.expected.json`, 'utf8'));
// A trace of a thousand touches costs more than the game; a touch that finds nothing says so soon.
test.use({ trace: 'off', actionTimeout: 30_000 });

/** The entry after which the page is loaded anew. */
const RELOAD_AFTER = 150;
/** A ball in play with six fielders in it. */
const RUNDOWN = 196;

interface Entered {
  entry: number;
  kind: string;
  taps: number;
  allowed: number;
}

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
  const name = (player: number): string => names(paper.log).get(player) ?? '';
  const entered: Entered[] = [];
  for (const { id, event } of played(paper.log)) {
    entered.push(await test.step(`entry ${id}`, () => score(hand, id, event, name)));
    if (id === RELOAD_AFTER) await reloaded(hand);
    if (id === RUNDOWN) await picture('whole-game-middle');
  }
  await picture('whole-game-end');
  report(entered, card);

  const theirs = plays(paper.log);
  const ours = plays(await hand.entries());
  expect(ours).toEqual(theirs.map(asEntered));
  expect(ours.length).toBeGreaterThan(280);

  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Book' }).tap();
  await expect(page.locator('.boxes')).toBeVisible();
  const shown = await withBook(page, expected);
  expect(shown.differing).toEqual([]);
  expect(shown.compared).toBeGreaterThan(300);

  await toClubhouse(page);
  const { text } = await takeHome(page, 'Millrace Otters at Pier Nine Lanterns');
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

/** The entries from the first pitch on. */
function played(log: Entry[]): Entry[] {
  return log.slice(log.findIndex(({ event }) => event === 'play_ball') + 1);
}

/** Enters one entry, sees that it says what the paper says, and gives the taps it took. */
async function score(hand: Hand, id: number, event: Event, name: (player: number) => string): Promise<Entered> {
  hand.reset();
  const { kind, taps: allowed } = budget(event);
  const before = plays(await hand.entries()).length;
  const wanted = plays([...paper.log.slice(0, 39), { id, event }]).slice(1);
  await enter(hand, event, name);
  if (wanted.length > 0) {
    const last = async () => {
      const ours = plays(await hand.entries());
      return ours.length > before ? ours.at(-1) : undefined;
    };
    await expect.poll(last, { message: `entry ${id}` }).toEqual(asEntered(wanted[0]!));
  }
  return { entry: id, kind, taps: hand.taps, allowed };
}

/** What an infielder catches in the air is a pop on the Plate; the paper calls one of them a fly. */
function asEntered(event: Event): Event {
  const [kind, what] = parts(event);
  const infielder = what.ball?.fielders?.[0] <= 6;
  if (kind !== 'in_play' || what.ball.trajectory !== 'fly' || !infielder) return event;
  return { in_play: { ...what, ball: { ...what.ball, trajectory: 'pop' } } };
}

/** The page is loaded anew, still without a network: the same place, and nothing lost. */
async function reloaded(hand: Hand): Promise<void> {
  await allKept(hand.page);
  const [log, board] = [await hand.entries(), await hand.board()];
  await hand.page.reload();
  await expect(hand.page.locator('.plate-board')).toBeVisible();
  await expect.poll(() => hand.board()).toEqual(board);
  await expect(hand.page.locator('.sign .kept')).toHaveText('✓ kept');
  expect(await hand.entries()).toEqual(log);
}

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
