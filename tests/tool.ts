import { spawnSync } from 'node:child_process';
import { test } from 'vitest';

/** Whether a program is on the machine. */
function onPath(program: string): boolean {
  return spawnSync(program, ['--help'], { stdio: 'ignore' }).error === undefined;
}

/** A test that needs a program: skipped where it is absent, a failure there when `CI` is `true`. */
export function testWithTool(program: string, name: string, run: () => void): void {
  const skip = process.env['CI'] !== 'true' && !onPath(program);
  test.skipIf(skip)(`${name} (needs ${program})`, run);
}
