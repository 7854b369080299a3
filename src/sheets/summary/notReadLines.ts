import type { NotRead, Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { placeText } from './actionEntry.ts';
import { heading, remark, rest, wide, type Entry } from './layout.ts';

const words =
  'Each looks like a part of this audit and was left out. Correct its header or say in the column map that it is no part of it; until then the audit is not complete.';

/** What looks like a part of the audit and was not read, in the order of the report; nothing where all was. */
export function notReadLines({ notRead }: Report): readonly (readonly Entry[])[] {
  if (notRead.length === 0) return [];
  return [
    heading('Not read'),
    remark(words),
    [
      cell('What', 'header'),
      wide('Looks like', 'header', 2),
      cell('Severity', 'header'),
      wide('As it stands', 'header', 5),
      wide('Where', 'header', 2),
    ],
    ...notRead.map(line),
  ];
}

function line(one: NotRead): readonly Entry[] {
  return [
    cell(one.what, 'strong'),
    wide(one.looksLike, 'wrapped', 2),
    cell(one.severity, 'text'),
    wide(one.text, 'wrapped', 5),
    wide(placeText(one), 'wrapped', rest(9)),
  ];
}
