import type { Listed } from './tables.ts';

const ratios = [
  0.5,
  0.9,
  0.93,
  0.95,
  0.95 * (1 - 1e-9),
  0.97,
  0.999_999,
  1,
  1.02,
  1.05,
  1.05 * (1 + 1e-9),
  1.08,
  1.3,
];
const uncertainties = [undefined, 0.2, 2, 3, 5, 30];
const zeros = [
  [undefined, undefined],
  [-10, -10],
  [-10, -9.2],
  [-10, -11.1],
  [-10, -15.5],
] as const;

/** Radial channels: every ratio with every uncertainty, some with a limit, a reading, a gap or a multiplier. */
const radial: readonly Listed[] = ratios.flatMap((ratio, a) =>
  uncertainties.map((uncertainty, b): Listed => ({
    tag: `R-${a}-${b}`,
    measured: 200 * ratio,
    configured: 200,
    alert: 3,
    danger: 4.7,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(b % 2 === 0 ? { limit: 4.9, gap: -16.95 } : { fullScale: 4.7 }),
    ...(a % 3 === 0 ? { multiplier: 2.5, coverage: 3 } : { reading: 1.1 }),
    group: `Group ${a}`,
    voting: `${(a % 3) + 1}oo6`,
    ...(b === 3 ? { bypass: true } : {}),
  })),
);

/** Position channels of either direction with a zero that is unknown, right, or moved until thresholds cross it. */
const axial: readonly Listed[] = ratios.flatMap((ratio, a) =>
  zeros.flatMap(([zeroConfigured, zeroMeasured], b) =>
    (['toward', 'away'] as const).map((direction): Listed => ({
      tag: `A-${a}-${b}-${direction}`,
      kind: 'axial',
      measured: 200 * ratio,
      configured: 200,
      alert: 10,
      danger: 20,
      counterAlert: 12,
      counterDanger: a % 2 === 0 ? 22 : 41,
      direction,
      ...(zeroConfigured === undefined ? {} : { zeroConfigured }),
      ...(zeroMeasured === undefined ? {} : { zeroMeasured }),
      ...(a % 2 === 0 ? { uncertainty: 3, limit: 21, reading: 4 } : { fullScale: 20 }),
      group: `Thrust ${a} ${direction}`,
      voting: '2oo5',
    })),
  ),
);

/** Monitors with a gain, positions with an uncertain zero, and current loops with their ends measured. */
const chains: readonly Listed[] = [0.9, 1.04].flatMap((gain, a) =>
  [0.9, 0.95, 0.97, 1.02, 1.08, 1.3].flatMap((ratio, b): Listed[] => {
    const ofGain = { gain, ...(b % 2 === 0 ? { gainUncertainty: 1.5 } : {}) };
    const known = b % 3 === 0 ? {} : { uncertainty: 2 };
    const ofLoop = { loopAtZero: 4 + 0.1 * (a - 1), loopAtSpan: 20 * ratio + 0.2, kind: 'loop', ...known };
    const ends = b % 2 === 0 ? { loopAtZeroUncertainty: 0.05, loopAtSpanUncertainty: 0.1 } : {};
    return [
      {
        tag: `GR-${a}-${b}`,
        measured: 200 * ratio,
        configured: 200,
        alert: 3,
        danger: 4.7,
        runout: 0.4 + 0.5 * b,
        limit: 5,
        reading: 2,
        ...ofGain,
        ...known,
      },
      {
        ...{
          tag: `GA-${a}-${b}`,
          kind: 'axial',
          measured: 200 * ratio,
          configured: 200,
          alert: 10,
          danger: 20,
        },
        ...{ counterDanger: 22, direction: 'away', zeroConfigured: -10, zeroMeasured: -9.6, limit: 21 },
        ...{ zeroUncertainty: 0.05 * b, reading: 4, ...ofGain, ...known },
      },
      {
        tag: `GL-${a}-${b}`,
        measured: 0.8 * ratio,
        configured: 0.8,
        alert: 5,
        danger: 7.1,
        limit: 7.5,
        reading: 2,
        sensitivityUnit: 'mA/(mm/s)',
        unit: 'mm/s',
        ...ofGain,
        ...ofLoop,
        ...ends,
      },
      {
        tag: `GV-${a}-${b}`,
        measured: 95,
        configured: 100,
        alert: 5,
        danger: 7.1,
        limit: 7.5,
        fullScale: 20,
        sensitivityUnit: 'mV/(mm/s)',
        unit: 'mm/s',
        ...ofGain,
        ...ofLoop,
        ...ends,
      },
    ];
  }),
);

/** Channels whose verdicts lie on and about every limit of the decision. */
export const sweep: readonly Listed[] = [...radial, ...axial, ...chains];
