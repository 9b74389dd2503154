/** Something on the bases without a batted ball. */
import { chosen, type Hand } from './hand.ts';

const BASE: Record<string, 1 | 2 | 3> = { first: 1, second: 2, third: 3 };
const CAUSE: Record<string, string> = { wild_pitch: 'Wild pitch', passed_ball: 'Passed ball', balk: 'Balk' };
const ATTEMPT: Record<string, [button: string, outcome: string]> = {
  steal: ['Caught stealing', 'Caught stealing at'],
  pickoff: ['Picked off', 'Picked off at'],
  advance: ['Out advancing', 'Out advancing at'],
};

export async function onBases(hand: Hand, action: any): Promise<void> {
  const [move] = action.moves;
  const name = await hand.nameAt(move.from);
  await hand.runner(BASE[move.from]!);
  if (!move.out) {
    const { to, cause } = move.legs[0];
    return chosen(hand, CAUSE[cause] ?? `Steals ${to}`, CAUSE[cause] ? [`${name} to ${to}`] : undefined);
  }
  const { by, at, attempt } = move.out;
  const [button, outcome] = ATTEMPT[attempt]!;
  // A throw from the catcher is taken for one at a runner going, any other for a pickoff.
  if (attempt !== (by[0] === 2 ? 'steal' : 'pickoff')) await hand.button(button);
  await hand.fielders(...by);
  await chosen(hand, `${outcome} ${at} ${by.length === 1 ? `${by[0]}, unassisted` : by.join('-')}`);
}
