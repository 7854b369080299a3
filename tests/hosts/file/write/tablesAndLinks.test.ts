import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { mostLinks } from '../../../../src/sheets/links.ts';
import type { LinkTarget, ModelRow, SheetModel } from '../../../../src/sheets/model.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { sheetOf } from './model.ts';
import { partText } from './parts.ts';
import { objections } from './validator.ts';

const titles = ['Tag', 'What is “wrong” & <why>', 'Row_x0041_'];
const area = { top: 2, left: 1, bottom: 4, right: 3 };

/** A list under a title, its header in row 2, whose tags and rows lead to `to`. */
function listSheet(name: string, to: readonly LinkTarget[], rest: Partial<SheetModel> = {}): SheetModel {
  const rows: ModelRow[] = [
    { cells: [{ value: name }] },
    { cells: titles.map((value) => ({ value })) },
    ...[1, 2].map((row) => ({
      cells: [{ value: `P-${row}` }, { value: '=1+1' }, { value: row }],
      links: to.map((target, index) => ({ column: index === 0 ? 1 : 3, to: target })),
    })),
  ];
  return sheetOf(name, [], {
    rowCount: rows.length,
    rows: () => rows,
    table: { name: 'TripdriftResults', area },
    ...rest,
  });
}

function tablesIn(bytes: Uint8Array): { readonly name: string; readonly markup: string }[] {
  return Object.entries(unzipSync(bytes)).flatMap(([name, part]) =>
    /^xl\/tables\//u.test(name) ? [{ name, markup: strFromU8(part) }] : [],
  );
}

describe('a list of a result sheet is a table of the workbook', () => {
  it('with its columns, filters and place', () => {
    const copy = addSheets(zipParts(smallParts()), [listSheet('Audit results', [])]).bytes;
    const [table] = readWorkbook('copy.xlsx', copy).sheets.at(-1)!.tables;
    expect(table).toMatchObject({ name: 'TripdriftResults', area, headerRow: true, totalsRow: false });
    const markup = partText(copy, 'xl/tables/table1.xml');
    expect(markup).toContain('<autoFilter ref="A2:C4"/>');
    expect(markup).toContain('name="What is “wrong” &amp; &lt;why&gt;"');
    // A text that looks like a coded letter is coded itself, as in the cell (ECMA-376 part 1, 22.9.2.19).
    expect(markup).toContain('name="Row_x005F_x0041_"');
    expect(partText(copy, 'xl/workbook.xml')).not.toContain('_FilterDatabase');
  });

  it('under names and numbers that are free, whatever their case', () => {
    const names =
      '<definedNames><definedName name="TRIPDRIFTRESULTS2">Channels!$A$1</definedName></definedNames>';
    const once = addSheets(zipParts(smallParts({ workbookTail: names })), [listSheet('One', [])]).bytes;
    const copy = addSheets(once, [listSheet('Two', []), listSheet('Three', [])]).bytes;
    const found = tablesIn(copy).map(({ markup }) => [
      / id="(\d+)"/u.exec(markup)![1],
      / displayName="([^"]+)"/u.exec(markup)![1],
    ]);
    expect(found).toEqual([
      ['1', 'TripdriftResults'],
      ['2', 'TripdriftResults3'],
      ['3', 'TripdriftResults4'],
    ]);
    expect(objections(copy)).toEqual([]);
  });

  it.each([
    ['a title twice', ['Tag', 'tag', 'Row'], /column "tag" twice/u],
    ['a blank title', ['Tag', ' ', 'Row'], /without a title/u],
    ['a title that is a number', ['Tag', 5, 'Row'], /without a title/u],
  ])('but not with %s', (_, header, message) => {
    const model = sheetOf('Broken', [['Title'], header, ['P-1', 1, 2], ['P-2', 1, 2]], {
      table: { name: 'Broken', area },
    });
    expect(() => newWorkbook([model])).toThrow(message);
  });

  it('nor without a row', () => {
    const model = sheetOf('Broken', [['Title'], titles], {
      table: { name: 'Broken', area: { ...area, bottom: 2 } },
    });
    expect(() => newWorkbook([model])).toThrow(/no row below/u);
  });
});

describe('links of a result sheet', () => {
  const place = { row: 7, column: 'B' } as const;

  it('lead to cells of the workbook, to result sheets under the names they get, and nowhere else', () => {
    const original = zipParts(smallParts({ sheetNames: ["Crew’s 'B' &amp; C", 'Audit results'] }));
    const model = listSheet('Audit results', [
      { sheet: "Crew’s 'B' & C", ...place },
      { sheet: 'Audit results', ours: true, ...place },
    ]);
    const lost = listSheet('Audit problems', [{ sheet: 'Gone', ...place }]);
    const copy = addSheets(original, [model, lost]).bytes;
    const markup = partText(copy, 'xl/worksheets/sheet3.xml');
    expect(markup).toContain(`<hyperlink ref="A3" location="'Crew’s ''B'' &amp; C'!B7"/>`);
    expect(markup).toContain(`<hyperlink ref="C4" location="'Audit results (2)'!B7"/>`);
    expect(partText(copy, 'xl/worksheets/sheet4.xml')).not.toContain('<hyperlink');
    expect(objections(copy)).toEqual([]);
  });

  it('lead to the sheet that shows a text table', () => {
    const table = sheetOf('channels', [['Tag']], { shows: 'channels.csv' });
    const copy = newWorkbook([table, listSheet('Audit results', [{ sheet: 'channels.csv', ...place }])]);
    expect(partText(copy, 'xl/worksheets/sheet2.xml')).toContain(`location="'channels'!B7"`);
  });

  it('are no more than programs open, the first of them', () => {
    const row = {
      cells: [{ value: 'P-1' }],
      links: [{ column: 1, to: { sheet: 'Many', ours: true, ...place } }],
    };
    const rowCount = mostLinks + 2;
    const model = sheetOf('Many', [], {
      rowCount,
      *rows() {
        for (let index = 0; index < rowCount; index++) yield row as ModelRow;
      },
    });
    const markup = partText(newWorkbook([model]), 'xl/worksheets/sheet1.xml');
    expect(markup.split('<hyperlink ').length - 1).toBe(mostLinks);
    expect(markup).toContain(`ref="A${mostLinks}"`);
  });
});

describe('the copy opens on the sheet in front', () => {
  const selected = (bytes: Uint8Array) =>
    Object.entries(unzipSync(bytes)).flatMap(([name, part]) =>
      /tabSelected="(1|true)"/u.test(strFromU8(part)) ? [name] : [],
    );
  const sheets = [listSheet('Audit results', []), listSheet('Audit summary', [], { inFront: true })];

  it.each([
    ['one of nearly everything', everythingParts(), 4],
    ['no view of its window', smallParts(), 2],
    ['the strict dialect', strictParts(), 2],
    ['prefixes', prefixed(smallParts(), ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels']), 2],
    [
      'views without a place',
      smallParts({ workbookHead: '<bookViews><workbookView xWindow="0"/></bookViews>' }),
      2,
    ],
  ])('with %s', (_, parts, place) => {
    const copy = addSheets(zipParts(parts), sheets).bytes;
    expect(partText(copy, 'xl/workbook.xml')).toContain(` activeTab="${place}"`);
    expect(selected(copy)).toHaveLength(1);
    const [name = ''] = selected(copy);
    expect(partText(copy, name)).toContain('Audit summary');
    expect(objections(copy)).toEqual([]);
  });

  it('and no other sheet stays selected, though nothing else of it changes', () => {
    const parts = everythingParts();
    const copy = addSheets(zipParts(parts), sheets).bytes;
    const before = parts['xl/worksheets/sheet1.xml'] as string;
    expect(before).toContain('tabSelected="1"');
    expect(partText(copy, 'xl/worksheets/sheet1.xml')).toBe(
      before.replace('tabSelected="1"', 'tabSelected="0"'),
    );
  });

  it('but stays as it was where no sheet is in front', () => {
    const copy = addSheets(zipParts(everythingParts()), sheets.slice(0, 1)).bytes;
    expect(partText(copy, 'xl/workbook.xml')).toContain('activeTab="0"');
    expect(selected(copy)).toEqual(['xl/worksheets/sheet1.xml']);
  });
});

describeWithLibreOffice('LibreOffice opens tables and links', () => {
  it('and keeps them', () => {
    const folder = mkdtempSync(join(tmpdir(), 'tables-'));
    try {
      const path = join(folder, 'book.xlsx');
      const model = listSheet("Crew's results", [{ sheet: 'Channels', row: 1, column: 'A' }], {
        inFront: true,
      });
      writeFileSync(path, addSheets(zipParts(smallParts()), [model]).bytes);
      const saved = readFileSync(convert(path, 'xlsx', mkdtempSync(join(folder, 'out-'))));
      const sheet = readWorkbook('saved.xlsx', saved).sheets.find(({ name }) => name === "Crew's results")!;
      expect(sheet.rows[1]).toEqual(titles);
      expect(sheet.tables).toMatchObject([{ name: 'TripdriftResults', area }]);
      expect(partText(saved, 'xl/worksheets/sheet2.xml')).toContain(
        '<hyperlink ref="A3" location="&apos;Channels&apos;!A1"',
      );
      expect(partText(saved, 'xl/workbook.xml')).toContain('activeTab="1"');
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
