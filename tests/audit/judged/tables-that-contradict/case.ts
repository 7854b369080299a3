import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'The same quantity in both tables with two values is a contradiction: full scale 10 and 4 mil, bypass no and yes, danger 5 and 6 mil. None is chosen, each is incomplete; where both say the same nothing is said.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Full scale (mil)', 'Bypass', 'Danger (mil)'],
      ['scale', 'Pump', 200, 4, 'no', 5],
      ['bypass', 'Pump', 200, 10, 'yes', 5],
      ['danger', 'Pump', 200, 10, 'no', 6],
      ['same', 'Pump', 200, 10, 'no', 5],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scale (mil)'],
        'Bypass',
      ],
      ['scale', 200, 3, 5, 10, 'no'],
      ['bypass', 200, 3, 5, 10, 'no'],
      ['danger', 200, 3, 5, 10, 'no'],
      ['same', 200, 3, 5, 10, 'no'],
    ],
  ),
  facts: facts(
    { tag: 'scale', unusable: ['full scale'] },
    { tag: 'bypass', fullScale: 10, bypass: null, unusable: ['bypass'] },
    { tag: 'danger', fullScale: 10, danger: null },
    { tag: 'same', fullScale: 10 },
  ),
  channels: {
    scale: { verdict: 'incomplete' },
    bypass: { verdict: 'incomplete' },
    danger: { verdict: 'incomplete', thresholds: { danger: { setpoint: null, effective: null } } },
    same: { verdict: 'within' },
  },
  critical: ['Pump / bypass', 'Pump / danger', 'Pump / scale'],
};
