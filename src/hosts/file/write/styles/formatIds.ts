import { builtInCode } from '../../../formats/builtInFormats.ts';
import { escapeXml } from '../xml/text.ts';
import { styleList, type StyleList } from './collection.ts';
import type { StyleSheet } from './styleSheet.ts';

/** Codes that have a fixed id in every workbook (ECMA-376 part 1, 18.8.30), those the same in all languages. */
const builtIn = new Map([
  ['General', 0],
  ['0', 1],
  ['0.00', 2],
  ['#,##0', 3],
  ['#,##0.00', 4],
  ['0%', 9],
  ['0.00%', 10],
  ['0.00E+00', 11],
  ['@', 49],
]);

/** The id from which workbooks number their own formats. */
const firstCustomId = 164;

/** The number formats of a style sheet and those that are added to it. */
export interface FormatIds {
  /** The id under which the workbook knows a code. */
  readonly idOf: (code: string) => number;
  /** Whether numbers under this id are shown as they are. */
  readonly isGeneral: (id: number) => boolean;
  readonly list: StyleList;
}

/**
 * Ids by code. A file may give any id a code of its own, those of built-in formats among them: such an id stands for its
 * code and for nothing else.
 */
export function formatIds(sheet: StyleSheet): FormatIds {
  const list = styleList(sheet, 'numFmts');
  const codes = new Map(sheet.formats);
  const ids = new Map([...codes].reverse().map(([id, code]) => [code, id]));
  const builtIn = (code: string): number | undefined => {
    const id = builtInFormat(code);
    return id === undefined || codes.has(id) ? undefined : id;
  };
  let next = firstCustomId;
  return {
    list,
    isGeneral: (id) => (codes.get(id) ?? builtInCode(id)).toLowerCase() === 'general',
    idOf(code) {
      const known = builtIn(code) ?? ids.get(code);
      if (known !== undefined) return known;
      while (codes.has(next)) next++;
      codes.set(next, code);
      ids.set(code, next);
      list.index(`<${sheet.prefix}numFmt numFmtId="${next}" formatCode="${escapeXml(code)}"/>`);
      return next;
    },
  };
}

/** The id every workbook gives this code; `undefined` where a workbook must define it. */
function builtInFormat(code: string): number | undefined {
  return builtIn.get(code);
}
