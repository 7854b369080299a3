import type { ThresholdVerdict } from './threshold.ts';

/** The verdicts as people see them; their names in the report are an interface and stay. */
export const verdictWords: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable: 'cannot act',
  late: 'late',
  undetermined: 'uncertain',
  early: 'early',
  incomplete: 'not known',
  within: 'OK',
};

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

/**
 * A level at the step of its instrument or one digit finer, for people; three significant digits where no step is known:
 * 6.2500 in steps of 0.1 → `6.25`, 158.74 without → `159`.
 */
export function level(value: number, resolution: number | null): string {
  if (!Number.isFinite(value)) return '∞';
  const digits =
    resolution === null
      ? Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value) || 1)))
      : Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9) + 1);
  const shown = Number(value.toFixed(Math.min(20, digits)));
  return String(shown === 0 ? 0 : shown).replace('-', '−');
}

/** A time span for people: 0.42 → `0.4 s`, 18.3 → `18 s`, 400 → `6 min 40 s`, 7500 → `2 h 5 min`. Seconds, of either sign. */
export function duration(seconds: number): string {
  const size = Math.abs(seconds);
  if (size < 9.95) return `${Number(size.toFixed(1))} s`;
  if (size < 59.5) return `${Math.round(size)} s`;
  const whole = Math.round(size);
  if (whole < 3600) return `${Math.floor(whole / 60)} min${whole % 60 === 0 ? '' : ` ${whole % 60} s`}`;
  const minutes = Math.round(size / 60);
  if (minutes < 2880)
    return `${Math.floor(minutes / 60)} h${minutes % 60 === 0 ? '' : ` ${minutes % 60} min`}`;
  return `${Math.round(size / 86_400)} days`;
}

/** The day of an ISO 8601 time, as its own clock shows it: `2026-11-29`. */
export function dayOf(time: string): string {
  return time.slice(0, 10);
}

/** The time of day of an ISO 8601 time, as its own clock shows it: `23:48:20`; `fine`: `23:48:20.4`. */
export function clockOf(time: string, fine: boolean = false): string {
  return time.slice(11, fine && time.charAt(19) === '.' ? 21 : 19);
}

/** Names in a row, for people: `1X`, `1X and 1Y`, `1X, 1Y and 2X`. */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** The same, of many names no more than `most`: `1X, 1Y and 7 more`. */
export function listedUpTo(names: readonly string[], most: number): string {
  const more = names.length - most;
  return more > 0 ? `${names.slice(0, most).join(', ')} and ${more} more` : listed(names);
}
