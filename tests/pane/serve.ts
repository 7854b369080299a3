import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { FRAMING_PAGES, contentPolicy } from '../../src/tools/addin/contentPolicy.ts';
import { builtOnce } from '../builtOnce.ts';

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

/** Loads the builder only where it has to build, which most files of tests do not. */
async function buildPane(folder: string): Promise<void> {
  const [{ build, mergeConfig }, { PAGE_BUNDLE }] = await Promise.all([
    import('vite'),
    import('../../src/tools/addin/pageBundle.ts'),
  ]);
  await build(
    mergeConfig(PAGE_BUNDLE, {
      root,
      build: { outDir: folder, emptyOutDir: true, rollupOptions: { input: inputs } },
    }),
  );
}

/**
 * Builds the pane as the add-in does and serves it on this machine alone, under the content policy that the add-in's own
 * page carries.
 */
export async function servePane(): Promise<ServedPages> {
  const folder = await builtOnce('pane', buildPane);
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
    close: () => closed(server),
  };
}

/** Ends a server with all its connections. */
export function closed(server: Server): Promise<void> {
  return new Promise<void>((resolve) => {
    server.closeAllConnections();
    server.close(() => {
      resolve();
    });
  });
}
