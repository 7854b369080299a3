import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin, mergeConfig } from 'vite';
import { notices } from '../addin/notices.ts';
import { packageList } from '../addin/packageList.ts';
import { PAGE_BUNDLE, SOURCE } from '../addin/pageBundle.ts';
import { LOCAL_ADDRESS } from '../addin/address.ts';
import { NOTICES_FILE } from '../addin/files.ts';
import { writeHelp } from '../help/helpPage.ts';
import { benchPolicy } from './policy.ts';

/** Builds the bench into a folder that any static host can serve, the licences of what is in it beside it. */
export async function buildBench(folder: string): Promise<void> {
  const packages = packageList();
  await build(
    mergeConfig(PAGE_BUNDLE, {
      root: join(SOURCE, 'bench'),
      // The grid's own packages carry directives for another kind of build, one warning each; errors still show.
      logLevel: 'error',
      worker: { format: 'es', plugins: () => [packages.plugin()] },
      plugins: [policyInHead, demoBesidePage, packages.plugin()],
      build: {
        outDir: folder,
        emptyOutDir: true,
        chunkSizeWarningLimit: 8_000,
        rollupOptions: { input: join(SOURCE, 'bench', 'page.html') },
      },
    }),
  );
  writeFileSync(join(folder, NOTICES_FILE), notices([...packages.names], false));
  writeHelp(folder, { address: LOCAL_ADDRESS, cdn: false });
}

const policyInHead: Plugin = {
  name: 'policy-in-head',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: benchPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

const demo = 'harbour-station.xlsx';

const demoBesidePage: Plugin = {
  name: 'demo-beside-page',
  generateBundle() {
    const source = readFileSync(join(SOURCE, '..', 'workbooks', demo));
    this.emitFile({ type: 'asset', fileName: demo, source });
  },
};
