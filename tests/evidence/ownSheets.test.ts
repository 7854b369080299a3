import { describe, expect, it } from 'vitest';
import { ownSheets } from '../../src/evidence/ownSheets.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { edited, demoBytes, typed, withResults } from './written.ts';

const written = readWorkbook('out.xlsx', withResults(demoBytes));
const results = written.sheets
  .slice(readWorkbook('in.xlsx', demoBytes).sheets.length)
  .map(({ name }) => name);

describe('the result sheets of a workbook', () => {
  it('are proven by the evidence of their audit, and no sheet of the user is among them', () => {
    expect(results).toContain('Audit summary');
    expect(ownSheets(written)).toEqual({ proven: results, unproven: [] });
  });

  it('are not once a cell is another, though the others are', () => {
    const { book } = typed(written, 'Audit results', (cell) => cell === 'late', 'OK');
    expect(ownSheets(book)).toEqual({
      proven: results.filter((name) => name !== 'Audit results'),
      unproven: ['Audit results'],
    });
  });

  it('are not once a note stands beside what was written', () => {
    const noted = edited(written, 'Audit problems', (rows) => [...rows, ['seen by the night shift']]);
    expect(ownSheets(noted).unproven).toEqual(['Audit problems']);
  });

  it('are none of them where the evidence contradicts itself or is gone', () => {
    const { book } = typed(
      written,
      'Audit summary',
      (_, [label]) => label === 'Fingerprint of results',
      'none',
    );
    const labelled = edited(written, 'Audit summary', (rows) =>
      rows.map((cells) => (cells[0] === 'Fingerprint of results' ? [cells[0], null, '0'.repeat(64)] : cells)),
    );
    const gone = { ...written, sheets: written.sheets.filter(({ name }) => name !== 'Audit summary') };
    for (const one of [book, labelled, gone]) expect(ownSheets(one).proven).toEqual([]);
    expect(ownSheets(gone).unproven).toEqual(results.filter((name) => name !== 'Audit summary'));
  });

  it('are not proven where two have one title', () => {
    const again = written.sheets.find(({ name }) => name === 'Audit groups')!;
    const twice = { ...written, sheets: [...written.sheets, { ...again, name: 'My copy' }] };
    expect(ownSheets(twice).unproven).toEqual(['Audit groups', 'My copy']);
  });
});
