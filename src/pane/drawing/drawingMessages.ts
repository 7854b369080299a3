import { capital, level, rounded, verdictWords } from '../../audit/model/wording.ts';
import type { Lane, Scene } from './scene.ts';

type Scale = Pick<Scene, 'unit' | 'step'>;

/** A number on the scale of a drawing, at the step of its instrument. */
export function scaleNumber({ step = null }: Scale, value: number): string {
  return step === null ? rounded(value) : level(value, step);
}

function withUnit(scale: Scale, value: number): string {
  return scale.unit === '' ? scaleNumber(scale, value) : `${scaleNumber(scale, value)} ${scale.unit}`;
}

/** Texts of the drawing. */
export const drawingMessages = {
  intended: 'set',
  effective: 'really acts at',
  band: 'band of uncertainty',
  limit: 'limit',
  reach: 'linear reach',
  reading: 'present real reading',
  axis: (unit: string) => `real, in ${unit}`,
  limitLabel: (scale: Scale, value: number) => `limit ${withUnit(scale, value)}`,
  reachLabel: (scale: Scale, value: number) => `linear to ${withUnit(scale, value)}`,
  readingLabel: (scale: Scale, value: number) => `now ${withUnit(scale, value)}`,
} as const;

/** A lane in a few words: `Danger: set 5, really trips at 6.25 mil`. */
export function laneLabel({ name, acts, intended, effective, verdict }: Lane, scale: Scale): string {
  const set =
    intended === null
      ? ''
      : `set ${effective === null ? withUnit(scale, intended) : scaleNumber(scale, intended)}, `;
  const really =
    effective === null ? verdictWords[verdict] : `really ${acts} at ${withUnit(scale, effective)}`;
  return `${capital(name)}: ${set}${really}`;
}

/** The whole drawing in words, for readers who hear the screen. */
export function sceneInWords(scene: Scene): string {
  const { lanes, limit, reach, reading } = scene;
  const say = (value: number): string => withUnit(scene, value);
  const parts = lanes.map((lane) => {
    const { low, high } = lane;
    const band = low === null || high === null ? '' : ` (${say(low)} to ${say(high)})`;
    const verdict = lane.effective === null ? '' : `, ${verdictWords[lane.verdict]}`;
    return `${laneLabel(lane, scene)}${band}${verdict}`;
  });
  if (limit !== null) parts.push(`Limit ${say(limit)}`);
  if (reach !== null) parts.push(`Linear reach ${say(reach)}`);
  if (reading !== null) parts.push(`Present real reading ${say(reading)}`);
  return `${parts.join('. ')}.`;
}
