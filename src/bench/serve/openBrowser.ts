import { spawn } from 'node:child_process';

const openers: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
  linux: ['xdg-open'],
};

/** Whether a person with a browser is likely to sit before this machine. */
export function browserIsLikely(environment: NodeJS.ProcessEnv, terminal: boolean): boolean {
  const { CI, SSH_CONNECTION, DISPLAY, WAYLAND_DISPLAY } = environment;
  if (!terminal || CI !== undefined || SSH_CONNECTION !== undefined) return false;
  return process.platform !== 'linux' || Boolean(DISPLAY ?? WAYLAND_DISPLAY);
}

/** Opens an address in the usual browser; the address is printed anyway, so that nothing depends on it. */
export function openBrowser(address: string): void {
  const [program, ...args] = openers[process.platform] ?? [];
  if (program === undefined) return;
  const child = spawn(program, [...args, address], { stdio: 'ignore', detached: true });
  child.once('error', () => undefined);
  child.unref();
}
