import type { Page } from '@playwright/test';
import { expect, test, watchErrors } from '../support/app.ts';
import { harbor, paper, SIDES } from '../support/harbor.ts';

const side = (page: Page, at: number) => page.locator('.boxes .side').nth(at);

/** A table's rows by the name that begins them. */
async function rows(page: Page, at: number, table: number): Promise<Map<string, string[]>> {
  const lines = await side(page, at).locator('table.lines').nth(table).locator('tbody tr').evaluateAll((all) =>
    all.map((row) => [
      row.querySelector('.who')?.textContent?.trim() ?? '',
      ...[...row.querySelectorAll('td')].map((cell) => cell.textContent?.trim() ?? ''),
    ]),
  );
  return new Map(lines.map(([name = '', ...cells]) => [name, cells]));
}

test('the numbers are those on paper, and no page scrolls sideways @shapes', async ({ page }) => {
  const errors = watchErrors(page);
  await harbor(page, 'book');
  const scores = page.locator('.scoreboard tbody tr');
  for (const [at, name] of SIDES.entries()) {
    const { innings, r, h, e } = paper.line_score[name];
    const cells = await scores.nth(at).locator('td').allInnerTexts();
    expect(cells.map((cell) => cell.trim())).toEqual([...innings, r, h, e].map(String));

    const batters = await rows(page, at, 0);
    for (const b of paper.batting[name].players) {
      const line = [b.at_bats, b.runs, b.hits, b.runs_batted_in, b.walks, b.strikeouts].map(String);
      // Left on base by batter is custom, and customs differ: it is not compared.
      if (b.place !== null) expect(batters.get(b.name)?.slice(0, 6), b.name).toEqual(line);
    }
    const pitchers = await rows(page, at, 1);
    for (const p of paper.pitching[name].pitchers) {
      const counts = [p.hits, p.runs, p.earned_runs, p.walks, p.strikeouts, p.batters_faced, p.pitches, p.strikes];
      // No innings and no earned runs: the trade prints a dash.
      const average = p.era ?? '-';
      expect(pitchers.get(p.name), p.name).toEqual([p.innings, ...counts.map(String), average]);
    }
    const fielders = await rows(page, at, 2);
    for (const f of paper.fielding[name].players) {
      const line = [f.putouts, f.assists, f.errors, f.double_plays, f.passed_balls].map(String);
      expect(fielders.get(f.name), f.name).toEqual(line);
    }
    await expect(side(page, at).locator('.proof')).toContainText(`It balances: ${paper.proof[name].left_side} came up`);
  }
  for (const tab of ['Box score', 'Play by play', 'Scoresheet']) {
    await page.getByRole('button', { name: tab }).tap();
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wider, tab).toBeLessThanOrEqual(0);
  }
  expect(errors).toEqual([]);
});

test('a number opens to the plays behind it, each with its rule', async ({ page }) => {
  await harbor(page, 'book');
  const number = page.getByRole('button', { name: '3, Runs batted in: Dov Marchessault. Why?' });
  await number.tap();
  const answer = page.getByRole('dialog');
  await expect(answer.getByRole('heading')).toHaveText('Runs batted in: Dov Marchessault');
  await expect(answer.getByRole('listitem')).toHaveCount(3);
  await expect(answer).toContainText('Dov Marchessault hits a sacrifice fly to the center fielder.');
  await expect(answer).toContainText('OBR 9.04(a)(1)');
  await page.keyboard.press('Escape');
  await expect(answer).toBeHidden();
  await expect(number).toBeFocused();

  await page.getByRole('button', { name: 'Winning pitcher: Nadia Corvane. Why?' }).tap();
  await expect(answer).toContainText('OBR 9.17(a)');
  await answer.getByRole('button', { name: 'Close' }).tap();

  await page.getByRole('button', { name: /^4, Runs charged: Anselm Quarrie/ }).tap();
  await expect(answer.getByRole('listitem').first()).toContainText('charged to Anselm Quarrie');
});

test('the game is told from the first pitch on when it is over, newest first while it goes on', async ({ page }) => {
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const lines = page.locator('.line .told');
  await expect(lines.first()).toContainText('Tomas Okwera grounds out, shortstop to first baseman.');
  await expect(lines.last()).toContainText('The book is closed.');
  await expect(page.locator('.half')).toHaveCount(18);
  await page.getByRole('button', { name: 'Newest first' }).tap();
  await expect(lines.first()).toContainText('The book is closed.');
});

test('a game under way is told newest first, and stands on the board', async ({ page }) => {
  await harbor(page, 'book', 120);
  await expect(page.locator('.scoreboard .state')).toContainText(/(Top|Bottom) of the \d/);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  await expect(page.locator('.line .told').last()).toContainText('Tomas Okwera grounds out');
});

test('a line opens to its rulings and its pitches', async ({ page }) => {
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Jun-ho Ravelo is out at home in a rundown' });
  await expect(line.locator('.told')).toHaveAttribute('aria-expanded', 'false');
  await line.locator('.told').tap();
  await expect(line.locator('.told')).toHaveAttribute('aria-expanded', 'true');
  await expect(line).toContainText("Emeka Sorrentino: fielder's choice");
  await expect(line).toContainText('OBR 9.05(b)');
  await expect(line).toContainText('2 (1–1): ball, in play.');
});

test('striking out shows what would change, keeps the entry, and can be taken back', async ({ page }) => {
  await harbor(page, 'book');
  const before = await page.locator('.scoreboard tbody').innerText();
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Delphine Abara hits a home run' });
  await line.locator('.told').tap();
  await line.getByRole('button', { name: 'Strike this out…' }).tap();
  const preview = page.getByRole('dialog');
  await expect(preview).toContainText('What would change');
  await expect(preview.getByRole('row', { name: /Hits: Pier Nine Lanterns/ })).toBeVisible();
  await preview.getByRole('button', { name: 'Leave it as it is' }).tap();
  expect(await page.locator('.scoreboard tbody').innerText()).toBe(before);

  await line.getByRole('button', { name: 'Strike this out…' }).tap();
  await preview.getByRole('button', { name: 'Agree' }).tap();
  await expect(preview).toBeHidden();
  await expect(page.locator('.scoreboard tbody')).not.toHaveText(before);
  await page.getByRole('button', { name: 'Struck out (1)' }).tap();
  await expect(page.locator('.struck-list')).toContainText('Delphine Abara hits a home run to left field.');
  await page.getByRole('button', { name: 'Put back' }).tap();
  await expect(page.locator('.struck-list')).toBeHidden();
  expect(await page.locator('.scoreboard tbody').innerText()).toBe(before);
});

test('what no longer fits after a correction is listed, with its reason, until it is settled', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const single = page.locator('.line', { hasText: 'Lena Brightwater singles' });
  await single.locator('.told').tap();
  await single.getByRole('button', { name: 'Strike this out…' }).tap();
  const drawer = page.getByRole('dialog');
  await expect(drawer).toContainText('No longer fits.');
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  const conflicts = page.locator('.conflicts');
  await expect(conflicts).toContainText('Nobody is on first.');
  await page.getByRole('button', { name: 'Undo last entry' }).tap();
  await expect(conflicts).toBeVisible();
});

test('what no longer fits is offered its mends, each shown before it is agreed to', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const single = page.locator('.line', { hasText: 'Lena Brightwater singles' });
  await single.locator('.told').tap();
  await single.getByRole('button', { name: 'Strike this out…' }).tap();
  const drawer = page.getByRole('dialog');
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  const first = page.locator('.conflicts li').first();
  await expect(first).toContainText('Nobody is on first.');
  await expect(first.getByRole('button', { name: 'Strike this entry out' })).toBeVisible();
  await first.getByRole('button', { name: 'Leave out runners who are not there' }).tap();
  await expect(drawer).toContainText('What would change');
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  await expect(drawer).toBeHidden();
  await expect(page.locator('.conflicts').filter({ hasText: 'Nobody is on first.' })).toBeHidden();
});

test('a pitch is amended, and one that was forgotten put in, where it was', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Tomas Okwera grounds out' });
  await line.locator('.told').tap();
  await expect(line).toContainText('5 (2–3): ball, called strike, foul, ball, in play.');
  const drawer = page.getByRole('dialog');

  await line.getByText('Amend a pitch').tap();
  await line.getByRole('button', { name: 'called strike' }).tap();
  await line.getByRole('button', { name: 'swing and a miss' }).first().tap();
  await expect(drawer).toContainText('The pitch was instead: swing and a miss.');
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  await expect(line).toContainText('5 (2–3): ball, swing and a miss, foul, ball, in play.');

  await line.getByRole('button', { name: 'in play' }).tap();
  await line.getByRole('button', { name: 'foul', exact: true }).last().tap();
  await expect(drawer.getByRole('row', { name: /Pitches: Paloma Whitcombe/ })).toBeVisible();
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  await expect(line).toContainText('6 (2–4): ball, swing and a miss, foul, ball, foul, in play.');
});

test('a hit is scored as an error instead, with what that changes', async ({ page }) => {
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const line = page.locator('.line', { hasText: 'Lena Brightwater singles on a line drive' });
  await line.locator('.told').tap();
  await line.getByRole('button', { name: 'Error, left fielder' }).tap();
  const drawer = page.getByRole('dialog');
  await expect(drawer.getByRole('row', { name: 'Hits: Lena Brightwater' })).toContainText('2 → 1');
  await drawer.getByRole('button', { name: 'Agree' }).tap();
  await expect(page.locator('.line', { hasText: 'Lena Brightwater reaches on' }).first()).toBeVisible();
});

test('an undone play is redone', async ({ page }) => {
  await harbor(page, 'book', 60);
  await page.getByRole('button', { name: 'Play by play' }).tap();
  const board = page.locator('.scoreboard');
  const before = await board.innerText();
  const first = await page.locator('.line .told').first().innerText();
  await page.getByRole('button', { name: 'Undo last entry' }).tap();
  await page.getByRole('button', { name: 'Put it back' }).tap();
  await expect(page.locator('.line .told').first()).toHaveText(first.trim(), { useInnerText: true });
  expect(await board.innerText()).toBe(before);
});

test('a judgment can be given in the Book, and changes the lines', async ({ page }) => {
  await harbor(page, 'book');
  await page.getByText('To settle: 4').tap();
  const bunt = page.getByRole('group', { name: 'Was Idris Fontaine bunting for a hit?' });
  await expect(bunt.getByRole('button', { name: 'No' })).toContainText('usual');
  const line = async () => (await rows(page, 1, 0)).get('Idris Fontaine')?.[0];
  expect(await line()).toBe('4');
  await bunt.getByRole('button', { name: 'Yes' }).tap();
  await expect(page.getByText('To settle: 3')).toBeVisible();
  await expect.poll(line).toBe('5');
  await bunt.getByRole('button', { name: 'No' }).tap();
  await expect.poll(line).toBe('4');
});

test('the scoresheet has a square for every turn, and prints on one page a side', async ({ page }) => {
  await harbor(page, 'book');
  await page.getByRole('button', { name: 'Scoresheet' }).tap();
  await expect(page.locator('.sheet .square svg')).toHaveCount(78);
  await expect(page.getByRole('img', { name: 'Ngaio Petrescu strikes out looking.' })).toHaveCount(1);
  for (const format of ['A4', 'Letter']) {
    const pdf = await page.pdf({ format, preferCSSPageSize: false, landscape: true });
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g), format).toHaveLength(2);
  }
});

test('on paper the box score takes a page a side, the plays two columns, all black on white', async ({ page }) => {
  await harbor(page, 'book');
  await page.evaluate(() => (document.documentElement.dataset.light = 'night'));
  const pages = async (name: string) => {
    await page.getByRole('button', { name, exact: true }).tap();
    const pdf = await page.pdf({ format: 'A4' });
    return pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length;
  };
  expect(await pages('Play by play')).toBeLessThanOrEqual(3);
  expect(await pages('Box score')).toBe(2);
  await page.emulateMedia({ media: 'print' });
  const seen = await page.locator('.scoreboard, .boxes .side, .boxes td').evaluateAll((all) =>
    all.map((el) => [getComputedStyle(el).color, getComputedStyle(el).backgroundColor].join(' on ')),
  );
  expect(new Set(seen)).toEqual(new Set(['rgb(0, 0, 0) on rgb(255, 255, 255)', 'rgb(0, 0, 0) on rgba(0, 0, 0, 0)']));
  await expect(page.getByRole('button', { name: 'Scoresheet' })).toBeHidden();
});
