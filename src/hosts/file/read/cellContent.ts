import type { Attributes } from './branches.ts';
import type { NumberKind } from '../../formats/numberFormat.ts';
import type { StoredCell } from './cellValue.ts';
import { RichText } from './richText.ts';

const none: Attributes = Object.freeze({});

/** Gathers what stands inside one cell element after the other (ECMA-376 part 1, section 18.3.1.4). */
export class CellContent {
  hasValue = false;
  hasFormula = false;
  formulaAttributes: Attributes = none;
  formulaText = '';
  #type = 'n';
  #text = '';
  #hasInline = false;
  #inside: 'value' | 'formula' | 'other' = 'other';
  readonly #inline: RichText;

  /** Inline texts of more than `textLength` characters throw FileRefused. */
  constructor(textLength: number) {
    this.#inline = new RichText(textLength);
  }

  /** Begins a cell by the attributes of its `c` element. */
  start(attributes: Attributes): void {
    this.#type = attributes['t'] ?? 'n';
    this.#text = '';
    this.formulaText = '';
    this.hasValue = false;
    this.hasFormula = false;
    this.#hasInline = false;
    this.formulaAttributes = none;
  }

  /** An element inside the cell; `depth` counts from 0 for its children. */
  open(name: string, attributes: Attributes, depth: number, parents: readonly string[]): void {
    if (depth > 0) {
      if (parents[4] === 'is') this.#inline.open(name);
    } else if (name === 'v') {
      this.#inside = 'value';
      this.hasValue = true;
    } else if (name === 'f') {
      this.#inside = 'formula';
      this.hasFormula = true;
      this.formulaAttributes = attributes;
    } else if (name === 'is') {
      this.hasValue = true;
      this.#hasInline = true;
    }
  }

  close(name: string, depth: number, parents: readonly string[]): void {
    if (depth === 0) this.#inside = 'other';
    else if (parents[4] === 'is') this.#inline.close(name);
  }

  add(text: string): void {
    if (this.#inside === 'value') this.#text += text;
    else if (this.#inside === 'formula') this.formulaText += text;
    else this.#inline.add(text);
  }

  /** The finished cell, its number taken as `kind`; to be asked for once. */
  take(kind: NumberKind): StoredCell {
    // Some programs write an inline text as a plain value.
    const text = this.#type === 'inlineStr' && this.#hasInline ? this.#inline.take() : this.#text;
    return { type: this.#type, text, hasValue: this.hasValue, hasFormula: this.hasFormula, kind };
  }
}
