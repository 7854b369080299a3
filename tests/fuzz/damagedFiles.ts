import fc from 'fast-check';
import { strToU8, zipSync, type Zippable } from 'fflate';
import { readCsv } from '../../src/hosts/file/read/csv.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { FileRefused } from '../../src/hosts/file/zip/refused.ts';
import { bookParts, stylesOf, zip } from '../hosts/file/read/book.ts';
import { damage, inflict, overwriting, type Damage } from './damage.ts';
import type { Fuzzer } from './fuzzer.ts';

/** A workbook with one of nearly everything that a reader meets, part by part. */
export const wholeParts = bookParts({
  sheets: [
    {
      name: 'Channels',
      data:
        '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="inlineStr"><is><r><t>Da</t></r><r><t>te</t></r></is></c></row>' +
        '<row r="2" hidden="1"><c r="A2" t="str"><f>"VT"&amp;1</f><v>VT1</v></c><c r="B2" s="1"><v>0.07</v></c><c r="C2" s="0"><v>46082.5</v></c></row>' +
        '<row r="3"><c r="A3"/><c r="B3" t="b"><v>1</v></c><c r="C3" t="e"><v>#N/A</v></c><c t="d"><v>2026-03-01</v></c></row>' +
        '<row><c><v>-1.5E-3</v></c></row>',
      after: '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>',
      tables: ['<table id="1" name="t" displayName="Channels" ref="A1:C3" totalsRowCount="0"/>'],
    },
    { name: 'Monitor', data: '<row r="5"><c r="E5"><v>5</v></c></row>', state: 'hidden' },
  ],
  strings: '<si><t>Tag</t></si><si><r><t>Sens</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si>',
  styles: stylesOf(['yyyy\\-mm\\-dd', '0.0%']),
});

/** A text table with what is hard about them. */
export const wholeTable = strToU8('\ufeffTag;"Sens; ""x""";µm\r\nVT-1;7,87;"a\nb"\n\n007;0,5;\n');

/** The workbook with the damage in one part. */
export function damagedIn(part: string, list: readonly Damage[]): Uint8Array {
  const entries: Zippable = {};
  for (const [name, text] of Object.entries(wholeParts)) {
    const bytes = strToU8(String(text));
    entries[name] = [name === part ? list.reduce(inflict, bytes) : bytes, { level: 0 }];
  }
  return zipSync(entries);
}

const harms = fc.array(damage, { minLength: 1, maxLength: 4 });
const inPlace = fc.array(overwriting, { minLength: 1, maxLength: 3 });
const list = fc.oneof(harms, inPlace);
const cases = fc.oneof(
  fc.record({ what: fc.constant('zip'), list }),
  fc.record({ what: fc.constant('table'), list }),
  fc.record({ what: fc.constantFrom(...Object.keys(wholeParts)), list: harms }),
);

const whole = zip(wholeParts);

/** Damaged workbooks and text tables: a table, or one plain line that says why not. */
export const damagedFiles: Fuzzer = {
  name: 'damaged files',
  start(seed) {
    let batch = 0;
    let waiting = fc.sample(cases, { seed, numRuns: 1000 });
    return Promise.resolve(() => {
      if (waiting.length === 0) waiting = fc.sample(cases, { seed: seed + ++batch, numRuns: 1000 });
      const next = waiting.pop();
      return Promise.resolve(next && complaintOf(next));
    });
  },
};

function complaintOf(given: { readonly what: string; readonly list: readonly Damage[] }): string | undefined {
  const { what, list: harm } = given;
  try {
    if (what === 'table') readCsv('f.csv', harm.reduce(inflict, wholeTable));
    else if (what === 'zip') readWorkbook('f.xlsx', harm.reduce(inflict, whole));
    else readWorkbook('f.xlsx', damagedIn(what, harm));
    return undefined;
  } catch (error) {
    if (error instanceof FileRefused && /^[^\p{Cc}\p{Zl}\p{Zp}]{20,300}$/u.test(error.message))
      return undefined;
    return `${String(error)} for ${JSON.stringify(given)}`;
  }
}
