import { type Element, type Fault, at, everyElement } from './element.ts';

/** In which part of the resources each referring element looks. Source: Microsoft, add-in only manifest reference. */
function kindOf({ name }: Element): string {
  if (name === 'Image') return 'Images';
  if (name === 'Description') return 'LongStrings';
  if (name === 'Label' || name === 'Title' || name === 'Namespace') return 'ShortStrings';
  return 'Urls';
}

/** Longest id of a resource. Source: the same reference ("can be no more than 32 characters"). */
const LONGEST_ID = 32;

/** References to resources that don't exist; resources that stand twice, or that nothing refers to. */
export function checkResources(root: Element): Fault[] {
  const faults: Fault[] = [];
  const defined = new Map<string, { readonly kind: string; readonly line: number }>();
  for (const list of at(root, 'VersionOverrides', 'Resources')[0]?.children ?? []) {
    for (const { attributes, line } of list.children) {
      const id = attributes['id'] ?? '';
      if (id === '' || id.length > LONGEST_ID) {
        faults.push({ line, message: `resource id "${id}" has to have 1 to ${LONGEST_ID} characters` });
      }
      if (defined.has(id)) faults.push({ line, message: `resource "${id}" stands twice` });
      defined.set(id, { kind: list.name, line });
    }
  }
  const used = new Set<string>();
  for (const element of everyElement(root)) {
    const id = element.attributes['resid'];
    if (id === undefined) continue;
    used.add(id);
    const kind = kindOf(element);
    const found = defined.get(id);
    if (found?.kind !== kind) {
      const message = `<${element.name}> refers to "${id}", which is not among the ${kind}`;
      faults.push({ line: element.line, message });
    }
  }
  for (const [id, { line }] of defined) {
    if (!used.has(id)) faults.push({ line, message: `nothing refers to resource "${id}"` });
  }
  return faults;
}
