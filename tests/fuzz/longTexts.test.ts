// However long a text is, and whatever it repeats, reading it takes work in proportion to its length.
import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { readDate } from '../../src/audit/read/rows/date.ts';
import { headerKey, looksLikeUnit, parseHeader } from '../../src/audit/read/tables/header.ts';
import { labelledTag, namedTag } from '../../src/audit/read/tables/titleWords.ts';
import { unitOfText } from '../../src/audit/read/tables/unitRow.ts';
import { structuredReference } from '../../src/bench/grid/tables/plainReference.ts';
import { constantOf } from '../../src/bench/rules/compare.ts';
import { readNumber } from '../../src/cells/number.ts';
import { plain } from '../../src/cli/terminal.ts';
import { parseFormula } from '../../src/functions/formula/parse.ts';
import { isNumeric } from '../../src/functions/read/cellReaders.ts';
import { readCsv } from '../../src/hosts/file/read/csv.ts';
import { unescapeText } from '../../src/hosts/file/read/escapes.ts';
import { tagAttributes } from '../../src/hosts/file/write/xml/tagAttributes.ts';
import { escapeXml } from '../../src/hosts/file/write/xml/text.ts';
import { oneLine } from '../../src/hosts/file/zip/refused.ts';
import { kindOfCode } from '../../src/hosts/formats/numberFormat.ts';
import { callsOurs, withShownNames } from '../../src/hosts/formats/ourFormula.ts';
import { freeNames } from '../../src/hosts/formats/reference.ts';
import { shiftedCopies } from '../../src/hosts/formats/shiftFormula.ts';
import { shownFormula, storedFormula } from '../../src/hosts/formats/storedFormula.ts';
import { parseVoting } from '../../src/method/voting/voting.ts';
import { machineSheetNames } from '../../src/sheets/handover/names.ts';
import { parseDetection } from '../../src/units/detection.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { book, oneChannel } from '../audit/book.ts';
import { charactersRead } from './charactersRead.ts';

const pieces = [
  ...[
    '1',
    '1,',
    '1.',
    '1,234.',
    '1e',
    '-',
    '+',
    ' ',
    '\t',
    '\u00a0',
    'a ',
    'a',
    'é',
    '%',
    ',',
    ';',
    ':',
    '.',
    '/',
  ],
  ...[
    '"',
    '""',
    "'",
    "''",
    '(',
    '[',
    '([',
    ')',
    ']',
    '[@',
    '{',
    '}',
    '()',
    '[]',
    '<',
    '<a ',
    '=',
    '!',
    '#',
    '@',
    '$',
  ],
  ...[
    'k',
    'k=',
    'k = 2,',
    'tag ',
    'tag: ',
    'mil ',
    'mV/',
    'mil·',
    '14 mar ',
    '2025-03-14 ',
    '2oo',
    '2 out of ',
    'p-p ',
  ],
  ...[
    'LET(',
    'LET(x,',
    'LAMBDA(x,',
    'ANCHORARRAY(',
    '_xldudf_TRIPDRIFT_',
    'TRIPDRIFT.',
    '_xlfn.',
    '_x000',
    '_x0041_',
  ],
  ...[
    'A1#',
    'A1:',
    "'a'!",
    '$A$1',
    'A1+',
    'SUM(',
    '[h]',
    'yyyy',
    'a="1" ',
    'a=',
    "a='",
    '\r',
    '\r\n',
    '\ud83d',
  ],
];
const around = [
  ['', ''],
  ['0', '!'],
  ['"', ''],
  ["x'", "'x"],
  ['[', 'x'],
  ['Alert (', ')'],
  ['(k', 'z'],
] as const;

const readers: Readonly<Record<string, (text: string) => unknown>> = {
  'a number of a workbook': (text) => readNumber(text, undefined),
  'a number of a text file': (text) => readNumber(text, { decimal: ',' }),
  'a number of a function': isNumeric,
  'a date': readDate,
  'a header': (text) => parseHeader(text, () => false),
  'a header with a known name': (text) => parseHeader(text, (key) => key.length > 3),
  'the key of a header': headerKey,
  'a remark': looksLikeUnit,
  'a title': (text) => [namedTag(text), labelledTag(text)],
  'a unit': (text) => [parseUnit(text), unitOfText(text), parseDetection(text)],
  'a voting': parseVoting,
  'a table of text': (text) => readCsv('a.csv', new TextEncoder().encode(`Tag;Alert\n${text}`)),
  'a text of XML': (text) => [unescapeText(text), escapeXml(text)],
  'a tag of XML': (text) => tagAttributes(text, 0, text.length),
  'a number format': kindOfCode,
  'a formula of a file': (text) => [shownFormula(text), callsOurs(text), withShownNames(text)],
  'a formula as typed': storedFormula,
  'a shared formula': (text) => shiftedCopies(text)(1, 1),
  'the tree of a formula': parseFormula,
  'a reference to a table': (text) => structuredReference(`[${text}]`),
  'an operand of a rule': constantOf,
  'a name of a sheet': (text) => freeNames([text, text], [text]),
  'a name of a machine': (text) =>
    machineSheetNames(
      [
        { name: text, entries: [] },
        { name: text, entries: [] },
      ] as never,
      'Summary',
    ),
  'a message': (text) => [oneLine(text), plain(text)],
};

/** Work that does not hang on the length of the text. */
const fixed = 20_000;
const short = 1_000;

function work(read: (text: string) => unknown, text: string): number {
  return charactersRead(() => {
    try {
      read(text);
    } catch {
      // What is refused is refused elsewhere; here it matters what it took.
    }
  });
}

function longText(piece: string, [before, behind]: readonly [string, string], length: number): string {
  return before + piece.repeat(Math.ceil(length / piece.length)) + behind;
}

describe('work in proportion to the length of a text', () => {
  it('is told from more', () => {
    const quadratic = (text: string): void => {
      for (let at = 0; at < text.length; at++) text.slice(at).trim();
    };
    expect(work(quadratic, longText('a', ['', ''], 4 * short))).toBeGreaterThan(
      10 * work(quadratic, longText('a', ['', ''], short)),
    );
  });

  it.each(Object.entries(readers))('%s', (_, read) => {
    const slow = pieces.flatMap((piece) =>
      around.flatMap((ends) => {
        const once = work(read, longText(piece, ends, short));
        const fourfold = work(read, longText(piece, ends, 4 * short));
        return fourfold > 6 * once + fixed ? [{ piece, ends, once, fourfold }] : [];
      }),
    );
    expect(slow.slice(0, 5)).toEqual([]);
  });
});

const columns = ['Gap voltage (V)', 'Uncertainty (%)', 'Calibrated on', 'Machine', 'Unit'];

/** A workbook to audit with a text in every place where one can stand. */
function bookWith(text: string) {
  const channel = Object.fromEntries(columns.map((column) => [column, text]));
  const settings = {
    'Full scale (mil)': text,
    Voting: text,
    'Voting group': text,
    Detection: text,
    [text]: 5,
  };
  const { sheets } = oneChannel({
    measured: text,
    configured: text,
    alert: text,
    danger: text,
    kind: text,
    channel,
    settings,
  });
  return book(...sheets, [
    'Notes',
    [
      [text, text],
      [null, text],
      ['Tag', text],
      ['Gap (mil)', 'Output (V)'],
      [text, text],
    ],
  ]);
}

it.each(['1', '1,', '-', ' ', 'a ', '(', '[k=', 'mil ', 'tag: ', '2 of '])(
  'an audit of a workbook full of long “%s” takes work in proportion to them',
  (piece) => {
    const once = work((text) => audit(bookWith(text)), piece.repeat(short));
    const fourfold = work((text) => audit(bookWith(text)), piece.repeat(4 * short));
    expect(fourfold).toBeLessThan(6 * once + fixed);
  },
);
