import { parseArgs } from 'node:util';
import { AddressRefused, LOCAL_ADDRESS, parseAddress } from './address.ts';

export interface BuildOptions {
  /** Where the files will be served, as parseAddress gives it. */
  readonly address: string;
  /** Takes Office.js from Microsoft's public address, not from our own. */
  readonly cdn: boolean;
}

/**
 * The options of the build command.
 * @throws AddressRefused where an option is unknown or the address is of no use.
 */
export function parseOptions(args: readonly string[]): BuildOptions {
  const { origin, cdn = false } = parse(args);
  return { address: parseAddress(origin ?? LOCAL_ADDRESS), cdn };
}

function parse(args: readonly string[]) {
  try {
    const options = { origin: { type: 'string' }, cdn: { type: 'boolean' } } as const;
    return parseArgs({ args: [...args], options }).values;
  } catch (error) {
    throw new AddressRefused(error instanceof Error ? error.message : String(error));
  }
}
