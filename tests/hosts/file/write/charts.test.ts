import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import type { ScatterChart } from '../../../../src/sheets/charts/model.ts';
import type { SheetModel } from '../../../../src/sheets/model.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import {
  chartedSheets,
  deviationChart,
  readings,
  recordSheet,
  thresholdChart,
  thresholds,
  voltsChart,
} from './chartedModel.ts';
import { sheetOf } from './model.ts';
import { partText } from './parts.ts';
import { objections } from './validator.ts';

/** The references of a chart part in order, each with its formula and cached points, parsed by saxes. */
function references(text: string): { formula: string; points: [number, string][] }[] {
  const found: { formula: string; points: [number, string][] }[] = [];
  const parser = new SaxesParser();
  let index = -1;
  let content = '';
  parser.on('opentag', ({ name, attributes }) => {
    content = '';
    if (name === 'c:numRef' || name === 'c:strRef') found.push({ formula: '', points: [] });
    if (name === 'c:pt') index = Number(attributes['idx']);
  });
  parser.on('text', (piece) => (content += piece));
  parser.on('closetag', ({ name }) => {
    const reference = found.at(-1);
    if (name === 'c:f' && reference) reference.formula = content;
    if (name === 'c:v' && reference && index >= 0) reference.points.push([index, content]);
    if (name === 'c:pt') index = -1;
  });
  parser.write(text).close();
  return found;
}

const chartText = (bytes: Uint8Array, number: number): string =>
  partText(bytes, `xl/charts/chart${number}.xml`);

/** A sheet of these rows with one chart that draws column B over column A. */
function drawn(rows: Parameters<typeof sheetOf>[1], rest: Partial<SheetModel> = {}): SheetModel {
  const column = (left: number) => ({ area: { top: 1, left, bottom: rows.length, right: left } });
  const [first] = voltsChart.series;
  const chart: ScatterChart = { ...voltsChart, series: [{ ...first!, x: column(1), y: column(2) }] };
  return sheetOf('Drawn', rows, { charts: [chart], ...rest });
}

describe('what a chart draws', () => {
  const bytes = newWorkbook(chartedSheets());

  it('leads to its cells and stands beside them, gaps left out', () => {
    const column = (at: number) =>
      readings.flatMap((row, index) => (row[at] === undefined ? [] : [[index, String(row[at])]]));
    expect(references(chartText(bytes, 1))).toEqual([
      { formula: "'Record'!$A$2:$A$7", points: column(0) },
      { formula: "'Record'!$B$2:$B$7", points: column(1) },
      { formula: "'Record'!$A$2:$A$7", points: column(0) },
      { formula: "'Record'!$C$2:$C$7", points: column(2) },
    ]);
  });

  it('may stand on another sheet of the run, written later', () => {
    const [categories, intended, , effective] = references(chartText(bytes, 3));
    const column = (at: number) =>
      thresholds.flatMap((row, index) => (row[at] === null ? [] : [[index, String(row[at])]]));
    expect(categories).toEqual({ formula: "'Pump''s thresholds'!$A$2:$A$5", points: column(0) });
    expect(intended!.points).toEqual(column(1));
    expect(effective).toEqual({ formula: "'Pump''s thresholds'!$C$2:$C$5", points: column(2) });
  });

  it('leads to the sheet under the name it got', () => {
    const sheetNames = ["PUMP'S THRESHOLDS", 'record'];
    const copy = addSheets(zipParts(smallParts({ sheetNames })), chartedSheets()).bytes;
    const formulas = [1, 3].map((number) => references(chartText(copy, number))[0]!.formula);
    expect(formulas).toEqual(["'Record (2)'!$A$2:$A$7", "'Pump''s thresholds (2)'!$A$2:$A$5"]);
  });

  it('is a sheet’s own cells where two sheets asked for one name', () => {
    const copy = newWorkbook([drawn([[1, 2]]), drawn([[3, 4]])]);
    expect([1, 2].flatMap((number) => references(chartText(copy, number)))).toEqual([
      { formula: "'Drawn'!$A$1", points: [[0, '1']] },
      { formula: "'Drawn'!$B$1", points: [[0, '2']] },
      { formula: "'Drawn (2)'!$A$1", points: [[0, '3']] },
      { formula: "'Drawn (2)'!$B$1", points: [[0, '4']] },
    ]);
  });

  it('is results of formulas, days as the workbook counts them, and no text among numbers', () => {
    const model = drawn(
      [
        [
          { value: 43_831, style: 'date' },
          { value: 0.1 + 0.2, formula: 0 },
        ],
        [{ value: 43_832, style: 'date' }, Infinity],
        [null, 'late'],
        [undefined, true],
      ],
      { formulas: ['1-A{r}'], styles: { date: { numberFormat: 'yyyy-mm-dd' } } },
    );
    const parts = zipParts(smallParts({ workbookHead: '<workbookPr date1904="1"/>' }));
    const { bytes: copy } = addSheets(parts, [model]);
    // 1,462 days between the systems (ECMA-376 part 1, section 18.17.4.1).
    expect(references(chartText(copy, 1)).map(({ points }) => points)).toEqual([
      [
        [0, String(43_831 - 1_462)],
        [1, String(43_832 - 1_462)],
      ],
      [[0, '0.30000000000000004']],
    ]);
    expect(chartText(copy, 1)).toContain('<c:formatCode>yyyy-mm-dd</c:formatCode>');
  });

  it('is a row where the cells are a row, and categories that are numbers', () => {
    const row = (top: number) => ({ area: { top, left: 1, bottom: top, right: 3 } });
    const charts = [
      { ...thresholdChart, series: [{ name: 'a', categories: row(1), values: row(2), color: '000000' }] },
    ];
    const copy = newWorkbook([
      sheetOf(
        'Row',
        [
          [2024, 2025, 2026],
          [1, undefined, 3],
        ],
        { charts },
      ),
    ]);
    expect(references(chartText(copy, 1))).toEqual([
      {
        formula: "'Row'!$A$1:$C$1",
        points: [
          [0, '2024'],
          [1, '2025'],
          [2, '2026'],
        ],
      },
      {
        formula: "'Row'!$A$2:$C$2",
        points: [
          [0, '1'],
          [2, '3'],
        ],
      },
    ]);
    expect(objections(copy)).toEqual([]);
  });
});

describe('the package', () => {
  const original = everythingParts();
  const before = unzipSync(zipParts(original));
  const copy = addSheets(zipParts(original), chartedSheets()).bytes;
  const after = unzipSync(copy);

  it('keeps the charts and drawings that were there, and all but four parts, to the byte', () => {
    const changed = Object.keys(before).filter(
      (name) => Buffer.compare(before[name]!, after[name] ?? new Uint8Array()) !== 0,
    );
    expect(changed.toSorted()).toEqual([
      '[Content_Types].xml',
      'xl/_rels/workbook.xml.rels',
      'xl/styles.xml',
      'xl/workbook.xml',
    ]);
  });

  it('gets parts under free numbers', () => {
    const added = Object.keys(after).filter((name) => !(name in before));
    expect(added.filter((name) => /chart|drawing/.test(name)).toSorted()).toEqual([
      'xl/charts/chart4.xml',
      'xl/charts/chart5.xml',
      'xl/charts/chart6.xml',
      'xl/charts/chart7.xml',
      'xl/drawings/_rels/drawing3.xml.rels',
      'xl/drawings/_rels/drawing4.xml.rels',
      'xl/drawings/drawing3.xml',
      'xl/drawings/drawing4.xml',
    ]);
  });

  it('does not give a new sheet the left-over links of one that is gone', () => {
    const parts = smallParts();
    parts['xl/worksheets/_rels/sheet2.xml.rels'] = parts['xl/_rels/workbook.xml.rels']!;
    const names = Object.keys(unzipSync(addSheets(zipParts(parts), [sheetOf('New', [[1]])]).bytes));
    expect(names).not.toContain('xl/worksheets/sheet2.xml');
    expect(names).toContain('xl/worksheets/sheet3.xml');
  });

  it('says nothing of drawings for sheets without charts', () => {
    const bytes = newWorkbook(chartedSheets());
    expect(partText(bytes, 'xl/worksheets/sheet1.xml')).toContain('<drawing r:id="rId1"/></worksheet>');
    expect(partText(bytes, 'xl/worksheets/sheet3.xml')).not.toMatch(/drawing|xmlns:r/);
  });

  it('is the same bytes for the same input', () => {
    expect(Buffer.compare(addSheets(zipParts(original), chartedSheets()).bytes, copy)).toBe(0);
  });
});

// Source: the schema and semantic checks of the Open XML SDK. Grade: the closest public stand-in for what programs accept.
describe('the Open XML SDK accepts charts', () => {
  it.each([
    ['in a workbook with one of nearly everything', zipParts(everythingParts())],
    ['in a strict workbook', zipParts(strictParts())],
    [
      'beside prefixed parts',
      zipParts(prefixed(smallParts(), ['xl/workbook.xml', 'xl/_rels/workbook.xml.rels'])),
    ],
  ])('%s', (_, original) => {
    expect(objections(addSheets(original, chartedSheets()).bytes)).toEqual([]);
  });

  it('of one point, of none, without titles, with every dash, marker and pattern', () => {
    const untitled = { ...deviationChart, title: '' };
    const [first] = deviationChart.series;
    const dashes = [{}, { dash: 'dash' }, { dash: 'dot' }, { dash: 'dashDot' }] as const;
    const shapes = ['circle', 'square', 'diamond', 'triangle', 'cross', 'plus'] as const;
    const charts = [
      { ...untitled, xAxis: {}, yAxis: {} },
      ...shapes.map((shape, index) => ({
        ...untitled,
        series: [
          {
            ...first!,
            line: { color: '00ff00', width: 0.25, ...dashes[index % dashes.length] },
            marker: { shape, size: 2 + index, color: '000000' },
          },
        ],
      })),
      ...(['diagonal', 'crossed', 'dotted'] as const).map((pattern) => ({
        ...thresholdChart,
        series: [{ ...thresholdChart.series[0]!, pattern, categories: first!.x, values: first!.y }],
      })),
    ];
    const bytes = newWorkbook([
      { ...recordSheet, charts },
      drawn([[1, 2]]),
      drawn([[undefined, undefined]]),
      drawn([], { charts: [thresholdChartOfNothing] }),
    ]);
    expect(objections(bytes)).toEqual([]);
  });

  it('by the hundred', () => {
    const charts = Array.from({ length: 100 }, (_, index) => ({
      ...deviationChart,
      place: { ...deviationChart.place, top: 10 + 20 * index, bottom: 27 + 20 * index },
    }));
    const records = Array.from({ length: 4 }, (_, index) => ({
      ...recordSheet,
      name: `Record ${index}`,
      charts,
    }));
    const bytes = newWorkbook(records);
    const names = Object.keys(unzipSync(bytes)).filter((name) => name.startsWith('xl/charts/'));
    expect(names).toHaveLength(400);
    expect(references(chartText(bytes, 400))[0]!.formula).toBe("'Record 3'!$A$2:$A$7");
    expect(objections(bytes)).toEqual([]);
  });
});

const thresholdChartOfNothing = {
  ...thresholdChart,
  series: [
    {
      name: '',
      categories: { area: { top: 1, left: 1, bottom: 1, right: 1 } },
      values: { area: { top: 1, left: 2, bottom: 1, right: 2 } },
      color: '000000',
    },
  ],
};

// ECMA-376 part 1, 20.5.2.33: an anchor runs from the left top of one cell, counted from 0, to that of another.
it('a chart covers its cells', () => {
  const drawing = partText(newWorkbook(chartedSheets()), 'xl/drawings/drawing1.xml');
  const corners = Array.from(
    drawing.matchAll(/<xdr:(from|to)><xdr:col>(\d+)<.*?<xdr:row>(\d+)</g),
    ([, which, column, row]) => [which, Number(column), Number(row)],
  );
  // A10:F27 and G10:M27.
  expect(corners).toEqual([
    ['from', 0, 9],
    ['to', 6, 27],
    ['from', 6, 9],
    ['to', 13, 27],
  ]);
});

describe('texts of a chart', () => {
  // XML 1.0, 2.2: these characters cannot stand in XML at all.
  it('are texts, whatever stands in them', () => {
    const title = '=1+1 <c:x/> & "a"\u0007\uD800';
    const charts = [{ ...voltsChart, title, alternativeText: `${title}\nsecond line` }];
    const bytes = newWorkbook([{ ...recordSheet, charts }]);
    expect(chartText(bytes, 1)).toContain('<a:t>=1+1 &lt;c:x/&gt; &amp; &quot;a&quot;\uFFFD\uFFFD</a:t>');
    let described: string | undefined;
    const parser = new SaxesParser();
    parser.on('opentag', ({ name, attributes }) => {
      if (name === 'xdr:cNvPr') described = attributes['descr'];
    });
    parser.write(partText(bytes, 'xl/drawings/drawing1.xml')).close();
    expect(described).toBe('=1+1 <c:x/> & "a"\uFFFD\uFFFD\nsecond line');
    expect(objections(bytes)).toEqual([]);
  });

  it('end in an ellipsis where they are too long, the alternative text excepted', () => {
    const long = 'x'.repeat(300);
    const charts = [{ ...voltsChart, title: long, alternativeText: long, xAxis: { title: long } }];
    const bytes = newWorkbook([{ ...recordSheet, charts }]);
    expect(strFromU8(unzipSync(bytes)['xl/charts/chart1.xml']!).match(/x{254}…/g)).toHaveLength(2);
    expect(partText(bytes, 'xl/drawings/drawing1.xml')).toContain(`descr="${long}"`);
  });
});

describe('a chart that contradicts itself', () => {
  const [measured, rated] = voltsChart.series;
  const charting = (rest: Partial<ScatterChart>): SheetModel => ({
    ...recordSheet,
    charts: [{ ...voltsChart, title: 'Volts', ...rest }],
  });
  const area = { top: 1, left: 1, bottom: 6, right: 1 };
  it.each<[string, SheetModel]>([
    ['0 series', charting({ series: [] })],
    [
      'not draw from one row or one column',
      charting({ series: [{ ...rated!, x: { area: { ...area, right: 2 } } }] }),
    ],
    [
      'not draw from one row or one column',
      charting({ series: [{ ...rated!, x: { area: { ...area, top: 7 } } }] }),
    ],
    ['5 cells across and 6 up', charting({ series: [{ ...rated!, x: { area: { ...area, top: 2 } } }] })],
    ['sheet "Lost", which is not written', charting({ series: [{ ...rated!, x: { sheet: 'Lost', area } }] })],
    ['ends where it begins', charting({ xAxis: { min: 1, max: 1 } })],
    ['neither a line nor', charting({ series: [{ name: 'a', x: measured!.x, y: measured!.y }] })],
    ['line of 0 pt', charting({ series: [{ ...rated!, line: { color: '000000', width: 0 } }] })],
    [
      'markers of 2.5 pt',
      charting({ series: [{ ...measured!, marker: { ...measured!.marker!, size: 2.5 } }] }),
    ],
    ['colour "red"', charting({ series: [{ ...rated!, line: { color: 'red', width: 1 } }] })],
    ['its place', charting({ place: { ...area, top: 0 } })],
  ])('is an error: %s', (message, model) => {
    expect(() => newWorkbook([model])).toThrow(message);
  });
});
