import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { RawCheck } from './rawRecord.ts';
import { recordNumber } from './recordCells.ts';
import { unitOrRemark } from './recordUnits.ts';
import { rowNames, type LongTable } from './rowNames.ts';

/**
 * The checks with a known vibration of a long table: one for each tag, series and temperature. Both sides are brought to peak to peak, as for a
 * sinusoid; the header has to name the detection of each (p-p, 0-p or rms), since nothing else tells it.
 */
export function* dynamicChecks(table: LongTable, remarks: PlacedFact[]): Generator<void, RawCheck[], void> {
  const { sheet, headerRow, columns } = table;
  const [tag, level, output] = [columns.get('tag'), columns.get('displacement'), columns.get('volts')];
  if (!tag || !level || !output) return [];
  const unit = unitOrRemark(sheet, headerRow, level, remarks);
  if (!unit) return [];
  const ofLevel = unit.detection;
  const ofOutput = output.unit?.detection;
  if (!output.unit || ofLevel === undefined || ofOutput === undefined) {
    const which = ofLevel === undefined ? level : output;
    const values = { kind: 'detection', header: which.header } as const;
    const place = { sheet: sheet.name, row: headerRow, column: columnLetters(which.column) };
    remarks.push(factAt(place, factOf('record-unit-missing', 'warning', values)));
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
      const values = {
        kind: 'level',
        displacement,
        unit: unit.text,
        output: volts,
        outputUnit: output.unit.text,
      } as const;
      const place = { sheet: sheet.name, row, column: check.column };
      check.remarks.push(factAt(place, factOf('record-point-left-out', 'warning', values)));
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
