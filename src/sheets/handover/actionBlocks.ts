import { cell } from '../cells.ts';
import { wide } from '../look/layout.ts';
import type { Machine } from '../machines.ts';
import { heading, line, table, type Block } from './annexPages.ts';
import { clipped } from './clipped.ts';
import type { PageLine } from './paper.ts';
import { shadeOf, signOf } from './signs.ts';

/** All that needs action on a machine, gravest first, with what to do: what has no room on the control-room page stands here. */
export function actionBlocks({ attention }: Machine): Block[] {
  const title = heading(`What needs action: ${attention.length === 0 ? 'nothing' : attention.length}`);
  if (attention.length === 0) return [[...title, line('Nothing of this machine needs action.')]];
  return table(
    title,
    headers,
    attention.map((entry, index): PageLine => ({
      entries: [
        wide(signOf(entry), shadeOf(entry.code), 2),
        cell(index + 1, 'count'),
        wide(clipped(entry.headline, 900), entry.severity === 'critical' ? 'warned' : 'wrapped', 5),
        wide(clipped(entry.doNext, 500), 'wrapped', 4),
      ],
    })),
  );
}

const headers: PageLine = {
  entries: [
    wide(null, 'labelLeft', 2),
    cell('No.', 'labelCentred'),
    wide('What is wrong', 'labelLeft', 5),
    wide('What to do', 'labelLeft', 4),
  ],
};
