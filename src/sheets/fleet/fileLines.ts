import { cell } from '../cells.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { actionsOfAll, worstSentence } from './actions.ts';
import { worstWord } from './codeWords.ts';
import { countEntries, countHeaders, pageHeading, widths } from './page.ts';
import { totalOf } from './total.ts';
import type { FleetFile } from './types.ts';

/** What the sheet says of a workbook that could not be audited. */
export const notAudited = 'not audited';

/** One line a workbook, as they were listed: its counts and the worst of it, or why it was not audited. */
export function fileLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const total = totalOf(files);
  const [gravest] = actionsOfAll(files).actions;
  return [
    pageHeading('Workbooks'),
    countHeaders('Workbook', 'The worst of it'),
    ...files.map(line),
    [
      cell('all workbooks', 'strong'),
      cell(worstWord(gravest?.entry ?? null, total), 'strong'),
      ...countEntries(total),
      cell('Each channel is counted once, by its worst threshold as it is now.', 'wrapped'),
    ],
  ];
}

function line({ file, found, refused }: FleetFile): readonly Entry[] {
  if (refused !== null)
    return [cell(file, 'name'), cell(notAudited, 'strong'), wide(refused, 'wrapped', widths.length - 2)];
  return [
    cell(file, 'name'),
    cell(worstWord(found.attention[0] ?? null, found.summary), 'strong'),
    ...countEntries(found.summary),
    cell(worstSentence(found), 'wrapped'),
  ];
}
