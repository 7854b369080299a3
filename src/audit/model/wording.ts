/** A number for people: four significant digits, without trailing zeros or an exponent in the usual range. */
export function rounded(value: number): string {
  if (Number.isInteger(value) && value >= 0 && value < 10_000) return String(value);
  if (!Number.isFinite(value)) return '∞';
  const digits = Number(value.toPrecision(4));
  return String(digits === 0 ? 0 : digits).replace('-', '−');
}

/** A number with its unit, for people. */
export function amount(value: number, unit: string): string {
  return unit === '' ? rounded(value) : `${rounded(value)} ${unit}`;
}

/** A fraction as a percentage, for people: 0.25 → `25 %`. */
export function percent(fraction: number): string {
  const value = Number((100 * fraction).toPrecision(3));
  return `${String(value === 0 ? 0 : value).replace('-', '−')} %`;
}

/** The first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
