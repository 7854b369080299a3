import { invalidArgument } from './hostError.ts';
import type { HostObject } from './hostObject.ts';

/** Each takes a value that was set, and refuses what Excel refuses. */
export function truth(value: unknown): boolean {
  if (typeof value !== 'boolean') throw invalidArgument();
  return value;
}

export function number(value: unknown): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) throw invalidArgument();
  return value;
}

/**
 * Titles and names hold 255 characters, and one that begins with `=` is a formula, which no title here should be (common
 * practice of spreadsheet programs, no source).
 */
export function text(value: unknown): string {
  if (typeof value !== 'string' || value.length > 255 || value.startsWith('=')) throw invalidArgument();
  return value;
}

export function color(value: unknown): string {
  if (typeof value !== 'string' || !/^#[0-9A-F]{6}$/i.test(value)) throw invalidArgument();
  return value;
}

export function measure(least: number, most: number): (value: unknown) => number {
  return (value) => {
    const held = number(value);
    if (held < least || held > most) throw invalidArgument();
    return held;
  };
}

export function oneOf(words: readonly string[]): (value: unknown) => string {
  return (value) => {
    if (typeof value !== 'string' || !words.includes(value)) throw invalidArgument();
    return value;
  };
}

const lineStyle = oneOf(['None', 'Continuous', 'Dash', 'DashDot', 'DashDotDot', 'Dot', 'RoundDot']);

/** What the line of a grid or a series takes. */
export const lineChecks = { Color: color, Weight: measure(0, 1_584), LineStyle: lineStyle };

export type Check = (value: unknown) => unknown;
export type Setters = (
  group: string,
  checks: Readonly<Record<string, Check>>,
) => NonNullable<HostObject['set']>;

/** Setters that keep what was set under `group.name`, once it was checked. */
export function settableOf(kept: Map<string, unknown>, write: () => void): Setters {
  return (group, checks) =>
    Object.fromEntries(
      Object.entries(checks).map(([name, check]) => [
        name,
        (value: unknown) => {
          write();
          kept.set(group === '' ? name : `${group}.${name}`, check(value));
        },
      ]),
    );
}
