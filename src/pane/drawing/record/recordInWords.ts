import { amount } from '../../../audit/model/wording.ts';
import type { RecordResult } from '../../../audit/model/report.ts';
import type { RecordScene } from './recordScene.ts';

/** The drawing in words, for readers who hear the screen. */
export function recordInWords(
  result: RecordResult,
  { unit, operating, danger, linear }: RecordScene,
): string {
  const { points, average, rated, thresholds } = result;
  const first = points[0]?.gap ?? NaN;
  const last = points.at(-1)?.gap ?? NaN;
  const parts = [
    `${points.length} points from ${amount(first, '')} to ${amount(last, unit)}, average sensitivity ${amount(average, `mV/${unit}`)}`,
  ];
  if (rated !== null) parts.push(`Rated ${amount(rated, `mV/${unit}`)}`);
  parts.push(
    linear ? `Linear from ${amount(linear.from, '')} to ${amount(linear.to, unit)}` : 'No linear range',
  );
  if (operating) parts.push(`In service at a gap of ${amount(operating[0], unit)}`);
  if (danger)
    parts.push(
      `When danger acts the gap swings from ${amount(danger.from, '')} to ${amount(danger.to, unit)}`,
    );
  else if (thresholds.some(({ name, onCurve }) => name === 'danger' && onCurve === null))
    parts.push('Danger cannot be shown to act on this record');
  return `${parts.join('. ')}.`;
}
