import { tones } from '../look/palette.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { CellStyle } from '../model.ts';

/** Styles of sheets that sum up. */
export const summaryStyles: Readonly<Record<string, CellStyle>> = {
  ...frameStyles,
  ...levelStyles,
  headline: { bold: true, size: 13, color: tones.ink, wrap: true, valign: 'center' },
  section: { bold: true, size: 13, color: tones.ink, valign: 'center' },
  remark: { color: tones.quiet, wrap: true, valign: 'top' },
  headerRight: { ...frameStyles.header, align: 'right' },
  name: { bold: true, wrap: true, valign: 'top' },
  countLeft: { numberFormat: '0', align: 'left', valign: 'top' },
};
