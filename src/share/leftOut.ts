import { contentOf } from '../hosts/file/patch/move/contentOf.ts';
import { withAttributes } from '../hosts/file/patch/attributes.ts';
import { attribute, type Element } from '../hosts/file/write/xml/outline.ts';
import type { Edit } from '../hosts/file/write/xml/splice.ts';
import { escapeXml } from '../hosts/file/write/xml/text.ts';

/** What is told of a thing that is not in the copy. */
export interface LeftOut {
  /** Local name of its element, such as `cfRule`. */
  readonly kind: string;
  /** The areas it was for, or the name of a column; empty where it says none. */
  readonly where: string;
  /** As the file stores it. */
  readonly formula: string;
}

/** A formula after the change; `undefined` where it can't stay. */
export type Changed = (stored: string) => string | undefined;

const formulas = new Set([
  'f',
  'formula',
  'formula1',
  'formula2',
  'calculatedColumnFormula',
  'totalsRowFormula',
]);
/** What goes as a whole with a formula in it. */
const whole = new Set([
  'cfRule',
  'dataValidation',
  'sparkline',
  'calculatedColumnFormula',
  'totalsRowFormula',
]);
/** What goes with the last of these in it. */
const containers = new Set([
  ...['conditionalFormatting', 'conditionalFormattings', 'dataValidations', 'sparklines', 'sparklineGroup'],
  ...['sparklineGroups', 'ext', 'extLst'],
]);

/** Edits that take out of a part what has a formula that can't stay, and change the other formulas; `hear` is told of each. */
export function leftOutOf(
  text: string,
  root: Element,
  changed: Changed,
  hear: (gone: LeftOut) => void,
): Edit[] {
  const walked = walk(root, '', undefined);
  return walked === 'gone' ? [] : walked;

  /** `thing` is what goes as a whole around the element. */
  function walk(element: Element, areas: string, thing: string | undefined): Edit[] | 'gone' {
    const where = attribute(element, 'sqref') ?? areaInside(element) ?? attribute(element, 'name') ?? areas;
    const kind = thing ?? (whole.has(element.local) ? element.local : undefined);
    const stored = formulaOf(element);
    if (stored !== undefined) {
      const now = changed(stored);
      if (now === stored || element.selfClosing) return [];
      if (now !== undefined) {
        return element.local === 'cfvo'
          ? withAttributes(text, element, { val: now })
          : [{ from: element.openEnd, to: element.closeStart, text: escapeXml(now) }];
      }
      hear({ kind: kind ?? element.local, where, formula: stored });
      return 'gone';
    }
    const inside = element.children.map((one) => [one, walk(one, where, kind)] as const);
    const lost = inside.filter(([, edits]) => edits === 'gone').map(([one]) => one);
    if (lost.length > 0 && (kind !== undefined || isEmptied(element, lost))) return 'gone';
    return [
      ...inside.flatMap(([one, edits]) =>
        edits === 'gone' ? [{ from: one.start, to: one.end, text: '' }] : edits,
      ),
      ...(lost.length === 0 ? [] : recounted(element, lost)),
    ];
  }

  function formulaOf(element: Element): string | undefined {
    // Newer rules have the formula in an element of its own within.
    if (formulas.has(element.local) && element.children.length === 0) return contentOf(text, element);
    return element.local === 'cfvo' ? attribute(element, 'val') : undefined;
  }

  function areaInside(element: Element): string | undefined {
    const sqref = element.children.find(({ local }) => local === 'sqref');
    return sqref && contentOf(text, sqref);
  }

  function recounted(element: Element, lost: readonly Element[]): Edit[] {
    if (lost.some(({ local }) => local === 'totalsRowFormula')) {
      return withAttributes(text, element, { totalsRowFunction: undefined });
    }
    const count = attribute(element, 'count');
    return count === undefined
      ? []
      : withAttributes(text, element, { count: String(Number(count) - lost.length) });
  }
}

function isEmptied({ local, children }: Element, lost: readonly Element[]): boolean {
  return containers.has(local) && children.every((one) => lost.includes(one) || one.local === 'sqref');
}
