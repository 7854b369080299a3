import type { ThresholdVerdict } from '../../audit/model/threshold.ts';

/** A verdict, or that a channel is in bypass and protects nothing. */
export type Standing = ThresholdVerdict | 'in bypass';

/** How one verdict looks wherever it is shown. Colours are `RRGGBB`. */
export interface VerdictMark {
  /** Stands before its word, so that colour says nothing by itself. */
  readonly sign: string;
  /** Text, lines and marks on light grounds, and on dark ones. */
  readonly light: string;
  readonly dark: string;
  /** A cell on paper and its text; `null` where the paper stays white. */
  readonly fill: string | null;
  readonly onFill: string;
  /** The word is bold in a cell. */
  readonly bold: boolean;
}

const stopped = { light: '8C1D6B', dark: 'F0A3DA', fill: '8C1D6B', onFill: 'FFFFFF', bold: true } as const;

/**
 * The looks of all verdicts, for sheets, drawings, charts, pages and pane: nothing else says how a verdict looks. In grey the
 * gravest is the darkest and what is OK the lightest.
 */
export const verdictMarks: Readonly<Record<Standing, VerdictMark>> = {
  unreachable: { ...stopped, sign: '✕' },
  'in bypass': { ...stopped, sign: '⊘' },
  late: { sign: '▶', light: 'A8360B', dark: 'FFAB85', fill: 'F0986B', onFill: '1F2A33', bold: true },
  undetermined: { sign: '?', light: '765500', dark: 'EFC75E', fill: 'F3DC97', onFill: '1F2A33', bold: false },
  early: { sign: '◀', light: '0A5C9C', dark: '8FC9FF', fill: 'CDE4F7', onFill: '1F2A33', bold: false },
  incomplete: { sign: '–', light: '4F5B63', dark: 'BAC6CA', fill: 'DFE3E6', onFill: '1F2A33', bold: false },
  within: { sign: '✓', light: '1E6B3A', dark: '8FD7A8', fill: null, onFill: '1F2A33', bold: false },
};
