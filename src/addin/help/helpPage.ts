import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Marked } from 'marked';
import { gfmHeadingId } from 'marked-gfm-heading-id';
import { caution } from '../../audit/model/caution.ts';
import { referenceMarkdown } from '../../functions/reference.ts';
import { FRAMING_PAGES, contentPolicy } from '../build/contentPolicy.ts';
import type { BuildOptions } from '../build/options.ts';
import { HELP_FILE, iconFile } from '../files.ts';
import { EXAMPLE_SHARE, registryFile } from '../sideload/registry.ts';

const STYLES = 'help.css';

/** The help page: what it is about, the functions, and how to host and install it. */
export function helpHtml({ address, cdn }: BuildOptions): string {
  const markdown = [
    text('start.md'),
    '## Functions',
    referenceMarkdown().replaceAll(/^#### /gm, '### '),
    "## For the plant's IT",
    filled(text('it.md'), {
      address,
      policy: contentPolicy(cdn),
      framing: FRAMING_PAGES,
      registry: registryFile(EXAMPLE_SHARE).trimEnd().replaceAll(/^/gm, '   '),
    }),
  ].join('\n\n');
  const marked = new Marked(gfmHeadingId());
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy(false)}">
<meta name="viewport" content="width=device-width">
<title>Tripdrift help</title>
<link rel="icon" href="${iconFile(32)}">
<link rel="stylesheet" href="${STYLES}">
</head>
<body>
<main>
<h1>Tripdrift</h1>
<p class="caution">${caution}</p>
${marked.parse(markdown, { async: false })}
</main>
</body>
</html>
`;
}

/** Writes the help page and its styles into the build. */
export function writeHelp(folder: string, options: BuildOptions): void {
  writeFileSync(join(folder, HELP_FILE), helpHtml(options));
  copyFileSync(join(import.meta.dirname, STYLES), join(folder, STYLES));
}

function text(name: string): string {
  return readFileSync(join(import.meta.dirname, name), 'utf8');
}

/** Puts values in the places of their names in braces; every name has to stand in the text. */
function filled(template: string, values: Readonly<Record<string, string>>): string {
  return Object.entries(values).reduce((result, [name, value]) => {
    const place = `{${name}}`;
    if (!result.includes(place)) throw new Error(`The help text lacks ${place}`);
    return result.replaceAll(place, () => value);
  }, template);
}
