import { builtInCode } from '../../../formats/builtInFormats.ts';
import { escapeXml } from '../xml/text.ts';
import { styleList, type StyleList } from './collection.ts';
import { builtInFormat, firstCustomId } from './numberFormat.ts';
import type { StyleSheet } from './styleSheet.ts';

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
