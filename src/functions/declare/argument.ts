import type { Dimension, Unit } from '../../units/unit.ts';
import type { RangeName } from './numberRange.ts';

interface Described {
  readonly name: string;
  readonly description: string;
}

/** A number; `otherwise` stands where it is left out, and its absence makes the argument required. */
export interface NumberArgument<T extends number | null = number | null> extends Described {
  readonly kind: 'number';
  readonly range: RangeName;
  readonly otherwise?: T;
}

/** One of a few texts, in any case. */
export interface ChoiceArgument<T extends string = string> extends Described {
  readonly kind: 'choice';
  readonly choices: readonly T[];
  readonly otherwise?: T;
}

/** A unit by its text. */
export interface UnitArgument extends Described {
  readonly kind: 'unit';
  /** What the unit may measure; any where left out. */
  readonly dimensions?: readonly Dimension[];
  /** Units to name in messages. */
  readonly such: string;
  readonly otherwise?: string;
}

/** Effective thresholds of the members of a group, read together; text and errors are members that cannot act. */
export interface MembersArgument extends Described {
  readonly kind: 'members';
}

/** A row or column read together, each cell as `cells` says; a blank cell keeps its place. */
export interface SeriesArgument<
  T extends NumberArgument<number> | ChoiceArgument = NumberArgument<number> | ChoiceArgument,
> extends Described {
  readonly kind: 'series';
  readonly cells: T;
  /** An empty list where the argument may be left out. */
  readonly otherwise?: readonly [];
  /** Whether a text or an error among several cells stands for what has no number: `NaN`. */
  readonly orText?: boolean;
}

/** Names in a row or column read together, such as batches; a blank cell keeps its place. */
export interface LabelsArgument extends Described {
  readonly kind: 'labels';
  readonly otherwise: readonly [];
}

/** Whether something holds: TRUE or FALSE, 1 or 0, or a word for either. */
export interface SwitchArgument extends Described {
  readonly kind: 'switch';
  readonly on: readonly string[];
  readonly off: readonly string[];
  readonly otherwise: boolean;
}

export type Argument =
  | NumberArgument
  | ChoiceArgument
  | UnitArgument
  | MembersArgument
  | SeriesArgument
  | LabelsArgument
  | SwitchArgument;

/** What the function receives for an argument. */
type Value<A> =
  A extends NumberArgument<infer T>
    ? number | T
    : A extends ChoiceArgument<infer T>
      ? T
      : A extends UnitArgument
        ? Unit
        : A extends MembersArgument
          ? readonly number[]
          : A extends SeriesArgument<infer T>
            ? Series<T>
            : A extends LabelsArgument
              ? readonly (string | null)[]
              : A extends SwitchArgument
                ? boolean
                : never;

/** The cells of a row or column in their order, `null` where one is blank. */
type Series<T extends NumberArgument<number> | ChoiceArgument> = readonly (
  (T extends ChoiceArgument<infer C> ? C : number) | null
)[];

export type Values<A extends readonly Argument[]> = { -readonly [I in keyof A]: Value<A[I]> };

/** Whether the argument may be left out. */
export function optional(argument: Argument): boolean {
  return 'otherwise' in argument;
}

/** The name of an argument as it begins a message: `zeroConfigured` → `Zero configured`. */
export function label({ name }: Argument): string {
  const words = name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function number(name: string, range: RangeName, description: string): NumberArgument<number> {
  return { kind: 'number', name, range, description };
}

export function optionalNumber<T extends number | null>(
  name: string,
  range: RangeName,
  otherwise: T,
  description: string,
): NumberArgument<T> {
  return { kind: 'number', name, range, otherwise, description };
}

/** A row or column of numbers. */
export function series(
  name: string,
  range: RangeName,
  description: string,
): SeriesArgument<NumberArgument<number>> {
  return { kind: 'series', name, description, cells: number(name, range, description) };
}

/** A row or column of numbers that may hold texts and errors, each standing for what has no number. */
export function seriesOrText(
  name: string,
  range: RangeName,
  description: string,
): SeriesArgument<NumberArgument<number>> {
  return { ...series(name, range, description), orText: true };
}
