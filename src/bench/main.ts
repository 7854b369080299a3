import { FileRefused } from '../hosts/file/zip/refused.ts';
import { onBookChanged } from '../hosts/grid/changes.ts';
import { plainMessage } from '../pane/parts/plainMessage.ts';
import { type Bench, showBench } from './bench.ts';
import { fillBar } from './header/bar.ts';
import { takeDrops } from './open/drops.ts';
import { openFile, type OpenedFile } from './open/openFile.ts';
import { openDemo } from './openDemo.ts';
import { saveCopy } from './save/saveCopy.ts';
import { watchUnsaved } from './save/unsaved.ts';

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
  saving: 'Making the copy…',
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

async function show(file: OpenedFile): Promise<void> {
  bench?.grid.dispose();
  bench = await showBench({ grid: part('grid'), side: part('side'), blank: () => bar.blank(), note }, file);
  window.tripdriftBench = bench;
  bar.showFile(file.view.name);
  unsaved.follow(bench);
}

async function open(chosen: File): Promise<void> {
  if (
    unsaved.any() &&
    !window.confirm(
      `Changes to ${bench?.file.view.name ?? 'the workbook'} are not saved. Open ${chosen.name} all the same?`,
    )
  )
    return;
  await show(openFile(chosen.name, new Uint8Array(await chosen.arrayBuffer())));
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
  blankChanged: () =>
    attempt(async () => {
      await bench?.port.recalculate();
    }),
});

takeDrops(part('bench'), (chosen) => attempt(() => open(chosen)));
await attempt(async () => {
  // A canvas draws with the fonts that are there when it draws.
  await Promise.all([document.fonts.load('11pt Calibri'), document.fonts.load('bold 11pt Calibri')]);
  await show(await openDemo());
});
