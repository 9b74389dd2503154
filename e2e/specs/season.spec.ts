import { expect, test, watchErrors } from '../support/app.ts';
import { harbor, paper } from '../support/harbor.ts';
import { startGame, toClubhouse } from '../support/clubhouse.ts';

const average = (hits: number, atBats: number) => (hits / atBats).toFixed(3).replace(/^0/, '');

test('a season adds up what is on this device, and no page scrolls sideways @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  await harbor(page, 'book');
  await toClubhouse(page);
  const season = page.locator('.season');
  await season.getByText('Season', { exact: true }).tap();
  await season.getByLabel('Team').selectOption('Pier Nine Lanterns');
  await expect(season.locator('.record')).toHaveText('1 won, 0 lost; 7 runs to 6');

  const table = (name: string) => season.getByRole('region', { name: `${name}: Pier Nine Lanterns` });
  const cells = (of: string, row: string) =>
    table(of).getByRole('row').filter({ has: page.getByRole('rowheader', { name: row, exact: true }) }).getByRole('cell');
  const up = paper.batting.home.players.find((b: any) => b.at_bats > 0 && b.hits > 0);
  const batting = await cells('Batting', up.name).allInnerTexts();
  expect(batting.slice(2, 8)).toEqual(
    [up.at_bats, up.runs, up.hits, up.runs_batted_in, up.walks, up.strikeouts].map(String),
  );
  expect(batting[8]).toBe(average(up.hits, up.at_bats));

  await expect(cells('Pitching', 'Nadia Corvane')).toHaveText(
    ['1', '1.0', '1', '1', '1', '0', '1', '9.00', '1', '0', '0'],
  );
  for (const f of paper.fielding.home.players.filter((f: any) => f.errors > 0)) {
    expect((await cells('Fielding', f.name).allInnerTexts()).slice(0, 3), f.name).toEqual(
      [f.putouts, f.assists, f.errors].map(String),
    );
  }
  await expect(table('Pitches by day').getByRole('row', { name: /2026-06-13.*Paloma Whitcombe/ })).toContainText('93');
  await expect(season).toContainText("Your league's limits and medical advice come first.");
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wider).toBeLessThanOrEqual(0);

  await season.getByLabel('Team').selectOption('Millrace Otters');
  await expect(season.locator('.record')).toHaveText('0 won, 1 lost; 6 runs to 7');
  expect(errors).toEqual([]);
});

test('before a game has begun there is no season', async ({ page }) => {
  await page.goto('./');
  await startGame(page, { visitors: 'Quarry', home: 'Orchard' });
  await toClubhouse(page);
  await expect(page.locator('.game')).toHaveCount(1);
  await expect(page.locator('.season')).toHaveCount(0);
});
