import type { Options } from '../options.ts';

/** Every file that the command line has the command read, and which it therefore never writes. */
export function filesRead({ inputs, policy, map, since }: Options): readonly string[] {
  return [...inputs, ...[policy, map, since].filter((given) => given !== undefined)];
}
