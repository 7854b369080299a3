import { type ProbeCurve, readVolts, recordGaps } from './probeCurve.ts';

/** Readings of one probe at several gaps, as the workshop wrote them down. */
export interface ProbeRecord {
  readonly tag: string;
  readonly series: string;
  /** Of the probe, in °C. */
  readonly temperature?: number;
  readonly taken: string;
  /** In mil. */
  readonly gaps: readonly number[];
  readonly volts: readonly number[];
}

function record(
  tag: string,
  curve: ProbeCurve,
  first: number,
  taken: string,
  rest: Partial<ProbeRecord> = {},
): ProbeRecord {
  const { gaps = recordGaps } = rest;
  return { tag, series: 'as found', taken, gaps, volts: readVolts(curve, first, gaps), ...rest };
}

const shortRange = recordGaps.filter((gap) => gap <= 75);
const warm = { temperature: 90 } as const;
const cold = { temperature: 20 } as const;

/** Records of the station's probes, one row a reading in its workbook. */
export const probeRecords: readonly ProbeRecord[] = [
  record('T101-1X', { sensitivity: 198, offset: 0.1 }, 0, '2026-03-18'),
  record('T101-2X', { sensitivity: 201.5, offset: 0.2 }, 3, '2026-03-18', cold),
  record('T101-2X', { sensitivity: 196.5, offset: 0.15 }, 7, '2026-03-18', warm),
  record('G101-LX', { sensitivity: 186, offset: 0.1 }, 10, '2025-11-04'),
  record('K101-1X', { sensitivity: 160.5, offset: 0.05, farLoss: 0.05 }, 5, '2026-05-20'),
  record('K101-2Y', { sensitivity: 172.5, offset: 0.15, nearLoss: 0.03 }, 9, '2026-05-21'),
  record('P301-1X', { sensitivity: 219.5, offset: 0.1, farGap: 85 }, 11, '2025-09-23'),
  record('P301-1X', { sensitivity: 201, offset: 0.1 }, 2, '2025-09-23', { series: 'as left' }),
  record('P301-2Y', { sensitivity: 200.5, offset: 0.15, nearLoss: 0.22 }, 13, '2025-09-23', {
    gaps: [5, ...recordGaps],
  }),
  record('P303-1X', { sensitivity: 178.5, offset: -1.6, farLoss: 0.06, farGap: 75 }, 6, '2026-06-09', {
    gaps: shortRange,
  }),
  record('P303-1Y', { sensitivity: 218, offset: -0.4 }, 14, '2026-06-10', { series: 'as left' }),
];

/** A gap that stands twice: nobody knows which of the two voltages belongs to it. */
export const slippedRecord: ProbeRecord = record(
  'G101-HX',
  { sensitivity: 199, offset: 0.1 },
  4,
  '2025-11-04',
  { gaps: recordGaps.map((gap) => (gap === 45 ? 40 : gap)) },
);

/** The metric machine keeps a block a probe on a sheet of its own; gaps in µm. */
export const metricRecords: readonly ProbeRecord[] = [
  record('K201-1X', { sensitivity: 198.4, offset: 0.1 }, 8, '2026-02-11'),
  record('K201-2X', { sensitivity: 193, offset: 0.05 }, 12, '2026-02-11'),
].map((metric) => ({ ...metric, gaps: metric.gaps.map((gap) => Math.round(254 * gap) / 10) }));

/** One level of a check on a shaker or wobble plate. */
export interface DynamicCheck {
  readonly tag: string;
  /** mil peak to peak. */
  readonly displacement: number;
  /** mV rms, as the voltmeter shows it. */
  readonly output: number;
  /** Hz. */
  readonly frequency: number;
}

/** Volts rms of a sine of that many mil peak to peak, to a tenth of a millivolt. */
function rms(displacement: number, sensitivity: number): number {
  return Math.round((10 * displacement * sensitivity) / (2 * Math.SQRT2)) / 10;
}

/** A probe whose dynamic check agrees with its record, and one whose record was taken on another piece of metal. */
export const dynamicChecks: readonly DynamicCheck[] = [
  ...[2, 4, 6, 8].map((displacement, at) => ({
    tag: 'T101-1X',
    displacement,
    output: rms(displacement, [197.6, 198.5, 198.1, 198.3][at] ?? NaN),
    frequency: 60,
  })),
  ...[2, 4, 6, 8].map((displacement, at) => ({
    tag: 'P303-1X',
    displacement,
    output: rms(displacement, [199.4, 200.2, 199.8, 200.1][at] ?? NaN),
    frequency: 60,
  })),
];
