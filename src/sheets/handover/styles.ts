import { verdictShades } from '../look/shades.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import { tones } from '../look/palette.ts';
import type { CellStyle } from '../model.ts';

const verdict = { bold: true, align: 'center', valign: 'center' } as const;
const label = { size: 9, color: tones.quiet, wrap: true, valign: 'center', underline: true } as const;

/** Styles of a hand-over sheet; the verdict's shade stands behind its word, never in its place. */
export const styles: Readonly<Record<string, CellStyle>> = {
  ...frameStyles,
  ...levelStyles,
  mark: { bold: true, color: tones.quiet },
  machine: { bold: true, size: 18, color: tones.ink, wrap: true, valign: 'center' },
  standing: { bold: true, size: 12, color: tones.ink, wrap: true, valign: 'top' },
  section: { bold: true, size: 13, color: tones.ink, valign: 'center', underline: true },
  remark: { color: tones.quiet, wrap: true, valign: 'top' },
  tag: { bold: true, size: 12, color: tones.ink, fill: tones.header, wrap: true, valign: 'center' },
  place: { color: tones.ink, fill: tones.header, wrap: true, valign: 'center' },
  label: { ...label, align: 'right' },
  labelLeft: label,
  labelCentred: { ...label, align: 'center' },
  dash: { align: 'right', color: tones.quiet, valign: 'top' },
  word: { align: 'right', bold: true, valign: 'top' },
  number: { bold: true, align: 'right', valign: 'top' },
  name: { bold: true, wrap: true, valign: 'top' },
  warned: { bold: true, wrap: true, valign: 'top' },
  sign: { valign: 'center', wrap: true },
  signHere: { underline: true },
  unreachable: { ...verdict, ...verdictShades.unreachable },
  late: { ...verdict, ...verdictShades.late },
  undetermined: { ...verdict, ...verdictShades.undetermined },
  early: { ...verdict, ...verdictShades.early },
  incomplete: { ...verdict, ...verdictShades.incomplete },
  within: verdict,
};
