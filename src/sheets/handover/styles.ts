import { verdictShades } from '../style/shades.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import { tones } from '../style/palette.ts';
import type { CellStyle } from '../model.ts';

const verdict = { bold: true, align: 'center', valign: 'center', wrap: true, size: 9 } as const;
const label = { size: 9, color: tones.quiet, wrap: true, valign: 'center', underline: true } as const;
const drawn = { size: 10, color: tones.ink, valign: 'top' } as const;
const drawnTop = { size: 10, color: tones.ink, bold: true, underline: true } as const;
const inked = { color: tones.ink, wrap: true, valign: 'center' } as const;

/** Styles of the sheets to hand over; the verdict's shade stands behind its word, never in its place. */
export const styles: Readonly<Record<string, CellStyle>> = {
  ...frameStyles,
  ...levelStyles,
  mark: { size: 8, color: tones.quiet },
  markRight: { size: 8, color: tones.quiet, align: 'right' },
  machine: { bold: true, size: 18, color: tones.ink, wrap: true, valign: 'center' },
  standing: { bold: true, size: 12, color: tones.ink, wrap: true, valign: 'top' },
  answer: { bold: true, size: 14, color: tones.ink, fill: tones.caution, wrap: true, valign: 'center' },
  section: { bold: true, size: 12, color: tones.ink, valign: 'center', underline: true },
  remark: { color: tones.quiet, wrap: true, valign: 'top' },
  small: { size: 8, color: tones.quiet, wrap: true, valign: 'top' },
  /** What the marks of a drawing mean. */
  legend: { size: 10, color: tones.ink, wrap: true, valign: 'top' },
  cautionLine: { bold: true, size: 9, color: tones.ink, wrap: true, valign: 'center' },
  tag: { bold: true, size: 12, color: tones.ink, fill: tones.header, wrap: true, valign: 'center' },
  place: { color: tones.ink, fill: tones.header, wrap: true, valign: 'center' },
  label: { ...label, align: 'right' },
  labelLeft: label,
  labelCentred: { ...label, align: 'center' },
  labelStrong: { ...label, bold: true, color: tones.ink, align: 'center' },
  dash: { align: 'right', color: tones.quiet, valign: 'top' },
  word: { align: 'right', bold: true, valign: 'top' },
  name: { bold: true, wrap: true, valign: 'top' },
  link: { linked: true, color: tones.ink, valign: 'top' },
  warned: { bold: true, wrap: true, valign: 'top' },
  sign: { valign: 'center', wrap: true },
  signHere: { underline: true },
  channel: { ...inked, bold: true, size: 12, underline: true },
  where: { ...inked, size: 9, underline: true },
  shown: { ...inked, size: 10, align: 'center', underline: true },
  shownSmall: { ...inked, size: 9, align: 'center', underline: true },
  shownStrong: { ...inked, size: 10, bold: true, align: 'center', underline: true },
  trip: { ...inked, size: 10 },
  task: { ...inked, size: 10, underline: true },
  box: { ...inked, size: 12, align: 'center', underline: true },
  pastLevel: { ...inked, size: 9, bold: true, align: 'center', underline: true },
  drawnName: { size: 10, color: tones.ink, bold: true },
  drawn,
  drawnLeft: { ...drawn, align: 'right' },
  drawnMark: { ...drawn, align: 'center' },
  drawnTop,
  drawnTopLeft: { ...drawnTop, align: 'right' },
  drawnTopMark: { ...drawnTop, align: 'center' },
  unreachable: { ...verdict, ...verdictShades.unreachable },
  late: { ...verdict, ...verdictShades.late },
  undetermined: { ...verdict, ...verdictShades.undetermined, bold: true },
  early: { ...verdict, ...verdictShades.early, bold: true },
  incomplete: { ...verdict, ...verdictShades.incomplete, bold: true },
  within: verdict,
};
