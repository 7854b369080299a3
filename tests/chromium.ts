import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { describe, expect, it } from 'vitest';

/** Path of the Chromium found on PATH, or undefined where it is not installed. */
export function chromiumPath(): string | undefined {
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => [join(folder, 'chromium'), join(folder, 'chromium-browser')])
    .find((path) => existsSync(path));
}

/**
 * A block of tests that needs Chromium: skipped where it is absent, but failing there when the environment variable CI
 * is `true`, so that a build server cannot lose these checks unnoticed.
 */
export function describeWithChromium(name: string, tests: () => void): void {
  const title = `${name} (needs Chromium)`;
  if (chromiumPath() !== undefined) {
    describe(title, tests);
  } else if (process.env['CI'] === 'true') {
    describe(title, () => {
      it('finds chromium on PATH', () => {
        expect.fail('Chromium is not installed');
      });
    });
  } else {
    describe.skip(title, tests);
  }
}

/** A browser of its own with a new profile, that asks nobody anything by itself. The caller closes it. */
export function startChromium(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === undefined) throw new Error('Chromium is not installed');
  return chromium.launch({
    executablePath,
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
