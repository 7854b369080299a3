import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { verdictShades, shadesFor } from '../style/shades.ts';
import { tones } from '../style/palette.ts';
import { footerOf, roomFor } from '../style/print.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { CellStyle, ModelRow, SheetModel } from '../model.ts';
import { sheetNames, titleOf, type Audited } from '../titles.ts';
import { blockOf, type Block } from './blockCells.ts';
import { columnOf, printedColumns } from './columns.ts';
import { figureLines } from './figures.ts';
import { formulaList } from '../formulaList.ts';
import { blockTexts, placesOf, linesOf } from './places.ts';
import { pointLines } from './pointLines.ts';
import { recordCharts } from './recordCharts.ts';
import type { ShownRecord, ShownThreshold } from './shown.ts';
import { capital } from '../../audit/model/wording.ts';
import { decimalsFor } from '../style/significant.ts';

const input = { named: 'Tripdrift input', fill: tones.input, underline: true, valign: 'top' } as const;

const styles: Readonly<Record<string, CellStyle>> = {
  ...frameStyles,
  ...levelStyles,
  tag: { bold: true, size: 14, color: tones.ink, underline: true },
  under: { underline: true },
  unit: { color: tones.quiet, valign: 'top' },
  quiet: { color: tones.quiet },
  right: { align: 'right', valign: 'top' },
  key: { bold: true, numberFormat: '0.000', valign: 'top' },
  fine: { numberFormat: '0.0000', valign: 'top' },
  small: { numberFormat: '0.000000', valign: 'top' },
  correlation: { numberFormat: '0.0000000', valign: 'top' },
  millivolts: { numberFormat: '0.000_0', valign: 'top' },
  input: { ...input, numberFormat: '0.0###' },
  inputPercent: { ...input, numberFormat: '0.0%' },
};

/** Percent at which a probe of 18 points fills a page of Letter, and the sheet is narrower than one of A4 with wider letters too. */
const scale = 63;

const howToRead =
  'Numbers with a formula follow from the cells of their own block; the tinted cells may be changed.';
const out = { ...verdictShades.undetermined, bold: true } as const;

/** One block a calibration record: key figures, thresholds, findings, points, charts; formulas from the block's own cells. */
export function recordsSheet(
  report: Pick<Report, 'caution'> & Audited,
  all: readonly ShownRecord[],
): SheetModel {
  const advice = linesOf(report.caution);
  const headRows = 2 + advice.length;
  const formulas = formulaList();
  const blocks: Block[] = [];
  let bottom = headRows;
  for (const record of all) {
    const places = placesOf(record, bottom + 1);
    if (roomFor(places.bottom, 0) < places.bottom) break;
    blocks.push(blockOf(record, places, formulas));
    bottom = places.bottom;
  }
  const leftOut =
    blocks.length === all.length ? '' : ` Only the first ${blocks.length} of ${all.length} records fit.`;
  for (const block of blocks) numberFormulas(block);
  const verdict = columnOf('verdict');
  return {
    name: sheetNames.records,
    widths: [13, 11, 12, 12, 12, 12, 13, 13, 14, 2, 12, 12, 12, 12, 12, 12],
    styles,
    formulas: formulas.all,
    rowCount: bottom,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('records', report), 'title')] };
      for (const line of advice) yield { cells: [cell(line, 'cautionLine')] };
      yield { cells: [cell(howToRead + leftOut, 'subtitle')] };
      for (const block of blocks) yield* blockRows(block);
    },
    shades: shadesFor(
      { top: headRows + 1, bottom: Math.max(bottom, headRows + 1), left: verdict, right: verdict },
      { 'step out': out, 'deviation out': out, 'both out': out },
    ),
    charts: blocks.flatMap(({ record, places }) => recordCharts(record, places)),
    print: {
      landscape: false,
      scale,
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: Math.max(1, bottom), right: printedColumns },
      newPages: blocks.slice(1).map(({ places }) => places.top),
    },
  };
}

function* blockRows(block: Block): Generator<ModelRow> {
  const { record, places } = block;
  const under = Array.from({ length: printedColumns - 1 }, () => ({ value: null, style: 'under' }));
  yield { height: 22, cells: [cell(record.tag, 'tag'), ...under] };
  yield { cells: [cell(record.about.join(' · '), 'subtitle')] };
  yield* figureLines(block);
  yield empty;
  yield* thresholdLines(block);
  for (const text of blockTexts(record)) yield { cells: [cell(text, 'text')] };
  yield empty;
  yield* pointLines(block);
  for (let row = places.lastPoint; row < places.bottom; row++) yield empty;
}

/**
 * Has every formula of a block numbered before the sheet is written, rows being made anew each time they are asked for.
 * Throws an Error where the rows are not those that the places were worked out for.
 */
function numberFormulas(block: Block): void {
  const { top, bottom } = block.places;
  const made = [...blockRows(block)].length;
  if (made !== bottom - top + 1) throw new Error(`block of ${made} rows in the place of ${bottom - top + 1}`);
}

const empty: ModelRow = { cells: [] };

/** Headers of the thresholds and a line for each: the simple formula beside the curve. */
function thresholdLines(block: Block): ModelRow[] {
  const { thresholds, unit, levelUnit } = block.record;
  const headers = [
    'Threshold',
    'Multiplier m',
    `Setpoint S, ${levelUnit}`,
    `Configured Kc${thresholds.some(({ isOfGain }) => isOfGain) ? ' ÷ monitor gain' : ''}, mV/${unit}`,
    `Measured Km, mV/${unit}`,
    'Acts at: simple',
    'Acts at: on the curve',
    'Curve against simple',
    'Most the record can show',
  ];
  if (thresholds.length === 0) return [{ cells: [cell('No threshold to put on the curve', 'quiet')] }];
  const shifted = thresholds.some(({ zeroShift }) => zeroShift !== 0);
  return [
    {
      height: 30,
      cells: [
        ...headers.map((header, index) => cell(header, index === 0 ? 'header' : 'headerCentred')),
        undefined,
        shifted ? cell('Shift by the zero', 'headerCentred') : undefined,
      ],
    },
    ...thresholds.map((threshold) => thresholdLine(block, threshold)),
  ];
}

function thresholdLine({ styles: looks, calculated }: Block, threshold: ShownThreshold): ModelRow {
  const { name, multiplier, setpoint, configured, measured, zeroShift, simple, onCurve } = threshold;
  const level = `level${decimalsFor(setpoint)}`;
  const difference = simple === null || onCurve === null ? null : onCurve / simple - 1;
  return {
    cells: [
      cell(capital(name), 'strong'),
      cell(multiplier, 'factor'),
      cell(setpoint, level),
      cell(configured, looks.sensitivity),
      cell(measured, looks.sensitivity),
      calculated(simple, level, 'simple'),
      onCurve === null ? cell('not shown', 'right') : cell(onCurve, level),
      calculated(difference, 'signedPercent', 'difference'),
      cell(threshold.largestIndicated, level),
      undefined,
      zeroShift === 0 ? undefined : cell(zeroShift, level),
    ],
  };
}
