import type { ModelCell, ModelRow, ModelValue, SheetModel } from '../../../../src/sheets/model.ts';

/** A sheet model of the given rows; everything else is plain unless said otherwise. */
export function sheetOf(
  name: string,
  rows: readonly (readonly (ModelCell | ModelValue | undefined)[])[],
  rest: Partial<SheetModel> = {},
): SheetModel {
  return {
    name,
    widths: [],
    styles: {},
    formulas: [],
    rowCount: rows.length,
    *rows(): Generator<ModelRow> {
      for (const row of rows) yield { cells: row.map(asCell) };
    },
    print: { landscape: true },
    ...rest,
  };
}

function asCell(cell: ModelCell | ModelValue | undefined): ModelCell | undefined {
  if (cell === undefined) return undefined;
  return cell !== null && typeof cell === 'object' ? cell : { value: cell };
}

const channels = [
  ['P-1X', 5, 200, 160],
  ['P-1Y', 5, 200, 203.7],
  ['F-2X', 0.1, 7.87, 7.123456789012345],
] as const;

/**
 * A result sheet that uses every feature of the model: `G` of each row is the setpoint times the ratio of the two
 * sensitivities, and the total leads to the sheet itself by name.
 */
export function resultSheet(name = 'Audit results'): SheetModel {
  const last = channels.length + 1;
  const rows: ModelRow[] = [
    {
      height: 30,
      cells: ['Tag', 'Setpoint', 'Configured', 'Measured', 'Verdict', 'Blank', 'Effective'].map((value) => ({
        value,
        style: 'header',
      })),
    },
    ...channels.map(([tag, setpoint, configured, measured]) => ({
      cells: [
        { value: tag, style: 'text' },
        { value: setpoint, style: 'number' },
        { value: configured, style: 'number' },
        { value: measured, style: 'number' },
        { value: measured < configured ? 'late' : 'early' },
        undefined,
        { value: (setpoint * configured) / measured, style: 'number', formula: 0 },
      ],
    })),
    {
      cells: [
        { value: '=1+1' },
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        {
          value: channels.reduce(
            (sum, [, setpoint, configured, measured]) => sum + (setpoint * configured) / measured,
            0,
          ),
          formula: 1,
        },
        { value: 'P-1X late', formula: 2 },
        { value: true, formula: 3 },
      ],
    },
  ];
  return {
    name,
    widths: [14, 10, 10, 10, 10, 3, 12],
    styles: {
      header: {
        bold: true,
        color: 'FFFFFF',
        fill: '1F4E78',
        wrap: true,
        valign: 'top',
        align: 'center',
        underline: true,
      },
      text: { numberFormat: '@' },
      number: { numberFormat: '0.0000', italic: true, size: 9 },
    },
    formulas: ['B{r}*C{r}/D{r}', `SUM({${name}}!$G$2:$G$${last})`, 'A2&" "&E2', `AND(G{r}>G$2,B$2<>"<5>")`],
    rowCount: rows.length,
    rows: () => rows,
    freeze: { rows: 1, columns: 1 },
    filter: { top: 1, left: 1, bottom: last, right: 7 },
    merges: [{ top: last + 1, left: 1, bottom: last + 1, right: 3 }],
    shades: [
      {
        area: { top: 2, left: 5, bottom: last, right: 5 },
        equals: 'late',
        style: { fill: 'F8CBAD', bold: true },
      },
      {
        area: { top: 2, left: 5, bottom: last, right: 5 },
        equals: 'say "early"',
        style: { color: '006100' },
      },
    ],
    print: { landscape: true, repeatRows: { from: 1, to: 1 }, footer: 'Advisory only & not a calibration' },
  };
}
