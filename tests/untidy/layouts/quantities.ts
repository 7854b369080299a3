import type { UnitSystem, WrittenUnit } from '../scenario.ts';
import { micrometresPerMil } from '../truth.ts';
import type { Meaning } from '../draft.ts';
import type { Dimension } from './dimension.ts';

const mvPerMil: WrittenUnit = { text: 'mV/mil', factor: 1, decimals: 0 };
const mvPerMicrometre: WrittenUnit = { text: 'mV/µm', factor: micrometresPerMil, decimals: 2 };
const voltsPerMillimetre: WrittenUnit = { text: 'V/mm', factor: micrometresPerMil, decimals: 2 };
const mil: WrittenUnit = { text: 'mil', factor: 1, decimals: 2 };
const micrometre: WrittenUnit = { text: 'µm', factor: 1 / micrometresPerMil, decimals: 1 };
const millimetre: WrittenUnit = { text: 'mm', factor: 1000 / micrometresPerMil, decimals: 4 };

const system = (
  name: string,
  sensitivity: WrittenUnit,
  displacement: WrittenUnit,
  measured: WrittenUnit = sensitivity,
): UnitSystem => ({ name, configured: sensitivity, measured, displacement, detection: 'p-p' });

const inMil = system('mil', mvPerMil, mil);
const inMicrometres = system('µm', mvPerMicrometre, micrometre);

/** The same system with setpoints from zero to peak. */
function zeroToPeak(units: UnitSystem): UnitSystem {
  const { displacement } = units;
  return { ...units, detection: '0-p', displacement: { ...displacement, factor: displacement.factor * 2 } };
}

export const units: Dimension = {
  name: 'units',
  options: [
    {
      name: 'mil',
      weight: 5,
      apply: ({ wish }) => {
        wish.unitsOf = () => inMil;
      },
    },
    {
      name: 'µm, mV/µm',
      weight: 4,
      silentlyWrong: 'numbers in µm taken for mil',
      apply: ({ wish }) => {
        wish.unitsOf = () => inMicrometres;
      },
    },
    {
      name: 'µm, V/mm',
      weight: 2,
      silentlyWrong: '7.87 V/mm taken for mV/mil',
      apply: ({ wish }) => {
        wish.unitsOf = () => system('V/mm', voltsPerMillimetre, micrometre);
      },
    },
    {
      name: 'mm, V/mm',
      weight: 1,
      silentlyWrong: '0.12 mm taken for mil',
      apply: ({ wish }) => {
        wish.unitsOf = () => system('mm', voltsPerMillimetre, millimetre);
      },
    },
    {
      name: 'measured mV/µm, configured mV/mil',
      weight: 2,
      silentlyWrong: 'a ratio of 25.4 judged as a drift',
      apply: ({ wish }) => {
        wish.unitsOf = () => system('split', mvPerMil, mil, mvPerMicrometre);
      },
    },
    {
      name: 'another in each block',
      weight: 2,
      fits: (chosen) => chosen['machine'] === 'label above' || chosen['machine'] === 'sheet name',
      silentlyWrong: 'the second block read in the units of the first',
      apply: ({ wish }) => {
        wish.unitsOf = (machine) => (machine % 2 === 0 ? inMil : inMicrometres);
      },
    },
  ],
};

export const detection: Dimension = {
  name: 'detection',
  options: [
    {
      name: 'p-p said',
      weight: 6,
      apply: ({ wish, words, random }) => {
        wish.detection = random.pick(words.peakToPeak);
      },
    },
    { name: 'not said', weight: 3 },
    {
      name: '0-p',
      weight: 1,
      fits: (chosen) => chosen['kinds'] === 'radial',
      silentlyWrong: 'zero to peak compared with peak to peak: half',
      apply: ({ wish, words }) => {
        const { unitsOf } = wish;
        wish.unitsOf = (machine) => zeroToPeak(unitsOf(machine));
        wish.detection = words.zeroToPeak;
      },
    },
  ],
};

export const setpointForm: Dimension = {
  name: 'setpoint form',
  options: [
    { name: 'in the unit', weight: 8 },
    {
      name: '% FS as numbers',
      weight: 1,
      fits: (chosen) => chosen['kinds'] === 'radial',
      silentlyWrong: '55 % FS read as 55 µm, near the right size',
      apply: ({ wish }) => {
        wish.percent = 'number';
        wish.quantities.add('full scale');
      },
    },
    {
      name: '% FS as percentages',
      weight: 1,
      fits: (chosen) => chosen['kinds'] === 'radial',
      silentlyWrong: '55 % read as 0.55 or as 55 of the unit',
      apply: ({ wish }) => {
        wish.percent = 'percent cell';
        wish.quantities.add('full scale');
      },
    },
  ],
};

export const kinds: Dimension = {
  name: 'kinds',
  options: [
    { name: 'radial', weight: 8 },
    {
      name: 'one axial among them',
      weight: 1,
      silentlyWrong: 'an axial chain judged as vibration, though its zero voltage is not known',
      apply: ({ wish }) => {
        wish.axial = true;
        wish.quantities.add('kind');
      },
    },
  ],
};

const optional = (...meanings: Meaning[]) => ({
  apply: ({ wish }: { wish: { quantities: Set<Meaning> } }) => {
    for (const meaning of meanings) wish.quantities.add(meaning);
  },
});

export const quantities: Dimension = {
  name: 'quantities',
  options: [
    { name: 'needed ones', weight: 3 },
    { name: 'gap and date', weight: 4, ...optional('gap voltage', 'calibrated on') },
    {
      name: 'gap, date, full scale',
      weight: 4,
      silentlyWrong: 'the full scale taken for a setpoint',
      ...optional('gap voltage', 'calibrated on', 'full scale'),
    },
    {
      name: 'voting and bypass',
      weight: 1,
      silentlyWrong: 'a bypassed channel counted as protecting',
      ...optional('gap voltage', 'full scale', 'voting group', 'voting', 'bypass'),
    },
    {
      name: 'limit and place',
      weight: 1,
      silentlyWrong: 'the limit taken for the danger',
      ...optional('location', 'limit', 'full scale'),
    },
  ],
};

export const setpointWords: Dimension = {
  name: 'setpoint words',
  options: [
    {
      name: 'own words',
      weight: 8,
      apply: ({ wish, words, random }) => {
        wish.setpoints = random.pick(words.setpoints);
      },
    },
    ...(
      [
        ['H', 'HH'],
        ['A1', 'A2'],
        ['HI', 'HI-HI'],
        ['AL', 'DG'],
      ] as const
    ).map((pair) => ({
      name: pair.join('/'),
      weight: 1,
      apply: ({ wish }: { wish: { setpoints: readonly [string, string] } }) => {
        wish.setpoints = pair;
      },
    })),
    {
      name: 'numbered',
      weight: 0.5,
      asks: 'alert and danger, told by their order alone',
      silentlyWrong: 'two columns without a word for alert or danger taken by order',
      apply: (draft) => {
        draft.wish.setpoints = ['SP 1', 'SP 2'];
        draft.accept = ['ask'];
      },
    },
  ],
};
