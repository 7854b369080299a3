import type { NotUsed } from './notUsed.ts';
import { cellText, isBlank, type Cell } from '../../../../cells/cell.ts';
import type { Workbook } from '../../../../cells/sheet.ts';
import { isResultSheet } from '../../tables/titleWords.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { type Block } from '../blocks/block.ts';
import { isAmount } from '../blocks/cellKind.ts';

/** A number with something behind it: `7.86 mV/µm`. */
function isMeasured(cell: Cell): boolean {
  return typeof cell === 'string' && /^\s*(?:[<>~≈]\s*)?\d+(?:[.,]\d+)?\s+\S/u.test(cell);
}

/** Rows of numbers that stand in no table: under a tag that is known, or several below each other. */
export function withoutHeaders(
  workbook: Workbook,
  blocks: readonly Block[],
  tags: ReadonlySet<string>,
): NotUsed[] {
  const found: NotUsed[] = [];
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const spans = blocks
      .filter((block) => block.sheet === sheet)
      .map(({ lies, header, span, fields, forms }) => {
        if (lies === 'rows') return [header[0], span[1]] as const;
        if (lies === 'columns') return [fields[0]?.at ?? 0, fields.at(-1)?.at ?? 0] as const;
        const rows = forms.flatMap((form) =>
          [...form.values()].filter((place) => place.sheet === sheet.name).map(({ row }) => row),
        );
        return [Math.min(...rows), Math.max(...rows)] as const;
      });
    let run = 0;
    for (const [index, cells] of sheet.rows.entries()) {
      const row = index + 1;
      if (spans.some(([from, to]) => row >= from && row <= to)) {
        run = 0;
        continue;
      }
      const amounts = cells.filter((cell) => cell !== null && (isAmount(cell) || isMeasured(cell))).length;
      const name = cells.findIndex((cell) => typeof cell === 'string' && !isBlank(cell));
      const isKnown = amounts > 0 && cells.some((cell) => typeof cell === 'string' && tags.has(tagKey(cell)));
      run = amounts >= 2 && name >= 0 ? run + 1 : 0;
      if (!isKnown && run !== 2) continue;
      found.push({
        what: 'list',
        looksLike: 'list',
        why: 'no headers',
        weight: 'may bear on a danger',
        place: { sheet: sheet.name, row, column: name + 1 },
        text: cellText(cells[name] ?? null),
      });
    }
  }
  return found;
}
