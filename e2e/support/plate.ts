/** Scoring by touch: a thumb that counts its taps, and the log that comes of it. */
import { expect, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { allKept, bring, working } from './clubhouse.ts';
import type { Screen, Spot } from './screen.ts';

export type Json = string | number | boolean | null | Json[] | { [key: string]: Json };
export type Event = string | { [kind: string]: any };

/** The drawing's units: CSS px on a 360 px phone. */
const WIDTH = 360;
/** Bases and the plate, drawn. */
export const DRAWN = {
  home: { x: 180, y: 296 },
  first: { x: 245, y: 231 },
  second: { x: 180, y: 166 },
  third: { x: 115, y: 231 },
} as const;
/** Points of the field, drawn. */
export const GRASS = {
  shallowLeft: { x: 66, y: 150 },
  deepCenter: { x: 150, y: 26 },
  gap: { x: 236, y: 62 },
  overLeft: { x: 40, y: 18 },
  foulLeft: { x: 22, y: 196 },
} as const;

const PAPER = new URL('../../tests/games/harbor-league.benchbook.json', import.meta.url);

/** The events of the paper game. */
export function paperGame(): Event[] {
  const file = JSON.parse(readFileSync(PAPER, 'utf8')) as { log: { event: Event }[] };
  return file.log.map((entry) => entry.event);
}

/** Both cards of the paper game and the call "Play ball", with other rules of play if given. */
export function opening(rules: { [field: string]: Json } = {}): Event[] {
  const events = paperGame();
  const before = events.slice(0, events.indexOf('play_ball') + 1);
  return before.map((event) => {
    const code = typeof event === 'object' ? event.rules : undefined;
    return code ? { rules: { ...code, ...rules } } : event;
  });
}

/** The players of a side in batting order, by their numbers in the log. */
export function order(side: 'visitors' | 'home'): number[] {
  for (const event of paperGame()) {
    if (typeof event === 'object' && event.card?.side === side) {
      return event.card.card.order.map((assignment: { player: number }) => assignment.player);
    }
  }
  throw new Error(`no card of the ${side}`);
}

/** Runners put on by rule: whoever bats late in the order, so that none is up soon. */
export function runnersOn(...bases: ('first' | 'second' | 'third')[]): Event[] {
  const players = order('visitors');
  return bases.map((base, i) => ({ place_runner: { base, player: players[players.length - 1 - i] ?? 0 } }));
}

/** A turn of three strikes. */
export const STRUCK_OUT: Event[] = Array.from({ length: 3 }, () => ({ pitch: { call: 'swinging_strike' } }));

/** Brings a game of these events in and opens it at the Plate. */
export async function openGame(page: Page, name: string, events: Event[]): Promise<void> {
  const log = events.map((event, i) => ({ id: i + 1, event }));
  const text = JSON.stringify({ format: 'benchbook.game', version: 1, id: name, log });
  await page.goto('./');
  await expect(page.locator('.clubhouse')).toBeVisible();
  await bring(page, { name: `${name}.benchbook.json`, text });
  await expect(page.getByText(/brought in|came in|is here|added/i).first()).toBeVisible();
  await page.goto(`./#/game/${name}/plate`);
  await expect(page.locator('.plate-board')).toBeVisible();
}

/** The log as it is stored, once all of it is kept. */
export async function log(page: Screen, name: string): Promise<Event[]> {
  await allKept(page);
  const text = await working(page, name);
  return (JSON.parse(text ?? '{"log":[]}') as { log: { event: Event }[] }).log.map((entry) => entry.event);
}

/** A thumb on the Plate. */
export class Thumb {
  taps = 0;

  constructor(
    readonly page: Screen,
    readonly game: string,
  ) {}

  /** Counts anew. */
  reset(): void {
    this.taps = 0;
  }

  async tap(on: Spot): Promise<void> {
    this.taps += 1;
    await on.tap();
  }

  pitch(call: string): Promise<void> {
    return this.tap(this.page.locator(`.pitch[data-call="${call}"]`));
  }

  /** A pitch behind "More". */
  async rarePitch(call: string): Promise<void> {
    await this.tap(this.page.locator('.pitch.more'));
    await this.pitch(call);
  }

  /** Fielders in order. */
  async fielders(...positions: number[]): Promise<void> {
    for (const position of positions) await this.tap(this.page.locator(`.token.at-${position}`));
  }

  runner(base: 1 | 2 | 3): Promise<void> {
    return this.tap(this.page.locator(`.token.on-${base}`));
  }

  batter(): Promise<void> {
    return this.tap(this.page.locator('.token.batter'));
  }

  /** A point of the field, in the drawing's units. */
  async grass(point: { x: number; y: number }): Promise<void> {
    this.taps += 1;
    const { x, y } = await this.screen(point);
    await this.page.touchscreen.tap(x, y);
  }

  /** Where a drawn point is on the screen. */
  async screen(point: { x: number; y: number }): Promise<{ x: number; y: number }> {
    const box = await this.page.locator('.field').boundingBox();
    if (!box) throw new Error('the field is not in sight');
    const scale = box.width / WIDTH;
    return { x: box.x + point.x * scale, y: box.y + point.y * scale };
  }

  /** Drags a token to a drawn point, with the mouse: one gesture. */
  async drag(token: Spot, to: { x: number; y: number }): Promise<void> {
    this.taps += 1;
    const box = await token.boundingBox();
    if (!box) throw new Error('nobody to drag');
    const end = await this.screen(to);
    await this.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await this.page.mouse.down();
    await this.page.mouse.move(end.x, end.y, { steps: 8 });
    await this.page.mouse.up();
  }

  /** An outcome of the tray by its words. */
  outcome(words: string | RegExp): Promise<void> {
    return this.tap(this.page.locator('.outcome').filter({ hasText: words }).first());
  }

  /** The outcome that lies first. */
  first(): Promise<void> {
    return this.tap(this.page.locator('.outcome').first());
  }

  /** A button by its words. */
  button(words: string | RegExp): Promise<void> {
    return this.tap(this.page.locator('.pad').getByRole('button', { name: words }).first());
  }

  corner(name: 'undo' | 'redo' | 'players' | 'umpire'): Promise<void> {
    return this.tap(this.page.locator(`.corner.${name}`));
  }

  async last(): Promise<any> {
    return (await log(this.page, this.game)).at(-1);
  }

  /** What the board shows. */
  async board(): Promise<{ count: string; outs: string; runs: string[]; runners: number[] }> {
    const board = this.page.locator('.plate-board');
    const on = await Promise.all([1, 2, 3].map((base) => this.page.locator(`.token.on-${base}`).count()));
    return {
      count: (await board.locator('.count').getAttribute('data-count')) ?? '',
      outs: (await board.locator('.outs').getAttribute('data-outs')) ?? '',
      runs: await board.locator('.runs').allTextContents(),
      runners: [1, 2, 3].filter((_, i) => on[i]),
    };
  }
}
