import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { benchPolicy, buildBench } from '../../src/bench/build/benchBuild.ts';
import { folderServer, listenHere } from '../../src/bench/serve/server.ts';

export interface ServedBench {
  readonly origin: string;
  close(): Promise<void>;
}

/** Builds the bench as it is shipped into a new folder and serves it as `npm start` does. */
export async function serveBench(): Promise<ServedBench> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  await buildBench(folder);
  const server = folderServer(folder, benchPolicy);
  const port = await listenHere(server, 0);
  return {
    origin: `http://127.0.0.1:${port}`,
    close: async () => {
      await new Promise<void>((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      });
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
