import { strToU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { resultSheet, sheetOf } from './model.ts';
import { partText } from './parts.ts';

describe('the workbook part', () => {
  it('takes a free sheet id and relationship id, not the next in order', () => {
    const parts = smallParts({ sheetNames: ['One', 'Two'] });
    parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string).replace('sheetId="1"', 'sheetId="41"');
    parts['xl/_rels/workbook.xml.rels'] = (parts['xl/_rels/workbook.xml.rels'] as string).replace(
      '"rId3"',
      '"RID4"',
    );
    const { bytes } = addSheets(zipParts(parts), [resultSheet('A'), resultSheet('B')]);
    const workbook = partText(bytes, 'xl/workbook.xml');
    expect(workbook).toContain(
      '<sheet name="A" sheetId="42" r:id="rId3"/><sheet name="B" sheetId="43" r:id="rId5"/>',
    );
  });

  // Order of CT_Workbook: sheets, functionGroups, externalReferences, definedNames, calcPr.
  it('gets its names behind external references and before the calculation settings', () => {
    const parts = smallParts({ workbookTail: '<externalReferences/><calcPr calcId="1"/>' });
    const workbook = partText(addSheets(zipParts(parts), [resultSheet()]).bytes, 'xl/workbook.xml');
    expect(workbook).toMatch(/<externalReferences\/><definedNames>.*<\/definedNames><calcPr/);
  });

  it('hides the name of the filter and defines the rows repeated in print', () => {
    const { bytes } = addSheets(zipParts(smallParts()), [sheetOf('Plain', [[1]]), resultSheet()]);
    const workbook = partText(bytes, 'xl/workbook.xml');
    expect(workbook).toContain(
      `<definedName name="_xlnm._FilterDatabase" localSheetId="2" hidden="1">'Audit results'!$A$1:$G$4</definedName>`,
    );
    expect(workbook).toContain(
      `<definedName name="_xlnm.Print_Titles" localSheetId="2">'Audit results'!$1:$1</definedName>`,
    );
    expect(workbook.match(/<definedName /g)).toHaveLength(2);
  });

  it('prints the part of a sheet that its model names', () => {
    const model = resultSheet();
    const area = { top: 1, left: 1, bottom: 4, right: 3 };
    const { bytes } = addSheets(zipParts(smallParts()), [{ ...model, print: { ...model.print, area } }]);
    expect(partText(bytes, 'xl/workbook.xml')).toContain(
      `<definedName name="_xlnm.Print_Area" localSheetId="1">'Audit results'!$A$1:$C$4</definedName>`,
    );
  });

  it('binds the relationship prefix where the workbook does not', () => {
    const parts = smallParts();
    parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string)
      .replace(/ xmlns:r="([^"]*)"/, ' xmlns:r="urn:other"')
      .replace(
        'r:id=',
        'xmlns:q="http://schemas.openxmlformats.org/officeDocument/2006/relationships" q:id=',
      );
    const { bytes } = addSheets(zipParts(parts), [sheetOf('New', [[7]])]);
    expect(readWorkbook('a.xlsx', bytes).sheets.map(({ name }) => name)).toEqual(['Channels', 'New']);
  });

  it('is found through its relationship, wherever and however it is named', () => {
    const moved = Object.fromEntries(
      Object.entries(smallParts()).map(([name, content]) => [
        name.replace('xl/', 'Book/').replace('workbook', 'Main'),
        (content as string)
          .replaceAll('/xl/', '/Book/')
          .replace('"xl/workbook.xml"', '"/book/main.xml"')
          .replace('workbook.xml"', 'Main.xml"'),
      ]),
    );
    const { bytes } = addSheets(zipParts(moved), [sheetOf('New', [[7]])]);
    expect(Object.keys(unzipSync(bytes))).toContain('Book/worksheets/sheet2.xml');
    expect(readWorkbook('a.xlsx', bytes).sheets[1]!.rows).toEqual([[7]]);
  });
});

describe('all dialects and encodings are kept', () => {
  it('strict: new parts and links are strict', () => {
    const { bytes } = addSheets(zipParts(strictParts()), [resultSheet()]);
    expect(partText(bytes, 'xl/worksheets/sheet2.xml')).toContain(
      'xmlns="http://purl.oclc.org/ooxml/spreadsheetml/main"',
    );
    expect(partText(bytes, 'xl/_rels/workbook.xml.rels')).toMatch(
      /Type="http:\/\/purl\.oclc\.org\/ooxml\/officeDocument\/relationships\/worksheet" Target="worksheets\/sheet2\.xml"/,
    );
    expect(partText(bytes, 'xl/_rels/workbook.xml.rels')).not.toContain(
      'schemas.openxmlformats.org/officeDocument',
    );
  });

  it('prefixes and byte order marks, in the list of parts too', () => {
    const names = ['[Content_Types].xml', 'xl/workbook.xml', 'xl/_rels/workbook.xml.rels', 'xl/styles.xml'];
    const { bytes } = addSheets(zipParts(prefixed(smallParts(), names)), [sheetOf('New', [[7]])]);
    for (const name of names) expect([...unzipSync(bytes)[name]!.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(partText(bytes, '[Content_Types].xml')).toMatch(
      /<x:Override PartName="\/xl\/worksheets\/sheet2.xml"/,
    );
    expect(readWorkbook('a.xlsx', bytes).sheets[1]!.rows).toEqual([[7]]);
  });

  it.each([true, false])('UTF-16 (little endian: %s)', (little) => {
    const parts = smallParts({ sheetNames: ['Größe 𝒳'] });
    const text = `\uFEFF${(parts['xl/workbook.xml'] as string).replace('UTF-8', 'UTF-16')}`;
    const encoded = new Uint8Array(Buffer.from(text, 'utf16le'));
    parts['xl/workbook.xml'] = little ? encoded : new Uint8Array(Buffer.from(encoded).swap16());
    const { bytes } = addSheets(zipParts(parts), [sheetOf('Neu', [[7]])]);
    const decoded = new TextDecoder(little ? 'utf-16le' : 'utf-16be').decode(
      unzipSync(bytes)['xl/workbook.xml'],
    );
    expect(decoded).toMatch(/<sheet name="Größe 𝒳"[^>]*\/><sheet name="Neu"/);
  });

  it('bytes that are no text of their encoding are refused', () => {
    const parts = {
      ...smallParts(),
      'xl/workbook.xml': new Uint8Array([...strToU8('<workbook a="'), 0xff, 0x22]),
    };
    expect(() => addSheets(zipParts(parts), [resultSheet()])).toThrow(/xl\/workbook\.xml/);
  });
});

describe('looks', () => {
  it('build on the workbook’s default font', () => {
    const styles = { bold: { bold: false, size: 9 } };
    const { bytes } = addSheets(zipParts(smallParts()), [
      sheetOf('S', [[{ value: 1, style: 'bold' }]], { styles }),
    ]);
    expect(partText(bytes, 'xl/styles.xml')).toContain(
      '<font><b val="0"/><sz val="9"/><color rgb="FF112233"/><name val="Arial"/><family val="2"/></font></fonts>',
    );
  });

  it('are added once, however many sheets use them', () => {
    const original = zipParts(smallParts());
    const once = partText(addSheets(original, [resultSheet('A')]).bytes, 'xl/styles.xml');
    const twice = partText(addSheets(original, [resultSheet('A'), resultSheet('B')]).bytes, 'xl/styles.xml');
    expect(twice).toBe(once);
  });
});

it('progress is told up to the last row', () => {
  const told: [number, number][] = [];
  const rows = Array.from({ length: 4_500 }, (_, index) => [index]);
  addSheets(zipParts(smallParts()), [sheetOf('A', rows), sheetOf('B', [[1]])], {
    onProgress: (done, total) => told.push([done, total]),
  });
  expect(told).toEqual([
    [2_000, 4_501],
    [4_000, 4_501],
    [4_501, 4_501],
  ]);
});

// Ampersands begin a code in headers and footers and are doubled (ECMA-376 part 1, 18.3.1.46).
it('the page footer holds its text as text, and the page of pages', () => {
  const footer = (text: string): string =>
    partText(
      addSheets(zipParts(smallParts()), [sheetOf('S', [[1]], { print: { landscape: true, footer: text } })])
        .bytes,
      'xl/worksheets/sheet2.xml',
    ).replace(/^.*<oddFooter>(.*)<\/oddFooter>.*$/s, '$1');
  expect(footer('A&P <b>')).toBe('&amp;LA&amp;&amp;P &lt;b&gt;&amp;RPage &amp;P of &amp;N');
  expect(footer('x'.repeat(300)).replaceAll('&amp;', '&')).toMatch(/^.{255}$/);
});

// ECMA-376 part 1, 18.3.1.66: xSplit and ySplit count the frozen columns and rows, topLeftCell is the first cell that
// scrolls. LibreOffice without a window keeps no panes, so no peer checks this.
it.each([
  [
    { rows: 1, columns: 2 },
    '<pane xSplit="2" ySplit="1" topLeftCell="C2" activePane="bottomRight" state="frozen"/>',
  ],
  [{ rows: 3, columns: 0 }, '<pane ySplit="3" topLeftCell="A4" activePane="bottomLeft" state="frozen"/>'],
  [{ rows: 0, columns: 1 }, '<pane xSplit="1" topLeftCell="B1" activePane="topRight" state="frozen"/>'],
  [{ rows: 0, columns: 0 }, '<sheetView workbookViewId="0"/>'],
])('frozen rows and columns %o', (freeze, markup) => {
  const { bytes } = addSheets(zipParts(smallParts()), [sheetOf('S', [[1]], { freeze })]);
  expect(partText(bytes, 'xl/worksheets/sheet2.xml')).toContain(markup);
});
