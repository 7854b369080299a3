import { readFile } from 'node:fs/promises';
import { type Server, createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
  '.woff2': 'font/woff2',
};

/** Serves the files of a folder, `page.html` at its root, to whoever may reach the address it listens on. */
export function folderServer(folder: string, policy: string): Server {
  return createServer((request, response) => {
    void fileOf(folder, request.url ?? '/').then((file) => {
      if (!file) {
        response.writeHead(404).end();
        return;
      }
      response
        .writeHead(200, {
          'content-type': file.type,
          'content-security-policy': `${policy}; frame-ancestors 'none'`,
          'x-content-type-options': 'nosniff',
          'cache-control': 'no-cache',
        })
        .end(file.body);
    });
  });
}

async function fileOf(folder: string, address: string): Promise<{ type: string; body: Buffer } | null> {
  try {
    const asked = decodeURIComponent(new URL(address, 'http://localhost').pathname);
    const path = normalize(join(folder, asked === '/' ? 'page.html' : asked));
    const type = types[extname(path)];
    if (!path.startsWith(folder + sep) || type === undefined) return null;
    return { type, body: await readFile(path) };
  } catch {
    return null;
  }
}

/** Listens on this machine alone; the port that was given, any free one for 0. */
export function listenHere(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address ? address.port : port);
    });
  });
}
