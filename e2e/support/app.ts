/** The test function of every spec, with what a test of this app needs. */
import { test as base, expect, type Page } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { Device } from './device.ts';
import { copyOfApp, serve, type Server } from './server.ts';
import { given, OUT } from './settings.ts';

export { expect };

interface Fixtures {
  /** A device of its own that can be killed and started again. */
  device: Device;
  /** Serves dist/ from a server of its own, under any path; stopped at the end of the test. */
  host: (options?: { folder?: string; under?: string; port?: number }) => Promise<Server>;
  /** A copy of the built app that the test may change. */
  copy: ReturnType<typeof copyOfApp>;
  /** Takes a picture into e2e/.out/. */
  picture: (name: string, page?: Page) => Promise<void>;
}

export const test = base.extend<Fixtures>({
  device: async ({ viewport }, use) => {
    const device = new Device(viewport ?? undefined);
    await use(device);
    await device.discard();
  },
  host: async ({}, use) => {
    const servers: Server[] = [];
    await use(async ({ folder = given('BENCHBOOK_DIST'), ...options } = {}) => {
      const server = await serve(folder, options);
      servers.push(server);
      return server;
    });
    await Promise.all(servers.map((server) => server.stop()));
  },
  copy: async ({}, use) => {
    const copy = copyOfApp();
    await use(copy);
    copy.remove();
  },
  picture: async ({ page }, use) => {
    mkdirSync(OUT, { recursive: true });
    await use(async (name, of = page) => {
      await of.screenshot({ path: `${OUT}/${name}.png` });
    });
  },
});

/** Waits until the app on this page can do without the network. */
export async function keptOffline(page: Page): Promise<void> {
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 30_000 });
}

/** Fails the test on any error the page throws or logs; call it before opening the app. */
export function watchErrors(page: Page): string[] {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  return errors;
}

/** The app has drawn itself. */
export async function drawn(page: Page): Promise<void> {
  await expect(page.locator('main')).toBeVisible();
}
