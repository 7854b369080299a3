import { FileRefused } from '../hosts/file/zip/refused.ts';
import { onBookChanged } from '../hosts/grid/changes.ts';
import { onValuesOnly } from '../hosts/grid/write/sheetData.ts';
import { plainMessage } from '../pane/parts/shownText.ts';
import { type Bench, showBench } from './bench.ts';
import { fillBar } from './header/bar.ts';
import { onFilesDropped } from './open/drops.ts';
import { leadAround } from './pane/areaKeys.ts';
import type { OpenedFile } from './open/openFile.ts';
import { saveCopy } from './save/saveCopy.ts';
import { watchUnsaved } from './save/unsaved.ts';
import { openInWorker } from './worker/openInWorker.ts';
import { cause, tryItSheet, tryItStyles } from './tryIt.ts';

/** Name of the demo workbook, which lies beside the page. */
const demoFile = 'harbour-station.xlsx';

declare global {
  interface Window {
    /** What is open, for who looks at the page by a script. */
    tripdriftBench?: Bench;
  }
}

function part(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (!element) throw new Error(`The page has no part “${id}”.`);
  return element;
}

const words = {
  reading: (name: string) => `Reading ${name}…`,
  leave: (shown: string, next: string) => `Changes to ${shown} are not saved. Open ${next} all the same?`,
  valuesOnly:
    'The result sheets are too long for the grid to calculate: it shows their results. “Save a copy” writes them with every formula.',
  saving: 'Making the copy…',
  several: (names: readonly string[]) =>
    `${names.length} files were dropped (${names.join(', ')}): none was opened. Drop the one that is meant.`,
} as const;

const unsaved = watchUnsaved(window);
let bench: Bench | null = null;

const note = (text: string): void => {
  part('note').textContent = text;
};

/** Runs something the user asked for and says in one line why where it fails. */
async function attempt(work: () => void | Promise<void>): Promise<void> {
  try {
    note('');
    await work();
  } catch (error) {
    note(error instanceof FileRefused ? error.message : plainMessage(error));
  }
}

let asked = 0;

/** Shows what is read, unless something else was asked for meanwhile or the user rather keeps unsaved changes. */
async function show(name: string, read: () => Promise<OpenedFile>): Promise<void> {
  const turn = ++asked;
  const reading = words.reading(name);
  note(reading);
  const file = await read();
  if (turn !== asked) return;
  const shown = bench?.file.view.name ?? '';
  if (!unsaved.any() || window.confirm(words.leave(shown, name))) {
    bench?.close();
    const places = { grid: part('grid'), side: part('side'), blank: () => bar.blank(), note };
    bench = await showBench(places, file);
    window.tripdriftBench = bench;
    bar.showFile(file.view.name);
    unsaved.follow(bench);
    let soon: ReturnType<typeof setTimeout> | undefined;
    onValuesOnly(bench.grid, () => {
      // A sheet that comes to the front has its first cell selected, which takes away what was said.
      clearTimeout(soon);
      soon = setTimeout(() => {
        note(words.valuesOnly);
      }, 200);
    });
  }
  if (part('note').textContent === reading) note('');
}

/** Opens one file; a refusal says which. */
async function open(...chosen: readonly File[]): Promise<void> {
  const [file, ...more] = chosen;
  if (!file) return;
  const { name } = file;
  if (more.length > 0) throw new FileRefused(words.several(chosen.map((each) => each.name)));
  await show(name, async () => {
    try {
      return await openInWorker(name, new Uint8Array(await file.arrayBuffer()));
    } catch (error) {
      throw error instanceof FileRefused ? new FileRefused(`${name}: ${error.message}`) : error;
    }
  });
}

async function save(shown: Bench): Promise<void> {
  const later = { changed: false };
  const stop = onBookChanged(shown.grid, () => {
    later.changed = true;
  });
  try {
    note(words.saving);
    note(await saveCopy(shown));
    if (!later.changed && shown === bench) unsaved.saved();
  } finally {
    stop();
  }
}

const bar = fillBar(part('bar'), {
  open: (chosen) => attempt(() => open(chosen)),
  save: () =>
    attempt(async () => {
      if (bench) await save(bench);
    }),
  share: (formulas) =>
    attempt(async () => {
      if (!bench) return;
      note(words.saving);
      note(await saveCopy(bench, formulas));
    }),
  blankChanged: () =>
    attempt(async () => {
      await bench?.port.recalculate();
    }),
});

leadAround({
  bar: part('bar'),
  grid: part('grid'),
  side: part('side'),
  focusGrid: () => bench?.grid.focus(),
  editing: () => bench?.grid.editing() ?? false,
});
part('skip').addEventListener('click', (event) => {
  event.preventDefault();
  const frame = part('side').querySelector('iframe');
  frame?.focus();
  frame?.contentDocument?.querySelector<HTMLElement>('[role=tab][aria-selected=true]')?.focus();
});
onFilesDropped(part('bench'), (chosen) => attempt(() => open(...chosen)));
await attempt(async () => {
  // A canvas draws with the fonts that are there when it draws.
  await Promise.all([document.fonts.load('11pt Calibri'), document.fonts.load('bold 11pt Calibri')]);
  await show(demoFile, openDemo);
});

/** The demo workbook, from the page's own folder, with a sheet of live functions in front. */
async function openDemo(): Promise<OpenedFile> {
  const answer = await fetch(demoFile);
  if (!answer.ok) throw new Error(`The demo workbook could not be loaded (${answer.status}).`);
  const file = await openInWorker(demoFile, new Uint8Array(await answer.arrayBuffer()));
  const { view } = file;
  const free = view.sheets.every(({ name }) => name !== 'Try it');
  if (!free) return file;
  return {
    ...file,
    added: new Set([0]),
    start: cause,
    view: {
      ...view,
      sheets: [tryItSheet(view.styles.length), ...view.sheets],
      activeSheet: 0,
      styles: [...view.styles, ...tryItStyles],
    },
  };
}
