import type { Page } from '@playwright/test';
import { drawn, expect, test, watchErrors } from '../support/app.ts';
import { allKept, startGame, toClubhouse } from '../support/clubhouse.ts';
import { harbor } from '../support/harbor.ts';

const LANTERNS = 'Pier Nine Lanterns';
const side = (page: Page, at: number) => page.locator('.card .side').nth(at);
const order = (page: Page, at: number) => side(page, at).locator('.order').first();
const names = (page: Page, at: number) => order(page, at).locator('input.name');
const values = (page: Page, at: number) => names(page, at).evaluateAll((all: HTMLInputElement[]) => all.map((i) => i.value));

/** The Clubhouse of a device that has the whole paper game, and that game's cards as handed in. */
async function afterOneGame(page: Page): Promise<{ home: string[]; posts: string[] }> {
  await harbor(page, 'card', 40);
  const home = await values(page, 1);
  const posts = await order(page, 1).locator('.post option:checked, span.post').allInnerTexts();
  expect(home.length).toBe(9);
  await toClubhouse(page);
  return { home, posts };
}

test('a game begins with a team earlier games know, and its last card @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  const { home } = await afterOneGame(page);
  await page.getByLabel('Known team, at home').selectOption(LANTERNS);
  await expect(page.getByLabel('Home', { exact: true })).toHaveValue(LANTERNS);
  await expect(page.getByLabel('With its card of 2026-06-13')).toBeChecked();
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: 'Fill in the cards first' }).tap();
  await expect(names(page, 1)).toHaveCount(9);
  expect(await values(page, 1)).toEqual(home);
  await expect(side(page, 0)).toContainText('No lineup yet.');
  expect(errors).toEqual([]);
});

test('a known team can begin without its card, and a team typed is as good as one chosen', async ({ page }) => {
  await afterOneGame(page);
  await page.getByLabel('Home', { exact: true }).fill('pier nine lanterns');
  await page.getByLabel('With its card of 2026-06-13').uncheck();
  await page.getByRole('button', { name: /^Score now/ }).tap();
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  expect(await values(page, 1)).toEqual(Array(9).fill(''));
});

test('one tap copies the last card, order, positions and bench; then it is edited', async ({ page }) => {
  const { home, posts } = await afterOneGame(page);
  await startGame(page, { home: 'Somebody Else' });
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  await side(page, 1).getByLabel('A team from earlier games').selectOption(LANTERNS);
  await side(page, 1).getByRole('button', { name: 'Copy the last card (2026-06-13)' }).tap();
  await expect.poll(() => values(page, 1)).toEqual(home);
  expect(await order(page, 1).locator('.post option:checked').allInnerTexts()).toEqual(posts);
  const bench = side(page, 1).locator('.bench input.name');
  expect(await bench.count()).toBeGreaterThan(0);
  await expect(side(page, 1).getByRole('button', { name: /Copy the last card/ })).toHaveCount(0);

  // Edited, it can be copied again: two taps, since names stand there.
  await names(page, 1).first().fill('A guest');
  await names(page, 1).first().blur();
  await side(page, 1).getByRole('button', { name: /Copy the last card/ }).tap();
  await side(page, 1).getByRole('button', { name: 'Tap again: it replaces this card' }).tap();
  await expect.poll(() => values(page, 1)).toEqual(home);
  await allKept(page);
  await page.reload();
  await expect.poll(() => values(page, 1)).toEqual(home);
});

test('players are tapped in from the roster, and suggested while a name is typed', async ({ page }) => {
  const { home } = await afterOneGame(page);
  await page.getByLabel('Home', { exact: true }).fill(LANTERNS);
  await page.getByLabel('With its card of 2026-06-13').uncheck();
  await page.getByRole('button', { name: /^Score now/ }).tap();
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  const known = side(page, 1).locator('.known');
  await known.locator('summary').tap();
  await known.getByRole('button', { name: new RegExp(`${home[3]}$`) }).tap();
  await known.getByRole('button', { name: new RegExp(`${home[1]}$`) }).tap();
  await expect.poll(() => values(page, 1)).toEqual([home[3], home[1], ...Array(7).fill('')]);
  await expect(order(page, 1).locator('input.number').first()).not.toHaveValue('');
  await expect(known.getByRole('button', { name: new RegExp(`${home[3]}$`) })).toHaveCount(0);

  const list = await names(page, 1).nth(2).getAttribute('list');
  const suggested = await page.locator(`#${list} option`).evaluateAll((all: HTMLOptionElement[]) => all.map((o) => o.value));
  expect(suggested).toContain(home[5]);
  expect(suggested).not.toContain(home[3]);
  await names(page, 1).nth(2).fill(home[5] ?? '');
  await names(page, 1).nth(2).blur();
  await expect(order(page, 1).locator('input.number').nth(2)).not.toHaveValue('');
});

test('a game thrown away makes no team known', async ({ page }) => {
  await afterOneGame(page);
  await expect(page.getByLabel('Known team, at home')).toBeVisible();
  await page.getByRole('button', { name: `Throw away Millrace Otters at ${LANTERNS}` }).tap();
  await expect(page.getByLabel('Known team, at home')).toHaveCount(0);
  await page.getByRole('button', { name: 'Put it back' }).tap();
  await expect(page.getByLabel('Known team, at home')).toBeVisible();
});

test('hands and age are kept, and the Mound looks up the age @shapes', async ({ page }) => {
  await page.goto('./');
  await drawn(page);
  await startGame(page, { home: 'Harbor Herons' });
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  await side(page, 1).getByRole('button', { name: 'Bats, throws, age' }).tap();
  await expect(side(page, 1)).toContainText("Your league's rules and medical advice come first.");
  await page.getByLabel('Bats, Batter 1').last().selectOption('Both');
  await page.getByLabel('Throws, Batter 1').last().selectOption('Left');
  const age = page.getByLabel('Age, Batter 1').last();
  await age.fill('11');
  await age.blur();
  await age.fill('old');
  await age.blur();
  await expect(age).toHaveValue('11');
  const small = await side(page, 1).locator('.about').first().locator('select, input').evaluateAll((all) =>
    all.map((e) => e.getBoundingClientRect()).filter((b) => b.width < 48 || b.height < 48).length,
  );
  expect(small).toBe(0);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
  await allKept(page);
  await page.reload();
  await side(page, 1).getByRole('button', { name: 'Bats, throws, age' }).tap();
  await expect(page.getByLabel('Bats, Batter 1').last().locator('option:checked')).toHaveText('Both');
  await page.getByRole('button', { name: 'Play ball' }).tap();
  await page.getByRole('link', { name: 'Mound', exact: true }).tap();
  await expect(page.locator('main.mound')).toContainText('Ages 11 to 12');
});

test('somebody who comes late joins the end of a continuous order', async ({ page }) => {
  await page.goto('./');
  await drawn(page);
  await startGame(page);
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  await page.getByRole('button', { name: 'Play ball' }).tap();
  await page.getByRole('link', { name: 'Card', exact: true }).tap();
  await side(page, 0).getByRole('button', { name: 'Add a player to the bench' }).tap();
  const bench = side(page, 0).locator('.bench .order li');
  await bench.locator('input.name').fill('Late Lou');
  await bench.locator('input.name').blur();
  await bench.getByRole('button', { name: 'Late Lou: joins at the end of the order' }).tap();
  await expect(names(page, 0)).toHaveCount(10);
  await expect(names(page, 0).last()).toHaveValue('Late Lou');
  await expect(page.locator('.changes')).toContainText('Late Lou joins the end of the order.');
});
