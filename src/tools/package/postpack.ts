import { join } from 'node:path';
import { restoreManifest } from './packedManifest.ts';

/** After `npm pack`. */
restoreManifest(join(import.meta.dirname, '../../..'));
