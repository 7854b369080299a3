import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import {
  asLeftLine,
  asLeftReadingsLine,
  exposureLine,
  interimNow,
} from '../../src/pane/audit/channels/asLeftLine.ts';
import { nextCheck } from '../../src/pane/audit/channels/nextCheck.ts';
import { oneChannel } from '../audit/book.ts';

const now = new Date('2026-01-01T12:00:00Z');
const danger = (channel: Readonly<Record<string, number | string | null>>) => {
  const book = oneChannel({ measured: 160, channel });
  const [found] = audit(book, { now }).channels;
  const threshold = found!.thresholds.find(({ name }) => name === 'danger')!;
  return { channel: found!, threshold };
};
const dates = { 'Last good on': '2025-01-01', 'Calibrated on': '2025-11-27' };

// By hand: 5·200/170 = 5.882 mil, 17.6 % late; 170/200 − 1 = −15 %; 330 days by the calendar.
it('says where a threshold acts as left, and that its exposure goes on', () => {
  const { channel, threshold } = danger({ ...dates, 'As-left sensitivity (mV/mil)': 170 });
  expect(asLeftLine(channel, threshold)).toBe(
    'As left, still late: Acts only at 5.882 mil instead of 5 mil: 0.8824 mil (17.6 %) late.',
  );
  expect(exposureLine(channel, threshold)).toBe(
    'May have been so from 2025-01-01, found on 2025-11-27, up to 330 days, and goes on.',
  );
  expect(asLeftReadingsLine(channel.asLeft!)).toBe(
    'Sensitivity 170 mV/mil, −15 % off the configured one, no uncertainty of its own.',
  );
  expect(nextCheck(channel)).toMatch(/^Check that probe, cable and driver belong together/u);
});

// By hand: 2·(2.4 − 2) V/0.2 V a mil = 4 mil, less than 5.
it('gives the linear reach as left, not the one as found', () => {
  const { channel, threshold } = danger({
    'Gap voltage (V)': -9.8,
    'As-left sensitivity (mV/mil)': 200,
    'As-left gap voltage (V)': -2.4,
  });
  expect(asLeftLine(channel, threshold)).toContain('linear only up to 4 mil');
});

// By hand: 5·170/200 = 4.25 mil as left; 5·160/200 = 4 mil would trip early on a chain that was corrected.
it('offers the interim setpoint of the chain as it is now, and none once it is right', () => {
  const still = danger({ 'As-left sensitivity (mV/mil)': 170 });
  expect(interimNow(still.channel, still.threshold)).toMatch(/^Interim setpoint 4\.25 mil /u);
  const cured = danger({ 'As-left sensitivity (mV/mil)': 200 });
  expect(interimNow(cured.channel, cured.threshold)).toBeNull();
  const bare = danger({});
  expect(interimNow(bare.channel, bare.threshold)).toMatch(/^Interim setpoint 4 mil /u);
});

it('says what is not known, and nothing where nothing was read as left or given as a day', () => {
  const late = danger({ 'Calibrated on': '2025-11-27', 'As-left sensitivity (mV/mil)': 200 });
  expect(exposureLine(late.channel, late.threshold)).toBe(
    'May have been so from when on can’t be told, found on 2025-11-27.',
  );
  expect(nextCheck(late.channel)).toMatch(/^As left every threshold acts within the tolerance/u);
  const bare = danger({});
  expect(asLeftLine(bare.channel, bare.threshold)).toBeNull();
  expect(exposureLine(bare.channel, bare.threshold)).toBeNull();
});
