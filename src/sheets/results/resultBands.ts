import { finite } from '../cells.ts';
import { hasLimit, level, readingIsUsable, signed, type Band } from './column.ts';
import { acceptedFrom, acceptedTo, judgedFrom, judgedTo } from './workings.ts';

/** What the audit found, with the formulas that lead to it. */
export const verdictBand: Band = {
  caption: 'Verdict',
  columns: [
    {
      id: 'verdict',
      header: 'Verdict',
      width: 14,
      style: 'verdict',
      value: ({ threshold }) => threshold.verdict,
      formula: 'verdict',
    },
  ],
};

export const effectBand: Band = {
  caption: 'Where it really acts',
  columns: [
    {
      id: 'effective',
      header: 'Acts at T',
      width: 10,
      style: level,
      value: ({ threshold }) => threshold.effective,
      formula: 'effective',
    },
    {
      id: 'low',
      header: 'T at least',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.low,
      formula: 'low',
    },
    {
      id: 'high',
      header: 'T at most',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.high,
      formula: 'high',
    },
    {
      id: 'shift',
      header: 'Late (+) or early (−) by',
      width: 10,
      style: signed,
      value: ({ threshold }) => threshold.shift,
      formula: 'shift',
    },
    {
      id: 'shiftFraction',
      header: 'Late (+) or early (−) by, %',
      width: 10,
      style: 'signedPercent',
      value: ({ threshold }) => threshold.shiftFraction,
      formula: 'shiftFraction',
    },
  ],
};

export const decisionBand: Band = {
  caption: 'Decision, levels without their sign',
  columns: [
    {
      id: 'acceptedFrom',
      header: 'Accepted from',
      width: 10,
      style: level,
      value: acceptedFrom,
      formula: 'acceptedFrom',
    },
    {
      id: 'acceptedTo',
      header: 'Accepted to',
      width: 10,
      style: level,
      value: acceptedTo,
      formula: 'acceptedTo',
    },
    {
      id: 'judgedFrom',
      header: 'Judged from',
      width: 9,
      style: level,
      value: judgedFrom,
      formula: 'judgedFrom',
    },
    { id: 'judgedTo', header: 'Judged to', width: 9, style: level, value: judgedTo, formula: 'judgedTo' },
    {
      id: 'unreachable',
      header: 'Cannot act because',
      width: 22,
      style: 'wrapped',
      value: ({ threshold }) => threshold.unreachable.join(', '),
      formula: 'unreachable',
    },
  ],
};

export const limitBand: Band = {
  caption: 'Limit and zone',
  columns: [
    { id: 'limit', header: 'Limit', width: 9, style: level, value: ({ channel }) => channel.inputs.limit },
    {
      id: 'probability',
      header: 'Probability beyond limit',
      width: 11,
      style: 'chance',
      value: ({ threshold }) => threshold.probabilityBeyondLimit,
      formula: 'probability',
      applies: hasLimit,
    },
    {
      id: 'intendedZone',
      header: 'Zone meant',
      width: 8,
      style: 'centred',
      value: ({ threshold }) => threshold.intendedZone,
    },
    {
      id: 'zone',
      header: 'Zone where it acts',
      width: 9,
      style: 'centred',
      value: ({ threshold }) => threshold.zone,
    },
  ],
};

export const presentBand: Band = {
  caption: 'Present level and growth',
  columns: [
    {
      id: 'reading',
      header: 'Reading now',
      width: 9,
      style: level,
      value: ({ channel }) => channel.inputs.reading,
    },
    {
      id: 'realReading',
      header: 'Real level now',
      width: 9,
      style: level,
      value: ({ channel }) => finite(channel.inputs.realReading),
      formula: 'realReading',
      applies: readingIsUsable,
    },
    {
      id: 'headroom',
      header: 'Headroom',
      width: 10,
      style: signed,
      value: ({ threshold }) => threshold.headroom,
      formula: 'headroom',
      applies: readingIsUsable,
    },
    {
      id: 'daysLate',
      header: 'Days late',
      width: 8,
      style: 'days',
      value: ({ threshold }) => threshold.daysLate,
    },
    {
      id: 'daysToGo',
      header: 'Days to go',
      width: 8,
      style: 'days',
      value: ({ threshold }) => threshold.daysToGo,
    },
    {
      id: 'levelAtTrip',
      header: 'Level when it acts',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.levelAtTrip,
    },
  ],
};

export const interimBand: Band = {
  caption: 'Interim measure, only by the site’s change procedure',
  columns: [
    {
      id: 'indicated',
      header: 'Indicated at real S',
      width: 10,
      style: level,
      value: ({ threshold }) => threshold.indicatedAtSetpoint,
      formula: 'indicated',
    },
    {
      id: 'resolution',
      header: 'Setpoint step',
      width: 9,
      style: 'factor',
      value: ({ channel }) => channel.inputs.resolution,
    },
    {
      id: 'interim',
      header: 'Interim setpoint',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.interimSetpoint,
    },
  ],
};
