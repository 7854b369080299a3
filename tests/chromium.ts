import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { describeWithTool, programOf } from './tool.ts';

/** Path of the Chromium command, or undefined where there is none that runs. */
export function chromiumPath(): string | undefined {
  const program = programOf('Chromium');
  if (program === undefined) return undefined;
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .map((folder) => join(folder, program))
    .find((path) => existsSync(path));
}

/** A block of tests that needs Chromium. */
export function describeWithChromium(name: string, tests: () => void): void {
  describeWithTool('Chromium', name, tests);
}

/** A browser of its own with a new profile, that asks nobody anything by itself. The caller closes it. */
export function startChromium(): Promise<Browser> {
  const path = chromiumPath();
  if (path === undefined) throw new Error('Chromium is not installed');
  return chromium.launch({
    executablePath: path,
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
