import type { Place } from '../blocks/block.ts';
import { unitsIn } from '../fields/notes.ts';
import type { Series } from '../standing/evidence.ts';
import { readHeader } from '../vocabulary/headerText.ts';
import { tokensOf } from '../vocabulary/lexicon.ts';
import type { Lane } from './lane.ts';

/** A word of a series around a lane: a header's, a title's or the sheet's. */
export interface LaneSeries {
  readonly series: Series;
  readonly from: 'title' | 'sheet name';
  readonly text: string;
  readonly strength: 'strong' | 'weak';
}

/** Whether a text says the units of columns by their headers: what it names is no title of the list. */
function namesHeaders({ fields }: Lane, text: string, place: Place): boolean {
  const headers = new Set(fields.flatMap(({ parts }) => parts.map(({ name }) => tokensOf(name).join(' '))));
  return unitsIn(text, place, []).some(({ names }) => names.some((name) => headers.has(name)));
}

/** The series that the title of a lane or its sheet's name states. */
export function seriesOf(lane: Lane): LaneSeries | undefined {
  const found: LaneSeries[] = [];
  const look = (text: string, from: LaneSeries['from']): void => {
    const { concepts } = readHeader(text);
    const [asFound, asLeft] = [concepts.get('as found'), concepts.get('as left')];
    if (asFound && asFound === asLeft) return;
    const series: Series | undefined =
      asLeft === 'strong' || (asLeft && asFound !== 'strong') ? 'as left' : asFound ? 'as found' : undefined;
    const strength = series === 'as left' ? asLeft : asFound;
    if (series && strength) found.push({ series, from, text, strength });
  };
  const titles = lane.context.titles.filter(({ text, place }) => !namesHeaders(lane, text, place));
  for (const { text, value } of titles) look(value === null ? text : `${text} ${value}`, 'title');
  look(lane.block.sheet.name, 'sheet name');
  if (found.length === 0)
    for (const { text, place } of lane.context.ofSheet)
      if (!namesHeaders(lane, text, place)) look(text, 'title');
  const strong = found.filter(({ strength }) => strength === 'strong');
  const sure = strong.length > 0 ? strong : found;
  const [first] = sure;
  return sure.every(({ series }) => series === first?.series) ? first : undefined;
}
