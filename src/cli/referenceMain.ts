import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { referenceMarkdown } from '../functions/reference.ts';
import { withSection } from './referenceSection.ts';

/** Writes the function reference into the README, between its markers. */
const readme = join(import.meta.dirname, '..', '..', 'README.md');
writeFileSync(readme, withSection(readFileSync(readme, 'utf8'), referenceMarkdown()));
