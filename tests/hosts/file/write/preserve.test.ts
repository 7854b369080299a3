import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { openZip } from '../../../../src/hosts/file/zip/archive.ts';
import { defaultLimits } from '../../../../src/hosts/file/zip/limits.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { resultSheet } from './model.ts';
import { events, isSubsequence, partText } from './parts.ts';

const edited = ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels', 'xl/styles.xml', 'xl/workbook.xml'];

describe.each([
  ['.xlsx', false],
  ['.xlsm', true],
])('sheets added to a %s that holds one of nearly everything', (_, macros) => {
  const original = zipParts(everythingParts({ macros }));
  const copy = addSheets(original, [resultSheet(), resultSheet('Channels')]).bytes;
  const before = unzipSync(original);
  const after = unzipSync(copy);

  it('leave every part but four as it was', () => {
    const changed = Object.keys(before).filter(
      (name) => Buffer.compare(before[name]!, after[name] ?? new Uint8Array()) !== 0,
    );
    expect(changed.toSorted()).toEqual(edited);
  });

  it('leave the packed bytes, dates and check sums of those parts as they were', () => {
    const old = openZip(original, defaultLimits);
    const fresh = openZip(copy, defaultLimits);
    for (const entry of old.entries.filter(({ name }) => !edited.includes(name))) {
      const { raw, crc, method, modified, size } = fresh.get(entry.name)!;
      expect({ name: entry.name, crc, method, modified, size }).toEqual({
        name: entry.name,
        crc: entry.crc,
        method: entry.method,
        modified: entry.modified,
        size: entry.size,
      });
      expect(Buffer.compare(raw, entry.raw), entry.name).toBe(0);
    }
  });

  it('bring two new parts, named beside the old ones whatever their case', () => {
    const added = Object.keys(after).filter((name) => !(name in before));
    expect(added).toEqual(['xl/worksheets/sheet2.xml', 'xl/worksheets/sheet4.xml']);
  });

  it('add to the workbook part and nothing else', () => {
    const without = partText(copy, 'xl/workbook.xml')
      .replace(/<sheet [^>]*sheetId="(9|10)"[^>]*\/>/g, '')
      .replace(/<definedName [^>]*localSheetId="[34]"[^>]*>[^<]*<\/definedName>/g, '');
    expect(without).toBe(strFromU8(before['xl/workbook.xml']!));
  });

  it('add to the relationships and the content types and nothing else', () => {
    const links = partText(copy, 'xl/_rels/workbook.xml.rels').replace(
      /<Relationship Id="rId1[01]" [^>]*Target="worksheets\/sheet[24].xml"\/>/g,
      '',
    );
    expect(links).toBe(strFromU8(before['xl/_rels/workbook.xml.rels']!));
    const types = partText(copy, '[Content_Types].xml').replace(
      /<Override PartName="\/xl\/worksheets\/sheet[24].xml" [^>]*\/>/g,
      '',
    );
    expect(types).toBe(strFromU8(before['[Content_Types].xml']!));
  });

  it('add to the ends of the style lists, so that old numbers keep their meaning', () => {
    const old = strFromU8(before['xl/styles.xml']!);
    const fresh = partText(copy, 'xl/styles.xml');
    expect(isSubsequence(events(old), events(fresh))).toBe(true);
    for (const list of ['numFmts', 'fonts', 'fills', 'borders', 'cellStyleXfs', 'cellXfs', 'dxfs']) {
      const inner = new RegExp(`<${list} [^>]*>(.*)</${list}>`);
      expect(inner.exec(fresh)![1]!.startsWith(inner.exec(old)![1]!), list).toBe(true);
    }
  });

  it('count the style lists anew', () => {
    const fresh = partText(copy, 'xl/styles.xml');
    for (const [list, entry] of [
      ['numFmts', 'numFmt'],
      ['fonts', 'font'],
      ['fills', 'fill'],
      ['cellXfs', 'xf'],
      ['dxfs', 'dxf'],
    ] as const) {
      const [, count, inner] = new RegExp(`<${list} count="(\\d+)"[^>]*>(.*)</${list}>`).exec(fresh)!;
      const entries = inner!.match(new RegExp(`<${entry}[ />]`, 'g')) ?? [];
      const nested = list === 'dxfs' ? (inner!.match(/<dxf>/g) ?? []).length : entries.length;
      expect(Number(count), list).toBe(nested);
    }
  });
});

it('makes the same bytes of the same input', () => {
  const original = zipParts(everythingParts());
  const [one, two] = [1, 2].map(() => addSheets(original, [resultSheet()]).bytes);
  expect(Buffer.compare(one!, two!)).toBe(0);
});
