/** Serves a folder with the project's own server, as a process that can be stopped. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { given } from './settings.ts';

export interface Server {
  url: string;
  stop(): Promise<void>;
}

export async function serve(folder: string, { under = '/', port = 0 } = {}): Promise<Server> {
  const child = spawn(given('BENCHBOOK_XTASK'), ['serve-folder', folder, '--under', under, '--port', String(port)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const url = await new Promise<string>((resolve, reject) => {
    createInterface(child.stdout).once('line', resolve);
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
  });
  return {
    url,
    stop: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

/** A copy of the built app that a test may change. */
export function copyOfApp(): { folder: string; list(): void; remove(): void } {
  const folder = mkdtempSync(join(tmpdir(), 'benchbook-app-'));
  cpSync(given('BENCHBOOK_DIST'), folder, { recursive: true });
  return {
    folder,
    /** Writes the service worker's list anew, as a build does. */
    list: () => {
      const { status } = spawnSync(given('BENCHBOOK_XTASK'), ['precache', folder], { stdio: 'inherit' });
      if (status !== 0) throw new Error('the list could not be written');
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
