import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { drawn, expect, keptOffline, test } from '../support/app.ts';
import type { Page } from '@playwright/test';

const names = (page: Page) => page.evaluate(() => caches.keys());

const updateOffered = (page: Page) =>
  page.waitForFunction(() => Boolean((window as unknown as { benchbookUpdate?: object }).benchbookUpdate));

const takeOver = (page: Page) =>
  page.evaluate(() => (window as unknown as { benchbookTakeOver(): void }).benchbookTakeOver());

test('a new version waits until it is asked to take over', async ({ page, copy, host }) => {
  const server = await host({ folder: copy.folder });
  await page.goto(server.url);
  await drawn(page);
  await keptOffline(page);
  const [old] = await names(page);

  const html = readFileSync(`${copy.folder}/index.html`, 'utf8');
  writeFileSync(`${copy.folder}/index.html`, html.replace('<html', '<html data-release="new"'));
  copy.list();

  await page.reload();
  await updateOffered(page);
  await page.reload();
  await drawn(page);
  await updateOffered(page);
  await expect(page.locator('html')).not.toHaveAttribute('data-release', 'new');
  expect(await names(page)).toContain(old);

  await takeOver(page);
  await expect(page.locator('html')).toHaveAttribute('data-release', 'new');
  await drawn(page);
  await expect.poll(() => names(page)).toHaveLength(1);
  expect(await names(page)).not.toContain(old);
});

test('taking over reloads only the page that asked', async ({ context, copy, host }) => {
  const server = await host({ folder: copy.folder });
  const [scorer, other] = [await context.newPage(), await context.newPage()];
  await scorer.goto(server.url);
  await keptOffline(scorer);
  await other.goto(server.url);
  await drawn(other);
  await scorer.evaluate(() => ((window as unknown as { inPlay: boolean }).inPlay = true));

  appendFileSync(`${copy.folder}/register.js`, '\n// another version\n');
  copy.list();
  await other.reload();
  await updateOffered(other);
  await Promise.all([other.waitForEvent('load'), takeOver(other)]);
  await drawn(other);
  expect(await scorer.evaluate(() => (window as unknown as { inPlay?: boolean }).inPlay)).toBe(true);
});

test('a host caught between two versions keeps the old one whole', async ({ page, copy, host }) => {
  const server = await host({ folder: copy.folder });
  await page.goto(server.url);
  await keptOffline(page);
  const before = await names(page);

  // The new list is out already, the page it lists is not.
  appendFileSync(`${copy.folder}/register.js`, '\n// another version\n');
  copy.list();
  appendFileSync(`${copy.folder}/register.js`, '\n// and not the listed one\n');
  const updated = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => undefined);
    const worker = registration.installing;
    if (!worker) return registration.waiting ? 'waiting' : 'redundant';
    return new Promise<string>((resolve) => {
      worker.addEventListener('statechange', () => resolve(worker.state));
    });
  });
  expect(updated).toBe('redundant');
  expect(await names(page)).toEqual(before);
  await server.stop();
  await page.reload();
  await drawn(page);
});
