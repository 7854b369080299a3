/** Significant digits in which the numbers of inputs count. */
export const inputDigits = 12;

/**
 * A number to some significant digits, at most 15. Programs that store 15 digits give the same number as those that
 * store all: it is brought to 15 first. A zero has no sign.
 */
export function canonicalNumber(value: number, digits: number): number {
  return isShort(value, digits) ? value + 0 : Number(Number(value.toPrecision(15)).toPrecision(digits)) + 0;
}

/** Whether a number is one of few decimals and no more than these digits, as nearly all that people write are. */
function isShort(value: number, digits: number): boolean {
  const scale = digits > 9 ? 1e6 : 1e4;
  const scaled = Math.round(value * scale);
  return scaled / scale === value && Math.abs(scaled) < 10 ** digits;
}

/** Line breaks as one character each, since files of different programs store them differently. */
export function canonicalText(text: string): string {
  return text.includes('\r') ? text.replace(/\r\n?/gu, '\n') : text;
}

/** Data as JSON with the keys of every object in order and numbers to `inputDigits`, so that equal data is equal text. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part === 'number') return canonicalNumber(part, inputDigits);
    if (part === null || typeof part !== 'object' || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).toSorted(([a], [b]) => (a < b ? -1 : 1)));
  });
}
