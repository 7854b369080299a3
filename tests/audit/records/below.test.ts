import fc from 'fast-check';
import { expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import type { Sheet } from '../../../src/cells/sheet.ts';
import { book, listObject, type Rows, sheet } from '../book.ts';
import { at, now } from '../golden.ts';
import { gaps, rowsOf, straight } from '../recordSheets.ts';

/**
 * Records below the channel list or the settings, by hand. The lines are straight and through zero, so that a record of
 * 160 mV/mil has 160 mV/mil on average, and -8 V, the gap voltage of V-1, lies at 8000/160 = 50 mil; so do -10 V at
 * 200 mV/mil. Set for 200 mV/mil and 5 mil, V-1 acts at 5·200/160 = 6.25 mil, late; V-2 at 5 mil.
 */
const listHeader = ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'];
const [rowOf1, rowOf2]: Rows = [
  ['V-1', 160, -8],
  ['V-2', 200, -10],
];
const list: Rows = [listHeader, rowOf1!, rowOf2!];
const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'];
const settings: Rows = [settingsHeader, ['V-1', 200, 3, 5], ['V-2', 200, 3, 5]];
const [of1, of2] = [160, 200].map((sensitivity) => straight(sensitivity, gaps(20, 80, 10)));
const head = ['Gap (mil)', 'Output (V)'];
const block1: Rows = [head, ...of1!];
const block2: Rows = [head, ...of2!];
const longHead = ['Tag', ...head];
const long: Rows = [longHead, ...rowsOf(['V-1'], of1!), ...rowsOf(['V-2'], of2!)];

function moved(rows: Rows, columns: number): Rows {
  return rows.map((row) => [...Array.from({ length: columns }, () => null), ...row]);
}

function beside(left: Rows, right: Rows, from: number): Rows {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, row) => {
    const cells = left[row] ?? [];
    return [...cells, ...Array.from({ length: from - cells.length }, () => null), ...(right[row] ?? [])];
  });
}

function asText(rows: Rows): Rows {
  return rows.map((row) => row.map((cell) => (typeof cell === 'number' ? `${cell}` : cell)));
}

interface Layout {
  /** The sheet with the channel list, and a sheet with the settings where it has none. */
  readonly rows: Rows;
  readonly monitor?: Rows | null;
  readonly more?: Partial<Sheet>;
  /** Averages of the records found, mV/mil; both where left out. */
  readonly records?: Readonly<Record<string, number>>;
  /** Every channel; V-1 and V-2 where left out. */
  readonly channels?: readonly string[];
  readonly problems?: readonly string[];
}

const verdicts: Readonly<Record<string, string>> = { 'V-1': 'late', 'V-2': 'within', 'V-3': 'incomplete' };
const both: Readonly<Record<string, number>> = { 'V-1': 160, 'V-2': 200 };

const layouts: Readonly<Record<string, Layout>> = {
  'a block below a blank row, its tag beside the word tag': {
    rows: [...list, [], ['Tag', 'V-1'], ...block1],
    records: { 'V-1': 160 },
  },
  'a block right below the list, its tag beside the word tag': {
    rows: [...list, ['Tag', 'V-1'], ...block1],
    records: { 'V-1': 160 },
  },
  'a block right below the list, under its tag alone': {
    rows: [...list, ['V-1'], ...block1],
    records: { 'V-1': 160 },
  },
  'a block right below the list, under Tag: and its tag, units in a row': {
    rows: [...list, ['Tag: V-2'], ['Gap', 'Output'], ['mil', 'V'], ...of2!],
    records: { 'V-2': 200 },
  },
  'a block without a title does not take the tag of the row above': {
    rows: [...list, [], ...block1],
    records: {},
    problems: ['record-without-tag @ Both!A5'],
  },
  'two blocks, blank rows between': {
    rows: [...list, [], [], ['V-1'], ...block1, [], ['Probe V-2'], ...block2],
  },
  'two blocks without any blank row': {
    rows: [...list, ['Tag', 'V-1'], ...block1, ['Tag', 'V-2'], ...block2],
  },
  'two blocks beside each other': {
    rows: [...list, [], ...beside([['Tag', 'V-1'], ...block1], [['Tag', 'V-2'], ...block2], 3)],
  },
  'a block in the last columns of the list and beyond': {
    rows: [...list, [], ...moved([['Tag', 'V-1'], ...block1], 2)],
    records: { 'V-1': 160 },
  },
  'a block with lines of title': {
    rows: [
      ...list,
      [],
      ['Calibration record'],
      ['Tag', 'V-1'],
      ['Temperature (°C)', 21],
      ['Technician', 'on shift'],
      ...block1,
    ],
    records: { 'V-1': 160 },
  },
  'lines of title without a blank row: those above its tag are of the list, and said': {
    rows: [...list, ['Record of the probe'], ['Tag: V-1'], ['Serial no', 4711], ...block1],
    records: { 'V-1': 160 },
    problems: ['heading-or-remark @ Both!A4'],
  },
  'a title, a blank row, the headers': {
    rows: [...list, [], ['V-1'], [], ...block1],
    records: { 'V-1': 160 },
  },
  'a long table below blank rows': { rows: [...list, [], [], ...long] },
  'a long table right below the list': { rows: [...list, ...long] },
  'a long table under a title, series and more in its columns': {
    rows: [
      ...list,
      [],
      ['Probe records'],
      ['Tag', 'Series', 'Step', ...head],
      ...rowsOf(['V-1', 'as found', 1], of1!),
      ...rowsOf(['V-2', 'as left', 2], of2!),
    ],
  },
  'a long table, then a block': {
    rows: [...list, [], longHead, ...rowsOf(['V-2'], of2!), [], ['Tag', 'V-1'], ...block1],
  },
  'below the settings on their sheet': {
    rows: list,
    monitor: [...settings, [], ['Tag', 'V-1'], ...block1, ['Tag', 'V-2'], ...block2],
  },
  'both tables and records on one sheet': {
    rows: [...list, [], ...settings, [], ['Tag', 'V-1'], ...block1, [], longHead, ...rowsOf(['V-2'], of2!)],
    monitor: null,
  },
  'a record between the list and the settings': {
    rows: [...list, ['V-1'], ...block1, [], ...settings, ['V-2'], ...block2],
    monitor: null,
  },
  'both tables beside each other, a record below each': {
    rows: beside([...list, [], ['V-1'], ...block1], [...settings, [], ['V-2'], ...block2], 4),
    monitor: null,
  },
  'below a table that is both': {
    rows: [
      [...listHeader, ...settingsHeader.slice(1)],
      [...rowOf1!, 200, 3, 5],
      [...rowOf2!, 200, 3, 5],
      ['Tag', 'V-2'],
      ...block2,
      [],
      ...moved([['V-1'], ...block1], 3),
    ],
    monitor: null,
  },
  'a spreadsheet table with a record below it': {
    rows: [...list, [], ['V-1'], ...block1],
    more: { tables: [listObject('Channels', [1, 1, 3, 3])] },
    records: { 'V-1': 160 },
  },
  'spreadsheet tables below each other': {
    rows: [...list, [], ...long],
    more: { tables: [listObject('Channels', [1, 1, 3, 3]), listObject('Records', [5, 1, 19, 3])] },
  },
  'from a text file, where every cell is a text': {
    rows: asText([...list, ['V-1'], ...block1, [], ...long.filter(([tag]) => tag !== 'V-1')]),
    more: { plainText: { decimal: '.' } },
  },
  'the rows of the list go on below blank rows': {
    rows: [listHeader, rowOf1!, [], [], rowOf2!, [], ['V-1'], ...block1],
    records: { 'V-1': 160 },
  },
  'the list goes on below its header repeated, with a record on each page': {
    rows: [listHeader, rowOf1!, [], ['V-1'], ...block1, [], listHeader, rowOf2!, [], ['V-2'], ...block2],
    problems: ['header-repeated @ Both!A14'],
  },
  'a row of the list below a record is one of the list': {
    rows: [listHeader, rowOf1!, [], ['Tag', 'V-1'], ...block1, [], rowOf2!],
    records: { 'V-1': 160 },
  },
  'lines at the foot of a record are none of the list': {
    rows: [...list, [], ['Tag', 'V-1'], ...block1, [], ['Slope', 160], ['Read by', 'on shift']],
    records: { 'V-1': 160 },
  },
  'a note and a sum stay where they are, and are said': {
    rows: [...list, ['Gaps taken cold'], [null, 180], [], ['V-1'], ...block1],
    records: { 'V-1': 160 },
    problems: ['heading-or-remark @ Both!A4', 'row-without-tag @ Both!A5'],
  },
  'a channel with nothing but its tag, the headers right below': {
    rows: [listHeader, rowOf1!, ['V-2'], ...block2],
    records: { 'V-2': 200 },
  },
  'notes that speak of gap and volts end nothing': {
    rows: [
      ['Tag', 'Location', 'Note', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
      ['V-1', 'Gap', 'Volts', ...rowOf1!.slice(1)],
      ['V-2', 'Output', 'Gap (mil)', ...rowOf2!.slice(1)],
    ],
    records: {},
  },
  'notes that speak of gap and volts in a row without numbers end nothing': {
    rows: [
      ['Tag', 'Location', 'Note', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
      ['V-1', null, null, ...rowOf1!.slice(1)],
      ['V-3', 'Gap', 'Volts'],
      ['V-2', 10, -2, ...rowOf2!.slice(1)],
    ],
    records: {},
    channels: ['V-1', 'V-2', 'V-3'],
  },
  'a second row of headers is none of a record': {
    rows: [
      ['Tag', 'Location', 'Machine', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
      [null, 'Gap', 'Volts'],
      ['V-1', 50, -8, ...rowOf1!.slice(1)],
      [null, 'Gap', 'Volts'],
      ['V-2', 50, -10, ...rowOf2!.slice(1)],
    ],
    records: {},
    problems: ['row-without-tag @ Both!A2', 'row-without-tag @ Both!A4'],
  },
  'a record beside the list, and one above': {
    rows: [['Tag', 'V-2'], ...block2, [], ...beside(list, [['Tag', 'V-1'], ...block1], 4)],
  },
};

for (const [name, layout] of Object.entries(layouts)) {
  it(name, () => {
    const {
      rows,
      monitor = settings,
      more,
      records = both,
      channels = ['V-1', 'V-2'],
      problems = [],
    } = layout;
    const report = audit(
      book(sheet('Both', rows, more), ...(monitor ? [['Monitor', monitor] as const] : [])),
      { now },
    );
    expect(report.problems.map(at).toSorted()).toEqual(problems.toSorted());
    expect(report.channels.map(({ tag }) => tag).toSorted()).toEqual(channels);
    const read = report.channels.flatMap(({ tag, record }) => (record ? [[tag, record] as const] : []));
    expect(read.map(([tag]) => tag).toSorted()).toEqual(Object.keys(records));
    for (const [tag, record] of read) {
      expect(record.average).toBeCloseTo(records[tag]!, 9);
      expect(record.points).toHaveLength(7);
    }
    for (const { tag, verdict, record, inputs } of report.channels) {
      expect(`${tag} ${verdict}`).toBe(`${tag} ${verdicts[tag]}`);
      if (record && inputs.gapVoltage !== null) expect(record.operatingGap).toBeCloseTo(50, 9);
    }
  });
}

/** Notes of a channel; headers of gap and of volts beside each other are in layouts above. */
const notes = fc.constantFrom(null, 'Gap (mil)', 'Tag', 'V-1', 'As found', 'Volts and gap as found');
/** Rows of records and their titles, in columns of the list or partly beyond them. */
const ofRecords = fc.constantFrom<Rows[number][]>(
  [],
  ...[['Tag', 'V-1'], ['Tag: V-1'], ['V-1'], ['As found'], ['Slope', 160], ['Serial no', 4711], ['Page 2']],
  ...[head, longHead, [null, ...head], [null, null, ...head], ['Tag', null, null, ...head]],
  ...[
    ['Gap', 'Output'],
    ['mil', 'V'],
    [null, 'mil', 'V'],
    [null, null, null, ...head],
  ],
  ...[
    [10, -2],
    [20, -4],
    [null, 10, -2],
    [null, null, 10, -2],
    [null, null, null, 10, -2],
  ],
  ...[
    ['V-1', 10, -2],
    [null, 20, -4],
    ['V-1', null, null, 10, -2],
    ['V-1', null, null, 20, -4],
  ],
);

it('a row with a tag and its sensitivity is never lost without a word, whatever stands around it', () => {
  const channel = fc
    .tuple(notes, notes, fc.constantFrom(null, 5, -10, 'n/a'))
    .map(([one, other, gap]) => ({ more: [one, other, 200, gap] }));
  const rows = fc.array(fc.oneof(channel, ofRecords), { minLength: 2, maxLength: 14 });
  const property = fc.property(rows, (below) => {
    const named: Rows = below.map((row, at) => ('more' in row ? [`C-${at}`, ...row.more] : row));
    const workbook = book(
      ['Both', [['Tag', 'Location', 'Note', ...listHeader.slice(1)], ['V-1', null, null, 160, -8], ...named]],
      ['Monitor', settings],
    );
    let report;
    try {
      report = audit(workbook, { now });
    } catch (error) {
      // Two rows of one tag: which of them counts is asked before anything is judged.
      expect(String(error)).toMatch(/lines name V-1\. Is row .* in force\?/u);
      return;
    }
    const audited = new Set(report.channels.map(({ tag }) => tag));
    for (const [tag] of named) {
      if (typeof tag !== 'string' || !tag.startsWith('C-') || audited.has(tag)) continue;
      const said = report.problems.filter(
        ({ rule, message }) => message.includes(`'${tag}'`) || rule === 'records-of-one-point',
      );
      expect(said, tag).not.toEqual([]);
    }
  });
  fc.assert(property, { seed: 20_260_101, numRuns: 1_000 });
});
