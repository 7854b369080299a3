import type { KnipConfig } from 'knip';

/** What starts by itself. Packages are held to package.json by tests/structure/packages.test.ts, which knows why each is there. */
const config: KnipConfig = {
  entry: [
    'src/cli/main.ts',
    'src/cli/fleet/workerProcess.ts',
    'src/addin/{functions,commands}.ts',
    'src/pane/main.tsx',
    'src/bench/main.ts',
    'src/bench/pane/page.ts',
    'src/tools/**/main.{ts,mjs}',
    'tests/**/*.test.ts',
    'tests/audit/{cases,judged}/*/case.ts',
    'tests/bench/{main,run}.ts',
    'tests/faults/inject.mjs',
    'tests/mutation/*.mjs',
    'tests/pictures/{main,icons}.ts',
    '.ci/*.mjs',
  ],
  project: ['src/**/*.{ts,tsx,mjs}', 'tests/**/*.{ts,tsx,mjs}', '.ci/*.mjs'],
  exclude: ['dependencies', 'unlisted', 'binaries'],
};

export default config;
