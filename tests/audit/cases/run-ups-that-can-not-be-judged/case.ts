import { book, oneChannel } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

const { sheets } = oneChannel({});

export const golden: GoldenCase = {
  because:
    'By the reading rules: what is missing is said with its cell, and nothing is guessed: not whether amplitudes are real, not a sensitivity ' +
    'beyond the ends of its record (1000 and 2000 r/min here), not a unit of another kind, nor one that is not known (mil*10).',
  book: book(
    ...sheets,
    [
      'Run-up 1',
      [
        ['Tag', 'Speed', 'Amplitude (mil)'],
        ['V-1', 1000, 1],
        ['V-1', 2000, 2],
      ],
    ],
    [
      'Run-up 2',
      [
        ['Tag', 'rpm', 'Indicated amplitude (mil)'],
        ['V-1', 1000, 1],
        ['V-1', 'fast', 2],
        ['V-1', 2000, null],
        ['V-1', 1500, 2],
        ['V-1', 2500, 6],
        [null, 1500, 6],
        ['V-9', 1000, 1],
        ['V-9', 1500, 1],
      ],
    ],
    [
      'Run-up 3',
      [
        ['Tag', 'rpm', 'Real amplitude (g)'],
        ['V-1', 1000, 1],
        ['V-1', 2000, 2],
      ],
    ],
    [
      'Run-up 4',
      [
        ['Tag', 'rpm', 'Real amplitude (mil*10)'],
        ['V-1', 1000, 1],
        ['V-1', 2000, 2],
      ],
    ],
    [
      'Run-up 5',
      [
        ['Tag', 'Speed (r/min*100)', 'Real amplitude (mil)'],
        ['V-1', 10, 1],
        ['V-1', 20, 2],
      ],
    ],
    [
      'Against speed',
      [
        ['Tag', 'Speed', 'Sensitivity (mV/mil)'],
        ['V-1', 1000, 200],
        ['V-1', 2000, 200],
      ],
    ],
  ),
  channels: [{ tag: 'V-1', verdict: 'within' }],
  problems: [
    'run-up-not-judged @ Run-up 1!C2',
    'run-up-row-left-out @ Run-up 2!B3',
    'run-up-row-left-out @ Run-up 2!C4',
    'run-up-row-left-out @ Run-up 2!A7',
    'run-up-not-judged @ Run-up 2!C2',
    'run-up-not-judged @ Run-up 2!C8',
    'run-up-not-judged @ Run-up 3!C2',
    'run-up-not-judged @ Run-up 4!C2',
    'run-up-not-judged @ Run-up 5!C2',
  ],
  runUps: { 'V-1': { danger: { outcome: 'not reached', acts: null, should: null, realAtTrip: null } } },
};
