import { cell } from '../cells.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { worstSentence } from './actions.ts';
import { countEntries, countHeaders, pageHeading } from './page.ts';
import { totalOf, worstWord } from './total.ts';
import type { FleetFile } from './types.ts';

/** What the sheet says of a workbook that could not be audited. */
export const notAudited = 'not audited';

/** One line a workbook, as they were listed: its counts and the worst of it, or why it was not audited. */
export function fileLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const total = totalOf(files);
  return [
    pageHeading('Workbooks'),
    countHeaders('Workbook', 'The worst of it'),
    ...files.map(line),
    [
      cell('all workbooks', 'strong'),
      cell(worstWord(total), 'strong'),
      ...countEntries(total),
      cell('Each channel is counted once, by its worst threshold.', 'wrapped'),
    ],
  ];
}

function line({ file, found, refused }: FleetFile): readonly Entry[] {
  if (refused !== null) return [cell(file, 'name'), cell(notAudited, 'strong'), wide(refused, 'wrapped', 9)];
  return [
    cell(file, 'name'),
    cell(worstWord(found.summary), 'strong'),
    ...countEntries(found.summary),
    cell(worstSentence(found), 'wrapped'),
  ];
}
