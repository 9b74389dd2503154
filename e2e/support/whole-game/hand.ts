/** A scorer's hand on the Plate that has to find things: names on tokens, free grass, an outcome by its words. */
import { working } from '../clubhouse.ts';
import { Thumb } from '../plate.ts';
import { seen, type Point, type Spot } from '../screen.ts';
import type { Entry } from './record.ts';

/** Drawn px of the field on a 360 px phone, and points along the fence: as geometry.rs draws them. */
const HOME = { x: 180, y: 296 };
const PATH = 92;
const TO_SCALE = 140;

/** Where a spot of the log (hundredths of a base path) is drawn: to scale on the infield, closer beyond it. */
export function drawn({ x, y }: Point): Point {
  const distance = Math.hypot(x, y);
  const angle = Math.atan2(x, y);
  const off = Math.min(Math.abs(angle) / (Math.PI / 4), 1) ** 2;
  const [inner, fence, edge] = [(TO_SCALE * 100) / PATH, 444 - 77 * off, 284 - 34 * off];
  const r =
    distance <= inner ? (distance * PATH) / 100 : TO_SCALE + ((distance - inner) * (edge - TO_SCALE)) / (fence - inner);
  return { x: HOME.x + r * Math.sin(angle), y: HOME.y - r * Math.cos(angle) };
}

/** So soon after an outcome the Plate takes a tap in the same place for a double tap; no hand is as fast as this one. */
const ECHO = 400;

export class Hand extends Thumb {
  private chosenAt = 0;

  /** Taps an outcome. */
  async choose(outcome: Spot): Promise<void> {
    await this.tap(outcome);
    this.chosenAt = Date.now();
  }

  override async pitch(call: string): Promise<void> {
    await this.page.waitForTimeout(Math.max(0, this.chosenAt + ECHO - Date.now()));
    await super.pitch(call);
  }

  /** The name on the token of the batter or a runner. */
  async nameAt(start: string): Promise<string> {
    const bases: Record<string, string> = { first: 'on-1', second: 'on-2', third: 'on-3', batter: 'batter' };
    return (await this.page.locator(`.token.${bases[start]} .name`).textContent()) ?? '';
  }

  /** Touches the grass where the ball came down, or as near to it as no token lies. */
  async ground(spot: Point): Promise<void> {
    const wanted = await this.screen(drawn(spot));
    const free = await this.page.evaluate(({ x, y }) => {
      for (let r = 0; r < 48; r += 3) {
        for (let turn = 0; turn < 12; turn += 1) {
          const at = { x: x + r * Math.cos((turn * Math.PI) / 6), y: y + r * Math.sin((turn * Math.PI) / 6) };
          if (document.elementFromPoint(at.x, at.y)?.closest('.ground')) return at;
        }
      }
      return undefined;
    }, wanted);
    if (!free) throw new Error(`no grass near ${JSON.stringify(spot)}`);
    this.taps += 1;
    await this.page.touchscreen.tap(free.x, free.y);
  }

  /** The fielder whose token is nearest to a spot, among those of the outfield. */
  async nearestOutfielder(spot: Point): Promise<number> {
    const { x, y } = await this.screen(drawn(spot));
    const distance = async (position: number): Promise<number> => {
      const box = await this.page.locator(`.token.at-${position}`).boundingBox();
      return box ? Math.hypot(box.x + box.width / 2 - x, box.y + box.height / 2 - y) : Infinity;
    };
    const all = await Promise.all([7, 8, 9].map(async (position) => ({ position, away: await distance(position) })));
    return all.reduce((near, other) => (other.away < near.away ? other : near)).position;
  }

  /** How the ball came off the bat, said. */
  async offTheBat(trajectory: string): Promise<void> {
    const name = trajectory[0]!.toUpperCase() + trajectory.slice(1);
    await this.tap(this.page.locator('.off-the-bat').getByRole('button', { name, exact: true }));
  }

  /** The outcome with this headline, and on which exactly these runners move if they are named; undefined if none. */
  async find(headline: string, running?: string[]): Promise<Spot | undefined> {
    await seen(this.page.locator('.outcome'));
    const rows = await this.page.locator('.outcome').evaluateAll((rows) =>
      rows.map((row) => [row.querySelector('b')?.textContent ?? '', row.querySelector('span')?.textContent ?? '']),
    );
    const safe = (told: string) => told.split(', ').filter((part) => part && !part.includes(' out at '));
    const same = (told: string) => safe(told).sort().join() === [...(running ?? [])].sort().join();
    const at = rows.findIndex(([what, told = '']) => what === headline && (!running || same(told)));
    return at < 0 ? undefined : this.page.locator('.outcome').nth(at);
  }

  /** What the outcomes say, for a message. */
  async offered(): Promise<string> {
    return (await this.page.locator('.outcome').allInnerTexts()).map((text) => text.replace('\n', ': ')).join(' | ');
  }

  /** The log as the browser has it now. */
  async entries(): Promise<Entry[]> {
    const text = await working(this.page, this.game);
    return (JSON.parse(text ?? '{"log":[]}') as { log: Entry[] }).log;
  }
}

/** Taps the outcome with this headline on which the runners move as told. */
export async function chosen(hand: Hand, headline: string, running?: string[]): Promise<void> {
  const outcome = await hand.find(headline, running);
  if (!outcome) throw new Error(`no "${headline}" (${running?.join(', ') ?? ''}) among: ${await hand.offered()}`);
  await hand.choose(outcome);
}
