import { cell } from '../cells.ts';
import { wide } from '../look/layout.ts';
import type { Machine } from '../machines.ts';
import { heading, line, type Block } from './annexPages.ts';
import { clipped } from './clipped.ts';
import type { PageLine } from './paper.ts';
import { shadeOf, signOf } from './signs.ts';

/** All that needs action on a machine, gravest first, with what to do: what has no room on the control-room page stands here. */
export function actionBlocks({ attention }: Machine): Block[] {
  const title = heading(`What needs action: ${attention.length === 0 ? 'nothing' : attention.length}`);
  if (attention.length === 0) return [[...title, line('Nothing of this machine needs action.')]];
  const lines = attention.map((entry, index): PageLine => ({
    entries: [
      cell(signOf(entry), shadeOf(entry.code)),
      cell(index + 1, 'count'),
      wide(clipped(entry.headline, 900), entry.severity === 'critical' ? 'warned' : 'wrapped', 6),
      wide(clipped(entry.doNext, 500), 'wrapped', 4),
    ],
  }));
  const [first, ...rest] = lines;
  return [[...title, headers, ...(first ? [first] : [])], ...rest.map((one): Block => [one])];
}

const headers: PageLine = {
  entries: [
    cell('Sign', 'labelCentred'),
    cell('No.', 'labelCentred'),
    wide('What is wrong', 'labelLeft', 6),
    wide('What to do', 'labelLeft', 4),
  ],
};
