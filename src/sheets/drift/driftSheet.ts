import type { Report } from '../../audit/model/report.ts';
import { TWO_SIGMA } from '../../method/uncertainty.ts';
import { cell } from '../cells.ts';
import { formulaList } from '../formulaList.ts';
import { tones } from '../look/palette.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf } from '../look/print.ts';
import { decimalsFor } from '../look/significant.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { ModelCell, ModelRow, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { driftColumns, type Drifting, letterOf } from './driftColumns.ts';
import { DAYS_PER_YEAR } from '../../method/drift.ts';
import { linkAt, sourceOf } from '../links.ts';

const headers = [
  'Tag',
  'Sheet',
  'Found in',
  'Row',
  'Date',
  'Reading',
  'Unit',
  'Sensitivity',
  'Days from the first',
  'Counts',
] as const;

/** Headers of the readings; `readingColumn` names two of their columns. */
const readingHeaders: readonly (ModelCell | undefined)[] = headers.map((header) => cell(header, 'header'));

/** Where the policy's tolerance and the level of confidence stand. */
const tolerancePlace = { row: 5, column: 8, address: '$H$5' } as const;

const levelPlace = { row: 5, column: 11, address: '$K$5' } as const;

/** Columns of the readings below: their values and their days from the first that counts. */
const readingColumn = { sensitivity: 'H', days: 'I' } as const;

/** Row of the headers of the upper table. */
const headerRow = 6;
const input = { named: 'Tripdrift input', fill: tones.input, underline: true } as const;

/** The channels of a report whose drift was worked out, in its order. */
export function driftingChannels({ channels }: Report): Drifting[] {
  return channels.flatMap(({ tag, machine, location, sensitivity: { configured }, drift }) =>
    drift && configured !== null ? [{ tag, machine, location, configured, drift }] : [],
  );
}

/** One line a channel whose drift was worked out, with native formulas over its readings, which stand below. */
export function driftSheet(report: Report, drifting: readonly Drifting[]): SheetModel {
  const { caution, policy } = report;
  const formulas = formulaList();
  const firstReading = headerRow + drifting.length + 4;
  const places: { readonly of: Drifting; readonly first: number; readonly last: number }[] = [];
  let next = firstReading;
  for (const of of drifting) {
    const { readings } = of.drift;
    const skipped = readings.filter(({ counts }) => !counts).length;
    places.push({ of, first: next + skipped, last: next + readings.length - 1 });
    next += readings.length;
  }
  const lines = places.map(({ of, first, last }) => {
    const own = driftFormulas(first, last);
    const place = (id: string) => {
      const formula = own[id];
      return formula === undefined ? undefined : formulas.place(formula);
    };
    return lineOf(of, place);
  });
  return {
    name: sheetNames.drift,
    widths: driftColumns.map(({ width }) => width),
    styles: {
      ...frameStyles,
      ...levelStyles,
      correlation: { numberFormat: '0.000_0', valign: 'top' },
      input: { ...input, numberFormat: '0.00%' },
    },
    formulas: formulas.all,
    rowCount: next - 1,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('drift', report), 'title')] };
      yield { height: 30, cells: [cell(caution, 'caution')] };
      yield { height: 30, cells: [cell(reading, 'wrapped')] };
      yield { cells: constants('header', 'Tolerance', 'Level') };
      yield { cells: constants('input', policy.tolerance, TWO_SIGMA) };
      yield { height: 45, cells: driftColumns.map(({ header }) => cell(header, 'header')) };
      yield* lines;
      yield { cells: [] };
      yield { height: 20, cells: [cell('Readings', 'strong')] };
      yield { height: 30, cells: readingHeaders };
      for (const of of drifting) yield* readingRows(of);
    },
    freeze: { rows: headerRow, columns: 1 },
    table: {
      name: tableNames.drift,
      area: { top: headerRow, left: 1, bottom: headerRow + drifting.length, right: driftColumns.length },
    },
    merges: [2, 3].map((row) => ({ top: row, left: 1, bottom: row, right: driftColumns.length })),
    print: { landscape: true, footer: footerOf(report) },
  };
}

const reading =
  'Least-squares line of the sensitivity against time, all readings as equal; a year has 365.25 days. “Earliest” and “latest” are where the confidence band of the line meets the edge of the tolerance. Dates are as audited; the other figures follow the readings, the tolerance and the level. Readings from before a correction do not count. It is a forecast by a straight line, no promise.';

/** Two cells above the table that its formulas go by. */
function constants(
  style: string,
  tolerance: string | number,
  level: string | number,
): (ModelCell | undefined)[] {
  const cells: (ModelCell | undefined)[] = [];
  cells[tolerancePlace.column - 1] = cell(tolerance, style);
  cells[levelPlace.column - 1] = cell(level, style);
  return Array.from(cells);
}

function lineOf(of: Drifting, place: (id: string) => number | undefined): ModelRow {
  const decimals = decimalsFor(of.configured) + 1;
  const cells = driftColumns.map(({ id, value, style }): ModelCell | undefined => {
    const found = value(of);
    const look = style === 'level' || style === 'signed' ? `${style}${Math.min(decimals, 6)}` : style;
    const formula = found === null ? undefined : place(id);
    return formula === undefined ? cell(found, look) : { value: found, style: look, formula };
  });
  return { height: heightOf([of.machine, of.location], [23, 23]), cells };
}

/**
 * The formulas of a channel's line from its own readings, which stand in rows `first` to `last`, without the leading `=`;
 * `{r}` is the line's own row. The scatter is summed from the residuals, which keeps its digits where STEYX loses them.
 */
function driftFormulas(first: number, last: number): Readonly<Record<string, string>> {
  const down = (letter: string) => `$${letter}$${first}:$${letter}$${last}`;
  const [y, x] = [down(readingColumn.sensitivity), down(readingColumn.days)];
  const own = (id: Parameters<typeof letterOf>[0]) => `${letterOf(id)}{r}`;
  const [slope, intercept] = [`SLOPE(${y},${x})`, `INTERCEPT(${y},${x})`];
  return {
    count: `COUNT(${y})`,
    perYear: `${slope}*${DAYS_PER_YEAR}`,
    fraction: `${own('perYear')}/${own('configured')}`,
    coverage: `TINV(1-${levelPlace.address},${own('count')}-2)`,
    scatter: `SQRT(SUMPRODUCT((${y}-${intercept}-${slope}*${x})^2)/(${own('count')}-2))`,
    expanded: `${own('coverage')}*${own('scatter')}/SQRT(DEVSQ(${x}))*${DAYS_PER_YEAR}`,
    correlation: `CORREL(${y},${x})`,
    limit: `${own('configured')}*(1+SIGN(${own('perYear')})*${tolerancePlace.address})`,
    days: `(${own('limit')}-${intercept})/${slope}`,
  };
}

/** The readings of a channel, one a row, in the order of their dates; those from before a correction have no days. */
function* readingRows({ tag, configured, drift }: Drifting): Generator<ModelRow> {
  const { readings, unit } = drift;
  const start = dayOf(readings.find(({ counts }) => counts)?.date ?? '');
  const look = `level${Math.min(decimalsFor(configured) + 1, 6)}`;
  for (const { date, sensitivity, asLeft, from, sheet, row, counts } of readings) {
    yield {
      cells: [
        cell(tag, 'strong'),
        cell(sheet, 'text'),
        cell(from, 'text'),
        cell(row, 'countLink'),
        cell(date, 'text'),
        cell(asLeft ? 'as left' : 'as found', 'text'),
        cell(unit, 'text'),
        cell(sensitivity, look),
        cell(counts ? dayOf(date) - start : null, 'count'),
        cell(counts ? 'yes' : 'no', 'text'),
      ],
      links: linkAt(headers.indexOf('Row') + 1, sourceOf({ sheet, row })),
    };
  }
}

function dayOf(date: string): number {
  return Date.parse(date) / 86_400_000;
}
