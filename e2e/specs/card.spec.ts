import type { Page } from '@playwright/test';
import { drawn, expect, test, watchErrors } from '../support/app.ts';
import { allKept, keeping } from '../support/clubhouse.ts';
import { harbor } from '../support/harbor.ts';

const side = (page: Page, at: number) => page.locator('.card .side').nth(at);
const names = (page: Page, at: number) => side(page, at).locator('.order').first().locator('input.name');

/** A new game with nothing on its cards. */
async function emptyCards(page: Page): Promise<void> {
  await page.goto('./');
  await drawn(page);
  await page.getByRole('button', { name: 'Fill in the cards first' }).tap();
  await expect(page.locator('main.card')).toBeVisible();
}

/** A new game with numbered batters on both cards. */
async function numberedCards(page: Page): Promise<void> {
  await emptyCards(page);
  for (const at of [0, 1]) await side(page, at).getByRole('button', { name: 'Fill in numbered batters' }).tap();
  await expect(names(page, 1)).toHaveCount(9);
}

const recorded = async (page: Page) => (await keeping(page)).recorded;

test('the cards say what is missing, and play begins when nothing needed is @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  await emptyCards(page);
  const play = page.getByRole('button', { name: 'Play ball' });
  await expect(page.locator('.missing.stops')).toContainText('Visitors: no lineup yet.');
  await expect(play).toBeDisabled();
  for (const at of [0, 1]) await side(page, at).getByRole('button', { name: 'Fill in numbered batters' }).tap();
  await expect(page.locator('.missing.stops')).toHaveCount(0);
  await expect(page.locator('.missing')).toContainText('9 players have neither name nor number yet');

  // The pitcher goes to the bench.
  await side(page, 0).getByRole('button', { name: 'Change the order' }).tap();
  await side(page, 0).getByRole('button', { name: 'Batter 1: to the bench' }).tap();
  await expect(page.locator('.missing.stops')).toContainText('Visitors: no pitcher.');
  await expect(play).toBeDisabled();
  await side(page, 0).locator('.bench').getByRole('button', { name: /Into the order/ }).tap();

  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
  await expect(play).toBeEnabled();
  await play.tap();
  await expect(page).toHaveURL(/\/plate$/);
  expect(errors).toEqual([]);
});

test('names of every kind are kept as written', async ({ page }) => {
  await numberedCards(page);
  const written = ['🧢 Ana María', '<script>document.title="x"</script>', 'O\'Neil "Ace" & Co', '山田'];
  for (const [place, name] of written.entries()) {
    await names(page, 0).nth(place).fill(name);
    await names(page, 0).nth(place).blur();
  }
  await allKept(page);
  await page.reload();
  for (const [place, name] of written.entries()) await expect(names(page, 0).nth(place)).toHaveValue(name);
  expect(await page.title()).toBe('Benchbook');
});

test('an edit is one entry, and no edit is none', async ({ page }) => {
  await numberedCards(page);
  const before = await recorded(page);
  await names(page, 0).first().tap();
  await names(page, 0).nth(1).tap();
  expect(await recorded(page)).toBe(before);
  await names(page, 0).first().pressSequentially('Nine letters');
  await names(page, 0).nth(1).tap();
  await expect.poll(() => recorded(page)).toBe(before + 1);
});

test('two players swap positions', async ({ page }) => {
  await numberedCards(page);
  const posts = side(page, 0).locator('.order').first().locator('select.post');
  await posts.nth(0).selectOption({ label: '6 SS' });
  await expect(posts.nth(5).locator('option:checked')).toHaveText('1 P');
  await expect(posts.nth(0).locator('option:checked')).toHaveText('6 SS');
});

test('the order changes by buttons and by dragging', async ({ page }) => {
  await numberedCards(page);
  await names(page, 0).first().fill('Leadoff');
  await names(page, 0).first().blur();
  await side(page, 0).getByRole('button', { name: 'Change the order' }).tap();
  const labels = side(page, 0).locator('.moving .label');
  await side(page, 0).getByRole('button', { name: 'Leadoff: down' }).tap();
  await expect(labels.nth(1)).toHaveText('Leadoff');

  const from = await side(page, 0).locator('.moving .handle').nth(1).boundingBox();
  const to = await side(page, 0).locator('.moving li').nth(4).boundingBox();
  if (!from || !to) throw new Error('the rows are not there');
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(to.x + 20, to.y + to.height / 2, { steps: 5 });
  await page.mouse.up();
  await expect(labels.nth(4)).toHaveText('Leadoff');
});

test('the order changes by a finger and by the keyboard', async ({ page }) => {
  await numberedCards(page);
  await names(page, 0).first().fill('Leadoff');
  await names(page, 0).first().blur();
  await side(page, 0).getByRole('button', { name: 'Change the order' }).tap();
  const labels = side(page, 0).locator('.moving .label');
  const middle = async (of: ReturnType<Page['locator']>) => {
    const box = await of.boundingBox();
    if (!box) throw new Error('the row is not there');
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const from = await middle(side(page, 0).locator('.moving .handle').first());
  const to = await middle(side(page, 0).locator('.moving li').nth(3));
  const finger = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', y: number) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: from.x, y }] });
  await touch('touchStart', from.y);
  for (const part of [0.3, 0.6, 0.9, 1]) await touch('touchMove', from.y + (to.y - from.y) * part);
  await touch('touchEnd', to.y);
  await expect(labels.nth(3)).toHaveText('Leadoff');

  await side(page, 0).getByRole('button', { name: 'Leadoff: up' }).focus();
  await page.keyboard.press('Enter');
  await expect(labels.nth(2)).toHaveText('Leadoff');
  await page.keyboard.press('Enter');
  await expect(labels.nth(1)).toHaveText('Leadoff');
});

test('the usual checks are ticked off, never stop the game, and the approval goes into the log', async ({ page }) => {
  await numberedCards(page);
  const usual = page.locator('.usual');
  await usual.locator('summary').tap();
  const lines = [
    'about 192 pitches are to be expected, so 32 to 39 balls where a new one comes in every 5 or 6 pitches',
    '3 or so do',
    '15 to 18 dozen',
    'the gloss is off',
    'at most 2.25 inches thick',
    'at most 33 inches long',
    'Metal bats only where your league allows them',
    '16 to 17 ounces at 8 to 10 years under 50 inches tall, up to 20 ounces above 60 inches; 18 to 23 ounces at 11 and 12',
    'Mitts only where the rules allow one',
    'Bases 60 feet apart.',
    "The pitcher's plate 46 feet from home.",
    "Your league's rules come first",
    'common practice, without a source',
  ];
  for (const line of lines) await expect(usual).toContainText(line);
  await usual.getByLabel(/gloss is off/).check();
  const before = await recorded(page);
  await usual.getByLabel('The umpire has approved field and equipment.').check();
  await expect.poll(() => recorded(page)).toBe(before + 1);
  await expect(usual.locator('summary')).toContainText(/^.*2 of \d+$/);
  await allKept(page);
  await page.reload();
  await usual.locator('summary').tap();
  await expect(usual.getByLabel(/gloss is off/)).toBeChecked();
  await expect(usual.getByLabel('The umpire has approved field and equipment.')).toBeChecked();
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Book' }).tap();
  await page.getByRole('button', { name: 'Play by play' }).tap();
  await expect(page.locator('.half').filter({ hasText: 'Before the first pitch' })).toContainText('The umpire has approved');
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Card' }).tap();

  await page.locator('.rules > summary').tap();
  await page.getByLabel('Start from').selectOption({ label: 'Baseball, 9 innings' });
  for (const line of ['27 to 31 ounces', 'Wooden bats only', '60 feet 6 inches']) await expect(usual).toContainText(line);
  await page.getByLabel('Start from').selectOption({ label: 'Slow-pitch softball, 7 innings' });
  for (const line of ['at least 6 and at most 12 feet high', 'from 46 to 50 feet', '10 to 13 feet', '18 to 23 ounces', '27 to 31']) {
    await expect(usual).toContainText(line);
  }
  await page.getByRole('button', { name: 'Play ball' }).tap();
  await expect(page).toHaveURL(/\/plate$/);
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  await expect(page.locator('.changes')).toContainText('The umpire has approved field and equipment.');
});

test('a designated hitter brings the fielder he bats for', async ({ page }) => {
  await numberedCards(page);
  await page.locator('.rules > summary').tap();
  await page.getByLabel('Start from').selectOption({ label: 'Baseball, 9 innings' });
  const posts = side(page, 0).locator('.order').first().locator('select.post');
  await posts.nth(0).selectOption({ label: 'DH' });
  await expect(side(page, 0)).toContainText('Fields, does not bat');
  await expect(side(page, 0).locator('.order').nth(1).locator('option:checked').first()).toHaveText('1 P');
  await expect(page.locator('.missing.stops')).toHaveCount(0);
  await side(page, 0).getByRole('button', { name: 'No designated hitter' }).tap();
  await expect(posts.nth(0).locator('option:checked')).toHaveText('1 P');
});

test('everyone bats where the rules say so, and no more than the rules take elsewhere', async ({ page }) => {
  await numberedCards(page);
  const add = side(page, 0).getByRole('button', { name: 'Add a batter' });
  for (let i = 0; i < 3; i++) await add.tap();
  await expect(names(page, 0)).toHaveCount(12);
  await page.locator('.rules > summary').tap();
  await page.getByLabel('Start from').selectOption({ label: 'Baseball, 9 innings' });
  await expect(add).toBeDisabled();
  await expect(page.locator('.missing')).toContainText('12 batters; the rules of play take 9.');
});

test('every rule can be changed, and the difference from the preset is told', async ({ page }) => {
  await numberedCards(page);
  await page.locator('.rules > summary').tap();
  await expect(page.locator('.rules')).toContainText("Your league's rules come first.");
  await page.locator('.every > summary').tap();
  const limit = page.getByLabel('Most pitches a pitcher may throw in a day');
  await limit.fill('85');
  await limit.blur();
  await expect(page.locator('.rules')).toContainText('1 rule differs from it.');
  await page.getByLabel('Runners may steal').uncheck();
  await expect(page.locator('.rules')).toContainText('2 rules differ from it.');
  await limit.fill('many');
  await limit.blur();
  await expect(limit).toHaveValue('85');
  await allKept(page);
  await page.reload();
  await page.locator('.rules > summary').tap();
  await page.locator('.every > summary').tap();
  await expect(limit).toHaveValue('85');
  await expect(page.getByLabel('Runners may steal')).not.toBeChecked();
});

test('once play has begun cards and rules are read, names are written, and changes are told', async ({ page }) => {
  await harbor(page, 'card', 330);
  await expect(page.locator('select.post')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Change the order' })).toHaveCount(0);
  await expect(page.locator('.changes')).toContainText('Gustav Iyer comes in to pitch for Paloma Whitcombe.');
  await page.locator('.rules > summary').tap();
  await page.locator('.every > summary').tap();
  await expect(page.getByLabel('Innings', { exact: true })).toBeDisabled();
  await names(page, 0).first().fill('T. Okwera');
  await names(page, 0).first().blur();
  await allKept(page);
  await page.reload();
  await expect(names(page, 0).first()).toHaveValue('T. Okwera');
});
