import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { LOCAL_ADDRESS } from '../address.ts';
import { currentManifest } from '../build/manifestBuild.ts';
import { SOURCE } from '../build/pageBundle.ts';

/** `npm run manifest` writes the manifest for the development host. */
writeFileSync(join(SOURCE, '..', 'manifest.xml'), currentManifest(LOCAL_ADDRESS));
