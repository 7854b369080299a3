import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Marked, type Tokens } from 'marked';
import { getHeadingList, gfmHeadingId } from 'marked-gfm-heading-id';
import { FRAMING_PAGES, contentPolicy } from '../addin/contentPolicy.ts';
import type { BuildOptions } from '../addin/options.ts';
import { HELP_FILE, iconFile } from '../addin/files.ts';
import { EXAMPLE_SHARE, registryFile } from '../sideload/registry.ts';
import { caution } from '../../audit/model/caution.ts';

/** The pages in the order in which one reads them; all of them make one page of the add-in. */
const pages = [
  'start.md',
  'verdicts.md',
  'tables.md',
  'your-own-workbook.md',
  'records.md',
  'recorded.md',
  'policy.md',
  'results.md',
  'functions.md',
  'bench.md',
  'command-line.md',
  'excel.md',
  'it.md',
] as const;

const folder = join(import.meta.dirname, '..', '..', 'help');
const styles = 'help.css';

/** The help page: what each verdict, table, sheet and function means, and how to host and install the add-in. */
function helpHtml({ address, cdn }: BuildOptions): string {
  // Worked out before the whole is: the list of headings is one for all that is parsed.
  const titles = new Map(pages.map((page) => [page as string, titleId(text(page))]));
  const marked = new Marked(gfmHeadingId(), {
    renderer: {
      // The pictures stand beside the pages, not in the build.
      image: () => '',
    },
    walkTokens: (token) => {
      if (token.type === 'heading') (token as Tokens.Heading).depth += 1;
      if (token.type === 'link') (token as Tokens.Link).href = anchorOf((token as Tokens.Link).href, titles);
    },
  });
  const it = filled(text('it.md'), {
    address,
    policy: contentPolicy(cdn),
    framing: FRAMING_PAGES,
    registry: registryFile(EXAMPLE_SHARE).trimEnd().replaceAll(/^/gm, '   '),
  });
  const markdown = pages.map((page) => (page === 'it.md' ? it : text(page))).join('\n\n');
  const body = marked.parse(markdown, { async: false });
  const contents = getHeadingList()
    .filter(({ level }) => level === 2)
    .map(({ id, raw }) => `<li><a href="#${id}">${raw}</a></li>`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy(false)}">
<meta name="viewport" content="width=device-width">
<title>Tripdrift help</title>
<link rel="icon" href="${iconFile(32)}">
<link rel="stylesheet" href="${styles}">
</head>
<body>
<main>
<h1>Tripdrift</h1>
<p class="caution">${caution}</p>
<nav aria-label="Pages"><ul>${contents.join('')}</ul></nav>
${body}
</main>
</body>
</html>
`;
}

/** Writes the help page and its styles into the build. */
export function writeHelp(build: string, options: BuildOptions): void {
  writeFileSync(join(build, HELP_FILE), helpHtml(options));
  copyFileSync(join(import.meta.dirname, styles), join(build, styles));
}

/** A link to another of the pages as one within the whole: to a heading of it, or to its title. */
function anchorOf(href: string, titles: ReadonlyMap<string, string>): string {
  const [page = '', heading] = href.split('#');
  const title = titles.get(page);
  return title === undefined ? href : `#${heading ?? title}`;
}

function titleId(page: string): string {
  const marked = new Marked(gfmHeadingId());
  marked.parse(page.slice(0, page.indexOf('\n')), { async: false });
  return getHeadingList()[0]?.id ?? '';
}

function text(name: string): string {
  return readFileSync(join(folder, name), 'utf8');
}

/** Puts values in the places of their names in braces; every name has to stand in the text. */
function filled(template: string, values: Readonly<Record<string, string>>): string {
  return Object.entries(values).reduce((result, [name, value]) => {
    const place = `{${name}}`;
    if (!result.includes(place)) throw new Error(`The help text lacks ${place}`);
    return result.replaceAll(place, () => value);
  }, template);
}
