/** A screen made of a browser that runs scripts and taps points. */
import type { Box, Point, Role, Screen, Spot } from '../screen.ts';
import type { Tab } from './engine.ts';
import { found, words, type Step } from './steps.ts';

/** How long something is waited for before it is touched: ms. */
const PATIENCE = 30_000;
const PAUSE = 50;

class RemoteSpot implements Spot {
  constructor(
    private readonly screen: RemoteScreen,
    private readonly steps: Step[],
  ) {}

  private and(step: Step): RemoteSpot {
    return new RemoteSpot(this.screen, [...this.steps, step]);
  }

  locator(css: string): Spot {
    return this.and({ css });
  }

  getByRole(role: Role, { name, exact }: { name?: string | RegExp; exact?: boolean } = {}): Spot {
    return this.and(name === undefined ? { role } : { role, name: words(name, exact) });
  }

  getByLabel(label: string, { exact }: { exact?: boolean } = {}): Spot {
    return this.and({ label: words(label, exact) });
  }

  filter({ hasText }: { hasText: string | RegExp }): Spot {
    return this.and({ hasText: words(hasText) });
  }

  nth(at: number): Spot {
    return this.and({ at });
  }

  first(): Spot {
    return this.nth(0);
  }

  evaluateAll<R>(read: (all: HTMLElement[]) => R): Promise<R> {
    return this.screen.onAll(this.steps, read);
  }

  count(): Promise<number> {
    return this.evaluateAll((all) => all.length);
  }

  allTextContents(): Promise<string[]> {
    return this.evaluateAll((all) => all.map((el) => el.textContent ?? ''));
  }

  allInnerTexts(): Promise<string[]> {
    return this.evaluateAll((all) => all.map((el) => el.innerText));
  }

  isVisible(): Promise<boolean> {
    return this.evaluateAll((all) => Boolean(all[0]?.checkVisibility()) && all[0]!.getClientRects().length > 0);
  }

  async textContent(): Promise<string | null> {
    return this.one((el) => el.textContent);
  }

  async getAttribute(name: string): Promise<string | null> {
    const all = await this.one((el) => Object.fromEntries([...el.attributes].map((own) => [own.name, own.value])));
    return all[name] ?? null;
  }

  async boundingBox(): Promise<Box | null> {
    return this.one((el) => {
      const { x, y, width, height } = el.getBoundingClientRect();
      return { x, y, width, height };
    });
  }

  async tap(): Promise<void> {
    await this.screen.tab.tap(await this.middle());
  }

  async fill(text: string): Promise<void> {
    await this.one((el) => {
      el.scrollIntoView({ block: 'center' });
      el.focus();
    });
    await this.screen.onAll(
      this.steps,
      (all: HTMLElement[], text) => {
        const input = all[0] as HTMLInputElement;
        input.value = text;
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      },
      text,
    );
  }

  async blur(): Promise<void> {
    // A field filled in by a script has no change of its own to tell of when it is left.
    await this.one((el) => {
      el.dispatchEvent(new Event('change', { bubbles: true }));
      el.blur();
    });
  }

  async selectOption({ label }: { label: string }): Promise<void> {
    await this.one((el) => el.focus());
    await this.screen.onAll(
      this.steps,
      (all: HTMLElement[], label) => {
        const select = all[0] as HTMLSelectElement;
        const option = [...select.options].find((option) => option.label.trim() === label.trim());
        if (!option) throw new Error(`no option ${label}`);
        select.value = option.value;
        select.dispatchEvent(new Event('input', { bubbles: true }));
        select.dispatchEvent(new Event('change', { bubbles: true }));
      },
      label,
    );
  }

  /** Reads the first, once it is there. */
  private async one<R>(read: (el: HTMLElement) => R): Promise<R> {
    await this.there(() => this.count().then((count) => count > 0));
    return this.screen.onAll(this.steps, new Function('all', `return (${read.toString()})(all[0])`) as (all: HTMLElement[]) => R);
  }

  /** The middle of the first, once it can be touched there: brought into sight, enabled, and not covered. */
  private async middle(): Promise<Point> {
    let found: Point | string = 'not there';
    const touchable = async (): Promise<boolean> => {
      found = await this.evaluateAll((all) => {
        const el = all[0];
        if (!el) return 'not there';
        if ((el as HTMLButtonElement).disabled) return 'disabled';
        const { top, left, bottom, right } = el.getBoundingClientRect();
        if (top < 0 || left < 0 || bottom > innerHeight || right > innerWidth) el.scrollIntoView({ block: 'center', inline: 'center' });
        const box = el.getBoundingClientRect();
        const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        const hit = document.elementFromPoint(middle.x, middle.y);
        return hit && (el.contains(hit) || hit.contains(el)) ? middle : `covered by ${hit?.outerHTML.slice(0, 80)}`;
      });
      return typeof found !== 'string';
    };
    await this.there(touchable, () => String(found));
    return found as unknown as Point;
  }

  private async there(ready: () => Promise<boolean>, said: () => string = () => 'not there'): Promise<void> {
    const end = Date.now() + PATIENCE;
    while (!(await ready())) {
      if (Date.now() > end) throw new Error(`${said()}: ${JSON.stringify(this.steps)}`);
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
    }
  }
}

export class RemoteScreen implements Screen {
  private path: Point[] = [];
  private pressed = false;

  constructor(readonly tab: Tab) {}

  locator(css: string): Spot {
    return new RemoteSpot(this, []).locator(css);
  }

  getByRole(role: Role, by?: { name?: string | RegExp; exact?: boolean }): Spot {
    return new RemoteSpot(this, []).getByRole(role, by);
  }

  getByLabel(label: string, by?: { exact?: boolean }): Spot {
    return new RemoteSpot(this, []).getByLabel(label, by);
  }

  async goto(url: string): Promise<void> {
    await this.tab.goto(url);
  }

  async reload(): Promise<void> {
    await this.tab.reload();
  }

  async evaluate<R, A>(read: (argument: A) => R | Promise<R>, argument: A): Promise<R> {
    return (await this.tab.run(`return (${read.toString()})(argument)`, argument)) as R;
  }

  /** Runs a function on what these steps find. */
  async onAll<R, A>(steps: Step[], read: (all: HTMLElement[], argument: A) => R, argument?: A): Promise<R> {
    const body = `return (${read.toString()})((${found.toString()})(argument.steps), argument.argument)`;
    return (await this.tab.run(body, { steps, argument })) as R;
  }

  waitForTimeout(ms: number): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, ms));
  }

  touchscreen = { tap: (x: number, y: number): Promise<void> => this.tab.tap({ x, y }) };

  /** Gathered while the button is down, and carried out as one gesture when it goes up. */
  mouse = {
    move: async (x: number, y: number): Promise<void> => {
      this.path = this.pressed ? [...this.path, { x, y }] : [{ x, y }];
    },
    down: async (): Promise<void> => {
      this.pressed = true;
    },
    up: async (): Promise<void> => {
      this.pressed = false;
      await this.tab.drag(this.path);
    },
  };
}
