/** What a scorer does in the Clubhouse, by touch. */
import { expect, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { seen, type Screen } from './screen.ts';

/** Starts a game with numbered batters; ends at the Plate. Returns the game's name. */
export async function startGame(page: Page, { visitors = '', home = '' } = {}): Promise<string> {
  await page.getByLabel('Visitors (bat first)').fill(visitors);
  await page.getByLabel('Home', { exact: true }).fill(home);
  await page.getByRole('button', { name: /^Score now/ }).tap();
  await expect(page.locator('.sign .kept')).toBeVisible();
  return /#\/game\/([\w-]+)\/plate/.exec(page.url())?.[1] ?? '';
}

/** Goes back to the Clubhouse by its sign. */
export async function toClubhouse(page: Screen): Promise<void> {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Clubhouse' }).tap();
  await seen(page.locator('.clubhouse'));
}

/** Picks files as the scorer's file chooser would hand them over. */
export async function bring(page: Page, ...files: { name: string; text: string | Buffer }[]): Promise<void> {
  await page.getByLabel('Pick a file').setInputFiles(
    files.map(({ name, text }) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })),
  );
}

/** Drops a file on the Clubhouse. Unlike a file that is picked by the test runner, this leaves nothing held in the page. */
export async function drop(page: Page, text: string): Promise<void> {
  await page.locator('.clubhouse').evaluate((main, text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'dropped.json'));
    main.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  }, text);
}

/** Takes a game home and gives back the file's name and text. */
export async function takeHome(page: Page, title: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: `Take home ${title}`, exact: true }).tap(),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

/** The ids of the last entry recorded and of the last one confirmed by the journal, as the sign shows them. */
export async function keeping(page: Screen): Promise<{ recorded: number; kept: number }> {
  await seen(page.locator('.sign .kept'));
  return page.locator('.sign .kept').evaluateAll(([mark]) => ({
    recorded: Number(mark?.dataset.recorded),
    kept: Number(mark?.dataset.kept),
  }));
}

/** Waits until everything recorded is kept. */
export async function allKept(page: Screen): Promise<void> {
  await expect
    .poll(async () => {
      const { recorded, kept } = await keeping(page);
      return kept > 0 && kept === recorded;
    })
    .toBe(true);
}

/** Everything the journal has of a game, read as the browser stores it. */
export async function journal(page: Page, game: string): Promise<string[]> {
  return page.evaluate(
    (name) =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open('benchbook');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const range = IDBKeyRange.bound([name, 0], [name, Infinity]);
          const reading = opening.result.transaction('entries').objectStore('entries').getAll(range);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result as string[]);
          };
          reading.onerror = () => reject(reading.error);
        };
      }),
    game,
  );
}

/** The working state of a game, as stored. */
export function working(page: Screen, game: string): Promise<string | null> {
  return page.evaluate((name) => localStorage.getItem(`benchbook.game.${name}`), game);
}
