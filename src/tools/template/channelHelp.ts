import { kinds } from '../../audit/model/channel.ts';
import type { channelColumns } from '../../audit/read/tables/channelColumns.ts';
import { anyDate, probeVolts, uncertaintyPercent } from './entries.ts';
import type { ColumnHelp } from './templateColumn.ts';

const notNegative = { atLeast: 0 } as const;
const degrees = { from: -360, to: 360 } as const;
const aboveZero = { above: 0 } as const;

/** What each column of the channel list is for, and what may stand in it. */
export const channelHelp: Readonly<Record<keyof typeof channelColumns, ColumnHelp>> = {
  tag: {
    sample: 'K-201-1X',
    meaning: 'Name of the channel, the same on both sheets. Needed. Each tag once.',
  },
  machine: { sample: 'Compressor K-201', meaning: 'Machine that the channel protects.' },
  location: { sample: 'drive end, 45° left', meaning: 'Where on the machine the probe sits.' },
  kind: {
    sample: 'radial',
    meaning:
      'radial (shaft vibration), axial (position), velocity, acceleration or loop (4–20 mA). Blank: radial, but needed where a zero voltage or a direction stands.',
    allowed: { words: kinds },
  },
  measured: {
    sample: { mil: '197.5', µm: '7.78' },
    meaning: 'Sensitivity found when the chain was last calibrated, before anything was adjusted. Needed.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  uncertainty: {
    sample: '3',
    meaning:
      'Expanded uncertainty of the measured sensitivity, in percent of it. Blank: the value alone decides.',
    allowed: uncertaintyPercent,
  },
  coverage: {
    sample: '2',
    meaning: 'Coverage factor of that uncertainty. Blank: the one of the policy, usually 2.',
    allowed: { from: 0.1, to: 10 },
  },
  sharedUncertainty: {
    sample: '1',
    meaning:
      'The part of that uncertainty that the batch shares (calibrator, cable lot), in percent, at the same coverage. Blank: nothing is shared.',
    allowed: uncertaintyPercent,
  },
  batch: {
    sample: 'C-2024-07',
    meaning:
      'What it was calibrated with or made from: channels with the same name share an error. Blank: its own.',
  },
  gapVoltage: {
    sample: '-9.8',
    meaning: 'Gap voltage as found; negative for the usual −24 V supply.',
    ...probeVolts,
  },
  chainLength: {
    sample: '9',
    meaning:
      'Nominal length of probe, extension cable and driver together, in m; for a rough hint where the readings point to the cable.',
    allowed: aboveZero,
  },
  referenceSensitivity: {
    sample: { mil: '200', µm: '7.87' },
    meaning:
      'Sensitivity of the same channel when it was known to be good; to find what a pair of readings points to.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  referenceGapVoltage: {
    sample: '-10',
    meaning: 'Gap voltage belonging to the reference sensitivity.',
    ...probeVolts,
  },
  zeroMeasured: {
    sample: '-10.2',
    meaning: 'Axial only: voltage measured at the mechanical zero of the position.',
    ...probeVolts,
  },
  zeroUncertainty: {
    sample: '0.1',
    meaning:
      'Axial only: expanded uncertainty of the measured zero voltage, in V, at the same coverage. Blank: the zero counts as exact.',
    allowed: notNegative,
  },
  direction: {
    sample: 'toward',
    meaning: 'Axial only: whether moving toward the probe or away from it counts as positive.',
    allowed: { words: ['toward', 'away'] },
  },
  speed: { sample: '8950', meaning: 'Running speed, for the zones of shaft vibration.', allowed: aboveZero },
  loopAtZero: {
    sample: '4.02',
    meaning:
      'Loop (4–20 mA) only: current measured at 0 % of the span. Both ends are needed; where the sensitivities are in mA they take the place of the measured one.',
    allowed: { from: 0.1, to: 25 },
  },
  loopAtZeroUncertainty: {
    sample: '0.02',
    meaning: 'Loop only: expanded uncertainty of that current, in mA. Blank: it counts as exact.',
    allowed: notNegative,
  },
  loopAtSpan: {
    sample: '19.9',
    meaning: 'Loop only: current measured at 100 % of the span.',
    allowed: { from: 0.1, to: 25 },
  },
  loopAtSpanUncertainty: {
    sample: '0.02',
    meaning: 'Loop only: expanded uncertainty of that current, in mA. Blank: it counts as exact.',
    allowed: notNegative,
  },
  limit: {
    sample: { mil: '6', µm: '150' },
    meaning: 'Greatest real displacement at which danger may act, from the maker or the clearance drawing.',
    unit: 'mil',
    allowed: aboveZero,
  },
  reading: {
    sample: { mil: '1.4', µm: '36' },
    meaning: 'What the monitor shows now; a position may be negative.',
    unit: 'mil',
    allowed: { from: -100_000, to: 100_000 },
  },
  runoutAmplitude: {
    sample: { mil: '0.3', µm: '8' },
    meaning: 'Radial only: amplitude of the slow-roll vector (1X) as the monitor showed it.',
    unit: 'mil',
    allowed: notNegative,
  },
  runoutPhase: { sample: '210', meaning: 'Phase of the slow-roll vector, in degrees.', allowed: degrees },
  runoutSensitivity: {
    sample: { mil: '200', µm: '7.87' },
    meaning: 'Sensitivity of the chain when the slow-roll vector was taken. Blank: that of now.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  vectorAmplitude: {
    sample: { mil: '1.2', µm: '30' },
    meaning: 'Radial only: amplitude of the 1X component now, as the monitor shows it; no overall value.',
    unit: 'mil',
    allowed: notNegative,
  },
  vectorPhase: { sample: '35', meaning: 'Phase of the 1X component now, in degrees.', allowed: degrees },
  growth: {
    sample: { mil: '0.02', µm: '0.5' },
    meaning: 'By how much it grows in a day. Give this or the doubling time, not both.',
    unit: 'mil',
    allowed: { from: -100_000, to: 100_000 },
  },
  doubling: { sample: '40', meaning: 'Days in which the vibration doubles.', allowed: aboveZero },
  calibratedOn: {
    sample: '2026-03-14',
    meaning: 'Day of the calibration that found the measured sensitivity.',
    allowed: anyDate,
  },
  lastGoodOn: {
    sample: '2025-09-02',
    meaning: 'Last day on which the channel was known to be good.',
    allowed: anyDate,
  },
  asLeftSensitivity: {
    sample: { mil: '200.4', µm: '7.89' },
    meaning:
      'Sensitivity after the correction. Where it stands, the channel is judged by it; what was found is kept as history.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  asLeftGapVoltage: {
    sample: '-10.1',
    meaning: 'Gap voltage after the correction. It is no zero voltage.',
    ...probeVolts,
  },
  asLeftUncertainty: {
    sample: '3',
    meaning: 'Uncertainty of the as-left sensitivity. Blank: the one of the measured sensitivity counts.',
    allowed: uncertaintyPercent,
  },
  asLeftZero: {
    sample: '-10',
    meaning:
      'Axial only: voltage measured at the mechanical zero after the correction. Needed once corrected.',
    ...probeVolts,
  },
};
