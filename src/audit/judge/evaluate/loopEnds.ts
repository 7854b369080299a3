import { loopDefaults } from '../../../method/loop.ts';
import type { Channel, MeasuredLoop } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { fixed, inRange, inUnit } from './amounts.ts';
import type { Diagnostics } from './diagnostics.ts';
import { expandedIn } from './uncertainty.ts';

/** mA: what lies outside is a current in another unit, such as 0.004 A; our choice, no source. */
const currents = {
  loopAtZero: [0.1, 100],
  loopAtSpan: [0.1, 100],
  loopAtZeroUncertainty: [0, 5],
  loopAtSpanUncertainty: [0, 5],
} as const;

/**
 * The measured ends of a channel's current loop; `null` where none was measured, or with a warning where they can't be used.
 * Its span follows from the configured sensitivity where that is in mA, else it is the full scale.
 */
export function loopOf(
  row: ChannelRow,
  channel: Channel,
  { tolerance, coverage }: Policy,
  diagnostics: Diagnostics,
): MeasuredLoop | null {
  const current = (column: keyof typeof currents) =>
    inRange(row[column], column, fixed.milliampere, currents[column], { diagnostics });
  const [at0, at100] = [
    inUnit(current('loopAtZero'), fixed.milliampere),
    inUnit(current('loopAtSpan'), fixed.milliampere),
  ];
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
  const uncertaintyOf = (column: 'loopAtZeroUncertainty' | 'loopAtSpanUncertainty') =>
    expandedIn(current(column), fixed.milliampere, row, coverage);
  return {
    at0,
    at100,
    at0Uncertainty: uncertaintyOf('loopAtZeroUncertainty'),
    at100Uncertainty: uncertaintyOf('loopAtSpanUncertainty'),
    span,
    isAll,
  };
}
