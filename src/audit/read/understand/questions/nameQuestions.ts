import type { ColumnMap } from '../../../model/columnMap.ts';
import type { Place } from '../blocks/block.ts';
import { tagKey } from '../../tables/tagKey.ts';
import type { MeaningId } from '../meaning.ts';
import type { ReadChannel } from '../readings/channel.ts';
import type { Question } from './question.ts';

/** Tags of probes and settings without each other that are the same but for spaces, dashes, and O for 0; those of which a person `said` something are not asked. */
export function nameQuestions(
  channels: readonly ReadChannel[],
  said: ReadonlyMap<string, string>,
): Question[] {
  const unmatched = (id: MeaningId, other: MeaningId) =>
    channels.filter(
      ({ lines }) =>
        lines.some(({ table }) => table.claims.has(id)) &&
        !lines.some(({ table }) => table.claims.has(other)),
    );
  const settings = new Map<string, ReadChannel[]>();
  for (const channel of unmatched('configured', 'measured')) {
    const key = squeezed(channel.tag);
    settings.set(key, [...(settings.get(key) ?? []), channel]);
  }
  const pairs: (readonly [string, string])[] = [];
  const places: Place[] = [];
  for (const channel of unmatched('measured', 'configured')) {
    const fitting = settings.get(squeezed(channel.tag)) ?? [];
    const [only] = fitting;
    if (only && said.has(tagKey(only.tag))) continue;
    if (only && fitting.length === 1 && tagKey(only.tag) !== tagKey(channel.tag)) {
      pairs.push([only.tag, channel.tag]);
      places.push(...only.lines.map(({ place }) => place));
    }
  }
  const joined = new Set(pairs.map(([written]) => written));
  if (pairs.length === 0 || joined.size < pairs.length) return [];
  const answer: ColumnMap = { names: Object.fromEntries(pairs) };
  return [
    {
      id: `names ${pairs.map(([written]) => written).join()}`,
      needed: true,
      records: pairs.length,
      subject: { is: 'names', pairs, places },
      evidence: [],
      sheets: [],
      options: [
        { field: null, text: '', answer },
        { field: null, text: '', answer: { names: Object.fromEntries(pairs.map(([tag]) => [tag, tag])) } },
      ],
    },
  ];
}

function squeezed(tag: string): string {
  return tagKey(tag)
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/o/gu, '0')
    .replace(/[il]/gu, '1');
}
