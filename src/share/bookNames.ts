import { attribute, child, childrenNamed, type Element } from '../hosts/file/write/xml/outline.ts';
import { contentOf } from '../hosts/file/patch/move/contentOf.ts';

/** A name that the workbook part defines, hidden ones among them. */
export interface BookName {
  readonly name: string;
  /** As the file stores it. */
  readonly refersTo: string;
  readonly element: Element;
}

/** The names of a workbook part (ECMA-376 part 1, section 18.2.5). */
export function bookNames(text: string, root: Element): readonly BookName[] {
  const list = child(root, 'definedNames');
  return (list ? childrenNamed(list, 'definedName') : []).map((element) => ({
    name: attribute(element, 'name') ?? '',
    refersTo: contentOf(text, element),
    element,
  }));
}
