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

/** A speed or frequency by its tidied text; `undefined` where the text is none. */
export function frequencyOf(tidied: string): Frequency | undefined {
  return FREQUENCIES.get(tidied.replaceAll(/[\s.]/g, ''));
}
