import { existsSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { serveOptions, type ServeOptions } from '../tools/serve/options.ts';
import { isPortTaken, serveBench } from '../tools/serve/serve.ts';
import type { Command } from './command.ts';
import { UsageRefused } from './refused.ts';

const usage = `Serves the spreadsheet page to this machine until it is stopped, and prints its address.

  tripdrift bench [--port N] [--no-open]

  --port N    the port, 4173 if left out; 0 for any free one
  --no-open   opens no browser
`;

/** `bench`: serves the page that is built beside the command. */
export const benchProgram: Command = {
  async run(args) {
    if (args.includes('--help') || args.includes('-h')) {
      process.stdout.write(usage);
      return 0;
    }
    const options = optionsOf(args);
    const folder = join(import.meta.dirname, 'bench');
    if (!existsSync(join(folder, 'page.html'))) {
      throw new UsageRefused(
        'The page is not built here. In a checkout of the project, npm start builds it.',
      );
    }
    try {
      await serveBench(folder, options);
    } catch (error) {
      if (!isPortTaken(error)) throw error;
      throw new UsageRefused('The port is in use. Choose another: tripdrift bench --port 4180');
    }
    return 0;
  },
  failed: 'bench failed unexpectedly',
};

function optionsOf(args: readonly string[]): ServeOptions {
  try {
    return serveOptions(args, 'tripdrift bench');
  } catch (error) {
    throw new UsageRefused(error instanceof Error ? error.message : String(error));
  }
}
