import { runUpTrip } from '../../method/runup/runUp.ts';
import { number, optionalNumber, series } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { pairedBy } from '../pairs/paired.ts';
import { short } from '../record/short.ts';
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
