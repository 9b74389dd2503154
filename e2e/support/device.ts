/** One device: a browser with a profile folder of its own that outlives closing and killing. */
import { chromium, type BrowserContext, type Page } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browserOptions, SHAPES } from './settings.ts';

export class Device {
  private readonly profile = mkdtempSync(join(tmpdir(), 'benchbook-device-'));
  private running: BrowserContext | undefined;

  constructor(private readonly shape: { width: number; height: number } = SHAPES.tablet) {}

  /** Starts the browser on the profile as it was left. */
  async start(): Promise<BrowserContext> {
    if (this.running) throw new Error('this device is already running');
    this.running = await chromium.launchPersistentContext(this.profile, {
      ...browserOptions(),
      viewport: this.shape,
      hasTouch: true,
      acceptDownloads: true,
    });
    return this.running;
  }

  /** Opens the app in the page that a started browser shows. */
  async open(url: string): Promise<Page> {
    const context = this.running ?? (await this.start());
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(url);
    return page;
  }

  /** Closes the browser as a person would. */
  async close(): Promise<void> {
    await this.running?.close();
    this.running = undefined;
  }

  /** Ends the browser and all its processes at once, as an empty battery would. */
  async kill(): Promise<void> {
    const context = this.running;
    if (!context) throw new Error('this device is not running');
    const closed = new Promise<void>((resolve) => context.once('close', () => resolve()));
    process.kill(-this.leader(), 'SIGKILL');
    await closed;
    this.running = undefined;
  }

  /** Ends the browser and forgets the profile. */
  async discard(): Promise<void> {
    await this.close();
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }

  /** The browser process of this very profile, which leads a process group of its own. */
  private leader(): number {
    const processes = execFileSync('ps', ['-axww', '-o', 'pid=,pgid=,args='], { encoding: 'utf8' });
    for (const line of processes.split('\n')) {
      const [, pid, group, args] = /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(line) ?? [];
      if (args?.includes(`--user-data-dir=${this.profile}`) && !args.includes('--type=') && pid === group) {
        return Number(pid);
      }
    }
    throw new Error("the browser's process was not found");
  }
}
