/// <reference types="office-js" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import vm from 'node:vm';

/** Globals that the library puts into a page. */
export interface OfficeGlobals {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly OfficeExtension: typeof OfficeExtension & {
    readonly HostBridge: { init(bridge: object): void };
  };
  readonly CustomFunctions: unknown;
}

const folder = join(
  dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/package.json')),
  'dist',
);
const files = ['office.debug.js', 'en-us/office_strings.debug.js', 'excel-win32-16.01.debug.js'];
let compiled: readonly vm.Script[] | undefined;

/** The real, unmodified library in a page of its own that has just enough of a browser for it to start. */
export function loadOffice(): OfficeGlobals {
  compiled ??= files.map(
    (name) => new vm.Script(readFileSync(join(folder, name), 'utf8'), { filename: name }),
  );
  const page = emptyPage();
  vm.createContext(page);
  for (const script of compiled) script.runInContext(page);
  return page as unknown as OfficeGlobals;
}

function emptyPage(): Record<string, unknown> {
  const nothing = (): void => undefined;
  const element = () => ({
    setAttribute: nothing,
    getAttribute: () => null,
    appendChild: nothing,
    addEventListener: nothing,
    style: {},
    dataset: {},
  });
  const script = { src: 'http://localhost/office-js/office.js', getAttribute: () => null };
  const search = `?_host_Info=${encodeURIComponent('Excel$Win32$16.01$en-US$$$$3')}`;
  const page: Record<string, unknown> = {
    console: { log: nothing, warn: nothing, error: nothing, info: nothing },
    setTimeout,
    clearTimeout,
    setInterval,
    clearInterval,
    Promise,
    URL,
    performance,
    location: {
      href: `http://localhost/${search}`,
      search,
      hash: '',
      protocol: 'http:',
      host: 'localhost',
      hostname: 'localhost',
      origin: 'http://localhost',
    },
    navigator: { userAgent: 'node', language: 'en-US' },
    history: {},
    external: {},
    name: '',
    addEventListener: nothing,
    removeEventListener: nothing,
    postMessage: nothing,
    document: {
      readyState: 'loading',
      getElementsByTagName: (tag: string) => (tag.toLowerCase() === 'script' ? [script] : [element()]),
      createElement: element,
      getElementById: () => null,
      addEventListener: nothing,
      URL: 'http://localhost/',
      head: element(),
      body: element(),
      documentElement: element(),
      cookie: '',
    },
  };
  for (const name of ['window', 'self', 'top', 'parent', 'globalThis']) page[name] = page;
  return page;
}
