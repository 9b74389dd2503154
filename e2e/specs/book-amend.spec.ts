import type { Locator, Page } from '@playwright/test';
import { expect, test } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';
import { opening, openGame, paperGame } from '../support/plate.ts';

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
const part = (page: Page, who: RegExp, of = drawer) => of(page).getByRole('group', { name: who });

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

// ---- Into another kind ----

const instead = (page: Page) => page.getByRole('dialog', { name: 'What was it instead?' });
const missing = (page: Page) => page.getByRole('dialog', { name: 'What was forgotten?' });

/** Opens a line of the play-by-play and presses one of its buttons, by touch or by keyboard. */
async function ask(line: Locator, button: string, by: 'touch' | 'keyboard' = 'touch'): Promise<void> {
  const press = (on: Locator) => (by === 'touch' ? on.tap() : on.press('Enter'));
  if ((await line.locator('.told').getAttribute('aria-expanded')) === 'false') await press(line.locator('.told'));
  await press(line.getByRole('button', { name: button }));
}

/** A steal of second, recorded after entry 89 of the paper game, where it has a balk. */
const stolen = (log: any[]) =>
  log.push({ id: 90, event: { running: { action: { moves: [{ from: 'first', legs: [{ to: 'second', cause: 'steal' }] }] } } } });

test('a strikeout was a ball in play, and amended back it is the same book @shapes', async ({ page }) => {
  await harbor(page, 'book', 115);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const before = await page.locator('.scoreboard').innerText();
  const line = page.locator('.line').nth(0);
  const told = (await line.locator('.words').innerText()).trim();
  expect(told).toContain('strikes out swinging');

  await ask(line, 'It was something else…');
  await expect(instead(page)).toContainText(`It says now: ${told}`);
  await instead(page).getByRole('button', { name: '9 right fielder' }).tap();
  await instead(page).getByText('Or take what usually follows').tap();
  await instead(page).getByRole('button', { name: /^Single/ }).first().tap();
  await part(page, /at bat/, instead).getByLabel('Ended').selectOption('Safe at second');
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wide, 'nothing scrolls sideways').toBeLessThanOrEqual(0);
  await instead(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('It was instead:');
  await expect(preview(page)).toContainText('doubles');
  await expect(preview(page).getByRole('row', { name: /^Hits: / }).first()).toBeVisible();
  expect(await page.locator('.scoreboard').innerText(), 'nothing is changed before it is agreed to').toBe(before);
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(instead(page)).toBeHidden();
  await expect(line).toContainText('doubles');

  await ask(line, 'It was something else…');
  await instead(page).getByRole('button', { name: 'Swinging strike: struck out' }).tap();
  await instead(page).getByRole('button', { name: 'See what changes' }).tap();
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(line.locator('.words')).toHaveText(told);
  expect(await page.locator('.scoreboard').innerText()).toBe(before);
});

test('a stolen base was a wild pitch, by keyboard', async ({ page }) => {
  await harbor(page, 'book', 89, stolen);
  await page.getByRole('button', { name: 'Play by play' }).press('Enter');
  const line = page.locator('.line').nth(0);
  await expect(line).toContainText('steals second');
  await ask(line, 'It was something else…', 'keyboard');
  await instead(page).getByRole('button', { name: 'Wild pitch' }).press('Enter');
  await instead(page).getByRole('button', { name: 'See what changes' }).press('Enter');
  await expect(preview(page).getByRole('row', { name: /^Stolen bases/ })).toContainText('1 → 0');
  await preview(page).getByRole('button', { name: 'Agree' }).press('Enter');
  await expect(line).toContainText('wild pitch');
});

test('a walk was a strikeout of which only the end was seen', async ({ page }) => {
  const force = paperGame().find((event) => JSON.stringify(event).includes('"fielders":[6,4]'))!;
  await openGame(page, 'walk', [...opening(), 'intentional_walk', force]);
  await page.goto('./#/game/walk/book');
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'intentional' });
  await ask(line, 'It was something else…');
  await instead(page).getByRole('button', { name: 'Struck out looking' }).tap();
  await expect(preview(page)).toContainText('strikes out looking');
  await expect(preview(page)).not.toContainText('The batters shift');
  await expect(preview(page)).toContainText('No longer fits.');
  await preview(page).getByRole('button', { name: 'Agree' }).tap();

  // The force at second that came after was an out at first: said in place.
  const conflict = page.locator('.conflicts li').first();
  await conflict.getByRole('button', { name: 'It was something else…' }).tap();
  await instead(page).getByRole('button', { name: '6 shortstop' }).tap();
  await instead(page).getByRole('button', { name: 'See what changes' }).tap();
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(page.locator('.conflicts')).toBeHidden();
});

test('a turn that would not end so is said to shift the batters', async ({ page }) => {
  await harbor(page, 'book', 92);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'singles on a line drive to center field' }).first();
  await ask(line, 'It was something else…');
  await instead(page).getByRole('button', { name: 'Foul', exact: true }).tap();
  await expect(preview(page)).toContainText('The batters shift:');
  await preview(page).getByRole('button', { name: 'Leave it as it is' }).tap();
  await expect(instead(page), 'the choice is still there').toBeVisible();
});

// ---- What was forgotten ----

test('a forgotten steal, a forgotten change of fielders, and both taken out again', async ({ page }) => {
  await harbor(page, 'book', 89);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const lines = page.locator('.line');
  const told = () => page.locator('.line .told').allInnerTexts();
  const [count, before, score] = [await lines.count(), await told(), await scores(page)];

  await ask(lines.nth(0), 'Something is missing here…');
  await missing(page).getByLabel('When').selectOption('Just after this');
  await missing(page).getByRole('button', { name: 'Steals second' }).tap();
  await missing(page).getByRole('button', { name: 'See what changes' }).tap();
  await expect(preview(page)).toContainText('steals second');
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(lines).toHaveCount(count + 1);
  await expect(lines.nth(0)).toContainText('steals second');

  await ask(lines.nth(0), 'Something is missing here…');
  await missing(page).getByText('A change of players').tap();
  const who = missing(page).getByLabel('Who is changed');
  await who.selectOption({ index: 4 });
  await missing(page).getByRole('button', { name: /^Changes places with/ }).first().tap();
  await expect(preview(page)).toContainText('Something more before it:');
  await preview(page).getByRole('button', { name: 'Agree' }).tap();
  await expect(lines).toHaveCount(count + 2);

  for (let left = 2; left > 0; left -= 1) {
    await ask(lines.nth(0), 'Strike this out…');
    await preview(page).getByRole('button', { name: 'Agree' }).tap();
    await expect(lines).toHaveCount(count + left - 1);
  }
  expect(await told()).toEqual(before);
  expect(await scores(page)).toBe(score);
  await expect(page.locator('.struck-list')).toContainText('(2)');
});

test('between two pitches, by keyboard', async ({ page }) => {
  await harbor(page, 'book', 92);
  await page.getByRole('button', { name: 'Play by play' }).press('Enter');
  const line = page.locator('.line').nth(0);
  await ask(line, 'Something is missing here…', 'keyboard');
  const when = missing(page).getByLabel('When');
  await expect(when.locator('option').first()).toHaveText('Before pitch 1: called strike');
  await when.selectOption('Before pitch 2: ball');
  await missing(page).getByRole('button', { name: 'Passed ball' }).press('Enter');
  await missing(page).getByRole('button', { name: 'See what changes' }).press('Enter');
  await expect(preview(page)).toContainText('passed ball');
  await preview(page).getByRole('button', { name: 'Agree' }).press('Enter');
  await expect(page.locator('.line', { hasText: 'passed ball' })).toBeVisible();
});

test('where the ball went is moved by the arrow keys and said in words', async ({ page }) => {
  await harbor(page, 'book', 121);
  await page.getByRole('button', { name: 'Play by play' }).press('Enter');
  const line = page.locator('.line').nth(0);
  await ask(line, 'Amend this play…', 'keyboard');
  await drawer(page).getByText('Where it went: right').press('Enter');
  const point = drawer(page).getByRole('application', { name: 'Where it went' });
  await page.keyboard.press('Tab');
  await expect(point).toBeFocused();
  expect(await point.evaluate((el) => getComputedStyle(el).outlineStyle), 'the focus is seen').not.toBe('none');
  await page.keyboard.press('Shift+ArrowDown');
  const said = drawer(page).locator('.told-place');
  await expect(said).toHaveText('shallow right');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect(said).toHaveText('by the second baseman');
  await expect(drawer(page).getByRole('button', { name: 'See what changes' })).toBeEnabled();
});
