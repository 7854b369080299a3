/**
 * The arithmetic of a function as a spreadsheet without it can do it. A text is a formula of functions that every
 * spreadsheet program has, over the names of the arguments; a unit stands for its factor, an argument left out for what
 * stands in its place. The ranges of the arguments are seen to where it is used, so it holds for arguments in their
 * ranges alone, and goes over ranges place by place.
 */
export type Native = string | NativeBy | NativePair;

/** A form for each choice of an argument; of a number that may be left out, `given` and `left out`. */
export interface NativeBy {
  readonly by: string;
  readonly forms: Readonly<Record<string, string>>;
}

/** The two cells of a pair. */
export interface NativePair {
  readonly low: string;
  readonly high: string;
}
