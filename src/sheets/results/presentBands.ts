import { finite } from '../cells.ts';
import {
  acts,
  given,
  hasZeros,
  level,
  listedAlone,
  readingIsUsable,
  signed,
  yesOrNo,
  type Band,
  type Column,
} from './column.ts';

export const presentBand: Band = {
  caption: 'Present level and growth',
  columns: [
    {
      id: 'reading',
      header: 'Reading now',
      width: 9,
      style: given(({ channel }) => channel.inputs.reading),
      value: ({ channel }) => channel.inputs.reading,
    },
    {
      id: 'realReading',
      header: 'Real level now',
      width: 9,
      style: level,
      value: ({ threshold }) => threshold.real,
      formula: 'realReading',
      applies: readingIsUsable,
    },
    {
      id: 'alreadyThere',
      header: 'Past it already, unseen',
      width: 10,
      style: 'centred',
      value: ({ threshold }) => yesOrNo(threshold.alreadyThere),
    },
    {
      id: 'headroom',
      header: 'Headroom',
      width: 10,
      style: signed,
      value: ({ threshold }) => finite(threshold.headroom),
      formula: 'headroom',
      applies: (line) => acts(line) && readingIsUsable(line),
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

const interim: Column = {
  id: 'interim',
  header: 'Interim setpoint',
  width: 9,
  style: 'panel',
  value: ({ threshold }) => threshold.interimSetpoint,
  formula: 'interim',
  applies: listedAlone,
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
      applies: hasZeros,
    },
    {
      id: 'resolution',
      header: 'Setpoint step',
      width: 9,
      style: 'factor',
      value: ({ channel }) => channel.inputs.resolution,
    },
    interim,
  ],
};
