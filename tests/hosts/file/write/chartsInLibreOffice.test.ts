import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { afterAll, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../../../src/hosts/file/write/newWorkbook.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { chartedSheets, deviationChart, readings, thresholds, voltsChart } from './chartedModel.ts';

const folder = mkdtempSync(join(tmpdir(), 'charted-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
let files = 0;

/** A chart as LibreOffice saves it in an OpenDocument spreadsheet. */
interface SavedChart {
  readonly kind: string;
  readonly texts: readonly string[];
  /** What its styles say, as `chart:minimum=0`. */
  readonly looks: readonly string[];
  readonly series: readonly { readonly values: string; readonly name: string }[];
  /** The table of what it draws, without its header: one row a point; `NaN` where nothing stands. */
  readonly table: readonly (readonly (number | string)[])[];
}

function savedChart(content: string): SavedChart {
  let kind = '';
  let cell: number | string | undefined;
  const texts: string[] = [];
  const looks: string[] = [];
  const series: { values: string; name: string }[] = [];
  const table: (number | string)[][] = [];
  let paragraph = '';
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    paragraph = '';
    if (name === 'style:chart-properties' || name === 'style:graphic-properties')
      looks.push(...Object.entries(attributes).map(([key, value]) => `${key}=${value}`));
    if (name === 'chart:chart') kind = attributes['chart:class'] ?? '';
    if (name === 'chart:series')
      series.push({
        values: attributes['chart:values-cell-range-address'] ?? '',
        name: attributes['loext:label-string'] ?? '',
      });
    if (name === 'table:table-row') table.push([]);
    if (name === 'table:table-cell') {
      cell = attributes['office:value-type'] === 'float' ? Number(attributes['office:value']) : undefined;
    }
  });
  parser.on('text', (piece) => (paragraph += piece));
  parser.on('closetag', ({ name }) => {
    if (name === 'text:p' && table.length === 0) texts.push(paragraph);
    if (name === 'text:p') cell ??= paragraph;
    if (name === 'table:table-cell') table.at(-1)?.push(cell ?? '');
  });
  parser.write(content).close();
  return { kind, texts, looks, series, table: table.slice(1) };
}

/** Charts and descriptions of a workbook that LibreOffice opened and saved again, in order. */
function throughLibreOffice(bytes: Uint8Array): { charts: SavedChart[]; descriptions: string[] } {
  const path = join(folder, `book${++files}.xlsx`);
  writeFileSync(path, bytes);
  const parts = unzipSync(readFileSync(convert(path, 'ods', folder)));
  const text = (name: string): string => strFromU8(parts[name]!);
  const charts = Object.keys(parts)
    .filter((name) => /^Object \d+\/content\.xml$/.test(name))
    .sort((one, other) => Number(/\d+/.exec(one)![0]) - Number(/\d+/.exec(other)![0]))
    .map((name) => savedChart(text(name)));
  const descriptions: string[] = [];
  const parser = new SaxesParser();
  let content = '';
  parser.on('opentag', () => (content = ''));
  parser.on('text', (piece) => (content += piece));
  parser.on('closetag', ({ name }) => {
    if (name === 'svg:desc') descriptions.push(content);
  });
  parser.write(text('content.xml')).close();
  return { charts, descriptions };
}

// Source: LibreOffice's own reading of the file. Grade: an independent peer.
describeWithLibreOffice('LibreOffice opens charts and draws what stands in the cells', () => {
  const number = (value: number | null | undefined): number => value ?? NaN;

  it.each([
    ['a new workbook', newWorkbook(chartedSheets()), 'Record', "'Pump''s thresholds'", 0],
    [
      'a strict workbook',
      addSheets(zipParts(strictParts()), chartedSheets()).bytes,
      'Record',
      "'Pump''s thresholds'",
      0,
    ],
    [
      'a workbook with sheets of the same names',
      addSheets(zipParts(smallParts({ sheetNames: ['Record', "Pump's thresholds"] })), chartedSheets()).bytes,
      "'Record (2)'",
      "'Pump''s thresholds (2)'",
      0,
    ],
    // Two charts on a sheet and one on a chart sheet come first.
    [
      'a workbook with charts of its own',
      addSheets(zipParts(everythingParts()), chartedSheets()).bytes,
      'Record',
      "'Pump''s thresholds'",
      3,
    ],
  ])('in %s', (_, bytes, record, pump, others) => {
    const { charts, descriptions } = throughLibreOffice(bytes);
    expect(charts).toHaveLength(others + 4);
    const [volts, deviation, lying, standing] = charts.slice(others);
    expect(charts.slice(others).map(({ kind }) => kind)).toEqual([
      'chart:scatter',
      'chart:scatter',
      'chart:bar',
      'chart:bar',
    ]);
    expect(volts!.texts).toEqual([voltsChart.title, 'Gap, mm', 'Output, V']);
    expect(deviation!.texts).toEqual(['Deviation', 'Gap, mm', 'Deviation, µm']);
    expect(volts!.series).toEqual([
      { values: `${record}.B2:${record}.B7`, name: '"measured"' },
      { values: `${record}.C2:${record}.C7`, name: '"rated"' },
    ]);
    expect(volts!.table.map((row) => row.slice(1))).toEqual(
      readings.map(([gap, measured, rated]) => [gap, number(measured), rated]),
    );
    expect(deviation!.table.map((row) => row.slice(1))).toEqual(
      readings.map(([gap, , , difference, upper, lower]) => [gap, number(difference), upper, lower]),
    );
    for (const bars of [lying!, standing!]) {
      expect(bars.series.map(({ values }) => values)).toEqual(
        ['B', 'C'].map((letter) => `${pump}.${letter}2:${pump}.${letter}5`),
      );
      expect(bars.table).toEqual(
        thresholds.map(([tag, intended, effective]) => [tag, intended, number(effective)]),
      );
    }
    expect(volts!.looks).toEqual(
      expect.arrayContaining([
        'chart:minimum=0',
        'chart:maximum=1.75',
        'chart:treat-empty-cells=leave-gap',
        'chart:symbol-name=circle',
        'draw:stroke=dash',
      ]),
    );
    // A chart draws hidden cells too unless this says otherwise (OpenDocument 1.3, 20.23).
    expect(volts!.looks).not.toContain('chart:include-hidden-cells=false');
    expect(deviation!.looks).toEqual(
      expect.arrayContaining(['chart:minimum=-50', 'chart:maximum=50', 'chart:symbol-name=square']),
    );
    // Lying bars have the first category at the top and their numbers below it.
    expect(lying!.looks).toEqual(
      expect.arrayContaining([
        'chart:vertical=true',
        'chart:reverse-direction=true',
        'chart:axis-position=end',
        'draw:fill=hatch',
      ]),
    );
    expect(standing!.looks).not.toContain('chart:reverse-direction=true');
    expect(descriptions).toEqual(
      expect.arrayContaining([voltsChart.alternativeText, deviationChart.alternativeText]),
    );
  });
});
