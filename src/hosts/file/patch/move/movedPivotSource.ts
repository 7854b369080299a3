import { reference } from '../../../formats/reference.ts';
import { parseArea } from '../../read/area.ts';
import type { EditablePart } from '../../write/package/editable.ts';
import { attribute, child } from '../../write/xml/outline.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { withAttributes } from '../attributes.ts';
import { movedArea, type Moves } from './types.ts';

/** Moves the range a pivot table takes its data from; one that is gone stays as it was, for the program to ask about. */
export function movedPivotSource({ text, root }: EditablePart, moves: Moves): Edit[] {
  const cache = child(root, 'cacheSource');
  const source = cache && child(cache, 'worksheetSource');
  const move = source && moves.get((attribute(source, 'sheet') ?? '').toLowerCase());
  const area = source && parseArea(attribute(source, 'ref') ?? '');
  const after = move && area && movedArea(move, area);
  return after ? withAttributes(text, source, { ref: reference(after) }) : [];
}
