// Signatures and layouts: PKWARE APPNOTE 6.3 for zip, [MS-CFB] for OLE containers, [MS-OFFCRYPTO] for the stream
// name of encrypted workbooks. Grade: published specifications, cited from memory.
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import type { ReadLimits } from '../../../../src/hosts/file/zip/limits.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { bookParts, links, oneSheet, type Parts, zip } from './book.ts';

function refusal(bytes: Uint8Array, limits: Partial<ReadLimits> = {}): string {
  try {
    readWorkbook('a.xlsx', bytes, { limits });
  } catch (error) {
    expect(error).toBeInstanceOf(FileRefused);
    const { message } = error as FileRefused;
    expect(message).toMatch(/^[^\n\r]{20,300}$/);
    return message;
  }
  return 'not refused';
}

const row = '<row r="1"><c r="A1"><v>5</v></c></row>';
const plain = (): Parts => bookParts({ sheets: [{ name: 'S', data: row }] });
const changed = (name: string, part: string | Uint8Array): Uint8Array => zip({ ...plain(), [name]: part });
const without = (name: string): Uint8Array =>
  zip(Object.fromEntries(Object.entries(plain()).filter(([each]) => each !== name)));
const sheetPart = 'xl/worksheets/sheet1.xml';
const sheetXml = (xml: string): Uint8Array => changed(sheetPart, xml);
const utf16 = (text: string): number[] => Array.from(text, (letter) => [letter.charCodeAt(0), 0]).flat();
const ole = (stream: string): Uint8Array =>
  new Uint8Array([
    0xd0,
    0xcf,
    0x11,
    0xe0,
    0xa1,
    0xb1,
    0x1a,
    0xe1,
    ...Array<number>(600).fill(0),
    ...utf16(stream),
    0,
    0,
  ]);

/** Offsets of a signature in the file. */
function find(bytes: Uint8Array, ...signature: number[]): number[] {
  return [...bytes.keys()].filter((at) => signature.every((byte, index) => bytes[at + index] === byte));
}
const localHeaders = (bytes: Uint8Array): number[] => find(bytes, 0x50, 0x4b, 3, 4);
const records = (bytes: Uint8Array): number[] => find(bytes, 0x50, 0x4b, 1, 2);
const endRecord = (bytes: Uint8Array): number => find(bytes, 0x50, 0x4b, 5, 6).at(-1)!;

/** The plain workbook with little-endian numbers overwritten. */
function patched(patch: (view: DataView, bytes: Uint8Array) => void): Uint8Array {
  const bytes = zip(plain());
  patch(new DataView(bytes.buffer), bytes);
  return bytes;
}

it('reads the workbook all these are made from', () => {
  expect(refusal(zip(plain()))).toBe('not refused');
});

describe('other files', () => {
  it.each([
    ['an empty file', new Uint8Array(), 'is empty'],
    ['an encrypted workbook', ole('EncryptedPackage'), 'protected by a password'],
    ['an .xls workbook', ole('Workbook'), 'old .xls kind'],
    ['a BIFF 4 sheet', new Uint8Array([0x09, 0x04, 0x06, 0x00, 0x00, 0x00, 0x10, 0x00]), 'old .xls kind'],
    ['text', strToU8('Tag,Alert\nA,5'), 'not an .xlsx workbook'],
    ['random bytes', new Uint8Array([1, 2, 3, 4, 5, 6, 7, 8]), 'not an .xlsx workbook'],
    [
      'an .ods file',
      zipSync({
        mimetype: strToU8('application/vnd.oasis.opendocument.spreadsheet'),
        'content.xml': strToU8('<x/>'),
      }),
      '.ods',
    ],
    ['an .xlsb file', changed('_rels/.rels', links(['r', 'officeDocument', 'xl/workbook.bin'])), '.xlsb'],
    ['a zip of other things', zipSync({ 'readme.txt': strToU8('hello') }), 'no workbook in it'],
    ['a text document', changed('xl/workbook.xml', '<w:document xmlns:w="w"/>'), 'not a workbook'],
  ])('%s', (_, bytes, message) => {
    expect(refusal(bytes)).toContain(message);
  });
});

describe('damaged zips', () => {
  it.each([
    ['cut off', zip(plain()).subarray(0, -200), 'cut off'],
    ['nothing but a beginning', strToU8('PK\x03\x04'), 'cut off'],
    [
      'a directory that lies past the end',
      patched((v, b) => {
        v.setUint32(endRecord(b) + 16, b.length, true);
      }),
      'table of contents',
    ],
    [
      'a record that is none',
      patched((v, b) => {
        v.setUint32(records(b)[1]!, 0, true);
      }),
      'table of contents',
    ],
    [
      'a part that is elsewhere',
      patched((v, b) => {
        v.setUint32(records(b)[1]! + 42, 7, true);
      }),
      'not where it should be',
    ],
    [
      'a part longer than the file',
      patched((v, b) => {
        v.setUint32(records(b)[0]! + 20, b.length, true);
      }),
      'not where it should be',
    ],
    [
      'parts that overlap',
      patched((v, b) => {
        v.setUint32(records(b)[2]! + 42, v.getUint32(records(b)[1]! + 42, true), true);
      }),
      'overlaps',
    ],
    [
      'broken packed data',
      patched((_, b) => {
        b.fill(0xff, localHeaders(b)[1]! + 45, localHeaders(b)[1]! + 60);
      }),
      'damaged',
    ],
    [
      'a wrong checksum',
      patched((v, b) => {
        v.setUint32(records(b)[1]! + 16, 1, true);
      }),
      'checksum',
    ],
    [
      'more content than declared',
      patched((v, b) => {
        v.setUint32(records(b)[1]! + 24, 10, true);
      }),
      'more than it declares',
    ],
    [
      'less content than declared',
      patched((v, b) => {
        v.setUint32(records(b)[1]! + 24, 9999, true);
      }),
      'ends too early',
    ],
    [
      'an encrypted part',
      patched((v, b) => {
        v.setUint16(records(b)[1]! + 8, 1, true);
      }),
      'encrypted',
    ],
    [
      'an unusual packing',
      patched((v, b) => {
        v.setUint16(records(b)[1]! + 10, 12, true);
      }),
      'unusual method (12)',
    ],
    [
      'zip64',
      patched((v, b) => {
        v.setUint32(records(b)[1]! + 24, 0xffffffff, true);
      }),
      'zip64',
    ],
    [
      'zip64 in the end record',
      patched((v, b) => {
        v.setUint16(endRecord(b) + 10, 0xffff, true);
      }),
      'zip64',
    ],
    [
      'a split zip',
      patched((v, b) => {
        v.setUint16(endRecord(b) + 4, 1, true);
      }),
      'split',
    ],
    ['one part twice', zip({ ...plain(), 'XL/Workbook.xml': 'x' }), 'twice'],
  ])('%s', (_, bytes, message) => {
    expect(refusal(bytes)).toContain(message);
  });

  it('but not for a name that climbs out of the folder, which is never used as a path', () => {
    expect(refusal(zip({ ...plain(), '../../etc/passwd': 'x' }))).toBe('not refused');
  });
});

describe('missing parts', () => {
  it.each([
    ['xl/workbook.xml', 'Part “xl/workbook.xml” of the file is missing'],
    [sheetPart, `Part “${sheetPart}” of the file is missing`],
    ['xl/sharedStrings.xml', 'Part “xl/sharedStrings.xml” of the file is missing'],
    ['_rels/.rels', 'no workbook in it'],
    ['xl/_rels/workbook.xml.rels', 'Sheet “S” leads to no part'],
  ])('%s', (name, message) => {
    expect(refusal(without(name))).toContain(message);
  });

  it('but not for looks, without which cells are plain', () => {
    expect(refusal(without('xl/styles.xml'))).toBe('not refused');
  });

  it('a table', () => {
    expect(
      refusal(changed('xl/worksheets/_rels/sheet1.xml.rels', links(['r', 'table', '../tables/t.xml']))),
    ).toContain('Part “xl/tables/t.xml” of the file is missing');
  });
});

describe('broken XML', () => {
  it.each([
    ['an unclosed element', '<worksheet>\n<sheetData><row>', `Part “${sheetPart}” line 2, column`],
    ['a stray end', '<worksheet>\n</sheetData></worksheet>', 'line 2'],
    ['nothing', '', 'cannot be read'],
    ['a document type', '<!DOCTYPE worksheet><worksheet/>', 'document type definition'],
    [
      'entities that grow',
      '<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;&a;">]><worksheet>&b;</worksheet>',
      'document type definition',
    ],
    ['an unknown entity', '<worksheet>&nbsp;</worksheet>', 'cannot be read'],
    ['an attribute twice', '<worksheet a="1" a="2"/>', 'duplicate attribute'],
    [
      'deep nesting',
      `${'<a>'.repeat(101)}${'</a>'.repeat(101)}`
        .replace('<a>', '<worksheet>')
        .replace(/<\/a>$/, '</worksheet>'),
      'nested more than 100 deep',
    ],
    ['another encoding', '<?xml version="1.0" encoding="ISO-8859-1"?><worksheet/>', 'encoding “ISO-8859-1”'],
    ['another root', '<chartsheet/>', 'Sheet “S” is stored as “chartsheet”'],
  ])('%s', (_, xml, message) => {
    expect(refusal(sheetXml(xml))).toContain(message);
  });

  it('bytes that are no UTF-8', () => {
    expect(refusal(changed(sheetPart, new Uint8Array([0x3c, 0x61, 0x3e, 0xff, 0xfe])))).toContain(
      'not valid UTF-8',
    );
    expect(refusal(changed(sheetPart, new Uint8Array([...strToU8('<worksheet/>'), 0xe2, 0x82])))).toContain(
      'not valid UTF-8',
    );
  });

  it('a table without an area', () => {
    const parts = bookParts({
      sheets: [{ name: 'S', data: row, tables: ['<table ref="A0:B2" displayName="T"/>'] }],
    });
    expect(refusal(zip(parts))).toContain('describes no table on the sheet');
  });
});

describe('cells that mean nothing', () => {
  it.each([
    ['<row r="1"><c r="A1"><v>abc</v></c></row>', 'Sheet “S”, cell A1 holds “abc” where a number should be'],
    ['<row r="1"><c r="B1"><v>0x10</v></c></row>', 'cell B1 holds “0x10”'],
    ['<row r="1"><c r="A1"><v>1E999</v></c></row>', 'where a number should be'],
    ['<row r="1"><c r="A1" t="s"><v>7</v></c></row>', 'points to text number “7”'],
    ['<row r="1"><c r="A1" t="s"><v>length</v></c></row>', 'points to text number “length”'],
    ['<row r="1"><c r="A1" t="b"><v>yes</v></c></row>', 'true or false'],
    ['<row r="1"><c r="A1" t="d"><v>2026-02-30</v></c></row>', 'where a date should be'],
    ['<row r="1"><c r="A1" t="x"><v>1</v></c></row>', 'unknown type “x”'],
    ['<row r="1"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>', 'cell A1 is stored twice'],
    ['<row r="1"><c r="A2"><v>1</v></c></row>', 'cell A2 is stored in row 1'],
    ['<row r="1"><c r="XFE1"><v>1</v></c></row>', 'cell “XFE1” lies off the sheet'],
    ['<row r="1"><c r="A0"><v>1</v></c></row>', 'lies off the sheet'],
    ['<row r="1"><c r="$A$1"><v>1</v></c></row>', 'lies off the sheet'],
    ['<row r="1"><c r=""><v>1</v></c></row>', 'lies off the sheet'],
    ['<row r="1"><c r="XFD1"/><c><v>1</v></c></row>', 'row 1 has more than 16384 columns'],
    ['<row r="1048577"/>', 'rows go from 1 to 1048576'],
    ['<row r="1048576"/><row/>', 'rows go from 1 to 1048576'],
    ['<row r="one"/>', 'has a row “one”'],
  ])('%s', (data, message) => {
    expect(refusal(oneSheet(data))).toContain(message);
  });

  it('two sheets of one name, and a merge off the sheet', () => {
    expect(
      refusal(
        zip(
          bookParts({
            sheets: [
              { name: 'Data', data: '' },
              { name: 'DATA', data: '' },
            ],
          }),
        ),
      ),
    ).toContain('Two sheets');
    expect(
      refusal(oneSheet(row, { after: '<mergeCells><mergeCell ref="A1:A9999999"/></mergeCells>' })),
    ).toContain('merge “A1:A9999999” lies off the sheet');
  });
});

describe('too much', () => {
  it('of anything beyond the limits', () => {
    const bytes = oneSheet('<row r="3"><c r="C3"><v>1</v></c></row>');
    // Three rows, the last of three cells.
    expect(refusal(bytes, { cells: 6 })).toBe('not refused');
    expect(refusal(bytes, { cells: 5 })).toContain('more than 5 cells');
    expect(refusal(bytes, { entries: 5 })).toContain('more than the 5');
    expect(refusal(bytes, { unpackedBytes: 1000 })).toContain('would unpack to');
    expect(refusal(bytes, { depth: 3 })).toContain('nested more than 3 deep');
    const long = oneSheet(`<row><c t="inlineStr"><is><t>${'x'.repeat(5000)}</t></is></c></row>`);
    expect(refusal(long, { textLength: 4999 })).toContain('longer than any cell');
    expect(refusal(long, { textLength: 5000 })).toBe('not refused');
  });

  it('of text without an end, even where no cell would show it', () => {
    const digits = Array.from({ length: 60_000 }, (_, index) => Math.sin(index).toString().slice(2, 8)).join(
      '',
    );
    const comment = (text: string): Uint8Array => sheetXml(`<worksheet><!--${text}--></worksheet>`);
    expect(refusal(comment(digits), { textLength: 100_000 })).toContain('longer than any cell');
    expect(refusal(comment(digits))).toBe('not refused');
  });

  it('packed into little', () => {
    const bomb = strToU8(
      `<worksheet><sheetData>${'<row></row>'.repeat(4 * 2 ** 20)}</sheetData></worksheet>`,
    );
    const packed = changed(sheetPart, bomb);
    expect(packed.length).toBeLessThan(bomb.length / 300);
    expect(refusal(packed, { unpackedBytes: 40 * 2 ** 20 })).toContain(
      'would unpack to 45 MB, more than the 40 MB',
    );
    // The same with a lie about its size is found out while it unpacks.
    const lying = changed(sheetPart, bomb);
    const view = new DataView(lying.buffer);
    const record = records(lying).find((at) => view.getUint32(at + 24, true) === bomb.length)!;
    view.setUint32(record + 24, 1000, true);
    expect(refusal(lying)).toContain('more than it declares');
    const huge = changed(sheetPart, row);
    const hugeView = new DataView(huge.buffer);
    for (const at of records(huge)) hugeView.setUint32(at + 24, 0xfffffff0, true);
    expect(refusal(huge)).toContain('more than the 1,024 MB that are read');
  });

  it('claimed by merges', () => {
    const merges = '<mergeCell ref="A1:A1048576"/>'.repeat(100);
    const data = `${row}<row r="1000000"><c r="B1000000"><v>1</v></c></row>`;
    expect(refusal(oneSheet(data, { after: `<mergeCells>${merges}</mergeCells>` }))).toContain(
      'more than 20,000,000 cells',
    );
  });

  it('claimed by many sheets that are each just small enough', () => {
    const sheets = Array.from({ length: 30 }, (_, index) => ({
      name: `S${index}`,
      data: '<row r="1048576"><c r="A1048576"><v>1</v></c></row>',
    }));
    expect(refusal(zip(bookParts({ sheets })))).toContain('more than 20,000,000 cells');
  });

  it('but not for a large sheet that packs well', () => {
    const rows = '<row><c s="1"/><c s="1"/><c s="1"/><c s="1"/></row>'.repeat(200_000);
    const bytes = oneSheet(`${rows}<row><c><v>1</v></c></row>`);
    expect(rows.length / bytes.length).toBeGreaterThan(250);
    expect(refusal(bytes)).toBe('not refused');
  });
});

it('flattens what a file says before it stands in a message', () => {
  const name = 'line&#10;break &#x202e;reversed '.repeat(20);
  const message = refusal(zip(bookParts({ sheets: [{ name, data: '<row r="0"/>' }] })));
  expect(message).toContain('Sheet “line break reversed line break');
});
