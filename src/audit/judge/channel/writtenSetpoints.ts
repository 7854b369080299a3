import { convert } from '../../../units/convert.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Detection, Unit } from '../../../units/parse.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';

/** The setpoints of a row that can't be audited, still in one unit, for what is shown of it. */
export interface WrittenSetpoints {
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** A setpoint in that unit and detection; `null` where none is given or its unit does not fit. */
  readonly level: (amount: Amount | null) => number | null;
}

/** Setpoints in the unit of their row's danger, or of its alert where there is no danger. */
export function writtenSetpoints({ danger, alert, detection: column }: SettingsRow): WrittenSetpoints {
  const unit = danger?.unit ?? alert?.unit ?? null;
  const detection = column ?? unit?.detection ?? alert?.unit?.detection ?? null;
  return {
    unit,
    detection,
    level(amount) {
      if (!amount) return null;
      if (!amount.unit || !unit) return amount.value;
      const level = convert(amount.value, amount.unit, unit);
      if (Number.isNaN(level)) return null;
      const own = column === null ? amount.unit.detection : undefined;
      return own && detection ? convertDetection(level, own, detection) : level;
    },
  };
}
