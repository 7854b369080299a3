import { verdicts, type ThresholdVerdict } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import type { Severity } from '../../audit/model/findings.ts';
import type { Area } from '../../cells/sheet.ts';
import type { ShadeRule } from '../model.ts';
import { palette, tones } from './palette.ts';

type Shade = ShadeRule['style'];

const grave: Shade = { fill: palette.blue, color: 'FFFFFF', bold: true };

/** Shades second to the words: dark for what cannot act, orange for what acts late; `within` stays plain. */
export const verdictShades: Readonly<Partial<Record<ThresholdVerdict, Shade>>> = {
  unreachable: grave,
  late: { fill: palette.orange, color: '000000', bold: true },
  undetermined: { fill: palette.paleOrange, color: tones.ink },
  early: { fill: palette.skyBlue, color: '000000' },
  incomplete: { fill: palette.grey, color: tones.ink },
};

/** The same by the words that stand in the cells. */
export const verdictWordShades: Readonly<Record<string, Shade | undefined>> = {
  ...Object.fromEntries(verdicts.map((verdict) => [verdictWords[verdict], verdictShades[verdict]])),
  'in bypass': grave,
};

/** A yes that is as grave as what cannot act, and a may be. */
export const yesShades = { yes: grave, may: verdictShades.undetermined } as const;

/** Words of a group that fails its purpose. */
export const groupShades = { 'cannot trip': grave, 'cannot act': grave } as const;

export const severityShades: Readonly<Partial<Record<Severity, Shade>>> = {
  critical: grave,
  warning: { fill: palette.paleOrange, color: tones.ink },
};

/** Shades an area by its words. */
export function shadesFor(area: Area, shades: Readonly<Record<string, Shade | undefined>>): ShadeRule[] {
  return Object.entries(shades).flatMap(([equals, style]) => (style ? [{ area, equals, style }] : []));
}
