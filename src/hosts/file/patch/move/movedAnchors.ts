import { attribute, child, type Element, everyBranch } from '../../write/xml/outline.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { type Axis, landing, moved, type SheetMove } from './axis.ts';
import { contentOf } from './contentOf.ts';

/** Moves what is drawn over a sheet with the cells below it (ECMA-376 part 1, section 20.5.2); what is fixed to the page stays. */
export function movedDrawing(text: string, root: Element, { rows, columns }: SheetMove): Edit[] {
  return everyBranch(root).flatMap((anchor): Edit[] => {
    const how = attribute(anchor, 'editAs');
    const from = child(anchor, 'from');
    const to = child(anchor, 'to');
    if (!from || how === 'absolute') return [];
    const along = (local: string, axis: Axis): Edit[] => {
      const start = numberIn(text, from, local);
      if (!start) return [];
      const first = landing(axis, start.number + 1) - 1;
      const edits = [edited(start, first)];
      const end = to && numberIn(text, to, local);
      if (!end) return edits;
      const last = how === 'oneCell' ? end.number + first - start.number : landing(axis, end.number + 1) - 1;
      return [...edits, edited(end, Math.max(first, last))];
    };
    return [...along('row', rows), ...along('col', columns)];
  });
}

interface Numbered {
  readonly number: number;
  readonly element: Element;
}

function numberIn(text: string, parent: Element, local: string): Numbered | undefined {
  const element = child(parent, local);
  const number = element ? Number(contentOf(text, element)) : NaN;
  return element && Number.isInteger(number) ? { number, element } : undefined;
}

function edited({ element }: Numbered, number: number): Edit {
  return { from: element.openEnd, to: element.closeStart, text: String(number) };
}

/** Moves the boxes of notes and controls over a sheet; those of notes whose cell is gone go (ECMA-376 part 4, section 19.4). */
export function movedBoxes(text: string, root: Element, { rows, columns }: SheetMove): Edit[] {
  return childrenNamedAnywhere(root, 'shape').flatMap((shape): Edit[] => {
    const data = shape.children.find(({ local }) => local === 'ClientData');
    if (!data) return [];
    const edits: Edit[] = [];
    const places = [
      ['Row', rows],
      ['Column', columns],
    ] as const;
    for (const [local, axis] of places) {
      const found = numberIn(text, data, local);
      if (!found) continue;
      const after = moved(axis, found.number + 1);
      if (after === undefined) return [{ from: shape.start, to: shape.end, text: '' }];
      edits.push(edited(found, after - 1));
    }
    const anchor = child(data, 'Anchor');
    const corners = anchor ? contentOf(text, anchor).split(',').map(Number) : [];
    const [left = 0, , top = 0] = corners;
    if (!anchor || corners.length !== 8 || corners.some(Number.isNaN)) return edits;
    const right = landing(columns, left + 1) - 1 - left;
    const down = landing(rows, top + 1) - 1 - top;
    const shifted = corners.map((corner, index) => corner + ([right, 0, down, 0][index % 4] ?? 0));
    return [...edits, { from: anchor.openEnd, to: anchor.closeStart, text: shifted.join(', ') }];
  });
}

function childrenNamedAnywhere(root: Element, local: string): readonly Element[] {
  return root.children.flatMap((element) =>
    element.local === local ? [element] : childrenNamedAnywhere(element, local),
  );
}
