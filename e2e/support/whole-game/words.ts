/** How the tray words a play, from what the paper says of it: what a scorer looks for among the outcomes. */
import type { Hand } from './hand.ts';

const POSITION = ['', 'pitcher', 'catcher', 'first', 'second', 'third', 'short', 'left', 'center', 'right'];
const HIT: Record<string, string> = { first: 'Single', second: 'Double', third: 'Triple' };

const isOut = (move: any): boolean => Boolean(move.out);
const last = (move: any): any => move.legs?.at(-1);
const chain = (by: number[]): string => (by.length === 1 ? `${by[0]}, unassisted` : by.join('-'));
/** A fielder as the tray names him. */
export const place = (n: number): string => `${POSITION[n]} (${n})`;

/** Fielders of all outs in the order of the ball. */
function handled(moves: any[]): number[] {
  return moves.filter(isOut).flatMap((move) => move.out.by).filter((by, i, all) => by !== all[i - 1]);
}

/** The headline of a ball in play. */
export async function headline(play: any, hand: Hand): Promise<string> {
  const { moves = [], misplays = [] } = play.action;
  const outs = moves.filter(isOut);
  const batter = moves.find((move: any) => move.from === 'batter');
  if (play.ball.left_park) return 'Home run';
  if (outs.some((move: any) => move.out.how === 'fly')) return caught(play, outs);
  if (outs.length > 1) return `Double play ${chain(handled(moves))}`;
  if (batter.out) return `${bunted(play, moves) ? 'Bunt, out at first' : 'Ground-out'} ${chain(batter.out.by)}`;
  if (outs.length === 1) return runnerOut(outs[0], await hand.nameAt(outs[0].from));
  if (misplays.length > 0) return error(batter, misplays[0]);
  if (batter.legs[0].cause === 'choice') return "Fielder's choice, everybody safe";
  return play.ball.fielders[0] <= 6 ? 'Infield single' : HIT[batter.legs[0].to]!;
}

function caught(play: any, outs: any[]): string {
  if (outs.length > 1) return `Caught, double play ${play.ball.fielders.join('-')}`;
  const by = outs[0].out.by[0];
  const kind = kindOf(play.ball, by);
  const what = { line: 'Line drive', pop: 'Pop', fly: 'Fly', 'foul pop': 'Foul pop', 'foul fly': 'Foul fly' }[kind];
  return `${what} caught by ${place(by)}${play.ball.infield_fly ? ' (infield fly)' : ''}`;
}

/** What an infielder catches is a pop or a line drive in the tray's words. */
function kindOf(ball: any, by: number): 'line' | 'pop' | 'fly' | 'foul pop' | 'foul fly' {
  const kind = ball.trajectory === 'fly' && by <= 6 ? 'pop' : ball.trajectory;
  return ball.foul ? `foul ${kind as 'pop' | 'fly'}` : kind;
}

const bunted = (play: any, moves: any[]): boolean => play.ball.trajectory === 'bunt' && moves.length > 1;

function runnerOut({ out }: any, name: string): string {
  const rundown = out.by.some((by: number, i: number) => out.by.indexOf(by) < i);
  return rundown
    ? `${name} caught in a rundown ${out.by.join('-')}`
    : `${name} out at ${out.at}, ${chain(out.by)}; batter safe`;
}

function error(batter: any, { by, kind }: any): string {
  const to = last(batter).to;
  if (kind === 'throwing') return `Bad throw by ${place(by)}${to === 'first' ? '' : `, batter to ${to}`}`;
  return kind === 'muff' ? `Throw dropped by ${place(by)}` : `Error by ${place(by)}`;
}

/** What the line under the headline says of those who moved on: "Ruiz to third". */
export async function running(action: any, hand: Hand): Promise<string[]> {
  const safe = (action.moves ?? []).filter((move: any) => !isOut(move));
  const told = safe.filter((move: any) => move.from !== 'batter' || move.legs.length > 1);
  return Promise.all(
    told.map(async (move: any) => {
      const { to } = last(move);
      return `${await hand.nameAt(move.from)} ${to === 'home' ? 'scores' : `to ${to}`}`;
    }),
  );
}
