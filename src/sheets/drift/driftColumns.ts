import { columnLetters } from '../../cells/address.ts';
import type { DriftResult } from '../../audit/model/report.ts';
import type { ModelValue } from '../model.ts';

/** A channel whose drift was worked out, as the sheet shows it. */
export interface Drifting {
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  readonly configured: number;
  readonly drift: DriftResult;
}

/** A column of the upper table, one line a channel. */
interface DriftColumn {
  readonly id: string;
  readonly header: string;
  readonly width: number;
  /** `level`, `signed`: with the decimals of the channel's sensitivity. */
  readonly style: string;
  readonly value: (of: Drifting) => ModelValue;
}

const counted = ({ drift }: Drifting) => drift.readings.filter(({ counts }) => counts);

/** Columns of the upper table from left to right; those of the readings below stand under them. */
export const driftColumns = [
  { id: 'tag', header: 'Tag', width: 15, style: 'strong', value: ({ tag }) => tag },
  { id: 'machine', header: 'Machine', width: 23, style: 'wrapped', value: ({ machine }) => machine },
  { id: 'location', header: 'Location', width: 23, style: 'wrapped', value: ({ location }) => location },
  {
    id: 'count',
    header: 'Readings that count',
    width: 10,
    style: 'count',
    value: (of) => counted(of).length,
  },
  { id: 'first', header: 'From', width: 12, style: 'text', value: (of) => counted(of)[0]?.date ?? null },
  { id: 'last', header: 'To', width: 12, style: 'text', value: (of) => counted(of).at(-1)?.date ?? null },
  { id: 'unit', header: 'Unit', width: 10, style: 'text', value: ({ drift }) => drift.unit },
  {
    id: 'configured',
    header: 'Configured Kc',
    width: 11,
    style: 'level',
    value: ({ configured }) => configured,
  },
  { id: 'perYear', header: 'Drift a year', width: 12, style: 'signed', value: ({ drift }) => drift.perYear },
  {
    id: 'fraction',
    header: 'Drift a year, % of Kc',
    width: 11,
    style: 'signedPercent',
    value: ({ drift }) => drift.perYearFraction,
  },
  {
    id: 'expanded',
    header: '± at that level',
    width: 10,
    style: 'level',
    value: ({ drift }) => drift.expandedUncertainty,
  },
  { id: 'coverage', header: 'Student’s t', width: 11, style: 'level', value: ({ drift }) => drift.coverage },
  {
    id: 'correlation',
    header: 'Correlation',
    width: 12,
    style: 'correlation',
    value: ({ drift }) => drift.correlation,
  },
  {
    id: 'scatter',
    header: 'Scatter',
    width: 9,
    style: 'level',
    value: ({ drift }) => drift.residualDeviation,
  },
  {
    id: 'limit',
    header: 'Edge of the tolerance',
    width: 11,
    style: 'level',
    value: ({ drift }) => drift.leaves.limit,
  },
  {
    id: 'days',
    header: 'Days until it is reached',
    width: 11,
    style: 'days',
    value: ({ drift }) => drift.leaves.days,
  },
  { id: 'on', header: 'Reached on', width: 12, style: 'text', value: ({ drift }) => drift.leaves.on },
  {
    id: 'earliest',
    header: 'Earliest, at that level',
    width: 13,
    style: 'wrapped',
    value: ({ drift: { leaves } }) => leaves.earliest ?? (leaves.limit === null ? null : 'already'),
  },
  {
    id: 'latest',
    header: 'Latest, at that level',
    width: 13,
    style: 'wrapped',
    value: ({ drift: { leaves } }) => leaves.latest ?? (leaves.limit === null ? null : 'may never'),
  },
] as const satisfies readonly DriftColumn[];

type DriftColumnId = (typeof driftColumns)[number]['id'];

const letters = new Map<string, string>(driftColumns.map(({ id }, index) => [id, columnLetters(index + 1)]));

/** Letters of a column of the upper table. */
export function letterOf(id: DriftColumnId): string {
  return letters.get(id) ?? '';
}
