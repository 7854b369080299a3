import { FileRefused, oneLine } from '../zip/refused.ts';

/** Why rows of a sheet stay as they are: a change would hold in some programs and not in others. */
export function alternativesRefused(sheet: string): FileRefused {
  return new FileRefused(
    `Sheet “${oneLine(sheet)}”: its rows stand in the file in two versions for different programs, so they can’t be changed here. Save the workbook in a spreadsheet program and try again.`,
  );
}
