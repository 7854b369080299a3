import type { SheetView, ViewCell, ViewRow } from '../hosts/file/view/types.ts';
import { sheetNames, titleOf } from '../sheets/titles.ts';

/** Looks of the sheet, by their place in the list. */
export const tryItStyles = [
  { numberFormat: 'General', font: 'Calibri', size: 11 },
  { numberFormat: 'General', font: 'Calibri', size: 11, color: '5B6770', bold: true },
  { numberFormat: 'General', font: 'Calibri', size: 11, color: '5B6770' },
  { numberFormat: 'General', font: 'Calibri', size: 11, bold: true, fill: 'E3E8EB', wrap: true },
  { numberFormat: 'General', font: 'Calibri', size: 11, fill: 'FFF9E8' },
  { numberFormat: '0.00', font: 'Calibri', size: 11 },
  { numberFormat: '+0.0%;-0.0%;0.0%', font: 'Calibri', size: 11 },
  { numberFormat: 'General', font: 'Calibri', size: 16, bold: true, color: '1F2A33' },
  { numberFormat: 'General', font: 'Calibri', size: 14, bold: true, fill: 'FFD479' },
] as const;
const look = {
  plain: 0,
  title: 1,
  quiet: 2,
  header: 3,
  input: 4,
  level: 5,
  percent: 6,
  story: 7,
  cause: 8,
} as const;

const header = [
  'Channel',
  'Danger (mil)',
  'Configured (mV/mil)',
  'Measured (mV/mil)',
  'Acts at (mil)',
  'Shift',
  'Verdict',
  'Panel shows at intent (mil)',
];

/** Invented channels: low sensitivity, nearly right, high, and one whose measurement is missing. */
const channels: readonly (readonly [string, number, number, number | null])[] = [
  ['K1-1X', 5, 200, 160],
  ['K1-1Y', 5, 200, 198],
  ['K1-2X', 5, 200, 231],
  ['K1-2Y', 5, 200, null],
];

const firstRow = 6;
const lastRow = firstRow + channels.length - 1;

/** The cell that makes the first channel late. */
export const cause = { row: firstRow, column: 4 } as const;

/** What the first channel really does, in a sentence that follows the cells. */
const story = `IFERROR("K1-1X is set to trip at "&B6&" mil. It really trips at "&ROUND(E6,2)&" mil"&IF(G6="late",": too late.",IF(G6="early",": too early.",".")),"K1-1X is not known: a number is missing in row 6.")`;

/** Why, and what to try next. */
const why = `IF(D6=C6,"The probe chain gives what the monitor counts on. Type 160 back into D6 and see it trip late.","D6 causes it: the probe chain gives "&D6&" mV/mil, the monitor counts on "&C6&". Type "&C6&" into D6 and see what changes.")`;

function down(column: string): string {
  return `${column}${firstRow}:${column}${lastRow}`;
}

/**
 * A sheet of live functions to play with, in the page alone: it is no part of the demo's file, and by its title no input of an audit. One formula a column fills
 * the rows below it.
 */
export function tryItSheet(styleBase: number): SheetView {
  const text = (column: number, value: string, style: number): ViewCell => ({
    column,
    value,
    style: styleBase + style,
  });
  const formula = (column: number, call: string, style: number): ViewCell => ({
    column,
    value: null,
    formula: call,
    style: styleBase + style,
  });
  const spills = [
    formula(5, `TRIPDRIFT.EFFECTIVE(${down('B')},${down('C')},${down('D')})`, look.level),
    formula(6, `TRIPDRIFT.SHIFTFRACTION(${down('C')},${down('D')})`, look.percent),
    formula(7, `TRIPDRIFT.VERDICT(${down('C')},${down('D')},0.05,0.03)`, look.plain),
    formula(8, `TRIPDRIFT.INDICATED(${down('B')},${down('C')},${down('D')})`, look.level),
  ];
  const filler = [look.level, look.percent, look.plain, look.level].map((style, index): ViewCell => ({
    column: 5 + index,
    value: null,
    style: styleBase + style,
  }));
  const rows: ViewRow[] = [
    { row: 1, cells: [text(1, titleOf('try it'), look.title)] },
    { row: 2, height: 30, cells: [formula(1, story, look.story)] },
    {
      row: 3,
      cells: [formula(1, why, look.plain)],
    },
    {
      row: 4,
      cells: [text(1, 'This sheet is no part of the file. Advisory only; all numbers invented.', look.quiet)],
    },
    { row: 5, height: 32, cells: header.map((word, index) => text(index + 1, word, look.header)) },
    ...channels.map(([tag, ...numbers], index): ViewRow => ({
      row: firstRow + index,
      cells: [
        text(1, tag, look.plain),
        ...numbers.map((value, column): ViewCell => ({
          column: column + 2,
          value,
          style: styleBase + (index === 0 && column + 2 === cause.column ? look.cause : look.input),
        })),
        ...(index === 0 ? spills : filler),
      ],
    })),
    { row: lastRow + 2, cells: [text(1, 'Type a formula of your own, such as', look.quiet)] },
    {
      row: lastRow + 3,
      cells: [
        text(1, '=TRIPDRIFT.EFFECTIVE(5,200,160)', look.quiet),
        formula(5, 'TRIPDRIFT.EFFECTIVE(5,200,160)', look.level),
      ],
    },
    {
      row: lastRow + 4,
      cells: [
        text(1, '=TRIPDRIFT.BAND(5,200,160,0.03)', look.quiet),
        formula(5, 'TRIPDRIFT.BAND(5,200,160,0.03)', look.level),
        { column: 6, value: null, style: styleBase + look.level },
      ],
    },
  ];
  const widths = [90, 90, 100, 100, 100, 90, 110, 130];
  return {
    name: sheetNames['try it'],
    hidden: false,
    rows,
    columns: widths.map((width, index) => ({ first: index + 1, last: index + 1, width })),
    defaultColumnWidth: 88,
    defaultRowHeight: 15,
    merges: [],
    frozen: { rows: 0, columns: 0 },
    showGridLines: true,
    tables: [],
  };
}
