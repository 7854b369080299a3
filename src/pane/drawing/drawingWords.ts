import { amount, capital, verdictWords } from '../../audit/model/wording.ts';
import type { Lane, Scene } from './scene.ts';

/** Texts of the drawing. */
export const drawingWords = {
  intended: 'set',
  effective: 'really acts at',
  band: 'band of uncertainty',
  limit: 'limit',
  reach: 'linear reach',
  reading: 'present real reading',
  axis: (unit: string) => `real, in ${unit}`,
  limitLabel: (value: number, unit: string) => `limit ${amount(value, unit)}`,
  reachLabel: (value: number, unit: string) => `linear to ${amount(value, unit)}`,
  readingLabel: (value: number, unit: string) => `now ${amount(value, unit)}`,
} as const;

/** A lane in a few words: `Danger: set 5, really trips at 6.25 mil`. */
export function laneLabel({ name, acts, intended, effective, verdict }: Lane, unit: string): string {
  const set = intended === null ? '' : `set ${amount(intended, effective === null ? unit : '')}, `;
  const really = effective === null ? verdictWords[verdict] : `really ${acts} at ${amount(effective, unit)}`;
  return `${capital(name)}: ${set}${really}`;
}

/** The whole drawing in words, for readers who hear the screen. */
export function sceneInWords({ lanes, limit, reach, reading, unit }: Scene): string {
  const parts = lanes.map((lane) => {
    const { low, high } = lane;
    const band = low === null || high === null ? '' : ` (${amount(low, unit)} to ${amount(high, unit)})`;
    const verdict = lane.effective === null ? '' : `, ${verdictWords[lane.verdict]}`;
    return `${laneLabel(lane, unit)}${band}${verdict}`;
  });
  if (limit !== null) parts.push(`Limit ${amount(limit, unit)}`);
  if (reach !== null) parts.push(`Linear reach ${amount(reach, unit)}`);
  if (reading !== null) parts.push(`Present real reading ${amount(reading, unit)}`);
  return `${parts.join('. ')}.`;
}
