/** A browser driven from afar, as little of it as a scorer's hand needs. */
import type { Point } from '../screen.ts';

/** One tab. Points are CSS px of the page as it shows. */
export interface Tab {
  goto(url: string): Promise<void>;
  reload(): Promise<void>;
  /** Runs a script in the page: the body of an async function of `argument`; what it returns comes back as JSON. */
  run(body: string, argument: unknown): Promise<unknown>;
  /** A finger down and up again. */
  tap(at: Point): Promise<void>;
  /** A finger or a mouse that goes down, through all these points, and up. */
  drag(through: Point[]): Promise<void>;
  close(): Promise<void>;
}

export interface Engine {
  name: string;
  /** A tab of the one profile. */
  tab(): Promise<Tab>;
  /** Where files taken home arrive. */
  downloads: string;
  stop(): Promise<void>;
}
