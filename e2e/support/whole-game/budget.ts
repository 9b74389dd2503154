/** How many taps an entry may take, and what kind of entry it is. */
import type { Event } from '../plate.ts';
import { parts } from './record.ts';

const ONE_TAP = ['ball', 'called_strike', 'swinging_strike', 'foul'];

export interface Budget {
  kind: string;
  taps: number;
}

export function budget(event: Event): Budget {
  const [kind, what] = parts(event);
  const { moves = [], misplays = [] } = what.action ?? {};
  const outs = moves.filter((move: any) => move.out).length;
  switch (kind) {
    case 'pitch':
      if (misplays.length > 0) return { kind: 'foul fly dropped', taps: 3 };
      if (moves.some((move: any) => move.from === 'batter')) return { kind: 'strike three got away', taps: 3 };
      if (outs > 0) return { kind: 'pitch, and a runner out', taps: 8 };
      if (moves.length > 0) return { kind: 'pitch, and a runner goes', taps: 3 };
      return ONE_TAP.includes(what.call) ? { kind: 'pitch', taps: 1 } : { kind: 'rarer pitch', taps: 2 };
    case 'in_play':
      return inPlay(what, outs, misplays.length);
    case 'running':
      return outs > 0 ? { kind: 'runner out between pitches', taps: 8 } : { kind: 'runners move', taps: 2 };
    case 'change':
      return { kind: 'change of players', taps: 3 };
    default:
      return { kind: kind.replace('_', ' '), taps: 2 };
  }
}

function inPlay(what: any, outs: number, errors: number): Budget {
  const longest = Math.max(0, ...what.action.moves.map((move: any) => move.out?.by.length ?? 0));
  if (outs > 1) return { kind: 'double play', taps: 4 };
  if (longest > 3) return { kind: 'rundown', taps: 8 };
  if (errors > 0) return { kind: 'error', taps: 8 };
  if (what.ball.trajectory === 'bunt') return { kind: 'bunt', taps: 4 };
  return outs > 0 ? { kind: 'out', taps: 3 } : { kind: 'hit', taps: 3 };
}
