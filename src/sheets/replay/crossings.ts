import { outcomeText } from '../../audit/advise/replayedText.ts';
import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../audit/model/report.ts';
import { duration } from '../../audit/model/wording.ts';
import { type Column, columnList, type ColumnList } from '../column.ts';
import { givenStyle } from '../style/significant.ts';
import type { ModelValue } from '../model.ts';

/** One threshold of one channel of the record. */
export interface Crossing {
  readonly channel: ReplayedChannel;
  readonly threshold: ReplayedThreshold;
  /** Whether its real level is the reading times Kc/Km, so that a formula can follow it. */
  readonly isRatio: boolean;
  /** Style of its levels, by the step of the instrument. */
  readonly levelStyle: string;
}

const timeOf = (moment: Moment | null): string | null =>
  moment === null ? null : `${moment.time.slice(0, 10)} ${moment.time.slice(11, 19)}`;

/** Where even what is unknown leaves no time, it is as sure that it never did. */
function provenTime({ proven, earliest }: ReplayedThreshold['acted']): string {
  return timeOf(proven) ?? (earliest === null ? 'never' : 'not proven');
}

const given =
  (value: (of: Crossing) => ModelValue) =>
  (of: Crossing): string => {
    const shown = value(of);
    return typeof shown === 'number' ? givenStyle(shown) : 'given';
  };

const setpoint = ({ threshold }: Crossing): ModelValue => threshold.setpoint;
const configured = ({ channel }: Crossing): ModelValue => channel.configured;
const measured = ({ channel }: Crossing): ModelValue => channel.measured;

/** The table of crossings. */
const columns: readonly Column<Crossing>[] = [
  { id: 'tag', header: 'Tag', width: 14, style: 'strong', value: ({ channel }) => channel.tag },
  {
    id: 'machine',
    header: 'Machine',
    width: 20,
    style: 'wrapped',
    value: ({ channel }) => channel.machine,
  },
  {
    id: 'threshold',
    header: 'Threshold',
    width: 12,
    style: 'text',
    value: ({ threshold }) => threshold.name,
  },
  {
    id: 'late',
    header: 'Late by',
    width: 13,
    style: 'strong',
    value: ({ threshold: { late, outcome, fromStart } }) =>
      late !== null && outcome === 'late'
        ? `${fromStart ? 'at least ' : ''}${duration(late)}`
        : outcome === 'late'
          ? null
          : outcome,
  },
  {
    id: 'acted',
    header: 'Acted',
    width: 19,
    style: 'text',
    value: ({ threshold }) => provenTime(threshold.acted),
  },
  {
    id: 'should',
    header: 'Should have acted',
    width: 19,
    style: 'text',
    value: ({ threshold }) => provenTime(threshold.should),
  },
  {
    id: 'actedEarliest',
    header: 'Acted, earliest possible',
    width: 19,
    style: 'text',
    value: ({ threshold }) => timeOf(threshold.acted.earliest) ?? 'never',
  },
  {
    id: 'shouldEarliest',
    header: 'Should have acted, earliest possible',
    width: 19,
    style: 'text',
    value: ({ threshold }) => timeOf(threshold.should.earliest) ?? 'never',
  },
  { id: 'unit', header: 'Unit', width: 8, style: 'text', value: ({ channel }) => channel.unit },
  { id: 'setpoint', header: 'Set', width: 9, style: given(setpoint), value: setpoint },
  { id: 'configured', header: 'Configured Kc', width: 11, style: given(configured), value: configured },
  { id: 'measured', header: 'Measured Km', width: 11, style: given(measured), value: measured },
  {
    id: 'shouldActAt',
    header: 'Panel shows at a real setpoint',
    width: 13,
    style: ({ levelStyle }) => levelStyle,
    value: ({ threshold }) => threshold.shouldActAt,
    formula: '[setpoint]*[measured]/[configured]',
    applies: ({ isRatio, channel }) => isRatio && channel.corrected === null,
  },
  { id: 'delay', header: 'Delay, s', width: 8, style: 'days', value: ({ threshold }) => threshold.delay },
  {
    id: 'actedSeconds',
    header: 'Acted, s from first reading',
    width: 12,
    style: 'seconds',
    value: ({ threshold }) => threshold.acted.proven?.seconds ?? null,
  },
  {
    id: 'shouldSeconds',
    header: 'Should have acted, s from first reading',
    width: 12,
    style: 'seconds',
    value: ({ threshold }) => threshold.should.proven?.seconds ?? null,
  },
  {
    id: 'lateSeconds',
    header: 'Late, s',
    width: 10,
    style: 'seconds',
    value: ({ threshold }) => threshold.late,
    formula: '[actedSeconds]-[shouldSeconds]',
    applies: ({ threshold }) => threshold.late !== null,
  },
  {
    id: 'first',
    header: 'First reading',
    width: 19,
    style: 'text',
    value: ({ channel }) => `${channel.first.slice(0, 10)} ${channel.first.slice(11, 19)}`,
  },
  { id: 'readings', header: 'Readings', width: 10, style: 'count', value: ({ channel }) => channel.readings },
  {
    id: 'unknown',
    header: 'of them unknown',
    width: 10,
    style: 'count',
    value: ({ channel }) => channel.unknown,
  },
  {
    id: 'interval',
    header: 'Usual time between, s',
    width: 10,
    style: 'seconds',
    value: ({ channel }) => channel.interval,
  },
  {
    id: 'maxGap',
    header: 'Unknown beyond, s',
    width: 10,
    style: 'seconds',
    value: ({ channel }) => channel.maxGap,
  },
  {
    id: 'source',
    header: 'Read from',
    width: 20,
    style: 'wrapped',
    value: ({ channel }) => channel.source,
  },
  {
    id: 'words',
    header: 'In words',
    width: 60,
    // The last column, beyond those that are printed: nothing stands in its way.
    style: 'text',
    value: ({ channel: { shortNotSeen }, threshold }) =>
      `${outcomeText(threshold)}${shortNotSeen ? '; readings come farther apart than the delay: shorter peaks are not seen' : ''}`,
  },
];

export const crossingList: ColumnList<Crossing> = columnList(columns, { headersAsCells: true });
