import { join } from 'node:path';
import { type HtmlTagDescriptor, type Plugin, mergeConfig } from 'vite';
import { FUNCTIONS_FILE, OFFICE_FOLDER, PANE_FILE, iconFile } from '../files.ts';
import { bundle } from './bundle.ts';
import { OFFICE_CDN, contentPolicy } from './contentPolicy.ts';
import { PAGE_BUNDLE, SOURCE } from './pageBundle.ts';

/** Builds the page of the task pane, its script and its styles into a folder, and names the packages in it. */
export async function buildPane(folder: string, cdn: boolean): Promise<string[]> {
  return bundle(
    mergeConfig(PAGE_BUNDLE, {
      root: join(SOURCE, 'pane'),
      plugins: [pageHead(cdn)],
      build: {
        outDir: folder,
        emptyOutDir: false,
        rollupOptions: { input: join(SOURCE, 'pane', PANE_FILE) },
      },
    }),
  );
}

/**
 * Puts the content policy, the icon, Office.js and the functions into the head. Office.js has to keep its name and stay
 * whole; the functions come right behind it, so that cells calculate before the pane has loaded.
 */
function pageHead(cdn: boolean): Plugin {
  const office = cdn ? `${OFFICE_CDN}/lib/1/hosted/office.js` : `${OFFICE_FOLDER}/office.js`;
  const tags: HtmlTagDescriptor[] = [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy(cdn) } },
    { tag: 'link', attrs: { rel: 'icon', href: iconFile(32) } },
    { tag: 'script', attrs: { src: office } },
    { tag: 'script', attrs: { src: FUNCTIONS_FILE } },
  ];
  return {
    name: 'page-head',
    transformIndexHtml: {
      order: 'post',
      handler: () => tags.map((tag) => ({ ...tag, injectTo: 'head-prepend' as const })),
    },
  };
}
