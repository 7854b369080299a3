import type { QuickAnswer } from '../quick/quickAnswer.ts';
import type { QuickState } from '../quick/quickState.ts';
import { sceneOf, type Scene } from './scene.ts';

/** The drawing of one setpoint: intended and effective on one scale, with its band where an uncertainty is given. */
export function quickScene({ kind, unit }: QuickState, answer: QuickAnswer): Scene | null {
  const { values, effective, low, high, verdict } = answer;
  return sceneOf({
    unit,
    lanes: [
      {
        name: kind,
        acts: kind === 'danger' ? 'trips' : 'alarms',
        intended: values.setpoint,
        effective,
        low,
        high,
        verdict,
      },
    ],
    limit: null,
    reach: null,
    reading: null,
  });
}
