import { takeDetection } from './detection.ts';
import { powersOf, type Powers } from './expression.ts';
import { tidy } from './tidy.ts';
import type { Unit, Quantity } from './unit.ts';
import type { Atom, Axis } from './atoms.ts';
export type { Detection, Dimension, Unit } from './unit.ts';

const SECONDS_PER_DAY = 86_400;

interface QuantityUnit {
  readonly text: string;
  readonly dimension: Quantity;
  readonly factor: number;
}

type Parts = readonly (readonly [Atom, number])[];

const PLAIN: Readonly<Partial<Record<Axis, Quantity>>> = {
  length: 'displacement',
  gravity: 'acceleration',
  percent: 'percent',
};

const PER_MINUTE =
  'rpm r/min rev/min revs/min revpermin revolutions/min revolutions/minute revolutionsperminute ' +
  'cpm c/min cycle/min cycles/min cyclesperminute 1/min min-1 min^-1';

const PER_SECOND = 'hz hertz 1/s s-1 s^-1 c/s cps cycles/s cyclespersecond';

interface Frequency {
  readonly text: string;
  /** To Hz. */
  readonly factor: number;
}

const FREQUENCIES: ReadonlyMap<string, Frequency> = new Map<string, Frequency>([
  ...PER_MINUTE.split(' ').map((spelling): [string, Frequency] => [
    spelling,
    { text: 'r/min', factor: 1 / 60 },
  ]),
  ...PER_SECOND.split(' ').map((spelling): [string, Frequency] => [spelling, { text: 'Hz', factor: 1 }]),
]);

/** Distinct texts kept; a workbook has a few dozen, and a hostile one must not fill the memory. */
const KEPT = 2000;
const known = new Map<string, Unit | undefined>();

/**
 * The unit a text names, in any case and spelling people use: `mils`, `mV per mil`, `V DC`, `in/s pk`, `µm p-p`.
 * `undefined` for any other text. Factors are exact definitions: `atoms.ts`. Each distinct text is read once.
 */
export function parseUnit(text: string): Unit | undefined {
  if (known.has(text)) return known.get(text);
  const unit = read(text);
  if (known.size < KEPT && text.length < KEPT) known.set(text, unit);
  return unit;
}

function read(text: string): Unit | undefined {
  const tidied = tidy(text);
  const detected = tidied === undefined ? undefined : takeDetection(tidied);
  if (detected === undefined) return undefined;
  const { rest, detection } = detected;
  const unit = frequencyUnit(rest) ?? quantityOrSignal(rest);
  return unit && (detection === undefined ? unit : { ...unit, detection });
}

function frequencyUnit(rest: string): Unit | undefined {
  const frequency = frequencyOf(rest);
  return frequency && { ...frequency, dimension: 'frequency' };
}

function quantityOrSignal(rest: string): Unit | undefined {
  const powers = powersOf(rest);
  return powers && compose(powers);
}

/** A speed or frequency by its tidied text; `undefined` where the text is none. */
function frequencyOf(tidied: string): Frequency | undefined {
  return FREQUENCIES.get(tidied.replaceAll(/[\s.]/g, ''));
}

/** The unit that powers of simple units make, or `undefined` where they make none that a protection channel uses. */
function compose(powers: Powers): Unit | undefined {
  const parts = [...powers].filter(([, power]) => power !== 0);
  const electrical = parts.filter(([{ axis }]) => axis === 'voltage' || axis === 'current');
  if (electrical.length === 0) return timeUnit(parts) ?? quantityUnit(parts) ?? growthUnit(parts);
  const [signal, second] = electrical;
  if (signal?.[1] !== 1 || second !== undefined) return undefined;
  const rest = parts.filter((part) => part !== signal);
  return rest.length === 0 ? signalUnit(signal[0]) : sensitivityUnit(signal[0], rest);
}

function signalUnit({ text, axis, factor }: Atom): Unit {
  return axis === 'current'
    ? { text, dimension: 'current', factor }
    : { text, dimension: 'voltage', factor: factor / 1000 };
}

function sensitivityUnit(signal: Atom, rest: Parts): Unit | undefined {
  const quantity = quantityUnit(measured(rest));
  if (quantity === undefined) return undefined;
  const axis = signal.axis === 'current' ? 'current' : 'voltage';
  const bracketed = quantity.text.includes('/') ? `(${quantity.text})` : quantity.text;
  return {
    text: `${signal.text}/${bracketed}`,
    dimension: `${axis}/${quantity.dimension}`,
    factor: signal.factor / quantity.factor,
  };
}

/**
 * The quantity under the line of a sensitivity. `mV/in/s` read strictly is mV·in⁻¹·s⁻¹, which measures nothing:
 * it is mV/(in/s) written without its brackets.
 */
function measured(rest: Parts): Parts {
  const bracketsLeftOut = rest.every(([, power]) => power < 0);
  return rest.map(([atom, power]) => [atom, bracketsLeftOut && atom.axis === 'time' ? power : -power]);
}

function timeUnit(parts: Parts): Unit | undefined {
  const [only, second] = parts;
  if (only?.[0].axis !== 'time' || only[1] !== 1 || second !== undefined) return undefined;
  return { text: only[0].text, dimension: 'time', factor: only[0].factor };
}

/** A velocity is a length per second; a length per minute, hour or day is a growth. */
function quantityUnit(parts: Parts): QuantityUnit | undefined {
  const [first, second] = [...parts].sort((a, b) => b[1] - a[1]);
  if (first?.[1] !== 1 || parts.length > 2) return undefined;
  const { text, axis, factor } = first[0];
  if (second === undefined) return plainQuantity(first[0]);
  if (axis !== 'length' || second[0].text !== 's') return undefined;
  if (second[1] === -1) return { text: `${text}/s`, dimension: 'velocity', factor: factor / 1000 };
  if (second[1] === -2) return { text: `${text}/s²`, dimension: 'acceleration', factor: factor / 1_000_000 };
  return undefined;
}

function plainQuantity({ text, axis, factor }: Atom): QuantityUnit | undefined {
  const dimension = PLAIN[axis];
  return dimension && { text, dimension, factor };
}

function growthUnit(parts: Parts): Unit | undefined {
  for (const part of parts) {
    const [time, power] = part;
    if (time.axis !== 'time' || power !== -1) continue;
    const quantity = quantityUnit(parts.filter((other) => other !== part));
    if (quantity === undefined) continue;
    const bracketed = quantity.text.includes('/') ? `(${quantity.text})` : quantity.text;
    return {
      text: `${bracketed}/${time.text}`,
      dimension: `${quantity.dimension}/time`,
      factor: quantity.factor * (SECONDS_PER_DAY / time.factor),
    };
  }
  return undefined;
}
