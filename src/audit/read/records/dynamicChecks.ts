import { columnLetters } from '../../../cells/address.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { RawCheck, RecordRemark } from './rawRecord.ts';
import { recordNumber } from './recordCells.ts';
import { unitOrRemark } from './recordUnits.ts';
import { rowNames, type LongTable } from './rowNames.ts';

/**
 * The checks with a known vibration of a long table: one for each tag, series and temperature. Both sides are brought to peak to peak, as for a
 * sinusoid; the header has to name the detection of each (p-p, 0-p or rms), since nothing else tells it.
 */
export function* dynamicChecks(table: LongTable, remarks: RecordRemark[]): Generator<void, RawCheck[], void> {
  const { sheet, headerRow, columns } = table;
  const [tag, level, output] = [columns.get('tag'), columns.get('displacement'), columns.get('volts')];
  if (!tag || !level || !output) return [];
  const unit = unitOrRemark(sheet, headerRow, level, remarks);
  if (!unit) return [];
  const ofLevel = unit.detection;
  const ofOutput = output.unit?.detection;
  if (!output.unit || ofLevel === undefined || ofOutput === undefined) {
    const which = ofLevel === undefined ? level : output;
    remarks.push({
      rule: 'record-unit-missing',
      severity: 'warning',
      message: `'${which.header}' does not say how it is counted, so the check was not used. Write the unit with p-p, 0-p or rms in brackets in the header, such as (mil p-p) and (mV rms).`,
      sheet: sheet.name,
      row: headerRow,
      column: columnLetters(which.column),
    });
    return [];
  }
  const found = new Map<string, RawCheck>();
  const column = columnLetters(level.column);
  for (const name of rowNames(table, tag, [level, output], remarks)) {
    if (!name) {
      yield;
      continue;
    }
    const { row, key, ...named } = name;
    let check = found.get(key);
    if (!check) {
      check = { kind: 'check', ...named, unit, levels: [], remarks: [], sheet: sheet.name, row, column };
      found.set(key, check);
    }
    const displacement = recordNumber(sheet, row, level, check.remarks);
    const volts = recordNumber(sheet, row, output, check.remarks);
    if (displacement === null || volts === null) continue;
    if (!(displacement > 0) || !(volts > 0)) {
      check.remarks.push({
        rule: 'record-point-left-out',
        severity: 'warning',
        message: `A level of ${displacement} ${unit.text} at ${volts} ${output.unit.text} says nothing of a sensitivity; it was left out. Enter amounts above 0.`,
        sheet: sheet.name,
        row,
        column: check.column,
      });
      continue;
    }
    check.levels.push({
      row,
      displacement: convertDetection(displacement, ofLevel, 'p-p'),
      output: convertDetection(volts * output.unit.factor, ofOutput, 'p-p'),
    });
  }
  return [...found.values()];
}
