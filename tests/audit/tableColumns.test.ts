// What a new column of the tables still needs. Its reading, help and entry in the template the compiler asks for.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { columnsOf } from '../../src/audit/read/tables/vocabulary.ts';
import { headerKey } from '../../src/audit/read/tables/header.ts';

const page = readFileSync(join(import.meta.dirname, '../../src/help/tables.md'), 'utf8').toLowerCase();

/** Columns that the page tells of in one phrase with others. */
const toldTogether: Readonly<Record<string, string>> = {
  loopAtZero: 'loop current at 0 %, at 100 %, and the uncertainty of each',
  loopAtSpan: 'loop current at 0 %, at 100 %, and the uncertainty of each',
  loopAtZeroUncertainty: 'loop current at 0 %, at 100 %, and the uncertainty of each',
  loopAtSpanUncertainty: 'loop current at 0 %, at 100 %, and the uncertainty of each',
};

/** What the page's table of a kind says in its first column. */
function told(kind: 'channels' | 'settings'): string {
  const [, after = ''] = page.split(kind === 'channels' ? '| channel list |' : '| monitor settings |');
  const [table = ''] = after.split('\n\n');
  return table
    .split('\n')
    .map((line) => line.split('|')[1] ?? '')
    .join('\n')
    .replaceAll('*', '');
}

describe.each(['channels', 'settings'] as const)('every column of the %s', (kind) => {
  const columns = Object.entries(columnsOf(kind));

  it('is told of in the help page of the tables', () => {
    const lines = told(kind);
    const untold = columns.filter(
      ([id, { name }]) => !lines.includes((toldTogether[id] ?? name).toLowerCase()),
    );
    expect(untold.map(([, { name }]) => name)).toEqual([]);
  });

  it('has headers that mean no other column of its table', () => {
    const owners = new Map<string, string>();
    const twice: string[] = [];
    for (const [id, { name, also = [] }] of columns) {
      for (const key of new Set([name, ...also].map(headerKey))) {
        if (owners.has(key)) twice.push(`${key}: ${owners.get(key) ?? ''} and ${id}`);
        owners.set(key, id);
      }
    }
    expect(twice).toEqual([]);
  });

  it('takes the example that a template gives of it', () => {
    for (const [id, { entry, holds }] of columns) {
      const samples = typeof entry.sample === 'string' ? [entry.sample] : Object.values(entry.sample);
      for (const sample of samples) {
        if (holds === 'number') expect(Number(sample), id).not.toBeNaN();
        if (holds === 'date') expect(sample, id).toMatch(/^\d{4}-\d\d-\d\d$/u);
        const { allowed } = entry;
        if (allowed === undefined || 'dateFrom' in allowed) continue;
        if ('words' in allowed) expect(allowed.words, id).toContain(sample);
        else if ('above' in allowed) expect(Number(sample), id).toBeGreaterThan(allowed.above);
        else if ('atLeast' in allowed) expect(Number(sample), id).toBeGreaterThanOrEqual(allowed.atLeast);
        else {
          expect(Number(sample), id).toBeGreaterThanOrEqual(allowed.from);
          expect(Number(sample), id).toBeLessThanOrEqual(allowed.to);
        }
      }
    }
  });
});
