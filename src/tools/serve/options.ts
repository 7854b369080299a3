import { parseArgs } from 'node:util';

export interface ServeOptions {
  readonly port: number;
  /** Whether a browser may be opened. */
  readonly open: boolean;
}

/** Reads the options of `npm start` or of another `command` that serves; throws an Error of one line for others. */
export function serveOptions(args: readonly string[], command: string): ServeOptions {
  const usage = `Usage: ${command} [--port N] [--no-open]`;
  let values;
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: { port: { type: 'string' }, 'no-open': { type: 'boolean' } },
    }));
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : String(error)} ${usage}`, { cause: error });
  }
  const port = Number(values.port ?? 4173);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(
      `--port ${String(values.port)} is no port: give a whole number from 0 to 65535. ${usage}`,
    );
  }
  return { port, open: values['no-open'] !== true };
}
