import { join } from 'node:path';
import { SOURCE } from '../addin/pageBundle.ts';
import { buildBench } from '../bench/benchBuild.ts';
import { serveOptions } from './options.ts';
import { isPortTaken, serveBench } from './serve.ts';

/** `npm start -- [--port N] [--no-open]`: builds the bench and serves it to this machine until it is stopped. */
try {
  const options = serveOptions(process.argv.slice(2), 'npm start --');
  const folder = join(SOURCE, '..', 'dist', 'bench');
  process.stdout.write('Building the bench …\n');
  await buildBench(folder);
  await serveBench(folder, options);
} catch (error) {
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `${isPortTaken(error) ? 'The port is in use. Choose another: npm start -- --port 4180' : message}\n`,
  );
  process.exitCode = 2;
}
