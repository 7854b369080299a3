import { orderOfCorrections } from '../../audit/advise/machineSentences.ts';
import { cell } from '../cells.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { pageHeading, pageRemark } from './page.ts';
import type { FleetFile } from './types.ts';

const most = 30;

/** What to correct first over all workbooks; nothing where no uncertainty is known or nothing may be late. */
export function correctionLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const all = files
    .flatMap(({ file, found }) => (found?.corrections ?? []).map((one) => ({ file, ...one })))
    .sort((one, other) => other.fall - one.fall);
  if (all.length === 0) return [];
  const more = all.length - most;
  return [
    pageHeading('What to correct first'),
    pageRemark(orderOfCorrections),
    [
      cell('Workbook', 'header'),
      cell(null, 'header'),
      wide('Tag', 'header', 2),
      wide('Machine', 'header', 2),
      wide('Fewer late groups, expected', 'headerCentred', 2),
    ],
    ...all
      .slice(0, most)
      .map(({ file, tag, machine, fall }): readonly Entry[] => [
        cell(file, 'name'),
        cell(null, 'wrapped'),
        wide(tag, 'name', 2),
        wide(machine, 'wrapped', 2),
        wide(fall, 'fall', 2),
      ]),
    ...(more > 0 ? [pageRemark(`And ${more} more.`)] : []),
  ];
}
