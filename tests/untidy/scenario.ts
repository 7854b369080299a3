import type { Random } from './random.ts';

/** How a plant writes sensitivities and displacements; factors lead to mV/mil and mil peak to peak. */
export interface UnitSystem {
  readonly name: string;
  readonly configured: WrittenUnit;
  readonly measured: WrittenUnit;
  readonly displacement: WrittenUnit;
  readonly detection: 'p-p' | '0-p';
}

export interface WrittenUnit {
  readonly text: string;
  /** mV/mil or mil in one of it; for 0-p the factor to peak to peak is in it. */
  readonly factor: number;
  readonly decimals: number;
}

/** One measuring chain with its settings, in the numbers that the sheet shows. */
export interface Channel {
  readonly machine: string;
  readonly bearing: string;
  readonly direction: 'X' | 'Y';
  readonly tag: string;
  readonly kind: 'radial' | 'axial';
  readonly units: UnitSystem;
  readonly configured: number;
  readonly measured: number;
  /** Measured again after adjustment. */
  readonly left: number;
  /** An earlier measurement, well within: what a trap would audit in place of `measured`. */
  readonly earlier: number;
  readonly alert: number;
  readonly danger: number;
  readonly fullScale: number;
  /** Setpoints in % of full scale. */
  readonly alertPercent: number;
  readonly dangerPercent: number;
  readonly limit: number;
  readonly gapVoltage: number;
  /** Days since 1970-01-01. */
  readonly testedOn: number;
  readonly group: string;
  readonly voting: string;
  readonly bypass: boolean;
}

export interface ScenarioWish {
  readonly machines: readonly string[];
  readonly unitsOf: (machine: number) => UnitSystem;
  /** The same tags on every machine, told apart by the machine alone. */
  readonly repeatedTags: boolean;
  readonly percent: boolean;
  /** One chain of the last machine watches axial position. */
  readonly axial: boolean;
  readonly bearings: number;
}

const tagStyles: readonly ((area: number, bearing: number, direction: string) => string)[] = [
  (area, bearing, direction) => `VT-${area}${bearing}${direction === 'X' ? 'A' : 'B'}`,
  (area, bearing, direction) => `${area}-XE-${bearing}${direction === 'X' ? 1 : 2}`,
  (area, bearing, direction) => `K-${area}0 ${bearing}${direction}`,
  (area, bearing, direction) => `${area}MAD1${bearing}CY0${direction === 'X' ? 11 : 12}`,
  (area, bearing, direction) => `ZT${area}.${bearing}.${direction === 'X' ? 45 : 135}`,
];

/**
 * Machines with their chains. Sensitivities lie at least 2.4 % clear of both ends of the tolerance (rounding included),
 * setpoints in order and below full scale, every machine with other setpoints than the one before.
 */
export function scenario(wish: ScenarioWish, random: Random): readonly Channel[] {
  const style = random.pick(tagStyles);
  const from = random.whole(11, 79);
  const limitRoom = random.pick([1.3, 1.5]);
  const day = random.whole(20_450, 20_600);
  const outcomes = random.shuffled(['late', 'within', 'early', 'late', 'within'] as const);
  let turn = 0;
  return wish.machines.flatMap((machine, index) => {
    const units = wish.unitsOf(index);
    const zeroToPeak = units.detection === '0-p' ? 0.5 : 1;
    const metric = units.displacement.text.startsWith('µ') || units.displacement.text.startsWith('mm');
    const mils = units.displacement.text.startsWith('mil');
    const scale = mils ? 1 : metric && units.displacement.text.startsWith('mm') ? 0.0254 : 25.4;
    const nominal = random.pick([200, 200, 100]);
    const base = 3.6 + 0.5 * index + 0.1 * random.whole(0, 3);
    const step = mils ? 0.1 * zeroToPeak : scale < 1 ? 0.005 * zeroToPeak : 5 * zeroToPeak;
    const rounded = (mil: number): number => tidy(Math.round((mil * scale * zeroToPeak) / step) * step);
    const fullScale = tidy((mils ? 10 : scale < 1 ? 0.25 : 250) * zeroToPeak);
    const alertPercent = 26 + 3 * index + random.whole(0, 2);
    const dangerPercent = alertPercent + random.whole(18, 24);
    const alert = wish.percent ? tidy((alertPercent * fullScale) / 100) : rounded(base * 0.6);
    const danger = wish.percent ? tidy((dangerPercent * fullScale) / 100) : rounded(base);
    const sensitivity = (unit: WrittenUnit, mvPerMil: number): number =>
      tidy(Number((mvPerMil / unit.factor).toFixed(unit.decimals)));
    return Array.from({ length: wish.bearings * 2 }, (_, place): Channel => {
      const bearing = Math.floor(place / 2) + 1;
      const direction = place % 2 === 0 ? 'X' : 'Y';
      const last = index === wish.machines.length - 1 && place === wish.bearings * 2 - 1;
      const axial = wish.axial && last;
      const configured = sensitivity(units.configured, nominal);
      const really = configured * units.configured.factor;
      const outcome = axial ? 'within' : outcomes[turn++ % outcomes.length]!;
      const ratio =
        outcome === 'late'
          ? random.whole(780, 900) / 1000
          : outcome === 'early'
            ? random.whole(1085, 1180) / 1000
            : random.whole(980, 1020) / 1000;
      const within = (): number => sensitivity(units.measured, (really * random.whole(985, 1015)) / 1000);
      return {
        machine,
        bearing: `B${index * wish.bearings + bearing}`,
        direction,
        tag: wish.repeatedTags
          ? `${['DE', 'NDE', 'GB'][bearing - 1] ?? `B${bearing}`}-${direction}`
          : style(from + index, bearing, direction),
        kind: axial ? 'axial' : 'radial',
        units,
        configured,
        measured: sensitivity(units.measured, really * ratio),
        left: random.chance(0.75) ? within() : sensitivity(units.measured, really * ratio * 1.005),
        earlier: within(),
        alert,
        danger,
        fullScale,
        alertPercent,
        dangerPercent,
        limit: rounded(base * limitRoom),
        gapVoltage: -(random.whole(84, 104) / 10),
        testedOn: day + index,
        group: `${index + 1}`,
        voting: '2oo2',
        bypass: random.chance(0.12),
      };
    });
  });
}

/** Without the trailing digits that binary arithmetic leaves. */
function tidy(value: number): number {
  return Number(value.toPrecision(8));
}
