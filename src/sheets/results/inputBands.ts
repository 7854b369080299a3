import { sourceOf } from '../links.ts';
import { given, isAxial, level, type Band } from './column.ts';
import { directionSign, voltsAtSetpoint, voltsOtherWay } from './workings.ts';

/** What a line is about, and the inputs that the audit used. */
export const channelBand: Band = {
  caption: 'Channel',
  columns: [
    {
      id: 'tag',
      header: 'Tag',
      width: 16,
      style: 'strongLink',
      value: ({ channel }) => channel.tag,
      link: ({ channel }) => sourceOf(channel.source.channels),
    },
    { id: 'machine', header: 'Machine', width: 24, style: 'text', value: ({ channel }) => channel.machine },
    {
      id: 'location',
      header: 'Location',
      width: 24,
      style: 'text',
      value: ({ channel }) => channel.location,
    },
    { id: 'kind', header: 'Kind', width: 11, style: 'text', value: ({ channel }) => channel.kind },
    {
      id: 'threshold',
      header: 'Threshold',
      width: 14,
      style: 'text',
      value: ({ threshold }) => threshold.name,
    },
  ],
};

export const settingBand: Band = {
  caption: 'Setting',
  columns: [
    { id: 'unit', header: 'Unit', width: 8, style: 'centred', value: ({ channel }) => channel.unit },
    {
      id: 'detection',
      header: 'Detection',
      width: 10,
      style: 'centred',
      value: ({ channel }) => channel.detection,
    },
    {
      id: 'setpoint',
      header: 'Setpoint S',
      width: 10,
      style: given(({ threshold }) => threshold.setpoint),
      value: ({ threshold }) => threshold.setpoint,
    },
    {
      id: 'multiplier',
      header: 'Multiplier m',
      width: 10,
      style: 'factor',
      value: ({ threshold }) => threshold.multiplier,
    },
  ],
};

export const chainBand: Band = {
  caption: 'Measuring chain',
  columns: [
    {
      id: 'configured',
      header: 'Configured sensitivity Kc',
      width: 11,
      style: given(({ channel }) => channel.sensitivity.configured),
      value: ({ channel }) => channel.sensitivity.configured,
    },
    {
      id: 'measured',
      header: 'Measured sensitivity Km',
      width: 11,
      style: given(({ channel }) => channel.sensitivity.measured),
      value: ({ channel }) => channel.sensitivity.measured,
    },
    {
      id: 'sensitivityUnit',
      header: 'Unit of Kc and Km',
      width: 11,
      style: 'text',
      value: ({ channel }) => channel.sensitivity.unit,
    },
    {
      id: 'uncertainty',
      header: 'Uncertainty U of Km',
      width: 11,
      style: 'percent',
      value: ({ channel }) => channel.sensitivity.uncertainty,
    },
    {
      id: 'coverage',
      header: 'Coverage k',
      width: 9,
      style: 'factor',
      value: ({ channel }) => channel.sensitivity.coverage,
    },
  ],
};

export const reachBand: Band = {
  caption: 'Reach',
  columns: [
    {
      id: 'fullScale',
      header: 'Full scale',
      width: 9,
      style: given(({ channel }) => channel.inputs.fullScale),
      value: ({ channel }) => channel.inputs.fullScale,
    },
    {
      id: 'linearReach',
      header: 'Linear reach',
      width: 9,
      style: level,
      value: ({ channel }) => channel.inputs.linearReach,
    },
  ],
};

export const positionBand: Band = {
  caption: 'Position channels only',
  columns: [
    {
      id: 'zeroConfigured',
      header: 'Configured zero, V',
      width: 11,
      style: 'volts',
      value: ({ channel }) => channel.inputs.zeroConfigured,
    },
    {
      id: 'zeroMeasured',
      header: 'Measured zero, V',
      width: 10,
      style: 'volts',
      value: ({ channel }) => channel.inputs.zeroMeasured,
    },
    {
      id: 'sign',
      header: 'Direction: +1 toward, −1 away',
      width: 12,
      style: 'factor',
      value: directionSign,
    },
    {
      id: 'unitsPerVolt',
      header: 'Units per volt at Km = 1',
      width: 10,
      style: 'factor',
      value: ({ channel }) => channel.inputs.unitsPerVolt,
    },
    {
      id: 'voltsAtSetpoint',
      header: 'Acts at, V',
      width: 9,
      style: 'volts',
      value: voltsAtSetpoint,
      formula: 'voltsAtSetpoint',
      applies: isAxial,
    },
    {
      id: 'voltsOtherWay',
      header: 'or, no direction given, at, V',
      width: 11,
      style: 'volts',
      value: voltsOtherWay,
      formula: 'voltsOtherWay',
      applies: isAxial,
    },
    {
      id: 'faultNear',
      header: 'Fault limit near, V',
      width: 9,
      style: 'volts',
      value: ({ channel }) => (channel.kind === 'axial' ? (channel.inputs.faultLimits?.near ?? null) : null),
    },
    {
      id: 'faultFar',
      header: 'Fault limit far, V',
      width: 9,
      style: 'volts',
      value: ({ channel }) => (channel.kind === 'axial' ? (channel.inputs.faultLimits?.far ?? null) : null),
    },
  ],
};
