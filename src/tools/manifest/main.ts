import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { LOCAL_ADDRESS } from '../addin/address.ts';
import { currentManifest } from '../addin/manifestBuild.ts';
import { SOURCE } from '../addin/pageBundle.ts';

/** `npm run manifest` writes the manifest for the development host. */
writeFileSync(join(SOURCE, '..', 'manifest.xml'), currentManifest(LOCAL_ADDRESS));
