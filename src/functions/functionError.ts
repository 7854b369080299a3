/** Error values that a spreadsheet cell can show. The functions themselves give the first three; others only pass through. */
export type ErrorCode = '#VALUE!' | '#NUM!' | '#N/A' | '#DIV/0!' | '#NULL!' | '#NAME?' | '#REF!';

/**
 * An error as a value: the result of a function that cannot answer. It is returned, never thrown, so that one bad
 * cell of a column leaves the others their results.
 */
export class FunctionError {
  readonly code: ErrorCode;
  /** Under 100 characters, names the argument and the cure; empty where an error only passes through. */
  readonly message: string;

  constructor(code: ErrorCode, message: string) {
    this.code = code;
    this.message = message;
  }
}

/** Input that can't be used: a spreadsheet shows the message of this code beside the cell. */
export function refused(message: string): FunctionError {
  return new FunctionError('#VALUE!', message);
}

/** Sound input that has no answer. */
export function notAvailable(message: string): FunctionError {
  return new FunctionError('#N/A', message);
}
