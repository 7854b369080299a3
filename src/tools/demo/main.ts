import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { trends, workbooks } from './workbooks.ts';

const folder = fileURLToPath(new URL('../../../workbooks/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [name, build] of Object.entries({ ...workbooks, ...trends })) {
  writeFileSync(`${folder}${name}`, build());
  console.log(`workbooks/${name}`);
}
