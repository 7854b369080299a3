import type { CellStyle } from '../model.ts';
import { verdictStyles } from './verdictStyles.ts';
import { tones } from './palette.ts';
import { decimalCounts, fixedFormat, signedFormat } from './significant.ts';

/** Styles that every result sheet shares. */
export const frameStyles = {
  title: { named: 'Tripdrift title', bold: true, size: 16, color: tones.ink },
  subtitle: { color: tones.quiet },
  caution: { bold: true, color: tones.ink, fill: tones.caution, wrap: true, valign: 'center' },
  cautionLine: { bold: true, color: tones.ink },
  band: { italic: true, size: 9, color: tones.quiet },
  header: {
    named: 'Tripdrift header',
    bold: true,
    color: tones.ink,
    fill: tones.header,
    wrap: true,
    valign: 'center',
    underline: true,
  },
  text: { valign: 'top' },
  centred: { align: 'center', valign: 'top' },
  strong: { bold: true, valign: 'top' },
  headerCentred: {
    named: 'Tripdrift header',
    bold: true,
    color: tones.ink,
    fill: tones.header,
    wrap: true,
    align: 'center',
    valign: 'center',
    underline: true,
  },
  wrapped: { wrap: true, valign: 'top' },
  /** The same for cells that lead elsewhere. */
  strongLink: { named: 'Tripdrift link', bold: true, linked: true, valign: 'top' },
  wrappedLink: { linked: true, wrap: true, valign: 'top' },
  countLink: { linked: true, numberFormat: '0', align: 'center', valign: 'top' },
  /** Wraps, so that it never runs on beyond its cell, in a row one line tall that shows its beginning. */
  oneLine: { wrap: true, valign: 'top' },
  count: { numberFormat: '0', align: 'center', valign: 'top' },
  panel: { bold: true, numberFormat: 'General', align: 'center', valign: 'top' },
  factor: { numberFormat: 'General', align: 'center', valign: 'top' },
  ratio: { numberFormat: '0.00000_0', valign: 'top' },
  percent: { numberFormat: '0.0%_0', valign: 'top' },
  signedPercent: { numberFormat: '+0.0%_0;-0.0%_0;0.0%_0', valign: 'top' },
  chance: {
    numberFormat: '[<0.001]"< 0.1%"_0;[>0.999]"> 99.9%"_0;0.0%_0',
    align: 'right',
    valign: 'top',
  },
  volts: { numberFormat: '0.00_0', valign: 'top' },
  days: { numberFormat: '0.0_0', valign: 'top' },
  ...verdictStyles,
} as const satisfies Record<string, CellStyle>;

/** `given`: of numbers as they were given. Styles of levels, `level0` to `level6`, and of differences with their sign, `signed0` to `signed6`, by decimals. */
export const levelStyles: Readonly<Record<string, CellStyle>> = Object.fromEntries([
  ['given', { numberFormat: 'General', align: 'right', valign: 'top' }],
  ...decimalCounts.flatMap((decimals): [string, CellStyle][] => [
    [`level${decimals}`, { numberFormat: fixedFormat(decimals), valign: 'top' }],
    [`signed${decimals}`, { numberFormat: signedFormat(decimals), valign: 'top' }],
  ]),
]);
