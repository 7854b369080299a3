import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import type { CellStyle, SheetModel } from '../../../../src/sheets/model.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts, type Parts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { sheetOf } from './model.ts';
import { partText } from './parts.ts';
import { objections } from './validator.ts';

const fill = 'F0986B';
const styles: Readonly<Record<string, CellStyle>> = {
  late: { named: 'Tripdrift late', bold: true, fill },
  lateNumber: { named: 'Tripdrift late', bold: true, fill, numberFormat: '0.00' },
  beyond: { named: 'Tripdrift beyond & <limit>', bold: true, fill },
  plain: { bold: true },
};

function sheet(name: string): SheetModel {
  const cells = Object.keys(styles).map((style, index) => ({ value: index, style }));
  return sheetOf(name, [cells], { styles });
}

/** Entries of a list of the style sheet, each as its opening tag. */
function entries(text: string, list: string): string[] {
  const inner = new RegExp(`<(?:x:)?${list}[ >](.*?)</(?:x:)?${list}>`, 'su').exec(text)?.[1] ?? '';
  const entry = list === 'cellStyles' ? 'cellStyle' : list === 'fills' ? 'fill' : 'xf';
  return inner.match(new RegExp(`<(?:x:)?${entry}[ >][^>]*>`, 'gu')) ?? [];
}

const part = (tag: string | undefined, name: string): string =>
  new RegExp(` ${name}="([^"]*)"`, 'u').exec(tag ?? '')?.[1] ?? '';

/** Formats of the cells of the first row of a sheet. */
function formatsOf(bytes: Uint8Array, worksheet: string): string[] {
  const all = entries(partText(bytes, 'xl/styles.xml'), 'cellXfs');
  return Array.from(partText(bytes, worksheet).matchAll(/<c r="[A-D]1" s="(\d+)"/gu), ([, index]) =>
    String(all[Number(index)]),
  );
}

describe('styles of result sheets with a name', () => {
  const namespace = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const bare = (inner: string): Parts => ({
    ...smallParts(),
    'xl/styles.xml': `<styleSheet xmlns="${namespace}">${inner}</styleSheet>`,
  });

  it.each<[string, Parts]>([
    ['a workbook with one of nearly everything', everythingParts()],
    ['a strict workbook', strictParts()],
    ['a workbook without styles', smallParts({ styles: false })],
    ['prefixed styles', prefixed(everythingParts(), ['xl/styles.xml'])],
    ['styles that lack all lists', bare('')],
    [
      'styles that lack those before the listed ones',
      bare('<cellStyles count="1"><cellStyle name="Normal" xfId="0"/></cellStyles>'),
    ],
  ])('are listed once each in %s', (_, parts) => {
    const copy = addSheets(zipParts(parts), [sheet('One'), sheet('Two')]).bytes;
    const text = partText(copy, 'xl/styles.xml');
    const ours = entries(text, 'cellStyles').filter((tag) => part(tag, 'name').startsWith('Tripdrift'));
    expect(ours.map((tag) => part(tag, 'name'))).toEqual([
      'Tripdrift late',
      'Tripdrift beyond &amp; &lt;limit&gt;',
    ]);
    expect(new Set(ours.map((tag) => part(tag, 'xfId'))).size).toBe(2);
    expect(objections(copy)).toEqual([]);
  });

  it('are those of the cells, which change with them', () => {
    const copy = addSheets(zipParts(smallParts()), [sheet('One')]).bytes;
    const text = partText(copy, 'xl/styles.xml');
    const listed = entries(text, 'cellStyles').find((tag) => tag.includes('"Tripdrift late"'));
    const [late, number, beyond, plain] = formatsOf(copy, 'xl/worksheets/sheet2.xml');
    const format = entries(text, 'cellStyleXfs')[Number(part(listed, 'xfId'))];
    expect(part(late, 'xfId')).toBe(part(listed, 'xfId'));
    expect(part(late, 'fillId')).toBe(part(format, 'fillId'));
    // A part that is marked as the cell's own would stay when the style is altered.
    expect(late).not.toMatch(/applyF(?:ont|ill)/u);
    expect(number).toContain('applyNumberFormat="1"');
    expect(part(number, 'xfId')).toBe(part(listed, 'xfId'));
    expect([part(beyond, 'xfId'), part(plain, 'xfId')]).not.toContain(part(listed, 'xfId'));
  });

  it('are used as somebody altered them', () => {
    const once = addSheets(zipParts(smallParts()), [sheet('One')]).bytes;
    const altered = partText(once, 'xl/styles.xml').replace(`FF${fill}`, 'FF00FF00');
    const parts: Record<string, string> = Object.fromEntries(
      [...Object.keys(smallParts()), 'xl/worksheets/sheet2.xml'].map((name) => [name, partText(once, name)]),
    );
    const copy = addSheets(zipParts({ ...parts, 'xl/styles.xml': altered }), [sheet('Two')]).bytes;
    const text = partText(copy, 'xl/styles.xml');
    expect(text.split('name="Tripdrift late"')).toHaveLength(2);
    const [late] = formatsOf(copy, 'xl/worksheets/sheet3.xml');
    const green = text.slice(0, text.indexOf('FF00FF00')).split('<fill>').length - 2;
    expect(part(late, 'fillId')).toBe(String(green));
  });
});
