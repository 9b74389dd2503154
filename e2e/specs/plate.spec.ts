import { drawn, expect, test, watchErrors } from '../support/app.ts';
import { startGame } from '../support/clubhouse.ts';
import { DRAWN, GRASS, log, opening, openGame, order, runnersOn, STRUCK_OUT, Thumb, type Event } from '../support/plate.ts';
import type { Page } from '@playwright/test';

/** A situation, and a thumb in it. */
async function situation(page: Page, name: string, events: Event[] = [], rules = {}): Promise<Thumb> {
  await openGame(page, name, [...opening(rules), ...events]);
  return new Thumb(page, name);
}

const strikes = (n: number): Event[] => Array.from({ length: n }, () => ({ pitch: { call: 'called_strike' } }));

test.describe('budgets of taps @shapes', () => {
  test('a pitch is one tap', async ({ page }) => {
    const thumb = await situation(page, 'pitch');
    for (const [call, kind, count] of [
      ['Ball', 'ball', '1-0'],
      ['CalledStrike', 'called_strike', '1-1'],
      ['SwingingStrike', 'swinging_strike', '1-2'],
      ['Foul', 'foul', '1-2'],
    ] as const) {
      thumb.reset();
      await thumb.pitch(call);
      expect((await thumb.board()).count).toBe(count);
      expect(await thumb.last()).toEqual({ pitch: { call: kind } });
      expect(thumb.taps).toBe(1);
    }
  });

  test('a routine ground-out is three', async ({ page }) => {
    const thumb = await situation(page, 'ground-out');
    await thumb.fielders(6, 3);
    await thumb.first();
    expect(thumb.taps).toBe(3);
    expect((await thumb.board()).outs).toBe('1');
    const { in_play } = await thumb.last();
    expect(in_play.ball).toMatchObject({ trajectory: 'ground', fielders: [6, 3] });
    expect(in_play.action.moves).toEqual([{ from: 'batter', out: { how: 'force', at: 'first', by: [6, 3] } }]);
  });

  test('a fly-out is two', async ({ page }) => {
    const thumb = await situation(page, 'fly-out');
    await thumb.fielders(8);
    await thumb.first();
    expect(thumb.taps).toBe(2);
    const { in_play } = await thumb.last();
    expect(in_play.ball.trajectory).toBe('fly');
    expect(in_play.action.moves).toEqual([{ from: 'batter', out: { how: 'fly', at: 'first', by: [8] } }]);
  });

  test('a clean single with the runners moving as usual is two', async ({ page }) => {
    const thumb = await situation(page, 'single', runnersOn('first', 'second'));
    await thumb.grass(GRASS.shallowLeft);
    await thumb.first();
    expect(thumb.taps).toBe(2);
    expect(await thumb.board()).toMatchObject({ runs: ['1', '0'], runners: [1, 2], outs: '0' });
    const { in_play } = await thumb.last();
    expect(in_play.ball.fielders).toEqual([7]);
    expect(in_play.ball.spot.x).toBeLessThan(-50);
    expect(in_play.ball.spot.y).toBeGreaterThan(150);
  });

  test('a strikeout is its pitch, and three taps if the ball got away', async ({ page }) => {
    const thumb = await situation(page, 'strikeout', strikes(2));
    await thumb.pitch('SwingingStrike');
    expect(thumb.taps).toBe(1);
    expect((await thumb.board()).outs).toBe('1');
    await thumb.tap(page.getByRole('button', { name: 'Strike three got away' }));
    await thumb.outcome('Wild pitch');
    expect(thumb.taps).toBe(3);
    expect(await thumb.board()).toMatchObject({ outs: '0', runners: [1] });
  });

  test('a double play is four', async ({ page }) => {
    const thumb = await situation(page, 'double-play', runnersOn('first'));
    await thumb.fielders(6, 4, 3);
    await thumb.first();
    expect(thumb.taps).toBe(4);
    expect(await thumb.board()).toMatchObject({ outs: '2', runners: [] });
    const { in_play } = await thumb.last();
    expect(in_play.action.moves.map((m: any) => m.out.by)).toEqual([
      [6, 4],
      [4, 3],
    ]);
  });

  test('a steal is two, or one drag', async ({ page }) => {
    const thumb = await situation(page, 'steal', runnersOn('first'));
    await thumb.pitch('Ball');
    thumb.reset();
    await thumb.runner(1);
    await thumb.outcome('Steals second');
    expect(thumb.taps).toBe(2);
    expect((await thumb.board()).runners).toEqual([2]);
    expect(await thumb.last()).toMatchObject({
      running: { action: { moves: [{ from: 'first', legs: [{ to: 'second', cause: 'steal' }] }] }, same_play: true },
    });
    thumb.reset();
    await thumb.drag(page.locator('.token.on-2'), DRAWN.third);
    expect(thumb.taps).toBe(1);
    expect((await thumb.board()).runners).toEqual([3]);
  });

  test('a rundown with an error in it is at most eight', async ({ page }) => {
    const thumb = await situation(page, 'rundown', runnersOn('first'));
    await thumb.runner(1);
    await thumb.button('Picked off');
    await thumb.fielders(1, 3, 6, 4);
    await thumb.outcome('dropped by second');
    expect(thumb.taps).toBeLessThanOrEqual(8);
    expect(await thumb.board()).toMatchObject({ outs: '0', runners: [2] });
    const { running } = await thumb.last();
    expect(running.action.misplays).toEqual([{ by: 4, kind: 'muff', after: [1, 3, 6], spared: 'first' }]);
  });

  test('a batted ball and a rundown of six fielders is at most eight', async ({ page }) => {
    const thumb = await situation(page, 'long-rundown', runnersOn('third', 'first'));
    await thumb.fielders(5, 2, 5, 2, 6, 1);
    await thumb.outcome(/rundown/);
    expect(thumb.taps).toBeLessThanOrEqual(8);
    const { in_play } = await thumb.last();
    const out = in_play.action.moves.find((m: any) => m.out);
    expect(out).toMatchObject({ from: 'third', out: { how: 'tag', at: 'home', by: [5, 2, 5, 2, 6, 1] } });
    expect((await thumb.board()).outs).toBe('1');
  });

  test('a hit with a bad throw and two runners put elsewhere by hand is at most eight', async ({ page }) => {
    const thumb = await situation(page, 'adjusted', runnersOn('first', 'second'));
    await thumb.grass(GRASS.shallowLeft);
    await thumb.tap(page.locator('.adjust').first());
    await thumb.drag(page.locator('.token.on-1'), DRAWN.home);
    await thumb.button(/Error by 7/);
    await thumb.drag(page.locator('.token.batter'), DRAWN.second);
    await thumb.button('Record');
    expect(thumb.taps).toBeLessThanOrEqual(8);
    expect(await thumb.board()).toMatchObject({ runs: ['2', '0'], runners: [2] });
    const { in_play } = await thumb.last();
    expect(in_play.action.misplays).toMatchObject([{ by: 7, kind: 'fielding' }]);
    const legs = in_play.action.moves.find((m: any) => m.from === 'batter').legs;
    expect(legs).toEqual([
      { to: 'first', cause: 'play' },
      { to: 'second', cause: { error: 0 } },
    ]);
  });
});

test.describe('the look @shapes', () => {
  test('nothing overlaps, nothing scrolls, every target is large enough', async ({ page, picture }, info) => {
    test.setTimeout(180_000); // ten pictures
    const errors = watchErrors(page);
    const thumb = await situation(page, 'look', [
      { pitch: { call: 'ball' } },
      { pitch: { call: 'called_strike' } },
      ...runnersOn('first', 'second', 'third'),
    ]);
    const name = info.project.name;
    const check = async (what: string) => {
      await picture(`plate-${name}-${what}`);
      expect(await faults(page), what).toEqual([]);
    };
    await check('waiting');
    await thumb.fielders(6);
    await check('touched');
    await thumb.fielders(4, 3);
    await check('proposals');
    await thumb.tap(page.locator('.adjust').first());
    await thumb.batter();
    await check('adjusting');
    await page.keyboard.press('Escape');
    await thumb.runner(1);
    await check('runner');
    await page.keyboard.press('Escape');
    await thumb.tap(page.locator('.pitch.more'));
    await check('more');
    await page.keyboard.press('Escape');
    await thumb.corner('players');
    await thumb.fielders(1);
    await check('players');
    await thumb.corner('players');
    await thumb.corner('umpire');
    await check('umpire');
    await page.keyboard.press('Escape');
    await thumb.fielders(8);
    await thumb.first();
    await check('after');
    expect(errors).toEqual([]);
  });

  test('night, and the left hand', async ({ page, picture }, info) => {
    await situation(page, 'night', runnersOn('second'));
    await page.evaluate(() => {
      document.documentElement.dataset.light = 'night';
      document.documentElement.dataset.hand = 'left';
    });
    await picture(`plate-${info.project.name}-night-left`);
    expect(await faults(page)).toEqual([]);
  });
});

/** What is wrong with the page as it shows: in words. */
function faults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const root = document.documentElement;
    if (root.scrollHeight > innerHeight) faults.push(`the page is ${root.scrollHeight} px high`);
    if (root.scrollWidth > innerWidth) faults.push(`the page is ${root.scrollWidth} px wide`);
    const says = (el: Element) => el.getAttribute('aria-label') ?? el.textContent ?? '';
    const buttons = [...document.querySelectorAll('.plate button')].filter((el) => el.checkVisibility());
    const boxes = buttons.map((el) => ({ el, says: says(el), box: el.getBoundingClientRect() }));
    for (const { says, box } of boxes) {
      if (box.width < 56 || box.height < 56) faults.push(`"${says}" is ${box.width} by ${box.height}`);
    }
    // What is reached by scrolling within a list may lie under its edge; tokens and corners may not.
    const fixed = boxes.filter(({ el }) => el.closest('.field, .pitches'));
    for (const { el, says, box } of fixed) {
      if (box.left < 0 || box.top < 0 || box.right > innerWidth + 0.5 || box.bottom > innerHeight + 0.5) {
        faults.push(`"${says}" sticks out`);
      }
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      if (!el.contains(document.elementFromPoint(x, y))) faults.push(`"${says}" is covered`);
    }
    const round = (box: DOMRect) => ({ x: box.left + box.width / 2, y: box.top + box.height / 2 });
    for (const [i, one] of fixed.entries()) {
      for (const other of fixed.slice(i + 1)) {
        const [a, b] = [round(one.box), round(other.box)];
        if (Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) < 40) faults.push(`"${one.says}" and "${other.says}" touch`);
      }
    }
    for (const el of document.querySelectorAll('.plate-board .team, .plate-board .runs, .plate-board .count, .pitch b, .pitch span, .token b')) {
      if (el.scrollWidth > el.clientWidth + 1 && !el.matches('.team, span')) faults.push(`"${el.textContent}" is cut off`);
    }
    return faults;
  });
}

test('a refusal says why, and nothing is lost', async ({ page }) => {
  const thumb = await situation(page, 'refused', runnersOn('first', 'second'));
  const before = await log(page, 'refused');
  await thumb.grass(GRASS.shallowLeft);
  await thumb.tap(page.locator('.adjust').first());
  // The runner from first is sent to third, where by his own wish the one from second stays.
  await thumb.runner(2);
  await thumb.button('Safe at third');
  await thumb.runner(1);
  await thumb.button('Safe at third');
  await thumb.button('Record');
  await expect(page.locator('.status')).toHaveText(/can't stand on third/);
  expect(await log(page, 'refused')).toEqual(before);
  // The draft is still there to be mended.
  await thumb.button('Safe at second');
  await thumb.button('Record');
  expect((await thumb.board()).runners).toEqual([1, 2, 3]);
});

test('the second half of a double tap on an outcome is no pitch', async ({ page }) => {
  const thumb = await situation(page, 'double-tap');
  await thumb.fielders(8);
  const box = await page.locator('.outcome').first().boundingBox();
  if (!box) throw new Error('no outcome in sight');
  // A point that lies on a pitch once the tray is gone.
  const at = { x: box.x + 30, y: box.y + box.height / 2 };
  await page.touchscreen.tap(at.x, at.y);
  await page.touchscreen.tap(at.x, at.y);
  await expect(page.locator('.pitches')).toBeVisible();
  const under = await page.evaluate(({ x, y }) => document.elementFromPoint(x, y)?.closest('.pitch')?.textContent, at);
  expect(under).toBeTruthy();
  expect(await thumb.last()).toHaveProperty('in_play');
  expect((await thumb.board()).count).toBe('0-0');
  // A little later the same place is a pitch like any other.
  await page.waitForTimeout(400);
  await page.touchscreen.tap(at.x, at.y);
  expect(await thumb.last()).toHaveProperty('pitch');
});

test('with text twice as large everything is still there to be touched', async ({ page, picture }) => {
  const thumb = await situation(page, 'large-text', runnersOn('first'));
  await page.addStyleTag({ content: 'html { font-size: 200% }' });
  await picture('plate-large-text');
  const wide = await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
  expect(wide).toBe(true);
  await thumb.fielders(6, 4, 3);
  await thumb.first();
  await thumb.pitch('Ball');
  expect(await thumb.board()).toMatchObject({ outs: '2', count: '1-0' });
});

test('undo takes back the last touch, then the last entry; redo puts it back', async ({ page }) => {
  const thumb = await situation(page, 'undo');
  await thumb.pitch('Ball');
  await thumb.fielders(6, 4);
  await thumb.corner('undo');
  await expect(page.locator('.token.at-4')).toHaveAttribute('data-touched', 'false');
  await thumb.corner('undo');
  await expect(page.locator('.pitches')).toBeVisible();
  expect((await thumb.board()).count).toBe('1-0');
  await thumb.corner('undo');
  expect((await thumb.board()).count).toBe('0-0');
  await thumb.corner('redo');
  expect((await thumb.board()).count).toBe('1-0');
});

test('by keyboard alone', async ({ page }) => {
  const thumb = await situation(page, 'keys', runnersOn('first'));
  for (const key of ['b', 'c', 's', 'f']) await page.keyboard.press(key);
  expect((await thumb.board()).count).toBe('1-2');
  for (const key of ['6', '4', '3', 'Enter']) await page.keyboard.press(key);
  expect(await thumb.board()).toMatchObject({ outs: '2', runners: [] });
  await page.keyboard.press('u');
  expect(await thumb.board()).toMatchObject({ outs: '0', runners: [1] });
  await page.keyboard.press('r');
  expect((await thumb.board()).outs).toBe('2');
  await page.keyboard.press('8');
  await page.keyboard.press('Escape');
  await expect(page.locator('.pitches')).toBeVisible();
  // What has no key of its own is reached with Tab and Enter.
  await page.locator('.pitch.more').focus();
  await page.keyboard.press('Enter');
  await page.locator('.pitch[data-call="HitByPitch"]').focus();
  await page.keyboard.press('Enter');
  expect((await thumb.board()).runners).toEqual([1]);
});

test('the half ends with a quiet card that blocks nothing', async ({ page }) => {
  const thumb = await situation(page, 'interlude', [...STRUCK_OUT, ...STRUCK_OUT, ...strikes(2)]);
  await thumb.pitch('CalledStrike');
  await expect(page.locator('.interlude')).toContainText('Middle of the 1st');
  await expect(page.locator('.interlude')).toContainText('Coming up');
  await thumb.pitch('Ball');
  await expect(page.locator('.interlude')).toHaveCount(0);
  expect((await thumb.board()).count).toBe('1-0');
});

test('a matter of judgment is one line, the usual answer first, and waits for nobody', async ({ page, picture }) => {
  const thumb = await situation(page, 'question', runnersOn('first'));
  const bunt = async () => {
    await thumb.fielders(1, 3);
    await thumb.button('Bunt');
    await thumb.first();
  };
  await bunt();
  await expect(page.locator('.ask')).toContainText('bunting for a hit?');
  await picture('plate-question');
  await expect(page.locator('.ask button').first()).toHaveText('No');
  await thumb.tap(page.locator('.ask').getByRole('button', { name: 'Yes' }));
  expect(await thumb.last()).toMatchObject({ judgment: { bunted_for_hit: { yes: true } } });
  await thumb.corner('undo');
  await thumb.corner('undo');
  await bunt();
  await expect(page.locator('.ask')).toBeVisible();
  // The game goes on without an answer.
  await thumb.pitch('Ball');
  expect((await thumb.board()).count).toBe('1-0');
  await expect(page.locator('.ask')).toHaveCount(0);
});

test('what is recorded is spoken', async ({ page }) => {
  const thumb = await situation(page, 'spoken', runnersOn('second'));
  const status = page.getByRole('status').and(page.locator('.status'));
  await thumb.grass(GRASS.shallowLeft);
  await thumb.first();
  await expect(status).toHaveText(/Single: .* scores\. no outs/);
});

test('every pitch can be entered by touch', async ({ page }) => {
  const thumb = await situation(page, 'pitches');
  const kinds = [
    ['Pitchout', 'pitchout'],
    ['IntentionalBall', 'intentional_ball'],
    ['AutomaticBall', 'automatic_ball'],
    ['IllegalPitch', 'illegal_pitch'], // walks
    ['FoulTip', 'foul_tip'],
    ['FoulBunt', 'foul_bunt'],
    ['MissedBunt', 'missed_bunt'], // struck out
    ['AutomaticStrike', 'automatic_strike'],
    ['HitByPitch', 'hit_by_pitch'],
    ['CatcherInterference', 'catcher_interference'], // bases full
    ['BatterInterference', 'batter_interference'],
  ] as const;
  for (const [call, kind] of kinds) {
    thumb.reset();
    await thumb.rarePitch(call);
    expect(thumb.taps).toBe(2);
    expect(await thumb.last()).toEqual({ pitch: { call: kind } });
  }
  expect(await thumb.board()).toMatchObject({ outs: '2', runners: [1, 2, 3] });
  await thumb.tap(page.locator('.pitch.more'));
  await thumb.button('Intentional walk');
  expect(await thumb.last()).toBe('intentional_walk');
  expect((await thumb.board()).runs[0]).toBe('1');
});

test('everything on the bases can be entered by touch', async ({ page }) => {
  test.setTimeout(180_000);
  const thumb = await situation(page, 'bases', [{ pitch: { call: 'ball' } }, ...runnersOn('first', 'third')]);
  const legs = async () => (await thumb.last()).running.action.moves.flatMap((m: any) => m.legs ?? []);
  for (const [outcome, cause, runners] of [
    ['Steals second', 'steal', [2, 3]],
    ['All steal together', 'steal', [2]],
    ['Wild pitch', 'wild_pitch', [2]],
    ['Passed ball', 'passed_ball', [2]],
    ['Balk', 'balk', [2]],
    ['Illegal pitch', 'illegal_pitch', [2]],
    ['Takes second unopposed', 'indifference', [2, 3]],
  ] as const) {
    thumb.reset();
    await thumb.runner(1);
    await thumb.outcome(outcome);
    expect(thumb.taps, outcome).toBe(2);
    expect((await legs())[0].cause, outcome).toBe(cause);
    expect((await thumb.board()).runners, outcome).toEqual(runners);
    await thumb.corner('undo');
  }
  for (const [button, fielders, outcome, attempt] of [
    ['Caught stealing', [2, 6], 'Caught stealing at second 2-6', 'steal'],
    ['Picked off', [1, 3], 'Picked off at first 1-3', 'pickoff'],
    ['Out advancing', [2, 4], 'Out advancing at second 2-4', 'advance'],
  ] as const) {
    thumb.reset();
    await thumb.runner(1);
    await thumb.button(button);
    await thumb.fielders(...fielders);
    await thumb.outcome(outcome);
    expect(thumb.taps, button).toBe(5);
    expect((await thumb.last()).running.action.moves[0].out).toMatchObject({ by: fielders, attempt });
    expect(await thumb.board(), button).toMatchObject({ outs: '1', runners: [3] });
    await thumb.corner('undo');
  }
  // A throw that goes wild, and one that is dropped.
  await thumb.runner(1);
  await thumb.button('Picked off');
  await thumb.fielders(1, 3);
  await thumb.outcome(/bad throw by pitcher/);
  expect((await thumb.last()).running.action.misplays).toEqual([{ by: 1, kind: 'throwing' }]);
  await thumb.corner('undo');
  // A wild pitch on which only one of them went.
  await thumb.runner(3);
  await thumb.tap(page.locator('li', { hasText: 'Wild pitch' }).locator('.adjust'));
  await thumb.runner(1);
  await thumb.button('Stays');
  await thumb.button('Record');
  expect(await thumb.board()).toMatchObject({ runs: ['1', '0'], runners: [1] });
});

test('what the umpire declares', async ({ page }) => {
  const thumb = await situation(page, 'umpire', runnersOn('second'));
  const umpire = async (button: string | RegExp) => {
    await thumb.corner('umpire');
    await thumb.button(button);
  };
  const said = async (event: Event) => expect(await thumb.last()).toEqual(event);
  await thumb.corner('umpire');
  await page.locator('.counts').getByRole('button', { name: '3-2' }).tap();
  await said({ set_count: { balls: 3, strikes: 2 } });
  expect((await thumb.board()).count).toBe('3-2');
  await thumb.corner('umpire');
  await page.getByRole('button', { name: 'first', exact: true }).tap();
  await page.locator('.umpire-tray .chips').last().getByRole('button', { name: 'Bram Delacroy' }).tap();
  await said({ place_runner: { base: 'first', player: order('visitors')[3] } });
  await umpire('Struck out looking');
  await said({ unseen: { result: 'strikeout_looking' } });
  await umpire('Rafi Ostrander');
  await expect.poll(() => thumb.last()).toMatchObject({ batter_up: {} });
  await umpire('Appeal');
  await said('out_of_turn_appeal');
  await thumb.corner('umpire');
  await page.getByLabel('In your words').fill('Lightning');
  await thumb.button('Play stops');
  await said({ status: { delayed: { why: 'Lightning' } } });
  await thumb.button('Play goes on');
  await said({ status: 'resumed' });
  await thumb.corner('umpire');
  await page.getByLabel('In your words').fill('Bat over the limit');
  await thumb.button('Protest');
  await said({ protest: { text: 'Bat over the limit' } });
  await thumb.corner('umpire');
  await page.getByLabel('In your words').fill('Wind from left');
  await thumb.button('Note');
  await said({ note: { text: 'Wind from left' } });
  await umpire('End the half-inning');
  await said({ end_half: {} });
  await umpire('Called');
  await said({ status: { called: {} } });
  await expect(page.locator('.no-play')).toContainText('Called');
});

test('who has no number yet is told apart by name, and nothing runs over a token', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('./');
  await drawn(page);
  const game = await startGame(page);
  await page.getByRole('button', { name: 'Play ball' }).tap();
  const thumb = new Thumb(page, game);
  await thumb.fielders(6);
  await thumb.outcome('Error by short');
  const token = page.locator('.token.on-1');
  await expect(token.locator('.name')).toHaveText('Batter 1');
  const printed = await token.locator('b').boundingBox();
  const box = await token.boundingBox();
  expect(printed!.width).toBeLessThanOrEqual(box!.width);
  await thumb.runner(1);
  await expect(page.locator('.outcomes')).toContainText('Batter 1 to second');
});

test('changes of players', async ({ page, picture }, info) => {
  const thumb = await situation(page, 'people', runnersOn('first'));
  const last = async () => (await thumb.last()).change;
  // A new pitcher from the bench: the button, the token, the player.
  await thumb.corner('players');
  await thumb.fielders(1);
  await picture(`plate-${info.project.name}-bench`);
  expect(thumb.taps).toBe(2);
  await thumb.button('Corvane');
  expect(await last()).toMatchObject({ side: 'home', change: { substitute: { role: { fielder: 1 } } } });
  await expect(page.locator('.token.at-1')).toContainText('Corvane');
  // Two fielders change places.
  await thumb.corner('players');
  await thumb.fielders(4);
  await thumb.button(/^SS /);
  expect(await last()).toMatchObject({ change: { shift: { to: [{ post: 6 }, { post: 4 }] } } });
  // A pinch hitter whom nobody thought of: the batter's token, number and name, and in.
  await thumb.batter();
  await page.getByLabel('No.').fill('99');
  await page.getByLabel('Name').fill('Robin <b>Vale</b> 🦉');
  await thumb.button('Comes in');
  expect(await last()).toMatchObject({ side: 'visitors', change: { substitute: { role: 'pinch_hitter' } } });
  await expect(page.locator('.plate-board .at-bat')).toContainText('Robin <b>Vale</b> 🦉');
  // A pinch runner.
  await thumb.corner('players');
  await thumb.runner(1);
  await thumb.button('Achterberg');
  expect(await last()).toMatchObject({ change: { substitute: { role: 'pinch_runner' } } });
  // Whoever has left can't come back under these rules, and it says so.
  await thumb.corner('players');
  await thumb.fielders(1);
  await thumb.button('Whitcombe');
  await expect(page.locator('.status')).toHaveText(/has left the game/);
});

test('rules of play decide what is offered', async ({ page }) => {
  const noSteals = await situation(page, 'slow', runnersOn('first'), { stealing: false });
  await noSteals.runner(1);
  await expect(page.locator('.outcome').filter({ hasText: 'Steals' })).toHaveCount(0);
  const noDrop = await situation(page, 'no-drop', strikes(2), { dropped_third_strike: false });
  await noDrop.pitch('SwingingStrike');
  await expect(page.getByRole('button', { name: 'Strike three got away' })).toHaveCount(0);
});

test('whoever bats is in the order', () => {
  expect(order('visitors')).toHaveLength(9);
});
