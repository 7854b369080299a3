import { columnOf, type Column, type Draft, type Table, listsOf } from '../draft.ts';
import type { Channel } from '../scenario.ts';
import type { Chosen, Dimension } from './dimension.ts';
import { inRows } from './structure.ts';

const plainHeaders = (chosen: Chosen): boolean =>
  inRows(chosen) &&
  chosen['header depth'] === 'one row' &&
  chosen['rounds'] !== 'as found and as left as merged groups' &&
  chosen['rounds'] !== 'two years below one merged header';

/** In which order the columns stand: people put what they look for first where they like. */
export const columnOrder: Dimension = {
  name: 'column order',
  options: [
    { name: 'as drawn', weight: 6 },
    {
      name: 'shuffled in every table',
      weight: 2,
      fits: plainHeaders,
      silentlyWrong: 'a column taken by its place: danger for alert, or a number for the tag',
      apply: (draft) => {
        for (const table of draft.tables) table.columns = draft.random.shuffled(table.columns);
      },
    },
    {
      name: 'tag last',
      weight: 1,
      fits: plainHeaders,
      silentlyWrong: 'the first column taken for the tag',
      apply: (draft) => {
        for (const table of draft.tables) {
          const tag = columnOf(table, 'tag');
          if (tag) table.columns = [...table.columns.filter((column) => column !== tag), tag];
        }
      },
    },
  ],
};

/** Whether the channels of a machine stand together in a table, so that its name can be said once. */
function isGrouped(table: Table): boolean {
  const machines = table.lines.flatMap((line) => (line.is === 'channel' ? [line.channel.machine] : []));
  const runs = machines.filter((machine, index) => machines[index - 1] !== machine);
  return new Set(runs).size === runs.length && runs.length * 2 <= machines.length;
}

/** The name of a machine in the first of its rows alone, the cells below it left blank and not merged. */
export const machineNames: Dimension = {
  name: 'machine names',
  options: [
    { name: 'in every row', weight: 6 },
    {
      name: 'in the first row alone',
      weight: 2,
      fits: (chosen) =>
        inRows(chosen) &&
        chosen['machine'] === 'column' &&
        chosen['rows'] !== 'headers repeated' &&
        chosen['hidden'] !== 'rows of old values' &&
        chosen['channels twice'] === 'none',
      silentlyWrong: 'the machine of the rows below the first one lost, or tags of two machines joined',
      apply: (draft) => {
        for (const table of draft.tables.filter(isGrouped)) {
          const column = columnOf(table, 'machine');
          if (!column) continue;
          const firsts = new Map<string, Channel>();
          for (const line of table.lines)
            if (line.is === 'channel' && !firsts.has(line.channel.machine))
              firsts.set(line.channel.machine, line.channel);
          column.cell = (channel) => (firsts.get(channel.machine) === channel ? channel.machine : null);
        }
      },
    },
  ],
};

const nominal = {
  en: 'Nominal sensitivity',
  de: 'Nennempfindlichkeit',
  es: 'Sensibilidad nominal',
  fr: 'Sensibilité nominale',
  pt: 'Sensibilidade nominal',
  it: 'Sensibilità nominale',
} as const;

const deviation = {
  en: 'Deviation',
  de: 'Abweichung',
  es: 'Desviación',
  fr: 'Écart',
  pt: 'Desvio',
  it: 'Scostamento',
} as const;

const foreign = (header: string, unit: string | null, cell: Column['cell']): Column => ({
  meaning: 'other',
  header,
  unit,
  group: null,
  cell,
  stands: false,
});

const configuredIn = ({ units, configured }: Channel): number =>
  Number(((configured * units.configured.factor) / units.measured.factor).toPrecision(4));

/** What a sensitivity is compared with, beside it. */
export const comparisons: Dimension = {
  name: 'comparisons',
  options: [
    { name: 'none', weight: 6 },
    {
      name: 'nominal beside the measured one',
      weight: 1,
      fits: (chosen) =>
        chosen['structure'] !== 'X and Y in one row' &&
        chosen['rounds'] === 'once' &&
        chosen['role words'] === 'measured and configured said',
      silentlyWrong: 'the nominal sensitivity taken for the measured or the configured one',
      apply: (draft) => {
        besideMeasured(draft, (measured) =>
          foreign(nominal[draft.words.language], measured.unit, configuredIn),
        );
      },
    },
    {
      name: 'deviation in per cent',
      weight: 1,
      fits: (chosen) => chosen['structure'] !== 'X and Y in one row' && chosen['rounds'] === 'once',
      silentlyWrong: 'a deviation taken for a setpoint in per cent of full scale, or for a sensitivity',
      apply: (draft) => {
        besideMeasured(draft, () =>
          foreign(deviation[draft.words.language], '%', (channel) =>
            Number(((channel.measured / configuredIn(channel) - 1) * 100).toFixed(1)),
          ),
        );
      },
    },
  ],
};

function besideMeasured(draft: Draft, make: (measured: Column) => Column): void {
  for (const table of listsOf(draft)) {
    const measured = columnOf(table, 'measured sensitivity')!;
    table.columns.splice(table.columns.indexOf(measured) + 1, 0, {
      ...make(measured),
      group: measured.group,
    });
  }
}
