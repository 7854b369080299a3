import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { sameWords, splitLicence } from './licenceTexts.ts';
import { SOURCE } from './pageBundle.ts';

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
