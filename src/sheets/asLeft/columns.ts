import type { ChannelResult } from '../../audit/model/report.ts';
import { givenStyle, levelDecimals } from '../style/significant.ts';
import { columnList } from '../column.ts';
import { sourceOf } from '../links.ts';
import { evidenceBy } from '../results/line.ts';
import { zeroMoved } from '../results/workings.ts';
import type { AsLeftLine } from './lines.ts';
import { verdictStyle } from '../style/verdictStyles.ts';
import { thresholdName, type ThresholdChange, type ThresholdResult } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';

const level = ({ channel, found }: AsLeftLine): string =>
  `level${levelDecimals(found.setpoint, channel.inputs.resolution)}`;

/** Whether the listed sensitivity decides where a threshold acts, so that it follows from the cells of the line. */
function isByList(threshold: ThresholdResult): boolean {
  const own = evidenceBy(threshold, 'listed sensitivity');
  return (
    threshold.governedBy === 'listed sensitivity' &&
    threshold.effective !== null &&
    own?.effective === threshold.effective
  );
}

/** Whether the shown sensitivities and the zero are all that a threshold follows from. */
function followsFromCells({ inputs }: ChannelResult): boolean {
  return inputs.gain === 1 && inputs.loop === null;
}

/** What became of a threshold, as people say it. */
const changeWords: Readonly<Record<ThresholdChange, string>> = {
  corrected: 'corrected',
  unchanged: 'unchanged',
  'not judged': 'not judged',
  'still unreachable': 'still cannot act',
  'still late': 'still late',
  'still undetermined': 'still uncertain',
  'still early': 'still early',
  'now unreachable': 'now cannot act',
  'now late': 'now late',
  'now undetermined': 'now uncertain',
  'now early': 'now early',
};

const unknown = 'not known';
const goesOn = { true: 'yes', false: 'no', null: unknown } as const;

/** Columns from left to right; the last two are workings and stand beside the printed page. */
export const list = columnList<AsLeftLine>(
  [
    {
      id: 'tag',
      header: 'Tag',
      width: 14,
      style: 'strongLink',
      value: ({ channel }) => channel.tag,
      link: ({ channel }) => sourceOf(channel.source.channels),
    },
    {
      id: 'machine',
      header: 'Machine',
      width: 22,
      style: 'wrapped',
      value: ({ channel }) => channel.machine,
    },
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
      style: ({ found }) => givenStyle(found.setpoint === null ? null : found.multiplier * found.setpoint),
      value: ({ found }) => (found.setpoint === null ? null : found.multiplier * found.setpoint),
    },
    {
      id: 'configured',
      header: 'Configured sensitivity Kc',
      width: 11,
      style: ({ channel }) => givenStyle(channel.sensitivity.configured),
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
      style: ({ asFound }) => givenStyle(asFound.sensitivity.measured),
      value: ({ asFound }) => asFound.sensitivity.measured,
    },
    {
      id: 'acted',
      header: 'Really acted at, as found',
      width: 9,
      style: level,
      value: ({ found }) => found.effective,
      formula: '([set]*[configured]+[zeroMoved])/[measured]',
      applies: ({ channel, found }) => followsFromCells(channel) && isByList(found),
    },
    {
      id: 'found',
      header: 'Verdict as found',
      width: 14,
      style: ({ found }) => verdictStyle(found.verdict),
      value: ({ found }) => verdictWords[found.verdict],
    },
    {
      id: 'leftMeasured',
      header: 'Sensitivity Km as left',
      width: 11,
      style: ({ channel }) => givenStyle(channel.sensitivity.measured),
      value: ({ channel }) => channel.sensitivity.measured,
    },
    {
      id: 'acts',
      header: 'Really acts at, as left',
      width: 9,
      style: level,
      value: ({ left }) => left.effective,
      formula: '([set]*[configured]+[zeroMovedLeft])/[leftMeasured]',
      applies: ({ channel, left }) => followsFromCells(channel) && isByList(left),
    },
    {
      id: 'left',
      header: 'Verdict as left',
      width: 14,
      style: ({ left }) => verdictStyle(left.verdict),
      value: ({ left }) => verdictWords[left.verdict],
    },
    {
      id: 'change',
      header: 'What changed',
      width: 18,
      style: 'strong',
      headerStyle: 'headerCentred',
      value: ({ left }) => left.change && changeWords[left.change],
      formula:
        'IF(OR([found]="not known",[left]="not known"),"not judged",IF([left]="OK",IF([found]="OK","unchanged","corrected"),IF([found]=[left],"still ","now ")&[left]))',
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
      header: 'Still so today',
      width: 10,
      style: 'centred',
      value: ({ exposure }) => exposure && goesOn[`${exposure.goesOn}`],
    },
    {
      id: 'zeroMoved',
      header: 'Shift by the zero at Km = 1, as found',
      width: 11,
      style: 'signed3',
      value: ({ channel, asFound }) => zeroMoved(withZero(channel, asFound.zeroMeasured)),
    },
    {
      id: 'zeroMovedLeft',
      header: 'Shift by the zero at Km = 1, as left',
      width: 11,
      style: 'signed3',
      value: zeroMoved,
    },
  ],
  { headersAsCells: true },
);

function withZero(channel: ChannelResult, zeroMeasured: number | null): { readonly channel: ChannelResult } {
  return { channel: { ...channel, inputs: { ...channel.inputs, zeroMeasured } } };
}

/** Number of columns that go on paper. */
export const printedColumns = list.columns.length - 2;
