/// <reference lib="dom" />
import type { Cell } from '../../../src/cells/cell.ts';
import { HostRefused, type CellPlace, type WorkbookPort } from '../../../src/hosts/port/port.ts';
import { mountPane, viewOf } from '../../../src/pane/app/mountPane.tsx';
import { exampleWorkbook } from '../../../src/pane/example/exampleWorkbook.ts';
import { memoryPort, type MemoryWorkbook } from '../../../src/pane/example/memoryPort.ts';
import { recordWorkbook } from './recordWorkbook.ts';
import { sinceWorkbook } from './sinceWorkbook.ts';
import {
  foreignWorkbook,
  hostileWorkbook,
  largeWorkbook,
  partlyWorkbook,
  unclearWorkbook,
} from './workbooks.ts';

const workbooks: Readonly<Record<string, () => MemoryWorkbook>> = {
  example: () => exampleWorkbook,
  foreign: foreignWorkbook,
  given: givenWorkbook,
  hostile: hostileWorkbook,
  large: largeWorkbook,
  partly: partlyWorkbook,
  records: recordWorkbook,
  since: sinceWorkbook,
  unclear: unclearWorkbook,
};

/** What a test asks of the port and what the pane asked of it. */
interface PortLog {
  readonly calls: [string, ...unknown[]][];
  change(sheet: string): void;
  /** Called before each part of long work; a test may hold it up. */
  hold: Promise<void> | null;
  refuse: string | null;
  /** The same for what writes result sheets alone. */
  refuseWriting: string | null;
  /** Names of the sheets that the workbook has now. */
  sheets(): Promise<string[]>;
  release?: (() => void) | undefined;
  select(place: CellPlace): Promise<void>;
  settings: Record<string, unknown>;
}

declare global {
  interface Window {
    portLog: PortLog;
    /** Sheets that a test has put here before the page loads, for `workbook=given`. */
    givenSheets?: readonly GivenSheet[];
  }
}

/** A sheet as a test hands it to the page. */
export interface GivenSheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
}

/** A workbook of the sheets that a test has given. */
function givenWorkbook(): MemoryWorkbook {
  const sheets = (window.givenSheets ?? []).map(({ name: sheet, rows }) => ({
    name: sheet,
    rows,
    hidden: false,
    hiddenRows: new Set<number>(),
    tables: [],
  }));
  return {
    workbook: { name: 'given.xlsx', sheets },
    selection: { sheet: sheets[0]?.name ?? '', area: { top: 1, left: 1, bottom: 1, right: 1 } },
  };
}

const asked = new URLSearchParams(window.location.search);
const name = asked.get('workbook') ?? 'example';
const inner = memoryPort((workbooks[name] ?? workbooks['example']!)());

let listener: ((sheet: string) => void) | null = null;
const log: PortLog = {
  calls: [],
  change: (sheet) => listener?.(sheet),
  hold: null,
  refuse: null,
  refuseWriting: null,
  sheets: async () => (await inner.readWorkbook()).sheets.map((sheet) => sheet.name),
  select: (place) => inner.selectCell(place),
  settings: {},
};
window.portLog = log;

let broken: CellPlace[] = [
  { sheet: 'Channels', row: 4, column: 5 },
  { sheet: 'Monitor', row: 2, column: 28 },
];

const noted =
  <Given extends unknown[], Out>(call: string, run: (...given: Given) => Promise<Out>) =>
  async (...given: Given): Promise<Out> => {
    log.calls.push([call, ...given.filter((one) => typeof one !== 'function')]);
    if (log.hold) await log.hold;
    if (log.refuse !== null) throw new HostRefused(log.refuse);
    return run(...given);
  };

/** The example's port, with what it is asked written down, and with formulas to care for. */
const port: WorkbookPort = {
  ...inner,
  readWorkbook: noted('readWorkbook', inner.readWorkbook.bind(inner)),
  selectRow: noted('selectRow', inner.selectRow.bind(inner)),
  selectCell: noted('selectCell', inner.selectCell.bind(inner)),
  pointAt: noted('pointAt', inner.pointAt.bind(inner)),
  insertFormula: noted('insertFormula', inner.insertFormula.bind(inner)),
  // A host may tell of the cells that the pane itself writes, too.
  writeSheets: noted('writeSheets', (models, ...more) => {
    for (const { name: written } of models) listener?.(written);
    return inner.writeSheets(models, ...more);
  }),
  replaceSheets: noted('replaceSheets', (...given) => {
    if (log.refuseWriting !== null) throw new HostRefused(log.refuseWriting);
    return inner.replaceSheets(...given);
  }),
  writeSetting: noted('writeSetting', async (key, value) => {
    log.settings[key] = value;
    if (asked.has('saved')) sessionStorage.setItem(key, JSON.stringify(value));
    await inner.writeSetting(key, value);
  }),
  onChange: (heard) => {
    listener = heard;
    return inner.onChange(heard);
  },
  findBrokenFormulas: () => Promise.resolve(broken),
  repairFormulas: (places) => {
    broken = [];
    return Promise.resolve(places.length);
  },
  recalculate: () => Promise.resolve(7),
  theme: () => (asked.get('theme') === 'dark' ? { dark: true, background: '#000', text: '#fff' } : null),
  functionsReady: () => Promise.resolve(asked.get('functions') !== 'missing'),
};

/** Settings saved with the workbook, where the page is to be loaded again. */
if (asked.has('saved')) {
  for (const key of Object.keys(sessionStorage)) {
    await inner.writeSetting(key, JSON.parse(sessionStorage.getItem(key) ?? 'null'));
  }
}

mountPane(document.getElementById('pane')!, port, { view: viewOf(window.location.hash) });
