/** A ball in play: what is touched on the field, then the outcome that says what the paper says. */
import { chosen, type Hand } from './hand.ts';
import { headline, running } from './words.ts';

export async function inPlay(hand: Hand, play: any): Promise<void> {
  const { ball, action } = play;
  const [what, told] = [await headline(play, hand), await running(action, hand)];
  const fielders = ball.fielders ?? [];
  const nobodyHadIt = fielders.length === 0;
  const hit = /^(Single|Double|Triple)$/.test(what);
  // Where it came down tells who picked it up, unless somebody else ran there.
  if (nobodyHadIt || (hit && (await hand.nearestOutfielder(ball.spot)) === fielders[0] && isDeep(ball.spot))) {
    await hand.ground(ball.spot);
  } else {
    await hand.fielders(...fielders);
  }
  if (await needsSaying(hand, ball, what, told)) await hand.offTheBat(ball.trajectory);
  await chosen(hand, what, told);
}

/** Past the infielders, where an outfielder picks a ball up. */
const isDeep = (spot: { x: number; y: number }): boolean => Math.hypot(spot.x, spot.y) > 180;

/** The tray takes some balls for something else than they were: then it has to be told. */
async function needsSaying(hand: Hand, ball: any, what: string, told: string[]): Promise<boolean> {
  if (ball.left_park || !(await hand.find(what, told))) return !ball.left_park;
  if (/^(Single|Double|Triple)$/.test(what)) return ball.trajectory !== (what === 'Single' ? 'line' : 'fly');
  // A bunt on which everybody is safe reads like a ground ball.
  return ball.trajectory === 'bunt' && !what.startsWith('Bunt');
}
