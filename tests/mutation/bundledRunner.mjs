// @ts-check
import { mkdir, readFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { performance } from 'node:perf_hooks';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { PluginKind, declareClassPlugin } from '@stryker-mutator/api/plugin';
import { determineHitLimitReached, toMutantRunResult } from '@stryker-mutator/api/test-runner';
import { startTests } from '@vitest/runner';
import { build } from 'esbuild';

/**
 * Runs tests for a mutant in a process that stays: each test file is bundled once with the sources it needs, and every
 * mutant evaluates the bundle afresh, so that nothing a mutant left behind reaches the next one. The tests are collected
 * and run by vitest's own runner, without its workers, which would be started anew for each mutant.
 */

/** @typedef {import('@stryker-mutator/api/test-runner').TestResult} TestResult */
/** @typedef {import('@vitest/runner').Test} Test */

const status = { pass: 0, fail: 1, skip: 2 };

/** A bundle stands elsewhere than the files in it, which ask where they are. */
const placeOfEachFile = {
  name: 'place of each file',
  /** @param {import('esbuild').PluginBuild} of */
  setup(of) {
    of.onLoad({ filter: /\/tests\/.*\.ts$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8'))
        .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
        .replaceAll('import.meta.dirname', JSON.stringify(join(path, '..'))),
      loader: 'ts',
    }));
  },
};

/** @param {string} testFile */
const bundleOf = (testFile) => resolve('.bundles', `${testFile}.mjs`);

/** @param {string} testFile */
async function makeBundle(testFile) {
  const outfile = bundleOf(testFile);
  await mkdir(join(outfile, '..'), { recursive: true });
  const contents = ['tests/seed.ts', testFile].map((file) => `import './${file}';`).join('\n');
  await build({
    stdin: { contents, resolveDir: process.cwd() },
    absWorkingDir: process.cwd(),
    outfile,
    bundle: true,
    packages: 'external',
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
    plugins: [placeOfEachFile],
  });
}

/** @param {Test} test */
function idOf(test) {
  const names = [test.name];
  for (let suite = test.suite; suite; suite = suite.suite) names.unshift(suite.name);
  return `${relative(process.cwd(), test.file.filepath)}#${names.join(' ')}`;
}

class BundledRunner {
  evaluations = 0;

  /** What the instrumented sources and this runner tell each other. @type {any} */
  instrumented = /** @type {any} */ (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {});

  capabilities() {
    return { reloadEnvironment: true };
  }

  /**
   * What a file's sources do while they are evaluated counts as covered by each test of that file, not by all tests. The
   * quickest files come first, in which order they are then run for each mutant.
   * @param {import('@stryker-mutator/api/test-runner').DryRunOptions} options
   */
  async dryRun({ testFiles = [] }) {
    const ran = [];
    for (const file of testFiles.map((path) => relative(process.cwd(), path))) {
      await makeBundle(file);
      Object.assign(this.instrumented, {
        activeMutant: undefined,
        mutantCoverage: { static: {}, perTest: {} },
      });
      const from = performance.now();
      const tests = await this.runFile(file, null, false);
      const covered = this.instrumented.mutantCoverage;
      const perTest = tests.map(({ id }) => [id, { ...covered.static, ...covered.perTest[id] }]);
      ran.push({ took: performance.now() - from, tests, perTest });
    }
    ran.sort((one, other) => one.took - other.took);
    return {
      status: /** @type {any} */ ('complete'),
      tests: ran.flatMap(({ tests }) => tests),
      mutantCoverage: { static: {}, perTest: Object.fromEntries(ran.flatMap(({ perTest }) => perTest)) },
    };
  }

  /** @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options */
  async mutantRun({ activeMutant, testFilter = [], hitLimit, disableBail }) {
    const limit = hitLimit === undefined ? undefined : hitLimit / 10;
    Object.assign(this.instrumented, { activeMutant: activeMutant.id, hitLimit: limit, hitCount: 0 });
    const wanted = new Set(testFilter);
    /** @type {TestResult[]} */
    const tests = [];
    for (const file of new Set(testFilter.map((id) => id.slice(0, id.indexOf('#'))))) {
      const ofFile = await this.runFile(file, wanted, !disableBail);
      tests.push(...ofFile);
      if (!disableBail && ofFile.some((test) => test.status === status.fail)) break;
    }
    const endless = determineHitLimitReached(this.instrumented.hitCount, limit);
    return toMutantRunResult(endless ?? { status: /** @type {any} */ ('complete'), tests });
  }

  /**
   * @param {string} file
   * @param {ReadonlySet<string> | null} wanted
   * @param {boolean} bail
   */
  async runFile(file, wanted, bail) {
    // Some matchers ask vitest in which file they are.
    Object.assign(globalThis, { __vitest_worker__: { filepath: join(process.cwd(), file) } });
    /** @type {TestResult[]} */
    const results = [];
    let failed = false;
    const evaluated = await startTests(
      [join(process.cwd(), file)],
      /** @type {any} */ ({
        config: {
          root: process.cwd(),
          setupFiles: [],
          testTimeout: 0,
          hookTimeout: 0,
          maxConcurrency: 1,
          retry: 0,
          passWithNoTests: true,
          allowOnly: false,
          tags: [],
          sequence: { shuffle: false, concurrent: false, seed: 0, hooks: 'stack', setupFiles: 'list' },
        },
        importFile: () => import(`${pathToFileURL(bundleOf(file)).href}?${++this.evaluations}`),
        onBeforeRunTask: (/** @type {Test} */ test) => {
          const id = idOf(test);
          if ((wanted && !wanted.has(id)) || (bail && failed)) test.mode = 'skip';
          else this.instrumented.currentTestId = id;
        },
        onAfterRunTask: (/** @type {Test} */ test) => {
          this.instrumented.currentTestId = undefined;
          const state = test.result?.state === 'fail' ? 'fail' : test.mode === 'skip' ? 'skip' : 'pass';
          if (state === 'fail') failed = true;
          if (state === 'skip') return;
          results.push(
            /** @type {TestResult} */ ({
              id: idOf(test),
              name: test.name,
              fileName: test.file.filepath,
              timeSpentMs: test.result?.duration ?? 0,
              status: status[state],
              failureMessage: test.result?.errors?.[0]?.message ?? 'failed',
            }),
          );
        },
      }),
    );
    const broken = evaluated.find(({ result }) => result?.state === 'fail' && result.errors?.length);
    if (broken && !failed)
      results.push({
        id: `${file}#`,
        name: file,
        timeSpentMs: 0,
        status: status.fail,
        failureMessage: broken.result?.errors?.[0]?.message ?? 'not evaluated',
      });
    return results;
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'bundled', BundledRunner)];
