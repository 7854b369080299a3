import { copyFileSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { OFFICE_FOLDER } from '../files.ts';

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
export const OFFICE_PACKAGE = dirname(
  createRequire(import.meta.url).resolve('@microsoft/office-js/package.json'),
);

/** Paths of the Office.js files that are needed, below the `dist` folder of its package; texts in every language. */
export function officeFiles(): string[] {
  const dist = join(OFFICE_PACKAGE, 'dist');
  const texts = readdirSync(dist, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(dist, entry.name, 'office_strings.js')))
    .map(({ name }) => `${name}/office_strings.js`);
  return [...SCRIPTS, ...texts];
}

/** Copies Office.js unmodified into the build, its licence beside it. */
export function copyOfficeFiles(folder: string): void {
  for (const file of officeFiles()) copy(join('dist', file), join(folder, OFFICE_FOLDER, file));
  copy('LICENSE.md', join(folder, OFFICE_FOLDER, 'LICENSE.md'));
}

function copy(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  copyFileSync(join(OFFICE_PACKAGE, from), to);
}
