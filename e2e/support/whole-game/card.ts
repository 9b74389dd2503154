/** The Clubhouse and the Card: a game is started, both cards are filled in, the umpire calls "Play". */
import { expect } from '@playwright/test';
import { says, seen, type Screen, type Spot } from '../screen.ts';
import { names, parts, type Entry } from './record.ts';

interface Side {
  side: 'visitors' | 'home';
  team: string;
  order: { player: number; post: number | 'DH' }[];
  fieldsOnly: { player: number; post: number | 'DH' }[];
  bench: number[];
}

export class CardHand {
  taps = 0;
  /** Fields written into. */
  fields = 0;
  private readonly name: Map<number, string>;
  private readonly number = new Map<number, string>();
  private readonly heading: Record<string, string> = {};
  private readonly rules: string = '';
  private readonly sides: Side[] = [];

  constructor(
    private readonly page: Screen,
    paper: Entry[],
  ) {
    this.name = names(paper);
    for (const { event } of paper) {
      const [kind, what] = parts(event);
      if (kind === 'player') this.number.set(what.player.id, what.player.number);
      if (kind === 'heading') this.heading = what;
      if (kind === 'rules') this.rules = what.name;
      if (kind === 'team') this.sides.push({ side: what.side, team: what.name, order: [], fieldsOnly: [], bench: [] });
      if (kind !== 'card') continue;
      const side = this.sides.find(({ side }) => side === what.side)!;
      [side.order, side.fieldsOnly] = [what.card.order, what.card.fielding_only];
    }
    for (const { event } of paper) {
      const [kind, what] = parts(event);
      const side = this.sides.find(({ side }) => side === what.side);
      if (kind !== 'player' || !side) continue;
      const onCard = [...side.order, ...side.fieldsOnly].some(({ player }) => player === what.player.id);
      if (!onCard) side.bench.push(what.player.id);
    }
  }

  private async tap(on: Spot): Promise<void> {
    this.taps += 1;
    await on.tap();
  }

  private async write(into: Spot, text: string): Promise<void> {
    this.fields += 1;
    await into.fill(text);
    // Leaving a field commits it.
    await into.blur();
  }

  /** From the Clubhouse to the Plate; gives the game's name. */
  async fillIn(): Promise<string> {
    await this.start();
    await this.head();
    for (const side of this.sides) await this.side(side);
    await says(this.page.locator('.start [role=status]'), 'Nothing is missing.');
    await this.tap(this.page.getByRole('button', { name: 'Play ball' }));
    await seen(this.page.locator('.plate-board'));
    return /#\/game\/([\w-]+)\/plate/.exec(await this.page.evaluate(() => location.href, null))?.[1] ?? '';
  }

  private async start(): Promise<void> {
    const [visitors, home] = this.sides;
    await this.write(this.page.getByLabel('Visitors (bat first)'), visitors!.team);
    await this.write(this.page.getByLabel('Home', { exact: true }), home!.team);
    this.taps += 1;
    await this.page.getByLabel('Rules of play').selectOption({ label: this.rules });
    await this.tap(this.page.getByRole('button', { name: 'Fill in the cards first' }));
    await seen(this.page.locator('main.card'));
  }

  private async head(): Promise<void> {
    const heading = this.page.locator('details.heading');
    await this.tap(heading.locator('summary'));
    const labels = { date: 'Date', start: 'Begins at', place: 'Place', competition: 'Competition', scorer: 'Who keeps this book' };
    for (const [key, label] of Object.entries(labels)) {
      await this.write(heading.getByLabel(label, { exact: true }), this.heading[key] ?? '');
    }
    await this.tap(heading.locator('summary'));
  }

  private async side(side: Side): Promise<void> {
    const card = this.page.locator('.sides > .side').nth(side.side === 'visitors' ? 0 : 1);
    await this.tap(card.getByRole('button', { name: 'Fill in numbered batters' }));
    const order = card.locator('ol.order > li');
    await expect.poll(() => order.count()).toBe(side.order.length);
    for (const [i, { player }] of side.order.entries()) await this.player(order.nth(i), player);
    // The designated hitter last: whoever he bats for takes the position that is left, the pitcher's.
    const posts = [...side.order.entries()].sort(([, a], [, b]) => Number(a.post === 'DH') - Number(b.post === 'DH'));
    for (const [i, { post }] of posts) await this.post(order.nth(i), post);
    const fieldsOnly = card.locator('ul.order:not(.bench ul) > li:not(.below)');
    await expect.poll(() => fieldsOnly.count()).toBe(side.fieldsOnly.length);
    for (const [i, { player }] of side.fieldsOnly.entries()) await this.player(fieldsOnly.nth(i), player);
    const bench = card.locator('.bench');
    for (const [i, player] of side.bench.entries()) {
      await this.tap(bench.getByRole('button', { name: 'Add a player to the bench' }));
      await this.player(bench.locator('ul.order > li').nth(i), player);
    }
  }

  private async player(row: Spot, player: number): Promise<void> {
    await this.write(row.locator('input.number'), this.number.get(player) ?? '');
    await this.write(row.locator('input.name'), this.name.get(player) ?? '');
  }

  private async post(row: Spot, post: number | 'DH'): Promise<void> {
    const select = row.locator('select.post');
    const labels = await select.locator('option').allTextContents();
    const label = labels.map((text) => text.trim()).find((text) => text.split(' ')[0] === String(post)) ?? '';
    this.taps += 1;
    await select.selectOption({ label });
  }
}
