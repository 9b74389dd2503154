/** WebKitGTK's small browser on a screen that isn't there, over plain W3C WebDriver. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Point } from '../screen.ts';
import { given, SHAPES } from '../settings.ts';
import type { Engine, Tab } from './engine.ts';

/** A page that answers nothing for so long has hung: ms. */
const PATIENCE = 60_000;

export async function webkit(): Promise<Engine> {
  const home = mkdtempSync(join(tmpdir(), 'benchbook-webkit-'));
  const downloads = join(home, 'downloads');
  mkdirSync(downloads);
  writeFileSync(join(home, 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${downloads}"\n`);
  const [screen, display] = await startScreen();
  const port = await freePort();
  const driver = spawn(given('BENCHBOOK_WEBKIT_DRIVER'), [`--port=${port}`], {
    stdio: ['ignore', 'ignore', 'ignore'],
    env: { ...process.env, DISPLAY: display, XDG_CONFIG_HOME: home, XDG_DATA_HOME: home, XDG_CACHE_HOME: home },
  });
  const wire = new Wire(`http://127.0.0.1:${port}`);
  await wire.begin();
  return {
    name: 'WebKit',
    downloads,
    tab: () => wire.tab(),
    stop: async () => {
      await wire.end();
      await Promise.all([ended(driver), ended(screen)]);
    },
  };
}

/** Starts the screen; it names its own number. */
async function startScreen(): Promise<[ChildProcess, string]> {
  const screen = spawn(given('BENCHBOOK_SCREEN'), ['-displayfd', '1', '-screen', '0', '1400x1400x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    createInterface(screen.stdout!).once('line', resolve);
    screen.once('exit', (code) => reject(new Error(`the screen ended with ${code}`)));
  });
  return [screen, `:${number}`];
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  const end = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  child.kill('SIGKILL');
  return end;
}

/** A WebDriver session. */
class Wire {
  private session = '';
  private current = '';
  private first: string | undefined;

  constructor(private readonly driver: string) {}

  async begin(): Promise<void> {
    const browser = { binary: given('BENCHBOOK_WEBKIT_BROWSER'), args: ['--automation'] };
    const wanted = { capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': browser } } };
    const end = Date.now() + PATIENCE;
    for (;;) {
      try {
        const { sessionId } = (await this.call('POST', '/session', wanted)) as { sessionId: string };
        this.session = `/session/${sessionId}`;
        break;
      } catch (failure) {
        // Until the driver listens, nobody answers.
        if (!(failure instanceof TypeError) || Date.now() > end) throw failure;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    }
    await this.send('POST', '/timeouts', { script: PATIENCE, pageLoad: PATIENCE });
    this.first = this.current = (await this.send('GET', '/window')) as string;
  }

  /** Sizes the window so that the page has the size of a tablet. */
  private async shape(): Promise<void> {
    await this.send('POST', '/window/rect', { x: 0, y: 0, ...SHAPES.tablet });
    const script = { script: 'return [innerWidth, innerHeight]', args: [] };
    const [width, height] = (await this.send('POST', '/execute/sync', script)) as [number, number];
    const { width: w, height: h } = SHAPES.tablet;
    await this.send('POST', '/window/rect', { width: w + (w - width), height: h + (h - height) });
  }

  async tab(): Promise<Tab> {
    // A second tab of a window stays hidden, and what is hidden can't be touched: it gets a window of its own.
    const handle = this.first ?? ((await this.send('POST', '/window/new', { type: 'window' })) as { handle: string }).handle;
    this.first = undefined;
    await this.switchTo(handle);
    await this.shape();
    return new WebKitTab(this, handle);
  }

  async switchTo(handle: string): Promise<void> {
    if (this.current !== handle) await this.send('POST', '/window', { handle });
    this.current = handle;
  }

  forget(): void {
    this.current = '';
  }

  async end(): Promise<void> {
    await this.call('DELETE', this.session).catch(() => undefined);
  }

  send(method: string, path: string, body?: unknown): Promise<unknown> {
    return this.call(method, this.session + path, body);
  }

  private async call(method: string, path: string, body?: unknown): Promise<unknown> {
    const answer = await fetch(this.driver + path, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const { value } = (await answer.json()) as { value: any };
    if (!answer.ok) throw new Error(`${path}: ${value?.error}: ${value?.message}`);
    return value;
  }
}

class WebKitTab implements Tab {
  constructor(
    private readonly wire: Wire,
    private readonly handle: string,
  ) {}

  private async send(method: string, path: string, body?: unknown): Promise<unknown> {
    await this.wire.switchTo(this.handle);
    return this.wire.send(method, path, body);
  }

  async goto(url: string): Promise<void> {
    await this.send('POST', '/url', { url });
  }

  async reload(): Promise<void> {
    await this.send('POST', '/refresh', {});
  }

  async run(body: string, argument: unknown): Promise<unknown> {
    const script = `const done = arguments[1];
      (async (argument) => { ${body} })(arguments[0]).then(
        (value) => done(JSON.stringify({ value })), (error) => done(JSON.stringify({ error: String(error) })));`;
    const told = (await this.send('POST', '/execute/async', { script, args: [argument ?? null] })) as string;
    const { value, error } = JSON.parse(told) as { value: unknown; error?: string };
    if (error) throw new Error(error);
    return value;
  }

  tap(at: Point): Promise<void> {
    return this.drag([at]);
  }

  async drag([from, ...through]: Point[]): Promise<void> {
    if (!from) return;
    const move = ({ x, y }: Point, duration = 0) => ({ type: 'pointerMove', duration, x: Math.round(x), y: Math.round(y) });
    const [down, up] = ['pointerDown', 'pointerUp'].map((type) => ({ type, button: 0 }));
    const actions = [move(from), down, ...through.map((point) => move(point, 100)), up];
    const pointer = { type: 'pointer', id: 'finger', parameters: { pointerType: 'mouse' }, actions };
    await this.send('POST', '/actions', { actions: [pointer] });
  }

  async close(): Promise<void> {
    await this.send('DELETE', '/window');
    this.wire.forget();
  }
}
