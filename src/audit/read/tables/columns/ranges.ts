export const aboveZero = { above: 0 } as const;
export const notNegative = { atLeast: 0 } as const;
export const degrees = { from: -360, to: 360 } as const;

/** Percent of a value, above 0 and below 100. */
export const uncertaintyPercent = { from: 0.01, to: 99.99 } as const;

/** Any date since spreadsheets have been kept: from 1980-01-01, as the number of days that a spreadsheet stores. */
export const anyDate = { dateFrom: 29_221 } as const;

/** Voltages of eddy-current probes on the usual −24 V supply (common practice, no source). */
export const probeVolts = { allowed: { from: -30, to: 0 }, warnOnly: true } as const;
