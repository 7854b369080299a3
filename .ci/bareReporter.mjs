// Keeps, of a run of the tests, the files in which nothing was skipped, in a report that can be merged with that of a later
// run, and lists the other files for that run.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { ReportersMap } from 'vitest/node';

const folder = process.env.REPORTS;

export default class BareReporter extends ReportersMap.blob {
  constructor() {
    super({ outputFile: join(folder, 'blobs/bare.json') });
  }

  async onTestRunEnd(modules, errors) {
    const skipped = (module) =>
      [...module.children.allTests()].some((test) => test.result().state === 'skipped');
    const rest = modules.filter(skipped).map(({ moduleId }) => moduleId);
    writeFileSync(join(folder, 'rest'), rest.join('\n'));
    await super.onTestRunEnd(
      modules.filter((module) => !skipped(module)),
      errors,
    );
  }
}
