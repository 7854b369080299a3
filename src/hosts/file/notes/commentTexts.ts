import { cellAddress } from '../../../cells/address.ts';
import { attribute, child, childrenNamed, type Element, outline } from '../write/xml/outline.ts';
import { appendInside, type Edit, splice } from '../write/xml/splice.ts';
import { escapeCellText, escapeXml } from '../write/xml/text.ts';

/** A text that hangs at a cell; row and column count from 1. */
export interface CellNote {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** Who the notes are by, as programs show it. */
const author = 'Tripdrift';

/** A part of notes that holds none yet (ECMA-376 part 1, section 18.7). */
export function emptyComments(namespace: string): string {
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<comments xmlns="${namespace}"><authors/><commentList/></comments>`;
}

export interface AddedTexts {
  readonly text: string;
  /** Notes whose cells had none, so that they need a box. */
  readonly fresh: readonly CellNote[];
}

/** The text of a part of notes with further ones; a cell that has a note gets the text below what it says. */
export function withTexts(part: string, name: string, notes: readonly CellNote[]): AddedTexts {
  const root = outline(part, name);
  const authors = child(root, 'authors');
  const list = child(root, 'commentList');
  if (!authors || !list) return { text: part, fresh: [] };
  const present = new Map(
    childrenNamed(list, 'comment').map((element) => [attribute(element, 'ref') ?? '', element]),
  );
  const number = childrenNamed(authors, 'author').length;
  const { prefix } = root;
  const edits: Edit[] = [];
  const fresh: CellNote[] = [];
  let markup = '';
  for (const note of notes) {
    const ref = cellAddress(note.row, note.column);
    const comment = present.get(ref);
    if (comment) edits.push(...below(part, comment, note.text));
    else {
      fresh.push(note);
      markup += `<${prefix}comment ref="${ref}" authorId="${number}"><${prefix}text>${run(prefix, note.text)}</${prefix}text></${prefix}comment>`;
    }
  }
  if (fresh.length > 0) {
    edits.push(
      appendInside(part, authors, `<${prefix}author>${escapeXml(author)}</${prefix}author>`),
      appendInside(part, list, markup),
    );
  }
  return { text: splice(part, edits), fresh };
}

/** The text as a last run of its own; a plain text becomes the first run, as the two do not mix. */
function below(part: string, comment: Element, text: string): Edit[] {
  const inside = child(comment, 'text');
  if (!inside) return [];
  const { prefix } = inside;
  const more = run(prefix, `\n\n${text}`);
  const plain = child(inside, 't');
  const wrapped: Edit[] = plain
    ? [
        { from: plain.start, to: plain.start, text: `<${prefix}r>` },
        { from: plain.end, to: plain.end, text: `</${prefix}r>` },
      ]
    : [];
  const phonetic = child(inside, 'rPh') ?? child(inside, 'phoneticPr');
  const added = phonetic
    ? { from: phonetic.start, to: phonetic.start, text: more }
    : appendInside(part, inside, more);
  return [...wrapped, added];
}

function run(prefix: string, text: string): string {
  return `<${prefix}r><${prefix}t xml:space="preserve">${escapeCellText(text)}</${prefix}t></${prefix}r>`;
}
