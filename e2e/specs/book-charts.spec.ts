import { expect, test, watchErrors } from '../support/app.ts';
import { harbor, paper } from '../support/harbor.ts';

test('the game is told in a few sentences once it is over @shapes', async ({ page }) => {
  await harbor(page, 'book');
  const story = page.locator('.story');
  await expect(story).toContainText('Pier Nine Lanterns beat Millrace Otters 7–6.');
  await expect(story).toContainText('In the bottom of the 9th Delphine Abara won it for Pier Nine Lanterns with a two-base hit, 7–6.');
  await expect(story).toContainText('Nadia Corvane was the winning pitcher: 1 inning, 1 hit');
});

test('a game that goes on has no story yet', async ({ page }) => {
  await harbor(page, 'book', 200);
  await expect(page.locator('.boxes')).toBeVisible();
  await expect(page.locator('.story')).toBeHidden();
});

test('a batter of the order has their balls on the field and in words @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Charts' }).tap();
  const chart = page.locator('.chart');
  const choice = page.getByLabel('Batter shown');
  const options = await choice.locator('option').allTextContents();
  expect(options.length).toBeGreaterThanOrEqual(18);
  const abara = options.find((text) => text.includes('Delphine Abara')) ?? '';
  await choice.selectOption(abara);
  await expect(chart.getByRole('img', { name: 'Balls put in play by Delphine Abara' })).toBeVisible();
  const items = chart.locator('ol li');
  const marks = chart.locator('figure > svg g');
  expect(await marks.count()).toBe(await items.count());
  const hits = paper.batting.home.players.find((p: { name: string }) => p.name === 'Delphine Abara').hits;
  await expect(items.filter({ hasText: /^Hit,/ })).toHaveCount(hits);
  await expect(chart.locator('figure > svg circle.mark.full')).toHaveCount(hits);
  await page.getByRole('button', { name: 'Next batter' }).tap();
  await expect(chart).not.toContainText('Balls put in play by Delphine Abara');
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
  expect(errors).toEqual([]);
});

test("the pitch strip adds up to the pitcher's line, and the charts print", async ({ page }) => {
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Charts' }).tap();
  for (const side of ['visitors', 'home']) {
    for (const pitcher of paper.pitching[side].pitchers) {
      const strip = page.getByRole('region', { name: `Pitches of ${pitcher.name} by inning` });
      const total = async (row: number) => Number.parseInt((await strip.locator('tbody tr').nth(row).locator('td').last().innerText()), 10);
      expect([await total(0), await total(1), await total(2)], pitcher.name).toEqual([pitcher.pitches, pitcher.strikes, pitcher.balls]);
    }
  }
  await expect(page.getByRole('region', { name: 'Pitches of Nadia Corvane by inning' }).locator('tbody tr').nth(3)).toContainText('/4');
  const pdf = await page.pdf({ format: 'A4', landscape: true });
  expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length).toBeGreaterThanOrEqual(1);
});

test('the Book is told in Spanish, and nothing scrolls sideways @shapes', async ({ page }) => {
  await harbor(page, 'book');
  const book = page.url();
  await page.goto('./#/');
  await page.getByLabel('Language').selectOption('es');
  await expect(page.getByLabel('Idioma')).toBeVisible();
  await page.goto(book);
  await expect(page.locator('.story')).toContainText('Victoria de Pier Nine Lanterns sobre Millrace Otters, 7–6.');
  await expect(page.getByRole('region', { name: 'Al bate' }).first()).toContainText('Oona Baptista BE-2B');
  for (const tab of ['Box score', 'Jugada por jugada', 'Hoja de anotación', 'Gráficas']) {
    await page.getByRole('button', { name: tab }).tap();
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wider, tab).toBeLessThanOrEqual(0);
  }
});
