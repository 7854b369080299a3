import { expect, it } from 'vitest';
import { shownRecords } from '../../src/sheets/records/fromReport.ts';
import { golden } from './cases/record-up-and-down/case.ts';
import { auditCase } from './golden.ts';

const report = auditCase(golden);
const recordOf = (of: string) => report.channels.find(({ tag }) => tag === of)?.record;

// Source: exact fractions and linear programming, by the definitions of 43 CFR 3175.135 (read); worked out apart from this code.
it('a record read up and down is its mean curve, with hysteresis and nonlinearity beside it', () => {
  const record = recordOf('A');
  const found = record?.upDown;
  for (const [at, mean] of [-2.02, -6.05, -10.06, -14.03, -18].entries())
    expect(record?.points[at]?.volts).toBeCloseTo(mean, 12);
  expect(record?.points).toHaveLength(5);
  expect(found?.cycles).toBe(1);
  expect(found?.span).toBeCloseTo(15.98, 12);
  expect(found?.hysteresis.volts).toBeCloseTo(0.12, 12);
  expect(found?.hysteresis.ofSpan).toBeCloseTo(0.007509386733416722, 12);
  expect(found?.hysteresis.displacement).toBeCloseTo(0.6009013520280382, 11);
  expect(found?.terminal.volts).toBeCloseTo(0.05, 12);
  expect(found?.independent.volts).toBeCloseTo(0.025, 12);
  expect(found?.repeatability).toBeNull();
});

it('several cycles show how they repeat', () => {
  expect(recordOf('D')?.upDown?.cycles).toBe(2);
  expect(recordOf('D')?.upDown?.repeatability?.volts).toBeCloseTo(0.03, 12);
});

it('the records sheet says it beside the points of the mean curve', () => {
  const shown = shownRecords(report).find(({ tag }) => tag === 'A');
  expect(shown?.others.join('\n')).toContain('Hysteresis: 0.12 V, 0.751 % of the span, 0.6009 mil.');
});
