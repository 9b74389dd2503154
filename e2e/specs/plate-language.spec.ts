/** The Plate in other languages: chosen in the Clubhouse, shown and spoken, stored as in any language. */
import { expect, test, watchErrors } from '../support/app.ts';
import { log, opening, openGame, runnersOn, Thumb } from '../support/plate.ts';
import type { Page } from '@playwright/test';

/** A game with a runner on first, opened at the Plate in a language chosen by its own name. */
async function inLanguage(page: Page, game: string, language: string): Promise<Thumb> {
  await openGame(page, game, [...opening(), ...runnersOn('first')]);
  await page.goto('./#/');
  await page.getByLabel('Language').selectOption({ label: language });
  await page.goto(`./#/game/${game}/plate`);
  await expect(page.locator('.plate-board')).toBeVisible();
  return new Thumb(page, game);
}

/** Nothing sticks out of a button, and the page is no wider than the screen. */
async function everythingFits(page: Page): Promise<void> {
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.plate button')]
      .filter((button) => button.scrollWidth > button.clientWidth + 1 && !button.matches('.token'))
      .map((button) => button.innerText),
  );
  expect(cut).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

test('a turn in Spanish, by touch: the buttons, the voice and the page are Spanish @shapes', async ({ page, picture }, info) => {
  const errors = watchErrors(page);
  const thumb = await inLanguage(page, 'espanol', 'Español');
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await expect(page.locator('.pitches .pitch b')).toHaveText(['Bola', 'Cantado', 'Tirándole', 'Foul', 'Más']);
  await expect(page.getByRole('region', { name: 'Pizarra' })).toContainText('Al bate');
  await expect(page.getByRole('button', { name: 'Anula' })).toBeVisible();
  await everythingFits(page);
  const status = page.locator('.status');
  await thumb.pitch('CalledStrike');
  await expect(status).toHaveText('Strike cantado. sin outs, 0-1');
  await picture(`plate-es-${info.project.name}`);
  await thumb.fielders(6, 3);
  await expect(page.getByRole('region', { name: 'Qué resultó' })).toBeVisible();
  await expect(page.locator('.off-the-bat button')).toHaveText(['Rodado', 'Línea', 'Globo', 'Toque', 'Foul']);
  await everythingFits(page);
  await picture(`plate-es-tray-${info.project.name}`);
  await thumb.outcome('Out por rodado 6-3');
  await expect(status).toHaveText(/^Out por rodado 6-3: \S+ a segunda. 1 out, 0-0$/);
  // What is stored knows no language.
  const [pitch, grounder] = (await log(page, 'espanol')).slice(-2) as any[];
  expect(pitch).toEqual({ pitch: { call: 'called_strike' } });
  expect(grounder.in_play.ball).toMatchObject({ trajectory: 'ground', fielders: [6, 3] });
  await thumb.corner('umpire');
  await everythingFits(page);
  await picture(`plate-es-umpire-${info.project.name}`);
  expect(errors).toEqual([]);
});

test('a turn in Japanese @shapes', async ({ page, picture }, info) => {
  const thumb = await inLanguage(page, 'nihongo', '日本語');
  await expect(page.locator('html')).toHaveAttribute('lang', 'ja');
  await expect(page.locator('.pitches .pitch b')).toHaveText(['ボール', '見逃し', '空振り', 'ファウル', 'その他']);
  await everythingFits(page);
  await thumb.pitch('SwingingStrike');
  await expect(page.locator('.status')).toHaveText('空振りストライク. 無死、0ボール1ストライク');
  await picture(`plate-ja-${info.project.name}`);
  await thumb.fielders(6, 4, 3);
  await everythingFits(page);
  await picture(`plate-ja-tray-${info.project.name}`);
  await thumb.outcome('併殺 6-4-3');
  expect((await thumb.board()).outs).toBe('2');
});
