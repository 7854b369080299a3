import { unzipSync, zipSync } from 'fflate';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/cells/address.ts';
import { callsOurs } from '../../src/hosts/formats/ourFormula.ts';
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { shareWorkbook } from '../../src/share/shareWorkbook.ts';
import type { ShareFormulas } from '../../src/share/types.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import { cellsOf } from '../hosts/file/patch/patched.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { sharedBook, workedOut } from './sharedBook.ts';

const kinds: readonly ShareFormulas[] = ['values', 'native'];
const share = (original: Uint8Array, formulas: ShareFormulas) =>
  shareWorkbook(original, { formulas, date: '2026-11-27' });

/** What each cell that holds something shows, by sheet and address. */
function shown(bytes: Uint8Array): Map<string, unknown> {
  return new Map(
    viewWorkbook('x.xlsx', bytes).sheets.flatMap(({ name, rows }) =>
      rows.flatMap(({ row, cells }) =>
        cells.map((cell): [string, unknown] => [
          `${name} ${cellAddress(row, cell.column)}`,
          cell.value ?? '',
        ]),
      ),
    ),
  );
}

function formulas(bytes: Uint8Array): Map<string, string> {
  return new Map(
    viewWorkbook('x.xlsx', bytes).sheets.flatMap(({ name, rows }) =>
      rows.flatMap(({ row, cells }) =>
        cells.flatMap(({ column, formula }): [string, string][] =>
          formula === undefined ? [] : [[`${name} ${cellAddress(row, column)}`, formula]],
        ),
      ),
    ),
  );
}

/** The workbook without the results of its formulas, so that a program has to calculate all of them. */
function withoutResults(bytes: Uint8Array): Uint8Array {
  const bare = Object.entries(unzipSync(bytes)).map(([name, content]): [string, Uint8Array] => {
    if (!/worksheets\/sheet\d/.test(name)) return [name, content];
    const text = new TextDecoder().decode(content);
    return [name, new TextEncoder().encode(text.replace(/(<\/f>)<v>[^<]*<\/v>/g, '$1'))];
  });
  return zipSync(Object.fromEntries(bare));
}

/** What the copy must show: what the original does, and what its cells without a result should have shown. */
function wanted(original: Uint8Array): Map<string, unknown> {
  const values = shown(original);
  for (const [address, value] of Object.entries(workedOut)) values.set(`Channels ${address}`, value);
  return values;
}

function expectSame(found: Map<string, unknown>, expected: Map<string, unknown>): void {
  for (const [place, value] of expected) {
    const other = found.get(place) ?? '';
    if (typeof value === 'number' && typeof other === 'number') {
      expect(Math.abs(other - value), place).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
    } else expect([place, other]).toEqual([place, value]);
  }
}

const parts = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([name, content]) => [name, new TextDecoder().decode(content)]),
  );

describe.each(kinds)('a copy to share, with %s', (kind) => {
  it('shows what the original showed, with no function of ours anywhere', () => {
    const original = sharedBook();
    const before = original.slice();
    const { bytes, replaced } = share(original, kind);
    expect(original).toEqual(before);
    expectSame(shown(bytes), wanted(original));
    expect(
      [...formulas(bytes)].filter(([, formula]) => callsOurs(formula) || /ourname/i.test(formula)),
    ).toEqual([]);
    for (const [name, text] of Object.entries(parts(bytes))) {
      if (!/comments|calcChain/.test(name))
        expect([name, text.match(/<[^>]*>[^<]*_xldudf_[^<]*/)]).toEqual([name, null]);
    }
    expect(replaced.values + replaced.native).toBe(25);
    expect(replaced.native).toBe(kind === 'native' ? 20 : 0);
  });

  it('is accepted by the Open XML SDK, also with a protected sheet and days from 1904', () => {
    for (const original of [sharedBook(), sharedBook({ date1904: true, protectedSheet: true })]) {
      expect(objections(original)).toEqual([]);
      expect(objections(share(original, kind).bytes)).toEqual([]);
    }
  });

  it('leaves out what can hold no value, and says so', () => {
    const { bytes, notes } = share(sharedBook(), kind);
    const all = parts(bytes);
    const sheet = all['xl/worksheets/sheet1.xml'] ?? '';
    expect(sheet).toContain('<cfRule type="cellIs"');
    expect(sheet).not.toContain('type="expression"');
    expect(sheet).not.toContain('sqref="E2:E4"');
    expect(sheet).toContain('<dataValidations count="1"><dataValidation type="list"');
    expect(all['xl/tables/table1.xml']).not.toContain('calculatedColumnFormula');
    expect(all['xl/workbook.xml']).toContain('<definedName name="OurName">#REF!</definedName>');
    const said = notes.join('\n');
    for (const one of [
      'conditional format of E2:E4 can hold no value and is left out: =TRIPDRIFT.EFFECTIVE(A2,200,160)>6',
      'conditional format of A2:A4',
      'rule for input in A2:A4',
      'table column Acts at',
      'name OurName',
    ])
      expect(said).toContain(one);
  });

  it('has the area itself where a formula named what another one filled', () => {
    expect(formulas(share(sharedBook(), kind).bytes).get('Channels G4')).toBe('SUM(F2:F4)');
  });

  it('has programs calculate what rested on results that were not stored', () => {
    expect(parts(share(sharedBook(), kind).bytes)['xl/workbook.xml']).toContain('fullCalcOnLoad="1"');
  });
});

describe('notes of a copy to share', () => {
  it('keep each formula that became a value, below what a cell said already', () => {
    const { bytes } = share(sharedBook(), 'values');
    const comments = parts(bytes)['xl/comments1.xml'] ?? '';
    expect(comments).toContain(
      '<comment ref="E3" authorId="1"><text><r><t xml:space="preserve">Was: =TRIPDRIFT.EFFECTIVE(A3,B3,C3)\n',
    );
    expect(comments).toContain('Was, in F2:F4: =TRIPDRIFT.SHIFT(A2:A4,B2:B4,C2:C4)');
    expect(comments).toContain(
      '<r><t>Seen in March</t></r><r><t xml:space="preserve">\n\nWas: =1+TRIPDRIFT.EFFECTIVE(5,200,160)*2',
    );
    expect(comments).toContain('value of 2026-11-27');
    expect(comments).toContain('<comment ref="A1" authorId="0"><text><r><t>Head</t></r></text></comment>');
    const second = parts(bytes);
    const name = Object.keys(second).find((one) => /comments(?!1)/.test(one)) ?? '';
    expect(second[name]).toContain(
      "Was: =TRIPDRIFT.EFFECTIVE(A2,'Channels'!B2,Channels!C2)&amp;&quot;TRIPDRIFT.X(&quot;",
    );
  });

  it('have one box each, with numbers of their own', () => {
    const all = Object.entries(parts(share(sharedBook(), 'values').bytes)).filter(([name]) =>
      name.endsWith('.vml'),
    );
    const ids = all.flatMap(([, text]) => Array.from(text.matchAll(/id="_x0000_s(\d+)"/g), ([, id]) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(2 + 21 + 3);
    expect(all).toHaveLength(2);
  });
});

describe('native formulas of a copy to share', () => {
  const native = formulas(share(sharedBook(), 'native').bytes);

  it('refuse what the function refuses, and are not put where they would refuse more', () => {
    expect(native.get('Channels E3')).toBe(
      'IF(ISNUMBER(A3)*(A3>0)*ISNUMBER(B3)*(B3>0)*ISNUMBER(C3)*(C3>0),1*A3*B3/C3,#VALUE!)',
    );
    // A text that is a number, a text that is none, a least-squares line, a name that is ours, a blank.
    for (const place of ['D7', 'B7', 'A6', 'H6']) expect(native.has(`Channels ${place}`)).toBe(false);
    expect(native.get('Channels H3')).toBe('""');
  });

  it('fill the area that the formula filled', () => {
    expect(native.get('Channels F2')).toContain('IF((A2:A4="")*(B2:B4="")*(C2:C4=""),"",IF(ISNUMBER(A2:A4)');
    expect(native.get('Channels G2')).toContain('/(1+0.25)');
    expect(native.get('Channels H2')).toContain('/(1-0.25)');
  });
});

describe('a cell that can’t be worked out keeps what the file has, and is told by sheet and address', () => {
  const our = (at: string, inside: string, attributes = '', value = ''): string =>
    `<c r="${at}"${attributes}><f>_xldudf_TRIPDRIFT_EFFECTIVE(${inside},200,160)</f>${value}</c>`;
  const shared = (cells: string) => {
    const { bytes, unknown, notes } = share(sharedBook({ rows: `<row r="5">${cells}</row>` }), 'values');
    return { cells: cellsOf(bytes), unknown, notes: notes.join('\n') };
  };

  it('and the others have their results', () => {
    const { cells, unknown, notes } = shared(
      our('A5', '10') + our('B5', 'SUM(A1:A2)', ' t="e"', '<v>#NAME?</v>') + our('C5', '20'),
    );
    expect(cells['B5']).toMatchObject({ value: '#NAME?', error: true });
    expect(cells['B5']?.formula).toBeUndefined();
    // 10·200/160 and 20·200/160
    expect([cells['A5']?.value, cells['C5']?.value]).toEqual([12.5, 25]);
    expect(unknown.map(({ place }) => place)).toEqual([{ sheet: 'Channels', row: 5, column: 2 }]);
    expect(notes).toMatch(/Sheet “Channels”, cell B5: .*SUM is none of the functions/);
    expect(notes).toContain('1 formula could not be worked out');
  });

  it('and one without a value shows #N/A, which no sum takes for 0', () => {
    expect(shared(our('B5', 'SUM(A1:A2)')).cells['B5']).toMatchObject({ value: '#N/A', error: true });
  });

  it('where formulas rest on one another in a ring', () => {
    const { unknown, notes } = shared(our('A5', 'B5') + our('B5', 'A5') + our('C5', '10'));
    expect(unknown).toHaveLength(2);
    expect(notes).toMatch(/cells A5, B5: .*rests on itself/);
  });

  it.each([
    ['a call of what another formula gives', 'LAMBDA(x,x)(5)'],
    ['a call of a call', 'SUM(1)(2)'],
    ['calls nested deep', `${'ABS('.repeat(900)}5${')'.repeat(900)}`],
    ['signs without end', `${'-'.repeat(5000)}5`],
    ['a formula longer than any cell holds', `5${'+0'.repeat(6000)}`],
    ['quotes without end', "'".repeat(4000)],
  ])('with %s', (_, inside) => {
    for (const formulas of ['values', 'native'] as const) {
      const rows = `<row r="5">${our('B5', inside, '', '<v>7</v>')}${our('C5', inside)}${our('D5', '10')}</row>`;
      const { bytes, unknown } = share(sharedBook({ rows }), formulas);
      const cells = cellsOf(bytes);
      expect([cells['B5']?.value, cells['C5']?.value, cells['D5']?.value]).toEqual([7, '#N/A', 12.5]);
      expect(unknown.map(({ place: { column } }) => column)).toEqual([3]);
    }
  });

  it('but a sum of thousands of terms is worked out', () => {
    const { cells, unknown } = shared(our('B5', `5${'+0'.repeat(3000)}`));
    expect([cells['B5']?.value, unknown]).toEqual([6.25, []]);
  });
});

describeWithLibreOffice('a copy to share in LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'shared-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it.each(kinds)('calculates to what the original showed, with %s', (kind) => {
    const original = sharedBook();
    const path = join(folder, `${kind}.xlsx`);
    writeFileSync(path, withoutResults(share(original, kind).bytes));
    const calculated = readFileSync(convert(path, 'xlsx', join(folder, 'out')));
    expectSame(shown(calculated), wanted(original));
    const notes = Object.entries(parts(calculated)).filter(([name]) => /comments\d*\.xml$/.test(name));
    const said = notes.flatMap(([, text]) => text.match(/Was(, in [A-Z0-9:]+)?: =/g) ?? []);
    expect(said).toHaveLength(kind === 'values' ? 25 : 5);
    expect(notes.map(([, text]) => text).join('')).toContain('Seen in March');
  });
});
