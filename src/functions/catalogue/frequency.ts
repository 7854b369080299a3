import { sensitivityAt, highPass, lowPass } from '../../method/frequency.ts';
import { number, series, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { pairedBy } from '../read/paired.ts';
import { short } from '../record/arguments.ts';
import { runUpTrip } from '../../method/runup/runUp.ts';
import { multiplier } from './shared.ts';

export const RUNUPTRIP = declare({
  id: 'RUNUPTRIP',
  description:
    'Speed at which a setpoint acts on a run-up, and speed at which it should have acted on the real vibration.',
  arguments: [
    series('speeds', 'notNegative', 'Speeds of the run-up, a row or a column in any order, each once.'),
    series('real', 'notNegative', 'Real amplitudes there, in the unit and detection of the setpoint.'),
    series(
      'sensitivities',
      'positive',
      'Sensitivity of the chain at each speed, or one for all, in the unit of the configured one.',
    ),
    number('setpoint', 'positive', 'Setpoint as the monitor shows it.'),
    number('configured', 'positive', 'Sensitivity that the monitor is configured with.'),
    multiplier,
    optionalNumber(
      'multiplierSpeed',
      'positive',
      null,
      'Speed below which the multiplier is in force; at every speed if left out.',
    ),
  ],
  result: 'row',
  resultDescription:
    'Two cells: the speed at which it acts and the speed at which it should; #N/A where it does not on this run-up.',
  example: {
    formula: '=TRIPDRIFT.RUNUPTRIP({1500,2000,2500},{2,4.8,6.4},160,4,200)',
    result: '2062.5\t1857.142857142857',
  },
  run: (speeds, reals, sensitivities, setpoint, configured, times, multiplierSpeed) => {
    const places = pairedBy(
      [
        { name: 'Speeds', cells: speeds },
        { name: 'Real', cells: reals },
        { name: 'Sensitivities', cells: sensitivities, oneForAll: true },
      ],
      2,
    );
    if (places instanceof FunctionError) return places;
    const points = places.map(({ values: [speed = NaN, real = NaN, sensitivity = NaN] }) => ({
      speed,
      real,
      indicated: (real * sensitivity) / configured,
    }));
    const { acts, should } = runUpTrip(points, {
      setpoint,
      multiplier: times,
      multiplierSpeed: multiplierSpeed ?? Infinity,
      hold: 0,
    });
    const most = (values: readonly number[]): string => short(Math.max(...values));
    return [
      Number.isNaN(acts)
        ? notAvailable(
            `It would not have acted on this run-up: shown up to ${most(points.map(({ indicated }) => indicated))}.`,
          )
        : acts,
      Number.isNaN(should)
        ? notAvailable(
            `It need not have acted on this run-up: real up to ${most(points.map(({ real }) => real))}.`,
          )
        : should,
    ];
  },
});

export const LOWPASS = declare({
  id: 'LOWPASS',
  description:
    'Response of a first-order low-pass, such as a long cable, at a frequency: what it gives of the full sensitivity.',
  arguments: [
    number('frequency', 'positive', 'Frequency in the unit of the corner: both in Hz, or both in r/min.'),
    number('corner', 'positive', 'Corner frequency, where 0.707 of the sensitivity is left.'),
  ],
  result: 'number',
  resultDescription: 'Fraction of the sensitivity far below the corner.',
  example: { formula: '=TRIPDRIFT.LOWPASS(750,1000)', result: '0.8' },
  native: '1/SQRT(1+(frequency/corner)^2)',
  run: lowPass,
});

export const HIGHPASS = declare({
  id: 'HIGHPASS',
  description:
    'Response of a second-order high-pass, such as a seismic sensor, at a frequency: what it gives of the full sensitivity.',
  arguments: [
    number('frequency', 'positive', 'Frequency in the unit of the corner: both in Hz, or both in r/min.'),
    number('corner', 'positive', 'Natural frequency of the sensor.'),
    number('damping', 'positive', 'Damping as a fraction of critical damping, such as 0.7.'),
  ],
  result: 'number',
  resultDescription: 'Fraction of the sensitivity far above the corner; above 1 where the sensor resonates.',
  example: { formula: '=TRIPDRIFT.HIGHPASS(8,8,0.625)', result: '0.8' },
  native: '1/SQRT((1-(corner/frequency)^2)^2+(2*damping*corner/frequency)^2)',
  run: highPass,
});

export const SENSITIVITYAT = declare({
  id: 'SENSITIVITYAT',
  description:
    'Sensitivity at a frequency or speed, from a record of it: straight between its points, never beyond them.',
  arguments: [
    series(
      'frequencies',
      'positive',
      'Frequencies or speeds of the record, a row or a column, in any order.',
    ),
    series('sensitivities', 'positive', 'Sensitivities measured there, one beside each.'),
    number('frequency', 'positive', 'Frequency or speed in the unit of the record.'),
  ],
  result: 'number',
  resultDescription: 'Sensitivity in the unit of the record; #N/A outside it.',
  example: { formula: '=TRIPDRIFT.SENSITIVITYAT({10,20,40},{158,181,194},25)', result: '184.25' },
  run: (frequencies, sensitivities, frequency) => {
    const places = pairedBy(
      [
        { name: 'Frequencies', cells: frequencies },
        { name: 'Sensitivities', cells: sensitivities },
      ],
      2,
    );
    if (places instanceof FunctionError) return places;
    const known = places.map(({ values }) => values[0] ?? NaN);
    const found = sensitivityAt(
      { frequencies: known, sensitivities: places.map(({ values }) => values[1] ?? NaN) },
      frequency,
    );
    if (!Number.isNaN(found)) return found;
    return notAvailable(
      `Frequency ${short(frequency)} lies outside the record, ${short(known[0] ?? null)} to ${short(known.at(-1) ?? null)}.`,
    );
  },
});
