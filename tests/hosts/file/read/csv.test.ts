// RFC 4180 (open standard) for quotes and line ends; `sep=` lines, decimal commas and UTF-16 are what
// spreadsheets write: common practice, no source.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8 } from 'fflate';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../../../src/cells/sheet.ts';
import { readCsv } from '../../../../src/hosts/file/read/csv.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { oneSheet } from './book.ts';

const read = (text: string): Sheet => readCsv('a.csv', strToU8(text));
const rows = (text: string): unknown => read(text).rows;

describe('fields', () => {
  it('are texts as they stand', () => {
    expect(rows('Tag,Speed\n007, 3600 \n,1e3')).toEqual([
      ['Tag', 'Speed'],
      ['007', ' 3600 '],
      [null, '1e3'],
    ]);
  });

  it('may be quoted, with doubled quotes, separators and line breaks inside', () => {
    expect(rows('a,"b ""c"", d"\r\n"e\r\nf",""\r\n')).toEqual([['a', 'b "c", d'], ['e\r\nf']]);
  });

  it('may hold a lone quote that is an inch sign', () => {
    expect(rows('pipe,5" steel\nb,c')).toEqual([
      ['pipe', '5" steel'],
      ['b', 'c'],
    ]);
  });

  it.each(['\n', '\r\n', '\r'])('end lines with %j', (end) => {
    expect(rows(['a,b', '', 'c,d', ''].join(end))).toEqual([['a', 'b'], [], ['c', 'd']]);
  });

  it('come back from any table, however it is quoted', () => {
    const field = fc.string({ unit: fc.constantFrom('a', '7', '"', ',', ';', '\n', '\r', ' ', 'µ') });
    const table = fc.array(fc.array(field, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
    const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(table, fc.constantFrom('\n', '\r\n'), (written, end) => {
        const text = `sep=;${end}"x"${end}${written.map((row) => row.map(quoted).join(';')).join(end)}`;
        const width = Math.max(...written.map((row) => row.length));
        const filled = (row: readonly unknown[] | undefined): unknown[] =>
          Array.from({ length: width }, (_, column) => row?.[column] ?? '');
        const back = read(text).rows.slice(1);
        expect(written.map((_, index) => filled(back[index]))).toEqual(written.map(filled));
      }),
      { seed: 4180, numRuns: 300 },
    );
  });
});

describe('separators', () => {
  it.each([
    [
      'a,b\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a;b\nc;d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a\tb\nc\td',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['Plant A, unit 1\na;7,87\nb;8,01', [['Plant A, unit 1'], ['a', '7,87'], ['b', '8,01']]],
    [
      'a,"x;y;z"\nb,"x;y;z"',
      [
        ['a', 'x;y;z'],
        ['b', 'x;y;z'],
      ],
    ],
    ['sep=;\na;b,c', [['a', 'b,c']]],
    ['SEP=,\r\na,b;c;d', [['a', 'b;c;d']]],
    ['one\ntwo', [['one'], ['two']]],
  ])('are found outside quotes: %j', (text, table) => {
    expect(rows(text)).toEqual(table);
  });
});

describe('decimal marks', () => {
  it.each([
    ['a,7.87', '.'],
    ['a,"7,87"', '.'],
    ['a;7,87', ','],
    ['a;0,125', ','],
    ['a;7,874', ','],
    ['a;1.234,5', ','],
    ['a;1,234.5', '.'],
    ['a;1,234;7.5', '.'],
    ['a;7.87', '.'],
    ['a;b', '.'],
    ['a\t7,87\t1,234', ','],
    ['a\t0,125', ','],
    ['a\t1234,567', ','],
    ['a\t-7,8 %', ','],
  ])('%j has %j', (text, decimal) => {
    expect(read(text).plainText).toEqual({ decimal });
  });

  it.each(['a\t7,874', 'a;7,874;1.234', 'a;7,87;7.87'])('are not guessed: %j', (text) => {
    expect(() => read(text)).toThrow(FileRefused);
  });
});

describe('encodings', () => {
  const text = 'Tag,µm\nä,😀';
  const table = [
    ['Tag', 'µm'],
    ['ä', '😀'],
  ];
  it('may be UTF-8 with or without a byte order mark', () => {
    expect(rows(text)).toEqual(table);
    expect(rows(`\ufeff${text}`)).toEqual(table);
  });
  it('may be UTF-16 with one', () => {
    const little = new Uint8Array(
      new Uint16Array([0xfeff, ...Array.from({ length: text.length }, (_, i) => text.charCodeAt(i))]).buffer,
    );
    const big = little.map((_, index) => little[index ^ 1]!);
    expect(readCsv('a.csv', little).rows).toEqual(table);
    expect(readCsv('a.csv', big).rows).toEqual(table);
  });
});

describe('refusals', () => {
  it.each([
    ['nothing', new Uint8Array(), 'The file is empty'],
    ['only line ends', strToU8('\n\n,,\n'), 'holds no text'],
    ['Latin-1', new Uint8Array([0x61, 0x2c, 0xb5, 0x6d]), 'not text in UTF-8'],
    ['zero bytes', strToU8('a,b\0c'), 'not plain text'],
    ['a workbook', oneSheet('<row/>'), 'not '],
    ['an open quote', strToU8('a,b\n"c,d\ne,f'), 'The quote before “c,d e,f” in row 2 is never closed'],
  ])('%s', (_, bytes, message) => {
    expect(() => readCsv('a.csv', bytes)).toThrow(FileRefused);
    expect(() => readCsv('a.csv', bytes)).toThrow(message);
  });
});

it('is a sheet named after the file', () => {
  const { name, hidden, tables, hiddenRows } = readCsv('in/CHANNELS.csv', strToU8('a,b'));
  expect([name, hidden, tables.length, hiddenRows.size]).toEqual(['CHANNELS.csv', false, 0, 0]);
});

describeWithLibreOffice('a table another program wrote', () => {
  it('comes back with its quotes, separators and line breaks', () => {
    const folder = mkdtempSync(join(tmpdir(), 'read-csv-'));
    try {
      const texts = ['a "b"', 'c;d,e', 'f\ng', '007', "it's", 'µm'];
      const cells = texts.map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`).join('');
      writeFileSync(join(folder, 'table.xlsx'), oneSheet(`<row>${cells}</row>`));
      const path = convert(join(folder, 'table.xlsx'), 'csv:Text - txt - csv (StarCalc):59,34,76', folder);
      expect(readCsv(path, readFileSync(path)).rows).toEqual([texts]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
