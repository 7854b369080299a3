import { join } from 'node:path';
import { SOURCE } from '../../addin/build/pageBundle.ts';
import { benchPolicy, buildBench } from '../build/benchBuild.ts';
import { browserIsLikely, openBrowser } from './openBrowser.ts';
import { serveOptions } from './options.ts';
import { folderServer, listenHere } from './server.ts';

/** `npm start -- [--port N] [--no-open]`: builds the bench and serves it to this machine until it is stopped. */
try {
  const { port: wanted, open } = serveOptions(process.argv.slice(2));
  const folder = join(SOURCE, '..', 'dist', 'bench');
  process.stdout.write('Building the bench …\n');
  await buildBench(folder);
  const port = await listenHere(folderServer(folder, benchPolicy), wanted);
  const address = `http://127.0.0.1:${port}/`;
  process.stdout.write(`Tripdrift runs at ${address} (stop it with Ctrl+C)\n`);
  if (open && browserIsLikely(process.env, process.stdout.isTTY)) openBrowser(address);
} catch (error) {
  const inUse = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `${inUse ? 'The port is in use. Choose another: npm start -- --port 4180' : message}\n`,
  );
  process.exitCode = 2;
}
