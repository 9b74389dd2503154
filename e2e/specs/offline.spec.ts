import { drawn, expect, keptOffline, test, watchErrors } from '../support/app.ts';

test('after one visit the app starts cold with no server and no network', async ({ device, host }) => {
  const server = await host();
  let page = await device.open(server.url);
  await drawn(page);
  await keptOffline(page);
  await device.close();
  await server.stop();

  const context = await device.start();
  await context.setOffline(true);
  page = await context.newPage();
  const errors = watchErrors(page);
  await page.goto(server.url);
  await drawn(page);
  expect(await page.evaluate(() => navigator.onLine)).toBe(false);

  await page.reload();
  await drawn(page);
  await page.goto(`${server.url}index.html?from=home-screen`);
  await drawn(page);
  expect(errors).toEqual([]);
});

test('it does so too under a path, and when the browser was killed', async ({ device, host }) => {
  const server = await host({ under: '/some/where/' });
  let page = await device.open(server.url);
  await drawn(page);
  await keptOffline(page);
  expect(new URL(page.url()).pathname).toBe('/some/where/');
  const scope = await page.evaluate(async () => (await navigator.serviceWorker.ready).scope);
  expect(scope).toBe(server.url);
  await device.kill();
  await server.stop();

  page = await device.open(server.url);
  await drawn(page);
});

test('everything the page loads is on the list that is kept', async ({ page, host }) => {
  const server = await host();
  const loaded = new Set<string>();
  page.on('request', (request) => loaded.add(request.url().replace(/\?.*$/, '')));
  await page.goto(server.url);
  await drawn(page);
  await keptOffline(page);
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return requests.flat().map((request) => request.url);
  });
  expect(kept.length).toBeGreaterThan(5);
  expect(kept.some((url) => url.endsWith('.wasm'))).toBe(true);
  const missing = [...loaded].filter((url) => !kept.includes(url) && !url.endsWith('/sw.js'));
  expect(missing).toEqual([]);
});

test('two copies of the app on one host keep out of each other\'s way', async ({ device, copy, host }) => {
  const { mkdirSync, cpSync, writeFileSync, rmSync } = await import('node:fs');
  // One host, two paths: both copies below one folder.
  for (const name of ['home', 'away']) {
    mkdirSync(`${copy.folder}-both/${name}`, { recursive: true });
    cpSync(copy.folder, `${copy.folder}-both/${name}`, { recursive: true });
  }
  writeFileSync(`${copy.folder}-both/index.html`, 'two copies');
  const server = await host({ folder: `${copy.folder}-both` });
  for (const name of ['home', 'away']) {
    await keptOffline(await device.open(`${server.url}${name}/`));
  }
  await server.stop();
  for (const name of ['home', 'away']) {
    await drawn(await device.open(`${server.url}${name}/`));
  }
  rmSync(`${copy.folder}-both`, { recursive: true });
});
