import { decimalsFor } from '../look/significant.ts';
import type { ModelValue } from '../model.ts';
import { columnFormulas } from '../results/columnFormulas.ts';
import { zeroMoved } from '../results/workings.ts';
import type { AsLeftLine } from './lines.ts';
import { thresholdName } from '../../audit/model/threshold.ts';

/** A column of the sheet; with a formula, `value` is the result stored beside it. */
export interface AsLeftColumn {
  readonly id: string;
  readonly header: string;
  readonly width: number;
  readonly style: string | ((line: AsLeftLine) => string);
  readonly value: (line: AsLeftLine) => ModelValue;
  /** Without the leading `=`; `[id]` is the cell of that column in the same row. */
  readonly formula?: string;
}

const level = ({ found }: AsLeftLine): string => `level${decimalsFor(found.setpoint)}`;
const sensitivity = ({ channel }: AsLeftLine): string =>
  `level${decimalsFor(channel.sensitivity.configured)}`;

const unknown = 'not known';
const goesOn = { true: 'yes', false: 'no', null: unknown } as const;

/** Columns from left to right; the last is a working and stands beside the printed page. */
export const columns: readonly AsLeftColumn[] = [
  { id: 'tag', header: 'Tag', width: 14, style: 'strong', value: ({ channel }) => channel.tag },
  { id: 'machine', header: 'Machine', width: 22, style: 'wrapped', value: ({ channel }) => channel.machine },
  {
    id: 'location',
    header: 'Location',
    width: 26,
    style: 'wrapped',
    value: ({ channel }) => channel.location,
  },
  {
    id: 'threshold',
    header: 'Threshold',
    width: 17,
    style: 'text',
    value: ({ found }) => thresholdName(found),
  },
  { id: 'unit', header: 'Unit', width: 6, style: 'centred', value: ({ channel }) => channel.unit },
  {
    id: 'set',
    header: 'Set at',
    width: 9,
    style: level,
    value: ({ found }) => (found.setpoint === null ? null : found.multiplier * found.setpoint),
  },
  {
    id: 'configured',
    header: 'Configured sensitivity Kc',
    width: 11,
    style: sensitivity,
    value: ({ channel }) => channel.sensitivity.configured,
  },
  {
    id: 'sensitivityUnit',
    header: 'Unit of Kc and Km',
    width: 10,
    style: 'centred',
    value: ({ channel }) => channel.sensitivity.unit,
  },
  {
    id: 'measured',
    header: 'Sensitivity Km as found',
    width: 11,
    style: sensitivity,
    value: ({ channel }) => channel.sensitivity.measured,
  },
  {
    id: 'acted',
    header: 'Acted at, as found',
    width: 9,
    style: level,
    value: ({ found }) => found.effective,
    formula: '([set]*[configured]+[zeroMoved])/[measured]',
  },
  {
    id: 'found',
    header: 'Verdict as found',
    width: 14,
    style: 'verdict',
    value: ({ found }) => found.verdict,
  },
  {
    id: 'leftMeasured',
    header: 'Sensitivity Km as left',
    width: 11,
    style: sensitivity,
    value: ({ asLeft }) => asLeft.sensitivity.measured,
  },
  {
    id: 'acts',
    header: 'Acts at, as left',
    width: 9,
    style: level,
    value: ({ left }) => left.effective,
    formula: '([set]*[configured]+[zeroMoved])/[leftMeasured]',
  },
  { id: 'left', header: 'Verdict as left', width: 14, style: 'verdict', value: ({ left }) => left.verdict },
  {
    id: 'change',
    header: 'What changed',
    width: 18,
    style: 'strong',
    value: ({ left }) => left.change,
    formula:
      'IF(OR([found]="incomplete",[left]="incomplete"),"not judged",IF([left]="within",IF([found]="within","unchanged","cured"),IF([found]=[left],"still ","now ")&[left]))',
  },
  {
    id: 'from',
    header: 'May have been late from',
    width: 12,
    style: 'centred',
    value: ({ exposure }) => exposure && (exposure.from ?? unknown),
  },
  {
    id: 'to',
    header: 'Until it was found on',
    width: 12,
    style: 'centred',
    value: ({ exposure }) => exposure && (exposure.to ?? unknown),
  },
  { id: 'days', header: 'Days', width: 7, style: 'count', value: ({ exposure }) => exposure?.days ?? null },
  {
    id: 'goesOn',
    header: 'Goes on as left',
    width: 10,
    style: 'centred',
    value: ({ exposure }) => exposure && goesOn[`${exposure.goesOn}`],
  },
  {
    id: 'zeroMoved',
    header: 'Shift by the zero at Km = 1',
    width: 11,
    style: 'signed3',
    value: zeroMoved,
  },
];

/** Number of columns that go on paper. */
export const printedColumns = columns.length - 1;

export const { templates, templateOf } = columnFormulas(columns.map(({ id, formula }) => ({ id, formula })));

/** The number of a column, from 1. */
export function columnNumber(id: string): number {
  return columns.findIndex((column) => column.id === id) + 1;
}
