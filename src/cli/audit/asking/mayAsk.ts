import type { Options } from '../options.ts';

/** The streams of a process as far as they tell whether a person sits there. */
export interface Terminal {
  readonly stdin: { readonly isTTY?: boolean };
  readonly stdout: { readonly isTTY?: boolean };
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * Whether a person can be asked: a terminal both ways that shows more than plain lines, no build server, and a command line
 * that wants neither the report nor the proposal in place of questions.
 */
export function mayAsk({ json, propose }: Pick<Options, 'json' | 'propose'>, terminal: Terminal): boolean {
  const { stdin, stdout, env } = terminal;
  const unattended = (env['CI'] ?? '') !== '' && env['CI'] !== 'false';
  return (
    stdin.isTTY === true &&
    stdout.isTTY === true &&
    env['TERM'] !== 'dumb' &&
    !unattended &&
    json !== '-' &&
    propose === undefined
  );
}
