import type { Kind } from '../../model/channel.ts';
import type { Direction } from '../../../method/axial/position.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import type { FoundTable } from '../tables/found.ts';
import { withRemarks, type Diagnostic } from './diagnostic.ts';
import { above0, atLeast0, checkRanges, type Ranges } from './ranges.ts';
import { rowReader, type Amount } from './rowReader.ts';
import { directionWords, kindWords } from './words.ts';

/** One row of the channel list, in the units in which it was written; every column has its place. */
export interface ChannelRow extends Readonly<Record<keyof typeof channelColumns, unknown>> {
  readonly row: number;
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  /** `null` where the cell is blank or its word not understood. */
  readonly kind: Kind | null;
  readonly measured: Amount | null;
  readonly uncertainty: Amount | null;
  readonly coverage: Amount | null;
  /** The coverage factor that the row itself states, for all of its uncertainties. */
  readonly rowCoverage: Amount | null;
  /** The part of the uncertainty that its batch shares, expanded like the uncertainty. */
  readonly sharedUncertainty: Amount | null;
  /** What it was calibrated with or made from; empty where nothing stands there. */
  readonly batch: string;
  readonly gapVoltage: Amount | null;
  readonly chainLength: Amount | null;
  readonly referenceSensitivity: Amount | null;
  readonly referenceGapVoltage: Amount | null;
  readonly zeroMeasured: Amount | null;
  readonly zeroUncertainty: Amount | null;
  readonly direction: Direction | null;
  readonly speed: Amount | null;
  readonly loopAtZero: Amount | null;
  readonly loopAtZeroUncertainty: Amount | null;
  readonly loopAtSpan: Amount | null;
  readonly loopAtSpanUncertainty: Amount | null;
  readonly limit: Amount | null;
  readonly reading: Amount | null;
  readonly runoutAmplitude: Amount | null;
  /** Degrees, as is that of the 1X vector. */
  readonly runoutPhase: Amount | null;
  /** Of the chain when the slow-roll vector was taken. */
  readonly runoutSensitivity: Amount | null;
  readonly vectorAmplitude: Amount | null;
  readonly vectorPhase: Amount | null;
  readonly growth: Amount | null;
  readonly doubling: Amount | null;
  readonly calibratedOn: number | null;
  readonly lastGoodOn: number | null;
  readonly asLeftSensitivity: Amount | null;
  readonly asLeftGapVoltage: Amount | null;
  readonly asLeftUncertainty: Amount | null;
  readonly asLeftZero: Amount | null;
  /** Coverage factor of the as-left uncertainty. */
  readonly asLeftCoverage: Amount | null;
  readonly diagnostics: readonly Diagnostic[];
}

const ranges: Ranges<ChannelRow> = [
  ['measured', above0],
  ['uncertainty', above0],
  ['sharedUncertainty', atLeast0],
  ['coverage', [...above0, { kind: 'at most', than: 10 }]],
  ['gapVoltage', []],
  ['chainLength', above0],
  ['referenceSensitivity', above0],
  ['zeroUncertainty', atLeast0],
  ['speed', above0],
  ['loopAtZero', above0],
  ['loopAtZeroUncertainty', atLeast0],
  ['loopAtSpan', above0],
  ['loopAtSpanUncertainty', atLeast0],
  ['limit', above0],
  ['runoutAmplitude', atLeast0],
  ['runoutSensitivity', above0],
  ['vectorAmplitude', atLeast0],
  ['doubling', above0],
];
const rangesAsLeft: Ranges<ChannelRow> = [
  ...ranges,
  ['asLeftSensitivity', above0],
  ['asLeftUncertainty', above0],
];

/** Reads the rows of a channel list one by one: a function of the row's number. */
export function channelRowReader(table: FoundTable): (row: number) => ChannelRow {
  const read = rowReader(table, channelColumns);
  const headerCoverage = coverageInHeader(table, 'uncertainty');
  const asLeftHeaderCoverage = coverageInHeader(table, 'asLeftUncertainty');
  const readAsLeft = table.columns.has('asLeftSensitivity') || table.columns.has('asLeftUncertainty');
  return (row) => {
    read.open(row);
    const coverage = read.amount('coverage');
    const found: ChannelRow = {
      row,
      tag: read.text('tag'),
      machine: read.text('machine'),
      location: read.text('location'),
      kind: read.word('kind', kindWords),
      measured: read.amount('measured'),
      uncertainty: read.amount('uncertainty'),
      coverage: coverage ?? headerCoverage,
      rowCoverage: coverage,
      sharedUncertainty: read.amount('sharedUncertainty'),
      batch: read.text('batch'),
      gapVoltage: read.amount('gapVoltage'),
      chainLength: read.amount('chainLength'),
      referenceSensitivity: read.amount('referenceSensitivity'),
      referenceGapVoltage: read.amount('referenceGapVoltage'),
      zeroMeasured: read.amount('zeroMeasured'),
      zeroUncertainty: read.amount('zeroUncertainty'),
      direction: read.word('direction', directionWords),
      speed: read.amount('speed'),
      loopAtZero: read.amount('loopAtZero'),
      loopAtZeroUncertainty: read.amount('loopAtZeroUncertainty'),
      loopAtSpan: read.amount('loopAtSpan'),
      loopAtSpanUncertainty: read.amount('loopAtSpanUncertainty'),
      limit: read.amount('limit'),
      reading: read.amount('reading'),
      runoutAmplitude: read.amount('runoutAmplitude'),
      runoutPhase: read.amount('runoutPhase'),
      runoutSensitivity: read.amount('runoutSensitivity'),
      vectorAmplitude: read.amount('vectorAmplitude'),
      vectorPhase: read.amount('vectorPhase'),
      growth: read.amount('growth'),
      doubling: read.amount('doubling'),
      calibratedOn: read.day('calibratedOn'),
      lastGoodOn: read.day('lastGoodOn'),
      asLeftSensitivity: read.amount('asLeftSensitivity'),
      asLeftGapVoltage: read.amount('asLeftGapVoltage'),
      asLeftUncertainty: read.amount('asLeftUncertainty'),
      asLeftZero: read.amount('asLeftZero'),
      asLeftCoverage: coverage ?? asLeftHeaderCoverage,
      diagnostics: withRemarks(table, row, read.diagnostics()),
    };
    return checkRanges(readAsLeft ? rangesAsLeft : ranges, table, found);
  };
}

function coverageInHeader(table: FoundTable, uncertainty: string): Amount | null {
  const named = table.columns.get(uncertainty)?.coverage;
  return named === undefined ? null : { value: named, unit: null };
}
