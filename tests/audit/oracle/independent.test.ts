import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it('the oracle and the random stations import nothing that they judge', () => {
  for (const folder of ['./', '../stations/']) {
    const here = new URL(folder, import.meta.url);
    const files = readdirSync(here).filter((name) => name.endsWith('.ts'));
    expect(files.length).toBeGreaterThan(4);
    for (const file of files) {
      const sources = [...readFileSync(new URL(file, here), 'utf8').matchAll(/from '(?<source>[^']+)'/gu)];
      for (const { groups } of sources) expect(groups?.['source'], file).not.toMatch(/\/src\//u);
    }
  }
});
