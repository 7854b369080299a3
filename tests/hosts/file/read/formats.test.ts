// Number formats: ECMA-376 part 1, sections 18.8.30 (built-in ids) and 18.8.31 (codes); date systems: section
// 18.17.4.1. Grade: open standard, cited from memory. LibreOffice, an independent reader, is asked as well below.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DateCell, PercentCell } from '../../../../src/cells/cell.ts';
import { kindOfBuiltIn, kindOfCode, shownTextOf } from '../../../../src/hosts/formats/numberFormat.ts';
import { dayOfSerial, dayOfIso } from '../../../../src/hosts/formats/dates.ts';
import { readCsv } from '../../../../src/hosts/file/read/csv.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { oneSheet, stylesOf } from './book.ts';

const dateCodes = [
  'yyyy-mm-dd',
  'dd.mm.yy',
  '[$-409]d-mmm-yy;@',
  'm/d/yyyy h:mm',
  'mmmm',
  '"cal. "yyyy\\-mm\\-dd',
  'h:mm AM/PM',
  'mm:ss.0',
];
const numberCodes = [
  'General',
  '0.00',
  '[Red]0.0',
  '"day" 0',
  '0.00E+00',
  '0\\d',
  '#,##0_d',
  '[h]:mm',
  '[mm]:ss',
  '0.0"%"',
  '[Blue]0;[Red]-0',
  '0.0 "mV/mil"',
  '@',
  '# ?/?',
  '0*d',
];
const percentCodes = ['0%', '0.0%', '0.00 %;[Red]-0.00 %', '"+/- "0%'];

describe('number formats', () => {
  it.each(dateCodes)('%s shows a date', (code) => {
    expect(kindOfCode(code)).toBe('date');
  });
  it.each(numberCodes)('%s shows a number', (code) => {
    expect(kindOfCode(code)).toBe('number');
  });
  it.each(percentCodes)('%s shows a percentage', (code) => {
    expect(kindOfCode(code)).toBe('percent');
  });
  it('knows the built-in ids', () => {
    expect([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 47].map(kindOfBuiltIn)).toEqual(
      Array<string>(11).fill('date'),
    );
    expect([9, 10].map(kindOfBuiltIn)).toEqual(['percent', 'percent']);
    expect([0, 1, 2, 3, 4, 11, 12, 13, 37, 40, 46, 48, 49].map(kindOfBuiltIn)).toEqual(
      Array<string>(13).fill('number'),
    );
  });
});

describe('texts that number formats show', () => {
  it.each([
    ['0.0" mil"', 'mil'],
    ['#,##0.00\\ "mV/mil"', 'mV/mil'],
    ['0\\ \\m\\V;[Red]-0" V"', 'mV'],
    ['0.0_)', ''],
    ['[$-409]0', ''],
  ])('%s', (code, text) => {
    expect(shownTextOf(code)).toBe(text);
  });

  it('stand in runs down each column', () => {
    const cells = (row: number, styles: readonly number[]): string =>
      `<row r="${row}">${styles.map((style) => `<c s="${style}"><v>7</v></c>`).join('')}</row>`;
    const data = cells(1, [0, 1]) + cells(2, [0, 0]) + cells(3, [2, 0]);
    const styles = stylesOf(['0" mil"', '0.0', '0" µm"']);
    const at = (top: number, left: number, bottom: number) => ({ top, left, bottom, right: left });
    expect(new Set(readWorkbook('t.xlsx', oneSheet(data, { styles })).sheets[0]!.shownTexts)).toEqual(
      new Set([
        { text: 'mil', area: at(1, 1, 2) },
        { text: 'µm', area: at(3, 1, 3) },
        { text: 'mil', area: at(2, 2, 3) },
      ]),
    );
  });
});

describe('percentages', () => {
  it('reads as what is shown', () => {
    const cells = ['0.07', '0.029', '-0.035', '1'].map((value) => `<c s="0"><v>${value}</v></c>`).join('');
    const [row] = readWorkbook('p.xlsx', oneSheet(`<row>${cells}</row>`, { styles: stylesOf(['0.0%']) }))
      .sheets[0]!.rows;
    expect(row).toEqual([7, 2.9, -3.5, 100].map((percent) => new PercentCell(percent)));
  });
});

describe('dates', () => {
  // Days since 1970 counted by the platform's own calendar, which has no 29 February 1900.
  const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

  it('counts from 1900 with the leap day that never was', () => {
    expect(dayOfSerial(1, false)).toBe(day('1900-01-01'));
    expect(dayOfSerial(59, false)).toBe(day('1900-02-28'));
    expect(dayOfSerial(60, false)).toBe(day('1900-02-28'));
    expect(dayOfSerial(61, false)).toBe(day('1900-03-01'));
    expect(dayOfSerial(25569, false)).toBe(0);
    expect(dayOfSerial(46082.25, false)).toBe(day('2026-03-01') + 0.25);
    expect(dayOfSerial(2958465, false)).toBe(day('9999-12-31'));
  });

  it('counts from 1904', () => {
    expect(dayOfSerial(0, true)).toBe(day('1904-01-01'));
    expect(dayOfSerial(44620, true)).toBe(day('2026-03-01'));
    const bytes = oneSheet('<row><c s="0"><v>44620</v></c></row>', {
      styles: stylesOf(['yyyy-mm-dd']),
      properties: 'date1904="1"',
    });
    expect(readWorkbook('d.xlsx', bytes).sheets[0]!.rows[0]).toEqual([new DateCell(day('2026-03-01'))]);
  });

  it('leaves a number that no date is shown for a number', () => {
    expect(dayOfSerial(-1, false)).toBeUndefined();
    expect(dayOfSerial(2958466, false)).toBeUndefined();
    const [row] = readWorkbook(
      'd.xlsx',
      oneSheet('<row><c s="0"><v>-1</v></c></row>', { styles: stylesOf(['d.m.yy']) }),
    ).sheets[0]!.rows;
    expect(row).toEqual([-1]);
  });

  it('takes only days that exist for ISO dates', () => {
    expect(dayOfIso('2024-02-29')).toBe(day('2024-02-29'));
    expect(dayOfIso('2026-02-29')).toBeUndefined();
    expect(dayOfIso('2026-03-01T25:00:00')).toBeUndefined();
    expect(dayOfIso('yesterday')).toBeUndefined();
  });
});

describeWithLibreOffice('the same workbook read by another program', () => {
  const codes = [
    'yyyy\\-mm\\-dd',
    'General',
    '[Red]0.0',
    '"day" 0',
    '0.00E+00',
    '0%',
    '"cal. "yyyy\\-mm\\-dd',
    '0\\d',
    '0.0"%"',
  ];
  const serial = 46082;

  it.each([false, true])('agrees on dates and percentages (1904: %s)', (date1904) => {
    const folder = mkdtempSync(join(tmpdir(), 'read-formats-'));
    try {
      const rows = codes.map((_, style) => `<row><c s="${style}"><v>${serial}</v></c></row>`).join('');
      const bytes = oneSheet(rows, { styles: stylesOf(codes), properties: date1904 ? 'date1904="1"' : '' });
      writeFileSync(join(folder, 'formats.xlsx'), bytes);
      const csv = convert(join(folder, 'formats.xlsx'), 'csv:Text - txt - csv (StarCalc):44,34,76', folder);
      const shown = readCsv('formats.csv', readFileSync(csv)).rows.map((row) => row[0] as string);
      const ours = readWorkbook('formats.xlsx', bytes).sheets[0]!.rows.map((row) => row[0]);
      expect(shown.length).toBe(codes.length);
      shown.forEach((text, index) => {
        const cell = ours[index];
        const iso = /\d{4}-\d{2}-\d{2}/.exec(text)?.[0];
        if (iso !== undefined) expect(cell).toEqual(new DateCell(Date.parse(iso) / 86_400_000));
        else if (text === `${serial * 100}%`) expect(cell).toEqual(new PercentCell(serial * 100));
        else expect(cell).toBe(serial);
      });
      expect(ours.filter((cell) => cell instanceof DateCell).length).toBe(2);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
