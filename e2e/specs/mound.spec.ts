import { expect, test, watchErrors } from '../support/app.ts';
import { harbor } from '../support/harbor.ts';

test('the count fills the board and can be read from the bench @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  await harbor(page, 'mound', 330);
  const board = page.locator('.mound .figure');
  await expect(board.getByRole('heading')).toContainText('Yusra Halvorsen');
  await expect(board.locator('.digits')).toHaveText('19');
  const height = await board.locator('.digits').evaluate((digits) => parseFloat(getComputedStyle(digits).fontSize));
  expect(height).toBeGreaterThanOrEqual(144);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
  expect(errors).toEqual([]);
});

test('balls, strikes, innings and every pitcher of the day agree with the paper', async ({ page }) => {
  await harbor(page, 'mound');
  await page.getByRole('button', { name: /Millrace Otters/ }).tap();
  const rows = await page.locator('.today tbody tr').evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => cell.textContent?.trim() ?? '')),
  );
  expect(rows.slice(0, 2)).toEqual([
    ['Anselm Quarrie', '87', '50', '37', '26', '5.0'],
    ['Teo Vandermolen', '35', '22', '13', '10', '2.0'],
  ]);
  await page.getByRole('button', { name: /Pier Nine Lanterns/ }).tap();
  await expect(page.locator('.figure')).toContainText('Nadia Corvane');
  const innings = await page.locator('.innings td').allInnerTexts();
  const sum = innings.reduce((total, inning) => total + Number(inning), 0);
  expect(String(sum)).toBe((await page.locator('.digits').innerText()).trim());
});

test('with the age the guideline shows, with its source and its cautions', async ({ page }) => {
  await harbor(page, 'mound', 330);
  const rest = page.locator('.rest');
  await expect(rest).toContainText("Your league's rules and medical advice come first.");
  await expect(rest).toContainText('2015');
  const age = page.getByLabel("Age on the league's cut-off day");
  await age.fill('11');
  await age.blur();
  await expect(rest).toContainText('Ages 11 to 12: at most 85 in a day');
  await expect(rest.getByRole('row', { name: /now/ })).toContainText('1–20');
  await page.reload();
  await expect(page.getByLabel("Age on the league's cut-off day")).toHaveValue('11');
  expect(await page.locator('main').innerText()).not.toMatch(/\bsafe\b/i);
});

test('the pitches left to the limit of the league are told in words', async ({ page }) => {
  await harbor(page, 'mound', 330, (log) => {
    const rules = log.find((entry) => entry.event.rules);
    rules.event.rules.pitch_limit = 20;
  });
  await expect(page.locator('.limit')).toContainText("1 pitch left to the league's limit");
});
