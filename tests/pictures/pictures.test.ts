import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { imageSize } from 'image-size';
import { lexer, walkTokens, type Tokens } from 'marked';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const shown: Tokens.Image[] = [];
void walkTokens(lexer(readFileSync(join(root, 'README.md'), 'utf8')), (token) => {
  if (token.type === 'image') shown.push(token as Tokens.Image);
});

it('shows in the README every picture there is, small and with a text in its place', () => {
  const folder = join('workbooks', 'pictures');
  const there = readdirSync(join(root, folder)).map((name) => join(folder, name));
  expect(shown.map(({ href }) => href).toSorted()).toEqual(there.toSorted());
  for (const { href, text } of shown) {
    const bytes = readFileSync(join(root, href));
    const { type, width, height } = imageSize(bytes);
    expect(type).toBe('webp');
    expect(Math.max(width, height)).toBeLessThanOrEqual(1200);
    expect(bytes.length).toBeLessThanOrEqual(120_000);
    expect(text.length).toBeGreaterThan(40);
  }
});
