import { pastReadings, type Attention } from '../../audit/model/report.ts';
import type { Place } from '../../audit/model/findings.ts';
import { thresholdName } from '../../audit/model/threshold.ts';
import { cell } from '../cells.ts';
import { givenStyle, levelDecimals } from '../style/significant.ts';
import type { Entry } from './layout.ts';

/** Tag or group that something is about; empty where it is about neither. */
export function subjectName({ subject: { tag, group } }: Attention): string {
  return group ?? tag;
}

/** Its threshold, with the multiplier where there is one. */
export function subjectThreshold({ subject: { threshold, multiplier } }: Attention): string {
  return threshold === null ? '' : thresholdName({ name: threshold, multiplier: multiplier ?? 1 });
}

/** Headers of `levels`. */
export const levelHeaders = ['Set at', 'Really at', 'Panel reading to treat as it', 'Unit'] as const;

/** Where it is set, where it really acts, the panel reading to treat as it, and the unit of all three; `step`: that of the instrument, where it is known. */
export function levels(
  { code, set, real, panel: shown, unit }: Attention,
  step: number | null,
): readonly Entry[] {
  // A reading that was seen stands in the headline: here someone would take it for the one to treat as the setpoint.
  const panel = pastReadings.has(code) ? null : shown;
  const style = `level${levelDecimals(set ?? real, step)}`;
  const none = set === null && real === null && panel === null;
  return [
    cell(set, givenStyle(set)),
    cell(real, style),
    panel === null ? undefined : { value: panel, style: 'panel' },
    cell(none ? null : unit, 'centred'),
  ];
}

/** Where something stands: the sheet, and the row or cell where it has one. */
export function placeText({ sheet, row, column }: Place): string {
  if (row < 1) return sheet;
  return column === '' ? `${sheet}, row ${row}` : `${sheet}, ${column}${row}`;
}
