import type { ChannelResult, RecordResult } from '../../../audit/model/report.ts';
import { convert } from '../../../units/convert.ts';
import { convertDetection } from '../../../units/detection.ts';
import { parseUnit } from '../../../units/parse.ts';

/**
 * Gaps between which the shaft swings about its operating gap when danger acts on the curve, in the record's gap unit.
 * `null` for positions, which do not swing, and where the record can't show it. Source: half the peak-to-peak swing on
 * either side of the operating gap.
 */
export function swingAtDanger(
  { kind, unit, detection }: ChannelResult,
  { gapUnit, operatingGap, thresholds }: RecordResult,
): { readonly from: number; readonly to: number } | null {
  const danger = thresholds.find(({ name, multiplier }) => name === 'danger' && multiplier === 1);
  const [own, wanted] = [parseUnit(unit ?? ''), parseUnit(gapUnit)];
  if (kind !== 'radial' || operatingGap === null || !danger || danger.onCurve === null) return null;
  if (!own || !wanted) return null;
  const counted = detection === '0-p' ? '0-p' : 'p-p';
  const swing = convert(convertDetection(danger.onCurve, counted, 'p-p'), own, wanted);
  return Number.isFinite(swing) ? { from: operatingGap - swing / 2, to: operatingGap + swing / 2 } : null;
}
