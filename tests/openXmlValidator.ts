import { spawnSync } from 'node:child_process';
import { programOf } from './tool.ts';

interface ValidatorAnswer {
  readonly errors: readonly {
    readonly path?: string;
    readonly xPath?: string;
    readonly description: string;
  }[];
}

/**
 * What the Open XML SDK's validator objects to in a file, one line an error. On machines for which there is no
 * validator (it is installed on Linux, x64) nothing is objected to, and that is said; with `CI=true` it is a failure.
 */
export function objectionsTo(path: string): readonly string[] {
  const program = programOf('the Open XML validator');
  if (program === undefined) {
    if (process.env['CI'] === 'true') throw new Error('The Open XML validator is not installed.');
    console.warn(`Not checked by the Open XML validator, which is not on this machine: ${path}`);
    return [];
  }
  const { status, stdout, stderr } = spawnSync(program, [path], { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (status !== 0) throw new Error(`The Open XML validator failed: ${stderr || stdout}`);
  const { errors } = JSON.parse(stdout) as ValidatorAnswer;
  return errors.map((error) => `${error.path ?? ''} ${error.xPath ?? ''} ${error.description}`);
}
