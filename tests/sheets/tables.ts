import { PercentCell, type Cell } from '../../src/cells/cell.ts';
import type { Sheet, Workbook } from '../../src/cells/sheet.ts';

const channelHeaders = [
  'Tag',
  'Machine',
  'Location',
  'Kind',
  'Measured sensitivity',
  'Sensitivity unit',
  'Uncertainty (%)',
  'Coverage factor',
  'Gap voltage (V)',
  'Measured zero voltage (V)',
  'Positive direction',
  'Speed (r/min)',
  'Limit',
  'Present reading',
  'Growth per day',
  'Unit',
  'Last good on',
  'Calibrated on',
] as const;

/** Stand behind the others where a row has one of them. */
const asLeftHeaders = ['As-left sensitivity', 'As-left uncertainty (%)', 'As-left gap voltage (V)'] as const;

/** The same: what else was measured of the chain and of the monitor. */
const chainHeaders = [
  'Runout amplitude',
  'Zero voltage uncertainty (V)',
  'Loop current at 0 % (mA)',
  'Loop current at 0 % uncertainty (mA)',
  'Loop current at 100 % (mA)',
  'Loop current at 100 % uncertainty (mA)',
  'Monitor gain',
  'Monitor gain uncertainty (%)',
] as const;

const settingsHeaders = [
  'Tag',
  'Configured sensitivity',
  'Sensitivity unit',
  'Alert',
  'Danger',
  'Unit',
  'Full scale',
  'Set-point multiplier',
  'Configured zero voltage (V)',
  'Counter alert',
  'Counter danger',
  'Resolution',
  'Detection',
  'Voting group',
  'Voting',
  'Bypass',
] as const;

/** A channel with its settings, as someone would list them; what is left out stays an empty cell. */
export interface Listed {
  readonly tag: string;
  readonly machine?: string;
  readonly location?: string;
  readonly kind?: string;
  readonly measured?: Cell;
  readonly sensitivityUnit?: string;
  /** Percent. */
  readonly uncertainty?: number;
  readonly coverage?: number;
  readonly gap?: number;
  readonly zeroMeasured?: number;
  readonly direction?: 'toward' | 'away';
  readonly speed?: number;
  readonly limit?: number;
  readonly reading?: number;
  readonly growth?: number;
  readonly unit?: string;
  readonly configured?: Cell;
  readonly alert?: Cell;
  readonly danger?: Cell;
  readonly fullScale?: number;
  readonly multiplier?: number;
  readonly zeroConfigured?: number;
  readonly counterAlert?: number;
  readonly counterDanger?: number;
  readonly resolution?: number;
  readonly detection?: string;
  readonly group?: string;
  readonly voting?: string;
  readonly bypass?: boolean;
  readonly lastGood?: string;
  readonly calibrated?: string;
  readonly asLeft?: number;
  /** Percent. */
  readonly asLeftUncertainty?: number;
  readonly asLeftGap?: number;
  readonly runout?: number;
  readonly zeroUncertainty?: number;
  readonly loopAtZero?: number;
  readonly loopAtZeroUncertainty?: number;
  readonly loopAtSpan?: number;
  readonly loopAtSpanUncertainty?: number;
  readonly gain?: number;
  /** Percent. */
  readonly gainUncertainty?: number;
}

/** A workbook with a channel list and the monitor settings on two sheets; units default to mil and mV/mil. */
export function workbookOf(listed: readonly Listed[], name = 'plant.xlsx'): Workbook {
  const twice = listed.some(({ asLeft }) => asLeft !== undefined);
  const further = listed.some(({ gain }) => gain !== undefined);
  const channels = listed.map((one): Cell[] => [
    one.tag,
    one.machine ?? null,
    one.location ?? null,
    one.kind ?? null,
    one.measured ?? null,
    one.sensitivityUnit ?? 'mV/mil',
    one.uncertainty === undefined ? null : new PercentCell(one.uncertainty),
    one.coverage ?? null,
    one.gap ?? null,
    one.zeroMeasured ?? null,
    one.direction ?? null,
    one.speed ?? null,
    one.limit ?? null,
    one.reading ?? null,
    one.growth ?? null,
    one.unit ?? 'mil',
    one.lastGood ?? null,
    one.calibrated ?? null,
    ...(twice ? [one.asLeft ?? null, one.asLeftUncertainty ?? null, one.asLeftGap ?? null] : []),
    ...(further
      ? [
          one.runout ?? null,
          one.zeroUncertainty ?? null,
          one.loopAtZero ?? null,
          one.loopAtZeroUncertainty ?? null,
          one.loopAtSpan ?? null,
          one.loopAtSpanUncertainty ?? null,
          one.gain ?? null,
          one.gainUncertainty ?? null,
        ]
      : []),
  ]);
  const settings = listed.map((one): Cell[] => [
    one.tag,
    one.configured ?? null,
    one.sensitivityUnit ?? 'mV/mil',
    one.alert ?? null,
    one.danger ?? null,
    one.unit ?? 'mil',
    one.fullScale ?? null,
    one.multiplier ?? null,
    one.zeroConfigured ?? null,
    one.counterAlert ?? null,
    one.counterDanger ?? null,
    one.resolution ?? null,
    one.detection ?? null,
    one.group ?? null,
    one.voting ?? null,
    one.bypass === undefined ? null : one.bypass ? 'yes' : 'no',
  ]);
  return {
    name,
    sheets: [
      sheetOf('Channels', [
        [...channelHeaders, ...(twice ? asLeftHeaders : []), ...(further ? chainHeaders : [])],
        ...channels,
      ]),
      sheetOf('Monitor', [[...settingsHeaders], ...settings]),
    ],
  };
}

export function sheetOf(name: string, rows: readonly (readonly Cell[])[]): Sheet {
  return { name, hidden: false, rows, hiddenRows: new Set(), tables: [] };
}
