import type { Dimension } from '../../../units/parse.ts';
import type { Kind } from '../../model/channel.ts';
import type { KindSign } from '../../model/rules/cellRules.ts';
import type { PairedRows } from '../../read/pairedRows.ts';
import type { Diagnostics } from './diagnostics.ts';

/**
 * What kind of channel a row is of. One without a kind is radial only where nothing in it belongs to another kind; else
 * `null`, with a warning that asks: a kind is not assumed.
 */
export function kindOfChannel({ row, settings }: PairedRows, diagnostics: Diagnostics): Kind | null {
  if (row.kind !== null || diagnostics.isSaid('kind')) return row.kind;
  const signs: KindSign[] = [];
  if (row.zeroMeasured || settings.zeroConfigured || row.asLeftZero || row.zeroUncertainty)
    signs.push('zero voltage');
  if (row.loopAtZero || row.loopAtSpan) signs.push('loop current');
  if (row.direction !== null) signs.push('positive direction');
  if (settings.counterAlert || settings.counterDanger) signs.push('counter setpoint');
  const units = [row.measured, settings.configured, settings.danger, settings.alert].flatMap((amount) =>
    amount?.unit ? [amount.unit.dimension] : [],
  );
  if (units.some(isOfAnother)) signs.push('unit');
  if (signs.length === 0) return 'radial';
  return diagnostics.add('channels', 'kind', 'kind-missing', { signs }, 'row');
}

function isOfAnother(dimension: Dimension): boolean {
  return dimension !== 'displacement' && dimension !== 'voltage/displacement';
}
