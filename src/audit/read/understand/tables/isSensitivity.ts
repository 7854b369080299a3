import type { Field } from '../fields/field.ts';
import { meaning } from '../meaning.ts';
import { inEnglishUnits } from '../vocabulary/statedUnit.ts';
import type { Concept } from '../vocabulary/wordList.ts';

/** Meanings that are sensitivities. */
export const sensitivityIds: ReadonlySet<string> = new Set([
  'measured',
  'configured',
  'asLeftSensitivity',
  'referenceSensitivity',
]);
const excluded: readonly Concept[] = meaning('measured').not;

/** Whether a field holds sensitivities, by its standard header, its unit or its word. */
export function isSensitivity(field: Field): boolean {
  const { standard, concepts, units, values, besideOf } = field;
  if (standard.some(({ id }) => sensitivityIds.has(id))) return true;
  if (standard.length > 0 || excluded.some((concept) => concepts.has(concept))) return false;
  const stated = units.find(({ scope }) => scope !== 'format')?.stated ?? units[0]?.stated;
  const dimensions = meaning('measured').dimensions;
  if (stated?.unit && dimensions.includes(stated.unit.dimension)) return true;
  if (stated || values.dates > 0 || inEnglishUnits(field.text).includes('%')) return false;
  const word = concepts.get('sensitivity');
  if (!word || values.numbers === 0) return false;
  if (word.strength === 'strong' || (besideOf !== null && dimensions.includes(besideOf))) return true;
  const perCell = [...values.cellUnits.values()].some(
    ({ unit }) => unit !== null && dimensions.includes(unit.dimension),
  );
  const median = Math.abs(values.median);
  return (
    perCell ||
    ((['measured', 'configured', 'as found', 'as left'] as const).some((role) => concepts.has(role)) &&
      ((median > 1 && median < 20) || (median > 50 && median < 600)) &&
      values.least > 0)
  );
}
