import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize, sep } from 'node:path';
import { build, mergeConfig } from 'vite';
import { FRAMING_PAGES, contentPolicy } from '../../src/tools/addin/contentPolicy.ts';
import { PAGE_BUNDLE } from '../../src/tools/addin/pageBundle.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
};

export interface ServedPages {
  /** Address of the folder, without a slash at its end. */
  readonly origin: string;
  /** Folder of the built files. */
  readonly folder: string;
  close(): Promise<void>;
}

const root = join(import.meta.dirname, '..', '..');

/** Pages that are built: the pane as it is shipped, and the pane over workbooks made for tests. */
const inputs = {
  pane: join(root, 'src', 'pane', 'taskpane.html'),
  test: join(import.meta.dirname, 'pages', 'test.html'),
};

/**
 * Builds the pane as the add-in does into a new folder and serves it on this machine alone, under the content policy
 * that the add-in's own page carries.
 */
export async function servePane(): Promise<ServedPages> {
  const folder = mkdtempSync(join(tmpdir(), 'pane-'));
  await build(
    mergeConfig(PAGE_BUNDLE, {
      root,
      build: { outDir: folder, emptyOutDir: true, rollupOptions: { input: inputs } },
    }),
  );
  const policy = `${contentPolicy(false)}; frame-ancestors ${FRAMING_PAGES}`;
  const server = createServer((request, response) => {
    const path = normalize(
      join(folder, decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname)),
    );
    const type = types[extname(path)];
    try {
      if (!path.startsWith(folder + sep) || type === undefined) throw new Error('not served');
      const body = readFileSync(path);
      response.writeHead(200, { 'content-type': type, 'content-security-policy': policy }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    folder,
    close: () => closeAndRemove(server, folder),
  };
}

/** Ends a server with all its connections and removes the folder that it served. */
export async function closeAndRemove(server: Server, folder: string): Promise<void> {
  await new Promise<void>((resolve) => {
    server.closeAllConnections();
    server.close(() => {
      resolve();
    });
  });
  rmSync(folder, { recursive: true, force: true });
}
