/** A sensitivity that was written down at some calibration. */
export interface KeptReading {
  readonly tag: string;
  readonly date: string;
  readonly reading: string;
  readonly sensitivity: number;
  readonly unit: string;
}

const found = 'as found';
const left = 'as left';

/**
 * Sensitivities of earlier calibrations, as far as anybody kept them: one that rises from one to the next, one that was
 * corrected and is steady since, one that was corrected only now, and a metric one.
 */
export const sensitivityHistory: readonly KeptReading[] = [
  { tag: 'T101-1X', date: '05/06/2017', reading: found, sensitivity: 201, unit: 'mV/mil' },
  { tag: 'T101-1X', date: '2019-10-02', reading: found, sensitivity: 188, unit: 'mV/mil' },
  { tag: 'T101-1X', date: '2019-10-02', reading: left, sensitivity: 199.5, unit: 'mV/mil' },
  { tag: 'T101-1X', date: '2021-03-10', reading: found, sensitivity: 199, unit: 'mV/mil' },
  { tag: 'T101-1X', date: '2024-02-20', reading: found, sensitivity: 198.7, unit: 'mV/mil' },
  { tag: 'K201-1X', date: '2020-02-18', reading: found, sensitivity: 7.86, unit: 'mV/µm' },
  { tag: 'K201-1X', date: '2023-02-15', reading: found, sensitivity: 7.84, unit: 'mV/µm' },
  { tag: 'G101-LY', date: '2022-05-10', reading: found, sensitivity: 189.5, unit: 'mV/mil' },
  { tag: 'G101-LY', date: '2023-06-14', reading: found, sensitivity: 193.5, unit: 'mV/mil' },
  { tag: 'G101-LY', date: '2024-09-17', reading: found, sensitivity: 198.5, unit: 'mV/mil' },
  { tag: 'P301-1X', date: '2021-09-14', reading: found, sensitivity: 200, unit: 'mV/mil' },
  { tag: 'P301-1X', date: '2023-09-19', reading: found, sensitivity: 200.5, unit: 'mV/mil' },
];
