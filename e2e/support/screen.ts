/**
 * What a scorer's hand needs of a browser. Playwright's page is one as it is; `remote/` makes one of any browser that
 * runs scripts and taps points, so that one hand scores a game in all of them.
 */
import { expect } from '@playwright/test';

export type Role = 'button' | 'link' | 'navigation' | 'region';
export interface Point {
  x: number;
  y: number;
}
export interface Box extends Point {
  width: number;
  height: number;
}

/** How something is found. */
export interface Finder {
  locator(css: string): Spot;
  getByRole(role: Role, by?: { name?: string | RegExp; exact?: boolean }): Spot;
  getByLabel(words: string, by?: { exact?: boolean }): Spot;
}

/** Something on the page, found anew whenever it is used. */
export interface Spot extends Finder {
  first(): Spot;
  nth(at: number): Spot;
  filter(by: { hasText: string | RegExp }): Spot;
  count(): Promise<number>;
  isVisible(): Promise<boolean>;
  textContent(): Promise<string | null>;
  allTextContents(): Promise<string[]>;
  allInnerTexts(): Promise<string[]>;
  getAttribute(name: string): Promise<string | null>;
  boundingBox(): Promise<Box | null>;
  evaluateAll<R>(read: (all: HTMLElement[]) => R): Promise<R>;
  tap(): Promise<void>;
  fill(text: string): Promise<void>;
  blur(): Promise<void>;
  selectOption(option: { label: string }): Promise<unknown>;
}

export interface Screen extends Finder {
  goto(url: string): Promise<unknown>;
  reload(): Promise<unknown>;
  evaluate<R, A>(read: (argument: A) => R | Promise<R>, argument: A): Promise<R>;
  waitForTimeout(ms: number): Promise<void>;
  touchscreen: { tap(x: number, y: number): Promise<void> };
  mouse: {
    move(x: number, y: number, how?: { steps?: number }): Promise<void>;
    down(): Promise<void>;
    up(): Promise<void>;
  };
}

/** Waits until something is to be seen. */
export async function seen(spot: Spot, what = 'is to be seen'): Promise<void> {
  await expect.poll(() => spot.first().isVisible(), { message: what }).toBe(true);
}

/** Waits until it says this. */
export async function says(spot: Spot, words: string | RegExp): Promise<void> {
  const told = async () => ((await spot.count()) > 0 ? ((await spot.first().textContent()) ?? '').trim() : '');
  if (typeof words === 'string') await expect.poll(told).toContain(words);
  else await expect.poll(told).toMatch(words);
}
