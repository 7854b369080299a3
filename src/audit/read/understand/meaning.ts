import type { Dimension } from '../../../units/unit.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import type { Holds, TableColumn, Understood } from '../tables/columnSpec.ts';
import type { Concept } from '../tables/concepts.ts';
import { settingsColumns } from '../tables/settingsColumns.ts';

/** Quantities with a unit: of a header path only the one named last holds. */
export const hardQuantities: ReadonlySet<Concept> = new Set<Concept>([
  'sensitivity',
  'alert',
  'danger',
  'full scale',
  'gap voltage',
  'zero voltage',
  'uncertainty',
  'speed',
  'delay',
  'reading',
  'date',
]);

/** What a field can mean, by the ids of the columns of both tables. */
export type MeaningId = keyof typeof channelColumns | keyof typeof settingsColumns;

/** A meaning: the words for it, what it is measured in, how large it usually is, and what it is not. */
export interface Meaning extends Required<Understood> {
  readonly id: MeaningId;
  /** Its name in messages and in a column map. */
  readonly name: string;
  readonly holds: Holds;
  readonly dimensions: readonly Dimension[];
  readonly usualUnit: string | null;
  /** What it means, in a sentence. */
  readonly help: string;
}

function declared(id: MeaningId, spec: TableColumn): Meaning {
  const {
    matter,
    named,
    not = [],
    sizes = [],
    numbered = false,
    needed = false,
  } = spec.understood ?? { matter: spec.holds === 'number' ? 'quantity' : 'text', named: [] };
  return {
    id,
    name: spec.name,
    matter,
    holds: spec.holds,
    dimensions: spec.dimensions ?? [],
    usualUnit: spec.usualUnit ?? null,
    named,
    not,
    sizes,
    numbered,
    needed,
    help: spec.help,
  };
}

/** Every meaning by its id. */
export const meanings: ReadonlyMap<MeaningId, Meaning> = new Map(
  Object.entries({ ...settingsColumns, ...channelColumns } as Record<MeaningId, TableColumn>).map(
    ([id, spec]) => [id as MeaningId, declared(id as MeaningId, spec)],
  ),
);

/** Meanings of which a channel has one value: two tables that hold one rival. */
export const core: readonly MeaningId[] = ['measured', 'configured', 'alert', 'danger', 'asLeftSensitivity'];

/** A meaning by its id. */
export function meaning(id: MeaningId): Meaning {
  const found = meanings.get(id);
  if (!found) throw new Error(`no meaning ${id}`);
  return found;
}
