import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import type { WorkbookView } from '../../../../src/hosts/file/view/types.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { resultSheet } from '../write/model.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { styledWorkbook } from './styled.ts';

/** Cells of the first sheet by place, with what LibreOffice writes out in full: formulas, and colours without themes. */
function told(view: WorkbookView): Record<string, unknown> {
  const cells = view.sheets[0]?.rows.flatMap(({ row, cells: inRow }) =>
    inRow
      .filter(({ value }) => value !== null)
      .map(({ column, value, error, formula: stored, style }): [string, unknown] => {
        // LibreOffice writes errors and truth values as formulas.
        const formula = error === true || typeof value === 'boolean' ? undefined : stored;
        const { fill, color, bold, italic, underline, size, align, wrap, numberFormat } =
          view.styles[style] ?? {};
        const looks = {
          fill,
          color: color ?? '000000',
          bold,
          italic,
          underline,
          size,
          align,
          wrap,
          numberFormat,
        };
        return [`${row},${column}`, { formula, ...looks }];
      }),
  );
  return Object.fromEntries(cells ?? []);
}

describeWithLibreOffice('a workbook saved by LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'view-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('has the formulas and looks that were seen in the original', () => {
    const path = join(folder, 'styled.xlsx');
    writeFileSync(path, styledWorkbook());
    const saved = viewWorkbook('saved.xlsx', readFileSync(convert(path, 'xlsx', join(folder, 'out'))));
    const original = viewWorkbook('styled.xlsx', styledWorkbook());
    expect(told(saved)).toEqual(told(original));
    expect(saved.sheets[0]?.merges).toEqual(original.sheets[0]?.merges);
  });

  it('has the rules that were seen in a written sheet', () => {
    const path = join(folder, 'rules.xlsx');
    const written = newWorkbook([resultSheet()]);
    writeFileSync(path, written);
    const rules = (bytes: Uint8Array) =>
      viewWorkbook('rules.xlsx', bytes).sheets[0]?.rules?.map(({ shade, areas, operator, formulas }) => ({
        areas,
        operator,
        formulas,
        fill: shade.fill,
        color: shade.color,
      }));
    const original = rules(written);
    expect(original?.length).toBeGreaterThan(0);
    expect(rules(readFileSync(convert(path, 'xlsx', join(folder, 'out'))))).toEqual(original);
  });
});
