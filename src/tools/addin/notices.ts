import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { SOURCE } from './pageBundle.ts';

/**
 * Licences that whole families of packages are under, each from its first word of substance to its last. Names are those of
 * SPDX; the texts are read from the packages.
 */
const known = [
  {
    name: 'Apache-2.0',
    from: 'Apache License Version 2.0, January 2004',
    to: 'END OF TERMS AND CONDITIONS',
  },
  {
    name: 'Apache-2.0, appendix',
    from: 'APPENDIX: How to apply the Apache License to your work.',
    to: 'limitations under the License.',
  },
  { name: 'MIT', from: 'Permission is hereby granted, free of charge,', to: 'DEALINGS IN THE SOFTWARE.' },
  {
    name: 'ISC',
    from: 'Permission to use, copy, modify, and/or distribute this software for any purpose',
    to: 'PERFORMANCE OF THIS SOFTWARE.',
  },
  {
    name: 'BSD',
    from: 'Redistribution and use in source and binary forms,',
    to: 'POSSIBILITY OF SUCH DAMAGE.',
  },
] as const;

/** A licence file: the texts that others have too, and what is this package's own, such as its copyright. */
interface LicenceFile {
  /** Texts of known licences as they stand there. */
  readonly shared: readonly string[];
  readonly own: string;
}

const ROOT = join(SOURCE, '..');
const MODULES = join(ROOT, 'node_modules');

const OFFICE_NOTICE = `Office.js (the folder "office")
Copyright (c) Microsoft Corporation. Distributed unmodified under the terms in office/LICENSE.md, for use solely with
apps that work together with Microsoft 365. Whoever passes these files on has to pass those terms on as well.
Microsoft is not responsible for maintaining or supporting Tripdrift.
`;

const RULE = `\n${'-'.repeat(78)}\n\n`;

/** What a package says of its licence. */
interface Licensed {
  readonly title: string;
  /** Contents of its licence files. */
  readonly files: readonly string[];
}

/**
 * Licences of our own code and of the packages in a build, each text once, behind the packages that are under it.
 * `office` where the build holds Office.js.
 * @throws Error where a package carries no licence that is known.
 */
export function notices(packages: readonly string[], office: boolean): string {
  const texts: string[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (text: string): number => {
    const key = sameWords(text);
    const number = numbers.get(key) ?? texts.push(text.trimEnd());
    numbers.set(key, number);
    return number;
  };
  const groups = new Map<string, string[]>();
  for (const { title, files } of [ours(), ...[...new Set(packages)].sort().map(licenceOf)]) {
    const parts = files.map(splitLicence);
    const own = [...new Set(parts.map((part) => part.own).filter((text) => text !== ''))].join('\n\n');
    const under = [...new Set(parts.flatMap(({ shared }) => shared.map(numberOf)))];
    const said =
      under.length === 0 ? own : `${own}\n\nUnder ${under.map(nameOf).join(' and ')} below.`.trim();
    groups.set(said, [...(groups.get(said) ?? []), title]);
  }
  return [
    ...[...groups].map(([said, titles]) => `${titles.join('\n')}\n\n${said}\n`),
    ...(office ? [OFFICE_NOTICE] : []),
    ...texts.map((text, index) => `${nameOf(index + 1)}\n\n${text}\n`),
  ].join(RULE);
}

function nameOf(number: number): string {
  return `licence text ${number}`;
}

function ours(): Licensed {
  return { title: `Tripdrift ${versionIn(ROOT)}`, files: [readFileSync(join(ROOT, 'LICENSE'), 'utf8')] };
}

/** Packages whose file holds the whole text of the licence that others only name. */
const textOf: Readonly<Record<string, string>> = { 'Apache-2.0': 'mathjs', ISC: 'd3-array', MIT: 'zod' };

function licenceOf(name: string): Licensed {
  const folder = join(MODULES, name);
  const title = `${name} ${versionIn(folder)}`;
  const files = licenceFiles(folder);
  if (files.length > 0) return { title, files };
  const { license = '', author } = manifestIn(folder);
  const lender = textOf[license];
  if (lender === undefined || author === undefined) {
    throw new Error(`The package ${name} carries no licence file`);
  }
  const texts = licenceFiles(join(MODULES, lender)).flatMap((file) => splitLicence(file).shared);
  return { title, files: [`Author: ${author}`, ...texts] };
}

function licenceFiles(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((entry) => /^(licen[cs]e|notice)(\.(md|txt))?$/i.test(entry))
    .map((file) => readFileSync(join(folder, file), 'utf8'));
}

function versionIn(folder: string): string {
  return manifestIn(folder).version;
}

const manifest = z.object({
  version: z.string(),
  license: z.string().optional(),
  author: z.union([z.string(), z.object({ name: z.string() }).transform(({ name }) => name)]).optional(),
});

function manifestIn(folder: string): z.infer<typeof manifest> {
  return manifest.parse(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')));
}

/** Splits a licence file. */
function splitLicence(file: string): LicenceFile {
  const shared: string[] = [];
  let rest = file.replaceAll('\r\n', '\n');
  for (const { from, to } of known) {
    const found = between(from, to).exec(rest);
    if (!found) continue;
    shared.push(found[0]);
    rest = `${rest.slice(0, found.index).trimEnd()}\n\n${rest.slice(found.index + found[0].length).trimStart()}`;
  }
  return { shared, own: rest.trim() };
}

/** From one wording to another, however its lines are broken. */
function between(from: string, to: string): RegExp {
  const words = (text: string) =>
    text
      .split(' ')
      .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/gu, '\\$&'))
      .join('\\s+');
  return new RegExp(`[^\\S\\n]*${words(from)}[^]*?${words(to)}`, 'u');
}

/** A licence text without what makes the same words look different: line breaks, the form of an address, a copyright. */
function sameWords(text: string): string {
  return text
    .split('\n')
    .filter((line) => !(/\bcopyright\b/iu.test(line) && /\d{4}/u.test(line)))
    .join('\n')
    .replaceAll('https:', 'http:')
    .replaceAll(/[\s"“”'’*]+/gu, ' ')
    .trim()
    .toLowerCase();
}
