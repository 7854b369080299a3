import type { Edit } from '../../write/xml/splice.ts';
import { escapeXml } from '../../write/xml/text.ts';
import type { ColumnPlace, SheetMap } from '../sheetMap.ts';
import type { EditedColumns } from '../types.ts';

interface Run {
  readonly first: number;
  readonly last: number;
  /** Other attributes, each with a space before it. */
  readonly attributes: string;
}

/** Gives columns their new widths; runs of columns are cut where only some of them change (ECMA-376 part 1, section 18.3.1.13). */
export function changedColumns(map: SheetMap, edits: readonly EditedColumns[]): Edit[] {
  if (edits.length === 0) return [];
  const { columns, cols, sheetData } = map;
  const runs = edits.reduce(
    (all: readonly Run[], edit) => withEdit(all, edit),
    columns.map((column) => ({ ...column, attributes: othersOf(column, ['min', 'max']) })),
  );
  const name = sheetData.name.replace(/sheetData$/, 'col');
  const inside = runs
    .toSorted((a, b) => a.first - b.first)
    .map(({ first, last, attributes }) => `<${name} min="${first}" max="${last}"${attributes}/>`)
    .join('');
  if (cols === undefined) {
    return [{ from: sheetData.start, to: sheetData.start, text: `<${name}s>${inside}</${name}s>` }];
  }
  return cols.selfClosing
    ? [{ from: cols.start, to: cols.end, text: `<${name}s>${inside}</${name}s>` }]
    : [{ from: cols.openEnd, to: cols.closeStart, text: inside }];
}

function withEdit(runs: readonly Run[], edit: EditedColumns): Run[] {
  const { first, last } = edit;
  const size = ` width="${edit.width}" customWidth="1"${edit.hidden ? ' hidden="1"' : ''}`;
  const result: Run[] = [];
  let next = first;
  for (const run of runs.toSorted((a, b) => a.first - b.first)) {
    if (run.last < first || run.first > last) {
      result.push(run);
      continue;
    }
    const from = Math.max(run.first, first);
    const to = Math.min(run.last, last);
    if (run.first < from) result.push({ ...run, last: from - 1 });
    if (next < from) result.push({ first: next, last: from - 1, attributes: size });
    result.push({ first: from, last: to, attributes: withoutSize(run.attributes) + size });
    if (run.last > to) result.push({ ...run, first: to + 1 });
    next = to + 1;
  }
  if (next <= last) result.push({ first: next, last, attributes: size });
  return result;
}

function othersOf({ attributes }: ColumnPlace, left: readonly string[]): string {
  return Object.entries(attributes)
    .filter(([name]) => !left.includes(name))
    .map(([name, value]) => ` ${name}="${escapeXml(value)}"`)
    .join('');
}

function withoutSize(attributes: string): string {
  return attributes.replace(/ (?:width|customWidth|hidden|bestFit)="[^"]*"/g, '');
}
