/** The paper game from the first pitch to the last, entered entry by entry, each compared with the paper. */
import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import { allKept } from '../clubhouse.ts';
import type { Event } from '../plate.ts';
import { says, seen } from '../screen.ts';
import { budget } from './budget.ts';
import { enter } from './enter.ts';
import type { Hand } from './hand.ts';
import { names, parts, plays, type Entry } from './record.ts';

const read = (name: string) => JSON.parse(readFileSync(new URL(`../../../tests/games/harbor-league.${name}.json`, import.meta.url), 'utf8'));

export const paper = read('benchbook') as { log: Entry[] };
/** What was worked out for it. */
export const expected = read('expected');
export const TITLE = 'Millrace Otters at Pier Nine Lanterns';

/** The entry after which the page is loaded anew. */
export const RELOAD_AFTER = 150;

export interface Entered {
  entry: number;
  kind: string;
  taps: number;
  allowed: number;
}

/** The entries from the first pitch on. */
export function played(): Entry[] {
  return paper.log.slice(firstPitch());
}

/** How many entries come before the first pitch. */
export const firstPitch = (): number => paper.log.findIndex(({ event }) => event === 'play_ball') + 1;
const called = names(paper.log);
/** A player's name. */
export const nameOf = (player: number): string => called.get(player) ?? '';

/** Enters one entry, sees that it says what the paper says, and gives the taps it took. */
export async function score(hand: Hand, { id, event }: Entry): Promise<Entered> {
  hand.reset();
  const { kind, taps: allowed } = budget(event);
  const before = plays(await hand.entries()).length;
  const wanted = plays([...paper.log.slice(0, firstPitch()), { id, event }]).slice(1);
  await enter(hand, event, nameOf);
  if (wanted.length > 0) {
    const last = async () => {
      const ours = plays(await hand.entries());
      return ours.length > before ? ours.at(-1) : undefined;
    };
    await expect.poll(last, { message: `entry ${id}` }).toEqual(asEntered(wanted[0]!));
  }
  return { entry: id, kind, taps: hand.taps, allowed };
}

/** The plays as they should be in the log. */
export function wanted(): Event[] {
  return plays(paper.log).map(asEntered);
}

/** What an infielder catches in the air is a pop on the Plate; the paper calls one of them a fly. */
function asEntered(event: Event): Event {
  const [kind, what] = parts(event);
  const infielder = what.ball?.fielders?.[0] <= 6;
  if (kind !== 'in_play' || what.ball.trajectory !== 'fly' || !infielder) return event;
  return { in_play: { ...what, ball: { ...what.ball, trajectory: 'pop' } } };
}

/** The page is loaded anew: the same place, and nothing lost. */
export async function reloaded(hand: Hand): Promise<void> {
  await allKept(hand.page);
  const [log, board] = [await hand.entries(), await hand.board()];
  await hand.page.reload();
  await seen(hand.page.locator('.plate-board'));
  await expect.poll(() => hand.board()).toEqual(board);
  await says(hand.page.locator('.sign .kept'), '✓ kept');
  expect(await hand.entries()).toEqual(log);
}
