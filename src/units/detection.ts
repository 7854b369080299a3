import type { Detection } from './unit.ts';
import { tidy } from './tidy.ts';

const BEFORE = '(?<![a-zμ0-9])';

const AFTER = '(?![a-zμ0-9])';

const PEAK = '(?:peak|pk|p)';

const GAP = '[\\s_/-]*';

const BOTH_PEAKS = `${PEAK}${GAP}(?:to|t|2)?${GAP}${PEAK}`;

/** Longest form first: `0-pk` holds `pk`, and `pk-pk` holds it twice. */
const WORDS: readonly (readonly [Detection, RegExp])[] = [
  ['p-p', new RegExp(`${BEFORE}(?:s_?)?(?:\\(${BOTH_PEAKS}\\)|${BOTH_PEAKS}${AFTER})`)],
  ['0-p', new RegExp(`${BEFORE}(?:0|zero|o)${GAP}(?:to)?${GAP}${PEAK}${AFTER}`)],
  ['0-p', new RegExp(`${BEFORE}(?:peak|pk)${AFTER}`)],
  ['rms', new RegExp(`${BEFORE}r\\.?m\\.?s\\.?${AFTER}`)],
];

/** `milpp`, `ipspk`, `grms`: a detection written onto its unit. `Spp` is a symbol of its own. */
const GLUED = /(?<!^s|\ss)(?<=[a-zμ"%2])(?<!\bpk)(pp|pkpk|pk|rms)$/;

interface Detected {
  /** The tidied text without the words. */
  readonly rest: string;
  readonly detection?: Detection;
}

/** Peak-to-peak size of a sinusoid whose size in this detection is 1. */
const PEAK_TO_PEAK: Readonly<Record<Detection, number>> = { 'p-p': 1, '0-p': 2, rms: 2 * Math.SQRT2 };

/**
 * A size in another detection, exact for a sinusoid alone: p-p = 2 × 0-p, 0-p = √2 × rms. Any number in any unit.
 * Source: definition of the sinusoid's amplitude and mean square.
 */
export function convertDetection(value: number, from: Detection, to: Detection): number {
  return from === to ? value : (value * PEAK_TO_PEAK[from]) / PEAK_TO_PEAK[to];
}

/** Takes the detection words out of a tidied unit text; `undefined` where two different ones stand in it. */
export function takeDetection(tidied: string): Detected | undefined {
  let rest = tidied.replace(GLUED, ' $1');
  let detection: Detection | undefined;
  for (const [found, pattern] of WORDS) {
    const without = rest.replace(pattern, ' ');
    if (without === rest) continue;
    if (detection !== undefined && detection !== found) return undefined;
    detection = found;
    rest = without;
  }
  return detection === undefined ? { rest } : { rest: withoutLeftovers(rest), detection };
}

/** The brackets, commas and dashes that held the words go with them. */
function withoutLeftovers(rest: string): string {
  return rest.replaceAll(/\(\s*\)|[,;:]/g, ' ').replaceAll(/^[\s_-]+|[\s_-]+$/g, '');
}

/** A detection named alone, as in a column of its own (`p-p`, `0-pk`, `RMS`); `undefined` for any other text. */
export function parseDetection(text: string): Detection | undefined {
  const tidied = tidy(text);
  const found = tidied === undefined ? undefined : takeDetection(tidied);
  return found?.rest === '' ? found.detection : undefined;
}
