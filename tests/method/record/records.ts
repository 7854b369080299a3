import {
  type CalibrationRecord,
  calibrationRecord,
  isFault,
} from '../../../src/method/record/calibrationRecord.ts';

/** Points that are known to be a record, as one. */
export function recordOf(gaps: readonly number[], volts: readonly number[]): CalibrationRecord {
  const record = calibrationRecord(gaps, volts);
  if (isFault(record)) throw new Error(`${record.fault} at ${record.at}`);
  return record;
}
