import type { Locator, Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';

const drawer = (page: Page) => page.getByRole('dialog', { name: 'Amend the play' });
const preview = (page: Page) => page.getByRole('dialog', { name: 'What would change' });
const scores = (page: Page) => page.locator('.scoreboard tbody').innerText();

/** Opens a line of the play-by-play, and the form in which its play is amended. */
async function amend(page: Page, line: Locator): Promise<Locator> {
  if ((await line.locator('.told').getAttribute('aria-expanded')) === 'false') await line.locator('.told').tap();
  await line.getByRole('button', { name: 'Amend this play…' }).tap();
  await expect(drawer(page)).toBeVisible();
  return drawer(page);
}

/** Somebody's part of the form. */
const part = (page: Page, who: RegExp) => drawer(page).getByRole('group', { name: who });

test('a single becomes a double with the runner scoring, and amended back it is the same book @shapes', async ({ page }) => {
  await harbor(page, 'book', 121);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const before = await scores(page);
  const line = page.locator('.line').nth(0);
  const told = (await line.locator('.words').innerText()).trim();
  expect(told).toContain('singles on a line drive to right field');

  await amend(page, line);
  const agree = drawer(page).getByRole('button', { name: 'See what changes' });
  await expect(agree).toBeDisabled();
  await part(page, /on first/).getByLabel('Ended').selectOption('Scored');
  await part(page, /at bat/).getByLabel('Ended').selectOption('Safe at second');
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wide, 'nothing scrolls sideways').toBeLessThanOrEqual(0);
  await agree.tap();
  await expect(preview(page)).toContainText('It was instead:');
  await expect(preview(page)).toContainText('doubles on a line drive to right field.');
  await expect(preview(page).getByRole('row', { name: /^Runs: Pier Nine Lanterns/ })).toContainText('1 → 2');
  expect(await scores(page), 'nothing is changed before it is agreed to').toBe(before);
  await preview(page).getByRole('button', { name: 'Leave it as it is' }).tap();
  await expect(drawer(page), 'the draft is still there').toBeVisible();

  await agree.tap();
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(drawer(page)).toBeHidden();
  await expect(line).toContainText('doubles on a line drive to right field.');
  await expect(page.locator('.scoreboard tbody tr').nth(1).locator('.sum.r')).toContainText('2');

  await amend(page, line);
  await part(page, /on first/).getByLabel('Ended').selectOption('Safe at third');
  await part(page, /at bat/).getByLabel('Ended').selectOption('Safe at first');
  await agree.tap();
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(line.locator('.words')).toHaveText(told);
  expect(await scores(page)).toBe(before);
});

test('who threw is changed, by touch in the order of the throws', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Tomas Okwera grounds out, shortstop to first baseman.' });
  await amend(page, line);
  const chain = drawer(page).locator('.chain').first();
  await chain.getByText('Handled by').tap();
  await chain.getByRole('button', { name: 'Clear' }).tap();
  await chain.getByRole('button', { name: /third baseman/ }).tap();
  await chain.getByRole('button', { name: /first baseman/ }).tap();
  await drawer(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('Tomas Okwera grounds out, third baseman to first baseman.');
  await expect(preview(page).getByRole('row', { name: /^Assists:/ })).toHaveCount(2);
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(page.locator('.line', { hasText: 'Tomas Okwera grounds out, third baseman to first baseman.' })).toBeVisible();
});

test('what usually follows is offered for the moment of the play, and a base has its own cause', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Tomas Okwera grounds out' });
  await amend(page, line);
  await drawer(page).getByText('Or take what usually follows').tap();
  const offered = drawer(page).locator('.usual-ends button');
  expect(await offered.count()).toBeGreaterThan(2);
  await part(page, /at bat/).getByLabel('Ended').selectOption('Safe at second');
  await part(page, /at bat/).getByLabel('Second, because').selectOption('On an error');
  await part(page, /at bat/).getByLabel('Error by').selectOption('first baseman');
  await drawer(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('by the first baseman');
  await preview(page).getByRole('button', { name: 'Leave it as it is' }).tap();
  await drawer(page).getByRole('button', { name: 'Start over' }).tap();
  await expect(part(page, /at bat/).getByLabel('Ended')).toHaveValue('out-1');
});

test('what cannot be is refused with its reason, and nothing is changed', async ({ page }) => {
  await harbor(page, 'book', 121);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line').nth(0);
  await amend(page, line);
  await part(page, /at bat/).getByLabel('Ended').selectOption('Safe at third');
  await drawer(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(drawer(page).locator('.refusal')).toContainText("Two runners can't stand on third.");
  await expect(preview(page)).toBeHidden();
});

test('a conflict that results is resolved in place', async ({ page }) => {
  await harbor(page, 'book', 128);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'singles on a line drive to right field' });
  await amend(page, line);
  await part(page, /on first/).getByLabel('Ended').selectOption('Scored');
  await part(page, /at bat/).getByLabel('Ended').selectOption('Safe at second');
  await drawer(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('No longer fits.');
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  const conflict = page.locator('.conflicts li').first();
  await expect(conflict).toContainText('Nobody is on first.');

  // He was picked off second, not first.
  await conflict.getByRole('button', { name: 'Amend this play…' }).tap();
  await part(page, /on second/).getByLabel('Ended').selectOption('Out at second');
  await part(page, /on second/).getByLabel('While').selectOption('picked off');
  await part(page, /on second/).getByText('Put out by').tap();
  await part(page, /on second/).getByRole('button', { name: /pitcher/ }).tap();
  await part(page, /on second/).getByRole('button', { name: /shortstop/ }).tap();
  await drawer(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('is picked off and out at second, pitcher to shortstop.');
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(page.locator('.conflicts')).not.toContainText('Nobody is on first.');

  const next = page.locator('.conflicts li').first();
  await expect(next).toContainText('Nobody is on third.');
  await next.getByRole('button', { name: /Leave out runners who are not there/ }).tap();
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(page.locator('.conflicts')).toBeHidden();
});
