import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { understand, type Understand } from '../../src/audit/read/understand/understand.ts';
import { DateCell, PercentCell, type Cell } from '../../src/cells/cell.ts';
import { sameWorkbook } from '../../src/cells/sameWorkbook.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { rememberedUnderstanding } from '../../src/pane/audit/run/rememberedUnderstanding.ts';
import { book } from '../audit/book.ts';

/** A list whose columns no header names as the standard does. */
const list = (measured: number): Workbook =>
  book([
    'Rack',
    [
      ['Point', 'Sens. as tested mV/mil', 'Sens. entered mV/mil', 'H mil pp', 'HH mil pp'],
      ['PT-1', measured, 200, 3, 5],
      ['PT-2', 201, 200, 3, 5],
    ] satisfies Cell[][],
  ]);

function counting(): { readonly by: Understand; readonly count: () => number } {
  let times = 0;
  const by: Understand = (all, answers) => {
    times++;
    return understand(all, answers);
  };
  return { by: rememberedUnderstanding(by), count: () => times };
}

describe('understanding a workbook', () => {
  it('is done once to audit and to ask, and anew for other answers or other cells', () => {
    const { by, count } = counting();
    const workbook = list(160);
    const report = audit(workbook, { understandBy: by });
    expect(count()).toBe(1);
    expect(finish(by(workbook)).questions).toEqual(report.questions);
    expect(count()).toBe(1);
    finish(by(workbook, { tables: [{ sheet: 'Rack', header: 1, use: true }] }));
    expect(count()).toBe(2);
    finish(by(list(161)));
    expect(count()).toBe(3);
  });
});

describe('two readings of a workbook', () => {
  it('are the same where every cell is, and not where one differs or looks otherwise', () => {
    expect(sameWorkbook(list(160), list(160))).toBe(true);
    expect(sameWorkbook(list(160), list(160.5))).toBe(false);
    const [sheet] = list(160).sheets;
    const of = (rest: object): Workbook => ({ name: 'a', sheets: [{ ...sheet!, ...rest }] });
    expect(sameWorkbook(of({ hiddenRows: new Set([2]) }), of({ hiddenRows: new Set([2]) }))).toBe(true);
    expect(sameWorkbook(of({ hiddenRows: new Set([2]) }), of({ hiddenRows: new Set([3]) }))).toBe(false);
    expect(sameWorkbook(of({ hiddenColumns: new Set([2]) }), of({}))).toBe(false);
    const cell = (value: Cell): Workbook => of({ rows: [[value]] });
    expect(sameWorkbook(cell(new DateCell(5)), cell(new DateCell(5)))).toBe(true);
    expect(sameWorkbook(cell(new DateCell(5)), cell(new PercentCell(5)))).toBe(false);
    expect(sameWorkbook(cell(5), cell('5'))).toBe(false);
  });
});
