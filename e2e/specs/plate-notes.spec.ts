/** Kind and speed of a pitch, for a scorer who notes them; and fielders who change places by a drag. */
import { expect, test, watchErrors } from '../support/app.ts';
import { log, opening, openGame, Thumb, type Event } from '../support/plate.ts';
import type { Locator, Page } from '@playwright/test';

async function situation(page: Page, name: string, events: Event[] = []): Promise<Thumb> {
  await openGame(page, name, [...opening(), ...events]);
  return new Thumb(page, name);
}

/** A finger goes down on a token, over the field and up on another: as a touch screen reports it. */
async function dragByTouch(page: Page, from: Locator, to: Locator): Promise<void> {
  const middle = async (of: Locator) => {
    const box = await of.boundingBox();
    if (!box) throw new Error('not in sight');
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const [a, b] = [await middle(from), await middle(to)];
  const devtools = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await touch('touchStart', [a]);
  for (let step = 1; step <= 8; step += 1) {
    await touch('touchMove', [{ x: a.x + ((b.x - a.x) * step) / 8, y: a.y + ((b.y - a.y) * step) / 8 }]);
  }
  // A finger that puts something down rests; one that lifts in full motion would set the page gliding.
  await page.waitForTimeout(150);
  await touch('touchMove', [b]);
  await touch('touchEnd', []);
  await devtools.detach();
}

test('kind and speed are noted after the pitch, and wait for nobody @shapes', async ({ page, picture }, info) => {
  const errors = watchErrors(page);
  const thumb = await situation(page, 'notes');
  const notes = page.locator('.notes');
  await expect(notes).toHaveCount(0);
  await thumb.tap(page.locator('.pitch.more'));
  await page.getByRole('button', { name: 'Note kind and speed' }).tap();
  await page.getByRole('button', { name: 'mph', exact: true }).tap();
  await page.getByRole('button', { name: 'Back' }).tap();
  await expect(notes.getByRole('button', { name: 'Fastball' })).toBeDisabled();
  const ball = page.locator('.pitch[data-call="Ball"]');
  const before = await ball.boundingBox();
  await thumb.pitch('Ball');
  expect(await ball.boundingBox(), 'a pitch moves no button').toEqual(before);
  await notes.getByRole('button', { name: 'Change-up' }).tap();
  expect(await thumb.last()).toMatchObject({ replace: { event: { pitch: { call: 'ball', kind: 'change_up' } } } });
  await page.getByRole('textbox', { name: /Speed/ }).fill('52');
  await page.getByRole('textbox', { name: /Speed/ }).press('Enter');
  await expect.poll(() => thumb.last()).toMatchObject({
    replace: { event: { pitch: { call: 'ball', kind: 'change_up', speed: 520 } } },
  });
  await expect(page.locator('.status')).toContainText('Noted: Change-up, 52 mph');
  expect((await thumb.board()).count).toBe('1-0');
  await picture(`plate-notes-${info.project.name}`);
  // The next pitch begins anew, without a word about this one.
  await thumb.pitch('CalledStrike');
  expect((await thumb.board()).count).toBe('1-1');
  await expect(page.getByRole('textbox', { name: /Speed/ })).toHaveValue('');
  await expect(notes.locator('[aria-pressed="true"]')).toHaveCount(0);
  // A ball put in play was a pitch too.
  await thumb.fielders(6, 3);
  await thumb.first();
  await notes.getByRole('button', { name: 'Fastball' }).tap();
  expect(await thumb.last()).toMatchObject({ replace: { event: { in_play: { kind: 'fastball' } } } });
  expect((await thumb.board()).outs).toBe('1');
  const box = await notes.getByRole('button', { name: 'Fastball' }).boundingBox();
  expect(box!.height).toBeGreaterThanOrEqual(56);
  expect(box!.height).toBeLessThanOrEqual(64);
  // Board, field, strip and pitches are in sight at once.
  const hidden = await page.locator('.plate').evaluate((plate) => plate.scrollHeight - plate.clientHeight);
  expect(hidden).toBeLessThanOrEqual(0);
  await page.goto('./#/game/notes/mound');
  await expect(page.locator('.today .noted')).toHaveText(
    'Noted: Fastball 1, Change-up 1, fastest 52, on average 52 mph (of 1 measured)',
  );
  expect(errors).toEqual([]);
});

test('two fielders change places by a drag of the finger @shapes', async ({ page }) => {
  const thumb = await situation(page, 'swap');
  const [left, center] = [page.locator('.token.at-7'), page.locator('.token.at-8')];
  const names = [await left.locator('.name').innerText(), await center.locator('.name').innerText()];
  // With no change of players under way a drag is nothing.
  const entries = (await log(page, 'swap')).length;
  await dragByTouch(page, left, center);
  expect((await log(page, 'swap')).length).toBe(entries);
  await page.keyboard.press('Escape');
  await thumb.corner('players');
  await dragByTouch(page, left, center);
  const { change } = await thumb.last();
  expect(change).toMatchObject({ side: 'home', change: { shift: { to: [{ post: 8 }, { post: 7 }] } } });
  await expect(left.locator('.name')).toHaveText(names[1]!);
  await expect(center.locator('.name')).toHaveText(names[0]!);
  // The finger that let go on a token has not touched it as well; the next touch counts.
  await expect(page.locator('.token[data-touched="true"]')).toHaveCount(0);
  await thumb.fielders(8);
  await expect(center).toHaveAttribute('data-touched', 'true');
});
