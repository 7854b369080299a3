import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import type { Quantity } from '../../../../units/unit.ts';
import type { Kind } from '../../../model/channel.ts';
import { placeIn, type Place } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import type { MeaningId } from '../meaning.ts';
import type { ReadValue } from './channel.ts';
import { kindIn } from './kinds.ts';
import type { PlacedNote } from './note.ts';
import type { Line } from './records.ts';

/** The kind that a word beside a channel tells, with its place; `null` where nothing does or it is not understood. */
export function kindOf(
  lines: readonly Line[],
  sheets: ReadonlyMap<string, Sheet>,
): { readonly kind: Kind | null; readonly kindSaid: string; readonly place: Place | null } {
  for (const { table, record } of lines) {
    if (!table.kindField) continue;
    const { block } = table.lane;
    const text = cellText(cellOfBlock(block, sheets, table.kindField.place, record));
    if (text === '') continue;
    const place = placeIn(block, table.kindField.place, record) ?? null;
    const kind = kindIn(text);
    const isOwn =
      table.claims.get('kind')?.field === table.kindField ||
      table.kindField.standard.some(({ id }) => id === 'kind') ||
      (table.kindField.concepts.has('kind') && !table.kindField.concepts.has('location'));
    if (kind === 'other') return { kind: null, kindSaid: text, place };
    if (kind || isOwn) return { kind: kind ?? null, kindSaid: text, place };
  }
  return { kind: null, kindSaid: '', place: null };
}

/** What the sensitivity of a kind is per; of a current loop any. */
const measures: Readonly<Partial<Record<Kind, Quantity>>> = {
  radial: 'displacement',
  axial: 'displacement',
  velocity: 'velocity',
  acceleration: 'acceleration',
};

/** What there is to say where the word for a kind and the units of both sensitivities contradict each other. */
export function kindContradiction(
  kind: Kind | null,
  word: string,
  values: ReadonlyMap<MeaningId, ReadValue>,
  place: Place,
): PlacedNote | null {
  const wanted = kind && measures[kind];
  if (!wanted) return null;
  const units = (['measured', 'configured'] as const).flatMap((id) => values.get(id)?.amount?.unit ?? []);
  const [unit] = units;
  if (!unit || units.some(({ dimension }) => !dimension.includes('/') || dimension.endsWith(`/${wanted}`)))
    return null;
  return {
    note: { is: 'kind and unit differ', word, unit: unit.text },
    meaning: 'kind',
    place,
    unusable: true,
  };
}
