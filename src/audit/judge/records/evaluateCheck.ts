import { coverageFactor, TWO_SIGMA } from '../../../method/uncertainty.ts';
import { convert } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import type { DynamicResult } from '../../model/report.ts';
import { perGap } from './evaluateRecord.ts';
import type { RawCheck } from '../../read/records/rawRecord.ts';

/**
 * Sensitivity by a check with a known vibration: the mean of its levels, each output ÷ displacement, peak to peak on
 * both sides, in the channel's sensitivity unit; its expanded uncertainty from their scatter, s/√n times k of the t
 * distribution at 95.45 %. `undefined` without a level. Source: JCGM 100:2008 4.2 and G.3.
 */
export function evaluateCheck(check: RawCheck, { sensitivityUnit }: Channel): DynamicResult | undefined {
  const unit = perGap(check.unit);
  const values = check.levels.map(({ displacement, output }) =>
    convert((1000 * output) / displacement, unit, sensitivityUnit),
  );
  const count = values.length;
  if (count === 0 || !values.every(Number.isFinite)) return undefined;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const ofMean = Math.sqrt(squares / (count - 1) / count);
  return {
    sheet: check.sheet,
    row: check.row,
    levels: count,
    sensitivity: mean,
    uncertainty: count > 1 ? coverageFactor(TWO_SIGMA, count - 1) * ofMean : null,
  };
}
