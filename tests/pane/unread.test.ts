import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parseColumnMap, type ColumnMap } from '../../src/audit/model/columnMap.ts';
import { keepMap, readKept } from '../../src/pane/audit/kept.ts';
import { isMarked, markOf, withMark, withoutMark } from '../../src/pane/audit/unread/Unread.tsx';
import { exampleWorkbook } from '../../src/pane/example/exampleWorkbook.ts';
import { memoryPort } from '../../src/pane/example/memoryPort.ts';
import { book, oneChannel, type Rows } from '../audit/book.ts';

const misspelt = oneChannel({ settings: { 'Full scael (mil)': 10, Remarks: 'as agreed' } });
const unreadIn = (of: Parameters<typeof audit>[0], map: ColumnMap = {}) => audit(of, { map }).notRead;

describe('a mark on what was not read', () => {
  it('settles a column, is kept in the workbook, and counts in the next audit', async () => {
    const [one, ...others] = unreadIn(misspelt);
    expect(one).toMatchObject({
      what: 'column',
      text: 'Full scael (mil)',
      sheet: 'Monitor',
      looksLike: 'full scale',
    });
    expect(others).toEqual([]);
    const mark = markOf(one!, [one!]);
    expect(mark).toEqual({ sheet: 'Monitor', column: 'Full scael (mil)' });

    const port = memoryPort(exampleWorkbook);
    await keepMap(port, withMark({}, mark));
    const { map, remarks } = await readKept(port);
    expect(remarks).toEqual([]);
    expect(isMarked(map, mark)).toBe(true);
    const after = audit(misspelt, { map });
    expect(after.notRead).toEqual([]);
    expect(after.attention.filter(({ code }) => code === 'not-read')).toEqual([]);
  });

  it('can be taken back', () => {
    const [one] = unreadIn(misspelt);
    const mark = markOf(one!, [one!]);
    const corrections: ColumnMap = { channels: { sheet: 'Channels' } };
    const map = withMark(corrections, mark);
    expect(withMark(map, mark)).toBe(map);
    expect(withoutMark(map, mark)).toEqual(corrections);
    expect(unreadIn(misspelt, withoutMark(map, mark))).toHaveLength(1);
  });

  it('names a column by its letters where its header is not its own, or reads as letters', () => {
    const base = unreadIn(misspelt)[0]!;
    const twin = { ...base, column: 'F' };
    expect(markOf(base, [base, twin])).toEqual({ sheet: 'Monitor', column: 'E' });
    const short = { ...base, text: 'FS' };
    expect(markOf(short, [short])).toEqual({ sheet: 'Monitor', column: 'E' });
  });

  const channels: Rows = [
    ['Tag', 'Measured sensitivity (mV/mil)'],
    ['V-1', 200],
    [null, 150],
  ];
  const monitor: Rows = [
    ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scael (mil)'],
    ['V-1', 200, 3, 5, 10],
    [null, 200, 3, 5, 10],
    [null, 200, 4, 6, 10],
  ];

  it('on a row settles that row alone, not its sheet', () => {
    const two = book(['Channels', channels], ['Monitor', monitor]);
    const before = unreadIn(two);
    const row = before.find(({ what, sheet }) => what === 'row' && sheet === 'Monitor')!;
    expect(markOf(row, before)).toEqual({ sheet: 'Monitor', row: 3 });
    const map = parseColumnMap(JSON.parse(JSON.stringify(withMark({}, markOf(row, before)))));
    const after = unreadIn(two, map);
    expect(after).toEqual(before.filter((one) => one !== row));
    expect(after.some(({ what, sheet }) => what === 'column' && sheet === 'Monitor')).toBe(true);
  });

  it('on a sheet settles the sheet', () => {
    const more = book(
      [
        'Channels',
        [
          ['Tag', 'Measured sensitivity (mV/mil)'],
          ['V-1', 200],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['V-1', 200, 3, 5],
        ],
      ],
      [
        'Old',
        [
          ['Point name', 'Danger (mil)', 'Alert (mil)'],
          ['a', 3, 5],
        ],
      ],
    );
    const [one] = unreadIn(more);
    expect(one).toMatchObject({ what: 'sheet', sheet: 'Old' });
    expect(markOf(one!, [one!])).toEqual({ sheet: 'Old' });
    expect(unreadIn(more, withMark({}, markOf(one!, [one!])))).toEqual([]);
  });
});
