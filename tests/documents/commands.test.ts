import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { demo, runAudit, temporaryFolder } from '../cli/run.ts';

const root = join(import.meta.dirname, '..', '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

it('the README shows the first lines of what the audit of the demo prints', () => {
  const blocks = [...readme.matchAll(/^```\n(.*?)^```/gmsu)].map(([, block = '']) => block.trim());
  const shown = blocks.find((block) => block.includes('need action')) ?? '';
  const { out } = runAudit(temporaryFolder(), demo);
  expect(shown.split('\n').length).toBeGreaterThan(3);
  expect(out).toContain(shown);
});

it('names only scripts that are there', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  const named = [...readme.matchAll(/npm (?:run (?:-s )?)?(\w+)/gu)].map(([, name = '']) => name);
  const known = new Set([...Object.keys(scripts), 'ci']);
  expect(named.filter((name) => !known.has(name))).toEqual([]);
  expect(named).toContain('audit');
});
