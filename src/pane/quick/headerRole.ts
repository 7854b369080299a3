import type { Unit } from '../../units/parse.ts';
import { measurand, sensitivity } from '../../audit/read/tables/dimensions.ts';
import { readHeader, type HeaderRead } from '../../audit/read/understand/vocabulary/headerText.ts';
import { meaning, type MeaningId } from '../../audit/read/understand/meaning.ts';

/** What a number is to the quick answer; `setpoint`: of which kind is not said, `sensitivity`: nor of which side. */
export type Role = 'danger' | 'alert' | 'setpoint' | 'configured' | 'measured' | 'sensitivity';

/** What the words and the unit beside a number say of it. */
export interface HeaderRole {
  /** `null`: something else, or nothing is said. */
  readonly role: Role | null;
  readonly unit: Unit | null;
}

const judged = ['danger', 'alert', 'configured', 'measured'] as const satisfies readonly MeaningId[];
const taken = new Set<MeaningId>(judged);
/** Words with which a sensitivity is neither the one measured as the chain is now, nor the one configured. */
const aside = ['as left', 'reference', 'old', 'proposed'] as const;

/** Tells by a header, in any of the languages known, whether a number is a setpoint or a sensitivity, and which. */
export function headerRole(text: string): HeaderRole {
  const header = readHeader(text);
  const unit = header.unit?.unit ?? null;
  const level = unit !== null && measurand.includes(unit.dimension);
  const perLevel = unit !== null && sensitivity.includes(unit.dimension);
  return { role: unit !== null && !level && !perLevel ? null : roleOf(header, level, perLevel), unit };
}

function roleOf(header: HeaderRead, level: boolean, perLevel: boolean): Role | null {
  const { standard, concepts } = header;
  if (standard.length > 0) {
    const own = judged.find((id) => standard.some((name) => name.id === id));
    if (own) return own;
    if (standard.every(({ id }) => !taken.has(id as MeaningId))) return null;
  }
  const says = (id: 'danger' | 'alert' | 'measured'): boolean => {
    const { named, not } = meaning(id);
    return (
      named.some((list) => list.every((concept) => concepts.has(concept))) &&
      !not.some((concept) => concepts.has(concept))
    );
  };
  if (!perLevel && says('danger')) return 'danger';
  if (!perLevel && says('alert')) return 'alert';
  const isSensitivity = perLevel || concepts.has('sensitivity');
  const measured = concepts.has('measured') || concepts.has('as found');
  const configured = concepts.has('configured');
  const bare = !level && (measured || configured) && !otherQuantity(header);
  if (isSensitivity || bare) {
    if (aside.some((concept) => concepts.has(concept))) return null;
    if (isSensitivity && !perLevel && meaning('measured').not.some((concept) => concepts.has(concept)))
      return null;
    if (measured !== configured) return measured ? 'measured' : 'configured';
    return 'sensitivity';
  }
  return level && concepts.has('setpoint') && !otherQuantity(header) ? 'setpoint' : null;
}

/** Whether the words name a quantity of their own. */
function otherQuantity({ concepts }: HeaderRead): boolean {
  const others = [
    'full scale',
    'gap voltage',
    'zero voltage',
    'uncertainty',
    'speed',
    'delay',
    'reading',
    'date',
    'displacement limit',
    'counter',
    'resolution',
    'multiplier',
    'deviation',
    'tolerance',
  ] as const;
  return others.some((concept) => concepts.has(concept));
}
