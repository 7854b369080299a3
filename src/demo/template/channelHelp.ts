import { kinds } from '../../audit/model/kind.ts';
import type { channelColumns } from '../../audit/read/tables/channelColumns.ts';
import { anyDate, probeVolts, uncertaintyPercent } from './entries.ts';
import type { ColumnHelp } from './templateColumn.ts';

const aboveZero = { above: 0 } as const;

/** What each column of the channel list is for, and what may stand in it. */
export const channelHelp: Readonly<Record<keyof typeof channelColumns, ColumnHelp>> = {
  tag: { meaning: 'Name of the channel, the same on both sheets. Needed. Each tag once.' },
  machine: { meaning: 'Machine that the channel protects.' },
  location: { meaning: 'Where on the machine the probe sits.' },
  kind: {
    meaning:
      'radial (shaft vibration), axial (position), velocity, acceleration or loop (4–20 mA). Blank: radial, but needed where a zero voltage or a direction stands.',
    allowed: { words: kinds },
  },
  measured: {
    meaning: 'Sensitivity found when the chain was last calibrated, before anything was adjusted. Needed.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  uncertainty: {
    meaning:
      'Expanded uncertainty of the measured sensitivity, in percent of it. Blank: the value alone decides.',
    allowed: uncertaintyPercent,
  },
  coverage: {
    meaning: 'Coverage factor of that uncertainty. Blank: the one of the policy, usually 2.',
    allowed: { from: 0.1, to: 10 },
  },
  sharedUncertainty: {
    meaning:
      'The part of that uncertainty that the batch shares (calibrator, cable lot), in percent, at the same coverage. Blank: nothing is shared.',
    allowed: uncertaintyPercent,
  },
  batch: {
    meaning:
      'What it was calibrated with or made from: channels with the same name share an error. Blank: its own.',
  },
  gapVoltage: { meaning: 'Gap voltage as found; negative for the usual −24 V supply.', ...probeVolts },
  referenceSensitivity: {
    meaning:
      'Sensitivity of the same channel when it was known to be good; to find what a pair of readings points to.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  referenceGapVoltage: { meaning: 'Gap voltage belonging to the reference sensitivity.', ...probeVolts },
  zeroMeasured: {
    meaning: 'Axial only: voltage measured at the mechanical zero of the position.',
    ...probeVolts,
  },
  direction: {
    meaning: 'Axial only: whether moving toward the probe or away from it counts as positive.',
    allowed: { words: ['toward', 'away'] },
  },
  speed: { meaning: 'Running speed, for the zones of shaft vibration.', allowed: aboveZero },
  limit: {
    meaning: 'Greatest real displacement at which danger may act, from the maker or the clearance drawing.',
    unit: 'mil',
    allowed: aboveZero,
  },
  reading: {
    meaning: 'What the monitor shows now; a position may be negative.',
    unit: 'mil',
    allowed: { from: -100_000, to: 100_000 },
  },
  growth: {
    meaning: 'By how much it grows in a day. Give this or the doubling time, not both.',
    unit: 'mil',
    allowed: { from: -100_000, to: 100_000 },
  },
  doubling: { meaning: 'Days in which the vibration doubles.', allowed: aboveZero },
  calibratedOn: { meaning: 'Day of the calibration that found the measured sensitivity.', allowed: anyDate },
  lastGoodOn: { meaning: 'Last day on which the channel was known to be good.', allowed: anyDate },
  asLeftSensitivity: {
    meaning:
      'Sensitivity after the correction. Where it stands, the channel is judged by it; what was found is kept as history.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  asLeftGapVoltage: { meaning: 'Gap voltage after the correction. It is no zero voltage.', ...probeVolts },
  asLeftUncertainty: {
    meaning: 'Uncertainty of the as-left sensitivity. Blank: the one of the measured sensitivity counts.',
    allowed: uncertaintyPercent,
  },
  asLeftZero: {
    meaning:
      'Axial only: voltage measured at the mechanical zero after the correction. Needed once corrected.',
    ...probeVolts,
  },
};
