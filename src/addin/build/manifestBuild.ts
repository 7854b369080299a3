import { manifestXml } from '../manifest/manifest.ts';
import { functionsMetadata } from './functionsBuild.ts';
import { manifestVersion } from './version.ts';

/** The manifest of this version of the project for the place where its files are served. */
export function currentManifest(address: string): string {
  const { name } = functionsMetadata(address);
  return manifestXml({ address, version: manifestVersion(), metadataFile: name });
}
