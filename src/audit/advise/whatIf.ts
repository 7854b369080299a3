import type { CorrectableGroup } from '../../method/corrections/corrected.ts';
import { machineLate } from '../../method/late/machineLate.ts';
import type { GroupWorking, MachineChance } from '../model/report.ts';

/** What of a machine would be late once some of its channels are corrected; `null` where it can't be worked out. */
export type WhatIf = Pick<MachineChance, 'any' | 'all' | 'expected'> | null;

/**
 * The chances of a machine with these channels corrected to their configured sensitivities, uncertainties and batches as
 * they are; of the measurement alone. With none corrected they are those of the report.
 */
export function whatIf({ working }: Pick<MachineChance, 'working'>, corrected: ReadonlySet<string>): WhatIf {
  const late = machineLate(
    working.map((group) => {
      const { m, limit, members } = correctable(group);
      return { m, limit, members: members.map((one) => (corrected.has(one.tag) ? one.corrected : one)) };
    }),
  );
  if (!late) return null;
  const known = (value: number): number | null => (Number.isNaN(value) ? null : value);
  return { any: known(late.any), all: known(late.all), expected: late.expected };
}

/** The tags of the channels of a machine that can be corrected, each once, in the order of its groups. */
export function correctableTags({ working }: Pick<MachineChance, 'working'>): readonly string[] {
  const acting = working.flatMap(({ members }) => members.filter(({ corrected }) => corrected !== null));
  return [...new Set(acting.map(({ tag }) => tag))];
}

function correctable({ m, limit, members }: GroupWorking): CorrectableGroup {
  return {
    m,
    limit,
    members: members.map(({ tag, threshold, corrected, ...uncertain }) => ({
      tag,
      ...uncertain,
      threshold: threshold ?? Infinity,
      corrected: { ...uncertain, threshold: corrected ?? Infinity },
    })),
  };
}
