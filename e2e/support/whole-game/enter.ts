/** Any entry of a log, entered by touch on the Plate. */
import { onBases } from './bases.ts';
import { change } from './change.ts';
import type { Hand } from './hand.ts';
import { inPlay } from './in-play.ts';
import { pitch } from './pitch.ts';
import type { Event } from '../plate.ts';
import { parts } from './record.ts';

export async function enter(hand: Hand, event: Event, name: (player: number) => string): Promise<void> {
  const [kind, what] = parts(event);
  switch (kind) {
    case 'pitch':
      return pitch(hand, what);
    case 'in_play':
      return inPlay(hand, what);
    case 'running':
      return onBases(hand, what.action);
    case 'change':
      return change(hand, what, name);
    case 'intentional_walk':
      await hand.tap(hand.page.locator('.pitch.more'));
      return hand.button('Intentional walk');
    case 'status':
      await hand.corner('umpire');
      return hand.button(what === 'final' ? /^Final$/ : /^Play goes on$/);
    default:
      throw new Error(`no way to enter ${kind} by touch`);
  }
}
