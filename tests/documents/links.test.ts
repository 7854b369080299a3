import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { imageSize } from 'image-size';
import { Marked, type Tokens } from 'marked';
import { getHeadingList, gfmHeadingId } from 'marked-gfm-heading-id';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const documents = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(join(root, 'src/help')).map((name) => join('src/help', name)),
].filter((name) => name.endsWith('.md'));

function linksAndImages(document: string): (Tokens.Link | Tokens.Image)[] {
  const found: (Tokens.Link | Tokens.Image)[] = [];
  const marked = new Marked({
    walkTokens: (token) => {
      if (token.type === 'link' || token.type === 'image') found.push(token as Tokens.Link | Tokens.Image);
    },
  });
  marked.parse(readFileSync(join(root, document), 'utf8'), { async: false });
  return found;
}

function headingsOf(document: string): string[] {
  const marked = new Marked(gfmHeadingId());
  marked.parse(readFileSync(join(root, document), 'utf8'), { async: false });
  return getHeadingList().map(({ id }) => id);
}

describe.each(documents)('%s', (document) => {
  it('links to pages and headings that are there', () => {
    const dead = linksAndImages(document)
      .filter(({ type }) => type === 'link')
      .map(({ href }) => href)
      // Written into the build beside the page, not into the repository.
      .filter((href) => !/^https?:/u.test(href) && href !== 'THIRD-PARTY-NOTICES.txt')
      .filter((href) => {
        const [path = '', heading] = href.split('#');
        const target = path === '' ? document : join(dirname(document), path);
        if (!existsSync(join(root, target))) return true;
        return heading !== undefined && !headingsOf(target).includes(heading);
      });
    expect(dead).toEqual([]);
  });
});

it('the README can be read in one sitting', () => {
  expect(statSync(join(root, 'README.md')).size).toBeLessThanOrEqual(8 * 1024);
});

it('every picture there is stands in one document, small and with a text in its place', () => {
  const folder = join('workbooks', 'pictures');
  const there = readdirSync(join(root, folder)).map((name) => join(folder, name));
  const shown = documents.flatMap((document) =>
    linksAndImages(document)
      .filter(({ type }) => type === 'image')
      .map(({ href, text }) => ({ path: join(dirname(document), href), text })),
  );
  expect([...new Set(shown.map(({ path }) => path))].toSorted()).toEqual(there.toSorted());
  for (const { path, text } of shown) {
    const bytes = readFileSync(join(root, path));
    const { type, width, height } = imageSize(bytes);
    expect(type).toBe('webp');
    expect(Math.max(width, height)).toBeLessThanOrEqual(1200);
    expect(bytes.length).toBeLessThanOrEqual(120_000);
    expect(text.length).toBeGreaterThan(40);
  }
});
