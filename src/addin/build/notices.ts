import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { SOURCE } from './pageBundle.ts';

const MODULES = join(SOURCE, '..', 'node_modules');

const OFFICE_NOTICE = `Office.js (the folder "office")
Copyright (c) Microsoft Corporation. Distributed unmodified under the terms in office/LICENSE.md, for use solely with
apps that work together with Microsoft 365. Whoever passes these files on has to pass those terms on as well.
Microsoft is not responsible for maintaining or supporting Tripdrift.
`;

/** Licences of our own code and of the packages in the bundles. With the public Office.js, none of it is in the build. */
export function notices(packages: readonly string[], cdn: boolean): string {
  const own = readFileSync(join(SOURCE, '..', 'LICENSE'), 'utf8');
  const parts = [...new Set(packages)].sort().map(licenceOf);
  return [`Tripdrift\n${own}`, ...(cdn ? [] : [OFFICE_NOTICE]), ...parts].join(`\n${'-'.repeat(78)}\n\n`);
}

function licenceOf(name: string): string {
  const folder = join(MODULES, name);
  const files = readdirSync(folder).filter((entry) => /^(licen[cs]e|notice)(\.(md|txt))?$/i.test(entry));
  if (files.length === 0) throw new Error(`The package ${name} carries no licence file`);
  const text = readFileSync(join(folder, 'package.json'), 'utf8');
  const { version } = z.object({ version: z.string() }).parse(JSON.parse(text));
  return [`${name} ${version}`, ...files.map((file) => readFileSync(join(folder, file), 'utf8'))].join('\n');
}
