import { number, optionalNumber, series, seriesOrText } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { growthLaw, setpoint } from './shared.ts';
import { levelAtTripDoubling, levelAtTripLinear, lateByDoubling, lateByLinear } from '../../method/time.ts';
import { tripTime } from '../../method/replay/tripTime.ts';
import { type FunctionError, notAvailable, refused } from '../functionError.ts';

export const TRIPTIME = declare({
  id: 'TRIPTIME',
  description:
    'When a setpoint acts on recorded readings: what is proven, and the earliest possible where readings are missing.',
  arguments: [
    series('times', 'any', 'Times of the readings as the spreadsheet counts them, in days, in any order.'),
    seriesOrText(
      'readings',
      'any',
      'Readings as the monitor showed them; a blank, a text or an error is unknown.',
    ),
    number('setpoint', 'positive', 'Setpoint in the unit of the readings.'),
    optionalNumber('delay', 'notNegative', 0, 'Alarm delay in seconds; 0 if left out.'),
    optionalNumber(
      'maxGap',
      'positive',
      null,
      'Readings farther apart than this, in seconds, leave unknown what is between; no such limit if left out.',
    ),
    {
      kind: 'switch',
      name: 'hold',
      on: ['hold'],
      off: ['line', 'linear'],
      otherwise: false,
      description:
        'TRUE: each reading holds until the next. FALSE (if left out): straight from one to the next.',
    },
  ],
  result: 'row',
  resultDescription:
    'Two cells, as times in days: proven (what is unknown taken as below) and earliest possible (taken as beyond); #N/A where it does not act within the record.',
  example: { formula: '=TRIPDRIFT.TRIPTIME({1,2,3},{3,5,5},4,43200)', result: '2\t2' },
  run: (times, readings, setpoint, delay, maxGap, hold) => {
    if (times.length !== readings.length) {
      const [longer, shorter] =
        times.length > readings.length ? ['Times', 'Readings'] : ['Readings', 'Times'];
      return refused(`${shorter} ends before ${longer}: select as many cells in each.`);
    }
    const dated = [];
    for (const [at, day] of times.entries()) {
      const reading = readings[at] ?? null;
      if (day !== null) dated.push({ day, reading: reading ?? NaN });
      else if (reading !== null) return refused(`Times ${at + 1} is blank beside a reading: enter its time.`);
    }
    const { proven, earliest } = tripTime(dated, setpoint, {
      delay,
      maxGap: maxGap ?? Infinity,
      between: hold ? 'hold' : 'line',
    });
    const cell = (time: number, what: string): number | FunctionError =>
      Number.isNaN(time) ? notAvailable(`It does not act within the record${what}.`) : time;
    return [cell(proven, ', as far as is proven'), cell(earliest, ', whatever the unknown readings were')];
  },
});

export const LEVELATTRIP = declare({
  id: 'LEVELATTRIP',
  description: 'Real vibration when the relay acts after its delay, while the vibration goes on growing.',
  arguments: [
    number('effective', 'positive', 'Real displacement at which the setpoint acts.'),
    number('delay', 'notNegative', 'Alarm delay.'),
    number(
      'growth',
      'positive',
      'Growth per time, or the doubling time with the law "doubling"; in the time unit of the delay.',
    ),
    growthLaw,
  ],
  result: 'number',
  resultDescription: 'Level, in the unit of the effective threshold.',
  example: { formula: '=TRIPDRIFT.LEVELATTRIP(6.25,3,0.5)', result: '7.75' },
  native: {
    by: 'law',
    forms: { linear: 'effective+growth*delay', doubling: 'effective*2^(delay/growth)' },
  },
  run: (effective, delay, growth, by) =>
    by === 'linear'
      ? levelAtTripLinear(effective, growth, delay)
      : levelAtTripDoubling(effective, growth, delay),
});

export const LATEBY = declare({
  id: 'LATEBY',
  description:
    'How much later a threshold acts than intended while the vibration grows; below 0 it acts earlier.',
  arguments: [
    setpoint,
    number('effective', 'positive', 'Real displacement at which it acts, in the unit of the setpoint.'),
    number('growth', 'positive', 'Growth per time, or the doubling time with the law "doubling".'),
    growthLaw,
  ],
  result: 'number',
  resultDescription: 'Time, in the time unit of the growth.',
  example: { formula: '=TRIPDRIFT.LATEBY(5,6.25,0.5)', result: '2.5' },
  native: {
    by: 'law',
    forms: { linear: '(effective-setpoint)/growth', doubling: 'growth*LOG(effective/setpoint,2)' },
  },
  run: (intended, effective, growth, by) =>
    by === 'linear' ? lateByLinear(effective, intended, growth) : lateByDoubling(effective, intended, growth),
});
