import type { ICellData } from '@univerjs/core';

/** How a number of a file of plain text is written there: the grid calculates with the number, the audit reads the text. */
export interface Written {
  readonly text: string;
  readonly number: number;
}

/** What a cell keeps beside its number. */
export function keptAs(written: Written): NonNullable<ICellData['custom']> {
  return { written };
}

/** The text from which a cell's number came; `undefined` where it came from none or is another number by now. */
export function writtenText({ v, custom }: ICellData): string | undefined {
  const written = custom?.['written'] as Written | undefined;
  return written && written.number === v ? written.text : undefined;
}
