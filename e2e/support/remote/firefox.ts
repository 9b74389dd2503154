/** Firefox, headless, over WebDriver BiDi. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launch, type Page } from 'puppeteer-core';
import type { Point } from '../screen.ts';
import { given, SHAPES } from '../settings.ts';
import type { Engine, Tab } from './engine.ts';

export async function firefox(): Promise<Engine> {
  const downloads = mkdtempSync(join(tmpdir(), 'benchbook-firefox-'));
  const browser = await launch({
    browser: 'firefox',
    executablePath: given('BENCHBOOK_FIREFOX'),
    headless: true,
    defaultViewport: SHAPES.tablet,
    extraPrefsFirefox: {
      'dom.w3c_touch_events.enabled': 1,
      'browser.download.folderList': 2,
      'browser.download.dir': downloads,
      'browser.download.alwaysOpenPanel': false,
    },
  });
  return {
    name: 'Firefox',
    downloads,
    tab: async () => new FirefoxTab(await browser.newPage()),
    stop: () => browser.close(),
  };
}

class FirefoxTab implements Tab {
  constructor(private readonly page: Page) {}

  async goto(url: string): Promise<void> {
    await this.page.goto(url);
  }

  async reload(): Promise<void> {
    await this.page.reload();
  }

  async run(body: string, argument: unknown): Promise<unknown> {
    const script = `(async (argument) => { ${body} })(${JSON.stringify(argument ?? null)}).then((value) => JSON.stringify([value]))`;
    const [value] = JSON.parse((await this.page.evaluate(script)) as string) as [unknown];
    return value;
  }

  tap({ x, y }: Point): Promise<void> {
    return this.page.touchscreen.tap(x, y);
  }

  async drag([from, ...through]: Point[]): Promise<void> {
    if (!from) return;
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    for (const { x, y } of through) await this.page.mouse.move(x, y, { steps: 4 });
    await this.page.mouse.up();
  }

  close(): Promise<void> {
    return this.page.close();
  }
}
