import {
  correctionsOfAll,
  machineSentences,
  orderOfCorrections,
} from '../../audit/advise/machineSentences.ts';
import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { machineName } from '../machines.ts';
import { heading, remark, rest, wide, type Entry } from './layout.ts';

/** Machines and corrections that are listed. */
const most = { machines: 20, corrections: 15 } as const;

/** What to correct first: in all, and of each machine; nothing where no uncertainty is known or nothing may be late. */
export function correctionLines({ machines }: Report): readonly (readonly Entry[])[] {
  const all = correctionsOfAll(machines);
  const told = machines.flatMap((machine) => {
    const [, ...sentences] = machineSentences(machine);
    return sentences.length > 0 ? [{ machine, words: machineSentences(machine).join(' ') }] : [];
  });
  if (all.length === 0 && told.length === 0) return [];
  const more = all.length - most.corrections;
  return [
    heading('What to correct first'),
    remark(orderOfCorrections),
    [
      ...['Tag', 'Machine'].map((text) => cell(text, 'header')),
      wide('Fewer late groups, expected', 'headerCentred', 2),
    ],
    ...all
      .slice(0, most.corrections)
      .map(({ tag, machine, fall }): readonly Entry[] => [
        cell(tag, 'name'),
        cell(machine, 'wrapped'),
        wide(fall, 'fall', 2),
      ]),
    ...(more > 0 ? [remark(`And ${more} more.`)] : []),
    ...told
      .slice(0, most.machines)
      .map(({ machine, words }): readonly Entry[] => [
        wide(machineName({ name: machine.machine }), 'strong', 2),
        wide(words, 'wrapped', rest(2)),
      ]),
  ];
}
