import type { ValueRules } from '../../model/rules/cellRules.ts';
import { atCoverage } from '../../../method/uncertainty.ts';
import { convert, type Unit } from '../../../units/unit.ts';
import { fixed, inUnit } from './amounts.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { Diagnostics } from './diagnostics.ts';

/** Coverage factor of an uncertainty of which none is stated. */
export const usualCoverage = 2;

/**
 * The expanded uncertainty at the wanted coverage factor as a fraction of the measured sensitivity, from percent or from a sensitivity; `null` where
 * none is given, or with a warning where it is 100 % or more or in a unit that does not fit.
 */
export function uncertaintyOf(
  uncertainty: Amount | null,
  measured: Amount | null,
  column: 'uncertainty' | 'asLeftUncertainty' | 'sharedUncertainty',
  coverage: Coverage,
  diagnostics: Pick<Diagnostics, 'add'>,
): number | null {
  if (!uncertainty || !measured) return null;
  const refuse = (values: ValueRules['value-out-of-range']) =>
    diagnostics.add('channels', column, 'value-out-of-range', values);
  const { value, unit } = uncertainty;
  const absolute = unit && unit.dimension !== 'percent' && measured.unit;
  const asGiven = absolute ? convert(value, unit, measured.unit) / measured.value : value / 100;
  const fraction = atCoverage(asGiven, coverage.given, coverage.wanted);
  if (Number.isNaN(fraction)) return refuse({ kind: 'uncertainty not comparable', unit: unit?.text ?? '%' });
  if (fraction >= 1) return refuse({ kind: 'uncertainty too large', fraction });
  return fraction;
}

/** The whole uncertainty and the part of it that the batch shares; a part above the whole can't be, and is not used. */
export function uncertainties(
  row: Pick<ChannelRow, 'uncertainty' | 'sharedUncertainty' | 'rowCoverage'>,
  measured: Amount,
  coverage: Coverage,
  diagnostics: Pick<Diagnostics, 'add'>,
): { readonly uncertainty: number | null; readonly sharedUncertainty: number | null } {
  const uncertainty = uncertaintyOf(row.uncertainty, measured, 'uncertainty', coverage, diagnostics);
  // A part is stated as its whole is, unless its own header says otherwise.
  const ofShared = { ...coverage, given: givenFor(row, row.sharedUncertainty) ?? coverage.given };
  const shared = uncertaintyOf(row.sharedUncertainty, measured, 'sharedUncertainty', ofShared, diagnostics);
  if (shared === null || shared <= (uncertainty ?? 0) * (1 + 1e-12))
    return { uncertainty, sharedUncertainty: shared };
  const values = { kind: 'shared above the whole', shared, whole: uncertainty } as const;
  return {
    uncertainty,
    sharedUncertainty: diagnostics.add('channels', 'sharedUncertainty', 'value-out-of-range', values),
  };
}

/** Coverage factor at which uncertainties are stated, and the one at which they are wanted. */
export interface Coverage {
  readonly given: number;
  readonly wanted: number;
}

/** The coverage factor of an uncertainty by its row, else by its own header; `null` where neither names one. */
function givenFor({ rowCoverage }: Pick<ChannelRow, 'rowCoverage'>, amount: Amount | null): number | null {
  return rowCoverage?.value ?? amount?.coverage ?? null;
}

/** An amount in a unit at the wanted coverage factor: stated at its row's, at its header's, or at the usual one. */
export function expandedIn(
  amount: Amount | null,
  unit: Unit,
  row: Pick<ChannelRow, 'rowCoverage'>,
  wanted: number,
): number | null {
  const value = inUnit(amount, unit);
  return value === null ? null : atCoverage(value, givenFor(row, amount) ?? usualCoverage, wanted);
}

/** The expanded uncertainty of the monitor's gain as a fraction of it; `null`, with a warning, where it is 100 % or more. */
export function gainUncertaintyOf(
  { gainUncertainty }: Pick<SettingsRow, 'gainUncertainty'>,
  row: Pick<ChannelRow, 'rowCoverage'>,
  wanted: number,
  diagnostics: Pick<Diagnostics, 'add'>,
): number | null {
  const percent = expandedIn(gainUncertainty, fixed.percent, row, wanted);
  const fraction = percent === null ? null : percent / 100;
  if (fraction === null || fraction < 1) return fraction;
  const values = { kind: 'uncertainty too large', fraction } as const;
  return diagnostics.add('settings', 'gainUncertainty', 'value-out-of-range', values);
}
