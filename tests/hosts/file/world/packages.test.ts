// Open Packaging Conventions, content types: ECMA-376 part 2, section 6.2.3. Grade: published standard, cited from memory.
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { addNotes } from '../../../../src/hosts/file/notes/addNotes.ts';
import { withSettings } from '../../../../src/hosts/file/patch/settings/writeSettings.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { openWorkbook } from '../../../../src/hosts/file/write/package/openWorkbook.ts';
import { PackageEdits } from '../../../../src/hosts/file/write/package/packageEdits.ts';
import { copyEnding } from '../../../../src/hosts/file/write/package/workbookKind.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { smallParts } from '../../../fixtures/workbooks/small.ts';
import { recordSheet } from '../write/chartedModel.ts';
import { resultSheet } from '../write/model.ts';
import { partText } from '../write/parts.ts';
import { objections } from '../write/validator.ts';

const relationships = 'application/vnd.openxmlformats-package.relationships+xml';
const types = '[Content_Types].xml';

/** A workbook whose content types are declared part by part, without any by ending; `prefix` stands before their elements. */
function bare(prefix = ''): Uint8Array {
  const parts = smallParts();
  const text = (parts[types] as string).replace(/<Default [^>]*>/g, '');
  const own = ['/_rels/.rels', '/xl/_rels/workbook.xml.rels'].map(
    (name) => `<Override PartName="${name}" ContentType="${relationships}"/>`,
  );
  const all = text.replace('</Types>', `${own.join('')}</Types>`);
  parts[types] =
    prefix === ''
      ? all
      : all.replaceAll(/<(\/?)([TO])/g, `<$1${prefix}:$2`).replace('xmlns=', `xmlns:${prefix}=`);
  return zipParts(parts);
}

/** Parts of a package that nothing gives a type. */
function undeclared(bytes: Uint8Array): string[] {
  const text = partText(bytes, types);
  const named = (attribute: string): string[] =>
    Array.from(text.matchAll(new RegExp(`${attribute}="([^"]*)"`, 'g')), ([, value = '']) =>
      value.toLowerCase(),
    );
  const endings = named('Extension');
  const parts = named('PartName');
  return Object.keys(unzipSync(bytes))
    .map((name) => name.toLowerCase())
    .filter((name) => name !== types.toLowerCase())
    .filter((name) => !parts.includes(`/${name}`) && !endings.includes(name.replace(/^.*\./, '')));
}

describe('a package that declares its types part by part', () => {
  it.each(['', 'ct'])('gets every part declared that is added (prefix “%s”)', (prefix) => {
    expect(undeclared(bare(prefix))).toEqual([]);
    const charted = addSheets(bare(prefix), [recordSheet]).bytes;
    expect(Object.keys(unzipSync(charted)).filter((name) => name.endsWith('.rels')).length).toBeGreaterThan(
      3,
    );
    expect(undeclared(charted)).toEqual([]);
    expect(undeclared(withSettings(bare(prefix), new Map([['key', '1']])))).toEqual([]);
    const book = openWorkbook(bare(prefix), false);
    const edits = new PackageEdits(book);
    addNotes(book, edits, { part: 'xl/worksheets/sheet1.xml', name: 'Channels' }, [
      { row: 1, column: 1, text: 'a' },
    ]);
    const noted = edits.bytes();
    expect(Object.keys(unzipSync(noted))).toContain('xl/worksheets/_rels/sheet1.xml.rels');
    expect(undeclared(noted)).toEqual([]);
    // The validator knows a list of types without a prefix alone.
    for (const bytes of prefix === '' ? [charted, noted] : []) expect(objections(bytes)).toEqual([]);
  });

  it('and one that declares endings as something else', () => {
    const parts = smallParts();
    parts[types] = (parts[types] as string).replace(
      `ContentType="${relationships}"`,
      'ContentType="application/xml"',
    );
    const copy = addSheets(zipParts(parts), [recordSheet]).bytes;
    expect(partText(copy, types)).toMatch(
      /PartName="\/xl\/worksheets\/_rels\/sheet2\.xml\.rels" ContentType="[^"]*relationships\+xml"/,
    );
  });
});

describe('a template', () => {
  const stem = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const excel = 'application/vnd.ms-excel';
  const book = (type: string): Uint8Array => {
    const parts = smallParts();
    parts[types] = (parts[types] as string).replace(`${stem}.sheet.main+xml`, type);
    return zipParts(parts);
  };
  it.each([
    ['a template', `${stem}.template.main+xml`, `${stem}.sheet.main+xml`, '.xlsx'],
    [
      'one with macros',
      `${excel}.template.macroEnabled.main+xml`,
      `${excel}.sheet.macroEnabled.main+xml`,
      '.xlsm',
    ],
    ['a workbook', `${stem}.sheet.main+xml`, `${stem}.sheet.main+xml`, '.xlsx'],
    [
      'one with macros',
      `${excel}.sheet.macroEnabled.main+xml`,
      `${excel}.sheet.macroEnabled.main+xml`,
      '.xlsm',
    ],
  ])('%s becomes the workbook that its name says', (_, type, made, ending) => {
    expect(copyEnding(book(type))).toBe(ending);
    const copy = addSheets(book(type), [resultSheet()]).bytes;
    expect(partText(copy, types)).toContain(`PartName="/xl/workbook.xml" ContentType="${made}"`);
    expect(readWorkbook('a', copy).sheets.map(({ name }) => name)).toEqual(['Channels', 'Audit results']);
    expect(objections(copy, ending.slice(1))).toEqual([]);
  });

  it('and no file says nothing', () => {
    expect(copyEnding(new TextEncoder().encode('Tag,Alert'))).toBeUndefined();
  });
});
