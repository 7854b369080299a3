import type { CellStyle, ModelCell } from '../../sheets/model.ts';
import { handKeptStyles } from '../demo/sheets/writtenCell.ts';

/** Looks of the sheets of a template: headers that are needed are dark with light letters. */
export const templateStyles = {
  ...handKeptStyles,
  needed: { ...handKeptStyles.header, fill: '1F4E5F', color: 'FFFFFF' },
} as const satisfies Readonly<Record<string, CellStyle>>;

/** A header, marked where its column is needed. */
export function headerCell({
  header,
  needed,
}: {
  readonly header: string;
  readonly needed?: boolean;
}): ModelCell {
  return { value: header, style: needed === true ? 'needed' : 'header' };
}
