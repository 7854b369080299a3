import type { Kind } from '../../model/channel.ts';
import type { UnitRules } from '../../model/rules/cellRules.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Detection, Unit } from '../../../units/parse.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { Diagnostics } from './diagnostics.ts';

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
  /** `null` for position and loop channels, and for others where nothing names it. */
  readonly detection: Detection | null;
  /** Levels per volt (per mA for current signals) at a sensitivity of 1 `sensitivityUnit`. */
  readonly unitsPerVolt: number;
}

/** The units in which a channel is worked out; `null`, with warnings, where they are not named or don't fit. */
export function commonUnits(
  kind: Kind | null,
  row: ChannelRow,
  settings: SettingsRow,
  diagnostics: Diagnostics,
): CommonUnits | null {
  const { measured } = row;
  const { configured, danger, alert } = settings;
  const setpoint = danger ?? alert;
  const column = danger ? 'danger' : 'alert';
  const unit = danger?.unit ?? alert?.unit;
  if (measured && !measured.unit)
    noUnit('channels', 'measured', 'measured sensitivity', 'mV/mil', diagnostics);
  if (configured && !configured.unit)
    noUnit('settings', 'configured', 'configured sensitivity', 'mV/mil', diagnostics);
  if (setpoint && !unit) noUnit('settings', column, 'setpoints', 'mil', diagnostics);
  if (!kind || !measured?.unit || !configured?.unit || !unit) return null;

  const sensitivityUnit = configured.unit;
  const [signal, quantity] = sensitivityUnit.dimension.split('/');
  const wrong = (table: TableKind, at: string, values: UnitRules['unit-does-not-fit']) =>
    diagnostics.add(table, at, 'unit-does-not-fit', values);
  if (measured.unit.dimension !== sensitivityUnit.dimension) {
    return wrong('channels', 'measured', {
      kind: 'sensitivities',
      which: 'measured',
      unit: measured.unit.text,
      configuredUnit: sensitivityUnit.text,
    });
  }
  const [ofMeasured, ofConfigured] = [measured.unit, sensitivityUnit].map((one) =>
    detectionOfUnit(one, kind),
  );
  if (ofMeasured !== ofConfigured) {
    return wrong('channels', 'measured', {
      kind: 'detections',
      measured: ofMeasured ?? null,
      configured: ofConfigured ?? null,
    });
  }
  if (quantity !== unit.dimension) {
    return wrong('settings', column, {
      kind: 'setpoints',
      unit: unit.text,
      sensitivityUnit: sensitivityUnit.text,
    });
  }
  if (kind !== 'loop' && quantity !== quantityOf[kind]) {
    return wrong('settings', 'configured', {
      kind: 'channel kind',
      channelKind: kind,
      quantity: quantityOf[kind],
      unit: sensitivityUnit.text,
    });
  }
  return {
    unit,
    sensitivityUnit,
    detection: kind === 'axial' || kind === 'loop' ? null : detectionOf(kind, settings, diagnostics),
    unitsPerVolt: (signal === 'voltage' ? 1000 : 1) / sensitivityUnit.factor / unit.factor,
  };
}

function noUnit(
  table: TableKind,
  column: string,
  what: string,
  example: string,
  diagnostics: Diagnostics,
): void {
  diagnostics.add(table, column, 'unit-missing', { what, example });
}

/** A detection that a unit states; of shaft vibration peak to peak where it states none, of others nothing is assumed. */
function detectionOfUnit({ detection }: Unit, kind: Kind): Detection | undefined {
  return detection ?? (kind === 'radial' ? 'p-p' : undefined);
}

function detectionOf(kind: Kind, settings: SettingsRow, diagnostics: Diagnostics): Detection | null {
  const { danger, alert } = settings;
  const ofAlert = kind === 'radial' || !danger ? alert?.unit?.detection : undefined;
  const header = danger?.unit?.detection ?? ofAlert;
  if (settings.detection && header && settings.detection !== header) {
    diagnostics.add(
      'settings',
      'detection',
      'detection-contradicts-header',
      {
        ofColumn: settings.detection,
        ofHeader: header,
        factor: convertDetection(1, header, settings.detection),
      },
      'contradiction',
    );
  }
  return settings.detection ?? header ?? (kind === 'radial' ? 'p-p' : null);
}
