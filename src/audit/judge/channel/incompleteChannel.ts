import { isoDate } from '../../../cells/cell.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { Obstacle, SensitivityResult } from '../../model/threshold.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { rowPlaceOf } from '../../read/rows/diagnostic.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { Tables } from '../../read/tables/found.ts';
import { incompleteThreshold } from '../lines/incompleteThreshold.ts';
import { noInputs } from './inputs.ts';
import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Detection, Unit } from '../../../units/parse.ts';

/** The setpoints of a row that can't be audited, still in one unit, for what is shown of it. */
interface WrittenSetpoints {
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** A setpoint in that unit and detection; `null` where none is given or its unit does not fit. */
  readonly level: (amount: Amount | null) => number | null;
}

/** The result of a channel of which nothing can be worked out: what is known of it, and why. */
export function incompleteChannel(
  { row, settings }: { readonly row: ChannelRow; readonly settings: SettingsRow | null },
  tables: Tables,
  obstacles: readonly Obstacle[],
): Omit<ChannelResult, 'findings'> {
  const written = settings && writtenSetpoints(settings);
  const bypass = settings ? settings.bypass : false;
  return {
    tag: row.tag,
    machine: row.machine,
    location: row.location,
    kind: row.kind,
    unit: written?.unit?.text ?? null,
    detection: written?.unit?.detection ?? settings?.detection ?? null,
    state: 'as found',
    inBypass: bypass,
    sensitivity: sensitivityAsWritten(row.measured, settings?.configured ?? null),
    inputs: {
      ...noInputs,
      group: settings?.group || null,
      voting: settings?.voting || null,
      bypass,
      calibratedOn: row.calibratedOn === null ? null : isoDate(row.calibratedOn),
    },
    thresholds: [
      incompleteThreshold('alert', written && written.level(settings.alert), obstacles),
      incompleteThreshold('danger', written && written.level(settings.danger), obstacles),
    ],
    verdict: 'incomplete',
    record: null,
    dynamic: null,
    runout: null,
    asFound: null,
    exposure: [],
    drift: null,
    source: {
      channels: rowPlaceOf(tables.channels, row.row),
      settings: settings && rowPlaceOf(tables.settings, settings.row),
    },
  };
}

/** Sensitivities as they are written: shown only where both stand in one unit. */
function sensitivityAsWritten(measured: Amount | null, configured: Amount | null): SensitivityResult {
  const unit = configured?.unit ?? measured?.unit ?? null;
  const inUnit = (amount: Amount | null) =>
    amount?.unit && amount.unit.text === unit?.text ? amount.value : null;
  return {
    configured: inUnit(configured),
    measured: inUnit(measured),
    unit: unit?.text ?? null,
    error: null,
    uncertainty: null,
    coverage: null,
    from: null,
  };
}

/** Setpoints in the unit of their row's danger, or of its alert where there is no danger. */
export function writtenSetpoints({ danger, alert, detection: column }: SettingsRow): WrittenSetpoints {
  const unit = danger?.unit ?? alert?.unit ?? null;
  const detection = column ?? unit?.detection ?? alert?.unit?.detection ?? null;
  return {
    unit,
    detection,
    level(amount) {
      if (!amount) return null;
      if (!amount.unit || !unit) return amount.value;
      const level = convert(amount.value, amount.unit, unit);
      if (Number.isNaN(level)) return null;
      const own = column === null ? amount.unit.detection : undefined;
      return own && detection ? convertDetection(level, own, detection) : level;
    },
  };
}
