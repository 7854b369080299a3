import { closeSync, openSync, readFileSync, readSync } from 'node:fs';
import { resolve } from 'node:path';
import { UsageRefused, inWords } from './refused.ts';

/** A path as its user meant it: `npm run` starts commands in the project's folder and says where it was called from. */
export function pathOf(given: string): string {
  const { npm_lifecycle_event: script, INIT_CWD: calledFrom } = process.env;
  return resolve(script === 'audit' && calledFrom !== undefined ? calledFrom : process.cwd(), given);
}

/**
 * The bytes of a file.
 * @throws UsageRefused where it can't be read, with the reason in plain words.
 */
export function readBytes(given: string): Uint8Array {
  try {
    return readFileSync(pathOf(given));
  } catch (error) {
    throw new UsageRefused(`${given}: ${inWords(error, 'can not be read')}.`);
  }
}

/**
 * A JSON file.
 * @throws UsageRefused where it can't be read or is no JSON.
 */
export function readJson(given: string): unknown {
  const bytes = readBytes(given);
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown;
  } catch (error) {
    const why = error instanceof Error ? error.message.split('\n')[0] : '';
    throw new UsageRefused(`${given} is no JSON: ${why ?? ''}`);
  }
}

/** Whether a file is a report that was written here before, of one workbook or of a fleet, which may be written anew. */
export function isOwnReport(given: string, of: 'report' | 'fleet' = 'report'): boolean {
  try {
    const file = openSync(pathOf(given), 'r');
    try {
      const start = new Uint8Array(64);
      readSync(file, start);
      return new TextDecoder().decode(start).includes(`"schema": "tripdrift-${of}/`);
    } finally {
      closeSync(file);
    }
  } catch {
    return false;
  }
}
