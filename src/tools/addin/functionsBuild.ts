import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { mergeConfig } from 'vite';
import { functionsJson } from '../../functions/excel/metadata.ts';
import { FUNCTIONS_FILE, HELP_FILE } from './files.ts';
import { bundle } from './bundle.ts';
import { PAGE_BUNDLE, SOURCE } from './pageBundle.ts';

/** Builds the classic script that ties the worksheet functions to Excel, and names the packages in it. */
export async function buildFunctions(folder: string): Promise<string[]> {
  return bundle(
    mergeConfig(PAGE_BUNDLE, {
      build: {
        outDir: folder,
        emptyOutDir: false,
        lib: {
          entry: join(SOURCE, 'addin', 'functions.ts'),
          name: 'tripdriftFunctions',
          formats: ['iife'],
          fileName: () => FUNCTIONS_FILE,
        },
      },
    }),
  );
}

export interface Metadata {
  readonly name: string;
  readonly text: string;
}

/**
 * What tells Excel the names and arguments of the functions. Excel keeps it for a day and longer, so that its name
 * changes with its content.
 */
export function functionsMetadata(address: string): Metadata {
  const text = functionsJson(`${address}/${HELP_FILE}`);
  const hash = createHash('sha256').update(text).digest('hex').slice(0, 8);
  return { name: `functions.${hash}.json`, text };
}

export function writeMetadata(folder: string, { name, text }: Metadata): void {
  writeFileSync(join(folder, name), text);
}
