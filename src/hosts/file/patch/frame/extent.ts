import type { Area } from '../../../../cells/sheet.ts';
import { reference } from '../../../formats/reference.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { withAttributes } from '../attributes.ts';
import type { SheetMap } from '../sheetMap.ts';
import type { EditedCell } from '../types.ts';

/** The sheet's stated extent, where new cells lie outside it. */
export function stretched(text: string, { dimension }: SheetMap, added: readonly EditedCell[]): Edit[] {
  if (dimension?.area === undefined || added.length === 0) return [];
  const area = added.reduce<Area>(
    ({ top, left, bottom, right }, { row, column }) => ({
      top: Math.min(top, row),
      left: Math.min(left, column),
      bottom: Math.max(bottom, row),
      right: Math.max(right, column),
    }),
    dimension.area,
  );
  if (reference(area) === reference(dimension.area)) return [];
  return withAttributes(text, dimension, { ref: reference(area) });
}
