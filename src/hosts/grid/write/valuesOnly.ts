import type { ICommandInfo, IWorksheetData } from '@univerjs/core';
import type { Grid } from '../grid.ts';

const mark = { valuesOnly: true } as const;

/** What is kept beside a sheet that shows the results of formulas it does not have. */
export const keptOfValuesOnly: Readonly<Record<string, boolean>> = mark;

/** Calls back with the name of each sheet that comes into the grid showing results of formulas it does not have. */
export function onValuesOnly(grid: Grid, listener: (sheet: string) => void): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as ICommandInfo<{ sheet?: Partial<IWorksheetData> }>;
    if (id !== 'sheet.mutation.insert-sheet') return;
    const { custom, name = '' } = params?.sheet ?? {};
    if (custom?.['valuesOnly'] === mark.valuesOnly) listener(name);
  });
  return () => {
    heard.dispose();
  };
}
