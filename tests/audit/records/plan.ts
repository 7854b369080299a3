import fc, { type GeneratorValue } from 'fast-check';

/** Points of a record: gap in µm, voltage in V. */
export type Points = readonly (readonly [gap: number, volts: number])[];

export interface PlannedRecord {
  readonly tag: string;
  readonly series: '' | 'as found' | 'as left';
  readonly temperature: string;
  readonly points: Points;
}

export interface PlannedChannel {
  readonly tag: string;
  readonly axial: boolean;
  readonly gapVoltage: number;
  readonly zeroConfigured: number;
  readonly zeroMeasured: number;
  readonly sign: 1 | -1;
  /** mil. */
  readonly alert: number;
  readonly danger: number;
  readonly multiplier: number;
  readonly records: readonly PlannedRecord[];
  /** Levels of a check: µm peak to peak, V peak to peak. */
  readonly levels: Points;
}

/** Chance, one choice at a time; fast-check shrinks each. */
export interface Dice {
  readonly whole: (least: number, most: number) => number;
  readonly real: (least: number, most: number) => number;
  readonly pick: <T>(all: readonly T[]) => T;
  readonly shuffled: <T>(all: readonly T[]) => T[];
}

export function diceOf(gen: GeneratorValue): Dice {
  const whole = (min: number, max: number): number => gen(fc.integer, { min, max });
  return {
    whole,
    real: (min, max) => min + (max - min) * (whole(0, 1_000_000) / 1_000_000),
    pick: (all) => all[whole(0, all.length - 1)]!,
    shuffled: (all) => {
      const left = [...all];
      return all.map(() => left.splice(whole(0, left.length - 1), 1)[0]!);
    },
  };
}

/** Straight, with a little noise, or bent: every step has a sensitivity of its own; the voltage falls all the way. */
function points({ whole, real, pick }: Dice): Points {
  const count = whole(5, 15);
  const [sensitivity, bend, noise] = [real(5, 10), pick([0, 0, 0.25]), pick([0, 0.02])];
  let [gap, volts] = [real(100, 400), real(-1.5, -0.5)];
  return Array.from({ length: count }, (_, at) => {
    if (at > 0) {
      const step = real(80, 220);
      gap += step;
      const own = sensitivity * (1 - bend * (at / count) ** 2 + noise * real(-1, 1));
      volts -= (own * step) / 1000;
    }
    return [gap, volts] as const;
  });
}

/** A few channels with their records; only those in long tables name temperatures. */
export function planned(dice: Dice, temperatures: boolean): PlannedChannel[] {
  const { whole, real, pick } = dice;
  return Array.from({ length: whole(1, 4) }, (_, at): PlannedChannel => {
    const tag = `P-${at + 101}`;
    const others = pick<readonly (readonly [PlannedRecord['series'], string])[]>([
      [['', '']],
      [['as left', '']],
      [
        ['as left', ''],
        ['as found', ''],
      ],
      temperatures
        ? [
            ['as found', '20'],
            ['as found', '80'],
            ['as left', '20'],
          ]
        : [['as found', '']],
    ]);
    const records = others.map(([series, temperature]) => ({
      tag,
      series,
      temperature,
      points: points(dice),
    }));
    const volts = records[0]!.points.map(([, volt]) => volt);
    const within = (from: number, to: number): number =>
      volts[0]! + real(from, to) * (volts.at(-1)! - volts[0]!);
    const alert = real(1, 6);
    return {
      tag,
      axial: pick([false, false, true]),
      // Never at the very end, where the last digit decides; one in five outside.
      gapVoltage: pick([0, 0, 0, 0, 1]) === 0 ? within(0.02, 0.98) : within(1.05, 1.2),
      zeroConfigured: within(0.3, 0.7),
      zeroMeasured: within(0.3, 0.7),
      sign: pick([1, -1]),
      alert,
      danger: alert + real(0.5, 20),
      multiplier: pick([1, 1, 2.5]),
      records,
      levels: Array.from({ length: pick([0, 0, 1, 4]) }, () => {
        const level = real(20, 200);
        return [level, level * real(0.006, 0.009)] as const;
      }),
    };
  });
}
