import { DAYS_PER_YEAR } from '../../method/drift.ts';
import type { DriftResult } from '../../audit/model/report.ts';
import { columnList } from '../column.ts';
import { sourceOf } from '../links.ts';
import { decimalsFor } from '../style/significant.ts';

/** A channel whose drift was worked out, as the sheet shows it. */
export interface Drifting {
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  readonly configured: number;
  readonly drift: DriftResult;
}

/** A channel's line, and between which rows its readings that count stand. */
interface DriftLine extends Drifting {
  readonly first: number;
  readonly last: number;
}

/** One reading of a channel. */
interface ReadingLine {
  readonly of: Drifting;
  readonly reading: DriftResult['readings'][number];
}

/** Where the policy's tolerance and the level of confidence stand. */
export const tolerancePlace = { row: 5, column: 8, address: '$H$5' } as const;
export const levelPlace = { row: 5, column: 11, address: '$K$5' } as const;

/** With a digit more than the channel's sensitivity has. */
const decimalsOf = ({ configured }: Drifting): number => Math.min(decimalsFor(configured) + 1, 6);
const level = (of: Drifting): string => `level${decimalsOf(of)}`;
const signed = (of: Drifting): string => `signed${decimalsOf(of)}`;

/** Columns of the readings below that the formulas go by, in the rows of a channel. */
function readingsOf({ first, last }: DriftLine): { readonly y: string; readonly x: string } {
  const down = (id: string): string => {
    const letter = readingList.letterOf(id);
    return `$${letter}$${first}:$${letter}$${last}`;
  };
  return { y: down('sensitivity'), x: down('days') };
}

function slope(line: DriftLine): string {
  const { y, x } = readingsOf(line);
  return `SLOPE(${y},${x})`;
}

function intercept(line: DriftLine): string {
  const { y, x } = readingsOf(line);
  return `INTERCEPT(${y},${x})`;
}

const counted = ({ drift }: Drifting) => drift.readings.filter(({ counts }) => counts);

/**
 * Columns of the upper table from left to right; those of the readings below stand under them. The scatter is summed from
 * the residuals, which keeps its digits where STEYX loses them.
 */
export const driftList = columnList<DriftLine>(
  [
    { id: 'tag', header: 'Tag', width: 15, style: 'strong', value: ({ tag }) => tag },
    { id: 'machine', header: 'Machine', width: 23, style: 'wrapped', value: ({ machine }) => machine },
    { id: 'location', header: 'Location', width: 23, style: 'wrapped', value: ({ location }) => location },
    {
      id: 'count',
      header: 'Readings that count',
      width: 10,
      style: 'count',
      value: (of) => counted(of).length,
      formula: (line) => `COUNT(${readingsOf(line).y})`,
    },
    { id: 'first', header: 'From', width: 12, style: 'text', value: (of) => counted(of)[0]?.date ?? null },
    { id: 'last', header: 'To', width: 12, style: 'text', value: (of) => counted(of).at(-1)?.date ?? null },
    { id: 'unit', header: 'Unit', width: 10, style: 'text', value: ({ drift }) => drift.unit },
    {
      id: 'configured',
      header: 'Configured Kc',
      width: 11,
      style: level,
      value: ({ configured }) => configured,
    },
    {
      id: 'perYear',
      header: 'Drift a year',
      width: 12,
      style: signed,
      value: ({ drift }) => drift.perYear,
      formula: (line) => `${slope(line)}*${DAYS_PER_YEAR}`,
    },
    {
      id: 'fraction',
      header: 'Drift a year, % of Kc',
      width: 11,
      style: 'signedPercent',
      value: ({ drift }) => drift.perYearFraction,
      formula: '[perYear]/[configured]',
    },
    {
      id: 'expanded',
      header: '± at that level',
      width: 10,
      style: level,
      value: ({ drift }) => drift.expandedUncertainty,
      formula: (line) => `[coverage]*[scatter]/SQRT(DEVSQ(${readingsOf(line).x}))*${DAYS_PER_YEAR}`,
    },
    {
      id: 'coverage',
      header: 'Student’s t',
      width: 11,
      style: level,
      value: ({ drift }) => drift.coverage,
      formula: 'TINV(1-[$level],[count]-2)',
    },
    {
      id: 'correlation',
      header: 'Correlation',
      width: 12,
      style: 'correlation',
      value: ({ drift }) => drift.correlation,
      formula: (line) => `CORREL(${readingsOf(line).y},${readingsOf(line).x})`,
      applies: ({ drift }) => drift.correlation !== null,
    },
    {
      id: 'scatter',
      header: 'Scatter',
      width: 9,
      style: level,
      value: ({ drift }) => drift.residualDeviation,
      formula: (line) =>
        `SQRT(SUMPRODUCT((${readingsOf(line).y}-${intercept(line)}-${slope(line)}*${readingsOf(line).x})^2)/([count]-2))`,
    },
    {
      id: 'limit',
      header: 'Edge of the tolerance',
      width: 11,
      style: level,
      value: ({ drift }) => drift.leaves.limit,
      formula: '[configured]*(1+SIGN([perYear])*[$tolerance])',
      applies: ({ drift }) => drift.leaves.limit !== null,
    },
    {
      id: 'days',
      header: 'Days until it is reached',
      width: 11,
      style: 'days',
      value: ({ drift }) => drift.leaves.days,
      formula: (line) => `([limit]-${intercept(line)})/${slope(line)}`,
      applies: ({ drift }) => drift.leaves.days !== null,
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
  ],
  { cells: { tolerance: tolerancePlace.address, level: levelPlace.address } },
);

/** Columns of the readings; those from before a correction have no days. */
export const readingList = columnList<ReadingLine>([
  { id: 'tag', header: 'Tag', width: 15, style: 'strong', value: ({ of }) => of.tag },
  { id: 'sheet', header: 'Sheet', width: 23, style: 'text', value: ({ reading }) => reading.sheet },
  { id: 'from', header: 'Found in', width: 23, style: 'text', value: ({ reading }) => reading.from },
  {
    id: 'row',
    header: 'Row',
    width: 10,
    style: 'countLink',
    value: ({ reading }) => reading.row,
    link: ({ reading }) => sourceOf(reading),
  },
  { id: 'date', header: 'Date', width: 12, style: 'text', value: ({ reading }) => reading.date },
  {
    id: 'state',
    header: 'Reading',
    width: 12,
    style: 'text',
    value: ({ reading }) => (reading.asLeft ? 'as left' : 'as found'),
  },
  { id: 'unit', header: 'Unit', width: 10, style: 'text', value: ({ of }) => of.drift.unit },
  {
    id: 'sensitivity',
    header: 'Sensitivity',
    width: 11,
    style: ({ of }) => level(of),
    value: ({ reading }) => reading.sensitivity,
  },
  {
    id: 'days',
    header: 'Days from the first',
    width: 12,
    style: 'count',
    value: ({ of, reading }) =>
      reading.counts ? dayOf(reading.date) - dayOf(counted(of)[0]?.date ?? '') : null,
  },
  {
    id: 'counts',
    header: 'Counts',
    width: 11,
    style: 'text',
    value: ({ reading }) => (reading.counts ? 'yes' : 'no'),
  },
]);

function dayOf(date: string): number {
  return Date.parse(date) / 86_400_000;
}
