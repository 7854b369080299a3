import type { Cell } from '../../../src/cells/cell.ts';
import type { MemoryWorkbook } from '../../../src/pane/example/memoryPort.ts';

type Rows = readonly (readonly Cell[])[];

function twoTables(
  channels: Rows,
  settings: Rows,
  [first, second]: readonly [string, string] = ['Channels', 'Monitor'],
): MemoryWorkbook {
  return {
    workbook: {
      name: 'test.xlsx',
      sheets: [
        { name: first, rows: channels, hidden: false, hiddenRows: new Set(), tables: [] },
        { name: second, rows: settings, hidden: false, hiddenRows: new Set(), tables: [] },
      ],
    },
    selection: { sheet: second, area: { top: 2, left: 2, bottom: 2, right: 2 } },
  };
}

const channelHeader = ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Present reading (mil)'];
const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'];

/** The longest text that a cell of a workbook can hold. Source: ECMA-376 Part 1, limits as Excel documents them. */
const longest = 'W'.repeat(32_767);
export const hostileTags = [
  '<img src=x onerror="document.title=1">',
  '<script>document.title="owned"</script>',
  '=HYPERLINK("http://example.invalid","x")',
  '\u202Egnp.exe\u202C right to left',
  'وسم القناة',
  '"><b>bold</b>&amp;',
] as const;

/** Tags, machines and a sheet's name made to break out of being text. */
export function hostileWorkbook(): MemoryWorkbook {
  return twoTables(
    [
      [...channelHeader, '<i>Header</i>'],
      ...hostileTags.map((tag) => [tag, '<b>machine</b>', 160, 1, '<u>x</u>']),
      ['T-long', longest, 160, 1],
      ['T-text', '<b>machine</b>', '<svg onload=alert(1)>', 1],
    ],
    [settingsHeader, ...[...hostileTags, 'T-long', 'T-text'].map((tag) => [tag, 200, 3, 5])],
    ['<b>Ch</b>', "Mon'itor"],
  );
}

/** 20,000 channels, every third 20 % low. */
export function largeWorkbook(): MemoryWorkbook {
  const tags = Array.from({ length: 20_000 }, (_, index) => `V-${String(index + 1).padStart(5, '0')}`);
  return twoTables(
    [channelHeader, ...tags.map((tag, index) => [tag, `M-${index % 40}`, index % 3 === 0 ? 160 : 200, 1.5])],
    [settingsHeader, ...tags.map((tag) => [tag, 200, 3, 5])],
  );
}

/** A channel list whose measured sensitivity has a header that says nothing. */
export function unclearWorkbook(): MemoryWorkbook {
  return twoTables(
    [
      ['Tag', 'Machine', 'Column7', 'Present reading (mil)'],
      ['V-1', 'M-1', 160, 1.5],
    ],
    [settingsHeader, ['V-1', 200, 3, 5]],
  );
}

/** Two lists in German words, without units, one column of which two could be meant: read only with a person's yes. */
export function foreignWorkbook(): MemoryWorkbook {
  const measured = [160, 198, 201, 172, 204, 196];
  const tags = ['K-101A', 'K-101B', 'K-102A', 'K-102B', 'P-7A', 'P-7B'];
  return twoTables(
    [
      ['Prüfprotokoll Wellenschwingung (erfunden)'],
      [],
      ['Messstelle', 'Empfindlichkeit', 'Kennwert alt', 'Spaltspannung', '<b>Bemerkung</b>'],
      ...tags.map((tag, index) => [tag, measured[index] ?? null, 200, -9.8 - index / 10, 'ok']),
    ],
    [
      ['Messstelle', 'Eingestellter Kennwert', 'Voralarm', 'Abschaltung'],
      ...tags.map((tag) => [tag, 200, 3, 5]),
    ],
    ['Sonden', 'Tafel'],
  );
}

/** Probes of two racks, one of which has settings before and after a change: three channels are judged, three are asked about. */
export function partlyWorkbook(): MemoryWorkbook {
  const [first, second] = [
    ['V-1', 'V-2', 'V-3'],
    ['W-1', 'W-2', 'W-3'],
  ] as const;
  const settings = (name: string, tags: readonly string[], alert: number, danger: number) => ({
    name,
    rows: [settingsHeader, ...tags.map((tag) => [tag, 200, alert, danger])],
  });
  const sheets = [
    {
      name: 'Probes',
      rows: [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ...[...first, ...second].map((tag): Cell[] => [tag, 160]),
      ],
    },
    settings('Rack N1', second, 3, 5),
    settings('Rack N2', first, 3, 5),
    settings('Rack N2 after upgrade', first, 3.5, 6),
  ];
  return {
    workbook: {
      name: 'partly.xlsx',
      sheets: sheets.map((one) => ({ ...one, hidden: false, hiddenRows: new Set<number>(), tables: [] })),
    },
    selection: { sheet: 'Probes', area: { top: 1, left: 1, bottom: 1, right: 1 } },
  };
}
