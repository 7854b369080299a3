// @ts-check
import process from 'node:process';

/** Tests in which the mutants of a folder are looked for: those that need no other program and end in seconds. */
const audit = [
  'cases',
  'judged',
  'attention',
  'policy',
  'rows',
  'pairedRows',
  'evaluated',
  'assembled',
  'timeReader',
  'groups',
  'chances',
  'corrections',
  'channelReplay',
  'recordedChannel',
  'runUps',
  'recordUpAndDown',
  'runout',
  'chainLength',
  'drift/sources',
  'oracle',
  'stations',
  'records/random',
  'findings/settings',
  'findings/unitSlips',
  'findings/readings',
  'findings/thresholds',
  'findings/asLeft',
  'leftEvidence',
  'leftParts',
  'leftRecords',
  'judgedParts',
  'recordParts',
  'drift/channelReadings',
  'channelParts',
  'channelInputs',
  'recordJudged',
  'recordAbout',
  'drift/driftLine',
  'replayTrends',
  'unread/nearMeaning',
  'unread/notRead',
  'unread/unreadAreas',
].map((name) => `tests/audit/${name}.test.ts`);
const tests = {
  'src/method': ['tests/method/**/!(libreoffice).test.ts'],
  'src/units': ['tests/units/*.test.ts'],
  'src/functions': ['tests/functions/!(calcProcess|excel).test.ts', 'tests/share/*.test.ts'],
  'src/audit': audit,
};

const pattern = process.argv[process.argv.indexOf('-m') + 1] ?? '';
const folders = Object.entries(tests).filter(([folder]) => pattern.includes(folder));

// Other programs count as absent, so that tests that need them are skipped, and random tests are kept short.
process.env.TRIPDRIFT_TEST_TOOLS = '{}';
process.env.RUNS = '20';

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'bundled',
  plugins: ['./tests/mutation/bundledRunner.mjs', './tests/mutation/descriptions.mjs'],
  ignorers: ['descriptions'],
  coverageAnalysis: 'perTest',
  testFiles: folders.flatMap(([, files]) => files),
  ignorePatterns: ['/dist', '/.ci'],
  concurrency: 1,
  maxTestRunnerReuse: 300,
  timeoutMS: 3000,
  warnings: false,
  reporters: ['clear-text', 'json', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, skipFull: true },
  jsonReporter: { fileName: 'coverage/mutation.json' },
  tempDirName: 'coverage/stryker',
};
