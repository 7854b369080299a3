import process from 'node:process';
import { benchPolicy } from '../bench/policy.ts';
import type { ServeOptions } from './options.ts';
import { spawn } from 'node:child_process';
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

const openers: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
  linux: ['xdg-open'],
};

/**
 * Serves a built bench to this machine until the process ends, prints its address and, where a person is likely to sit
 * there, opens it.
 * @throws Error of the system where the port can't be had.
 */
export async function serveBench(folder: string, { port: wanted, open }: ServeOptions): Promise<void> {
  const port = await listenHere(folderServer(folder, benchPolicy), wanted);
  const address = `http://127.0.0.1:${port}/`;
  process.stdout.write(`Tripdrift runs at ${address} (stop it with Ctrl+C)\n`);
  if (open && browserIsLikely(process.env, process.stdout.isTTY)) openBrowser(address);
}

/** Whether another program has the port that was asked for. */
export function isPortTaken(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}

/** Whether a person with a browser is likely to sit before this machine. */
function browserIsLikely(environment: NodeJS.ProcessEnv, terminal: boolean): boolean {
  const { CI, SSH_CONNECTION, DISPLAY, WAYLAND_DISPLAY } = environment;
  if (!terminal || CI !== undefined || SSH_CONNECTION !== undefined) return false;
  return process.platform !== 'linux' || Boolean(DISPLAY ?? WAYLAND_DISPLAY);
}

/** Opens an address in the usual browser; the address is printed anyway, so that nothing depends on it. */
function openBrowser(address: string): void {
  const [program, ...args] = openers[process.platform] ?? [];
  if (program === undefined) return;
  const child = spawn(program, [...args, address], { stdio: 'ignore', detached: true });
  child.once('error', () => undefined);
  child.unref();
}

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
