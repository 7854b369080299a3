import { FileRefused } from '../zip/refused.ts';

/**
 * Gathers the text of a shared or inline string: its plain text or all its formatted runs, without the
 * phonetic guide (`rPh`) that stands above East Asian text.
 */
export class RichText {
  readonly #longest: number;
  #text = '';
  #inText = false;
  #phonetic = 0;

  /** A text of more than `longest` characters throws FileRefused. */
  constructor(longest: number) {
    this.#longest = longest;
  }

  open(name: string): void {
    if (name === 'rPh') this.#phonetic++;
    else if (name === 't') this.#inText = this.#phonetic === 0;
  }

  close(name: string): void {
    if (name === 'rPh') this.#phonetic--;
    else if (name === 't') this.#inText = false;
  }

  add(text: string): void {
    if (!this.#inText) return;
    this.#text += text;
    if (this.#text.length > this.#longest) {
      throw new FileRefused('The file holds a text longer than any cell can hold. Save it again as .xlsx.');
    }
  }

  /** The text so far, and a fresh start. */
  take(): string {
    const text = this.#text;
    this.#text = '';
    return text;
  }
}
