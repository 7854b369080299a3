import { verdicts, type ThresholdVerdict } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import type { Severity } from '../../audit/model/findings.ts';
import type { Area } from '../../cells/sheet.ts';
import type { ShadeRule } from '../model.ts';
import { verdictMarks, type VerdictMark } from './verdictMarks.ts';

type Shade = ShadeRule['style'];

function shadeOf({ fill, onFill, bold }: VerdictMark): Shade | undefined {
  return fill === null ? undefined : { fill, color: onFill, ...(bold && { bold }) };
}

/** Shades second to the words; `within` stays plain. */
export const verdictShades: Readonly<Partial<Record<ThresholdVerdict, Shade>>> = Object.fromEntries(
  verdicts.flatMap((verdict) => {
    const shade = shadeOf(verdictMarks[verdict]);
    return shade ? [[verdict, shade]] : [];
  }),
);

/** The same by the words that stand in the cells. */
export const verdictWordShades: Readonly<Record<string, Shade | undefined>> = {
  ...Object.fromEntries(verdicts.map((verdict) => [verdictWords[verdict], verdictShades[verdict]])),
  'in bypass': shadeOf(verdictMarks['in bypass']),
};

const grave = verdictShades.unreachable;

/** A yes that is as grave as what cannot act, and a may be. */
export const yesShades = { yes: grave, may: verdictShades.undetermined } as const;

/** Words of a group that fails its purpose. */
export const groupShades = { 'cannot trip': grave, 'cannot act': grave } as const;

export const severityShades: Readonly<Partial<Record<Severity, Shade | undefined>>> = {
  critical: grave,
  warning: verdictShades.undetermined,
};

/** Shades an area by its words. */
export function shadesFor(area: Area, shades: Readonly<Record<string, Shade | undefined>>): ShadeRule[] {
  return Object.entries(shades).flatMap(([equals, style]) => (style ? [{ area, equals, style }] : []));
}
