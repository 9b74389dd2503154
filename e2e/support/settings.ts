/** What `cargo xtask test` hands over, and how the browser is started. */
import { fileURLToPath } from 'node:url';

export const OUT = fileURLToPath(new URL('../.out', import.meta.url));

/** Sizes in CSS px. */
export const SHAPES = {
  tablet: { width: 820, height: 1180 },
  landscape: { width: 1180, height: 820 },
  phone: { width: 360, height: 740 },
};

/** The browsers to test in that Playwright doesn't drive. */
export const OTHERS = process.env.BENCHBOOK_FIREFOX && process.env.BENCHBOOK_WEBKIT_DRIVER ? ['firefox', 'webkit'] : [];

export function given(name: string): string {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: run \`cargo xtask test --only browser\``);
  return value;
}

export function browserOptions() {
  return {
    executablePath: given('BENCHBOOK_CHROMIUM'),
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
    // The sandbox can't be used by root.
    chromiumSandbox: !process.env.BENCHBOOK_ROOT && process.platform === 'linux' ? undefined : false,
  };
}
