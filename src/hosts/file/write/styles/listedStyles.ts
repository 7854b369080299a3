import type { CellStyle } from '../../../../sheets/model.ts';
import { attribute } from '../xml/outline.ts';
import { escapeXml } from '../xml/text.ts';
import { styleList, type StyleList } from './collection.ts';
import type { StyleSheet } from './styleSheet.ts';

/** Numbers of the parts of a format. */
interface FormatParts {
  readonly numFmtId: number;
  readonly fontId: number;
  readonly fillId: number;
  readonly borderId: number;
}

/** The styles that a workbook lists under names (ECMA-376 part 1, 18.8.7 to 18.8.9), and those of ours added to them. */
export interface ListedStyles {
  /**
   * Markup of the format of cells in a listed style, which is added where the workbook has none of its name. One that the
   * workbook has is used as it stands there, but for the number format where the style says one.
   */
  cell(
    style: CellStyle & { readonly named: string },
    own: FormatParts,
    alignment: string,
    quoted: boolean,
  ): string;
  /** The lists to which styles were added. */
  lists(): { readonly formats: readonly StyleList[]; readonly names: readonly StyleList[] };
}

interface Listed {
  readonly xfId: number;
  readonly parts: FormatParts;
}

export function listedStyles(sheet: StyleSheet): ListedStyles {
  const { prefix: p } = sheet;
  const known = new Map<string, Listed>();
  let lists: { readonly formats: StyleList; readonly names: StyleList } | undefined;

  const added = ({ named }: { readonly named: string }, own: FormatParts, aligned: string): Listed => {
    lists ??= {
      formats: styleList(sheet, 'cellStyleXfs', [
        `<${p}xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>`,
      ]),
      names: styleList(sheet, 'cellStyles', [`<${p}cellStyle name="Normal" xfId="0" builtinId="0"/>`]),
    };
    const rest = 'applyNumberFormat="0" applyProtection="0"';
    const xfId = lists.formats.add(
      aligned === ''
        ? `<${p}xf ${numbersOf({ ...own, numFmtId: 0 })} ${rest} applyAlignment="0"/>`
        : `<${p}xf ${numbersOf({ ...own, numFmtId: 0 })} ${rest} applyAlignment="1">${aligned}</${p}xf>`,
    );
    lists.names.add(`<${p}cellStyle name="${escapeXml(named)}" xfId="${xfId}"/>`);
    return { xfId, parts: own };
  };

  return {
    cell(style, own, aligned, quoted) {
      const key = style.named.toLowerCase();
      const found = known.get(key) ?? existing(sheet, key) ?? added(style, own, aligned);
      known.set(key, found);
      const numFmtId = style.numberFormat === undefined ? found.parts.numFmtId : own.numFmtId;
      const attributes = `${numbersOf({ ...found.parts, numFmtId })} xfId="${found.xfId}"`;
      const applied = `${quoted ? ' quotePrefix="1"' : ''}${style.numberFormat === undefined ? '' : ' applyNumberFormat="1"'}`;
      return aligned === ''
        ? `<${p}xf ${attributes}${applied}/>`
        : `<${p}xf ${attributes}${applied} applyAlignment="1">${aligned}</${p}xf>`;
    },
    lists: () => (lists ? { formats: [lists.formats], names: [lists.names] } : { formats: [], names: [] }),
  };
}

/** The style that the workbook lists under a name in small letters. */
function existing(sheet: StyleSheet, key: string): Listed | undefined {
  for (let index = 0; index < sheet.count('cellStyles'); index++) {
    const entry = sheet.entry('cellStyles', index)?.element;
    if (!entry || attribute(entry, 'name')?.toLowerCase() !== key) continue;
    const xfId = Number(attribute(entry, 'xfId')) || 0;
    const format = sheet.entry('cellStyleXfs', xfId)?.element;
    if (!format) return undefined;
    const number = (name: string): number => Number(attribute(format, name)) || 0;
    return {
      xfId,
      parts: {
        numFmtId: number('numFmtId'),
        fontId: number('fontId'),
        fillId: number('fillId'),
        borderId: number('borderId'),
      },
    };
  }
  return undefined;
}

function numbersOf({ numFmtId, fontId, fillId, borderId }: FormatParts): string {
  return `numFmtId="${numFmtId}" fontId="${fontId}" fillId="${fillId}" borderId="${borderId}"`;
}
