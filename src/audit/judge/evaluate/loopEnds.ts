import { loopDefaults } from '../../../method/loop.ts';
import type { Channel, MeasuredLoop } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { fixed, inUnit } from './amounts.ts';
import type { Diagnostics } from './diagnostics.ts';
import { type Coverage, expanded } from './uncertainty.ts';

/**
 * The measured ends of a channel's current loop; `null` where none was measured, or with a warning where they can't be used.
 * Its span follows from the configured sensitivity where that is in mA, else it is the full scale.
 */
export function loopOf(
  row: ChannelRow,
  channel: Channel,
  { tolerance }: Policy,
  coverage: Coverage,
  diagnostics: Diagnostics,
): MeasuredLoop | null {
  const [at0, at100] = [inUnit(row.loopAtZero, fixed.milliampere), inUnit(row.loopAtSpan, fixed.milliampere)];
  if (at0 === null && at100 === null) return null;
  if (at0 === null || at100 === null) {
    const [column, which] =
      at0 === null ? (['loopAtZero', 'at 0 %'] as const) : (['loopAtSpan', 'at 100 %'] as const);
    if (diagnostics.isSaid(column)) return null;
    return diagnostics.add('channels', column, 'loop-ends-not-used', { kind: 'one missing', which });
  }
  if (at100 <= at0)
    return diagnostics.add('channels', 'loopAtSpan', 'loop-ends-not-used', {
      kind: 'not rising',
      at0,
      at100,
    });
  const isAll = channel.sensitivityUnit.dimension.startsWith('current/');
  const ideal = loopDefaults.at100 - loopDefaults.at0;
  const span = isAll ? (ideal * channel.unitsPerVolt) / channel.configured : channel.fullScale;
  if (span === null)
    return diagnostics.add('channels', 'loopAtSpan', 'loop-ends-not-used', { kind: 'no span' });
  if (isAll) {
    const byEnds = (channel.configured * (at100 - at0)) / ideal;
    if (Math.abs(channel.measured / byEnds - 1) > tolerance) {
      const values = { byEnds, listed: channel.measured, unit: channel.sensitivityUnit.text };
      diagnostics.add(
        'channels',
        'loopAtSpan',
        'loop-ends-not-used',
        { kind: 'against the sensitivity', ...values },
        'contradiction',
      );
    }
  }
  const uncertaintyOf = (amount: ChannelRow['loopAtZeroUncertainty']) =>
    expanded(inUnit(amount, fixed.milliampere), coverage);
  return {
    at0,
    at100,
    at0Uncertainty: uncertaintyOf(row.loopAtZeroUncertainty),
    at100Uncertainty: uncertaintyOf(row.loopAtSpanUncertainty),
    span,
    isAll,
  };
}
