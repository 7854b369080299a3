import { columnLetters } from '../../cells/address.ts';
import { outcomeText } from '../../audit/advise/replayedText.ts';
import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../audit/model/report.ts';
import { duration } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import type { LevelLooks } from '../levelLooks.ts';
import { fittedLine } from '../look/fittedColumns.ts';
import { givenStyle } from '../look/significant.ts';
import type { ModelCell, ModelRow, ModelValue } from '../model.ts';

/** One threshold of one channel of the record. */
export interface Crossing {
  readonly channel: ReplayedChannel;
  readonly threshold: ReplayedThreshold;
  /** Whether its real level is the reading times Kc/Km, so that a formula can follow it. */
  readonly isRatio: boolean;
}

interface CrossingColumn {
  readonly id: string;
  readonly header: string;
  readonly width: number;
  /** `given`: as it was given; `level`: by the step of the instrument. */
  readonly style: string;
  readonly value: (of: Crossing) => ModelValue;
}

const timeOf = (moment: Moment | null): string | null =>
  moment === null ? null : `${moment.time.slice(0, 10)} ${moment.time.slice(11, 19)}`;

/** Columns of the table of crossings from left to right. */
export const crossingColumns = [
  { id: 'tag', header: 'Tag', width: 14, style: 'strong', value: ({ channel }) => channel.tag },
  { id: 'machine', header: 'Machine', width: 20, style: 'oneLine', value: ({ channel }) => channel.machine },
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
    value: ({ threshold }) => timeOf(threshold.acted.proven) ?? 'not proven',
  },
  {
    id: 'should',
    header: 'Should have acted',
    width: 19,
    style: 'text',
    value: ({ threshold }) => timeOf(threshold.should.proven) ?? 'not proven',
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
    header: 'Should have, earliest possible',
    width: 19,
    style: 'text',
    value: ({ threshold }) => timeOf(threshold.should.earliest) ?? 'never',
  },
  { id: 'unit', header: 'Unit', width: 8, style: 'text', value: ({ channel }) => channel.unit },
  { id: 'setpoint', header: 'Set', width: 9, style: 'given', value: ({ threshold }) => threshold.setpoint },
  {
    id: 'configured',
    header: 'Configured Kc',
    width: 11,
    style: 'given',
    value: ({ channel }) => channel.configured,
  },
  {
    id: 'measured',
    header: 'Measured Km',
    width: 11,
    style: 'given',
    value: ({ channel }) => channel.measured,
  },
  {
    id: 'shouldActAt',
    header: 'Panel shows at a real setpoint',
    width: 13,
    style: 'level',
    value: ({ threshold }) => threshold.shouldActAt,
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
    header: 'Should have, s from first reading',
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
  { id: 'source', header: 'Read from', width: 20, style: 'oneLine', value: ({ channel }) => channel.source },
  {
    id: 'words',
    header: 'In words',
    width: 60,
    // The last column, beyond those that are printed: nothing stands in its way.
    style: 'text',
    value: ({ channel: { shortNotSeen }, threshold }) =>
      `${outcomeText(threshold)}${shortNotSeen ? '; readings come farther apart than the delay: shorter exceedances are not seen' : ''}`,
  },
] as const satisfies readonly CrossingColumn[];

type CrossingColumnId = (typeof crossingColumns)[number]['id'];

const letters = new Map<string, string>(
  crossingColumns.map(({ id }, index) => [id, columnLetters(index + 1)]),
);

/** Letters of a column of the table. */
function letterOf(id: CrossingColumnId): string {
  return letters.get(id) ?? '';
}

const own = (id: CrossingColumnId): string => `${letterOf(id)}{r}`;

/** Formula of a column from the cells of its own row, without the leading `=`. */
function formulaOf(id: string, { isRatio, channel, threshold }: Crossing): string | undefined {
  if (id === 'lateSeconds' && threshold.late !== null)
    return `${own('actedSeconds')}-${own('shouldSeconds')}`;
  if (id === 'shouldActAt' && isRatio && channel.corrected === null)
    return `${own('setpoint')}*${own('measured')}/${own('configured')}`;
  return undefined;
}

/** The line of a crossing; `place` numbers its formulas. */
export function crossingRow(
  crossing: Crossing,
  looks: LevelLooks,
  place: (formula: string) => number,
): ModelRow {
  const look = looks(crossing.channel, crossing.threshold.setpoint);
  const styleOf = (style: string, found: ModelValue): string =>
    style === 'level' ? look : style === 'given' && typeof found === 'number' ? givenStyle(found) : style;
  return fittedLine(crossingColumns, {
    cells: crossingColumns.map(({ id, value, style }): ModelCell | undefined => {
      const found = value(crossing);
      const made = cell(found, styleOf(style, found));
      const formula = formulaOf(id, crossing);
      return made && formula !== undefined ? { ...made, formula: place(formula) } : made;
    }),
  });
}
