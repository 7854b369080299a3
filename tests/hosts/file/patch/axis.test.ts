import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Axis, landing, moved, movedSpan } from '../../../../src/hosts/file/patch/move/axis.ts';
import { movedFormula } from '../../../../src/hosts/file/patch/move/movedFormula.ts';

const edge = 60;

/** Steps, and the sheet as a list of its old rows afterwards, `null` for new ones, made by taking the list itself apart. */
const stepped = fc
  .array(fc.record({ gap: fc.integer({ min: 1, max: 8 }), removed: fc.nat(4), inserted: fc.nat(4) }), {
    maxLength: 4,
  })
  .map((pieces) => {
    const axis: Axis[number][] = [];
    const rows: (number | null)[] = [];
    let next = 1;
    for (const { gap, removed, inserted } of pieces) {
      for (let count = 0; count < gap; count++) rows.push(next++);
      if (removed > 0 || inserted > 0) axis.push({ at: next, removed, inserted });
      next += removed;
      rows.push(...Array.from({ length: inserted }, () => null));
    }
    while (next <= edge) rows.push(next++);
    return { axis: axis, rows };
  });

describe('rows after steps', () => {
  it('are where a list of rows has them', () => {
    fc.assert(
      fc.property(stepped, fc.integer({ min: 1, max: edge }), ({ axis, rows }, place) => {
        const at = rows.indexOf(place);
        expect(moved(axis, place)).toBe(at < 0 ? undefined : at + 1);
        const next = rows.findIndex((row) => row !== null && row >= place);
        if (next >= 0) expect(landing(axis, place)).toBe(next + 1);
      }),
    );
  });

  it('span what is left of a run and what came between', () => {
    const ends = fc.tuple(fc.integer({ min: 1, max: edge - 1 }), fc.integer({ min: 1, max: edge - 1 }));
    fc.assert(
      fc.property(stepped, ends, ({ axis, rows }, [one, other]) => {
        const [first, last] = [Math.min(one, other), Math.max(one, other)];
        const left = rows.flatMap((row, at) => (row !== null && row >= first && row <= last ? [at + 1] : []));
        const span = movedSpan(axis, first, last, 1_000);
        expect(span).toEqual(left.length === 0 ? undefined : [left[0], left.at(-1)]);
      }),
    );
  });
});

// What spreadsheet programs do with references where rows come and go: common practice, no source; LibreOffice is asked in move.test.ts.
describe('a formula after rows 3 and 4 of Data went and two columns came before B', () => {
  const moves = new Map([
    [
      'data',
      {
        sheet: 'Data',
        rows: [{ at: 3, removed: 2, inserted: 0 }],
        columns: [{ at: 2, removed: 0, inserted: 2 }],
      },
    ],
  ]);
  it.each([
    ['A1+B2', 'A1+D2'],
    ['$B$5*B$6', '$D$3*D$4'],
    ['B3', '#REF!'],
    ['SUM(A1:C9)', 'SUM(A1:E7)'],
    ['SUM(A3:B4)', 'SUM(#REF!)'],
    ['SUM(B:B,$2:9)', 'SUM(D:D,$2:7)'],
    ['SUM(A:XFD)', 'SUM(A:XFD)'],
    ['Other!B5+Data!B5', 'Other!B5+Data!D3'],
    ["'Da''ta'!B5&\"B5\"", "'Da''ta'!B5&\"B5\""],
    ['[1]Data!B5+Other:Data!B5', '[1]Data!B5+Other:Data!B5'],
    ['Table1[B5]+LOG10(B5)+B5_x', 'Table1[B5]+LOG10(D3)+B5_x'],
    ['_xlfn.ANCHORARRAY(B5)', '_xlfn.ANCHORARRAY(D3)'],
    ['C9:B5', 'E7:D3'],
    ['1.5E3+{1,2;3,4}', '1.5E3+{1,2;3,4}'],
  ])('%s reads %s', (before, after) => {
    expect(movedFormula(before, 'Data', moves)).toBe(after);
  });
  it('stays on another sheet, but for what leads there', () => {
    expect(movedFormula("B5+'data'!B5:B6", 'Other', moves)).toBe("B5+'data'!D3:D4");
  });
});
