import type { Dialect } from './namespaces.ts';
import type { PlannedSheet } from './plannedParts.ts';
import { relationshipsOf, relationshipsText } from './relationships.ts';

/** The relationships by which a sheet reaches its drawing and its table. */
export const drawingId = 'rId1';
export const tableId = 'rId2';

/** The relationships part of a sheet; `undefined` where it reaches nothing. */
export function sheetLinks(
  { sheet, drawing, table }: PlannedSheet,
  { relationships }: Dialect,
): { readonly name: string; readonly text: string } | undefined {
  const links = [
    { id: drawingId, kind: 'drawing', part: drawing },
    { id: tableId, kind: 'table', part: table },
  ].flatMap(({ id, kind, part }) =>
    part === undefined ? [] : [{ id, type: `${relationships}/${kind}`, part }],
  );
  if (links.length === 0) return undefined;
  return { name: relationshipsOf(sheet), text: relationshipsText(links) };
}
