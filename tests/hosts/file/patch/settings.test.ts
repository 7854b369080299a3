import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { readSettings } from '../../../../src/hosts/file/patch/settings/readSettings.ts';
import { withSettings } from '../../../../src/hosts/file/patch/settings/writeSettings.ts';
import { openZip } from '../../../../src/hosts/file/zip/archive.ts';
import { defaultLimits } from '../../../../src/hosts/file/zip/limits.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { objections } from '../write/validator.ts';
import { partText } from '../write/parts.ts';
import { cellsOf, changedParts } from './patched.ts';

const original = zipParts(everythingParts());
const policy = JSON.stringify({ tolerance: 0.04, note: '<&"\' > ]]> \uFFFF \u0001 😀 µm\n' });
const settings = new Map([
  ['tripdrift.policy', policy],
  ['a "key" <&>', '[1,2]'],
]);

describe('settings in a workbook', () => {
  it('are none in a workbook that nobody gave any', () => {
    expect(readSettings(original).size).toBe(0);
    expect(withSettings(original, new Map())).toBe(original);
  });

  it('are read back, in a part of their own beside those of others', () => {
    const copy = withSettings(original, settings);
    const back = readSettings(copy);
    expect([...back.keys()].sort()).toEqual([...settings.keys()].sort());
    for (const [key, json] of settings) expect(JSON.parse(back.get(key)!)).toEqual(JSON.parse(json));
    expect(changedParts(original, copy)).toEqual([
      '[Content_Types].xml',
      'customXml/_rels/item2.xml.rels',
      'customXml/item2.xml',
      'customXml/itemProps2.xml',
      'xl/_rels/workbook.xml.rels',
    ]);
    expect(partText(copy, 'customXml/item1.xml')).toBe(partText(original, 'customXml/item1.xml'));
  });

  it('are the same bytes where nothing changed, whatever their order', () => {
    const copy = withSettings(original, settings);
    expect(withSettings(copy, readSettings(copy))).toBe(copy);
    expect(withSettings(copy, new Map([...settings].reverse()))).toBe(copy);
    expect(Buffer.compare(copy, withSettings(original, settings))).toBe(0);
  });

  it('change in their place, and go', () => {
    const copy = withSettings(original, settings);
    const other = withSettings(copy, new Map([['tripdrift.policy', '{}']]));
    expect([...readSettings(other)]).toEqual([['tripdrift.policy', '{}']]);
    expect(changedParts(copy, other)).toEqual(['customXml/item2.xml']);
    const none = withSettings(other, new Map());
    expect(readSettings(none).size).toBe(0);
    expect(objections(none)).toEqual([]);
  });

  it('hold any JSON', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ unit: 'binary' }), fc.json({ stringUnit: 'binary' })),
        (texts) => {
          const legal = Object.entries(texts).filter(([key]) => /^[ -~]*$/.test(key));
          const back = readSettings(withSettings(original, new Map(legal)));
          expect([...back].map(([key, json]) => [key, JSON.parse(json) as unknown]).sort()).toEqual(
            legal.map(([key, json]) => [key, JSON.parse(json) as unknown]).sort(),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it('are left alone where the part is damaged', () => {
    const parts = everythingParts();
    parts['customXml/item1.xml'] = '<settings xmlns="urn:tripdrift:workbook-settings:1"><setting';
    expect(readSettings(zipParts(parts)).size).toBe(0);
  });
});

// Source: the schema and semantic checks of the Open XML SDK. Grade: as for added sheets.
describe('the Open XML SDK accepts settings in', () => {
  it.each([
    ['a workbook with one of nearly everything', everythingParts()],
    ['a small one', smallParts()],
    ['a strict one', strictParts()],
  ])('%s', (_, parts) => {
    const copy = withSettings(zipParts(parts), settings);
    expect(objections(copy)).toEqual([]);
    expect(readSettings(copy).size).toBe(2);
    const links = [...openZip(copy, defaultLimits).entries].map(({ name }) => name);
    expect(new Set(links).size).toBe(links.length);
  });
});

describeWithLibreOffice('a workbook with settings in LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'settings-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('opens as without', () => {
    const path = join(folder, 'kept.xlsx');
    writeFileSync(path, withSettings(original, settings));
    const through = readFileSync(convert(path, 'xlsx', join(folder, 'out')));
    expect(cellsOf(through)['D2']?.value).toBe(cellsOf(original)['D2']?.value);
  });
});
