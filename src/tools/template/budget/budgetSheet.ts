import { storedFormula } from '../../../hosts/formats/storedFormula.ts';
import { distributions } from '../../../method/uncertainty.ts';
import { tones } from '../../../sheets/style/palette.ts';
import type { CellStyle, ModelCell, ModelRow, SheetModel } from '../../../sheets/model.ts';
import type { Validation } from '../../demo/parts/validation.ts';
import { handKeptStyles } from '../../demo/sheets/writtenCell.ts';
import { type BudgetFormula, budgetFormulas, placeOf } from './budgetFormulas.ts';
import { budgetParts } from './budgetParts.ts';
import { budgetRows, headerRow, levelRow } from './budgetPlaces.ts';

export const budgetName = 'Uncertainty budget';

/** Level that a coverage factor of 2 stands for with the normal distribution: JCGM 100:2008 table G.1. */
const usualLevel = 0.9545;

const input = { fill: tones.input, underline: true } as const;
const styles: Readonly<Record<string, CellStyle>> = {
  ...handKeptStyles,
  part: { ...input, wrap: true, valign: 'top' },
  value: { ...input, valign: 'top' },
  word: { ...input, align: 'center', valign: 'top' },
  level: { ...input, numberFormat: '0.00%' },
  found: { numberFormat: '0.0000', valign: 'top' },
  share: { numberFormat: '0.0%', valign: 'top' },
  term: { numberFormat: '0.00E+00', valign: 'top' },
  degrees: { numberFormat: '0.0', align: 'right', valign: 'top' },
  label: { valign: 'top' },
  result: { bold: true },
  expanded: { bold: true, numberFormat: '0.00' },
  quiet: { color: tones.quiet },
};

const headers = [
  'Part',
  'Value ± [% of the sensitivity]',
  'Distribution',
  'Divisor',
  'Standard uncertainty [%]',
  'Degrees of freedom (blank: unlimited)',
  'Share of the variance',
  'u⁴ / degrees of freedom',
] as const;

/** An uncertainty budget of a measured sensitivity in native formulas, its values to be filled in. */
export function budgetSheet(): SheetModel {
  const rows = budgetSheetRows();
  return {
    name: budgetName,
    widths: [68, 15, 14, 10, 14, 14, 13, 14],
    styles,
    formulas: Object.values(budgetFormulas).map(storedFormula),
    rowCount: rows.length,
    rows: () => rows,
    freeze: { rows: headerRow, columns: 1 },
    print: { landscape: true },
  };
}

function budgetSheetRows(): readonly ModelRow[] {
  const count = budgetRows.last - budgetRows.first + 1;
  return [
    { cells: [{ value: budgetName, style: 'title' }] },
    said(
      'One budget for a way of calibrating: parts that do not depend on each other, each in percent of the sensitivity.',
    ),
    said(
      'normal: an expanded uncertainty with k = 2 · rectangular, triangular: the half-width of limits · standard: a standard deviation.',
    ),
    { cells: [] },
    { height: 45, cells: headers.map((value) => ({ value, style: 'header' })) },
    ...Array.from({ length: count }, (_, index) => partRow(index)),
    { cells: [] },
    outcome('Level of confidence', { value: usualLevel, style: 'level' }, '95.45 % is what k = 2 stands for'),
    outcome('Combined standard uncertainty [%]', worked('combined', 'found'), 'root of the sum of squares'),
    outcome('Effective degrees of freedom', worked('freedom', 'degrees'), 'by Welch–Satterthwaite'),
    outcome('Coverage factor k', worked('factor', 'found'), 'of the t distribution; for “Coverage factor”'),
    outcome(
      'Expanded uncertainty [% of the sensitivity]',
      worked('expanded', 'expanded'),
      'for “Uncertainty [%]” of the channel list',
    ),
    { cells: [] },
    said('Source of the formulas: JCGM 100:2008, 4.3, 5.1.2 and annex G.'),
  ];
}

function said(value: string): ModelRow {
  return { cells: [{ value, style: 'subtitle' }] };
}

function partRow(index: number): ModelRow {
  const part = budgetParts[index];
  return {
    cells: [
      { value: part?.name ?? null, style: 'part' },
      { value: null, style: 'value' },
      { value: part?.distribution ?? null, style: 'word' },
      worked('divisor', 'found'),
      worked('standard', 'found'),
      { value: null, style: 'value' },
      worked('share', 'share'),
      worked('freedomTerm', 'term'),
    ],
  };
}

function outcome(label: string, cell: ModelCell, remark: string): ModelRow {
  return {
    cells: [
      { value: label, style: 'result' },
      undefined,
      undefined,
      undefined,
      cell,
      undefined,
      { value: remark, style: 'quiet' },
    ],
  };
}

/** A formula of a budget that has no values yet. */
function worked(formula: BudgetFormula, style: string): ModelCell {
  return { value: '', style, formula: placeOf(formula) };
}

/** The rules for what may be typed into the budget. */
export function budgetValidations(): readonly Validation[] {
  const down = (column: number) => ({
    top: budgetRows.first,
    bottom: budgetRows.last,
    left: column,
    right: column,
  });
  return [
    {
      area: down(2),
      allowed: { atLeast: 0 },
      message: 'Value: a number, 0 or more, in percent of the sensitivity.',
    },
    {
      area: down(3),
      allowed: { words: distributions },
      message: `Distribution: one of ${distributions.join(', ')}.`,
    },
    {
      area: down(6),
      allowed: { above: 0 },
      message: 'Degrees of freedom: a number above 0; blank: unlimited.',
    },
    {
      area: { top: levelRow, bottom: levelRow, left: 5, right: 5 },
      allowed: { from: 0.5, to: 0.9999 },
      message: 'Level of confidence: from 50 % to 99.99 %.',
    },
  ];
}
