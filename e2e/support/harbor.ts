/** The invented game of tests/games, with what was worked out for it on paper. */
import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { drawn } from './app.ts';
import { bring } from './clubhouse.ts';

const read = (name: string) => readFileSync(new URL(`../../tests/games/harbor-league.${name}.json`, import.meta.url), 'utf8');
const file = read('benchbook');

export const paper = JSON.parse(read('expected'));
export const SIDES = ['visitors', 'home'] as const;

/** The game, whole or as far as its first `entries`, opened at one of its places. */
export async function harbor(page: Page, room: string, entries?: number, change?: (log: any[]) => void): Promise<void> {
  const copy = JSON.parse(file);
  copy.log = copy.log.slice(0, entries);
  change?.(copy.log);
  await page.goto('./');
  await drawn(page);
  await bring(page, { name: 'harbor.benchbook.json', text: JSON.stringify(copy) });
  await expect(page.locator('.said')).toContainText('is here');
  await page.goto(`./#/game/${copy.id}/${room}`);
  await expect(page.locator(`main.${room}`)).toBeVisible();
}
