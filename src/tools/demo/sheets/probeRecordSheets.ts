import type { ModelRow, SheetModel } from '../../../sheets/model.ts';
import {
  type DynamicCheck,
  dynamicChecks,
  metricRecords,
  type ProbeRecord,
  probeRecords,
  slippedRecord,
} from '../station/probeRecords.ts';
import { listSheet } from './listSheet.ts';
import { headerCells, type SheetColumn } from './sheetColumn.ts';
import { handKeptStyles, writtenCell } from './writtenCell.ts';

interface Reading {
  readonly record: ProbeRecord;
  readonly at: number;
}

const readingColumns: readonly SheetColumn<Reading>[] = [
  { header: 'Tag no.', width: 11, of: ({ record }) => record.tag },
  { header: 'Series', width: 10, of: ({ record }) => record.series },
  { header: 'Temperature (°C)', width: 12, of: ({ record }) => record.temperature },
  { header: 'Gap (mil)', width: 9, of: ({ record, at }) => record.gaps[at] },
  { header: 'Output (V)', width: 10, of: ({ record, at }) => record.volts[at] },
  { header: 'Taken on', width: 12, of: ({ record }) => record.taken },
];

const checkColumns: readonly SheetColumn<DynamicCheck>[] = [
  { header: 'Tag no.', width: 11, of: ({ tag }) => tag },
  { header: 'Displacement (mil p-p)', width: 13, of: ({ displacement }) => displacement },
  { header: 'Output (mV rms)', width: 10, of: ({ output }) => output },
  { header: 'Frequency (Hz)', width: 10, of: ({ frequency }) => frequency },
];

/** The station's calibration records: a long table, a sheet with a block a probe, and the checks on the shaker. */
export function probeRecordSheets(): readonly SheetModel[] {
  return [longTable(), metricBlocks(), shakerChecks()];
}

function longTable(): SheetModel {
  const readings = [...probeRecords, slippedRecord].flatMap((record) =>
    record.gaps.map((_, at): Reading => ({ record, at })),
  );
  return listSheet(
    'Probe records',
    'Micrometer readings of single probes, on a target of the shaft’s own alloy unless the remarks say otherwise',
    readingColumns,
    readings,
  );
}

function shakerChecks(): SheetModel {
  return listSheet(
    'Shaker checks',
    'Checks on the shaker, each level held for a minute; P303-1X on the shaker’s own target, not on the new sleeve’s alloy',
    checkColumns,
    dynamicChecks,
  );
}

/** Blocks side by side: the tag above each, then gap and output. */
function metricBlocks(): SheetModel {
  const across = (cells: (record: ProbeRecord) => readonly (number | string | undefined)[]) =>
    metricRecords.flatMap((record) => [...cells(record), undefined]).map(writtenCell);
  const readings = Math.max(...metricRecords.map(({ gaps }) => gaps.length));
  const rows: readonly ModelRow[] = [
    { cells: [{ value: 'K-201 probe records', style: 'title' }] },
    { cells: [{ value: 'Taken on 2026-02-11, as found', style: 'subtitle' }] },
    { cells: [] },
    { cells: across(({ tag }) => ['Tag', tag]) },
    {
      cells: metricRecords.flatMap(() => [
        ...headerCells([{ header: 'Gap (µm)' }, { header: 'Output (V)' }]),
        undefined,
      ]),
    },
    ...Array.from({ length: readings }, (_, at) => ({
      cells: across(({ gaps, volts }) => [gaps[at], volts[at]]),
    })),
  ];
  return {
    name: 'K-201 records',
    widths: metricRecords.flatMap(() => [11, 11, 4]),
    styles: handKeptStyles,
    formulas: [],
    rowCount: rows.length,
    rows: () => rows,
    print: { landscape: false },
  };
}
