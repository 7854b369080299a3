import type { PlacedFact } from '../model/findings.ts';
import type { Obstacle } from '../model/threshold.ts';
import { capital, listed } from '../model/wording.ts';
import { messageOf } from './messages/messages.ts';

/** What people read for each obstacle that leaves a threshold not known. */
export const obstacleTexts: Readonly<Record<Obstacle, string>> = {
  'a value that can’t be used': 'a value can’t be used',
  'the record can’t be used': 'its calibration record can’t be used',
  'the zero voltage was not measured': 'its zero voltage was not measured',
  'the zero voltage was not measured again': 'its zero voltage was not measured again after the correction',
  'the configured zero voltage is missing': 'its configured zero voltage is missing',
  'the direction is missing': 'its positive direction is missing',
  'the kind is not known': 'it is not said what kind of channel it is',
  'two values contradict each other': 'two values contradict each other',
  'the bypass mark is not understood': 'its bypass mark is not understood',
  'the detection is not known': 'its detection is not said everywhere',
  'a sensitivity is missing': 'a sensitivity is missing',
  'a setpoint is missing': 'its setpoint is missing',
};

/** What to do about each. */
const cures: Readonly<Record<Obstacle, string>> = {
  'a value that can’t be used': 'correct the value that can’t be used',
  'the record can’t be used': 'correct its calibration record',
  'the zero voltage was not measured': 'measure its zero voltage',
  'the zero voltage was not measured again': 'measure its zero voltage again',
  'the configured zero voltage is missing': 'enter its configured zero voltage',
  'the direction is missing': 'enter its positive direction',
  'the kind is not known': 'enter its kind',
  'two values contradict each other': 'say which of the two values holds',
  'the bypass mark is not understood': 'write its bypass mark as yes or no',
  'the detection is not known': 'say everywhere whether it is peak, peak to peak or rms',
  'a sensitivity is missing': 'enter its missing sensitivity',
  'a setpoint is missing': 'enter its setpoint',
};

/** Why it is not known, then the first thing that keeps it from being judged with its place. */
export function obstaclesSaid(obstacles: readonly Obstacle[], invalid: readonly PlacedFact[]): string {
  const [first] = invalid;
  const said = listed([...new Set(obstacles)].map((obstacle) => obstacleTexts[obstacle]));
  if (!first) return said;
  const at = `${first.sheet}!${first.column}${first.row}`;
  return `${said === '' ? '' : `${said}. `}${at}: ${messageOf(first).replace(/\.$/u, '')}`;
}

/** What makes it known: the same words for the same fault, so that channels with it can be told together. */
export function obstacleCure(obstacles: readonly Obstacle[]): string {
  const told = [...new Set(obstacles)].map((obstacle) => cures[obstacle]);
  return capital(told.length === 0 ? 'correct its row' : listed(told));
}
