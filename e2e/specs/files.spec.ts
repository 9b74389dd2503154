import { drawn, expect, test, watchErrors } from '../support/app.ts';
import { bring, drop, journal, startGame, takeHome, toClubhouse } from '../support/clubhouse.ts';

const entries = [
  '{"id":1,"at":1790000000000,"event":{"team":{"side":"visitors","name":"Quarry Hill"}}}',
  '{"id":2,"at":1790000001000,"event":{"team":{"side":"home","name":"Old Orchard"}}}',
  '{"id":3,"at":1790000002000,"event":{"note":{"text":"wind to left"}}}',
  '{"id":5,"event":{"note":{"text":"naïve ⚾ </script>"}}}',
];

/** A game file as it is written. */
const gameFile = (log: string[], id = 'quarry-orchard', version = 1) =>
  `{"format":"benchbook.game","version":${version},"id":"${id}","log":[\n${log.join(',\n')}\n]}\n`;

const title = 'Quarry Hill at Old Orchard';

test.beforeEach(async ({ page }) => {
  await page.goto('./');
  await drawn(page);
});

test('a game file comes in and goes out byte for byte', async ({ page }) => {
  const text = gameFile(entries);
  await bring(page, { name: 'game.benchbook.json', text });
  await expect(page.locator('.said')).toContainText(`${title} is here.`);
  const taken = await takeHome(page, title);
  expect(taken.text).toBe(text);
  expect(taken.name).toBe('Quarry-Hill-at-Old-Orchard.benchbook.json');
  expect(await journal(page, 'quarry-orchard')).toEqual(entries);
});

test('a game started here goes to another device and back', async ({ page, device, host }) => {
  await startGame(page, { visitors: 'Harbor', home: 'Mill Lane' });
  await toClubhouse(page);
  const taken = await takeHome(page, 'Harbor at Mill Lane');
  expect(taken.name).toMatch(/^\d{4}-\d\d-\d\d-Harbor-at-Mill-Lane\.benchbook\.json$/);

  const other = await device.open((await host()).url);
  await bring(other, { name: taken.name, text: taken.text });
  await expect(other.locator('.said')).toContainText('Harbor at Mill Lane is here.');
  const back = await takeHome(other, 'Harbor at Mill Lane');
  expect(back.text).toBe(taken.text);
});

test('the longer of two copies goes on, and copies that part ways are both kept', async ({ page }) => {
  await bring(page, { name: 'short.json', text: gameFile(entries.slice(0, 3)) });
  await expect(page.locator('.said')).toContainText('is here');
  await bring(page, { name: 'long.json', text: gameFile(entries) });
  await expect(page.locator('.said')).toContainText('goes on with 1 entry from the file');
  await bring(page, { name: 'short.json', text: gameFile(entries.slice(0, 3)) });
  await expect(page.locator('.said')).toContainText('with 1 entry more than the file');
  await bring(page, { name: 'long.json', text: gameFile(entries) });
  await expect(page.locator('.said')).toContainText('was here already, entry for entry');
  expect(await journal(page, 'quarry-orchard')).toEqual(entries);
  await expect(page.locator('.game')).toHaveCount(1);

  const other = entries[2]?.replace('wind to left', 'rain') ?? '';
  await bring(page, { name: 'parted.json', text: gameFile([...entries.slice(0, 2), other]) });
  await expect(page.locator('.said')).toContainText('Both are kept');
  await expect(page.locator('.game')).toHaveCount(2);
  expect(await journal(page, 'quarry-orchard')).toEqual(entries);
});

for (const [what, text, words] of [
  ['broken off', gameFile(entries).slice(0, 230), 'breaks off in line 3'],
  ['edited by hand', gameFile(entries).replace('"side":"home"', '"side":"hom"'), 'line 3'],
  ['with its ids mixed up', gameFile([...entries].reverse()), 'ids must rise'],
  ['of a later version', gameFile(entries, 'later', 2), 'made by a newer Benchbook (file version 2'],
  ['of something else', '{"format":"shopping.list","items":[]}', 'no Benchbook game file'],
  ['with nothing in it', '', 'the file is empty'],
] as const) {
  test(`a file ${what} is refused with the place and the reason`, async ({ page }) => {
    await bring(page, { name: 'bad.json', text });
    const said = page.locator('.said .notice.refusal');
    await expect(said).toContainText('bad.json was not brought in');
    await expect(said).toContainText(words);
    await expect(page.locator('.game')).toHaveCount(0);
  });
}

test('an enormous file is refused at once, without being read', async ({ page }) => {
  await page.evaluate(() => {
    const input = document.querySelector<HTMLInputElement>('input[type=file]');
    const mebibyte = new Uint8Array(1 << 20).fill(32);
    const transfer = new DataTransfer();
    transfer.items.add(new File(Array.from({ length: 65 }, () => mebibyte), 'huge.json'));
    if (input) input.files = transfer.files;
    input?.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await expect(page.locator('.said .refusal')).toContainText('too large to be a game', { timeout: 2_000 });
});

test('a good file beside a bad one still comes in', async ({ page }) => {
  await bring(page, { name: 'bad.json', text: '{' }, { name: 'good.json', text: gameFile(entries) });
  await expect(page.locator('.said')).toContainText('bad.json was not brought in');
  await expect(page.locator('.said')).toContainText(`${title} is here.`);
  await expect(page.locator('.game')).toHaveCount(1);
});

test('a file can be dropped on the Clubhouse', async ({ page }) => {
  await drop(page, gameFile(entries));
  await expect(page.locator('.said')).toContainText(`${title} is here.`);
});

test('names are shown as they are written, whatever is in them', async ({ page }) => {
  const errors = watchErrors(page);
  const names = { visitors: '🦅⚾ Ñandú', home: '<script>alert(1)</script>' };
  await startGame(page, names);
  await toClubhouse(page);
  await expect(page.locator('.board .team')).toHaveText([names.visitors, names.home]);
  const taken = await takeHome(page, `${names.visitors} at ${names.home}`);
  expect(taken.name).toMatch(/-Ñandú-at-script-alert-1-script\.benchbook\.json$/);
  await bring(page, { name: taken.name, text: taken.text });
  await expect(page.locator('.said')).toContainText('was here already, entry for entry');
  expect(errors).toEqual([]);
});

test('two taps at once start one game', async ({ page }) => {
  await page.getByLabel('Visitors (bat first)').fill('Harbor');
  await page.getByRole('button', { name: /^Score now/ }).evaluate((button: HTMLElement) => {
    button.click();
    button.click();
  });
  await expect(page.locator('.sign .kept')).toBeVisible();
  await toClubhouse(page);
  await expect(page.locator('.game')).toHaveCount(1);
});
