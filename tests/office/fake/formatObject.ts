import type { Area } from '../../../src/cells/sheet.ts';
import type { HostObject } from './hostObject.ts';
import type { FakeSheet } from './sheet.ts';

const scalars: Readonly<Record<string, readonly string[]>> = {
  '': ['ColumnWidth', 'RowHeight', 'WrapText', 'HorizontalAlignment', 'VerticalAlignment'],
  Font: ['Bold', 'Italic', 'Size', 'Color', 'Underline'],
  Fill: ['Color'],
};

/** The format of one or more areas of a sheet. `write` is called before anything is changed. */
export function formatObject(sheet: FakeSheet, areas: readonly Area[], write: () => void): HostObject {
  const painter = (group: string): HostObject['set'] =>
    Object.fromEntries(
      (scalars[group] ?? []).map((name) => [
        name,
        (value: unknown) => {
          write();
          for (const area of areas) sheet.paint(area, group === '' ? name : `${group}.${name}`, value);
        },
      ]),
    );
  const [first = { top: 1, left: 1, bottom: 1, right: 1 }] = areas;
  return {
    set: painter('') ?? {},
    parts: {
      Font: () => ({ set: painter('Font') ?? {} }),
      Fill: () => ({ set: painter('Fill') ?? {} }),
      Protection: () => ({ get: { Locked: () => sheet.isLocked(first.top, first.left) } }),
      Borders: () => ({ item: (edge) => borderObject(sheet, areas, String(edge), write) }),
    },
  };
}

function borderObject(sheet: FakeSheet, areas: readonly Area[], edge: string, write: () => void): HostObject {
  const paint = (name: string) => (value: unknown) => {
    write();
    for (const area of areas)
      sheet.paint(edge === 'EdgeBottom' ? { ...area, top: area.bottom } : area, `${edge}.${name}`, value);
  };
  return { set: { Style: paint('Style'), Weight: paint('Weight'), Color: paint('Color') } };
}
