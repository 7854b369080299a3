import { join } from 'node:path';
import type { InlineConfig } from 'vite';

/** Source folder of the project. */
export const SOURCE = join(import.meta.dirname, '..', '..');

/**
 * How everything that runs in a page is bundled: addresses relative to the page, so that any path in front of it
 * works; no files inlined, so that the strictest content policy holds; the small parser for units.
 */
export const PAGE_BUNDLE = {
  configFile: false,
  publicDir: false,
  base: './',
  logLevel: 'warn',
  resolve: { alias: { 'mathjs/lib/browser/math.js': join(import.meta.dirname, 'unitParser.ts') } },
  build: { target: 'es2022', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
} as const satisfies InlineConfig;
