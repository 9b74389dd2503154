/** A pitch, and what the runners did on it. */
import { onBases } from './bases.ts';
import { chosen, type Hand } from './hand.ts';
import { place } from './words.ts';

const COMMON = ['ball', 'called_strike', 'swinging_strike', 'foul'];

export async function pitch(hand: Hand, what: any): Promise<void> {
  const { moves = [], misplays = [] } = what.action ?? {};
  const dropped = misplays.find((misplay: any) => misplay.kind === 'dropped_foul');
  if (dropped) {
    // A foul fly dropped is a foul with an error on it: it begins with the fielder.
    await hand.fielders(dropped.by);
    return chosen(hand, `Foul fly dropped by ${place(dropped.by)}`);
  }
  await thrown(hand, what.call);
  if (moves.some((move: any) => move.from === 'batter')) {
    await hand.tap(hand.page.locator('.got-away'));
    const wild = moves.some((move: any) => move.legs?.[0]?.cause === 'wild_pitch');
    return chosen(hand, `${wild ? 'Wild pitch' : 'Passed ball'}, batter safe`);
  }
  if (moves.length > 0) await onBases(hand, what.action);
}

async function thrown(hand: Hand, call: string): Promise<void> {
  const name = call.replace(/(^|_)(\w)/g, (_, __, letter: string) => letter.toUpperCase());
  await (COMMON.includes(call) ? hand.pitch(name) : hand.rarePitch(name));
}
