/** A walk through every place with everything that opens there, for checks of how the app looks and reads everywhere. */
import { expect, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { drawn } from './app.ts';
import { bring, startGame, toClubhouse } from './clubhouse.ts';
import { harbor } from './harbor.ts';
import { GRASS, opening, openGame, runnersOn, Thumb, type Event } from './plate.ts';

/** Called wherever there is something new to see. */
export type Look = (what: string) => Promise<void>;

export const PLACES = ['clubhouse', 'card', 'plate', 'mound', 'book'] as const;
export type Place = (typeof PLACES)[number];

const HARBOR = readFileSync(new URL('../../tests/games/harbor-league.benchbook.json', import.meta.url), 'utf8');
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();

/** Opens everything that folds. */
const unfold = (page: Page) =>
  page.locator('main').evaluate((main) => main.querySelectorAll('details').forEach((details) => (details.open = true)));

export const TOURS: Record<Place, (page: Page, look: Look) => Promise<void>> = {
  async clubhouse(page, look) {
    await page.goto('./');
    await drawn(page);
    await expect(page.getByText('No game yet')).toBeVisible();
    await look('empty');
    const broken = await startGame(page, { visitors: 'Quarry Hill', home: 'Old Orchard' });
    await toClubhouse(page);
    await startGame(page, { visitors: 'Tidewater Terns', home: 'Mill Lane' });
    await toClubhouse(page);
    await button(page, 'Throw away Tidewater Terns at Mill Lane').tap();
    await bring(page, { name: 'harbor.benchbook.json', text: HARBOR }, { name: 'bad.json', text: '{' });
    await expect(page.locator('.said')).toContainText('bad.json was not brought in');
    await page.evaluate((name) => localStorage.setItem(`benchbook.game.${name}`, 'damaged'), broken);
    // What is set aside is listed on coming in; who leaves the game at once may be there before it.
    await expect(async () => {
      await page.getByRole('link', { name: 'Open Quarry Hill at Old Orchard' }).tap();
      await expect(page.locator('.sign .kept')).toBeVisible();
      await toClubhouse(page);
      await expect(page.locator('.aside')).toHaveCount(1, { timeout: 2000 });
    }).toPass();
    await bring(page, { name: 'bad.json', text: '{' });
    await expect(page.locator('.said')).toContainText('bad.json was not brought in');
    await unfold(page);
    await page.locator('.season').getByLabel('Team').selectOption('Pier Nine Lanterns');
    await look('furnished');
  },

  async card(page, look) {
    await page.goto('./');
    await drawn(page);
    await button(page, 'Fill in the cards first').tap();
    await expect(page.locator('main.card')).toBeVisible();
    await look('empty');
    const side = page.locator('.sides > .side').first();
    await button(page, 'Fill in numbered batters').tap();
    await side.getByRole('button', { name: 'Add a player to the bench' }).tap();
    await unfold(page);
    await look('filled in');
    await side.getByRole('button', { name: 'Change the order' }).tap();
    await look('reordering');
  },

  async plate(page, look) {
    const before: Event[] = [{ pitch: { call: 'ball' } }, { pitch: { call: 'called_strike' } }];
    await openGame(page, 'tour', [...opening(), ...before, ...runnersOn('first', 'second', 'third')]);
    const thumb = new Thumb(page, 'tour');
    await look('waiting');
    await thumb.fielders(6);
    await look('touched');
    await thumb.fielders(4, 3);
    await look('tray');
    await thumb.tap(page.locator('.adjust').first());
    await thumb.batter();
    await look('adjusting');
    await page.keyboard.press('Escape');
    await thumb.runner(1);
    await look('runner');
    await page.keyboard.press('Escape');
    await thumb.tap(page.locator('.pitch.more'));
    await look('more pitches');
    await page.keyboard.press('Escape');
    await thumb.corner('players');
    await thumb.fielders(1);
    await look('players');
    await thumb.corner('players');
    await thumb.corner('umpire');
    await look('umpire');
    await page.keyboard.press('Escape');
    await openGame(page, 'tour-refused', [...opening(), ...runnersOn('first', 'second')]);
    // The runner from first sent where by his own wish the one from second stays: refused.
    await thumb.grass(GRASS.shallowLeft);
    await thumb.tap(page.locator('.adjust').first());
    for (const base of [2, 1] as const) {
      await thumb.runner(base);
      await thumb.button('Safe at third');
    }
    await thumb.button('Record');
    await expect(page.locator('.status')).toHaveAttribute('data-refused', 'true');
    await look('refused');
    await openGame(page, 'tour-ask', [...opening(), ...runnersOn('first')]);
    await thumb.fielders(1, 3);
    await thumb.button('Bunt');
    await thumb.first();
    await expect(page.locator('.ask')).toBeVisible();
    await look('asked');
    await openGame(page, 'tour-final', JSON.parse(HARBOR).log.map((entry: { event: Event }) => entry.event));
    await look('final');
  },

  async mound(page, look) {
    await harbor(page, 'mound', 330);
    await look('pitcher');
    const age = page.getByLabel("Age on the league's cut-off day");
    await age.fill('11');
    await age.blur();
    await expect(page.locator('.rest')).toContainText('Ages 11 to 12');
    await look('age');
  },

  async book(page, look) {
    await harbor(page, 'book');
    await unfold(page);
    await look('box score');
    await button(page, '3, Runs batted in: Dov Marchessault. Why?').tap();
    await expect(page.getByRole('dialog')).toBeVisible();
    await look('why');
    await page.keyboard.press('Escape');
    await button(page, 'Play by play').tap();
    const line = page.locator('.line', { hasText: 'Delphine Abara hits a home run' });
    await line.locator('.told').tap();
    await look('play by play');
    await line.getByRole('button', { name: 'Strike this out…' }).tap();
    await expect(page.getByRole('dialog')).toContainText('What would change');
    await look('preview');
    await page.getByRole('dialog').getByRole('button', { name: 'Agree' }).tap();
    await button(page, 'Struck out (1)').tap();
    await look('struck out');
    await button(page, 'Scoresheet').tap();
    await expect(page.locator('.sheet .square svg').first()).toBeVisible();
    await look('scoresheet');
  },
};

/** By day and by night, whatever the device is set to. */
export async function light(page: Page, value: 'day' | 'night'): Promise<void> {
  await page.evaluate((value) => (document.documentElement.dataset.light = value), value);
}
