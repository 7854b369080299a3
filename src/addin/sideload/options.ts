import { parseArgs } from 'node:util';

/** What a person asked of the sideloading cannot be done: one line for them. */
export class SideloadRefused extends Error {
  override readonly name = 'SideloadRefused';
}

export interface SideloadOptions {
  /** A network share such as `\\files\addins`. */
  readonly share?: string;
}

/**
 * The options of the sideload command.
 * @throws SideloadRefused where an option is unknown, or the share is no network path.
 */
export function parseOptions(args: readonly string[]): SideloadOptions {
  const { share } = parse(args);
  if (share === undefined) return {};
  if (!/^\\\\[^\\/:*?"<>|\r\n]+(\\[^\\/:*?"<>|\r\n]+)+\\?$/.test(share)) {
    throw new SideloadRefused(String.raw`--share ${share}: give a network path such as \\files\addins`);
  }
  return { share: share.replace(/\\$/, '') };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: { share: { type: 'string' } } }).values;
  } catch (error) {
    throw new SideloadRefused(error instanceof Error ? error.message : String(error));
  }
}
