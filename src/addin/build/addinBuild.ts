import { copyFileSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { ICON_SIZES, NOTICES_FILE, iconFile } from '../files.ts';
import { writeHelp } from '../help/helpPage.ts';
import { buildFunctions, functionsMetadata, writeMetadata } from './functionsBuild.ts';
import { currentManifest } from './manifestBuild.ts';
import { notices } from './notices.ts';
import { copyOfficeFiles } from './officeFiles.ts';
import type { BuildOptions } from './options.ts';
import { SOURCE } from './pageBundle.ts';
import { buildPane } from './paneBuild.ts';

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
    copyFileSync(join(SOURCE, 'addin', file), join(folder, file));
  }
}
