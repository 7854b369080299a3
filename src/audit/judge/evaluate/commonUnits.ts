import type { Kind } from '../../model/kind.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Detection, Unit } from '../../../units/parse.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { Complaints } from './complaints.ts';

const quantityOf: Readonly<Record<Exclude<Kind, 'loop'>, string>> = {
  radial: 'displacement',
  axial: 'displacement',
  velocity: 'velocity',
  acceleration: 'acceleration',
};

export interface CommonUnits {
  /** Of every level of the channel: that of its danger setpoint, or of its alert where there is no danger. */
  readonly unit: Unit;
  /** That of the configured sensitivity. */
  readonly sensitivityUnit: Unit;
  /** `null` for position and loop channels, which are not counted peak to peak. */
  readonly detection: Detection | null;
  /** Levels per volt (per mA for current signals) at a sensitivity of 1 `sensitivityUnit`. */
  readonly unitsPerVolt: number;
}

/** The units in which a channel is worked out; `null`, with complaints, where they are not named or don't fit. */
export function commonUnits(
  row: ChannelRow,
  settings: SettingsRow,
  complaints: Complaints,
): CommonUnits | null {
  const { kind, measured } = row;
  const { configured, danger, alert } = settings;
  const setpoint = danger ?? alert;
  const column = danger ? 'danger' : 'alert';
  const unit = danger?.unit ?? alert?.unit;
  if (measured && !measured.unit)
    noUnit('channels', 'measured', 'measured sensitivity', 'mV/mil', complaints);
  if (configured && !configured.unit)
    noUnit('settings', 'configured', 'configured sensitivity', 'mV/mil', complaints);
  if (setpoint && !unit) noUnit('settings', column, 'setpoints', 'mil', complaints);
  if (!kind || !measured?.unit || !configured?.unit || !unit) return null;

  const sensitivityUnit = configured.unit;
  const [signal, quantity] = sensitivityUnit.dimension.split('/');
  const wrong = (table: 'channels' | 'settings', at: string, message: string) =>
    complaints.add(table, at, 'unit-does-not-fit', message);
  if (measured.unit.dimension !== sensitivityUnit.dimension) {
    return wrong(
      'channels',
      'measured',
      `The measured sensitivity is in ${measured.unit.text} and the configured one in ${sensitivityUnit.text}; these can't be compared. Correct the unit.`,
    );
  }
  if (quantity !== unit.dimension) {
    return wrong(
      'settings',
      column,
      `The setpoints are in ${unit.text} but the sensitivity is in ${sensitivityUnit.text}. Correct the unit.`,
    );
  }
  if (kind !== 'loop' && quantity !== quantityOf[kind]) {
    return wrong(
      'settings',
      'configured',
      `A ${kind} channel needs a sensitivity per unit of ${quantityOf[kind]}, not ${sensitivityUnit.text}. Correct the kind or the unit.`,
    );
  }
  return {
    unit,
    sensitivityUnit,
    detection: kind === 'axial' || kind === 'loop' ? null : detectionOf(settings, complaints),
    unitsPerVolt: (signal === 'voltage' ? 1000 : 1) / sensitivityUnit.factor / unit.factor,
  };
}

function noUnit(
  table: 'channels' | 'settings',
  column: string,
  what: string,
  example: string,
  complaints: Complaints,
): void {
  const message = `The unit of the ${what} is missing; write it in brackets in the header, such as (${example}), or in a unit column.`;
  complaints.add(table, column, 'unit-missing', message);
}

function detectionOf(settings: SettingsRow, complaints: Complaints): Detection {
  const header = settings.danger?.unit?.detection ?? settings.alert?.unit?.detection;
  if (settings.detection && header && settings.detection !== header) {
    const factor = Number(convertDetection(1, header, settings.detection).toPrecision(3));
    complaints.add(
      'settings',
      'detection',
      'detection-contradicts-header',
      `The detection column says ${settings.detection} and the header of the setpoints ${header}, a factor of ${factor} between them. The column was used. Correct one of them.`,
    );
  }
  return settings.detection ?? header ?? 'p-p';
}
