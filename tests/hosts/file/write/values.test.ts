import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { unescapeText } from '../../../../src/hosts/file/read/escapes.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { emptyWorkbook, newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { escapeCellText } from '../../../../src/hosts/file/write/xml/text.ts';
import { sheetOf } from './model.ts';
import { partText } from './parts.ts';

const sheetPart = 'xl/worksheets/sheet1.xml';

describe('cell text', () => {
  // Source: ECMA-376 part 1, 22.9.2.19 (ST_Xstring); its example is that `_x005F_x0030_` stands for `_x0030_`.
  it.each([
    ['_x0030_', '_x005F_x0030_'],
    ['a\rb', 'a_x000D_b'],
    ['\u0000\u001F', '_x0000__x001F_'],
    ['\uFFFE', '_xFFFE_'],
    ['a_b_xZZ', 'a_b_xZZ'],
    ['<&>', '&lt;&amp;&gt;'],
    ['\uD800', '\uFFFD'],
    ['𝒳', '𝒳'],
  ])('%j is stored as %s', (text, stored) => {
    expect(escapeCellText(text)).toBe(stored);
  });

  it('comes back whole through an XML parser', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        let parsed = '';
        const parser = new SaxesParser();
        parser.on('text', (piece) => (parsed += piece));
        parser.write(`<t>${escapeCellText(text)}</t>`).close();
        expect(unescapeText(parsed)).toBe(text.replace(/\p{Surrogate}/gu, '\uFFFD'));
      }),
      { numRuns: 2000 },
    );
  });

  it('is marked as text where editing the cell would make it something else', () => {
    const texts = ['=1+1', '+1', '-1', '@x', "'x", '007', '.5', 'plain', '_=1'];
    const bytes = newWorkbook([sheetOf('S', [texts])]);
    const formats = /<cellXfs[^>]*>(.*)<\/cellXfs>/
      .exec(partText(bytes, 'xl/styles.xml'))![1]!
      .match(/<xf .*?\/>/g)!;
    const quoted = Array.from(
      partText(bytes, sheetPart).matchAll(/<c r="\w+"(?: s="(\d+)")?/g),
      ([, style]) => formats[Number(style ?? 0)]!.includes('quotePrefix="1"'),
    );
    expect(quoted).toEqual([true, true, true, true, true, true, true, false, false]);
  });

  // XML 1.0, 2.10: without xml:space="preserve" a program may drop white space as it likes.
  it.each([' a', 'a ', 'a\nb', 'a\tb', 'a  b'])('keeps its white space: %j', (text) => {
    const sheet = partText(newWorkbook([sheetOf('S', [[text, 'a b']])]), sheetPart);
    expect(sheet).toContain(`<t xml:space="preserve">${text}</t>`);
    expect(sheet).toContain('<t>a b</t>');
  });

  it('never becomes a formula or a number', () => {
    const sheet = partText(newWorkbook([sheetOf('S', [['=1+1', '1', 'TRUE', '#N/A']])]), sheetPart);
    expect(sheet.match(/t="inlineStr"/g)).toHaveLength(4);
    expect(sheet).not.toMatch(/<f|<v/);
  });

  it('longer than a cell holds is cut, and a note says where', () => {
    const long = `${'x'.repeat(32_765)}𝒳tail`;
    const { bytes, notes } = addSheets(emptyWorkbook(), [sheetOf('S', [[null, long], ['y'.repeat(32_767)]])]);
    const stored = /<t>(x+.)<\/t>/u.exec(partText(bytes, sheetPart))![1]!;
    expect(stored).toBe(`${'x'.repeat(32_765)}…`);
    expect(notes).toEqual(['Sheet “S”: a cell holds 32,767 characters; longer text was cut in B1.']);
  });
});

describe('numbers', () => {
  it('come back as they were, to the last bit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1 }),
        (numbers) => {
          const rows = readWorkbook('a.xlsx', newWorkbook([sheetOf('S', [[...numbers, 'end']])])).sheets[0]!
            .rows;
          expect(rows[0]!.slice(0, -1)).toEqual(numbers.map((number) => number + 0));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('that a cell cannot hold stand as text, with a formula too', () => {
    const model = sheetOf(
      'S',
      [[Infinity, -Infinity, NaN, { value: Infinity, formula: 0 }, { value: null, formula: 0 }]],
      {
        formulas: ['A{r}'],
      },
    );
    const sheet = partText(newWorkbook([model]), sheetPart);
    expect(sheet).toContain(
      '<c r="A1" t="inlineStr"><is><t>∞</t></is></c><c r="B1" t="inlineStr"><is><t>−∞</t></is></c><c r="C1"/>',
    );
    expect(sheet).toMatch(
      /<c r="D1" t="str"><f[^>]*>A1<\/f><v>∞<\/v><\/c><c r="E1" t="str"><f[^>]*>A1<\/f><v><\/v>/,
    );
    expect(sheet).not.toMatch(/<v>(Infinity|NaN|-Infinity)/);
  });
});

describe('a model that contradicts itself', () => {
  it.each([
    ['announced 3 rows and has 1', sheetOf('S', [[1]], { rowCount: 3 })],
    ['announced 0 rows and has more', sheetOf('S', [[1]], { rowCount: 0 })],
    ['no style "bold" (cell A1)', sheetOf('S', [[{ value: 1, style: 'bold' }]])],
    ['no formula 2 (cell A1)', sheetOf('S', [[{ value: 1, formula: 2 }]])],
    ['16385 cells', sheetOf('S', [Array<number>(16_385).fill(1)])],
    ['colour "red"', sheetOf('S', [[1]], { styles: { a: { fill: 'red' } } })],
  ])('is an error: %s', (message, model) => {
    expect(() => newWorkbook([model])).toThrow(message);
  });
});
