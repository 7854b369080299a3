import { lineOf } from '../command.ts';

/** Begins the line about an error that nobody expected. */
export const failed = 'The audit failed unexpectedly';

/** Why an audit came to nothing, in one line for a person; what nobody expected is said to be that. */
export function reasonOf(error: unknown): string {
  return lineOf(error, failed);
}
