import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { notices } from '../addin/notices.ts';
import { SOURCE } from '../addin/pageBundle.ts';
import { NOTICES_FILE } from '../addin/files.ts';
import { buildBench } from '../bench/benchBuild.ts';
import { bundled, keep, oneFile } from './oneFile.mjs';
import { swapManifest } from './packedManifest.ts';

/** Before `npm pack`: builds all that the package holds, so that it works where only Node is. */
const { text, packages } = await bundled();
keep(text);
writeFileSync(join(dirname(oneFile), NOTICES_FILE), notices(packages, false));
await buildBench(join(dirname(oneFile), 'bench'));
swapManifest(join(SOURCE, '..'));
