/** Changes of players: touch who leaves, then who comes in. */
import { says } from '../screen.ts';
import type { Hand } from './hand.ts';

export async function change(hand: Hand, what: any, name: (player: number) => string): Promise<void> {
  const { substitute, shift } = what.change;
  if (shift) return staysIn(hand, shift.to[0], name);
  const { role, outgoing, incoming } = substitute;
  if (role === 'pinch_hitter') {
    await hand.batter();
  } else {
    await hand.corner('players');
    if (role === 'pinch_runner') await hand.runner(await baseOf(hand, name(outgoing)));
    else await hand.fielders(role.fielder);
  }
  await hand.tap(hand.page.locator('.people .bench button').filter({ hasText: name(incoming) }));
}

/** Who batted for somebody stays in at his post: nothing to do, only to see. */
async function staysIn(hand: Hand, { player, post }: any, name: (player: number) => string): Promise<void> {
  await says(hand.page.locator(`.token.at-${post} .name`), lastWord(name(player)));
}

async function baseOf(hand: Hand, runner: string): Promise<1 | 2 | 3> {
  for (const base of [1, 2, 3] as const) {
    const token = hand.page.locator(`.token.on-${base} .name`);
    if ((await token.count()) > 0 && (await token.textContent()) === lastWord(runner)) return base;
  }
  throw new Error(`${runner} is on no base`);
}

const lastWord = (name: string): string => name.split(' ').at(-1) ?? name;
