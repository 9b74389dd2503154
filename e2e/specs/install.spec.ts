import { readFileSync } from 'node:fs';
import { expect, test } from '../support/app.ts';
import { given } from '../support/settings.ts';

interface Icon {
  src: string;
  type: string;
  sizes: string;
  purpose?: string;
}

/** Width and height of a PNG, from its header. */
const pngSize = (file: Buffer) => `${file.readUInt32BE(16)}x${file.readUInt32BE(20)}`;

test('the manifest makes the app installable, and its icons are what it says', async ({ page }) => {
  await page.goto('./');
  const client = await page.context().newCDPSession(page);
  const { errors, data } = await client.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data ?? '') as { start_url: string; display: string; icons: Icon[] };
  expect(manifest.display).toBe('standalone');
  expect(manifest.start_url).toBe('./');
  const pngs = manifest.icons.filter((icon) => icon.type === 'image/png');
  expect(pngs.map((icon) => icon.sizes).sort()).toEqual(['192x192', '512x512', '512x512']);
  expect(pngs.some((icon) => icon.purpose === 'maskable')).toBe(true);
  for (const icon of pngs) {
    expect(pngSize(readFileSync(`${given('BENCHBOOK_DIST')}/${icon.src}`))).toBe(icon.sizes);
  }
});

test('the built page names no address outside its own folder', async () => {
  const html = readFileSync(`${given('BENCHBOOK_DIST')}/index.html`, 'utf8');
  const addresses = [...html.matchAll(/(?:href|src)="([^"]+)"/g)].map((match) => match[1] ?? '');
  expect(addresses.length).toBeGreaterThan(3);
  expect(addresses.filter((address) => /^(\/|[a-z]+:)/i.test(address))).toEqual([]);
});
