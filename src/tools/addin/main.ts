import {
  readFileSync,
  existsSync,
  statSync,
  copyFileSync,
  mkdirSync,
  rmSync,
  writeFileSync,
  readdirSync,
} from 'node:fs';
import { join, normalize, sep, dirname } from 'node:path';
import { AddressRefused } from './address.ts';
import { checkManifest } from '../manifest/check.ts';
import { parseOptions, type BuildOptions } from './options.ts';
import { SOURCE, PAGE_BUNDLE } from './pageBundle.ts';
import { ICON_SIZES, NOTICES_FILE, iconFile, OFFICE_FOLDER, FUNCTIONS_FILE, PANE_FILE } from './files.ts';
import { writeHelp } from '../help/helpPage.ts';
import { buildFunctions, functionsMetadata, writeMetadata } from './functionsBuild.ts';
import { currentManifest } from './manifestBuild.ts';
import { notices } from './notices.ts';
import { createRequire } from 'node:module';
import { type HtmlTagDescriptor, type Plugin, mergeConfig } from 'vite';
import { bundle } from './bundle.ts';
import { OFFICE_CDN, contentPolicy } from './contentPolicy.ts';

/** What Excel on Windows, Mac and the web asks for, found by watching its requests; other programs' files stay out. */
const SCRIPTS = [
  'office.js',
  'excel-win32-16.01.js',
  'excel-mac-16.00.js',
  'excel-web-16.00.js',
  'o15apptofilemappingtable.js',
  'telemetry/oteljs_agave.js',
] as const;

/** Folder of the installed Office.js package. */
const OFFICE_PACKAGE = dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/package.json'));

/** `npm run build -- [--origin https://host.example/tripdrift] [--cdn]` */
try {
  const options = parseOptions(process.argv.slice(2));
  const folder = join(SOURCE, '..', 'dist', 'addin');
  await buildAddin(folder, options);
  const xml = readFileSync(join(folder, 'manifest.xml'), 'utf8');
  const faults = checkManifest(xml, builtFiles(folder, options.address));
  for (const { line, message } of faults) process.stderr.write(`manifest.xml line ${line}: ${message}\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
  if (faults.length === 0) process.stdout.write(`dist/addin is ready to be served at ${options.address}/\n`);
} catch (error) {
  if (!(error instanceof AddressRefused)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}

/** Reads a built file by the address under which it will be served; `undefined` where the build has no such file. */
export function builtFiles(folder: string, address: string): (asked: string) => Uint8Array | undefined {
  return (asked) => {
    if (!asked.startsWith(`${address}/`)) return undefined;
    const { pathname } = new URL(asked);
    const below = normalize(
      decodeURIComponent(pathname.slice(new URL(address).pathname.replace(/\/$/, '').length)),
    );
    if (below.split(sep).includes('..')) return undefined;
    const path = join(folder, below);
    return existsSync(path) && statSync(path).isFile() ? readFileSync(path) : undefined;
  };
}

/** Builds everything that a web server has to serve, and the manifest that leads to it, into an emptied folder. */
export async function buildAddin(folder: string, options: BuildOptions): Promise<void> {
  const { address, cdn } = options;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const packages = [...(await buildPane(folder, cdn)), ...(await buildFunctions(folder))];
  writeMetadata(folder, functionsMetadata(address));
  copyIcons(folder);
  writeHelp(folder, options);
  if (!cdn) copyOfficeFiles(folder);
  writeFileSync(join(folder, NOTICES_FILE), notices(packages, !cdn));
  writeFileSync(join(folder, 'manifest.xml'), currentManifest(address));
}

function copyIcons(folder: string): void {
  for (const file of ICON_SIZES.map(iconFile)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    copyFileSync(join(SOURCE, 'tools', file), join(folder, file));
  }
}

/** Paths of the Office.js files that are needed, below the `dist` folder of its package; texts in every language. */
function officeFiles(): string[] {
  const dist = join(OFFICE_PACKAGE, 'dist');
  const texts = readdirSync(dist, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(dist, entry.name, 'office_strings.js')))
    .map(({ name }) => `${name}/office_strings.js`);
  return [...SCRIPTS, ...texts];
}

/** Copies Office.js unmodified into the build, its licence beside it. */
function copyOfficeFiles(folder: string): void {
  for (const file of officeFiles()) copy(join('dist', file), join(folder, OFFICE_FOLDER, file));
  copy('LICENSE.md', join(folder, OFFICE_FOLDER, 'LICENSE.md'));
}

function copy(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  copyFileSync(join(OFFICE_PACKAGE, from), to);
}

/** Builds the page of the task pane, its script and its styles into a folder, and names the packages in it. */
async function buildPane(folder: string, cdn: boolean): Promise<string[]> {
  return bundle(
    mergeConfig(PAGE_BUNDLE, {
      root: join(SOURCE, 'pane'),
      plugins: [pageHead(cdn)],
      build: {
        outDir: folder,
        emptyOutDir: false,
        rollupOptions: { input: join(SOURCE, 'pane', PANE_FILE) },
      },
    }),
  );
}

/**
 * Puts the content policy, the icon, Office.js and the functions into the head. Office.js has to keep its name and stay
 * whole; the functions come right behind it, so that cells calculate before the pane has loaded.
 */
function pageHead(cdn: boolean): Plugin {
  const office = cdn ? `${OFFICE_CDN}/lib/1/hosted/office.js` : `${OFFICE_FOLDER}/office.js`;
  const tags: HtmlTagDescriptor[] = [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy(cdn) } },
    { tag: 'link', attrs: { rel: 'icon', href: iconFile(32) } },
    { tag: 'script', attrs: { src: office } },
    { tag: 'script', attrs: { src: FUNCTIONS_FILE } },
  ];
  return {
    name: 'page-head',
    transformIndexHtml: {
      order: 'post',
      handler: () => tags.map((tag) => ({ ...tag, injectTo: 'head-prepend' as const })),
    },
  };
}
