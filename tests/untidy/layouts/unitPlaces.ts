import type { Cell } from '../../../src/cells/cell.ts';
import type { Draft, Table, UnitPlace } from '../draft.ts';
import type { Chosen, Dimension } from './dimension.ts';
import { inRows } from './structure.ts';

const everywhere =
  (place: UnitPlace) =>
  (draft: Draft): void => {
    for (const table of draft.tables) table.unitPlace = place;
  };

const labels = (chosen: Chosen): boolean => chosen['structure'] !== 'X and Y in one row';
const noYears = (chosen: Chosen): boolean => chosen['rounds'] !== 'two years below one merged header';

/** `Scale factor mV/mil; Alarm, Trip mil pp`: each unit with the headers that it holds for. */
function sentence(table: Table): string {
  const byUnit = new Map<string, string[]>();
  for (const { header, group, unit, unitInGroup } of table.columns) {
    if (unit === null) continue;
    const name = unitInGroup ? (group ?? header) : header;
    const names = byUnit.get(unit) ?? [];
    if (!names.includes(name)) names.push(name);
    byUnit.set(unit, names);
  }
  return [...byUnit].map(([unit, names]) => `${names.join(', ')}: ${unit}`).join('; ');
}

function unitsOf(tables: readonly Table[], meanings: readonly string[]): string[] {
  return [
    ...new Set(
      tables.flatMap(({ columns }) =>
        columns.flatMap(({ meaning, unit }) => (unit !== null && meanings.includes(meaning) ? [unit] : [])),
      ),
    ),
  ];
}

/** `All sensitivities in mV/mil, all levels in mil pp`, where one unit of each holds for all of the tables. */
function general(draft: Draft, tables: readonly Table[]): string {
  const sensitivities = unitsOf(tables, [
    'measured sensitivity',
    'configured sensitivity',
    'as-left sensitivity',
  ]);
  const levels = unitsOf(tables, ['alert', 'danger']);
  return [
    ...(sensitivities.length > 0 ? [`${draft.words.sensitivitiesIn} ${sensitivities.join(' / ')}`] : []),
    ...(levels.length > 0 ? [`${draft.words.levelsIn} ${levels.join(' / ')}`] : []),
  ].join(', ');
}

const oneUnit = (chosen: Chosen): boolean =>
  chosen['units'] !== 'measured mV/µm, configured mV/mil' &&
  chosen['units'] !== 'another in each block' &&
  chosen['setpoint form'] === 'in the unit';

export const unitPlaces: Dimension = {
  name: 'unit place',
  options: [
    { name: 'header, round brackets', weight: 6, apply: everywhere('header') },
    { name: 'header, square brackets', weight: 2, apply: everywhere('brackets') },
    { name: 'header, without brackets', weight: 2, apply: everywhere('words') },
    { name: 'row below the headers', weight: 2, fits: inRows, apply: everywhere('row') },
    {
      name: 'column beside',
      weight: 2,
      fits: (chosen) => labels(chosen) && noYears(chosen),
      silentlyWrong: 'one unit of the column used for all rows',
      apply: everywhere('column'),
    },
    {
      name: 'in the cells',
      weight: 1,
      fits: (chosen) => chosen['setpoint form'] === 'in the unit',
      silentlyWrong: 'a number in its own unit taken for one of the header',
      apply: everywhere('cell'),
    },
    {
      name: 'note above the table',
      weight: 2,
      fits: labels,
      silentlyWrong: 'another unit assumed by size',
      apply: (draft) => {
        everywhere('elsewhere')(draft);
        for (const table of draft.tables) table.above.push([sentence(table)] as Cell[]);
      },
    },
    {
      name: 'title of the sheet',
      weight: 1,
      fits: oneUnit,
      silentlyWrong: 'another unit assumed by size',
      apply: (draft) => {
        everywhere('elsewhere')(draft);
        const sheets = new Set<string>();
        for (const table of draft.tables) {
          if (sheets.has(table.sheet)) continue;
          sheets.add(table.sheet);
          table.above.unshift([
            `${draft.words.title} (${general(
              draft,
              draft.tables.filter(({ sheet }) => sheet === table.sheet),
            )})`,
          ]);
        }
      },
    },
    {
      name: 'legend on its own sheet',
      weight: 1,
      fits: oneUnit,
      silentlyWrong: 'another unit assumed by size',
      apply: (draft) => {
        everywhere('elsewhere')(draft);
        const names = [...new Set(draft.tables.map(({ sheet }) => sheet))];
        draft.sheets.push({
          name: 'Legend',
          hidden: false,
          first: true,
          rows: names.map((name) => [
            name,
            general(
              draft,
              draft.tables.filter(({ sheet }) => sheet === name),
            ),
          ]),
        });
      },
    },
    {
      name: 'legend by quantity',
      weight: 1,
      fits: oneUnit,
      silentlyWrong: 'another unit assumed by size',
      apply: (draft) => {
        everywhere('elsewhere')(draft);
        const { words, tables } = draft;
        const sensitivities = unitsOf(tables, [
          'measured sensitivity',
          'configured sensitivity',
          'as-left sensitivity',
        ]);
        draft.sheets.push({
          name: 'Notes',
          hidden: false,
          first: false,
          rows: [
            [words.sensitivity[0]!, sensitivities.join(' / ')],
            [words.setpoints[0]!.join(', '), unitsOf(tables, ['alert', 'danger']).join(' / ')],
          ],
        });
      },
    },
    {
      name: 'nowhere',
      weight: 0.5,
      // Zero to peak that is said nowhere is no truth that anybody can know.
      fits: (chosen) => oneUnit(chosen) && chosen['detection'] !== '0-p',
      asks: 'the units, which only the size of the numbers hints at',
      silentlyWrong: 'a unit assumed by the size of its numbers',
      apply: (draft) => {
        everywhere('elsewhere')(draft);
        draft.accept = ['ask'];
      },
    },
  ],
};
