/** The longest text that is taken for a unit; a header or cell beyond it is prose. */
const LONGEST = 64;

/**
 * A unit text in one plain form: lower case, one spelling of each sign (µ, ·, −, ², ″, brackets), `DC` and the
 * dots of abbreviations gone. `undefined` where the text is empty or too long to be a unit.
 */
export function tidy(text: string): string | undefined {
  if (text.length > LONGEST) return undefined;
  const plain = text
    .replaceAll(/[\u2033\u201c\u201d]/g, '"')
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[\u2010-\u2015\u2212]/g, '-')
    .replaceAll(/[\u00b7\u22c5\u2219\u2022\u00d7]/g, '*')
    .replaceAll(/[\u2044\u2215]/g, '/')
    .replaceAll('[', '(')
    .replaceAll(']', ')')
    .replace(/\bper\s+cent\b/, '%')
    .replace(/\bg['\u2019]s\b/, 'g')
    .replace(/(?<=[va]|volts?|amps?)\s*(?:\(d\.?c\.?\)|-?\s*d\.?c\b\.?)/, '')
    .replaceAll(/(?<=[a-z])\.(?![a-z])/g, '')
    .trim();
  return plain === '' || plain.length > LONGEST ? undefined : plain;
}
