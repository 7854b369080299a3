import { cellText } from '../../src/cells/cell.ts';
import { describe, expect, it } from 'vitest';
import { columnsOf, type TableKind } from '../../src/audit/read/tables/vocabulary.ts';
import { caution } from '../../src/audit/model/caution.ts';
import { audit } from '../../src/audit/audit.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { unpackParts } from '../../src/tools/demo/package/parts.ts';
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { auditedOn, committed } from './files.ts';

describe.each([
  ['template.xlsx', 'mil', 160, 200, 3, 4, 5],
  // 102·7.87/6.3 by hand: 127.42 µm.
  ['template-metric.xlsx', 'µm', 6.3, 7.87, 76, 102, (102 * 7.87) / 6.3],
] as const)('the template %s', (name, unit, measured, configured, alert, danger, effective) => {
  const report = auditedOn('2026-12-01', name);
  const columns = (kind: TableKind) => {
    const table = kind === 'channels' ? 'channel list' : 'monitor settings';
    return report.columns.filter((column) => column.table === table);
  };

  it('holds no channel, and the audit says so', () => {
    expect(report.summary.channels).toBe(0);
    expect(report.groups).toEqual([]);
    expect(report.problems.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  it.each(['channels', 'settings'] as const)(
    'has every standard column of the %s, understood as such',
    (kind) => {
      const wanted = Object.values(columnsOf(kind)).map((spec) => spec.name);
      expect(columns(kind).map(({ meaning }) => meaning)).toEqual(wanted);
      for (const { header, meaning } of columns(kind)) expect(header.toLowerCase()).toContain(meaning);
    },
  );

  it.each(['channels', 'settings'] as const)(
    'names the unit of every quantity of the %s in its header',
    (kind) => {
      const quantities = Object.values(columnsOf(kind)).filter((spec) => 'dimensions' in spec);
      const bare = columns(kind)
        .filter(({ meaning }) => quantities.some((spec) => spec.name === meaning))
        .filter(({ header }) => !/\[.+\]$/.test(header));
      expect(bare).toEqual([]);
    },
  );

  it('explains every header on its notes, and carries the caution', () => {
    const notes = readWorkbook(name, committed(name)).sheets.find((sheet) => sheet.name === 'Notes');
    const rows = notes?.rows ?? [];
    for (const { header } of report.columns) {
      const said = rows.filter((row) => row[0] === header).map((row) => row[1]);
      expect(said.length, header).toBeGreaterThan(0);
      for (const text of said) expect(cellText(text ?? null).length, header).toBeGreaterThan(15);
    }
    expect(rows.map((row) => cellText(row[0] ?? null)).join(' ')).toContain(caution);
  });

  it('can be filled in and audited as it is', () => {
    const book = readWorkbook(name, committed(name));
    const filled = book.sheets.map((sheet) => {
      const values: Readonly<Record<string, number | string>> = {
        Tag: 'A-1',
        [`Measured sensitivity [mV/${unit}]`]: measured,
        [`Configured sensitivity [mV/${unit}]`]: configured,
        [`Alert [${unit}]`]: alert,
        [`Danger [${unit}]`]: danger,
      };
      const headers = sheet.rows[2] ?? [];
      const row = headers.map((header) => values[cellText(header)] ?? null);
      return { ...sheet, rows: row[0] === 'A-1' ? [...sheet.rows.slice(0, 3), row] : sheet.rows };
    });
    const { channels, problems } = audit({ ...book, sheets: filled });
    expect(channels).toMatchObject([{ tag: 'A-1', verdict: 'late', unit }]);
    expect(channels[0]?.thresholds.find((threshold) => threshold.name === 'danger')?.effective).toBeCloseTo(
      effective,
      9,
    );
    expect(problems.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  it('says what may be typed into every column that holds no free text', () => {
    const parts = unpackParts(committed(name));
    for (const [kind, part] of [
      ['channels', 'sheet1'],
      ['settings', 'sheet2'],
    ] as const) {
      const specs = Object.values(columnsOf(kind)).filter((spec) => spec.holds !== 'text');
      const rules = [
        ...(parts.get(`xl/worksheets/${part}.xml`) ?? '').matchAll(/<dataValidation type="(?!none)/g),
      ];
      expect(rules).toHaveLength(specs.length);
    }
  });

  it('shows at every cell of its tables what goes there, with an example in its own units', () => {
    const parts = unpackParts(committed(name));
    for (const [kind, part] of [
      ['channels', 'sheet1'],
      ['settings', 'sheet2'],
    ] as const) {
      const text = parts.get(`xl/worksheets/${part}.xml`) ?? '';
      const prompts = [...text.matchAll(/promptTitle="([^"]*)" prompt="([^"]*)"/g)];
      expect(prompts).toHaveLength(columns(kind).length);
      for (const [, title = '', prompt = ''] of prompts) {
        expect(title.length).toBeLessThanOrEqual(32);
        expect(prompt.length).toBeLessThanOrEqual(255);
        expect(prompt).toMatch(/Example: \S/);
      }
    }
  });

  it('marks the headers that are needed, and no other', () => {
    const { sheets, styles } = viewWorkbook(name, committed(name));
    for (const [at, kind] of (['channels', 'settings'] as const).entries()) {
      const needed = Object.values(columnsOf(kind))
        .filter((spec) => spec.required)
        .map((spec) => spec.name);
      const cells = sheets[at]?.rows.find(({ row }) => row === 3)?.cells ?? [];
      const dark = cells.filter(({ style }) => styles[style]?.fill === '1F4E5F');
      expect(dark.map(({ column }) => columns(kind)[column - 1]?.meaning)).toEqual(needed);
    }
  });
});
