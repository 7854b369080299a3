import type { Channel } from '../../model/channel.ts';
import { factOf } from '../../model/findings.ts';
import type { UnitSlip } from '../../model/rules/settingsRules.ts';
import { ratedSensitivity } from './settingsRules.ts';
import type { Rule, AddFinding, Statement } from './rule.ts';

const milToMicrometre = 25.4;
const voltToMillivolt = 1000;

/** Whether a ratio is a factor (or one over it) to within a part of it: the factor that explains it, else `undefined`. */
function explains(ratio: number, factor: number, within: number): boolean {
  return Math.abs(Math.abs(Math.log(ratio)) - Math.log(factor)) < Math.log1p(within);
}

/**
 * Values that are wrong by just the factor between two units: mil and µm (25.4), V and mV (1000), peak-to-peak and
 * zero-to-peak (2). A suspicion with its reason; the numbers are used as they stand.
 */
export const unitSlip: Rule = ({ channel, policy }, addFinding) => {
  const { configured, measured, sensitivityUnit } = channel;
  const rated = ratedSensitivity(channel, policy);
  const unit = sensitivityUnit.text;
  const ratio = measured / configured;
  if (rated !== null) {
    sensitivitySlip('measured', measured, rated, unit, addFinding);
    sensitivitySlip('configured', configured, rated, unit, addFinding);
  } else if (explains(ratio, milToMicrometre, 0.25)) {
    addFinding(slip('channels', 'measured', { kind: 'sensitivities', ratio }));
  }
  if (explains(ratio, 2, 0.03)) {
    const values = { kind: 'detection of a sensitivity', measured, configured, ratio, unit } as const;
    addFinding(slip('channels', 'measured', values));
  }
  setpointSlip(channel, addFinding);
  uncertaintySlip(channel, addFinding);
  speedSlip(channel, addFinding);
};

function sensitivitySlip(
  id: 'measured' | 'configured',
  value: number,
  rated: number,
  unit: string,
  addFinding: AddFinding,
): void {
  const factor = ([milToMicrometre, voltToMillivolt] as const).find((one) =>
    explains(value / rated, one, 0.25),
  );
  if (factor === undefined) return;
  const values = { kind: 'rated sensitivity', which: id, value, rated, unit, factor } as const;
  addFinding(slip(id === 'measured' ? 'channels' : 'settings', id, values));
}

function setpointSlip(
  { alert, danger, fullScale, limit, unit: { dimension, text: unit, factor }, kind }: Channel,
  addFinding: AddFinding,
): void {
  if (dimension !== 'displacement' || danger === null) return;
  if (alert !== null && explains(danger / alert, milToMicrometre, 0.5)) {
    addFinding(
      slip('settings', 'danger', {
        kind: 'setpoint',
        danger,
        against: 'alert',
        level: alert,
        ratio: danger / alert,
        unit,
      }),
    );
  }
  const levels = [
    ['full scale', fullScale],
    ['limit', limit],
  ] as const;
  for (const [against, level] of levels) {
    if (level === null || !explains(danger / level, milToMicrometre, 1)) continue;
    const values = { kind: 'setpoint', danger, against, level, ratio: danger / level, unit } as const;
    addFinding(slip('settings', 'danger', values));
    return;
  }
  const micrometres = danger * factor;
  if (kind === 'radial' && (micrometres < leastDanger || micrometres > greatestDanger)) {
    const is = micrometres < leastDanger ? 'too small' : 'too large';
    addFinding(slip('settings', 'danger', { kind: 'size of a setpoint', danger, unit, is }));
  }
}

/** Danger setpoints of shaft vibration lie well inside this span, µm; common practice, no source. */
const leastDanger = 12;
const greatestDanger = 1000;

/** Shafts with displacement probes turn faster than this, r/min; common practice, no source. */
const leastSpeed = 60;

function speedSlip({ speed, kind }: Channel, addFinding: AddFinding): void {
  if (speed === null || speed >= leastSpeed || kind !== 'radial') return;
  addFinding(slip('channels', 'speed', { kind: 'speed', speed }));
}

/** Least uncertainties, as fractions, that are reached in the field; common practice, no source. */
const leastUncertainty = 0.001;
const leastOfGain = 0.0005;

/** A gain known for certain, or nothing shared, may be stated: 0 is no slip of these two. */
function uncertaintySlip(
  { uncertainty, gainUncertainty, sharedUncertainty }: Channel,
  addFinding: AddFinding,
): void {
  const kind = 'uncertainty';
  if (uncertainty !== null && uncertainty < leastUncertainty)
    addFinding(slip('channels', 'uncertainty', { kind, of: 'sensitivity', uncertainty }));
  if (gainUncertainty !== null && gainUncertainty > 0 && gainUncertainty < leastOfGain)
    addFinding(
      slip('settings', 'gainUncertainty', { kind, of: 'monitor gain', uncertainty: gainUncertainty }),
    );
  const sharesAll = sharedUncertainty === uncertainty;
  if (sharedUncertainty !== null && sharedUncertainty > 0 && sharedUncertainty < leastOfGain && !sharesAll)
    addFinding(slip('channels', 'sharedUncertainty', { kind, of: 'batch', uncertainty: sharedUncertainty }));
}

function slip(table: Statement['table'], column: string, values: UnitSlip): Statement {
  return { ...factOf('unit-slip-suspected', 'warning', values), table, column };
}
