import type { OpenedFile } from './open/openFile.ts';
import { openInWorker } from './worker/openInWorker.ts';
import { tryItSheet, tryItStyles } from './tryIt.ts';

/** Name of the demo workbook, which lies beside the page. */
export const demoFile = 'harbour-station.xlsx';

/** The demo workbook, from the page's own folder, with a sheet of live functions in front. */
export async function openDemo(): Promise<OpenedFile> {
  const answer = await fetch(demoFile);
  if (!answer.ok) throw new Error(`The demo workbook could not be loaded (${answer.status}).`);
  const file = await openInWorker(demoFile, new Uint8Array(await answer.arrayBuffer()));
  const { view } = file;
  const free = view.sheets.every(({ name }) => name !== 'Try it');
  if (!free) return file;
  return {
    ...file,
    added: new Set([0]),
    view: {
      ...view,
      sheets: [tryItSheet(view.styles.length), ...view.sheets],
      activeSheet: 0,
      styles: [...view.styles, ...tryItStyles],
    },
  };
}
