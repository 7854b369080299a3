import type { Attention, ChannelResult, Report } from '../../audit/model/report.ts';
import type { LinkTarget } from '../model.ts';
import { sheetNames } from '../titles.ts';
import { headerRow } from './headerRow.ts';

/** Where channels and what needs action of them stand on the results sheet. */
export interface ResultPlaces {
  /** The first line of a channel, by its index in the report. */
  readonly ofChannel: (index: number) => LinkTarget;
  /** The line of what needs action; `undefined` where it is of no channel that has one. */
  readonly ofAttention: (one: Attention) => LinkTarget | undefined;
  /** Step of the instrument of its channel; `null` where that is not known. */
  readonly stepOf: (one: Attention) => number | null;
}

export function resultPlaces({ channels }: Pick<Report, 'channels'>): ResultPlaces {
  const first: number[] = [];
  let next = headerRow + 1;
  for (const { thresholds } of channels) {
    first.push(next);
    next += thresholds.length;
  }
  const at = (row: number): LinkTarget => ({ sheet: sheetNames.results, ours: true, row, column: 'A' });
  let bySubject: ReadonlyMap<string, number> | undefined;
  const indexOf = (subject: Pick<ChannelResult, 'tag' | 'machine'>): number | undefined => {
    bySubject ??= new Map(channels.map((channel, index) => [keyOf(channel), index] as const).reverse());
    return bySubject.get(keyOf(subject));
  };
  return {
    ofChannel: (index) => at(first[index] ?? headerRow),
    stepOf({ subject }) {
      const index = indexOf(subject);
      return index === undefined ? null : (channels[index]?.inputs.resolution ?? null);
    },
    ofAttention({ subject: { tag, machine, threshold, multiplier } }) {
      const index = indexOf({ tag, machine });
      const channel = index === undefined ? undefined : channels[index];
      if (index === undefined || !channel || channel.thresholds.length === 0) return undefined;
      const line = channel.thresholds.findIndex(
        ({ name, multiplier: own }) => name === (threshold ?? 'danger') && own === (multiplier ?? 1),
      );
      return at((first[index] ?? headerRow) + Math.max(0, line));
    },
  };
}

function keyOf({ tag, machine }: Pick<ChannelResult, 'tag' | 'machine'>): string {
  return `${tag}\n${machine}`;
}
