import type { Amount } from '../../rows/rowReader.ts';
import type { MeaningId } from '../meanings/meaning.ts';
import type { ReadValue } from './channel.ts';
import type { PlacedNote } from './note.ts';
import type { FieldRead } from './readField.ts';

/** A setpoint in per cent of full scale, worked out in the unit of the full scale; unusable without one. */
export function ofScale(
  id: MeaningId,
  found: FieldRead,
  scale: Amount | null,
): { readonly value: ReadValue; readonly note: PlacedNote } {
  const percent = found.ofScale ?? 0;
  const { place, text } = found;
  const unit = scale?.unit;
  if (!scale || !unit || unit.dimension === 'percent')
    return {
      value: { amount: null, text, day: null, place },
      note: { note: { is: 'no full scale', percent }, meaning: id, place, unusable: true },
    };
  return {
    value: { amount: { value: (percent * scale.value) / 100, unit }, text, day: null, place },
    note: {
      note: { is: 'worked out from full scale', percent, scale: scale.value, unit: unit.text },
      meaning: id,
      place,
      unusable: false,
    },
  };
}
