import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { referenceMarkdown } from '../../functions/reference.ts';

/** Writes the page of the worksheet functions from their declarations. */
writeFileSync(join(import.meta.dirname, '..', '..', 'help', 'functions.md'), `${referenceMarkdown()}\n`);
