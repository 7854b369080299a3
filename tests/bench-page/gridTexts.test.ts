import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { gridTexts } from '../../src/bench/grid/gridTexts.ts';

/** From the package that brings it in, as it is a part of the grid's own. */
const grid = createRequire(createRequire(import.meta.url).resolve('@univerjs/preset-sheets-core'));

describe('texts of the grid', () => {
  it('are there for every step that the formula engine tells of', () => {
    const engine = readFileSync(grid.resolve('@univerjs/sheets-formula'), 'utf8');
    const keys = [...new Set(engine.match(/sheets-formula\.progress\.[a-z-]+/gu))];
    expect(keys.length).toBeGreaterThan(3);
    for (const key of keys) {
      const text = key
        .split('.')
        .reduce<unknown>((at, part) => (at as Record<string, unknown> | undefined)?.[part], gridTexts);
      expect(text, key).toMatch(/^[A-Z][a-z]/u);
    }
  });
});
