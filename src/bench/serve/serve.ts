import process from 'node:process';
import { benchPolicy } from '../policy.ts';
import { browserIsLikely, openBrowser } from './openBrowser.ts';
import type { ServeOptions } from './options.ts';
import { folderServer, listenHere } from './server.ts';

/**
 * Serves a built bench to this machine until the process ends, prints its address and, where a person is likely to sit
 * there, opens it.
 * @throws Error of the system where the port can't be had.
 */
export async function serveBench(folder: string, { port: wanted, open }: ServeOptions): Promise<void> {
  const port = await listenHere(folderServer(folder, benchPolicy), wanted);
  const address = `http://127.0.0.1:${port}/`;
  process.stdout.write(`Tripdrift runs at ${address} (stop it with Ctrl+C)\n`);
  if (open && browserIsLikely(process.env, process.stdout.isTTY)) openBrowser(address);
}

/** Whether another program has the port that was asked for. */
export function isPortTaken(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}
