import { dayNumber } from '../demo/sheets/writtenCell.ts';

/** Any date since spreadsheets have been kept. */
export const anyDate = { dateFrom: dayNumber('1980-01-01') } as const;

/** Percent of a value, above 0 and below 100. */
export const uncertaintyPercent = { from: 0.01, to: 99.99 } as const;

/** Voltages of eddy-current probes on the usual −24 V supply (common practice, no source). */
export const probeVolts = { allowed: { from: -30, to: 0 }, warnOnly: true } as const;
