import { understoodText } from '../../../audit/advise/questions/understoodText.ts';
import type { Understanding } from '../../../audit/read/understand/understand.ts';
import { plain } from '../../terminal.ts';

/** Longest line that is shown whole. */
const longest = 1000;

/** Three lines about a workbook with open questions: understood, not understood, what to do; `written` is the proposal's file. */
export function openText(understanding: Understanding, written: string | undefined): readonly string[] {
  const { understood, notUnderstood, toDo } = understoodText(understanding);
  const how =
    written === undefined
      ? '--propose M.json writes a proposal to check; --map M.json audits with it.'
      : `Check ${written}, then audit with --map ${written}.`;
  return [understood, notUnderstood, `${toDo} ${how}`].map((line) => plain(line, longest));
}
