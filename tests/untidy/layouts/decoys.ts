import { DateCell } from '../../../src/cells/cell.ts';
import type { Column, Draft } from '../draft.ts';
import { tablesOf } from '../draft.ts';
import type { Dimension } from './dimension.ts';

const other = (header: string, cell: Column['cell']): Column => ({
  meaning: 'other',
  header,
  unit: null,
  group: null,
  cell,
  stands: false,
});

/** A number that follows from the channel alone, so that it is the same wherever it stands. */
function numbered(draft: Draft, from: number, step: number): Column['cell'] {
  return (channel) => from + step * draft.channels.indexOf(channel);
}

export const otherColumns: Dimension = {
  name: 'other columns',
  options: [
    { name: 'none', weight: 6 },
    {
      name: 'serial and order numbers',
      weight: 2,
      silentlyWrong: 'a serial number taken for a quantity or a tag',
      apply: (draft) => {
        const { words, random } = draft;
        const [list] = tablesOf(draft, 'channels');
        for (const table of tablesOf(draft, 'channels')) {
          table.columns.push(
            other(list ? words.serial[0]! : '', numbered(draft, random.whole(31_000, 90_000), 17)),
          );
        }
        for (const table of tablesOf(draft, 'settings').filter(({ part }) => part === 'settings')) {
          table.columns.push(other(words.order[0]!, numbered(draft, 4_500, 1)));
        }
      },
    },
    {
      name: 'remarks with numbers',
      weight: 1,
      silentlyWrong: 'a number out of a remark',
      apply: (draft) => {
        for (const table of tablesOf(draft, 'channels')) {
          table.columns.push(
            other(draft.words.remark[0]!, (channel) =>
              draft.channels.indexOf(channel) % 3 === 0 ? `cable 9 m, was 201 in 2019` : null,
            ),
          );
        }
      },
    },
    {
      name: 'coverage factor k',
      weight: 1,
      silentlyWrong: 'k = 2 taken for a sensitivity',
      apply: (draft) => {
        for (const table of tablesOf(draft, 'channels')) table.columns.push(other('k', () => 2));
      },
    },
  ],
};

const day = (year: number, month: number): DateCell =>
  new DateCell(Date.UTC(year, month - 1, 12) / 86_400_000);

export const otherSheets: Dimension = {
  name: 'other sheets',
  options: [
    { name: 'none', weight: 6 },
    {
      name: 'phone list and cover',
      weight: 1,
      apply: (draft) => {
        draft.sheets.push(
          {
            name: 'Cover',
            first: true,
            hidden: false,
            rows: [['Protection data book'], ['Rev', 4], ['Sheets', 5]],
          },
          {
            name: 'Phones',
            first: false,
            hidden: false,
            rows: [
              ['Name', 'Ext.'],
              ['Shift A', 4410],
              ['Shift B', 4411],
              ['Control room', 4400],
            ],
          },
        );
      },
    },
    {
      name: 'spare parts',
      weight: 1,
      silentlyWrong: 'a row of the stores list judged or joined',
      apply: (draft) => {
        draft.sheets.push({
          name: 'Stores',
          first: draft.random.chance(0.4),
          hidden: false,
          rows: [
            ['Item', 'Description', 'Stock', 'Min'],
            [10, 'probe 8 mm, 1 m cable', 3, 2],
            [20, 'extension cable 8 m', 2, 2],
            [30, 'driver 9 m', 1, 1],
          ],
        });
      },
    },
    {
      name: 'revision log with tags',
      weight: 1,
      silentlyWrong: 'settings of the log taken for those in force',
      apply: (draft) => {
        draft.sheets.push({
          name: 'Revisions',
          first: false,
          hidden: false,
          rows: [
            ['Rev', 'Date', 'Tag', 'Text'],
            ...draft.channels
              .slice(0, 3)
              .map(({ tag, danger, units }, index) => [
                index + 1,
                day(2024, index + 2),
                tag,
                `danger ${String(danger * 1.2)} to ${String(danger)} ${units.displacement.text}`,
              ]),
          ],
        });
      },
    },
  ],
};
